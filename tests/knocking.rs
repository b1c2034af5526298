//! Knocks as presses: two act at once, a third turns them back, and what cannot be turned back waits
//! until the row is over.

use std::time::Duration;

use marlinspeak::guide::{Place, Plan};
use marlinspeak::pedal::{EarNews, Input, InputEvent, Intent, Knock, Press, Transition};
use marlinspeak::session::{Effect, Event, InHand, Session, Wishes};
use marlinspeak::settings::Settings;
use marlinspeak::voice::Cue;
use marlinspeak::words::{Spoken, Words};

/// A session with a tie in hand, and the time.
struct Bench {
    session: Session,
    now: Duration,
}

impl Bench {
    fn new(settings: Settings) -> Self {
        let mut session = Session::new(Words::english(), settings, Wishes::default());
        let bell_rope = Plan::read("3", "5", "1", "1").unwrap();
        session.take_in_hand(InHand::begun(None, &bell_rope), Duration::ZERO);
        session.effects();
        Self {
            session,
            now: Duration::ZERO,
        }
    }

    fn input(&mut self, number: u8, transition: Transition) -> Option<Intent> {
        let input = Input::Knocks(number);
        let raw = InputEvent { input, transition };
        let intent = self.session.take(&raw, self.now);
        if intent.is_some() {
            self.session.press(intent, &Press::default(), self.now);
        }
        intent
    }

    /// Somebody knocks so many times, and it is over; what each part of that came to.
    fn knocks(&mut self, count: u8) -> Vec<Option<Intent>> {
        self.now += Duration::from_secs(10);
        let mut came_to = Vec::new();
        for number in 2..=count {
            self.now += Duration::from_millis(250);
            came_to.push(self.input(number, Transition::Down));
        }
        self.now += Duration::from_millis(500);
        came_to.push(self.input(count, Transition::Up));
        came_to
    }

    fn place(&self) -> Place {
        self.session.walk().unwrap().place()
    }

    /// What is kept of the tie but for the number of its presses.
    fn kept(&self) -> (Place, f64, Plan) {
        let tie = self.session.tie().unwrap().tie();
        (tie.place, tie.work_time.seconds(), tie.plan.clone())
    }

    /// What was said last.
    fn said(&mut self) -> Option<String> {
        let says = |effect| match effect {
            Effect::Say(said) => Some(said.to_string()),
            _ => None,
        };
        self.session.effects().into_iter().filter_map(says).last()
    }
}

#[test]
fn two_knocks_go_on_at_once_and_three_say_it_again_where_it_was() {
    let mut bench = Bench::new(Settings::default());
    assert_eq!(bench.knocks(2), [Some(Intent::Next), None]);
    let (stands, kept) = (bench.place(), bench.kept());
    let step = bench.said().unwrap();
    assert!(step.contains("Leg 1"), "{step}");
    // The second of three has gone on; the third turns that back.
    let came_to = bench.knocks(3);
    assert_eq!(came_to, [Some(Intent::Next), Some(Intent::Again), None]);
    assert_eq!(bench.place(), stands);
    assert_eq!(bench.said(), Some(step));
    assert_eq!(bench.kept(), kept);
    // The time that was not counted belongs to the press that stays.
    bench.knocks(2);
    assert_ne!(bench.place(), stands);
    assert!(bench.kept().1 > kept.1 + 20.0, "{:?}", bench.kept());
}

#[test]
fn the_voice_goes_on_until_the_second_knock_and_a_cue_answers_that() {
    let mut bench = Bench::new(Settings::default());
    let first = EarNews::Knock(Knock {
        at: Duration::from_secs(9),
        number: 1,
        over_room: 20.0,
    });
    let here = Spoken::default();
    bench
        .session
        .hear(Event::Ear(first), &here, Duration::from_secs(9));
    let effects = bench.session.effects();
    let is_heard =
        |effect: &Effect| matches!(effect, Effect::Hush | Effect::Say(_) | Effect::Cue(..));
    assert!(!effects.iter().any(is_heard), "the voice is cut off by one");
    bench.input(2, Transition::Down);
    let effects = bench.session.effects();
    let is_cue = |effect: &Effect| matches!(effect, Effect::Cue(Cue::Next, _));
    assert!(effects.iter().any(is_cue), "no cue answers the second");
    assert!(
        effects
            .iter()
            .any(|effect| matches!(effect, Effect::Say(_)))
    );
}

#[test]
fn three_knocks_at_either_end_of_a_tie_stay_there() {
    let mut bench = Bench::new(Settings::default());
    let begin = bench.place();
    bench.knocks(3);
    assert_eq!(bench.place(), begin);
    let last = bench.session.walk().unwrap().script().last();
    while bench.place() != last {
        bench.knocks(2);
    }
    bench.knocks(3);
    assert_eq!(bench.place(), last);
    // Nor is a press of something else turned back.
    bench.input(2, Transition::Down);
    let back = InputEvent {
        input: Input::key("PageUp"),
        transition: Transition::Down,
    };
    bench.now += Duration::from_secs(1);
    let intent = bench.session.take(&back, bench.now);
    bench.session.press(intent, &Press::default(), bench.now);
    let before_last = bench.place();
    assert_ne!(before_last, last);
    bench.input(3, Transition::Down);
    assert_eq!(bench.place(), before_last);
}

#[test]
fn three_knocks_keep_a_pause_and_a_question() {
    let mut bench = Bench::new(Settings::default());
    bench.knocks(2);
    let press = |bench: &mut Bench, intent| {
        bench.now += Duration::from_secs(5);
        bench
            .session
            .press(Some(intent), &Press::default(), bench.now);
    };
    press(&mut bench, Intent::Wrong);
    let keys = bench.session.walk().unwrap().keys();
    assert_eq!(bench.knocks(3)[1], Some(Intent::Again));
    assert_eq!(bench.session.walk().unwrap().keys(), keys);
}

#[test]
fn what_cannot_be_turned_back_waits_until_the_row_is_over() {
    let mut settings = Settings::default();
    settings.bindings.bind(Input::Knocks(2), Intent::Pause);
    let mut bench = Bench::new(settings);
    assert_eq!(bench.knocks(2), [None, Some(Intent::Pause)]);
    assert_eq!(bench.knocks(3), [None, Some(Intent::Again), None]);
    // Away from the tie nothing is turned back: next waits too.
    let mut bench = Bench::new(Settings::default());
    bench.session.look_away();
    assert_eq!(bench.knocks(2), [None, Some(Intent::Next)]);
    assert_eq!(bench.knocks(3), [None, Some(Intent::Again), None]);
}

#[test]
fn rows_of_other_lengths_are_learnt_as_a_whole() {
    let mut settings = Settings::default();
    settings.bindings.bind(Input::Knocks(4), Intent::Where);
    let mut bench = Bench::new(settings);
    let begin = bench.place();
    let came_to = bench.knocks(4);
    assert_eq!(came_to.last_chunk(), Some(&[Some(Intent::Where), None]));
    assert_eq!(bench.place(), begin);
    // What is to be learnt is the row as it was when it was over.
    let mut learn = |number, transition| {
        let input = Input::Knocks(number);
        let raw = InputEvent { input, transition };
        bench.session.take_to_learn(&raw, bench.now)
    };
    assert_eq!(learn(2, Transition::Down), None);
    assert_eq!(learn(3, Transition::Down), None);
    assert_eq!(learn(3, Transition::Up), Some(Input::Knocks(3)));
}

#[test]
fn nothing_listens_until_it_is_switched_on() {
    let listens = |session: &mut Session| -> Vec<bool> {
        let effects = session.effects().into_iter();
        effects
            .filter_map(|effect| match effect {
                Effect::Listen(is_wanted) => Some(is_wanted),
                _ => None,
            })
            .collect()
    };
    let words = Words::english;
    let mut session = Session::new(words(), Settings::default(), Wishes::default());
    assert!(listens(&mut session).is_empty());
    let on = Settings {
        knocks: true,
        ..Settings::default()
    };
    session.set(on.clone());
    assert_eq!(listens(&mut session), [true]);
    session.set(Settings::default());
    assert_eq!(listens(&mut session), [false]);
    let mut session = Session::new(words(), on, Wishes::default());
    assert_eq!(listens(&mut session), [true]);
}
