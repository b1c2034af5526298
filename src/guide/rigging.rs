//! Before the first leg: what goes into the bag, and how the tube is rigged.

use super::{KitStep, Place, Plan, RigStep, Setup, Task, What};
use crate::bench::{KitItem, Layout, Rig, RingPins, bag};
use crate::knot::{Hand, Rim};

/// Everything there is to do before the first leg.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres, Tube};
/// use marlinspeak::guide::{Plan, Rigging, Setup};
///
/// // Of a doubled 5 lead 7 bight in one cord, there is one piece to cut: 28 legs and the tails.
/// let tube = Tube::ringed(Millimetres::parse("60")?, &[12, 14])?;
/// let setup = Setup::new(tube, Cord::new(Millimetres::parse("4")?));
/// let plan = Plan::read("5", "7", "2", "1")?.with_setup(Some(setup));
/// let rigging = Rigging::of(&plan).unwrap();
/// let rig = plan.rig().ok().flatten().unwrap();
/// assert!(rigging.to_cut() > 28.0 * rig.laid.cord_in_leg.get());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
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

    /// All the cord there is to cut, in millimetres.
    pub fn to_cut(&self) -> f64 {
        let cords = self.tasks.iter().map(|task| match task {
            Task::Cut { pieces, length, .. } => f64::from(*pieces) * length.get(),
            _ => 0.0,
        });
        cords.sum()
    }

    /// The first place of all.
    pub(super) const FIRST: Place = Place::Kit { item: 1 };

    /// The last place before the first leg.
    pub(super) fn last(&self) -> Place {
        Place::Rig {
            task: count(&self.tasks),
        }
    }

    /// The place itself, or the nearest there is; places of other phases stay as they are.
    pub(super) fn settle(&self, place: Place) -> Place {
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
    pub(super) fn next(&self, place: Place) -> Option<Place> {
        match place {
            Place::Kit { item } if item < count(&self.items) => Some(Place::Kit { item: item + 1 }),
            Place::Kit { .. } => Some(Place::Rig { task: 1 }),
            Place::Rig { task } if task < count(&self.tasks) => Some(Place::Rig { task: task + 1 }),
            _ => None,
        }
    }

    /// The place before; none before the first.
    pub(super) fn back(&self, place: Place) -> Option<Place> {
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
    pub(super) fn what(&self, place: Place) -> Option<What> {
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

    /// How many items of the kit there are, and how many steps of rigging.
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
