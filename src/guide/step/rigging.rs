//! The steps before the first leg: what goes into the bag, and how the tube is rigged.

use super::caution::Caution;
use crate::bench::{HexKey, KitItem, Millimetres, RigCaution, Thread};
use crate::knot::{Hand, Rim};

/// One thing to put into the bag.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
///
/// // The tube comes first: without it nothing is to be rigged.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let Some(What::Kit(step)) = script.steps().next().map(|step| step.what) else { panic!() };
/// assert_eq!(step.number, 1);
/// assert!(matches!(step.item, marlinspeak::bench::KitItem::Tube { .. }));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct KitStep {
    /// Which item, 1 … `items`.
    pub number: u16,
    /// How many there are.
    pub items: u16,
    /// What goes into the bag, and how much of it.
    pub item: KitItem,
}

/// One step of rigging.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{AtOnce, Plan, Script, Setup, What};
///
/// // The steps of rigging come in the order of the hands, each with its number.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let script = Script::new(plan, AtOnce::default());
/// let numbers = script.steps().filter_map(|step| match step.what {
///     What::Rig(step) => Some(step.number),
///     _ => None,
/// });
/// assert!(numbers.eq(1..=script.rigging().unwrap().counts().1));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct RigStep {
    /// Which step, 1 … `tasks`.
    pub number: u16,
    /// How many there are.
    pub tasks: u16,
    /// Which way the tyer works, and so pins and holes are numbered.
    pub hand: Hand,
    /// What is to be done.
    pub task: Task,
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
///         What::Rig(step) => Some(step.task),
///         _ => None,
///     })
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
    },
    /// Number the pins on tape that comes off again.
    Number {
        /// Pins on each ring.
        pins: u16,
        /// Tape for both rings.
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
    /// Where the first strand begins.
    Start {
        /// Strands of the knot.
        strands: u16,
        /// The hole that bottom pin 1 stands in.
        hole: Option<u16>,
        /// How much tail to leave there.
        tail: Millimetres,
    },
}

impl KitStep {
    /// What can hurt here.
    pub(in crate::guide) const fn caution(&self) -> Option<Caution> {
        match self.item {
            KitItem::Picks { .. } => Some(Caution::Blades),
            _ => None,
        }
    }
}

impl RigStep {
    /// What can hurt here.
    pub(in crate::guide) const fn caution(&self) -> Option<Caution> {
        match self.task {
            Task::Pins { .. } | Task::Strip { .. } => Some(Caution::Pins),
            Task::Cut { .. } => Some(Caution::Blades),
            _ => None,
        }
    }

    /// Whether it is about the pins of the top ring, which come second.
    pub(in crate::guide) const fn is_top(&self) -> bool {
        matches!(
            self.task,
            Task::Pins { rim: Rim::Top, .. } | Task::Strip { rim: Rim::Top, .. }
        )
    }
}
