//! The steps of laying: the beginning of a pass, a leg or part of one, a look at the work.

use crate::knot::{Crossing, Order, Rim, Turn};

use super::step::{Begin, Check, Follow, Landing, LastLeg, Lay};
use super::{Landmark, Script};

impl Script {
    pub(super) fn begin(&self, strand: u16) -> Begin {
        let knot = self.plan.knot();
        Begin {
            strand,
            strands: knot.strands(),
            pin: self.plan.start_pin(1, strand),
            hand: self.plan.hand,
            is_staggered: knot.is_staggered(),
            is_uneven: strand == 1 && !knot.is_even(),
            cord: self.plan.cord(1, strand).map(str::to_owned),
            tail: self.rig.as_ref().map(|rig| rig.tail),
        }
    }

    pub(super) fn follow(&self, pass: u16, strand: u16) -> Follow {
        let is_added = self.plan.begins_a_cord(pass);
        Follow {
            pass,
            strand,
            strands: self.plan.knot().strands(),
            pin: self.plan.start_pin(pass, strand),
            side: self.plan.side,
            inside_at_top: self.plan.side.turns_inside(Rim::Top, self.plan.hand),
            is_added,
            is_apart: (1..pass).all(|other| {
                self.plan.start_pin(other, strand) != self.plan.start_pin(pass, strand)
            }),
            cord: self.plan.cord(pass, strand).map(str::to_owned),
            tail: self.rig.as_ref().filter(|_| is_added).map(|rig| rig.tail),
        }
    }

    pub(super) fn lay(&self, turn: Turn, crossing: u16) -> Option<Lay> {
        let laying = self.plan.laying();
        let leg = laying.leg(turn)?;
        let knot = laying.knot();
        let met: Vec<Crossing> = laying.crossings(turn).collect();
        let crossings = u16::try_from(met.len()).unwrap_or(u16::MAX);
        let parts = self.at_once.parts(crossings);
        let part = self.at_once.part_of(crossing, crossings);
        let begins = usize::from(self.at_once.begins(part, crossings));
        let ends = usize::from(self.at_once.begins(part + 1, crossings));
        let landmark = (part > 0).then(|| Landmark::on(knot, leg, met[begins - 1].row));
        Some(Lay {
            turn,
            strands: knot.strands(),
            legs: knot.legs_per_strand(),
            leg,
            turns: knot.turns(),
            side: (turn.pass > 1).then_some(self.plan.side),
            hand: self.plan.hand,
            part: part + 1,
            parts,
            landmark,
            crossings: met[begins..ends].to_vec(),
            landing: if part + 1 < parts {
                Landing::OnTheWay
            } else {
                self.landing(turn)
            },
            cord: self.plan.cord(turn.pass, turn.strand).map(str::to_owned),
        })
    }

    fn landing(&self, turn: Turn) -> Landing {
        if self.ends_a_pass(turn) {
            return self.homecoming(turn);
        }
        match self.plan.laying().leg(turn) {
            Some(leg) if turn.pass > 1 => {
                if self.plan.side.turns_inside(leg.to.rim, self.plan.hand) {
                    Landing::Inside
                } else {
                    Landing::Outside
                }
            }
            _ => Landing::Round,
        }
    }

    /// What a cord does that is back at the pin where its pass began.
    fn homecoming(&self, turn: Turn) -> Landing {
        let laying = self.plan.laying();
        let ends = turn.pass == laying.passes() || self.plan.begins_a_cord(turn.pass + 1);
        let next = laying.turn(laying.legs_before(turn) + 1);
        match next {
            _ if ends => Landing::HomeToEnd,
            Some(next) if next.strand == turn.strand => Landing::HomeAndOn,
            _ => Landing::HomeToWait,
        }
    }

    pub(super) fn check(&self, after: Turn) -> Option<Check> {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let leg = laying.leg(after)?;
        let mut last = LastLeg {
            leg,
            over: 0,
            under: 0,
        };
        for crossing in laying.crossings(after) {
            *(if crossing.over {
                &mut last.over
            } else {
                &mut last.under
            }) += 1;
        }
        let ends_pass = after.leg == knot.legs_per_strand();
        // Strand by strand, the strands before have all their passes down, so all are as far
        // along only at the very end.
        let is_last_strand = after.strand == knot.strands();
        let is_level = match laying.order() {
            Order::PassByPass => true,
            Order::StrandByStrand => knot.strands() == 1 || after.pass == laying.passes(),
        };
        let is_alone = after.pass == 1 && knot.strands() == 1;
        Some(Check {
            after,
            round: after.leg / 2,
            rounds: knot.legs_per_strand() / 2,
            passes: laying.passes(),
            strands: knot.strands(),
            at: leg.to,
            cords: after.pass,
            crossings: is_alone.then(|| self.crossings_after(after.leg / 2)),
            rows: knot.rows(),
            last,
            is_whole: ends_pass && is_last_strand && is_level,
        })
    }

    /// Crossings on the tube after so many rounds of the lead pass of a knot of one strand, in
    /// O(rounds).
    ///
    /// The rising leg of round *i* and the falling leg of round *j* meet in every row `y` with
    /// `y ≡ (j − i + 1)·L (mod B)`: so many rows depends on *j − i* alone.
    fn crossings_after(&self, rounds: u16) -> u32 {
        let knot = self.plan.knot();
        let (leads, bights) = (i64::from(knot.leads()), i64::from(knot.bights()));
        let rounds = i64::from(rounds);
        let meetings: i64 = (1 - rounds..rounds)
            .map(|apart| {
                let row = ((apart + 1) * leads).rem_euclid(bights);
                let first = if row == 0 { bights } else { row };
                let rows = if first > leads - 1 {
                    0
                } else {
                    (leads - 1 - first) / bights + 1
                };
                (rounds - apart.abs()) * rows
            })
            .sum();
        u32::try_from(meetings).unwrap_or(u32::MAX)
    }
}
