//! The shelf screen: every tie that is kept, worked by keys alone.

mod action;
mod empty_view;
mod in_view;
mod presses;
mod prompt;
mod thumbnails;
mod turns;
mod view;

use std::path::Path;

use iced::widget::operation;
use iced::{Element, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::jobs::{self, Job, JobOutcome, JobReport, Stock};
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::services::LAST_SAVE;
use crate::pedal::{Intent, Press};
use crate::session::Event;
use crate::shelf::{Photograph, ShelfError, ShelfReading, Shelved, TieId};
use crate::words::{Sentence, Spoken, Words};
use action::Action;
use prompt::{Prompt, label, line};
use thumbnails::Thumbnails;

/// What lies on the shelf and which tie has the focus.
#[derive(Default)]
pub struct State {
    stock: Stock,
    focus: usize,
    prompt: Option<Prompt>,
    /// The path of the job that is being done: it is typed again where that fails.
    path: Option<Prompt>,
    /// What the last job came to.
    report: Option<Sentence>,
    /// Each tie that is laid out, as it lies.
    thumbnails: Thumbnails,
    /// The first tie, where nothing lies there: it can be begun.
    first: PictureView,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// The line was changed.
    Typed(String),
    /// The line is to be kept.
    Enter,
    /// A tie was clicked.
    Clicked(usize),
    /// The first tie is to be begun.
    First,
    /// A job was done.
    Done(Box<ShelfReading<JobReport>>),
    /// The photograph of a tie was read; nothing where it can't be shown.
    Photograph(TieId, Option<Photograph>),
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    /// The screen says itself once the shelf is looked through.
    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let mut state = Self::default();
        state.show_first();
        (state, do_job(Job::Look, context))
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        match message {
            Message::Typed(typed) => {
                if let Some(prompt) = &mut self.prompt {
                    *prompt = Prompt::new(prompt.asks, typed);
                    context.typed();
                }
                Next::default()
            }
            Message::Enter => {
                let action = self.enter();
                self.follow(action, context)
            }
            Message::Clicked(index) => {
                self.focus = index;
                let here = self.say_here(context.words());
                self.follow(Action::Say(here), context)
            }
            Message::First => self.follow(Action::First, context),
            Message::Done(report) => {
                let report = context.session.looked_through(*report);
                match self.take_in(report, context.words()) {
                    Ok(say) => {
                        context.say_after_notices(&say);
                    }
                    Err(error) => {
                        let sentence = context.session.refuse(&error);
                        context.say(sentence.spoken());
                        if self.path.is_some() {
                            // What was typed stands there again, to be mended.
                            self.prompt = self.path.take();
                            return Next::run(Task::batch([
                                operation::focus(line()),
                                operation::move_cursor_to_end(line()),
                            ]));
                        }
                    }
                }
                self.path = None;
                Next::run(Task::batch([self.scroll(), self.read_photographs()]))
            }
            Message::Photograph(tie, photograph) => {
                self.thumbnails.put(tie, photograph);
                Next::default()
            }
        }
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let action = self.pressed(press, intent, context.words());
        self.follow(action, context)
    }

    fn takes_text(&self) -> bool {
        true
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if let (true, Some(prompt)) = (event.is_typing_at_rest(), &self.prompt) {
            context.say(&context.words().say_typed(&prompt.text));
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let words = context.words();
        words
            .say_shelf(self.stock.ties.len())
            .then(&self.say_here(words))
    }

    fn redraw(&mut self, context: &Context) {
        let ties = &self.stock.ties[self.in_view()];
        self.thumbnails.show(ties, context.dots());
        self.first.set_dots(context.dots());
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        self.page(context.words())
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        if self.prompt.is_some() {
            return vec![
                KeyHint::enter("key-keep"),
                KeyHint::leave("key-leave-unchanged"),
            ];
        }
        let mut keys = Vec::new();
        if self.stock.ties.is_empty() {
            keys.push(KeyHint::next("key-first-tie"));
        } else {
            keys.extend([
                KeyHint::next("key-take-up"),
                KeyHint::again(),
                KeyHint::here("ArrowDown", "key-tie-below"),
                KeyHint::here("ArrowUp", "key-tie-above"),
                KeyHint::here("Home", "key-first"),
                KeyHint::here("End", "key-last"),
                KeyHint::here("e", "key-name"),
                KeyHint::here("n", "key-note"),
                KeyHint::here("c", "key-same-again"),
                KeyHint::here("a", "key-put-away"),
                KeyHint::here("l", "key-write-log"),
                KeyHint::here("o", "key-on-paper"),
                KeyHint::here("Delete", "key-delete"),
                KeyHint::here("b", "key-back-up"),
            ]);
        }
        keys.extend([
            KeyHint::here("u", "key-undo"),
            KeyHint::here("i", "key-bring-in"),
            KeyHint::leave("key-leave"),
        ]);
        keys
    }
}

/// Has a job done off the window's thread.
fn do_job(job: Job, context: &Context) -> Task<Message> {
    let keeper = context.services.keeper.clone();
    let settings = context.services.platform.file.path().map(Path::to_owned);
    match context.services.shelf.clone() {
        Some(shelf) => off_thread(move || {
            let report = jobs::do_job(
                &shelf,
                keeper.as_deref(),
                settings.as_deref(),
                LAST_SAVE,
                job,
            );
            Message::Done(Box::new(report))
        }),
        None => Task::none(),
    }
}

impl State {
    fn follow(&mut self, action: Action, context: &mut Context) -> Next<Message> {
        match action {
            Action::None => Next::default(),
            Action::Say(text) => {
                context.say(&text);
                Next::run(Task::batch([self.scroll(), self.read_photographs()]))
            }
            Action::Ask(text) => {
                context.say(&text);
                Next::run(Task::batch([
                    operation::focus(line()),
                    operation::move_cursor_to_end(line()),
                ]))
            }
            Action::Do(job) => Next::run(do_job(job, context)),
            Action::TakeUp(id) => Go::TakeUp(id).into(),
            Action::First => Self::begin_first(context),
            Action::Log(tie) => Go::Log(tie).into(),
            Action::OnPaper(tie) => {
                Go::paper(tie.plan, Some(tie.place), tie.name, Route::Shelf(())).into()
            }
            Action::Leave => Go::start().into(),
        }
    }

    /// Takes in what a job came to, and gives what is said of it.
    ///
    /// # Errors
    /// Why the job was not done, or why the shelf could not be looked through.
    fn take_in(&mut self, report: JobReport, words: &Words) -> Result<Spoken, ShelfError> {
        let JobReport { outcome, stock } = report;
        let here = self.here().map(|shelved| shelved.tie.id().clone());
        self.stock.take_in(stock?);
        let ties = self.stock.ties.len();
        let outcome = outcome?;
        let wanted = match &outcome {
            JobOutcome::Again(id) | JobOutcome::Undone(Some(id)) => Some(id.clone()),
            _ => here,
        };
        let found = wanted.and_then(|id| {
            let mut ties = self.stock.ties.iter();
            ties.position(|shelved| *shelved.tie.id() == id)
        });
        self.focus = found.unwrap_or(self.focus).min(ties.saturating_sub(1));
        let plainly = |id| words.notice(id, &[]);
        let report = match &outcome {
            JobOutcome::Looked => {
                self.report = None;
                return Ok(words.say_shelf(ties).then(&self.say_here(words)));
            }
            JobOutcome::Named => plainly("shelf-has-name"),
            JobOutcome::Noted => plainly("shelf-has-note"),
            JobOutcome::Again(_) => plainly("shelf-begun-again"),
            JobOutcome::PutAway(true) => plainly("shelf-is-away"),
            JobOutcome::PutAway(false) => plainly("shelf-is-out"),
            JobOutcome::Deleted => plainly("shelf-is-deleted"),
            JobOutcome::Undone(Some(_)) => plainly("shelf-is-back"),
            JobOutcome::Undone(None) => plainly("shelf-nothing-deleted"),
            JobOutcome::BackedUp(file, backup) => words.backed_up(file, backup),
            JobOutcome::BroughtIn(file, restored, settings_came) => {
                words.brought_in(file, restored, *settings_came)
            }
        };
        self.report = Some(report.clone());
        Ok(Spoken::from(report).then(&self.say_here(words)))
    }

    fn here(&self) -> Option<&Shelved> {
        self.stock.ties.get(self.focus)
    }

    /// What is said of the tie in the focus.
    fn say_here(&self, words: &Words) -> Spoken {
        let here = self.here();
        let said =
            here.map(|shelved| words.say_tie(shelved, self.focus + 1, self.stock.ties.len()));
        said.unwrap_or_default()
    }
}
