//! The steps while the knot is on the tube: a pass begun, a leg laid, a look at the work.

use strum::IntoStaticStr;

use crate::bench::Millimetres;
use crate::guide::{FingerLeg, FingerPlace, Landmark};
use crate::knot::{Crossing, Hand, LayingOrder, Leg, PassLeg, Pin, Side};

/// The beginning of a strand's lead pass.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // Odd leads: the top pins stand half way between the bottom ones.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Begin(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert!(step.is_staggered);
/// assert_eq!((step.pin.number, step.strands), (1, 1));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct BeginStep {
    /// The strand that begins here, 1 … `strands`.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The bottom pin where its tail is left.
    pub pin: Pin,
    /// Which way round the tube the tyer works.
    pub hand: Hand,
    /// Whether the top pins stand half way between the bottom ones.
    pub is_staggered: bool,
    /// Of the first cord of an interwoven knot, and of the first that is nested in those before: whether
    /// all its passes are laid before the next cord begins, or one.
    pub laced: Option<LayingOrder>,
    /// Whether the weave leaves a fault at the rims, to be told once.
    pub is_uneven: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The tail to leave, when it is known.
    pub tail: Option<Millimetres>,
    /// Where the tail is held, where it is tied round the hand.
    pub finger: Option<FingerPlace>,
}

/// The beginning of a later pass.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // On the right of the first cord the follower turns inside its bights at the top.
/// let script = Script::new(Plan::read("5", "7", "2", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Follow(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert!(step.inside_at_top);
/// assert_eq!((step.pass, step.pin.number), (2, 1));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FollowStep {
    /// The pass that begins, from 2.
    pub pass: u16,
    /// The strand, 1 … `strands`.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The bottom pin it begins at.
    pub pin: Pin,
    /// The side of the cord already there to keep to.
    pub side: Side,
    /// Whether it turns inside the bight already there at the top; at the bottom it does the
    /// opposite.
    pub inside_at_top: bool,
    /// Whether another cord begins here.
    pub is_added: bool,
    /// Whether no other cord of the strand begins at this pin.
    pub is_apart: bool,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
    /// The tail to leave on an added cord, when it is known.
    pub tail: Option<Millimetres>,
}

/// What to do with the cord where a leg lands.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // In the lead pass there is no bight yet to turn inside or outside of.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Lay(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert_eq!(step.landing, marlinspeak::guide::Landing::Round);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Landing {
    /// The leg goes on in a part still to be told.
    OnTheWay,
    /// Round the pin, to leave it again.
    Round,
    /// Round the pin, inside the bight already there.
    Inside,
    /// Round the pin, outside the bight already there.
    Outside,
    /// At the pin where this pass began, and on into the next.
    HomeAndOn,
    /// At the pin where this pass began, to wait there until other strands are laid.
    HomeToWait,
    /// At the pin where the cord began: its end.
    HomeToEnd,
}

/// A leg, or one part of a long one.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // The first leg of 5 lead 7 bight crosses nothing.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Lay(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert_eq!((step.leg.to.number, step.crossings.len()), (3, 0));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct LayStep {
    /// Which leg of which pass.
    pub pass_leg: PassLeg,
    /// How many strands the knot has.
    pub strands: u16,
    /// Legs in this strand's pass.
    pub legs: u16,
    /// The whole leg, from pin to pin.
    pub leg: Leg,
    /// Whole turns of the tube on the whole leg.
    pub turns: u16,
    /// The side to keep to in a later pass; none in the lead pass.
    pub side: Option<Side>,
    /// Which way the tyer works.
    pub hand: Hand,
    /// This part, 1 … `parts`.
    pub part: u16,
    /// Parts the leg is told in.
    pub parts: u16,
    /// Where the hand is when this part begins; none in the first.
    pub landmark: Option<Landmark>,
    /// The crossings of this part in the order they are met.
    pub crossings: Vec<Crossing>,
    /// Which of them are the first over and the first under of the tie: a word that is new to who
    /// learns.
    pub new_crossings: Vec<usize>,
    /// Where bights are nested, the pins from which the two legs set out that lie beside this one
    /// already, on the left and on the right: it runs between them all the way. Nothing in a later
    /// pass, which keeps beside the cord it follows.
    pub splits: Option<[Pin; 2]>,
    /// Where it goes by the fingers, where it is tied round the hand.
    pub fingers: Option<FingerLeg>,
    /// What is drawn through at each tuck of this part, where the knot is tied on what it covers: there the
    /// cord does not come off a pin but goes through with all that is left of it.
    pub draw: Option<DrawThrough>,
    /// How the part ends.
    pub landing: Landing,
    /// What the tyer calls the cord.
    pub cord: Option<String>,
}

/// The cord that is drawn through at a tuck.
///
/// ```
/// use marlinspeak::bench::{Cord, Ground, Millimetres};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let rail = Setup::in_place(Ground::Round(mm(28.0)), Cord::new(mm(4.0)));
/// let plan = Plan::read("5", "7", "1", "")?.with_setup(Some(rail));
/// let script = Script::new(plan, AtOnce::WholeLeg);
/// let draws: Vec<_> = script
///     .steps()
///     .filter_map(|step| match step.what {
///         What::Lay(lay) => lay.draw,
///         _ => None,
///     })
///     .collect();
/// // Every time there is less, and who has the work in hand hears of it twice.
/// assert!(draws.windows(2).all(|pair| pair[0].length > pair[1].length));
/// assert_eq!(draws.iter().filter(|draw| draw.is_new).count(), 2);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawThrough {
    /// How much of the cord there is still to draw; none when that is not known.
    pub length: Option<Millimetres>,
    /// Whether it is one of the first tucks of the tie, or the first of a pass.
    pub is_new: bool,
}

/// What should be seen after a round or a pass of a strand.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // In the first rounds of 5 lead 7 bight nothing new is to be seen; the first look comes with
/// // four crossings on the tube.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Check(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert_eq!((step.at.number, step.crossings), (2, Some(4)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct CheckStep {
    /// The leg just laid.
    pub after: PassLeg,
    /// Rounds laid in this pass, of `rounds`.
    pub round: u16,
    /// Rounds in a pass of one strand.
    pub rounds: u16,
    /// Passes the tie is to have.
    pub passes: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// The pin where the cord stands now.
    pub at: Pin,
    /// Cords round each pin that this pass has reached.
    pub cords: u16,
    /// Crossings on the tube now, when all of them belong to this strand's lead pass.
    pub crossings: Option<u32>,
    /// Crossings along every leg of this strand, once the whole knot is laid.
    pub rows: u16,
    /// Whether there are as many along the legs of every strand.
    pub rows_alike: bool,
    /// The last leg, and what it crossed: so many cords over and so many under.
    pub last: LastLeg,
    /// Whether every strand has this many cords down by now.
    pub is_whole: bool,
}

/// What the leg laid last should look like.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script, What};
///
/// // The first leg that is looked at has met a cord.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let found = script.steps().find_map(|step| match step.what {
///     What::Check(step) => Some(step),
///     _ => None,
/// });
/// let step = found.unwrap();
/// assert!(!step.last.crossings.is_empty());
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastLeg {
    /// The leg that was laid last.
    pub leg: Leg,
    /// Its crossings in the order in which it meets them.
    pub crossings: Vec<Crossing>,
}

impl CheckStep {
    /// Whether the pass is complete with this leg.
    pub const fn ends_pass(&self) -> bool {
        self.round == self.rounds
    }
}
