//! Binding keys and pedals to intents by pressing them, without a table to fill in.

use super::bindings::Bindings;
use super::input::Input;
use super::intent::Intent;

/// Asks for one intent after another. A press of something new is bound to it; a press of
/// something bound before skips it, and skipping twice in a row ends the asking.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct KeyBinder {
    bound: Vec<(Input, Intent)>,
    /// Which of [`ASKED_FOR`] is asked for now.
    at: usize,
    has_skipped: bool,
}

/// What a press came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Binding {
    /// The input now has this meaning.
    Bound(Input, Intent),
    /// This intent keeps the inputs it has.
    Skipped(Intent),
}

/// What can be bound. Leaving a screen keeps its key, so that there is always a way out.
const ASKED_FOR: [Intent; 10] = [
    Intent::Next,
    Intent::Back,
    Intent::Again,
    Intent::Where,
    Intent::Slower,
    Intent::Faster,
    Intent::Pause,
    Intent::Wrong,
    Intent::Cord,
    Intent::Join,
];

impl KeyBinder {
    /// The intent that is asked for now; none when all is done.
    pub fn asks_for(&self) -> Option<Intent> {
        ASKED_FOR.get(self.at).copied()
    }

    /// Takes a press, and gives what it came to; none when nothing is asked for any more.
    pub fn press(&mut self, input: Input) -> Option<Binding> {
        let intent = self.asks_for()?;
        if self.bound.iter().any(|(known, _)| *known == input) {
            self.at = if self.has_skipped {
                ASKED_FOR.len()
            } else {
                self.at + 1
            };
            self.has_skipped = true;
            return Some(Binding::Skipped(intent));
        }
        self.bound.push((input.clone(), intent));
        self.has_skipped = false;
        self.at += 1;
        Some(Binding::Bound(input, intent))
    }

    /// What was bound so far.
    pub fn bound(&self) -> &[(Input, Intent)] {
        &self.bound
    }

    /// The usual bindings, with what was bound here in place of them.
    pub fn bindings(&self) -> Bindings {
        let mut bindings = Bindings::default();
        for (input, intent) in &self.bound {
            bindings.bind(input.clone(), *intent);
        }
        bindings
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pressed(presses: &[&str]) -> KeyBinder {
        let mut binder = KeyBinder::default();
        for key in presses {
            binder.press(Input::key(key));
        }
        binder
    }

    #[test]
    fn one_two_or_three_pedals_are_bound_by_presses() {
        for (presses, bound) in [
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
            let binder = pressed(presses);
            assert_eq!(binder.asks_for(), None, "{presses:?}");
            let bindings = binder.bindings();
            for (key, intent) in bound {
                assert_eq!(
                    bindings.intent(&Input::key(key)),
                    Some(*intent),
                    "{presses:?}"
                );
            }
            assert_eq!(binder.bound().len(), bound.len());
        }
    }

    #[test]
    fn all_that_is_asked_for_can_be_bound() {
        let binder = pressed(&["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"]);
        assert_eq!(binder.asks_for(), None);
        assert_eq!(binder.bound().len(), 10);
    }

    #[test]
    fn what_is_bound_takes_the_place_of_what_a_key_did() {
        let bindings = pressed(&["PageUp", "PageDown", "PageUp", "PageUp"]).bindings();
        assert_eq!(bindings.intent(&Input::key("PageUp")), Some(Intent::Next));
        assert_eq!(bindings.intent(&Input::key("PageDown")), Some(Intent::Back));
        assert_eq!(bindings.intent(&Input::key(" ")), Some(Intent::Next));
    }
}
