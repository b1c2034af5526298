//! Drafts of files that a person asks for, written beside their place under names of their own. A program
//! that is ended in the middle leaves its draft; the next one that writes the same file takes that away.

use std::fs::{self, File};
use std::io;
use std::path::Path;

use tempfile::NamedTempFile;

use super::bytes;
use super::waiting::DiskCall;

/// Begins a draft of `file`, once those are gone that nobody is at any more. It is its owner's alone.
///
/// # Errors
/// What the system says when it refuses.
pub fn draft(file: &Path) -> io::Result<NamedTempFile> {
    let _call = DiskCall::begin();
    sweep_drafts(file);
    loop {
        let draft = bytes::begin_beside(file, None)?;
        // Another program may have taken it for one of nobody, between the making and the lock.
        if is_there(draft.path())? {
            return Ok(draft);
        }
    }
}

/// Removes the drafts of `file` that nobody is at any more. One that stays does no harm.
pub fn sweep_drafts(file: &Path) {
    let _call = DiskCall::begin();
    let Ok(entries) = fs::read_dir(bytes::folder_of(file)) else {
        return;
    };
    for entry in entries.flatten() {
        let is_draft = bytes::is_leftover_of(file, &entry.file_name().to_string_lossy());
        let is_file = entry.file_type().is_ok_and(|kind| kind.is_file());
        // Who writes one holds its lock.
        if is_draft
            && is_file
            && File::open(entry.path()).is_ok_and(|draft| draft.try_lock().is_ok())
        {
            let _ = fs::remove_file(entry.path());
        }
    }
}

fn is_there(path: &Path) -> io::Result<bool> {
    match fs::symlink_metadata(path) {
        Ok(_) => Ok(true),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
        Err(error) => Err(error),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn drafts_of_nobody_go_and_others_stay() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("card.pdf");
        for left in [".card.pdf.a1b2c3.tmp", ".other.pdf.a1b2c3.tmp", "card.tmp"] {
            fs::write(folder.path().join(left), "half").unwrap();
        }
        fs::create_dir(folder.path().join(".card.pdf.folder.tmp")).unwrap();
        let first = draft(&file).unwrap();
        let second = draft(&file).unwrap();
        assert!(first.path().exists() && second.path().exists());
        drop(second);
        let names = || {
            let names = fs::read_dir(folder.path()).unwrap();
            let names = names.map(|one| one.unwrap().file_name().into_string().unwrap());
            let mut names: Vec<String> = names.collect();
            names.sort();
            names
        };
        let its_name = first
            .path()
            .file_name()
            .unwrap()
            .to_str()
            .unwrap()
            .to_owned();
        let mut stay = vec![
            ".card.pdf.folder.tmp",
            &its_name,
            ".other.pdf.a1b2c3.tmp",
            "card.tmp",
        ];
        stay.sort_unstable();
        assert_eq!(names(), stay);
        first.persist_noclobber(&file).unwrap();
        assert!(names().contains(&"card.pdf".to_owned()));
    }
}
