//! The commands as a user of a terminal meets them: what is printed, and the one sentence for
//! each thing that can be wrong.

use crate::in_time;

use in_time::InTime as _;
use std::ffi::OsStr;
use std::fmt::Debug;
use std::os::unix::ffi::OsStrExt as _;
use std::process::{Command, Output, Stdio};

use serde_json::{Value, json};

fn marlinspeak(args: &[impl AsRef<OsStr>]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(args)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env("XDG_STATE_HOME", "/dev/null")
        .stdin(Stdio::null())
        .output_in_time()
}

/// Runs what must fail, and gives the exit code and the sentence.
fn refused<A: AsRef<OsStr> + Debug>(args: &[A]) -> (i32, String) {
    let output = marlinspeak(args);
    assert!(output.stdout.is_empty(), "{args:?} printed something");
    let errors = String::from_utf8(output.stderr).unwrap();
    (output.status.code().unwrap(), errors.trim_end().to_owned())
}

#[test]
fn a_small_knot_is_told_round_the_hand_and_a_larger_one_and_a_tube_are_refused() {
    let told = marlinspeak(&["steps", "--leads", "3", "--bights", "4", "--round-hand"]);
    let told = String::from_utf8(told.stdout).unwrap();
    assert!(told.contains("without tube and pins"), "{told}");
    assert!(told.contains("front of the forefinger"), "{told}");
    let knot = |leads, bights| {
        [
            "steps",
            "--leads",
            leads,
            "--bights",
            bights,
            "--round-hand",
        ]
    };
    let (code, error) = refused(&knot("5", "7"));
    assert_eq!(code, 2);
    assert!(error.contains("is more than four fingers hold"), "{error}");
    assert!(
        error.contains("tie this one on a tube with pins"),
        "{error}"
    );
    let (code, error) = refused(&[&knot("3", "4")[..], &["--tube", "45mm"]].concat());
    assert_eq!(code, 2);
    assert_eq!(
        error,
        "Round the hand there is no tube to rig: leave out tube, cord and object, or leave out \
         --round-hand."
    );
}

fn document(args: &[&str]) -> Value {
    let output = marlinspeak(&[&["steps", "--json"], args].concat());
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn the_document_has_its_fixed_form() {
    let document = document(&["--leads", "5", "--bights", "6", "--passes", "2"]);
    assert_eq!(
        document["knot"],
        json!({
            "leads": 5, "bights": 6, "nested": 1, "lands": 1, "passes": 2, "weave": "1",
            "side": "right", "hand": "right", "strands": 1, "crossings": 24,
        })
    );
    let steps = document["steps"].as_array().unwrap();
    assert_eq!(
        steps[8],
        json!({
            "number": 9, "kind": "lay", "pass": 1, "strand": 1, "leg": 7,
            "from": { "rim": "bottom", "pin": 4 }, "to": { "rim": "top", "pin": 6 },
            "heading": "rising", "turns": 0,
            "crossings": [
                { "row": 1, "over": true, "cords": 1, "of": {
                    "from": { "rim": "top", "pin": 2 }, "to": { "rim": "bottom", "pin": 5 } } },
                { "row": 2, "over": false, "cords": 1, "of": {
                    "from": { "rim": "top", "pin": 3 }, "to": { "rim": "bottom", "pin": 6 } } },
            ],
            "side": null, "seconds": 7.0,
            "say": "Leg 7. From bottom pin 4, up and to the right, to top pin 6. Over 1 cord, under 1. \
                    Then round top pin 6.",
            "show": "Bottom 4 up to top 6 ↗\nOVER 1, under 1\nRound top 6",
        })
    );
    let followed = steps
        .iter()
        .find(|step| step["kind"] == "lay" && step["pass"] == 2 && step["leg"] == 4)
        .unwrap();
    assert_eq!(followed["side"], "right");
    assert_eq!(
        followed["say"],
        "Pass 2, leg 4. From top pin 2, down the bottom-ring side of the first cord to bottom pin 5. \
         Over 2 cords, under 1, over 1, under 1. Outside the loop."
    );
    for (index, step) in steps.iter().enumerate() {
        assert_eq!(step["number"], index + 1);
        assert!(step["kind"].is_string() && step["show"].is_string());
        let say = step["say"].as_str().unwrap();
        assert!(!say.trim().is_empty() && !say.contains(['\u{2068}', '\u{2069}', '<', '\n']));
    }
}

#[test]
fn pins_of_nested_bights_say_their_row() {
    let knot = ["--leads", "3", "--bights", "4", "--nested", "2"];
    let document = document(&knot);
    assert_eq!(
        (&document["knot"]["nested"], &document["knot"]["lands"]),
        (&json!(2), &json!(2))
    );
    assert_eq!(
        (&document["knot"]["strands"], &document["knot"]["crossings"]),
        (&json!(2), &json!(32))
    );
    let steps = document["steps"].as_array().unwrap();
    let first = |strand| {
        let is_first = |step: &&Value| step["kind"] == "lay" && step["strand"] == strand;
        steps.iter().find(is_first).unwrap()
    };
    assert_eq!(
        first(1)["from"],
        json!({ "rim": "bottom", "row": 1, "pin": 1 })
    );
    assert_eq!(first(1)["to"], json!({ "rim": "top", "row": 2, "pin": 2 }));
    assert_eq!(
        first(2)["from"],
        json!({ "rim": "bottom", "row": 2, "pin": 1 })
    );
    assert_eq!(first(2)["to"], json!({ "rim": "top", "row": 1, "pin": 2 }));
    // All of the first cord comes before the second.
    let strands = steps
        .iter()
        .filter(|step| step["kind"] == "lay")
        .map(|step| step["strand"].as_u64());
    assert!(strands.is_sorted());
}

#[test]
fn a_long_leg_comes_in_parts_that_say_where_the_hand_is() {
    let document = document(&["--leads", "21", "--bights", "4", "--weave", "1"]);
    let last: Vec<&Value> = document["steps"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|step| step["kind"] == "lay" && step["leg"] == 8)
        .collect();
    assert_eq!(last.len(), 10);
    for (index, part) in last.iter().enumerate() {
        assert_eq!(
            (&part["part"], &part["parts"]),
            (&json!(index + 1), &json!(10))
        );
        assert_eq!(part["crossings"].as_array().unwrap().len(), 2);
        assert_eq!(part["turns"], 2);
    }
    assert_eq!(
        last[4]["say"],
        "Leg 8, part 5 of 10, from top pin 2 down and to the right, to bottom pin 1. You are once round \
         the tube, just past top pin 2. Over 1 cord, under 1. Hold your cord there."
    );
}

/// A round of fairing is one step; in the smallest portions every leg of it is, and is named.
#[test]
fn fairing_names_its_leg_where_one_is_told() {
    let fairing = |more: &[&str]| {
        let document = document(&[&["--leads", "3", "--bights", "4"], more].concat());
        let steps = document["steps"].as_array().unwrap().iter();
        let fair = steps.filter(|step| step["kind"] == "fair").cloned();
        fair.collect::<Vec<Value>>()
    };
    let rounds = fairing(&[]);
    assert_eq!(rounds.len(), 3);
    for round in &rounds {
        assert_eq!(round["legs"], 8);
        assert!(round.get("leg").is_none() && round.get("from").is_none());
    }
    let legs = fairing(&["--at-once", "1"]);
    assert_eq!(legs.len(), 3 * 8);
    assert_eq!(
        [
            &legs[9]["round"],
            &legs[9]["pass"],
            &legs[9]["strand"],
            &legs[9]["leg"]
        ],
        [&json!(2), &json!(1), &json!(1), &json!(2)]
    );
    assert_eq!(legs[9]["from"], legs[8]["to"]);
    assert_eq!(legs[8]["from"], json!({ "rim": "bottom", "pin": 1 }));
}

/// Each cord has a tail and an end of its own, and is drawn up by itself.
#[test]
fn of_several_cords_each_is_drawn_up_from_its_own_tail() {
    let fairing = |knot: &[&str]| {
        let document = document(knot);
        let steps = document["steps"].as_array().unwrap().iter();
        let fair = steps.filter(|step| step["kind"] == "fair");
        let told = fair.map(|step| format!("{} {}", step["say"], step["show"]));
        told.collect::<Vec<String>>()
    };
    for (knot, several) in [
        (&["--leads", "5", "--bights", "7"][..], false),
        (&["--leads", "4", "--bights", "6"], true),
        (&["--leads", "3", "--bights", "5", "--nested", "2"], true),
        (
            &[
                "--leads",
                "3",
                "--bights",
                "5",
                "--passes",
                "2",
                "--cords",
                "blue,white",
            ],
            true,
        ),
    ] {
        for depth in ["brief", "plain", "teach"] {
            let told = fairing(&[knot, &["--detail", depth]].concat());
            assert!(!told.is_empty());
            for told in told {
                assert_eq!(told.contains("ord by cord"), several, "{told}");
                assert!(!several || !told.contains("the tail"), "{told}");
            }
        }
    }
}

/// What a step is said to hurt with stands below it, in every depth and language.
#[test]
fn the_text_prints_the_caution_of_every_step() {
    let tie = [
        "--leads", "3", "--bights", "4", "--passes", "2", "--tube", "60mm", "--cord", "3mm",
        "--object", "30mm",
    ];
    for language in ["en", "de", "es", "fr"] {
        for depth in ["brief", "plain", "teach"] {
            let asked = [&tie[..], &["--lang", language, "--detail", depth]].concat();
            let document = document(&asked);
            let steps = document["steps"].as_array().unwrap().iter();
            let cautions = steps.filter_map(|step| step["show_caution"].as_str());
            let cautions: Vec<String> =
                cautions.map(|caution| format!("      {caution}")).collect();
            assert!(cautions.len() > 4, "{language}: {cautions:?}");
            let output = marlinspeak(&[&["steps"], &asked[..]].concat());
            let text = String::from_utf8(output.stdout).unwrap();
            let mut lines = text.lines();
            for caution in cautions {
                assert!(
                    lines.any(|line| line == caution),
                    "{language}, {depth}: {caution}"
                );
            }
        }
    }
}

#[test]
fn how_much_is_told_at_once_is_a_choice() {
    let whole = document(&["--leads", "9", "--bights", "4", "--at-once", "leg"]);
    let steps = whole["steps"].as_array().unwrap();
    assert!(steps.iter().all(|step| step.get("parts").is_none()));
    let single = document(&["--leads", "9", "--bights", "4", "--at-once", "1"]);
    let steps = single["steps"].as_array().unwrap();
    let mut laid = steps.iter().filter(|step| step["kind"] == "lay");
    assert!(laid.all(|step| step["crossings"].as_array().unwrap().len() <= 1));
}

#[test]
fn a_left_hand_mirrors_the_words_and_not_the_numbers() {
    let knot = ["--leads", "5", "--bights", "4", "--passes", "2"];
    let right = document(&knot);
    let left = document(&[&knot[..], &["--hand", "left"]].concat());
    let pairs = right["steps"]
        .as_array()
        .unwrap()
        .iter()
        .zip(left["steps"].as_array().unwrap());
    for (right, left) in pairs {
        for field in [
            "kind",
            "pass",
            "strand",
            "leg",
            "from",
            "to",
            "crossings",
            "side",
        ] {
            assert_eq!(right[field], left[field]);
        }
        let say = left["say"].as_str().unwrap();
        if left["kind"] == "lay" && left["pass"] == 1 {
            assert!(
                say.contains("and to the left") && !say.contains("right"),
                "{say}"
            );
        }
    }
}

#[test]
fn the_text_tells_the_same_steps_to_a_reader() {
    let output = marlinspeak(&["steps", "--leads", "3", "--bights", "4"]);
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(text.starts_with(
        "3 lead 4 bight, one strand, 3 tucks. Each top pin stands half a step to the right of the bottom \
         pin of its number. The knot only decorates: never let it hold a person or a load, and keep cord and small \
         parts from small children.\n"
    ));
    let line = text
        .lines()
        .find(|line| line.contains("leg 8 of 8"))
        .unwrap();
    for part in [
        "Top 3 down to bottom 1 ↘",
        "OVER 1, under 1",
        "Back at the start: let the end hang at bottom 1",
    ] {
        assert!(line.contains(part), "{line}");
    }
}

/// Of several things on a page each has a row with its own notes.
#[test]
fn the_text_keeps_what_belongs_to_a_thing_in_its_row() {
    let output = marlinspeak(&[
        "steps", "--leads", "3", "--bights", "4", "--tube", "60mm", "--cord", "3mm",
    ]);
    let text = String::from_utf8(output.stdout).unwrap();
    let row = |thing: &str| {
        let mut rows = text.lines().filter(|line| line.contains(thing));
        let row = rows.next().unwrap();
        assert!(rows.next().is_none(), "{thing}: {text}");
        row
    };
    assert!(row("Tube, 60 mm").starts_with("   1  What you need, 1 to "));
    assert!(row("3 mm thick").trim_start().starts_with("Cord, "));
    assert!(
        row("As long as the tube is round")
            .trim_start()
            .starts_with("Paper strip, 188 mm")
    );
    assert!(row("Knife or scissors").starts_with("      "));
    // Each step still has one number.
    let numbered = text.lines().skip(1).filter(|line| {
        line.get(..4)
            .is_some_and(|number| number.trim().parse::<u32>().is_ok())
    });
    let document = document(&[
        "--leads", "3", "--bights", "4", "--tube", "60mm", "--cord", "3mm",
    ]);
    assert_eq!(
        numbered.count(),
        document["steps"].as_array().unwrap().len()
    );
}

/// Laid pass by pass, no cord is tied whole before the next.
#[test]
fn what_is_said_of_the_first_cord_is_true_of_the_order() {
    let begun = |more: &[&str]| {
        let knot = [
            "--leads", "3", "--bights", "4", "--nested", "2", "--passes", "2",
        ];
        let document = document(&[&knot[..], more].concat());
        let steps = document["steps"].as_array().unwrap().clone();
        let laid: Vec<_> = steps
            .iter()
            .filter(|step| step["kind"] == "lay")
            .map(|step| [step["strand"].clone(), step["pass"].clone()])
            .collect();
        let after_first = laid
            .iter()
            .find(|turn| turn[0] != 1 || turn[1] != 1)
            .cloned();
        let begin = steps
            .into_iter()
            .find(|step| step["kind"] == "begin")
            .unwrap();
        (
            begin["say"].as_str().unwrap().to_owned(),
            after_first.unwrap(),
        )
    };
    let (say, next) = begun(&[]);
    assert!(
        say.contains("Tie this cord whole, before the next is laced through it."),
        "{say}"
    );
    assert_eq!(next, [1, 2]);
    let (say, next) = begun(&["--order", "passes"]);
    assert!(!say.contains("whole"), "{say}");
    assert!(
        say.contains("Lay the first pass of this cord, before the next is laced through it"),
        "{say}"
    );
    assert_eq!(next, [2, 1]);
}

/// 20 of the 28 crossings of the worked example 5 × 7 are tucks; begun with under they are 8. 3 × 4 has 3
/// of 8 as it is.
#[test]
fn the_weave_with_fewest_tucks_is_taken_unless_it_is_named() {
    let told = |bights: &str, leads: &str, more: &[&str]| {
        let args = [&["--leads", leads, "--bights", bights], more].concat();
        let document = document(&args);
        let steps = document["steps"].as_array().unwrap();
        let laid = steps.iter().filter(|step| step["kind"] == "lay");
        let crossings = laid.filter_map(|step| step["crossings"].as_array().cloned());
        let tucks = crossings
            .flatten()
            .filter(|crossing| crossing["over"] == false);
        (
            document["knot"]["weave"].as_str().unwrap().to_owned(),
            tucks.count(),
        )
    };
    assert_eq!(told("7", "5", &[]), ("uouo".to_owned(), 8));
    assert_eq!(told("7", "5", &["--weave", ""]), ("uouo".to_owned(), 8));
    assert_eq!(told("7", "5", &["--weave", "1"]), ("1".to_owned(), 20));
    assert_eq!(told("4", "3", &[]), ("1".to_owned(), 3));
    // Two strands, one finished after the other: other legs come later, and others tuck.
    for order in ["passes", "strands"] {
        let args = |weave| ["--passes", "2", "--order", order, "--weave", weave];
        let [usual, twin] = ["1", "uouou"].map(|weave| told("4", "6", &args(weave)).1);
        assert_eq!(told("4", "6", &args("")).1, usual.min(twin), "{order}");
        assert_ne!(usual, twin);
    }
    let output = marlinspeak(&["steps", "--leads", "5", "--bights", "7"]);
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(
        text.starts_with("5 lead 7 bight, one strand, 8 tucks, or 20 begun with over. "),
        "{text}"
    );
}

#[test]
fn an_uneven_weave_is_legal_and_said() {
    for weave in ["2", "ouo", "ooo"] {
        let args = ["--leads", "4", "--bights", "3", "--weave", weave];
        let say = document(&args)["steps"][0]["say"]
            .as_str()
            .unwrap()
            .to_owned();
        let is_said = say.contains("The pattern breaks at the edges");
        assert_eq!(is_said, weave == "2", "{weave}: {say}");
    }
}

#[test]
fn each_thing_wrong_with_a_knot_has_its_sentence() {
    let knot = |extra: &[&'static str]| [&["steps"], extra].concat();
    for (args, sentence) in [
        (
            knot(&["--leads", "1", "--bights", "6"]),
            "Leads must be from 2 to 999 and 1 is not: try 5.",
        ),
        (
            knot(&["--leads", "5", "--bights", "1000"]),
            "Bights must be from 2 to 999 and 1000 is not: try 6.",
        ),
        (
            knot(&["--leads", "5", "--bights", "-6"]),
            "Bights must be from 2 to 999 and -6 is not: try 6.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--passes", "0"]),
            "Passes must be from 1 to 9 and 0 is not: try 2.",
        ),
        (
            knot(&["--leads", "five", "--bights", "6"]),
            "Leads must be a whole number and “five” is not one: give a number from 2 to 999, \
             such as 5.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--passes", ""]),
            "Passes are still to be given: a whole number from 1 to 9, such as 2.",
        ),
        (
            knot(&["--bights", "6"]),
            "The number of leads is missing: add --leads with a number from 2 to 999, such as \
             --leads 5.",
        ),
        (
            knot(&["--leads", "5"]),
            "The number of bights is missing: add --bights with a number from 2 to 999, such as \
             --bights 6.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--weave", "ouo"]),
            "A row code of 3 letters does not fit 5 leads: give one letter, o or u, for each of \
             the 4 rows from the bottom up.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--weave", "5"]),
            "A run of 5 does not fit 5 leads, which cross in 4 rows: use a run of 1 to 4, or more \
             leads.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--weave", "over"]),
            "“over” is not a weave: give a run length such as 1 (over one, under one), or a row \
             code of the letters o and u from the bottom row up, such as ouo.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--side", "up"]),
            "“up” is not a choice for --side: it takes right, left; try --side right.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--hand", "Right"]),
            "“Right” is not a choice for --hand: it takes right, left; try --hand right.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--cords", "blue,"]),
            "“blue,” leaves a cord without a name: give names with commas between them, such as \
             --cords blue,white.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--cords", "blue,white"]),
            "2 names of cords do not go with this tie: it has one strand in one pass, so give one \
             name, such as --cords blue.",
        ),
        (
            knot(&["--leads", "5", "--bights", "6", "--at-once", "0"]),
            "--at-once takes a number of crossings from 1 to 999, or “leg” for whole legs, and \
             “0” is neither: try --at-once 4.",
        ),
    ] {
        assert_eq!(refused(&args), (2, sentence.to_owned()), "{args:?}");
    }
}

#[test]
fn each_thing_wrong_with_nested_bights_has_its_sentence() {
    let knot = |extra: &[&'static str]| [&["steps"], extra].concat();
    for (args, sentence) in [
        (
            knot(&["--leads", "3", "--bights", "4", "--nested", "10"]),
            "Nested bights must be from 1 to 9 and 10 is not: try 2.",
        ),
        (
            knot(&["--leads", "3", "--bights", "4", "--nested", "two"]),
            "Nested bights must be a whole number and “two” is not one: give a number from 1 to 9, \
             such as 2.",
        ),
        (
            knot(&[
                "--leads", "3", "--bights", "4", "--nested", "2", "--lands", "3",
            ]),
            "The pins stand in 2 rows at each rim, 1 the outermost, and there is no row 3: give \
             the row that the first cord lands in as a number from 1 to 2.",
        ),
        (
            knot(&["--leads", "3", "--bights", "4", "--lands", "2"]),
            "A knot that is not nested has 1 row of pins at each rim, and no row 2: leave out the \
             row that the first cord lands in, or nest 2 bights at each rim.",
        ),
        (
            knot(&[
                "--leads", "2", "--bights", "5", "--nested", "2", "--lands", "1",
            ]),
            "With 2 leads the further cords would have none: let the first cord land in the \
             innermost row, 2, or take 3 leads or more.",
        ),
        (
            knot(&[
                "--leads", "3", "--bights", "4", "--nested", "2", "--weave", "ouo",
            ]),
            "That weave does not fit the 7 rows of crossings of this interwoven knot: use a run of \
             1 to 7, or a row code of 7 letters from the bottom row up.",
        ),
    ] {
        assert_eq!(refused(&args), (2, sentence.to_owned()), "{args:?}");
    }
}

#[test]
fn each_slip_of_the_command_line_has_its_sentence() {
    for (args, sentence) in [
        (
            &["stepz"][..],
            "There is no option or command “stepz” here: “marlinspeak” takes steps, fit, rig, shelf, \
             tie, sheet, count, order, doctor; “marlinspeak --help” says what each does.",
        ),
        (
            &["order"],
            "That is not a complete command: “marlinspeak order” takes list, show, plan, keep, \
             delete, undo; “marlinspeak order --help” says what each does.",
        ),
        (
            &["order", "frob", "--lang", "de"],
            "Eine Option oder einen Befehl „frob“ gibt es hier nicht: „marlinspeak order“ kennt \
             list, show, plan, keep, delete, undo; „marlinspeak order --help“ zeigt, was jeder \
             Befehl tut.",
        ),
        (
            &["sheet"],
            "That is not a complete command: “marlinspeak sheet” takes card, strip, stage, reel, \
             class, order; “marlinspeak sheet --help” says what each does.",
        ),
        (
            &["order", "show"],
            "That is not a complete command: “marlinspeak order show --help” shows how it is written.",
        ),
        (
            &["fit", "--nested"],
            "The option --nested (“Knots of so many bights nested at each rim, 1 to 9, all cords \
             with the same leads; without it plain knots and the best interwoven ones”) needs a \
             value after it: “marlinspeak fit --help” shows which.",
        ),
        (
            &["steps", "--lead", "5"],
            "There is no option or command “--lead” here: “marlinspeak steps --help” lists those \
             there are.",
        ),
        (
            &["steps", "--leads"],
            "The option --leads (“Leads, 2 to 999: cords met on a straight line from rim to rim”) \
             needs a value after it: “marlinspeak steps --help” shows which.",
        ),
        (
            &["steps", "--leads", "5", "--leads", "6", "--bights", "4"],
            "The option --leads is given more than once: give it once.",
        ),
        (
            &["--leads", "5", "steps", "--bights", "6"],
            "Options that name a knot come after the command: write “marlinspeak steps --leads 5 \
             --bights 7”.",
        ),
        (
            &["steps", "--lead", "5", "--lang", "de"],
            "Eine Option oder einen Befehl „--lead“ gibt es hier nicht: „marlinspeak steps --help“ \
             zeigt, was es gibt.",
        ),
        (
            &["--lang=de", "--bogus"],
            "Eine Option oder einen Befehl „--bogus“ gibt es hier nicht: „marlinspeak --help“ \
             zeigt, was es gibt.",
        ),
        (
            &["steps", "--leads", "5", "--bights", "6", "--lang", "xx"],
            "Marlinspeak does not speak “xx”: it knows en, de, es, fr; try --lang en.",
        ),
    ] {
        assert_eq!(refused(args), (2, sentence.to_owned()), "{args:?}");
    }
}

#[test]
fn bytes_that_are_no_text_have_their_sentence_too() {
    let bytes = OsStr::from_bytes(b"5\xff");
    let sentence = "A word of that command is not text (UTF-8): type it anew; “marlinspeak steps \
                    --help” shows how it is written.";
    let args = ["steps", "--leads"].map(OsStr::new);
    assert_eq!(
        refused(&[args[0], args[1], bytes]),
        (2, sentence.to_owned())
    );
    let (code, sentence) = refused(&[bytes]);
    assert_eq!(code, 2);
    assert!(
        sentence.starts_with("There is no option or command “5\u{fffd}” here"),
        "{sentence}"
    );
    // The language is looked for among them.
    let (code, _) = refused(&[args[0], bytes, OsStr::new("--lang"), OsStr::new("de")]);
    assert_eq!(code, 2);
}

#[cfg(feature = "window")]
#[test]
fn without_a_display_the_app_says_so() {
    let sentence = "There is no display to open a window on: start Marlinspeak from a desktop \
                    session, or use “marlinspeak steps” in the terminal.";
    assert_eq!(refused::<&str>(&[]), (1, sentence.to_owned()));
    assert_eq!(
        refused(&["--leads", "5", "--bights", "6"]),
        (1, sentence.to_owned())
    );
}

#[cfg(not(feature = "window"))]
#[test]
fn built_without_a_window_the_program_says_so() {
    for (language, sentence) in [
        (
            "en",
            "This Marlinspeak was built for the terminal alone and has no window:",
        ),
        (
            "de",
            "Dieses Marlinspeak wurde nur für das Terminal gebaut und hat kein Fenster:",
        ),
        (
            "es",
            "Este Marlinspeak se compiló solo para la terminal y no tiene ventana:",
        ),
        (
            "fr",
            "Ce Marlinspeak a été compilé pour le terminal seul et n’a pas de fenêtre\u{a0}:",
        ),
    ] {
        for knot in [&[][..], &["--leads", "5", "--bights", "6"]] {
            let (code, told) = refused(&[&["--lang", language], knot].concat());
            assert_eq!(code, 1);
            assert!(
                told.starts_with(sentence) && told.contains("marlinspeak tie"),
                "{told}"
            );
        }
    }
}

#[cfg(feature = "window")]
#[test]
fn a_display_that_does_not_answer_is_a_sentence_too() {
    let output = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env("XDG_STATE_HOME", "/dev/null")
        .env("DISPLAY", ":4999")
        .env_remove("WAYLAND_DISPLAY")
        .env_remove("WAYLAND_SOCKET")
        .output_in_time();
    assert_eq!(output.status.code(), Some(1));
    let errors = String::from_utf8(output.stderr).unwrap();
    assert!(
        errors.starts_with("The window could not be opened on the display “:4999”:"),
        "{errors}"
    );
    assert_eq!(errors.trim_end().lines().count(), 1, "{errors}");
}

#[test]
fn a_reader_that_has_seen_enough_is_no_failure() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(["steps", "--leads", "99", "--bights", "98"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.output_in_time();
    assert!(output.status.success());
    assert!(
        output.stderr.is_empty(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
}

#[test]
fn help_and_version_are_printed() {
    for args in [&["--help"][..], &["steps", "--help"], &["--version"]] {
        let output = marlinspeak(args);
        assert!(output.status.success());
        assert!(
            String::from_utf8_lossy(&output.stdout)
                .to_lowercase()
                .contains("marlinspeak")
        );
    }
}

#[test]
fn whoever_closes_the_pipe_ends_it_in_silence() {
    for args in [
        &["--help"][..],
        &["steps", "--help"],
        &["steps", "--leads", "9", "--bights", "101", "--json"],
        &["steps", "--leads", "9", "--bights", "101"],
        &["shelf", "list"],
        &["doctor", "--help"],
    ] {
        let (reader, writer) = std::io::pipe().unwrap();
        drop(reader);
        let output = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
            .args(args)
            .env("LC_ALL", "C")
            .env("HOME", "/nonexistent")
            .env("XDG_CONFIG_HOME", "/nonexistent")
            .env("XDG_DATA_HOME", "/nonexistent")
            .env("XDG_STATE_HOME", "/dev/null")
            .stdin(Stdio::null())
            .stdout(writer)
            .stderr(Stdio::piped())
            .output_in_time();
        let errors = String::from_utf8(output.stderr).unwrap();
        assert_eq!((output.status.code(), &*errors), (Some(0), ""), "{args:?}");
    }
}

#[test]
fn a_line_that_is_no_text_ends_no_tie() {
    use std::io::Write as _;

    let home = tempfile::tempdir().unwrap();
    let mut child = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(["tie", "--leads", "3", "--bights", "5"])
        .env("LC_ALL", "C.UTF-8")
        .env("HOME", home.path())
        .env("XDG_CONFIG_HOME", home.path().join("config"))
        .env("XDG_DATA_HOME", home.path().join("data"))
        .env("XDG_STATE_HOME", home.path().join("state"))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut input = child.stdin.take().unwrap();
    input.write_all(b"\n\xff\xfe\n\0\x1b\x80\n\nq\n").unwrap();
    drop(input);
    let output = child.output_in_time();
    assert!(output.status.success());
    let told = String::from_utf8(output.stdout).unwrap();
    assert!(told.contains("Lead pass, leg 2 of 10."), "{told}");
    assert!(told.contains("The tie is kept where it stands"), "{told}");
}

/// Millions of steps are not gone through to find that one is not among them.
#[test]
fn a_step_that_a_huge_knot_has_not_is_refused_before_anything_is_made() {
    let knot = ["--leads", "999", "--bights", "998", "--passes", "9"];
    let step = ["--step", "99999999", "--out", "/nonexistent/stage.png"];
    let (code, sentence) = refused(&[&["sheet", "stage"], &knot[..], &step].concat());
    assert_eq!(code, 2);
    assert!(
        sentence.starts_with("--step takes a step of this tie, 1 to 7,970,721,"),
        "{sentence}"
    );
}
