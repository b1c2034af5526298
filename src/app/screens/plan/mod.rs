//! The plan screen: what is to be covered, with what, on what; and the knots that do it, found
//! while the tyer types.

mod cards;
mod choosing;
mod cord_colour;
mod covering;
mod covering_view;
mod detail;
mod ear;
mod fields;
mod filters;
mod findings;
mod first_question;
mod form;
mod form_view;
mod grid;
mod picks;
mod pictures;
mod presses;
mod view;

use iced::widget::operation;
use iced::widget::scrollable::AbsoluteOffset;
use iced::{Element, Task};

use super::context::Context;
use super::count::CountedKnot;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::jobs;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::off_thread;
use crate::app::widgets;
use crate::guide::SetupField;
use crate::knot::{Hand, Side};
use crate::pedal::{Intent, Press};
use crate::session::{Event, new_tie};
use crate::settings::ColourScheme;
use crate::words::Spoken;
use cards::LIST;
use cord_colour::colour_of;
pub use fields::PlanField;
use fields::{FORM, id};
use findings::{Asked, Findings, FitOutcome, KnownFindings};
use form::Action;
pub use form::{Message, State};

impl ScreenPage for State {
    type Message = Message;
    /// The hand the tyer works with, and the side that followers keep to.
    type Opening = (Hand, Side);

    /// The screen as it was left: nothing typed is lost.
    fn open((hand, side): (Hand, Side), context: &mut Context) -> (Self, Task<Message>) {
        let before = context.fetch::<Self>().map(|before| *before);
        let mut state = Self {
            hand,
            side,
            prices: context.session.settings().prices,
            // It may be in other words than those of now.
            complaint: None,
            ..before.unwrap_or_default()
        };
        if let Some(counted) = context.fetch::<CountedKnot>() {
            state.only = Some(counted.0);
            // What was found before is of other knots.
            state.found = Findings::Wanting(SetupField::Object);
            state.known = KnownFindings::default();
        }
        // The window lays the cards out anew, from their top.
        state.grid.offset = 0.0;
        let reveal = state.reveal();
        context.say(&state.say(context.words()));
        let focus = Task::batch([state.focus_on(state.focus), reveal]);
        let Some(presets) = context.services.rack.clone() else {
            let action = state.look();
            let next = state.follow(action, context);
            return (state, Task::batch([focus, next.task]));
        };
        let read = off_thread(move || Message::Presets(presets.read()));
        (state, Task::batch([focus, read]))
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        if matches!(message, Message::Typed(..)) {
            context.typed();
        }
        let action = self.told(message, &mut context.session);
        self.follow(action, context)
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let asked = self.asked;
        let action = self.pressed(press, intent, context.words());
        if self.asked != asked && widgets::typed_on("", &press.key).is_some() {
            context.typed();
        }
        self.follow(action, context)
    }

    fn takes_text(&self) -> bool {
        true
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if event.is_typing_at_rest() {
            let said = self.say_typed(context.words());
            context.say(&said);
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.say_here(context.words())
    }

    fn redraw(&mut self, context: &Context) {
        let question = match &self.found {
            Findings::Knots(question, _) => Some(question),
            _ => None,
        };
        let name = question.and_then(|question| question.cord.name.as_deref());
        self.pictures
            .cover(question.map(|question| question.object.ground));
        let cord = name.and_then(|name| colour_of(name, context.words()));
        let is_dark = context.session.settings().colours == ColourScheme::Dark;
        let only = self.only.as_ref().map(|only| only.knot());
        self.pictures.set(cord, only, context.dots(), is_dark);
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        self.page(context.words())
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        let mut keys = vec![
            KeyHint::enter("key-take-knot"),
            KeyHint::here("Tab", "key-next-field"),
            KeyHint::here("Shift+Tab", "key-field-before"),
            KeyHint::here("PageDown", "key-another-pick"),
            KeyHint::here("PageUp", "key-pick-before"),
            KeyHint::here("F9", "key-on-paper"),
            KeyHint::leave("key-leave"),
        ];
        if matches!(self.focus, PlanField::Covers | PlanField::Slides) {
            keys.push(KeyHint::here("ArrowRight", "key-another-pick"));
            keys.push(KeyHint::here("ArrowLeft", "key-pick-before"));
        }
        if self.only.is_some() {
            keys.push(KeyHint::here("F10", "key-any-knot"));
            return keys;
        }
        keys.extend([
            KeyHint::here("ArrowDown", "key-knot-next"),
            KeyHint::here("ArrowUp", "key-knot-before"),
            KeyHint::here("F2", "key-filter-passes"),
            KeyHint::here("F3", "key-filter-from-three"),
            KeyHint::here("F4", "key-filter-one-cord"),
            KeyHint::here("F5", "key-filter-most-legs"),
            KeyHint::here("F6", "key-filter-weave"),
            KeyHint::here("F7", "key-filter-firm"),
            KeyHint::here("F8", "key-filter-nested"),
        ]);
        keys
    }

    fn close(self, context: &mut Context) {
        context.put_by(self);
    }
}

impl State {
    fn follow(&mut self, action: Action, context: &Context) -> Next<Message> {
        match action {
            Action::None => Next::default(),
            Action::Say(sentence) => {
                context.say(&sentence);
                Next::default()
            }
            Action::Chosen(sentence) => {
                if !sentence.is_empty() {
                    context.say(&sentence);
                }
                Next::run(self.reveal())
            }
            Action::Focus(field, sentence) => {
                context.say(&sentence);
                Next::run(self.focus_on(field))
            }
            Action::Filled(field, then) => {
                let next = self.follow(*then, context);
                Next {
                    task: Task::batch([self.focus_on(field), next.task]),
                    ..next
                }
            }
            Action::TypeOn(field, then) => {
                let next = self.follow(*then, context);
                let on = Task::batch([
                    operation::focus(id(field)),
                    operation::move_cursor_to_end(id(field)),
                ]);
                Next {
                    task: Task::batch([on, next.task]),
                    ..next
                }
            }
            Action::Find(number, Asked { question, in_mind }, said) => {
                if !said.is_empty() {
                    context.say(&said);
                }
                let shelf = context.services.shelf.clone();
                Next::run(off_thread(move || {
                    let taught = jobs::taught(shelf.as_ref(), *question);
                    let found = taught.map(|question| {
                        let question = Box::new(question);
                        FitOutcome::of(Asked { question, in_mind })
                    });
                    Message::Found(number, found)
                }))
            }
            Action::Begin(plan) => Go::Begin(Box::new(new_tie(&plan))).into(),
            Action::OnPaper(plan) => {
                let back = Route::Plan((plan.hand, plan.side));
                Go::paper(*plan, None, String::new(), back).into()
            }
            Action::Leave => Go::start().into(),
        }
    }

    /// Puts the focus of the window on a field.
    fn focus_on(&self, field: PlanField) -> Task<Message> {
        Task::batch([
            operation::focus(id(field)),
            operation::select_all(id(field)),
            self.form_places.turn_to(FORM, &id(field)),
        ])
    }

    /// Brings the card of the chosen knot into sight.
    fn reveal(&mut self) -> Task<Message> {
        let Findings::Knots(_, answers) = &self.found else {
            return Task::none();
        };
        match self.grid.reveal(answers, self.chosen) {
            Some(y) => operation::scroll_to(LIST, AbsoluteOffset { x: 0.0, y }),
            None => Task::none(),
        }
    }
}
