//! How a voice is lost and found.

use super::*;

/// A service that is given up soon, lost while it is to say something; no other can be opened.
fn lost_while_speaking() -> (Harness, Utterance) {
    let harness = Harness::ready(Timeouts {
        answer: SOON,
        ..unhurried()
    });
    harness.service.hold(ScriptedCall::Speak);
    harness.service.hold(ScriptedCall::Open);
    let id = harness.say("Old.");
    assert_eq!(harness.next_event(), VoiceEvent::Lost(VoiceError::NoAnswer));
    (harness, id)
}

#[test]
fn without_a_service_the_loss_is_told_once_and_the_newest_request_waits() {
    let service = ScriptedService::default();
    service.fail(
        ScriptedCall::Open,
        CallError::Gone("nobody there".to_owned()),
    );
    let harness = Harness::new(service, unhurried());
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::NoService("nobody there".to_owned()))
    );
    let (old, new) = (harness.say("Old."), harness.say("New."));
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(old));
    harness.wait_for("5 open");
    harness.service.change(|state| state.prompt = true);
    harness.service.mend();
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(new));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(new));
}

#[test]
fn a_broken_connection_is_replaced_and_the_torn_speech_begun_anew() {
    let harness = Harness::ready(unhurried());
    harness
        .service
        .fail(ScriptedCall::Speak, CallError::Gone("killed".to_owned()));
    let id = harness.say("One.");
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::Broken("killed".to_owned()))
    );
    harness.wait_for("3 speak One.");
    harness.service.change(|state| state.prompt = true);
    harness.service.mend();
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(id));
}

#[test]
fn a_service_that_dies_in_mid_speech_is_noticed_before_the_speech_is_due() {
    let timeouts = Timeouts {
        check: Duration::from_millis(5),
        ..unhurried()
    };
    let harness = Harness::ready(timeouts);
    let id = harness.say("One.");
    harness.wait_for("1 check");
    harness.service.send(SpeechEvent::Began(key(1)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    harness
        .service
        .fail(ScriptedCall::Check, CallError::Gone("killed".to_owned()));
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::Broken("killed".to_owned()))
    );
    harness.wait_for("2 speak One.");
}

#[test]
fn a_refusing_service_is_asked_again_over_the_same_connection() {
    let harness = Harness::ready(unhurried());
    harness.service.fail(
        ScriptedCall::Speak,
        CallError::Refused("no module".to_owned()),
    );
    let id = harness.say("One.");
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::Refused("no module".to_owned()))
    );
    for _ in 0..3 {
        harness.wait_for("1 speak One.");
    }
    harness.service.change(|state| state.prompt = true);
    harness.service.mend();
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
}

#[test]
fn a_call_that_hangs_is_a_loss_and_its_worker_is_taken_back() {
    let timeouts = Timeouts {
        answer: SOON,
        opening: SOON,
        ..unhurried()
    };
    let harness = Harness::ready(timeouts);
    harness.service.hold(ScriptedCall::Speak);
    harness.service.hold(ScriptedCall::Open);
    let old = harness.say("Old.");
    assert_eq!(harness.next_event(), VoiceEvent::Lost(VoiceError::NoAnswer));
    harness.wait_for("2 open");
    let new = harness.say("New.");
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(old));
    harness.service.change(|state| state.prompt = true);
    // The first connection thaws while the second still hangs.
    harness.service.release(ScriptedCall::Speak);
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(new));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(new));
    let mut calls = harness.wait_for("1 speak New.");
    calls.retain(|call| !call.ends_with("open"));
    assert_eq!(
        calls,
        Vec::<String>::new(),
        "the newest text goes out at once"
    );
    harness.service.release(ScriptedCall::Open);
    harness.wait_for("2 closed");
}

#[test]
fn a_worker_taken_back_with_nothing_to_say_stops_the_old_text() {
    let (harness, id) = lost_while_speaking();
    harness.speaker.as_ref().unwrap().hush();
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(id));
    harness.service.release(ScriptedCall::Speak);
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    harness.wait_for("1 stop");
}

#[test]
fn a_worker_taken_back_late_stops_a_text_that_was_hushed_long_ago() {
    let (harness, id) = lost_while_speaking();
    harness.speaker.as_ref().unwrap().hush();
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(id));
    // The second voice is hushed, and breaks before the first one answers.
    harness.service.release(ScriptedCall::Open);
    harness.wait_for("2 speech 165");
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    harness.service.hold(ScriptedCall::Open);
    harness
        .service
        .fail(ScriptedCall::Voices, CallError::Gone("killed".to_owned()));
    harness.speaker.as_ref().unwrap().voices();
    assert!(matches!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::Broken(_))
    ));
    harness.service.mend();
    harness.service.release(ScriptedCall::Speak);
    harness.wait_for("1 stop");
}

#[test]
fn a_frozen_service_holds_no_more_threads_than_agreed() {
    let timeouts = Timeouts {
        opening: Duration::from_millis(5),
        ..unhurried()
    };
    let service = ScriptedService::default();
    service.hold(ScriptedCall::Open);
    let harness = Harness::new(service, timeouts);
    assert_eq!(harness.next_event(), VoiceEvent::Lost(VoiceError::NoAnswer));
    let id = harness.say("One.");
    harness.wait_for(&format!("{MOST_WORKERS} open"));
    // One more would come a hundred times over in this while.
    assert_eq!(harness.told.recv_timeout(SOON).ok(), None);
    // With all places taken, only an answer can bring a voice: the first one that comes.
    harness.service.change(|state| state.prompt = true);
    harness.service.release(ScriptedCall::Open);
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    let most = harness.service.0.0.lock().unwrap().most_threads;
    assert_eq!(most, MOST_WORKERS);
}

#[test]
fn a_frozen_service_that_dies_is_looked_for_again() {
    let timeouts = Timeouts {
        opening: Duration::from_millis(5),
        ..unhurried()
    };
    let service = ScriptedService::default();
    service.hold(ScriptedCall::Open);
    let harness = Harness::new(service, timeouts);
    assert_eq!(harness.next_event(), VoiceEvent::Lost(VoiceError::NoAnswer));
    harness.wait_for(&format!("{MOST_WORKERS} open"));
    harness
        .service
        .fail(ScriptedCall::Open, CallError::Gone("killed".to_owned()));
    harness.service.release(ScriptedCall::Open);
    harness.wait_for(&format!("{} open", MOST_WORKERS + 2));
    harness.service.mend();
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
}

#[test]
fn a_service_that_never_begins_is_lost_until_it_does() {
    let timeouts = Timeouts {
        beginning: SOON,
        ..unhurried()
    };
    let harness = Harness::ready(timeouts);
    let id = harness.say("One.");
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::NeverBegan)
    );
    // A new connection, once; then the same one again and again.
    harness.wait_for("2 speak One.");
    harness.wait_for("2 speak One.");
    harness.service.change(|state| state.prompt = true);
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(id));
}

#[test]
fn a_speech_that_never_ends_is_begun_once_more_and_then_given_up() {
    let timeouts = Timeouts {
        ending: SOON,
        ..unhurried()
    };
    let harness = Harness::ready(timeouts);
    // Twice the expected time of one word is below the floor.
    let id = harness.say("One");
    harness.wait_for("1 speak One");
    harness.service.send(SpeechEvent::Began(key(1)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Lost(VoiceError::NeverEnded)
    );
    harness.wait_for("2 speak One");
    harness.service.send(SpeechEvent::Began(key(2)));
    assert_eq!(
        harness.next_event(),
        VoiceEvent::Began(id),
        "a beginning proves nothing here"
    );
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(id));
    harness.wait_for("2 stop");
    harness.service.change(|state| state.prompt = true);
    let next = harness.say("Two");
    assert_eq!(harness.next_event(), VoiceEvent::Began(next));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(next));
    assert_eq!(harness.next_event(), VoiceEvent::Ready);
}

#[test]
fn a_voice_that_panics_is_a_loss_like_another() {
    let (events_to, event) = mpsc::channel();
    let (called_to, called) = mpsc::channel();
    let make = move |_ear: EventSink| -> Result<Box<dyn Voice>, CallError> {
        called_to.send(()).unwrap();
        panic!("a service library at its worst (this line in the log is part of the test)");
    };
    let speaker = Speaker::start_with(make, move |n| drop(events_to.send(n)), unhurried()).unwrap();
    let first = event.recv_timeout(DEADLINE).unwrap();
    assert!(
        matches!(first, VoiceEvent::Lost(VoiceError::Broken(_))),
        "{first:?}"
    );
    for _ in 0..3 {
        called.recv_timeout(DEADLINE).unwrap();
    }
    drop(speaker);
}
