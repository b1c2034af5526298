//! Whether the speech service answers, and in which languages it speaks.

use std::sync::mpsc::{self, Receiver};
use std::time::{Duration, Instant};

use super::Finding;
use crate::logging::Platform;
use crate::voice::{
    Speaker, SystemVoice, Timeouts, VoiceError, VoiceEvent, VoiceName, VoiceSource,
};
use crate::words::Words;

pub(super) fn look(words: &Words) -> Finding {
    let timeouts = Timeouts::default();
    let (tell, events) = mpsc::channel();
    let started = Speaker::start(SystemVoice::maker(), move |event| {
        // Nobody listens any more once the question is answered.
        let _ = tell.send(event);
    });
    let speaker = match started {
        Ok(speaker) => speaker,
        Err(error) => return lost(&VoiceError::NoService(error.to_string()), words),
    };
    let opening = timeouts.opening + timeouts.answer;
    match wait(&events, opening, |event| {
        matches!(event, VoiceEvent::Ready).then_some(())
    }) {
        Reply::Given(()) => {}
        Reply::Lost(loss) => return lost(&loss, words),
        Reply::TooLate => return lost(&VoiceError::NoAnswer, words),
    }
    speaker.voices();
    let listing = timeouts.listing + timeouts.answer;
    let voices = wait(&events, listing, |event| match event {
        VoiceEvent::Voices(voices) => Some(voices),
        _ => None,
    });
    match voices {
        Reply::Given(voices) => {
            let language = words.tag().language;
            let fitting: Vec<VoiceName> = voices
                .iter()
                .filter(|voice| voice.speaks(language.as_str()))
                .cloned()
                .collect();
            let line = words.doctor_speech(voices.len(), fitting.len());
            if fitting.is_empty() {
                Finding::ill(line)
            } else {
                let source = VoiceSource::of(language.as_str(), Platform::is_debian());
                let natural = fitting.iter().filter(|voice| voice.is_natural());
                let natural = natural.map(|voice| voice.name.as_str());
                let natural = words.natural_voices(natural, source.named());
                Finding::well(format!("{line} {natural}"))
            }
        }
        Reply::Lost(loss) => lost(&loss, words),
        Reply::TooLate => lost(&VoiceError::NoAnswer, words),
    }
}

fn lost(loss: &VoiceError, words: &Words) -> Finding {
    log::warn!("no voice: {loss}");
    let none = |why| words.plainly("doctor-speech-none", &[("why", why)]);
    Finding::ill(match loss {
        VoiceError::NoAnswer | VoiceError::NeverBegan | VoiceError::NeverEnded => {
            words.plainly("doctor-speech-silent", &[])
        }
        VoiceError::NoService(_) => none("absent"),
        VoiceError::Broken(_) => none("ended"),
        VoiceError::Refused(_) => none("refused"),
    })
}

/// What came of a question to the speech service.
enum Reply<T> {
    Given(T),
    Lost(VoiceError),
    TooLate,
}

/// Waits for the event that answers a question, though not for ever.
fn wait<T>(
    events: &Receiver<VoiceEvent>,
    timeout: Duration,
    mut answers: impl FnMut(VoiceEvent) -> Option<T>,
) -> Reply<T> {
    let until = Instant::now() + timeout;
    while let Ok(event) = events.recv_timeout(until.saturating_duration_since(Instant::now())) {
        if let VoiceEvent::Lost(loss) = event {
            return Reply::Lost(loss);
        }
        if let Some(answer) = answers(event) {
            return Reply::Given(answer);
        }
    }
    Reply::TooLate
}
