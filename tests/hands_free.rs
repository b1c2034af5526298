//! A tie by one key, a tie by ear, and a speech service that fails in every way, in the real
//! window.
#![cfg(feature = "window")]

#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/program.rs"]
mod program;
#[path = "support/ssip.rs"]
mod ssip;

use std::path::Path;
use std::thread;
use std::time::{Duration, Instant};

use display::{DEADLINE, Display};
use marlinspeak::guide::{AtOnce, Phase, Place, Plan, Script};
use marlinspeak::shelf::Shelf;
use marlinspeak::words::Words;
use program::Program;
use ssip::{Service, Speech};
use tempfile::TempDir;

const KNOT: [&str; 4] = ["--leads", "3", "--bights", "4"];

/// Every place of the tie, with what is said there.
fn steps() -> Vec<(Place, String)> {
    let plan = Plan::read("3", "4", "1", "1").unwrap();
    let (script, words) = (Script::new(plan, AtOnce::default()), Words::english());
    let step = |place| (place, words.say(&script.step(place).unwrap()).into());
    script.places().map(step).collect()
}

fn heard(service: &Service) -> String {
    service.next_text(DEADLINE).expect("the program speaks")
}

/// Listens until this is said.
fn hears(service: &Service, text: &str) {
    let mut said = Vec::new();
    while said.last().map(String::as_str) != Some(text) {
        let next = service.next_text(DEADLINE);
        assert!(next.is_some(), "{text:?} was not said, but {said:?}");
        said.extend(next);
    }
}

/// Waits until the one tie on the shelf stands at a place. It is saved in the same breath as it
/// is shown.
fn stands_at(data: &Path, place: Place) {
    let shelf = Shelf::open(data.join("marlinspeak/ties")).unwrap();
    let until = Instant::now() + DEADLINE;
    loop {
        let ties = shelf.list().unwrap().untroubled().unwrap();
        if ties.first().is_some_and(|tie| tie.place == place) {
            return;
        }
        assert!(
            Instant::now() < until,
            "it does not come to {place:?}: {ties:?}"
        );
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(5));
    }
}

/// Presses once, as a foot does, which rests longer between two presses than the usual lock-out
/// of 300 ms, and gives what is said then.
fn press_and_listen(display: &Display, service: &Service, key: &str) -> Option<String> {
    // The lock-out begins when the window hears of the release, late on a busy machine.
    display.wait_until_heard();
    thread::sleep(Duration::from_secs(1));
    display.press(key);
    service.next_text(DEADLINE)
}

#[test]
fn a_whole_tie_by_one_key_as_the_program_comes() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let steps = steps();
    let _program = Program::start_as_it_comes(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0].1);
    for (_, say) in &steps[1..] {
        let said = press_and_listen(&display, &service, "space");
        assert_eq!(said.as_ref(), Some(say));
    }
    stands_at(data.path(), steps[steps.len() - 1].0);
}

/// The key to press after what was said; none when there is nothing more to do. What is said is
/// all that this knows.
fn told_to_press(said: &str) -> Option<&'static str> {
    let rules = [
        ("Never let it hold", None),
        ("or tab for something else", Some("Tab")),
        ("press tab to type another", Some("Tab")),
        ("Leads: 3.", Some("Tab")),
        ("Leads:", Some("3")),
        ("Bights: 4.", Some("Return")),
        ("Bights:", Some("4")),
    ];
    let rule = rules.iter().find(|(sentence, _)| said.contains(sentence));
    // The opening has said that the space bar goes on.
    rule.map_or(Some("space"), |(_, key)| *key)
}

#[test]
fn a_whole_tie_from_launch_to_done_by_ear_alone() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let _program = Program::start_as_it_comes(&display, &service, data.path(), &[]);
    let mut said = vec![heard(&service)];
    while let Some(key) = told_to_press(&said[said.len() - 1]) {
        let next = press_and_listen(&display, &service, key);
        assert!(next.is_some() && said.len() < 100, "after {key}: {said:#?}");
        said.extend(next);
    }
    let steps = steps();
    let tied: Vec<&String> = said[said.len() - steps.len()..].iter().collect();
    assert_eq!(tied, steps.iter().map(|(_, say)| say).collect::<Vec<_>>());
    let last = steps[steps.len() - 1].0;
    assert_eq!(last.phase(), Phase::Finish);
    stands_at(data.path(), last);
}

/// Breaks the service after two steps, presses on, and mends it: every press is a step all the
/// same, and the newest step is said when the service is back.
fn goes_on_while(breaks: impl FnOnce(&Service), mends: impl FnOnce(&Service)) {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let steps = steps();
    let _program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0].1);
    display.press("space");
    assert_eq!(heard(&service), steps[1].1);
    breaks(&service);
    for (place, _) in &steps[2..6] {
        display.press("space");
        stands_at(data.path(), *place);
    }
    mends(&service);
    hears(&service, &steps[5].1);
    display.press("space");
    hears(&service, &steps[6].1);
}

#[test]
fn the_tie_goes_on_while_the_service_is_dead_and_speech_comes_back() {
    goes_on_while(Service::kill, Service::restart);
}

#[test]
fn the_tie_goes_on_while_the_service_is_stopped_and_speech_comes_back() {
    goes_on_while(Service::freeze, Service::thaw);
}

#[test]
fn the_tie_goes_on_while_a_stopped_service_is_killed_and_started_again() {
    goes_on_while(Service::freeze, |service| {
        service.kill();
        service.restart();
    });
}

#[test]
fn the_tie_goes_on_while_the_service_is_dumb_and_speech_comes_back() {
    goes_on_while(
        |service| service.set_speech(Speech::Dumb),
        |service| service.set_speech(Speech::Lasts(Duration::ZERO)),
    );
}

#[test]
fn losing_the_keys_is_said_aloud() {
    let (display, service) = (Display::start(), Service::start());
    let data = TempDir::new().unwrap();
    let steps = steps();
    let _program = Program::start(&display, &service, data.path(), &KNOT);
    assert_eq!(heard(&service), steps[0].1);
    display.unfocus();
    hears(
        &service,
        "Another window is taking the keys. Click here before you press on.",
    );
}
