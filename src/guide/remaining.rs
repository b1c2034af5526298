//! Whether the cord will do: what is still to be laid of it, and how far what was measured reaches.

use super::{CordHistory, CordMeasure, CordRun, Place, Script};
use crate::bench::{Consumption, LegsLeft, Millimetres, Reach};
use crate::knot::PassLeg;

/// What the tie still takes of the cord in hand, and of all cords.
///
/// Lengths are in millimetres, and there are none when no tube and cord were named.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
///
/// let script = Script::new(Plan::read("4", "6", "1", "1")?, AtOnce::default());
/// let remaining = script.remaining(script.first()).unwrap();
/// assert_eq!((remaining.strands, remaining.legs_of_cord), (2, 6));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Remaining {
    /// The leg that is laid next, or is being laid.
    pub next: PassLeg,
    /// How many strands the knot has.
    pub strands: u16,
    /// Passes of the tie.
    pub passes: u16,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// Legs of this pass that are still to be laid, the one in hand among them.
    pub legs_of_pass: u32,
    /// Legs that this cord is still to lay.
    pub legs_of_cord: u32,
    /// How much cord that is.
    pub takes: Option<CordTakes>,
    /// How far the cord reaches by what was measured of it last.
    pub reach: Option<CordReach>,
}

/// Cord that is still to be laid, in millimetres.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup};
///
/// let tube = Tube::plain(Millimetres::parse("45")?);
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("3")?));
/// let plan = Plan::read("3", "5", "1", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let takes = script.remaining(script.first()).unwrap().takes.unwrap();
/// assert_eq!((takes.in_pass, takes.has_others), (takes.in_all, false));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CordTakes {
    /// To the end of this pass, with what must be in the hand then.
    pub in_pass: f64,
    /// To the end of this cord, with its ends.
    pub in_cord: f64,
    /// Of all cords, with their ends.
    pub in_all: f64,
    /// Whether there are cords to be laid besides this one.
    pub has_others: bool,
}

/// How far a cord reaches.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup};
///
/// let tube = Tube::plain(Millimetres::parse("45")?);
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("3")?));
/// let plan = Plan::read("3", "5", "1", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let history = script.measured(script.first(), Millimetres::parse("20 m")?).unwrap();
/// let script = script.with_plan(script.plan().clone().with_cord_history(history));
/// let reach = script.remaining(script.first()).unwrap().reach;
/// assert!(matches!(reach, Some(marlinspeak::guide::CordReach::Whole(_))));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CordReach {
    /// To its end, with so many millimetres to spare.
    Whole(f64),
    /// As far as the end of this leg.
    UpTo(PassLeg),
    /// Not to the end of the next leg.
    NotOneLeg,
}

impl Remaining {
    /// Whether the cord, by what was measured of it, does not reach to the end of this pass of so
    /// many legs.
    pub fn is_short(&self, legs: u16) -> bool {
        match self.reach {
            None | Some(CordReach::Whole(_)) => false,
            Some(CordReach::NotOneLeg) => true,
            Some(CordReach::UpTo(last)) => last.pass == self.next.pass && last.leg < legs,
        }
    }
}

/// Where a cord is: the passes it makes, and what of them is still to be laid.
struct CordInHand {
    run: CordRun,
    left: LegsLeft,
}

impl Script {
    /// What is still to be laid when the tyer stands at a [settled](Self::settle) place; none when
    /// everything is.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{AtOnce, Plan, Script};
    ///
    /// let script = Script::new(Plan::read("5", "7", "2", "1")?, AtOnce::default());
    /// let all = script.remaining(script.first()).unwrap();
    /// assert_eq!((all.legs_of_pass, all.legs_of_cord), (14, 28));
    /// // Without a tube nobody knows how long a leg is.
    /// assert_eq!(all.takes, None);
    /// assert_eq!(script.remaining(script.last()), None);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn remaining(&self, place: Place) -> Option<Remaining> {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let next = laying.nth_leg(self.progress(place).laid)?;
        let cord = self.cord_at(place, next)?;
        let consumption = self.rig().map(|rig| &rig.cord);
        let legs = u32::from(knot.legs_of(next.strand));
        let legs_of_pass = legs + 1 - u32::from(next.leg);
        let passes_after = u32::from(cord.run.last - next.pass);
        let takes = consumption.map(|consumption| self.takes(consumption, place, &cord));
        let reach = consumption.and_then(|consumption| {
            let in_hand = self.in_hand(consumption, place)?;
            let nest = knot.nest_of(next.strand);
            Some(match consumption.reach(nest, cord.left, in_hand) {
                Reach::Whole(spare) => CordReach::Whole(spare),
                Reach::Legs(0) => CordReach::NotOneLeg,
                Reach::Legs(reached) => {
                    let last = u32::from(next.leg) + reached - 1;
                    let count = |number: u32| u16::try_from(number).unwrap_or(u16::MAX);
                    CordReach::UpTo(PassLeg {
                        pass: next.pass + count((last - 1) / legs),
                        leg: count((last - 1) % legs + 1),
                        ..next
                    })
                }
            })
        });
        Some(Remaining {
            next,
            strands: knot.strands(),
            passes: laying.passes(),
            cord: cord.run.cord.clone(),
            legs_of_pass,
            legs_of_cord: passes_after * legs + legs_of_pass,
            takes,
            reach,
        })
    }

    /// Millimetres that should be in the hand by what was measured of this cord last; none when
    /// nothing was, or no tube is named.
    fn in_hand(&self, consumption: &Consumption, place: Place) -> Option<f64> {
        let next = self.plan.laying().nth_leg(self.progress(place).laid)?;
        let now = self.cord_at(place, next)?;
        let passes = now.run.first..=now.run.last;
        let measured = self.plan.cord_history().measures().iter().rev();
        let measure = measured
            .filter(|measure| measure.at.strand == next.strand && passes.contains(&measure.at.pass))
            .copied()
            .next()?;
        let then = LegsLeft {
            legs: self.legs_left(&now.run, measure.at, measure.crossing),
            has_standing_tail: measure.is_whole,
            ..now.left
        };
        let nest = self.plan.knot().nest_of(next.strand);
        let takes = |left| {
            consumption.still_takes(
                nest,
                LegsLeft {
                    ends: false,
                    ..left
                },
            )
        };
        Some(measure.left.get() - (takes(then) - takes(now.left)))
    }

    /// Notes what is in the hand now. Nothing comes of it when everything is laid.
    pub fn measured(&self, place: Place, left: Millimetres) -> Option<CordHistory> {
        let next = self.plan.laying().nth_leg(self.progress(place).laid)?;
        let cord = self.cord_at(place, next)?;
        let measure = CordMeasure {
            at: next,
            crossing: place.crossings_behind(),
            is_whole: cord.left.has_standing_tail,
            left,
        };
        let history = self.plan.cord_history().clone();
        Some(history.measured(measure, cord.run.first..=cord.run.last))
    }

    /// What was measured of the cord in hand says nothing any more. Nothing comes of it when everything
    /// is laid.
    pub fn unmeasured(&self, place: Place) -> Option<CordHistory> {
        let next = self.plan.laying().nth_leg(self.progress(place).laid)?;
        let run = self.cord_at(place, next)?.run;
        let history = self.plan.cord_history().clone();
        Some(history.unmeasured(next.strand, run.first..=run.last))
    }

    fn cord_at(&self, place: Place, next: PassLeg) -> Option<CordInHand> {
        let run = self.plan.run_of(next)?;
        let is_begun = next.pass > run.first || next.leg > 1 || matches!(place, Place::Lay { .. });
        let legs = self.legs_left(&run, next, place.crossings_behind());
        Some(CordInHand {
            run,
            left: LegsLeft {
                legs,
                has_standing_tail: !is_begun,
                ends: true,
            },
        })
    }

    /// Legs of a cord from this one on, less the part of it that lies already.
    fn legs_left(&self, run: &CordRun, next: PassLeg, crossing: u16) -> f64 {
        let legs = u32::from(self.plan.knot().legs_of(next.strand));
        let whole = u32::from(run.last - next.pass) * legs + legs + 1 - u32::from(next.leg);
        f64::from(whole) - self.share_laid(next, crossing)
    }

    /// The share of a leg that lies when the hand is behind so many of its crossings.
    fn share_laid(&self, pass_leg: PassLeg, crossing: u16) -> f64 {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let last = usize::from(crossing).checked_sub(1);
        let met = last.and_then(|last| laying.crossings(pass_leg).nth(last));
        let (Some(met), Some(leg)) = (met, laying.leg(pass_leg)) else {
            return 0.0;
        };
        let ((from, _), (to, _)) = (knot.stands_at(leg.from), knot.stands_at(leg.to));
        f64::from(met.row.abs_diff(from)) / f64::from(to.abs_diff(from))
    }

    fn takes(&self, consumption: &Consumption, place: Place, cord: &CordInHand) -> CordTakes {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let nest = knot.nest_of(cord.run.strand);
        let in_cord = consumption.still_takes(nest, cord.left);
        let legs = f64::from(knot.legs_of(cord.run.strand));
        let passes_after = (cord.left.legs / legs).ceil() - 1.0;
        let in_pass = LegsLeft {
            legs: cord.left.legs - passes_after * legs,
            ends: passes_after <= 0.0,
            ..cord.left
        };
        let laid = self.progress(place).laid;
        let others = self
            .plan
            .runs()
            .into_iter()
            .filter(|run| (run.strand, run.first) != (cord.run.strand, cord.run.first));
        let of_others: Vec<f64> = others
            .map(|run| {
                let legs = knot.legs_of(run.strand);
                // How much of each of its passes lies.
                let lies = |pass| {
                    let first = PassLeg {
                        pass,
                        strand: run.strand,
                        leg: 1,
                    };
                    laid.saturating_sub(laying.legs_before(first))
                        .min(legs.into())
                };
                let lies: u32 = (run.first..=run.last).map(lies).sum();
                let all = u32::from(run.last + 1 - run.first) * u32::from(legs);
                if lies == all {
                    return 0.0;
                }
                consumption.still_takes(
                    knot.nest_of(run.strand),
                    LegsLeft {
                        legs: f64::from(all - lies),
                        has_standing_tail: lies == 0,
                        ends: true,
                    },
                )
            })
            .collect();
        let of_others: f64 = of_others.into_iter().sum();
        CordTakes {
            in_pass: consumption.still_takes(nest, in_pass),
            in_cord,
            in_all: in_cord + of_others,
            has_others: of_others > 0.0,
        }
    }
}
