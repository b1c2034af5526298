//! Which key means what, as data.

use super::Intent;

/// A key that went down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Press {
    /// The key by its `key` value of the W3C *UI Events* standard: `" "`, `Enter`,
    /// `PageDown`, `r`, ….
    pub key: String,
    /// Whether the key is being held and this is the system repeating it.
    pub is_repeat: bool,
}

/// The keys of every intent; an intent can have several.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bindings {
    keys: Vec<(String, Intent)>,
}

impl Default for Bindings {
    /// The keys that pedals send most, and their like on a keyboard: two pedals set to page up
    /// and page down or to the arrows work as they come.
    fn default() -> Self {
        let keys = [
            (" ", Intent::Next),
            ("Enter", Intent::Next),
            ("PageDown", Intent::Next),
            ("ArrowRight", Intent::Next),
            ("PageUp", Intent::Back),
            ("ArrowLeft", Intent::Back),
            ("Backspace", Intent::Back),
            ("r", Intent::Again),
            ("h", Intent::Where),
            ("w", Intent::Wrong),
            ("Escape", Intent::Leave),
        ];
        Self {
            keys: keys
                .into_iter()
                .map(|(key, intent)| (key.to_owned(), intent))
                .collect(),
        }
    }
}

impl Bindings {
    /// What a press means, if anything. A held key counts once: its repeats mean nothing.
    pub fn intent(&self, press: &Press) -> Option<Intent> {
        if press.is_repeat {
            return None;
        }
        self.keys
            .iter()
            .find(|(key, _)| key.eq_ignore_ascii_case(&press.key))
            .map(|(_, intent)| *intent)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pressed(key: &str, is_repeat: bool) -> Option<Intent> {
        Bindings::default().intent(&Press {
            key: key.to_owned(),
            is_repeat,
        })
    }

    #[test]
    fn the_keys_that_pedals_send_go_on_and_back() {
        for key in [" ", "Enter", "PageDown", "ArrowRight"] {
            assert_eq!(pressed(key, false), Some(Intent::Next), "{key}");
        }
        for key in ["PageUp", "ArrowLeft", "Backspace"] {
            assert_eq!(pressed(key, false), Some(Intent::Back), "{key}");
        }
        assert_eq!(pressed("r", false), Some(Intent::Again));
        assert_eq!(pressed("R", false), Some(Intent::Again));
        assert_eq!(pressed("Escape", false), Some(Intent::Leave));
        assert_eq!(pressed("q", false), None);
    }

    #[test]
    fn a_held_key_counts_once() {
        assert_eq!(pressed(" ", true), None);
        assert_eq!(pressed("PageUp", true), None);
    }
}
