//! The keys of a screen, each of which is a button too: the few that stand in the bar at the foot of
//! every screen, each in its own place, and all of them by groups.

use crate::pedal::{Bindings, Input, Intent};
use crate::words::Words;

/// What keys are for, as they stand together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeyGroup {
    /// From step to step, or from line to line.
    Steps,
    /// How a step is told.
    Telling,
    /// The voice.
    Voice,
    /// The picture.
    Picture,
    /// What else can be done on the screen.
    Here,
    /// Other screens.
    Places,
    /// The window and the program.
    Program,
}

impl KeyGroup {
    /// All of them, in the order in which they stand.
    pub const ALL: [Self; 7] = [
        Self::Steps,
        Self::Telling,
        Self::Voice,
        Self::Picture,
        Self::Here,
        Self::Places,
        Self::Program,
    ];

    /// The message that names it.
    pub const fn heading(self) -> &'static str {
        match self {
            Self::Steps => "key-group-steps",
            Self::Telling => "key-group-telling",
            Self::Voice => "key-group-voice",
            Self::Picture => "key-group-picture",
            Self::Here => "key-group-here",
            Self::Places => "key-group-places",
            Self::Program => "key-group-program",
        }
    }
}

/// A place in the bar, from left to right. What stands there is the same on every screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BarSlot {
    /// Lower left.
    Back,
    /// Something is wrong.
    Wrong,
    /// Where am I.
    Where,
    /// Say it again.
    Again,
    /// The picture over the whole screen, where there is room for the key.
    Picture,
    /// Leave the screen.
    Leave,
    /// Lower right: the accent.
    Next,
}

impl BarSlot {
    /// The id of its button.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Back => "bar-back",
            Self::Wrong => "bar-wrong",
            Self::Where => "bar-where",
            Self::Again => "bar-again",
            Self::Picture => "bar-picture",
            Self::Leave => "bar-leave",
            Self::Next => "bar-next",
        }
    }
}

/// A key of a screen and what it does there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KeyHint {
    /// By its `key` value of the W3C *UI Events* standard; `CtrlQ` for the one that takes two.
    pub key: &'static str,
    /// What it means where the tyer has not bound it otherwise.
    pub intent: Option<Intent>,
    /// The message that says what it does.
    pub label: &'static str,
    /// The message that says it in the bar.
    pub label_in_bar: &'static str,
    /// What it stands with.
    pub group: KeyGroup,
    /// Its place in the bar, if it has one.
    pub slot: Option<BarSlot>,
}

impl KeyHint {
    /// A key that stands with its group alone.
    pub const fn new(group: KeyGroup, key: &'static str, label: &'static str) -> Self {
        Self {
            key,
            intent: None,
            label,
            label_in_bar: label,
            group,
            slot: None,
        }
    }

    /// The same key with a meaning that can be bound to another.
    pub const fn meaning(self, intent: Intent) -> Self {
        Self {
            intent: Some(intent),
            ..self
        }
    }

    /// The same key with fewer words in the bar.
    pub const fn shortly(self, label_in_bar: &'static str) -> Self {
        Self {
            label_in_bar,
            ..self
        }
    }

    /// The same key with a place in the bar.
    pub const fn at(self, slot: BarSlot) -> Self {
        Self {
            slot: Some(slot),
            ..self
        }
    }

    /// What goes on.
    pub const fn next(label: &'static str) -> Self {
        Self::new(KeyGroup::Steps, " ", label)
            .meaning(Intent::Next)
            .at(BarSlot::Next)
    }

    /// What goes on where keys are typed into a field.
    pub const fn enter(label: &'static str) -> Self {
        Self::new(KeyGroup::Steps, "Enter", label).at(BarSlot::Next)
    }

    /// What goes back a step.
    pub const fn back(label: &'static str) -> Self {
        Self::new(KeyGroup::Steps, "ArrowLeft", label)
            .meaning(Intent::Back)
            .at(BarSlot::Back)
    }

    /// What has it said again.
    pub const fn again() -> Self {
        Self::new(KeyGroup::Steps, "r", "key-again")
            .meaning(Intent::Again)
            .at(BarSlot::Again)
    }

    /// What leaves the screen.
    pub const fn leave(label: &'static str) -> Self {
        Self::new(KeyGroup::Steps, "Escape", label)
            .meaning(Intent::Leave)
            .at(BarSlot::Leave)
    }

    /// A key of the screen that needs no place in the bar.
    pub const fn here(key: &'static str, label: &'static str) -> Self {
        Self::new(KeyGroup::Here, key, label)
    }

    /// The key that has this effect now; none when the tyer has bound the meaning to other things
    /// than keys.
    pub fn key_by(&self, bindings: &Bindings) -> Option<String> {
        let Some(intent) = self.intent else {
            return Some(self.key.to_owned());
        };
        if bindings.intent(&Input::key(self.key)) == Some(intent) {
            return Some(self.key.to_owned());
        }
        bindings.iter().find_map(|(input, bound)| match input {
            Input::Key(name) if bound == intent => Some(name.clone()),
            _ => None,
        })
    }
}

/// What was clicked or touched of the keys.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tapped {
    /// The button of a key.
    Key(KeyHint),
    /// What shows all keys, or shows them no more.
    AllKeys,
}

/// What every screen has besides: the whole screen for the window, a second one, and the way out.
pub const PROGRAM: [KeyHint; 3] = [
    KeyHint::new(KeyGroup::Program, "F11", "key-full-screen"),
    KeyHint::new(KeyGroup::Program, "F12", "key-second-window"),
    KeyHint::new(KeyGroup::Program, QUIT, "key-quit"),
];

/// The keys that have an effect now, by groups: the message that heads each group, and every key with
/// what it does.
pub fn told(
    hints: &[KeyHint],
    words: &Words,
    bindings: &Bindings,
) -> Vec<(&'static str, Vec<(String, String)>)> {
    KeyGroup::ALL
        .into_iter()
        .filter_map(|group| {
            let keys: Vec<_> = hints
                .iter()
                .filter(|hint| hint.group == group)
                .filter_map(|hint| Some((hint.key_by(bindings)?, words.plainly(hint.label, &[]))))
                .collect();
            (!keys.is_empty()).then(|| (group.heading(), keys))
        })
        .collect()
}

/// The name of the key that ends the program.
pub const QUIT: &str = "CtrlQ";

/// What is printed on a key, for [`Words`] to put into the language.
pub fn cap(key: &str) -> String {
    match key {
        " " => "Space".to_owned(),
        "ArrowLeft" => "←".to_owned(),
        "ArrowRight" => "→".to_owned(),
        "ArrowUp" => "↑".to_owned(),
        "ArrowDown" => "↓".to_owned(),
        "-" => "−".to_owned(),
        key if key.chars().count() == 1 => key.to_uppercase(),
        key => key.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_that_was_bound_otherwise_is_not_the_one_to_press() {
        let mut bindings = Bindings::default();
        let next = KeyHint::next("key-next");
        assert_eq!(next.key_by(&bindings).as_deref(), Some(" "));
        bindings.bind(Input::key(" "), Intent::Back);
        let other = next.key_by(&bindings).unwrap();
        assert_eq!(bindings.intent(&Input::key(&other)), Some(Intent::Next));
        let pedal_alone = Bindings::of([(Input::Controller(64), Intent::Next)]);
        assert_eq!(next.key_by(&pedal_alone), None);
    }
}
