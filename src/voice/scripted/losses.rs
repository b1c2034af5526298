//! How a voice is lost and found.

use super::*;

#[test]
fn without_a_service_the_loss_is_told_once_and_the_newest_wish_waits() {
    let stage = Stage::default();
    stage.fail(Call::Open, Trouble::Gone("nobody there".to_owned()));
    let rig = Rig::new(stage, unhurried());
    assert_eq!(
        rig.next_news(),
        News::Lost(Loss::NoService("nobody there".to_owned()))
    );
    let (old, new) = (rig.say("Old."), rig.say("New."));
    assert_eq!(rig.next_news(), News::CutOff(old));
    rig.wait_for("5 open");
    rig.stage.change(|script| script.prompt = true);
    rig.stage.mend();
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(new));
    assert_eq!(rig.next_news(), News::Ended(new));
}

#[test]
fn a_broken_connection_is_replaced_and_the_torn_speech_begun_anew() {
    let rig = Rig::ready(unhurried());
    rig.stage
        .fail(Call::Speak, Trouble::Gone("killed".to_owned()));
    let id = rig.say("One.");
    assert_eq!(
        rig.next_news(),
        News::Lost(Loss::Broken("killed".to_owned()))
    );
    rig.wait_for("3 speak One.");
    rig.stage.change(|script| script.prompt = true);
    rig.stage.mend();
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(id));
    assert_eq!(rig.next_news(), News::Ended(id));
}

#[test]
fn a_service_that_dies_in_mid_speech_is_noticed_before_the_speech_is_due() {
    let patience = Patience {
        check: Duration::from_millis(5),
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    let id = rig.say("One.");
    rig.wait_for("1 check");
    rig.stage.hear(Heard::Began(key(1)));
    assert_eq!(rig.next_news(), News::Began(id));
    rig.stage
        .fail(Call::Check, Trouble::Gone("killed".to_owned()));
    assert_eq!(
        rig.next_news(),
        News::Lost(Loss::Broken("killed".to_owned()))
    );
    rig.wait_for("2 speak One.");
}

#[test]
fn a_refusing_service_is_asked_again_over_the_same_connection() {
    let rig = Rig::ready(unhurried());
    rig.stage
        .fail(Call::Speak, Trouble::Refused("no module".to_owned()));
    let id = rig.say("One.");
    assert_eq!(
        rig.next_news(),
        News::Lost(Loss::Refused("no module".to_owned()))
    );
    for _ in 0..3 {
        rig.wait_for("1 speak One.");
    }
    rig.stage.change(|script| script.prompt = true);
    rig.stage.mend();
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(id));
}

#[test]
fn a_call_that_hangs_is_a_loss_and_its_worker_is_taken_back() {
    let patience = Patience {
        answer: SOON,
        opening: SOON,
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    rig.stage.hold(Call::Speak);
    rig.stage.hold(Call::Open);
    let old = rig.say("Old.");
    assert_eq!(rig.next_news(), News::Lost(Loss::NoAnswer));
    rig.wait_for("2 open");
    let new = rig.say("New.");
    assert_eq!(rig.next_news(), News::CutOff(old));
    rig.stage.change(|script| script.prompt = true);
    // The first connection thaws while the second still hangs.
    rig.stage.release(Call::Speak);
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(new));
    assert_eq!(rig.next_news(), News::Ended(new));
    let mut calls = rig.wait_for("1 speak New.");
    calls.retain(|call| !call.ends_with("open"));
    assert_eq!(
        calls,
        Vec::<String>::new(),
        "the newest text goes out at once"
    );
    rig.stage.release(Call::Open);
    rig.wait_for("2 closed");
}

#[test]
fn a_worker_taken_back_with_nothing_to_say_stops_the_old_text() {
    let patience = Patience {
        answer: SOON,
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    rig.stage.hold(Call::Speak);
    rig.stage.hold(Call::Open);
    let id = rig.say("Old.");
    assert_eq!(rig.next_news(), News::Lost(Loss::NoAnswer));
    rig.speaker.as_ref().unwrap().hush();
    assert_eq!(rig.next_news(), News::CutOff(id));
    rig.stage.release(Call::Speak);
    assert_eq!(rig.next_news(), News::Ready);
    rig.wait_for("1 stop");
}

#[test]
fn a_worker_taken_back_late_stops_a_text_that_was_hushed_long_ago() {
    let patience = Patience {
        answer: SOON,
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    rig.stage.hold(Call::Speak);
    rig.stage.hold(Call::Open);
    let id = rig.say("Old.");
    assert_eq!(rig.next_news(), News::Lost(Loss::NoAnswer));
    rig.speaker.as_ref().unwrap().hush();
    assert_eq!(rig.next_news(), News::CutOff(id));
    // The second voice is hushed, and breaks before the first one answers.
    rig.stage.release(Call::Open);
    rig.wait_for("2 manner 165");
    assert_eq!(rig.next_news(), News::Ready);
    rig.stage.hold(Call::Open);
    rig.stage
        .fail(Call::Voices, Trouble::Gone("killed".to_owned()));
    rig.speaker.as_ref().unwrap().voices();
    assert!(matches!(rig.next_news(), News::Lost(Loss::Broken(_))));
    rig.stage.mend();
    rig.stage.release(Call::Speak);
    rig.wait_for("1 stop");
}

#[test]
fn a_frozen_service_holds_no_more_threads_than_agreed() {
    let patience = Patience {
        opening: Duration::from_millis(5),
        ..unhurried()
    };
    let stage = Stage::default();
    stage.hold(Call::Open);
    let rig = Rig::new(stage, patience);
    assert_eq!(rig.next_news(), News::Lost(Loss::NoAnswer));
    let id = rig.say("One.");
    rig.wait_for("3 open");
    // A fourth would come a hundred times over in this while.
    assert_eq!(rig.told.recv_timeout(SOON).ok(), None);
    // With all places taken, only an answer can bring a voice: the first one that comes.
    rig.stage.change(|script| script.prompt = true);
    rig.stage.release(Call::Open);
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(id));
    let most = rig.stage.0.0.lock().unwrap().most_threads;
    assert_eq!(most, 3);
}

#[test]
fn a_frozen_service_that_dies_is_looked_for_again() {
    let patience = Patience {
        opening: Duration::from_millis(5),
        ..unhurried()
    };
    let stage = Stage::default();
    stage.hold(Call::Open);
    let rig = Rig::new(stage, patience);
    assert_eq!(rig.next_news(), News::Lost(Loss::NoAnswer));
    rig.wait_for("3 open");
    rig.stage
        .fail(Call::Open, Trouble::Gone("killed".to_owned()));
    rig.stage.release(Call::Open);
    rig.wait_for("5 open");
    rig.stage.mend();
    assert_eq!(rig.next_news(), News::Ready);
}

#[test]
fn a_service_that_never_begins_is_lost_until_it_does() {
    let patience = Patience {
        beginning: SOON,
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    let id = rig.say("One.");
    assert_eq!(rig.next_news(), News::Lost(Loss::NeverBegan));
    // A new connection, once; then the same one again and again.
    rig.wait_for("2 speak One.");
    rig.wait_for("2 speak One.");
    rig.stage.change(|script| script.prompt = true);
    assert_eq!(rig.next_news(), News::Ready);
    assert_eq!(rig.next_news(), News::Began(id));
    assert_eq!(rig.next_news(), News::Ended(id));
}

#[test]
fn a_speech_that_never_ends_is_begun_once_more_and_then_given_up() {
    let patience = Patience {
        ending: SOON,
        ..unhurried()
    };
    let rig = Rig::ready(patience);
    // Twice the expected time of one word is below the floor.
    let id = rig.say("One");
    rig.wait_for("1 speak One");
    rig.stage.hear(Heard::Began(key(1)));
    assert_eq!(rig.next_news(), News::Began(id));
    assert_eq!(rig.next_news(), News::Lost(Loss::NeverEnded));
    rig.wait_for("2 speak One");
    rig.stage.hear(Heard::Began(key(2)));
    assert_eq!(
        rig.next_news(),
        News::Began(id),
        "a beginning proves nothing here"
    );
    assert_eq!(rig.next_news(), News::CutOff(id));
    rig.wait_for("2 stop");
    rig.stage.change(|script| script.prompt = true);
    let next = rig.say("Two");
    assert_eq!(rig.next_news(), News::Began(next));
    assert_eq!(rig.next_news(), News::Ended(next));
    assert_eq!(rig.next_news(), News::Ready);
}

#[test]
fn a_voice_that_panics_is_a_loss_like_another() {
    let (news_to, news) = mpsc::channel();
    let (called_to, called) = mpsc::channel();
    let make = move |_ear: Ear| -> Result<Box<dyn Voice>, Trouble> {
        called_to.send(()).unwrap();
        panic!("a service library at its worst (this line in the log is part of the test)");
    };
    let speaker = Speaker::start_with(make, move |n| drop(news_to.send(n)), unhurried()).unwrap();
    let first = news.recv_timeout(DEADLINE).unwrap();
    assert!(matches!(first, News::Lost(Loss::Broken(_))), "{first:?}");
    for _ in 0..3 {
        called.recv_timeout(DEADLINE).unwrap();
    }
    drop(speaker);
}
