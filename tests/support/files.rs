//! Files of a folder.

use std::fs;
use std::path::{Path, PathBuf};

/// The files of a folder and of those below it whose names end so, in the order of their paths.
pub fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path, ending));
        } else if path.extension().is_some_and(|has| has == ending) {
            found.push(path);
        }
    }
    found.sort();
    found
}
