//! The start screen: a form that names a knot, and the ties that wait to be taken up again.

mod fields;
mod knot_form;
mod view;

use iced::widget::operation;
use iced::{Element, Task};

use super::context::Context;
use super::count::CountedKnot;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::{KeyGroup, KeyHint};
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::services::LAST_SAVE;
use crate::app::widgets;
use crate::guide::{AtOnce, Plan, Script};
use crate::knot::{Hand, Rim, Side};
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::session::{Inventory, inventory, new_tie};
use crate::shelf::{self, ShelfError, ShelfReading, Shelved, Tie, TieId};
use crate::words::{Remark, Sentence, Spoken, Words};
pub use fields::StartField;
use fields::{FIELDS, FORM, id, text_slot};
use knot_form::{as_it_lies, first_tie};

/// What is typed and what waits.
pub struct State {
    texts: [String; 6],
    hand: Hand,
    side: Side,
    focus: Option<StartField>,
    waiting: Vec<Shelved>,
    /// Whether nothing was ever begun here: then a first tie is offered.
    is_new: bool,
    /// Whether it is the first time that the screen is up.
    welcomes: bool,
    /// Whether the shelf was looked through: until then a press could mean another tie than
    /// the one that will be offered.
    is_ready: bool,
    picture: Box<PictureView>,
    /// It was asked whether so large a knot is meant.
    asked_back: Option<Sentence>,
    /// A knot that was counted, for the form to name once the shelf is looked through.
    counted: Option<Box<Plan>>,
}

/// Put by once the screen was up: who comes back to it has seen the first tie offered.
struct Welcomed;

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// A text of the form was changed.
    Typed(StartField, String),
    /// A field was clicked or touched.
    Pointed(StartField),
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
    Looked(Result<ShelfReading<Inventory>, ShelfError>),
    /// The first tie is to be begun.
    First,
    /// Something else than the first tie is wanted.
    PastFirst,
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
    /// The same, and put the focus of the window behind what was typed.
    TypeOn,
    /// Begin a tie.
    Begin(Box<Plan>),
    /// Begin the first tie.
    First(Box<Tie>),
    /// Take a tie up again.
    TakeUp(TieId),
    /// Go to the shelf.
    Shelf,
    /// Go to the course for beginners.
    Course,
    /// Go to the words of the trade.
    Glossary,
    /// Go to counting a knot.
    Count,
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
        let welcomes = context.fetch::<Welcomed>().is_none();
        context.put_by(Welcomed);
        let counted = context.fetch::<CountedKnot>();
        let state = Self {
            is_ready: false,
            welcomes,
            counted: counted.map(|counted| counted.0),
            ..Self::new(Inventory::default())
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
            None => Task::done(Message::Looked(Ok(ShelfReading::whole(
                Inventory::default(),
            )))),
        };
        (state, look)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        if let Message::Looked(found) = message {
            match found {
                Ok(found) => {
                    // What cannot be read was begun once.
                    let is_whole = !found.is_troubled();
                    let mut found = context.session.looked_through(found);
                    found.is_new &= is_whole && self.welcomes;
                    let counted = self.counted.take();
                    *self = Self::new(found);
                    if let Some(plan) = counted {
                        self.name(&plan);
                        context.say_after_notices(&self.say_focus(context.words()));
                        return Next::run(operation::focus(id(StartField::Begin)));
                    }
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
        self.page(context.words())
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        if self.focus.is_some() {
            return vec![
                KeyHint::enter("key-begin"),
                KeyHint::here("Tab", "key-next-field"),
                KeyHint::here("Shift+Tab", "key-field-before"),
                KeyHint::leave("key-leave-form"),
            ];
        }
        let next = if self.is_new {
            "key-first-tie"
        } else if self.waiting.is_empty() {
            "key-begin"
        } else {
            "key-take-up"
        };
        let places = [
            ("p", "key-plan"),
            ("s", "key-shelf"),
            ("c", "key-course"),
            ("g", "key-glossary"),
            ("k", "key-count"),
            ("t", "key-settings"),
        ];
        let places = places.map(|(key, label)| KeyHint::new(KeyGroup::Places, key, label));
        [
            KeyHint::next(next),
            KeyHint::again(),
            KeyHint::here("Tab", "key-form"),
        ]
        .into_iter()
        .chain(places)
        .collect()
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
            Action::TypeOn => {
                context.say(&self.say_focus(context.words()));
                Next::run(self.focus.map_or_else(Task::none, |field| {
                    Task::batch([
                        operation::focus(id(field)),
                        operation::move_cursor_to_end(id(field)),
                    ])
                }))
            }
            // Focusing a field that takes no text leaves every text field unfocused.
            Action::Focus(field) => {
                context.say(&self.say_focus(context.words()));
                Next::run(match field {
                    Some(field) => Task::batch([
                        operation::focus(id(field)),
                        operation::select_all(id(field)),
                        widgets::bring_field_into_view(FORM, &FIELDS, &field),
                    ]),
                    None => operation::focus(id(StartField::Begin)),
                })
            }
            Action::Begin(plan) => Go::Begin(Box::new(new_tie(&plan))).into(),
            Action::First(tie) => Go::Begin(tie).into(),
            Action::TakeUp(id) => Go::TakeUp(id).into(),
            Action::Shelf => Go::To(Route::Shelf(())).into(),
            Action::Course => Go::To(Route::Course(())).into(),
            Action::Glossary => Go::To(Route::Glossary(())).into(),
            Action::Count => Go::To(Route::Count(())).into(),
            Action::Settings => Go::settings().into(),
            Action::Plan(hand, side) => Go::To(Route::Plan((hand, side))).into(),
        }
    }

    /// The screen with what was found on the shelf.
    fn new(found: Inventory) -> Self {
        let mut state = Self {
            // No weave: over one, under one, begun so that it takes the fewest tucks.
            texts: ["5", "7", "1", "", "", ""].map(str::to_owned),
            hand: Hand::default(),
            side: Side::default(),
            focus: None,
            waiting: found.waiting,
            is_new: found.is_new,
            welcomes: false,
            is_ready: true,
            picture: Box::new(PictureView::default()),
            asked_back: None,
            counted: None,
        };
        state.show_knot();
        state
    }

    /// Shows the tie that a press takes up, as it lies now; or the knot that the form names, and
    /// nothing while it names none.
    fn show_knot(&mut self) {
        let subject = match self.waiting.first() {
            _ if self.is_new => first_tie().ok().map(|tie| Subject::finished(&tie.plan)),
            Some(waiting) if self.focus.is_none() => as_it_lies(waiting),
            _ => self.plan().ok().map(|plan| Subject::finished(&plan)),
        };
        self.picture.show(subject);
    }

    /// What is said when the screen appears.
    fn say(&self, words: &Words) -> Spoken {
        if self.is_new {
            return words.remark(Remark::FirstStartSay);
        }
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
                self.is_new = false;
                self.focus = Some(field);
                if let Some(slot) = text_slot(field) {
                    self.texts[slot] = text;
                }
                self.changed();
                Action::Say
            }
            // A number is typed anew rather than mended.
            Message::Pointed(StartField::Weave) if self.focus == Some(StartField::Weave) => {
                Action::None
            }
            Message::Pointed(field) => {
                self.is_new = false;
                self.focus = Some(field);
                self.show_knot();
                Action::Focus(self.focus)
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
            Message::First => Self::first(words),
            Message::PastFirst => {
                self.is_new = false;
                self.move_focus(1)
            }
            Message::Looked(_) => Action::None,
        }
    }

    /// What a press comes to that no field of the form took.
    fn pressed(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        if let Some(slot) = self.focus.and_then(text_slot)
            && let Some(typed) = widgets::typed_on(&self.texts[slot], &press.key)
        {
            // The window has not put its own focus there, and what is typed must not be lost.
            self.texts[slot] = typed;
            self.changed();
            return Action::TypeOn;
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
                (Some(Intent::Next), None) if self.is_new => Self::first(words),
                (Some(Intent::Next), None) if self.waiting.is_empty() => self.begin(words),
                (Some(Intent::Next), None) => self.told(Message::TakeUp(0), words),
                (_, None) if key.eq_ignore_ascii_case("p") => self.told(Message::Plan, words),
                (_, None) if key.eq_ignore_ascii_case("s") => Action::Shelf,
                (_, None) if key.eq_ignore_ascii_case("c") => Action::Course,
                (_, None) if key.eq_ignore_ascii_case("g") => Action::Glossary,
                (_, None) if key.eq_ignore_ascii_case("k") => Action::Count,
                (_, None) if key.eq_ignore_ascii_case("t") => Action::Settings,
                (_, None) => match key.parse() {
                    Ok(digit @ 1..=9_usize) => self.told(Message::TakeUp(digit - 1), words),
                    _ => Action::None,
                },
                _ => Action::None,
            },
        }
    }
}
