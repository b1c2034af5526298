//! What becomes of wishes at a service that works.

use super::*;

#[test]
fn a_text_is_begun_and_ended() {
    let rig = Rig::ready(unhurried());
    let id = rig.say("Over one.");
    rig.wait_for("1 speak Over one.");
    rig.stage.hear(Heard::Began(key(1)));
    rig.stage.hear(Heard::Ended(key(1)));
    assert_eq!(rig.next_news(), News::Began(id));
    assert_eq!(rig.next_news(), News::Ended(id));
}

#[test]
fn what_is_heard_before_the_call_returns_counts() {
    let rig = Rig::ready(unhurried());
    rig.stage.change(|script| script.prompt = true);
    for text in ["One.", "Two."] {
        let id = rig.say(text);
        assert_eq!(rig.next_news(), News::Began(id));
        assert_eq!(rig.next_news(), News::Ended(id));
    }
}

#[test]
fn an_empty_text_is_no_wish_and_cuts_nothing_off() {
    let rig = Rig::ready(unhurried());
    let id = rig.say("Over one.");
    rig.wait_for("1 speak Over one.");
    let speaker = rig.speaker.as_ref().unwrap();
    assert_eq!(speaker.say(""), None);
    assert_eq!(speaker.say(" \0\n"), None);
    rig.stage.hear(Heard::Began(key(1)));
    assert_eq!(rig.next_news(), News::Began(id));
}

#[test]
fn only_the_newest_of_the_waiting_wishes_is_said() {
    let mut rig = Rig::ready(unhurried());
    rig.stage.hold(Call::Speak);
    let first = rig.say("One.");
    rig.wait_for("1 speak One.");
    let (second, third) = (rig.say("Two."), rig.say("Three."));
    assert_eq!(rig.next_news(), News::CutOff(first));
    assert_eq!(rig.next_news(), News::CutOff(second));
    rig.stage.release(Call::Speak);
    assert_eq!(rig.wait_for("1 speak Three."), Vec::<String>::new());
    rig.stage.hear(Heard::Stopped(key(1)));
    rig.stage.hear(Heard::Began(key(2)));
    assert_eq!(rig.next_news(), News::Began(third));
    rig.close();
    assert_eq!(rig.wait_for("1 closed"), ["1 stop"]);
}

#[test]
fn hush_forgets_what_waits_and_stops_what_is_said() {
    let rig = Rig::ready(unhurried());
    rig.stage.hold(Call::Speak);
    let first = rig.say("One.");
    rig.wait_for("1 speak One.");
    let second = rig.say("Two.");
    rig.speaker.as_ref().unwrap().hush();
    assert_eq!(rig.next_news(), News::CutOff(first));
    assert_eq!(rig.next_news(), News::CutOff(second));
    rig.stage.release(Call::Speak);
    assert_eq!(rig.wait_for("1 stop"), Vec::<String>::new());
    let third = rig.say("Three.");
    rig.wait_for("1 speak Three.");
    rig.stage.hear(Heard::Began(key(2)));
    assert_eq!(rig.next_news(), News::Began(third));
}

#[test]
fn a_speech_stopped_by_somebody_else_is_cut_off() {
    let rig = Rig::ready(unhurried());
    let id = rig.say("One.");
    rig.wait_for("1 speak One.");
    rig.stage.hear(Heard::Began(key(1)));
    rig.stage.hear(Heard::Stopped(key(1)));
    assert_eq!(rig.next_news(), News::Began(id));
    assert_eq!(rig.next_news(), News::CutOff(id));
}

#[test]
fn the_manner_goes_before_the_text_and_a_missing_voice_is_told() {
    let rig = Rig::ready(unhurried());
    let manner = Manner {
        words_per_minute: 200,
        voice: Some("Nobody".to_owned()),
        ..Manner::default()
    };
    rig.speaker.as_ref().unwrap().set_manner(manner);
    rig.say("One.");
    assert_eq!(rig.wait_for("1 speak One."), ["1 manner 200"]);
    assert_eq!(rig.next_news(), News::NoSuchVoice("Nobody".to_owned()));
    rig.say("Two.");
    assert_eq!(
        rig.wait_for("1 speak Two."),
        Vec::<String>::new(),
        "the manner is set once"
    );
}

#[test]
fn the_voices_are_told_and_a_service_without_a_list_has_none() {
    let rig = Rig::ready(unhurried());
    rig.speaker.as_ref().unwrap().voices();
    let ada = VoiceName {
        language: "en".to_owned(),
        name: "Ada".to_owned(),
    };
    assert_eq!(rig.next_news(), News::Voices(vec![ada]));
    rig.stage
        .fail(Call::Voices, Trouble::Refused("no list".to_owned()));
    rig.speaker.as_ref().unwrap().voices();
    assert_eq!(rig.next_news(), News::Voices(Vec::new()));
}

#[test]
fn closing_stops_the_speech() {
    let mut rig = Rig::ready(unhurried());
    rig.say("One.");
    rig.wait_for("1 speak One.");
    rig.close();
    let told: Vec<_> = rig.told.try_iter().collect();
    assert!(
        told.contains(&"1 stop".to_owned()),
        "stopped before close returns: {told:?}"
    );
}

#[test]
fn closing_does_not_wait_for_a_frozen_service() {
    let patience = Patience {
        closing: Duration::from_millis(50),
        ..unhurried()
    };
    let mut rig = Rig::ready(patience);
    rig.stage.hold(Call::Speak);
    rig.say("One.");
    rig.wait_for("1 speak One.");
    // Were it to wait for the call, this would never return.
    rig.close();
    assert_eq!(rig.told.try_iter().next(), None, "the call still hangs");
}
