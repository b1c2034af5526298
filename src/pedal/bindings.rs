//! Which press means what, as data.

use super::input::Input;
use super::intent::Intent;

/// A key that went down, as a screen with a form sees it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Press {
    /// The key by its `key` value of the W3C *UI Events* standard: `" "`, `Enter`,
    /// `PageDown`, `r`, ….
    pub key: String,
    /// Whether the key is being held and this is the system repeating it.
    pub is_repeat: bool,
}

/// The inputs of every intent; an intent can have several, an input only one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bindings {
    table: Vec<(Input, Intent)>,
}

impl Default for Bindings {
    /// The keys that pedals send most, and their like on a keyboard: two pedals set to page up
    /// and page down, to the arrows, to F13 and F14 or to the tracks of a player work as they
    /// come.
    fn default() -> Self {
        let keys = [
            (" ", Intent::Next),
            ("Enter", Intent::Next),
            ("PageDown", Intent::Next),
            ("ArrowRight", Intent::Next),
            ("F13", Intent::Next),
            ("MediaTrackNext", Intent::Next),
            ("PageUp", Intent::Back),
            ("ArrowLeft", Intent::Back),
            ("Backspace", Intent::Back),
            ("F14", Intent::Back),
            ("MediaTrackPrevious", Intent::Back),
            ("r", Intent::Again),
            ("F15", Intent::Again),
            ("h", Intent::Where),
            ("-", Intent::Slower),
            ("+", Intent::Faster),
            ("=", Intent::Faster),
            ("p", Intent::Pause),
            ("MediaPlayPause", Intent::Pause),
            ("w", Intent::Wrong),
            ("c", Intent::Cord),
            ("j", Intent::Join),
            ("Escape", Intent::Leave),
        ];
        // The controller numbers of MIDI 1.0 for the damper, sostenuto and soft pedals.
        let controllers = [(64, Intent::Next), (66, Intent::Again), (67, Intent::Back)];
        let pads = [("South", Intent::Next), ("East", Intent::Back)];
        let knocks = [(2, Intent::Next), (3, Intent::Again)];
        let knocks = knocks.map(|(number, intent)| (Input::Knocks(number), intent));
        let keys = keys.map(|(key, intent)| (Input::key(key), intent));
        let controllers = controllers.map(|(number, intent)| (Input::Controller(number), intent));
        let pads = pads.map(|(place, intent)| (Input::Pad(place.to_owned()), intent));
        Self {
            table: keys
                .into_iter()
                .chain(controllers)
                .chain(pads)
                .chain(knocks)
                .collect(),
        }
    }
}

impl Bindings {
    /// These bindings and no others. Where an input is listed twice, its last meaning holds.
    pub fn of(table: impl IntoIterator<Item = (Input, Intent)>) -> Self {
        let mut bindings = Self { table: Vec::new() };
        for (input, intent) in table {
            bindings.bind(input, intent);
        }
        bindings
    }

    /// Gives an input this meaning instead of any other.
    pub fn bind(&mut self, input: Input, intent: Intent) {
        self.table.retain(|(other, _)| *other != input);
        self.table.push((input, intent));
    }

    /// What an input means, if anything.
    pub fn intent(&self, input: &Input) -> Option<Intent> {
        self.table
            .iter()
            .find(|(other, _)| other == input)
            .map(|(_, intent)| *intent)
    }

    /// The same, with the usual meanings of what an earlier version could not bind: knocks where none has
    /// any, and the keys of cord and join where nothing means that.
    #[must_use]
    pub fn with_later(mut self) -> Self {
        let is_knock = |input: &Input| matches!(input, Input::Knocks(_));
        let has_knocks = self.table.iter().any(|(input, _)| is_knock(input));
        for (input, intent) in Self::default().table {
            let is_later = if is_knock(&input) {
                !has_knocks
            } else {
                let is_meant = self.table.iter().any(|(_, other)| *other == intent);
                matches!(intent, Intent::Cord | Intent::Join) && !is_meant
            };
            if is_later && self.intent(&input).is_none() {
                self.table.push((input, intent));
            }
        }
        self
    }

    /// Whether more knocks than these mean something.
    pub fn longer_knocks(&self, number: u8) -> bool {
        let is_longer =
            |(input, _): &(Input, Intent)| matches!(input, Input::Knocks(other) if *other > number);
        self.table.iter().any(is_longer)
    }

    /// Every input that means something, with its meaning.
    pub fn iter(&self) -> impl Iterator<Item = (&Input, Intent)> {
        self.table.iter().map(|(input, intent)| (input, *intent))
    }

    /// The bindings that the tyer has made: those that are not among the usual ones.
    pub fn own(&self) -> impl Iterator<Item = (&Input, Intent)> {
        let usual = Self::default();
        self.iter()
            .filter(move |(input, intent)| usual.intent(input) != Some(*intent))
    }
}

#[cfg(test)]
mod tests {
    use strum::IntoEnumIterator;

    use super::*;

    #[test]
    fn the_keys_that_pedals_send_go_on_and_back() {
        let bindings = Bindings::default();
        let intent = |key| bindings.intent(&Input::key(key));
        for key in [" ", "Enter", "PageDown", "ArrowRight", "F13"] {
            assert_eq!(intent(key), Some(Intent::Next), "{key}");
        }
        for key in ["PageUp", "ArrowLeft", "Backspace", "F14"] {
            assert_eq!(intent(key), Some(Intent::Back), "{key}");
        }
        assert_eq!(intent("R"), Some(Intent::Again));
        assert_eq!(intent("w"), Some(Intent::Wrong));
        assert_eq!(intent("Escape"), Some(Intent::Leave));
        assert_eq!(intent("q"), None);
        assert_eq!(bindings.intent(&Input::Controller(64)), Some(Intent::Next));
    }

    #[test]
    fn every_intent_has_an_input() {
        let bindings = Bindings::default();
        for intent in Intent::iter() {
            assert!(
                bindings.iter().any(|(_, bound)| bound == intent),
                "{intent:?}"
            );
        }
    }

    #[test]
    fn an_input_has_one_meaning_and_the_last_one_given() {
        let mut bindings = Bindings::default();
        bindings.bind(Input::key("PageUp"), Intent::Next);
        assert_eq!(bindings.intent(&Input::key("PageUp")), Some(Intent::Next));
        let own: Vec<_> = bindings.own().collect();
        assert_eq!(own, [(&Input::key("PageUp"), Intent::Next)]);
        assert_eq!(
            bindings
                .iter()
                .filter(|(input, _)| **input == Input::key("PageUp"))
                .count(),
            1
        );
    }
}
