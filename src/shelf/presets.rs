//! Presets: tubes and cords that the tyer keeps by name, in one document.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::sections::{CordSection, TubeSection};
use super::{DocumentError, Shelf, ShelfError};
use crate::bench::{Cord, Tube};
use crate::files::{self, Document, DocumentFile, Fields, FileError, FormatError, Found, Readers};
use crate::guide::Presets;

/// The version that is written, and the newest that is read.
const VERSION: u64 = 1;

/// Sections within the document, one within another, whose unknown fields are kept.
const SECTIONS_DEEP: u32 = 2;

/// The file of the presets.
#[derive(Clone, Debug)]
pub struct PresetsFile {
    file: DocumentFile<KeptPresets>,
}

/// What the file holds.
#[derive(Clone, Debug, Default)]
struct KeptPresets {
    presets: Presets,
    /// Fields of the document, and of its sections, that this version does not know.
    unknown: Fields,
}

#[derive(Serialize, Deserialize)]
struct PresetsDocument {
    version: u64,
    #[serde(default)]
    tubes: BTreeMap<String, TubeSection>,
    #[serde(default)]
    cords: BTreeMap<String, CordSection>,
}

impl PresetsFile {
    /// The presets in this file, which need not be there yet.
    pub fn at(file: impl Into<PathBuf>) -> Self {
        Self {
            file: DocumentFile::at(file).for_readers(Readers::AsUsual),
        }
    }

    /// The presets of this user: `$XDG_DATA_HOME/marlinspeak/rack.json` or what the system has in
    /// its place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_place() -> Result<Self, ShelfError> {
        let ties = Shelf::default_dir()?;
        Ok(Self::at(ties.with_file_name("rack.json")))
    }

    /// Where the presets are kept.
    pub fn path(&self) -> &Path {
        self.file.path()
    }

    /// Reads the presets; there are none when the file is not there.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the file cannot be read or is not believed. Nothing is changed.
    pub fn read(&self) -> Result<Presets, ShelfError> {
        Ok(self.presets()?.presets)
    }

    /// Keeps a tube under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`PresetsFile::read`]: what cannot be read is never overwritten.
    pub fn keep_tube(&self, name: &str, tube: &Tube) -> Result<(), ShelfError> {
        self.keep(|presets| presets.tubes.insert(name.to_owned(), tube.clone()))
    }

    /// Keeps a cord under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`PresetsFile::read`]: what cannot be read is never overwritten.
    pub fn keep_cord(&self, name: &str, cord: &Cord) -> Result<(), ShelfError> {
        self.keep(|presets| {
            presets
                .cords
                .insert(name.to_owned(), cord.clone().named(name))
        })
    }

    fn keep<T>(&self, change: impl FnOnce(&mut Presets) -> Option<T>) -> Result<(), ShelfError> {
        let mut presets = self.presets()?;
        change(&mut presets.presets);
        let contents = presets
            .write()
            .map_err(FileError::unreadable(self.path()))?;
        if let Some(folder) = self.path().parent() {
            files::make_folder(folder)?;
        }
        Ok(self.file.write(&contents)?)
    }

    fn presets(&self) -> Result<KeptPresets, ShelfError> {
        match self.file.find()? {
            Found::Missing => Ok(KeptPresets::default()),
            Found::Whole(presets) => Ok(presets),
            Found::Unreadable(fault) => Err(FileError::unreadable(self.path())(fault).into()),
        }
    }
}

impl KeptPresets {
    fn known_fields(&self) -> Result<Fields, FormatError> {
        let named = |(name, cord): (&String, &Cord)| (name.clone(), CordSection::from(cord));
        files::encode(&PresetsDocument {
            version: VERSION,
            tubes: self
                .presets
                .tubes
                .iter()
                .map(|(name, tube)| (name.clone(), TubeSection::from(tube)))
                .collect(),
            cords: self.presets.cords.iter().map(named).collect(),
        })
    }

    fn write(&self) -> Result<Vec<u8>, DocumentError> {
        let fields = files::with_unknown(self.known_fields()?, &self.unknown);
        Ok(files::seal(fields)?)
    }
}

impl Document for KeptPresets {
    type Error = DocumentError;

    fn read(document: &[u8]) -> Result<Self, DocumentError> {
        let (_, fields) = files::open(document, VERSION)?;
        let document: PresetsDocument = files::decode(&fields)?;
        let mut presets = Self::default();
        for (name, tube) in document.tubes {
            presets.presets.tubes.insert(name, tube.tube()?);
        }
        for (name, cord) in document.cords {
            let cord = cord.cord()?.named(&name);
            presets.presets.cords.insert(name, cord);
        }
        presets.unknown = files::unknown_fields(fields, &presets.known_fields()?, SECTIONS_DEEP);
        Ok(presets)
    }
}
