//! A cord that ran out or frayed, and the new one that takes its place: where they are joined, and
//! what the hands do. All of it is *common practice, no source*.

use std::ops::RangeInclusive;

use super::cord_history::{CordMeasure, Join};
use super::{Caution, CordHistory, Place, Plan, Script};
use crate::bench::{LegsLeft, Millimetres};
use crate::knot::{Crossing, Heading, Leg, PassLeg};

/// Where a new cord takes the place of the one that is in hand.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
/// use marlinspeak::knot::PassLeg;
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let place = Place::lay(PassLeg { pass: 1, strand: 1, leg: 14 });
/// let joining = script.joining(place).unwrap();
/// assert_eq!((joining.is_whole, joining.legs_after, joining.ends), (true, 1, 4));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Joining {
    /// The leg in whose middle they are joined.
    pub pass_leg: PassLeg,
    /// How many strands the knot has.
    pub strands: u16,
    /// That leg, from pin to pin.
    pub leg: Leg,
    /// The crossing that hides both ends: where that leg goes under, or where it will.
    pub under: Hiding,
    /// What the old cord comes back out of before that, the last laid first.
    pub out_of: Vec<Crossing>,
    /// The same crossings in the order in which the new cord is laid through them.
    pub through: Vec<Crossing>,
    /// Whether the leg was laid to its end, so that the cord is lifted off its pin first and goes
    /// round it again.
    pub is_whole: bool,
    /// Legs that the new cord still lays after this one.
    pub legs_after: u32,
    /// What to cut of the new cord, when tube and cord are known.
    pub to_cut: Option<Millimetres>,
    /// Ends of cord that hang out of the finished knot once they are joined.
    pub ends: u16,
}

/// What holds two ends that are joined.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
/// use marlinspeak::knot::PassLeg;
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let place = Place::lay(PassLeg { pass: 1, strand: 1, leg: 14 });
/// let joining = script.joining(place).unwrap();
/// assert_eq!(joining.under.cords, 1);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hiding {
    /// The row of crossings, 1 the lowest.
    pub row: u16,
    /// How many cords lie over them there; none lies there yet where a later leg will.
    pub cords: u16,
}

/// What is done to join two cords, one after the other.
///
/// ```
/// use marlinspeak::guide::{Caution, JoinStep};
///
/// assert_eq!(JoinStep::Melts.next(), Some(JoinStep::Cut));
/// // A flame is spoken of where the cord melts.
/// assert!(JoinStep::Cut.cautions(true).contains(&Caution::Heat));
/// assert!(!JoinStep::Cut.cautions(false).contains(&Caution::Heat));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoinStep {
    /// Whether the cord melts is asked.
    Melts,
    /// The new cord is cut, and its ends are kept from fraying.
    Cut,
    /// The old cord comes back to the middle of a leg.
    Back,
    /// Its end is left under a crossing.
    OldEnd,
    /// The end of the new cord is left beside it.
    NewEnd,
    /// The new cord lays the rest of the leg.
    Rest,
    /// What it means for the finish.
    Finish,
}

impl JoinStep {
    /// All of them, in order.
    pub const ALL: [Self; 7] = [
        Self::Melts,
        Self::Cut,
        Self::Back,
        Self::OldEnd,
        Self::NewEnd,
        Self::Rest,
        Self::Finish,
    ];

    /// The step after it.
    pub fn next(self) -> Option<Self> {
        Self::ALL.get(self as usize + 1).copied()
    }

    /// The step before it.
    pub fn back(self) -> Option<Self> {
        let before = (self as usize).checked_sub(1)?;
        Self::ALL.get(before).copied()
    }

    /// What can hurt: a blade, and heat where the cord melts.
    pub fn cautions(self, melts: bool) -> Vec<Caution> {
        match self {
            Self::Cut if melts => vec![Caution::Blades, Caution::Heat],
            Self::Cut | Self::OldEnd => vec![Caution::Blades],
            Self::NewEnd | Self::Melts | Self::Back | Self::Rest | Self::Finish => Vec::new(),
        }
    }
}

impl Joining {
    /// The join as it is kept.
    pub const fn join(&self, melts: bool) -> Join {
        Join {
            at: self.pass_leg,
            row: self.under.row,
            melts,
        }
    }
}

impl Script {
    /// How a new cord takes the place of the one in hand when the tyer stands at a
    /// [settled](Self::settle) place; none where no leg of it lies on the tube, or the knot is coming
    /// off its pins.
    ///
    /// The two are joined in the leg in hand, or in the one that was laid last: under a crossing, as
    /// near to the middle of the leg as there is one, and never at a bight, where an end would show
    /// and the cord turns.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
    /// use marlinspeak::knot::PassLeg;
    ///
    /// // Leg 13 of 5 lead 7 bight went over, under, over, under: its end hides in row 2.
    /// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
    /// let place = Place::lay(PassLeg { pass: 1, strand: 1, leg: 14 });
    /// let joining = script.joining(place).unwrap();
    /// assert_eq!((joining.pass_leg.leg, joining.under.row), (13, 2));
    /// assert!(script.joining(script.first()).is_none());
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn joining(&self, place: Place) -> Option<Joining> {
        if self.is_off_pins(place) {
            return None;
        }
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let in_hand = match place {
            Place::Lay { pass_leg, crossing } if crossing > 0 => Some(pass_leg),
            _ => None,
        };
        let (pass_leg, is_whole) = match in_hand {
            Some(pass_leg) if self.unders_at(place, pass_leg).next().is_some() => (pass_leg, false),
            _ => (self.laid_last_of_cord(place)?, true),
        };
        let leg = laying.leg(pass_leg)?;
        let under = self.hiding(place, pass_leg, leg)?;
        let through: Vec<Crossing> = self
            .lying_across(place, pass_leg, leg)
            .filter(|crossing| match leg.heading() {
                Heading::Rising => crossing.row > under.row,
                Heading::Falling => crossing.row < under.row,
            })
            .collect();
        let mut out_of = through.clone();
        out_of.reverse();
        let run = self.plan.run_of(pass_leg)?;
        let legs = u32::from(knot.legs_of(pass_leg.strand));
        let legs_after =
            u32::from(run.last - pass_leg.pass) * legs + legs - u32::from(pass_leg.leg);
        let ((from, _), (to, _)) = (knot.stands_at(leg.from), knot.stands_at(leg.to));
        let share = f64::from(to.abs_diff(under.row)) / f64::from(to.abs_diff(from));
        let to_cut = self.rig().and_then(|rig| {
            let left = LegsLeft {
                legs: f64::from(legs_after) + share,
                has_standing_tail: true,
                ends: true,
            };
            let nest = knot.nest_of(pass_leg.strand);
            Millimetres::new(rig.cord.still_takes(nest, left)).ok()
        });
        Some(Joining {
            pass_leg,
            strands: knot.strands(),
            leg,
            under,
            out_of,
            through,
            is_whole,
            legs_after,
            to_cut,
            ends: self.plan.ends() + 2,
        })
    }

    /// Where the tyer stands once a new cord has laid what was taken back.
    pub fn after_join(&self, place: Place, joining: &Joining) -> Place {
        match place {
            // The part of a leg that came back with the one before it is laid again.
            Place::Lay { pass_leg, .. } if pass_leg != joining.pass_leg => Place::lay(pass_leg),
            place => place,
        }
    }

    /// What became of the cords, with this join more.
    pub fn joined(&self, joining: &Joining, melts: bool) -> CordHistory {
        let history = self.plan.cord_history().clone();
        history.joined(joining.join(melts), self.passes_of(joining.pass_leg))
    }

    /// The passes that the cord of this leg lays.
    fn passes_of(&self, pass_leg: PassLeg) -> RangeInclusive<u16> {
        let run = self.plan.run_of(pass_leg);
        run.map_or(1..=self.plan.laying().passes(), |run| run.first..=run.last)
    }

    /// What became of the cords when this leg and all after it are taken back; none where that is
    /// what it was.
    pub fn joins_before(&self, pass_leg: PassLeg) -> Option<CordHistory> {
        let laying = self.plan.laying();
        let from = laying.legs_before(pass_leg);
        let is_gone = |join: &Join| laying.legs_before(join.at) >= from;
        let history = self.plan.cord_history();
        let gone: Vec<_> = history
            .joins()
            .iter()
            .filter(|join| is_gone(join))
            .collect();
        // A join drops what was measured of the cord before it: whatever stands there now is of the new
        // one, which is out of the hand again.
        let is_of_new_cord = |measure: &CordMeasure| {
            gone.iter().any(|join| {
                join.at.strand == measure.at.strand
                    && self.passes_of(join.at).contains(&measure.at.pass)
            })
        };
        (!gone.is_empty()).then(|| history.clone().without_joins(is_gone, is_of_new_cord))
    }

    /// The last leg of the cord in hand that lies whole.
    fn laid_last_of_cord(&self, place: Place) -> Option<PassLeg> {
        let laying = self.plan.laying();
        let Some(next) = laying.nth_leg(self.progress(place).laid) else {
            return self.laid_last(place);
        };
        if next.leg > 1 {
            return Some(PassLeg {
                leg: next.leg - 1,
                ..next
            });
        }
        let goes_on = next.pass > 1 && !self.plan.begins_a_cord(next.pass, next.strand);
        goes_on.then(|| PassLeg {
            pass: next.pass - 1,
            leg: self.plan.knot().legs_of(next.strand),
            ..next
        })
    }

    /// Every crossing of a leg that has cords across it, in the order in which it was laid.
    fn lying_across(
        &self,
        place: Place,
        pass_leg: PassLeg,
        leg: Leg,
    ) -> impl Iterator<Item = Crossing> + '_ {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        knot.crossings_of(leg).filter_map(move |(row, of)| {
            if !self.lies_at(place, pass_leg, leg, row) {
                return None;
            }
            let lies = |pass: &u16| self.lies_at(place, laying.pass_leg_of(*pass, of), of, row);
            let cords = (1..=laying.passes()).filter(lies).count();
            let cords = u16::try_from(cords).unwrap_or(u16::MAX);
            (cords > 0).then(|| Crossing {
                row,
                over: knot.goes_over(leg.heading(), row),
                cords,
                of,
            })
        })
    }

    fn unders_at(&self, place: Place, pass_leg: PassLeg) -> impl Iterator<Item = Crossing> + '_ {
        let leg = self.plan.laying().leg(pass_leg);
        leg.into_iter()
            .flat_map(move |leg| self.lying_across(place, pass_leg, leg))
            .filter(|crossing| !crossing.over)
    }

    /// The crossing that hides two ends in a leg: the one nearest to its middle where it goes under
    /// by now, or else where it will once a later leg lies over it.
    fn hiding(&self, place: Place, pass_leg: PassLeg, leg: Leg) -> Option<Hiding> {
        let knot = self.plan.knot();
        let ((from, _), (to, _)) = (knot.stands_at(leg.from), knot.stands_at(leg.to));
        let from_the_middle = |row: u16| (2 * row).abs_diff(from + to);
        let now = self.unders_at(place, pass_leg).map(|crossing| Hiding {
            row: crossing.row,
            cords: crossing.cords,
        });
        let later = || {
            let rows = knot.crossings_of(leg).map(|(row, _)| row);
            // A leg that goes over everywhere has its ends under it, in its middle.
            let row = rows
                .min_by_key(|row| (knot.goes_over(leg.heading(), *row), from_the_middle(*row)))?;
            Some(Hiding { row, cords: 0 })
        };
        now.min_by_key(|hiding| from_the_middle(hiding.row))
            .or_else(later)
    }
}

impl Plan {
    /// Ends of cord that hang out of the finished knot: two of every cord, and two of every join.
    pub fn ends(&self) -> u16 {
        let cords = self.runs().len() + self.cord_history().joins().len();
        u16::try_from(2 * cords).unwrap_or(u16::MAX)
    }

    /// Millimetres of cord that the joins take besides: the end of the old cord and that of the new
    /// one, each as long as a tail.
    pub fn cut_for_joins(&self) -> f64 {
        let tails = self.setup().map_or(0.0, |setup| {
            setup.allowances.standing_tail.get() + setup.allowances.working_tail.get()
        });
        self.cord_history().joins().iter().map(|_| tails).sum()
    }
}
