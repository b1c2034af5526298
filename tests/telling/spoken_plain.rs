//! What is spoken is what is meant: the words alone, heard by a listener of the test's own, are
//! the computed step, and they tie the published knots.

use crate::diagram;
use crate::grid;
use crate::heard;
use crate::spoken;

use std::collections::BTreeSet;

use marlinspeak::guide::{AtOnce, Landing, Landmark, LayStep, LegShare, Place, Plan, Script, What};
use marlinspeak::knot::{Hand, Knot, Pin, Rim, Side, Weave};
use marlinspeak::words::{Detail, Words};
use num_bigint::BigInt;

use diagram::Diagram;
use grid::grid;
use spoken::{Depth, Lane, Mark, Met, Spoken, Way, listen};

const INTERWOVEN: &str = include_str!("../data/interwoven.csv");
const KNOT_TABLE: &str = include_str!("../data/knot_table.csv");

/// Words in 20 seconds at 150 a minute.
const MOST_WORDS: usize = 50;

fn depth(detail: Detail) -> Depth {
    match detail {
        Detail::Brief => Depth::Brief,
        Detail::Plain => Depth::Plain,
        Detail::Teach => Depth::Teach,
    }
}

fn pin(pin: Pin) -> spoken::Pin {
    let rim = match pin.rim {
        Rim::Bottom => spoken::Rim::Bottom,
        Rim::Top => spoken::Rim::Top,
    };
    let row = u64::from(pin.row.number) - 1;
    (rim, spoken::ROW * row + u64::from(pin.number))
}

/// What should be heard of a step in this depth.
fn meant(lay: &LayStep, detail: Detail) -> Spoken {
    let is_full = detail != Detail::Brief;
    let is_first = lay.part == 1;
    // Right of a cord that travels to the right is towards the bottom, going up as going down.
    let lane = lay.side.map(|side| match (side, lay.hand) {
        (Side::Right, Hand::Right) | (Side::Left, Hand::Left) => Lane::Bottom,
        _ => Lane::Top,
    });
    // In brief the screen and the landing say it.
    let lane = lane.filter(|_| detail != Detail::Brief);
    let strand = (lay.strands > 1).then_some(lay.pass_leg.strand.into());
    // In the lead pass of one strand there is but one cord in sight, and in a later part it is in hand.
    let is_named = is_full && is_first && (lay.pass_leg.pass > 1 || strand.is_some());
    let met = lay.crossings.iter().map(|crossing| Met {
        over: crossing.over,
        cords: crossing.cords.into(),
    });
    Spoken {
        pass: (lay.pass_leg.pass > 1).then_some(lay.pass_leg.pass.into()),
        strand,
        cord: lay.cord.clone().filter(|_| is_named),
        leg: lay.pass_leg.leg.into(),
        part: (lay.part.into(), lay.parts.into()),
        from: pin(lay.leg.from),
        to: pin(lay.leg.to),
        // In a later pass the first cord shows it.
        way: (is_full && lay.side.is_none()).then_some(match lay.hand {
            Hand::Right => Way::Right,
            Hand::Left => Way::Left,
        }),
        turns: is_first.then_some(lay.turns.into()),
        lane,
        mark: lay
            .landmark
            .map(|landmark| mark(landmark, [lay.leg.from, lay.leg.to], is_full))
            .filter(|mark| is_full || mark.past.is_some()),
        met: met.collect(),
        landing: landing(lay.landing, is_full),
    }
}

fn mark(landmark: Landmark, [from, to]: [Pin; 2], is_full: bool) -> Mark {
    // The pin from which the leg has just set out is no landmark, nor the one where it is to land.
    let is_told = landmark.past != to && (landmark.past != from || landmark.turns > 0);
    let share = match landmark.share {
        LegShare::Little => spoken::Share::Little,
        LegShare::Quarter => spoken::Share::Quarter,
        LegShare::Third => spoken::Share::Third,
        LegShare::Half => spoken::Share::Half,
        LegShare::TwoThirds => spoken::Share::TwoThirds,
        LegShare::ThreeQuarters => spoken::Share::ThreeQuarters,
        LegShare::Most => spoken::Share::Most,
    };
    Mark {
        // Once round the tube, the turns and the pin say it all.
        share: (is_full && landmark.turns == 0).then_some(share),
        past: is_told.then(|| pin(landmark.past)),
        made: is_full.then_some(landmark.turns.into()),
    }
}

fn landing(landing: Landing, is_full: bool) -> Option<spoken::Landing> {
    Some(match landing {
        // In brief the pins and the part say it.
        Landing::OnTheWay | Landing::Round if !is_full => return None,
        Landing::OnTheWay => spoken::Landing::Hold,
        Landing::Round => spoken::Landing::Round,
        Landing::Inside => spoken::Landing::Inside,
        Landing::Outside => spoken::Landing::Outside,
        Landing::HomeAndOn => spoken::Landing::HomeAndOn,
        Landing::HomeToWait => spoken::Landing::HomeToWait,
        Landing::HomeToEnd => spoken::Landing::HomeToEnd,
    })
}

/// The languages that there are.
fn tags() -> Vec<String> {
    Words::known().iter().map(ToString::to_string).collect()
}

fn in_words(tag: &str, detail: Detail) -> Words {
    let mut words = Words::load(Some(tag)).unwrap();
    words.set_detail(detail);
    words
}

/// The steps of laying that a script tells, and how each is spoken.
fn laid(script: &Script, words: &Words) -> Vec<(LayStep, String)> {
    let steps = script.places().filter_map(|place| script.step(place));
    steps
        .take_while(|step| !matches!(step.what, What::Lift(_)))
        .filter_map(|step| match &step.what {
            What::Lay(lay) => Some((lay.clone(), words.say(&step).into())),
            _ => None,
        })
        .collect()
}

#[test]
fn every_language_has_a_reader_of_its_own() {
    let read: Vec<&str> = spoken::LANGUAGES.iter().map(|known| known.tag).collect();
    assert_eq!(read, tags());
}

#[test]
fn the_words_say_the_step_in_every_depth() {
    for tag in tags() {
        let words = Detail::ALL.map(|detail| (detail, in_words(&tag, detail)));
        let mut heard = BTreeSet::new();
        for (script, detail) in grid() {
            let (_, words) = words.iter().find(|(known, _)| *known == detail).unwrap();
            for (lay, said) in laid(&script, words) {
                let spoken = listen(&tag, &said, depth(detail)).unwrap();
                assert_eq!(spoken, meant(&lay, detail), "{said}");
                heard.insert((
                    detail.name(),
                    lay.pass_leg.pass,
                    lay.parts.min(3),
                    lay.landmark.is_some(),
                    lay.side.is_some_and(|side| side == Side::Left),
                    lay.hand == Hand::Left,
                    format!("{:?}", lay.landing),
                ));
            }
        }
        // The pattern leaves out no kind of step that there is.
        for detail in Detail::ALL {
            let of_it = heard.iter().filter(|kind| kind.0 == detail.name()).count();
            assert!(of_it > 60, "{of_it} kinds of steps in {detail:?}");
        }
    }
}

/// One knot in every way at once, so that no choice hides another.
#[test]
fn a_knot_of_long_legs_is_spoken_alike_however_it_is_told() {
    let knot = Knot::new(12, 2, Weave::Run(2)).unwrap();
    let every_way = tags().into_iter().flat_map(|tag| {
        let ways = Detail::ALL.map(|detail| (tag.clone(), detail));
        ways.into_iter()
    });
    for (tag, detail) in every_way {
        let words = in_words(&tag, detail);
        for hand in [Hand::Right, Hand::Left] {
            for side in [Side::Right, Side::Left] {
                let plan = Plan::new(knot.clone(), 3, side, hand).unwrap();
                for most in 1..=AtOnce::MOST {
                    let script = Script::new(plan.clone(), AtOnce::UpTo(most));
                    for (lay, said) in laid(&script, &words) {
                        let spoken = listen(&tag, &said, depth(detail)).unwrap();
                        assert_eq!(spoken, meant(&lay, detail), "{said}");
                    }
                }
            }
        }
    }
}

/// Everything that is spoken while a knot is tied.
fn taught(tag: &str, counts: [u16; 3], at_once: AtOnce, detail: Detail) -> Vec<String> {
    let [leads, bights, passes] = counts;
    let knot = Knot::new(leads, bights, Weave::default()).unwrap();
    let plan = Plan::new(knot, passes, Side::Right, Hand::Right).unwrap();
    let (script, words) = (Script::new(plan, at_once), in_words(tag, detail));
    let steps = script.places().filter_map(|place| script.step(place));
    steps.map(|step| words.say(&step).to_string()).collect()
}

/// Every language in every depth, with little and much told at once.
fn every_telling() -> impl Iterator<Item = (String, AtOnce, Detail)> {
    let ways = [AtOnce::UpTo(1), AtOnce::UpTo(3), AtOnce::WholeLeg];
    let all = tags().into_iter();
    all.flat_map(move |tag| {
        ways.into_iter().flat_map(move |way| {
            let tag = tag.clone();
            Detail::ALL
                .into_iter()
                .map(move |detail| (tag.clone(), way, detail))
        })
    })
}

/// The table names its sources. Its one bight knots are no ring knots here.
#[test]
fn the_words_alone_tie_every_knot_of_the_table() {
    let mut tied = 0;
    for line in KNOT_TABLE
        .lines()
        .filter(|line| !line.starts_with('#'))
        .skip(1)
    {
        let row: Vec<&str> = line.split(',').collect();
        let [leads, bights] = [row[0], row[1]].map(|count| count.parse().unwrap());
        if bights == 1 {
            continue;
        }
        let name = row[4];
        let mut seen = Vec::new();
        for (tag, at_once, detail) in every_telling() {
            let said = taught(&tag, [leads, bights, 1], at_once, detail);
            let document = heard::document(&tag, &said, depth(detail)).unwrap();
            // The same legs and crossings, in whatever words, are the same diagram.
            if seen.contains(&document) {
                continue;
            }
            let diagram = Diagram::of_lead_pass(&document).unwrap();
            seen.push(document);
            assert_eq!(diagram.crossings().to_string(), row[2], "{name}");
            assert_eq!(diagram.strands().to_string(), row[3], "{name}");
            assert_eq!(diagram.determinant().to_string(), row[5], "{name}");
            let polynomial = diagram.alexander();
            let polynomial: Vec<_> = polynomial.iter().map(BigInt::to_string).collect();
            assert_eq!(polynomial.join(" "), row[6], "{name}");
        }
        tied += 1;
    }
    assert_eq!(tied, 15);
}

/// The links of the table, from the words alone; every cord finished, doubled too, before the next.
#[test]
fn the_words_alone_tie_the_interwoven_knots_of_the_table() {
    let mut tied = 0;
    let lines = INTERWOVEN.lines().filter(|line| !line.starts_with('#'));
    for line in lines.skip(1) {
        let row: Vec<&str> = line.split(',').collect();
        let [nests, bights, leads, lands, run] = row[..5] else {
            panic!("short line {line}");
        };
        let mut seen = Vec::new();
        for (tag, at_once, detail) in every_telling() {
            // In one pass, and in two, by turns of how much is told.
            let passes = if at_once == AtOnce::UpTo(3) { "2" } else { "1" };
            let plan = Plan::read_nested([leads, bights, nests, lands], passes, run).unwrap();
            let (script, words) = (Script::new(plan, at_once), in_words(&tag, detail));
            let steps = script.places().filter_map(|place| script.step(place));
            let said: Vec<String> = steps.map(|step| words.say(&step).to_string()).collect();
            let document = heard::document(&tag, &said, depth(detail)).unwrap();
            // The same legs and crossings, in whatever words, are the same diagram.
            if seen.contains(&document) {
                continue;
            }
            let diagram = Diagram::of_lead_pass(&document).unwrap();
            seen.push(document);
            assert_eq!(diagram.strands().to_string(), row[6], "{line}");
            assert_eq!(diagram.crossings().to_string(), row[8], "{line}");
            assert_eq!(diagram.determinant().to_string(), row[9], "{line}");
        }
        tied += 1;
    }
    assert_eq!(tied, 7);
}

#[test]
fn the_words_say_the_step_of_interwoven_knots_in_every_depth() {
    let mut splits = 0;
    for tag in tags() {
        for detail in Detail::ALL {
            let words = in_words(&tag, detail);
            for (nested, lands) in [("2", ""), ("2", "1"), ("3", "3"), ("4", "2")] {
                for (side, hand) in [(Side::Right, Hand::Right), (Side::Left, Hand::Left)] {
                    let plan = Plan::read_nested(["5", "4", nested, lands], "2", "").unwrap();
                    let plan = plan.with_side(side).with_hand(hand);
                    let script = Script::new(plan, AtOnce::UpTo(3));
                    for (lay, said) in laid(&script, &words) {
                        let spoken = listen(&tag, &said, depth(detail)).unwrap();
                        assert_eq!(spoken, meant(&lay, detail), "{said}");
                        splits += usize::from(lay.splits.is_some() && lay.landmark.is_none());
                    }
                }
            }
        }
    }
    assert!(splits > 100, "{splits} legs split others");
}

/// Each crossing of the single knot is P × P in the cable, and a knot becomes P cords.
#[test]
fn the_words_alone_tie_the_finished_cable() {
    let knots = [(3, 4, 2), (4, 3, 3), (5, 6, 2), (3, 3, 2), (7, 2, 2)];
    for tag in tags() {
        for (leads, bights, passes) in knots {
            // In every depth by turns.
            let detail = Detail::ALL[usize::from(leads + bights) % 3];
            let said = taught(&tag, [leads, bights, passes], AtOnce::UpTo(2), detail);
            let document = heard::document(&tag, &said, depth(detail)).unwrap();
            let single = Diagram::of_lead_pass(&document).unwrap();
            let cable = Diagram::of_cable(&document).unwrap();
            let passes = usize::from(passes);
            assert_eq!(single.crossings(), usize::from((leads - 1) * bights));
            assert_eq!(cable.crossings(), single.crossings() * passes * passes);
            assert_eq!(cable.strands(), single.strands() * passes);
        }
    }
}

fn count_words(text: &str) -> usize {
    let is_word = |token: &&str| token.contains(char::is_alphanumeric);
    text.split_whitespace().filter(is_word).count()
}

#[test]
fn no_brief_step_takes_longer_than_twenty_seconds() {
    for tag in tags() {
        let words = in_words(&tag, Detail::Brief);
        let mut longest = (0, String::new());
        for (script, _) in grid() {
            // Fairing tells the same legs in every round, and the last ends the cord.
            let rounds = script.fair_rounds();
            let steps = script
                .places()
                .filter(|place| !matches!(place, Place::Fair { round, .. } if *round != rounds))
                .filter_map(|place| script.step(place));
            for step in steps {
                let said = words.say(&step).to_string();
                let count = count_words(&said);
                if count > longest.0 {
                    longest = (count, said);
                }
            }
        }
        let (count, said) = longest;
        assert!(count > 30, "{tag}: only {count} words: {said}");
        assert!(count <= MOST_WORDS, "{tag}: {count} words: {said}");
    }
}
