//! Presses as pedals make them, as traces, and what they come to.

use std::time::Duration;

use marlinspeak::pedal::{Bindings, Input, InputEvent, Intent, Pedals, Times, Transition};

/// Ends every trace: nothing waits longer than this.
const LATER: u64 = 10_000;

fn millis(millis: u64) -> Duration {
    Duration::from_millis(millis)
}

/// Plays a trace. It is written as moments: milliseconds, what happens (`d`own, `r`epeat, `u`p)
/// and on which key: `n` is bound to next, `b` to back.
fn play(trace: &str, times: Times) -> String {
    let bindings = Bindings::of([
        (Input::key("n"), Intent::Next),
        (Input::key("b"), Intent::Back),
    ]);
    let mut pedals = Pedals::new(bindings, times);
    let mut made = Vec::new();
    let mut note = |at: Duration, intent: Intent| {
        made.push(format!("{}@{}", intent.name(), at.as_millis()));
    };
    let events = trace.split_whitespace().map(|moment| {
        let digits = moment.trim_end_matches(char::is_alphabetic);
        let mut letters = moment[digits.len()..].chars();
        let transition = match letters.next() {
            Some('d') => Transition::Down,
            Some('r') => Transition::Repeat,
            Some('u') => Transition::Up,
            other => panic!("{other:?} in {trace}"),
        };
        let input = Input::key(&letters.next().unwrap().to_string());
        (
            millis(digits.parse().unwrap()),
            Some(InputEvent { input, transition }),
        )
    });
    for (at, raw) in events.chain([(millis(LATER), None)]) {
        while let Some(due) = pedals.due().filter(|due| *due <= at) {
            if let Some(intent) = pedals.wait(due) {
                note(due, intent);
            }
        }
        if let Some(intent) = raw.and_then(|raw| pedals.take(&raw, at, true)) {
            note(at, intent);
        }
    }
    made.join(" ")
}

fn times(bounce: u64, long: Option<u64>, double: Option<u64>) -> Times {
    Times {
        bounce: millis(bounce),
        long: long.map(millis),
        double: double.map(millis),
    }
}

fn check(table: &[(&str, Times, &str, &str)]) {
    for (name, times, trace, meant) in table {
        assert_eq!(play(trace, *times), *meant, "{name}");
    }
}

#[test]
fn traces_of_presses_come_to_what_the_tyer_meant() {
    let usual = Times::default();
    let table = [
        ("a tap", usual, "0dn 90un", "next@0"),
        ("two taps", usual, "0dn 90un 700dn 790un", "next@0 next@700"),
        (
            "a hold with the system's repeats: first after 660 ms, then every 40",
            usual,
            "0dn 660rn 700rn 740rn 780rn 820rn 860rn 870un",
            "next@0",
        ),
        (
            "a contact that bounces going down and coming up",
            usual,
            "0dn 3un 6dn 9un 14dn 2000un 2004dn 2007un",
            "next@0",
        ),
        (
            "struck twice by a trembling foot",
            usual,
            "0dn 80un 210dn 300un",
            "next@0",
        ),
        (
            "one that was to be counted after the lock-out",
            usual,
            "0dn 50un 360dn 400un",
            "next@0 next@360",
        ),
        (
            "a foot in a hurry is not shut out for ever",
            usual,
            "0dn 60un 250dn 310un 500dn 560un 750dn 810un",
            "next@0 next@500",
        ),
        (
            "pressed again soon after a long hold",
            usual,
            "0dn 2000un 2180dn 2260un",
            "next@0 next@2180",
        ),
        (
            "different pedals do not lock each other out",
            usual,
            "0dn 40un 60db 100ub",
            "next@0 back@60",
        ),
        (
            "both pedals down at once",
            usual,
            "0dn 20db 80un 100ub",
            "next@0 back@20",
        ),
        (
            "a pedal that sends a whole stroke at once, however long it is held",
            usual,
            "0dn 0un 3000dn 3000un",
            "next@0 next@3000",
        ),
        (
            "a pedal that fires strokes while it is held",
            usual,
            "0dn 10un 40dn 50un 80dn 90un 120dn 130un 160dn 170un 200dn 210un 240dn 250un 280dn \
             290un 320dn 330un 360dn 370un 400dn 410un",
            "next@0",
        ),
        (
            "a release that never came",
            usual,
            "0dn 900dn 990un",
            "next@0 next@900",
        ),
        ("a release alone", usual, "0un 500dn 600un", "next@500"),
        (
            "without a lock-out every stroke counts",
            times(0, None, None),
            "0dn 20un 40dn 60un",
            "next@0 next@40",
        ),
        (
            "with the longest lock-out",
            times(1000, None, None),
            "0dn 90un 900dn 990un 2100dn",
            "next@0 next@2100",
        ),
    ];
    check(&table);
}

#[test]
fn traces_with_long_and_double_presses_switched_on() {
    let long = times(300, Some(800), None);
    let double = times(300, None, Some(400));
    let both = times(300, Some(800), Some(400));
    let table = [
        (
            "long press on: next comes on release",
            long,
            "0dn 90un",
            "next@90",
        ),
        (
            "long press on: held it is back, while it is held",
            long,
            "0dn 2000un",
            "back@800",
        ),
        (
            "long press on: repeats do not shorten it",
            long,
            "0dn 660rn 700rn 740rn 780rn 900un",
            "back@800",
        ),
        (
            "long press on: just short of it",
            long,
            "0dn 799un",
            "next@799",
        ),
        (
            "long press on: a pedal that taps on hold can only say next",
            long,
            "0dn 0un",
            "next@0",
        ),
        (
            "long press on: the other pedal does not wait",
            long,
            "0db 2000ub",
            "back@0",
        ),
        ("double press on: once", double, "0dn 90un", "next@400"),
        (
            "double press on: twice",
            double,
            "0dn 90un 250dn 340un",
            "again@250",
        ),
        (
            "double press on: too slow for one",
            double,
            "0dn 90un 700dn 790un",
            "next@400 next@1100",
        ),
        (
            "double press on: a bounce is no second press",
            double,
            "0dn 5un 9dn 90un",
            "next@400",
        ),
        (
            "both on",
            both,
            "0dn 90un 2000dn 2090un 2250dn 2340un 5000dn 6000un",
            "next@400 again@2250 back@5800",
        ),
    ];
    check(&table);
}

#[test]
fn a_window_that_lost_the_keys_forgets_what_is_down() {
    let mut pedals = Pedals::new(Bindings::default(), times(300, Some(800), None));
    let down = InputEvent {
        input: Input::key(" "),
        transition: Transition::Down,
    };
    assert_eq!(pedals.take(&down, millis(0), true), None);
    pedals.let_go();
    assert_eq!(pedals.due(), None);
    assert_eq!(pedals.wait(millis(5000)), None);
}

#[test]
fn where_gestures_do_not_count_every_press_counts_at_once() {
    let mut pedals = Pedals::new(Bindings::default(), times(300, Some(800), Some(400)));
    let down = InputEvent {
        input: Input::key(" "),
        transition: Transition::Down,
    };
    assert_eq!(pedals.take(&down, millis(0), false), Some(Intent::Next));
}
