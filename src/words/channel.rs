//! Whom a text is for.

/// The sense that a text is for. It decides how a length is told and how a number is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Channel {
    /// For the voice.
    Ear,
    /// For the screen, the terminal and paper.
    Eye,
}
