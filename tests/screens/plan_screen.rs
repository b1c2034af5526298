//! The plan screen and the rig steps, worked by presses.
#![cfg(feature = "window")]

use crate::hands;

use std::path::Path;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::Message;
use marlinspeak::bench::{
    Cord, Counts, FitFilter, FitSection, FitWish, Give, Millimetres, Object, Tube, fit,
};
use marlinspeak::guide::{Phase, Plan, SetupField};
use marlinspeak::knot::{Heading, Rim, Weave};
use marlinspeak::shelf::PresetsFile;
use tempfile::TempDir;

const TAB: Named = Named::Tab;
const SPACE: Named = Named::Space;
const DOWN: Named = Named::ArrowDown;
const UP: Named = Named::ArrowUp;

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

fn press(hands: &mut Hands, key: Named) {
    hands.press(Key::Named(key));
}

fn type_in(hands: &mut Hands, field: SetupField, text: &str) {
    // As a hand does: one letter after the other.
    for end in 1..=text.len() {
        hands.tell(Message::planned(field, &text[..end]));
    }
}

/// The plan screen, by the key from the start screen.
fn open(folder: &Path) -> Hands {
    let mut hands = Hands::open(folder, None);
    hands.press(Key::Character("p".into()));
    hands
}

/// A tiller in the loft: 30 mm thick, 30 mm of it to be covered with 4 mm cord.
fn tiller(hands: &mut Hands) {
    type_in(hands, SetupField::Object, "30");
    type_in(hands, SetupField::Cover, "3cm");
    type_in(hands, SetupField::Cord, "III");
}

/// The counts that `fit` names for the tiller, best first.
fn answers(tube: Option<&Tube>) -> Vec<Counts> {
    let wish = FitWish {
        tube,
        ..FitWish::new(Object::new(mm(30.0), mm(30.0)), mm(4.0))
    };
    fit(&wish).iter().map(|answer| answer.counts).collect()
}

fn named(counts: Counts) -> String {
    let passes = ["single", "doubled", "tripled", "4 passes"];
    let (leads, bights) = (counts.leads(), counts.bights());
    let passes = passes[usize::from(counts.passes()) - 1];
    format!("{leads} lead {bights} bight, {passes}")
}

#[test]
fn the_screen_says_itself_and_asks_for_what_it_needs() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    assert_eq!(
        hands.last_said(),
        "Plan. Choose what you cover and whether the knot can slide on, then type how thick it is, \
         how much of it to cover, and the cord. Tab moves on, the arrows up and down choose a knot, Enter takes it. The knot only decorates: never let it \
         hold a person or a load, and keep cord and small parts from small children."
    );
    assert!(hands.sees("How thick is the object? Measure across it, or round it with a tape."));
    type_in(&mut hands, SetupField::Object, "30");
    assert!(hands.sees("How much of it is to be covered?"));
    press(&mut hands, TAB);
    assert_eq!(hands.last_said(), "Length to cover.");
    press(&mut hands, DOWN);
    assert_eq!(hands.last_said(), "How much of it is to be covered?");
}

#[test]
fn knots_are_found_while_typing() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    let best = answers(None);
    assert!(hands.sees(&named(best[0])) && hands.sees(&named(best[1])));
    // Another tube, other knots; only those it takes.
    type_in(&mut hands, SetupField::Tube, "40");
    type_in(&mut hands, SetupField::Rows, "12");
    let tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    let best = answers(Some(&tube));
    assert!(hands.sees(&named(best[0])) && hands.sees(&named(best[1])));
    assert!(best.iter().all(|counts| 12 % counts.bights() == 0));
}

#[test]
fn letters_that_come_before_the_focus_are_not_lost() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    for (keys, is_last) in [("31", false), ("30", false), ("iii", true)] {
        for key in keys.chars() {
            hands.press(Key::Character(key.to_string().into()));
        }
        if keys == "31" {
            press(&mut hands, Named::Backspace);
            hands.press(Key::Character("0".into()));
        }
        if !is_last {
            press(&mut hands, TAB);
        }
    }
    assert!(hands.sees(&named(answers(None)[0])));
}

#[test]
fn the_arrows_choose_and_say_the_knot() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    let best = answers(None);
    press(&mut hands, DOWN);
    let said = hands.last_said();
    let of = format!("Knot 2 of {}: {} lead, ", best.len(), best[1].leads());
    assert!(said.starts_with(&of), "{said}");
    press(&mut hands, UP);
    press(&mut hands, UP);
    assert!(hands.last_said().starts_with("Knot 1 of "));
    for _ in 0..best.len() + 5 {
        press(&mut hands, DOWN);
    }
    let of = format!("Knot {} of {}: ", best.len(), best.len());
    assert!(hands.last_said().starts_with(&of));
    // The chosen one is in sight however far down it is.
    assert!(hands.sees(&named(best[best.len() - 1])));
}

#[test]
fn each_section_has_its_heading_and_what_misses_the_length_says_so() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    let answers = fit(&tiller_wish());
    assert_eq!(answers[0].section, FitSection::Doubled);
    assert!(hands.sees("Doubled") && !hands.sees("A little shorter or longer than 30 mm"));
    press(&mut hands, DOWN);
    assert!(!hands.last_said().contains("not just as asked"));
    let near = answers
        .iter()
        .position(|answer| answer.section == FitSection::Near);
    for _ in 1..near.unwrap() {
        press(&mut hands, DOWN);
    }
    assert!(hands.sees("A little shorter or longer than 30 mm"));
    assert!(hands.last_said().contains(", not just as asked, and hides"));
}

#[test]
fn what_is_wrong_stands_beside_its_field_and_is_said() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    for (field, text, sentence) in [
        (
            SetupField::Cord,
            "II",
            "Cord II has no published thickness: measure yours and give that, such as 4mm.",
        ),
        (
            SetupField::Cover,
            "0",
            "The length to be covered must be more than zero and “0” is not: give a length \
             such as 30mm.",
        ),
        (
            SetupField::Rows,
            "12",
            "Rows belong to a tube and none is given: add its diameter, such as 45mm.",
        ),
    ] {
        let mut hands = open(folder.path());
        tiller(&mut hands);
        type_in(&mut hands, field, text);
        assert!(hands.sees(sentence), "{sentence}");
        assert!(
            !hands.said().contains(&sentence.to_owned()),
            "said while typing"
        );
        press(&mut hands, TAB);
        assert!(hands.last_said().starts_with(sentence));
        press(&mut hands, Named::Enter);
        assert_eq!(hands.last_said(), sentence);
    }
    type_in(&mut hands, SetupField::Cover, "3mm");
    assert!(!hands.sees(&named(answers(None)[0])));
    press(&mut hands, Named::Enter);
    assert!(
        hands
            .last_said()
            .starts_with("Nothing fits: with this cord the narrowest knot is")
    );
}

#[test]
fn enter_takes_the_knot_and_leads_through_the_rig_first() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    type_in(&mut hands, SetupField::Tube, "40");
    type_in(&mut hands, SetupField::Rows, "12,16");
    type_in(&mut hands, SetupField::Thread, "#8");
    press(&mut hands, DOWN);
    press(&mut hands, Named::Enter);
    assert!(
        hands
            .last_said()
            .starts_with("You will need, 1 to 3 of 11. Tube, 40 millimetres")
    );
    assert!(hands.sees("What you need, 1 to 3 of 11"));
    // The bag is three pages.
    for _ in 0..3 {
        press(&mut hands, SPACE);
    }
    assert!(hands.last_said().contains("Rigging, step"));
    press(&mut hands, SPACE);
    let tube = Tube::ringed(mm(40.0), &[12, 16]).unwrap();
    let counts = answers(Some(&tube))[1];
    let tie = hands.ties().remove(0);
    let plan = &tie.plan;
    assert_eq!(Counts::from(plan.laying()), counts);
    let setup = plan.setup().unwrap();
    assert_eq!(setup.tube.rows(), Some(&[12, 16][..]));
    assert_eq!(setup.finish.unwrap().around, mm(30.0).into());
    let begins = |hands: &Hands| hands.last_said().contains("Leave a tail of 15 centimetres");
    for _ in 0..6 {
        if !begins(&hands) {
            press(&mut hands, SPACE);
        }
    }
    assert!(begins(&hands), "{}", hands.last_said());
    press(&mut hands, Named::PageUp);
    assert!(hands.last_said().contains("Rigging, step"));
}

#[test]
fn the_place_in_the_rig_and_the_setup_survive_a_restart() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    type_in(&mut hands, SetupField::Tube, "40");
    type_in(&mut hands, SetupField::Rows, "12");
    press(&mut hands, Named::Enter);
    // Three pages of the bag, and one of the rigging.
    for _ in 0..4 {
        press(&mut hands, SPACE);
    }
    let step = hands.last_said();
    assert!(step.contains("Rigging, step"), "{step}");
    drop(hands);

    let mut hands = Hands::open(folder.path(), None);
    press(&mut hands, SPACE);
    let said = hands.last_said();
    assert!(said.contains("The tube is being rigged: step "), "{said}");
    assert!(said.ends_with(&step), "{said}");
    let tie = hands.ties().remove(0);
    assert_eq!(tie.place.phase(), Phase::Rig);
    press(&mut hands, SPACE);
    let next = hands.last_said();
    assert!(next.contains("Rigging, step") && next != step, "{next}");
}

#[test]
fn without_a_tube_the_knot_itself_is_begun() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    assert!(hands.sees("Name a tube too, and you are led through the rigging step by step."));
    press(&mut hands, Named::Enter);
    assert!(hands.last_said().contains("Leave a tail of 15 centimetres"));
}

#[test]
fn escape_leads_to_leads_and_bights_and_nothing_typed_is_lost() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    press(&mut hands, DOWN);
    press(&mut hands, Named::Escape);
    assert!(hands.last_said().starts_with("No tie is waiting."));
    assert!(hands.sees("Leads") && hands.sees("Bights"));
    hands.press(Key::Character("P".into()));
    let best = answers(None);
    let of = format!(" Knot 2 of {}: {} lead", best.len(), best[1].leads());
    assert!(
        hands.last_said().starts_with("Plan, as you left it.") && hands.last_said().contains(&of)
    );
    assert!(hands.sees(&named(best[0])));
    press(&mut hands, TAB);
    press(&mut hands, Named::Enter);
    assert!(hands.last_said().contains("Leave a tail"));
    let tie = hands.ties().remove(0);
    assert_eq!(Counts::from(tie.plan.laying()), best[0]);
}

#[test]
fn page_down_goes_through_what_is_known_and_kept() {
    let folder = TempDir::new().unwrap();
    let rack = PresetsFile::at(folder.path().join("rack").join("rack.json"));
    let tube = Tube::ringed(mm(40.0), &[12]).unwrap();
    rack.keep_tube("oak", &tube).unwrap().untroubled().unwrap();
    rack.keep_cord("blue", &Cord::new(mm(4.0)))
        .unwrap()
        .untroubled()
        .unwrap();
    let mut hands = open(folder.path());
    type_in(&mut hands, SetupField::Object, "94.25");
    press(&mut hands, Named::PageDown);
    assert!(hands.sees("Its girth"));
    press(&mut hands, TAB);
    type_in(&mut hands, SetupField::Cover, "30");
    press(&mut hands, TAB);
    // The cords that are kept come first, and what is picked is heard.
    press(&mut hands, Named::PageDown);
    assert_eq!(
        hands.last_said(),
        "Cord: blue. Page down goes through those known."
    );
    // Past the knot in mind and the cord at hand.
    press(&mut hands, TAB);
    press(&mut hands, TAB);
    press(&mut hands, TAB);
    assert_eq!(
        hands.last_said(),
        "Tube. Page down goes through those kept."
    );
    press(&mut hands, Named::PageDown);
    press(&mut hands, Named::Enter);
    let tie = hands.ties().remove(0);
    let setup = tie.plan.setup().unwrap();
    assert_eq!(setup.tube, tube);
    assert_eq!(setup.cord.name.as_deref(), Some("blue"));
    assert!((setup.finish.unwrap().around.thickest().get() - 30.0).abs() < 0.01);
}

#[test]
fn a_rack_that_cannot_be_read_is_told_and_keeps_nobody_off() {
    let folder = TempDir::new().unwrap();
    std::fs::create_dir(folder.path().join("rack")).unwrap();
    std::fs::write(folder.path().join("rack").join("rack.json"), "nonsense").unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    assert!(hands.sees(&named(answers(None)[0])));
    let file = folder.path().join("rack").join("rack.json");
    assert_eq!(std::fs::read_to_string(&file).unwrap(), "nonsense");
    let file = file.display();
    assert!(hands.sees(&format!(
        "The tubes and cords kept by name could not be used ({file}: it is damaged): see to that \
         file, or move it away to begin a new one."
    )));
}

/// What the tiller asks for when nothing more is said.
fn tiller_wish() -> FitWish<'static> {
    FitWish::new(Object::new(mm(30.0), mm(30.0)), mm(4.0))
}

#[test]
fn what_stands_above_the_list_narrows_it_by_key_and_by_click() {
    let all = FitFilter::default();
    let with = |filter| FitWish {
        filter,
        ..tiller_wish()
    };
    let hard = FitWish {
        give: Give::HARD,
        ..tiller_wish()
    };
    let doubled = FitFilter {
        passes: Some(2),
        ..all
    };
    let from_three = FitFilter {
        least_leads: 3,
        least_bights: 3,
        ..all
    };
    let one_cord = FitFilter {
        one_cord: true,
        ..all
    };
    let short = FitFilter {
        most_legs: Some(24),
        ..all
    };
    for (key, chips, said, wish) in [
        (
            Named::F2,
            &["all passes", "single"][..],
            "Doubled knots only.",
            with(doubled),
        ),
        (
            Named::F3,
            &["all leads and bights"],
            "Three leads and three bights, or more.",
            with(from_three),
        ),
        (
            Named::F4,
            &["all cords"],
            "Knots of one cord only.",
            with(one_cord),
        ),
        (
            Named::F5,
            &["any length"],
            "Ties of 24 legs at the most.",
            with(short),
        ),
        (
            Named::F7,
            &["cord as kept"],
            "Hard round cord, which keeps its shape.",
            hard,
        ),
    ] {
        let folder = TempDir::new().unwrap();
        let mut hands = open(folder.path());
        tiller(&mut hands);
        let wanted = fit(&wish);
        let every = answers(None);
        assert_ne!(wanted.len(), every.len(), "{said}");
        for by_click in [false, true] {
            for chip in chips {
                // Its key lies on it as on every other button.
                assert!(
                    hands.sees(chip) && hands.sees(&format!("{key:?}")),
                    "{chip}"
                );
                if by_click {
                    hands.click(chip);
                } else {
                    press(&mut hands, key);
                }
            }
            assert_eq!(hands.last_said(), said);
            press(&mut hands, UP);
            let first = format!("Knot 1 of {}: ", wanted.len());
            assert!(hands.last_said().starts_with(&first), "{said}");
            assert!(hands.sees(&named(wanted[0].counts)), "{said}");
            // Round again to every knot.
            while !hands.sees(chips[0]) {
                press(&mut hands, key);
            }
            press(&mut hands, UP);
            let first = format!("Knot 1 of {}: ", every.len());
            assert!(hands.last_said().starts_with(&first), "{said}");
        }
    }
}

/// The first knot is offered in the weave that takes fewer tucks, unless the tyer keeps the other.
#[test]
fn the_tyer_can_keep_the_weave_begun_with_over() {
    for keeps in [false, true] {
        let folder = TempDir::new().unwrap();
        let mut hands = open(folder.path());
        tiller(&mut hands);
        let found = fit(&tiller_wish());
        let place = found.iter().position(|answer| answer.is_twin).unwrap();
        if keeps {
            press(&mut hands, Named::F6);
            assert_eq!(hands.last_said(), "Over one, under one, begun with over.");
        }
        for _ in 0..place {
            press(&mut hands, DOWN);
        }
        press(&mut hands, Named::Enter);
        let tie = hands.ties().remove(0);
        let laying = tie.plan.laying();
        let answer = &found[place];
        assert_eq!(Counts::from(laying), answer.counts);
        let (weave, tucks) = if keeps {
            (Weave::Run(1), answer.other_tucks)
        } else {
            (answer.weave(), answer.tucks)
        };
        assert_eq!((laying.knot().weave(), laying.tucks()), (&weave, tucks));
        assert!(answer.tucks < answer.other_tucks);
    }
}

/// A tube of 100 mm for a tiller of 30: most of the work would be drawing up slack.
#[test]
fn what_is_hard_on_a_tube_is_said_before_the_knot_is_taken() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    tiller(&mut hands);
    type_in(&mut hands, SetupField::Tube, "100");
    let answers = fit(&FitWish {
        tube: Some(&Tube::plain(mm(100.0))),
        ..tiller_wish()
    });
    assert!(answers[0].is_hampered, "{:?}", answers[0]);
    press(&mut hands, UP);
    let said = hands.last_said();
    let caution = said.find("Take care: the tube is much thicker than what is covered.");
    assert!(caution.is_some_and(|start| start > 0), "{said}");
    assert!(
        said.contains(" millimetres across would leave the least."),
        "{said}"
    );
    // A tube too short for its rings names one that would do.
    type_in(&mut hands, SetupField::Rows, "14,20");
    type_in(&mut hands, SetupField::RingWidth, "20");
    type_in(&mut hands, SetupField::TubeLength, "4cm");
    press(&mut hands, Named::Enter);
    let said = hands.last_said();
    assert!(
        said.starts_with("Nothing fits this tube: it is 40 millimetres long"),
        "{said}"
    );
}

/// Counts a knot on itself by ear: each answer follows from what was said last and from the knot alone.
fn count_by_ear(hands: &mut Hands, plan: &Plan, colours: u16) {
    let knot = plan.knot();
    let leg = |from: u16| knot.leg_from(knot.pin(Rim::Bottom, from, 1).unwrap());
    let crossed = |from: u16| -> Vec<u16> {
        let crossed = knot.crossings_of(leg(from));
        crossed.map(|(row, _)| row).collect()
    };
    let number_after = |said: &str, words: &str| -> u16 {
        let after = said.split(words).nth(1).unwrap();
        let digits: String = after.chars().take_while(char::is_ascii_digit).collect();
        digits.parse().unwrap()
    };
    for _ in 0..400 {
        let said = hands.last_said();
        let number = if said.contains("How many scallops has its bottom rim?") {
            knot.bights()
        } else if said.contains("How many scallops lie nested there") {
            knot.nested()
        } else if said.contains("In which row of scallops does it turn there") {
            leg(1).to.row.number.into()
        } else if said.contains("How many times does it cross?") {
            u16::try_from(crossed(1).len()).unwrap()
        } else if said.contains("How many cords lie side by side?") {
            plan.laying().passes()
        } else if said.contains("How many colours") {
            colours
        } else if said.contains("does it go over?") {
            let from = if said.contains("bottom row ") {
                number_after(&said, "bottom row ")
            } else {
                1
            };
            let nth = number_after(&said, "Crossing ");
            let row = crossed(from)[usize::from(nth) - 1];
            let goes_over = knot.goes_over(Heading::Rising, row);
            press(hands, if goes_over { SPACE } else { Named::ArrowLeft });
            continue;
        } else {
            return;
        };
        for digit in number.to_string().chars() {
            hands.press(Key::Character(digit.to_string().into()));
        }
        press(hands, SPACE);
    }
    panic!("it does not come to an end: {}", hands.last_said());
}

#[test]
fn a_knot_that_is_counted_by_ear_is_planned_on_the_tube_that_is_there() {
    let folder = TempDir::new().unwrap();
    let mut hands = open(folder.path());
    // The tube and the cord of the day before stand in the form still.
    tiller(&mut hands);
    type_in(&mut hands, SetupField::Tube, "45");
    press(&mut hands, Named::Escape);
    for (counts, weave) in [(["5", "7", "", ""], "uuoo"), (["3", "4", "2", "2"], "")] {
        let plan = Plan::read_nested(counts, "1", weave).unwrap();
        let colours = plan.knot().strands();
        hands.press(Key::Character("k".into()));
        count_by_ear(&mut hands, &plan, colours);
        let said = hands.last_said();
        assert!(said.contains("Next takes this knot"), "{said}");
        press(&mut hands, SPACE);
        let said = hands.last_said();
        assert!(
            said.contains("Only the knot that was counted is looked at"),
            "{said}"
        );
        // It is too narrow or too wide for the tiller, and told all the same.
        press(&mut hands, Named::Enter);
        assert!(
            hands.sees("Job") || hands.last_said().contains("You will need"),
            "{}",
            hands.last_said()
        );
        press(&mut hands, Named::Escape);
        let ties = hands.shelf().list().unwrap().untroubled().unwrap();
        let tie = ties
            .iter()
            .find(|tie| tie.plan.knot().lattice() == plan.knot().lattice())
            .unwrap();
        assert!(
            tie.plan.rig().unwrap().is_some(),
            "it is not planned on the tube"
        );
        for (row, _) in plan.knot().crossings_of(plan.knot().leg(1, 1).unwrap()) {
            assert_eq!(
                tie.plan.knot().goes_over(Heading::Rising, row),
                plan.knot().goes_over(Heading::Rising, row),
            );
        }
    }
    // All knots are looked at again when that is wished for.
    hands.press(Key::Character("p".into()));
    assert!(
        hands.last_said().contains("Only the knot"),
        "{}",
        hands.last_said()
    );
    press(&mut hands, Named::F10);
    let best = answers(Some(&Tube::plain(mm(45.0))));
    assert!(hands.sees(&named(best[0])), "{}", hands.last_said());
}

#[test]
fn a_counted_knot_of_which_nothing_is_said_is_tied_as_it_is() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(Key::Character("k".into()));
    let plan = Plan::read("3", "5", "1", "1").unwrap();
    count_by_ear(&mut hands, &plan, 1);
    press(&mut hands, SPACE);
    press(&mut hands, Named::Enter);
    assert!(
        hands.last_said().contains("Lead pass")
            || hands.last_said().contains("Leg 1")
            || hands.last_said().contains("tail"),
        "{}",
        hands.last_said()
    );
    let ties = hands.shelf().list().unwrap().untroubled().unwrap();
    assert_eq!(ties[0].plan.knot(), plan.knot());
}
