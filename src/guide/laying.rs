//! The steps of laying: the beginning of a pass, a leg or part of one, a look at the work.

use std::ops::Range;

use crate::knot::{Crossing, LayingOrder, PassLeg, Rim};

use super::step::{BeginStep, CheckStep, FollowStep, Landing, LastLeg, LayStep};
use super::{Landmark, Script};

impl Script {
    pub(super) fn begin(&self, strand: u16) -> BeginStep {
        let knot = self.plan.knot();
        BeginStep {
            strand,
            strands: knot.strands(),
            pin: self.plan.start_pin(1, strand),
            hand: self.plan.hand,
            is_staggered: knot.is_staggered(),
            laced: self.laced(strand),
            is_uneven: strand == 1 && !knot.is_even(),
            cord: self.plan.cord(1, strand).map(str::to_owned),
            tail: self.rig().map(|rig| rig.tail),
            finger: self
                .plan
                .fingers()
                .map(|fingers| fingers.place(self.plan.start_pin(1, strand))),
        }
    }

    fn laced(&self, strand: u16) -> Option<LayingOrder> {
        let laying = self.plan.laying();
        let is_interwoven = laying.knot().lattice().is_interwoven();
        let is_told = is_interwoven && (strand == 1 || self.begins_a_nest(strand));
        is_told.then(|| match laying.passes() {
            1 => LayingOrder::StrandByStrand,
            _ => laying.order(),
        })
    }

    pub(super) fn follow(&self, pass: u16, strand: u16) -> FollowStep {
        let is_added = self.plan.begins_a_cord(pass, strand);
        FollowStep {
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
            tail: self.rig().filter(|_| is_added).map(|rig| rig.tail),
        }
    }

    pub(super) fn lay(&self, pass_leg: PassLeg, crossing: u16) -> Option<LayStep> {
        let laying = self.plan.laying();
        let leg = laying.leg(pass_leg)?;
        let knot = laying.knot();
        let met: Vec<Crossing> = laying.crossings(pass_leg).collect();
        let crossings = u16::try_from(met.len()).unwrap_or(u16::MAX);
        let at_once = self.told_at_once(pass_leg);
        let parts = at_once.parts(crossings);
        let part = at_once.part_of(crossing, crossings);
        let begins = usize::from(at_once.begins(part, crossings));
        let ends = usize::from(at_once.begins(part + 1, crossings));
        let landmark = (part > 0).then(|| Landmark::on(knot, leg, met[begins - 1].row));
        Some(LayStep {
            pass_leg,
            strands: knot.strands(),
            legs: knot.legs_of(pass_leg.strand),
            leg,
            turns: knot.turns_of(leg),
            side: (pass_leg.pass > 1).then_some(self.plan.side),
            hand: self.plan.hand,
            part: part + 1,
            parts,
            landmark,
            crossings: met[begins..ends].to_vec(),
            new_crossings: self.new_crossings(pass_leg, begins..ends),
            splits: (pass_leg.pass == 1)
                .then(|| knot.lies_between(leg))
                .flatten(),
            fingers: self.plan.fingers().map(|fingers| fingers.leg(leg)),
            draw: self.draw(
                pass_leg,
                at_once.begins(part, crossings),
                &met[begins..ends],
            ),
            landing: if part + 1 < parts {
                Landing::OnTheWay
            } else {
                self.landing(pass_leg)
            },
            cord: self
                .plan
                .cord(pass_leg.pass, pass_leg.strand)
                .map(str::to_owned),
        })
    }

    /// Which crossings of a part of a leg, counted from 0, are the first over and the first under of
    /// the tie.
    fn new_crossings(&self, pass_leg: PassLeg, part: Range<usize>) -> Vec<usize> {
        let first = self.first_met(pass_leg).into_iter();
        first
            .filter(|index| part.contains(index))
            .map(|index| index - part.start)
            .collect()
    }

    fn landing(&self, pass_leg: PassLeg) -> Landing {
        if self.ends_a_pass(pass_leg) {
            return self.homecoming(pass_leg);
        }
        match self.plan.laying().leg(pass_leg) {
            Some(leg) if pass_leg.pass > 1 => {
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
    fn homecoming(&self, pass_leg: PassLeg) -> Landing {
        let laying = self.plan.laying();
        let ends = pass_leg.pass == laying.passes()
            || self.plan.begins_a_cord(pass_leg.pass + 1, pass_leg.strand);
        let next = laying.nth_leg(laying.legs_before(pass_leg) + 1);
        match next {
            _ if ends => Landing::HomeToEnd,
            Some(next) if next.strand == pass_leg.strand => Landing::HomeAndOn,
            _ => Landing::HomeToWait,
        }
    }

    pub(super) fn check(&self, after: PassLeg) -> Option<CheckStep> {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let leg = laying.leg(after)?;
        let last = LastLeg {
            leg,
            crossings: laying.crossings(after).collect(),
        };
        let legs = knot.legs_of(after.strand);
        let ends_pass = after.leg == legs;
        // Strand by strand, the strands before have all their passes down, so all are as far
        // along only at the very end.
        let is_last_strand = after.strand == knot.strands();
        let is_level = match laying.order() {
            LayingOrder::PassByPass => true,
            LayingOrder::StrandByStrand => knot.strands() == 1 || after.pass == laying.passes(),
        };
        let is_alone = after.pass == 1 && knot.strands() == 1;
        Some(CheckStep {
            after,
            round: after.leg / 2,
            rounds: legs / 2,
            passes: laying.passes(),
            strands: knot.strands(),
            at: leg.to,
            cords: after.pass,
            crossings: is_alone.then(|| self.crossings_after(after.leg / 2)),
            rows: self.crossings_along(after.strand),
            rows_alike: knot.nests().windows(2).all(|pair| {
                self.crossings_along(pair[0].before + 1) == self.crossings_along(pair[1].before + 1)
            }),
            last,
            is_whole: ends_pass && is_last_strand && is_level,
        })
    }

    /// Crossings along every leg of a strand once the whole knot is laid.
    fn crossings_along(&self, strand: u16) -> u16 {
        let knot = self.plan.knot();
        let along = knot
            .leg(strand, 1)
            .map(|leg| knot.crossings_of(leg).count());
        u16::try_from(along.unwrap_or(0)).unwrap_or(u16::MAX)
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
