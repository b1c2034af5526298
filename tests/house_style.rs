//! Words, sizes and knots that were taken out of what a person reads, hears and tries, because they
//! were not this project's own: none comes back. DEVELOPERS.md says what is looked for instead.
//!
//! And what is public in the rooms that others build on shows how it is used.

use std::collections::HashSet;
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

/// The rooms that know neither window nor terminal, and that all others build on.
const ROOMS: [&str; 4] = ["src/knot", "src/bench", "src/guide", "src/session"];

const ITEMS: [&str; 5] = ["struct ", "enum ", "fn ", "trait ", "type "];

fn first_name(text: &str) -> &str {
    let end = text.find(|letter: char| !letter.is_alphanumeric() && letter != '_');
    &text[..end.unwrap_or(text.len())]
}

/// The type that an `impl` is of, by its first line.
fn implementor(line: &str) -> Option<&str> {
    let rest = line.strip_prefix("impl")?;
    let (_, after) = rest.split_once(" for ").or_else(|| {
        let (generics, after) = rest.split_once(' ')?;
        (generics.is_empty() || generics.ends_with('>')).then_some((generics, after))
    })?;
    Some(first_name(after))
}

/// The public items at the left margin of a source, and those that an example shows: their own, or
/// one of a method of theirs.
fn public_and_shown(source: &str) -> (Vec<&str>, HashSet<&str>) {
    let (mut public, mut shown) = (Vec::new(), HashSet::new());
    let (mut has_example, mut methods_of) = (false, None);
    for line in source.lines() {
        if line.trim_start().starts_with("/// ```") {
            has_example = true;
            shown.extend(methods_of);
        } else if line.is_empty() {
            has_example = false;
        } else if line.starts_with('}') {
            methods_of = None;
        } else if line.starts_with("impl") {
            methods_of = implementor(line);
        } else if let Some(item) = line.strip_prefix("pub ") {
            let item = item.trim_start_matches("const ");
            let name = ITEMS.iter().find_map(|kind| item.strip_prefix(kind));
            if let Some(name) = name.map(first_name) {
                public.push(name);
                shown.extend(has_example.then_some(name));
            }
        }
    }
    (public, shown)
}

#[test]
fn every_public_item_of_the_lower_rooms_has_an_example() {
    let mut paths = Vec::new();
    for room in ROOMS {
        texts(Path::new(room), &["rs"], &mut paths);
    }
    let (mut items, mut unshown) = (0, Vec::new());
    for path in paths {
        let source = fs::read_to_string(&path).unwrap();
        let (public, shown) = public_and_shown(&source);
        items += public.len();
        let without = public.into_iter().filter(|name| !shown.contains(name));
        unshown.extend(without.map(|name| format!("{}: {name}", path.display())));
    }
    assert!(items > 150, "only {items} items were found");
    assert_eq!(unshown, Vec::<String>::new());
}
