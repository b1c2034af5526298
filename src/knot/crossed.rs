//! What a leg meets on its way, and what it lies between.

use super::braid::{Heading, Knot, Leg, wrapped};
use super::{Nest, Pin, Rim};

impl Knot {
    /// Where bights are nested, the pins of the legs of the same heading from the nests outside that
    /// lie next to this leg, on the left and on the right (of a tyer who works to the right); nothing
    /// for a leg of the outermost nest.
    ///
    /// Pins of one number stand in line, and row *r* stands `2 r` half pitches behind the line of a
    /// leg from the outermost row. (*Derived.*)
    pub fn lies_between(&self, leg: Leg) -> Option<[Pin; 2]> {
        let nested = self.last_row() + 1;
        let (own, nest) = (leg.from.row.index(), self.nest_from(leg.from));
        let outside = &self.nests[..usize::from(nest.rows[0])];
        let rows = || {
            outside.iter().map(|nest| match leg.from.rim {
                Rim::Bottom => nest.rows[0],
                Rim::Top => nest.rows[1],
            })
        };
        let left = rows().min_by_key(|row| (row + nested - own) % nested)?;
        let right = rows().min_by_key(|row| (own + nested - row) % nested)?;
        let at = |row: u8, number: u16| Pin {
            row: self.lattice.pin_row(row),
            number,
            ..leg.from
        };
        let (number, bights) = (leg.from.number, self.bights());
        let before = if number == 1 { bights } else { number - 1 };
        let after = if number == bights { 1 } else { number + 1 };
        Some([
            at(left, if left > own { number } else { before }),
            at(right, if right < own { number } else { after }),
        ])
    }

    /// Every crossing of a leg in the order it meets them: its row, and the leg that is crossed.
    /// Takes O(rows) in all and stores nothing.
    ///
    /// In every row the legs that go the other way are of one nest, and from row to row that nest and
    /// the pin it comes from move on by one. Near the rims the leg that would be there has not
    /// set out yet or has landed.
    pub fn crossings_of(&self, leg: Leg) -> impl Iterator<Item = (u16, Leg)> + '_ {
        let (heading, own) = (leg.heading(), self.nest_from(leg.from));
        let [low, high] = own.heights;
        let (mut far, mut index) = self.first_met(leg, own);
        (1..high - low).filter_map(move |nth| {
            let (row, nest) = match heading {
                Heading::Rising => (low + nth, self.lattice.lands_in(far)),
                Heading::Falling => (high - nth, far),
            };
            let (nest, from) = (self.nests[usize::from(nest)], index);
            if far == 0 {
                far = self.last_row();
                index = wrapped(index + 1, self.bights());
            } else {
                far -= 1;
            }
            nest.passes(row).then(|| {
                let met = match heading {
                    Heading::Rising => self.falling(nest, from),
                    Heading::Falling => self.rising(nest, from),
                };
                (row, met)
            })
        })
    }

    fn last_row(&self) -> u8 {
        u8::try_from(self.nests.len() - 1).unwrap_or(u8::MAX)
    }

    /// The row of the far rim, counted from 0, and the pin in it, counted from 0, from which the leg
    /// comes that would be met in the first row after the start of this one.
    ///
    /// Where legs of two bottom rows *j* and *b* meet, `y ≡ j + b (mod A)`; and where the rising one
    /// is from pin *i* and the falling one from pin *m* of top row *t*, `y = A (m − i + ⌈L/2⌉) + s + j − t`
    /// round the tube. (*Derived.*)
    fn first_met(&self, leg: Leg, own: Nest) -> (u8, u16) {
        // The same of a plain knot, where it comes to one pin past the one whose leg lands where this
        // one starts, without dividing: short legs would take as long to begin as to tell.
        if self.nests.len() == 1 {
            let (bights, [up, down]) = (self.bights(), own.shifts);
            let back = match leg.heading() {
                Heading::Rising => down,
                Heading::Falling => up,
            };
            let lands_here = wrapped(leg.from.number - 1 + bights - back, bights);
            return (0, wrapped(lands_here + 1, bights));
        }
        let nested = i32::from(self.nested());
        let lands = i32::from(self.lattice.lands()) - 1;
        let half = i32::from(self.leads().div_ceil(2));
        let [bottom, top] = own.rows.map(i32::from);
        let from = i32::from(leg.from.number) - 1;
        let (far, index) = match leg.heading() {
            Heading::Rising => {
                let row = i32::from(own.heights[0]) + 1;
                let far = (lands + bottom - row).rem_euclid(nested);
                (far, from - half + (row - lands - bottom + far) / nested)
            }
            Heading::Falling => {
                let row = i32::from(own.heights[1]) - 1;
                let far = (row - bottom).rem_euclid(nested);
                (far, from + half - (row - lands - far + top) / nested)
            }
        };
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "remainders of small numbers"
        )]
        let met = (far as u8, index.rem_euclid(i32::from(self.bights())) as u16);
        met
    }
}
