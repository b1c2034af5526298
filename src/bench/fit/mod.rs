//! Which knots cover an object.

mod answer;
mod misfit;
mod order;
mod search;
mod wish;

pub use answer::{FitAnswer, FitGroup, FitSection};
pub use misfit::{Misfit, why_nothing_fits};
pub use order::FAULT_STEP;
pub use search::{MOST_LEADS_AND_BIGHTS, MOST_PASSES};
pub use wish::{FitFilter, FitWish, WeaveChoice};

/// Every knot that answers the wish, in the order in which a good master would offer them.
///
/// A knot answers when the length to be covered lies within its range of widths, or misses it by
/// no more than the tolerance; it is then drawn up to that length, or as near as it goes. They
/// come section by section, see [`FitSection`].
/// Empty when nothing fits; [`why_nothing_fits`] says why.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitWish, Millimetres, Object, fit};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let rail = FitWish::new(Object::new(mm(28.0), mm(60.0)), mm(4.0));
/// let answers = fit(&rail);
/// assert!(answers.iter().all(|answer| answer.range.contains(answer.shape.width)));
/// ```
pub fn fit(wish: &FitWish) -> Vec<FitAnswer> {
    order::sorted(wish, search::answers(wish))
}
