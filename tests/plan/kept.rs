//! Tubes and cords kept by name.

use marlinspeak::bench::{Cord, Tube};
use marlinspeak::shelf::PresetsFile;
use serde_json::{Value, json};
use tempfile::TempDir;

use crate::{RING, mm, printed_at, refused_at};

#[test]
fn tubes_and_cords_are_kept_by_name_and_reused() {
    let home = TempDir::new().unwrap();
    let text = printed_at(
        home.path(),
        &[
            &RING[..],
            &[
                "--rows",
                "12,16",
                "--thread",
                "#8",
                "--cord",
                "III",
                "--keep-tube",
                "Oak one",
                "--keep-cord",
                "blue",
            ],
        ]
        .concat(),
    );
    assert!(text.contains("The tube is kept as Oak one: give --tube Oak one from now on."));
    let json = |tube: &'static str, cord: &'static str, more: &[&'static str]| {
        let knot = [
            "rig", "--json", "--leads", "5", "--bights", "6", "--passes", "2",
        ];
        let setup = ["--tube", tube, "--cord", cord];
        printed_at(home.path(), &[&knot[..], &setup, more].concat())
    };
    assert_eq!(
        json("Oak one", "blue", &[]),
        json("40", "III", &["--rows", "12,16", "--thread", "#8"])
    );
    // What is said besides takes the place of what is kept.
    assert_eq!(
        json("Oak one", "blue", &["--rows", "18"]),
        json("40", "4", &["--rows", "18", "--thread", "#8"])
    );
    let (code, sentence) = refused_at(
        home.path(),
        &[&RING[..7], &["--tube", "elm", "--cord", "4"]].concat(),
    );
    assert_eq!(code, 2);
    assert_eq!(
        sentence,
        "“elm” is not a tube: give its diameter, such as 45mm, or one that you keep: Oak one."
    );
}

#[test]
fn a_rack_that_cannot_be_believed_is_left_alone_and_named() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("marlinspeak").join("rack.json");
    let rack = PresetsFile::at(&file);
    rack.keep_cord("blue", &Cord::new(mm(4.0)))
        .unwrap()
        .untroubled()
        .unwrap();
    let good = std::fs::read_to_string(&file).unwrap();
    let keep = [&RING[..], &["--cord", "4", "--keep-tube", "oak"]].concat();
    for (contents, begins) in [
        (
            good.replace("4.0", "5.0"),
            "The tubes and cords kept by name could not be used (",
        ),
        (
            "nonsense".to_owned(),
            "The tubes and cords kept by name could not be used (",
        ),
        (
            r#"{"version": 1, "cords": {"blue": {"diameter": -4}}}"#.to_owned(),
            "The tubes and cords kept by name could not be used (",
        ),
        (
            r#"{"version": 99}"#.to_owned(),
            "The tubes and cords kept by name were written by a newer Marlinspeak and are left alone",
        ),
    ] {
        std::fs::write(&file, &contents).unwrap();
        for args in [&keep, &[&RING[..], &["--cord", "blue"]].concat()] {
            let (code, sentence) = refused_at(home.path(), args);
            assert_eq!(code, 1);
            assert!(sentence.starts_with(begins), "{sentence}");
        }
        assert_eq!(std::fs::read_to_string(&file).unwrap(), contents);
        // Who does not need the rack is not kept from anything.
        printed_at(home.path(), &[&RING[..], &["--cord", "4"]].concat());
    }
}

#[test]
fn what_the_rack_does_not_know_stays() {
    let home = TempDir::new().unwrap();
    let rack = PresetsFile::at(home.path().join("rack.json"));
    let by_hand = r#"{"version": 1, "shelf": "left",
        "tubes": {"oak": {"diameter": 40, "rows": [12], "bought": 2019}}}"#;
    std::fs::write(rack.path(), by_hand).unwrap();
    rack.keep_tube("oak", &Tube::plain(mm(42.0)))
        .unwrap()
        .untroubled()
        .unwrap();
    let kept: Value = serde_json::from_slice(&std::fs::read(rack.path()).unwrap()).unwrap();
    assert_eq!(kept["shelf"], "left");
    assert_eq!(
        kept["tubes"]["oak"],
        json!({ "diameter": 42.0, "bought": 2019 })
    );
    assert_eq!(
        rack.read().unwrap().untroubled().unwrap().tubes["oak"],
        Tube::plain(mm(42.0))
    );
}
