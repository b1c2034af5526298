//! Before the first leg: what goes into the bag, and how the tube is rigged.

use super::{Caution, Place, Plan, Setup, What};
use crate::bench::{HexKey, KitItem, Layout, Millimetres, Rig, RigCaution, RingPins, Thread, bag};
use crate::knot::{Hand, Rim};

/// One thing to put into the bag.
#[derive(Clone, Debug, PartialEq)]
pub struct KitStep {
    /// Which item, 1 … `items`.
    pub number: u16,
    /// How many there are.
    pub items: u16,
    /// The thing.
    pub item: KitItem,
}

/// One step of rigging.
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
        /// Which ring.
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
        /// Which rim.
        rim: Rim,
        /// Length of the strip.
        length: Millimetres,
        /// From a mark to the next.
        pitch: Millimetres,
        /// Pins on it.
        pins: u16,
        /// From the bottom marks to the top marks.
        spacing: Millimetres,
        /// How far on from bottom pin 1 top pin 1 stands; none when straight above.
        shift: Option<Millimetres>,
    },
    /// Number the pins.
    Number {
        /// Pins on each ring.
        pins: u16,
        /// Tape for both rings.
        tape: Millimetres,
    },
    /// Cut the cord.
    Cut {
        /// What the tyer calls it.
        cord: Option<String>,
        /// Pieces.
        pieces: u16,
        /// Length of each.
        length: Millimetres,
    },
    /// Where the first strand begins.
    Start {
        /// Strands of the knot.
        strands: u16,
        /// The hole that bottom pin 1 stands in.
        hole: Option<u16>,
        /// Tail to leave.
        tail: Millimetres,
    },
}

impl KitStep {
    /// What can hurt.
    pub(super) const fn caution(&self) -> Option<Caution> {
        match self.item {
            KitItem::Picks { .. } => Some(Caution::Blades),
            _ => None,
        }
    }
}

impl RigStep {
    /// What can hurt.
    pub(super) const fn caution(&self) -> Option<Caution> {
        match self.task {
            Task::Pins { .. } | Task::Strip { .. } => Some(Caution::Pins),
            Task::Cut { .. } => Some(Caution::Blades),
            _ => None,
        }
    }

    /// Whether it is about the pins of the top ring, which come second.
    pub(super) const fn is_top(&self) -> bool {
        matches!(
            self.task,
            Task::Pins { rim: Rim::Top, .. } | Task::Strip { rim: Rim::Top, .. }
        )
    }
}

/// Everything there is to do before the first leg.
#[derive(Clone, Debug, PartialEq)]
pub struct Rigging {
    items: Vec<KitItem>,
    tasks: Vec<Task>,
    hand: Hand,
}

impl Rigging {
    /// The rigging of a plan; none when it names no tube and cord, or a tube that does not take
    /// the knot.
    pub fn of(plan: &Plan) -> Option<Self> {
        let setup = plan.setup()?;
        let rig = plan.rig().ok()??;
        let items = items(plan, setup, rig);
        Some(Self {
            tasks: tasks(setup, rig, &items),
            items,
            hand: plan.hand,
        })
    }

    /// All the cord there is to cut.
    pub fn to_cut(&self) -> f64 {
        let cords = self.tasks.iter().map(|task| match task {
            Task::Cut { pieces, length, .. } => f64::from(*pieces) * length.get(),
            _ => 0.0,
        });
        cords.sum()
    }

    /// The first place of all.
    pub const fn first(&self) -> Place {
        Place::Kit { item: 1 }
    }

    /// The last place before the first leg.
    pub fn last(&self) -> Place {
        Place::Rig {
            task: count(&self.tasks),
        }
    }

    /// The place itself, or the nearest there is; places of other phases stay as they are.
    pub fn settle(&self, place: Place) -> Place {
        match place {
            Place::Kit { item } => Place::Kit {
                item: item.clamp(1, count(&self.items)),
            },
            Place::Rig { task } => Place::Rig {
                task: task.clamp(1, count(&self.tasks)),
            },
            place => place,
        }
    }

    /// The next place; none after the last.
    pub fn next(&self, place: Place) -> Option<Place> {
        match place {
            Place::Kit { item } if item < count(&self.items) => Some(Place::Kit { item: item + 1 }),
            Place::Kit { .. } => Some(Place::Rig { task: 1 }),
            Place::Rig { task } if task < count(&self.tasks) => Some(Place::Rig { task: task + 1 }),
            _ => None,
        }
    }

    /// The place before; none before the first.
    pub fn back(&self, place: Place) -> Option<Place> {
        match place {
            Place::Kit { item } if item > 1 => Some(Place::Kit { item: item - 1 }),
            Place::Rig { task } if task > 1 => Some(Place::Rig { task: task - 1 }),
            Place::Rig { .. } => Some(Place::Kit {
                item: count(&self.items),
            }),
            _ => None,
        }
    }

    /// What the step at a place asks for; none at a place of another phase.
    pub fn what(&self, place: Place) -> Option<What> {
        let nth = |number: u16| usize::from(number).checked_sub(1);
        match place {
            Place::Kit { item: number } => Some(What::Kit(KitStep {
                number,
                items: count(&self.items),
                item: self.items.get(nth(number)?)?.clone(),
            })),
            Place::Rig { task: number } => Some(What::Rig(RigStep {
                number,
                tasks: count(&self.tasks),
                hand: self.hand,
                task: self.tasks.get(nth(number)?)?.clone(),
            })),
            _ => None,
        }
    }

    /// Items of the kit and steps of rigging.
    pub fn counts(&self) -> (u16, u16) {
        (count(&self.items), count(&self.tasks))
    }
}

fn count<T>(things: &[T]) -> u16 {
    u16::try_from(things.len()).unwrap_or(u16::MAX)
}

/// What goes into the bag: each cord by the name that the plan gives it, a piece of its own.
fn items(plan: &Plan, setup: &Setup, rig: &Rig) -> Vec<KitItem> {
    if plan.cords().is_empty() {
        return setup.kit(rig);
    }
    let runs = plan.runs();
    let cords = runs.iter().map(|run| {
        let cord = setup.cord.clone();
        let cord = match &run.cord {
            Some(name) => cord.named(name),
            None => cord,
        };
        KitItem::cord(cord, 1, rig.cord.piece(run.last - run.first + 1))
    });
    bag(rig, &setup.tube, cords)
}

/// In the order of the hands: a pin that is set locks its ring, so the top ring is put where it
/// belongs before it gets one.
fn tasks(setup: &Setup, rig: &Rig, items: &[KitItem]) -> Vec<Task> {
    let rows = setup.tube.rows().unwrap_or_default().len();
    let thread = setup.tube.thread;
    let mut tasks: Vec<Task> = rig.cautions.iter().copied().map(Task::Heed).collect();
    let spacing = rig.laid.ring_spacing;
    match &rig.layout {
        Layout::Rings {
            bottom,
            top,
            turn_half_hole,
        } => {
            let pins = |rim, ring: &RingPins| Task::Pins {
                rim,
                holes: ring.holes.clone(),
                step: ring.holes_in_row / rig.counts.bights(),
                staggered: rig.staggered,
                length: rig.pin_length,
                thread,
                key: rig.hex_key,
            };
            tasks.extend([
                Task::Row {
                    row: bottom.row,
                    rows,
                    holes: bottom.holes_in_row,
                },
                pins(Rim::Bottom, bottom),
                Task::Space {
                    spacing,
                    turn_half_hole: *turn_half_hole,
                },
                pins(Rim::Top, top),
            ]);
        }
        Layout::Strip(strip) => {
            let shift = match (strip.bottom.first(), strip.top.first()) {
                (Some(bottom), Some(top)) if top > bottom => Some(*top),
                _ => None,
            };
            tasks.extend([Rim::Bottom, Rim::Top].map(|rim| Task::Strip {
                rim,
                length: strip.length,
                pitch: strip.pitch,
                pins: rig.counts.bights(),
                spacing,
                shift,
            }));
        }
    }
    tasks.push(Task::Number {
        pins: rig.counts.bights(),
        tape: rig.tape,
    });
    tasks.extend(items.iter().filter_map(|item| match item {
        KitItem::Cord {
            cord,
            pieces,
            length,
            ..
        } => Some(Task::Cut {
            cord: cord.name.clone(),
            pieces: *pieces,
            length: *length,
        }),
        _ => None,
    }));
    tasks.push(Task::Start {
        strands: rig.counts.strands(),
        hole: rig.starts.first().and_then(|start| start.hole),
        tail: rig.tail,
    });
    tasks
}
