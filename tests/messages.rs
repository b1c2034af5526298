//! The messages of a language: none missing, none left over, each one whole whatever it is told.

#[path = "support/messages.rs"]
mod messages;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use fluent::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use messages::{Message, messages};

/// Spoken only: the screen shows the same by itself.
const SPOKEN_ONLY: [&str; 26] = [
    "where",
    "where-taking-up",
    "found",
    "take-back-nothing",
    "detail",
    "at-once",
    "start-offer",
    "start-empty",
    "course",
    "glossary",
    "plan",
    "plan-field",
    "rigging-where",
    "shelf",
    "shelf-tie",
    "log",
    "log-field",
    "log-offer",
    "settings",
    "settings-opening",
    "speed",
    "learn-opening",
    "learn-skipped",
    "learn-done",
    "pace-held",
    "start-field",
];

/// More values of the arguments of one message than these are not all put together.
const MOST_COMBINED: usize = 3000;

fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path, ending));
        } else if path
            .extension()
            .is_some_and(|extension| extension == ending)
        {
            found.push(path);
        }
    }
    found.sort();
    found
}

fn english() -> Vec<String> {
    let files = files(Path::new("i18n/en"), "ftl");
    let texts = files.iter().map(|path| fs::read_to_string(path).unwrap());
    texts.collect()
}

fn ids() -> BTreeSet<String> {
    let texts = english();
    let all = texts.iter().flat_map(|text| messages(text));
    all.map(|message| message.id).collect()
}

/// Every text in double quotes in the sources, and those among them that are said in depths.
fn quoted() -> (BTreeSet<String>, BTreeSet<String>) {
    let (mut all, mut in_depths) = (BTreeSet::new(), BTreeSet::new());
    for path in files(Path::new("src"), "rs") {
        let source = fs::read_to_string(&path).unwrap();
        let is_code = |line: &&str| !line.trim_start().starts_with("//");
        let source = source.lines().filter(is_code).collect::<Vec<_>>();
        let source = source.join("\n").replace("'\"'", "").replace("\\\"", "");
        let pieces: Vec<&str> = source.split('"').collect();
        for (before, text) in pieces.chunks_exact(2).map(|pair| (pair[0], pair[1])) {
            all.insert(text.to_owned());
            if before.trim_end().ends_with("by_detail(") {
                in_depths.insert(text.to_owned());
            } else if before.trim_end().ends_with("by_detail(&format!(") {
                // One hole, filled by the name of an item or a task.
                let (start, rest) = text.split_once('{').unwrap();
                let (_, end) = rest.split_once('}').unwrap();
                let fits = |id: &String| id.starts_with(start) && id.ends_with(end);
                in_depths.extend(ids().into_iter().filter(fits));
            }
        }
    }
    (all, in_depths)
}

/// Whether an id is put together from a quoted text with one hole, and another that fills it.
fn is_filled_in(id: &str, quoted: &BTreeSet<String>) -> bool {
    let with_hole = quoted.iter().filter_map(|text| {
        let (start, rest) = text.split_once('{')?;
        let (_, end) = rest.split_once('}')?;
        (!start.is_empty()).then_some((start, end))
    });
    let mut filled = with_hole.filter_map(|(start, end)| id.strip_prefix(start)?.strip_suffix(end));
    filled.any(|hole| quoted.contains(hole))
}

/// The beginnings of a leg are chosen first and then said in depths.
const WAYS: [&str; 2] = ["lay-say-way", "lay-say-way-on"];

#[test]
fn what_is_said_in_depths_is_there_in_all_three() {
    let ids = ids();
    let (all, mut in_depths) = quoted();
    assert!(WAYS.iter().all(|way| all.contains(*way)));
    in_depths.extend(WAYS.map(str::to_owned));
    assert!(in_depths.len() > 8, "only {in_depths:?}");
    for id in &in_depths {
        for ending in ["", "-brief", "-teach"] {
            assert!(ids.contains(&format!("{id}{ending}")), "no {id}{ending}");
        }
    }
    // And what has a depth is said in it.
    for id in &ids {
        let base = id.strip_suffix("-brief").or(id.strip_suffix("-teach"));
        assert!(base.is_none_or(|base| in_depths.contains(base)), "{id}");
    }
}

#[test]
fn no_message_is_left_over() {
    let (all, in_depths) = quoted();
    for id in ids() {
        let base = id.strip_suffix("-brief").or(id.strip_suffix("-teach"));
        let is_used = all.contains(&id)
            || is_filled_in(&id, &all)
            || base.is_some_and(|base| in_depths.contains(base) || WAYS.contains(&base));
        assert!(is_used, "{id} is not used");
    }
}

#[test]
fn what_is_spoken_stands_on_the_screen() {
    let ids = ids();
    let shown = |stem: &str| ids.contains(&format!("{stem}-show")) || ids.contains(stem);
    let mut spoken = BTreeSet::new();
    for id in &ids {
        if let Some((stem, _)) = id.split_once("-say") {
            assert_ne!(shown(stem), SPOKEN_ONLY.contains(&stem), "{id}");
            spoken.insert(stem);
        }
    }
    for stem in SPOKEN_ONLY {
        assert!(spoken.contains(stem), "{stem} is not spoken");
    }
}

/// What an argument may be, to see every variant: numbers where it is counted.
fn values(argument: &str, keys: &[String]) -> Vec<FluentValue<'static>> {
    let is_counted = keys
        .iter()
        .any(|key| key == "one" || key.parse::<u16>().is_ok());
    if keys.is_empty() {
        // Lengths may have decimals, names anything.
        let texts = ["given", "cord", "reason", "file", "aside", "key"];
        let is_text = texts.contains(&argument);
        return vec![if is_text { "blue".into() } else { 7.into() }];
    }
    if is_counted {
        let named = keys.iter().filter_map(|key| key.parse::<u16>().ok());
        let numbers: BTreeSet<u16> = named.chain([1, 5]).collect();
        return numbers.into_iter().map(FluentValue::from).collect();
    }
    keys.iter().map(|key| key.clone().into()).collect()
}

/// Every combination of the values, or when those are too many, each value once.
fn told(arguments: &BTreeMap<String, Vec<FluentValue<'static>>>) -> Vec<FluentArgs<'static>> {
    let all: usize = arguments.values().map(Vec::len).product();
    let most = arguments.values().map(Vec::len).max().unwrap_or(1);
    let each = |count: usize, advance: bool| -> FluentArgs<'static> {
        let mut rest = count;
        let chosen = arguments.iter().map(|(name, values)| {
            let value = values[rest % values.len()].clone();
            if advance {
                rest /= values.len();
            }
            (name.clone(), value)
        });
        chosen.collect()
    };
    if all <= MOST_COMBINED {
        (0..all).map(|count| each(count, true)).collect()
    } else {
        (0..most).map(|count| each(count, false)).collect()
    }
}

#[test]
fn every_message_is_whole_whatever_it_is_told() {
    let mut formatted = 0;
    for source in english() {
        let mut bundle = FluentBundle::new(vec!["en".parse().unwrap()]);
        bundle.set_use_isolating(false);
        bundle
            .add_resource(FluentResource::try_new(source.clone()).unwrap())
            .unwrap();
        for Message { id, arguments } in messages(&source) {
            let pattern = bundle.get_message(&id).unwrap().value().unwrap();
            let arguments = arguments
                .into_iter()
                .map(|(name, keys)| {
                    let values = values(&name, &keys);
                    (name, values)
                })
                .collect();
            for args in told(&arguments) {
                let mut faults = Vec::new();
                let text = bundle.format_pattern(pattern, Some(&args), &mut faults);
                assert!(faults.is_empty(), "{id} {args:?}: {faults:?}");
                let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
                for slip in [" .", " ,", "..", ",,", ",.", ".,", "{", "}", "!", " :"] {
                    assert!(!text.contains(slip), "{id} {args:?}: {text}");
                }
                // By ear "right" is only ever a side.
                let sides = text.matches("the right").count();
                assert!(
                    !id.contains("-say") || text.matches("right").count() == sides,
                    "{id}: {text}"
                );
                formatted += 1;
            }
        }
    }
    assert!(formatted > 2000, "only {formatted}");
}
