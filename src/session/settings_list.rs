//! The settings as a list, where each line says itself and is changed by presses: the same on a
//! screen and line by line in a terminal.

use std::time::Duration;

use super::setting::Setting;
use crate::bench::Prices;
use crate::logging::Platform;
use crate::pedal::{Intent, Press, Times};
use crate::settings::{ColourScheme, DISTANCES, SCREEN_WIDTHS, Settings};
use crate::voice::{SpeechSettings, VoiceName, VoiceSource, is_natural};
use crate::words::{SettingValue, Spoken, Words, cycled};

/// Where the focus is, and the voices there are.
///
/// ```
/// use marlinspeak::pedal::Press;
/// use marlinspeak::session::{Setting, SettingsAction, SettingsList};
/// use marlinspeak::settings::Settings;
///
/// let (mut list, settings) = (SettingsList::new("en"), Settings::default());
/// while Setting::ALL[list.focus()] != Setting::Flash {
///     let down = Press { key: "ArrowDown".to_owned(), is_repeat: false };
///     list.press(&down, None, &settings);
/// }
/// let right = Press { key: "ArrowRight".to_owned(), is_repeat: false };
/// let SettingsAction::Set(changed) = list.press(&right, None, &settings) else {
///     panic!("nothing has changed");
/// };
/// assert!(changed.flash && !settings.flash);
/// ```
#[derive(Debug, Default)]
pub struct SettingsList {
    focus: usize,
    /// All voices; none before the service has told.
    all: Option<Vec<VoiceName>>,
    /// Those of this language, natural ones first.
    voices: Option<Vec<VoiceName>>,
    /// The voice that is tried before it is taken, if one is.
    trial: Option<Trial>,
    tag: String,
}

/// A voice that is tried; none is the service's own choice.
#[derive(Debug)]
struct Trial(Option<VoiceName>);

/// What a press on the list comes to.
///
/// ```
/// use marlinspeak::pedal::{Intent, Press};
/// use marlinspeak::session::{Setting, SettingsAction, SettingsList};
/// use marlinspeak::settings::Settings;
///
/// let (mut list, settings) = (SettingsList::new("en"), Settings::default());
/// let mut press = |intent| list.press(&Press::default(), Some(intent), &settings);
/// assert!(matches!(press(Intent::Next), SettingsAction::Moved));
/// assert!(matches!(press(Intent::Leave), SettingsAction::Leave));
/// // Learning what is pressed for what has a screen of its own.
/// let at = Setting::ALL.iter().position(|line| *line == Setting::Learn).unwrap();
/// assert!(matches!(list.look_at(at, &settings), SettingsAction::Learn));
/// ```
#[derive(Clone, Debug)]
pub enum SettingsAction {
    /// Nothing.
    None,
    /// The focus moved, or stays: say the line.
    Moved,
    /// Take these settings, and say the line.
    Set(Box<Settings>),
    /// Speak by these settings until others are taken, and say the line.
    Try(Box<Settings>),
    /// Learn what is pressed for what.
    Learn,
    /// Try what is taken for a knock.
    TryKnocks,
    /// Leave the list.
    Leave,
}

impl SettingsList {
    /// The list for words of this language.
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
        let ours = |voices: &Vec<VoiceName>| {
            let ours = voices.iter().filter(|voice| voice.speaks(&self.tag));
            let mut ours: Vec<VoiceName> = ours.cloned().collect();
            ours.sort_by_key(|voice| !voice.is_natural());
            ours
        };
        self.voices = self.all.as_ref().map(ours);
        self.trial = None;
    }

    /// The line that has the focus, as it is said.
    pub fn say(&self, words: &Words, settings: &Settings) -> Spoken {
        if let Some(Trial(voice)) = &self.trial {
            return words.say_voice_trial(voice.as_ref());
        }
        let field = Setting::ALL[self.focus % Setting::ALL.len()];
        words.say_setting(field.name(), &self.shown(field, words, settings))
    }

    /// The number of the line that has the focus, from 0.
    pub const fn focus(&self) -> usize {
        self.focus
    }

    /// What the line that has the focus is for: with the voice, which of them are natural ones.
    pub fn hint(&self, words: &Words) -> String {
        let field = Setting::ALL[self.focus % Setting::ALL.len()];
        match &self.voices {
            Some(voices) if field == Setting::Voice => {
                let source = VoiceSource::of(&self.tag, Platform::is_debian());
                words.natural_voices(voices, source)
            }
            _ => words.setting_hint(field.name()),
        }
    }

    /// Whether a voice is heard that is not taken yet.
    pub const fn is_trying(&self) -> bool {
        self.trial.is_some()
    }

    /// Looks at a line. Looked at once more, the voice that is tried is taken.
    pub fn look_at(&mut self, index: usize, settings: &Settings) -> SettingsAction {
        let is_same = self.focus == index;
        self.focus = index;
        if self.is_trying() {
            return self.end_trial(is_same, settings);
        }
        match Setting::ALL.get(index) {
            Some(Setting::Learn) => SettingsAction::Learn,
            Some(Setting::TryKnocks) => SettingsAction::TryKnocks,
            _ => SettingsAction::Moved,
        }
    }

    /// Changes a line by so many steps.
    pub fn change_at(&mut self, index: usize, by: i16, settings: &Settings) -> SettingsAction {
        if self.is_trying() && self.focus != index {
            self.trial = None;
        }
        self.focus = index;
        self.change(by, settings)
    }

    /// Does what a press asks for. `intent` is what it means on every screen.
    pub fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        settings: &Settings,
    ) -> SettingsAction {
        // A held arrow changes a value as fast as it repeats.
        match press.key.as_str() {
            "ArrowRight" => return self.change(1, settings),
            "ArrowLeft" => return self.change(-1, settings),
            _ if press.is_repeat => return SettingsAction::None,
            "Enter" if self.is_trying() => return self.end_trial(true, settings),
            "Tab" | "ArrowDown" => return self.step(1, settings),
            "Shift+Tab" | "ArrowUp" => return self.step(Setting::ALL.len() - 1, settings),
            " " | "Enter" => return self.change(1, settings),
            _ => {}
        }
        if self.is_trying() && intent == Some(Intent::Leave) {
            return self.end_trial(false, settings);
        }
        match intent {
            Some(Intent::Next) => self.step(1, settings),
            Some(Intent::Back) => self.step(Setting::ALL.len() - 1, settings),
            Some(Intent::Again | Intent::Where) => SettingsAction::Moved,
            Some(Intent::Leave) => SettingsAction::Leave,
            _ => SettingsAction::None,
        }
    }

    /// Goes so many lines further. A voice that was only tried is not heard from there on.
    fn step(&mut self, by: usize, settings: &Settings) -> SettingsAction {
        self.focus = (self.focus + by) % Setting::ALL.len();
        if self.is_trying() {
            return self.end_trial(false, settings);
        }
        SettingsAction::Moved
    }

    /// Tries the next voice, or the one before.
    fn try_voice(&mut self, by: i16, settings: &Settings) -> SettingsAction {
        let Some(voices) = &self.voices else {
            return SettingsAction::Moved;
        };
        let speech = settings.speech(&self.tag);
        let is_chosen = |voice: &&VoiceName| {
            let is_engine = speech.engine.is_none() || voice.engine == speech.engine;
            is_engine && Some(&voice.name) == speech.voice.as_ref()
        };
        let here = match &self.trial {
            Some(Trial(tried)) => tried.clone(),
            None => voices.iter().find(is_chosen).cloned(),
        };
        let here = here.and_then(|here| voices.iter().position(|voice| *voice == here));
        self.trial = Some(Trial(cycled(voices, here, by > 0)));
        SettingsAction::Try(Box::new(self.tried(settings)))
    }

    /// Ends the trial of a voice, which is taken or not.
    fn end_trial(&mut self, takes: bool, settings: &Settings) -> SettingsAction {
        let new = if takes {
            self.tried(settings)
        } else {
            settings.clone()
        };
        self.trial = None;
        SettingsAction::Set(Box::new(new))
    }

    /// The settings with the voice that is tried.
    fn tried(&self, settings: &Settings) -> Settings {
        let mut new = settings.clone();
        if let Some(Trial(voice)) = &self.trial {
            let mut speech = new.speech(&self.tag);
            speech.voice = voice.as_ref().map(|voice| voice.name.clone());
            speech.engine = voice.as_ref().and_then(|voice| voice.engine.clone());
            new.set_speech(&self.tag, speech);
        }
        new
    }

    fn change(&mut self, by: i16, settings: &Settings) -> SettingsAction {
        let mut new = settings.clone();
        match Setting::ALL[self.focus % Setting::ALL.len()] {
            Setting::Learn => return SettingsAction::Learn,
            Setting::TryKnocks => return SettingsAction::TryKnocks,
            Setting::Knocks => new.knocks = !new.knocks,
            Setting::Language => new.language.next_language(by > 0),
            Setting::Units => new.language.next_units(by > 0),
            Setting::Voice => return self.try_voice(by, settings),
            field @ (Setting::Speed | Setting::Volume | Setting::Pitch) => {
                let mut speech = new.speech(&self.tag);
                match field {
                    Setting::Speed => {
                        let (least, most) = SpeechSettings::SPEEDS.into_inner();
                        speech.words_per_minute =
                            moved(speech.words_per_minute, by * 10, least, most);
                    }
                    Setting::Volume => speech.volume = percent(speech.volume, by),
                    _ => speech.pitch = percent(speech.pitch, by),
                }
                new.set_speech(&self.tag, speech);
            }
            Setting::Cues => new.cues.is_on = !new.cues.is_on,
            Setting::CueVolume => new.cues.volume = percent(new.cues.volume, by),
            Setting::Flash => new.flash = !new.flash,
            Setting::Motion => new.still = !new.still,
            Setting::Theme => {
                new.colours = match new.colours {
                    ColourScheme::Dark => ColourScheme::Light,
                    ColourScheme::Light => ColourScheme::Dark,
                }
            }
            Setting::Distance => {
                let (least, most) = DISTANCES.into_inner();
                new.screen.distance = moved(new.screen.distance, by * 100, least, most);
            }
            Setting::ScreenWidth => {
                let (least, most) = SCREEN_WIDTHS.into_inner();
                new.screen.width = match new.screen.width {
                    None => Some(340),
                    Some(width) if by < 0 && width <= least => None,
                    Some(width) => Some(moved(width, by * 10, least, most)),
                };
            }
            Setting::Pacing => new.pacing = !new.pacing,
            Setting::PriceMetre => new.prices.metre = priced(new.prices.metre, by * 5),
            Setting::PriceHour => new.prices.hour = priced(new.prices.hour, by * 100),
            Setting::Bounce => {
                let (least, most) = Times::BOUNCE.into_inner();
                new.times.bounce = time(moved(millis(new.times.bounce), by * 50, least, most));
            }
            Setting::Long => {
                let (least, most) = Times::LONG.into_inner();
                let usual = Times::USUAL_LONG;
                new.times.long = switched(new.times.long, usual, by * 100, least, most);
            }
            Setting::Double => {
                let (least, most) = Times::DOUBLE.into_inner();
                let usual = Times::USUAL_DOUBLE;
                new.times.double = switched(new.times.double, usual, by * 50, least, most);
            }
        }
        SettingsAction::Set(Box::new(new))
    }

    /// The value of a line.
    pub fn shown(&self, field: Setting, words: &Words, settings: &Settings) -> SettingValue {
        let speech = self.tried(settings).speech(&words.tag().to_string());
        let number = |number: u64| SettingValue::Number(number);
        let maybe = |time: Option<Duration>| {
            time.map_or(SettingValue::Choice("off"), |time| {
                number(millis(time).into())
            })
        };
        let amount = |price: Option<f64>| {
            price.map_or(SettingValue::Choice("off"), |price| {
                SettingValue::Hundredths(hundredths(price))
            })
        };
        let flag = |is_on| SettingValue::Choice(if is_on { "on" } else { "off" });
        match field {
            Setting::Language => SettingValue::Language(settings.language.clone()),
            Setting::Units => SettingValue::Units(settings.language.clone()),
            Setting::Learn => number(settings.bindings.own().count() as u64),
            Setting::Knocks | Setting::TryKnocks => flag(settings.knocks),
            Setting::Voice => match speech.voice {
                Some(name) => SettingValue::Voice {
                    is_natural: speech.engine.as_deref().is_some_and(is_natural),
                    name,
                },
                None if self.voices.is_none() => SettingValue::Choice("asking"),
                None => SettingValue::Choice("usual"),
            },
            Setting::Speed => number(speech.words_per_minute.into()),
            Setting::Volume => number(speech.volume.into()),
            Setting::Pitch => number(speech.pitch.into()),
            Setting::Cues => flag(settings.cues.is_on),
            Setting::CueVolume => number(settings.cues.volume.into()),
            Setting::Flash => flag(settings.flash),
            Setting::Motion => flag(!settings.still),
            Setting::Theme => SettingValue::Choice(match settings.colours {
                ColourScheme::Dark => "dark",
                ColourScheme::Light => "light",
            }),
            Setting::Distance => SettingValue::Length(settings.screen.distance),
            Setting::ScreenWidth => match settings.screen.width {
                Some(width) => SettingValue::Length(width),
                None => SettingValue::Choice("unknown"),
            },
            Setting::Pacing => flag(settings.pacing),
            Setting::PriceMetre => amount(settings.prices.metre),
            Setting::PriceHour => amount(settings.prices.hour),
            Setting::Bounce => number(millis(settings.times.bounce).into()),
            Setting::Long => maybe(settings.times.long),
            Setting::Double => maybe(settings.times.double),
        }
    }
}

fn moved(value: u16, by: i16, least: u16, most: u16) -> u16 {
    value.saturating_add_signed(by).clamp(least, most)
}

fn percent(value: u8, by: i16) -> u8 {
    let percent = moved(value.into(), by * 5, 0, 100);
    u8::try_from(percent).unwrap_or(100)
}

/// A time that can be off; below its least it is.
fn switched(
    value: Option<Duration>,
    usual: Duration,
    by: i16,
    least: u16,
    most: u16,
) -> Option<Duration> {
    match value {
        None if by > 0 => Some(usual),
        None => None,
        Some(value) if by < 0 && millis(value) <= least => None,
        Some(value) => Some(time(moved(millis(value), by, least, most))),
    }
}

/// A price moved by so many hundredths; below the first step there is none.
fn priced(price: Option<f64>, by: i16) -> Option<f64> {
    let most = hundredths(*Prices::BOUNDS.end());
    let moved = price.map_or(0, hundredths).saturating_add_signed(by.into());
    (moved > 0).then(|| f64::from(moved.min(most)) / 100.0)
}

/// A price in hundredths of the tyer's money.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "prices run from 0 to a million"
)]
fn hundredths(price: f64) -> u32 {
    (price * 100.0).round() as u32
}

fn millis(time: Duration) -> u16 {
    u16::try_from(time.as_millis()).unwrap_or(u16::MAX)
}

fn time(millis: u16) -> Duration {
    Duration::from_millis(millis.into())
}
