//! How often a cord has to be tucked under another.

use super::{Lattice, Laying, LayingOrder, Nest, Weave};

/// Tucks in the lead pass of all strands, laid one after the other: crossings at which the leg
/// that comes later goes under.
///
/// Takes O(rows). In row *y* of a nest by itself a rising leg that leaves bottom pin *i* meets the
/// falling leg whose strand rose from pin *i + y − L* in the same round. Along one strand of *R*
/// rounds the pins follow each other by *L*, so that falling leg is laid `(y L⁻¹ − 1) mod R` rounds
/// later than the rising one, and of *R* rounds as many come round to before. Of two nests the inner
/// is laid later. (*Derived.*)
///
/// # Examples
/// ```
/// use marlinspeak::knot::{Lattice, Weave, lead_tucks};
///
/// let (knot, plain) = (Lattice::plain(17, 4)?, Weave::Run(1));
/// assert_eq!(lead_tucks(knot, &plain), 40);
/// assert_eq!(lead_tucks(knot, &plain.twin(16)), 24);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
pub fn lead_tucks(lattice: Lattice, weave: &Weave) -> u32 {
    let [among_strands, within] = tucks(lattice, weave);
    among_strands + within
}

/// Tucks of the lead pass: between legs of two strands, and of one.
fn tucks(lattice: Lattice, weave: &Weave) -> [u32; 2] {
    let mut counted = [0, 0];
    for rising in lattice.nests() {
        for falling in lattice.nests() {
            let rows = lattice.crossing_rows(rising, falling);
            if rising.rows == falling.rows {
                let overs = weave.rising(lattice.rows());
                let overs = overs
                    .skip(usize::from(rising.heights[0] + lattice.nested()) - 1)
                    .step_by(usize::from(lattice.nested()))
                    .take(rows.len());
                let of_nest = tucks_of_nest(rising, lattice.bights(), overs);
                counted = [0, 1].map(|which| counted[which] + of_nest[which]);
                continue;
            }
            let rising_later = rising.rows[0] > falling.rows[0];
            let tucked = rows.filter(|row| weave.rising_over(*row) != rising_later);
            let tucked = u32::try_from(tucked.count()).unwrap_or(u32::MAX);
            counted[0] += u32::from(lattice.bights()) * tucked;
        }
    }
    counted
}

/// The same of one nest by itself, whose rising legs go over in its rows of crossings as told.
fn tucks_of_nest(nest: Nest, bights: u16, overs: impl Iterator<Item = bool>) -> [u32; 2] {
    let Nest { leads, strands, .. } = nest;
    let (strands, bights) = (u32::from(strands), u32::from(bights));
    let rounds = bights / strands;
    // By how many rounds one goes on when the pin does by as many as there are strands.
    let inverse = inverse(u32::from(leads) / strands, rounds);
    let mut counted = [0, 0];
    // Row by row: `row % strands`, and `row / strands * inverse − 1`, modulo the rounds.
    let (mut aside, mut step) = (0, rounds - 1);
    for rising_over in overs {
        aside += 1;
        if aside == strands {
            aside = 0;
            step += inverse;
            if step >= rounds {
                step -= rounds;
            }
        }
        let (index, rising_later) = if aside == 0 {
            (1, strands * step)
        } else {
            (0, aside * rounds)
        };
        counted[index] += if rising_over {
            bights - rising_later
        } else {
            rising_later
        };
    }
    counted
}

/// The number below `modulus` that `number`, which has no factor in common with it, is multiplied
/// with to leave 1; 0 for a modulus of 1. By the algorithm of Euclid, extended.
fn inverse(number: u32, modulus: u32) -> u32 {
    let (mut larger, mut smaller) = (modulus, number % modulus);
    // What `number` is multiplied with to leave them.
    let (mut for_larger, mut for_smaller) = (0, 1 % modulus);
    while smaller > 1 {
        let times = larger / smaller;
        let next = (for_larger + (modulus - for_smaller) * times) % modulus;
        (larger, smaller) = (smaller, larger % smaller);
        (for_larger, for_smaller) = (for_smaller, next);
    }
    for_smaller
}

impl Laying {
    /// Tucks in the whole tie. A follower meets every crossing of cords that lie there, and goes
    /// under as the first cord does.
    pub fn tucks(&self) -> u32 {
        let knot = self.knot();
        let [among_strands, within] = tucks(knot.lattice(), knot.weave());
        let followers = u32::from(self.passes()) - 1;
        let rows_within = |nest: &Nest| u32::from((nest.leads - 1) / nest.strands);
        let rows_within: u32 = knot.nests().iter().map(rows_within).sum();
        let crossings = u32::from(knot.bights()) * rows_within;
        let lead = among_strands + within;
        match self.order() {
            // Both legs of every crossing come by in every later pass; one of them tucks.
            LayingOrder::PassByPass => lead + followers * knot.crossings(),
            // A strand is finished before the next lies: only the later one meets the other.
            LayingOrder::StrandByStrand => lead + followers * (among_strands + crossings),
        }
    }

    /// The same knot in the weave that looks alike with overs and unders exchanged, when that
    /// takes fewer tucks.
    pub fn with_fewer_tucks(&self) -> Option<Self> {
        let twin = self.with_twin();
        (twin.tucks() < self.tucks()).then_some(twin)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knot::Knot;

    /// Counted crossing by crossing, as a tyer meets them.
    fn counted(laying: &Laying) -> u32 {
        let legs = (0..laying.legs()).filter_map(|before| laying.nth_leg(before));
        let tucks = legs.map(|leg| laying.crossings(leg).filter(|met| !met.over).count());
        u32::try_from(tucks.sum::<usize>()).unwrap()
    }

    #[test]
    fn tucks_are_those_that_the_tyer_meets() {
        for leads in 2..=13 {
            for bights in 2..=13 {
                for weave in ["1", "2", "ouuo", "uouuo"] {
                    let weave = Weave::parse(weave).unwrap();
                    let Ok(knot) = Knot::new(leads, bights, weave) else {
                        continue;
                    };
                    for knot in [knot.twin(), knot] {
                        for order in [LayingOrder::PassByPass, LayingOrder::StrandByStrand] {
                            for passes in 1..=3 {
                                let laying = Laying::new(knot.clone(), passes, order).unwrap();
                                assert_eq!(laying.tucks(), counted(&laying), "{laying:?}");
                            }
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn tucks_of_interwoven_knots_are_those_that_the_tyer_meets() {
        for nested in 2..=4 {
            for lands in 1..=nested {
                for leads in 3..=7 {
                    for bights in 2..=7 {
                        let lattice = Lattice::plain(leads, bights).unwrap();
                        let lattice = lattice.interwoven(nested, lands).unwrap();
                        for run in [1, 2, nested] {
                            let knot = Knot::woven(lattice, Weave::Run(run)).unwrap();
                            for order in [LayingOrder::PassByPass, LayingOrder::StrandByStrand] {
                                for passes in 1..=3 {
                                    let laying = Laying::new(knot.clone(), passes, order).unwrap();
                                    assert_eq!(laying.tucks(), counted(&laying), "{laying:?}");
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn a_twin_is_taken_only_where_it_saves_tucks() {
        let laying = |leads, bights| {
            let knot = Knot::new(leads, bights, Weave::default()).unwrap();
            Laying::new(knot, 1, LayingOrder::default()).unwrap()
        };
        // By hand: 20 of the 28 crossings of the worked example 5 × 7 are tucks.
        assert_eq!(laying(5, 7).tucks(), 20);
        assert_eq!(laying(5, 7).with_fewer_tucks().unwrap().tucks(), 8);
        assert_eq!(laying(7, 5).with_fewer_tucks(), None);
    }
}
