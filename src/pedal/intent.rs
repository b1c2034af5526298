//! What a press can mean.

/// What the tyer wants.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Intent {
    /// Go on to the next step.
    Next,
    /// Go back to the step before.
    Back,
    /// Say this step again.
    Again,
    /// Say where I am.
    Where,
    /// Speak more slowly.
    Slower,
    /// Speak faster.
    Faster,
    /// Be quiet and wait, or go on after that.
    Pause,
    /// Something is wrong with the work, or with the count.
    Wrong,
    /// Leave this screen.
    Leave,
}

impl Intent {
    /// Every intent, in the order in which a tyer misses them.
    pub const ALL: [Self; 9] = [
        Self::Next,
        Self::Back,
        Self::Again,
        Self::Where,
        Self::Slower,
        Self::Faster,
        Self::Pause,
        Self::Wrong,
        Self::Leave,
    ];

    /// Its name in a document. These must stay as they are.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Next => "next",
            Self::Back => "back",
            Self::Again => "again",
            Self::Where => "where",
            Self::Slower => "slower",
            Self::Faster => "faster",
            Self::Pause => "pause",
            Self::Wrong => "wrong",
            Self::Leave => "leave",
        }
    }

    /// Whether it makes the voice faster, if it is about its speed at all.
    pub const fn speed(self) -> Option<bool> {
        match self {
            Self::Slower => Some(false),
            Self::Faster => Some(true),
            _ => None,
        }
    }

    /// The intent of a name in a document.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|intent| intent.name() == name)
    }
}
