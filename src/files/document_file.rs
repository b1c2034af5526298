//! The place of a document: the file, the copy before it, and where damaged ones go.

use std::fs;
use std::marker::PhantomData;
use std::path::{Path, PathBuf};

use super::bytes::{self, Readers};
use super::waiting::DiskCall;
use super::{
    ContentError, Document, FileError, FileLock, FileTrouble, Gathering, LARGEST_DOCUMENT, Reading,
    file_name, has_checksum,
};

/// What stands where a document should be.
#[derive(Clone, Debug)]
pub enum Found<D: Document> {
    /// No file has the name of the document.
    Missing,
    /// A document that is whole and believed.
    Whole(D),
    /// Something that is not believed, or of a newer version.
    Unreadable(D::Error),
}

/// A document that was read, when there is one to be believed.
pub type DocumentReading<D> = Reading<Option<D>, FileTrouble<<D as Document>::Error>>;

/// Whether a document was written, and what stood in its place and was not believed.
pub type WriteReading<D> =
    Reading<Result<(), FileError<<D as Document>::Error>>, FileTrouble<<D as Document>::Error>>;

/// The place of a document of one kind.
#[derive(Clone, Debug)]
pub struct DocumentFile<D> {
    path: PathBuf,
    keeps_previous: bool,
    kind: PhantomData<fn() -> D>,
}

impl<D: Document> DocumentFile<D> {
    /// A document at this path, which ends in `.json`. No copy before it is kept. Only its owner
    /// may read a new document; one that is there keeps the permissions that it has.
    pub fn at(path: impl Into<PathBuf>) -> Self {
        Self {
            path: path.into(),
            keeps_previous: false,
            kind: PhantomData,
        }
    }

    /// A document of this name in a folder.
    pub fn named(folder: &Path, stem: &str) -> Self {
        Self::at(file_name::current(folder, stem))
    }

    /// This file with the copy before it kept at every write.
    #[must_use]
    pub fn keeping_previous(self) -> Self {
        Self {
            keeps_previous: true,
            ..self
        }
    }

    /// Where the document is.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Where the copy before it is.
    pub fn previous_path(&self) -> PathBuf {
        file_name::previous(&self.path)
    }

    /// Whether the document or the copy before it is there, readable or not.
    ///
    /// # Errors
    /// [`FileError::Io`] when the system does not tell.
    pub fn exists(&self) -> Result<bool, FileError> {
        Ok(bytes::exists(&self.path)?
            || self.keeps_previous && bytes::exists(&self.previous_path())?)
    }

    /// Keeps other writers off the document, and waits a little for one who is at it.
    ///
    /// # Errors
    /// [`FileError::Io`] when the other one takes too long, or the system refuses.
    pub fn lock(&self) -> Result<FileLock, FileError> {
        FileLock::beside(&self.path)
    }

    /// Looks at the document alone and changes nothing.
    ///
    /// # Errors
    /// [`FileError::Io`] when the system does not let it be read.
    pub fn find(&self) -> Result<Found<D>, FileError<D::Error>> {
        find(&self.path)
    }

    /// Looks at the copy before it alone and changes nothing.
    ///
    /// # Errors
    /// [`FileError::Io`] when the system does not let it be read.
    pub fn find_previous(&self) -> Result<Found<D>, FileError<D::Error>> {
        if self.keeps_previous {
            find(&self.previous_path())
        } else {
            Ok(Found::Missing)
        }
    }

    /// Reads the document, or else the copy before it, and changes nothing.
    pub fn read(&self) -> DocumentReading<D> {
        self.read_and(false)
    }

    /// Reads the document, or else the copy before it. Damaged copies are set aside, and the copy
    /// before it is put in the place of a damaged document. Nobody else may be at work at it.
    pub fn repair(&self) -> DocumentReading<D> {
        self.read_and(true)
    }

    fn read_and(&self, repair: bool) -> DocumentReading<D> {
        let file = || self.path.clone();
        let error = match self.find() {
            Ok(Found::Whole(document)) => return Reading::whole(Some(document)),
            Ok(Found::Missing) => FileError::Gone { file: file() },
            Ok(Found::Unreadable(fault)) => FileError::Unreadable {
                file: file(),
                fault,
            },
            Err(error) => error,
        };
        let is_gone = matches!(error, FileError::Gone { .. });
        // A document of a newer version was written after the copy before it, so that copy is out
        // of date and does not stand in for it.
        let previous = if error.is_newer() {
            Ok(Found::Missing)
        } else {
            self.find_previous()
        };
        if is_gone && matches!(previous, Ok(Found::Missing)) {
            return Reading::whole(None);
        }
        let is_damaged = error.is_damaged();
        let mut trouble = FileTrouble::left_alone(error);
        let mut failed = None;
        if repair && is_damaged {
            match self.set_aside(&self.path) {
                Ok(aside) => trouble.moved_to = Some(aside),
                Err(error) => failed = Some(FileTrouble::left_alone(error.of_kind())),
            }
        }
        let mut document = None;
        let mut of_previous = None;
        match previous {
            Ok(Found::Whole(copy)) => {
                if repair && (is_gone || trouble.moved_to.is_some()) {
                    let restored = self.restore_previous().err();
                    failed = failed
                        .or_else(|| restored.map(|error| FileTrouble::left_alone(error.of_kind())));
                }
                trouble.previous_used = true;
                document = Some(copy);
            }
            Ok(Found::Missing) => {}
            Ok(Found::Unreadable(fault)) => {
                let file = self.previous_path();
                of_previous =
                    Some(self.trouble_of_previous(FileError::Unreadable { file, fault }, repair));
            }
            Err(error) => of_previous = Some(self.trouble_of_previous(error, repair)),
        }
        let troubles = [Some(trouble), of_previous, failed];
        let troubles: Vec<_> = troubles.into_iter().flatten().collect();
        Reading::of(document, troubles)
    }

    fn trouble_of_previous(
        &self,
        error: FileError<D::Error>,
        repair: bool,
    ) -> FileTrouble<D::Error> {
        let is_damaged = error.is_damaged();
        let mut trouble = FileTrouble::left_alone(error);
        if repair && is_damaged {
            trouble.moved_to = self.set_aside(&self.previous_path()).ok();
        }
        trouble
    }

    /// Puts the copy before it in the place of the document. It is copied and not linked: whoever
    /// edits one of the two files must not change the other.
    fn restore_previous(&self) -> Result<(), FileError> {
        let previous = bytes::read_bytes(&self.previous_path(), LARGEST_DOCUMENT)?;
        bytes::create(&self.path, &previous, Readers::Owner)
    }

    /// Where damaged copies of it are that were moved out of the way.
    pub fn set_aside_paths(&self) -> Vec<PathBuf> {
        (1..=u32::MAX)
            .map(|number| file_name::damaged(&self.path, number))
            .take_while(|aside| bytes::exists(aside).unwrap_or(false))
            .collect()
    }

    /// Moves the document out of the way, as one that is not believed, and says where to.
    ///
    /// # Errors
    /// [`FileError::Io`] when the system refuses.
    pub fn set_aside_current(&self) -> Result<PathBuf, FileError> {
        self.set_aside(&self.path)
    }

    /// Moves a copy that is not believed out of the way, and says where to.
    fn set_aside(&self, file: &Path) -> Result<PathBuf, FileError> {
        bytes::set_aside(file, |number| file_name::damaged(&self.path, number))
    }

    /// Writes the document, on disk when it returns. What stands in its place becomes the copy
    /// before it when it is whole; when it is damaged it is set aside, which has to be told whether the
    /// document is written or not. The folder has to be there. Refused, the document is as it was:
    /// with [`FileError::Unreadable`] when a newer version of this program wrote what stands there, or
    /// with [`FileError::Io`].
    pub fn write(&self, contents: &[u8]) -> WriteReading<D> {
        Reading::gather(|gathering| {
            match self.find()? {
                Found::Unreadable(fault) if fault.is_newer() => {
                    return Err(FileError::unreadable(&self.path)(fault));
                }
                Found::Unreadable(fault) => {
                    gathering.add(self.set_aside_as(&self.path, fault)?);
                }
                Found::Whole(_) if self.keeps_previous => self.keep_previous(gathering)?,
                Found::Missing | Found::Whole(_) => {}
            }
            bytes::replace(&self.path, contents, Readers::Owner).map_err(FileError::of_kind)
        })
    }

    /// Sets a copy aside that is not believed for this reason, and gives what has to be told of that.
    fn set_aside_as(
        &self,
        file: &Path,
        fault: D::Error,
    ) -> Result<FileTrouble<D::Error>, FileError<D::Error>> {
        let moved_to = self.set_aside(file).map_err(FileError::of_kind)?;
        let error = FileError::unreadable(file)(fault);
        Ok(FileTrouble {
            moved_to: Some(moved_to),
            ..FileTrouble::left_alone(error)
        })
    }

    /// Makes the document that stands there the copy before the next one.
    fn keep_previous(
        &self,
        gathering: &mut Gathering<FileTrouble<D::Error>>,
    ) -> Result<(), FileError<D::Error>> {
        let previous = self.previous_path();
        if let Found::Unreadable(fault) = self.find_previous()? {
            gathering.add(self.set_aside_as(&previous, fault)?);
        }
        bytes::keep_copy(&self.path, &previous, LARGEST_DOCUMENT, Readers::Owner)
            .map_err(FileError::of_kind)
    }

    /// Writes the document unless something stands in its place.
    ///
    /// # Errors
    /// [`FileError::Exists`] when something does, [`FileError::Io`] when the disk refuses.
    pub fn create(&self, contents: &[u8]) -> Result<(), FileError<D::Error>> {
        bytes::create(&self.path, contents, Readers::Owner).map_err(FileError::of_kind)
    }

    /// Tries whether it could be written: something is, beside it, and taken away again.
    ///
    /// # Errors
    /// [`FileError::Io`] when the disk refuses.
    pub fn try_beside(&self) -> Result<(), FileError> {
        bytes::try_beside(&self.path)
    }

    /// Removes what an interrupted write left behind.
    pub fn sweep(&self) {
        let _call = DiskCall::begin();
        let Ok(entries) = fs::read_dir(bytes::folder_of(&self.path)) else {
            return;
        };
        let previous = self.previous_path();
        for entry in entries.flatten() {
            let name = entry.file_name();
            let name = name.to_string_lossy();
            if bytes::is_leftover_of(&self.path, &name) || bytes::is_leftover_of(&previous, &name) {
                // A leftover that cannot be removed does no harm.
                let _ = fs::remove_file(entry.path());
            }
        }
    }

    /// Whether the document at a path, this one or any other of its kind, can be held against a
    /// checksum; changes nothing.
    ///
    /// # Errors
    /// Why it is not believed.
    pub fn verify(path: &Path) -> Result<bool, FileError<D::Error>> {
        let document = bytes::read_bytes(path, LARGEST_DOCUMENT).map_err(FileError::of_kind)?;
        D::read(&document).map_err(FileError::unreadable(path))?;
        Ok(has_checksum(&document))
    }
}

fn find<D: Document>(path: &Path) -> Result<Found<D>, FileError<D::Error>> {
    match bytes::read_bytes(path, LARGEST_DOCUMENT) {
        Ok(document) => Ok(match D::read(&document) {
            Ok(document) => Found::Whole(document),
            Err(fault) => Found::Unreadable(fault),
        }),
        Err(FileError::Unreadable { fault, .. }) => Ok(Found::Unreadable(fault.into())),
        Err(error) if error.is_missing() => Ok(Found::Missing),
        Err(error) => Err(error.of_kind()),
    }
}
