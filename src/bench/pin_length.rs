//! How long a pin must be to hold the passes.
//!
//! A pin must reach past all the cord that will lie round it: the part that stands out of the
//! ring is as long as the passes laid one on another, a cord diameter each. Two check values hold
//! it: round a pin of 12.7 mm two passes of 4 mm cord stay, round one of 9.5 mm a single pass may
//! and two do not reliably. *Common practice, no source.*

use super::{Millimetres, ThreadSystem};

/// Of a pin, the part in its ring, when the wall is thinner or not known. *Derived: with the
/// rule above, the check values hold for a seat of 1.6 mm to 4.7 mm.*
const SEAT: Millimetres = Millimetres::computed(3.0);

/// Inch lengths of set screws in common stock, in millimetres; from memory.
const INCH_LENGTHS: [f64; 14] = [
    3.175, 4.7625, 6.35, 7.9375, 9.525, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1, 44.45, 50.8,
];

/// Metric lengths of set screws, ISO 4026; from memory.
const METRIC_LENGTHS: [f64; 19] = [
    2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0,
    55.0, 60.0,
];

/// The shortest pin that holds so many passes: seat + passes × cord diameter.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, pin_needed};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Two passes of 4 mm, and 3 mm that are screwed in; or the whole of a wall that is thicker.
/// assert_eq!(pin_needed(mm(4.0), 2, None), mm(11.0));
/// assert_eq!(pin_needed(mm(4.0), 2, Some(mm(5.0))), mm(13.0));
/// ```
pub fn pin_needed(cord: Millimetres, passes: u16, wall: Option<Millimetres>) -> Millimetres {
    let seat = wall.map_or(SEAT.get(), |wall| wall.get().max(SEAT.get()));
    Millimetres::computed(seat + f64::from(passes) * cord.get())
}

/// Whether a pin of this length holds so many passes.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, pin_holds};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let holds = |length, passes| pin_holds(mm(length), mm(4.0), passes, None);
/// assert!(holds(12.0, 2));
/// assert!(holds(10.0, 1) && !holds(10.0, 2));
/// ```
pub fn pin_holds(
    length: Millimetres,
    cord: Millimetres,
    passes: u16,
    wall: Option<Millimetres>,
) -> bool {
    length >= pin_needed(cord, passes, wall)
}

/// The shortest set screw in stock that is at least as long as `needed`; `needed` itself when
/// the system is not known or none is so long.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Millimetres, ThreadSystem, pin_to_buy};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// assert_eq!(pin_to_buy(mm(11.0), Some(ThreadSystem::Metric)), mm(12.0));
/// assert_eq!(pin_to_buy(mm(11.0), Some(ThreadSystem::Inch)), mm(12.7));
/// // No set screw is so long: what is needed has to be cut from a rod.
/// assert_eq!(pin_to_buy(mm(75.0), Some(ThreadSystem::Metric)), mm(75.0));
/// ```
pub fn pin_to_buy(needed: Millimetres, system: Option<ThreadSystem>) -> Millimetres {
    let lengths: &[f64] = match system {
        Some(ThreadSystem::Inch) => &INCH_LENGTHS,
        Some(ThreadSystem::Metric) => &METRIC_LENGTHS,
        None => &[],
    };
    lengths
        .iter()
        .copied()
        .map(Millimetres::computed)
        .find(|&length| length >= needed)
        .unwrap_or(needed)
}
