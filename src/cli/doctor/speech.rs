//! Whether the speech service answers, and in which languages it speaks.

use std::sync::mpsc::{self, Receiver};
use std::time::{Duration, Instant};

use super::Finding;
use crate::voice::{Loss, News, Patience, Speaker, SystemVoice, VoiceName};
use crate::words::Words;

pub(super) fn look(words: &Words) -> Finding {
    let patience = Patience::default();
    let (tell, news) = mpsc::channel();
    let started = Speaker::start(SystemVoice::maker(), move |news| {
        // Nobody listens any more once the question is answered.
        let _ = tell.send(news);
    });
    let speaker = match started {
        Ok(speaker) => speaker,
        Err(error) => return lost(&Loss::NoService(error.to_string()), words),
    };
    let opening = patience.opening + patience.answer;
    match wait(&news, opening, |news| {
        matches!(news, News::Ready).then_some(())
    }) {
        Answer::Given(()) => {}
        Answer::Lost(loss) => return lost(&loss, words),
        Answer::TooLate => return lost(&Loss::NoAnswer, words),
    }
    speaker.voices();
    let listing = patience.listing + patience.answer;
    let voices = wait(&news, listing, |news| match news {
        News::Voices(voices) => Some(voices),
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
        Answer::TooLate => lost(&Loss::NoAnswer, words),
    }
}

fn lost(loss: &Loss, words: &Words) -> Finding {
    Finding::ill(match loss {
        Loss::NoAnswer | Loss::NeverBegan | Loss::NeverEnded => {
            words.plainly("doctor-speech-silent", &[])
        }
        Loss::NoService(reason) | Loss::Broken(reason) | Loss::Refused(reason) => {
            words.plainly("doctor-speech-none", &[("reason", reason)])
        }
    })
}

enum Answer<T> {
    Given(T),
    Lost(Loss),
    TooLate,
}

/// Waits for the news that answer a question, though not for ever.
fn wait<T>(
    news: &Receiver<News>,
    patience: Duration,
    mut answers: impl FnMut(News) -> Option<T>,
) -> Answer<T> {
    let until = Instant::now() + patience;
    while let Ok(news) = news.recv_timeout(until.saturating_duration_since(Instant::now())) {
        if let News::Lost(loss) = news {
            return Answer::Lost(loss);
        }
        if let Some(answer) = answers(news) {
            return Answer::Given(answer);
        }
    }
    Answer::TooLate
}
