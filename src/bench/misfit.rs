//! Why no knot fits, and what would.

use super::fit::{cord_for, for_each_shape};
use super::{Counts, Millimetres, Wish};

/// One reason why nothing fits, and what would.
#[derive(Clone, Debug, PartialEq)]
pub enum Misfit {
    /// The cord is thicker than the object.
    CordThickerThanObject {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the object.
        object: Millimetres,
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
    /// Knots would fit, but no row of the tube takes their bights.
    NoRowDivides {
        /// Bight counts that would fit the object, fewest first.
        would_fit: Vec<u16>,
        /// Bight counts that the tube takes.
        can_take: Vec<u16>,
    },
    /// Knots would fit, but the tube is too thin for them.
    TubeTooThin {
        /// Diameter of the tube.
        tube: Millimetres,
        /// A tube of this diameter would do.
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
pub fn why_nothing_fits(wish: &Wish) -> Vec<Misfit> {
    let (cord, object) = (wish.cord, wish.object.diameter);
    if cord > object {
        return vec![Misfit::CordThickerThanObject { cord, object }];
    }
    let mut shapes = Vec::new();
    for_each_shape(wish, |counts, shape| {
        shapes.push((counts, *shape));
        true
    });
    if shapes.is_empty() {
        return vec![no_shape(wish)];
    }
    let least = shapes
        .iter()
        .filter_map(|(counts, shape)| cord_for(wish, *counts, shape))
        .min_by(|one, other| one.get().total_cmp(&other.get()));
    match (least, wish.cord_at_hand, wish.tube) {
        (Some(least), Some(at_hand), _) if least > at_hand => {
            vec![Misfit::NotEnoughCord { at_hand, least }]
        }
        (None, _, Some(_)) => not_on_this_tube(wish, shapes.iter().map(|(counts, _)| *counts)),
        _ => Vec::new(),
    }
}

fn no_shape(wish: &Wish) -> Misfit {
    let wanted = wish.object.cover;
    // 2 leads, 2 bights, 1 pass: the fewest cords, and so the narrowest knot there is. It goes
    // round any object that is as thick as the cord.
    let narrowest = Counts::new(2, 2, 1)
        .ok()
        .and_then(|counts| wish.braid(counts).faired().ok())
        .filter(|shape| shape.width.get() > wanted.get() + wish.tolerance.get());
    match narrowest {
        Some(shape) => Misfit::CoverTooShort {
            wanted,
            narrowest: shape.width,
            thinner_cord: other_cord(wish, 0.96),
        },
        None => Misfit::CoverTooLong {
            wanted,
            thicker_cord: other_cord(wish, 1.05),
        },
    }
}

/// The nearest cord by steps of this factor with which something fits.
fn other_cord(wish: &Wish, step: f64) -> Option<Millimetres> {
    let mut cord = wish.cord.get();
    for _ in 0..120 {
        cord *= step;
        let diameter = Millimetres::new(cord).ok()?;
        let other = Wish {
            cord: diameter,
            tolerance: Millimetres::computed(wish.tolerance.get() * cord / wish.cord.get()),
            ..wish.clone()
        };
        let mut fits = false;
        for_each_shape(&other, |_, _| {
            fits = true;
            false
        });
        if fits {
            return Some(diameter);
        }
    }
    None
}

fn not_on_this_tube(wish: &Wish, counts: impl Iterator<Item = Counts>) -> Vec<Misfit> {
    let Some(tube) = wish.tube else {
        return Vec::new();
    };
    let counts: Vec<Counts> = counts.collect();
    let rowed = || counts.iter().filter(|counts| tube.takes(counts.bights()));
    if rowed().next().is_none() {
        let mut would_fit: Vec<u16> = counts.iter().map(|counts| counts.bights()).collect();
        would_fit.sort_unstable();
        would_fit.dedup();
        return vec![Misfit::NoRowDivides {
            would_fit,
            can_take: tube.bights(),
        }];
    }
    let would_do = rowed()
        .filter_map(|counts| {
            super::on_tube::cosine_on_tube(*counts, wish.cord, tube.diameter)
                .err()
                .map(|full| full.tube_at_least)
        })
        .chain((wish.cord > tube.diameter).then_some(wish.cord))
        .min_by(|one, other| one.get().total_cmp(&other.get()));
    would_do
        .map(|would_do| Misfit::TubeTooThin {
            tube: tube.diameter,
            would_do: Millimetres::computed(would_do.get().max(wish.cord.get())),
        })
        .into_iter()
        .collect()
}
