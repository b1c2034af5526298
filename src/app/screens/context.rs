//! What every screen works with.

use std::any::{Any, TypeId};
use std::collections::HashMap;
use std::time::Duration;

use super::route::Go;
use crate::app::services::Services;
use crate::app::window_metrics::WindowMetrics;
use crate::picture::Subject;
use crate::session::{Effect, Session, Timer};
use crate::words::{Remark, Spoken, Words};

/// Typing rests when nothing was typed for so long: the next letter of a word comes sooner.
const TYPING_RESTS: Duration = Duration::from_millis(900);

/// The session, the services behind it, and what screens have put by.
pub struct Context {
    /// The tie in hand, what is preferred, what must be known.
    pub session: Session,
    /// The voice, the shelf and the rest.
    pub services: Services,
    /// Size and scale of the window.
    pub window: WindowMetrics,
    put_by: HashMap<TypeId, Box<dyn Any>>,
}

impl Context {
    /// With nothing put by.
    pub fn new(session: Session, services: Services) -> Self {
        Self {
            session,
            services,
            window: WindowMetrics::default(),
            put_by: HashMap::new(),
        }
    }

    /// The words everything is told in.
    pub const fn words(&self) -> &Words {
        self.session.words()
    }

    /// A message that needs no numbers.
    pub fn plainly(&self, id: &str) -> String {
        self.words().plainly(id, &[])
    }

    /// What is spoken as it stands.
    pub fn remark(&self, remark: Remark) -> Spoken {
        self.words().remark(remark)
    }

    /// Time since any beginning, as the session counts it.
    pub fn now(&self) -> Duration {
        (self.services.platform.clock)()
    }

    /// Says this instead of whatever is being said.
    pub fn say(&self, text: &Spoken) {
        self.services.voice.say(text);
    }

    /// Says the notices and then this.
    pub fn say_after_notices(&self, text: &Spoken) {
        self.say(&self.session.say_notices().then(text));
    }

    /// A field is typed into: once that rests, the screen hears of it and says what stands there.
    pub fn typed(&self) {
        let timers = &self.services.platform.timers;
        timers.set(Timer::Typing, Some(TYPING_RESTS));
    }

    /// Dots of the screen for each pixel of the layout.
    pub fn dots(&self) -> f32 {
        self.window.dots(self.session.settings().screen)
    }

    /// Pictures that follow one another, or the last alone for a tyer who wants none that move.
    pub fn moving(&self, mut film: Vec<Subject>) -> Vec<Subject> {
        if self.session.settings().still {
            film.drain(..film.len().saturating_sub(1));
        }
        film
    }

    /// Puts the state of a screen by, until it is come back to.
    pub fn put_by<T: 'static>(&mut self, state: T) {
        self.put_by.insert(TypeId::of::<T>(), Box::new(state));
    }

    /// The state of a screen that was put by.
    pub fn fetch<T: 'static>(&mut self) -> Option<Box<T>> {
        let state = self.put_by.remove(&TypeId::of::<T>())?;
        state.downcast().ok()
    }

    /// Does what the session wants done, and gives where to go.
    pub fn carry_out(&mut self) -> Option<Go> {
        let mut go = None;
        for effect in self.session.effects() {
            let Services {
                voice, platform, ..
            } = &self.services;
            match effect {
                Effect::Say(text) => voice.say(&text),
                Effect::Hush => voice.hush(),
                // The window shows everything anew after each message.
                Effect::Show => {}
                Effect::Cue(cue, volume) => platform.chime.play(cue, volume),
                Effect::Wake(timer, after) => platform.timers.set(timer, after),
                Effect::StayAwake(is_wanted) => {
                    let words = self.session.words();
                    let reason = is_wanted.then(|| words.plainly("awake-reason", &[]));
                    platform.awake.set(reason);
                }
                Effect::SetSpeech(speech) => voice.set_speech(speech),
                Effect::Listen(is_wanted) => platform.ear.listen(is_wanted),
                Effect::KeepSettings(settings) => platform.file.keep(&settings),
                Effect::Keep(tie) => self.services.keep(*tie),
                Effect::PutAway(held) => self.services.put_away(held),
                Effect::OpenSettings => go = Some(Go::settings()),
                Effect::BeginNext(tie) => go = Some(Go::Begin(tie)),
                Effect::OpenLog(tie) => go = Some(Go::Log(tie)),
                Effect::Leave => go = Some(Go::start()),
            }
        }
        go
    }
}
