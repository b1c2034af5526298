//! Which of two listings is the newer one.

use std::sync::atomic::{AtomicU64, Ordering};

/// The number of a listing, drawn before it begins: of two, the one with the higher number has every
/// change that was made before the other began. So whichever comes late is known, and does not take
/// the place of a newer one.
///
/// ```
/// use marlinspeak::session::ListingNumber;
///
/// let first = ListingNumber::draw();
/// assert!(ListingNumber::draw() > first && first > ListingNumber::default());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct ListingNumber(u64);

impl ListingNumber {
    /// One higher than any before.
    pub fn draw() -> Self {
        static DRAWN: AtomicU64 = AtomicU64::new(1);
        Self(DRAWN.fetch_add(1, Ordering::Relaxed))
    }
}
