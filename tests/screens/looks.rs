//! Pictures of every screen at every size, in every language, by night and by day, in one folder:
//! `make looks`. They are drawn as large as a window draws them, for a tyer at the usual distance.
#![cfg(feature = "window")]

use crate::hands;
use crate::window;

use std::path::{Path, PathBuf};

use hands::Hands;
use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::app::{self, Message};
use marlinspeak::guide::{Plan, SetupField, What};
use marlinspeak::picture::{Moment, Subject};
use marlinspeak::session::Walk;
use marlinspeak::settings::{ColourScheme, Settings};
use marlinspeak::words::Words;
use tempfile::TempDir;
use window::Pane;

const SIZES: [(u32, u32); 6] = [
    (800, 480),
    (1100, 760),
    (1366, 768),
    (1920, 1080),
    (2560, 1440),
    (800, 1400),
];

/// A screen, and how somebody comes to it from the tie that is named, if one is.
type Look = (&'static str, Option<[&'static str; 3]>, fn(&mut Hands));

fn letter(hands: &mut Hands, letter: &str) {
    hands.press(Key::Character(letter.into()));
}

fn on(hands: &mut Hands, steps: usize) {
    for _ in 0..steps {
        hands.press(Key::Named(Named::Space));
    }
}

/// Types into a field of the plan, with the decimal sign of the language.
fn plan(hands: &mut Hands, field: SetupField, typed: &str) {
    let is_english = *hands.session().words().tag() == "en";
    let typed = if is_english {
        typed.to_owned()
    } else {
        typed.replace('.', ",")
    };
    hands.tell(Message::planned(field, &typed));
}

/// On the plan screen with a knot of 5 leads and 7 bights in mind, for so much of a tiller.
fn in_mind(hands: &mut Hands, cover: &str) {
    letter(hands, "p");
    for (field, typed) in [
        (SetupField::Object, "30"),
        (SetupField::Cover, cover),
        (SetupField::Cord, "3.5"),
    ] {
        plan(hands, field, typed);
    }
    hands.press(Named::Tab);
    letter(hands, "5");
    on(hands, 1);
    letter(hands, "7");
}

const SINGLE: Option<[&str; 3]> = Some(["5", "7", "1"]);
const DOUBLED: Option<[&str; 3]> = Some(["5", "7", "2"]);

/// What is covered, by its place among the answers; whether the knot is tied in place, where that is asked;
/// and what is typed.
type Ask = (usize, Option<bool>, &'static [(SetupField, &'static str)]);

const RAIL: Ask = (
    1,
    Some(true),
    &[
        (SetupField::Object, "34:26"),
        (SetupField::Cover, "60"),
        (SetupField::Cord, "3.5"),
    ],
);
const KNOB: Ask = (
    2,
    Some(true),
    &[(SetupField::Object, "40"), (SetupField::Cord, "3")],
);
const MAT: Ask = (
    3,
    None,
    &[(SetupField::Object, "150:40"), (SetupField::Cord, "6")],
);

/// Asks for what covers this, by keys, and sees that there is such a knot.
fn ask_for(hands: &mut Hands, (covered, in_place, typed): Ask) {
    letter(hands, "p");
    for _ in 0..covered {
        hands.press(Named::ArrowRight);
    }
    if in_place.is_some() {
        hands.press(Named::Tab);
    }
    if in_place == Some(true) {
        hands.press(Named::ArrowRight);
    }
    for (field, typed) in typed {
        plan(hands, *field, typed);
    }
}

/// Takes the first knot that is offered, and ties some of its legs.
fn tie_some(hands: &mut Hands) {
    hands.press(Named::Enter);
    for _ in 0..200 {
        on(hands, 1);
        let is_under_way = hands.session().walk().is_some_and(|walk| {
            let step = walk.script().step(walk.place());
            step.is_some_and(|step| match step.what {
                What::Lay(lay) => lay.pass_leg.leg > 9 && lay.crossings.len() > 1,
                _ => false,
            })
        });
        if is_under_way {
            return;
        }
    }
    panic!("no knot was offered, or none is tied");
}

const LOOKS: &[Look] = &[
    ("01-first", None, |_| {}),
    ("02-form", None, |hands| hands.press(Named::Tab)),
    ("03-plan", None, |hands| {
        letter(hands, "p");
        for (field, typed) in [
            (SetupField::Object, "30"),
            (SetupField::Cover, "36"),
            (SetupField::Cord, "3.5"),
        ] {
            plan(hands, field, typed);
        }
    }),
    ("04-course", None, |hands| letter(hands, "c")),
    ("05-glossary", None, |hands| letter(hands, "g")),
    ("06-settings", None, |hands| letter(hands, "t")),
    ("07-learn", None, |hands| {
        letter(hands, "t");
        hands.press(Named::Enter);
    }),
    ("07-try-knocks", None, |hands| {
        letter(hands, "t");
        hands.press(Named::ArrowDown);
        hands.press(Named::ArrowDown);
        hands.press(Named::Enter);
    }),
    ("08-empty-shelf", None, |hands| letter(hands, "s")),
    ("08-no-orders", None, |hands| letter(hands, "o")),
    ("09-lesson-begins", None, |hands| on(hands, 1)),
    ("10-lesson-leg", None, |hands| on(hands, 4)),
    ("11-leg", SINGLE, |hands| on(hands, 16)),
    ("12-follower", DOUBLED, |hands| on(hands, 34)),
    ("13-where", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "h");
    }),
    ("14-taking-back", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "w");
        on(hands, 1);
    }),
    ("15-look", SINGLE, |hands| {
        let is_look = |hands: &Hands| {
            let walk = hands.session().walk().unwrap();
            let step = walk.script().step(walk.place());
            step.is_some_and(|step| matches!(step.what, What::Check(_)))
        };
        while !is_look(hands) {
            on(hands, 1);
        }
    }),
    ("16-whole-picture", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "f");
    }),
    ("17-all-keys", SINGLE, |hands| {
        on(hands, 16);
        hands.press(Named::F1);
    }),
    ("18-done", SINGLE, |hands| on(hands, 80)),
    ("19-log", SINGLE, |hands| {
        on(hands, 80);
        letter(hands, "l");
    }),
    ("20-waiting", SINGLE, |hands| {
        on(hands, 16);
        hands.press(Named::Escape);
    }),
    ("21-shelf", SINGLE, |hands| {
        on(hands, 16);
        hands.press(Named::Escape);
        letter(hands, "s");
    }),
    ("22-paper", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "o");
    }),
    ("23-paper-path", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "o");
        for _ in 0..3 {
            hands.press(Named::ArrowDown);
        }
        hands.press(Named::Enter);
    }),
    ("24-paused", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "p");
    }),
    ("25-wrong", SINGLE, |hands| {
        on(hands, 16);
        letter(hands, "w");
    }),
    ("26-rolled-out", DOUBLED, |hands| {
        on(hands, 34);
        letter(hands, "v");
    }),
    ("27-tuck", SINGLE, |hands| {
        let is_tuck = |hands: &Hands| {
            let subject = hands.session().walk().and_then(Walk::subject);
            matches!(
                subject,
                Some(Subject::Knot {
                    moment: Moment::Tucking { .. },
                    ..
                })
            )
        };
        while !is_tuck(hands) {
            on(hands, 1);
        }
    }),
    ("28-rig", None, |hands| {
        letter(hands, "p");
        for (field, typed) in [
            (SetupField::Object, "30"),
            (SetupField::Cover, "36"),
            (SetupField::Cord, "3.5"),
            (SetupField::Tube, "45"),
            (SetupField::Rows, "14,20"),
        ] {
            plan(hands, field, typed);
        }
        hands.press(Named::Enter);
        let is_rigging = |hands: &Hands| {
            let subject = hands.session().walk().and_then(Walk::subject);
            matches!(subject, Some(Subject::Rings { .. }))
        };
        // Past the bag, to the pins.
        for _ in 0..30 {
            let is_next_of_it = hands.session().walk().is_some_and(|walk| {
                walk.script()
                    .next(walk.place())
                    .and_then(|place| walk.script().step(place))
                    .is_some_and(|step| matches!(step.what, What::Rig(_)))
            });
            on(hands, 1);
            if is_next_of_it && is_rigging(hands) {
                break;
            }
        }
    }),
    ("28-mat-offer", None, |hands| ask_for(hands, MAT)),
    ("28-mat", None, |hands| {
        ask_for(hands, MAT);
        tie_some(hands);
    }),
    ("28-knob", None, |hands| {
        ask_for(hands, KNOB);
        tie_some(hands);
    }),
    ("28-tapered-rail", None, |hands| {
        ask_for(hands, RAIL);
        tie_some(hands);
    }),
    ("29-large", Some(["21", "40", "2"]), |hands| on(hands, 60)),
    ("30-several-wait", SINGLE, |hands| {
        for steps in [5, 12, 20, 3, 30] {
            on(hands, steps);
            hands.press(Named::Escape);
            hands.press(Named::Tab);
            hands.press(Named::Enter);
        }
        hands.press(Named::Escape);
    }),
    ("31-knot-in-mind", None, |hands| in_mind(hands, "36")),
    ("32-other-than-in-mind", None, |hands| in_mind(hands, "90")),
    ("33-bag", None, |hands| {
        in_mind(hands, "36");
        plan(hands, SetupField::Tube, "45");
        plan(hands, SetupField::Rows, "14,20");
        hands.press(Named::Enter);
    }),
    ("34-begin", SINGLE, |_| {}),
    ("35-count", None, |hands| letter(hands, "k")),
    ("36-far-pins", Some(["11", "9", "1"]), |hands| {
        let is_there = |hands: &Hands| {
            let walk = hands.session().walk().unwrap();
            walk.place().leg() == Some(18)
        };
        while !is_there(hands) {
            on(hands, 1);
        }
    }),
];

/// Where the pictures go.
fn folder() -> PathBuf {
    let named = std::env::var_os("LOOKS");
    named.map_or_else(
        || Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks"),
        PathBuf::from,
    )
}

/// What is named in `name`, separated by commas; all of it where nothing is.
fn is_wanted(name: &str, one: &str) -> bool {
    std::env::var(name).map_or(true, |wanted| wanted.split(',').any(|other| other == one))
}

#[test]
#[ignore = "writes hundreds of pictures: make looks"]
fn every_screen_is_pictured() {
    let folder = folder();
    std::fs::create_dir_all(&folder).unwrap();
    let mut written = 0;
    for tag in Words::known().iter().map(ToString::to_string) {
        if !is_wanted("LOOKS_LANG", &tag) {
            continue;
        }
        for &(name, knot, come) in LOOKS {
            if !is_wanted("LOOKS_SCREEN", &name[..2]) {
                continue;
            }
            for colours in [ColourScheme::Dark, ColourScheme::Light] {
                let ground = match colours {
                    ColourScheme::Dark => "night",
                    ColourScheme::Light => "day",
                };
                if !is_wanted("LOOKS_GROUND", ground) {
                    continue;
                }
                let ties = TempDir::new().unwrap();
                let plan = knot
                    .map(|[leads, bights, passes]| Plan::read(leads, bights, passes, "1").unwrap());
                let mut settings = Settings {
                    colours,
                    ..Settings::default()
                };
                if let Ok(distance) = std::env::var("LOOKS_DISTANCE") {
                    settings.screen.distance = distance.parse().expect("millimetres");
                }
                let words = Words::load(Some(&tag)).unwrap();
                let mut hands = Hands::open_in(words, ties.path(), plan, settings);
                come(&mut hands);
                for (width, height) in SIZES {
                    let size = format!("{width}x{height}");
                    if !is_wanted("LOOKS_SIZE", &size) {
                        continue;
                    }
                    let file = folder.join(format!("{name}-{tag}-{size}-{ground}.png"));
                    #[expect(clippy::cast_precision_loss, reason = "a few thousand pixels")]
                    let scale = hands.in_window(Size::new(width as f32, height as f32));
                    let mut pane = Pane::new(width, height).drawn_larger(scale);
                    pane.write(hands.view(), &app::theme_of(colours), &file);
                    written += 1;
                }
            }
        }
    }
    assert!(written > 0, "nothing was asked for");
}
