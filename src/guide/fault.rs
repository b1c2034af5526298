//! A fault somewhere in the work: which leg laid it, and how it can be mended.

use super::{Place, Script};
use crate::knot::{Crossing, Heading, Leg, PassLeg, Spot};

/// As many crossings as an end is drawn back through and laid in again, at the most, before it is
/// less work to take legs back. *Common practice, no source.*
const MOST_BY_THE_END: u16 = 3;

/// A leg of a pass that made the crossing at a spot, or a part of it.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let all_laid = Place::Lift { task: 1 };
/// let spot = script.plan().knot().spots(3, 2)[0];
/// let suspect = script.suspects(all_laid, spot)[0];
/// assert_eq!((suspect.crossing.row, suspect.crossing.cords), (2, 1));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suspect {
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// That leg, from pin to pin.
    pub leg: Leg,
    /// What it was to cross there, and how.
    pub crossing: Crossing,
}

/// A fault whose leg is known.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let all_laid = Place::Lift { task: 1 };
/// let spot = script.plan().knot().spots(3, 2)[0];
/// let suspect = script.suspects(all_laid, spot)[0];
/// let fault = script.fault(all_laid, suspect);
/// assert_eq!(fault.legs_back, 15 - u32::from(suspect.pass_leg.leg));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// The leg that laid it, and how it is to cross.
    pub suspect: Suspect,
    /// How many strands the knot has.
    pub strands: u16,
    /// Legs that have to come out until it is out too, the one in hand among them.
    pub legs_back: u32,
    /// Set when the cord of a standing end can be drawn back to it instead.
    pub by_the_end: Option<EndMend>,
}

/// A standing end that is drawn out as far as the fault, and laid in again the other way.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let all_laid = Place::Lift { task: 1 };
/// let spot = script.plan().knot().spots(1, 1)[0];
/// let suspect = script.suspects(all_laid, spot)[0];
/// let mend = script.fault(all_laid, suspect).by_the_end;
/// assert!(mend.is_none_or(|mend| mend.crossings == 1));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct EndMend {
    /// The leg it lies in: the first of its cord.
    pub leg: Leg,
    /// Crossings that it comes out of, the faulty one the last of them.
    pub crossings: u16,
}

impl Script {
    /// The legs that have made a crossing at a spot when the tyer stands at `place`, in the order
    /// in which they did. None when no two cords lie there yet.
    ///
    /// Of a single knot there is one at most: the later of the two legs.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{AtOnce, Plan, Script};
    ///
    /// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
    /// let knot = script.plan().knot();
    /// let spot = knot.spots(1, 1)[0];
    /// assert!(script.suspects(script.first(), spot).is_empty());
    /// let suspects = script.suspects(script.last(), spot);
    /// assert_eq!(suspects.len(), 1);
    /// assert_eq!(suspects[0].crossing.row, 1);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn suspects(&self, place: Place, spot: Spot) -> Vec<Suspect> {
        let laying = self.plan.laying();
        let mut found: Vec<(u32, Suspect)> = (1..=laying.passes())
            .flat_map(|pass| {
                [spot.rising, spot.falling].map(|leg| (leg, laying.pass_leg_of(pass, leg)))
            })
            .filter_map(|(leg, pass_leg)| {
                let crossing = laying
                    .crossings(pass_leg)
                    .find(|crossing| crossing.row == spot.row)?;
                self.lies_at(place, pass_leg, leg, spot.row).then_some((
                    laying.legs_before(pass_leg),
                    Suspect {
                        pass_leg,
                        leg,
                        crossing,
                    },
                ))
            })
            .collect();
        found.sort_by_key(|(before, _)| *before);
        found.into_iter().map(|(_, suspect)| suspect).collect()
    }

    /// Whether a leg lies on the tube as far as this row, and beyond it.
    pub(super) fn lies_at(&self, place: Place, pass_leg: PassLeg, leg: Leg, row: u16) -> bool {
        let laying = self.plan.laying();
        let (before, laid) = (laying.legs_before(pass_leg), self.progress(place).laid);
        if before < laid {
            return true;
        }
        let (Place::Lay { pass_leg: here, .. }, behind) = (place, place.crossings_behind()) else {
            return false;
        };
        if here != pass_leg || behind == 0 {
            return false;
        }
        // The hand stands behind so many crossings.
        let last = laying.crossings(pass_leg).nth(usize::from(behind) - 1);
        last.is_some_and(|last| match leg.heading() {
            Heading::Rising => row <= last.row,
            Heading::Falling => row >= last.row,
        })
    }

    /// What it takes to mend a fault that this leg laid.
    pub fn fault(&self, place: Place, suspect: Suspect) -> Fault {
        let laying = self.plan.laying();
        let laid = self.progress(place).laid + u32::from(place.crossings_behind() > 0);
        let legs_back = laid - laying.legs_before(suspect.pass_leg).min(laid);
        Fault {
            suspect,
            strands: self.plan.knot().strands(),
            legs_back,
            // Where a leg or two come out anyway, nothing is gained by it.
            by_the_end: self
                .by_the_end(place, suspect)
                .filter(|mend| legs_back > 1 && legs_back > u32::from(mend.crossings)),
        }
    }

    /// The standing end that lies at the fault, when it is a short way from it and its cord crosses
    /// but one other there.
    fn by_the_end(&self, place: Place, suspect: Suspect) -> Option<EndMend> {
        let Suspect {
            pass_leg,
            leg,
            crossing,
        } = suspect;
        let laying = self.plan.laying();
        let is_first = |pass: u16, leg: Leg| {
            laying.pass_leg_of(pass, leg).leg == 1 && self.plan.begins_a_cord(pass, leg.strand)
        };
        // The one cord that is crossed is that of the first pass of its strand.
        let crossed = (crossing.cords == 1 && is_first(1, crossing.of)).then_some(crossing.of);
        let end = if is_first(pass_leg.pass, leg) {
            Some(leg)
        } else {
            crossed
        }?;
        let [from, to] = match end.heading() {
            Heading::Rising => [0, crossing.row],
            Heading::Falling => [crossing.row, u16::MAX],
        };
        // Out of every cord that lies across it by now, whichever was laid first.
        let knot = self.plan.knot();
        let across = knot.crossings_of(end).filter(|(row, of)| {
            let lies = |pass| {
                let other = laying.pass_leg_of(pass, *of);
                self.lies_at(place, other, *of, *row)
            };
            (from..=to).contains(row) && (1..=laying.passes()).any(lies)
        });
        let crossings = u16::try_from(across.count()).unwrap_or(u16::MAX);
        (crossings <= MOST_BY_THE_END).then_some(EndMend {
            leg: end,
            crossings,
        })
    }
}
