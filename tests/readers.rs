//! Bytes of every kind given to every reader of bytes from outside: what the fuzz targets do without an
//! end, here within bounds and at every run.

#[path = "fuzz/readers.rs"]
mod readers;

use std::io::Cursor;

use image::{ImageFormat, Rgb, RgbImage};
use marlinspeak::bench::{Cord, Millimetres, Tube};
use marlinspeak::guide::{Order, PieceField, Plan, Presets, SetupField};
use marlinspeak::session::new_tie;
use marlinspeak::settings::{Settings, write_settings};
use marlinspeak::shelf::{
    Batch, Entry, StoredOrder, write_entry, write_order, write_presets, write_tie,
};
use proptest::prelude::*;
use proptest::sample::Index;
use serde_json::Value;

/// What can happen to a document.
#[derive(Clone, Debug)]
enum Damage {
    /// A byte becomes another one.
    Byte(Index, u8),
    /// Some bytes come in between.
    Insert(Index, Vec<u8>),
    /// Some bytes are left out.
    LeaveOut(Index, usize),
    /// Everything from here on is missing.
    Cut(Index),
    /// Everything from here on comes once more.
    Again(Index),
}

fn damage() -> impl Strategy<Value = Damage> {
    let at = any::<Index>;
    // What means something to a reader comes more often than by chance.
    let telling = prop::sample::select(b"0123456789-+.eE\"\\{}[],: \r\n\x00\x1b\xff".to_vec());
    let byte = prop_oneof![any::<u8>(), telling];
    prop_oneof![
        (at(), byte.clone()).prop_map(|(at, byte)| Damage::Byte(at, byte)),
        (at(), prop::collection::vec(byte, 1..9)).prop_map(|(at, bytes)| Damage::Insert(at, bytes)),
        (at(), 1_usize..40).prop_map(|(at, bytes)| Damage::LeaveOut(at, bytes)),
        at().prop_map(Damage::Cut),
        at().prop_map(Damage::Again),
    ]
}

fn damaged(mut document: Vec<u8>, damages: &[Damage]) -> Vec<u8> {
    for damage in damages {
        if document.is_empty() {
            break;
        }
        let length = document.len();
        match damage {
            Damage::Byte(at, byte) => document[at.index(length)] = *byte,
            Damage::Insert(at, bytes) => {
                let at = at.index(length);
                document.splice(at..at, bytes.iter().copied());
            }
            Damage::LeaveOut(at, bytes) => {
                let at = at.index(length);
                document.drain(at..length.min(at + bytes));
            }
            Damage::Cut(at) => document.truncate(at.index(length)),
            Damage::Again(at) => document.extend_from_within(at.index(length)..),
        }
    }
    document
}

/// A document without its checksum: what is damaged in it is read further.
fn unchecked(document: &[u8]) -> Vec<u8> {
    let mut fields: Value = serde_json::from_slice(document).unwrap();
    fields.as_object_mut().unwrap().remove("checksum");
    fields.to_string().into_bytes()
}

/// A document, its checksum on or off, with up to four damages.
fn like(document: Vec<u8>) -> impl Strategy<Value = Vec<u8>> {
    let bare = unchecked(&document);
    let whole = prop::sample::select(vec![document, bare]);
    let damages = prop::collection::vec(damage(), 0..5);
    (whole, damages).prop_map(|(document, damages)| damaged(document, &damages))
}

fn some_bytes() -> impl Strategy<Value = Vec<u8>> {
    prop::collection::vec(any::<u8>(), 0..300)
}

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

fn a_tie() -> marlinspeak::shelf::Tie {
    let mut tie = new_tie(&Plan::read("4", "7", "2", "1").unwrap());
    "boathook \"é\"".clone_into(&mut tie.name);
    tie.batch = Some(Batch::first(10));
    tie
}

fn an_entry() -> Entry {
    Entry {
        cut: Some(mm(3430.0)),
        left_over: Some(120.0),
        minutes: Some(95.0),
        cord: Some(Cord::new(mm(4.0)).named("tarred")),
        ..Entry::of(&a_tie())
    }
}

fn some_presets() -> Presets {
    let mut presets = Presets::default();
    let cord = Cord::new(mm(4.0)).named("tarred");
    presets.cords.insert("tarred".to_owned(), cord);
    presets
        .tubes
        .insert("oak".to_owned(), Tube::plain(mm(45.0)));
    presets
}

fn an_order() -> StoredOrder {
    let mut order = Order {
        name: "club \"é\"".to_owned(),
        stick: "1.2m".to_owned(),
        ..Order::default()
    };
    let piece = order.add();
    for (field, text) in [
        (PieceField::Count, "10"),
        (PieceField::Leads, "4"),
        (PieceField::Bights, "7"),
        (PieceField::Gap, "20mm"),
        (PieceField::Setup(SetupField::Cord), "3mm"),
        (PieceField::Setup(SetupField::Tube), "45mm"),
    ] {
        piece.say(field, text);
    }
    StoredOrder::new(order)
}

fn on_one_line(document: &[u8]) -> Vec<u8> {
    let document: Value = serde_json::from_slice(document).unwrap();
    document.to_string().into_bytes()
}

fn a_backup() -> Vec<u8> {
    let lines = [
        br#"{"marlinspeak":"backup","version":2,"ties":1,"logged":1,"racks":1,"settings":1,"orders":1}"#
            .to_vec(),
        on_one_line(&write_tie(&a_tie()).unwrap()),
        on_one_line(&write_entry(&an_entry()).unwrap()),
        on_one_line(&write_presets(&some_presets()).unwrap()),
        on_one_line(&write_settings(&Settings::default()).unwrap()),
        on_one_line(&write_order(&an_order()).unwrap()),
    ];
    lines.join(&b'\n')
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn a_tie_is_read_or_refused(document in prop_oneof![like(write_tie(&a_tie()).unwrap()), some_bytes()]) {
        readers::tie(&document);
    }

    #[test]
    fn an_entry_is_read_or_refused(
        document in prop_oneof![like(write_entry(&an_entry()).unwrap()), some_bytes()]
    ) {
        readers::entry(&document);
    }

    #[test]
    fn presets_are_read_or_refused(
        document in prop_oneof![like(write_presets(&some_presets()).unwrap()), some_bytes()]
    ) {
        readers::presets(&document);
    }

    #[test]
    fn an_order_is_read_or_refused(
        document in prop_oneof![like(write_order(&an_order()).unwrap()), some_bytes()]
    ) {
        readers::order(&document);
    }

    #[test]
    fn settings_are_read_or_refused_and_what_is_saved_of_them_holds(
        document in prop_oneof![like(write_settings(&Settings::default()).unwrap()), some_bytes()]
    ) {
        readers::settings(&document);
    }

    #[test]
    fn answers_are_read_to_their_end(
        answers in prop_oneof![
            prop::collection::vec(damage(), 0..5).prop_map(|damages| damaged(
                b"208 OK SET\r\n249-Ada\ten\tnone\r\n249 OK SENT\r\n701-12\r\n701-1\r\n701 BEGIN\r\n".to_vec(),
                &damages,
            )),
            some_bytes(),
        ]
    ) {
        #[cfg(target_os = "linux")]
        readers::answers(&answers);
    }
}

/// A small picture as a file of this kind.
fn a_photograph(format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    let picture = RgbImage::from_fn(60, 40, |x, y| {
        Rgb([x, y, x ^ y].map(|tone| u8::try_from(tone).unwrap()))
    });
    picture.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

const PHOTOGRAPHS: [ImageFormat; 3] = [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn a_photograph_is_shown_or_refused(
        format in prop::sample::select(PHOTOGRAPHS.to_vec()),
        damages in prop::collection::vec(damage(), 0..5),
    ) {
        readers::photograph(&damaged(a_photograph(format), &damages));
    }
}

proptest! {
    // Each goes to the disk and back twice.
    #![proptest_config(ProptestConfig::with_cases(40))]

    #[test]
    fn a_backup_comes_back_as_far_as_it_is_whole(damages in prop::collection::vec(damage(), 0..5)) {
        readers::backup(&damaged(a_backup(), &damages));
    }
}

#[test]
fn what_is_whole_is_read_by_each_of_them() {
    // Else nothing is tried above but refusing.
    for (document, reads) in [
        (
            write_tie(&a_tie()).unwrap(),
            (|document| marlinspeak::shelf::read_tie(document).is_ok()) as fn(&[u8]) -> bool,
        ),
        (write_entry(&an_entry()).unwrap(), |document| {
            marlinspeak::shelf::read_entry(document).is_ok()
        }),
        (write_presets(&some_presets()).unwrap(), |document| {
            marlinspeak::shelf::read_presets(document).is_ok()
        }),
        (write_order(&an_order()).unwrap(), |document| {
            marlinspeak::shelf::read_order(document).is_ok()
        }),
        (write_settings(&Settings::default()).unwrap(), |document| {
            marlinspeak::settings::read_settings(document).is_ok()
        }),
    ] {
        assert!(reads(&document) && reads(&unchecked(&document)));
    }
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("photograph");
    for format in PHOTOGRAPHS {
        std::fs::write(&file, a_photograph(format)).unwrap();
        assert!(marlinspeak::shelf::Photograph::read(&file, 50).is_ok());
    }
}
