//! Why no knot fits, and what would.

use super::candidate::Candidate;
use super::search::{cord_for, shapes, tube_length};
use super::{FitFilter, FitWish};
use crate::bench::tube_rules::{ring_needed, room_needed, takes};
use crate::bench::{Counts, Ground, Millimetres, ShapeError, Tube, pinning};
use crate::knot::Lattice;

/// One reason why nothing fits, and what would.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitWish, Millimetres, Misfit, Object, why_nothing_fits};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A rope of 30 mm does not go round a boathook of 28 mm.
/// let (cord, object) = (mm(30.0), mm(28.0));
/// let why = why_nothing_fits(&FitWish::new(Object::new(object, mm(40.0)), cord));
/// assert_eq!(why, [Misfit::CordThickerThanObject { cord, object }]);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum Misfit {
    /// The cord is thicker than the object.
    CordThickerThanObject {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the object.
        object: Millimetres,
    },
    /// No knot of any counts lies there, for what the thing itself is: a taper no longer than it loses, or a
    /// ball hardly thicker than the cord.
    Refused(ShapeError),
    /// The one knot that is asked about has too many cords to go round the object.
    TooManyCords {
        /// A cord with which they do, if one was found.
        thinner_cord: Option<Millimetres>,
    },
    /// Even the narrowest knot is wider than the length to be covered.
    CoverTooShort {
        /// The length to be covered.
        wanted: Millimetres,
        /// Width of the narrowest knot of this cord on this object.
        narrowest: Millimetres,
        /// A cord with which something fits, if one was found.
        thinner_cord: Option<Millimetres>,
    },
    /// Knots of the right width leave too much of the object bare.
    CoverTooLong {
        /// The length to be covered.
        wanted: Millimetres,
        /// A cord with which something fits, if one was found.
        thicker_cord: Option<Millimetres>,
    },
    /// No knot of this cord lies on the ball, the mat or the taper and hides enough of it.
    NoneLies {
        /// A cord with which something does, if one was found.
        thinner_cord: Option<Millimetres>,
        /// A thicker one, if one was found.
        thicker_cord: Option<Millimetres>,
    },
    /// Knots would fit, but none leaves room to tuck where it is tied.
    NoRoomInPlace {
        /// A cord with which one does, if one was found.
        thinner_cord: Option<Millimetres>,
    },
    /// Knots would fit, but none that is wanted.
    FilteredOut {
        /// How many would.
        others: usize,
    },
    /// Knots would fit, but no row of the tube takes their bights.
    NoRowDivides {
        /// Bight counts that would fit the object, fewest first.
        would_fit: Vec<u16>,
        /// Bight counts that the tube takes.
        can_take: Vec<u16>,
    },
    /// Knots would fit, but the tube is too thin for them: for the cord, for room to tuck, or for
    /// cords to pass between its pins.
    TubeTooThin {
        /// Diameter of the tube.
        tube: Millimetres,
        /// A tube of this diameter would do.
        would_do: Millimetres,
        /// Pins no thicker than this would do as well, if any would.
        pin_at_most: Option<Millimetres>,
    },
    /// Knots would fit, but the rings are too narrow for the rows of pins of nested bights.
    RingTooNarrow {
        /// Width of a ring.
        ring: Millimetres,
        /// Bights nested at each rim: rows of pins.
        nested: u16,
        /// The least that would do.
        needed: Millimetres,
    },
    /// Knots would fit, but the rings do not stand far enough apart on the tube.
    TubeTooShort {
        /// Length of the tube.
        length: Millimetres,
        /// The least that would do.
        would_do: Millimetres,
    },
    /// Knots would fit, but each takes more cord than there is.
    NotEnoughCord {
        /// Cord in hand.
        at_hand: Millimetres,
        /// The least that would do.
        least: Millimetres,
    },
}

/// Says why [`super::fit()`] comes back empty; empty itself when something fits.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitWish, Millimetres, Misfit, Object, fit, why_nothing_fits};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let mut tiller = FitWish::new(Object::new(mm(28.0), mm(60.0)), mm(4.0));
/// tiller.cord_at_hand = Some(mm(900.0));
/// assert!(fit(&tiller).is_empty());
/// let why = why_nothing_fits(&tiller);
/// let [Misfit::NotEnoughCord { least, .. }] = why[..] else {
///     panic!("{why:?}");
/// };
/// // With so much cord as it says, something fits.
/// tiller.cord_at_hand = Some(least);
/// assert!(!fit(&tiller).is_empty());
/// assert_eq!(why_nothing_fits(&tiller), []);
/// ```
pub fn why_nothing_fits(wish: &FitWish) -> Vec<Misfit> {
    let (cord, object) = (wish.cord, wish.object.diameter());
    if cord > object {
        return vec![Misfit::CordThickerThanObject { cord, object }];
    }
    if let Some(error) = wish.object.ground.refuses(cord) {
        return vec![Misfit::Refused(error)];
    }
    // Of plain knots alone it could be said though an interwoven one fits.
    if wish.beside().is_some() && !super::fit(wish).is_empty() {
        return Vec::new();
    }
    let (wanted, others): (Vec<Candidate>, Vec<Candidate>) =
        shapes(wish).partition(|candidate| wish.filter.takes(candidate.counts));
    if wanted.is_empty() {
        // Those that are not wanted could be tied, or else it is not for the wishes.
        let tied = |candidate: &&Candidate| cord_for(wish, candidate).is_some();
        return vec![match others.iter().filter(tied).count() {
            0 if others.is_empty() => no_shape(wish),
            others => Misfit::FilteredOut { others },
        }];
    }
    let cords = wanted
        .iter()
        .filter_map(|candidate| cord_for(wish, candidate));
    let least = cords
        .map(|(cord, _)| cord)
        .min_by(|one, other| one.get().total_cmp(&other.get()));
    match (least, wish.cord_at_hand, wish.tube) {
        (Some(least), Some(at_hand), _) if least > at_hand => {
            vec![Misfit::NotEnoughCord { at_hand, least }]
        }
        (None, _, _) if wish.in_place => vec![Misfit::NoRoomInPlace {
            thinner_cord: cord_with(wish, 0.96, |other| {
                shapes(other).any(|candidate| cord_for(other, &candidate).is_some())
            }),
        }],
        (None, _, Some(tube)) => vec![not_on_this_tube(wish, tube, &wanted)],
        _ => Vec::new(),
    }
}

fn no_shape(wish: &FitWish) -> Misfit {
    if wish.only.is_some() {
        return Misfit::TooManyCords {
            thinner_cord: other_cord(wish, 0.96),
        };
    }
    // Of a taper the length to be covered may be what is wrong; a ball and a mat have none.
    if matches!(wish.object.ground, Ground::Ball(_) | Ground::Flat { .. }) {
        return Misfit::NoneLies {
            thinner_cord: other_cord(wish, 0.96),
            thicker_cord: other_cord(wish, 1.05),
        };
    }
    let wanted = wish.object.cover;
    // 2 leads, 2 bights, 1 pass: the fewest cords, and so the narrowest knot there is. It goes
    // round any object that is as thick as the cord.
    let nested = wish.nested();
    let narrowest = Lattice::plain(2, 2)
        .and_then(|plain| plain.interwoven(nested, nested))
        .and_then(|lattice| Counts::on(lattice, 1))
        .ok()
        .and_then(|counts| wish.braid(counts).tight().ok())
        .filter(|shape| shape.width.get() > wanted.get() + wish.tolerance.get());
    match narrowest {
        Some(shape) => Misfit::CoverTooShort {
            wanted,
            narrowest: shape.width,
            thinner_cord: other_cord(wish, 0.96),
        },
        None => match (wish.object.ground, other_cord(wish, 1.05)) {
            // To cover less of a taper that loses as much makes it the steeper.
            (Ground::Taper { .. }, None) => Misfit::NoneLies {
                thinner_cord: other_cord(wish, 0.96),
                thicker_cord: None,
            },
            (_, thicker_cord) => Misfit::CoverTooLong {
                wanted,
                thicker_cord,
            },
        },
    }
}

/// The nearest cord by steps of this factor with which something fits.
fn other_cord(wish: &FitWish, step: f64) -> Option<Millimetres> {
    cord_with(wish, step, |other| shapes(other).next().is_some())
}

/// The same with which something is so.
fn cord_with(wish: &FitWish, step: f64, is_so: impl Fn(&FitWish) -> bool) -> Option<Millimetres> {
    let mut cord = wish.cord.get();
    for _ in 0..120 {
        cord *= step;
        let diameter = Millimetres::new(cord).ok()?;
        let other = FitWish {
            cord: diameter,
            tolerance: Millimetres::computed(wish.tolerance.get() * cord / wish.cord.get()),
            filter: FitFilter {
                nested: wish.filter.nested,
                ..FitFilter::default()
            },
            ..wish.clone()
        };
        if is_so(&other) {
            return Some(diameter);
        }
    }
    None
}

/// What the tube lacks that comes nearest.
fn not_on_this_tube(wish: &FitWish, tube: &Tube, shapes: &[Candidate]) -> Misfit {
    let (on_a_row, off_rows): (Vec<&Candidate>, Vec<&Candidate>) = shapes
        .iter()
        .partition(|candidate| pinning(tube, candidate.counts.lattice()).is_some());
    if on_a_row.is_empty() {
        let mut would_fit: Vec<u16> = off_rows
            .iter()
            .map(|candidate| candidate.counts.bights())
            .collect();
        would_fit.sort_unstable();
        would_fit.dedup();
        // Nested bights need as many rows in line.
        let nested = wish.nested();
        let takes_nested = |bights: &u16| {
            [2, 3].iter().any(|leads| {
                let lattice = Lattice::plain(*leads, *bights);
                let lattice = lattice.and_then(|plain| plain.interwoven(nested, nested));
                lattice.is_ok_and(|lattice| pinning(tube, lattice).is_some())
            })
        };
        let mut can_take = tube.bights();
        if nested > 1 {
            can_take.retain(takes_nested);
        }
        return Misfit::NoRowDivides {
            would_fit,
            can_take,
        };
    }
    let by_length = |one: &Millimetres, other: &Millimetres| one.get().total_cmp(&other.get());
    let rings = on_a_row
        .iter()
        .map(|candidate| ring_needed(candidate.counts, tube, wish.cord));
    let narrow: Option<Vec<Millimetres>> = rings.collect();
    if let (Some(needed), Some(ring)) = (
        narrow.and_then(|needed| needed.into_iter().min_by(by_length)),
        tube.ring_width(),
    ) {
        return Misfit::RingTooNarrow {
            ring,
            nested: wish.nested(),
            needed,
        };
    }
    let (roomy, thin): (Vec<_>, Vec<_>) = on_a_row
        .into_iter()
        .partition(|candidate| takes(candidate.counts, tube, wish.cord));
    // A tube that is thick enough already is only too short.
    let lengths = roomy
        .into_iter()
        .map(|candidate| tube_length(wish, tube, candidate));
    if let (Some(would_do), Some(length)) = (lengths.min_by(by_length), tube.length) {
        return Misfit::TubeTooShort { length, would_do };
    }
    let needed: Vec<_> = thin
        .into_iter()
        .map(|candidate| room_needed(candidate.counts, tube, wish.cord))
        .collect();
    let thinnest = needed.iter().map(|(tube, _)| *tube).min_by(by_length);
    Misfit::TubeTooThin {
        tube: tube.diameter,
        would_do: thinnest.unwrap_or(tube.diameter),
        pin_at_most: needed.iter().filter_map(|(_, pin)| *pin).max_by(by_length),
    }
}
