//! What became of the cords of a tie: what was measured of them, and where new ones were joined.

use crate::bench::Millimetres;
use crate::knot::PassLeg;

/// What was in the hand, measured from the pin or from the end of the cord.
///
/// ```
/// use marlinspeak::bench::Millimetres;
/// use marlinspeak::guide::{AtOnce, Plan, Script};
///
/// // Before the first leg all of the cord is measured.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let history = script.measured(script.first(), Millimetres::parse("2 m").unwrap()).unwrap();
/// assert!(history.measures()[0].is_whole);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CordMeasure {
    /// The leg that was to be laid next, or was being laid.
    pub at: PassLeg,
    /// Crossings of that leg that lay behind the hand.
    pub crossing: u16,
    /// Whether the cord had no end left at its pin yet: then all of it was measured.
    pub is_whole: bool,
    /// How much there was.
    pub left: Millimetres,
}

/// A place where a new cord took the place of one that ran out or frayed: from there on it lays the
/// strand, with an end of its own.
///
/// ```
/// use marlinspeak::guide::Join;
/// use marlinspeak::knot::PassLeg;
///
/// let join = Join { at: PassLeg::FIRST, row: 2, melts: false };
/// assert_eq!((join.at.leg, join.row), (1, 2));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Join {
    /// The leg in whose middle it lies.
    pub at: PassLeg,
    /// The row of the crossing under which both ends are hidden, 1 the lowest.
    pub row: u16,
    /// Whether the cord melts, so that its ends are sealed with heat.
    pub melts: bool,
}

/// What became of the cords of a tie.
///
/// ```
/// use marlinspeak::guide::{CordHistory, Join, Plan};
/// use marlinspeak::knot::PassLeg;
///
/// // One cord has two ends; joined to another, there are four.
/// let join = Join { at: PassLeg::FIRST, row: 2, melts: true };
/// let history = CordHistory::new(Vec::new(), vec![join]);
/// let plan = Plan::read("5", "7", "1", "1")?;
/// assert_eq!(plan.clone().with_cord_history(history).ends(), plan.ends() + 2);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CordHistory {
    measures: Vec<CordMeasure>,
    joins: Vec<Join>,
}

impl CordHistory {
    /// These measures and joins, each in the order in which they were made.
    pub const fn new(measures: Vec<CordMeasure>, joins: Vec<Join>) -> Self {
        Self { measures, joins }
    }

    /// Where new cords were joined.
    pub fn joins(&self) -> &[Join] {
        &self.joins
    }

    /// What was measured, the last of every cord.
    pub fn measures(&self) -> &[CordMeasure] {
        &self.measures
    }

    /// With a measure more, in place of those of the same cord: of the same strand in these passes.
    #[must_use]
    pub(super) fn measured(
        mut self,
        measure: CordMeasure,
        passes: std::ops::RangeInclusive<u16>,
    ) -> Self {
        self = self.unmeasured(measure.at.strand, passes);
        self.measures.push(measure);
        self
    }

    /// Without what was measured of the cord of this strand in these passes.
    #[must_use]
    pub(super) fn unmeasured(mut self, strand: u16, passes: std::ops::RangeInclusive<u16>) -> Self {
        self.measures
            .retain(|other| other.at.strand != strand || !passes.contains(&other.at.pass));
        self
    }

    /// With a join more. What was measured of the cord before it tells nothing of the new one.
    #[must_use]
    pub(super) fn joined(mut self, join: Join, passes: std::ops::RangeInclusive<u16>) -> Self {
        self = self.unmeasured(join.at.strand, passes);
        self.joins.push(join);
        self
    }

    /// As it is when every leg from this one on is taken back: joins in them are gone, and so is what
    /// was measured since of the new cords, those of these measures.
    #[must_use]
    pub(super) fn without_joins(
        mut self,
        is_gone: impl Fn(&Join) -> bool,
        is_of_new_cord: impl Fn(&CordMeasure) -> bool,
    ) -> Self {
        self.joins.retain(|join| !is_gone(join));
        self.measures.retain(|measure| !is_of_new_cord(measure));
        self
    }
}
