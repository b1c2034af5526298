//! The messages of a language: none missing, none left over, each one whole whatever it is told.

use crate::files;
use crate::messages;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use files::files;
use fluent::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::knot::{Hand, Knot, Side, Weave};
use marlinspeak::words::{Detail, Words};
use messages::{Message, messages};

/// Spoken only: the screen shows the same by itself.
const SPOKEN_ONLY: [&str; 41] = [
    "where",
    "where-taking-up",
    "found",
    "take-back-nothing",
    "detail",
    "at-once",
    "start-offer",
    "start-empty",
    "first-start",
    "course",
    "glossary",
    "plan",
    "plan-again",
    "plan-field",
    "rigging-where",
    "kit-page",
    "kit-tick",
    "rig-page",
    "shelf",
    "shelf-tie",
    "log",
    "log-field",
    "log-offer",
    "tie-log",
    "settings",
    "settings-opening",
    "speed",
    "voice-trial",
    "learn-opening",
    "learn-skipped",
    "learn-done",
    "pace-held",
    "start-field",
    "key-aloud",
    "key-group",
    "keys",
    "keys-close",
    "keys-hint",
    "typed",
    "second-window",
    "second-window-closed",
];

/// More values of the arguments of one message than these are not all put together.
const MOST_COMBINED: usize = 3000;

fn english() -> Vec<String> {
    let files = common("en");
    let texts = files.iter().map(|path| fs::read_to_string(path).unwrap());
    texts.collect()
}

/// The files of a language that all grounds have in common.
fn common(tag: &str) -> Vec<PathBuf> {
    let mut files = files(&Path::new("i18n").join(tag), "ftl");
    files.retain(|path| !path.parent().unwrap().ends_with("grounds"));
    files
}

/// The grounds that have words of their own.
fn grounds(tag: &str) -> Vec<PathBuf> {
    files(&Path::new("i18n").join(tag).join("grounds"), "ftl")
}

/// The words for rims and what goes with them in a file, which other messages are told with.
fn terms(path: &Path) -> BTreeSet<String> {
    let source = fs::read_to_string(path).unwrap();
    let lines = source.lines().filter(|line| line.starts_with('-'));
    lines
        .map(|line| line.split_once(" = ").unwrap().0.to_owned())
        .collect()
}

fn ids() -> BTreeSet<String> {
    let texts = english();
    let all = texts.iter().flat_map(|text| messages(text));
    all.map(|message| message.id).collect()
}

/// The code of the sources but for the tables of spoken messages: no comments, and no quotes but
/// those that begin and end a text.
fn sources() -> Vec<String> {
    let files = files(Path::new("src"), "rs").into_iter();
    let others = files.filter(|path| !path.ends_with("words/spoken_messages.rs"));
    let code = others.map(|path| {
        let source = fs::read_to_string(&path).unwrap();
        let is_code = |line: &&str| !line.trim_start().starts_with("//");
        let code: Vec<&str> = source.lines().filter(is_code).collect();
        code.join("\n").replace("'\"'", "").replace("\\\"", "")
    });
    code.collect()
}

/// Every text in double quotes in the sources, with the code before it.
fn quoted(sources: &[String]) -> Vec<(&str, &str)> {
    let texts = sources.iter().flat_map(|source| {
        let pieces: Vec<&str> = source.split('"').collect();
        let pairs = pieces.chunks_exact(2).map(|pair| (pair[0], pair[1]));
        pairs.collect::<Vec<_>>()
    });
    texts.collect()
}

/// The ids of the spoken messages that the sources name, without the depth.
fn spoken(sources: &[String]) -> BTreeSet<String> {
    let named = sources.iter().flat_map(|source| {
        ["SpokenMessage::", "Remark::"]
            .into_iter()
            .flat_map(|table| {
                let named = source.split(table).skip(1).map(|rest| {
                    let ends = |letter: char| !letter.is_alphanumeric();
                    kebab(rest.split(ends).next().unwrap())
                });
                named.collect::<Vec<_>>()
            })
    });
    named.collect()
}

/// `LaySayWay` becomes `lay-say-way`.
fn kebab(name: &str) -> String {
    let mut id = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !id.is_empty() {
            id.push('-');
        }
        id.extend(letter.to_lowercase());
    }
    id
}

/// The text before the hole of a pattern, and after it.
fn around_hole(pattern: &str) -> Option<(&str, &str)> {
    let (start, rest) = pattern.split_once('{')?;
    let (_, end) = rest.split_once('}')?;
    Some((start, end))
}

const DEPTHS: [&str; 3] = ["", "-brief", "-teach"];

#[test]
fn what_is_said_in_one_depth_is_said_in_all_three() {
    let ids = ids();
    let without = |id: &String, ending: &str| id.strip_suffix(ending).map(str::to_owned);
    let in_depths: BTreeSet<String> = ids
        .iter()
        .filter_map(|id| without(id, "-brief").or(without(id, "-teach")))
        .collect();
    assert!(in_depths.len() > 8, "only {in_depths:?}");
    for id in &in_depths {
        for ending in DEPTHS {
            assert!(ids.contains(&format!("{id}{ending}")), "no {id}{ending}");
        }
    }
}

/// Messages are asked for by the variants of two tables, which their own test holds against the
/// files, or by these calls with an id in quotes.
const CALLS: [&str; 4] = ["self.text(", "self.sentence(", ".plainly(", ".notice("];

#[test]
fn every_message_that_is_asked_for_is_there() {
    let (sources, ids) = (sources(), ids());
    let mut asked_for = 0;
    for (before, id) in quoted(&sources) {
        let before = before.trim_end();
        let is_there = if CALLS.iter().any(|call| before.ends_with(call)) {
            ids.contains(id)
        } else if CALLS
            .iter()
            .any(|call| before.ends_with(&format!("{call}&format!(")))
        {
            let (start, end) = around_hole(id).unwrap();
            let mut ids = ids.iter();
            ids.any(|id| id.starts_with(start) && id.ends_with(end))
        } else {
            continue;
        };
        assert!(is_there, "no {id}");
        asked_for += 1;
    }
    assert!(asked_for > 200, "only {asked_for}");
}

#[test]
fn no_message_is_left_over() {
    let sources = sources();
    let texts: BTreeSet<&str> = quoted(&sources).into_iter().map(|(_, text)| text).collect();
    let spoken = spoken(&sources);
    let stems: BTreeSet<&str> = spoken
        .iter()
        .filter_map(|id| id.split_once("-say").map(|(stem, _)| stem))
        .collect();
    let is_filled_in = |id: &str| {
        let mut patterns = texts.iter().filter_map(|text| around_hole(text));
        patterns.any(|(start, end)| {
            let hole = id.strip_prefix(start).and_then(|id| id.strip_suffix(end));
            hole.is_some_and(|hole| {
                stems.contains(hole) || !start.is_empty() && texts.contains(hole)
            })
        })
    };
    for id in ids() {
        let is_named = DEPTHS.iter().any(|depth| {
            let id = id.strip_suffix(depth);
            id.is_some_and(|id| spoken.contains(id))
        });
        let is_used = is_named
            || texts.contains(&*id)
            || stems.contains(&*id) && !id.contains("-say")
            || is_filled_in(&id);
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

/// The folders of messages, English first.
fn tags() -> Vec<String> {
    let mut tags: Vec<String> = fs::read_dir("i18n")
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    tags.sort_by_key(|tag| (tag != "en", tag.clone()));
    tags
}

/// Every message of a language, with the name of its file and its bundle.
struct Language {
    tag: String,
    files: Vec<(String, Vec<Message>)>,
    bundle: FluentBundle<FluentResource>,
}

impl Language {
    /// As it is spoken of a knot on a tube.
    fn read(tag: &str) -> Self {
        Self::on(tag, None)
    }

    /// As it is spoken of a knot on the ground of this file, or on a tube.
    fn on(tag: &str, ground: Option<&Path>) -> Self {
        let mut bundle = FluentBundle::new(vec![tag.parse().unwrap()]);
        bundle.set_use_isolating(false);
        let mut read = Vec::new();
        for path in common(tag) {
            let source = fs::read_to_string(&path).unwrap();
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            read.push((name, messages(&source)));
            let resource = FluentResource::try_new(source);
            let resource =
                resource.unwrap_or_else(|(_, faults)| panic!("{}: {faults:?}", path.display()));
            bundle.add_resource(resource).unwrap();
        }
        if let Some(ground) = ground {
            let source = fs::read_to_string(ground).unwrap();
            let own = messages(&source);
            let is_own = |id: &String| own.iter().any(|message| message.id == *id);
            for (_, messages) in &mut read {
                messages.retain(|message| !is_own(&message.id));
            }
            let name = ground.file_name().unwrap().to_string_lossy().into_owned();
            read.push((name, own));
            bundle.add_resource_overriding(FluentResource::try_new(source).unwrap());
        }
        Self {
            tag: tag.to_owned(),
            files: read,
            bundle,
        }
    }

    fn messages(&self) -> impl Iterator<Item = &Message> {
        self.files.iter().flat_map(|(_, messages)| messages)
    }

    fn text(&self, id: &str, args: &FluentArgs) -> String {
        let tag = &self.tag;
        let message = self.bundle.get_message(id);
        let message = message.unwrap_or_else(|| panic!("{tag}: no {id}"));
        let mut faults = Vec::new();
        let pattern = message.value().unwrap();
        let text = self.bundle.format_pattern(pattern, Some(args), &mut faults);
        assert!(faults.is_empty(), "{tag} {id} {args:?}: {faults:?}");
        let words: Vec<&str> = text
            .split([' ', '\n'])
            .filter(|word| !word.is_empty())
            .collect();
        words.join(" ")
    }
}

/// Everything a message can be told, with the keys that any of these languages selects by.
fn tellings(id: &str, languages: &[&Language]) -> Vec<FluentArgs<'static>> {
    let mut keys: BTreeMap<String, Vec<String>> = BTreeMap::new();
    let all = languages.iter().flat_map(|language| language.messages());
    for message in all.filter(|message| message.id == id) {
        for (argument, selected) in &message.arguments {
            keys.entry(argument.clone())
                .or_default()
                .extend(selected.iter().cloned());
        }
    }
    let values = keys.into_iter().map(|(name, mut keys)| {
        keys.sort();
        keys.dedup();
        let values = values(&name, &keys);
        (name, values)
    });
    told(&values.collect())
}

/// Marks that have no business in any text that is put together well.
const SLIPS: [&str; 8] = [" .", " ,", "..", ",,", ",.", ".,", "{", "}"];

/// What no voice should be given: signs, and the marks that isolate an insert.
const UNSPEAKABLE: [char; 9] = ['%', '°', '×', '·', '→', '!', '/', '\u{2068}', '\u{2069}'];

fn is_unbroken(space: Option<char>) -> bool {
    matches!(space, Some('\u{a0}' | '\u{202f}'))
}

/// French has a space that does not break before double signs and inside its quotes.
fn french_slip(text: &str) -> Option<String> {
    let letters: Vec<char> = text.chars().collect();
    letters.iter().enumerate().find_map(|(at, letter)| {
        let before = at.checked_sub(1).map(|before| letters[before]);
        let after = letters.get(at + 1).copied();
        let ends_a_word = after.is_none_or(|after| !after.is_alphanumeric());
        let is_good = match letter {
            ':' | ';' | '?' | '!' => !ends_a_word || is_unbroken(before),
            '»' => is_unbroken(before),
            '«' => is_unbroken(after),
            _ => true,
        };
        (!is_good).then(|| format!("{letter} without a space that does not break"))
    })
}

fn slip(tag: &str, id: &str, text: &str) -> Option<String> {
    if let Some(slip) = SLIPS.iter().find(|slip| text.contains(**slip)) {
        return Some(format!("{slip:?}"));
    }
    if tag == "fr" {
        return french_slip(text);
    }
    let spaced = [" :", " ;", " ?", "!"];
    if let Some(slip) = spaced.iter().find(|slip| text.contains(**slip)) {
        return Some(format!("{slip:?}"));
    }
    // By ear "right" is only ever a side.
    let sides = ["the right", "and right", "upright", "right hand"];
    let sides: usize = sides.iter().map(|side| text.matches(side).count()).sum();
    let is_misheard = tag == "en" && id.contains("-say") && text.matches("right").count() != sides;
    is_misheard.then(|| "right that is no side".to_owned())
}

/// A tube and every other ground.
fn everywhere(tag: &str) -> Vec<Language> {
    let others = grounds(tag).into_iter();
    let others = others.map(|ground| Language::on(tag, Some(&ground)));
    std::iter::once(Language::read(tag)).chain(others).collect()
}

#[test]
fn a_ground_says_anew_only_what_there_is_and_in_every_language() {
    let names = |tag: &str| -> Vec<String> {
        let files = grounds(tag).into_iter();
        files
            .map(|path| path.file_stem().unwrap().to_string_lossy().into_owned())
            .collect()
    };
    assert!(names("en").len() >= 3);
    for tag in tags() {
        assert_eq!(names(&tag), names("en"), "{tag}");
        let common: BTreeSet<String> = common(&tag)
            .iter()
            .flat_map(|path| messages(&fs::read_to_string(path).unwrap()))
            .map(|message| message.id)
            .collect();
        let rims = terms(&Path::new("i18n").join(&tag).join("rims.ftl"));
        for ground in grounds(&tag) {
            let name = ground.display();
            let own = terms(&ground);
            let unknown: Vec<_> = own.difference(&rims).collect();
            assert!(unknown.is_empty(), "{name}: {unknown:?}");
            assert!(!own.is_empty(), "{name}");
            for message in messages(&fs::read_to_string(&ground).unwrap()) {
                let id = &message.id;
                assert!(common.contains(id), "{name}: {id} is no message");
            }
        }
    }
}

#[test]
fn every_message_is_whole_whatever_it_is_told() {
    for (tag, language) in tags().iter().flat_map(|tag| {
        everywhere(tag)
            .into_iter()
            .map(move |language| (tag, language))
    }) {
        let mut formatted = 0;
        for Message { id, .. } in language.messages() {
            for args in tellings(id, &[&language]) {
                let text = language.text(id, &args);
                if let Some(slip) = slip(tag, id, &text) {
                    panic!("{tag} {id} {args:?}: {slip} in {text}");
                }
                if id.contains("-say") {
                    let sign = text.chars().find(|letter| UNSPEAKABLE.contains(letter));
                    assert_eq!(sign, None, "{tag} {id} {args:?}: {text}");
                }
                formatted += 1;
            }
        }
        assert!(formatted > 2000, "{tag}: only {formatted}");
    }
}

/// Files of what is only printed or stands on a key.
const SILENT_FILES: [&str; 3] = ["help.ftl", "keys.ftl", "doctor.ftl"];

/// So many words in a row are a long breath: some nine seconds at the usual speed.
const LONGEST_BREATH: usize = 25;

/// The words of a text between two marks at which every voice pauses (`tests/telling/breath.rs` measures them).
fn breaths(text: &str) -> impl Iterator<Item = usize> {
    let ends = |word: &&str| {
        word.trim_end_matches(['”', '“', '»', ')'])
            .ends_with(PAUSES)
    };
    let words: Vec<&str> = text.split_whitespace().collect();
    let breaths = words.split_inclusive(move |word| ends(word));
    breaths.map(<[&str]>::len).collect::<Vec<_>>().into_iter()
}

const PAUSES: [char; 5] = [',', ';', ':', '.', '?'];

#[test]
fn no_words_run_on_longer_than_a_breath() {
    assert_eq!(
        breaths("Over one, under “two.” Then on").collect::<Vec<_>>(),
        [2, 2, 2]
    );
    let mut too_long = BTreeMap::new();
    for (tag, language) in tags().iter().flat_map(|tag| {
        everywhere(tag)
            .into_iter()
            .map(move |language| (tag, language))
    }) {
        let mut longest = 0;
        let heard = language.files.iter();
        let heard = heard.filter(|(file, _)| !SILENT_FILES.contains(&file.as_str()));
        for Message { id, .. } in heard.flat_map(|(_, messages)| messages) {
            for args in tellings(id, &[&language]) {
                let text = language.text(id, &args);
                let most = breaths(&text).max().unwrap_or(0);
                longest = longest.max(most);
                if most > LONGEST_BREATH {
                    too_long.insert(format!("{tag} {id}"), format!("{most} words in {text}"));
                }
            }
        }
        assert!(longest > LONGEST_BREATH / 2, "{tag}: only {longest}");
    }
    assert!(too_long.is_empty(), "{too_long:#?}");
}

#[test]
fn a_slip_is_seen() {
    for (tag, text) in [
        ("en", "Round pin { $pin }."),
        ("en", "Over one, , under one"),
        ("de", "Achtung : Heiß"),
        ("fr", "Attention: chaud"),
        ("fr", "Attention : chaud"),
        ("fr", "le cordage « bleu »"),
    ] {
        assert!(slip(tag, "check-say", text).is_some(), "{tag}: {text}");
    }
    assert!(slip("en", "check-say", "That is right.").is_some());
    for (tag, text) in [
        ("en", "Turn to the right."),
        ("de", "Achtung: 12:30 ist gut."),
        ("fr", "Attention\u{202f}: le cordage «\u{a0}bleu\u{a0}»"),
    ] {
        assert_eq!(slip(tag, "check-say", text), None, "{tag}: {text}");
    }
}

/// Keys that every language may select by: plural categories, and numbers.
fn is_counting(key: &str) -> bool {
    ["zero", "one", "two", "few", "many", "other"].contains(&key) || key.parse::<u32>().is_ok()
}

#[test]
fn every_language_has_every_message_with_every_argument_in_the_same_file() {
    let english = Language::read("en");
    for tag in &tags()[1..] {
        let language = Language::read(tag);
        let names = |language: &Language| -> BTreeMap<String, BTreeSet<String>> {
            let files = language.files.iter();
            files
                .map(|(name, messages)| {
                    let ids = messages.iter().map(|message| message.id.clone());
                    (name.clone(), ids.collect())
                })
                .collect()
        };
        let (theirs, ours) = (names(&language), names(&english));
        for (file, ids) in &ours {
            let none = BTreeSet::new();
            let found = theirs.get(file).unwrap_or(&none);
            let (missing, extra): (Vec<_>, Vec<_>) = (
                ids.difference(found).collect(),
                found.difference(ids).collect(),
            );
            assert!(missing.is_empty(), "{tag}/{file} lacks {missing:?}");
            assert!(
                extra.is_empty(),
                "{tag}/{file} has {extra:?} and English has not"
            );
        }
        assert_eq!(
            theirs.len(),
            ours.len(),
            "{tag} has files that English has not"
        );
        for message in english.messages() {
            let id = &message.id;
            let mut all = language.messages();
            let other = all.find(|other| other.id == *id).unwrap();
            let arguments = |message: &Message| -> BTreeSet<String> {
                message.arguments.keys().cloned().collect()
            };
            assert_eq!(arguments(other), arguments(message), "{tag} {id}");
            for (argument, keys) in &other.arguments {
                let known = &message.arguments[argument];
                for key in keys {
                    let is_known = known.contains(key) || is_counting(key);
                    assert!(
                        is_known,
                        "{tag} {id}: English does not know [{key}] of ${argument}"
                    );
                }
            }
        }
    }
}

#[test]
fn nothing_passes_as_a_translation_that_is_the_english_text() {
    let listed: BTreeSet<(&str, &str)> = include_str!("../data/languages/same_as_english.txt")
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty())
        .map(|line| line.split_once(' ').unwrap())
        .collect();
    let english = Language::read("en");
    for tag in &tags()[1..] {
        let language = Language::read(tag);
        for Message { id, .. } in english.messages() {
            let tellings = tellings(id, &[&english, &language]);
            let is_same = tellings
                .iter()
                .all(|args| english.text(id, args) == language.text(id, args));
            let is_listed = listed.contains(&(tag.as_str(), id.as_str()));
            let text = english.text(id, &tellings[0]);
            assert_eq!(
                is_same, is_listed,
                "{tag} {id}: same, and listed as same: {text}"
            );
        }
    }
}

/// What is spoken comes from [`Words`], which must keep isolation off in every bundle.
#[test]
fn no_isolation_marks_are_spoken_or_shown() {
    let knot = Knot::new(5, 3, Weave::default()).unwrap();
    let plan = Plan::new(knot, 2, Side::default(), Hand::default()).unwrap();
    let plan = plan
        .with_cords(vec!["blue".to_owned(), "white".to_owned()])
        .unwrap();
    let script = Script::new(plan, AtOnce::UpTo(2));
    for tag in tags() {
        let mut words = Words::load(Some(&tag)).unwrap();
        for detail in Detail::ALL {
            words.set_detail(detail);
            for step in script.places().filter_map(|place| script.step(place)) {
                let said = words.say(&step).to_string();
                let shown = words.show(script.plan().knot(), &step).to_string();
                for text in [said, shown] {
                    assert!(!text.contains(['\u{2068}', '\u{2069}']), "{tag}: {text}");
                }
            }
        }
    }
}
