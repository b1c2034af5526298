//! The keys that turn aside from the steps, and the digits of what is counted there.

use super::controller::Session;
use super::walk::{Mode, WalkAction};

impl Session {
    /// Keys of what stands aside of the steps: digits of a number that is counted, C for what the cord still has to do, J
    /// for a new one in its place.
    /// Whether the key was one of them.
    pub(super) fn key_aside(&mut self, key: &str) -> bool {
        let Some(tie) = &mut self.tie else {
            return false;
        };
        let walk = &mut tie.walk;
        if let Mode::Aside(aside) = &mut walk.mode
            && aside.type_in(key)
        {
            let aside = aside.as_ref().clone();
            let briefly = aside.say_briefly(&walk.script, &self.words);
            walk.answer = None;
            walk.turn_aside(aside, &self.words);
            self.tell(briefly);
            return true;
        }
        if !walk.is_telling_steps() {
            return false;
        }
        let action = match key {
            "c" => walk.ask_cord(&self.words),
            "j" => walk.ask_join(&self.words),
            _ => return false,
        };
        self.hold();
        match action {
            WalkAction::Say(told) => self.tell(told),
            _ => self.say_step(),
        }
        true
    }
}
