//! Tied round the hand: which knots, where on the fingers each bight comes to lie, and which way a leg
//! goes about them.
//!
//! The four fingers of the hand that holds stand for the tube, upright and close together, the palm
//! towards the tyer: the bottom rim lies at the wrist side, the top rim at the side of the
//! fingertips. The cord goes across the front to the little finger, behind to the forefinger, and so
//! on round. With four bights half a pitch is the breadth of a finger; with five the two edges of the
//! hand are places too. So every bight has a finger of its own, and no pin is needed to name it.

use strum::{EnumIter, IntoStaticStr};

use super::{Plan, Setup};
use crate::knot::{KnotError, Lattice, Leg, Pin, Rim};

/// Where on the four fingers a bight lies. Front is the side of the palm.
///
/// # Examples
/// ```
/// use marlinspeak::guide::{FingerPlace, Fingers, Plan};
/// use marlinspeak::knot::Pin;
///
/// // Five bights: the tail lies at the edge of the forefinger, where the thumb holds it.
/// let plan = Plan::read("3", "5", "1", "")?.with_round_hand()?;
/// let fingers = plan.fingers().unwrap();
/// assert_eq!(fingers.place(Pin::bottom(1)), FingerPlace::EdgeForefinger);
/// assert_eq!(fingers.place(Pin::top(1)), FingerPlace::FrontForefinger);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumIter, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum FingerPlace {
    /// The outside of the forefinger, beside the thumb.
    EdgeForefinger,
    /// The front of the forefinger.
    FrontForefinger,
    /// The front of the middle finger.
    FrontMiddle,
    /// The front of the ring finger.
    FrontRing,
    /// The front of the little finger.
    FrontLittle,
    /// The outside of the little finger.
    EdgeLittle,
    /// The back of the little finger.
    BackLittle,
    /// The back of the ring finger.
    BackRing,
    /// The back of the middle finger.
    BackMiddle,
    /// The back of the forefinger.
    BackForefinger,
}

/// Every place in the order in which the cord goes round, with the edges.
const ROUND_FIVE: [FingerPlace; 10] = [
    FingerPlace::EdgeForefinger,
    FingerPlace::FrontForefinger,
    FingerPlace::FrontMiddle,
    FingerPlace::FrontRing,
    FingerPlace::FrontLittle,
    FingerPlace::EdgeLittle,
    FingerPlace::BackLittle,
    FingerPlace::BackRing,
    FingerPlace::BackMiddle,
    FingerPlace::BackForefinger,
];

/// The same without the edges.
const ROUND_FOUR: [FingerPlace; 8] = [
    FingerPlace::FrontForefinger,
    FingerPlace::FrontMiddle,
    FingerPlace::FrontRing,
    FingerPlace::FrontLittle,
    FingerPlace::BackLittle,
    FingerPlace::BackRing,
    FingerPlace::BackMiddle,
    FingerPlace::BackForefinger,
];

/// Which way a leg goes about the fingers, and so how the hand is turned to see it.
///
/// # Examples
/// ```
/// use marlinspeak::guide::{FingerWay, Plan};
///
/// // The first leg of 3 lead 4 bight stays in sight, the second goes behind the little finger.
/// let plan = Plan::read("3", "4", "1", "")?.with_round_hand()?;
/// let fingers = plan.fingers().unwrap();
/// let way = |number| fingers.way(plan.knot().leg(1, number).unwrap());
/// assert_eq!((way(1), way(2)), (FingerWay::Front, FingerWay::RoundLittle));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, EnumIter, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum FingerWay {
    /// Across the front.
    Front,
    /// From the front round the little finger to the back.
    RoundLittle,
    /// Across the back.
    Back,
    /// From the back round the forefinger to the front.
    RoundForefinger,
    /// From the front behind all four fingers to the front again.
    BehindAll,
    /// From the back across all four fingers to the back again.
    AcrossAll,
}

/// A leg round the hand.
///
/// # Examples
/// ```
/// use marlinspeak::guide::{FingerPlace, Plan};
///
/// // The second leg of 3 lead 4 bight lands behind the middle finger, at the wrist side.
/// let plan = Plan::read("3", "4", "1", "")?.with_round_hand()?;
/// let leg = plan.fingers().unwrap().leg(plan.knot().leg(1, 2).unwrap());
/// assert_eq!((leg.from, leg.to), (FingerPlace::FrontLittle, FingerPlace::BackMiddle));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct FingerLeg {
    /// Where it begins.
    pub from: FingerPlace,
    /// Where it lands.
    pub to: FingerPlace,
    /// Which way it goes.
    pub way: FingerWay,
}

/// The fingers that a knot is tied on.
///
/// # Examples
/// ```
/// use marlinspeak::guide::{FingerPlace, Fingers, Plan};
/// use marlinspeak::knot::Pin;
///
/// let plan = Plan::read("3", "4", "1", "")?.with_round_hand()?;
/// let fingers = plan.fingers().unwrap();
/// assert_eq!(fingers.place(Pin::bottom(3)), FingerPlace::BackLittle);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Fingers {
    lattice: Lattice,
}

impl Fingers {
    /// The knots that are tied round the hand: leads and bights. Four fingers have room for four or five
    /// bights, and on more crossings than these the first ones slip before the last hold them.
    /// *Common practice, no source.*
    pub const KNOTS: [(u16, u16); 4] = [(3, 4), (3, 5), (4, 5), (5, 4)];

    /// The most passes: three cords lie side by side on a finger, and more crowd it. *Common practice, no
    /// source.*
    pub const MOST_PASSES: u16 = 3;

    /// How much cord to take, in millimetres: so many times loosely round four fingers as there are leads in every pass, and
    /// two tails, to the next half metre. *Common practice, no source: 24 cm round the fingers with one more
    /// under the cord, a quarter and a little over for the way from rim to rim, 25 cm a tail.*
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::Plan;
    ///
    /// let small = Plan::read("3", "4", "1", "")?.with_round_hand()?;
    /// assert_eq!(small.fingers().unwrap().cord(1), 1500.0);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn cord(self, passes: u16) -> f64 {
        const ROUND: f64 = 240.0 * 1.3;
        const TAILS: f64 = 500.0;
        let turns = f64::from(self.lattice.leads()) * f64::from(passes);
        ((turns * ROUND + TAILS) / 500.0).ceil() * 500.0
    }

    /// Whether the fingers would hold a knot of so few cords, though it may not be one of those that are told
    /// by them.
    pub(crate) fn would_hold(leads: u16, bights: u16, nested: u16, passes: u16) -> bool {
        let most = Self::KNOTS.map(|(leads, bights)| leads.max(bights));
        nested == 1
            && passes <= Self::MOST_PASSES
            && most.iter().any(|most| leads.max(bights) <= *most)
    }

    /// Places round the fingers: two a bight.
    fn round(self) -> &'static [FingerPlace] {
        if self.lattice.bights() == 5 {
            &ROUND_FIVE
        } else {
            &ROUND_FOUR
        }
    }

    /// Half pitches from the first bight, in the way of the cord.
    fn across(self, pin: Pin) -> u16 {
        let stagger = pin.rim == Rim::Top && self.lattice.is_staggered();
        (2 * (pin.number - 1) + u16::from(stagger)) % self.lattice.round()
    }

    /// Where a bight lies.
    pub fn place(self, pin: Pin) -> FingerPlace {
        let round = self.round();
        round[usize::from(self.across(pin)) % round.len()]
    }

    /// A leg, told by the fingers.
    pub fn leg(self, leg: Leg) -> FingerLeg {
        FingerLeg {
            from: self.place(leg.from),
            to: self.place(leg.to),
            way: self.way(leg),
        }
    }

    /// Which way a leg goes about the fingers.
    pub fn way(self, leg: Leg) -> FingerWay {
        let (from, to) = (self.across(leg.from), self.across(leg.to));
        // In quarter pitches: without places of their own the edges lie midway between two places.
        let round = 2 * self.lattice.round();
        let start = 2 * from;
        let apart = (2 * to + round - start) % round;
        let edge = if self.lattice.bights() == 5 {
            0
        } else {
            round - 1
        };
        // How far it is to each edge; an edge where the leg begins or ends is not gone round.
        let until = |edge: u16| match (edge + round - start) % round {
            0 => round,
            until => until,
        };
        let (forefinger, little) = (until(edge), until((edge + round / 2) % round));
        match (little < apart, forefinger < apart) {
            (true, true) if little < forefinger => FingerWay::BehindAll,
            (true, true) => FingerWay::AcrossAll,
            (true, false) => FingerWay::RoundLittle,
            (false, true) => FingerWay::RoundForefinger,
            // The edge that comes next tells on which side the leg lies.
            (false, false) if little < forefinger => FingerWay::Front,
            (false, false) => FingerWay::Back,
        }
    }
}

impl Plan {
    /// The same plan tied round the hand, without a tube.
    ///
    /// # Errors
    /// [`KnotError::NotRoundHand`] for a knot that the fingers cannot hold.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{Plan, RimNames};
    ///
    /// let plan = Plan::read("3", "4", "2", "")?.with_round_hand()?;
    /// assert!(plan.is_round_hand() && plan.setup().is_none());
    /// assert_eq!(plan.rims(), RimNames::WristTips);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn with_round_hand(self) -> Result<Self, KnotError> {
        let (lattice, passes) = (self.knot().lattice(), self.laying().passes());
        let (leads, bights) = (lattice.leads(), lattice.bights());
        let is_held = Fingers::KNOTS.contains(&(leads, bights))
            && !lattice.is_interwoven()
            && passes <= Fingers::MOST_PASSES;
        if !is_held {
            return Err(KnotError::NotRoundHand {
                leads,
                bights,
                nested: lattice.nested(),
                passes,
            });
        }
        let mut plan = self.with_setup(None::<Setup>);
        plan.round_hand = true;
        Ok(plan)
    }

    /// Whether it is tied round the hand, without a tube.
    pub const fn is_round_hand(&self) -> bool {
        self.round_hand
    }

    /// The fingers it is tied on, where it is tied round the hand.
    pub fn fingers(&self) -> Option<Fingers> {
        self.round_hand.then(|| Fingers {
            lattice: self.knot().lattice(),
        })
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    fn on_fingers(leads: u16, bights: u16) -> (Plan, Fingers) {
        let [leads, bights] = [leads, bights].map(|count| count.to_string());
        let plan = Plan::read(&leads, &bights, "1", "").unwrap();
        let plan = plan.with_round_hand().unwrap();
        let fingers = plan.fingers().unwrap();
        (plan, fingers)
    }

    #[test]
    fn every_bight_of_a_rim_has_a_finger_of_its_own() {
        for (leads, bights) in Fingers::KNOTS {
            let (plan, fingers) = on_fingers(leads, bights);
            for rim in [Rim::Bottom, Rim::Top] {
                let places = plan.knot().pins(rim).map(|pin| fingers.place(pin));
                let places: BTreeSet<&str> = places.map(Into::into).collect();
                assert_eq!(places.len(), usize::from(bights), "{leads} × {bights}");
            }
        }
    }

    /// The places themselves say which sides a leg has: nothing of quarter pitches.
    #[test]
    fn a_leg_goes_the_way_that_its_places_show() {
        for (leads, bights) in Fingers::KNOTS {
            let (plan, fingers) = on_fingers(leads, bights);
            let round = fingers.round();
            for number in 1..=plan.knot().legs_of(1) {
                let leg = plan.knot().leg(1, number).unwrap();
                let at = |pin| round.iter().position(|place| *place == fingers.place(pin));
                let start = at(leg.from).unwrap();
                let passed =
                    (0..=usize::from(leads)).map(|step| round[(start + step) % round.len()]);
                let sides: Vec<char> = passed
                    .filter_map(|place| <&str>::from(place).chars().next())
                    .filter(|side| *side != 'e')
                    .collect();
                let mut sides: String = sides.into_iter().collect();
                for side in ["f", "b"] {
                    while sides.contains(&side.repeat(2)) {
                        sides = sides.replace(&side.repeat(2), side);
                    }
                }
                let way = match sides.as_str() {
                    "f" => FingerWay::Front,
                    "fb" => FingerWay::RoundLittle,
                    "b" => FingerWay::Back,
                    "bf" => FingerWay::RoundForefinger,
                    "fbf" => FingerWay::BehindAll,
                    "bfb" => FingerWay::AcrossAll,
                    other => panic!("{other}"),
                };
                assert_eq!(fingers.way(leg), way, "{leads} × {bights}, leg {number}");
            }
        }
    }

    #[test]
    fn what_the_fingers_cannot_hold_is_refused() {
        for [leads, bights, passes] in [["5", "7", "1"], ["3", "7", "1"], ["3", "4", "4"]] {
            let plan = Plan::read(leads, bights, passes, "").unwrap();
            assert!(
                plan.with_round_hand().is_err(),
                "{leads} × {bights} × {passes}"
            );
        }
        let nested = Plan::read_nested(["3", "5", "2", ""], "1", "").unwrap();
        let error = nested.with_round_hand().unwrap_err();
        assert!(matches!(error, KnotError::NotRoundHand { nested: 2, .. }));
    }
}
