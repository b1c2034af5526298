//! Words of the settings, of the form on the start screen, and of binding keys and pedals.

use fluent::{FluentArgs, fluent_args};

use super::labour::money;
use super::lengths::centimetres;
use super::spoken_messages::SpokenMessage;
use super::{LanguageChoice, Sentence, Spoken, Words};
use crate::pedal::{Input, Intent};

/// So many voices are named, and no more: some engines have hundreds.
const MOST_NAMED: usize = 5;

/// The value of a setting.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SettingValue {
    /// A number in the setting's unit.
    Number(u64),
    /// A length in millimetres.
    Length(u16),
    /// The language that is chosen.
    Language(LanguageChoice),
    /// The units that are chosen.
    Units(LanguageChoice),
    /// An amount of the tyer's money, in hundredths.
    Hundredths(u32),
    /// One of the setting's choices.
    Choice(&'static str),
    /// A voice, by the name that its service has given it.
    Voice {
        /// That name.
        name: String,
        /// Whether it is made of a person's speech.
        is_natural: bool,
    },
}

impl SettingValue {
    fn args(&self, field: &'static str) -> FluentArgs<'static> {
        let mut args = fluent_args! {
            "field" => field, "number" => 0, "length" => 0, "choice" => "", "name" => "",
            "amount" => 0,
        };
        match self {
            Self::Number(number) => {
                args.set("choice", "number");
                args.set("number", *number);
            }
            Self::Length(millimetres) => {
                args.set("choice", "number");
                args.set("length", centimetres((*millimetres).into()));
            }
            Self::Hundredths(hundredths) => {
                args.set("choice", "number");
                args.set("amount", money(f64::from(*hundredths) / 100.0));
            }
            Self::Language(_) | Self::Units(_) => {}
            Self::Choice(choice) => args.set("choice", *choice),
            Self::Voice { name, is_natural } => {
                args.set("choice", if *is_natural { "natural" } else { "name" });
                args.set("name", name.clone());
            }
        }
        args
    }
}

impl Words {
    /// The name of a setting.
    pub fn setting_name(&self, field: &'static str) -> String {
        match field {
            "language" => self.plainly("setting-language-name", &[]),
            "units" => self.plainly("setting-units-name", &[]),
            _ => self.text("settings-name", &fluent_args! { "field" => field }),
        }
    }

    /// What a setting is for.
    pub fn setting_hint(&self, field: &'static str) -> Sentence {
        self.sentence("settings-hint", &fluent_args! { "field" => field })
    }

    /// The value of a setting, as it is shown.
    pub fn setting_value(&self, field: &'static str, value: &SettingValue) -> String {
        match value {
            SettingValue::Language(choice) => {
                self.text("setting-language", &self.language_args(choice))
            }
            SettingValue::Units(choice) => self.text("setting-units", &self.units_args(choice)),
            _ => self.text("settings-value", &value.args(field)),
        }
    }

    /// A setting with its value and what can be pressed, as it is said.
    pub fn say_setting(&self, field: &'static str, value: &SettingValue) -> Spoken {
        match value {
            SettingValue::Language(choice) => self.spoken(
                SpokenMessage::SettingLanguageSay,
                &self.language_args(choice),
            ),
            SettingValue::Units(choice) => {
                self.spoken(SpokenMessage::SettingUnitsSay, &self.units_args(choice))
            }
            _ => self.spoken(SpokenMessage::SettingsSay, &value.args(field)),
        }
    }

    /// What is said in a voice that is tried, to hear it by: the service's own choice has no name.
    pub fn say_voice_trial(&self, voice: &SettingValue) -> Spoken {
        let (kind, name) = match voice {
            SettingValue::Voice { name, is_natural } if *is_natural => ("natural", name.as_str()),
            SettingValue::Voice { name, .. } => ("name", name.as_str()),
            _ => ("usual", ""),
        };
        self.spoken(
            SpokenMessage::VoiceTrialSay,
            &fluent_args! { "kind" => kind, "name" => name },
        )
    }

    /// Which voices of this language are natural ones; where there are none, how one is added: the name
    /// of the way among the messages, and of the package.
    pub fn natural_voices<'a>(
        &self,
        natural: impl Iterator<Item = &'a str>,
        (way, package): (&str, &str),
    ) -> Sentence {
        let natural: Vec<&str> = natural.take(MOST_NAMED).collect();
        if natural.is_empty() {
            let args = fluent_args! { "way" => way, "package" => package };
            return self.sentence("voices-no-natural", &args);
        }
        let names = natural.join(", ");
        self.sentence("voices-natural", &fluent_args! { "names" => names })
    }

    /// A part of the start screen's form as it is said. `typed` is what it holds, `choice` right
    /// or left where it is a choice.
    pub fn say_form_field(&self, field: &'static str, typed: &str, choice: &'static str) -> Spoken {
        let state = if typed.trim().is_empty() {
            "empty"
        } else {
            "typed"
        };
        let args = fluent_args! {
            "field" => field, "typed" => typed, "state" => state, "choice" => choice,
        };
        self.spoken(SpokenMessage::StartFieldSay, &args)
    }

    /// The speed of the voice, said when it is changed.
    pub fn say_speed(&self, words_per_minute: u16) -> Spoken {
        self.spoken(
            SpokenMessage::SpeedSay,
            &fluent_args! { "number" => words_per_minute },
        )
    }

    /// The intent that a key or pedal is asked for.
    pub fn learn_asks(&self, intent: Intent) -> Sentence {
        self.sentence("learn-asks", &fluent_args! { "intent" => intent.name() })
    }

    /// What an input was bound to.
    pub fn learnt(&self, input: &Input, intent: Intent) -> Sentence {
        let (kind, name) = input.kind_and_name();
        let kind = if name == " " { "space" } else { kind };
        let args = fluent_args! { "intent" => intent.name(), "kind" => kind, "name" => name };
        self.sentence("learn-learnt", &args)
    }
}
