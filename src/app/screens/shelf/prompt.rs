//! The line that is typed into: a name, a note, a file.

use iced::widget::Id;

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
