//! The digits of what is counted aside of the steps.

use super::controller::Session;
use super::walk::Mode;

impl Session {
    /// Takes a digit where a number is counted. Whether the key was one.
    pub(super) fn key_aside(&mut self, key: &str) -> bool {
        let Some(tie) = &mut self.tie else {
            return false;
        };
        let walk = &mut tie.walk;
        let Mode::Aside(aside) = &mut walk.mode else {
            return false;
        };
        if !aside.type_in(key) {
            return false;
        }
        let aside = aside.as_ref().clone();
        let briefly = aside.say_briefly(&walk.script, &self.words);
        walk.answer = None;
        walk.turn_aside(aside, &self.words);
        self.tell(briefly);
        true
    }
}
