//! What a field of the plan screen can be filled in with by one press.

use super::form::{Action, State};
use crate::bench::STANDARD_CORDS;
use crate::guide::SetupField;

impl State {
    /// What can be picked for a field: its text, for each.
    pub(super) fn picks(&self, field: SetupField) -> Vec<String> {
        match field {
            SetupField::Cord => {
                let standards = STANDARD_CORDS
                    .iter()
                    .filter(|standard| standard.typical_diameter.is_some())
                    .map(|standard| standard.designation.to_owned());
                standards
                    .chain(self.presets.cords.keys().cloned())
                    .collect()
            }
            SetupField::Tube => self.presets.tubes.keys().cloned().collect(),
            _ => Vec::new(),
        }
    }

    pub(super) fn pick(&mut self, field: SetupField, index: usize) -> Action {
        self.focus = field;
        if field == SetupField::Object {
            let text = self.form.text(self.said_as(field)).to_owned();
            self.form.say(self.said_as(field), "");
            self.is_girth = index == 1;
            self.form.say(self.said_as(field), text);
            return self.look();
        }
        match self.picks(field).into_iter().nth(index) {
            Some(text) => {
                self.form.say(field, text);
                self.look()
            }
            None => Action::None,
        }
    }

    pub(super) fn pick_next(&mut self, forward: bool) -> Action {
        if self.focus == SetupField::Object {
            return self.pick(SetupField::Object, usize::from(!self.is_girth));
        }
        let picks = self.picks(self.focus);
        if picks.is_empty() {
            return Action::None;
        }
        let here = picks
            .iter()
            .position(|pick| pick == self.form.text(self.focus));
        let index = match (here, forward) {
            (Some(here), true) => (here + 1) % picks.len(),
            (Some(here), false) => (here + picks.len() - 1) % picks.len(),
            (None, true) => 0,
            (None, false) => picks.len() - 1,
        };
        self.pick(self.focus, index)
    }
}
