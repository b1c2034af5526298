//! The learn screen: the tyer presses what is to do what.

use iced::widget::{column, container, text};
use iced::{Center, Element, Fill};

use super::{house, theme};
use crate::pedal::{Asked, Bindings, Edge, Input, Learning, Raw};
use crate::words::Words;

/// What was pressed so far.
#[derive(Default)]
pub struct State {
    learning: Learning,
}

impl State {
    /// What is said when the screen appears.
    pub fn say(&self, words: &Words) -> String {
        let opening = words.plainly("learn-opening-say", &[]);
        format!("{opening} {}", self.asks(words))
    }

    /// Whether this leaves the screen with nothing learnt.
    pub fn leaves(raw: &Raw) -> bool {
        raw.edge == Edge::Down && raw.input == Input::key("Escape")
    }

    /// Takes a press, and gives what is said about it.
    pub fn press(&mut self, input: Input, words: &Words) -> String {
        let came_to = match self.learning.press(input) {
            Some(Asked::Learnt(input, intent)) => words.learnt(&input, intent),
            Some(Asked::Skipped(_)) => words.plainly("learn-skipped-say", &[]),
            None => String::new(),
        };
        format!("{came_to} {}", self.asks(words)).trim().to_owned()
    }

    /// The bindings, once all is learnt.
    pub fn done(&self) -> Option<Bindings> {
        self.learning
            .asks()
            .is_none()
            .then(|| self.learning.bindings())
    }

    fn asks(&self, words: &Words) -> String {
        match self.learning.asks() {
            Some(intent) => words.learn_asks(intent),
            None => words.plainly("learn-done-say", &[]),
        }
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a, M: 'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, M> {
        let mut page = column![].spacing(14).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        let mut heart = column![
            text(self.asks(words)).size(44).font(theme::BOLD).center(),
            text(words.plainly("learn-how", &[]))
                .size(theme::BODY)
                .style(theme::quiet)
                .center(),
        ]
        .spacing(20)
        .align_x(Center);
        for (input, intent) in self.learning.learnt() {
            heart = heart.push(text(words.learnt(input, *intent)).size(theme::BODY));
        }
        page.push(container(heart).center(Fill))
            .push(house::quiet(words.plainly("learn-keys", &[]), theme::BODY))
            .into()
    }
}
