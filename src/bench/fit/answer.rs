//! A knot that is offered.

use strum::{IntoStaticStr, VariantArray};

use crate::bench::{Counts, DrawnUp, KnotShape, Millimetres, WidthRange};
use crate::knot::Weave;

/// A knot that covers the object.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitGroup, FitWish, Millimetres, Object, fit};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A tiller of 28 mm, to be covered for 60 mm with line of 4 mm.
/// let answers = fit(&FitWish::new(Object::new(mm(28.0), mm(60.0)), mm(4.0)));
/// let best = &answers[0];
/// assert!(best.reaches(mm(60.0)));
/// assert!(best.tucks <= best.other_tucks, "begun so that there are fewest tucks");
/// assert_eq!(best.group(), FitGroup::Tripled);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FitAnswer {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// The run of its weave.
    pub run: u16,
    /// Whether it is tied in the twin of that weave, which takes fewer tucks.
    pub is_twin: bool,
    /// The finished knot, opened to the length to be covered.
    pub shape: KnotShape,
    /// The widths it could have.
    pub range: WidthRange,
    /// Cord to cut for all strands, tails and holding included.
    pub cord: Millimetres,
    /// Tucks in the whole tie.
    pub tucks: u32,
    /// Tucks in the whole tie in the other of the two weaves.
    pub other_tucks: u32,
    /// Minutes for all of the work.
    pub minutes: f64,
    /// What it falls short of: 0 is perfect. Answers are ranked by it; see the order.
    pub fault: f64,
    /// Whether the tube takes it only with a caution about its pins or about slack.
    pub is_hampered: bool,
    /// Among which others it is offered.
    pub section: FitSection,
}

/// The parts of the offer, in each of which the best comes first.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitSection, FitWish, Millimetres, Object, fit};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let answers = fit(&FitWish::new(Object::new(mm(28.0), mm(60.0)), mm(4.0)));
/// let mut sections: Vec<FitSection> = answers.iter().map(|answer| answer.section).collect();
/// sections.dedup();
/// // The best of each kind of work first, then everything else.
/// let kinds = [FitSection::Single, FitSection::Doubled, FitSection::Tripled];
/// assert!(kinds.contains(&sections[0]));
/// let [.., interwoven, further, near] = sections[..] else {
///     panic!("{sections:?}")
/// };
/// assert_eq!(interwoven, FitSection::Interwoven);
/// assert_eq!([further, near], [FitSection::Further, FitSection::Near]);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum FitSection {
    /// The best singles.
    Single,
    /// The best doubled knots.
    Doubled,
    /// The best tripled knots.
    Tripled,
    /// The best interwoven knots, beside plain ones.
    Interwoven,
    /// What else comes out as long as asked.
    Further,
    /// What comes out a little shorter or longer than asked.
    Near,
    /// What the tube makes hard work of.
    Hampered,
}

/// Kinds of knots that a tyer chooses among.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{FitGroup, FitWish, Millimetres, Object, fit};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let mut wish = FitWish::new(Object::new(mm(28.0), mm(60.0)), mm(4.0));
/// wish.filter.passes = Some(2);
/// let answers = fit(&wish);
/// assert!(!answers.is_empty());
/// assert!(answers.iter().all(|answer| answer.group() == FitGroup::Doubled));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
pub enum FitGroup {
    /// One pass, usually of many leads.
    Single,
    /// Two passes.
    Doubled,
    /// Three passes.
    Tripled,
    /// Four passes and more.
    MorePasses,
}

impl FitAnswer {
    /// A knot is as long as asked when it misses that by no more than this share: *common practice,
    /// no source*.
    const AS_LONG: f64 = 0.005;

    /// Whether it comes out so long; on a ball, where it reaches to the poles, and as a mat, which has the
    /// size that it is to have, every knot does that is offered.
    pub fn reaches(&self, length: Millimetres) -> bool {
        if self.shape.bare.is_some() {
            return true;
        }
        let miss = (self.shape.width.get() - length.get()).abs();
        miss <= Self::AS_LONG * length.get()
    }

    /// The weave it is tied in.
    pub fn weave(&self) -> Weave {
        let run = Weave::Run(self.run);
        if self.is_twin {
            run.twin(self.counts.lattice().rows())
        } else {
            run
        }
    }

    /// The kind of knot.
    pub const fn group(&self) -> FitGroup {
        match self.counts.passes() {
            1 => FitGroup::Single,
            2 => FitGroup::Doubled,
            3 => FitGroup::Tripled,
            _ => FitGroup::MorePasses,
        }
    }

    /// Where in its range it is drawn up to.
    pub fn drawn_up(&self) -> DrawnUp {
        self.range.drawn_up(self.shape.width)
    }
}
