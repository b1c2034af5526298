//! A crossing found as it is seen: by the bottom pin that it stands beside, and by its row.

use super::{Knot, Leg, Pin, Rim};

/// A point where a rising leg and a falling leg of the finished knot meet.
///
/// ```
/// use marlinspeak::knot::{Knot, Pin, Weave};
///
/// // In row 1 of 5 lead 7 bight, right of bottom pin 1, the leg that rises from that pin meets the
/// // one that falls to the pin after it.
/// let knot = Knot::new(5, 7, Weave::default())?;
/// let spots = knot.spots(1, 1);
/// assert_eq!(spots.len(), 1);
/// assert_eq!((spots[0].rising.from, spots[0].falling.to), (Pin::bottom(1), Pin::bottom(2)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Spot {
    /// Its row, 1 the lowest.
    pub row: u16,
    /// The leg that rises there.
    pub rising: Leg,
    /// The leg that falls there.
    pub falling: Leg,
}

impl Knot {
    /// The crossings of a row that stand at a bottom pin or beyond it, short of the pin after it, in
    /// the way the cord travels. A plain knot has one for every pin and row; with nested bights there
    /// are as many as are nested, and near the rims fewer.
    ///
    /// Takes O(nested × bights). A pin or a row that there is not has none.
    pub fn spots(&self, pin: u16, row: u16) -> Vec<Spot> {
        let is_there = (1..=self.bights()).contains(&pin) && (1..=self.rows()).contains(&row);
        if !is_there {
            return Vec::new();
        }
        let pitch = 2 * self.nested();
        let first = pitch * (pin - 1);
        // As soon as nothing else: where each falling leg passes this row.
        let falling: Vec<(u16, Leg)> = self.passing(Rim::Top, row).collect();
        let mut spots: Vec<(u16, Spot)> = self
            .passing(Rim::Bottom, row)
            .filter(|(x, _)| (first..first + pitch).contains(x))
            .filter_map(|(x, rising)| {
                let (_, falling) = *falling.iter().find(|(other, _)| *other == x)?;
                let spot = Spot {
                    row,
                    rising,
                    falling,
                };
                Some((x, spot))
            })
            .collect();
        spots.sort_by_key(|(x, _)| *x);
        spots.into_iter().map(|(_, spot)| spot).collect()
    }

    /// Every leg that leaves this rim and passes a row, with the half pitch where it does.
    fn passing(&self, leaves: Rim, row: u16) -> impl Iterator<Item = (u16, Leg)> + '_ {
        let round = self.lattice.round();
        self.pins(leaves).filter_map(move |pin: Pin| {
            let leg = self.leg_from(pin);
            let (height, start) = self.stands_at(pin);
            let (end, _) = self.stands_at(leg.to);
            let is_passed = (height.min(end) + 1..height.max(end)).contains(&row);
            let at = (start + height.abs_diff(row) % round) % round;
            is_passed.then_some((at, leg))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knot::{Lattice, Weave};

    /// Every crossing that the legs meet is a spot, each once.
    #[test]
    fn the_spots_of_all_pins_and_rows_are_the_crossings_of_the_knot() {
        for (leads, bights, nested) in [
            (2, 3, 1),
            (5, 7, 1),
            (9, 4, 1),
            (12, 2, 1),
            (5, 4, 2),
            (4, 3, 3),
        ] {
            let lattice = Lattice::plain(leads, bights).unwrap();
            let lattice = lattice.interwoven(nested, nested).unwrap();
            let knot = Knot::woven(lattice, Weave::default()).unwrap();
            let mut found: Vec<(u16, Pin, Pin)> = (1..=bights)
                .flat_map(|pin| (1..=knot.rows()).map(move |row| (pin, row)))
                .flat_map(|(pin, row)| knot.spots(pin, row))
                .map(|spot| (spot.row, spot.rising.from, spot.falling.from))
                .collect();
            found.sort_unstable();
            let mut met: Vec<(u16, Pin, Pin)> = knot
                .pins(Rim::Bottom)
                .map(|pin| knot.leg_from(pin))
                .flat_map(|leg| {
                    let crossed = knot.crossings_of(leg);
                    crossed
                        .map(move |(row, of)| (row, leg.from, of.from))
                        .collect::<Vec<_>>()
                })
                .collect();
            met.sort_unstable();
            assert_eq!(found, met, "{leads} x {bights}, {nested} nested");
            assert!(knot.spots(bights + 1, 1).is_empty() && knot.spots(1, 0).is_empty());
        }
    }
}
