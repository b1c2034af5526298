//! What is typed on the plan screen, what fits, and what presses come to.

use super::fields::{FIELDS, place_of};
use super::filters::{Filters, PlanFilter};
use super::findings::{Findings, FitOutcome};
use super::pictures::{Pictures, in_reach};
use crate::bench::{FitAnswer, Prices};
use crate::guide::{FitQuestion, Plan, Presets, SetupError, SetupField, SetupForm};
use crate::knot::{Hand, Knot, Side};
use crate::pedal::{Intent, Press};
use crate::session::Session;
use crate::shelf::{ShelfError, ShelfReading};
use crate::words::{Remark, Sentence, Spoken, Words};

/// What is typed, and what fits.
pub struct State {
    pub(super) form: SetupForm,
    /// The object is told by its girth.
    pub(super) is_girth: bool,
    pub(super) focus: SetupField,
    pub(super) presets: Presets,
    pub(super) presets_trouble: Option<ShelfError>,
    pub(super) hand: Hand,
    pub(super) side: Side,
    pub(super) prices: Prices,
    pub(super) filters: Filters,
    pub(super) found: Findings,
    /// Which question is out; an answer to an older one is dropped.
    pub(super) asked: u64,
    /// Which question the knots in sight answer.
    pub(super) answered: u64,
    /// The best knot is to be taken as soon as it is found.
    pub(super) takes_best: bool,
    pub(super) chosen: usize,
    pub(super) complaint: Option<Sentence>,
    /// Shows the knots.
    pub(super) pictures: Pictures,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(SetupField, String),
    /// A field was clicked or touched.
    Pointed(SetupField),
    /// A choice beside a field was taken, by its number.
    Picked(SetupField, usize),
    /// The knots for a question are found.
    Found(u64, ShelfReading<FitOutcome>),
    /// The kept tubes and cords are read.
    Presets(Result<ShelfReading<Presets>, ShelfError>),
    /// A knot was pointed at.
    Choose(usize),
    /// The chosen knot is to be tied.
    Take,
    /// A filter is to be set to its next choice.
    Filter(PlanFilter),
}

/// What a press or a message comes to.
#[derive(Clone, Debug)]
pub(super) enum Action {
    /// Nothing.
    None,
    /// Put the focus of the window on this field, and say what it is.
    Focus(SetupField, Spoken),
    /// Look for the knots that answer this question, having said this.
    Find(u64, Box<FitQuestion>, Spoken),
    /// Say this.
    Say(Spoken),
    /// Show the list of knots from its top, where the chosen one is, and say this.
    Chosen(Spoken),
    /// Begin a tie.
    Begin(Box<Plan>),
    /// Make something of it to be taken along.
    OnPaper(Box<Plan>),
    /// Back to the start screen.
    Leave,
}

impl Default for State {
    fn default() -> Self {
        Self {
            form: SetupForm::default(),
            is_girth: false,
            focus: SetupField::Object,
            presets: Presets::default(),
            presets_trouble: None,
            hand: Hand::default(),
            side: Side::default(),
            prices: Prices::default(),
            filters: Filters::default(),
            found: Findings::Wanting(SetupField::Object),
            asked: 0,
            answered: 0,
            takes_best: false,
            chosen: 0,
            complaint: None,
            pictures: Pictures::default(),
        }
    }
}

impl State {
    /// Shows the knot that is chosen by now and those around it, or none, on a screen with so many dots for each
    /// pixel of the layout.
    pub(super) fn show_knot(&mut self, dots: f32) {
        let answers = match &self.found {
            Findings::Knots(_, answers) => answers.as_slice(),
            _ => &[],
        };
        let in_list = in_reach(self.chosen, answers.len());
        let hands = (self.hand, self.side);
        self.pictures
            .show(answers, self.chosen, in_list, hands, dots);
    }

    /// What is said when the screen appears: what no knot may be trusted with, before one is chosen.
    pub(super) fn say(&self, words: &Words) -> Spoken {
        let screen = words.remark(Remark::PlanSay);
        let screen = screen.then(words.choice_caution().spoken());
        // Come back to, it says what was chosen.
        match &self.found {
            Findings::Knots(question, answers) => {
                screen.then(&self.say_chosen(question, answers, words))
            }
            _ => screen,
        }
    }

    /// What the chosen knot comes to, and what to take care of with it; nothing while there is none.
    fn say_chosen(&self, question: &FitQuestion, answers: &[FitAnswer], words: &Words) -> Spoken {
        let Some(answer) = answers.get(self.chosen) else {
            return Spoken::default();
        };
        let said = words.say_answer(self.chosen + 1, answers.len(), answer, self.prices);
        let cautions = question.cautions(answer);
        cautions.iter().fold(said, |said, caution| {
            said.then(words.caution(caution).spoken())
        })
    }

    /// What a message from the form or the list comes to.
    pub(super) fn told(&mut self, message: Message, session: &mut Session) -> Action {
        match message {
            Message::Typed(field, text) => {
                self.focus = field;
                self.form.say(self.said_as(field), text);
                self.look()
            }
            Message::Pointed(field) if field == self.focus => Action::None,
            Message::Pointed(field) => {
                self.focus = field;
                Action::Focus(field, self.say_field(session.words()))
            }
            Message::Picked(field, index) => self.pick(field, index),
            Message::Found(asked, found) => {
                let outcome = found.hand_on(session);
                if asked != self.asked {
                    return Action::None;
                }
                self.answered = asked;
                self.chosen = 0;
                self.found = if outcome.answers.is_empty() {
                    Findings::Nothing(outcome.misfits)
                } else {
                    Findings::Knots(outcome.question, outcome.answers)
                };
                if self.takes_best {
                    self.take(session.words())
                } else {
                    Action::Chosen(Spoken::default())
                }
            }
            Message::Presets(read) => {
                match read {
                    Ok(read) => {
                        (self.presets, self.presets_trouble) = (read.hand_on(session), None);
                    }
                    Err(error) => {
                        ::log::warn!("{error}");
                        self.presets_trouble = Some(error);
                    }
                }
                self.look()
            }
            Message::Choose(index) => self.choose(index, session.words()),
            Message::Take => self.take(session.words()),
            Message::Filter(filter) => self.filter(filter, session.words()),
        }
    }

    /// What a press comes to that no field took.
    pub(super) fn pressed(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        words: &Words,
    ) -> Action {
        match press.key.as_str() {
            "ArrowDown" => return self.choose(self.chosen.saturating_add(1), words),
            "ArrowUp" => return self.choose(self.chosen.saturating_sub(1), words),
            _ if press.is_repeat => return Action::None,
            _ => {}
        }
        match press.key.as_str() {
            "Tab" => self.move_focus(1, words),
            "Shift+Tab" => self.move_focus(FIELDS.len() - 1, words),
            "PageDown" => self.pick_next(true),
            "PageUp" => self.pick_next(false),
            "Enter" => self.take(words),
            "F9" => self.on_paper(words),
            "Backspace" => self.type_on(None),
            _ if intent == Some(Intent::Leave) => Action::Leave,
            key => {
                if let Some(filter) = PlanFilter::of_key(key) {
                    return self.filter(filter, words);
                }
                let mut letters = key.chars();
                match (letters.next(), letters.next()) {
                    (Some(letter), None) if !letter.is_control() => self.type_on(Some(letter)),
                    _ => Action::None,
                }
            }
        }
    }

    /// Sets a filter to its next choice, says it, and looks for the knots anew.
    fn filter(&mut self, filter: PlanFilter, words: &Words) -> Action {
        self.filters.change(filter);
        let said = words.say_filter(filter.name(), self.filters.choice(filter));
        match self.look() {
            Action::Find(asked, question, _) => Action::Find(asked, question, said),
            _ => Action::Say(said),
        }
    }

    /// Types a letter into the field in turn, or takes one back. It comes here when the window has
    /// not yet put its own focus there, and must not be lost.
    fn type_on(&mut self, letter: Option<char>) -> Action {
        let field = self.said_as(self.focus);
        let mut text = self.form.text(field).to_owned();
        match letter {
            Some(letter) => text.push(letter),
            None => {
                text.pop();
            }
        }
        self.form.say(field, text);
        self.look()
    }

    /// Takes stock of the form after a change.
    pub(super) fn look(&mut self) -> Action {
        self.complaint = None;
        // Whatever is still being looked for is out of date.
        self.asked += 1;
        self.takes_best = false;
        match self.form.question(&self.presets) {
            Ok(question) => {
                let question = Box::new(self.filters.narrow(question));
                // What was found before stays in sight until the answer comes.
                if !matches!(self.found, Findings::Knots(..)) {
                    self.found = Findings::Knots(question.clone(), Vec::new());
                }
                Action::Find(self.asked, question, Spoken::default())
            }
            Err(SetupError::Missing(asking)) => {
                self.found = Findings::Wanting(asking);
                Action::None
            }
            Err(error) => {
                self.found = Findings::Wrong(error);
                Action::None
            }
        }
    }

    /// What a field of the screen says: the object, its diameter or its girth.
    pub(super) const fn said_as(&self, field: SetupField) -> SetupField {
        match field {
            SetupField::Object if self.is_girth => SetupField::Girth,
            field => field,
        }
    }

    fn move_focus(&mut self, by: usize, words: &Words) -> Action {
        let wrong = self.wrong_in(self.focus, words);
        let here = FIELDS.iter().position(|field| *field == self.focus);
        self.focus = FIELDS[(here.unwrap_or(0) + by) % FIELDS.len()];
        let here = self.say_field(words);
        // What is wrong in the field just left is heard first.
        let wrong = wrong.map(Spoken::from).unwrap_or_default();
        Action::Focus(self.focus, wrong.then(&here))
    }

    fn say_field(&self, words: &Words) -> Spoken {
        let field = self.said_as(self.focus);
        words.say_field(field, self.form.said(field))
    }

    /// What is wrong with the text of this field, if it is what keeps knots from being found.
    pub(super) fn wrong_in(&self, field: SetupField, words: &Words) -> Option<Sentence> {
        match &self.found {
            Findings::Wrong(error) if place_of(error) == field => Some(words.setup_error(error)),
            _ => None,
        }
    }

    fn choose(&mut self, index: usize, words: &Words) -> Action {
        let Findings::Knots(question, answers) = &self.found else {
            return Action::Say(self.sentence(words).into());
        };
        if answers.is_empty() {
            return Action::None;
        }
        self.chosen = index.min(answers.len() - 1);
        self.complaint = None;
        Action::Chosen(self.say_chosen(question, answers, words))
    }

    /// What stands in the place of knots.
    pub(super) fn sentence(&self, words: &Words) -> Sentence {
        match &self.found {
            Findings::Wanting(asking) => words.wanting(*asking),
            Findings::Wrong(error) => words.setup_error(error),
            Findings::Nothing(misfits) => words.misfits(misfits),
            Findings::Knots(..) => Sentence::default(),
        }
    }

    fn take(&mut self, words: &Words) -> Action {
        let Findings::Knots(question, answers) = &self.found else {
            return Action::Say(self.sentence(words).into());
        };
        // What is in sight may answer what was typed before.
        if self.answered != self.asked {
            self.takes_best = true;
            return Action::None;
        }
        let Some(answer) = answers.get(self.chosen) else {
            return Action::None;
        };
        match self.plan(question, answer, words) {
            Ok(plan) => Action::Begin(Box::new(plan)),
            Err(sentence) => {
                self.complaint = Some(sentence.clone());
                Action::Say(sentence.into())
            }
        }
    }

    /// Has paper made of the chosen knot, once it is found.
    fn on_paper(&mut self, words: &Words) -> Action {
        let taken = self.take(words);
        self.takes_best = false;
        match taken {
            Action::Begin(plan) => Action::OnPaper(plan),
            other => other,
        }
    }

    fn plan(
        &self,
        question: &FitQuestion,
        answer: &FitAnswer,
        words: &Words,
    ) -> Result<Plan, Sentence> {
        let counts = answer.counts;
        let plan = Knot::woven(counts.lattice(), answer.weave())
            .and_then(|knot| Plan::new(knot, counts.passes(), self.side, self.hand))
            .map_err(|error| words.knot_error(&error))?
            .with_setup(question.setup(answer));
        match plan.rig() {
            Ok(_) => Ok(plan),
            Err(error) => Err(words.rig_error(error)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::session::Wishes;
    use crate::settings::Settings;

    fn session() -> Session {
        Session::new(Words::english(), Settings::default(), Wishes::default())
    }

    /// Types a field and gives back the question that the form then asks.
    fn type_in(plan: &mut State, field: SetupField, text: &str) -> Option<(u64, Box<FitQuestion>)> {
        match plan.told(Message::Typed(field, text.to_owned()), &mut session()) {
            Action::Find(asked, question, _) => Some((asked, question)),
            _ => None,
        }
    }

    fn found(asked: u64, outcome: FitOutcome) -> Message {
        Message::Found(asked, ShelfReading::whole(outcome))
    }

    #[test]
    fn an_answer_to_what_was_typed_before_is_dropped() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "30");
        type_in(&mut plan, SetupField::Cover, "30");
        let (early, question) = type_in(&mut plan, SetupField::Cord, "4").unwrap();
        let slow = FitOutcome::of(question);
        let (late, question) = type_in(&mut plan, SetupField::Cord, "40").unwrap();
        let quick = FitOutcome::of(question);
        plan.told(found(late, quick), &mut session);
        plan.told(found(early, slow), &mut session);
        assert!(matches!(plan.found, Findings::Nothing(_)));
        assert!(matches!(
            plan.told(Message::Take, &mut session),
            Action::Say(_)
        ));
    }

    #[test]
    fn enter_before_the_answer_takes_its_best_knot() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "30");
        type_in(&mut plan, SetupField::Cover, "30");
        let (first, question) = type_in(&mut plan, SetupField::Cord, "4").unwrap();
        plan.told(found(first, FitOutcome::of(question)), &mut session);
        let (second, question) = type_in(&mut plan, SetupField::Cord, "4.5").unwrap();
        let outcome = FitOutcome::of(question);
        let best = outcome.answers[0].counts;
        // Not the one of the thinner cord, which is still in sight.
        let early = plan.told(Message::Take, &mut session);
        assert!(matches!(early, Action::None));
        let Action::Begin(begun) = plan.told(found(second, outcome), &mut session) else {
            panic!("nothing was taken");
        };
        assert_eq!(crate::bench::Counts::from(begun.laying()), best);
    }
}
