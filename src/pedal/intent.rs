//! What a press can mean.

use strum::{EnumIter, EnumString, IntoStaticStr};

/// What the tyer wants by a press.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, EnumIter, EnumString, IntoStaticStr,
)]
#[strum(serialize_all = "lowercase")]
pub enum Intent {
    /// Go on to the next step.
    Next,
    /// Go back to the step before.
    Back,
    /// Say this step again.
    Again,
    /// Say where I am.
    Where,
    /// Speak more slowly from now on.
    Slower,
    /// Speak faster from now on.
    Faster,
    /// Be quiet and wait, or go on after that.
    Pause,
    /// Something is wrong with the work, or with the count.
    Wrong,
    /// Say whether the cord will do, or measure it.
    Cord,
    /// A new cord takes the place of the one in hand.
    Join,
    /// Leave this screen, for the one before it.
    Leave,
}

impl Intent {
    /// Its name in a document, from which it is parsed. These must stay as they are.
    pub fn name(self) -> &'static str {
        self.into()
    }

    /// Whether it makes the voice faster, if it is about its speed at all.
    pub const fn speed(self) -> Option<bool> {
        match self {
            Self::Slower => Some(false),
            Self::Faster => Some(true),
            _ => None,
        }
    }
}
