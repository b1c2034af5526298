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
    /// Leave this screen.
    Leave,
}
