//! Reading with a limit, and writing so that a whole copy exists at every instant.

use std::fs::{self, File};
use std::io::{self, ErrorKind, Read as _, Write as _};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use super::{Fault, LARGEST_TIE, ShelfError, Tie, read_tie};

/// How the names of unfinished files end.
const LEFTOVER: &str = ".tmp";

/// What stands where a document should be.
pub(super) enum Found<T = Tie> {
    /// Nothing.
    Missing,
    /// A document that is whole and believed.
    Good(Box<T>),
    /// Something else.
    Bad(Fault),
}

/// Looks at the document of a tie.
pub(super) fn find(file: &Path) -> Result<Found, ShelfError> {
    find_as(file, read_tie)
}

/// Looks at a document that `reader` reads.
pub(super) fn find_as<T>(
    file: &Path,
    reader: impl FnOnce(&[u8]) -> Result<T, Fault>,
) -> Result<Found<T>, ShelfError> {
    match read(file, LARGEST_TIE) {
        Ok(document) => Ok(match reader(&document) {
            Ok(good) => Found::Good(Box::new(good)),
            Err(fault) => Found::Bad(fault),
        }),
        Err(ShelfError::Unreadable { fault, .. }) => Ok(Found::Bad(fault)),
        Err(ShelfError::Io { source, .. }) if source.kind() == ErrorKind::NotFound => {
            Ok(Found::Missing)
        }
        Err(error) => Err(error),
    }
}

/// Reads a plain file of at most `limit` bytes.
pub(super) fn read(file: &Path, limit: u64) -> Result<Vec<u8>, ShelfError> {
    let unreadable = |fault| ShelfError::Unreadable {
        file: file.to_owned(),
        fault,
    };
    // Asked before opening: to open a pipe may wait for ever.
    let about = fs::metadata(file).map_err(ShelfError::io("read", file))?;
    if !about.is_file() {
        return Err(unreadable(Fault::NotAFile));
    }
    let mut contents = Vec::new();
    File::open(file)
        .and_then(|open| open.take(limit + 1).read_to_end(&mut contents))
        .map_err(ShelfError::io("read", file))?;
    if contents.len() as u64 > limit {
        return Err(unreadable(Fault::TooLarge {
            bytes: about.len().max(contents.len() as u64),
            limit,
        }));
    }
    Ok(contents)
}

/// Puts `contents` in the place of `file` all at once, on disk when it returns.
pub(super) fn replace(file: &Path, contents: &[u8]) -> Result<(), ShelfError> {
    let written = write_beside(file, contents)?;
    written
        .persist(file)
        .map_err(|error| ShelfError::io("write", file)(error.error))?;
    sync_folder_of(file)
}

/// Puts `contents` at `file` all at once, unless something is there.
pub(super) fn create(file: &Path, contents: &[u8]) -> Result<(), ShelfError> {
    let written = write_beside(file, contents)?;
    written
        .persist_noclobber(file)
        .map_err(|error| match error.error.kind() {
            ErrorKind::AlreadyExists => ShelfError::Exists {
                file: file.to_owned(),
            },
            _ => ShelfError::io("write", file)(error.error),
        })?;
    sync_folder_of(file)
}

/// Makes `copy` a copy of `file`, replacing what was there all at once; `file` stays.
pub(super) fn keep_copy(file: &Path, copy: &Path) -> Result<(), ShelfError> {
    let linked = link_path(copy);
    // One may be left from a program that was killed.
    remove(&linked)?;
    if fs::hard_link(file, &linked).is_err() {
        // Some file systems have no links.
        return replace(copy, &read(file, LARGEST_TIE)?);
    }
    fs::rename(&linked, copy).map_err(ShelfError::io("move", &linked))?;
    // The system leaves both names when they already were the same file.
    remove(&linked)
}

/// Moves a file or folder out of the way to the first free name that `name` gives for 1, 2, ….
pub(super) fn set_aside(file: &Path, name: impl Fn(u32) -> PathBuf) -> Result<PathBuf, ShelfError> {
    for number in 1..=u32::MAX {
        let aside = name(number);
        if !is_there(&aside) {
            fs::rename(file, &aside).map_err(ShelfError::io("move", file))?;
            sync_folder_of(file)?;
            return Ok(aside);
        }
    }
    Err(ShelfError::Exists {
        file: name(u32::MAX),
    })
}

/// Whether anything has this name, be it a link to nowhere.
pub(super) fn is_there(path: &Path) -> bool {
    fs::symlink_metadata(path).is_ok()
}

/// Removes a file that may be gone already.
pub(super) fn remove(file: &Path) -> Result<(), ShelfError> {
    match fs::remove_file(file) {
        Err(error) if error.kind() != ErrorKind::NotFound => {
            Err(ShelfError::io("move", file)(error))
        }
        _ => Ok(()),
    }
}

/// Makes a folder, with the folders around it, unless it is there.
pub(super) fn make_folder(folder: &Path) -> Result<(), ShelfError> {
    fs::create_dir_all(folder).map_err(ShelfError::io("make", folder))
}

/// Waits until the names in the folder of `file` are on disk.
pub(super) fn sync_folder_of(file: &Path) -> Result<(), ShelfError> {
    let folder = folder_of(file);
    sync_folder(folder).map_err(ShelfError::io("write", folder))
}

#[cfg(unix)]
fn sync_folder(folder: &Path) -> io::Result<()> {
    File::open(folder)?.sync_all()
}

/// Elsewhere a folder cannot be opened, and the system keeps its names safe by itself.
#[cfg(not(unix))]
fn sync_folder(_: &Path) -> io::Result<()> {
    Ok(())
}

fn folder_of(file: &Path) -> &Path {
    match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// Whether a file name is one that writing `file` leaves behind when it is cut short.
pub(super) fn is_leftover_of(file: &Path, name: &str) -> bool {
    name.starts_with(&leftover_prefix(file)) && name.ends_with(LEFTOVER)
}

fn leftover_prefix(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    format!(".{name}.")
}

fn link_path(copy: &Path) -> PathBuf {
    folder_of(copy).join(format!("{}link{LEFTOVER}", leftover_prefix(copy)))
}

fn write_beside(file: &Path, contents: &[u8]) -> Result<NamedTempFile, ShelfError> {
    let prefix = leftover_prefix(file);
    let mut beside = tempfile::Builder::new();
    beside.prefix(&prefix).suffix(LEFTOVER);
    // Others may read what the tyer hands over, as far as the system's own rules allow.
    #[cfg(unix)]
    beside.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    beside
        .tempfile_in(folder_of(file))
        .and_then(|mut written| {
            written.write_all(contents)?;
            written.as_file().sync_all()?;
            Ok(written)
        })
        .map_err(ShelfError::io("write", file))
}
