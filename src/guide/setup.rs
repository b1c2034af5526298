//! What the tyer works with: the tube, the cord, and the thing to be covered.

use crate::bench::{
    Allowances, Braid, Cord, Correction, Counts, Finish, Ground, KitItem, Rig, RigError, RigJob,
    Tube, bag, rig,
};
use crate::knot::Nest;

/// Tube, cord and object of a tie, when the tyer has named them.
///
/// ```
/// use marlinspeak::bench::{Cord, Counts, Millimetres, Tube};
/// use marlinspeak::guide::Setup;
///
/// // A row of fourteen holes takes seven bights: a pin in every other hole. With odd leads the
/// // top pins stand half a pitch on, which is the hole between.
/// let tube = Tube::ringed(Millimetres::parse("45")?, &[14, 20])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let rig = setup.rig(Counts::new(5, 7, 2)?)?;
/// assert!(rig.staggered);
/// assert_eq!(rig.starts[0].hole, Some(1));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Setup {
    /// The tube and its rings.
    pub tube: Tube,
    /// The cord of all passes.
    pub cord: Cord,
    /// What the knot is to sit on; `None` when it stays on the tube.
    pub finish: Option<Finish>,
    /// What a piece of cord has beyond what lies in the knot: its tails, and what is held.
    pub allowances: Allowances,
    /// What the tyer's log says of this cord.
    pub correction: Correction,
    /// Whether the knot is tied on what it covers: then nothing is lifted, and the tube stands for
    /// that thing, with marks in the place of pins.
    pub in_place: bool,
}

impl Setup {
    /// With the usual allowances, nothing measured yet, and no object.
    pub fn new(tube: Tube, cord: Cord) -> Self {
        Self {
            tube,
            cord,
            finish: None,
            allowances: Allowances::default(),
            correction: Correction::default(),
            in_place: false,
        }
    }

    /// For a knot that is tied on what it covers.
    ///
    /// ```
    /// use marlinspeak::bench::{Cord, Ground, Millimetres};
    /// use marlinspeak::guide::Setup;
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let knob = Setup::in_place(Ground::Ball(mm(38.0)), Cord::new(mm(3.0)));
    /// assert!(knob.in_place && knob.ground() == Ground::Ball(mm(38.0)));
    /// ```
    pub fn in_place(ground: Ground, cord: Cord) -> Self {
        Self {
            finish: Some(Finish {
                around: ground,
                open_to: None,
            }),
            in_place: true,
            ..Self::new(Tube::plain(ground.thickest()), cord)
        }
    }

    /// What the knot covers; the tube, for one that stays there.
    pub const fn ground(&self) -> Ground {
        match self.finish {
            Some(finish) => finish.around,
            None => Ground::Round(self.tube.diameter),
        }
    }

    /// The tube rigged for a knot.
    ///
    /// # Errors
    /// A [`RigError`] when the tube cannot take the knot or the knot not the object.
    pub fn rig(&self, counts: Counts) -> Result<Rig, RigError> {
        rig(&RigJob {
            give: self.cord.give,
            finish: self.finish,
            allowances: self.allowances,
            correction: self.correction,
            in_place: self.in_place,
            ..RigJob::new(counts, &self.tube, self.cord.diameter)
        })
    }

    /// A knot of its cord round something.
    pub fn braid(&self, counts: Counts, around: impl Into<Ground>) -> Braid {
        Braid {
            give: self.cord.give,
            correction: self.correction,
            ..Braid::new(counts, self.cord.diameter, around)
        }
    }

    /// What goes into the bag for a rigged tie, when all strands have the same cord.
    pub fn kit(&self, rig: &Rig) -> Vec<KitItem> {
        let of_nest = |nest: Nest| {
            let length = rig.cord.piece(nest, rig.counts.passes());
            KitItem::cord(self.cord.clone(), nest.strands, length)
        };
        let cords: Vec<KitItem> = rig.counts.lattice().nests().map(of_nest).collect();
        bag(rig, &self.tube, cords)
    }
}
