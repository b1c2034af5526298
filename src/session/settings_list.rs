//! The settings as a list, where each line says itself and is changed by presses: the same on a
//! screen and line by line in a terminal.

use std::time::Duration;

use super::setting::Setting;
use super::settings_steps::{hundredths, millis, stepped};
use crate::logging::Platform;
use crate::pedal::{Intent, Press};
use crate::settings::{ColourScheme, Settings};
use crate::voice::{VoiceName, VoiceSource, is_natural};
use crate::words::{Sentence, SettingValue, Spoken, Words, cycled};

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
/// assert!(matches!(press(Intent::Where), SettingsAction::Explain));
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
    /// Say the line and what it is for.
    Explain,
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

    /// The same with the focus on another line, where one comes back to it; on the last where there are not
    /// so many.
    ///
    /// ```
    /// use marlinspeak::session::{Setting, SettingsList};
    ///
    /// assert_eq!(SettingsList::new("en").from_line(3).focus(), 3);
    /// assert_eq!(SettingsList::new("en").from_line(usize::MAX).focus(), Setting::ALL.len() - 1);
    /// ```
    #[must_use]
    pub fn from_line(self, line: usize) -> Self {
        Self {
            focus: line.min(Setting::ALL.len() - 1),
            ..self
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
            let usual = SettingValue::Choice("usual");
            return words.say_voice_trial(&voice.as_ref().map_or(usual, |voice| {
                SettingValue::Voice {
                    name: voice.name.clone(),
                    is_natural: voice.is_natural(),
                }
            }));
        }
        let field = Setting::ALL[self.focus % Setting::ALL.len()];
        words.say_setting(field.name(), &self.shown(field, words, settings))
    }

    /// The number of the line that has the focus, from 0.
    pub const fn focus(&self) -> usize {
        self.focus
    }

    /// The same with what it is for, for who does not see that stand below the list.
    pub fn say_with_hint(&self, words: &Words, settings: &Settings) -> Spoken {
        self.say(words, settings).then(self.hint(words).spoken())
    }

    /// What the line that has the focus is for: with the voice, which of them are natural ones.
    pub fn hint(&self, words: &Words) -> Sentence {
        let field = Setting::ALL[self.focus % Setting::ALL.len()];
        match &self.voices {
            Some(voices) if field == Setting::Voice => {
                let source = VoiceSource::of(&self.tag, Platform::is_debian());
                let natural = voices.iter().filter(|voice| voice.is_natural());
                let natural = natural.map(|voice| voice.name.as_str());
                words.natural_voices(natural, source.named())
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
            Some(Intent::Again) => SettingsAction::Moved,
            Some(Intent::Where) => SettingsAction::Explain,
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
        match Setting::ALL[self.focus % Setting::ALL.len()] {
            Setting::Learn => SettingsAction::Learn,
            Setting::TryKnocks => SettingsAction::TryKnocks,
            Setting::Voice => self.try_voice(by, settings),
            line => SettingsAction::Set(Box::new(stepped(line, by, &self.tag, settings))),
        }
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
