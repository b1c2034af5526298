//! What a session makes of the reports of voice, shelf, window and timers.

use std::time::Duration;

use super::controller::Session;
use super::effect::{Event, Timer};
use super::saving::SavingNews;
use crate::pedal::{Intent, Press};
use crate::shelf::Kept;
use crate::voice::{Cue, VoiceEvent};
use crate::words::Spoken;

impl Session {
    /// Takes in what happened outside. `here` is what was said last of what stands before the
    /// tyer, to be said again where something else cuts it off.
    pub fn hear(&mut self, event: Event, here: &Spoken, now: Duration) {
        match event {
            Event::Voice(news) => self.voice(&news, here),
            Event::Kept(Kept::SetAside(found)) => found.hand_on(self),
            Event::Kept(kept) => self.kept(&kept),
            Event::Focus(has_focus) => self.focus(has_focus, now),
            Event::Woken(Timer::Saving) => {
                let news = self.notices.saving.look(&self.words);
                self.saving_news(news);
            }
            Event::Woken(Timer::Flash) => self.is_flashing = false,
            // The field that is typed into says what stands there.
            Event::Woken(Timer::Typing) => {}
            Event::Woken(Timer::AutoAdvance) => {
                if std::mem::take(&mut self.auto_advance.is_running) && self.is_before_the_eyes {
                    self.go(Intent::Next, now);
                }
            }
            Event::Woken(Timer::Gesture) => {
                if let Some(intent) = self.gesture_due(now)
                    && self.is_before_the_eyes
                {
                    self.press(Some(intent), &Press::default(), now);
                }
            }
            Event::Settings(trouble) => {
                log::warn!("{trouble}");
                let sentence = trouble.sentence(&self.words);
                self.notices.settings(sentence.clone());
                self.tell(sentence.into());
            }
            Event::NotAwake => {
                let sentence = self.words.notice("screen-not-awake", &[]);
                self.notices.screen_may_go_dark(Some(sentence));
            }
            Event::Ear(news) => self.ear(news, here),
            Event::NoShelf(error) => {
                self.no_shelf(&error);
                let sentence = self.refuse(&error);
                self.tell(sentence.into());
            }
        }
    }

    pub(super) fn voice(&mut self, news: &VoiceEvent, here: &Spoken) {
        self.notices.voice(news);
        match news {
            VoiceEvent::Lost(_) => self.cue(Cue::VoiceLost),
            VoiceEvent::NoSuchVoice(wanted) => {
                let sentence = self.words.no_such_voice(wanted);
                self.notices.no_such_voice(Some(sentence.clone()));
                // It comes while what stands there is being said: both are to be heard.
                self.tell(Spoken::from(sentence).then(here));
            }
            _ => {}
        }
    }

    pub(super) fn kept(&mut self, kept: &Kept) {
        let news = self.notices.saving.kept(kept, &self.words);
        // Whoever is told line by line still has the line before them that says otherwise.
        if let (Kept::Saved { .. }, Some(again), true) = (kept, &news.say, self.is_before_the_eyes)
        {
            self.notices.tell(again.clone());
        }
        self.saving_news(news);
    }

    pub(super) fn saving_news(&mut self, news: SavingNews) {
        self.wake(Timer::Saving, news.look_after);
        // Who only hears has to hear it; the step comes again after it.
        if let (Some(news), Some(tie), true) = (news.say, &self.tie, self.is_before_the_eyes) {
            let both = Spoken::from(news).then(tie.walk.say());
            self.tell(both);
        }
    }

    pub(super) fn focus(&mut self, has_focus: bool, now: Duration) {
        if self.has_focus {
            // What was held may have been let go of unseen, even if the keys are back.
            self.pedals.let_go();
            self.wait_for_gesture(now);
        }
        if self.has_focus && !has_focus {
            let sentence = self.words.notice("focus-lost", &[]);
            self.tell(sentence.into());
        }
        self.has_focus = has_focus;
        self.notices.focus(has_focus);
        // Who is at another window is not at the tie.
        if let (Some(tie), false) = (&mut self.tie, has_focus) {
            tie.rest();
        }
    }
}
