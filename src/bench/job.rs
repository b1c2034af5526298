//! A knot to be tied on a tube.

use super::{Allowances, Correction, Counts, Give, Ground, Millimetres, Tube};

/// What the knot is to be when finished.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Finish, Millimetres, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// // A doubled 4 lead 7 bight of 3 mm line for a boathook of 30 mm, opened to 24 mm.
/// let finish = Finish { around: mm(30.0).into(), open_to: Some(mm(24.0)) };
/// let job = RigJob::new(Counts::new(4, 7, 2).unwrap(), &tube, mm(3.0));
/// let rigged = rig(&RigJob { finish: Some(finish), ..job }).unwrap();
/// assert_eq!(rigged.shape.width, mm(24.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finish {
    /// What it will sit on.
    pub around: Ground,
    /// Overall width to open it to; `None` to draw it up as tight as it goes.
    pub open_to: Option<Millimetres>,
}

/// A knot to be tied on a tube.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, Give, Millimetres, RigJob, Tube, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let soft = RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0));
/// // Hard cord does not lie so close: the knot comes out wider, and less slack is drawn out of it.
/// let hard = RigJob { give: Give::HARD, ..soft.clone() };
/// let [soft, hard] = [soft, hard].map(|job| rig(&job).unwrap());
/// assert!(soft.shape.width < hard.shape.width);
/// assert!(soft.laid.slack > hard.laid.slack);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct RigJob<'a> {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// What the knot is tied on.
    pub tube: &'a Tube,
    /// Diameter of the cord.
    pub cord: Millimetres,
    /// How closely it lies.
    pub give: Give,
    /// The object; `None` for a knot that stays on the tube, drawn up tight.
    pub finish: Option<Finish>,
    /// Tails and holding.
    pub allowances: Allowances,
    /// What the tyer's log says.
    pub correction: Correction,
    /// Whether it is tied on what it covers: then the tube stands for that thing, with marks in the place
    /// of pins. A mat is tied on a board in any case.
    pub in_place: bool,
}

impl<'a> RigJob<'a> {
    /// With the usual allowances and nothing measured yet.
    pub fn new(counts: Counts, tube: &'a Tube, cord: Millimetres) -> Self {
        Self {
            counts,
            tube,
            cord,
            give: Give::default(),
            finish: None,
            allowances: Allowances::default(),
            correction: Correction::default(),
            in_place: false,
        }
    }
}
