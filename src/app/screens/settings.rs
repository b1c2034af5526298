//! The settings screen: one list, worked by keys, where each line says itself.

use iced::widget::{Id, button, column, container, row, scrollable, text};
use iced::{Center, Element, Fill, Task, padding};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::{theme, widgets};
use crate::pedal::{Intent, Press};
use crate::session::{Event, Setting, SettingsAction, SettingsList};
use crate::settings::Settings;
use crate::voice::VoiceEvent;
use crate::words::{Remark, Spoken, Words};

/// The list as it stands.
pub struct State {
    list: SettingsList,
}

/// What happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {
    /// This line is looked at.
    Focus(usize),
    /// This line is to be changed, by so many steps.
    Change(usize, i16),
    /// The monitor is so many pixels wide, if that is known.
    MonitorWidth(Option<f32>),
}

impl ScreenPage for State {
    type Message = Message;
    /// What is said in place of the usual.
    type Opening = Option<Spoken>;

    /// A tie in hand waits behind the settings.
    fn open(said: Option<Spoken>, context: &mut Context) -> (Self, Task<Message>) {
        let list = SettingsList::new(&context.words().tag().to_string());
        let said = said.unwrap_or_else(|| {
            let opening = context.remark(Remark::SettingsOpeningSay);
            opening.then(&list.say(context.words(), context.session.settings()))
        });
        context.say(&said);
        context.services.voice.ask_for_voices();
        context.session.look_away();
        let width = iced::window::oldest()
            .and_then(iced::window::monitor_size)
            .map(|size| Message::MonitorWidth(size.map(|size| size.width)));
        (Self { list }, width)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        let action = match message {
            Message::Focus(index) => self.list.look_at(index),
            Message::Change(index, by) => {
                let settings = context.session.settings();
                self.list.change_at(index, by, settings)
            }
            Message::MonitorWidth(width) => {
                context.window.set_monitor_width(width);
                return Next::default();
            }
        };
        self.follow(action, context)
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let settings = context.session.settings();
        let action = self.list.press(press, intent, settings);
        self.follow(action, context)
    }

    fn hear(&mut self, event: &Event, _: &mut Context) {
        if let Event::Voice(VoiceEvent::Voices(voices)) = event {
            self.list.voices(voices);
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.list.say(context.words(), context.session.settings())
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let (words, settings) = (context.words(), context.session.settings());
        let page = widgets::page(14);
        let heading = text(words.plainly("settings-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        // The bar of the list stands beside it.
        let mut list = column![].spacing(6).padding(padding::right(16));
        let mut group = "";
        for (index, field) in Setting::ALL.iter().copied().enumerate() {
            if group != field.group() {
                group = field.group();
                let heading = words.plainly("settings-group", &[("group", group)]);
                let heading = text(heading).size(theme::SMALL).style(theme::quiet);
                list = list.push(container(heading).padding(padding::top(10)));
            }
            let name = text(words.setting_name(field.name())).size(theme::BODY);
            let value = words.setting_value(field.name(), &self.list.shown(field, words, settings));
            let value = text(value).size(theme::BODY).font(theme::BOLD);
            let has_focus = index == self.list.focus();
            let line = button(row![name.width(Fill), value.width(Fill)].spacing(20))
                .width(Fill)
                .padding([8, 14])
                .style(theme::pressable(has_focus))
                .on_press(Message::Focus(index));
            let mut line = row![line].spacing(6).align_y(Center);
            if field != Setting::Learn {
                for (sign, by) in [("−", -1), ("+", 1)] {
                    line = line.push(
                        button(text(sign).size(theme::BODY).width(30).center())
                            .padding([8, 6])
                            .style(theme::pressable(false))
                            .on_press(Message::Change(index, by)),
                    );
                }
            }
            list = list.push(line);
            if field == Setting::Learn {
                for learnt in learnt(words, settings) {
                    let learnt = text(learnt).size(theme::SMALL);
                    list = list.push(container(learnt).padding([0, 14]));
                }
            }
        }
        page.push(heading)
            .push(scrollable(list).id(Id::new(LIST)).width(Fill).height(Fill))
            .into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        vec![
            KeyHint::here("ArrowUp", "key-line-above"),
            KeyHint::here("ArrowDown", "key-line-below"),
            KeyHint::here("ArrowLeft", "key-value-less"),
            KeyHint::here("ArrowRight", "key-value-more"),
            KeyHint::leave("key-done"),
        ]
    }
}

impl State {
    fn follow(&mut self, action: SettingsAction, context: &mut Context) -> Next<Message> {
        match action {
            SettingsAction::None => return Next::default(),
            SettingsAction::Leave => return Go::Back(Route::Start(())).into(),
            SettingsAction::Learn => return Go::To(Route::KeyBinding(())).into(),
            SettingsAction::Moved => {}
            SettingsAction::Set(settings) => {
                context.session.set(*settings);
                self.list.speak(&context.words().tag().to_string());
            }
        }
        context.say(&self.say_again(context));
        Next::run(self.scroll())
    }

    /// Brings the line that has the focus into sight.
    fn scroll(&self) -> Task<Message> {
        widgets::bring_into_view(LIST, self.list.focus(), Setting::ALL.len())
    }
}

const LIST: &str = "settings";

/// What the tyer's own pedals and keys do, a sentence for each; or that there are none.
fn learnt(words: &Words, settings: &Settings) -> Vec<String> {
    let own: Vec<String> = settings
        .bindings
        .own()
        .map(|(input, intent)| words.learnt(input, intent).to_string())
        .collect();
    if own.is_empty() {
        vec![words.plainly("settings-none-learnt", &[])]
    } else {
        own
    }
}
