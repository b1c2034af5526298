//! Fields that a document may have or not: those that this version does not know, wherever they
//! stand, and those that say nothing or are not there.

use std::fs;

use marlinspeak::bench::{Cord, Millimetres, Tube};
use marlinspeak::guide::{CordHistory, CordMeasure, Join, Order, PieceField};
use marlinspeak::knot::PassLeg;
use marlinspeak::shelf::{
    Batch, Entry, Orders, PresetsFile, Presses, Tie, WorkTime, read_entry, read_tie, write_entry,
    write_tie,
};
use serde_json::{Map, Value, json};

use crate::{fresh, leg};

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// A tie with every section and every list that its document can have.
pub fn tie_document() -> Value {
    let document = json!({
        "version": 1, "id": "oarlock8", "name": "tiller grip", "note": "second pass in tan",
        "knot": {
            "leads": 5, "bights": 7, "passes": 2, "weave": "1", "side": "left", "hand": "right",
            "order": "pass-by-pass", "nested": 1, "lands": null, "dye": "tan bark",
        },
        "place": { "phase": "follow", "pass": 2, "strand": 1, "leg": 3, "crossing": 1 },
        "begun": "2025-03-01T18:00:00Z", "touched": "2025-03-02T19:30:00Z",
        "cords": ["white", "tan"],
        "batch": { "series": "oarlock8", "number": 2, "of": 3, "tube_stands": true },
        "tube_stood": true, "lesson": 3, "put_away": true,
        "worked": { "seconds": 512.4, "legs": { "12": 5, "8.5": 2 }, "clock": "loft" },
        "measured": [
            { "pass": 1, "strand": 1, "leg": 9, "crossing": 1, "left": 900.0, "by": "Ada" },
            { "pass": 2, "strand": 1, "leg": 2, "crossing": 0, "left": 700.0, "whole": true },
            { "pass": 2, "strand": 1, "leg": 4, "crossing": 0, "left": 650.5, "by": "Ben" },
        ],
        "joined": [
            { "pass": 1, "strand": 1, "leg": 5, "row": 2, "melts": true, "tape": "red" },
            { "pass": 2, "strand": 1, "leg": 1, "row": 3, "tape": { "colour": "blue" } },
        ],
        "tube": {
            "diameter": 45.0, "rows": [14, 20], "wall": 2.0, "pin": 12.0, "thread": "M4",
            "ring_width": 10.0, "length": 300.0, "wood": "ash",
        },
        "cord": { "diameter": 4.0, "name": "tarred marline", "grams_per_metre": 6.5, "give": 1.7 },
        "object": { "diameter": 30.0, "open_to": 40.0 },
        "tails": { "standing": 150.0, "working": 200.0, "holding": 60.0 },
        "correction": { "length": 1.05, "width": 1.0, "give": 1.02, "ties": 4 },
    });
    let mut tie = read_tie(document.to_string().as_bytes()).unwrap();
    tie.presses = Presses(19);
    let mut written: Value = serde_json::from_slice(&write_tie(&tie).unwrap()).unwrap();
    let fields = written.as_object_mut().unwrap();
    fields.remove("checksum");
    for name in document.as_object().unwrap().keys() {
        assert!(fields.contains_key(name), "{name}");
    }
    written
}

/// Ties of every other ground, one of them tied in place.
pub fn ties_of_grounds() -> [Value; 3] {
    [
        json!({ "diameter": 32.0, "open_to": 110.0, "shape": "taper", "top": 26.0, "over": 120.0,
                "wood": "ash" }),
        json!({ "diameter": 38.0, "shape": "ball", "wood": "box" }),
        json!({ "diameter": 150.0, "shape": "mat", "hole": 60.0, "glue": "hide" }),
    ]
    .map(|object| {
        let mut document = tie_document();
        document["version"] = json!(3);
        document["in_place"] = json!(object["shape"] == "mat");
        document["object"] = object;
        document
    })
}

/// An entry of a taper.
pub fn entry_of_taper() -> Value {
    let mut document = entry_document();
    document["version"] = json!(3);
    document["ground"] = json!({ "diameter": 30.0, "shape": "taper", "top": 24.0, "over": 90.0 });
    document
}

pub fn entry_document() -> Value {
    json!({
        "version": 1, "tie": "oarlock7", "name": "bell rope",
        "knot": {
            "leads": 3, "bights": 5, "passes": 2, "interlaced": 90, "nested": 1, "lands": 1,
        },
        "logged": "2025-01-01T11:00:00Z",
        "cord": { "name": "tarred marline", "diameter": 4.0, "grams_per_metre": 6.5, "give": 1.7 },
        "cut": 2200.0, "left_over": 350.0, "around": 30.0, "width": 24.5, "left_open": true,
        "minutes": 95.5, "worked": { "seconds": 5400.0, "legs": { "12": 5 } },
        "series": "oarlock7", "tube_stood": true, "note": "snug", "photograph": "/loft/rope.jpg",
        "weather": "rain",
    })
}

pub fn order_document() -> Value {
    json!({
        "version": 1, "name": "the club", "note": "before launching", "stick": "600mm",
        "waste": 5, "spool": "50m", "touched": "2025-03-02T19:30:00Z", "highest_gone": 3,
        "weather": "rain",
        "pieces": [
            { "number": 1, "name": "bell rope", "count": 2, "leads": 3, "bights": 5, "dye": "oak",
              "cord": "3mm", "tube": "45mm" },
            { "number": 2, "leads": 5, "bights": 7, "dye": "tan", "mat": "150mm:60mm",
              "in_place": true },
        ],
    })
}

pub fn rack_document() -> Value {
    json!({
        "version": 1,
        "tubes": { "ash": { "diameter": 45.0, "rows": [14, 20], "wall": 2.0, "pin": 12.0,
                            "thread": "M4", "ring_width": 10.0, "length": 300.0, "from": "loft" } },
        "cords": { "tan": { "diameter": 4.0, "name": "tan", "grams_per_metre": 6.5, "give": 1.7,
                            "spool": 7 } },
    })
}

/// Where every field of a document is, those in its sections and lists too.
fn places(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                let at = format!("{at}/{}", name.replace('~', "~0").replace('/', "~1"));
                places(value, &at, found);
                found.push(at);
            }
        }
        Value::Array(list) => {
            for (nth, value) in list.iter().enumerate() {
                places(value, &format!("{at}/{nth}"), found);
            }
        }
        _ => {}
    }
}

/// The document with one field after another missing, and saying nothing; with what was done to it.
fn thinned(document: &Value) -> Vec<(String, Value)> {
    let mut found = Vec::new();
    places(document, "", &mut found);
    let mut all = Vec::new();
    for at in found {
        let mut null = document.clone();
        *null.pointer_mut(&at).unwrap() = Value::Null;
        all.push((format!("{at} null"), null));
        let mut missing = document.clone();
        let (section, name) = at.rsplit_once('/').unwrap();
        let section = missing.pointer_mut(section).unwrap();
        section.as_object_mut().unwrap().remove(name).unwrap();
        all.push((format!("{at} missing"), missing));
    }
    all
}

/// With everything about it that can be there, or with nothing.
fn changed(tie: &Tie, is_full: bool) -> Tie {
    let mut tie = tie.clone();
    let pass_leg = PassLeg {
        pass: 2,
        strand: 1,
        leg: 1,
    };
    let measure = CordMeasure {
        at: pass_leg,
        crossing: 0,
        is_whole: true,
        left: mm(500.0),
    };
    let join = Join {
        at: pass_leg,
        row: 1,
        melts: true,
    };
    let mut worked = WorkTime::default();
    worked.add(12.0);
    let history = if is_full {
        CordHistory::new(vec![measure], vec![join])
    } else {
        CordHistory::default()
    };
    tie.plan = tie.plan.with_cord_history(history);
    tie.place = leg(2);
    let text = if is_full { "grip" } else { "" };
    (tie.name, tie.note) = (text.to_owned(), text.to_owned());
    tie.batch = is_full.then(|| Batch::first(4));
    tie.lesson = is_full.then_some(2);
    tie.is_put_away = is_full;
    tie.plan.tube_stands = is_full;
    tie.work_time = if is_full { worked } else { WorkTime::default() };
    tie.presses = Presses(u64::from(is_full));
    if !is_full {
        tie.plan = tie.plan.with_setup(None);
    }
    tie
}

#[test]
fn a_tie_with_a_field_less_is_refused_or_can_be_changed_and_written() {
    let mut read = 0;
    let others = ties_of_grounds();
    let documents = [tie_document()].into_iter().chain(others);
    for (what, document) in documents.flat_map(|document| thinned(&document)) {
        let Ok(tie) = read_tie(document.to_string().as_bytes()) else {
            continue;
        };
        read += 1;
        for tie in [tie.clone(), changed(&tie, true), changed(&tie, false)] {
            let written = write_tie(&tie);
            assert!(written.is_ok(), "{what}: {written:?}");
            let again = read_tie(&written.unwrap()).unwrap();
            assert_eq!(
                (&again.plan, &again.batch),
                (&tie.plan, &tie.batch),
                "{what}"
            );
        }
    }
    assert!(read > 280, "{read}");
}

#[test]
fn an_entry_with_a_field_less_is_refused_or_can_be_changed_and_written() {
    let mut read = 0;
    let documents = [entry_document(), entry_of_taper()];
    for (what, document) in documents.iter().flat_map(thinned) {
        let Ok(entry) = read_entry(document.to_string().as_bytes()) else {
            continue;
        };
        read += 1;
        let mut worked = WorkTime::default();
        worked.add(12.0);
        let full = Entry {
            cord: Some(Cord::new(mm(3.0))),
            cut: Some(mm(900.0)),
            left_over: Some(20.0),
            around: Some(mm(30.0).into()),
            width: Some(mm(20.0)),
            left_open: true,
            minutes: Some(20.0),
            work_time: worked,
            series: Some("oarlock7".to_owned()),
            tube_stood: true,
            ..entry.clone()
        };
        let bare = Entry {
            cord: None,
            cut: None,
            left_over: None,
            around: None,
            width: None,
            left_open: false,
            minutes: None,
            work_time: WorkTime::default(),
            series: None,
            tube_stood: false,
            ..entry.clone()
        };
        for entry in [entry, full, bare] {
            let written = write_entry(&entry);
            assert!(written.is_ok(), "{what}: {written:?}");
            let again = read_entry(&written.unwrap()).unwrap();
            assert_eq!(
                (again.cord, again.series),
                (entry.cord, entry.series),
                "{what}"
            );
        }
    }
    assert!(read > 60, "{read}");
}

#[test]
fn an_order_with_a_field_less_is_refused_or_can_be_changed() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let id = orders.keep(Order::default()).unwrap().id;
    let file = orders.file(&id).path().to_owned();
    let mut read = 0;
    for (what, document) in thinned(&order_document()) {
        fs::write(&file, document.to_string()).unwrap();
        let Ok(found) = orders.look(&id) else {
            continue;
        };
        if found.is_troubled() {
            continue;
        }
        read += 1;
        let changed = orders.change(&id, |order| {
            order.name = "the yard".to_owned();
            order.note = "wax".to_owned();
            (order.stick, order.waste) = ("1m".to_owned(), "7".to_owned());
            order.spool = String::new();
            order.pieces.truncate(1);
            order.add().say(PieceField::Count, "3");
        });
        let changed = changed.unwrap_or_else(|error| panic!("{what}: {error}"));
        let changed = changed.untroubled().unwrap();
        let again = orders.look(&id).unwrap().untroubled().unwrap();
        assert_eq!(again, changed, "{what}");
        assert_eq!(again.order.name, "the yard", "{what}");
    }
    assert!(read > 30, "{read}");
}

#[test]
fn a_rack_with_a_field_less_is_refused_or_can_be_added_to() {
    let (_around, shelf) = fresh();
    let rack = PresetsFile::beside(&shelf);
    let mut read = 0;
    for (what, document) in thinned(&rack_document()) {
        let _ = fs::remove_file(rack.path());
        let _ = fs::remove_file(rack.path().with_extension("previous.json"));
        fs::write(rack.path(), document.to_string()).unwrap();
        if rack.read().is_err() {
            continue;
        }
        read += 1;
        for (name, diameter) in [("ash", 40.0), ("oak", 30.0)] {
            let kept = rack.keep_tube(name, &Tube::plain(mm(diameter)));
            let kept = kept.unwrap_or_else(|error| panic!("{what}: {error}"));
            assert!(kept.untroubled().is_ok(), "{what}");
        }
        let kept = rack.keep_cord("tan", &Cord::new(mm(3.0))).unwrap();
        assert!(kept.untroubled().is_ok(), "{what}");
        let presets = rack.read().unwrap().untroubled().unwrap();
        assert_eq!(presets.tubes["ash"], Tube::plain(mm(40.0)), "{what}");
        assert_eq!(presets.cords["tan"].diameter, mm(3.0), "{what}");
    }
    assert!(read > 20, "{read}");
}

fn json_of(document: &[u8]) -> Value {
    serde_json::from_slice(document).unwrap()
}

/// The document without what is counted anew at every writing.
fn without_checksum(document: &[u8]) -> Map<String, Value> {
    let Value::Object(mut fields) = json_of(document) else {
        panic!("no document");
    };
    fields.remove("checksum");
    fields
}

#[test]
fn what_is_not_known_of_measures_and_joins_stays_with_them() {
    let document = tie_document();
    let tie = read_tie(document.to_string().as_bytes()).unwrap();
    let written = write_tie(&tie).unwrap();
    assert_eq!(Value::Object(without_checksum(&written)), document);
    for field in [
        "/measured/0/by",
        "/measured/2/by",
        "/joined/0/tape",
        "/joined/1/tape/colour",
        "/knot/dye",
        "/worked/clock",
        "/tube/wood",
    ] {
        assert!(document.pointer(field).is_some(), "{field}");
    }
    // One measure goes, another comes before the others, and one is taken anew.
    let history = tie.plan.cord_history();
    let (mut measures, mut joins) = (history.measures().to_vec(), history.joins().to_vec());
    let fresh = CordMeasure {
        left: mm(300.0),
        ..measures[1]
    };
    measures[2].left = mm(600.0);
    measures.remove(1);
    measures.insert(0, fresh);
    joins.remove(0);
    let mut later = tie;
    later.plan = later
        .plan
        .with_cord_history(CordHistory::new(measures, joins));
    let written = json_of(&write_tie(&later).unwrap());
    let by: Vec<&Value> = (0..3).map(|nth| &written["measured"][nth]["by"]).collect();
    assert_eq!(by, [&Value::Null, &json!("Ada"), &Value::Null]);
    assert_eq!(written["joined"].as_array().unwrap().len(), 1);
    assert_eq!(written["joined"][0]["tape"], json!({ "colour": "blue" }));
    // On another tube the next one is begun with none of them.
    later.plan = later.plan.with_cord_history(CordHistory::default());
    let written = json_of(&write_tie(&later).unwrap());
    assert!(written.get("measured").is_none() && written.get("joined").is_none());
    assert_eq!(written["knot"]["dye"], "tan bark");
}

#[test]
fn what_is_not_known_of_a_piece_goes_with_it_wherever_it_stands() {
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let id = orders.keep(Order::default()).unwrap().id;
    let file = orders.file(&id).path().to_owned();
    fs::write(&file, order_document().to_string()).unwrap();
    let changed = orders.change(&id, |order| {
        order.pieces.swap(0, 1);
        order.add().say(PieceField::Name, "ring");
    });
    changed.unwrap().untroubled().unwrap();
    let dyes = || {
        let written = json_of(&fs::read(&file).unwrap());
        let pieces = written["pieces"].as_array().unwrap().iter();
        pieces.map(|piece| piece["dye"].clone()).collect::<Vec<_>>()
    };
    assert_eq!(dyes(), [json!("tan"), json!("oak"), Value::Null]);
    let changed = orders.change(&id, |order| {
        order.pieces.remove(0);
    });
    changed.unwrap().untroubled().unwrap();
    assert_eq!(dyes(), [json!("oak"), Value::Null]);
}

#[test]
fn what_is_not_known_of_tubes_and_cords_stays_with_their_names() {
    let (_around, shelf) = fresh();
    let rack = PresetsFile::beside(&shelf);
    fs::write(rack.path(), rack_document().to_string()).unwrap();
    let kept = rack.keep_tube("ash", &Tube::plain(mm(40.0))).unwrap();
    kept.untroubled().unwrap();
    let written = json_of(&fs::read(rack.path()).unwrap());
    assert_eq!(written["tubes"]["ash"]["from"], "loft");
    assert_eq!(written["tubes"]["ash"]["diameter"], 40.0);
    assert_eq!(written["cords"]["tan"]["spool"], 7);
}
