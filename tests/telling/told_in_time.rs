//! How many presses a job takes and how long it is spoken, in every language: no step is longer than
//! can be kept in the head, and no press is for nothing.

use crate::grid;

use std::collections::BTreeSet;

use marlinspeak::bench::{Cord, Finish, Ground, Millimetres, Thread, Tube};
use marlinspeak::guide::{AtOnce, Place, Plan, RimNames, Script, Setup, Step, What};
use marlinspeak::words::{Detail, Words};

use grid::grid;

/// Seconds of a laying step in each depth: the middle of a tie's, and the longest of any.
const BREATHS: [(Detail, f64, f64); 3] = [
    (Detail::Brief, 5.5, 8.0),
    (Detail::Plain, 10.0, 14.0),
    (Detail::Teach, 10.0, 14.0),
];

/// What the longest names of pins, strands and passes of a grid of knots may add: a syllable or two.
const GRID_SLACK: f64 = 1.0;

/// What the name of a rim may take longer than on a tube: a syllable.
const SYLLABLE: f64 = 0.25;

/// What each language may take, English being one: the same is said in more syllables.
const SHARES: [(&str, f64); 4] = [("en", 1.0), ("de", 1.2), ("fr", 1.2), ("es", 1.2)];

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

fn script(leads: &str, bights: &str, passes: &str) -> Script {
    Script::new(
        Plan::read(leads, bights, passes, "1").unwrap(),
        AtOnce::default(),
    )
}

/// 5 leads, 6 bights, doubled, on a tube of the loft, with everything to bring and to rig.
fn rigged() -> Script {
    let mut tube = Tube::ringed(mm(45.0), &[14, 18]).unwrap();
    tube.thread = Some(Thread::parse("M4").unwrap());
    let setup = Setup {
        finish: Some(Finish {
            around: mm(30.0).into(),
            open_to: None,
        }),
        ..Setup::new(tube, Cord::new(mm(4.0)))
    };
    let plan = Plan::read("5", "6", "2", "1").unwrap();
    Script::new(plan.with_setup(Some(setup)), AtOnce::default())
}

fn every_language(detail: Detail) -> impl Iterator<Item = (Words, f64)> {
    Words::known().into_iter().map(move |tag| {
        let mut words = Words::load(Some(&tag.to_string())).unwrap();
        words.set_detail(detail);
        let share = SHARES
            .iter()
            .find(|(known, _)| *known == tag.language.as_str());
        (words, share.expect("a share for every language").1)
    })
}

/// Seconds of every step of laying, the shortest first.
fn legs(script: &Script, words: &Words) -> Vec<f64> {
    let steps = script.places().filter_map(|place| script.step(place));
    let legs = steps.filter(|step| matches!(step.what, What::Lay(_)));
    let mut seconds: Vec<f64> = legs.map(|step| words.seconds(&words.say(&step))).collect();
    seconds.sort_by(f64::total_cmp);
    seconds
}

#[test]
fn a_leg_is_told_in_a_breath() {
    for (detail, median, most) in BREATHS {
        for (words, may) in every_language(detail) {
            for (leads, bights, passes) in [
                ("5", "6", "2"),
                ("5", "7", "2"),
                ("3", "5", "3"),
                ("4", "7", "1"),
                ("3", "14", "2"),
                ("4", "5", "3"),
            ] {
                let script = script(leads, bights, passes).teaching(detail == Detail::Teach);
                let seconds = legs(&script, &words);
                let what = format!(
                    "{leads} × {bights} × {passes}, {} {}",
                    words.tag(),
                    detail.name()
                );
                let middle = seconds[seconds.len() / 2];
                assert!(
                    middle > 1.0 && middle <= median * may,
                    "{what}: {middle} s in the middle"
                );
                let last = *seconds.last().unwrap();
                assert!(last <= most * may, "{what}: {last} s");
            }
        }
    }
}

/// In place with what is drawn through at a tuck; on a rail, a knob, a mat.
#[test]
fn a_leg_is_told_in_a_breath_on_every_ground() {
    let (mut told, mut over) = (0, BTreeSet::new());
    for (leads, bights, passes) in [
        ("5", "6", "2"),
        ("5", "7", "2"),
        ("3", "5", "3"),
        ("4", "5", "3"),
    ] {
        let rail = Setup::in_place(Ground::Round(mm(60.0)), Cord::new(mm(2.0)));
        let plan = Plan::read(leads, bights, passes, "1").unwrap();
        let plan = plan.with_setup(Some(rail));
        assert!(matches!(plan.rig(), Ok(Some(_))));
        for (detail, median, most) in BREATHS {
            let script = Script::new(plan.clone(), AtOnce::default());
            let script = script.teaching(detail == Detail::Teach);
            for rims in [RimNames::NearFar, RimNames::OuterInner, RimNames::Knob] {
                for (words, may) in every_language(detail) {
                    let laid = script
                        .steps()
                        .filter(|step| matches!(step.what, What::Lay(_)));
                    let mut seconds: Vec<f64> = laid
                        .map(|step| words.seconds(&words.say(&Step { rims, ..step })))
                        .collect();
                    seconds.sort_by(f64::total_cmp);
                    let what = format!("{rims:?} {} {}", words.tag(), detail.name());
                    let (middle, last) = (seconds[seconds.len() / 2], seconds[seconds.len() - 1]);
                    if middle > median * may + SYLLABLE || last > most * may + SYLLABLE {
                        over.insert(format!("{what}: {middle} s in the middle, {last} s"));
                    }
                    told += seconds.len();
                }
            }
        }
    }
    assert!(told > 1000, "only {told}");
    assert!(over.is_empty(), "{over:#?}");
}

/// Every knot up to 12 leads and 12 bights, with all the ways to choose passes, hand, side, order and names
/// of cords: long legs in as many parts as it takes.
#[test]
fn no_leg_of_any_knot_nor_part_of_one_takes_longer_than_a_breath() {
    let (mut parts, mut over) = (0, BTreeSet::new());
    for (detail, _, most) in BREATHS {
        let languages: Vec<(Words, f64)> = every_language(detail).collect();
        for (script, _) in grid().filter(|(_, depth)| *depth == detail) {
            let told = Script::new(script.plan().clone(), AtOnce::default())
                .teaching(detail == Detail::Teach);
            let laid = told
                .places()
                .filter(|place| matches!(place, Place::Lay { .. }));
            for step in laid.filter_map(|place| told.step(place)) {
                parts += usize::from(matches!(&step.what, What::Lay(lay) if lay.parts > 1));
                for (words, may) in &languages {
                    let said = words.say(&step);
                    let seconds = words.seconds(&said);
                    if seconds > most * may * GRID_SLACK {
                        let way = detail.name();
                        over.insert(format!("{} {way}: {seconds} s: {said}", words.tag()));
                    }
                }
            }
        }
    }
    assert!(parts > 1000, "only {parts} parts of legs");
    assert!(over.is_empty(), "{over:#?}");
}

#[test]
fn the_whole_job_takes_sixty_presses_and_twelve_minutes() {
    let script = rigged();
    assert!(script.rigging().is_some());
    let presses = script.places().count();
    assert!((40..=60).contains(&presses), "{presses} presses");
    for (words, may) in every_language(Detail::Plain) {
        let steps = script.places().filter_map(|place| script.step(place));
        let minutes = steps
            .map(|step| words.seconds(&words.say(&step)))
            .sum::<f64>()
            / 60.0;
        assert!(
            minutes > 4.0 && minutes <= 12.0 * may,
            "{}: {minutes} minutes",
            words.tag()
        );
    }
}

/// Ties of the loft and their neighbours, on one tube.
fn jobs() -> Vec<Script> {
    let mut jobs = Vec::new();
    for (leads, bights, passes) in [
        ("3", "4", "1"),
        ("3", "7", "2"),
        ("4", "7", "1"),
        ("5", "6", "2"),
        ("5", "7", "2"),
        ("3", "14", "2"),
        ("7", "6", "1"),
    ] {
        jobs.push(script(leads, bights, passes));
        let setup = Setup::new(
            Tube::ringed(mm(45.0), &[14, 18, 16]).unwrap(),
            Cord::new(mm(3.0)),
        );
        let plan = Plan::read(leads, bights, passes, "1").unwrap();
        jobs.push(Script::new(plan.with_setup(Some(setup)), AtOnce::default()));
    }
    jobs
}

/// As many for every leg as for 5 lead 6 bight, doubled.
#[test]
fn other_jobs_take_no_more_presses_and_minutes_for_their_size() {
    for script in jobs() {
        let legs = script.plan().laying().legs();
        let laid = script
            .steps()
            .filter(|step| matches!(step.what, What::Lay(_)));
        // Long legs are told in parts, a press each.
        let parts = u32::try_from(laid.count()).unwrap();
        let presses = u32::try_from(script.places().count()).unwrap();
        let what = format!("{legs} legs in {parts} parts");
        assert!(
            parts >= legs && presses <= parts + legs / 2 + 24,
            "{what}: {presses} presses"
        );
        // What is said of bag, rigging and ends weighs less in a long job.
        if legs < 20 {
            continue;
        }
        for (words, may) in every_language(Detail::Plain) {
            let steps = script.steps();
            let seconds: f64 = steps.map(|step| words.seconds(&words.say(&step))).sum();
            let a_leg = seconds / f64::from(legs);
            // Twelve minutes for 24 legs.
            assert!(
                a_leg <= 30.0 * may,
                "{what}, {}: {a_leg} s a leg",
                words.tag()
            );
        }
    }
}

#[test]
fn no_step_is_said_twice() {
    for detail in Detail::ALL {
        for (words, _) in every_language(detail) {
            for script in jobs() {
                let mut said = BTreeSet::new();
                for step in script.steps() {
                    let text = words.say(&step).to_string();
                    assert!(said.insert(text.clone()), "{}: {text}", words.tag());
                }
            }
        }
    }
}

#[test]
fn bag_and_rigging_are_a_few_pages_or_one_by_one() {
    let script = rigged();
    let (items, tasks) = script.rigging().unwrap().counts();
    let pages = |script: &Script| {
        let before = script
            .steps()
            .take_while(|step| !matches!(step.what, What::Begin(_)));
        before
            .map(|step| match step.what {
                What::Kit(kit) => (kit.things.len(), 0),
                What::Rig(rig) => (0, rig.things.len()),
                _ => panic!("{:?} before the first leg", step.place),
            })
            .collect::<Vec<_>>()
    };
    let few = pages(&script);
    // Eleven things for the bag, and what is to be done to the tube.
    assert!(few.len() <= 7, "{few:?}");
    let all = |pages: &[(usize, usize)]| {
        let sum = pages
            .iter()
            .fold((0, 0), |sum, page| (sum.0 + page.0, sum.1 + page.1));
        (u16::try_from(sum.0).unwrap(), u16::try_from(sum.1).unwrap())
    };
    assert_eq!(all(&few), (items, tasks));
    let single = pages(&script.clone().packing_one_by_one(true));
    assert_eq!(single.len(), usize::from(items + tasks));
    assert_eq!(all(&single), (items, tasks));
    // Back is the way that was come, whichever way it is told.
    for script in [script.clone(), script.packing_one_by_one(true)] {
        let places: Vec<_> = script.places().collect();
        for pair in places.windows(2) {
            assert_eq!(script.back(pair[1]), Some(pair[0]));
        }
    }
}

#[test]
fn a_small_knot_takes_few_steps() {
    let steps = script("3", "4", "1").places().count();
    assert!((18..=24).contains(&steps), "{steps} steps");
}
