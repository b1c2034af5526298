//! The page of the orders that a job belongs to.

use crate::shelf::OrderId;

/// The page of the orders that a job belongs to: an order, or the list of them.
///
/// ```
/// use marlinspeak::session::{JobPage, OrderJob};
///
/// assert_eq!(OrderJob::Look(None).page(), JobPage::Leads(None));
/// assert_eq!(OrderJob::New.page(), JobPage::New);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum JobPage {
    /// The job leads there.
    Leads(Option<OrderId>),
    /// It leads to an order that is new.
    New,
    /// It is done there, and whoever is elsewhere by then stays there.
    Stays(Option<OrderId>),
}
