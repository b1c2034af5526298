//! Whom a text is for.

/// The sense that a text is for. It decides how a length is told and how a number is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Channel {
    /// Hearing: a text for the voice.
    Ear,
    /// Sight: a text for the screen, the terminal or paper.
    Eye,
}
