//! A speech service made of a script, and tests of the supervisor against it.
//!
//! The scripted voice answers every call at once, except those that a test holds back: they hang
//! until the test lets them go, as a frozen service would make them. Everything it is asked to do
//! is told on a channel, so that a test waits for what happens and never for time to pass.

mod losses;
mod wishes;

use std::collections::HashSet;
use std::sync::mpsc::{self, Receiver, Sender};
use std::sync::{Arc, Condvar, Mutex};
use std::time::Duration;

use super::*;

/// Long enough for the slowest machine, short enough for a failing test.
const DEADLINE: Duration = Duration::from_secs(20);
/// A watch that must not run out in a test.
const NEVER: Duration = Duration::from_secs(3600);
/// A watch that the test waits for.
const SOON: Duration = Duration::from_millis(500);

#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
enum Call {
    Open,
    Speak,
    Stop,
    Manner,
    Voices,
    Check,
}

#[derive(Default)]
struct Script {
    held: HashSet<Call>,
    /// What such a call comes to.
    troubles: Vec<(Call, Trouble)>,
    /// Calls to speak so far, over all voices: the key of each.
    spoken: u64,
    ears: Vec<Ear>,
    /// Begin and end each text within the call to speak it.
    prompt: bool,
    threads: usize,
    most_threads: usize,
}

#[derive(Clone, Default)]
struct Stage(Arc<(Mutex<Script>, Condvar)>);

impl Stage {
    fn change(&self, change: impl FnOnce(&mut Script)) {
        change(&mut self.0.0.lock().unwrap());
        self.0.1.notify_all();
    }

    fn hold(&self, call: Call) {
        self.change(|script| script.held.extend([call]));
    }

    fn release(&self, call: Call) {
        self.change(|script| script.held.retain(|held| *held != call));
    }

    fn fail(&self, call: Call, trouble: Trouble) {
        self.change(|script| script.troubles.push((call, trouble)));
    }

    fn mend(&self) {
        self.change(|script| script.troubles.clear());
    }

    /// The newest voice reports.
    fn hear(&self, heard: Heard) {
        let ear = self.0.0.lock().unwrap().ears.last().cloned();
        ear.expect("a voice was made").hear(heard);
    }

    fn perform(&self, call: Call) -> Result<(), Trouble> {
        let mut script = self.0.0.lock().unwrap();
        while script.held.contains(&call) {
            script = self.0.1.wait(script).unwrap();
        }
        match script.troubles.iter().find(|(bad, _)| *bad == call) {
            Some((_, trouble)) => Err(trouble.clone()),
            None => Ok(()),
        }
    }
}

struct ScriptedVoice {
    number: usize,
    stage: Stage,
    ear: Ear,
    told: Sender<String>,
}

impl ScriptedVoice {
    fn tell(&self, what: &str) {
        let _ = self.told.send(format!("{} {what}", self.number));
    }
}

impl Voice for ScriptedVoice {
    fn speak(&mut self, text: &SpokenText) -> Result<Option<MessageKey>, Trouble> {
        self.tell(&format!("speak {}", text.as_str()));
        self.stage.perform(Call::Speak)?;
        let mut prompt = false;
        let mut number = 0;
        self.stage.change(|script| {
            script.spoken += 1;
            number = script.spoken;
            prompt = script.prompt;
        });
        let key = MessageKey(number.to_string());
        if prompt {
            self.ear.hear(Heard::Began(key.clone()));
            self.ear.hear(Heard::Ended(key.clone()));
        }
        Ok(Some(key))
    }

    fn stop(&mut self) -> Result<(), Trouble> {
        self.tell("stop");
        self.stage.perform(Call::Stop)
    }

    fn set_manner(&mut self, manner: &Manner) -> Result<Fit, Trouble> {
        self.tell(&format!("manner {}", manner.words_per_minute));
        self.stage.perform(Call::Manner)?;
        Ok(match &manner.voice {
            Some(name) => Fit::NoSuchVoice(name.clone()),
            None => Fit::AsWished,
        })
    }

    fn voices(&mut self) -> Result<Vec<VoiceName>, Trouble> {
        self.tell("voices");
        self.stage.perform(Call::Voices)?;
        Ok(vec![VoiceName {
            language: "en".to_owned(),
            name: "Ada".to_owned(),
        }])
    }

    fn check(&mut self) -> Result<(), Trouble> {
        self.tell("check");
        self.stage.perform(Call::Check)
    }
}

impl Drop for ScriptedVoice {
    fn drop(&mut self) {
        self.stage.change(|script| script.threads -= 1);
        self.tell("closed");
    }
}

/// A speaker with a scripted voice, and what came of both.
struct Rig {
    speaker: Option<Speaker>,
    news: Receiver<News>,
    told: Receiver<String>,
    stage: Stage,
}

impl Rig {
    fn new(stage: Stage, patience: Patience) -> Self {
        let (told_to, told) = mpsc::channel();
        let (news_to, news) = mpsc::channel();
        let maker = stage.clone();
        let make = move |ear: Ear| -> Result<Box<dyn Voice>, Trouble> {
            let mut number = 0;
            maker.change(|script| {
                script.ears.push(ear.clone());
                number = script.ears.len();
                script.threads += 1;
                script.most_threads = script.most_threads.max(script.threads);
            });
            let voice = ScriptedVoice {
                number,
                stage: maker.clone(),
                ear,
                told: told_to.clone(),
            };
            voice.tell("open");
            maker.perform(Call::Open)?;
            Ok(Box::new(voice))
        };
        let notify = move |news| drop(news_to.send(news));
        let speaker = Speaker::start_with(make, notify, patience).unwrap();
        Self {
            speaker: Some(speaker),
            news,
            told,
            stage,
        }
    }

    fn ready(patience: Patience) -> Self {
        let rig = Self::new(Stage::default(), patience);
        assert_eq!(rig.next_news(), News::Ready);
        rig.wait_for("1 manner 165");
        rig
    }

    fn say(&self, text: &str) -> Utterance {
        self.speaker.as_ref().unwrap().say(text).expect("a text")
    }

    fn next_news(&self) -> News {
        self.news.recv_timeout(DEADLINE).expect("news")
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

impl Drop for Rig {
    fn drop(&mut self) {
        // Let hanging threads end.
        self.stage.change(|script| script.held.clear());
    }
}

fn unhurried() -> Patience {
    Patience {
        answer: NEVER,
        listing: NEVER,
        opening: NEVER,
        beginning: NEVER,
        ending: NEVER,
        check: NEVER,
        retry: Duration::from_millis(5),
        slow_retry: Duration::from_millis(5),
        closing: DEADLINE,
        most_workers: 3,
    }
}

fn key(number: u64) -> MessageKey {
    MessageKey(number.to_string())
}
