//! What is chosen to be made: which of the four, as what kind of file, for which paper.

use iced::Task;

use super::making;
use super::{Doing, LIST, Message, State};
use crate::app::off_thread::Number;
use crate::app::screens::context::Context;
use crate::app::screens::route::Next;
use crate::app::widgets;
use crate::bench::Layout;
use crate::paper::{FileForm, PaperKind, PaperOrder};
use crate::picture::sheet::Paper;
use crate::words::{Sentence, Spoken, Words};

impl State {
    pub(super) fn kind(&self) -> PaperKind {
        let kind = PaperKind::ALL.get(self.chosen);
        kind.copied().unwrap_or(PaperKind::Card)
    }

    pub(super) fn form_index(&self) -> usize {
        self.forms.get(self.chosen).copied().unwrap_or_default()
    }

    pub(super) fn form(&self) -> FileForm {
        let forms = self.kind().forms();
        forms.get(self.form_index()).copied().unwrap_or(forms[0])
    }

    pub(super) fn order(&self, context: &Context) -> PaperOrder {
        PaperOrder {
            plan: self.tie.plan.clone(),
            place: self.tie.place,
            kind: self.kind(),
            form: self.form(),
            paper: self.paper,
            prices: context.session.settings().prices,
        }
    }

    /// The one that is chosen, and what it is for.
    pub(super) fn say_choice(&self, words: &Words) -> Spoken {
        let kind = self.called(self.kind());
        let texts = [("kind", kind), ("form", self.form().name())];
        let choice = Spoken::from(words.notice("paper-choice", &texts));
        choice.then(words.notice("paper-for", &[("kind", kind)]).spoken())
    }

    /// Shows a sentence, and says it.
    pub(super) fn tell(&mut self, sentence: Sentence, context: &Context) {
        context.say(sentence.spoken());
        self.report = Some(sentence);
    }

    pub(super) fn is_choosing(&self) -> bool {
        matches!(self.doing, Doing::Choosing)
    }

    pub(super) fn choose(&mut self, index: usize, context: &mut Context) -> Next<Message> {
        if !self.is_choosing() {
            return Next::default();
        }
        self.chosen = index.min(PaperKind::ALL.len() - 1);
        self.chosen_anew(context)
    }

    pub(super) fn form_as(&mut self, index: usize, context: &mut Context) -> Next<Message> {
        if !self.is_choosing() {
            return Next::default();
        }
        let forms = self.kind().forms().len();
        if let Some(form) = self.forms.get_mut(self.chosen) {
            *form = index % forms;
        }
        self.report = None;
        context.say(&self.say_choice(context.words()));
        Next::default()
    }

    pub(super) fn put_on(&mut self, paper: Paper, context: &mut Context) -> Next<Message> {
        if !self.is_choosing() || !self.kind().is_paper() {
            return Next::default();
        }
        self.paper = paper;
        let sentence = context
            .words()
            .notice("paper-size", &[("paper", paper_name(paper))]);
        context.say(sentence.spoken());
        Next::run(self.look(context))
    }

    /// Says what is chosen by now, and has it shown.
    pub(super) fn chosen_anew(&mut self, context: &Context) -> Next<Message> {
        self.report = None;
        context.say(&self.say_choice(context.words()));
        let place = widgets::bring_into_view(LIST, self.chosen, PaperKind::ALL.len());
        Next::run(Task::batch([self.look(context), place]))
    }

    /// Has the first page of what is chosen painted.
    pub(super) fn look(&mut self, context: &Context) -> Task<Message> {
        self.glance = (Number::draw(), None);
        making::glance(self.glance.0, self.order(context), context)
    }
}

impl State {
    /// What one of the four is called among the messages for this tie: a mat has the sheet of its board in
    /// the place of a strip.
    pub(super) fn called(&self, kind: PaperKind) -> &'static str {
        let is_board = || {
            let rig = self.tie.plan.rig().ok().flatten();
            rig.is_some_and(|rig| matches!(rig.layout, Layout::Board(_)))
        };
        if kind == PaperKind::Strip && is_board() {
            "board"
        } else {
            name(kind)
        }
    }
}

/// What one of the four is called among the messages.
pub(super) const fn name(kind: PaperKind) -> &'static str {
    match kind {
        PaperKind::Card => "card",
        PaperKind::Strip => "strip",
        PaperKind::Stage => "stage",
        PaperKind::Reel => "reel",
    }
}

/// What a paper is called everywhere.
pub(super) const fn paper_name(paper: Paper) -> &'static str {
    match paper {
        Paper::A4 => "A4",
        Paper::Letter => "Letter",
    }
}
