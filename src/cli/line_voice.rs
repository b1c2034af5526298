//! A voice for a command that asks line by line: each line cuts off the one before, and the last one is
//! heard to its end.

use std::cell::Cell;
use std::io::{self, Write};
use std::sync::mpsc::{self, Receiver};
use std::time::{Duration, Instant};

use crate::voice::{Speak, Speaker, SystemVoice, Utterance, VoiceEvent};
use crate::words::Spoken;

/// How long the last line may take: a few sentences at the slowest speed.
const LAST_LINE: Duration = Duration::from_secs(60);

/// A voice that tells on standard error when it is lost.
pub(super) struct LineVoice {
    /// None when the system gave it no thread.
    speaker: Option<Speaker>,
    events: Receiver<VoiceEvent>,
    last: Cell<Option<Utterance>>,
    is_lost: Cell<bool>,
    lost: String,
}

impl LineVoice {
    /// Begins to look for a voice. `lost` is the sentence for when there is none.
    pub(super) fn start(lost: String) -> Self {
        let (tell, events) = mpsc::channel();
        let started = Speaker::start(SystemVoice::maker(), move |event| {
            // Nobody listens any more once the command is at its end.
            let _ = tell.send(event);
        });
        let speaker = started.map_err(|error| log::warn!("no voice: {error}"));
        let voice = Self {
            speaker: speaker.ok(),
            events,
            last: Cell::default(),
            is_lost: Cell::default(),
            lost,
        };
        if voice.speaker.is_none() {
            voice.tell_loss();
        }
        voice
    }

    /// Waits until the last line is heard to its end, or no voice is there to say it.
    pub(super) fn speak_out(&self) {
        let until = Instant::now() + LAST_LINE;
        while self.last.get().is_some() && !self.is_lost.get() {
            let left = until.saturating_duration_since(Instant::now());
            let Ok(event) = self.events.recv_timeout(left) else {
                return;
            };
            self.hear(&event);
        }
    }

    fn hear(&self, event: &VoiceEvent) {
        match event {
            VoiceEvent::Ended(over) | VoiceEvent::CutOff(over)
                if self.last.get() == Some(*over) =>
            {
                self.last.set(None);
            }
            VoiceEvent::Ready => self.is_lost.set(false),
            VoiceEvent::Lost(_) => self.tell_loss(),
            _ => {}
        }
    }

    fn tell_loss(&self) {
        self.is_lost.set(true);
        // There is nowhere left to tell that standard error takes nothing.
        let _ = writeln!(io::stderr(), "{}", self.lost);
    }
}

impl Speak for LineVoice {
    fn say(&self, text: &Spoken) {
        self.events.try_iter().for_each(|event| self.hear(&event));
        let said = self
            .speaker
            .as_ref()
            .map(|speaker| speaker.say(text.as_str()));
        self.last.set(said.flatten());
    }

    fn hush(&self) {
        if let Some(speaker) = &self.speaker {
            speaker.hush();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::voice::VoiceError;

    #[test]
    fn the_last_line_is_waited_for_and_a_lost_voice_is_not() {
        let left_unheard = |events_so_far: &[VoiceEvent]| {
            let (tell, events) = mpsc::channel();
            for event in events_so_far {
                tell.send(event.clone()).unwrap();
            }
            drop(tell);
            let voice = LineVoice {
                speaker: None,
                events,
                last: Cell::new(Some(Utterance(2))),
                is_lost: Cell::default(),
                lost: "lost".to_owned(),
            };
            voice.speak_out();
            voice.events.try_iter().count()
        };
        let ended = |id| VoiceEvent::Ended(Utterance(id));
        let more = VoiceEvent::Ready;
        assert_eq!(left_unheard(&[ended(1), ended(2), more.clone()]), 1);
        assert_eq!(
            left_unheard(&[VoiceEvent::Lost(VoiceError::NoAnswer), more]),
            1
        );
    }
}
