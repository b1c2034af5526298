//! The document: versions, unknown fields, and the way there and back.

use std::fs;

use jiff::Timestamp;
use marlinspeak::files::FormatError;
use marlinspeak::guide::{Place, Plan};
use marlinspeak::knot::{Hand, Knot, Lattice, Laying, LayingOrder, PassLeg, Side, Weave};
use marlinspeak::shelf::{DocumentError, ShelfError, TIE_VERSION, Tie, read_tie, write_tie};
use proptest::prelude::*;
use serde_json::{Map, Value, json};

use crate::{document, five_by_six, fresh, leg, previous};

#[test]
fn a_document_of_version_0_is_read_and_saved_in_the_newest() {
    let (_around, shelf) = fresh();
    let file = shelf.folder().join("oarlock7.json");
    let old = include_bytes!("../data/ties/version-0.json");
    fs::write(&file, old).unwrap();
    let tie = shelf.list().unwrap().untroubled().unwrap().remove(0);
    assert_eq!(tie.name, "tiller of the red dinghy");
    let pass_leg = PassLeg {
        pass: 2,
        strand: 1,
        leg: 7,
    };
    assert_eq!(
        tie.place,
        Place::Lay {
            pass_leg,
            crossing: 1
        }
    );
    assert_eq!((tie.plan.side, tie.plan.hand), (Side::Left, Hand::Right));
    assert_eq!(tie.plan.laying().order(), LayingOrder::PassByPass);
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let new: Value = serde_json::from_slice(&fs::read(&file).unwrap()).unwrap();
    // A plain knot stays one that a program of version 1 reads.
    assert_eq!(new["version"], json!(1));
    assert_eq!(new["place"]["phase"], "follow");
    assert!(new["place"].get("stage").is_none());
    // The old document stays as the copy before.
    assert_eq!(fs::read(previous(&shelf, tie.id())).unwrap(), old);
}

/// A program from before would take it for plain, so it is of a version that such a one refuses.
#[test]
fn an_interwoven_tie_is_of_a_newer_version_and_comes_back_whole() {
    for (lands, weave) in [("1", ""), ("2", ""), ("", "1")] {
        let plan = Plan::read_nested(["5", "4", "2", lands], "2", weave).unwrap();
        let place = Place::Lay {
            pass_leg: PassLeg {
                pass: 2,
                strand: 2,
                leg: 8,
            },
            crossing: 1,
        };
        let tie = Tie::begin(plan, place);
        let written = write_tie(&tie).unwrap();
        let document: Value = serde_json::from_slice(&written).unwrap();
        assert_eq!(document["version"], json!(2));
        assert_eq!(document["knot"]["nested"], json!(2));
        assert_eq!(read_tie(&written), Ok(tie));
    }
    let wrong =
        br#"{"version": 2, "knot": {"leads": 5, "bights": 4, "nested": 2, "lands": 3, "passes": 1,
        "weave": "2", "side": "right", "hand": "right", "order": "strand-by-strand"},
        "place": {"phase": "lead", "pass": 1, "strand": 1, "leg": 0, "crossing": 0},
        "begun": "2025-01-01T10:00:00Z", "touched": "2025-01-01T11:00:00Z"}"#;
    assert!(read_tie(wrong).is_err());
}

#[test]
fn a_newer_version_is_refused_with_its_number() {
    assert_eq!(
        read_tie(include_bytes!("../data/ties/newer.json")),
        Err(DocumentError::Format(FormatError::Newer {
            version: 99,
            known: TIE_VERSION
        }))
    );
}

#[test]
fn a_document_written_by_hand_keeps_what_this_version_does_not_know() {
    let (_around, shelf) = fresh();
    let by_hand = include_bytes!("../data/ties/by-hand.json");
    fs::write(shelf.folder().join("byhand.json"), by_hand).unwrap();
    let mut tie = shelf.list().unwrap().untroubled().unwrap().remove(0);
    assert_eq!(tie.plan.knot().weave().to_string(), "ouo");
    tie.place = leg(4);
    shelf.save(&tie).unwrap().untroubled().unwrap();
    let before: Value = serde_json::from_slice(by_hand).unwrap();
    let after = fs::read(document(&shelf, tie.id())).unwrap();
    let after: Value = serde_json::from_slice(&after).unwrap();
    for field in [
        "/tube",
        "/weather",
        "/knot/dye",
        "/place/light",
        "/knot/order",
    ] {
        assert!(before.pointer(field).is_some(), "{field}");
        assert_eq!(after.pointer(field), before.pointer(field), "{field}");
    }
    assert_eq!(after["place"]["leg"], 4);
}

#[test]
fn a_document_of_version_1_is_read_field_by_field_and_written_so_that_its_reader_knows_it() {
    let old = include_bytes!("../data/ties/version-1.json");
    let tie = read_tie(old).unwrap();
    assert_eq!(tie.plan.cords(), ["white", "tan"]);
    assert_eq!((tie.lesson, tie.is_put_away), (Some(3), true));
    assert_eq!(tie.work_time.legs_timed(), 7);
    assert!((tie.work_time.seconds() - 512.4).abs() < 1e-9);
    let setup = tie.plan.setup().unwrap();
    assert_eq!(setup.cord.name.as_deref(), Some("tarred marline"));
    assert_eq!(setup.tube.rows(), Some(&[12, 16][..]));
    assert!((setup.correction.length() - 1.05).abs() < 1e-12);
    assert!(tie.unknown.is_empty(), "{:?}", tie.unknown);
    // Every field has the name, the form and the place that it always had. What a width came out as is
    // of no use any more, since widths are computed otherwise.
    let mut old: Value = serde_json::from_slice(old).unwrap();
    old["correction"]["width"] = json!(1.0);
    old.as_object_mut().unwrap().remove("checksum");
    let mut new: Value = serde_json::from_slice(&write_tie(&tie).unwrap()).unwrap();
    new.as_object_mut().unwrap().remove("checksum");
    assert_eq!(new.to_string(), old.to_string());
}

#[test]
fn a_field_that_is_not_what_it_should_be_is_damage_with_its_name() {
    let whole: Value =
        serde_json::from_slice(include_bytes!("../data/ties/version-1.json")).unwrap();
    for (pointer, value, said) in [
        ("/lesson", json!("third"), "`lesson`"),
        ("/lesson", json!(-1), "`lesson`"),
        ("/put_away", json!("yes"), "`put_away`"),
        ("/worked/seconds", json!("long"), "`worked"),
        ("/worked/legs", json!({ "soon": 1 }), "`worked`"),
        ("/cords", json!("white"), "`cords`"),
        (
            "/cords",
            json!(["white", "tan", "blue"]),
            "`cords` has 3 names; the knot has strands: 1, passes: 2",
        ),
        (
            "/cord/grams_per_metre",
            json!(-6.5),
            "`cord.grams_per_metre`",
        ),
        ("/cord/diameter", json!("thin"), "`cord.diameter`"),
        ("/tube/wall", json!(0), "`tube.wall`"),
    ] {
        let mut broken = whole.clone();
        broken.as_object_mut().unwrap().remove("checksum");
        read_tie(broken.to_string().as_bytes()).unwrap();
        *broken.pointer_mut(pointer).unwrap() = value;
        let error = read_tie(broken.to_string().as_bytes()).unwrap_err();
        let error = error.to_string();
        assert!(error.contains(said), "{pointer}: {error}");
    }
}

#[test]
fn a_changed_document_with_its_old_checksum_is_damage() {
    let whole = String::from_utf8(write_tie(&five_by_six()).unwrap()).unwrap();
    let changed = whole.replace("\"leg\": 1", "\"leg\": 2");
    assert_ne!(changed, whole);
    assert!(matches!(
        read_tie(changed.as_bytes()),
        Err(DocumentError::Format(FormatError::Checksum { .. }))
    ));
    // Spaces and the order of fields are nobody's business.
    let other: Value = serde_json::from_str(&whole).unwrap();
    assert!(read_tie(other.to_string().as_bytes()).is_ok());
}

#[test]
fn what_would_not_read_back_is_not_written() {
    let (_around, shelf) = fresh();
    let tie = shelf.begin(five_by_six()).unwrap().tie;
    let before = fs::read(document(&shelf, tie.id())).unwrap();
    let mut deep = json!(1);
    for _ in 0..200 {
        deep = json!([deep]);
    }
    for (name, value) in [
        ("leads and all", json!("x".repeat(1 << 20))),
        ("checksum", json!("crc32:00000000")),
        ("deep", deep),
    ] {
        let mut wrong = tie.clone();
        wrong.unknown.insert(name, value);
        let error = shelf.save(&wrong).unwrap_err();
        assert!(
            matches!(error, ShelfError::Unwritable { .. }),
            "{name}: {error}"
        );
    }
    let mut wrong = tie.clone();
    wrong.place = leg(99);
    assert_eq!(
        shelf.save(&wrong).unwrap_err().to_string(),
        format!(
            "tie {} is not written: it stands at leg 99, outside the knot: 0 to 12",
            tie.id()
        )
    );
    assert_eq!(fs::read(document(&shelf, tie.id())).unwrap(), before);
    // What is known holds, and is not said twice.
    let mut known = tie.clone();
    known.unknown.insert("version", 99);
    known.unknown.insert("name", "another");
    assert_eq!(read_tie(&write_tie(&known).unwrap()), Ok(tie));
}

fn values() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        any::<u64>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        any::<String>().prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 32, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            sections(inner).prop_map(Value::from),
        ]
    })
}

fn sections(value: impl Strategy<Value = Value>) -> impl Strategy<Value = Map<String, Value>> {
    // No field of a tie has a capital in its name.
    prop::collection::btree_map("[A-Z].{0,8}", value, 0..6)
        .prop_map(|map| map.into_iter().collect())
}

fn weaves(rows: u16) -> impl Strategy<Value = Weave> {
    let code = prop::collection::vec(any::<bool>(), usize::from(rows));
    prop_oneof![
        (1..=rows).prop_map(Weave::Run),
        code.prop_map(|rows| Weave::Rows(rows.into())),
    ]
}

fn plans() -> impl Strategy<Value = Plan> {
    let counts = (3_u16..=999, 2_u16..=999, 1_u16..=9);
    let nests = prop_oneof![
        Just((1_u16, 1_u16)),
        (1_u16..=9).prop_flat_map(|nested| (Just(nested), 1..=nested))
    ];
    let ways = (any::<bool>(), any::<bool>(), any::<bool>());
    (counts, nests, ways)
        .prop_flat_map(|((leads, bights, passes), (nested, lands), ways)| {
            let plain = Lattice::plain(leads, bights).unwrap();
            let lattice = plain.interwoven(nested, lands).unwrap();
            (Just((lattice, passes)), Just(ways), weaves(lattice.rows()))
        })
        .prop_map(|((lattice, passes), (side, hand, order), weave)| {
            let order = if order {
                LayingOrder::PassByPass
            } else {
                LayingOrder::StrandByStrand
            };
            let knot = Knot::woven(lattice, weave).unwrap();
            Plan::of(
                Laying::new(knot, passes, order).unwrap(),
                if side { Side::Right } else { Side::Left },
                if hand { Hand::Right } else { Hand::Left },
            )
        })
}

fn times() -> impl Strategy<Value = Timestamp> {
    (Timestamp::MIN.as_nanosecond()..=Timestamp::MAX.as_nanosecond())
        .prop_map(|nanoseconds| Timestamp::from_nanosecond(nanoseconds).unwrap())
}

prop_compose! {
    fn ties()(
        plan in plans(),
        within in any::<[prop::sample::Index; 4]>(),
        phase in 0..8_u8,
        texts in any::<(String, String)>(),
        times in (times(), times()),
        unknown in sections(values()),
    ) -> Tie {
        let laying = plan.laying();
        let up_to = |index: usize, most: u16| {
            u16::try_from(within[index].index(usize::from(most))).unwrap()
        };
        let strand = 1 + up_to(1, laying.knot().strands());
        let pass_leg = PassLeg {
            pass: 1 + up_to(0, laying.passes()),
            strand,
            leg: 1 + up_to(2, laying.knot().legs_of(strand)),
        };
        let number = up_to(3, u16::MAX);
        let place = match phase {
            0 => Place::Kit { item: number },
            1 => Place::Rig { task: number },
            2 => Place::begin(pass_leg.pass, pass_leg.strand),
            3 => {
                let met = u16::try_from(laying.crossings(pass_leg).count()).unwrap();
                Place::Lay { pass_leg, crossing: up_to(3, met + 1) }
            }
            4 => Place::check(pass_leg),
            5 => Place::Lift { task: number },
            6 => Place::fair(number, pass_leg),
            _ => Place::Finish { task: number },
        };
        let mut tie = Tie::begin(plan, place);
        (tie.name, tie.note) = texts;
        (tie.begun, tie.touched) = times;
        tie.unknown = unknown.into();
        tie
    }
}

proptest! {
    #[test]
    fn any_tie_reads_back_as_it_was_written(tie in ties()) {
        let document = write_tie(&tie);
        prop_assert!(document.is_ok(), "{document:?}");
        prop_assert_eq!(read_tie(&document.unwrap()), Ok(tie));
    }

    #[test]
    fn no_bytes_make_the_reader_panic(bytes in any::<Vec<u8>>()) {
        prop_assert!(read_tie(&bytes).is_err());
    }
}
