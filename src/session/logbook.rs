//! Writing down what was used for a tie. Everything here reads or writes the disk.

use std::io::ErrorKind;
use std::path::PathBuf;

use crate::files::Reason;
use crate::shelf::{
    Entry, MOST_PHOTOGRAPH_BYTES, Photograph, PhotographError, Shelf, ShelfError, ShelfReading, Tie,
};
use crate::words::{Sentence, Words};

/// What the log's form begins with: what was logged before, or what is known of the tie.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{entry_for, new_tie};
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let mut tie = new_tie(&Plan::read("3", "5", "2", "").unwrap());
/// let mut entry = entry_for(&shelf, &tie).unwrap().untroubled().unwrap();
/// entry.note = "hangs well".to_owned();
/// shelf.log(&entry).unwrap();
/// // What was logged comes again, under the name that the tie has by now.
/// tie.name = "bell rope".to_owned();
/// let again = entry_for(&shelf, &tie).unwrap().untroubled().unwrap();
/// assert_eq!((&*again.name, &*again.note), ("bell rope", "hangs well"));
/// ```
///
/// # Errors
/// Why what was logged before cannot be read.
pub fn entry_for(shelf: &Shelf, tie: &Tie) -> Result<ShelfReading<Entry>, ShelfError> {
    let fresh = Entry::of(tie);
    let renewed = |entry: Option<Entry>| match entry {
        Some(entry) => Entry {
            name: fresh.name,
            work_time: fresh.work_time,
            ..entry
        },
        None => fresh,
    };
    Ok(shelf.entry(tie.id())?.map(renewed))
}

/// Why an entry was not kept.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{NotLogged, keep_entry, new_tie};
/// use marlinspeak::shelf::{Entry, Shelf};
/// use marlinspeak::words::Words;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let mut entry = Entry::of(&new_tie(&Plan::read("3", "5", "2", "").unwrap()));
/// entry.photograph = folder.path().join("bell.jpg").display().to_string();
/// let why = keep_entry(&shelf, &entry).unwrap_err();
/// assert!(matches!(why, NotLogged::NoPhotograph(_)));
/// assert!(why.sentence(&Words::english()).shown().contains("bell.jpg"));
/// ```
#[derive(Clone, Debug)]
pub enum NotLogged {
    /// There is no such photograph.
    NoPhotograph(String),
    /// It can't be read, for this reason.
    UnreadPhotograph(String, Reason),
    /// It is no picture of a kind that is known.
    OtherFile(String),
    /// It is a picture, and its file is damaged.
    DamagedPhotograph(String),
    /// It is larger than what is read.
    LargePhotograph(String),
    /// The shelf could not.
    Shelf(ShelfError),
}

/// Pixels each way of the small picture that tries whether a photograph can be shown.
const TRIED: u32 = 64;

impl NotLogged {
    fn of_photograph(file: String, error: PhotographError) -> Self {
        log::warn!("{error}");
        match error {
            PhotographError::Io(error) if error.kind() == ErrorKind::NotFound => {
                Self::NoPhotograph(file)
            }
            PhotographError::Io(error) => Self::UnreadPhotograph(file, Reason::of(&error)),
            PhotographError::UnknownKind => Self::OtherFile(file),
            PhotographError::Damaged(_) => Self::DamagedPhotograph(file),
            PhotographError::TooLarge => Self::LargePhotograph(file),
        }
    }

    /// The sentence for it.
    pub fn sentence(&self, words: &Words) -> Sentence {
        match self {
            Self::NoPhotograph(file) => words.notice("log-no-photograph", &[("file", file)]),
            Self::UnreadPhotograph(file, reason) => {
                let reason = words.reason(*reason);
                let texts = [("file", &**file), ("reason", &*reason)];
                words.notice("log-photograph-unread", &texts)
            }
            Self::OtherFile(file) => words.notice("log-photograph-other", &[("file", file)]),
            Self::DamagedPhotograph(file) => {
                words.notice("log-photograph-damaged", &[("file", file)])
            }
            Self::LargePhotograph(file) => {
                words.photograph_large(file, MOST_PHOTOGRAPH_BYTES >> 20)
            }
            Self::Shelf(error) => {
                let reason = words.shelf_error(error);
                words.notice("log-not-kept", &[("reason", reason.shown())])
            }
        }
    }
}

/// Keeps what was used for a tie. Of the photograph only the path is kept, when it is one that can be
/// shown. A damaged entry in its place is set aside, and comes out as a trouble.
///
/// ```
/// use marlinspeak::bench::Millimetres;
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{entry_for, keep_entry, new_tie};
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let tie = new_tie(&Plan::read("3", "5", "2", "").unwrap());
/// let mut entry = entry_for(&shelf, &tie).unwrap().untroubled().unwrap();
/// entry.cut = Some(Millimetres::parse("1,4 m").unwrap());
/// keep_entry(&shelf, &entry).unwrap();
/// assert_eq!(entry_for(&shelf, &tie).unwrap().untroubled().unwrap().cut, entry.cut);
/// ```
///
/// # Errors
/// Why it is not kept.
pub fn keep_entry(shelf: &Shelf, entry: &Entry) -> Result<ShelfReading<()>, NotLogged> {
    let mut entry = entry.clone();
    if !entry.photograph.is_empty() {
        let path = as_path(&entry.photograph);
        // What was kept before stays, whatever has become of it since.
        if !is_kept_already(shelf, &entry) {
            Photograph::read(&path, TRIED)
                .map_err(|error| NotLogged::of_photograph(entry.photograph.clone(), error))?;
        }
        let whole = std::path::absolute(&path).unwrap_or(path);
        entry.photograph = whole.display().to_string();
    }
    let logged = shelf.log(&entry).map_err(|error| {
        log::warn!("an entry is not kept: {error}");
        NotLogged::Shelf(error)
    })?;
    Ok(logged.map(drop))
}

/// Whether the entry that the log has of this tie names the same photograph.
fn is_kept_already(shelf: &Shelf, entry: &Entry) -> bool {
    let before = shelf.entry(&entry.tie);
    let known = before.map(|before| before.map(|before| before.map(|one| one.photograph)));
    known.is_ok_and(|known| known.untroubled().ok().flatten() == Some(entry.photograph.clone()))
}

/// A path as a person types it: `~/` is the home folder.
///
/// ```
/// use std::path::Path;
///
/// use marlinspeak::session::as_path;
///
/// assert_eq!(as_path(" photographs/bell rope.jpg "), Path::new("photographs/bell rope.jpg"));
/// // On a system that names a home folder there is no tilde left.
/// let in_home = as_path("~/bell rope.jpg");
/// assert!(in_home.is_absolute() && in_home.ends_with("bell rope.jpg"));
/// ```
pub fn as_path(text: &str) -> PathBuf {
    let text = text.trim();
    // The other folders of a person stand in a file, and nobody is to wait for that here.
    match (text.strip_prefix("~/"), directories::BaseDirs::new()) {
        (Some(rest), Some(dirs)) => dirs.home_dir().join(rest),
        _ => PathBuf::from(text),
    }
}
