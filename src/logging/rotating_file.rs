//! Two files of a bounded size: the one that is written to and the one before it.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// The file, opened when there is something to write.
pub(super) struct RotatingFile {
    file: PathBuf,
    most: u64,
    open: Option<(File, u64)>,
}

impl RotatingFile {
    /// A file of so many bytes at most, and as many in the one before it.
    pub const fn new(file: PathBuf, most: u64) -> Self {
        Self {
            file,
            most,
            open: None,
        }
    }

    /// Writes one line. After a failure the file is opened anew for the next line.
    pub fn write(&mut self, line: &str) -> io::Result<()> {
        let (mut open, length) = match self.open.take() {
            Some(open) => open,
            None => self.first()?,
        };
        let added = line.len() as u64 + 1;
        let (mut open, length) = if length > 0 && length + added > self.most {
            open.flush()?;
            drop(open);
            fs::rename(&self.file, previous(&self.file))?;
            (self::open(&self.file)?, 0)
        } else {
            (open, length)
        };
        open.write_all(format!("{line}\n").as_bytes())?;
        self.open = Some((open, length + added));
        Ok(())
    }

    fn first(&self) -> io::Result<(File, u64)> {
        if let Some(folder) = self.file.parent() {
            fs::create_dir_all(folder)?;
        }
        let open = open(&self.file)?;
        let length = open.metadata()?.len();
        Ok((open, length))
    }
}

/// Opens it for lines at its end. Only its owner may read it.
pub(super) fn open(file: &Path) -> io::Result<File> {
    // Checked before it is opened, since to open a pipe may wait for ever.
    if fs::metadata(file).is_ok_and(|about| !about.is_file()) {
        return Err(io::ErrorKind::AlreadyExists.into());
    }
    let mut how = OpenOptions::new();
    how.append(true).create(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut how, 0o600);
    how.open(file)
}

/// Where the lines before go: `marlinspeak.previous.log` beside `marlinspeak.log`.
fn previous(file: &Path) -> PathBuf {
    file.with_extension("previous.log")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_files_stay_within_their_bound_and_the_newest_lines_are_there() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("deep/marlinspeak.log");
        let mut rotating = RotatingFile::new(file.clone(), 1000);
        for number in 0..500 {
            rotating.write(&format!("line {number}")).unwrap();
        }
        let before = folder.path().join("deep/marlinspeak.previous.log");
        let (newest, older) = (fs::read_to_string(&file), fs::read_to_string(&before));
        let (newest, older) = (newest.unwrap(), older.unwrap());
        assert!(newest.len() <= 1000 && older.len() <= 1000);
        assert!(older.len() > 900, "{}", older.len());
        let both = format!("{older}{newest}");
        let numbers: Vec<&str> = both.lines().collect();
        assert_eq!(numbers.last(), Some(&"line 499"));
        let first: usize = numbers[0][5..].parse().unwrap();
        assert_eq!(numbers.len(), 500 - first);
        assert_eq!(fs::read_dir(folder.path().join("deep")).unwrap().count(), 2);
    }

    #[test]
    fn a_later_start_goes_on_where_the_file_ends() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("marlinspeak.log");
        RotatingFile::new(file.clone(), 1000).write("one").unwrap();
        RotatingFile::new(file.clone(), 1000).write("two").unwrap();
        assert_eq!(fs::read_to_string(&file).unwrap(), "one\ntwo\n");
        RotatingFile::new(file.clone(), 10).write("three").unwrap();
        assert_eq!(fs::read_to_string(&file).unwrap(), "three\n");
    }

    #[test]
    fn what_is_no_plain_file_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        assert!(
            RotatingFile::new(folder.path().to_owned(), 10)
                .write("x")
                .is_err()
        );
        let file = folder.path().join("file");
        fs::write(&file, "").unwrap();
        assert!(RotatingFile::new(file.join("log"), 10).write("x").is_err());
    }
}
