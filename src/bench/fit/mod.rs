//! Which knots cover an object.

mod answer;
mod candidate;
mod grounds;
mod misfit;
mod order;
mod search;
mod whole;
mod wish;

pub use answer::{FitAnswer, FitGroup, FitSection};
pub use candidate::{MOST_LEADS_AND_BIGHTS, MOST_PASSES};
pub use misfit::{Misfit, why_nothing_fits};
pub use order::FAULT_STEP;
pub use wish::{FitFilter, FitWish, OneKnot, WeaveChoice};

/// Every knot that answers the wish, in the order in which a good master would offer them.
///
/// A knot answers when the length to be covered lies within its range of widths, or misses it by
/// no more than the tolerance; it is then drawn up to that length, or as near as it goes. They
/// come section by section, see [`FitSection`]. When nothing is said of nested bights, only the best
/// interwoven knots are among them.
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
    let mut answers = search::answers(wish);
    let Some(beside) = wish.beside() else {
        return order::sorted(wish, answers);
    };
    answers.extend(search::untimed_answers(&beside));
    let mut answers = order::sorted(wish, answers);
    for answer in &mut answers {
        if answer.section == FitSection::Interwoven {
            search::time(&beside, answer);
        }
    }
    answers
}
