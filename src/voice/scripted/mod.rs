//! A scripted speech service, and tests of the supervisor against it.
//!
//! The scripted voice answers every call at once, except those that a test holds back: they hang
//! until the test lets them go, as a frozen service would make them. Everything it is asked to do
//! is told on a channel, so that a test waits for what happens and never for time to pass.

mod losses;
mod requests;

use std::collections::HashSet;
use std::sync::mpsc::{self, Receiver, Sender};
use std::sync::{Arc, Condvar, Mutex};
use std::time::Duration;

use super::supervisor::MOST_WORKERS;
use super::*;

/// Long enough for the slowest machine, short enough for a failing test.
const DEADLINE: Duration = Duration::from_secs(20);
/// A watch that must not run out in a test.
const NEVER: Duration = Duration::from_secs(3600);
/// A watch that the test waits for.
const SOON: Duration = Duration::from_millis(500);

#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
enum ScriptedCall {
    Open,
    Speak,
    Stop,
    SetSpeech,
    Voices,
    Check,
}

#[derive(Default)]
struct ServiceState {
    held: HashSet<ScriptedCall>,
    /// What such a call comes to.
    errors: Vec<(ScriptedCall, CallError)>,
    /// Calls to speak so far, over all voices: the key of each.
    spoken: u64,
    sinks: Vec<EventSink>,
    /// Begin and end each text within the call to speak it.
    prompt: bool,
    threads: usize,
    most_threads: usize,
}

#[derive(Clone, Default)]
struct ScriptedService(Arc<(Mutex<ServiceState>, Condvar)>);

impl ScriptedService {
    fn change(&self, change: impl FnOnce(&mut ServiceState)) {
        change(&mut self.0.0.lock().unwrap());
        self.0.1.notify_all();
    }

    fn hold(&self, call: ScriptedCall) {
        self.change(|state| state.held.extend([call]));
    }

    fn release(&self, call: ScriptedCall) {
        self.change(|state| state.held.retain(|held| *held != call));
    }

    fn fail(&self, call: ScriptedCall, trouble: CallError) {
        self.change(|state| state.errors.push((call, trouble)));
    }

    fn mend(&self) {
        self.change(|state| state.errors.clear());
    }

    /// The newest voice reports.
    fn send(&self, event: SpeechEvent) {
        let events = self.0.0.lock().unwrap().sinks.last().cloned();
        events.expect("a voice was made").send(event);
    }

    fn perform(&self, call: ScriptedCall) -> Result<(), CallError> {
        let mut state = self.0.0.lock().unwrap();
        while state.held.contains(&call) {
            state = self.0.1.wait(state).unwrap();
        }
        match state.errors.iter().find(|(bad, _)| *bad == call) {
            Some((_, trouble)) => Err(trouble.clone()),
            None => Ok(()),
        }
    }
}

struct ScriptedVoice {
    number: usize,
    service: ScriptedService,
    sink: EventSink,
    told: Sender<String>,
}

impl ScriptedVoice {
    fn tell(&self, what: &str) {
        let _ = self.told.send(format!("{} {what}", self.number));
    }
}

impl Voice for ScriptedVoice {
    fn speak(&mut self, text: &SpeakableText) -> Result<Option<MessageKey>, CallError> {
        self.tell(&format!("speak {}", text.as_str()));
        self.service.perform(ScriptedCall::Speak)?;
        let mut prompt = false;
        let mut number = 0;
        self.service.change(|state| {
            state.spoken += 1;
            number = state.spoken;
            prompt = state.prompt;
        });
        let key = MessageKey(number.to_string());
        if prompt {
            self.sink.send(SpeechEvent::Began(key.clone()));
            self.sink.send(SpeechEvent::Ended(key.clone()));
        }
        Ok(Some(key))
    }

    fn stop(&mut self) -> Result<(), CallError> {
        self.tell("stop");
        self.service.perform(ScriptedCall::Stop)
    }

    fn set_speech(&mut self, speech: &SpeechSettings) -> Result<VoiceMatch, CallError> {
        self.tell(&format!("speech {}", speech.words_per_minute));
        self.service.perform(ScriptedCall::SetSpeech)?;
        Ok(match &speech.voice {
            Some(name) => VoiceMatch::NoSuchVoice(name.clone()),
            None => VoiceMatch::Found,
        })
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, CallError> {
        self.tell("voices");
        self.service.perform(ScriptedCall::Voices)?;
        Ok(vec![VoiceName {
            language: "en".to_owned(),
            name: "Ada".to_owned(),
            engine: None,
        }])
    }

    fn check(&mut self) -> Result<(), CallError> {
        self.tell("check");
        self.service.perform(ScriptedCall::Check)
    }
}

impl Drop for ScriptedVoice {
    fn drop(&mut self) {
        self.service.change(|state| state.threads -= 1);
        self.tell("closed");
    }
}

/// A speaker with a scripted voice, and what came of both.
struct Harness {
    speaker: Option<Speaker>,
    events: Receiver<VoiceEvent>,
    told: Receiver<String>,
    service: ScriptedService,
}

impl Harness {
    fn new(service: ScriptedService, timeouts: Timeouts) -> Self {
        let (told_to, told) = mpsc::channel();
        let (events_to, events) = mpsc::channel();
        let maker = service.clone();
        let make = move |sink: EventSink| -> Result<Box<dyn Voice>, CallError> {
            let mut number = 0;
            maker.change(|state| {
                state.sinks.push(sink.clone());
                number = state.sinks.len();
                state.threads += 1;
                state.most_threads = state.most_threads.max(state.threads);
            });
            let voice = ScriptedVoice {
                number,
                service: maker.clone(),
                sink,
                told: told_to.clone(),
            };
            voice.tell("open");
            maker.perform(ScriptedCall::Open)?;
            Ok(Box::new(voice))
        };
        let notify = move |event| drop(events_to.send(event));
        let speaker = Speaker::start_with(make, notify, timeouts).unwrap();
        Self {
            speaker: Some(speaker),
            events,
            told,
            service,
        }
    }

    fn ready(timeouts: Timeouts) -> Self {
        let harness = Self::new(ScriptedService::default(), timeouts);
        assert_eq!(harness.next_event(), VoiceEvent::Ready);
        harness.wait_for("1 speech 165");
        harness
    }

    fn say(&self, text: &str) -> Utterance {
        self.speaker.as_ref().unwrap().say(text).expect("a text")
    }

    fn next_event(&self) -> VoiceEvent {
        self.events.recv_timeout(DEADLINE).expect("an event")
    }

    /// Waits for a call; gives those before it.
    fn wait_for(&self, call: &str) -> Vec<String> {
        let mut before = Vec::new();
        loop {
            match self.told.recv_timeout(DEADLINE) {
                Ok(told) if told == call => return before,
                Ok(told) => before.push(told),
                Err(error) => panic!("no call {call:?}, only {before:?}: {error}"),
            }
        }
    }

    fn close(&mut self) {
        self.speaker = None;
    }
}

impl Drop for Harness {
    fn drop(&mut self) {
        // Let hanging threads end.
        self.service.change(|state| state.held.clear());
    }
}

fn unhurried() -> Timeouts {
    Timeouts {
        answer: NEVER,
        listing: NEVER,
        opening: NEVER,
        beginning: NEVER,
        ending: NEVER,
        check: NEVER,
        retry: Duration::from_millis(5),
        slow_retry: Duration::from_millis(5),
        closing: DEADLINE,
    }
}

fn key(number: u64) -> MessageKey {
    MessageKey(number.to_string())
}
