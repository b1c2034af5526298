//! Presets: tubes and cords that the tyer keeps by name, in one document.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry::Vacant;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::repair::refusal;
use super::sections::{CordSection, TubeSection};
use super::verified_file::{DocumentState, VerifiedFile};
use super::{DocumentError, Shelf, ShelfError, ShelfReading, ShelfTrouble};
use crate::bench::{Cord, Tube};
use crate::files::{
    self, Document, DocumentFile, DocumentReading, Fields, FileError, FormatError,
    LARGEST_DOCUMENT, Unknown, Within,
};
use crate::guide::Presets;

/// The file beside the ties.
const FILE: &str = "rack.json";

/// The version that is written, and the newest that is read.
const VERSION: u64 = 1;

/// How far in fields are kept that this version does not know.
const WITHIN: Within = Within {
    deep: 2,
    names: &[],
};

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
    unknown: Unknown,
}

#[derive(Serialize, Deserialize)]
struct PresetsDocument {
    version: u64,
    #[serde(default)]
    tubes: BTreeMap<String, TubeSection>,
    #[serde(default)]
    cords: BTreeMap<String, CordSection>,
}

/// Reads the document of tubes and cords.
///
/// # Errors
/// The first thing that is wrong with it.
pub fn read_presets(document: &[u8]) -> Result<Presets, DocumentError> {
    Ok(KeptPresets::read(document)?.presets)
}

/// Writes the document of tubes and cords.
///
/// # Errors
/// [`FormatError`] when it would not read back the same, or would be too large.
pub fn write_presets(presets: &Presets) -> Result<Vec<u8>, DocumentError> {
    let kept = KeptPresets {
        presets: presets.clone(),
        ..KeptPresets::default()
    };
    kept.write()
}

impl PresetsFile {
    /// The presets in this file, which need not be there yet.
    pub fn at(file: impl Into<PathBuf>) -> Self {
        Self {
            file: DocumentFile::at(file).keeping_previous(),
        }
    }

    /// The presets that lie beside the ties of a shelf.
    pub fn beside(shelf: &Shelf) -> Self {
        Self::at(shelf.folder().with_file_name(FILE))
    }

    /// The presets of this user: `$XDG_DATA_HOME/marlinspeak/rack.json` or what the system has in
    /// its place.
    ///
    /// # Errors
    /// [`ShelfError::NoHome`] when the system names no such folder.
    pub fn default_place() -> Result<Self, ShelfError> {
        let ties = Shelf::default_dir()?;
        Ok(Self::at(ties.with_file_name(FILE)))
    }

    /// Where the presets are kept.
    pub fn path(&self) -> &Path {
        self.file.path()
    }

    /// Reads the presets, from the copy before when the file is damaged; there are none when it is
    /// not there. Nothing is changed.
    ///
    /// # Errors
    /// [`ShelfError::File`] when neither copy can be read and believed.
    pub fn read(&self) -> Result<ShelfReading<Presets>, ShelfError> {
        let read = presets(self.file.read())?;
        Ok(read.map(|presets| presets.presets))
    }

    /// Keeps a tube under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`PresetsFile::read`], and when it cannot be written.
    pub fn keep_tube(&self, name: &str, tube: &Tube) -> Result<ShelfReading<()>, ShelfError> {
        self.keep(|kept| {
            let tubes = &mut kept.presets.tubes;
            tubes.insert(name.to_owned(), tube.clone());
        })
    }

    /// Keeps a cord under a name, in the place of one that had it.
    ///
    /// # Errors
    /// As [`PresetsFile::read`], and when it cannot be written.
    pub fn keep_cord(&self, name: &str, cord: &Cord) -> Result<ShelfReading<()>, ShelfError> {
        self.keep(|kept| {
            let cord = cord.clone().named(name);
            kept.presets.cords.insert(name.to_owned(), cord);
        })
    }

    /// Changes the presets, with every other writer kept off from reading to writing.
    fn keep(&self, change: impl FnOnce(&mut KeptPresets)) -> Result<ShelfReading<()>, ShelfError> {
        let _lock = self.file.lock()?;
        let mut read = presets(self.file.read())?;
        // Where nothing can be believed everything stays as it is; else what is damaged is told by
        // the repair of it.
        if read.is_troubled() {
            read = presets(self.file.repair())?;
        }
        ShelfReading::try_gather(|gathering| {
            let mut kept = read.hand_on(gathering);
            change(&mut kept);
            let contents = kept.write().map_err(FileError::unreadable(self.path()))?;
            let written = self.file.write(&contents);
            let told = written.map_troubles(|_, trouble| ShelfTrouble::with_presets(trouble));
            Ok(told.hand_on(gathering)?)
        })
    }

    /// The document on one line, when there is one.
    pub(super) fn line(&self) -> Result<ShelfReading<Option<Vec<u8>>>, ShelfError> {
        if !self.file.exists()? {
            return Ok(ShelfReading::whole(None));
        }
        ShelfReading::try_gather(|gathering| {
            let kept = match presets(self.file.read()) {
                // What is not understood here goes along as it is.
                Err(error) if error.is_newer() => {
                    return Ok(Some(files::read_bytes(self.path(), LARGEST_DOCUMENT)?));
                }
                kept => kept?.hand_on(gathering),
            };
            let line = kept.write().map_err(FileError::unreadable(self.path()))?;
            Ok(Some(line))
        })
    }

    /// Takes in what a document holds under names that are free, and says how many those are.
    pub(super) fn take_in(&self, document: &[u8]) -> Result<TakenIn, ShelfError> {
        let read = KeptPresets::read(document).and_then(|kept| {
            // Whatever has neither is another document, taken for one of these.
            let is_other = ["tubes", "cords"].iter().all(|list| !has(document, list));
            if is_other {
                return Err(DocumentError::shape("tubes", "neither tubes nor cords"));
            }
            Ok(kept)
        });
        let new = match read {
            Ok(new) => new,
            Err(fault) => return Ok(Err(fault)),
        };
        let mut taken = 0;
        let kept = self.keep(|kept| {
            let KeptPresets { presets, unknown } = kept;
            unknown.take_over_missing(&new.unknown);
            for (name, tube) in new.presets.tubes {
                if let Vacant(free) = presets.tubes.entry(name) {
                    unknown.take_over(&new.unknown, &["tubes", free.key()]);
                    free.insert(tube);
                    taken += 1;
                }
            }
            for (name, cord) in new.presets.cords {
                if let Vacant(free) = presets.cords.entry(name) {
                    unknown.take_over(&new.unknown, &["cords", free.key()]);
                    free.insert(cord);
                    taken += 1;
                }
            }
        })?;
        Ok(Ok(kept.map(|()| taken)))
    }

    /// Every file of the document that is there, whether it is whole and believed.
    pub(super) fn verify(&self) -> Vec<VerifiedFile> {
        let mut files = vec![self.path().to_owned(), self.file.previous_path()];
        // One of which the system tells nothing is looked at too, and that is told.
        files.retain(|file| files::exists(file).unwrap_or(true));
        let mut verified: Vec<VerifiedFile> = files
            .into_iter()
            .map(|file| VerifiedFile {
                state: match DocumentFile::<KeptPresets>::verify(&file) {
                    Ok(true) => DocumentState::Whole,
                    Ok(false) => DocumentState::Unchecked,
                    Err(error) => DocumentState::Bad(error.into()),
                },
                file,
            })
            .collect();
        let aside = self.file.set_aside_paths().into_iter();
        verified.extend(aside.map(|file| VerifiedFile {
            file,
            state: DocumentState::SetAside,
        }));
        verified
    }
}

/// Whether a document that can be read has a field.
fn has(document: &[u8], field: &str) -> bool {
    files::parse(document).is_ok_and(|document| document.get(field).is_some())
}

/// How many presets were taken in, or why the document is not believed.
pub(super) type TakenIn = Result<ShelfReading<usize>, DocumentError>;

/// The presets that were read, none when there was nothing to read; or the first thing that keeps
/// them from being read.
fn presets(reading: DocumentReading<KeptPresets>) -> Result<ShelfReading<KeptPresets>, ShelfError> {
    let told = reading.map_troubles(|_, trouble| ShelfTrouble::with_presets(trouble));
    match told.found() {
        Ok(presets) => Ok(presets),
        Err(nothing) => match refusal(nothing) {
            Some(error) => Err(error),
            None => Ok(ShelfReading::whole(KeptPresets::default())),
        },
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
        let fields = self.unknown.added_to(self.known_fields()?);
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
        presets.unknown = Unknown::of(fields, &presets.known_fields()?, WITHIN);
        Ok(presets)
    }
}
