//! A knot that somebody brings, counted by single presses until it is known.

use iced::widget::{column, container, responsive, row, text};
use iced::{Center, Element, Fill, FillPortion, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::picture_view::PictureView;
use crate::app::{theme, widgets};
use crate::guide::Plan;
use crate::pedal::{Intent, Press};
use crate::session::{CountAction, CountKeys, KnotCount};
use crate::words::Spoken;

/// The number that is counted, or the question: read from where the knot is held.
const HERO: f32 = 56.0;

/// What is counted so far.
pub struct State {
    count: KnotCount,
    picture: PictureView,
}

/// A knot that was counted, put by for the plan screen.
pub struct CountedKnot(pub Box<Plan>);

/// Nothing happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let mut state = Self {
            count: KnotCount::default(),
            picture: PictureView::default(),
        };
        state.picture.show(state.count.subject());
        context.say(&state.say_again(context));
        (state, Task::none())
    }

    fn update(&mut self, message: Message, _: &mut Context) -> Next<Message> {
        match message {}
    }

    /// Next and back count and answer; digits type a number.
    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if press.is_repeat {
            return Next::default();
        }
        let said = match intent {
            Some(Intent::Leave) => return Go::start().into(),
            Some(Intent::Next | Intent::Back) => {
                match self.count.press(intent == Some(Intent::Next)) {
                    CountAction::Take(plan) => {
                        let hands = (plan.hand, plan.side);
                        context.put_by(CountedKnot(plan));
                        return Go::To(Route::Plan(hands)).into();
                    }
                    CountAction::Counted => self.count.say_briefly(context.words()),
                    CountAction::Asked => self.count.say(context.words()),
                }
            }
            Some(Intent::Again) => self.say_again(context),
            None if self.count.type_in(&press.key) => self.count.say_briefly(context.words()),
            _ => return Next::default(),
        };
        self.picture.show(self.count.subject());
        context.say(&said);
        Next::default()
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let words = context.words();
        Spoken::from(words.notice("count-opening", &[])).then(&self.count.say(words))
    }

    fn redraw(&mut self, context: &Context) {
        self.picture.set_dots(context.dots());
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let shown = self.count.show(context.words());
        let phase = text(shown.phase).size(theme::HEADING).font(theme::BOLD);
        let stage = responsive(move |room| {
            let line = text(shown.line.clone()).size(HERO).font(theme::BOLD);
            let told = column![line.center()].spacing(18).align_x(Center);
            let notes = shown.notes.iter().cloned();
            let notes = notes.map(|note| text(note).size(theme::BODY).center().into());
            let told = container(told.width(Fill).extend(notes)).id("count-told");
            let picture = container(self.picture.view());
            if room.height > room.width {
                return column![told, picture.height(Fill)].spacing(24).into();
            }
            let told = container(told).center_y(Fill).width(FillPortion(3));
            let picture = picture.width(FillPortion(2)).height(Fill);
            row![told, picture].spacing(24).height(Fill).into()
        });
        widgets::page(14).push(phase).push(stage).into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        let (next, back) = match self.count.keys() {
            CountKeys::OverOrUnder => ("key-over", "key-under"),
            CountKeys::Found => ("key-take-knot", "key-count-again"),
            CountKeys::Miscounted => ("key-count-again", "key-count-again"),
            CountKeys::Number => ("key-one-more", "key-that-is-it"),
            CountKeys::Typing => ("key-that-is-it", "key-digit-away"),
        };
        vec![
            KeyHint::next(next),
            KeyHint::back(back),
            KeyHint::again(),
            KeyHint::leave("key-leave"),
        ]
    }
}
