//! Bytes in files: reading with a limit, and writing so that a whole file exists at every
//! instant.

use std::fs::{self, File, Permissions};
use std::io::{self, ErrorKind, Read as _, Write as _};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use super::waiting::DiskCall;
use super::{FileAction, FileError, FormatError};

/// How the names of unfinished files end.
const LEFTOVER: &str = ".tmp";
/// Bytes of the longest name that common file systems take.
const LONGEST_FILE_NAME: usize = 255;
/// Bytes that are written to see whether there is room: about as many as a document has.
const TRIED: usize = 4096;
/// So many bytes are added to the name of a file at the most: two dots, a few letters, the ending.
const ADDED: usize = 16;

/// Who besides its owner may read a file that is written here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Readers {
    /// Nobody but its owner.
    Owner,
    /// Those whom the system's own rules allow (the `umask`).
    AsUsual,
}

/// Reads a plain file of at most `limit` bytes.
///
/// # Errors
/// [`FileError::Io`], or [`FileError::Unreadable`] when it is larger or no plain file.
pub fn read_bytes(file: &Path, limit: u64) -> Result<Vec<u8>, FileError> {
    let _call = DiskCall::begin();
    // Checked before the file is opened, since to open a pipe may wait for ever.
    let about = fs::metadata(file).map_err(FileError::io(FileAction::Read, file))?;
    if !about.is_file() {
        return Err(FileError::unreadable(file)(FormatError::NotAFile));
    }
    let mut contents = Vec::new();
    File::open(file)
        .and_then(|open| open.take(limit + 1).read_to_end(&mut contents))
        .map_err(FileError::io(FileAction::Read, file))?;
    if contents.len() as u64 > limit {
        let bytes = about.len().max(contents.len() as u64);
        return Err(FileError::unreadable(file)(FormatError::TooLarge {
            bytes,
            limit,
        }));
    }
    Ok(contents)
}

/// Puts `contents` in the place of `file` all at once, on disk when it returns.
///
/// # Errors
/// [`FileError::Io`]. The file is then as it was.
pub fn replace(file: &Path, contents: &[u8], readers: Readers) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    let written = write_beside(file, contents, mode(file, readers))?;
    written
        .persist(file)
        .map_err(|error| FileError::io(FileAction::Write, file)(error.error))?;
    sync_folder_of(file)
}

/// Puts `contents` at `file` all at once, unless something is there.
///
/// # Errors
/// [`FileError::Exists`] when something is, [`FileError::Io`] when the disk refuses.
pub fn create(file: &Path, contents: &[u8], readers: Readers) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    let written = write_beside(file, contents, mode(file, readers))?;
    written
        .persist_noclobber(file)
        .map_err(|error| match error.error.kind() {
            ErrorKind::AlreadyExists => FileError::Exists {
                file: file.to_owned(),
            },
            _ => FileError::io(FileAction::Write, file)(error.error),
        })?;
    sync_folder_of(file)
}

/// Tries whether there is room beside `file` and leave to write there, and leaves nothing behind.
///
/// # Errors
/// [`FileError::Io`] when there is not.
pub(super) fn try_beside(file: &Path) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    begin_beside(file, None)
        .and_then(|mut begun| begun.write_all(&[b' '; TRIED]))
        .map_err(FileError::io(FileAction::Write, file))
}

/// Makes `copy` a copy of `file`, replacing what was there all at once; `file` stays.
pub(super) fn keep_copy(
    file: &Path,
    copy: &Path,
    limit: u64,
    readers: Readers,
) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    let linked = link_path(copy);
    // A program that was killed may have left one.
    remove(&linked)?;
    if fs::hard_link(file, &linked).is_err() {
        // Some file systems have no links.
        return replace(copy, &read_bytes(file, limit)?, readers);
    }
    if let Err(error) = fs::rename(&linked, copy) {
        // One that stays does no harm, and gives way to the next.
        let _ = fs::remove_file(&linked);
        return Err(FileError::io(FileAction::Move, &linked)(error));
    }
    // Where both names were the same file already, the system leaves both of them.
    remove(&linked)
}

/// Moves a file or folder out of the way to the first free name that `name` gives for 1, 2, ….
pub(super) fn set_aside(file: &Path, name: impl Fn(u32) -> PathBuf) -> Result<PathBuf, FileError> {
    for number in 1..=u32::MAX {
        let aside = name(number);
        if !exists(&aside)? {
            move_file(file, &aside)?;
            return Ok(aside);
        }
    }
    Err(FileError::Exists {
        file: name(u32::MAX),
    })
}

/// Gives a file or folder another name, on disk when it returns.
///
/// # Errors
/// [`FileError::Io`] when the system refuses.
pub fn move_file(from: &Path, to: &Path) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    fs::rename(from, to).map_err(FileError::io(FileAction::Move, from))?;
    if folder_of(from) != folder_of(to) {
        sync_folder_of(to)?;
    }
    sync_folder_of(from)
}

/// Gives a file another name, as [`move_file`] does, if it is there.
///
/// # Errors
/// [`FileError::Io`] when the system refuses.
pub fn move_if_there(from: &Path, to: &Path) -> Result<(), FileError> {
    if exists(from)? {
        move_file(from, to)?;
    }
    Ok(())
}

/// Whether anything has this name, even a link whose target is gone.
///
/// # Errors
/// [`FileError::Io`] when the system does not tell: that it is not there would be as wrong as that it is.
pub fn exists(path: &Path) -> Result<bool, FileError> {
    let _call = DiskCall::begin();
    match fs::symlink_metadata(path) {
        Ok(_) => Ok(true),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(false),
        Err(error) => Err(FileError::io(FileAction::Read, path)(error)),
    }
}

/// Removes a file that may be gone already.
///
/// # Errors
/// [`FileError::Io`] when it is there and stays.
pub fn remove(file: &Path) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    match fs::remove_file(file) {
        Err(error) if error.kind() != ErrorKind::NotFound => {
            Err(FileError::io(FileAction::Move, file)(error))
        }
        _ => Ok(()),
    }
}

/// Makes a folder and those that it lies in, where they are not there yet. Only their owner may
/// look into them.
///
/// # Errors
/// [`FileError::Io`] when the system refuses, or a file is in the way.
pub fn make_folder(folder: &Path) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    let mut folders = fs::DirBuilder::new();
    folders.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut folders, 0o700);
    let made = folders.create(folder);
    // Whether there is one already is not asked first on every system where nothing can be written.
    if made.is_err() && folder.is_dir() {
        return Ok(());
    }
    made.map_err(|error| {
        // That something has its name already is no reason by itself: a folder would be welcome.
        let error = match error.kind() {
            ErrorKind::AlreadyExists => ErrorKind::NotADirectory.into(),
            _ => error,
        };
        FileError::io(FileAction::Make, folder)(error)
    })
}

/// Waits until the names in the folder of `file` are on disk.
///
/// # Errors
/// [`FileError::Io`] when the disk refuses.
pub fn sync_folder_of(file: &Path) -> Result<(), FileError> {
    let _call = DiskCall::begin();
    let folder = folder_of(file);
    sync_folder(folder).map_err(FileError::io(FileAction::Write, folder))
}

#[cfg(unix)]
fn sync_folder(folder: &Path) -> io::Result<()> {
    File::open(folder)?.sync_all()
}

/// Only on Unix can a folder be opened like a file. Other systems keep the names in it safe by
/// themselves.
#[cfg(not(unix))]
fn sync_folder(_: &Path) -> io::Result<()> {
    Ok(())
}

pub(super) fn folder_of(file: &Path) -> &Path {
    match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// Whether a file name is one that writing `file` leaves behind when it is cut short.
pub(super) fn is_leftover_of(file: &Path, name: &str) -> bool {
    name.starts_with(&leftover_prefix(file)) && name.ends_with(LEFTOVER)
}

/// What the names of unfinished files begin with: the name of the file, as far as there is room for
/// what is added.
fn leftover_prefix(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    let most = LONGEST_FILE_NAME - ADDED;
    let end = (0..=most.min(name.len())).rfind(|end| name.is_char_boundary(*end));
    format!(".{}.", &name[..end.unwrap_or(0)])
}

fn link_path(copy: &Path) -> PathBuf {
    folder_of(copy).join(format!("{}link{LEFTOVER}", leftover_prefix(copy)))
}

/// What the owner of a file lets others do with it, to be kept when the file gives way to another.
enum Mode {
    /// Nothing: a temporary file is its owner's alone.
    Owners,
    /// Whatever the system's own rules allow.
    Usual,
    /// What was chosen for the file that is there.
    Chosen(Permissions),
}

fn mode(file: &Path, readers: Readers) -> Mode {
    match (fs::metadata(file), readers) {
        (Ok(about), Readers::Owner) if about.is_file() => Mode::Chosen(about.permissions()),
        (_, Readers::Owner) => Mode::Owners,
        (_, Readers::AsUsual) => Mode::Usual,
    }
}

/// An unfinished file beside `file`, with a lock on it while it is open. It is its owner's alone where
/// nothing is said.
pub(super) fn begin_beside(
    file: &Path,
    permissions: Option<Permissions>,
) -> io::Result<NamedTempFile> {
    let prefix = leftover_prefix(file);
    let mut beside = tempfile::Builder::new();
    beside.prefix(&prefix).suffix(LEFTOVER);
    if let Some(permissions) = permissions {
        beside.permissions(permissions);
    }
    let begun = beside.tempfile_in(folder_of(file))?;
    // Where the file system has no locks, nobody takes it away either.
    let _ = begun.as_file().try_lock();
    Ok(begun)
}

fn write_beside(file: &Path, contents: &[u8], mode: Mode) -> Result<NamedTempFile, FileError> {
    #[cfg(unix)]
    let usual =
        matches!(mode, Mode::Usual).then(|| std::os::unix::fs::PermissionsExt::from_mode(0o666));
    #[cfg(not(unix))]
    let usual = None;
    begin_beside(file, usual)
        .and_then(|mut written| {
            if let Mode::Chosen(permissions) = mode {
                written.as_file().set_permissions(permissions)?;
            }
            written.write_all(contents)?;
            written.as_file().sync_all()?;
            Ok(written)
        })
        .map_err(FileError::io(FileAction::Write, file))
}
