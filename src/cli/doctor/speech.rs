//! Whether the speech service answers, and in which languages it speaks.

use std::sync::mpsc::{self, Receiver};
use std::time::{Duration, Instant};

use super::Finding;
use crate::voice::{Speaker, SystemVoice, Timeouts, VoiceError, VoiceEvent, VoiceName};
use crate::words::Words;

pub(super) fn look(words: &Words) -> Finding {
    let timeouts = Timeouts::default();
    let (tell, news) = mpsc::channel();
    let started = Speaker::start(SystemVoice::maker(), move |news| {
        // Nobody listens any more once the question is answered.
        let _ = tell.send(news);
    });
    let speaker = match started {
        Ok(speaker) => speaker,
        Err(error) => return lost(&VoiceError::NoService(error.to_string()), words),
    };
    let opening = timeouts.opening + timeouts.answer;
    match wait(&news, opening, |news| {
        matches!(news, VoiceEvent::Ready).then_some(())
    }) {
        Answer::Given(()) => {}
        Answer::Lost(loss) => return lost(&loss, words),
        Answer::TooLate => return lost(&VoiceError::NoAnswer, words),
    }
    speaker.voices();
    let listing = timeouts.listing + timeouts.answer;
    let voices = wait(&news, listing, |news| match news {
        VoiceEvent::Voices(voices) => Some(voices),
        _ => None,
    });
    match voices {
        Answer::Given(voices) => {
            let language = words.tag().language;
            let fits = |voice: &&VoiceName| {
                let spoken = voice.language.split(['-', '_']).next().unwrap_or_default();
                spoken.eq_ignore_ascii_case(language.as_str())
            };
            let fitting = voices.iter().filter(fits).count();
            let line = words.doctor_speech(voices.len(), fitting);
            if fitting > 0 {
                Finding::well(line)
            } else {
                Finding::ill(line)
            }
        }
        Answer::Lost(loss) => lost(&loss, words),
        Answer::TooLate => lost(&VoiceError::NoAnswer, words),
    }
}

fn lost(loss: &VoiceError, words: &Words) -> Finding {
    Finding::ill(match loss {
        VoiceError::NoAnswer | VoiceError::NeverBegan | VoiceError::NeverEnded => {
            words.plainly("doctor-speech-silent", &[])
        }
        VoiceError::NoService(reason)
        | VoiceError::Broken(reason)
        | VoiceError::Refused(reason) => words.plainly("doctor-speech-none", &[("reason", reason)]),
    })
}

enum Answer<T> {
    Given(T),
    Lost(VoiceError),
    TooLate,
}

/// Waits for the news that answer a question, though not for ever.
fn wait<T>(
    news: &Receiver<VoiceEvent>,
    patience: Duration,
    mut answers: impl FnMut(VoiceEvent) -> Option<T>,
) -> Answer<T> {
    let until = Instant::now() + patience;
    while let Ok(news) = news.recv_timeout(until.saturating_duration_since(Instant::now())) {
        if let VoiceEvent::Lost(loss) = news {
            return Answer::Lost(loss);
        }
        if let Some(answer) = answers(news) {
            return Answer::Given(answer);
        }
    }
    Answer::TooLate
}
