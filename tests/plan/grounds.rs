//! Any ground: tapers, balls, mats, and what is tied in place, as a user of the terminal names them.

use std::fs;

use serde_json::{Value, json};
use tempfile::TempDir;

use crate::{document, marlinspeak_at, printed, printed_at, refused, refused_at};

/// A doubled knot of the loft, to which each case adds what it is tied on.
const KNOT: [&str; 7] = ["rig", "--leads", "5", "--bights", "7", "--passes", "2"];

fn rig(more: &[&'static str]) -> Vec<&'static str> {
    [&KNOT[..], more].concat()
}

fn fit(more: &[&'static str]) -> Vec<&'static str> {
    [&["fit", "--cord", "3"], more].concat()
}

/// What is wrong with a ground, and the sentence for it.
#[expect(clippy::too_many_lines, reason = "one table of sentences")]
fn wrong() -> Vec<(Vec<&'static str>, &'static str)> {
    vec![
        (
            fit(&["--object", "30", "--ball", "38"]),
            "What is covered is named twice, by its diameter and as a ball: give one of the two.",
        ),
        (
            fit(&["--ball", "38", "--mat", "150"]),
            "What is covered is named twice, as a ball and as a mat: give one of the two.",
        ),
        (
            fit(&["--object", "30:", "--cover", "120"]),
            "“30:” does not say how thick a taper is: give both ends with one colon between, such as \
             30mm:24mm.",
        ),
        (
            fit(&["--object", "30:26:24", "--cover", "120"]),
            "“30:26:24” does not say how thick a taper is: give both ends with one colon between, such \
             as 30mm:24mm.",
        ),
        (
            fit(&["--object", "30:thin", "--cover", "120"]),
            "The diameter of the object cannot be “thin”: give a number with mm, cm, m, in or ft, such \
             as 30mm.",
        ),
        (
            fit(&["--object", "30mm:24mm"]),
            "A taper needs the length over which it gets thinner and none is given: give it as the \
             length to be covered, such as 120mm.",
        ),
        (
            fit(&["--object", "30mm:2mm", "--cover", "120"]),
            "The thin end of the taper, 2 mm, is thinner than the cord of 3 mm: use a thinner cord, or \
             let the knot end where the object is thicker.",
        ),
        (
            fit(&["--ball", "0"]),
            "The diameter of the ball must be more than zero and “0” is not: give a length such as 38mm.",
        ),
        (
            fit(&["--mat", "wide"]),
            "The size of the mat cannot be “wide”: give a number with mm, cm, m, in or ft, such as 150mm.",
        ),
        (
            fit(&["--mat", "150mm:"]),
            "“150mm:” is not the size of a mat: give it from edge to edge, such as 150mm, or with its \
             hole, such as 150mm:60mm.",
        ),
        (
            fit(&["--mat", "60mm:150mm"]),
            "A hole of 150 mm does not go into a mat of 60 mm: give the outer edge first and then the \
             hole, such as 150mm:60mm.",
        ),
        (
            fit(&["--mat", "150mm", "--cover", "40mm"]),
            "A mat has its size and takes no length to be covered besides: leave that length out, or \
             give the hole behind the outer edge, such as 150mm:60mm.",
        ),
        (
            fit(&["--ball", "38mm", "--cover", "40mm"]),
            "A ball is covered from pole to pole and takes no length to be covered besides: leave that \
             length out.",
        ),
        (
            rig(&["--cord", "3", "--mat", "150mm", "--tube", "45mm"]),
            "A mat is tied flat on a board and takes no tube: leave that out.",
        ),
        (
            rig(&["--cord", "3", "--mat", "150mm", "--rows", "14,20"]),
            "A mat is tied flat on a board and takes no rows of holes: leave that out.",
        ),
        (
            rig(&[
                "--cord",
                "3",
                "--object",
                "30mm",
                "--in-place",
                "--tube",
                "45mm",
            ]),
            "A knot that is tied in place takes no tube: leave that out, or leave out in place and slide \
             the knot on from the tube.",
        ),
        (
            rig(&[
                "--cord",
                "3",
                "--object",
                "30mm",
                "--in-place",
                "--pin",
                "12mm",
            ]),
            "A knot that is tied in place takes no length of pins: leave that out, or leave out in place \
             and slide the knot on from the tube.",
        ),
        (
            rig(&["--cord", "3", "--mat", "150mm", "--keep-tube", "cork"]),
            "A mat is tied flat on a board and takes no tube: leave that out.",
        ),
        (
            rig(&["--cord", "3", "--in-place"]),
            "A knot in place is tied on what it covers and that is not named: say how thick it is, such \
             as --object 30mm.",
        ),
        (
            rig(&["--object", "30mm", "--in-place"]),
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            rig(&["--mat", "150mm"]),
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            rig(&["--cord", "3", "--ball", "38mm"]),
            "The tube is missing: add its diameter, such as --tube 45mm.",
        ),
        (
            fit(&["--object", "30mm", "--in-place"]),
            "The length to be covered is missing: add it, such as --cover 30mm.",
        ),
    ]
}

#[test]
fn each_thing_wrong_with_a_ground_has_its_sentence() {
    for (args, sentence) in wrong() {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
}

#[test]
fn each_has_one_in_every_language() {
    for (args, english) in wrong() {
        let mut told = vec![english.to_owned()];
        for language in ["de", "es", "fr"] {
            let sentence = refused(&[&args[..], &["--lang", language]].concat());
            assert!(sentence.ends_with('.'), "{sentence}");
            assert!(!told.contains(&sentence), "{language}: {sentence}");
            told.push(sentence);
        }
    }
}

/// What the loft covers, as the README has it typed.
struct Job {
    /// What it is tied on.
    ground: &'static [&'static str],
    /// How it is called in the documents.
    form: Value,
    is_in_place: bool,
    /// In the headings of `fit` and of `rig`.
    told: [&'static str; 2],
}

fn jobs() -> [Job; 5] {
    [
        Job {
            ground: &["--object", "32mm:26mm", "--cover", "60mm", "--tube", "45mm"],
            form: json!({ "kind": "taper", "bottom_mm": 32.0, "top_mm": 26.0, "over_mm": 60.0 }),
            is_in_place: false,
            told: [
                " cover 60 mm of a taper from 32 mm to 26 mm with 3 mm cord",
                ", on a tube 45 mm across, for a taper from 32 mm to 26 mm, with 3 mm cord",
            ],
        },
        Job {
            ground: &["--object", "28mm", "--cover", "40mm", "--in-place"],
            form: json!({ "kind": "round", "diameter_mm": 28.0 }),
            is_in_place: true,
            told: [
                " cover 40 mm of an object 28 mm across with 3 mm cord",
                ", in place on an object 28 mm across with 3 mm cord",
            ],
        },
        Job {
            ground: &["--ball", "38mm", "--tube", "45mm"],
            form: json!({ "kind": "ball", "diameter_mm": 38.0 }),
            is_in_place: false,
            told: [
                " cover a ball 38 mm across with 3 mm cord",
                ", on a tube 45 mm across, for a ball 38 mm across, with 3 mm cord",
            ],
        },
        Job {
            ground: &["--mat", "150mm"],
            form: json!({ "kind": "mat", "outer_mm": 150.0 }),
            is_in_place: true,
            told: [
                " make a mat of 150 mm with 3 mm cord",
                ", flat on a board, 150 mm from edge to edge with 3 mm cord",
            ],
        },
        Job {
            ground: &["--mat", "15:6cm"],
            form: json!({ "kind": "mat", "outer_mm": 150.0, "hole_mm": 60.0 }),
            is_in_place: true,
            told: [
                " make a mat of 150 mm with a hole of 60 mm with 3 mm cord",
                ", flat on a board, 150 mm from edge to edge with 3 mm cord",
            ],
        },
    ]
}

#[test]
fn what_fits_a_ground_is_rigged_and_told_there() {
    for job in jobs() {
        let ground = [&["--cord", "3mm"][..], job.ground].concat();
        let fit = [&["fit"][..], &ground].concat();
        let heading = printed(&fit);
        assert!(heading.contains(job.told[0]), "{heading}");
        let found = document(&[&fit[..], &["--json"]].concat());
        assert_eq!(found["ground"], job.form);
        assert_eq!(found["in_place"], job.is_in_place);
        let knots = found["knots"].as_array().unwrap();
        assert!(!knots.is_empty(), "{ground:?}");
        // The first, the last, and some in between.
        for knot in knots
            .iter()
            .step_by(knots.len().div_ceil(5))
            .chain(knots.last())
        {
            let [leads, bights, nested, passes] =
                ["leads", "bights", "nested", "passes"].map(|field| knot[field].to_string());
            let named = [
                "--leads", &leads, "--bights", &bights, "--nested", &nested, "--passes", &passes,
            ];
            let told = printed(&[&["rig"], &named[..], &ground].concat());
            assert!(
                told.lines().next().unwrap().ends_with(job.told[1]),
                "{told}"
            );
            let rig = document(&[&["rig", "--json"], &named[..], &ground].concat());
            assert_eq!(rig["ground"], job.form);
            assert_eq!(rig["cord_mm"], knot["cord_mm"], "{knot}");
            assert_eq!(rig["hole_mm"], knot["hole_mm"]);
            assert_eq!(rig["bare_mm"], knot["bare_mm"]);
        }
        let [leads, bights] = ["leads", "bights"].map(|field| knots[0][field].to_string());
        let passes = knots[0]["passes"].to_string();
        let named = ["--leads", &leads, "--bights", &bights, "--passes", &passes];
        let steps = document(&[&["steps", "--json"], &named[..], &ground].concat());
        assert_eq!(steps["ground"], job.form);
        assert_eq!(steps.get("in_place").is_some(), job.is_in_place);
    }
}

/// On a mat both circles are said, on a ball what stays bare at its poles.
#[test]
fn the_middle_of_a_mat_and_the_poles_of_a_ball_are_in_the_table_and_the_document() {
    let mat = printed(&["fit", "--mat", "150mm", "--cord", "3mm"]);
    assert!(mat.lines().nth(2).unwrap().contains("  hole  "), "{mat}");
    let ball = printed(&["fit", "--ball", "38mm", "--cord", "3mm"]);
    assert!(ball.lines().nth(2).unwrap().contains("  bare  "), "{ball}");
    let rail = printed(&["fit", "--object", "28", "--cover", "40", "--cord", "3mm"]);
    let head = rail.lines().nth(2).unwrap();
    assert!(!head.contains("hole") && !head.contains("bare"), "{rail}");
    let rig = document(&rig(&["--cord", "3", "--mat", "150mm", "--json"]));
    let [outer, hole] = ["outer_mm", "hole_mm"].map(|field| rig[field].as_f64().unwrap());
    assert!((outer - 150.0).abs() < 0.01, "{outer}");
    assert!((1.0..150.0).contains(&hole), "{hole}");
    let told = printed(&self::rig(&["--cord", "3", "--mat", "150mm"]));
    assert!(
        told.contains("\nFinished: 150 mm across, with a hole of "),
        "{told}"
    );
    assert!(told.contains("\nOn the board\n"), "{told}");
}

#[test]
fn the_unit_of_one_half_may_stand_for_both() {
    let ground = |object: &'static str| {
        let args = [
            "fit", "--cord", "3", "--cover", "60", "--json", "--object", object,
        ];
        document(&args)["ground"].clone()
    };
    let taper = json!({ "kind": "taper", "bottom_mm": 32.0, "top_mm": 26.0, "over_mm": 60.0 });
    for object in [
        "32mm:26mm",
        "32:26mm",
        "32mm:26",
        "32:26",
        "3,2:2,6cm",
        "3.2cm:26mm",
    ] {
        assert_eq!(ground(object), taper, "{object}");
    }
}

#[test]
fn a_tie_in_place_is_begun_and_taken_up_with_its_ground() {
    let home = TempDir::new().unwrap();
    let begun = marlinspeak_at(
        home.path(),
        &[
            "tie",
            "--leads",
            "3",
            "--bights",
            "5",
            "--object",
            "28mm",
            "--in-place",
            "--cord",
            "3mm",
        ],
    );
    assert!(begun.status.success(), "{begun:?}");
    let ties = fs::read_dir(home.path().join("marlinspeak/ties")).unwrap();
    let kept = ties.map(|file| file.unwrap().path()).find(|file| {
        let is_document = file.extension().is_some_and(|ending| ending == "json");
        is_document && !file.to_string_lossy().contains("previous")
    });
    let kept: Value = serde_json::from_slice(&fs::read(kept.unwrap()).unwrap()).unwrap();
    assert_eq!(kept["in_place"], true);
    assert_eq!(kept["object"]["diameter"], 28.0);
    let again = marlinspeak_at(home.path(), &["tie"]);
    assert!(again.status.success(), "{again:?}");
}

#[test]
fn an_order_has_pieces_of_every_ground_but_none_without_a_place_on_a_stick() {
    let home = TempDir::new().unwrap();
    let file = home.path().join("club.json");
    let order = |stick: &str| {
        json!({
            "stick": stick,
            "pieces": [
                { "leads": 5, "bights": 7, "object": "32mm:26mm", "cover": "60mm", "cord": "3mm",
                  "tube": "45mm" },
                { "leads": 5, "bights": 6, "object": "28mm", "in_place": true, "cord": "3mm" },
                { "name": "trivet", "leads": 6, "bights": 7, "passes": 2, "mat": "150mm",
                  "cord": "5mm" },
            ],
        })
    };
    fs::write(&file, order("").to_string()).unwrap();
    let plan = ["order", "plan", file.to_str().unwrap(), "--json"];
    let answer: Value = serde_json::from_str(&printed_at(home.path(), &plan)).unwrap();
    assert_eq!(answer["pieces"].as_array().unwrap().len(), 3);
    assert_eq!(answer["order"]["pieces"][1]["in_place"], true);
    fs::write(&file, order("1m").to_string()).unwrap();
    let (code, sentence) = refused_at(home.path(), &plan);
    assert_eq!(code, 2);
    assert_eq!(
        sentence,
        "Piece 3, “trivet”: Neither a mat nor a ball sits on a stick with other knots: leave out the \
         length of the stick, or put this piece into an order of its own."
    );
    fs::write(
        &file,
        json!({ "pieces": [{ "leads": 3, "bights": 5, "object": "28mm", "in_place": "maybe",
                             "cord": "3mm" }] })
        .to_string(),
    )
    .unwrap();
    let (_, sentence) = refused_at(home.path(), &plan);
    assert_eq!(
        sentence,
        "Piece 1: In place is yes or no and “maybe” is neither: say yes for a knot that is tied on \
         what it covers."
    );
}
