//! From a key, a button on the screen or a pedal to what it means on the screen that is up.

use iced::{Task, keyboard};

use super::{App, Leaving};
use crate::app::key_guide::{self, KeyHint};
use crate::app::keys;
use crate::app::message::Message;
use crate::app::screens::Screen;
use crate::pedal::{Input, InputEvent, Intent, Press, Transition};

impl App {
    /// The names of all screens.
    pub const SCREENS: &[&str] = Screen::NAMES;

    /// The name of the screen that is up.
    pub const fn screen_name(&self) -> &'static str {
        self.screen.name()
    }

    /// Takes in a key that no widget took.
    pub(super) fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        if keys::is_ctrl(event, "q") {
            return self.close();
        }
        if let Some(press) = keys::press(event)
            && let Some(task) = self.own_key(&press)
        {
            return task;
        }
        match self.keys_down.input(event) {
            Some(raw) => self.pressed(&raw, keys::press(event)),
            None => Task::none(),
        }
    }

    /// Does what a key asks of the app itself, on any screen: all keys, the whole screen. None of them
    /// where every press is to be learnt, or where the tyer has bound the key to something.
    fn own_key(&mut self, press: &Press) -> Option<Task<Message>> {
        let key = press.key.as_str();
        let bindings = self.context.session.pedals().bindings();
        let is_bound = bindings.intent(&Input::key(key)).is_some();
        let is_own = match key {
            "Escape" => self.shows_keys,
            "?" => !is_bound && (self.shows_keys || !self.screen.takes_text()),
            "F1" | "F11" | "F12" => !is_bound,
            _ => false,
        };
        if !is_own || matches!(self.screen, Screen::KeyBinding(_)) {
            return None;
        }
        if press.is_repeat {
            return Some(Task::none());
        }
        Some(match key {
            "F11" => self.turn_full_screen(),
            "F12" => self.turn_second_window(),
            _ => {
                self.turn_keys();
                Task::none()
            }
        })
    }

    /// All keys stand over the screen and are told, or go again: then it is told where one is.
    pub(super) fn turn_keys(&mut self) {
        self.shows_keys = !self.shows_keys;
        let said = if self.shows_keys {
            let (words, bindings) = (
                self.context.words(),
                self.context.session.pedals().bindings(),
            );
            words.say_keys(&key_guide::told(&self.all_keys(), words, bindings))
        } else {
            self.screen.say_again(&self.context)
        };
        self.context.say(&said);
    }

    /// The keys of the screen that is up, and those of the program.
    pub(super) fn all_keys(&self) -> Vec<KeyHint> {
        let mut hints = self.screen.keys(&self.context);
        hints.extend(key_guide::PROGRAM);
        hints
    }

    /// The button of a key was clicked or touched: it does what the key does.
    pub(super) fn tap(&mut self, hint: KeyHint) -> Task<Message> {
        self.shows_keys = false;
        match hint.key {
            key_guide::QUIT => return self.close(),
            "F11" => return self.turn_full_screen(),
            "F12" => return self.turn_second_window(),
            _ => {}
        }
        let Some(key) = hint.key_by(self.context.session.pedals().bindings()) else {
            return self.meant(hint.intent, None);
        };
        let went = |transition| InputEvent {
            input: Input::key(&key),
            transition,
        };
        let press = Press {
            key: key.clone(),
            is_repeat: false,
        };
        let down = self.pressed(&went(Transition::Down), Some(press));
        let up = self.pressed(&went(Transition::Up), None);
        Task::batch([down, up])
    }

    /// Takes in what an input did. `press` is the same for screens with a form.
    pub(super) fn pressed(&mut self, raw: &InputEvent, press: Option<Press>) -> Task<Message> {
        if let Some(next) = self.screen.input(raw, &mut self.context) {
            return self.follow(next);
        }
        if raw.transition == Transition::Down && !keys::is_modifier(raw) {
            self.shows_keys = false;
            self.context.session.seen();
            // Who goes on does not leave.
            if self.leaving == Leaving::Asked {
                self.leaving = Leaving::Not;
            }
        }
        let now = self.context.now();
        let intent = self.context.session.take(raw, now);
        self.meant(intent, press)
    }

    /// Takes in what a press means on the screen that is up.
    pub(super) fn meant(&mut self, intent: Option<Intent>, press: Option<Press>) -> Task<Message> {
        if intent.is_none() && press.is_none() {
            return Task::none();
        }
        if self.is_ahead_of_disk() {
            self.hurried.push((intent, press));
            return self.wait_for_disk();
        }
        self.act_on(intent, press)
    }

    /// Does what a press means on the screen that is up.
    pub(super) fn act_on(&mut self, intent: Option<Intent>, press: Option<Press>) -> Task<Message> {
        if let Some(is_faster) = intent.and_then(Intent::speed)
            && !self.screen.takes_text()
        {
            self.context.session.change_speed(is_faster);
            return Task::none();
        }
        let press = press.unwrap_or_default();
        let next = self.screen.press(&press, intent, &mut self.context);
        self.follow(next)
    }
}
