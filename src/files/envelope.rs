//! What all documents have in common: JSON with a version, and a checksum over the rest.

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};
use thiserror::Error;

use super::FormatError;

/// The largest document that is read or written, in bytes.
pub const LARGEST_DOCUMENT: u64 = 1 << 20;

const VERSION: &str = "version";
const CHECKSUM: &str = "checksum";
/// What every checksum written here begins with.
const CHECKSUM_KIND: &str = "crc32:";

/// The fields of a JSON object.
pub type Fields = Map<String, Value>;

/// Reads JSON, with or without the mark that some editors put before the first byte.
///
/// # Errors
/// [`FormatError::NotJson`], with the line and column where it ceases to be JSON.
pub fn parse(text: &[u8]) -> Result<Value, FormatError> {
    let text = text.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(text);
    serde_json::from_slice(text).map_err(|error| FormatError::NotJson {
        line: error.line(),
        column: error.column(),
        why: error.to_string(),
    })
}

/// Opens a document: its size, then JSON, checksum and version are looked at. Gives the version,
/// which is at most `known`, and the fields without the checksum. That is optional, so that a
/// document may be written by hand.
///
/// The checksum comes before the version: else a damaged version would pass for a newer one, and
/// the document would be left alone instead of repaired. A newer version may have checksums of
/// another kind.
///
/// # Errors
/// The first [`FormatError`] met.
pub fn open(document: &[u8], known: u64) -> Result<(u64, Fields), FormatError> {
    let bytes = document.len() as u64;
    if bytes > LARGEST_DOCUMENT {
        return Err(FormatError::TooLarge {
            bytes,
            limit: LARGEST_DOCUMENT,
        });
    }
    let Value::Object(mut fields) = parse(document)? else {
        return Err(FormatError::NotAnObject);
    };
    let checked = match fields.remove(CHECKSUM) {
        None => Ok(()),
        Some(Value::String(stored)) if stored.starts_with(CHECKSUM_KIND) => {
            Ok(compare(stored, checksum(&fields))?)
        }
        Some(Value::String(stored)) => compare(stored, checksum(&fields)),
        Some(_) => Err(FormatError::shape(CHECKSUM, "`checksum` is not text")),
    };
    let version = match fields.get(VERSION).and_then(Value::as_u64) {
        None => return Err(FormatError::NoVersion),
        Some(version) if version > known => return Err(FormatError::Newer { version, known }),
        Some(version) => version,
    };
    checked.map(|()| (version, fields))
}

fn compare(stored: String, computed: String) -> Result<(), FormatError> {
    if stored == computed {
        Ok(())
    } else {
        Err(FormatError::Checksum { stored, computed })
    }
}

/// A document as text, with its checksum.
///
/// # Errors
/// [`FormatError::NotTheSame`] when one of the fields has the name of the checksum.
pub fn seal(mut fields: Fields) -> Result<Vec<u8>, FormatError> {
    let checksum = checksum(&fields);
    if fields
        .insert(CHECKSUM.to_owned(), checksum.into())
        .is_some()
    {
        return Err(FormatError::NotTheSame);
    }
    let mut text = serde_json::to_vec_pretty(&fields).map_err(|_| FormatError::NotTheSame)?;
    text.push(b'\n');
    Ok(text)
}

/// Whether a document that can be read carries a checksum at all.
pub fn has_checksum(document: &[u8]) -> bool {
    matches!(parse(document), Ok(Value::Object(fields)) if fields.contains_key(CHECKSUM))
}

/// The CRC-32 of the document without its checksum, as JSON with sorted keys and no spaces.
/// It is meant to find damage, not forgery. It needs every number to be read as it is written,
/// hence the feature `float_roundtrip` of `serde_json`.
fn checksum(fields: &Fields) -> String {
    let mut rest = Value::Object(fields.clone());
    rest.sort_all_objects();
    let crc = crc32fast::hash(rest.to_string().as_bytes());
    format!("{CHECKSUM_KIND}{crc:08x}")
}

/// A field that is not what it should be.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("`{field}`: {why}")]
pub struct FieldError {
    /// The field, after the sections it is in: `tube.diameter`.
    pub field: String,
    /// What is wrong with it.
    pub why: String,
}

impl From<FieldError> for FormatError {
    fn from(error: FieldError) -> Self {
        let why = error.to_string();
        Self::shape(error.field, why)
    }
}

/// Reads fields as a type; those that it does not have are passed over.
///
/// # Errors
/// The first field that is missing or not what it should be.
pub fn decode<T: DeserializeOwned>(fields: &Fields) -> Result<T, FieldError> {
    serde_path_to_error::deserialize(fields).map_err(|error| FieldError {
        field: error.path().to_string(),
        why: error.into_inner().to_string(),
    })
}

/// Writes a type as fields.
///
/// # Errors
/// [`FormatError::NotTheSame`] for what JSON has no form for.
pub fn encode(document: &impl Serialize) -> Result<Fields, FormatError> {
    match serde_json::to_value(document) {
        Ok(Value::Object(fields)) => Ok(fields),
        _ => Err(FormatError::NotTheSame),
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn sealed(version: u64) -> String {
        let mut fields = Fields::new();
        fields.insert(VERSION.to_owned(), version.into());
        fields.insert("leg".to_owned(), 7.into());
        String::from_utf8(seal(fields).unwrap()).unwrap()
    }

    #[test]
    fn a_damaged_version_is_damage_and_not_a_newer_document() {
        let damaged = sealed(1).replace("\"version\": 1", "\"version\": 9");
        assert!(matches!(
            open(damaged.as_bytes(), 1),
            Err(FormatError::Checksum { .. })
        ));
    }

    #[test]
    fn a_newer_document_is_newer_whatever_its_checksum_is_like() {
        let newer = FormatError::Newer {
            version: 9,
            known: 1,
        };
        assert_eq!(open(sealed(9).as_bytes(), 1), Err(newer.clone()));
        for checksum in [json!("sha256:0"), json!(7)] {
            let document = json!({ "version": 9, "checksum": checksum }).to_string();
            assert_eq!(open(document.as_bytes(), 1), Err(newer.clone()));
        }
    }

    #[test]
    fn a_field_that_is_wrong_is_named_with_its_section() {
        #[derive(Debug, serde::Deserialize)]
        #[expect(dead_code, reason = "only its reader is tried")]
        struct Outer {
            tube: Inner,
        }
        #[derive(Debug, serde::Deserialize)]
        #[expect(dead_code, reason = "only its reader is tried")]
        struct Inner {
            diameter: f64,
        }
        let Value::Object(fields) = json!({ "tube": { "diameter": "wide" } }) else {
            unreachable!();
        };
        let error = decode::<Outer>(&fields).unwrap_err();
        assert_eq!(error.field, "tube.diameter");
    }
}
