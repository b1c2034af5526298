//! Learning what is pressed for what, by presses alone.

use super::{Bindings, Input, Intent};

/// Asks for one intent after another. A press of something new is learnt for it; a press of
/// something learnt before skips it, and skipping twice in a row ends the learning.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Learning {
    learnt: Vec<(Input, Intent)>,
    stage: usize,
    has_skipped: bool,
}

/// What a press came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Asked {
    /// The input now has this meaning.
    Learnt(Input, Intent),
    /// This intent stays as it was.
    Skipped(Intent),
}

/// What can be learnt. Leaving a screen keeps its key, so that there is always a way out.
const ASKED: [Intent; 8] = [
    Intent::Next,
    Intent::Back,
    Intent::Again,
    Intent::Where,
    Intent::Slower,
    Intent::Faster,
    Intent::Pause,
    Intent::Wrong,
];

impl Learning {
    /// What is asked for now; none when all is done.
    pub fn asks(&self) -> Option<Intent> {
        ASKED.get(self.stage).copied()
    }

    /// Takes a press.
    pub fn press(&mut self, input: Input) -> Option<Asked> {
        let intent = self.asks()?;
        if self.learnt.iter().any(|(known, _)| *known == input) {
            self.stage = if self.has_skipped {
                ASKED.len()
            } else {
                self.stage + 1
            };
            self.has_skipped = true;
            return Some(Asked::Skipped(intent));
        }
        self.learnt.push((input.clone(), intent));
        self.has_skipped = false;
        self.stage += 1;
        Some(Asked::Learnt(input, intent))
    }

    /// What was learnt so far.
    pub fn learnt(&self) -> &[(Input, Intent)] {
        &self.learnt
    }

    /// The usual bindings with what was learnt in place of them.
    pub fn bindings(&self) -> Bindings {
        let mut bindings = Bindings::default();
        for (input, intent) in &self.learnt {
            bindings.bind(input.clone(), *intent);
        }
        bindings
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn learn(presses: &[&str]) -> Learning {
        let mut learning = Learning::default();
        for key in presses {
            learning.press(Input::key(key));
        }
        learning
    }

    #[test]
    fn one_two_or_three_pedals_are_learnt_by_presses() {
        for (presses, learnt) in [
            (&["a", "a", "a"][..], &[("a", Intent::Next)][..]),
            (
                &["b", "a", "b", "a"],
                &[("b", Intent::Next), ("a", Intent::Back)],
            ),
            (
                &["b", "a", "c", "c", "c"],
                &[
                    ("b", Intent::Next),
                    ("a", Intent::Back),
                    ("c", Intent::Again),
                ],
            ),
            // Two pedals, the second for saying it again.
            (
                &["F13", "F13", "F14", "F13", "F13"],
                &[("F13", Intent::Next), ("F14", Intent::Again)],
            ),
        ] {
            let learning = learn(presses);
            assert_eq!(learning.asks(), None, "{presses:?}");
            let bindings = learning.bindings();
            for (key, intent) in learnt {
                assert_eq!(
                    bindings.intent(&Input::key(key)),
                    Some(*intent),
                    "{presses:?}"
                );
            }
            assert_eq!(learning.learnt().len(), learnt.len());
        }
    }

    #[test]
    fn all_that_is_asked_for_can_be_learnt() {
        let learning = learn(&["1", "2", "3", "4", "5", "6", "7", "8"]);
        assert_eq!(learning.asks(), None);
        assert_eq!(learning.learnt().len(), 8);
    }

    #[test]
    fn what_is_learnt_takes_the_place_of_what_a_key_did() {
        let bindings = learn(&["PageUp", "PageDown", "PageUp", "PageUp"]).bindings();
        assert_eq!(bindings.intent(&Input::key("PageUp")), Some(Intent::Next));
        assert_eq!(bindings.intent(&Input::key("PageDown")), Some(Intent::Back));
        assert_eq!(bindings.intent(&Input::key(" ")), Some(Intent::Next));
    }
}
