//! What was pressed: a key, a button or a pedal of any make.

use std::fmt;
use std::ops::RangeInclusive;

/// One thing that can be pressed. Which device of its kind it is on makes no difference, so that
/// a pedal may be unplugged and another of the same make plugged in.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Input {
    /// A key by its `key` value of the W3C *UI Events* standard: `" "`, `Enter`, `F13`, `r`, ….
    /// Letters are kept small.
    Key(String),
    /// A mouse button: `left`, `middle`, `right`, `back`, `forward`, or a number.
    Mouse(String),
    /// A button of a game controller: its place, such as `South`, or the number of its code.
    Pad(String),
    /// A MIDI note, 0 to 127, on any channel.
    Note(u8),
    /// A MIDI controller, 0 to 127 (64 is the damper pedal), on any channel.
    Controller(u8),
    /// A MIDI programme change, 0 to 127, on any channel.
    Programme(u8),
    /// So many knocks in a row, as a microphone hears them. It is down with each further knock, and up
    /// when the row is over.
    Knocks(u8),
}

impl Input {
    /// How many knocks in a row can mean something. One alone means nothing: too much sounds like one.
    pub const KNOCKS: RangeInclusive<u8> = 2..=6;

    /// The input of a key.
    pub fn key(name: &str) -> Self {
        // With Shift or Caps Lock a letter means the same as without.
        let is_letter = name.chars().count() == 1;
        Self::Key(if is_letter {
            name.to_lowercase()
        } else {
            name.to_owned()
        })
    }

    /// The input named by a text that [`Display`](fmt::Display) wrote.
    pub fn parse(text: &str) -> Option<Self> {
        let (kind, name) = text.split_once(':')?;
        let number = || name.parse().ok().filter(|number| *number <= 127);
        match kind {
            _ if name.is_empty() || name.chars().count() > 32 => None,
            "key" => Some(Self::key(name)),
            "mouse" => Some(Self::Mouse(name.to_owned())),
            "pad" => Some(Self::Pad(name.to_owned())),
            "note" => number().map(Self::Note),
            "controller" => number().map(Self::Controller),
            "programme" => number().map(Self::Programme),
            "knocks" => number()
                .filter(|number| Self::KNOCKS.contains(number))
                .map(Self::Knocks),
            _ => None,
        }
    }

    /// What kind of thing it is, and its name among its kind.
    pub fn kind_and_name(&self) -> (&'static str, String) {
        match self {
            Self::Key(name) => ("key", name.clone()),
            Self::Mouse(name) => ("mouse", name.clone()),
            Self::Pad(name) => ("pad", name.clone()),
            Self::Note(number) => ("note", number.to_string()),
            Self::Controller(number) => ("controller", number.to_string()),
            Self::Programme(number) => ("programme", number.to_string()),
            Self::Knocks(number) => ("knocks", number.to_string()),
        }
    }
}

impl fmt::Display for Input {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (kind, name) = self.kind_and_name();
        write!(f, "{kind}:{name}")
    }
}

/// What an input did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Transition {
    /// It went down: somebody presses it.
    Down,
    /// It is held, and the system repeats it.
    Repeat,
    /// It was let go of.
    Up,
}

/// Something that happened to an input.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InputEvent {
    /// The input it happened to.
    pub input: Input,
    /// What happened to it.
    pub transition: Transition,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_input_reads_back_as_it_was_written() {
        for input in [
            Input::key(" "),
            Input::key(":"),
            Input::key("F24"),
            Input::Mouse("back".to_owned()),
            Input::Pad("South".to_owned()),
            Input::Note(60),
            Input::Controller(64),
            Input::Programme(0),
            Input::Knocks(2),
        ] {
            assert_eq!(Input::parse(&input.to_string()), Some(input.clone()));
        }
    }

    #[test]
    fn what_names_nothing_is_no_input() {
        for text in [
            "", "key", "key:", "note:128", "note:x", "knocks:1", "knocks:7", "lever:3", " : ",
        ] {
            assert_eq!(Input::parse(text), None, "{text:?}");
        }
    }

    #[test]
    fn a_letter_is_the_same_with_caps_lock() {
        assert_eq!(Input::key("R"), Input::key("r"));
        assert_ne!(Input::key("F1"), Input::key("f1"));
    }
}
