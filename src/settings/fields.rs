//! The fields of the document as they are read, each within its bounds.

use std::collections::BTreeMap;
use std::str::FromStr;
use std::time::Duration;

use serde::Deserialize;
use serde_json::Value;
use strum::VariantNames;

use super::{ColourScheme, Cues, DISTANCES, SCREEN_WIDTHS, ScreenGeometry, Settings, Verbosity};
use crate::bench::Prices;
use crate::guide::AtOnce;
use crate::pedal::{Bindings, Input, Intent, Times};
use crate::voice::SpeechSettings;
use crate::words::{Detail, LanguageChoice, Units};

/// Settings as they are read: every field is there, the usual ones where none was given.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each holds or not, whatever the others do"
)]
#[derive(Deserialize)]
pub(super) struct SettingsFields {
    language: Option<String>,
    units: Option<Named<Units>>,
    bindings: Vec<BindingField>,
    knocks: bool,
    presses: PressesSection,
    /// How each language is spoken; the name that this has in the file is an older one.
    #[serde(rename = "manners")]
    speech: BTreeMap<String, SpeechSection>,
    cues: CuesSection,
    flash: bool,
    still: bool,
    theme: Named<ColourScheme>,
    screen: ScreenSection,
    pacing: bool,
    detail: Named<Detail>,
    at_once: AtOnceField,
    prices: PricesSection,
}

#[derive(Deserialize)]
#[expect(
    clippy::struct_field_names,
    reason = "the names are those of the document"
)]
struct PressesSection {
    bounce_ms: Within<u16, { *Times::BOUNCE.start() }, { *Times::BOUNCE.end() }>,
    long_ms: Option<Within<u16, { *Times::LONG.start() }, { *Times::LONG.end() }>>,
    double_ms: Option<Within<u16, { *Times::DOUBLE.start() }, { *Times::DOUBLE.end() }>>,
}

#[derive(Deserialize)]
struct SpeechSection {
    words_per_minute:
        Option<Within<u16, { *SpeechSettings::SPEEDS.start() }, { *SpeechSettings::SPEEDS.end() }>>,
    volume: Option<Percent>,
    pitch: Option<Percent>,
    voice: Option<String>,
    engine: Option<String>,
}

#[derive(Deserialize)]
struct CuesSection {
    on: bool,
    volume: Percent,
}

#[derive(Deserialize)]
struct ScreenSection {
    distance_mm: Within<u16, { *DISTANCES.start() }, { *DISTANCES.end() }>,
    width_mm: Option<Within<u16, { *SCREEN_WIDTHS.start() }, { *SCREEN_WIDTHS.end() }>>,
}

#[derive(Deserialize)]
struct PricesSection {
    metre: Option<PriceField>,
    hour: Option<PriceField>,
}

type Percent = Within<u8, 0, 100>;

/// A whole number within bounds.
#[derive(Deserialize)]
#[serde(try_from = "Value", bound = "N: TryFrom<u16>")]
struct Within<N, const LEAST: u16, const MOST: u16>(N);

/// One of a few, by its name.
#[derive(Deserialize)]
#[serde(try_from = "String", bound = "T: FromStr + VariantNames")]
struct Named<T>(T);

#[derive(Deserialize)]
#[serde(try_from = "Value")]
struct BindingField(Input, Intent);

#[derive(Deserialize)]
#[serde(try_from = "Value")]
struct AtOnceField(AtOnce);

/// A price in the tyer's own money.
#[derive(Deserialize)]
#[serde(try_from = "Value")]
struct PriceField(f64);

impl From<SettingsFields> for Settings {
    fn from(fields: SettingsFields) -> Self {
        let bindings = fields.bindings.into_iter();
        let speech = fields.speech.into_iter();
        let millis = |time: u16| Duration::from_millis(time.into());
        Self {
            language: LanguageChoice {
                tag: fields.language,
                units: fields.units.map(|units| units.0),
            },
            bindings: Bindings::of(bindings.map(|BindingField(input, intent)| (input, intent)))
                .with_later(),
            knocks: fields.knocks,
            times: Times {
                bounce: millis(fields.presses.bounce_ms.0),
                long: fields.presses.long_ms.map(|time| millis(time.0)),
                double: fields.presses.double_ms.map(|time| millis(time.0)),
            },
            speech: speech
                .map(|(tag, section)| (tag.clone(), section.into_speech(tag)))
                .collect(),
            cues: Cues {
                is_on: fields.cues.on,
                volume: fields.cues.volume.0,
            },
            flash: fields.flash,
            still: fields.still,
            colours: fields.theme.0,
            screen: ScreenGeometry {
                distance: fields.screen.distance_mm.0,
                width: fields.screen.width_mm.map(|width| width.0),
            },
            pacing: fields.pacing,
            verbosity: Verbosity {
                detail: fields.detail.0,
                at_once: fields.at_once.0,
            },
            prices: Prices {
                metre: fields.prices.metre.map(|price| price.0),
                hour: fields.prices.hour.map(|price| price.0),
            },
        }
    }
}

impl SpeechSection {
    fn into_speech(self, tag: String) -> SpeechSettings {
        let usual = SpeechSettings::default();
        SpeechSettings {
            words_per_minute: self
                .words_per_minute
                .map_or(usual.words_per_minute, |rate| rate.0),
            volume: self.volume.map_or(usual.volume, |volume| volume.0),
            pitch: self.pitch.map_or(usual.pitch, |pitch| pitch.0),
            voice: self.voice,
            engine: self.engine,
            language: Some(tag),
        }
    }
}

impl<N: TryFrom<u16>, const LEAST: u16, const MOST: u16> TryFrom<Value> for Within<N, LEAST, MOST> {
    type Error = String;

    fn try_from(value: Value) -> Result<Self, String> {
        let number = value.as_u64().and_then(|number| u16::try_from(number).ok());
        number
            .filter(|number| (LEAST..=MOST).contains(number))
            .and_then(|number| number.try_into().ok())
            .map(Self)
            .ok_or_else(|| format!("is {value}; it may be {LEAST} to {MOST}"))
    }
}

impl<T: FromStr + VariantNames> TryFrom<String> for Named<T> {
    type Error = String;

    fn try_from(given: String) -> Result<Self, String> {
        let choice = given.parse().map(Self);
        choice.map_err(|_| format!("is {given:?}; it may be {}", T::VARIANTS.join(", ")))
    }
}

impl TryFrom<Value> for BindingField {
    type Error = String;

    fn try_from(value: Value) -> Result<Self, String> {
        let text = |name| value.get(name).and_then(Value::as_str);
        let input = text("input").and_then(Input::parse);
        let intent = text("intent").and_then(|name| name.parse::<Intent>().ok());
        let both = input.zip(intent).map(|(input, intent)| Self(input, intent));
        both.ok_or_else(|| format!("names no input or intent: {value}"))
    }
}

impl TryFrom<Value> for AtOnceField {
    type Error = String;

    fn try_from(value: Value) -> Result<Self, String> {
        if value == "leg" {
            return Ok(Self(AtOnce::WholeLeg));
        }
        Within::<u16, 1, 999>::try_from(value).map(|most| Self(AtOnce::UpTo(most.0)))
    }
}

impl TryFrom<Value> for PriceField {
    type Error = String;

    fn try_from(value: Value) -> Result<Self, String> {
        let price = value
            .as_f64()
            .filter(|price| Prices::BOUNDS.contains(price));
        let (least, most) = Prices::BOUNDS.into_inner();
        price
            .map(Self)
            .ok_or_else(|| format!("is {value}; it may be {least} to {most}"))
    }
}
