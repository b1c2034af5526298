//! What happens to a tie in a terminal, and what typed keys and lines mean.

use crate::pedal::{Bindings, Input, InputEvent, Intent, Press, Transition};
use crate::session::Event;

/// What happens to a tie in a terminal.
#[derive(Debug)]
pub enum TerminalEvent {
    /// A pedal did something.
    Pedal(InputEvent),
    /// A key did something; with the text that it types.
    Key(InputEvent, Option<String>),
    /// A line was typed where there are no single keys.
    Line(String),
    /// The input has ended, or a signal asks the program to end.
    Gone,
    /// Something the session hears of.
    Session(Event),
}

impl TerminalEvent {
    /// Whether something was pressed, or typed.
    pub const fn is_press(&self) -> bool {
        match self {
            Self::Pedal(raw) | Self::Key(raw, _) => matches!(raw.transition, Transition::Down),
            Self::Line(_) => true,
            Self::Gone | Self::Session(_) => false,
        }
    }
}

/// The key of an input that has no meaning as a pedal. A key that types something is given as what
/// it types.
pub fn press(raw: &InputEvent, typed: Option<String>) -> Option<Press> {
    let key = match (typed, &raw.input) {
        (Some(typed), _) => typed,
        (None, Input::Key(name)) => name.clone(),
        (None, _) => String::new(),
    };
    let is_repeat = match raw.transition {
        Transition::Down => false,
        Transition::Repeat => true,
        Transition::Up => return None,
    };
    Some(Press { key, is_repeat })
}

/// Letters that mean something in a terminal alone, unless they are bound to something else.
pub fn letter(raw: &InputEvent, bindings: &Bindings) -> Option<Intent> {
    let is_free = bindings.intent(&raw.input).is_none();
    if !is_free || raw.transition != Transition::Down {
        return None;
    }
    LETTERS
        .iter()
        .find(|(letter, _)| raw.input == Input::key(letter))
        .map(|(_, intent)| *intent)
}

const LETTERS: [(&str, Intent); 2] = [("q", Intent::Leave), ("b", Intent::Back)];

/// What a typed line means: nothing typed is next, else the key of its first letter.
pub fn line(typed: &str, bindings: &Bindings) -> (Option<Intent>, Press) {
    let Some(letter) = typed.trim().chars().next() else {
        return (Some(Intent::Next), Press::default());
    };
    let key = letter.to_lowercase().to_string();
    let own = LETTERS.iter().find(|(letter, _)| *letter == key);
    let intent = match own {
        Some((_, intent)) => Some(*intent),
        None => bindings.intent(&Input::key(&key)),
    };
    let is_repeat = false;
    (intent, Press { key, is_repeat })
}
