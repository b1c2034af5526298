//! One step of every kind, and of every turn of phrase in it, as each language says and shows it.
//! `make snapshots` writes the files anew, to be reviewed as a difference.

use crate::grid;

use std::collections::BTreeSet;
use std::fmt::Write;
use std::{env, fs};

use marlinspeak::bench::{Cord, Finish, Millimetres, Thread, Tube};
use marlinspeak::guide::{AtOnce, CordHistory, Join, JoinStep, Plan, Script, Search, Setup, Step};
use marlinspeak::knot::{Hand, PassLeg};
use marlinspeak::session::KnotCount;
use marlinspeak::words::{Detail, FaultAsked, Shown, Units, Words};

use grid::grid;

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

fn plan(leads: &str, bights: &str, passes: &str) -> Plan {
    Plan::read(leads, bights, passes, "1").unwrap()
}

/// Tubes with rings and without, keys by the inch and by the millimetre, and each caution.
fn rigged() -> Vec<Script> {
    let rings = |diameter: f64, rows: &[u16]| Tube::ringed(mm(diameter), rows).unwrap();
    let threaded = |mut tube: Tube, thread: &str| {
        tube.thread = Some(Thread::parse(thread).unwrap());
        tube
    };
    let mut short = threaded(rings(40.0, &[12, 16]), "#8");
    short.pin_length = Some(mm(9.5));
    let on = |around: f64| {
        Some(Finish {
            around: mm(around).into(),
            open_to: None,
        })
    };
    let blue = Cord::new(mm(4.0)).named("blue");
    let bare = |tube: Tube, diameter: f64| Setup::new(tube, Cord::new(mm(diameter)));
    let setups = [
        (
            "5",
            "6",
            "2",
            Setup {
                finish: on(30.0),
                ..Setup::new(short, blue.clone())
            },
        ),
        ("5", "4", "2", bare(threaded(rings(40.0, &[12]), "M4"), 3.0)),
        ("4", "6", "1", bare(rings(60.0, &[24, 30]), 2.0)),
        ("5", "15", "1", bare(rings(60.0, &[30]), 2.0)),
        ("3", "6", "1", bare(Tube::plain(mm(25.0)), 6.0)),
        ("3", "4", "1", bare(Tube::plain(mm(40.0)), 4.0)),
        ("4", "3", "2", bare(Tube::plain(mm(40.0)), 4.0)),
        (
            "6",
            "3",
            "1",
            Setup {
                finish: on(45.0),
                ..Setup::new(rings(40.0, &[12]), blue)
            },
        ),
        ("5", "16", "2", bare(rings(60.0, &[16]), 4.0)),
    ];
    let mut scripts = Vec::new();
    for (index, (leads, bights, passes, setup)) in setups.into_iter().enumerate() {
        let hand = [Hand::Right, Hand::Left][index % 2];
        let plan = plan(leads, bights, passes).with_hand(hand);
        let script = Script::new(plan.with_setup(Some(setup)), AtOnce::default());
        scripts.push(script);
    }
    scripts
}

/// Ties of many kinds.
fn scripts() -> Vec<Script> {
    let mut scripts = rigged();
    scripts.extend(
        rigged()
            .into_iter()
            .map(|script| script.packing_one_by_one(true)),
    );
    let by_leg = Script::new(plan("3", "2", "9"), AtOnce::default());
    scripts.push(by_leg.fairing_by_leg(true));
    // Who learns is told the first legs crossing by crossing.
    scripts.push(Script::new(plan("5", "7", "2"), AtOnce::default()).teaching(true));
    // Legs that go round the tube more than twice, and the most they are cut into.
    for leads in ["9", "12"] {
        for at_once in [AtOnce::UpTo(1), AtOnce::WholeLeg] {
            scripts.push(Script::new(plan(leads, "2", "2"), at_once));
        }
    }
    // Two cords were joined in it.
    let join = Join {
        at: PassLeg::FIRST,
        row: 2,
        melts: true,
    };
    let history = CordHistory::new(Vec::new(), vec![join]);
    let joined = plan("5", "7", "1").with_cord_history(history);
    scripts.push(Script::new(joined, AtOnce::default()));
    scripts.extend(grid().map(|(script, _)| script).step_by(5));
    scripts
}

fn words(tag: &str, detail: Detail) -> Words {
    let mut words = Words::load(Some(tag)).unwrap();
    words.set_detail(detail);
    words
}

/// The turns of phrase of a text, whatever its numbers are.
fn phrases(text: &str) -> impl Iterator<Item = String> + '_ {
    text.split(['.', ',', ':', ';', '\n']).map(|phrase| {
        let mut bare = String::new();
        for letter in phrase.trim().chars() {
            match letter {
                '0'..='9' if bare.ends_with('#') => {}
                '0'..='9' => bare.push('#'),
                letter => bare.push(letter),
            }
        }
        bare
    })
}

/// A step on the screen, on one line.
fn on_a_line(shown: &Shown) -> String {
    let caution = shown.caution.as_ref();
    let caution = caution.map_or_else(String::new, |caution| format!(" | {caution}"));
    let page = shown.to_string().replace('\n', " · ");
    format!("{} | {page}{caution}", shown.phase)
}

/// The steps of all these ties that say or show something no step before did, in English.
fn chosen(scripts: &[Script]) -> Vec<(&Script, Step)> {
    let words = Detail::ALL.map(|detail| words("en", detail));
    let mut known = BTreeSet::new();
    let mut chosen = Vec::new();
    for script in scripts {
        for step in script.places().filter_map(|place| script.step(place)) {
            let shown = words
                .iter()
                .map(|words| words.show(script.plan().knot(), &step));
            let shown = shown.map(|shown| on_a_line(&shown));
            let said = words.iter().map(|words| words.say(&step).into());
            let texts: Vec<String> = said.chain(shown).collect();
            let before = known.len();
            known.extend(texts.iter().flat_map(|text| phrases(text)));
            if known.len() > before {
                chosen.push((script, step));
            }
        }
    }
    chosen
}

/// What is said while something is wrong: taking back, and the questions after the place.
fn mended(words: &Words, told: &mut String) {
    let plan = plan("5", "6", "2").with_cords(vec!["blue".to_owned(), "white".to_owned()]);
    let script = Script::new(plan.unwrap(), AtOnce::default());
    for place in script.places().step_by(5) {
        let back = script.take_back(place);
        writeln!(told, "wrong: {}", words.say_wrong(back.as_ref())).unwrap();
        if let Some(back) = &back {
            writeln!(told, "back: {}", words.say_take_back(back)).unwrap();
            writeln!(
                told,
                "back show: {}",
                on_a_line(&words.show_take_back(back))
            )
            .unwrap();
        }
        writeln!(
            told,
            "where: {}",
            words.say_whereabouts(&script, place, Some(11))
        )
        .unwrap();
        // The first proposal is not it, the second is.
        let mut search = Search::new(&script, place);
        for is_it in [false, true].into_iter().cycle().take(6) {
            let Some(question) = search.question() else {
                break;
            };
            writeln!(told, "question: {}", words.say_question(&question)).unwrap();
            if is_it {
                search.yes(&script);
            } else {
                search.no();
            }
        }
    }
}

/// What is said when a day's work is interrupted: by cord that may not do, a fault far back, a cord
/// that is joined; and when a knot is counted.
fn interrupted(words: &Words, told: &mut String) {
    told.push_str("\n## Interrupted\n\n");
    let setup = Setup::new(Tube::plain(mm(45.0)), Cord::new(mm(3.0)));
    let plans = [
        plan("5", "7", "2").with_setup(Some(setup.clone())),
        plan("4", "6", "2").with_setup(Some(setup)),
        plan("5", "7", "2").with_hand(Hand::Left),
    ];
    for script in plans.map(|plan| Script::new(plan, AtOnce::default())) {
        let knot = script.plan().knot();
        for place in script.places().skip(14).step_by(9) {
            let left = script.remaining(place);
            writeln!(told, "cord: {}", words.cord_left(left.as_ref())).unwrap();
            for measured in [300.0, 900.0, 9000.0] {
                let Some(history) = script.measured(place, mm(measured)) else {
                    continue;
                };
                let script = script.with_plan(script.plan().clone().with_cord_history(history));
                let left = script.remaining(place).unwrap();
                writeln!(told, "measured: {}", words.cord_left(Some(&left))).unwrap();
                writeln!(told, "before a pass: {}", words.cord_not_through(&left)).unwrap();
            }
            for suspect in script.suspects(place, knot.spots(3, 2)[0]) {
                let found = FaultAsked::Found(Box::new(script.fault(place, suspect)));
                for asked in [FaultAsked::Which(suspect), found] {
                    writeln!(told, "fault: {}", words.say_fault(&asked, script.plan())).unwrap();
                    let shown = words.show_fault(&asked, script.plan(), false);
                    writeln!(told, "fault shows: {}", on_a_line(&shown)).unwrap();
                }
            }
            let Some(joining) = script.joining(place) else {
                continue;
            };
            for step in JoinStep::ALL {
                for melts in [true, false] {
                    writeln!(told, "join: {}", words.say_join(&joining, step, melts)).unwrap();
                }
                let shown = words.show_join(&joining, step, true);
                writeln!(told, "join shows: {}", on_a_line(&shown)).unwrap();
            }
        }
        for asked in [
            FaultAsked::Pin(3),
            FaultAsked::Row(2),
            FaultAsked::Nth { nth: 1, of: 2 },
        ] {
            writeln!(told, "fault: {}", words.say_fault(&asked, script.plan())).unwrap();
            let briefly = words.say_fault_briefly(&asked, script.plan());
            writeln!(told, "fault, briefly: {briefly}").unwrap();
        }
    }
    writeln!(
        told,
        "measuring: {}",
        words.say_measuring(0.0, 1000.0, false)
    )
    .unwrap();
    writeln!(
        told,
        "measuring: {}",
        words.say_measuring(2000.0, 100.0, true)
    )
    .unwrap();
    writeln!(told, "cord ends: {}", words.say_cord_ends()).unwrap();
    let mut count = KnotCount::default();
    // Three scallops in two rows, the first cord landing innermost; three crossings, which cannot be, and
    // four; single, and no weave of a name; then one colour.
    for is_next in [
        true, false, true, false, false, true, false, true, false, false, true, true, true, false,
        true, false, false,
    ] {
        writeln!(told, "count: {}", count.say(words)).unwrap();
        writeln!(told, "count shows: {}", on_a_line(&count.show(words))).unwrap();
        count.press(is_next);
    }
}

/// Everything in one language.
fn told(tag: &str, chosen: &[(&Script, Step)]) -> String {
    let mut told = String::new();
    let words = Detail::ALL.map(|detail| words(tag, detail));
    for (script, step) in chosen {
        let knot = script.plan().knot();
        let mut before = None;
        for words in &words {
            let depth = words.detail().name();
            let shown = on_a_line(&words.show(knot, step));
            // A screen that is as in the depth above it is not written again.
            if before.as_ref() != Some(&shown) {
                writeln!(told, "{depth} shows: {shown}").unwrap();
            }
            writeln!(told, "{depth}: {}", words.say(step)).unwrap();
            before = Some(shown);
        }
        told.push('\n');
    }
    mended(&words[1], &mut told);
    interrupted(&words[1], &mut told);
    told.push_str("\n## In inches\n\n");
    let mut words = Words::load(Some(tag)).unwrap();
    words.measure_in(Some(Units::Inch));
    for script in rigged().iter().take(2) {
        let places = script.places().take(20);
        for step in places.filter_map(|place| script.step(place)) {
            let shown = words.show(script.plan().knot(), &step);
            writeln!(told, "show: {}", on_a_line(&shown)).unwrap();
            writeln!(told, "plain: {}", words.say(&step)).unwrap();
        }
    }
    told
}

#[test]
fn every_language_says_and_shows_each_kind_of_step_as_it_was_read_through() {
    let scripts = scripts();
    let chosen = chosen(&scripts);
    assert!(chosen.len() > 100, "only {} steps", chosen.len());
    for tag in Words::known() {
        let path = format!("tests/data/languages/{tag}.txt");
        let told = told(&tag.to_string(), &chosen);
        if env::var_os("WRITE_SNAPSHOTS").is_some() {
            fs::write(&path, &told).unwrap();
        }
        let read = fs::read_to_string(&path).unwrap_or_default();
        for (told, read) in told.lines().zip(read.lines()) {
            assert_eq!(told, read, "{path}");
        }
        assert_eq!(told.len(), read.len(), "{path}: see `make snapshots`");
    }
}

#[test]
fn every_kind_of_step_is_among_them() {
    let scripts = scripts();
    let words = words("en", Detail::Plain);
    let said: Vec<String> = chosen(&scripts)
        .iter()
        .map(|(_, step)| words.say(step).into())
        .collect();
    for phrase in [
        "Leave a tail of",
        "Ninth pass",
        "one full turn of the tube",
        "two full turns of the tube",
        "you can count",
        "Take care: what is covered is",
        "Take care: the pins you named",
        "strip of paper",
        "the hex key, 2 millimetres",
        "sixty-fourths of an inch",
        "slack out of every leg",
        "Careful: hot",
        "Pull gently",
        "sharp knife",
        "two cords are joined",
    ] {
        assert!(said.iter().any(|said| said.contains(phrase)), "{phrase}");
    }
}
