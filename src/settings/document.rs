//! The document: how preferences are written and read. A field that is missing or `null` is as
//! usual; one that is there must be as it was meant.

use std::collections::BTreeMap;
use std::str::FromStr;
use std::time::Duration;

use serde::Deserialize;
use serde_json::{Value, json};
use strum::VariantNames;

use super::{ColourScheme, Cues, DISTANCES, SCREEN_WIDTHS, ScreenGeometry, Settings, Verbosity};
use crate::bench::Prices;
use crate::files::{self, Document, FieldError, Fields, FormatError};
use crate::guide::AtOnce;
use crate::pedal::{Bindings, Input, Intent, Times};
use crate::voice::SpeechSettings;
use crate::words::{Detail, LanguageChoice, Units};

/// The version of the documents written here, and the newest that is read.
pub const VERSION: u64 = 1;

/// Sections within the document, one within another, whose unknown fields are kept.
const SECTIONS_DEEP: u32 = 2;

/// The settings, and the fields of their document that this version does not know.
#[derive(Clone, Debug, Default)]
pub(super) struct SettingsDocument {
    pub(super) settings: Settings,
    unknown: Fields,
}

impl Document for SettingsDocument {
    type Error = FormatError;

    fn read(document: &[u8]) -> Result<Self, FormatError> {
        let (version, fields) = files::open(document, VERSION)?;
        if version < VERSION {
            return Err(FormatError::NoVersion);
        }
        let usual = known_fields(&Settings::default())?;
        let given = files::with_unknown(without_nulls(&fields), &usual);
        let settings: Settings = files::decode::<SettingsFields>(&given)
            .map_err(shape)?
            .into();
        Ok(Self {
            unknown: files::unknown_fields(fields, &known_fields(&settings)?, SECTIONS_DEEP),
            settings,
        })
    }
}

impl SettingsDocument {
    /// The same document with these settings.
    pub(super) fn with(&self, settings: Settings) -> Self {
        Self {
            settings,
            unknown: self.unknown.clone(),
        }
    }

    /// The document as text.
    ///
    /// # Errors
    /// [`FormatError::NotTheSame`], which settings never come to.
    pub(super) fn write(&self) -> Result<Vec<u8>, FormatError> {
        files::seal(files::with_unknown(
            known_fields(&self.settings)?,
            &self.unknown,
        ))
    }

    /// What can be saved of a document that is not believed: every setting that can be read, and
    /// for the others what `base` has. The names of those come with it. `None` when it is no JSON
    /// object.
    pub(super) fn salvage(document: &[u8], base: &Self) -> Option<(Self, Vec<String>)> {
        let Ok(Value::Object(mut given)) = files::parse(document) else {
            return None;
        };
        given.remove("version");
        // What has a checksum had every setting when it was written.
        let was_complete = given.remove("checksum").is_some();
        let known = known_fields(&base.settings).ok()?;
        let missing = known
            .keys()
            .filter(|name| was_complete && *name != "version" && !given.contains_key(*name));
        let mut lost: Vec<String> = missing.cloned().collect();
        let mut kept = known.clone();
        for (name, value) in &given {
            let settings = known.get(name).filter(|_| !value.is_null());
            if let Some(settings) = settings {
                salvage_field(&mut kept, &[name], value, settings, &mut lost);
            }
        }
        let settings = files::decode::<SettingsFields>(&kept).ok()?.into();
        let unknown = files::unknown_fields(given, &known_fields(&settings).ok()?, SECTIONS_DEEP);
        Some((Self { settings, unknown }, lost))
    }

    /// These settings, as they were changed from `base`, on top of what another program has written
    /// meanwhile.
    pub(super) fn on_top_of(self, base: &Settings, written: Self) -> Result<Self, FormatError> {
        let [base, ours, theirs] = [base, &self.settings, &written.settings].map(known_fields);
        let merged = merged(&base?, ours?, theirs?);
        Ok(Self {
            settings: files::decode::<SettingsFields>(&merged)
                .map_err(shape)?
                .into(),
            unknown: written.unknown,
        })
    }
}

/// Puts a field, or what can be read of a section or a list, in the place of what is usual.
fn salvage_field(
    kept: &mut Fields,
    path: &[&str],
    value: &Value,
    usual: &Value,
    lost: &mut Vec<String>,
) {
    let reads = |value: &Value| {
        let mut tried = kept.clone();
        put(&mut tried, path, value.clone());
        files::decode::<SettingsFields>(&tried).is_ok()
    };
    if reads(value) {
        return put(kept, path, value.clone());
    }
    match (value, usual) {
        (Value::Object(section), Value::Object(usual)) => {
            for (name, value) in section {
                let usual = usual.get(name).unwrap_or(&Value::Null);
                salvage_field(kept, &[path, &[name]].concat(), value, usual, lost);
            }
        }
        (Value::Array(list), _) => {
            let whole: Vec<Value> = list
                .iter()
                .filter(|one| reads(&Value::Array(vec![(*one).clone()])))
                .cloned()
                .collect();
            if !whole.is_empty() {
                put(kept, path, whole.into());
            }
            lost.push(path.join("."));
        }
        _ => lost.push(path.join(".")),
    }
}

/// Puts a value where a path of sections leads.
fn put(fields: &mut Fields, path: &[&str], value: Value) {
    match path {
        [] => {}
        [name] => {
            fields.insert((*name).to_owned(), value);
        }
        [section, rest @ ..] => {
            let section = fields
                .entry(*section)
                .or_insert_with(|| Fields::new().into());
            if let Value::Object(section) = section {
                put(section, rest, value);
            }
        }
    }
}

/// What was changed here from `base`, and what `theirs` has of the rest.
fn merged(base: &Fields, ours: Fields, mut theirs: Fields) -> Fields {
    for (name, value) in ours {
        let before = base.get(&name);
        match (value, theirs.get_mut(&name)) {
            (Value::Object(ours), Some(Value::Object(theirs))) => {
                let empty = Fields::new();
                let base = before.and_then(Value::as_object).unwrap_or(&empty);
                *theirs = merged(base, ours, std::mem::take(theirs));
            }
            (value, _) if before != Some(&value) => {
                theirs.insert(name, value);
            }
            _ => {}
        }
    }
    theirs
}

/// A field that is not as it was meant, in plain words where the reader has those of JSON.
fn shape(FieldError { field, why }: FieldError) -> FormatError {
    let why = match why.rsplit_once(", expected ") {
        Some((_, "a boolean")) => "is neither true nor false",
        Some((_, "a string")) => "is not a text",
        Some((_, "a sequence")) => "is not a list",
        Some(_) => "is not an object",
        None => &why,
    };
    let why = format!("{field} {why}");
    FormatError::shape(field, why)
}

fn without_nulls(fields: &Fields) -> Fields {
    let given = fields.iter().filter(|(_, value)| !value.is_null());
    let given = given.map(|(name, value)| match value {
        Value::Object(section) => (name.clone(), without_nulls(section).into()),
        value => (name.clone(), value.clone()),
    });
    given.collect()
}

/// Settings as they are written.
fn known_fields(settings: &Settings) -> Result<Fields, FormatError> {
    let bindings = settings.bindings.iter();
    let speech = settings.speech.iter().map(|(tag, speech)| {
        let section = json!({
            "words_per_minute": speech.words_per_minute,
            "volume": speech.volume,
            "pitch": speech.pitch,
            "voice": speech.voice,
        });
        (tag.clone(), section)
    });
    let times = &settings.times;
    let millis = |time: Duration| u64::try_from(time.as_millis()).unwrap_or(u64::MAX);
    files::encode(&json!({
        "version": VERSION,
        "language": settings.language.tag,
        "units": settings.language.units.map(<&str>::from),
        "bindings": bindings
            .map(|(input, intent)| json!({ "input": input.to_string(), "intent": intent.name() }))
            .collect::<Vec<_>>(),
        "presses": {
            "bounce_ms": millis(times.bounce),
            "long_ms": times.long.map(millis),
            "double_ms": times.double.map(millis),
        },
        "manners": speech.collect::<Fields>(),
        "cues": { "on": settings.cues.is_on, "volume": settings.cues.volume },
        "flash": settings.flash,
        "theme": <&str>::from(settings.colours),
        "screen": {
            "distance_mm": settings.screen.distance,
            "width_mm": settings.screen.width,
        },
        "pacing": settings.pacing,
        "detail": settings.verbosity.detail.name(),
        "at_once": match settings.verbosity.at_once {
            AtOnce::WholeLeg => json!("leg"),
            AtOnce::UpTo(most) => json!(most),
        },
        "prices": { "metre": settings.prices.metre, "hour": settings.prices.hour },
    }))
}

/// Settings as they are read: every field is there, the usual ones where none was given.
#[derive(Deserialize)]
struct SettingsFields {
    language: Option<String>,
    units: Option<Named<Units>>,
    bindings: Vec<BindingField>,
    presses: PressesSection,
    /// How each language is spoken; the name that this has in the file is an older one.
    #[serde(rename = "manners")]
    speech: BTreeMap<String, SpeechSection>,
    cues: CuesSection,
    flash: bool,
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
            bindings: Bindings::of(bindings.map(|BindingField(input, intent)| (input, intent))),
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
