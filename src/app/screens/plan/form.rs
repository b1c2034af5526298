//! What is typed on the plan screen, and what fits.

use super::fields::place_of;
use super::filters::{Filters, PlanFilter};
use super::findings::{Findings, FitOutcome};
use super::grid::Grid;
use super::pictures::Pictures;
use crate::bench::Prices;
use crate::guide::{FitQuestion, Plan, Presets, SetupError, SetupField, SetupForm};
use crate::knot::{Hand, Side};
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
    /// The knot that was counted, while no other is looked at.
    pub(super) only: Option<Box<Plan>>,
    pub(super) found: Findings,
    /// Which question is out; an answer to an older one is dropped.
    pub(super) asked: u64,
    /// Which question the knots in sight answer.
    pub(super) answered: u64,
    /// The best knot is to be taken as soon as it is found.
    pub(super) takes_best: bool,
    /// What is found is to be told, since typing rested before.
    pub(super) tells_found: bool,
    pub(super) chosen: usize,
    pub(super) complaint: Option<Sentence>,
    /// Shows the knots.
    pub(super) pictures: Pictures,
    /// Where the cards stand, and which of them are in sight.
    pub(super) grid: Grid,
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
    /// The cards were scrolled to so many pixels below the first.
    Scrolled(f32),
    /// A knot was pointed at.
    Choose(usize),
    /// The chosen knot is to be tied.
    Take,
    /// A filter is to be set to its next choice.
    Filter(PlanFilter),
    /// Other knots than the one that was counted are to be looked at too.
    AnyKnot,
}

/// What a press or a message comes to.
#[derive(Clone, Debug)]
pub(super) enum Action {
    /// Nothing.
    None,
    /// Put the focus of the window on this field, and say what it is.
    Focus(SetupField, Spoken),
    /// Put the focus of the window on this field, which was filled in with what was picked, so that
    /// what is typed takes its place; and do this.
    Filled(SetupField, Box<Action>),
    /// Look for the knots that answer this question, having said this.
    Find(u64, Box<FitQuestion>, Spoken),
    /// Say this.
    Say(Spoken),
    /// Bring the card of the chosen knot into sight, and say this.
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
            only: None,
            found: Findings::Wanting(SetupField::Object),
            asked: 0,
            answered: 0,
            takes_best: false,
            tells_found: false,
            chosen: 0,
            complaint: None,
            pictures: Pictures::default(),
            grid: Grid::default(),
        }
    }
}

impl State {
    /// What is said when the screen appears: what no knot may be trusted with, before one is chosen.
    pub(super) fn say(&self, words: &Words) -> Spoken {
        let screen = words.remark(Remark::PlanSay);
        let screen = screen.then(words.choice_caution().spoken());
        let screen = match &self.only {
            Some(only) => screen.then(words.only_knot(only).spoken()),
            None => screen,
        };
        // Come back to, it says what was chosen.
        match &self.found {
            Findings::Knots(question, answers) => {
                screen.then(&self.say_chosen(question, answers, words))
            }
            _ => screen,
        }
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
            Message::Picked(field, index) => self.pick(field, index, session.words()),
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
                } else if std::mem::take(&mut self.tells_found) {
                    Action::Chosen(self.say_found(session.words()))
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
            Message::Scrolled(offset) => {
                self.grid.offset = offset;
                Action::None
            }
            Message::Choose(index) => self.choose(index, session.words()),
            Message::Take => self.take(session.words()),
            Message::Filter(filter) => self.filter(filter, session.words()),
            Message::AnyKnot => self.any_knot(session.words()),
        }
    }

    /// Takes stock of the form after a change.
    pub(super) fn look(&mut self) -> Action {
        self.complaint = None;
        // Whatever is still being looked for is out of date.
        self.asked += 1;
        self.takes_best = false;
        self.tells_found = false;
        match self.form.question(&self.presets) {
            Ok(question) => {
                let question = self.filters.narrow(question);
                let question = Box::new(match &self.only {
                    Some(only) => question.about(only),
                    None => question,
                });
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

    pub(super) fn say_field(&self, words: &Words) -> Spoken {
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

    /// What stands in the place of knots.
    pub(super) fn sentence(&self, words: &Words) -> Sentence {
        match &self.found {
            Findings::Wanting(asking) => words.wanting(*asking),
            Findings::Wrong(error) => words.setup_error(error),
            Findings::Nothing(misfits) => words.misfits(misfits),
            Findings::Knots(..) => Sentence::default(),
        }
    }
}
