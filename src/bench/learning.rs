//! What measured ties teach of a cord.
//!
//! A cord has habits of its own, and it has others for every number of passes and every weave: a
//! single knot says nothing of a doubled one until the doubled one has been measured too and
//! agrees. So measures are kept apart by [`TieKind`] and shared only as far as they agree.

use super::{Braid, Counts, Give, Interlacing, Millimetres};

/// The ties that teach of one another: of so many passes, in one weave.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, TieKind};
///
/// let kind = |leads, bights, passes| TieKind::from(Counts::new(leads, bights, passes).unwrap());
/// // A tiller grip teaches of a boathook ring, when both are doubled.
/// assert_eq!(kind(5, 7, 2), kind(4, 7, 2));
/// assert_ne!(kind(5, 7, 2), kind(5, 7, 1));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct TieKind {
    /// 1 is single, 2 doubled.
    pub passes: u16,
    /// How often the cords change sides.
    pub interlacing: Interlacing,
}

impl From<Counts> for TieKind {
    fn from(counts: Counts) -> Self {
        Self {
            passes: counts.passes(),
            interlacing: counts.interlacing(),
        }
    }
}

/// A measured factor: measured over computed.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Correction, Counts, Millimetres, Sample, Scatter, TieKind, learnt};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Two metres were worked out for a tiller grip, and it took 2.2.
/// let kind = TieKind::from(Counts::new(5, 7, 2).unwrap());
/// let factor = Correction::factor(mm(2200.0), mm(2000.0)).unwrap();
/// let sample = Sample { kind, factor, weight: 1.0 };
/// // What was measured twice is believed more.
/// let [once, twice] = [1, 2].map(|times| learnt(&vec![sample; times], kind, Scatter::LENGTH));
/// assert!(1.0 < once && once < twice && twice < 1.1);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// What was tied.
    pub kind: TieKind,
    /// What was measured over what was computed.
    pub factor: f64,
    /// What it counts beside one that was measured directly, above 0 to 1.
    pub weight: f64,
}

/// How much factors differ from cord to cord against how much measures of one cord do, as shares.
/// *Common practice, no source.*
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Sample, Scatter, TieKind, learnt};
///
/// let kind = TieKind::from(Counts::new(5, 7, 2).unwrap());
/// let sample = [Sample { kind, factor: 1.1, weight: 1.0 }];
/// // Cords differ more in how close they lie than in how much goes into a knot: one measure tells
/// // more of it.
/// assert!(learnt(&sample, kind, Scatter::GIVE) > learnt(&sample, kind, Scatter::LENGTH));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatter {
    /// From cord to cord.
    pub cords: f64,
    /// From measure to measure.
    pub measures: f64,
}

impl Scatter {
    /// Of the cord in a knot over what is computed for it.
    pub const LENGTH: Self = Self {
        cords: 0.10,
        measures: 0.05,
    };

    /// Of `k` over what it is taken for; each measure is a width.
    pub const GIVE: Self = Self {
        cords: 0.15,
        measures: 0.05,
    };

    /// What no measure at all weighs against each that was made, as a number of them: Bayes'
    /// rule for two normal distributions.
    fn prior(self) -> f64 {
        (self.measures / self.cords).powi(2)
    }
}

/// The factor for ties of a kind, from everything that was measured of a cord; 1 from nothing.
///
/// It is the weighted mean of the logarithms of the kind's own factors, shrunk towards what the
/// other kinds say of it: `ln f = (Σ wᵢ ln fᵢ + p·m) / (Σ wᵢ + p)`. With fewer than two kinds
/// measured `m` is 0. With more it is the mean of the others, as far as all agree: times
/// `1 − I²` of Higgins and Thompson (*Statistics in Medicine* 21 (2002) 1539, from memory), which
/// is 1 when kinds differ no more than measures of one kind do.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Sample, Scatter, TieKind, learnt};
///
/// let kind = |passes| TieKind::from(Counts::new(5, 4, passes).unwrap());
/// let single = Sample { kind: kind(1), factor: 1.2, weight: 1.0 };
/// assert!(learnt(&[single], kind(1), Scatter::LENGTH) > 1.1);
/// assert_eq!(learnt(&[single], kind(2), Scatter::LENGTH), 1.0);
/// ```
pub fn learnt(samples: &[Sample], kind: TieKind, scatter: Scatter) -> f64 {
    let prior = scatter.prior();
    let sums = sums(samples);
    let others = sums.iter().filter(|sum| sum.kind != kind);
    let (weight, logs) = others.fold((0.0, 0.0), |(weight, logs), sum| {
        (weight + sum.weight, logs + sum.logs)
    });
    let expected = agreement(&sums, scatter) * logs / (weight + prior);
    let own = sums.iter().find(|sum| sum.kind == kind);
    let (weight, logs) = own.map_or((0.0, 0.0), |sum| (sum.weight, sum.logs));
    ((logs + prior * expected) / (weight + prior)).exp()
}

/// How far what was measured of the kinds of ties agrees, 0 … 1; 0 when only one was measured.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Sample, Scatter, TieKind, shared};
///
/// let sample = |passes, factor| Sample {
///     kind: TieKind::from(Counts::new(5, 7, passes).unwrap()),
///     factor,
///     weight: 1.0,
/// };
/// let agree = |samples: &[Sample]| shared(samples, Scatter::LENGTH);
/// assert_eq!(agree(&[sample(1, 1.1)]), 0.0, "one kind has nothing to agree with");
/// assert_eq!(agree(&[sample(1, 1.1), sample(2, 1.12)]), 1.0);
/// assert!(agree(&[sample(1, 1.1), sample(2, 0.8)]) < 0.1);
/// ```
pub fn shared(samples: &[Sample], scatter: Scatter) -> f64 {
    agreement(&sums(samples), scatter)
}

/// Everything of one kind together.
struct Sum {
    kind: TieKind,
    weight: f64,
    logs: f64,
}

fn sums(samples: &[Sample]) -> Vec<Sum> {
    let mut sums: Vec<Sum> = Vec::new();
    for sample in samples {
        let log = sample.weight * sample.factor.ln();
        match sums.iter_mut().find(|sum| sum.kind == sample.kind) {
            Some(sum) => {
                sum.weight += sample.weight;
                sum.logs += log;
            }
            None => sums.push(Sum {
                kind: sample.kind,
                weight: sample.weight,
                logs: log,
            }),
        }
    }
    sums
}

fn agreement(sums: &[Sum], scatter: Scatter) -> f64 {
    let Some(freedom) = sums.len().checked_sub(1).filter(|&freedom| freedom > 0) else {
        return 0.0;
    };
    let weight: f64 = sums.iter().map(|sum| sum.weight).sum();
    let mean = sums.iter().map(|sum| sum.logs).sum::<f64>() / weight;
    let spread: f64 = sums
        .iter()
        .map(|sum| sum.weight * (sum.logs / sum.weight - mean).powi(2))
        .sum();
    let spread = spread / scatter.measures.powi(2);
    #[expect(clippy::cast_precision_loss, reason = "a few kinds of ties")]
    let freedom = freedom as f64;
    if spread > freedom {
        freedom / spread
    } else {
        1.0
    }
}

/// By how much the give is changed to see what the width makes of it.
const SENSITIVITY_STEP: f64 = 1e-4;

/// `k` of a knot that came out `width` wide when it was drawn up, and how far a width tells of it:
/// by which share it changes when `k` does by a share. `None` for a width that no cord can come
/// to, and for a ball and a mat, where a knot is as wide as it is worked out to the poles or to the hole.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, Give, Millimetres, give_of_width};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let grip = Braid::new(Counts::new(5, 7, 2).unwrap(), mm(4.0), mm(28.0));
/// // Soft line comes out so wide, and that width tells of soft line.
/// let width = grip.tight().unwrap().width;
/// let (give, _) = give_of_width(&grip, width).unwrap();
/// assert!((give.get() - Give::SOFT.get()).abs() < 1e-6);
/// assert_eq!(give_of_width(&grip, mm(12.0)), None, "no cord can be drawn up so narrow");
/// ```
pub fn give_of_width(braid: &Braid, width: Millimetres) -> Option<(Give, f64)> {
    if braid.around.is_whole() {
        return None;
    }
    let width_for = |give: f64| {
        let give = Give::new(give).ok()?;
        let braid = Braid {
            // Whatever the weave: it is in `k` already.
            counts: braid.counts.interlaced(Interlacing::PLAIN),
            give,
            correction: super::Correction::default(),
            ..*braid
        };
        Some(braid.tight().ok()?.width.get())
    };
    let (mut low, mut high) = (*Give::BOUNDS.start(), *Give::BOUNDS.end());
    if width_for(low)? > width.get() {
        return None;
    }
    // Bands that do not go round at all are wider than any width.
    let is_wider = |give: f64| width_for(give).is_none_or(|found| found > width.get());
    if !is_wider(high) {
        return None;
    }
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if is_wider(middle) {
            high = middle;
        } else {
            low = middle;
        }
    }
    let change =
        width_for(low)? / width_for(low * (1.0 - SENSITIVITY_STEP)).or_else(|| width_for(low))?;
    let tells = (change.ln() / -(1.0 - SENSITIVITY_STEP).ln()).max(0.0);
    Some((Give::new(low).ok()?, tells))
}
