//! The line that is typed into: a name, a note, a file.

use iced::widget::Id;

use crate::shelf::{LONGEST_NAME, LONGEST_NOTE, cut_to};

/// As long as systems let a path be.
const LONGEST_PATH: usize = 4096;

/// A line that is being typed.
pub struct Prompt {
    /// What is asked for.
    pub asks: Asks,
    /// What stands there.
    pub text: String,
}

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asks {
    /// The name of a tie.
    Name,
    /// The note of a tie.
    Note,
    /// Where a backup goes.
    BackUp,
    /// What is brought in.
    BringIn,
}

impl Prompt {
    /// A line with a text in it, as long as such texts may be: one of any length would have the window
    /// wait.
    pub fn new(asks: Asks, mut text: String) -> Self {
        let most = match asks {
            Asks::Name => LONGEST_NAME,
            Asks::Note => LONGEST_NOTE,
            Asks::BackUp | Asks::BringIn => LONGEST_PATH,
        };
        cut_to(&mut text, most);
        Self { asks, text }
    }
}

/// The message that asks for it.
pub const fn label(asks: Asks) -> &'static str {
    match asks {
        Asks::Name => "shelf-prompt-name",
        Asks::Note => "shelf-prompt-note",
        Asks::BackUp => "shelf-prompt-backup",
        Asks::BringIn => "shelf-prompt-bring-in",
    }
}

/// The line that is typed into.
pub fn line() -> Id {
    Id::new("shelf-line")
}
