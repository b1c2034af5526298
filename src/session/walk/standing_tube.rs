//! One of several pieces: whether the tube stands as the piece before left it.

use super::{Mode, Walk, WalkAction};
use crate::words::Words;

impl Walk {
    /// Knows from here on that it is one of several pieces: that one came before it, that one comes
    /// after.
    pub(in crate::session) const fn among_pieces(&mut self, follows: bool, leads: bool) {
        self.pieces.follows = follows;
        self.pieces.leads = leads;
    }

    /// Asks whether the tube stands as the piece before left it; not where there is none to rig, nor where
    /// every piece is tied on what it covers.
    pub(in crate::session) fn ask_standing(&mut self, words: &Words) -> bool {
        let setup = self.script.plan().setup();
        let is_in_place = setup.is_some_and(|setup| setup.in_place);
        let asked = self.script.rig().filter(|_| !is_in_place).map(|rig| {
            let question = words.standing_question(rig);
            (words.show_standing(rig), question)
        });
        let Some((shown, question)) = asked else {
            return false;
        };
        self.mode = Mode::Standing;
        self.place = self.script.first();
        self.shown = shown;
        self.say = question.into();
        true
    }

    /// What the tyer said of the tube, once.
    pub(in crate::session) const fn take_tube_stands(&mut self) -> Option<bool> {
        self.pieces.tube_stands.take()
    }

    /// The tube stands, or is to be rigged: the steps begin anew.
    pub(in crate::session) fn rig_for(&mut self, tube_stands: bool, words: &Words) -> WalkAction {
        let plan = self.script.plan().clone().with_standing_tube(tube_stands);
        self.script = self.told_anew(plan, self.script.at_once(), words);
        self.pieces.tube_stands = Some(tube_stands);
        self.stand_at(self.script.first(), words)
    }
}
