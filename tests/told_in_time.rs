//! How many presses a job takes and how long it is spoken, in every language: no step is longer than
//! can be kept in the head, and no press is for nothing.

use marlinspeak::bench::{Cord, Finish, Millimetres, Thread, Tube};
use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
use marlinspeak::words::{Detail, Words};

/// What each language may take, English being one: the same is said in more syllables.
const SHARES: [(&str, f64); 4] = [("en", 1.0), ("de", 1.2), ("fr", 1.3), ("es", 1.6)];

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
            around: mm(30.0),
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
    for (detail, median, most) in [
        (Detail::Brief, 7.0, 8.0),
        (Detail::Plain, 12.0, 14.0),
        (Detail::Teach, 12.0, 14.0),
    ] {
        for (words, may) in every_language(detail) {
            for (leads, bights, passes) in [
                ("5", "6", "2"),
                ("5", "7", "2"),
                ("3", "5", "3"),
                ("4", "7", "1"),
            ] {
                let seconds = legs(&script(leads, bights, passes), &words);
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

#[test]
fn a_small_knot_takes_few_steps() {
    let steps = script("3", "4", "1").places().count();
    assert!((18..=24).contains(&steps), "{steps} steps");
}
