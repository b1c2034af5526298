//! A knot tied round the hand: told by the fingers in every language, it is the very knot of the tube.

use crate::diagram;
use crate::heard;
use crate::spoken;

use std::collections::BTreeSet;

use marlinspeak::guide::{
    AtOnce, COURSE, Caution, LayStep, LiftTask, Place, Plan, Script, Step, What,
};
use marlinspeak::knot::{Hand, KnotError, PassLeg, Rim};
use marlinspeak::session::new_tie;
use marlinspeak::shelf::{read_tie, write_tie};
use marlinspeak::words::{Detail, Words};
use num_bigint::BigInt;

use diagram::Diagram;
use spoken::on_hand::{OnHand, listen_on_hand};
use spoken::{Depth, Met};

const KNOT_TABLE: &str = include_str!("../data/knot_table.csv");

/// The knots that are tied round the hand.
const KNOTS: [(u16, u16); 4] = [(3, 4), (3, 5), (4, 5), (5, 4)];

/// The fingers one after the other as the cord meets them, for four bights: half a pitch is a finger.
const FOUR: [&str; 8] = [
    "front-forefinger",
    "front-middle",
    "front-ring",
    "front-little",
    "back-little",
    "back-ring",
    "back-middle",
    "back-forefinger",
];

/// The same for five, with the edges of the hand.
const FIVE: [&str; 10] = [
    "edge-forefinger",
    "front-forefinger",
    "front-middle",
    "front-ring",
    "front-little",
    "edge-little",
    "back-little",
    "back-ring",
    "back-middle",
    "back-forefinger",
];

fn depth(detail: Detail) -> Depth {
    match detail {
        Detail::Brief => Depth::Brief,
        Detail::Plain => Depth::Plain,
        Detail::Teach => Depth::Teach,
    }
}

fn plan(leads: u16, bights: u16, passes: u16) -> Plan {
    let [leads, bights, passes] = [leads, bights, passes].map(|count| count.to_string());
    let plan = Plan::read(&leads, &bights, &passes, "").unwrap();
    plan.with_round_hand().unwrap()
}

fn in_words(tag: &str, detail: Detail, plan: &Plan) -> Words {
    let mut words = Words::load(Some(tag)).unwrap();
    words.set_detail(detail);
    words.on(plan.rims())
}

fn tags() -> Vec<String> {
    Words::known().iter().map(ToString::to_string).collect()
}

fn every_telling() -> impl Iterator<Item = (String, Detail, AtOnce)> {
    let ways = [AtOnce::UpTo(1), AtOnce::UpTo(2), AtOnce::WholeLeg];
    tags().into_iter().flat_map(move |tag| {
        Detail::ALL.into_iter().flat_map(move |detail| {
            let tag = tag.clone();
            ways.into_iter().map(move |way| (tag.clone(), detail, way))
        })
    })
}

fn laid(script: &Script, words: &Words) -> Vec<(LayStep, String)> {
    let steps = script.steps();
    let laid = steps.filter_map(|step| match &step.what {
        What::Lay(lay) => Some((lay.clone(), words.say(&step).to_string())),
        _ => None,
    });
    laid.collect()
}

/// Half pitches from the first bight: where its finger is among the others.
fn across(finger: &str, bights: u16) -> usize {
    let round: &[&str] = if bights == 5 { &FIVE } else { &FOUR };
    let found = round.iter().position(|known| *known == finger);
    found.unwrap_or_else(|| panic!("{finger} has no place for {bights} bights"))
}

/// Whether the top bights lie half way between the bottom ones, as the fingers have it.
fn is_staggered(heard: &[OnHand], bights: u16) -> bool {
    let tops = heard
        .iter()
        .filter(|heard| heard.leg.to.0 == spoken::Rim::Top);
    let odd: BTreeSet<bool> = tops
        .map(|heard| across(&heard.to, bights) % 2 == 1)
        .collect();
    assert_eq!(odd.len(), 1, "top bights stand in two ways");
    odd.contains(&true)
}

#[test]
fn every_leg_is_told_by_its_fingers_and_its_crossings() {
    let mut told = 0;
    for (tag, detail, at_once) in every_telling() {
        for (leads, bights) in KNOTS {
            // Every number of passes and both hands, by turns.
            let passes = 1 + (leads + bights + told % 7) % 3;
            let hand = [Hand::Right, Hand::Left][usize::from(told % 2)];
            let plan = plan(leads, bights, passes).with_hand(hand);
            let words = in_words(&tag, detail, &plan);
            let script = Script::new(plan, at_once);
            for (lay, said) in laid(&script, &words) {
                let heard = listen_on_hand(&tag, &said, depth(detail)).unwrap();
                let [from, to] = [lay.leg.from, lay.leg.to].map(|pin| {
                    let stagger = u16::from(pin.rim == Rim::Top && leads % 2 == 1);
                    usize::from((2 * (pin.number - 1) + stagger) % (2 * bights))
                });
                assert_eq!(across(&heard.to, bights), to, "{said}");
                if let Some(finger) = &heard.from {
                    assert_eq!(across(finger, bights), from, "{said}");
                }
                assert_eq!(
                    heard.from.is_some(),
                    lay.part == 1 || detail == Detail::Brief
                );
                assert_eq!(heard.leg.from.1, u64::from(lay.leg.from.number), "{said}");
                assert_eq!(heard.leg.to.1, u64::from(lay.leg.to.number), "{said}");
                let met = lay.crossings.iter().map(|crossing| Met {
                    over: crossing.over,
                    cords: crossing.cords.into(),
                });
                assert_eq!(heard.leg.met, met.collect::<Vec<_>>(), "{said}");
                if let Some(then) = &heard.then {
                    let away = if lay.leg.to.rim == Rim::Top {
                        "wrist"
                    } else {
                        "tips"
                    };
                    assert_eq!(then, away, "{said}");
                }
            }
            told += 1;
        }
    }
    assert_eq!(told, 4 * 3 * 3 * 4);
}

/// The table names its sources.
#[test]
fn the_words_alone_tie_the_published_knots_round_the_hand() {
    let mut tied = 0;
    let lines = KNOT_TABLE.lines().filter(|line| !line.starts_with('#'));
    for line in lines.skip(1) {
        let row: Vec<&str> = line.split(',').collect();
        let [leads, bights] = [row[0], row[1]].map(|count| count.parse().unwrap());
        if !KNOTS.contains(&(leads, bights)) {
            continue;
        }
        let mut seen = Vec::new();
        for (tag, detail, at_once) in every_telling() {
            let plan = plan(leads, bights, 1);
            let words = in_words(&tag, detail, &plan);
            let script = Script::new(plan, at_once);
            let heard: Vec<OnHand> = laid(&script, &words)
                .iter()
                .map(|(_, said)| listen_on_hand(&tag, said, depth(detail)).unwrap())
                .collect();
            let staggered = is_staggered(&heard, bights);
            let legs: Vec<_> = heard.into_iter().map(|heard| heard.leg).collect();
            let document = heard::document_of(&legs, staggered).unwrap();
            if seen.contains(&document) {
                continue;
            }
            let diagram = Diagram::of_lead_pass(&document).unwrap();
            seen.push(document);
            assert_eq!(diagram.crossings().to_string(), row[2], "{line}");
            assert_eq!(diagram.strands().to_string(), row[3], "{line}");
            assert_eq!(diagram.determinant().to_string(), row[5], "{line}");
            let polynomial = diagram.alexander();
            let polynomial: Vec<_> = polynomial.iter().map(BigInt::to_string).collect();
            assert_eq!(polynomial.join(" "), row[6], "{line}");
        }
        tied += 1;
    }
    assert!(tied >= 2, "only {tied} of them stand in the table");
}

#[test]
fn it_is_the_knot_of_the_tube_leg_for_leg() {
    for (leads, bights) in KNOTS {
        for passes in 1..=3 {
            let hand = plan(leads, bights, passes);
            let [l, b, p] = [leads, bights, passes].map(|count| count.to_string());
            let tube = Plan::read(&l, &b, &p, "").unwrap();
            assert_eq!(hand.laying(), tube.laying());
        }
    }
}

/// What each language calls what there is none of.
const NOT_THERE: [(&str, [&str; 2]); 4] = [
    ("en", ["pin", "tube"]),
    ("de", ["Stift", "Rohr"]),
    ("es", ["clavija", "tubo"]),
    ("fr", ["picot", "tube"]),
];

#[test]
fn nobody_speaks_of_pins_and_tubes() {
    for (tag, absent) in NOT_THERE {
        for detail in Detail::ALL {
            let plan = plan(3, 5, 2);
            let words = in_words(tag, detail, &plan);
            let script = Script::new(plan, AtOnce::UpTo(1)).fairing_by_leg(true);
            let mut said = Vec::new();
            for step in script.steps() {
                // The caution about small children is of cords, pins and small parts of any kind.
                if !matches!(&step.what, What::Lift(lift) if lift.task == LiftTask::SlipOff) {
                    said.push(words.say(&step).to_string());
                    said.push(words.show(script.plan().knot(), &step).in_words());
                }
                said.push(words.say_whereabouts(&script, step.place, None).to_string());
            }
            for told in said {
                for word in absent {
                    assert!(!told.contains(word), "{tag} {detail:?}: {word} in {told}");
                }
            }
        }
    }
}

#[test]
fn nothing_is_rigged_and_nothing_lifted_but_slipped_off() {
    let script = Script::new(plan(3, 4, 1), AtOnce::WholeLeg);
    assert_eq!(script.first(), Place::begin(1, 1));
    let lifts: Vec<LiftTask> = script
        .steps()
        .filter_map(|step| match step.what {
            What::Lift(lift) => Some(lift.task),
            _ => None,
        })
        .collect();
    assert_eq!(lifts, [LiftTask::Secure, LiftTask::SlipOff]);
}

#[test]
fn the_cord_round_the_fingers_is_cautioned_of_by_eye_and_by_ear() {
    let script = Script::new(plan(3, 4, 1), AtOnce::WholeLeg);
    let begin: Step = script.step(script.first()).unwrap();
    assert_eq!(begin.cautions(), [Caution::Fingers]);
    assert_eq!(begin.cautions_to_say(), [Caution::Fingers]);
    for (tag, warns) in [
        ("en", ["numb", "mall children"]),
        ("de", ["taub", "leine Kinder"]),
        ("es", ["duerme", "niños pequeños"]),
        ("fr", ["engourdit", "jeunes enfants"]),
    ] {
        let words = in_words(tag, Detail::Brief, script.plan());
        let said = words.say(&begin).to_string();
        let shown = words.show(script.plan().knot(), &begin).caution.unwrap();
        for warns in warns {
            assert!(said.contains(warns), "{tag}: {said}");
        }
        assert!(shown.contains(warns[0]), "{tag}: {shown}");
    }
}

#[test]
fn a_knot_that_four_fingers_do_not_hold_is_refused_in_one_sentence() {
    let words = Words::english();
    let refused = Plan::read("5", "7", "2", "").unwrap().with_round_hand();
    let error = refused.unwrap_err();
    assert!(matches!(error, KnotError::NotRoundHand { leads: 5, .. }));
    assert_eq!(
        words.knot_error(&error).to_string(),
        "5 lead 7 bight in 2 passes is more than four fingers hold: round the hand take 3 lead 4 \
         bight, 3 lead 5 bight, 4 lead 5 bight or 5 lead 4 bight in up to 3 passes, and tie this one \
         on a tube with pins."
    );
}

#[test]
fn it_is_kept_with_the_tie_and_a_document_from_before_is_of_a_tube() {
    let tie = new_tie(&plan(3, 5, 2));
    let document = write_tie(&tie).unwrap();
    let read = read_tie(&document).unwrap();
    assert!(read.plan.is_round_hand());
    assert_eq!(read.plan, tie.plan);
    let on_a_tube = new_tie(&Plan::read("3", "5", "2", "").unwrap());
    let document = write_tie(&on_a_tube).unwrap();
    let text = String::from_utf8(document.clone()).unwrap();
    assert!(!text.contains("round_hand"), "{text}");
    assert!(!read_tie(&document).unwrap().plan.is_round_hand());
}

#[test]
fn the_last_lesson_is_tied_round_the_hand() {
    let lesson = COURSE.iter().find(|lesson| lesson.round_hand).unwrap();
    assert!(KNOTS.contains(&(lesson.leads, lesson.bights)));
    let tie =
        marlinspeak::session::lesson_tie(*lesson, marlinspeak::bench::WeaveChoice::FewestTucks);
    let script = Script::new(tie.unwrap().plan, AtOnce::default());
    // Every leg has a way that the hand can be turned to.
    let legs = script.plan().knot().legs_of(1);
    for leg in 1..=legs {
        let pass_leg = PassLeg {
            leg,
            ..PassLeg::FIRST
        };
        let step = script.step(Place::lay(pass_leg)).unwrap();
        assert!(matches!(step.what, What::Lay(lay) if lay.fingers.is_some()));
    }
}
