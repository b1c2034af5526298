//! What is typed on the plan screen, and what fits.

use super::covering::{Covered, Covering};
use super::fields::{PlanField, place_of};
use super::filters::{Filters, PlanFilter};
use super::findings::{Asked, Findings, FitOutcome, InMind, KnownFindings};
use super::grid::Grid;
use super::pictures::Pictures;
use crate::app::widgets::leaves::LeafPlaces;
use crate::bench::{Millimetres, Prices};
use crate::guide::{
    FitQuestion, GroundError, KnownKnot, Plan, Presets, SetupError, SetupField, SetupForm,
};
use crate::knot::{Hand, Side};
use crate::session::Session;
use crate::shelf::{ShelfError, ShelfReading};
use crate::words::{Remark, Sentence, Spoken, Words};

/// What is typed, and what fits.
pub struct State {
    pub(super) form: SetupForm,
    /// The answer to the first question.
    pub(super) covering: Covering,
    /// The object is told by its girth.
    pub(super) is_girth: bool,
    /// The knot that the tyer has in mind, as typed.
    pub(super) knot: String,
    pub(super) focus: PlanField,
    pub(super) presets: Presets,
    pub(super) presets_trouble: Option<ShelfError>,
    pub(super) hand: Hand,
    pub(super) side: Side,
    pub(super) prices: Prices,
    pub(super) filters: Filters,
    /// The knot that was counted, while no other is looked at.
    pub(super) only: Option<Box<Plan>>,
    pub(super) found: Findings,
    /// What comes of the knot in mind.
    pub(super) known: KnownFindings,
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
    /// Where the fields stand.
    pub(super) form_places: LeafPlaces,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(PlanField, String),
    /// A field was clicked or touched.
    Pointed(PlanField),
    /// This is covered.
    Covers(Covered),
    /// It is tied in place, or slid on.
    Slides(bool),
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
    /// The filters are to be shown in the place of the knots, or no longer.
    ShowFilters,
}

/// What a press or a message comes to.
#[derive(Clone, Debug)]
pub(super) enum Action {
    /// Nothing.
    None,
    /// Put the focus of the window on this field, and say what it is.
    Focus(PlanField, Spoken),
    /// Put the focus of the window on this field, which was filled in with what was picked, so that
    /// what is typed takes its place; and do this.
    Filled(PlanField, Box<Action>),
    /// Put the focus of the window behind what was typed into this field, and do this.
    TypeOn(PlanField, Box<Action>),
    /// Look for the knots that answer this, having said this.
    Find(u64, Asked, Spoken),
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
            covering: Covering::default(),
            is_girth: false,
            knot: String::new(),
            focus: PlanField::Covers,
            presets: Presets::default(),
            presets_trouble: None,
            hand: Hand::default(),
            side: Side::default(),
            prices: Prices::default(),
            filters: Filters::default(),
            only: None,
            found: Findings::Wanting(SetupField::Object),
            known: KnownFindings::default(),
            asked: 0,
            answered: 0,
            takes_best: false,
            tells_found: false,
            chosen: 0,
            complaint: None,
            pictures: Pictures::default(),
            grid: Grid::default(),
            form_places: LeafPlaces::default(),
        }
    }
}

/// A length to cover that stands in the question where none is said. Nothing that is told goes by it.
const ANY_LENGTH: &str = "30 mm";

impl State {
    /// What is said when the screen appears: what no knot may be trusted with, before one is chosen.
    pub(super) fn say(&self, words: &Words) -> Spoken {
        let screen = if self.form.is_empty() {
            words.remark(Remark::PlanSay)
        } else {
            let again = words.remark(Remark::PlanAgainSay);
            again.then(&self.say_field(words))
        };
        let screen = screen.then(words.choice_caution().spoken());
        let screen = match &self.only {
            Some(only) => screen.then(words.only_knot(only, self.form.is_empty()).spoken()),
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
                self.type_into(field, text);
                self.look()
            }
            Message::Pointed(field) if field == self.focus => Action::None,
            Message::Pointed(field) => {
                self.focus = field;
                Action::Focus(field, self.say_field(session.words()))
            }
            Message::Covers(covered) => self.cover_this(covered, session.words()),
            Message::Slides(in_place) => self.tie_in_place(in_place, session.words()),
            Message::Picked(field, index) => self.pick(field, index, session.words()),
            Message::Found(asked, found) => {
                let outcome = found.hand_on(session);
                if asked != self.asked {
                    return Action::None;
                }
                self.answered = asked;
                self.chosen = 0;
                self.known = outcome.known;
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
            Message::ShowFilters => {
                self.filters.are_shown = !self.filters.are_shown;
                Action::None
            }
        }
    }

    /// Takes stock of the form after a change.
    pub(super) fn look(&mut self) -> Action {
        self.complaint = None;
        // Whatever is still being looked for is out of date.
        self.asked += 1;
        self.takes_best = false;
        self.tells_found = false;
        let in_mind = self.in_mind();
        match self.question(in_mind) {
            Ok((question, any_width)) => {
                let question = self.filters.narrow(question);
                let question = Box::new(match &self.only {
                    Some(only) => question.about(only),
                    None => question,
                });
                // What was found before stays in sight until the answer comes.
                if !matches!(self.found, Findings::Knots(..)) {
                    self.found = Findings::Knots(question.clone(), Vec::new());
                }
                let in_mind = in_mind.map(|knot| InMind { knot, any_width });
                let asked = Asked { question, in_mind };
                Action::Find(self.asked, asked, Spoken::default())
            }
            Err(error) => {
                self.known = KnownFindings::default();
                self.found = match error {
                    SetupError::Missing(asking) => Findings::Wanting(asking),
                    SetupError::Ground(GroundError::TaperWithoutCover) => {
                        Findings::Wanting(SetupField::Cover)
                    }
                    error => Findings::Wrong(error),
                };
                Action::None
            }
        }
    }

    /// The knot that the tyer has in mind, where two numbers are typed for it.
    pub(super) fn in_mind(&self) -> Option<KnownKnot> {
        KnownKnot::parse(&self.knot).filter(|_| self.only.is_none())
    }

    /// What the form asks, and whether it leaves the length to cover open: with a knot in mind that may
    /// be, and the question is of that knot drawn tight.
    fn question(&self, in_mind: Option<KnownKnot>) -> Result<(FitQuestion, bool), SetupError> {
        if self.wants_an_end() {
            return Err(SetupError::Missing(SetupField::Object));
        }
        let said = self.said();
        match (said.question(&self.presets), in_mind) {
            (Err(SetupError::Missing(SetupField::Cover)), Some(_)) => {
                let mut form = said;
                form.say(SetupField::Cover, ANY_LENGTH);
                Ok((form.question(&self.presets)?, true))
            }
            (asked, _) => Ok((asked?, false)),
        }
    }

    /// Takes in what is typed into a field.
    pub(super) fn type_into(&mut self, field: PlanField, text: String) {
        match field {
            PlanField::Setup(field) => self.form.say(self.said_as(field), text),
            // Who names another has that one in mind.
            PlanField::Knot => (self.knot, self.only) = (text, None),
            PlanField::Covers | PlanField::Slides => {}
        }
    }

    /// What stands in a field.
    pub(super) fn typed(&self, field: PlanField) -> &str {
        match field {
            PlanField::Setup(field) => self.form.text(self.said_as(field)),
            PlanField::Knot => &self.knot,
            PlanField::Covers | PlanField::Slides => "",
        }
    }

    /// What a field of the screen says: the object, its diameter or its girth, or another ground.
    pub(super) const fn said_as(&self, field: SetupField) -> SetupField {
        match field {
            SetupField::Object if matches!(self.covering.covered, Covered::Ball) => {
                SetupField::Ball
            }
            SetupField::Object if matches!(self.covering.covered, Covered::Mat) => SetupField::Mat,
            SetupField::Object if matches!(self.covering.covered, Covered::Taper) => {
                SetupField::Object
            }
            SetupField::Object if self.is_girth => SetupField::Girth,
            field => field,
        }
    }

    pub(super) fn say_field(&self, words: &Words) -> Spoken {
        match self.focus {
            PlanField::Setup(field) => {
                let field = self.said_as(field);
                if (self.covering.covered, field) == (Covered::Taper, SetupField::Object) {
                    let ends = self.form.said(field).unwrap_or("none");
                    return words.notice("plan-taper-told", &[("ends", ends)]).into();
                }
                words.say_field(field, self.form.said(field))
            }
            PlanField::Knot => words.say_knot_field(&self.knot).into(),
            field => self.say_covering(field, words),
        }
    }

    /// The length to cover, as it was asked.
    pub(super) fn cover(&self) -> Option<Millimetres> {
        self.said().length(SetupField::Cover).ok().flatten()
    }

    /// What is wrong with the text of this field, if it is what keeps knots from being found.
    pub(super) fn wrong_in(&self, field: PlanField, words: &Words) -> Option<Sentence> {
        let field = match field {
            PlanField::Setup(field) => field,
            PlanField::Knot => {
                let is_read = KnownKnot::parse(&self.knot).is_some();
                let is_wrong = !self.knot.trim().is_empty() && !is_read;
                return is_wrong.then(|| words.unread_knot(&self.knot));
            }
            PlanField::Covers | PlanField::Slides => return None,
        };
        match &self.found {
            Findings::Wrong(error) if place_of(error) == field => Some(words.setup_error(error)),
            _ => None,
        }
    }

    /// What stands in the place of knots.
    pub(super) fn sentence(&self, words: &Words) -> Sentence {
        match &self.found {
            Findings::Wanting(SetupField::Object) => self.wanting_measure(words),
            Findings::Wanting(asking) => words.wanting(*asking),
            Findings::Wrong(error) => words.setup_error(error),
            Findings::Nothing(misfits) => words.misfits(misfits),
            Findings::Knots(..) => Sentence::default(),
        }
    }
}
