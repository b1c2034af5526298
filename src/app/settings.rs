//! The settings screen: one list, worked by keys, where each line says itself.

use iced::widget::scrollable::RelativeOffset;
use iced::widget::{Id, button, column, operation, row, scrollable, text};
use iced::{Center, Element, Fill, Task, padding};

use super::state;
use super::{house, theme};
use crate::pedal::{Intent, Press, Times};
use crate::settings::{DISTANCES, Light, SCREEN_WIDTHS, Settings};
use crate::voice::{Manner, VoiceName};
use crate::words::{SettingShown, Words, turned};

/// A line of the screen, in the order of the Tab key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// Learn what is pressed for what.
    Learn,
    /// Which language.
    Language,
    /// What lengths are told in.
    Units,
    /// Which voice.
    Voice,
    /// Words a minute.
    Speed,
    /// How loud the voice is.
    Volume,
    /// How high.
    Pitch,
    /// Short sounds.
    Cues,
    /// How loud they are.
    CueVolume,
    /// A flash of the edge.
    Flash,
    /// Dark or light.
    Theme,
    /// From the eye to the screen.
    Distance,
    /// The width of the picture.
    ScreenWidth,
    /// Moving on without a press.
    Pacing,
    /// The lock-out.
    Bounce,
    /// Long presses.
    Long,
    /// Double presses.
    Double,
}

impl Field {
    /// All of them.
    pub const ALL: [Self; 17] = [
        Self::Learn,
        Self::Language,
        Self::Units,
        Self::Voice,
        Self::Speed,
        Self::Volume,
        Self::Pitch,
        Self::Cues,
        Self::CueVolume,
        Self::Flash,
        Self::Theme,
        Self::Distance,
        Self::ScreenWidth,
        Self::Pacing,
        Self::Bounce,
        Self::Long,
        Self::Double,
    ];

    const fn name(self) -> &'static str {
        match self {
            Self::Learn => "learn",
            Self::Language => "language",
            Self::Units => "units",
            Self::Voice => "voice",
            Self::Speed => "speed",
            Self::Volume => "volume",
            Self::Pitch => "pitch",
            Self::Cues => "cues",
            Self::CueVolume => "cue-volume",
            Self::Flash => "flash",
            Self::Theme => "theme",
            Self::Distance => "distance",
            Self::ScreenWidth => "screen-width",
            Self::Pacing => "pacing",
            Self::Bounce => "bounce",
            Self::Long => "long",
            Self::Double => "double",
        }
    }
}

/// Where the focus is, and the voices there are.
#[derive(Debug, Default)]
pub struct State {
    focus: usize,
    /// All voices; none before the service has told.
    all: Option<Vec<VoiceName>>,
    /// Those of this language.
    voices: Option<Vec<String>>,
    tag: String,
}

/// What happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {
    /// This line is looked at.
    Focus(usize),
    /// This line is to be changed, by so many steps.
    Change(usize, i16),
}

/// What the parent has to do.
#[derive(Clone, Debug)]
pub enum Action {
    /// Nothing.
    None,
    /// The focus moved: say it.
    Moved,
    /// Take these settings, and say the line.
    Set(Box<Settings>),
    /// Go to the learn screen.
    Learn,
    /// Go to the start screen.
    Leave,
}

impl State {
    /// The screen for words of this language.
    pub fn new(tag: &str) -> Self {
        Self {
            tag: tag.to_owned(),
            ..Self::default()
        }
    }

    /// Takes in the voices there are.
    pub fn voices(&mut self, voices: &[VoiceName]) {
        self.all = Some(voices.to_vec());
        self.sort_out();
    }

    /// The words are of another language now.
    pub fn speak(&mut self, tag: &str) {
        tag.clone_into(&mut self.tag);
        self.sort_out();
    }

    /// The voices of the language of the words, among all.
    fn sort_out(&mut self) {
        let primary = |tag: &str| tag.split('-').next().unwrap_or(tag).to_ascii_lowercase();
        let ours = |voices: &Vec<VoiceName>| {
            let ours = voices
                .iter()
                .filter(|voice| primary(&voice.language) == primary(&self.tag));
            ours.map(|voice| voice.name.clone()).collect()
        };
        self.voices = self.all.as_ref().map(ours);
    }

    /// The line that has the focus, as it is said.
    pub fn say(&self, words: &Words, settings: &Settings) -> String {
        let field = Field::ALL[self.focus % Field::ALL.len()];
        words.say_setting(field.name(), &self.shown(field, words, settings))
    }

    /// Brings the line that has the focus into sight.
    pub fn scroll(&self) -> Task<state::Message> {
        #[expect(clippy::cast_precision_loss, reason = "a handful of lines")]
        let y = self.focus as f32 / (Field::ALL.len() - 1) as f32;
        operation::snap_to(Id::new(LIST), RelativeOffset { x: 0.0, y })
    }

    /// Does what a message asks for.
    pub fn update(&mut self, message: Message, settings: &Settings) -> Action {
        match message {
            Message::Focus(index) => {
                self.focus = index;
                if Field::ALL.get(index) == Some(&Field::Learn) {
                    return Action::Learn;
                }
                Action::Moved
            }
            Message::Change(index, by) => {
                self.focus = index;
                self.change(by, settings)
            }
        }
    }

    /// Does what a press asks for. `intent` is what it means on every screen.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>, settings: &Settings) -> Action {
        // A held arrow changes a value as fast as it repeats.
        match press.key.as_str() {
            "ArrowRight" => return self.change(1, settings),
            "ArrowLeft" => return self.change(-1, settings),
            _ if press.is_repeat => return Action::None,
            "Tab" | "ArrowDown" => return self.step(1),
            "Shift+Tab" | "ArrowUp" => return self.step(Field::ALL.len() - 1),
            " " | "Enter" => return self.change(1, settings),
            _ => {}
        }
        match intent {
            Some(Intent::Next) => self.step(1),
            Some(Intent::Back) => self.step(Field::ALL.len() - 1),
            Some(Intent::Again | Intent::Where) => Action::Moved,
            Some(Intent::Leave) => Action::Leave,
            _ => Action::None,
        }
    }

    fn step(&mut self, by: usize) -> Action {
        self.focus = (self.focus + by) % Field::ALL.len();
        Action::Moved
    }

    fn change(&self, by: i16, settings: &Settings) -> Action {
        let mut new = settings.clone();
        match Field::ALL[self.focus % Field::ALL.len()] {
            Field::Learn => return Action::Learn,
            Field::Language => new.tongue.turn_language(by > 0),
            Field::Units => new.tongue.turn_units(by > 0),
            Field::Voice => {
                let mut manner = new.manner(&self.tag);
                let Some(voices) = &self.voices else {
                    return Action::Moved;
                };
                let here = manner.voice.as_ref();
                let here = here.and_then(|here| voices.iter().position(|name| name == here));
                manner.voice = turned(voices, here, by > 0);
                new.set_manner(&self.tag, manner);
            }
            field @ (Field::Speed | Field::Volume | Field::Pitch) => {
                let mut manner = new.manner(&self.tag);
                match field {
                    Field::Speed => {
                        let (least, most) = Manner::SPEEDS.into_inner();
                        manner.words_per_minute =
                            moved(manner.words_per_minute, by * 10, least, most);
                    }
                    Field::Volume => manner.volume = percent(manner.volume, by),
                    _ => manner.pitch = percent(manner.pitch, by),
                }
                new.set_manner(&self.tag, manner);
            }
            Field::Cues => new.cues.is_on = !new.cues.is_on,
            Field::CueVolume => new.cues.volume = percent(new.cues.volume, by),
            Field::Flash => new.flash = !new.flash,
            Field::Theme => {
                new.light = match new.light {
                    Light::Dark => Light::Bright,
                    Light::Bright => Light::Dark,
                }
            }
            Field::Distance => {
                let (least, most) = DISTANCES.into_inner();
                new.screen.distance = moved(new.screen.distance, by * 100, least, most);
            }
            Field::ScreenWidth => {
                let (least, most) = SCREEN_WIDTHS.into_inner();
                new.screen.width = match new.screen.width {
                    None => Some(340),
                    Some(width) if by < 0 && width <= least => None,
                    Some(width) => Some(moved(width, by * 10, least, most)),
                };
            }
            Field::Pacing => new.pacing = !new.pacing,
            Field::Bounce => {
                let (least, most) = Times::BOUNCE.into_inner();
                new.times.bounce = time(moved(millis(new.times.bounce), by * 50, least, most));
            }
            Field::Long => {
                let (least, most) = Times::LONG.into_inner();
                let usual = Times::USUAL_LONG;
                new.times.long = switched(new.times.long, usual, by * 100, least, most);
            }
            Field::Double => {
                let (least, most) = Times::DOUBLE.into_inner();
                let usual = Times::USUAL_DOUBLE;
                new.times.double = switched(new.times.double, usual, by * 50, least, most);
            }
        }
        Action::Set(Box::new(new))
    }

    fn shown(&self, field: Field, words: &Words, settings: &Settings) -> SettingShown {
        let manner = settings.manner(&words.tag().to_string());
        let number = |number: u64| SettingShown::Number(number);
        let maybe = |time: Option<std::time::Duration>| {
            time.map_or(SettingShown::Choice("off"), |time| {
                number(millis(time).into())
            })
        };
        let flag = |is_on| SettingShown::Choice(if is_on { "on" } else { "off" });
        match field {
            Field::Language | Field::Units => SettingShown::Tongue(settings.tongue.clone()),
            Field::Learn => number(settings.bindings.learnt().count() as u64),
            Field::Voice => match manner.voice {
                Some(voice) => SettingShown::Name(voice),
                None if self.voices.is_none() => SettingShown::Choice("asking"),
                None => SettingShown::Choice("usual"),
            },
            Field::Speed => number(manner.words_per_minute.into()),
            Field::Volume => number(manner.volume.into()),
            Field::Pitch => number(manner.pitch.into()),
            Field::Cues => flag(settings.cues.is_on),
            Field::CueVolume => number(settings.cues.volume.into()),
            Field::Flash => flag(settings.flash),
            Field::Theme => SettingShown::Choice(match settings.light {
                Light::Dark => "dark",
                Light::Bright => "light",
            }),
            Field::Distance => SettingShown::Length(settings.screen.distance),
            Field::ScreenWidth => match settings.screen.width {
                Some(width) => SettingShown::Length(width),
                None => SettingShown::Choice("unknown"),
            },
            Field::Pacing => flag(settings.pacing),
            Field::Bounce => number(millis(settings.times.bounce).into()),
            Field::Long => maybe(settings.times.long),
            Field::Double => maybe(settings.times.double),
        }
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a>(
        &'a self,
        words: &Words,
        settings: &Settings,
        notices: Vec<String>,
    ) -> Element<'a, Message> {
        let mut page = column![].spacing(14).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        let heading = text(words.plainly("settings-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        // The bar of the list stands beside it.
        let mut list = column![].spacing(6).padding(padding::right(16));
        for (index, field) in Field::ALL.into_iter().enumerate() {
            let name = text(words.setting_name(field.name())).size(theme::BODY);
            let value = words.setting_value(field.name(), &self.shown(field, words, settings));
            let value = text(value).size(theme::BODY).font(theme::BOLD);
            let has_focus = index == self.focus;
            let line = button(row![name.width(Fill), value.width(Fill)].spacing(20))
                .width(Fill)
                .padding([8, 14])
                .style(theme::pressable(has_focus))
                .on_press(Message::Focus(index));
            let mut line = row![line].spacing(6).align_y(Center);
            if field != Field::Learn {
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
        }
        page.push(heading)
            .push(scrollable(list).id(Id::new(LIST)).width(Fill).height(Fill))
            .push(house::quiet(
                words.plainly("settings-keys", &[]),
                theme::BODY,
            ))
            .into()
    }
}

const LIST: &str = "settings";

fn moved(value: u16, by: i16, least: u16, most: u16) -> u16 {
    value.saturating_add_signed(by).clamp(least, most)
}

fn percent(value: u8, by: i16) -> u8 {
    let percent = moved(value.into(), by * 5, 0, 100);
    u8::try_from(percent).unwrap_or(100)
}

/// A time that can be off; below its least it is.
fn switched(
    value: Option<std::time::Duration>,
    usual: std::time::Duration,
    by: i16,
    least: u16,
    most: u16,
) -> Option<std::time::Duration> {
    match value {
        None if by > 0 => Some(usual),
        None => None,
        Some(value) if by < 0 && millis(value) <= least => None,
        Some(value) => Some(time(moved(millis(value), by, least, most))),
    }
}

fn millis(time: std::time::Duration) -> u16 {
    u16::try_from(time.as_millis()).unwrap_or(u16::MAX)
}

fn time(millis: u16) -> std::time::Duration {
    std::time::Duration::from_millis(millis.into())
}
