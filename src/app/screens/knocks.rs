//! Trying knocks: how loud it is, and each row that was taken, to find where the microphone should lie.

use iced::widget::{column, container, progress_bar, text};
use iced::{Element, Fill, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::key_guide::{BarSlot, KeyHint};
use crate::app::{theme, widgets};
use crate::pedal::{Input, InputEvent, Intent, Press};
use crate::session::{Event, KnockTrial};
use crate::words::Spoken;

/// The quietest that the bar shows, in decibels of full scale: a still room.
const STILL: f32 = -90.0;

/// What was taken so far.
pub struct State {
    trial: KnockTrial,
}

/// Nothing happens on the screen besides presses and what the ear reports.
#[derive(Clone, Copy, Debug)]
pub enum Message {}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let trial = KnockTrial::new(context.session.settings().knocks);
        context.say(&trial.say_opening(context.words()));
        context.services.platform.ear.show_level(true);
        (Self { trial }, Task::none())
    }

    fn update(&mut self, message: Message, _: &mut Context) -> Next<Message> {
        match message {}
    }

    fn press(&mut self, _: &Press, intent: Option<Intent>, context: &mut Context) -> Next<Message> {
        match intent {
            Some(Intent::Leave) => Go::settings().into(),
            Some(Intent::Again) => {
                context.say(&self.say_again(context));
                Next::default()
            }
            Some(Intent::Where) => {
                context.say(&self.trial.say_where(context.words()));
                Next::default()
            }
            Some(Intent::Next) if !self.trial.is_on() => {
                let said = self.trial.switch_on(&mut context.session);
                context.say(&said);
                Next::default()
            }
            _ => Next::default(),
        }
    }

    /// Knocks are tried here, and do nothing.
    fn input(&mut self, raw: &InputEvent, _: &mut Context) -> Option<Next<Message>> {
        matches!(raw.input, Input::Knocks(_)).then(Next::default)
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if let Event::Ear(news) = event
            && self.trial.take(*news)
        {
            context.say(&self.say_again(context));
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.trial.say(context.words())
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let heading = text(words.plainly("knocks-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        let how = text(self.trial.opening(words).shown().to_owned()).size(theme::BODY);
        // Where nothing is listened to there is no level, and a bar would stand for nothing.
        let level = self.trial.is_on().then(|| {
            let loud = self.trial.level().unwrap_or(STILL);
            let told = text(String::from(self.trial.level_in_words(words))).size(theme::SMALL);
            let bar = progress_bar(STILL..=0.0, loud).style(theme::progress_now);
            container(column![told, bar].spacing(6)).id("knocks-level")
        });
        let rows = self.trial.rows(words).into_iter().enumerate();
        let rows = rows.map(|(age, row)| {
            let row = text(String::from(row));
            let row = if age == 0 {
                row.size(44).font(theme::BOLD)
            } else {
                row.size(theme::BODY).style(theme::quiet)
            };
            row.into()
        });
        let rows = column(rows).spacing(10).width(Fill);
        let page = widgets::page(14).push(heading);
        let tried = column![how].push(level).push(rows);
        page.push(tried.spacing(24)).into()
    }

    /// Nothing is loud where nothing is listened to.
    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        let first = if self.trial.is_on() {
            KeyHint::here("h", "key-how-loud")
                .meaning(Intent::Where)
                .at(BarSlot::Where)
        } else {
            KeyHint::next("key-switch-on")
        };
        vec![first, KeyHint::again(), KeyHint::leave("key-leave")]
    }

    fn close(self, context: &mut Context) {
        context.services.platform.ear.show_level(false);
    }
}
