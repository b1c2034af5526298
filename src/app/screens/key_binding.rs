//! The learn screen: the tyer presses what is to do what.

use iced::widget::{column, container, text};
use iced::{Center, Element, Fill, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::{theme, widgets};
use crate::pedal::{Binding, Input, InputEvent, Intent, KeyBinder, Press, Transition};
use crate::settings::Settings;
use crate::words::{Remark, Spoken, Words};

/// What was pressed so far.
#[derive(Default)]
pub struct State {
    binder: KeyBinder,
}

/// Nothing happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let state = Self::default();
        let opening = context.remark(Remark::LearnOpeningSay);
        context.say(&opening.then(&state.asks(context.words())));
        (state, Task::none())
    }

    fn update(&mut self, message: Message, _: &mut Context) -> Next<Message> {
        match message {}
    }

    /// Every press is to be learnt: none is left that means something.
    fn press(&mut self, _: &Press, _: Option<Intent>, _: &mut Context) -> Next<Message> {
        Next::default()
    }

    fn input(&mut self, raw: &InputEvent, context: &mut Context) -> Option<Next<Message>> {
        if raw.transition == Transition::Down && raw.input == Input::key("Escape") {
            return Some(Go::settings().into());
        }
        let now = context.now();
        let Some(input) = context.session.take_to_learn(raw, now) else {
            return Some(Next::default());
        };
        let came_to = match self.binder.press(input) {
            Some(Binding::Bound(input, intent)) => context.words().learnt(&input, intent).into(),
            Some(Binding::Skipped(_)) => context.remark(Remark::LearnSkippedSay),
            None => Spoken::default(),
        };
        let said = came_to.then(&self.asks(context.words()));
        context.say(&said);
        if self.binder.asks_for().is_some() {
            return Some(Next::default());
        }
        context.session.set(Settings {
            bindings: self.binder.bindings(),
            ..context.session.settings().clone()
        });
        Some(Go::To(Route::Settings(Some(said))).into())
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let opening = context.remark(Remark::LearnOpeningSay);
        opening.then(&self.asks(context.words()))
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let page = widgets::page(14);
        let mut heart = column![
            text(self.asks(words).to_string())
                .size(44)
                .font(theme::BOLD)
                .center(),
            text(words.plainly("learn-how", &[]))
                .size(theme::BODY)
                .style(theme::quiet)
                .center(),
        ]
        .spacing(20)
        .align_x(Center);
        for (input, intent) in self.binder.bound() {
            heart = heart.push(text(words.learnt(input, *intent).to_string()).size(theme::BODY));
        }
        page.push(container(heart).center(Fill)).into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        vec![KeyHint::leave("key-leave-unchanged")]
    }
}

impl State {
    fn asks(&self, words: &Words) -> Spoken {
        match self.binder.asks_for() {
            Some(intent) => words.learn_asks(intent).into(),
            None => words.remark(Remark::LearnDoneSay),
        }
    }
}
