//! The cords of a plan: each from end to end, and names that do not go with them.

use thiserror::Error;

use crate::knot::Pin;

/// Names of cords that do not go with the knot.
///
/// ```
/// use marlinspeak::guide::{CordsError, Plan};
///
/// // A doubled knot of one strand has one cord, or one for each pass.
/// let plan = Plan::read("5", "7", "2", "1")?;
/// let names = ["blue", "white", "red"].map(str::to_owned).to_vec();
/// let error = plan.with_cords(names).unwrap_err();
/// assert_eq!(error, CordsError { given: 3, strands: 1, passes: 2 });
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("{given} names for the cords of {strands} strands in {passes} passes")]
pub struct CordsError {
    /// How many names were given.
    pub given: usize,
    /// Strands of the knot.
    pub strands: u16,
    /// Passes of the tie.
    pub passes: u16,
}

/// A cord from one end to the other: a strand in one pass or in several that follow on.
///
/// ```
/// use marlinspeak::guide::Plan;
///
/// // A white cord added to a doubled 5 lead 7 bight begins away from the blue one, so that the
/// // ends do not all come out in one place.
/// let plan = Plan::read("5", "7", "2", "1")?;
/// let plan = plan.with_cords(vec!["blue".to_owned(), "white".to_owned()])?;
/// let runs = plan.runs();
/// assert_eq!(runs.len(), 2);
/// assert_ne!(runs[0].pin, runs[1].pin);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CordRun {
    /// The strand that it makes.
    pub strand: u16,
    /// The pass it begins in.
    pub first: u16,
    /// The pass it ends in.
    pub last: u16,
    /// The bottom pin where both its ends stand.
    pub pin: Pin,
    /// What the tyer calls it.
    pub cord: Option<String>,
}
