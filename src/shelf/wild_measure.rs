//! Measures so far from what was computed that somebody should look at them again.

use super::Entry;
use crate::bench::Millimetres;

/// A measure that is far from what it should come to. It may be true all the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WildMeasure {
    /// What was measured.
    pub what: MeasureKind,
    /// The measure.
    pub measured: Millimetres,
    /// What it should come to.
    pub computed: Millimetres,
}

/// What the log measures of a knot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeasureKind {
    /// The finished width.
    Width,
    /// The cord in the knot: cut less left over.
    Cord,
}

impl WildMeasure {
    /// How many times as much or as little is not yet wild: cords differ by less, slips in a
    /// unit, a decimal point or a strand forgotten make more. *Common practice, no source.*
    pub const MOST_TIMES: f64 = 1.5;

    fn of(what: MeasureKind, measured: Millimetres, computed: Millimetres) -> Option<Self> {
        let times = measured.get() / computed.get();
        let is_wild = !(1.0 / Self::MOST_TIMES..=Self::MOST_TIMES).contains(&times);
        is_wild.then_some(Self {
            what,
            measured,
            computed,
        })
    }
}

impl Entry {
    /// What is to be asked back before it teaches anything, in the order of the form.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Cord, Millimetres};
    /// use marlinspeak::guide::Plan;
    /// use marlinspeak::session::new_tie;
    /// use marlinspeak::shelf::{Entry, MeasureKind};
    ///
    /// let millimetres = |length| Some(Millimetres::new(length).unwrap());
    /// let tie = new_tie(&Plan::read("5", "7", "2", "1").unwrap());
    /// let mut entry = Entry {
    ///     cord: Some(Cord::new(millimetres(4.0).unwrap())),
    ///     around: millimetres(30.0).map(Into::into),
    ///     width: millimetres(36.0),
    ///     ..Entry::of(&tie)
    /// };
    /// assert!(entry.wild_measures().is_empty());
    /// // 3.6 where centimetres were meant.
    /// entry.width = millimetres(3.6);
    /// assert_eq!(entry.wild_measures()[0].what, MeasureKind::Width);
    /// ```
    pub fn wild_measures(&self) -> Vec<WildMeasure> {
        let width = self.width.zip(self.tight()).filter(|(width, tight)| {
            // However wide a knot was left open, that is what its tyer wanted.
            !(self.left_open && width.get() > tight.get())
        });
        let width =
            width.and_then(|(width, tight)| WildMeasure::of(MeasureKind::Width, width, tight));
        let cord = self.used().zip(self.computed_cord());
        let cord = cord.and_then(|(used, cord)| WildMeasure::of(MeasureKind::Cord, used, cord));
        width.into_iter().chain(cord).collect()
    }
}
