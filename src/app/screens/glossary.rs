//! The words of the trade, one after the other.

use std::time::Duration;

use iced::widget::{Id, button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, FillPortion, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::picture_view::PictureView;
use crate::app::{theme, widgets};
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::words::{GlossaryEntry, Remark, Spoken};

/// The list of words.
const LIST: &str = "words";
/// The width of that list.
const LIST_WIDTH: f32 = 250.0;
/// Below this height the picture of a word stands beside what it means.
const LOW: f32 = 420.0;

/// How long each picture of a word stands.
const STANDS: Duration = Duration::from_millis(700);

/// Which word stands on the screen.
pub struct State {
    words: Vec<GlossaryEntry>,
    chosen: usize,
    picture: PictureView,
}

/// A word of the list was clicked.
#[derive(Clone, Copy, Debug)]
pub struct Message(usize);

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let mut state = Self {
            words: context.words().glossary(),
            chosen: 0,
            picture: PictureView::default(),
        };
        state.illustrate(context);
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
            (_, Some(Intent::Again)) => {
                self.picture.replay();
                self.choose(self.chosen, context)
            }
            _ => Next::default(),
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        context.remark(Remark::GlossarySay).then(&self.say_chosen())
    }

    fn redraw(&mut self, context: &Context) {
        self.picture.set_dots(context.dots());
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let page = widgets::page(14);
        let list = self.words.iter().enumerate().map(|(index, entry)| {
            button(text(&entry.word).size(theme::BODY))
                .width(Fill)
                .padding([8, 12])
                .style(theme::pressable(index == self.chosen))
                .on_press(Message(index))
                .into()
        });
        let list = scrollable(column(list).spacing(6))
            .id(Id::new(LIST))
            .spacing(8)
            .height(Fill)
            // The longest of the words, in any language, on one row.
            .width(LIST_WIDTH);
        let meaning = responsive(|size| {
            let GlossaryEntry { word, meaning, .. } = &self.words[self.chosen];
            let large = (size.width.min(1.6 * size.height) / 14.0).clamp(30.0, 64.0);
            let meaning = column![
                text(word).size(large).font(theme::BOLD).center(),
                text(meaning).size((large * 0.5).max(theme::BODY)).center(),
            ];
            let meaning = meaning.spacing(12).align_x(Center).width(Fill);
            // Where it is low the picture has the whole height beside the words.
            if size.height < LOW {
                let meaning = container(scrollable(meaning).spacing(4)).width(FillPortion(3));
                let picture = container(self.picture.view()).width(FillPortion(2));
                return row![meaning, picture].spacing(16).height(Fill).into();
            }
            column![meaning, self.picture.view()].spacing(16).into()
        });
        page.push(
            text(context.plainly("glossary-heading"))
                .size(theme::HEADING)
                .font(theme::BOLD),
        )
        .push(row![list, meaning].spacing(30).height(Fill))
        .into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        vec![
            KeyHint::next("key-word-below"),
            KeyHint::back("key-word-above"),
            KeyHint::again(),
            KeyHint::leave("key-leave"),
        ]
    }
}

impl State {
    fn choose(&mut self, index: usize, context: &Context) -> Next<Message> {
        self.chosen = index.min(self.words.len().saturating_sub(1));
        self.illustrate(context);
        context.say(&self.say_chosen());
        Next::run(widgets::bring_into_view(
            LIST,
            self.chosen,
            self.words.len(),
        ))
    }

    /// Shows what the word means.
    fn illustrate(&mut self, context: &Context) {
        let word = self.words.get(self.chosen).map(|entry| entry.of);
        match word.map(Subject::of_word).transpose() {
            Ok(film) => {
                let film = film.unwrap_or_default();
                self.picture.play(context.moving(film), STANDS);
            }
            Err(error) => {
                ::log::error!("no picture of a word: {error}");
                self.picture.show(None);
            }
        }
    }

    fn say_chosen(&self) -> Spoken {
        let entry = self.words.get(self.chosen);
        entry.map(|entry| entry.say.clone()).unwrap_or_default()
    }
}
