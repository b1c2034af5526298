//! What a press can mean.

/// What the tyer wants.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Intent {
    /// Go on to the next step.
    Next,
    /// Go back to the step before.
    Back,
    /// Say this step again.
    Again,
    /// Say where I am.
    Where,
    /// Something is wrong with the work, or with the count.
    Wrong,
    /// Leave this screen.
    Leave,
}
