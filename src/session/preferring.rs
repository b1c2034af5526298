//! What the tyer prefers, changed while the session goes on.

use super::controller::Session;
use super::effect::Effect;
use crate::settings::{Settings, Verbosity};
use crate::voice::Cue;
use crate::words::Words;

impl Session {
    /// Takes these settings as they were changed by the tyer: language, units, voice, pedals and
    /// the rest hold from now on, and a sound or flash that was switched on is heard and seen.
    pub fn set(&mut self, settings: Settings) {
        let (before, now) = (&self.settings, &settings);
        let sounds = now.cues.is_on && now.cues != before.cues;
        let flashes = now.flash && !before.flash;
        if before.language.tag != now.language.tag {
            let detail = self.words.detail();
            self.words = Words::chosen(&now.language);
            self.words.set_detail(detail);
            self.notices.reword();
        } else if before.language.units != now.language.units {
            // The language may be one that was asked for on the command line.
            self.words.measure_in(now.language.units);
            self.notices.reword();
        }
        self.prefer(settings);
        if sounds || flashes {
            self.cue(Cue::Next);
        }
    }

    /// Speaks by these settings until others are taken: a voice is heard before it is.
    pub fn try_voice(&mut self, settings: &Settings) {
        let speech = settings.speech_in(&self.words);
        self.effects.push(Effect::SetSpeech(speech));
    }

    /// Takes these settings, has them saved, and acts by them from now on.
    pub(super) fn prefer(&mut self, settings: Settings) {
        self.effects
            .push(Effect::KeepSettings(Box::new(settings.clone())));
        if settings.speech_in(&self.words) != self.settings.speech_in(&self.words) {
            self.notices.no_such_voice(None);
        }
        self.pedals.set(settings.bindings.clone(), settings.times);
        if settings.knocks != self.settings.knocks {
            self.effects.push(Effect::Listen(settings.knocks));
            self.notices.deaf(false);
        }
        self.settings = settings;
        let speech = self.settings.speech_in(&self.words);
        self.effects.push(Effect::SetSpeech(speech));
    }

    pub(super) fn prefer_verbosity(&mut self, verbosity: Verbosity) {
        self.settings.verbosity = verbosity;
        self.effects
            .push(Effect::KeepSettings(Box::new(self.settings.clone())));
    }
}
