//! Every screen by ear: it says what it is, what can be pressed and where one stands, and one key, the
//! same everywhere, tells all the keys that work there; pressed again, it tells where one is.
#![cfg(feature = "window")]

use crate::listener;

use std::collections::BTreeSet;

use iced::keyboard::key::Named;
use listener::{Listener, says};
use marlinspeak::app::App;
use marlinspeak::words::Words;

/// How a screen is come to, and what is said of it then and when it is asked where one is, all in this order.
struct Case {
    screen: &'static str,
    way: &'static [&'static str],
    itself: &'static [&'static str],
    keys: &'static [&'static str],
}

/// The first of each screen is how it comes up; what comes after it is what it can turn into.
const CASES: [Case; 20] = [
    Case {
        screen: "Start",
        way: &[],
        itself: &[
            "Shall we tie the first one together?",
            "Press the space bar to begin, or tab",
        ],
        keys: &[
            "Space bar: tie it.",
            "R: again.",
            "P: a knot for an object.",
            "C: first ties.",
        ],
    },
    Case {
        screen: "Start",
        way: &["Tab"],
        itself: &["Leads:"],
        keys: &["Enter:", "Escape:", "Tab: next field."],
    },
    Case {
        screen: "Start",
        way: &[" ", "Escape"],
        itself: &["A tie is waiting", "Press the space bar to take it up"],
        keys: &["Space bar: take it up.", "S:"],
    },
    Case {
        screen: "Plan",
        way: &["p"],
        itself: &["Plan. Choose what you cover", "Tab moves on"],
        keys: &[
            "Enter: take this knot.",
            "Tab: next field.",
            "F2: passes.",
            "Escape: leave.",
        ],
    },
    Case {
        screen: "Tying",
        way: &[" "],
        itself: &["Leave a tail", "bottom pin 1"],
        keys: &[
            "Left arrow: back.",
            "W: wrong.",
            "H: where am I.",
            "Opening square bracket:",
            "Plus: faster.",
        ],
    },
    Case {
        screen: "Course",
        way: &["c"],
        itself: &["First ties: six knots", "next begins it", "Lesson 1"],
        keys: &[
            "Space bar: begin it.",
            "W: weave the other way.",
            "Escape: leave.",
        ],
    },
    Case {
        screen: "Glossary",
        way: &["g"],
        itself: &["Words of the trade.", "Arrow down and arrow up", "Lead"],
        keys: &["Space bar: next word.", "Left arrow: word before."],
    },
    Case {
        screen: "Count",
        way: &["k"],
        itself: &[
            "Counting a knot.",
            "How many scallops",
            "Next: one more. Back: that is it.",
        ],
        keys: &["Space bar:", "Left arrow:", "R: again.", "Escape: leave."],
    },
    Case {
        screen: "Shelf",
        way: &["s"],
        itself: &["My ties. Nothing is here yet."],
        keys: &["U: undo.", "I: bring in.", "Escape: leave."],
    },
    Case {
        screen: "Shelf",
        way: &[" ", "Escape", "s"],
        itself: &["My ties. 1 tie."],
        keys: &["Space bar:", "Delete:", "Escape: leave."],
    },
    Case {
        screen: "Order",
        way: &["o"],
        itself: &[
            "No orders yet.",
            "An order is a list of knots",
            "Press next to begin one.",
        ],
        keys: &["N:", "Escape: leave."],
    },
    Case {
        screen: "Order",
        way: &["o", "n"],
        itself: &["A adds a piece", "Name of the order: not said"],
        keys: &["Space bar: open or change.", "A:", "Escape: leave."],
    },
    Case {
        screen: "Order",
        way: &["o", "n", "Enter"],
        itself: &["Name of the order"],
        keys: &["Enter: keep.", "Escape: leave all as it was."],
    },
    Case {
        screen: "Order",
        way: &["o", "n", "a"],
        itself: &["Piece 1", "Next changes a line, B ties the next one"],
        keys: &["Space bar: open or change.", "B:", "Escape: leave."],
    },
    Case {
        screen: "Log",
        way: &[" ", "until Press L", "l"],
        itself: &[
            "What was really used.",
            "Tab moves from field to field",
            "Cord, as you call it",
        ],
        keys: &["Enter: keep.", "Tab: next field.", "Escape: leave."],
    },
    Case {
        screen: "Paper",
        way: &[" ", "o"],
        itself: &["On paper or as a moving picture", "Card"],
        keys: &["Space bar: make it.", "Right arrow:", "Escape: leave."],
    },
    Case {
        screen: "Settings",
        way: &["t"],
        itself: &[
            "Settings.",
            "The up and down arrows go from line to line",
            "Pedals and keys",
        ],
        keys: &[
            "Up arrow: line before.",
            "Left arrow: less.",
            "Right arrow: more.",
            "H: what it is for.",
            "Escape: done.",
        ],
    },
    Case {
        screen: "Knocks",
        way: &["t", "Down", "Down", "Enter"],
        itself: &["Knocks are switched off", "Next switches them on"],
        keys: &["Space bar: switch them on.", "R: again.", "Escape: leave."],
    },
    Case {
        screen: "Knocks",
        way: &["t", "Down", "Right", "Down", "Enter"],
        itself: &[
            "Lay the microphone on the bench and knock twice",
            "Each row that was taken is shown and said here",
        ],
        keys: &["H: how loud it is.", "R: again.", "Escape: leave."],
    },
    // Every press is learnt here, F1 too: it says at once all that there is to press, and again
    // after each.
    Case {
        screen: LEARNS,
        way: &["t", "Enter"],
        itself: &[
            "Learn pedals and keys.",
            "Press something learnt before to skip a line, twice to be done.",
            "Escape leaves all as it was.",
            "Press what you want for “next”.",
        ],
        keys: &[],
    },
];

/// The screen on which every press is learnt.
const LEARNS: &str = "KeyBinding";

/// Somebody who has come to a screen by these keys, and what was said there.
fn come_by(way: &[&str]) -> (Listener, String) {
    let (mut listener, mut said) = Listener::start(Words::english());
    for key in way {
        said = match *key {
            " " => listener.press(Named::Space),
            "Tab" => listener.press(Named::Tab),
            "Down" => listener.press(Named::ArrowDown),
            "Right" => listener.press(Named::ArrowRight),
            "Enter" => listener.press(Named::Enter),
            "Escape" => listener.press(Named::Escape),
            key => match key.strip_prefix("until ") {
                Some(wanted) => listener.press_until(Named::Space, wanted),
                None => listener.letter(key),
            },
        };
    }
    (listener, said)
}

#[test]
fn no_screen_is_left_out() {
    let tried: BTreeSet<&str> = CASES.iter().map(|case| case.screen).collect();
    let all: BTreeSet<&str> = App::SCREENS.iter().copied().collect();
    assert_eq!(tried, all);
}

#[test]
fn every_screen_says_what_it_is_all_its_keys_and_where_one_is() {
    for case in &CASES {
        let (mut listener, said) = come_by(case.way);
        let up = listener.desk.hands.app().screen_name();
        assert_eq!(up, case.screen, "{:?}", case.way);
        says(&said, case.itself);
        if case.screen == LEARNS {
            continue;
        }
        let told = listener.press(Named::F1);
        says(&told, &["All the keys that work here."]);
        for key in case.keys {
            says(&told, &[key]);
        }
        let closes = ["F11: full screen.", "Control and Q: quit.", "F1 once more"];
        says(&told, &closes);
        // Then it says itself again, and where one stands.
        let again = listener.press(Named::F1);
        says(&again, case.itself);
        // And no key was taken for anything else: the screen is still up.
        assert_eq!(listener.desk.hands.app().screen_name(), case.screen);
    }
}
