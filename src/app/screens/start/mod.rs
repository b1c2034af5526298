//! The start screen: a form that names a knot, and the ties that wait to be taken up again.

mod fields;
mod view;

use iced::widget::operation;
use iced::{Element, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::services::LAST_SAVE;
use crate::guide::{AtOnce, Plan, Script};
use crate::knot::{Hand, KnotError, Rim, Side};
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::session::{inventory, new_tie};
use crate::shelf::{self, ShelfError, ShelfReading, Shelved, TieId};
use crate::words::{Spoken, Words};
pub use fields::StartField;
use fields::{FIELDS, id, text_slot};

/// What is typed and what waits.
pub struct State {
    texts: [String; 6],
    hand: Hand,
    side: Side,
    focus: Option<StartField>,
    waiting: Vec<Shelved>,
    /// Whether the shelf was looked through: until then a press could mean another tie than
    /// the one that will be offered.
    is_ready: bool,
    picture: Box<PictureView>,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(StartField, String),
    /// A choice of the form was switched over.
    Switched(StartField),
    /// The form's tie is to be begun.
    Begin,
    /// A knot is to be found for an object.
    Plan,
    /// A first knot is to be learnt.
    Course,
    /// The tie at this place of the list is to be taken up.
    TakeUp(usize),
    /// The shelf was looked through.
    Looked(Result<ShelfReading<Vec<Shelved>>, ShelfError>),
}

/// What a press or a message comes to.
#[derive(Clone, Debug)]
enum Action {
    /// Nothing.
    None,
    /// Put the focus of the window on this field, or on none, and say it.
    Focus(Option<StartField>),
    /// Say what has the focus: its value changed.
    Say,
    /// Begin a tie.
    Begin(Box<Plan>),
    /// Take a tie up again.
    TakeUp(TieId),
    /// Go to the shelf.
    Shelf,
    /// Go to the course for beginners.
    Course,
    /// Go to the words of the trade.
    Glossary,
    /// Go to the settings.
    Settings,
    /// Go to the plan screen, for a tyer of this hand who follows on this side.
    Plan(Hand, Side),
    /// Say what is wrong with the form.
    Complain(Spoken),
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    /// The screen before the shelf is looked through; it says itself after that.
    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let state = Self {
            is_ready: false,
            ..Self::new(Vec::new())
        };
        let (shelf, keeper) = (
            context.services.shelf.clone(),
            context.services.keeper.clone(),
        );
        let look = match shelf {
            Some(shelf) => off_thread(move || {
                // What was asked to be saved a moment ago belongs into the list.
                if let Some(keeper) = &keeper {
                    keeper.flush(LAST_SAVE);
                }
                Message::Looked(inventory(&shelf, keeper.as_deref(), shelf::now()))
            }),
            None => Task::done(Message::Looked(Ok(ShelfReading::whole(Vec::new())))),
        };
        (state, look)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        if let Message::Looked(found) = message {
            match found {
                Ok(found) => {
                    *self = Self::new(context.session.looked_through(found));
                }
                Err(error) => {
                    // A press begins what the form names.
                    self.is_ready = true;
                    context.session.refuse(&error);
                }
            }
            context.say_after_notices(&self.say(context.words()));
            return Next::default();
        }
        let action = self.told(message, context.words());
        self.follow(action, context)
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
        self.focus.is_some()
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.say_focus(context.words())
    }

    fn redraw(&mut self, context: &Context) {
        self.picture.set_dots(context.dots());
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        self.page(context.words(), context.session.notices())
    }
}

impl State {
    fn follow(&mut self, action: Action, context: &mut Context) -> Next<Message> {
        match action {
            Action::None => Next::default(),
            Action::Complain(sentence) => {
                context.say(&sentence);
                Next::default()
            }
            Action::Say => {
                context.say(&self.say_focus(context.words()));
                Next::default()
            }
            // Focusing a field that takes no text leaves every text field unfocused.
            Action::Focus(field) => {
                context.say(&self.say_focus(context.words()));
                Next::run(match field {
                    Some(field) => Task::batch([
                        operation::focus(id(field)),
                        operation::select_all(id(field)),
                    ]),
                    None => operation::focus(id(StartField::Begin)),
                })
            }
            Action::Begin(plan) => Go::Begin(Box::new(new_tie(&plan))).into(),
            Action::TakeUp(id) => Go::TakeUp(id).into(),
            Action::Shelf => Go::To(Route::Shelf(())).into(),
            Action::Course => Go::To(Route::Course(())).into(),
            Action::Glossary => Go::To(Route::Glossary(())).into(),
            Action::Settings => Go::settings().into(),
            Action::Plan(hand, side) => Go::To(Route::Plan((hand, side))).into(),
        }
    }

    /// The screen with these ties waiting, newest first.
    fn new(waiting: Vec<Shelved>) -> Self {
        let mut state = Self {
            // No weave: over one, under one, begun so that it takes the fewest tucks.
            texts: ["5", "7", "1", "", "", ""].map(str::to_owned),
            hand: Hand::default(),
            side: Side::default(),
            focus: None,
            waiting,
            is_ready: true,
            picture: Box::new(PictureView::default()),
        };
        state.show_knot();
        state
    }

    /// Shows the tie that a press takes up, as it lies now; or the knot that the form names, and
    /// nothing while it names none.
    fn show_knot(&mut self) {
        let subject = match self.waiting.first() {
            Some(waiting) if self.focus.is_none() => as_it_lies(waiting),
            _ => self.plan().ok().map(|plan| Subject::finished(&plan)),
        };
        self.picture.show(subject);
    }

    /// What is said when the screen appears.
    fn say(&self, words: &Words) -> Spoken {
        match (self.waiting.first(), self.plan()) {
            (Some(first), _) => words.say_opening(&first.tie.plan, Some(first.progress)),
            (None, Ok(plan)) => words.say_opening(&plan, None),
            (None, Err(error)) => words.knot_error(&error).into(),
        }
    }

    /// The part of the form that has the focus, as it is said: name, value, what can be
    /// pressed. What the knot comes to is said on the way to beginning it.
    fn say_focus(&self, words: &Words) -> Spoken {
        let Some(field) = self.focus else {
            return self.say(words);
        };
        let typed = text_slot(field).map_or("", |slot| self.texts[slot].as_str());
        let choice = match field {
            StartField::Hand if self.hand == Hand::Left => "left",
            StartField::Hand => "right",
            _ if self.side.turns_inside(Rim::Top, self.hand) => "bottom",
            _ => "top",
        };
        let said = words.say_form_field(field.name(), typed, choice);
        match (field, self.plan()) {
            (StartField::Begin, Ok(plan)) => {
                let facts = words.facts(&Script::new(plan, AtOnce::default()));
                said.then(facts.spoken())
                    .then(words.choice_caution().spoken())
            }
            (StartField::Begin, Err(error)) => said.then(words.knot_error(&error).spoken()),
            _ => said,
        }
    }

    /// What a message from the form or the list comes to.
    fn told(&mut self, message: Message, words: &Words) -> Action {
        match message {
            Message::Typed(field, text) => {
                self.focus = Some(field);
                if let Some(slot) = text_slot(field) {
                    self.texts[slot] = text;
                }
                self.show_knot();
                Action::Say
            }
            Message::Switched(field) => {
                self.focus = Some(field);
                self.switch(field);
                Action::Say
            }
            Message::Begin => self.begin(words),
            Message::Plan => Action::Plan(self.hand, self.side),
            Message::Course => Action::Course,
            Message::TakeUp(index) => match self.waiting.get(index) {
                Some(waiting) => Action::TakeUp(waiting.tie.id().clone()),
                None => Action::None,
            },
            Message::Looked(_) => Action::None,
        }
    }

    /// What a press comes to that no field of the form took.
    fn pressed(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        match press.key.as_str() {
            "Tab" => self.move_focus(1),
            "Shift+Tab" => self.move_focus(FIELDS.len() - 1),
            " " | "ArrowLeft" | "ArrowRight"
                if matches!(self.focus, Some(StartField::Hand | StartField::Side)) =>
            {
                self.focus.into_iter().for_each(|field| self.switch(field));
                Action::Say
            }
            key => match (intent, self.focus) {
                (Some(Intent::Leave), Some(_)) => {
                    self.focus = None;
                    self.show_knot();
                    Action::Focus(None)
                }
                (Some(Intent::Next), Some(_)) => self.begin(words),
                (Some(Intent::Next), None) if !self.is_ready => Action::None,
                (Some(Intent::Next), None) if self.waiting.is_empty() => self.begin(words),
                (Some(Intent::Next), None) => self.told(Message::TakeUp(0), words),
                (_, None) if key.eq_ignore_ascii_case("p") => self.told(Message::Plan, words),
                (_, None) if key.eq_ignore_ascii_case("s") => Action::Shelf,
                (_, None) if key.eq_ignore_ascii_case("c") => Action::Course,
                (_, None) if key.eq_ignore_ascii_case("g") => Action::Glossary,
                (_, None) if key.eq_ignore_ascii_case("t") => Action::Settings,
                (_, None) => match key.parse() {
                    Ok(digit @ 1..=9_usize) => self.told(Message::TakeUp(digit - 1), words),
                    _ => Action::None,
                },
                _ => Action::None,
            },
        }
    }

    fn move_focus(&mut self, by: usize) -> Action {
        let here = FIELDS.iter().position(|field| Some(*field) == self.focus);
        let next = match here {
            Some(here) => (here + by) % FIELDS.len(),
            None if by == 1 => 0,
            None => FIELDS.len() - 1,
        };
        self.focus = Some(FIELDS[next]);
        self.show_knot();
        Action::Focus(self.focus)
    }

    fn switch(&mut self, field: StartField) {
        match field {
            StartField::Hand => {
                self.hand = match self.hand {
                    Hand::Right => Hand::Left,
                    Hand::Left => Hand::Right,
                }
            }
            StartField::Side => {
                self.side = match self.side {
                    Side::Right => Side::Left,
                    Side::Left => Side::Right,
                }
            }
            _ => {}
        }
        self.show_knot();
    }

    fn begin(&mut self, words: &Words) -> Action {
        match self.plan() {
            Ok(plan) => Action::Begin(Box::new(plan)),
            Err(error) => {
                let sentence = words.knot_error(&error);
                Action::Complain(sentence.into())
            }
        }
    }

    /// The plan that the form names.
    fn plan(&self) -> Result<Plan, KnotError> {
        let [leads, bights, passes, weave, nested, lands] = &self.texts;
        let plan = Plan::read_nested([leads, bights, nested, lands], passes, weave)?;
        Ok(plan.with_hand(self.hand).with_side(self.side))
    }
}

/// What there is to see of a tie that waits.
fn as_it_lies(waiting: &Shelved) -> Option<Subject> {
    let script = Script::new(waiting.tie.plan.clone(), AtOnce::default());
    let step = script.step(waiting.place)?;
    Some(Subject::of(&script, &step))
}
