//! Words, sizes and knots that were taken out of what a person reads, hears and tries, because they
//! were not this project's own: none comes back. DEVELOPERS.md says what is looked for instead.

use std::fs;
use std::path::{Path, PathBuf};

/// Set phrases about hardware, in the four languages.
const PHRASES: [&str; 27] = [
    "light snug",
    "snug is enough",
    "snug, not hard",
    "for the first few uses",
    "new holes",
    "write on the tube",
    "never on the tube",
    "alike; not on the tube",
    "cord rides",
    "cord ride up",
    "locks the ring",
    "lock the ring",
    "a pin is a set screw",
    "handfest",
    "nicht stramm",
    "neue löcher",
    "nicht auf das rohr",
    "nie auf das rohr",
    "ein stift ist ein gewindestift",
    "trous neufs",
    "sans forcer",
    "sur le tube. chaque étape",
    "jamais sur le tube",
    "agujeros nuevos",
    "sin forzar",
    "nunca en el tubo",
    "no escribas en el tubo",
];

/// Knots and sizes of examples, defaults and pictures.
const EXAMPLES: [&str; 14] = [
    "5 lead 6 bight",
    "5 lead, 6 bight",
    "5 leads and 6 bights",
    "5 leads, 6 bights",
    "5 parten, 6 buchten",
    "5 brins, 6 ganses",
    "5 ramales y 6 senos",
    "--leads 5 --bights 6",
    "--leads 3 --bights 4",
    "12,16",
    "--rows 12",
    "row of 12",
    "#8 or m4",
    "number 8 set screw",
];

fn texts(folder: &Path, endings: &[&str], found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            texts(&path, endings, found);
        } else if endings
            .iter()
            .any(|ending| path.extension().is_some_and(|own| own == *ending))
        {
            found.push(path);
        }
    }
}

/// Everything that a person reads, hears or copies from, with the sources it is made in.
fn read() -> Vec<(PathBuf, String)> {
    let mut paths = vec![PathBuf::from("README.md"), PathBuf::from("DEVELOPERS.md")];
    for folder in ["i18n", "src", "resources"] {
        texts(
            Path::new(folder),
            &["ftl", "rs", "md", "xml", "desktop", "1"],
            &mut paths,
        );
    }
    let read = paths.into_iter().map(|path| {
        // A phrase may run over the end of a line.
        let text = fs::read_to_string(&path).unwrap().to_lowercase();
        (path, text.split_whitespace().collect::<Vec<_>>().join(" "))
    });
    read.collect()
}

#[test]
fn no_phrase_about_hardware_is_back() {
    let read = read();
    assert!(read.len() > 100, "only {} files", read.len());
    for (path, text) in &read {
        for phrase in PHRASES {
            assert!(!text.contains(phrase), "{}: {phrase}", path.display());
        }
    }
}

#[test]
fn no_example_of_another_loft_is_back() {
    for (path, text) in &read() {
        for example in EXAMPLES {
            assert!(!text.contains(example), "{}: {example}", path.display());
        }
    }
}
