//! How much a knot hides, against a raster of its bands that knows nothing of the closed form.

use marlinspeak::bench::Braid;

use crate::{braid, counts, hard, mm};

/// A point and a direction are enough for a leg; these are all that can be seen from one pitch.
struct Bands {
    half_pitch: f64,
    row: f64,
    leads: i32,
    bend: f64,
    band: f64,
}

impl Bands {
    /// How far a point lies from the nearest middle line of a band, the bights being arcs.
    fn distance(&self, x: f64, y: f64) -> f64 {
        let diagonal = self.half_pitch.hypot(self.row);
        let (cos, sin) = (self.half_pitch / diagonal, self.row / diagonal);
        // Where the arc of a bight meets its legs, up from where they would meet in a point.
        let hub = self.bend / cos;
        let joint = hub - self.bend * cos;
        let top = f64::from(self.leads) * self.row;
        let mut nearest = f64::INFINITY;
        let around = f64::from(self.leads) + 3.0;
        #[expect(clippy::cast_possible_truncation, reason = "some pins on")]
        let first = (x / self.half_pitch - around).floor() as i32;
        #[expect(clippy::cast_possible_truncation, reason = "some pins on")]
        let last = (x / self.half_pitch + around).ceil() as i32;
        for pin in first..=last {
            let at = f64::from(pin) * self.half_pitch;
            // Bottom pins stand at even half pitches; a rising and a falling leg meet there.
            if pin.rem_euclid(2) == 0 {
                for way in [1.0, -1.0] {
                    let (along, aside) = along_and_aside(x - at, y, way * cos, sin);
                    let from = joint / sin;
                    let to = (top - joint) / sin;
                    if (from..=to).contains(&along) {
                        nearest = nearest.min(aside.abs());
                    }
                }
                nearest = nearest.min(self.to_arc(x - at, y - hub, sin));
            }
            // Top pins likewise, on the half pitches where legs from the bottom land.
            if (pin - self.leads).rem_euclid(2) == 0 {
                nearest = nearest.min(self.to_arc(x - at, (top - y) - hub, sin));
            }
        }
        nearest
    }

    /// Distance from the arc of a bight whose hub this is measured from.
    fn to_arc(&self, x: f64, y: f64, sin: f64) -> f64 {
        let radius = x.hypot(y);
        // Between the two legs, below the hub.
        if y <= 0.0 && x.abs() <= radius * sin {
            (radius - self.bend).abs()
        } else {
            f64::INFINITY
        }
    }

    /// The share hidden between the outer edges of the bights, by points in one pitch.
    fn cover(&self, points: u32) -> f64 {
        let diagonal = self.half_pitch.hypot(self.row);
        let cos = self.half_pitch / diagonal;
        let beyond = self.bend / cos - self.bend - self.band / 2.0;
        let height = f64::from(self.leads) * self.row - 2.0 * beyond;
        let mut hidden = 0_u32;
        for column in 0..points {
            for line in 0..points {
                let share = |nth: u32| (f64::from(nth) + 0.5) / f64::from(points);
                let x = 2.0 * self.half_pitch * share(column);
                let y = beyond + height * share(line);
                hidden += u32::from(self.distance(x, y) <= self.band / 2.0);
            }
        }
        f64::from(hidden) / f64::from(points * points)
    }
}

fn along_and_aside(x: f64, y: f64, cos: f64, sin: f64) -> (f64, f64) {
    (x * cos + y * sin, y * cos - x * sin)
}

/// The bands of a knot this wide, from counts and lengths alone: where the legs are so steep that
/// the tips of the bights stand as far apart as the knot is wide.
fn bands(braid: &Braid, width: f64) -> Bands {
    let band = f64::from(braid.counts.passes()) * braid.cord.get();
    let half_pitch = braid.circumference().get() / f64::from(2 * braid.counts.bights());
    let leads = f64::from(braid.counts.leads());
    let (mut low, mut high) = (0.0, 10.0 * width);
    for _ in 0..200 {
        let row = f64::midpoint(low, high);
        let cos = half_pitch / half_pitch.hypot(row);
        let tips = leads * row - 2.0 * (band / 2.0) * (1.0 / cos - 1.0);
        if tips > width - band {
            high = row;
        } else {
            low = row;
        }
    }
    Bands {
        half_pitch,
        row: low,
        leads: braid.counts.leads().into(),
        bend: band / 2.0,
        band,
    }
}

#[test]
fn cover_is_that_of_a_raster_of_the_bands() {
    for (knot, cord, around) in [
        (counts(5, 7, 2), 4.0, 30.0),
        (counts(17, 4, 1), 4.0, 30.0),
        (counts(3, 4, 1), 4.0, 30.0),
        (counts(3, 5, 3), 4.0, 30.0),
        (counts(5, 2, 4), 4.0, 30.0),
        (counts(2, 9, 3), 4.0, 75.0),
        (counts(2, 3, 3), 4.0, 20.0),
        (counts(4, 3, 2), 2.0, 12.0),
        (counts(9, 7, 1), 4.0, 30.0),
        (counts(8, 9, 2), 3.0, 60.0),
    ] {
        for braid in [braid(knot, cord, around), hard(knot, cord, around)] {
            let tight = braid.tight().unwrap();
            for share in [1.0, 1.15, 1.5] {
                let width = tight.width.get() * share;
                let shape = braid.opened(mm(width)).unwrap();
                let raster = bands(&braid, width).cover(220);
                let off = (shape.cover - raster).abs();
                assert!(
                    off <= 0.01 * raster,
                    "{knot:?} {share}: {} {raster}",
                    shape.cover
                );
            }
        }
    }
}

/// The depth of the scallop on the same raster: the first point of the middle line between two
/// bights that is hidden.
#[test]
fn scallops_are_as_deep_as_on_the_raster() {
    for knot in [
        counts(5, 7, 2),
        counts(3, 4, 1),
        counts(17, 4, 1),
        counts(3, 5, 3),
    ] {
        let braid = braid(knot, 4.0, 30.0);
        let shape = braid.tight().unwrap();
        let bands = bands(&braid, shape.width.get());
        let cos = bands.half_pitch / bands.half_pitch.hypot(bands.row);
        let rim = bands.bend / cos - bands.bend - bands.band / 2.0;
        let mut depth = 0.0;
        while bands.distance(bands.half_pitch, rim + depth) > bands.band / 2.0 {
            depth += 0.01;
        }
        assert!(
            (shape.scallop.get() - depth).abs() < 0.02,
            "{knot:?} {depth} {}",
            shape.scallop
        );
    }
}

/// What cord the picture draws hides what the figures say, where it draws it in its full width: the
/// ground is whatever is neither cord nor pin.
#[test]
fn a_doubled_knot_of_five_leads_hides_about_nine_tenths() {
    let soft = braid(counts(5, 7, 2), 4.0, 30.0).tight().unwrap();
    assert!((0.83..0.92).contains(&soft.cover), "{}", soft.cover);
    // The scallops alone leave a tenth bare.
    assert!(
        soft.scallop > mm(3.0) && soft.scallop < mm(6.0),
        "{}",
        soft.scallop
    );
}
