//! The words of the trade, one after the other.

use iced::widget::{button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, FillPortion};

use super::{house, theme};
use crate::pedal::{Intent, Press};
use crate::words::Words;

/// Which word stands on the screen.
#[derive(Debug)]
pub struct State {
    words: Vec<(String, String)>,
    chosen: usize,
}

/// A word of the list was clicked.
#[derive(Clone, Copy, Debug)]
pub struct Chosen(usize);

/// What the parent has to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// Nothing.
    None,
    /// Say this.
    Say(String),
    /// Back to the start screen.
    Leave,
}

impl State {
    /// The screen at its first word.
    pub fn new(words: &Words) -> Self {
        Self {
            words: words.glossary(),
            chosen: 0,
        }
    }

    /// What is said when the screen appears.
    pub fn say(&self, words: &Words) -> String {
        format!(
            "{} {}",
            words.plainly("glossary-say", &[]),
            self.say_chosen()
        )
    }

    /// Goes to the word that was clicked.
    pub fn update(&mut self, Chosen(index): Chosen) -> Action {
        self.choose(index)
    }

    /// Does what a press asks for: next and arrow down to the next word, back and arrow up to
    /// the one before.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        let count = self.words.len();
        match (press.key.as_str(), intent) {
            ("ArrowDown" | "Tab", _) | (_, Some(Intent::Next)) => {
                self.choose((self.chosen + 1) % count)
            }
            ("ArrowUp" | "Shift+Tab", _) | (_, Some(Intent::Back)) => {
                self.choose((self.chosen + count - 1) % count)
            }
            (_, Some(Intent::Leave)) => Action::Leave,
            (_, Some(Intent::Again)) => Action::Say(self.say_chosen()),
            _ => Action::None,
        }
    }

    fn choose(&mut self, index: usize) -> Action {
        self.chosen = index.min(self.words.len().saturating_sub(1));
        Action::Say(self.say_chosen())
    }

    fn say_chosen(&self) -> String {
        self.words
            .get(self.chosen)
            .map_or_else(String::new, |(word, meaning)| format!("{word}. {meaning}"))
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, Chosen> {
        let mut page = column![].spacing(14).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        let list = self.words.iter().enumerate().map(|(index, (word, _))| {
            button(text(word).size(theme::BODY))
                .width(Fill)
                .padding([6, 12])
                .style(theme::pressable(index == self.chosen))
                .on_press(Chosen(index))
                .into()
        });
        let list = scrollable(column(list).spacing(6))
            .spacing(8)
            .height(Fill)
            .width(FillPortion(1));
        let meaning = responsive(|size| {
            let (word, meaning) = &self.words[self.chosen];
            let large = (size.width / 12.0).clamp(34.0, 72.0);
            let meaning = column![
                text(word).size(large).font(theme::BOLD).center(),
                text(meaning).size(large * 0.55).center(),
            ];
            container(meaning.spacing(24).align_x(Center))
                .center(Fill)
                .into()
        });
        let meaning = container(meaning).width(FillPortion(3));
        page.push(
            text(words.plainly("glossary-heading", &[]))
                .size(theme::HEADING)
                .font(theme::BOLD),
        )
        .push(row![list, meaning].spacing(30).height(Fill))
        .push(house::quiet(
            words.plainly("glossary-keys", &[]),
            theme::BODY,
        ))
        .into()
    }
}
