//! Kit and rig steps in the script, and the setup in the document of a tie.

use std::time::Duration;

use marlinspeak::bench::{Cord, Counts, Finish, KitItem, Layout, STANDARD_CORDS, Thread, Tube};
use marlinspeak::guide::{AtOnce, Caution, Place, Plan, Script, Setup, Task, What};
use marlinspeak::session::{Effect, InHand, Session, Wishes};
use marlinspeak::settings::Settings;
use marlinspeak::shelf::{Tie, read_tie, write_tie};
use marlinspeak::words::Words;
use serde_json::{Value, json};

use crate::{document, mm, printed, ringed};

/// A doubled 5 lead 6 bight on a tube of the loft, finished on a tiller 30 mm thick.
fn tiller() -> Setup {
    let mut tube = ringed(40.0, &[12, 16]);
    tube.pin_length = Some(mm(9.5));
    tube.thread = Some(Thread::parse("#8").unwrap());
    Setup {
        finish: Some(Finish {
            around: mm(30.0).into(),
            open_to: Some(mm(40.0)),
        }),
        ..Setup::new(tube, Cord::new(mm(4.0)).named("blue"))
    }
}

fn plan(leads: &str, bights: &str, setup: Setup) -> Plan {
    Plan::read(leads, bights, "2", "1")
        .unwrap()
        .with_setup(Some(setup))
}

#[test]
fn every_number_of_the_rig_steps_is_that_of_the_rig() {
    for (leads, bights) in [("5", "6"), ("6", "4"), ("5", "4"), ("4", "6"), ("5", "16")] {
        let setup = Setup {
            tube: ringed(80.0, &[12, 16]),
            ..tiller()
        };
        // As many bights as that do not go round a thin object.
        let setup = Setup {
            finish: Some(Finish {
                around: mm(66.0).into(),
                open_to: None,
            }),
            ..setup
        };
        let plan = plan(leads, bights, setup);
        let setup = plan.setup().cloned().unwrap();
        let rig = setup.rig(Counts::from(plan.laying())).unwrap();
        let words = Words::english();
        let script = Script::new(plan, AtOnce::default()).packing_one_by_one(true);
        let Layout::Rings {
            bottom,
            top,
            turn_half_hole,
            ..
        } = &rig.layout
        else {
            panic!("the tube has rings");
        };
        let mut pinned = Vec::new();
        let mut kit = Vec::new();
        for place in script.places() {
            let step = script.step(place).unwrap();
            let say = words.say(&step).to_string();
            match step.what {
                What::Kit(kit_step) => kit.extend(kit_step.things),
                What::Rig(mut step) => match step.things.pop().unwrap() {
                    Task::Row { row, holes, .. } => {
                        assert_eq!((row, holes), (bottom.row, bottom.holes_in_row));
                        assert!(
                            say.contains(&format!("use row {row}, the one with {holes} holes"))
                        );
                    }
                    Task::Pins { holes, length, .. } => {
                        assert_eq!(length, rig.pin_length);
                        if holes.len() <= 6 {
                            let (last, most) = holes.split_last().unwrap();
                            let most: Vec<String> = most.iter().map(ToString::to_string).collect();
                            let told = format!("holes {} and {last}.", most.join(", "));
                            assert!(say.contains(&told), "{say}");
                        } else {
                            assert!(say.contains(&format!("from hole {} on", holes[0])), "{say}");
                        }
                        pinned.push(holes);
                    }
                    Task::Space {
                        spacing,
                        turn_half_hole: half,
                    } => {
                        assert_eq!((spacing, half), (rig.laid.ring_spacing, *turn_half_hole));
                        assert_eq!(say.contains("half a hole to the right"), half, "{say}");
                        let tenths = (spacing.get() * 10.0).round() / 10.0;
                        assert!(say.contains(&format!("stands {tenths} millimetres above")));
                    }
                    Task::Nest { .. } => panic!("no bights are nested here"),
                    Task::Number { pins, rows, tape } => {
                        assert_eq!((pins, rows, tape), (rig.counts.bights(), 1, rig.tape));
                    }
                    Task::Cut { pieces, length, .. } => {
                        let strands = rig.counts.strands();
                        assert_eq!((pieces, length), (strands, rig.cord.per_strand()));
                    }
                    Task::Heed(caution) => assert!(rig.cautions.contains(&caution)),
                    Task::Strip { .. } | Task::Board { .. } => panic!("the tube has rings"),
                },
                _ => break,
            }
        }
        assert_eq!(pinned, [bottom.holes.clone(), top.holes.clone()]);
        assert_eq!(kit, setup.kit(&rig));
    }
}

#[test]
fn the_rig_steps_speak_as_a_person_does() {
    let steps: Vec<String> = document(&[
        "steps", "--leads", "5", "--bights", "4", "--passes", "2", "--tube", "40", "--rows", "12",
        "--cord", "4", "--thread", "#8", "--hand", "left", "--json",
    ])["steps"]
        .as_array()
        .unwrap()
        .iter()
        .take_while(|step| step["kind"] != "begin")
        .map(|step| step["say"].as_str().unwrap().to_owned())
        .collect();
    assert_eq!(
        steps[0],
        "You will need, 1 to 3 of 11. Tube, 40 millimetres across. 8 pins, half an inch long, thread \
         number 8. The hex key for the pins, 5 sixty-fourths of an inch. Press next when you have \
         them. Fewer at once names them one by one. Keep cords, pins and small parts away from small \
         children, and never leave a cord round a neck."
    );
    assert_eq!(
        steps[3],
        "Mind the pins: they stick out, so keep eyes and palms clear of them. Rigging, steps 1 and 2 \
         of 6. Each ring has one row of 12 holes. Choose a hole of the bottom ring as hole 1 and \
         count the holes from it to the left, and the same on the top ring. Set 4 pins in the \
         bottom ring, in every third hole: holes 1, 4, 7 and 10. Bottom pin 1 stands in hole 1. Use \
         pins half an inch long and the hex key, 5 sixty-fourths of an inch. Turn each pin in by \
         hand until it bears on the tube."
    );
    assert!(steps[4].contains(
        "Turn it until its hole 1 stands half a hole to the left of bottom hole 1, half way to \
         bottom hole 2. Set 4 pins in the top ring, in every third hole: holes 2, 5, 8 and 11. Top \
         pin 1 stands half way between bottom pins 1 and 2"
    ));
    assert_eq!(steps.len(), 3 + 3);
}

#[test]
fn rig_steps_are_steps_like_any_other() {
    let setup = ["--tube", "40", "--rows", "12", "--cord", "4"];
    let knot = ["steps", "--leads", "5", "--bights", "6", "--json"];
    let with = document(&[&knot[..], &setup].concat());
    let without = document(&knot);
    let (with, without) = (
        with["steps"].as_array().unwrap(),
        without["steps"].as_array().unwrap(),
    );
    let before = with
        .iter()
        .position(|step| step["kind"] == "begin")
        .unwrap();
    for (index, step) in with.iter().enumerate() {
        assert_eq!(step["number"], index + 1);
        assert!(!step["say"].as_str().unwrap().is_empty());
        assert!(!step["show"].as_str().unwrap().is_empty());
        let kind = step["kind"].as_str().unwrap();
        assert_eq!(matches!(kind, "kit" | "rig"), index < before, "{kind}");
    }
    assert_eq!(with[0]["things"][0]["what"], "tube");
    // What a page begins with stands beside the step too, as when each thing had a step of its own.
    assert_eq!(with[0]["what"], "tube");
    assert_eq!(with[0]["diameter_mm"], with[0]["things"][0]["diameter_mm"]);
    assert_eq!(with[before - 1]["things"][0]["what"], "number");
    // The tie itself is told as ever, until it is lifted: what is known of slack comes in then.
    let tie = without
        .iter()
        .position(|step| step["kind"] == "lift")
        .unwrap();
    assert!(tie > 12);
    for (told, ever) in with[before..].iter().zip(&without[..tie]) {
        assert_eq!(told["say"], ever["say"]);
    }
    let text = printed(&[&knot[..5], &setup].concat());
    assert!(text.contains("What you need, 1 to 3 of 10"), "{text}");
}

#[test]
fn next_and_back_go_through_bag_rig_and_knot_alike() {
    let script = Script::new(plan("5", "6", tiller()), AtOnce::default());
    let places: Vec<_> = script.places().collect();
    for pair in places.windows(2) {
        assert_eq!(script.back(pair[1]), Some(pair[0]));
        assert_eq!(script.settle(pair[0]), pair[0]);
    }
    assert_eq!(script.back(places[0]), None);
    assert_eq!(script.progress(places[0]).laid, 0);
    // A tube that does not take the knot leaves the knot itself.
    let setup = Setup {
        tube: ringed(40.0, &[16]),
        ..tiller()
    };
    let bare = Script::new(plan("5", "6", setup), AtOnce::default());
    assert_eq!(bare.settle(places[0]), bare.first());
    assert!(matches!(
        bare.step(bare.first()).unwrap().what,
        What::Begin(_)
    ));
}

/// Each caution once, where it can still help: small parts when the bag is packed, blades with the first
/// of them, pulling when it begins; and a load where the knot is chosen.
#[test]
fn what_can_hurt_is_said_before_it_does() {
    let script = Script::new(plan("5", "6", tiller()), AtOnce::default());
    let said: Vec<(Place, Vec<Caution>)> = script
        .steps()
        .map(|step| (step.place, step.cautions_to_say()))
        .filter(|(_, cautions)| !cautions.is_empty())
        .collect();
    let first = |wanted: Caution| {
        let found = said.iter().find(|(_, cautions)| cautions.contains(&wanted));
        found.map(|(place, _)| *place)
    };
    assert_eq!(first(Caution::Children), Some(script.first()));
    assert!(matches!(first(Caution::Blades), Some(Place::Kit { .. })));
    assert!(matches!(first(Caution::Pins), Some(Place::Rig { .. })));
    assert!(matches!(
        first(Caution::Pull),
        Some(Place::Fair { round: 1, .. })
    ));
    let times = |wanted: Caution| {
        said.iter()
            .filter(|(_, cautions)| cautions.contains(&wanted))
            .count()
    };
    assert_eq!((times(Caution::Pull), times(Caution::Heat)), (1, 1));
    for tag in Words::known() {
        let words = Words::load(Some(&tag.to_string())).unwrap();
        let chosen = words.choice(&script);
        assert!(
            chosen.ends_with(&words.choice_caution().to_string()),
            "{chosen}"
        );
    }
}

#[test]
fn cautions_come_before_the_pins() {
    let script = Script::new(plan("5", "6", tiller()), AtOnce::default());
    assert_eq!(script.rig().unwrap().cautions.len(), 2);
    let say: Vec<String> = script
        .places()
        .map(|place| Words::english().say(&script.step(place).unwrap()).into())
        .collect();
    assert_eq!(
        say[3],
        "Rigging, step 1 of 8. Take care: the pins you named, 9.5 millimetres long, are too \
         short for this knot. They hold 1 pass. Use pins of 11 millimetres or more."
    );
}

#[test]
fn a_setup_survives_saving() {
    let setups = [
        tiller(),
        Setup::new(Tube::plain(mm(76.2)), Cord::new(mm(1.6))),
        Setup::new(Tube::plain(mm(40.0)), STANDARD_CORDS[3].cord().unwrap()),
        Setup {
            finish: Some(Finish {
                around: mm(29.123_456_789).into(),
                open_to: None,
            }),
            ..tiller()
        },
    ];
    for setup in setups {
        let plan = plan("5", "6", setup);
        let first = Script::new(plan.clone(), AtOnce::default()).first();
        let tie = Tie::begin(plan.clone(), first);
        let read = read_tie(&write_tie(&tie).unwrap()).unwrap();
        assert_eq!(read.plan, plan);
        assert_eq!(read.place, first);
        // With cords of a name, which begin at pins of their own.
        let named = plan
            .with_cords(vec!["white".to_owned(), "red".to_owned()])
            .unwrap();
        let tie = Tie::begin(named.clone(), first);
        assert_eq!(read_tie(&write_tie(&tie).unwrap()).unwrap().plan, named);
    }
}

#[test]
fn a_section_that_no_tube_can_have_is_told_as_damage() {
    let plan = plan("5", "6", tiller());
    let tie = Tie::begin(
        plan.clone(),
        Script::new(plan.clone(), AtOnce::default()).first(),
    );
    let good: Value = serde_json::from_slice(&write_tie(&tie).unwrap()).unwrap();
    for (section, field, value, why) in [
        ("tube", "diameter", json!(-3), "`tube.diameter`"),
        ("tube", "rows", json!([0]), "`tube.rows`"),
        ("tube", "thread", json!("M7"), "`tube.thread`"),
        ("cord", "diameter", json!("thick"), "`cord.diameter`"),
        ("object", "open_to", json!(0), "`object.open_to`"),
        ("correction", "length", json!(9), "`correction`"),
        ("correction", "give", json!(9), "`correction`"),
        ("cord", "give", json!(9), "`cord.give`"),
        ("tube", "ring_width", json!(-1), "`tube.ring_width`"),
        ("tube", "length", json!(0), "`tube.length`"),
    ] {
        let mut bad = good.clone();
        bad[section][field] = value;
        // By hand, and so without a checksum.
        bad.as_object_mut().unwrap().remove("checksum");
        let fault = read_tie(bad.to_string().as_bytes()).unwrap_err();
        assert!(fault.to_string().contains(why), "{fault}");
    }
}

#[test]
fn the_bag_names_the_cord() {
    let plan = plan("5", "6", tiller());
    let rig = tiller().rig(Counts::from(plan.laying())).unwrap();
    let kit = tiller().kit(&rig);
    let is_blue = |item: &KitItem| matches!(item, KitItem::Cord { cord, .. } if cord.name.as_deref() == Some("blue"));
    assert!(kit.iter().any(is_blue));
    let script = Script::new(plan, AtOnce::default());
    let shown: Vec<String> = script
        .places()
        .map(|place| {
            let step = script.step(place).unwrap();
            Words::english()
                .show(script.plan().knot(), &step)
                .to_string()
        })
        .collect();
    assert!(
        shown.iter().any(|shown| shown.contains("blue, 4 mm thick")),
        "{shown:?}"
    );
}

/// Every cord to cut, as the script tells it: name, pieces, length.
fn cuts(plan: Plan) -> Vec<(Option<String>, u16, f64)> {
    let script = Script::new(plan, AtOnce::default());
    let tasks = script
        .places()
        .filter_map(|place| match script.step(place)?.what {
            What::Rig(step) => Some(step.things),
            _ => None,
        });
    let cuts = tasks.flatten().filter_map(|task| match task {
        Task::Cut {
            cord,
            pieces,
            length,
        } => Some((cord, pieces, length.get())),
        _ => None,
    });
    cuts.collect()
}

#[test]
fn each_cord_is_cut_by_its_name() {
    let named = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect();
    // A second colour follows: two cords of one strand, a pass each.
    let by_pass = plan("5", "6", tiller())
        .with_cords(named(&["white", "red"]))
        .unwrap();
    let rig = tiller().rig(Counts::new(5, 6, 2).unwrap()).unwrap();
    let lengths: Vec<f64> = rig
        .cord
        .pieces(&[1, 1])
        .unwrap()
        .iter()
        .map(|piece| piece.length.get())
        .collect();
    let name = |name: &str| Some(name.to_owned());
    assert_eq!(
        cuts(by_pass),
        [(name("white"), 1, lengths[0]), (name("red"), 1, lengths[1])]
    );
    // Two strands, a cord each.
    let by_strand = plan("4", "6", tiller())
        .with_cords(named(&["white", "red"]))
        .unwrap();
    let rig = tiller().rig(Counts::new(4, 6, 2).unwrap()).unwrap();
    let each = rig.cord.per_strand().get();
    assert_eq!(
        cuts(by_strand),
        [(name("white"), 1, each), (name("red"), 1, each)]
    );
    assert_eq!(cuts(plan("4", "6", tiller())), [(name("blue"), 2, each)]);
    // Two strands in two passes, a cord for each pass of each.
    let pieces = rig.cord.pieces(&[1, 1]).unwrap();
    let lengths: Vec<f64> = pieces.iter().map(|piece| piece.length.get()).collect();
    let all = plan("4", "6", tiller())
        .with_cords(named(&["white", "red", "blue", "green"]))
        .unwrap();
    assert_eq!(
        cuts(all),
        [
            (name("white"), 1, lengths[0]),
            (name("red"), 1, lengths[1]),
            (name("blue"), 1, lengths[0]),
            (name("green"), 1, lengths[1]),
        ]
    );
    // A strand that goes on with the cord it has is one cord.
    let three = plan("4", "6", tiller())
        .with_cords(named(&["white", "white", "blue", "green"]))
        .unwrap();
    assert_eq!(
        cuts(three),
        [
            (name("white"), 1, each),
            (name("blue"), 1, lengths[0]),
            (name("green"), 1, lengths[1]),
        ]
    );
}

#[test]
fn every_step_tells_the_cord_of_its_strand_and_pass() {
    let names = ["white", "red", "blue", "green"];
    let plan = plan("4", "6", tiller())
        .with_cords(names.map(str::to_owned).to_vec())
        .unwrap();
    let script = Script::new(plan, AtOnce::WholeLeg);
    let mut begun = Vec::new();
    for place in script.places() {
        let step = script.step(place).unwrap();
        if let Place::Begin { pass, strand } = place {
            let line = Words::english()
                .show(script.plan().knot(), &step)
                .to_string();
            let told: Vec<&str> = names
                .into_iter()
                .filter(|name| line.contains(name))
                .collect();
            begun.push((pass, strand, told));
        }
    }
    // Laid pass by pass.
    assert_eq!(
        begun,
        [
            (1, 1, vec!["white"]),
            (1, 2, vec!["blue"]),
            (2, 1, vec!["red"]),
            (2, 2, vec!["green"]),
        ]
    );
}

#[test]
fn the_bag_and_the_rigging_fill_a_bar_each() {
    let script = Script::new(plan("5", "6", tiller()), AtOnce::default());
    let mut seen = [0_u32; 2];
    for place in script.places() {
        let (part, of, things) = match script.step(place).unwrap().what {
            What::Kit(kit) => (0, kit.items, kit.things.len()),
            What::Rig(step) => (1, step.tasks, step.things.len()),
            _ => break,
        };
        let things = u32::try_from(things).unwrap();
        let phase_progress = script.phase_progress(place);
        assert_eq!(
            (phase_progress.done, phase_progress.of),
            (seen[part], of.into())
        );
        seen[part] += things;
    }
    assert!(seen[0] > 1 && seen[1] > 1, "{seen:?}");
}

/// A document may come from a day when the rules were others, or from a hand.
#[test]
fn a_tube_that_does_not_take_the_knot_is_told_of_and_the_knot_can_still_be_tied() {
    let plan = plan("5", "7", tiller());
    let tie = Tie::begin(plan.clone(), Place::begin(1, 1));
    let read = read_tie(&write_tie(&tie).unwrap()).unwrap();
    assert_eq!(read.plan, plan);
    let (words, settings) = (Words::english(), Settings::default());
    let mut session = Session::new(words, settings, Wishes::default());
    session.take_in_hand(InHand::new(None, read), Duration::ZERO);
    let why = "No row of this tube (12, 16 holes) can be shared evenly among 7 bights";
    let notices = session.notices();
    assert!(notices[0].starts_with(why), "{notices:?}");
    let said = session
        .effects()
        .into_iter()
        .find_map(|effect| match effect {
            Effect::Say(said) => Some(said.to_string()),
            _ => None,
        });
    assert!(said.unwrap().starts_with(why));
    let script = Script::new(plan, AtOnce::default());
    assert_eq!(script.first(), Place::begin(1, 1));
}
