//! The words of a rail, a mat and a knob are those of a tube with other names for the rims: a listener
//! who has learnt these hears the same step, and ties the published knots from the words alone.

use crate::diagram;
use crate::grid;
use crate::heard;
use crate::spoken;

use marlinspeak::guide::{AtOnce, Plan, RimNames, Script, Step, What};
use marlinspeak::knot::{Hand, Knot, Side, Weave};
use marlinspeak::words::{Detail, Words};
use num_bigint::BigInt;

use diagram::Diagram;
use grid::grid;
use spoken::{Depth, as_on_a_tube, listen};

const KNOT_TABLE: &str = include_str!("../data/knot_table.csv");

const INTERWOVEN: &str = include_str!("../data/interwoven.csv");

const GROUNDS: [RimNames; 3] = [RimNames::NearFar, RimNames::OuterInner, RimNames::Knob];

fn depth(detail: Detail) -> Depth {
    match detail {
        Detail::Brief => Depth::Brief,
        Detail::Plain => Depth::Plain,
        Detail::Teach => Depth::Teach,
    }
}

fn in_words(detail: Detail) -> Vec<Words> {
    let all = Words::known().into_iter().map(|tag| {
        let mut words = Words::load(Some(&tag.to_string())).unwrap();
        words.set_detail(detail);
        words
    });
    all.collect()
}

fn on(step: &Step, rims: RimNames) -> Step {
    Step {
        rims,
        ..step.clone()
    }
}

#[test]
fn a_step_says_the_same_on_every_ground() {
    let mut heard = 0;
    // Some of all that are drawn: the words are those of the tube, whose own test hears them all.
    for (script, detail) in grid().step_by(11) {
        let steps = script.places().filter_map(|place| script.step(place));
        let laid: Vec<Step> = steps
            .take_while(|step| !matches!(step.what, What::Lift(_)))
            .filter(|step| matches!(step.what, What::Lay(_)))
            .collect();
        for words in in_words(detail) {
            let tag = words.tag().to_string();
            for step in laid.iter().step_by(5) {
                let said = words.say(step).to_string();
                let meant = listen(&tag, &said, depth(detail)).unwrap();
                for rims in GROUNDS {
                    let said = words.say(&on(step, rims)).to_string();
                    let as_known = as_on_a_tube(&tag, rims.into(), &said).unwrap();
                    let spoken = listen(&tag, &as_known, depth(detail));
                    let spoken = spoken.unwrap_or_else(|why| panic!("{rims:?}: {why}\n{said}"));
                    assert_eq!(spoken, meant, "{rims:?}: {said}");
                    heard += 1;
                }
            }
        }
    }
    assert!(heard > 3000, "only {heard}");
}

/// The diagrams that the words tie on every ground, in every language, depth and pace: each once, since
/// the same legs and crossings, in whatever words, are the same diagram.
fn diagrams(plan: &Plan) -> Vec<Diagram> {
    let mut seen = Vec::new();
    for detail in Detail::ALL {
        for at_once in [AtOnce::UpTo(2), AtOnce::WholeLeg] {
            let script = Script::new(plan.clone(), at_once);
            for words in in_words(detail) {
                let tag = words.tag().to_string();
                for rims in GROUNDS {
                    let said = |step: Step| {
                        let said = words.say(&on(&step, rims)).to_string();
                        as_on_a_tube(&tag, rims.into(), &said).unwrap()
                    };
                    let is_tying = |step: &Step| matches!(step.what, What::Begin(_) | What::Lay(_));
                    let said: Vec<String> = script.steps().filter(is_tying).map(said).collect();
                    let document = heard::document(&tag, &said, depth(detail));
                    let document = document.unwrap_or_else(|why| panic!("{tag} {rims:?}: {why}"));
                    if !seen.contains(&document) {
                        seen.push(document);
                    }
                }
            }
        }
    }
    let documents = seen.iter();
    documents
        .map(|document| Diagram::of_lead_pass(document).unwrap())
        .collect()
}

/// The table names its sources. Its one bight knots are no ring knots here.
#[test]
fn the_words_of_every_ground_alone_tie_every_knot_of_the_table() {
    let mut tied = 0;
    let lines = KNOT_TABLE.lines().filter(|line| !line.starts_with('#'));
    for line in lines.skip(1) {
        let row: Vec<&str> = line.split(',').collect();
        let [leads, bights] = [row[0], row[1]].map(|count| count.parse().unwrap());
        if bights == 1 {
            continue;
        }
        let knot = Knot::new(leads, bights, Weave::default()).unwrap();
        let plan = Plan::new(knot, 1, Side::Right, Hand::Right).unwrap();
        for diagram in diagrams(&plan) {
            assert_eq!(diagram.crossings().to_string(), row[2], "{line}");
            assert_eq!(diagram.determinant().to_string(), row[5], "{line}");
            let polynomial = diagram.alexander();
            let polynomial: Vec<_> = polynomial.iter().map(BigInt::to_string).collect();
            assert_eq!(polynomial.join(" "), row[6], "{line}");
        }
        tied += 1;
    }
    assert_eq!(tied, 15);
}

/// The links of the table, from the words of a rail, a mat and a knob alone.
#[test]
fn the_words_of_every_ground_alone_tie_the_interwoven_knots_of_the_table() {
    let mut tied = 0;
    let lines = INTERWOVEN.lines().filter(|line| !line.starts_with('#'));
    for line in lines.skip(1) {
        let row: Vec<&str> = line.split(',').collect();
        let [nests, bights, leads, lands, run] = row[..5] else {
            panic!("short line {line}");
        };
        let plan = Plan::read_nested([leads, bights, nests, lands], "1", run).unwrap();
        for diagram in diagrams(&plan) {
            assert_eq!(diagram.strands().to_string(), row[6], "{line}");
            assert_eq!(diagram.crossings().to_string(), row[8], "{line}");
            assert_eq!(diagram.determinant().to_string(), row[9], "{line}");
        }
        tied += 1;
    }
    assert_eq!(tied, 7);
}
