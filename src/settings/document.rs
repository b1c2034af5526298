//! The document: how preferences are written and read. A field that is missing or `null` is as
//! usual; one that is there must be as it was meant.

use std::time::Duration;

use serde_json::{Value, json};

use super::Settings;
use super::fields::SettingsFields;
use crate::files::{self, Document, FieldError, Fields, FormatError, Unknown, Within};
use crate::guide::AtOnce;

/// The version of the documents written here, and the newest that is read.
pub const VERSION: u64 = 1;

/// How far in fields are kept that this version does not know. An input with another meaning is the
/// same input.
const WITHIN: Within = Within {
    deep: 2,
    names: &[("bindings", "input")],
};

/// The settings, and the fields of their document that this version does not know.
#[derive(Clone, Debug, Default)]
pub(super) struct SettingsDocument {
    pub(super) settings: Settings,
    unknown: Unknown,
}

/// Reads the document of settings.
///
/// # Errors
/// The first thing that is wrong with it.
pub fn read_settings(document: &[u8]) -> Result<Settings, FormatError> {
    Ok(SettingsDocument::read(document)?.settings)
}

/// What can be saved of a document of settings that is not believed, with what is usual for the rest, and
/// the names of that. `None` when it is no JSON object.
pub fn salvage_settings(document: &[u8]) -> Option<(Settings, Vec<String>)> {
    let (document, lost) = SettingsDocument::salvage(document, &SettingsDocument::default())?;
    Some((document.settings, lost))
}

/// Writes the document of settings.
///
/// # Errors
/// [`FormatError::NotTheSame`], which settings never come to.
pub fn write_settings(settings: &Settings) -> Result<Vec<u8>, FormatError> {
    SettingsDocument::default().with(settings.clone()).write()
}

impl Document for SettingsDocument {
    type Error = FormatError;

    fn read(document: &[u8]) -> Result<Self, FormatError> {
        let (version, fields) = files::open(document, VERSION)?;
        if version < VERSION {
            return Err(FormatError::NoVersion);
        }
        let usual = known_fields(&Settings::default())?;
        let given = files::filled_up(without_nulls(&fields), &usual);
        let settings: Settings = files::decode::<SettingsFields>(&given)
            .map_err(shape)?
            .into();
        Ok(Self {
            unknown: Unknown::of(fields, &known_fields(&settings)?, WITHIN),
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
        files::seal(self.unknown.added_to(known_fields(&self.settings)?))
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
        let unknown = Unknown::of(given, &known_fields(&settings).ok()?, WITHIN);
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
            "engine": speech.engine,
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
        "knocks": settings.knocks,
        "presses": {
            "bounce_ms": millis(times.bounce),
            "long_ms": times.long.map(millis),
            "double_ms": times.double.map(millis),
        },
        "manners": speech.collect::<Fields>(),
        "cues": { "on": settings.cues.is_on, "volume": settings.cues.volume },
        "flash": settings.flash,
        "still": settings.still,
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
