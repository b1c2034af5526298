//! The words of the trade, one after the other.

use iced::widget::{button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, FillPortion, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::{theme, widgets};
use crate::pedal::{Intent, Press};
use crate::words::{GlossaryEntry, Remark, Spoken};

/// Which word stands on the screen.
#[derive(Debug)]
pub struct State {
    words: Vec<GlossaryEntry>,
    chosen: usize,
}

/// A word of the list was clicked.
#[derive(Clone, Copy, Debug)]
pub struct Message(usize);

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let state = Self {
            words: context.words().glossary(),
            chosen: 0,
        };
        let opening = context.remark(Remark::GlossarySay);
        context.say(&opening.then(&state.say_chosen()));
        (state, Task::none())
    }

    fn update(&mut self, Message(index): Message, context: &mut Context) -> Next<Message> {
        self.choose(index, context)
    }

    /// Next and arrow down go to the next word, back and arrow up to the one before.
    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if press.is_repeat {
            return Next::default();
        }
        let count = self.words.len();
        match (press.key.as_str(), intent) {
            ("ArrowDown" | "Tab", _) | (_, Some(Intent::Next)) => {
                self.choose((self.chosen + 1) % count, context)
            }
            ("ArrowUp" | "Shift+Tab", _) | (_, Some(Intent::Back)) => {
                self.choose((self.chosen + count - 1) % count, context)
            }
            (_, Some(Intent::Leave)) => Go::start().into(),
            (_, Some(Intent::Again)) => self.choose(self.chosen, context),
            _ => Next::default(),
        }
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let page = widgets::page_below(context.session.notices(), 14);
        let list = self.words.iter().enumerate().map(|(index, entry)| {
            button(text(&entry.word).size(theme::BODY))
                .width(Fill)
                .padding([6, 12])
                .style(theme::pressable(index == self.chosen))
                .on_press(Message(index))
                .into()
        });
        let list = scrollable(column(list).spacing(6))
            .spacing(8)
            .height(Fill)
            .width(FillPortion(1));
        let meaning = responsive(|size| {
            let GlossaryEntry { word, meaning, .. } = &self.words[self.chosen];
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
            text(context.plainly("glossary-heading"))
                .size(theme::HEADING)
                .font(theme::BOLD),
        )
        .push(row![list, meaning].spacing(30).height(Fill))
        .push(widgets::quiet(
            context.plainly("glossary-keys"),
            theme::BODY,
        ))
        .into()
    }
}

impl State {
    fn choose(&mut self, index: usize, context: &Context) -> Next<Message> {
        self.chosen = index.min(self.words.len().saturating_sub(1));
        context.say(&self.say_chosen());
        Next::default()
    }

    fn say_chosen(&self) -> Spoken {
        let entry = self.words.get(self.chosen);
        entry.map(|entry| entry.say.clone()).unwrap_or_default()
    }
}
