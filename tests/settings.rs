//! Settings against time, damage and newer versions.

#[path = "support/damaged.rs"]
mod damaged;
#[path = "support/strewn.rs"]
mod strewn;
#[path = "support/told_of.rs"]
mod told_of;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::mpsc;
use std::time::Duration;

use damaged::flipped_and_cut;
use marlinspeak::guide::AtOnce;
use marlinspeak::pedal::{Bindings, Input, Intent};
use marlinspeak::settings::{
    ColourScheme, Settings, SettingsError, SettingsFile, SettingsKept, VERSION,
};
use marlinspeak::words::{Detail, Units};
use serde_json::{Value, json};
use strewn::{left, strew};
use tempfile::TempDir;
use told_of::told_of;

/// What came of opening, with what is told of it.
struct Opened {
    file: SettingsFile,
    settings: Settings,
    troubles: Vec<SettingsError>,
}

fn open(path: &Path) -> Opened {
    opened_by(path, |trouble| panic!("{trouble:?}"))
}

fn opened_by(path: &Path, notify: impl Fn(SettingsError) + Send + 'static) -> Opened {
    let (opened, troubles) = told_of(SettingsFile::open(path, notify));
    Opened {
        file: opened.file,
        settings: opened.settings,
        troubles,
    }
}

fn file(folder: &TempDir) -> PathBuf {
    folder.path().join("marlinspeak/settings.json")
}

fn written(path: &Path) -> Value {
    serde_json::from_slice(&fs::read(path).unwrap()).unwrap()
}

fn write(path: &Path, document: &Value) {
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(path, document.to_string()).unwrap();
}

/// Settings of which nothing is as usual.
fn unusual() -> Settings {
    let mut settings = Settings::default();
    settings.language.tag = Some("de-AT".to_owned());
    settings.language.units = Some(Units::Inch);
    settings.bindings.bind(Input::Controller(67), Intent::Wrong);
    settings
        .bindings
        .bind(Input::Mouse("left".to_owned()), Intent::Next);
    settings.times.bounce = Duration::from_millis(0);
    settings.times.long = Some(Duration::from_millis(400));
    settings.times.double = Some(Duration::from_secs(1));
    let mut speech = settings.speech("en");
    speech.words_per_minute = 215;
    speech.volume = 40;
    speech.pitch = 60;
    speech.voice = Some("Ada".to_owned());
    settings.set_speech("en", speech);
    settings.cues.is_on = false;
    settings.cues.volume = 5;
    settings.flash = true;
    settings.colours = ColourScheme::Light;
    settings.screen.distance = 3000;
    settings.screen.width = Some(531);
    settings.pacing = true;
    settings.verbosity.detail = Detail::Brief;
    settings.verbosity.at_once = AtOnce::WholeLeg;
    settings.prices.metre = Some(0.35);
    settings.prices.hour = Some(24.0);
    settings
}

#[test]
fn without_a_file_everything_is_as_usual_and_nothing_is_written() {
    let folder = TempDir::new().unwrap();
    let opened = open(&file(&folder));
    assert_eq!(opened.settings, Settings::default());
    assert!(opened.troubles.is_empty());
    drop(opened.file);
    assert!(!file(&folder).exists());
}

#[test]
fn what_is_kept_is_read_again() {
    let folder = TempDir::new().unwrap();
    let opened = open(&file(&folder));
    opened.file.keep(&Settings::default());
    opened.file.keep(&unusual());
    drop(opened.file);
    let again = open(&file(&folder));
    assert_eq!(again.settings, unusual());
    assert!(again.troubles.is_empty());
    let files = fs::read_dir(file(&folder).parent().unwrap()).unwrap();
    let mut names: Vec<_> = files.map(|file| file.unwrap().file_name()).collect();
    names.sort();
    names.retain(|name| name != "settings.previous.json");
    assert_eq!(
        names,
        ["settings.json", "settings.lock"],
        "nothing is left over"
    );
}

#[test]
fn fields_that_are_not_known_are_kept() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    write(
        &path,
        &json!({ "version": 1, "lamp": { "hue": 7 }, "cues": { "on": true, "drum": "low" },
                 "manners": { "de": { "pitch": 70, "accent": "coast" } } }),
    );
    let opened = open(&path);
    assert!(opened.troubles.is_empty());
    assert_eq!(opened.settings.speech("de").pitch, 70);
    opened.file.keep(&unusual());
    drop(opened.file);
    let document = written(&path);
    assert_eq!(document["lamp"], json!({ "hue": 7 }));
    assert_eq!(
        document["cues"],
        json!({ "on": false, "volume": 5, "drum": "low" })
    );
    assert_eq!(document["manners"]["de"]["accent"], "coast");
    assert_eq!(document["manners"]["en"]["words_per_minute"], 215);
}

/// In every section and every element of a list that the settings can have.
#[test]
fn fields_that_are_not_known_are_kept_wherever_they_stand() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let opened = open(&path);
    opened.file.keep(&unusual());
    drop(opened.file);
    let mut document = written(&path);
    document.as_object_mut().unwrap().remove("checksum");
    let strewn = strew(&mut document, "");
    assert!(strewn > 8, "{strewn}: {document:#}");
    write(&path, &document);
    let opened = open(&path);
    assert!(opened.troubles.is_empty());
    let mut changed = opened.settings.clone();
    changed.still = !changed.still;
    opened.file.keep(&changed);
    drop(opened.file);
    let document = written(&path);
    assert_eq!(left(&document, ""), strewn, "{document:#}");
}

/// An input keeps what is not known of it, whatever it means and wherever it stands; one that means
/// nothing any more takes it along.
#[test]
fn fields_of_bindings_that_are_not_known_are_kept() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let binding = |key: &str, intent: &str, foot: &str| json!({ "input": format!("key:{key}"), "intent": intent, "foot": foot });
    let key = Input::key("F13").to_string();
    assert_eq!(key, "key:F13", "as it stands in the document");
    write(
        &path,
        &json!({ "version": 1, "bindings": [
            binding("F13", "next", "left"), binding("F14", "back", "right"),
            binding("F15", "again", "none"),
        ] }),
    );
    let opened = open(&path);
    assert!(opened.troubles.is_empty(), "{:?}", opened.troubles);
    let mut settings = opened.settings.clone();
    settings.bindings = Bindings::of([
        (Input::key("F16"), Intent::Pause),
        (Input::key("F14"), Intent::Wrong),
        (Input::key("F13"), Intent::Next),
    ])
    .with_later();
    opened.file.keep(&settings);
    drop(opened.file);
    let document = written(&path);
    let feet = document["bindings"].as_array().unwrap().iter();
    let feet: Vec<_> = feet.map(|one| (&one["input"], &one["foot"])).collect();
    // After them comes what the version that wrote them could not bind.
    assert!(feet[3..].iter().all(|(_, foot)| foot.is_null()), "{feet:?}");
    assert_eq!(
        feet[..3],
        [
            (&json!("key:F16"), &Value::Null),
            (&json!("key:F14"), &json!("right")),
            (&json!("key:F13"), &json!("left")),
        ]
    );
    assert_eq!(open(&path).settings, settings);
}

/// Where every field of a document is, those in its sections and lists too.
fn places(value: &Value, at: &str, found: &mut Vec<String>) {
    let inner: Vec<(String, &Value)> = match value {
        Value::Object(fields) => fields
            .iter()
            .map(|(name, value)| (format!("{at}/{name}"), value))
            .collect(),
        Value::Array(list) => (0..)
            .zip(list)
            .map(|(nth, value): (usize, _)| (format!("{at}/{nth}"), value))
            .collect(),
        _ => return,
    };
    for (at, inner) in inner {
        places(inner, &at, found);
        found.push(at);
    }
}

#[test]
fn with_a_field_less_the_settings_are_read_and_can_be_changed() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let opened = open(&path);
    let mut few = unusual();
    few.bindings = Bindings::of([(Input::key("F13"), Intent::Next)]);
    opened.file.keep(&few);
    drop(opened.file);
    let mut document = written(&path);
    document.as_object_mut().unwrap().remove("checksum");
    let mut found = Vec::new();
    places(&document, "", &mut found);
    found.retain(|at| at != "/version");
    assert!(found.len() > 30, "{found:?}");
    let mut untroubled = 0;
    for at in found {
        let mut null = document.clone();
        *null.pointer_mut(&at).unwrap() = Value::Null;
        let mut missing = document.clone();
        let (section, name) = at.rsplit_once('/').unwrap();
        if let Some(section) = missing.pointer_mut(section).unwrap().as_object_mut() {
            section.remove(name).unwrap();
        }
        for thinned in [null, missing] {
            write(&path, &thinned);
            let opened = opened_by(&path, |trouble| panic!("{trouble:?}"));
            untroubled += usize::from(opened.troubles.is_empty());
            let kept = opened.file;
            kept.keep(&unusual());
            drop(kept);
            let again = open(&path);
            assert!(again.troubles.is_empty(), "{at}: {:?}", again.troubles);
            assert_eq!(again.settings, unusual(), "{at}");
        }
    }
    assert!(untroubled > 50, "{untroubled}");
}

#[test]
fn a_damaged_file_is_set_aside_and_told_of() {
    for (contents, named) in [
        ("{\"version\": 1, \"cues\"", "EOF"),
        ("[1, 2]", "not an object"),
        ("{}", "version"),
        ("{\"version\": 0}", "version"),
        (
            "{\"version\": 1, \"presses\": { \"bounce_ms\": 5000 }}",
            "presses.bounce_ms is 5000; it may be 0 to 1000",
        ),
        (
            "{\"version\": 1, \"presses\": { \"long_ms\": 100 }}",
            "presses.long_ms is 100; it may be 400 to 2000",
        ),
        (
            "{\"version\": 1, \"theme\": \"pink\"}",
            "theme is \"pink\"; it may be dark, light",
        ),
        (
            "{\"version\": 1, \"manners\": { \"en\": { \"volume\": 101 } }}",
            "manners.en.volume is 101",
        ),
        (
            "{\"version\": 1, \"prices\": { \"hour\": -3 }}",
            "prices.hour is -3; it may be 0 to 1000000",
        ),
        (
            "{\"version\": 1, \"manners\": []}",
            "manners is not an object",
        ),
        (
            "{\"version\": 1, \"bindings\": [{ \"input\": \"key:a\" }]}",
            "names no input or intent",
        ),
        (
            "{\"version\": 1, \"at_once\": 0}",
            "at_once is 0; it may be 1 to 999",
        ),
        (
            "{\"version\": 1, \"flash\": \"yes\"}",
            "flash is neither true nor false",
        ),
    ] {
        let folder = TempDir::new().unwrap();
        let path = file(&folder);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, contents).unwrap();
        let opened = open(&path);
        assert_eq!(opened.settings, Settings::default());
        let [
            SettingsError::Damaged {
                aside: Some(aside),
                fault,
                ..
            },
        ] = &opened.troubles[..]
        else {
            panic!("{contents}: {:?}", opened.troubles);
        };
        let why = fault.to_string();
        assert!(why.contains(named), "{contents}: {why}");
        assert_eq!(fs::read_to_string(aside).unwrap(), contents);
        opened.file.keep(&unusual());
        drop(opened.file);
        assert_eq!(open(&path).settings, unusual());
        assert_eq!(fs::read_to_string(aside).unwrap(), contents);
    }
}

#[test]
fn what_a_save_finds_damaged_in_its_place_is_set_aside_and_told() {
    let folder = TempDir::new().unwrap();
    let path = written_twice(&folder);
    let (tell, told) = mpsc::channel();
    let opened = opened_by(&path, move |trouble| tell.send(trouble).unwrap());
    fs::write(&path, "rubbish").unwrap();
    opened.file.keep(&Settings::default());
    let trouble = told.recv_timeout(Duration::from_secs(20)).unwrap();
    let SettingsError::Damaged {
        aside: Some(aside),
        kept: SettingsKept::AsSaved,
        ..
    } = trouble
    else {
        panic!("{trouble:?}");
    };
    assert_eq!(fs::read_to_string(aside).unwrap(), "rubbish");
    drop(opened.file);
    assert_eq!(open(&path).settings, Settings::default());
}

/// For a backup.
#[test]
fn settings_that_cannot_be_read_are_told_and_those_of_a_newer_version_go_along() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let (none, troubles) = told_of(SettingsFile::document(&path));
    assert!(none.is_none() && troubles.is_empty());
    let path = written_twice(&folder);
    let (whole, troubles) = told_of(SettingsFile::document(&path));
    assert!(whole.is_some() && troubles.is_empty());
    let before = fs::read(path.with_file_name("settings.previous.json")).unwrap();
    fs::write(&path, "rubbish").unwrap();
    let (copy, troubles) = told_of(SettingsFile::document(&path));
    assert_eq!(copy, Some(before));
    assert!(troubles[0].previous_used, "{troubles:?}");
    fs::remove_file(path.with_file_name("settings.previous.json")).unwrap();
    let (nothing, troubles) = told_of(SettingsFile::document(&path));
    assert_eq!((nothing, troubles.len()), (None, 1));
    assert_eq!(fs::read_to_string(&path).unwrap(), "rubbish");
    let newer = json!({ "version": VERSION + 1 }).to_string();
    fs::write(&path, &newer).unwrap();
    let (newest, troubles) = told_of(SettingsFile::document(&path));
    assert_eq!(newest, Some(newer.into_bytes()));
    assert!(troubles.is_empty());
}

#[test]
fn a_second_damaged_file_does_not_replace_the_first() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    for contents in ["one", "two"] {
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, contents).unwrap();
        drop(open(&path));
    }
    let aside = |number| path.with_file_name(format!("settings.damaged-{number}.json"));
    assert_eq!(fs::read_to_string(aside(1)).unwrap(), "one");
    assert_eq!(fs::read_to_string(aside(2)).unwrap(), "two");
}

#[test]
fn a_newer_file_is_left_alone() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let newer = json!({ "version": VERSION + 1, "cues": "loud" });
    write(&path, &newer);
    let opened = open(&path);
    assert_eq!(
        opened.troubles,
        [SettingsError::Newer {
            file: path.clone(),
            version: VERSION + 1
        }]
    );
    opened.file.keep(&unusual());
    drop(opened.file);
    assert_eq!(written(&path), newer);
}

#[test]
fn a_save_that_fails_is_told_of() {
    let folder = TempDir::new().unwrap();
    // A plain file stands where the folder should be made.
    fs::write(folder.path().join("marlinspeak"), "").unwrap();
    let path = folder.path().join("marlinspeak/deep/settings.json");
    let (tell, told) = mpsc::channel();
    let opened = opened_by(&path, move |trouble| tell.send(trouble).unwrap());
    // Some systems say so on reading already.
    let trouble = opened.troubles.into_iter().next().or_else(|| {
        opened.file.keep(&unusual());
        told.recv_timeout(Duration::from_secs(20)).ok()
    });
    assert!(matches!(trouble, Some(SettingsError::Io(_))), "{trouble:?}");
}

/// Settings on disk of which nothing is as usual, with a copy before it.
fn written_twice(folder: &TempDir) -> PathBuf {
    let path = file(folder);
    for settings in [Settings::default(), unusual()] {
        let opened = open(&path);
        opened.file.keep(&settings);
        drop(opened.file);
    }
    path
}

#[test]
fn every_flipped_byte_and_every_cut_is_told_and_costs_one_setting_at_most() {
    // In memory, where the system has that: the disk is not what is tried.
    let in_memory = Path::new("/dev/shm");
    let around = if in_memory.is_dir() {
        in_memory.to_owned()
    } else {
        std::env::temp_dir()
    };
    let folder = tempfile::tempdir_in(around).unwrap();
    let path = written_twice(&folder);
    let whole = fs::read(&path).unwrap();
    let before = fs::read(path.with_file_name("settings.previous.json")).unwrap();
    let mut kept_most = 0;
    for at in 0..whole.len() {
        for damaged in flipped_and_cut(&whole, at) {
            fs::write(&path, &damaged).unwrap();
            fs::write(path.with_file_name("settings.previous.json"), &before).unwrap();
            let opened = open(&path);
            match &opened.troubles[..] {
                // Only the line break at the end, or the name of the checksum.
                [] => assert_eq!(opened.settings, unusual(), "{at}"),
                [
                    SettingsError::Damaged {
                        aside: Some(aside),
                        kept,
                        ..
                    },
                ] => {
                    assert_eq!(fs::read(aside).unwrap(), damaged, "{at}");
                    if let SettingsKept::AllBut(lost) = kept {
                        if lost.iter().any(|name| name == "bindings")
                            && String::from_utf8_lossy(&damaged).contains("\"bindings\"")
                        {
                            assert!(lost_bindings(&opened.settings, &unusual()) <= 1, "{at}");
                        }
                        assert!(differences(&opened.settings, &unusual()) <= 1, "{at}");
                        kept_most += 1;
                    }
                    fs::remove_file(aside).unwrap();
                }
                troubles => panic!("{at}: {troubles:?}"),
            }
            drop(opened.file);
            // What holds is on disk, and believed.
            assert!(at % 16 > 0 || open(&path).troubles.is_empty(), "{at}");
        }
    }
    assert!(
        kept_most > whole.len() / 4,
        "{kept_most} of {}",
        whole.len()
    );
}

/// How many bindings of the other settings these do not have.
fn lost_bindings(one: &Settings, other: &Settings) -> usize {
    let bound = |settings: &Settings| -> Vec<String> {
        let bindings = settings.bindings.iter();
        bindings.map(|binding| format!("{binding:?}")).collect()
    };
    let (ours, theirs) = (bound(one), bound(other));
    theirs.iter().filter(|one| !ours.contains(one)).count()
}

/// How many settings are not the same.
fn differences(one: &Settings, other: &Settings) -> usize {
    [
        one.language != other.language,
        lost_bindings(one, other) > 0,
        one.times != other.times,
        one.speech != other.speech,
        one.cues != other.cues,
        one.flash != other.flash,
        one.colours != other.colours,
        one.screen != other.screen,
        one.pacing != other.pacing,
        one.verbosity != other.verbosity,
        one.prices != other.prices,
    ]
    .into_iter()
    .filter(|differs| *differs)
    .count()
}

#[test]
fn what_two_programs_change_holds_from_both() {
    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let (first, second) = (open(&path), open(&path));
    let flashing = Settings {
        flash: true,
        ..Settings::default()
    };
    first.file.keep(&flashing);
    drop(first.file);
    let pacing = Settings {
        pacing: true,
        ..Settings::default()
    };
    second.file.keep(&pacing);
    drop(second.file);
    let both = Settings {
        flash: true,
        pacing: true,
        ..Settings::default()
    };
    assert_eq!(open(&path).settings, both);
}

#[cfg(unix)]
#[test]
fn settings_are_their_owners_alone_unless_the_owner_chose_otherwise() {
    use std::os::unix::fs::PermissionsExt as _;

    let folder = TempDir::new().unwrap();
    let path = file(&folder);
    let mode = |path: &Path| fs::metadata(path).unwrap().permissions().mode() & 0o777;
    let keep = |settings: Settings| {
        let opened = open(&path);
        opened.file.keep(&settings);
        drop(opened.file);
    };
    keep(unusual());
    assert_eq!((mode(&path), mode(path.parent().unwrap())), (0o600, 0o700));
    fs::set_permissions(&path, fs::Permissions::from_mode(0o640)).unwrap();
    keep(Settings::default());
    assert_eq!(mode(&path), 0o640);
}
