//! The rack: tubes and cords that the tyer keeps by name, in one document.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use super::parts::{CordPart, TubePart};
use super::{Fault, Shelf, ShelfError, files, schema};
use crate::bench::{Cord, Tube};
use crate::guide::Rack;

/// The version that is written, and the newest that is read.
const VERSION: u64 = 1;

/// The largest document that is read or written, in bytes.
const LARGEST: u64 = 1 << 20;

/// The document of the rack.
#[derive(Clone, Debug)]
pub struct RackFile {
    file: PathBuf,
}

#[derive(Default, Serialize, Deserialize)]
struct Document {
    version: u64,
    #[serde(default)]
    tubes: Map<String, Value>,
    #[serde(default)]
    cords: Map<String, Value>,
    #[serde(flatten)]
    unknown: Map<String, Value>,
}

impl RackFile {
    /// The rack in this file, which need not be there yet.
    pub fn at(file: impl Into<PathBuf>) -> Self {
        Self { file: file.into() }
    }

    /// The rack of this user: `$XDG_DATA_HOME/marlinspeak/rack.json` or what the system has in
    /// its place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_place() -> Result<Self, ShelfError> {
        let ties = Shelf::default_dir()?;
        Ok(Self::at(ties.with_file_name("rack.json")))
    }

    /// Where it is.
    pub fn path(&self) -> &Path {
        &self.file
    }

    /// Reads it; empty when it is not there.
    ///
    /// # Errors
    /// [`ShelfError::Unreadable`] or [`ShelfError::Io`]. Nothing is changed.
    pub fn read(&self) -> Result<Rack, ShelfError> {
        self.document()?
            .rack()
            .map_err(|fault| self.unreadable(fault))
    }

    /// Keeps a tube under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`RackFile::read`]: what cannot be read is never overwritten.
    pub fn keep_tube(&self, name: &str, tube: &Tube) -> Result<(), ShelfError> {
        self.keep(|document| {
            let part = serde_json::to_value(TubePart::from(tube))?;
            merge(&mut document.tubes, name, part);
            Ok(())
        })
    }

    /// Keeps a cord under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`RackFile::keep_tube`].
    pub fn keep_cord(&self, name: &str, cord: &Cord) -> Result<(), ShelfError> {
        self.keep(|document| {
            let part = serde_json::to_value(CordPart::from(&cord.clone().named(name)))?;
            merge(&mut document.cords, name, part);
            Ok(())
        })
    }

    fn keep(
        &self,
        change: impl FnOnce(&mut Document) -> Result<(), serde_json::Error>,
    ) -> Result<(), ShelfError> {
        let mut document = self.document()?;
        document.rack().map_err(|fault| self.unreadable(fault))?;
        document.version = VERSION;
        let written = change(&mut document)
            .and_then(|()| serde_json::to_value(&document))
            .and_then(|value| match value {
                Value::Object(fields) => schema::sealed(fields),
                other => serde_json::to_vec_pretty(&other),
            });
        let contents = written.map_err(|_| self.unreadable(Fault::NotTheSame))?;
        if let Some(folder) = self.file.parent() {
            files::make_folder(folder)?;
        }
        files::replace(&self.file, &contents)
    }

    fn document(&self) -> Result<Document, ShelfError> {
        let text = match files::read(&self.file, LARGEST) {
            Ok(text) => text,
            Err(ShelfError::Io { source, .. }) if source.kind() == ErrorKind::NotFound => {
                return Ok(Document::default());
            }
            Err(error) => return Err(error),
        };
        read(&text).map_err(|fault| self.unreadable(fault))
    }

    fn unreadable(&self, fault: Fault) -> ShelfError {
        ShelfError::Unreadable {
            file: self.file.clone(),
            fault,
        }
    }
}

impl Document {
    fn rack(&self) -> Result<Rack, Fault> {
        let mut rack = Rack::default();
        for (name, part) in &self.tubes {
            let part: TubePart =
                serde_json::from_value(part.clone()).map_err(|error| shape(&error))?;
            rack.tubes.insert(name.clone(), part.tube()?);
        }
        for (name, part) in &self.cords {
            let part: CordPart =
                serde_json::from_value(part.clone()).map_err(|error| shape(&error))?;
            rack.cords.insert(name.clone(), part.cord()?.named(name));
        }
        Ok(rack)
    }
}

fn read(text: &[u8]) -> Result<Document, Fault> {
    let Value::Object(mut fields) = schema::json(text)? else {
        return Err(Fault::Shape {
            why: "the document is not an object".to_owned(),
        });
    };
    schema::version_of(&fields, VERSION)?;
    schema::unseal(&mut fields)?;
    serde_json::from_value(Value::Object(fields)).map_err(|error| shape(&error))
}

/// Puts a section in the place of another. What this version knows is replaced, and what it
/// does not know stays.
fn merge(sections: &mut Map<String, Value>, name: &str, part: Value) {
    match (sections.get_mut(name), part) {
        (Some(Value::Object(old)), Value::Object(new)) => {
            for field in ["rows", "wall", "pin", "thread", "grams_per_metre"] {
                old.remove(field);
            }
            old.extend(new);
        }
        (_, part) => {
            sections.insert(name.to_owned(), part);
        }
    }
}

fn shape(error: &serde_json::Error) -> Fault {
    Fault::Shape {
        why: error.to_string(),
    }
}
