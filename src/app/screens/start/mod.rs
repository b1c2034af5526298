//! The start screen: the tie that was left off, the ways that lead on, and a form that names a knot.

mod fields;
mod form_view;
mod knot_form;
mod presses;
mod saying;
mod view;
mod waiting_view;
mod ways;

use iced::widget::operation;
use iced::{Element, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::{KeyGroup, KeyHint};
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::services::LAST_SAVE;
use crate::app::widgets::leaves::LeafPlaces;
use crate::bench::TyingPace;
use crate::guide::Plan;
use crate::knot::{Hand, Side};
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::session::{Inventory, first_tie, inventory, new_tie};
use crate::shelf::{self, ShelfError, ShelfReading, Shelved, Tie, TieId};
use crate::words::{Remark, Sentence, Spoken};
use fields::{FORM, id};
pub use fields::{StartField, TiedOn};
use knot_form::as_it_lies;
use ways::{Typed, Way};

/// What is typed and what waits.
pub struct State {
    texts: [String; 6],
    /// As they were when they named a knot last.
    readable: [String; 6],
    hand: Hand,
    side: Side,
    tied_on: TiedOn,
    focus: Option<StartField>,
    waiting: Vec<Shelved>,
    /// The pace to go by for the first of them.
    pace: Option<TyingPace>,
    /// Whether the first tie is offered: nothing was ever begun here, and the form is as it was.
    is_new: bool,
    /// Whether it is the first time that the screen is up; once the shelf was looked through, whether
    /// nothing was ever begun there either.
    welcomes: bool,
    /// Whether the shelf was looked through: until then a press could mean another tie than
    /// the one that will be offered.
    is_ready: bool,
    picture: Box<PictureView>,
    /// It was asked whether so large a knot is meant.
    asked_back: Option<Sentence>,
    /// Where the fields stand.
    form_places: LeafPlaces,
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
    /// One of the ways is to be gone.
    Way(Way),
    /// The tie at this place of the list is to be taken up.
    TakeUp(usize),
    /// The shelf was looked through.
    Looked(Result<ShelfReading<Inventory>, ShelfError>),
    /// The first tie is to be begun.
    First,
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
    /// Go to the orders.
    Orders,
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
        let typed = context.fetch::<Typed>().map(|typed| *typed);
        let mut state = Self {
            is_ready: false,
            welcomes,
            ..Self::new(typed.unwrap_or_default())
        };
        state.show_knot();
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
                    let found = context.session.looked_through(found);
                    self.welcomes &= found.is_new && is_whole;
                    self.is_new = self.welcomes && self.focus.is_none();
                    self.waiting = found.waiting;
                    self.pace = found.pace;
                    self.is_ready = true;
                }
                Err(error) => {
                    // A press begins what the form names.
                    self.is_ready = true;
                    self.welcomes = false;
                    context.session.refuse(&error);
                }
            }
            self.show_knot();
            let said = self.say(context.words());
            context.say_after_notices(&said.then(&context.remark(Remark::KeysHintSay)));
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
            ("o", "key-orders"),
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

    fn close(self, context: &mut Context) {
        context.put_by(self.typed());
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
                        self.form_places.turn_to(FORM, &id(field)),
                    ]),
                    None => operation::focus(id(StartField::Begin)),
                })
            }
            Action::Begin(plan) => Go::Begin(Box::new(new_tie(&plan))).into(),
            Action::First(tie) => Go::Begin(tie).into(),
            Action::TakeUp(id) => Go::TakeUp(id).into(),
            Action::Shelf => Go::To(Route::Shelf(())).into(),
            Action::Orders => Go::To(Route::Order(())).into(),
            Action::Course => Go::To(Route::Course(())).into(),
            Action::Glossary => Go::To(Route::Glossary(())).into(),
            Action::Count => Go::To(Route::Count(())).into(),
            Action::Settings => Go::settings().into(),
            Action::Plan(hand, side) => Go::To(Route::Plan((hand, side))).into(),
        }
    }

    /// The screen with what is typed into its form.
    fn new(typed: Typed) -> Self {
        let Typed {
            texts,
            hand,
            side,
            tied_on,
        } = typed;
        Self {
            readable: texts.clone(),
            texts,
            hand,
            side,
            tied_on,
            focus: None,
            waiting: Vec::new(),
            pace: None,
            is_new: false,
            welcomes: false,
            is_ready: true,
            picture: Box::new(PictureView::default()),
            asked_back: None,
            form_places: LeafPlaces::default(),
        }
    }

    /// What stands in the form.
    fn typed(&self) -> Typed {
        Typed {
            texts: self.texts.clone(),
            hand: self.hand,
            side: self.side,
            tied_on: self.tied_on,
        }
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
}
