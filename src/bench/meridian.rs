//! The mean surface of a ground along one of its lines from rim to rim: how far the bands get on it.
//!
//! Let `ρ(y)` be the radius of the mean surface at distance `y` along it, and `s` the distance of
//! neighbouring bands of one heading, the same everywhere. With `b = B·s / 2π`, the radius of the ring in
//! which the bands would stand side by side, a leg stands at `cos α = b / ρ` from the line, and on the way
//! `dy` it passes `2 sin α dy / s` leads and takes `dy / cos α` of cord. So all that is to be known of a
//! ground is `∫ sin α dy` and `∫ ρ dy`; both have closed forms where the radius changes evenly, as on a
//! taper and on a board, and on a ball. *Derived; the tests hold them to quadrature and to solids cut
//! into cylinders.*

use std::f64::consts::{FRAC_PI_2, TAU};

/// Along the ground, from rim to rim.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Meridian {
    /// The radius changes evenly, by `slope` for every millimetre from the bottom to the top; the knot
    /// lies in the middle of what has this radius.
    Taper {
        /// Radius in the middle of the knot.
        middle: f64,
        /// From −1 to 1, both left out.
        slope: f64,
    },
    /// Flat: the knot reaches inward from this radius.
    Flat {
        /// Radius of the circle of the bottom rim.
        outer: f64,
    },
    /// A ball of this radius, the knot in the middle of it.
    Ball {
        /// Radius in the middle of the cord.
        radius: f64,
    },
}

impl Meridian {
    /// Radii of the bottom and of the top rim of a knot that rises so far.
    pub(super) fn rims(&self, rise: f64) -> [f64; 2] {
        match *self {
            Self::Taper { middle, slope } => {
                let change = slope * rise / 2.0;
                [middle - change, middle + change].map(|radius| radius.max(0.0))
            }
            Self::Flat { outer } => [outer, (outer - rise).max(0.0)],
            Self::Ball { radius } => {
                let half = (rise / (2.0 * radius)).min(FRAC_PI_2);
                [radius * half.cos(); 2]
            }
        }
    }

    /// Radius of the smaller rim.
    pub(super) fn thin(&self, rise: f64) -> f64 {
        let [bottom, top] = self.rims(rise);
        bottom.min(top)
    }

    /// Radius where it is thickest, of a knot with no rise.
    pub(super) const fn thick(&self) -> f64 {
        match *self {
            Self::Taper { middle, .. } => middle,
            Self::Flat { outer } => outer,
            Self::Ball { radius } => radius,
        }
    }

    /// Radius half of the way from rim to rim.
    pub(super) fn middle(&self, rise: f64) -> f64 {
        match *self {
            Self::Taper { middle, .. } => middle,
            Self::Flat { outer } => (outer - rise / 2.0).max(0.0),
            Self::Ball { radius } => radius,
        }
    }

    /// Radius so far inside a rim, the bottom one (0) or the top one.
    pub(super) fn inside(&self, rise: f64, rim: usize, far: f64) -> f64 {
        let far = far.min(rise / 2.0);
        if matches!(self, Self::Ball { .. }) {
            return self.thin(rise - 2.0 * far);
        }
        let [bottom, top] = self.rims(rise);
        let change = (top - bottom) * far / rise;
        if rim == 0 {
            bottom + change
        } else {
            top - change
        }
    }

    /// The rise at which the thinner rim has shrunk to this radius, less than that of the middle.
    pub(super) fn reach(&self, thin: f64) -> f64 {
        match *self {
            Self::Taper { middle, slope } => 2.0 * (middle - thin) / slope.abs(),
            Self::Flat { outer } => outer - thin,
            Self::Ball { radius } => 2.0 * radius * (thin / radius).clamp(0.0, 1.0).acos(),
        }
    }

    /// `∫ ρ dy` from rim to rim: what lies between them over 2π.
    pub(super) fn area(&self, rise: f64) -> f64 {
        if let Self::Ball { radius } = *self {
            let half = (rise / (2.0 * radius)).min(FRAC_PI_2);
            return 2.0 * radius * radius * half.sin();
        }
        let [bottom, top] = self.rims(rise);
        f64::midpoint(bottom, top) * rise
    }

    /// The same with so much more beyond either rim, as far as the ground goes.
    pub(super) fn area_to(&self, rise: f64, beyond: f64) -> f64 {
        let Self::Flat { outer } = *self else {
            return self.area(rise + 2.0 * beyond);
        };
        let inner = (outer - rise - beyond).max(0.0);
        let outer = outer + beyond;
        (outer * outer - inner * inner) / 2.0
    }

    /// `∫ sin α dy` from rim to rim, where the bands would stand side by side in a ring of radius
    /// `packed`, no more than that of either rim.
    pub(super) fn sines(&self, rise: f64, packed: f64) -> f64 {
        if let Self::Ball { radius } = *self {
            // ∫ √(cos²φ − c²) / cos φ dφ = asin(sin φ / √(1 − c²)) − c·atan(c sin φ / √(cos²φ − c²))
            let least = packed / radius;
            let (sin, cos) = (rise / (2.0 * radius)).min(FRAC_PI_2).sin_cos();
            let root = (cos * cos - least * least).max(0.0).sqrt();
            let whole = (1.0 - least * least).max(f64::MIN_POSITIVE).sqrt();
            let angle = (sin / whole).min(1.0).asin() - least * (least * sin).atan2(root);
            return 2.0 * radius * angle;
        }
        let [bottom, top] = self.rims(rise);
        evenly(bottom, top, rise, packed)
    }

    /// The ring, by its radius, up to which the bands can be let out when the knot rises so far: that of
    /// the thinner rim, where the legs then stand along the line.
    pub(super) fn sines_at_most(&self, rise: f64) -> f64 {
        self.sines(rise, self.thin(rise))
    }
}

/// `∫ √(ρ² − b²) / ρ dy` while the radius changes evenly from `bottom` to `top`.
///
/// `∫ √(ρ² − b²) / ρ dρ = t − b·acos(b/ρ)` with `t = √(ρ² − b²)`. The difference of two such, over the
/// change of the radius, is written so that nothing is lost where the radius hardly changes: there it
/// is that of the cylinder.
fn evenly(bottom: f64, top: f64, rise: f64, packed: f64) -> f64 {
    let root = |radius: f64| ((radius - packed) * (radius + packed)).max(0.0).sqrt();
    let (lower, upper) = (root(bottom), root(top));
    let roots = lower + upper;
    if roots <= 0.0 {
        return 0.0;
    }
    let sum = bottom + top;
    let square = packed * packed + lower * upper;
    let apart = packed * (top - bottom) * sum / roots / square;
    let arc = if apart.abs() < 1e-6 {
        1.0 - apart * apart / 3.0
    } else {
        apart.atan() / apart
    };
    rise * sum / roots * (1.0 - packed * packed / square * arc)
}

/// The place between `low` and `high` where a function that falls comes to nought; the end nearest to
/// it, when it does not. To the last digits, by false position kept from standing still.
pub(super) fn root_of(low: f64, high: f64, function: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (low, high);
    let (mut at_low, mut at_high) = (function(low), function(high));
    if at_low <= 0.0 {
        return low;
    }
    if at_high >= 0.0 {
        return high;
    }
    let mut side = 0;
    for _ in 0..200 {
        let share = at_low / (at_low - at_high);
        // Away from the ends, so that every step narrows what is left.
        let here = low + (high - low) * share.clamp(1e-3, 1.0 - 1e-3);
        let value = function(here);
        if value > 0.0 {
            (low, at_low) = (here, value);
            if side == 1 {
                at_high /= 2.0;
            }
            side = 1;
        } else {
            (high, at_high) = (here, value);
            if side == -1 {
                at_low /= 2.0;
            }
            side = -1;
        }
        if value == 0.0 || high - low <= 1e-13 * high.abs() {
            return here;
        }
    }
    f64::midpoint(low, high)
}

/// How far a flat ring rises outward from an inner rim of this radius until `∫ sin α dy` has come to `goal`.
pub(super) fn flat_rise(inner: f64, packed: f64, goal: f64) -> f64 {
    let short = |rise: f64| {
        let flat = Meridian::Flat {
            outer: inner + rise,
        };
        goal - flat.sines(rise, packed)
    };
    let mut far = goal;
    while short(far) > 0.0 {
        far *= 2.0;
    }
    root_of(0.0, far, short)
}

/// Bands at such a distance, so many of one heading, stand side by side in a ring of this radius.
pub(super) fn packed(bands: f64, spacing: f64) -> f64 {
    bands * spacing / TAU
}

/// How far round a leg goes that is so long and rises so far.
pub(super) fn run_of(leg: f64, rise: f64) -> f64 {
    let share = (rise / leg).min(1.0);
    leg * (1.0 - share * share).max(0.0).sqrt()
}
