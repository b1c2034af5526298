//! A whole job on a rail, a taper, a knob and a mat in words, from the bag to the ends: as it was last
//! read through, and with no word of a tube in any language or depth.

use std::env;
use std::fmt::Write;
use std::fs;
use std::path::PathBuf;

use marlinspeak::bench::{Cord, Finish, Ground, KitItem, Layout, Millimetres, Tube};
use marlinspeak::guide::{
    AtOnce, Caution, FinishTask, LiftTask, Plan, Script, Search, Setup, Step, Task, What,
};
use marlinspeak::knot::Hand;
use marlinspeak::picture::sheet::{BoardSheet, StripSheet};
use marlinspeak::words::{Detail, FaultAsked, Words};

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

fn plan(counts: [&str; 3], setup: Setup) -> Plan {
    let [leads, bights, passes] = counts;
    let plan = Plan::read(leads, bights, passes, "").unwrap();
    plan.with_setup(Some(setup))
}

fn in_place(counts: [&str; 3], ground: Ground, cord: f64) -> Plan {
    let plan = plan(counts, Setup::in_place(ground, Cord::new(mm(cord))));
    assert!(matches!(plan.rig(), Ok(Some(_))), "{:?}", plan.rig());
    plan
}

/// A grip on the rail of the jetty of the invented club, one on its tiller, a knob of the locker and a mat
/// for the galley.
fn places() -> [(&'static str, Plan); 4] {
    let tiller = Ground::Taper {
        bottom: mm(34.0),
        top: mm(28.0),
        over: mm(120.0),
    };
    let mat = Ground::Flat {
        outer: mm(150.0),
        hole: None,
    };
    [
        (
            "rail",
            in_place(["5", "7", "2"], Ground::Round(mm(42.0)), 3.0),
        ),
        ("taper", in_place(["5", "7", "1"], tiller, 3.0)),
        (
            "knob",
            in_place(["5", "6", "1"], Ground::Ball(mm(38.0)), 3.0),
        ),
        ("mat", in_place(["6", "7", "2"], mat, 6.0)),
    ]
}

/// The same grounds with bights nested in two rows and in three.
fn nested_places() -> [(&'static str, Plan); 4] {
    let of = |counts: [&str; 4], ground, cord: f64| {
        let plan = Plan::read_nested(counts, "1", "").unwrap();
        let plan = plan.with_setup(Some(Setup::in_place(ground, Cord::new(mm(cord)))));
        assert!(matches!(plan.rig(), Ok(Some(_))), "{:?}", plan.rig());
        plan
    };
    let tiller = Ground::Taper {
        bottom: mm(44.0),
        top: mm(40.0),
        over: mm(200.0),
    };
    let mat = Ground::Flat {
        outer: mm(220.0),
        hole: None,
    };
    [
        (
            "rail",
            of(["5", "4", "2", "2"], Ground::Round(mm(60.0)), 2.0),
        ),
        ("taper", of(["5", "3", "2", "2"], tiller, 2.0)),
        (
            "knob",
            of(["3", "4", "2", "2"], Ground::Ball(mm(60.0)), 2.0),
        ),
        ("mat", of(["3", "5", "3", "3"], mat, 3.0)),
    ]
}

fn in_words(detail: Detail) -> impl Iterator<Item = Words> {
    Words::known().into_iter().map(move |tag| {
        let mut words = Words::load(Some(&tag.to_string())).unwrap();
        words.set_detail(detail);
        words
    })
}

fn script_of(plan: &Plan, detail: Detail) -> Script {
    let script = Script::new(plan.clone(), AtOnce::default());
    script.teaching(detail == Detail::Teach)
}

/// Words by language that do not fit; with a star, what begins so. Capitals and hyphens do not count.
type Unfit = [(&'static str, &'static [&'static str]); 4];

/// Words of a tube: what no knot that is tied in place is told with.
const OF_A_TUBE: Unfit = [
    (
        "en",
        &[
            "tube",
            "tubes",
            "ring",
            "rings",
            "lift*",
            "slid*",
            "slip the knot",
            "screw*",
        ],
    ),
    (
        "de",
        &[
            "rohr*",
            "ring",
            "rings",
            "ringe*",
            "kopfring",
            "abheb*",
            "abgehoben",
            "schraub*",
            "schieb den knoten",
        ],
    ),
    (
        "es",
        &[
            "tubo",
            "tubos",
            "anillo",
            "anillos",
            "tornillo*",
            "desliz*",
            "pasa el nudo",
        ],
    ),
    (
        "fr",
        &[
            "tube",
            "tubes",
            "bague*",
            "vis",
            "dégagez le nœud",
            "dégager le nœud",
            "passez le nœud",
        ],
    ),
];

/// Words of what has a bottom and a top.
const OF_AN_UPRIGHT: Unfit = [
    (
        "en",
        &[
            "bottom",
            "top pin*",
            "top mark*",
            "top bight*",
            "straight above",
        ],
    ),
    ("de", &["fuß", "kopf", "senkrecht", "hinab", "hoch"]),
    (
        "es",
        &["del pie", "de la cabeza", "a plomo", "sube", "baja"],
    ),
    (
        "fr",
        &["de base", "de tête", "aplomb", "montez", "descendez"],
    ),
];

/// Words of pins; what is said of small children and of T-pins is none of it.
const OF_PINS: Unfit = [
    ("en", &["pin", "the pins", "its pins", "your pins"]),
    (
        "de",
        &[
            "stift",
            "die stifte",
            "den stiften",
            "ihren stiften",
            "ihre stifte",
        ],
    ),
    ("es", &["clavija", "las clavijas", "sus clavijas"]),
    ("fr", &["picot", "les picots", "ses picots"]),
];

/// The first word of a text that does not fit.
fn found(unfit: &Unfit, tag: &str, text: &str) -> Option<&'static str> {
    let words: Vec<String> = text
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect();
    let text = format!(" {} ", words.join(" "));
    let (_, unfit) = unfit.iter().find(|(known, _)| *known == tag).unwrap();
    unfit
        .iter()
        .copied()
        .find(|word| match word.strip_suffix('*') {
            Some(start) => text.contains(&format!(" {start}")),
            None => text.contains(&format!(" {word} ")),
        })
}

#[test]
fn a_word_that_does_not_fit_is_found() {
    for (tag, text) in [
        ("en", "On the bottom-ring side."),
        ("de", "Halte das Rohr aufrecht."),
        ("es", "Hay 4 cruces en el tubo."),
        ("fr", "Tenez le tube debout."),
    ] {
        assert!(found(&OF_A_TUBE, tag, text).is_some(), "{text}");
    }
    assert_eq!(
        found(&OF_A_TUBE, "en", "Tie the string in the spring."),
        None
    );
}

/// All that is said and shown of a step, and of what may interrupt it.
fn told(words: &Words, script: &Script, step: &Step) -> Vec<String> {
    let plan = script.plan();
    let here = words.on(plan.rims());
    let mut told = vec![
        words.say(step).to_string(),
        words.show(plan.knot(), step).to_string(),
        words.say_whereabouts(script, step.place, None).to_string(),
        here.cord_left(script.remaining(step.place).as_ref())
            .to_string(),
    ];
    if let Some(back) = script.take_back(step.place) {
        told.push(here.say_take_back(&back).to_string());
        told.push(here.show_take_back(&back).to_string());
        told.push(here.say_wrong(Some(&back)).to_string());
    }
    if let Some(question) = Search::new(script, step.place).question() {
        told.push(here.say_question(&question).to_string());
        told.push(here.show_question(&question).to_string());
    }
    told
}

#[test]
fn nothing_that_is_tied_in_place_is_told_with_the_words_of_a_tube() {
    for detail in Detail::ALL {
        for words in in_words(detail) {
            let tag = words.tag().to_string();
            for (name, plan) in places().into_iter().chain(nested_places()) {
                let script = script_of(&plan, detail);
                let mut unfit = vec![&OF_A_TUBE];
                if name != "knob" {
                    unfit.push(&OF_AN_UPRIGHT);
                }
                if !plan.rims().has_pins() {
                    unfit.push(&OF_PINS);
                }
                let here = words.on(plan.rims());
                let faults = [FaultAsked::Pin(2), FaultAsked::Row(2)];
                let faults = faults.map(|asked| here.say_fault(&asked, &plan).to_string());
                let card = here.card_after(&script).into_iter();
                let card = card.chain(here.card_facts(&plan, None));
                let steps = script.steps().flat_map(|step| told(&words, &script, &step));
                let mut heard = 0;
                for text in steps.chain(faults).chain(card) {
                    for unfit in &unfit {
                        let found = found(unfit, &tag, &text);
                        assert_eq!(found, None, "{tag} {name} {detail:?}: {text}");
                    }
                    heard += 1;
                }
                assert!(heard > 60, "{tag} {name}: only {heard}");
            }
        }
    }
}

/// Every step with its number, its phase and what is spoken.
fn read_aloud(plan: &Plan, words: &Words) -> String {
    let script = script_of(plan, words.detail());
    let mut told = String::new();
    for (step, number) in script.steps().zip(1..) {
        let phase = words.show(plan.knot(), &step).phase;
        writeln!(told, "{number}. [{phase}] {}", words.say(&step)).unwrap();
    }
    told
}

#[test]
fn a_job_on_a_rail_a_knob_and_a_mat_is_told_as_it_was_read_through() {
    for (name, plan) in places() {
        if name == "taper" {
            continue;
        }
        for detail in [Detail::Brief, Detail::Plain] {
            for words in in_words(detail) {
                let file = format!("{name}-{}-{}.txt", words.tag(), detail.name());
                let path: PathBuf = ["tests/data/scripts", &file].iter().collect();
                let told = read_aloud(&plan, &words);
                if env::var_os("WRITE_SNAPSHOTS").is_some() {
                    fs::write(&path, &told).unwrap();
                }
                let read = fs::read_to_string(&path).unwrap_or_default();
                for (told, read) in told.lines().zip(read.lines()) {
                    assert_eq!(told, read, "{}", path.display());
                }
                assert_eq!(told, read, "{}: see `make snapshots`", path.display());
            }
        }
    }
}

/// The numbers that are told in a text.
fn numbers(text: &str) -> Vec<u32> {
    let numbers = text.split(|letter: char| !letter.is_ascii_digit());
    numbers.filter_map(|number| number.parse().ok()).collect()
}

/// What a tyer is told to set, what is in the bag and what is marked on the sheet are as many, row upon
/// row.
#[test]
fn all_marks_and_pins_of_all_rows_are_told_packed_and_marked() {
    for (name, plan) in places().into_iter().chain(nested_places()) {
        let rig = plan.rig().unwrap().unwrap();
        let (rows, bights) = (plan.knot().nested(), plan.knot().bights());
        let all = u32::from(2 * rows * bights);
        let script = Script::new(plan.clone(), AtOnce::default()).packing_one_by_one(true);
        let rigging = script.rigging().unwrap();
        let packed = rigging.items().iter().find_map(|item| match item {
            KitItem::Pins { count, .. } => Some(*count),
            KitItem::Tape { scraps, .. } if *scraps > 0 => Some(*scraps),
            _ => None,
        });
        assert_eq!(packed, Some(all), "{name}");
        let marked: usize = match &rig.layout {
            Layout::Board(board) => {
                let sheet = BoardSheet::new(board, 1.0, Hand::Right);
                let circles = sheet.outer.iter().chain(&sheet.inner);
                circles.map(|circle| circle.pins.len()).sum()
            }
            layout => {
                let tube = &plan.setup().unwrap().tube;
                let strips = StripSheet::new(tube, layout, rig.laid.rows_apart, Hand::Right);
                let strips = strips.top.iter().chain(&strips.bottom);
                // Of a plain knot no distance of rows is known, and there is one row at each rim.
                strips.map(|row| row.pins.len()).sum()
            }
        };
        assert_eq!(u32::try_from(marked), Ok(all), "{name}");
        for detail in Detail::ALL {
            for words in in_words(detail) {
                let tag = words.tag().to_string();
                let mut told = 0;
                for step in script.steps() {
                    let What::Rig(step_of) = &step.what else {
                        continue;
                    };
                    let said = words.say(&step).to_string();
                    let shown = words.show(plan.knot(), &step).to_string();
                    for task in &step_of.things {
                        match task {
                            Task::Board { .. } => {
                                let of_all = if rows == 1 { u32::from(bights) } else { all };
                                assert!(numbers(&said).contains(&of_all), "{tag} {name}: {said}");
                                told += all;
                                if rows > 1 {
                                    let circles = u32::from(2 * rows);
                                    assert!(numbers(&shown).contains(&circles), "{tag}: {shown}");
                                }
                            }
                            Task::Strip { pins, .. } => {
                                assert!(
                                    numbers(&said).contains(&u32::from(*pins)),
                                    "{tag}: {said}"
                                );
                                told += u32::from(*pins);
                            }
                            Task::Nest { pins, .. } => {
                                assert!(
                                    numbers(&said).contains(&u32::from(*pins)),
                                    "{tag}: {said}"
                                );
                                told += u32::from(2 * *pins);
                            }
                            _ => {}
                        }
                    }
                }
                assert_eq!(told, all, "{tag} {name}");
            }
        }
        // What is drawn out again, as many.
        if name == "mat" {
            for words in in_words(Detail::Brief) {
                let draw = steps(&plan).into_iter().find(|step| {
                    matches!(&step.what, What::Lift(lift) if lift.task == LiftTask::DrawPins)
                });
                let draw = draw.unwrap();
                let said = words.say(&draw).to_string();
                assert!(numbers(&said).contains(&all), "{said}");
            }
        }
    }
}

/// Nothing holds a bight at a mark but a scrap of tape: how it is put on is told in full where the
/// cord begins, in short at every mark, and it is peeled off in the end.
#[test]
fn at_a_mark_a_scrap_of_tape_holds_the_bight() {
    let scraps = [
        (
            "en",
            ["a scrap of masking tape", "Tape the bight at", "scraps"],
        ),
        (
            "de",
            ["ein Stück Kreppband", "Kleb die Bucht an", "Klebestücke"],
        ),
        ("es", ["un trocito de cinta", "Pégalo en", "trocitos"]),
        (
            "fr",
            ["un morceau de ruban", "Collez la ganse au", "morceaux"],
        ),
    ];
    let [(_, rail), (_, taper), (_, knob), (_, mat)] = places();
    for words in in_words(Detail::Plain) {
        let tag = words.tag().to_string();
        let (_, [full, short, off]) = scraps.iter().find(|(known, _)| *known == tag).unwrap();
        let said = |plan: &Plan, is_here: fn(&What) -> bool| -> Vec<String> {
            let here = steps(plan).into_iter().filter(|step| is_here(&step.what));
            here.map(|step| words.say(&step).to_string()).collect()
        };
        let begin: fn(&What) -> bool = |what| matches!(what, What::Begin(_));
        let lay: fn(&What) -> bool = |what| matches!(what, What::Lay(_));
        let marks: fn(&What) -> bool =
            |what| matches!(what, What::Lift(lift) if lift.task == LiftTask::Marks);
        for plan in [&rail, &taper, &knob] {
            let begun = said(plan, begin);
            assert_eq!(begun.iter().filter(|text| text.contains(full)).count(), 1);
            let held = said(plan, lay);
            let held = held.iter().filter(|text| text.contains(short)).count();
            // Every leg of the first pass but the last, which comes home.
            let legs = 2 * usize::from(plan.knot().bights());
            assert!(held >= legs - 1, "{tag}: {held} of {legs}");
            let off_again = said(plan, marks);
            assert!(off_again[0].contains(off), "{off_again:?}");
        }
        for text in [begin, lay].into_iter().flat_map(|of| said(&mat, of)) {
            assert!(!text.contains(full) && !text.contains(short), "{text}");
        }
    }
}

/// A scrap is peeled off and pressed on again for every cord that comes to lie at its mark: it is said where a pass
/// begins and stands at each of its marks, of all cords and not of two.
#[test]
fn the_scrap_at_a_mark_goes_over_all_cords_again() {
    let told = [
        ("en", ["over all the cords there", "tape over all"]),
        ("de", ["wieder über alle Schnüre", "Band über alle"]),
        ("es", ["sobre todos los cabos", "cinta sobre todos"]),
        ("fr", ["sur tous les cordons", "ruban par-dessus"]),
    ];
    let rail = in_place(["3", "4", "3"], Ground::Round(mm(60.0)), 4.0);
    let mat = in_place(
        ["3", "5", "3"],
        Ground::Flat {
            outer: mm(150.0),
            hole: Some(mm(60.0)),
        },
        3.0,
    );
    for words in in_words(Detail::Plain) {
        let tag = words.tag().to_string();
        let (_, [whole, short]) = told.iter().find(|(known, _)| *known == tag).unwrap();
        let count = |plan: &Plan, tell: &dyn Fn(&Step) -> String, text: &str| {
            let steps = steps(plan);
            steps
                .iter()
                .filter(|step| tell(step).contains(text))
                .count()
        };
        let said = |step: &Step| words.say(step).to_string();
        assert_eq!(count(&rail, &said, whole), 2, "{tag}");
        assert_eq!(count(&mat, &said, whole), 0, "{tag}");
        // Eight marks in each of two passes, but where a pass comes home.
        let shown = |plan: &Plan| {
            let here = words.on(plan.rims());
            let knot = plan.knot();
            count(plan, &|step| here.show(knot, step).notes.join(" "), short)
        };
        assert_eq!([&rail, &mat].map(shown), [2 * (8 - 1), 0], "{tag}");
    }
}

/// A card that lies on the bench for weeks says what it was planned for.
#[test]
fn a_card_says_what_is_tied_on_what() {
    let words = Words::english();
    let on_a_tube = Setup {
        finish: Some(Finish {
            around: Ground::Round(mm(32.0)),
            open_to: None,
        }),
        ..Setup::new(Tube::plain(mm(40.0)), Cord::new(mm(3.0)))
    };
    let mut plans: Vec<Plan> = places().map(|(_, plan)| plan).into();
    plans.push(plan(["5", "7", "1"], on_a_tube));
    let said = plans
        .iter()
        .map(|plan| words.on(plan.rims()).card_facts(plan, None).remove(0));
    assert!(said.map(|said| said.replace('\u{a0}', " ")).eq([
        "In place on an object 42 mm across, with 3 mm cord.",
        "In place on a taper from 34 mm to 28 mm, with 3 mm cord.",
        "In place on a ball 38 mm across, with 3 mm cord.",
        "Flat on a board, 150 mm from edge to edge, with 6 mm cord.",
        "On a tube 40 mm across, for an object 32 mm across, with 3 mm cord.",
    ]));
}

/// What comes snug first does so until the last time, and only that time what was left loose.
#[test]
fn what_is_drawn_up_last_is_told_the_last_time() {
    let words = Words::english();
    let [(_, _), (_, taper), (_, knob), (_, mat)] = places();
    for (plan, loose, last) in [
        (&taper, "bights at the thin end loose", "thin end in too"),
        (&knob, "bights at both rims loose", "both rims in too"),
        (&mat, "bights round the hole loose", "round the hole in too"),
    ] {
        let script = script_of(plan, Detail::Plain);
        let rounds = script.fair_rounds();
        let fair = script.steps().filter_map(|step| match &step.what {
            What::Fair(fair) => Some((fair.round, words.say(&step).to_string())),
            _ => None,
        });
        for (round, said) in fair {
            assert_eq!(said.contains(loose), round == 1, "{round}: {said}");
            assert_eq!(said.contains(last), round == rounds, "{round}: {said}");
        }
    }
}

/// A broad knot holds an end under two crossings, but no end is sent farther than it reaches.
#[test]
fn an_end_is_held_twice_where_it_is_long_enough() {
    let held = |tail: f64| -> Vec<usize> {
        let mut setup = Setup::new(Tube::plain(mm(40.0)), Cord::new(mm(3.0)));
        setup.allowances.standing_tail = mm(tail);
        setup.finish = Some(Finish {
            around: Ground::Round(mm(32.0)),
            open_to: None,
        });
        let tucks = steps(&plan(["5", "7", "2"], setup)).into_iter();
        let tucks = tucks.filter_map(|step| match step.what {
            What::Finish(finish) => match finish.task {
                FinishTask::Tuck(tuck) => Some(tuck),
                _ => None,
            },
            _ => None,
        });
        let unders = |tuck: marlinspeak::guide::Tuck| {
            let crossings = tuck.crossings.iter();
            crossings.filter(|crossing| !crossing.over).count()
        };
        tucks.map(unders).collect()
    };
    assert_eq!(held(150.0), [2, 2]);
    assert_eq!(held(40.0), [1, 1]);
}

/// Whoever chose a knot opened to a length must not draw it as tight as it goes.
#[test]
fn how_wide_an_open_knot_is_left_is_told_and_stands_on_its_card() {
    let words = Words::english();
    let left = |open_to: Option<f64>| {
        let setup = Setup {
            finish: Some(Finish {
                around: Ground::Round(mm(32.0)),
                open_to: open_to.map(mm),
            }),
            ..Setup::new(Tube::plain(mm(40.0)), Cord::new(mm(3.0)))
        };
        let plan = plan(["5", "7", "2"], setup);
        assert!(matches!(plan.rig(), Ok(Some(_))), "{:?}", plan.rig());
        let script = script_of(&plan, Detail::Brief);
        let fair = script
            .steps()
            .filter(|step| matches!(step.what, What::Fair(_)));
        let mut told: Vec<String> = fair.map(|step| words.say(&step).to_string()).collect();
        told.push(words.card_after(&script).join(" "));
        let stops = told
            .iter()
            .filter(|told| told.contains("Stop when the knot is 50"));
        (
            stops.count(),
            told.iter()
                .filter(|told| told.contains("Stop when"))
                .count(),
        )
    };
    // The first and the last time, and on the card.
    assert_eq!(left(Some(50.0)), (3, 3));
    assert_eq!(left(None), (0, 0));
}

/// Which end of a taper is the thick one is told where its tapes are stuck on and where it is drawn up, and
/// off a tube where it is slipped on.
#[test]
fn the_thick_end_of_a_taper_is_told() {
    let words = Words::english();
    let taper = |bottom, top| Ground::Taper {
        bottom: mm(bottom),
        top: mm(top),
        over: mm(120.0),
    };
    for (ground, ends, fairing, rim) in [
        (taper(34.0, 28.0), ["thick", "thin"], "near end", "bottom"),
        (taper(28.0, 34.0), ["thin", "thick"], "far end", "top"),
    ] {
        let script = script_of(&in_place(["5", "7", "1"], ground, 3.0), Detail::Plain);
        let script = script.packing_one_by_one(true);
        let said = |step: Step| words.say(&step).to_string();
        let strips = script.steps().filter(|step| {
            matches!(&step.what, What::Rig(rig) if matches!(rig.things[0], Task::Strip { .. }))
        });
        let strips: Vec<String> = strips.map(said).collect();
        for (said, end) in strips.iter().zip(ends) {
            assert!(said.contains(&format!("This is the {end} end.")), "{said}");
        }
        let fair = script
            .steps()
            .find(|step| matches!(&step.what, What::Fair(_)));
        let fair = said(fair.unwrap());
        assert!(
            fair.contains(&format!("only the thick end comes snug, at the {fairing}")),
            "{fair}"
        );
        let on_a_tube = Setup {
            finish: Some(Finish {
                around: ground,
                open_to: None,
            }),
            ..Setup::new(Tube::plain(mm(40.0)), Cord::new(mm(3.0)))
        };
        let slip = steps(&plan(["5", "7", "1"], on_a_tube))
            .into_iter()
            .find(|step| matches!(&step.what, What::Lift(lift) if lift.task == LiftTask::SlipOff));
        let slip = said(slip.unwrap());
        assert!(
            slip.contains(&format!("The {rim} rim goes to the thick end.")),
            "{slip}"
        );
    }
}

fn steps(plan: &Plan) -> Vec<Step> {
    Script::new(plan.clone(), AtOnce::WholeLeg)
        .steps()
        .collect()
}

fn lifts(plan: &Plan) -> Vec<LiftTask> {
    let tasks = steps(plan).into_iter().filter_map(|step| match step.what {
        What::Lift(lift) => Some(lift.task),
        _ => None,
    });
    tasks.collect()
}

#[test]
fn in_place_nothing_is_lifted_and_on_a_ball_the_knot_is_slipped_over() {
    let [(_, rail), (_, taper), (_, knob), (_, mat)] = places();
    for plan in [&rail, &taper, &knob] {
        assert_eq!(lifts(plan), [LiftTask::Secure, LiftTask::Marks]);
        let pins = steps(plan)
            .iter()
            .filter(|step| step.cautions().contains(&Caution::Pins))
            .count();
        assert_eq!(pins, 0, "marks hurt nobody");
    }
    assert_eq!(lifts(&mat), [LiftTask::Secure, LiftTask::DrawPins]);
    let is_pins = |step: &Step| step.cautions_to_say().contains(&Caution::Pins);
    assert!(steps(&mat).iter().any(is_pins), "T-pins stand up");
    let on_a_tube = Setup {
        finish: Some(Finish {
            around: Ground::Ball(mm(38.0)),
            open_to: None,
        }),
        ..Setup::new(Tube::plain(mm(40.0)), Cord::new(mm(3.0)))
    };
    let ball = plan(["5", "6", "1"], on_a_tube);
    assert_eq!(lifts(&ball).last(), Some(&LiftTask::OverBall));
}

#[test]
fn a_mat_is_pressed_and_sewn_with_the_needle_minded() {
    let [.., (_, mat)] = places();
    let press = steps(&mat).into_iter().find(
        |step| matches!(&step.what, What::Finish(finish) if finish.task == FinishTask::Press),
    );
    let press = press.unwrap();
    assert_eq!(press.cautions_to_say(), [Caution::Needle]);
    let said = Words::english().say(&press).to_string();
    assert!(said.contains("flat") && said.contains("glue"), "{said}");
    let [(_, rail), ..] = places();
    let is_press = |step: &Step| matches!(&step.what, What::Finish(finish) if finish.task == FinishTask::Press);
    assert!(!steps(&rail).iter().any(is_press));
}

/// Whoever learns hears of it at every tuck, in every day's work the first tucks of a tie and of a pass
/// are told, and in brief it is asked for.
#[test]
fn what_is_drawn_through_is_told_as_often_as_it_helps() {
    let [(_, rail), ..] = places();
    let mut tucks = 0;
    let mut told = [0; 3];
    for step in steps(&rail) {
        let What::Lay(lay) = &step.what else { continue };
        let is_tuck = lay.crossings.iter().any(|crossing| !crossing.over);
        assert_eq!(lay.draw.is_some(), is_tuck);
        tucks += usize::from(is_tuck);
        for (detail, told) in Detail::ALL.into_iter().zip(&mut told) {
            let mut words = Words::english();
            words.set_detail(detail);
            let step = Step {
                is_taught: true,
                ..step.clone()
            };
            *told += usize::from(words.say(&step).to_string().contains("Draw the whole cord"));
        }
    }
    assert_eq!(told, [0, 3, tucks]);
}
