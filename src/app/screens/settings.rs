//! The settings screen: one list, worked by keys, where each line says itself.

use iced::widget::{
    Column, Id, button, column, container, responsive, row, scrollable, space, text,
};
use iced::{Center, Element, Fill, FillPortion, Size, Task, padding};

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

/// The line that was left for a screen which leads back here.
struct LeftAt(usize);

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
        let line = context.fetch::<LeftAt>().map_or(0, |left| left.0);
        let list = SettingsList::new(&context.words().tag().to_string()).from_line(line);
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
        let state = Self { list };
        let in_sight = state.scroll();
        (state, Task::batch([width, in_sight]))
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        let action = match message {
            Message::Focus(index) => self.list.look_at(index, context.session.settings()),
            Message::Change(index, by) => {
                let settings = context.session.settings();
                self.list.change_at(index, by, settings)
            }
            Message::MonitorWidth(width) => {
                context.window.set_monitor_width(width);
                return Next::default();
            }
        };
        // What was clicked is in sight, and stays under the pointer for the next click.
        self.follow(action, context).unwrap_or_default()
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let settings = context.session.settings();
        let action = self.list.press(press, intent, settings);
        let next = self.follow(action, context);
        next.unwrap_or_else(|| Next::run(self.scroll()))
    }

    fn hear(&mut self, event: &Event, _: &mut Context) {
        if let Event::Voice(VoiceEvent::Voices(voices)) = event {
            self.list.voices(voices);
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let (words, settings) = (context.words(), context.session.settings());
        let here = self.list.say_with_hint(words, settings);
        context.remark(Remark::SettingsOpeningSay).then(&here)
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let settings = context.session.settings();
        let page = responsive(move |room| {
            let is_low = room.height < LOW;
            let hint = text(String::from(self.list.hint(words))).size(theme::SMALL);
            let heading = text(words.plainly("settings-heading", &[])).font(theme::BOLD);
            let list = self.list_in(room, words, settings);
            if is_low {
                let hint = container(hint).width(Fill).center_y(1.5 * HINT);
                let head = row![heading.size(LOW_HEADING), hint];
                let head = head.spacing(24).align_y(Center);
                return column![head, list].spacing(6).into();
            }
            // Two lines, so that nothing moves from one to the next.
            let hint = container(hint).height(HINT);
            column![heading.size(theme::HEADING), list, hint]
                .spacing(10)
                .into()
        });
        widgets::page(10).push(page).into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        if self.list.is_trying() {
            return vec![
                KeyHint::here("ArrowLeft", "key-voice-before"),
                KeyHint::here("ArrowRight", "key-voice-next"),
                KeyHint::here("Enter", "key-take-voice"),
                KeyHint::leave("key-keep-voice"),
            ];
        }
        vec![
            KeyHint::here("ArrowUp", "key-line-above"),
            KeyHint::here("ArrowDown", "key-line-below"),
            KeyHint::here("ArrowLeft", "key-value-less"),
            KeyHint::here("ArrowRight", "key-value-more"),
            KeyHint::here("h", "key-what-for").meaning(Intent::Where),
            KeyHint::leave("key-done"),
        ]
    }
}

impl State {
    /// The list in this width: in two columns where there is room.
    fn list_in<'a>(&self, room: Size, words: &Words, settings: &Settings) -> Element<'a, Message> {
        let groups = self.groups(room.height < LOW, words, settings);
        let list: Element<'a, Message> = if room.width < WIDE {
            column(groups.into_iter().map(Into::into)).into()
        } else {
            // As many lines on either side, or nearly.
            let mut sides = [column![].width(Fill), column![].width(Fill)];
            let mut lines = 0;
            for (group, of_it) in groups.into_iter().zip(lines_of_groups()) {
                let side = usize::from(2 * lines >= Setting::ALL.len());
                let [left, right] = sides;
                sides = match side {
                    0 => [left.push(group), right],
                    _ => [left, right.push(group)],
                };
                lines += of_it;
            }
            row(sides.map(Into::into)).spacing(40).into()
        };
        // The bar of the list stands beside it.
        scrollable(container(list).padding(padding::right(16)))
            .id(Id::new(LIST))
            .width(Fill)
            .height(Fill)
            .into()
    }

    /// The groups, each with its lines below what they are for.
    fn groups<'a>(
        &self,
        is_low: bool,
        words: &Words,
        settings: &Settings,
    ) -> Vec<Column<'a, Message>> {
        let [above, size] = if is_low {
            [0.0, theme::SMALL]
        } else {
            [10.0, theme::BODY]
        };
        let mut groups: Vec<Column<'a, Message>> = Vec::new();
        let mut group = "";
        for (index, field) in Setting::ALL.iter().copied().enumerate() {
            if group != field.group() {
                group = field.group();
                let heading = words.plainly("settings-group", &[("group", group)]);
                let heading = text(heading).size(theme::SMALL).style(theme::quiet);
                let heading = container(heading).padding(padding::top(above));
                groups.push(column![heading].spacing(6).padding(padding::bottom(6)));
            }
            if let Some(lines) = groups.pop() {
                let lines = lines.push(self.line(index, field, size, words, settings));
                groups.push(if field == Setting::Learn {
                    // That none is learnt its value says too.
                    let learnt = learnt(words, settings, is_low).into_iter();
                    lines.extend(learnt.map(|learnt| {
                        let learnt = text(learnt).size(theme::SMALL);
                        container(learnt).padding([0, 14]).into()
                    }))
                } else {
                    lines
                });
            }
        }
        groups
    }

    /// A line: what is set and to what, and what changes it.
    fn line<'a>(
        &self,
        index: usize,
        field: Setting,
        size: f32,
        words: &Words,
        settings: &Settings,
    ) -> Element<'a, Message> {
        let name = text(words.setting_name(field.name())).size(size);
        let value = words.setting_value(field.name(), &self.list.shown(field, words, settings));
        let value = text(value).size(size).font(theme::BOLD);
        let [name, value] = [name.width(FillPortion(2)), value.width(FillPortion(3))];
        let is_changed_elsewhere = matches!(field, Setting::Learn | Setting::TryKnocks);
        // All values stand in one column, whether two signs follow them or nothing.
        let signs_wide = 2.0 * (FINGER + SIGN_GAP) - VALUE_GAP;
        let no_signs = is_changed_elsewhere.then(|| space().width(signs_wide));
        let line = button(row![name, value].push(no_signs).spacing(VALUE_GAP))
            .width(Fill)
            .padding([10, 14])
            .style(theme::pressable(index == self.list.focus()))
            .on_press(Message::Focus(index));
        let signs = if is_changed_elsewhere {
            &[][..]
        } else {
            &[("−", -1), ("+", 1)]
        };
        let signs = signs.iter().map(|&(sign, by)| {
            button(text(sign).size(theme::BODY).width(FINGER).center())
                .padding([8, 0])
                .style(theme::pressable(false))
                .on_press(Message::Change(index, by))
                .into()
        });
        row![line]
            .extend(signs)
            .spacing(SIGN_GAP)
            .align_y(Center)
            .into()
    }

    /// Does what is to be done, and says what comes of it; where nothing is to follow but that the line with the
    /// focus is brought into sight, none.
    fn follow(&mut self, action: SettingsAction, context: &mut Context) -> Option<Next<Message>> {
        match action {
            SettingsAction::None => return Some(Next::default()),
            SettingsAction::Leave => return Some(Go::Back(Route::Start(())).into()),
            SettingsAction::Learn => {
                return Some(self.come_back_from(Route::KeyBinding(()), context));
            }
            SettingsAction::TryKnocks => {
                return Some(self.come_back_from(Route::Knocks(()), context));
            }
            SettingsAction::Moved => {}
            SettingsAction::Explain => {
                let (words, settings) = (context.words(), context.session.settings());
                context.say(&self.list.say_with_hint(words, settings));
                return Some(Next::default());
            }
            SettingsAction::Try(settings) => context.session.try_voice(&settings),
            SettingsAction::Set(settings) => {
                context.session.set(*settings);
                self.list.speak(&context.words().tag().to_string());
            }
        }
        context.say(&self.list.say(context.words(), context.session.settings()));
        None
    }

    /// Goes to a screen that leads back here, to the line that has the focus.
    fn come_back_from(&self, route: Route, context: &mut Context) -> Next<Message> {
        context.put_by(LeftAt(self.list.focus()));
        Go::To(route).into()
    }

    /// Brings the line that has the focus into sight.
    fn scroll(&self) -> Task<Message> {
        widgets::bring_into_view(LIST, self.list.focus(), Setting::ALL.len())
    }
}

const LIST: &str = "settings";
/// The width of a button that a finger finds (WCAG 2.2, success criterion 2.5.5).
const FINGER: f32 = 52.0;
/// Between a line and its signs, and between a name and its value.
const SIGN_GAP: f32 = 6.0;
const VALUE_GAP: f32 = 20.0;

/// The height of what the chosen line is for.
const HINT: f32 = 2.0 * 1.3 * theme::SMALL;

/// Below this height what the chosen line is for stands beside the heading.
const LOW: f32 = 440.0;
const LOW_HEADING: f32 = 26.0;

/// Where it is wider than this the groups stand in two columns.
const WIDE: f32 = 1500.0;

/// How many lines each group has.
fn lines_of_groups() -> Vec<usize> {
    let groups = Setting::ALL.chunk_by(|one, other| one.group() == other.group());
    groups.map(<[Setting]>::len).collect()
}

/// What the tyer's own pedals and keys do, a sentence for each; or that there are none, where there is room
/// to say so.
fn learnt(words: &Words, settings: &Settings, is_low: bool) -> Vec<String> {
    let own: Vec<String> = settings
        .bindings
        .own()
        .map(|(input, intent)| words.learnt(input, intent).to_string())
        .collect();
    if own.is_empty() && !is_low {
        vec![words.plainly("settings-none-learnt", &[])]
    } else {
        own
    }
}
