//! What the tyer has and wants.

use crate::bench::{
    Allowances, Braid, Corrections, Counts, Give, Interlacing, LeastCover, Millimetres, Object,
    Tube, TyingPace,
};
use crate::knot::Weave;

/// What the tyer has and wants.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitWish, Millimetres, Object, Tube, fit};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let mut boathook = FitWish::new(Object::new(mm(30.0), mm(40.0)), mm(4.0));
/// let on_any_tube = fit(&boathook);
/// // Only knots that the loft's tube can be pinned for.
/// boathook.tube = Some(&tube);
/// let on_this_tube = fit(&boathook);
/// assert!(on_this_tube.iter().all(|answer| tube.takes(answer.counts.bights())));
/// assert!(!on_this_tube.is_empty() && on_this_tube.len() < on_any_tube.len());
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FitWish<'a> {
    /// What is to be covered.
    pub object: Object,
    /// Diameter of the cord.
    pub cord: Millimetres,
    /// How closely it lies.
    pub give: Give,
    /// The weave: a run, for knots that it goes round evenly.
    pub weave: WeaveChoice,
    /// The tube it will be tied on, if chosen: only knots it can be rigged for are offered.
    pub tube: Option<&'a Tube>,
    /// Whether it will be tied on the object itself: then no tube is asked for, and only knots are offered
    /// that leave room to tuck there. A mat is tied on a board in any case.
    pub in_place: bool,
    /// Cord in hand, if it matters: only knots it is enough for are offered.
    pub cord_at_hand: Option<Millimetres>,
    /// How far the range of a knot may miss the length to be covered.
    pub tolerance: Millimetres,
    /// How much must be hidden.
    pub least_cover: LeastCover,
    /// Which knots are wanted at all.
    pub filter: FitFilter,
    /// Tails and holding.
    pub allowances: Allowances,
    /// What the tyer's log says of ties in the weave that is looked for.
    pub corrections: Corrections,
    /// What it says of the interwoven knots that are offered beside plain ones.
    pub interwoven_corrections: Corrections,
    /// How fast the tyer works.
    pub pace: TyingPace,
    /// The one knot that is asked about, however long it comes out; none for all of them.
    pub only: Option<OneKnot>,
}

/// A knot that is known, of which it is asked how it comes out on an object and a tube.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, FitWish, Millimetres, Object, OneKnot, fit};
/// use marlinspeak::knot::{Knot, Weave};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let knot = Knot::new(5, 7, Weave::default())?;
/// let mut grip = FitWish::new(Object::new(mm(30.0), mm(500.0)), mm(4.0));
/// grip.only = Some(OneKnot { counts: Counts::of(&knot, 1)?, tucks: 12, other_tucks: 16 });
/// // Far too narrow for what is to be covered, it is told all the same.
/// let answers = fit(&grip);
/// assert_eq!((answers.len(), answers[0].counts.bights()), (1, 7));
/// assert!(!answers[0].reaches(mm(500.0)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneKnot {
    /// Leads, bights and passes, and how often its cords change sides.
    pub counts: Counts,
    /// Tucks in the whole tie.
    pub tucks: u32,
    /// Tucks in the whole tie with over and under exchanged.
    pub other_tucks: u32,
}

/// The weave of the knots that are looked for.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Interlacing, WeaveChoice};
///
/// assert_eq!(WeaveChoice::FewestTucks.run(1), 1);
/// // Two cords, one nested in the other, go over two, under two: so each by itself goes over one,
/// // under one.
/// assert_eq!(WeaveChoice::FewestTucks.run(2), 2);
/// assert_eq!(WeaveChoice::FewestTucks.interlacing(1), Interlacing::PLAIN);
/// assert_eq!(WeaveChoice::Run(2).interlacing(1).share(), 0.5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WeaveChoice {
    /// Over one, under one, or its twin where that takes fewer tucks.
    FewestTucks,
    /// Over n, under n, as it is, in knots where that is even.
    Run(u16),
}

impl WeaveChoice {
    /// The run, begun with over.
    pub const fn run(self, nested: u16) -> u16 {
        match self {
            // Each cord by itself is over one, under one.
            Self::FewestTucks | Self::Run(1) => nested,
            Self::Run(run) => run,
        }
    }

    /// How often its cords change sides.
    pub fn interlacing(self, nested: u16) -> Interlacing {
        // As in every knot where the run is even.
        let run = self.run(nested);
        Interlacing::of(&Weave::Run(run), run)
    }
}

/// Which knots are wanted at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FitFilter {
    /// Only knots of so many passes.
    pub passes: Option<u16>,
    /// Bights nested at each rim: 1 for plain knots alone, more for interwoven ones, in which all cords
    /// have the same leads. When nothing is said, plain knots and the best of two nests.
    pub nested: Option<u16>,
    /// Only knots of so many leads or more.
    pub least_leads: u16,
    /// Only knots of so many bights or more.
    pub least_bights: u16,
    /// Only knots of one strand.
    pub one_cord: bool,
    /// Most legs of the whole tie.
    pub most_legs: Option<u32>,
}

impl Default for FitFilter {
    /// Every knot.
    fn default() -> Self {
        Self {
            passes: None,
            nested: None,
            least_leads: 2,
            least_bights: 2,
            one_cord: false,
            most_legs: None,
        }
    }
}

impl FitFilter {
    /// Bights nested in the interwoven knots that are offered beside plain ones: the second cord laced
    /// through the first is what is tied most. *Common practice, no source.*
    pub const BESIDE: u16 = 2;

    /// Whether a knot is wanted.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Counts, FitFilter};
    ///
    /// let filter = FitFilter { one_cord: true, ..FitFilter::default() };
    /// assert!(filter.takes(Counts::new(5, 7, 2).unwrap()));
    /// assert!(!filter.takes(Counts::new(4, 6, 2).unwrap()), "two strands");
    /// ```
    pub fn takes(&self, counts: Counts) -> bool {
        self.passes.is_none_or(|passes| passes == counts.passes())
            && self
                .nested
                .map_or(counts.nested() <= Self::BESIDE, |nested| {
                    nested == counts.nested()
                })
            && counts.leads() >= self.least_leads
            && counts.bights() >= self.least_bights
            && !(self.one_cord && counts.strands() > 1)
            && self.most_legs.is_none_or(|most| counts.legs() <= most)
    }
}

impl FitWish<'_> {
    /// Soft line of any length, any tube, every knot. The range may miss by half a cord's
    /// diameter: *common practice, no source*.
    pub fn new(object: Object, cord: Millimetres) -> Self {
        Self {
            object,
            cord,
            give: Give::default(),
            weave: WeaveChoice::FewestTucks,
            tube: None,
            in_place: false,
            cord_at_hand: None,
            tolerance: Millimetres::computed(cord.get() / 2.0),
            least_cover: LeastCover::default(),
            filter: FitFilter::default(),
            allowances: Allowances::default(),
            corrections: Corrections::default(),
            interwoven_corrections: Corrections::default(),
            pace: TyingPace::USUAL,
            only: None,
        }
    }

    /// Bights nested at each rim of the knots that are looked for first.
    pub(super) fn nested(&self) -> u16 {
        self.filter.nested.unwrap_or(1)
    }

    /// The wish for the interwoven knots that are offered beside the plain ones, unless it says which
    /// are wanted.
    pub(super) fn beside(&self) -> Option<Self> {
        let filter = FitFilter {
            nested: Some(FitFilter::BESIDE),
            ..self.filter
        };
        // Every nest is a cord of its own.
        let is_open = self.filter.nested.is_none() && !self.filter.one_cord && self.only.is_none();
        is_open.then(|| Self {
            filter,
            corrections: self.interwoven_corrections,
            ..self.clone()
        })
    }

    pub(super) fn braid(&self, counts: Counts) -> Braid {
        Braid {
            counts,
            cord: self.cord,
            give: self.give,
            around: self.object.ground,
            correction: self.corrections.of(counts.passes()),
        }
    }
}
