//! The names of the files of a document.

use std::path::{Path, PathBuf};

/// How the name of every document ends.
const EXTENSION: &str = "json";
const PREVIOUS: &str = "previous";
const DAMAGED: &str = "damaged-";

/// What a file is to the document that it is named after.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileRole {
    /// The document as it was last written.
    Current,
    /// The copy before it.
    Previous,
    /// A copy that was damaged and moved out of the way.
    SetAside,
}

/// The name of a file, taken apart.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileName<'a> {
    /// The name of the document, without any ending.
    pub stem: &'a str,
    /// What the file is to that document; none when a document has no file of such a name.
    pub role: Option<FileRole>,
}

impl<'a> FileName<'a> {
    /// Takes the name of a file apart; none when it does not end as documents do.
    pub fn parse(name: &'a str) -> Option<Self> {
        let name = name.strip_suffix(EXTENSION)?.strip_suffix('.')?;
        let (stem, role) = match name.split_once('.') {
            None => (name, Some(FileRole::Current)),
            Some((stem, PREVIOUS)) => (stem, Some(FileRole::Previous)),
            Some((stem, rest)) if rest.starts_with(DAMAGED) => (stem, Some(FileRole::SetAside)),
            Some((stem, _)) => (stem, None),
        };
        Some(Self { stem, role })
    }
}

/// Where the document of this name is in a folder.
pub(super) fn current(folder: &Path, stem: &str) -> PathBuf {
    folder.join(format!("{stem}.{EXTENSION}"))
}

/// Where the copy before a document is.
pub(super) fn previous(file: &Path) -> PathBuf {
    file.with_extension(format!("{PREVIOUS}.{EXTENSION}"))
}

/// Where damaged copies of a document go, numbered from 1.
pub(super) fn damaged(file: &Path, number: u32) -> PathBuf {
    file.with_extension(format!("{DAMAGED}{number}.{EXTENSION}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_files_of_a_document_are_told_from_others_by_their_names() {
        let file = current(Path::new("ties"), "oarlock7");
        for (path, role) in [
            (file.clone(), FileRole::Current),
            (previous(&file), FileRole::Previous),
            (damaged(&file, 12), FileRole::SetAside),
        ] {
            let name = path.file_name().unwrap().to_str().unwrap();
            let parsed = FileName::parse(name).unwrap();
            assert_eq!((parsed.stem, parsed.role), ("oarlock7", Some(role)));
        }
        assert_eq!(FileName::parse("oarlock7.copy.json").unwrap().role, None);
        for name in ["oarlock7.lock", "json", "oarlock7json", ""] {
            assert_eq!(FileName::parse(name), None, "{name}");
        }
    }
}
