//! The steps before the first leg: what goes into the bag, and how the tube is rigged.

use super::caution::Caution;
use crate::bench::{HexKey, KitItem, Millimetres, RigCaution, RingPins, Thread, Tool};
use crate::knot::{Hand, PinRow, Rim};

/// Things to put into the bag, as many as can be read in one look.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
///
/// // The tube comes first: without it nothing is to be rigged. The next things are on the same page.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let Some(What::Kit(step)) = script.steps().next().map(|step| step.what) else { panic!() };
/// assert_eq!((step.number, step.things.len()), (1, 3));
/// assert!(matches!(step.things[0], marlinspeak::bench::KitItem::Tube { .. }));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct KitStep {
    /// Which item is the first here, 1 … `items`.
    pub number: u16,
    /// How many there are.
    pub items: u16,
    /// What goes into the bag, and how much of it: one or more.
    pub things: Vec<KitItem>,
}

/// A step of rigging: one or more things to do that belong together.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
///
/// // The steps of rigging come in the order of the hands, each with the number of its first task.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let numbers = script.steps().filter_map(|step| match step.what {
///     What::Rig(step) => Some((step.number, step.things.len())),
///     _ => None,
/// });
/// assert!(numbers.eq([(1, 2), (3, 2), (5, 2)]));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct RigStep {
    /// Which task is the first here, 1 … `tasks`.
    pub number: u16,
    /// How many there are.
    pub tasks: u16,
    /// Which way the tyer works, and so pins and holes are numbered.
    pub hand: Hand,
    /// What is to be done: one or more.
    pub things: Vec<Task>,
}

/// What is to be done to the tube.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, Task, What};
///
/// // A pin that is set locks its ring: the top ring is spaced before it gets one.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let tasks: Vec<Task> = script
///     .steps()
///     .filter_map(|step| match step.what {
///         What::Rig(step) => Some(step.things),
///         _ => None,
///     })
///     .flatten()
///     .collect();
/// let spaced = tasks.iter().position(|task| matches!(task, Task::Space { .. }));
/// let pinned = tasks.iter().rposition(|task| matches!(task, Task::Pins { .. }));
/// assert!(spaced.is_some() && spaced < pinned);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum Task {
    /// Know this before going on.
    Heed(RigCaution),
    /// Find the row of holes in both rings.
    Row {
        /// Which row, 1 … `rows`, counted from the bottom.
        row: usize,
        /// Rows of each ring.
        rows: usize,
        /// Holes in that row.
        holes: u16,
    },
    /// Set the pins of a ring.
    Pins {
        /// The rim of the ring.
        rim: Rim,
        /// The hole for each pin, pin 1 first.
        holes: Vec<u16>,
        /// From a pin to the next: every so many holes.
        step: u16,
        /// Whether these pins stand half way between those of the other ring.
        staggered: bool,
        /// Length of the pins.
        length: Millimetres,
        /// Their thread, when known.
        thread: Option<Thread>,
        /// The key, when known.
        key: Option<HexKey>,
    },
    /// Set the top ring where it belongs, before it is pinned.
    Space {
        /// From the bottom row to the top row.
        spacing: Millimetres,
        /// Whether it is turned half a hole on.
        turn_half_hole: bool,
    },
    /// Set pins at the marks of a strip, round a tube without rings.
    Strip {
        /// The rim whose pins it marks.
        rim: Rim,
        /// Length of the strip.
        length: Millimetres,
        /// From a mark to the next.
        pitch: Millimetres,
        /// How many pins it marks.
        pins: u16,
        /// From the bottom marks to the top marks.
        spacing: Millimetres,
        /// How far on from bottom pin 1 top pin 1 stands; none when straight above.
        shift: Option<Millimetres>,
        /// The rim at the thick end, when what it goes round tapers.
        thick: Option<Rim>,
    },
    /// Lay the printed sheet on the board, and set T-pins at the marks of its circles.
    Board {
        /// Across the outer circle, from pin to pin.
        outer: Millimetres,
        /// Across the inner circle.
        inner: Millimetres,
        /// Pins of each circle.
        pins: u16,
        /// Circles at each rim: more than one where bights are nested.
        rows: u16,
        /// Whether the inner pins stand half way between the outer ones.
        staggered: bool,
    },
    /// Set a further row of pins at both rims, where bights are nested.
    Nest {
        /// Which row at each rim.
        row: PinRow,
        /// Pins of the row at each rim.
        pins: u16,
        /// The row of the bottom ring with the holes it stands in; none without rings.
        ring: Option<RingPins>,
        /// How far inside the outermost row it stands.
        inside: Millimetres,
    },
    /// Number the pins on tape that comes off again.
    Number {
        /// Pins in each row.
        pins: u16,
        /// Rows of pins at each rim: more than one where bights are nested.
        rows: u16,
        /// Tape for every row of both rims.
        tape: Millimetres,
    },
    /// Cut the cord to length.
    Cut {
        /// What the tyer calls it.
        cord: Option<String>,
        /// How many pieces to cut.
        pieces: u16,
        /// How long each piece is cut.
        length: Millimetres,
    },
}

impl KitStep {
    /// What can hurt here: small parts as soon as the bag is packed, and what is sharp in it.
    pub(in crate::guide) fn cautions(&self) -> Vec<Caution> {
        let is_sharp = |item: &KitItem| {
            matches!(
                item,
                KitItem::Picks { .. } | KitItem::Tool(Tool::Blade | Tool::Needle)
            )
        };
        let children = (self.number == 1).then_some(Caution::Children);
        let blades = self.things.iter().any(is_sharp).then_some(Caution::Blades);
        children.into_iter().chain(blades).collect()
    }

    /// Whether the first sharp thing of the bag was on a page before.
    pub(in crate::guide) fn is_later_blade(&self) -> bool {
        let is_pick = |item: &KitItem| matches!(item, KitItem::Picks { .. });
        !self.things.iter().any(is_pick)
    }
}

impl RigStep {
    /// What can hurt here.
    pub(in crate::guide) fn caution(&self) -> Option<Caution> {
        self.things.iter().find_map(|task| match task {
            Task::Pins { .. } | Task::Strip { .. } | Task::Nest { .. } | Task::Board { .. } => {
                Some(Caution::Pins)
            }
            Task::Cut { .. } => Some(Caution::Blades),
            _ => None,
        })
    }

    /// Whether it is about the pins of the top ring, which come second.
    pub(in crate::guide) fn is_top(&self) -> bool {
        self.things.iter().any(|task| {
            matches!(
                task,
                Task::Pins { rim: Rim::Top, .. }
                    | Task::Strip { rim: Rim::Top, .. }
                    | Task::Nest { .. }
            )
        })
    }
}
