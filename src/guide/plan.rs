//! Everything the tyer chose.

use super::Setup;
use super::cord_history::CordHistory;
use super::plan_cords::{CordRun, CordsError};
use crate::bench::{Counts, Rig, RigError};
use crate::knot::{
    Hand, Knot, KnotError, Lattice, Laying, LayingOrder, PassLeg, Pin, Quantity, Rim, Side, Weave,
};

/// The knot, its passes, and how the tyer works.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::knot::{Hand, Side};
///
/// // 5 lead 7 bight, doubled, over one under one, by a left-handed tyer.
/// let plan = Plan::read("5", "7", "2", "1")?.with_hand(Hand::Left);
/// assert_eq!(plan.laying().legs(), 28);
/// assert_eq!(plan.side, Side::Right);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    laying: Laying,
    /// The side of the cord already there that a follower keeps to.
    pub side: Side,
    /// Which way round the tube the tyer works.
    pub hand: Hand,
    /// Whether the tube stands as the piece before left it: then there is nothing to pack and to rig,
    /// and only cord to cut.
    pub tube_stands: bool,
    /// Whether it is tied round the hand, without a tube.
    pub(super) round_hand: bool,
    /// Tube, cord and object, when they were named, and how the tube is rigged for the knot.
    setup: Option<(Setup, Result<Rig, RigError>)>,
    /// What the tyer calls the cords: none, one for each strand, or one for each pass of each
    /// strand, all passes of the first strand first.
    cords: Vec<String>,
    /// What became of the cords since.
    cord_history: CordHistory,
}

impl Plan {
    /// A plan for `knot` in `passes`, laid in its [usual order](LayingOrder::usual).
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when `passes` is out of bounds.
    pub fn new(knot: Knot, passes: u16, side: Side, hand: Hand) -> Result<Self, KnotError> {
        let order = LayingOrder::usual(&knot);
        Ok(Self::of(Laying::new(knot, passes, order)?, side, hand))
    }

    /// A plan for what is laid in this way.
    pub fn of(laying: Laying, side: Side, hand: Hand) -> Self {
        Self {
            laying,
            side,
            hand,
            tube_stands: false,
            round_hand: false,
            setup: None,
            cords: Vec::new(),
            cord_history: CordHistory::default(),
        }
    }

    /// Reads a plan from the four texts that name a knot: leads, bights, passes, weave. No weave is
    /// over one, under one, begun so that it takes the fewest tucks.
    ///
    /// # Errors
    /// The first [`KnotError`] met, in the order of the arguments.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::Plan;
    ///
    /// let tucks = |weave| Plan::read("17", "4", "1", weave).unwrap().laying().tucks();
    /// assert_eq!((tucks("1"), tucks("")), (40, 24));
    /// ```
    pub fn read(leads: &str, bights: &str, passes: &str, weave: &str) -> Result<Self, KnotError> {
        Self::read_nested([leads, bights, "", ""], passes, weave)
    }

    /// The same from leads, bights, bights nested at each rim, and the top row in which the first
    /// cord lands. Without the third it is a plain knot, without the fourth the first cord lands in
    /// the innermost row, and all cords have the same leads. No weave is over as many, under as many
    /// as are nested: so each cord by itself is over one, under one.
    ///
    /// # Errors
    /// The first [`KnotError`] met, in the order of the arguments.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::Plan;
    ///
    /// let plan = Plan::read_nested(["5", "4", "2", ""], "1", "2")?;
    /// assert_eq!((plan.knot().strands(), plan.laying().legs()), (2, 16));
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn read_nested(counts: [&str; 4], passes: &str, weave: &str) -> Result<Self, KnotError> {
        let [leads, bights, nested, lands] = counts;
        let asked = |quantity: Quantity, text: &str| {
            let text = Some(text).filter(|text| !text.trim().is_empty());
            text.map(|text| quantity.parse(text)).transpose()
        };
        let leads = Quantity::Leads.parse(leads)?;
        let bights = Quantity::Bights.parse(bights)?;
        let nested = asked(Quantity::Nested, nested)?.unwrap_or(1);
        let lands = asked(Quantity::Lands, lands)?.unwrap_or(nested);
        let passes = Quantity::Passes.parse(passes)?;
        let named = Some(weave).filter(|weave| !weave.trim().is_empty());
        let weave = named.map(Weave::parse).transpose()?;
        let lattice = Lattice::plain(leads, bights)?.interwoven(nested, lands)?;
        let knot = Knot::woven(lattice, weave.unwrap_or(Weave::Run(nested)))?;
        let plan = Self::new(knot, passes, Side::default(), Hand::default())?;
        Ok(if named.is_some() {
            plan
        } else {
            plan.with_fewest_tucks()
        })
    }

    /// The same plan in the twin of its weave, where that takes fewer tucks: the finished knot looks
    /// alike, with overs and unders exchanged.
    #[must_use]
    pub fn with_fewest_tucks(self) -> Self {
        let laying = self.laying.with_fewer_tucks().unwrap_or(self.laying);
        Self { laying, ..self }
    }

    /// Tucks in the weave begun with over, when this is its twin, begun with under.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::Plan;
    ///
    /// let plan = |weave| Plan::read("5", "7", "1", weave).unwrap();
    /// assert_eq!((plan("").laying().tucks(), plan("").tucks_begun_with_over()), (8, Some(20)));
    /// assert_eq!(plan("1").tucks_begun_with_over(), None);
    /// ```
    pub fn tucks_begun_with_over(&self) -> Option<u32> {
        let knot = self.knot();
        let is_twin = knot.weave().twin_run(knot.rows()).is_some();
        is_twin.then(|| self.laying.with_twin().tucks())
    }

    /// The same plan for a follower on this side.
    #[must_use]
    pub fn with_side(self, side: Side) -> Self {
        Self { side, ..self }
    }

    /// The same plan for a tyer of this hand.
    #[must_use]
    pub fn with_hand(self, hand: Hand) -> Self {
        Self { hand, ..self }
    }

    /// The same plan with this tube, cord and object. Whether the tube can be rigged for the
    /// knot, [`Plan::rig`] tells: who begins a tie refuses what cannot, and who takes up one of
    /// another day can still go on without.
    #[must_use]
    pub fn with_setup(self, setup: Option<Setup>) -> Self {
        let counts = Counts::from(self.laying());
        let rigged = |setup: Setup| {
            let rig = setup.rig(counts);
            (setup, rig)
        };
        Self {
            setup: setup.map(rigged),
            ..self
        }
    }

    /// The same plan with what became of its cords.
    #[must_use]
    pub fn with_cord_history(self, cord_history: CordHistory) -> Self {
        Self {
            cord_history,
            ..self
        }
    }

    /// The same plan on a tube that stands as the piece before left it, or on one that does not.
    ///
    /// ```
    /// use marlinspeak::bench::{Cord, Millimetres, Tube};
    /// use marlinspeak::guide::{AtOnce, Place, Plan, Script, Setup};
    ///
    /// // The second tiller grip of a batch: there is only its cord to cut before the tail is left.
    /// let tube = Tube::ringed(Millimetres::parse("45")?, &[14, 20])?;
    /// let setup = Setup::new(tube, Cord::new(Millimetres::parse("3")?));
    /// let plan = Plan::read("5", "7", "2", "")?.with_setup(Some(setup));
    /// let script = Script::new(plan.with_standing_tube(true), AtOnce::default());
    /// assert_eq!(script.first(), Place::Rig { task: 1 });
    /// assert_eq!(script.next(script.first()), Some(Place::begin(1, 1)));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn with_standing_tube(self, tube_stands: bool) -> Self {
        Self {
            tube_stands,
            ..self
        }
    }

    /// What became of the cords since the tie was begun.
    pub const fn cord_history(&self) -> &CordHistory {
        &self.cord_history
    }

    /// Tube, cord and object, when they were named.
    pub const fn setup(&self) -> Option<&Setup> {
        match &self.setup {
            Some((setup, _)) => Some(setup),
            None => None,
        }
    }

    /// The tube rigged for the knot, when a tube and a cord were named.
    ///
    /// # Errors
    /// The [`RigError`] that says why the tube cannot take the knot, or the knot not the object.
    pub fn rig(&self) -> Result<Option<&Rig>, &RigError> {
        let rig = self.setup.as_ref().map(|(_, rig)| rig.as_ref());
        rig.transpose()
    }

    /// The same plan laid in this order of strands and passes.
    #[must_use]
    pub fn with_order(self, order: LayingOrder) -> Self {
        Self {
            laying: self.laying.with_order(order),
            ..self
        }
    }

    /// The same plan with names for the cords: one for each strand, or one for each pass of each
    /// strand, all passes of the first strand first. Equal names that follow one another in a strand
    /// are one cord. Where every strand gets another cord with a pass, these begin at pins of their
    /// own, so that the ends do not all come out in one place.
    ///
    /// # Errors
    /// [`CordsError`] when there are more or fewer.
    pub fn with_cords(mut self, cords: Vec<String>) -> Result<Self, CordsError> {
        let (strands, passes) = (self.knot().strands(), self.laying.passes());
        let by_strand = usize::from(strands);
        let by_pass = by_strand * usize::from(passes);
        if ![0, by_strand, by_pass].contains(&cords.len()) {
            return Err(CordsError {
                given: cords.len(),
                strands,
                passes,
            });
        }
        self.cords = cords;
        // The cords of a strand begin as far from one another as the pins allow.
        let rounds = |strand| u32::from(self.knot().legs_of(strand) / 2);
        let rounds = (1..=strands).map(rounds).min().unwrap_or(1);
        let all_begin = |pass: u16| (1..=strands).all(|strand| self.begins_a_cord(pass, strand));
        let beginnings: Vec<bool> = (1..=passes).map(all_begin).collect();
        let all = beginnings.iter().filter(|begins| **begins).count();
        let all = u32::try_from(all).unwrap_or(1).max(1);
        let (mut begun, mut start) = (0, 0);
        for (pass, begins) in (1..=passes).zip(beginnings) {
            if begins {
                start = u16::try_from((begun * rounds).div_ceil(all)).unwrap_or(0);
                begun += 1;
            }
            self.laying = self.laying.with_start(pass, start);
        }
        Ok(self)
    }

    /// What the tyer calls the cords: none, one for each strand, or one for each pass.
    pub fn cords(&self) -> &[String] {
        &self.cords
    }

    /// The rim towards which a follower lies of the cord that it follows, on rising and falling legs
    /// alike: the bottom one when it turns inside at the top.
    pub const fn lane(&self) -> Rim {
        if self.side.turns_inside(Rim::Top, self.hand) {
            Rim::Bottom
        } else {
            Rim::Top
        }
    }

    /// What the tyer calls the cord that lays a strand in a pass.
    pub fn cord(&self, pass: u16, strand: u16) -> Option<&str> {
        let strand = usize::from(strand).checked_sub(1)?;
        let passes = usize::from(self.laying.passes());
        let index = if self.cords.len() == usize::from(self.knot().strands()) {
            strand
        } else {
            strand * passes + usize::from(pass).checked_sub(1)?
        };
        self.cords.get(index).map(String::as_str)
    }

    /// Whether a strand is laid with another cord in this pass than in the one before.
    pub fn begins_a_cord(&self, pass: u16, strand: u16) -> bool {
        pass == 1 || self.cord(pass, strand) != self.cord(pass - 1, strand)
    }

    /// The bottom pin where a strand's pass begins and ends.
    pub fn start_pin(&self, pass: u16, strand: u16) -> Pin {
        let first = self.laying.leg(PassLeg {
            pass,
            strand,
            leg: 1,
        });
        first.map_or(Pin::bottom(strand), |leg| leg.from)
    }

    /// Every cord from end to end, strand by strand.
    pub fn runs(&self) -> Vec<CordRun> {
        let passes = self.laying.passes();
        let mut runs = Vec::new();
        for strand in 1..=self.knot().strands() {
            for pass in 1..=passes {
                if self.begins_a_cord(pass, strand) {
                    runs.push(CordRun {
                        strand,
                        first: pass,
                        last: pass,
                        pin: self.start_pin(pass, strand),
                        cord: self.cord(pass, strand).map(str::to_owned),
                    });
                } else if let Some(run) = runs.last_mut() {
                    run.last = pass;
                }
            }
        }
        runs
    }

    /// The cord that lays a leg, from end to end.
    pub fn run_of(&self, pass_leg: PassLeg) -> Option<CordRun> {
        let mut runs = self.runs().into_iter();
        runs.find(|run| {
            run.strand == pass_leg.strand && (run.first..=run.last).contains(&pass_leg.pass)
        })
    }

    /// The knot that is tied.
    pub const fn knot(&self) -> &Knot {
        self.laying.knot()
    }

    /// The knot with its passes and the order of laying them.
    pub const fn laying(&self) -> &Laying {
        &self.laying
    }
}
