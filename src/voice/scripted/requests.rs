//! What becomes of requests at a service that works.

use super::*;

#[test]
fn a_text_is_begun_and_ended() {
    let harness = Harness::ready(unhurried());
    let id = harness.say("Over one.");
    harness.wait_for("1 speak Over one.");
    harness.service.send(SpeechEvent::Began(key(1)));
    harness.service.send(SpeechEvent::Ended(key(1)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    assert_eq!(harness.next_event(), VoiceEvent::Ended(id));
}

#[test]
fn what_is_heard_before_the_call_returns_counts() {
    let harness = Harness::ready(unhurried());
    harness.service.change(|state| state.prompt = true);
    for text in ["One.", "Two."] {
        let id = harness.say(text);
        assert_eq!(harness.next_event(), VoiceEvent::Began(id));
        assert_eq!(harness.next_event(), VoiceEvent::Ended(id));
    }
}

#[test]
fn an_empty_text_is_no_request_and_cuts_nothing_off() {
    let harness = Harness::ready(unhurried());
    let id = harness.say("Over one.");
    harness.wait_for("1 speak Over one.");
    let speaker = harness.speaker.as_ref().unwrap();
    assert_eq!(speaker.say(""), None);
    assert_eq!(speaker.say(" \0\n"), None);
    harness.service.send(SpeechEvent::Began(key(1)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
}

#[test]
fn only_the_newest_of_the_waiting_requests_is_said() {
    let mut harness = Harness::ready(unhurried());
    harness.service.hold(ScriptedCall::Speak);
    let first = harness.say("One.");
    harness.wait_for("1 speak One.");
    let (second, third) = (harness.say("Two."), harness.say("Three."));
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(first));
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(second));
    harness.service.release(ScriptedCall::Speak);
    assert_eq!(harness.wait_for("1 speak Three."), Vec::<String>::new());
    harness.service.send(SpeechEvent::Stopped(key(1)));
    harness.service.send(SpeechEvent::Began(key(2)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(third));
    harness.close();
    assert_eq!(harness.wait_for("1 closed"), ["1 stop"]);
}

#[test]
fn hush_forgets_what_waits_and_stops_what_is_said() {
    let harness = Harness::ready(unhurried());
    harness.service.hold(ScriptedCall::Speak);
    let first = harness.say("One.");
    harness.wait_for("1 speak One.");
    let second = harness.say("Two.");
    harness.speaker.as_ref().unwrap().hush();
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(first));
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(second));
    harness.service.release(ScriptedCall::Speak);
    assert_eq!(harness.wait_for("1 stop"), Vec::<String>::new());
    let third = harness.say("Three.");
    harness.wait_for("1 speak Three.");
    harness.service.send(SpeechEvent::Began(key(2)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(third));
}

#[test]
fn a_speech_stopped_by_somebody_else_is_cut_off() {
    let harness = Harness::ready(unhurried());
    let id = harness.say("One.");
    harness.wait_for("1 speak One.");
    harness.service.send(SpeechEvent::Began(key(1)));
    harness.service.send(SpeechEvent::Stopped(key(1)));
    assert_eq!(harness.next_event(), VoiceEvent::Began(id));
    assert_eq!(harness.next_event(), VoiceEvent::CutOff(id));
}

#[test]
fn the_settings_go_before_the_text_and_a_missing_voice_is_told() {
    let harness = Harness::ready(unhurried());
    let speech = SpeechSettings {
        words_per_minute: 200,
        voice: Some("Nobody".to_owned()),
        ..SpeechSettings::default()
    };
    harness.speaker.as_ref().unwrap().set_speech(speech);
    harness.say("One.");
    assert_eq!(harness.wait_for("1 speak One."), ["1 speech 200"]);
    assert_eq!(
        harness.next_event(),
        VoiceEvent::NoSuchVoice("Nobody".to_owned())
    );
    harness.say("Two.");
    assert_eq!(
        harness.wait_for("1 speak Two."),
        Vec::<String>::new(),
        "the settings are made once"
    );
}

#[test]
fn the_voices_are_told_and_a_service_without_a_list_has_none() {
    let harness = Harness::ready(unhurried());
    harness.speaker.as_ref().unwrap().voices();
    let ada = VoiceName {
        language: "en".to_owned(),
        name: "Ada".to_owned(),
        engine: None,
    };
    assert_eq!(harness.next_event(), VoiceEvent::Voices(vec![ada]));
    harness.service.fail(
        ScriptedCall::Voices,
        CallError::Refused("no list".to_owned()),
    );
    harness.speaker.as_ref().unwrap().voices();
    assert_eq!(harness.next_event(), VoiceEvent::Voices(Vec::new()));
}

#[test]
fn closing_stops_the_speech() {
    let mut harness = Harness::ready(unhurried());
    harness.say("One.");
    harness.wait_for("1 speak One.");
    harness.close();
    let told: Vec<_> = harness.told.try_iter().collect();
    assert!(
        told.contains(&"1 stop".to_owned()),
        "stopped before close returns: {told:?}"
    );
}

#[test]
fn closing_does_not_wait_for_a_frozen_service() {
    let timeouts = Timeouts {
        closing: Duration::from_millis(50),
        ..unhurried()
    };
    let mut harness = Harness::ready(timeouts);
    harness.service.hold(ScriptedCall::Speak);
    harness.say("One.");
    harness.wait_for("1 speak One.");
    // Were it to wait for the call, this would never return.
    harness.close();
    assert_eq!(harness.told.try_iter().next(), None, "the call still hangs");
}
