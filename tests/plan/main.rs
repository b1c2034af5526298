//! Plan and rig as a user of the terminal meets them: the forms, the figures, the one sentence
//! for each thing that can be wrong, tubes and cords kept by name.

mod grounds;
#[path = "../support/in_time.rs"]
mod in_time;
mod kept;
mod order;
mod sentences;
mod steps;

use in_time::InTime as _;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use marlinspeak::bench::{Cord, Counts, FitWish, Millimetres, Object, Thread, Tube, fit};
use marlinspeak::guide::Setup;
use serde_json::{Value, json};
use tempfile::TempDir;

fn marlinspeak_at(home: &Path, args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(args)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env("XDG_DATA_HOME", home)
        .stdin(Stdio::null())
        .output_in_time()
}

fn printed_at(home: &Path, args: &[&str]) -> String {
    let output = marlinspeak_at(home, args);
    assert!(
        output.status.success(),
        "{args:?}: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    String::from_utf8(output.stdout).unwrap()
}

fn printed(args: &[&str]) -> String {
    printed_at(TempDir::new().unwrap().path(), args)
}

fn document(args: &[&str]) -> Value {
    serde_json::from_str(&printed(args)).unwrap()
}

fn refused_at(home: &Path, args: &[&str]) -> (i32, String) {
    let output = marlinspeak_at(home, args);
    assert!(output.stdout.is_empty(), "{args:?} printed something");
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(errors.trim_end().lines().count(), 1, "{errors}");
    (output.status.code().unwrap(), errors.trim_end().to_owned())
}

/// The sentence for bad input.
fn refused(args: &[&str]) -> String {
    let (code, sentence) = refused_at(TempDir::new().unwrap().path(), args);
    assert_eq!(code, 2, "{args:?}");
    sentence
}

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

const RING: [&str; 9] = [
    "rig", "--leads", "5", "--bights", "6", "--passes", "2", "--tube", "40",
];

#[test]
fn fit_has_its_fixed_form_and_the_answers_of_the_bench() {
    let document = document(&[
        "fit", "--object", "30mm", "--cover", "3cm", "--cord", "5/32in", "--json",
    ]);
    let knots = document["knots"].as_array().unwrap();
    let wish = FitWish::new(Object::new(mm(30.0), mm(30.0)), mm(25.4 * 5.0 / 32.0));
    let answers = fit(&wish);
    assert_eq!(knots.len(), answers.len());
    assert!(knots.len() > 20);
    for (knot, answer) in knots.iter().zip(&answers) {
        let fields: Vec<&str> = knot
            .as_object()
            .unwrap()
            .keys()
            .map(String::as_str)
            .collect();
        let form = [
            "leads",
            "bights",
            "nested",
            "lands",
            "passes",
            "weave",
            "strands",
            "width_mm",
            "tight_mm",
            "widest_mm",
            "scallop_mm",
            "cover",
            "angle_deg",
            "cord_mm",
            "legs",
            "tucks",
            "minutes",
        ];
        // The form is that of the document, in its order.
        assert_eq!(fields, form);
        assert_eq!(knot["leads"], answer.counts.leads());
        assert_eq!(knot["bights"], answer.counts.bights());
        assert_eq!(knot["passes"], answer.counts.passes());
        assert_eq!(knot["strands"], answer.counts.strands());
        assert_eq!(knot["legs"], answer.counts.legs());
        assert_eq!(knot["weave"], answer.weave().to_string());
        assert_eq!(knot["tucks"], answer.tucks);
        let lattice = answer.counts.lattice();
        assert_eq!(knot["nested"], lattice.nested());
        assert_eq!(knot["lands"], lattice.lands());
        for (field, value, step) in [
            ("width_mm", answer.shape.width.get(), 0.001),
            ("tight_mm", answer.range.tight.get(), 0.001),
            ("widest_mm", answer.range.widest.get(), 0.001),
            ("scallop_mm", answer.shape.scallop.get(), 0.001),
            ("minutes", answer.minutes, 0.1),
            ("cover", answer.shape.cover, 0.0001),
            ("angle_deg", answer.shape.angle_degrees(), 0.001),
            ("cord_mm", answer.cord.get(), 0.1),
        ] {
            assert!(
                (knot[field].as_f64().unwrap() - value).abs() <= step,
                "{field}"
            );
        }
    }
}

#[test]
fn fit_lists_the_best_as_a_table_and_more_on_request() {
    let fit = ["fit", "--girth", "94.2", "--cover", "30", "--cord", "III"];
    let text = printed(&fit);
    let lines: Vec<&str> = text.lines().collect();
    assert!(lines[0].ends_with("the 10 best first."), "{text}");
    assert!(lines[2].contains("leads") && lines[2].contains("cord to cut"));
    let knots = |text: &str| -> Vec<String> {
        let is_knot = |line: &&str| {
            line.trim_start()
                .starts_with(|first: char| first.is_ascii_digit())
        };
        let below = text.lines().skip(3).filter(is_knot);
        below.map(|line| line.trim_start().to_owned()).collect()
    };
    assert_eq!(knots(&text).len(), 10, "{text}");
    // Each section has its heading above its first knot.
    let headed = |heading: &str| {
        let at = lines.iter().position(|line| *line == heading).unwrap();
        assert!(
            lines[at - 1].is_empty()
                && knots(&text).contains(&lines[at + 1].trim_start().to_owned())
        );
    };
    for heading in [
        "Singles",
        "Doubled",
        "Tripled",
        "Interwoven, two bights nested",
    ] {
        headed(heading);
    }
    // Below the table: whose pace the times are at, the weaves, what is less sure, and how to list
    // the rest.
    let notes = [
        "Times are at",
        "Interwoven knots have bights nested one inside the other, a cord for each: “--nested 2” lists",
        "Each knot is given",
        "~: drawn up tight",
        "“--most",
    ];
    let has = |note: &str| lines.iter().filter(|line| line.starts_with(note)).count();
    assert_eq!(notes.map(has), [1; 5], "{text}");
    // Asked for by itself a kind has the usual sections.
    let nested = printed(&[&fit[..], &["--nested", "2"]].concat());
    assert!(
        nested.contains("\nSingles\n") && !nested.contains("Interwoven"),
        "{nested}"
    );
    let more = printed(&[&fit[..], &["--most", "25"]].concat());
    assert_eq!(knots(&more).len(), 25);
    let named = |row: &String| {
        row.split_whitespace()
            .take(5)
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    let (few, many): (Vec<_>, Vec<_>) = (
        knots(&text).iter().map(named).collect(),
        knots(&more).iter().map(named).collect(),
    );
    assert_eq!(few, many[..10]);
    let best = document(&[&fit[..], &["--most", "1", "--json"]].concat());
    assert_eq!(best["knots"].as_array().unwrap().len(), 1);
}

#[test]
fn rig_has_its_fixed_form() {
    let setup = ["--rows", "12,16", "--cord", "4", "--thread", "#8", "--json"];
    let mut document = document(&[&RING[..], &setup].concat());
    let spacing = document["spacing_mm"].take().as_f64().unwrap();
    let cord = document["cord_mm"].take().as_f64().unwrap();
    assert_eq!(
        document,
        json!({
            "ground": { "kind": "round", "diameter_mm": 40.0 }, "in_place": false,
            "bottom": { "row": 1, "holes": [1, 3, 5, 7, 9, 11] },
            "top": { "row": 1, "holes": [2, 4, 6, 8, 10, 12], "turn_half_hole": false },
            "staggered": true, "spacing_mm": null, "pin_length_mm": 12.7, "hex_key": "5/64",
            "cord_mm": null, "tucks": 34, "minutes": 34.8,
        })
    );
    let mut tube = ringed(40.0, &[12, 16]);
    tube.thread = Some(Thread::parse("#8").unwrap());
    let rig = Setup::new(tube, Cord::new(mm(4.0)))
        .rig(Counts::new(5, 6, 2).unwrap())
        .unwrap();
    assert!((spacing - rig.laid.ring_spacing.get()).abs() < 0.001);
    assert!((cord - rig.cord.to_cut().get()).abs() < 0.1);
}

/// Nested bights: the further rows of pins, each with its rings' row and how far inside it stands.
#[test]
fn rig_tells_the_rows_of_nested_bights_in_their_fixed_form() {
    let knot = [
        "rig", "--leads", "3", "--bights", "4", "--nested", "2", "--tube", "60", "--cord", "3",
    ];
    let mut ringed = document(&[&knot[..], &["--rows", "8,16", "--json"]].concat());
    let inside = ringed["inner"][0]["inside_mm"].take().as_f64().unwrap();
    assert_eq!(
        (&ringed["bottom"], &ringed["inner"]),
        (
            &json!({ "row": 1, "holes": [1, 3, 5, 7] }),
            &json!([{
                "row": 2,
                "bottom": { "row": 2, "holes": [1, 5, 9, 13] },
                "top": { "row": 2, "holes": [3, 7, 11, 15] },
                "inside_mm": null,
            }])
        )
    );
    // A bight of 3 mm goes round a pin of 4 mm.
    assert!(inside >= 7.0, "{inside}");
    let bare = document(&[&knot[..], &["--json"]].concat());
    assert_eq!(
        bare["inner"][0]["bottom"]["marks_mm"],
        bare["bottom"]["marks_mm"]
    );
    let text = printed(&[&knot[..], &["--rows", "8,16"]].concat());
    for told in [
        "Inner row: ",
        "4 pins at each rim, in row 2 of the rings (16 holes)",
        "all rows alike, each in a colour of its own if you like",
    ] {
        assert!(text.contains(told), "{told}: {text}");
    }
}

/// A tube with rings, to be described further.
fn ringed(diameter: f64, rows: &[u16]) -> Tube {
    Tube::ringed(mm(diameter), rows).unwrap()
}

/// Common practice, no source.
#[test]
fn a_row_of_twelve_for_four_bights_turns_half_a_hole_when_the_leads_are_odd() {
    let rig = |leads| {
        document(&[
            "rig", "--leads", leads, "--bights", "4", "--tube", "40", "--rows", "12", "--cord",
            "4", "--json",
        ])
    };
    assert_eq!(rig("6")["bottom"]["holes"], json!([1, 4, 7, 10]));
    assert_eq!(rig("6")["top"]["turn_half_hole"], false);
    assert_eq!(rig("5")["top"]["turn_half_hole"], true);
    assert_eq!(rig("5")["hex_key"], Value::Null);
}

#[test]
fn a_tube_without_rings_is_marked_by_a_strip() {
    let document = document(&[&RING[..], &["--cord", "4", "--json"]].concat());
    assert_eq!(document["bottom"]["row"], Value::Null);
    let marks = document["top"]["marks_mm"].as_array().unwrap();
    assert_eq!(marks.len(), 6);
    // Half a pitch of 40π / 6.
    assert_eq!(marks[0], 10.47);
    assert!(printed(&[&RING[..], &["--cord", "4"]].concat()).contains("Paper strip, 126 mm"));
}

#[test]
fn fit_never_offers_what_rig_refuses() {
    let common = [
        "--object", "30", "--cover", "30", "--cord", "4", "--tube", "34", "--rows", "12,10",
        "--have", "3m",
    ];
    let found = document(&[&["fit", "--json"], &common[..]].concat());
    let knots = found["knots"].as_array().unwrap();
    assert!(knots.len() > 20);
    // The first, the last, and every seventh in between.
    for knot in knots.iter().step_by(7).chain(knots.last()) {
        let [leads, bights, nested, passes] =
            ["leads", "bights", "nested", "passes"].map(|field| knot[field].to_string());
        let knot_named = [
            "rig", "--json", "--leads", &leads, "--bights", &bights, "--nested", &nested,
            "--passes", &passes,
        ];
        let rig = document(&[&knot_named[..], &common].concat());
        let (offered, cut) = (&knot["cord_mm"], &rig["cord_mm"]);
        assert_eq!(offered, cut, "{leads} {bights} {passes}");
    }
}

/// A tube of 100 mm for a tiller of 30: every knot is much slack to draw up, and the first says so.
#[test]
fn fit_says_from_where_on_the_tube_hampers_the_work_and_names_the_cure() {
    let tiller = ["fit", "--object", "30", "--cover", "30", "--cord", "4"];
    let thick = printed(&[&tiller[..], &["--tube", "100"]].concat());
    let note = "This tube makes hard work of all these knots; of the first:\nTake care: the tube is \
                much thicker than what is covered. ";
    assert!(thick.contains(note), "{thick}");
    assert!(thick.contains(" across would leave the least."), "{thick}");
    // On a tube that suits some, those come first.
    let some = printed(&[&tiller[..], &["--tube", "45", "--most", "99"]].concat());
    let note = some
        .lines()
        .find(|line| line.starts_with("This tube makes hard work of the knots from number "));
    let place: Option<u16> = note.and_then(|note| note.split(' ').nth(10)?.parse().ok());
    assert!(place.is_some_and(|place| place > 5), "{some}");
    // Without a tube nothing is said of one.
    assert!(!printed(&tiller).contains("This tube"));
}
