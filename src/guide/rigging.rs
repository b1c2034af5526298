//! Before the first leg: what goes into the bag, and how the tube is rigged.

use super::{AtOnce, KitStep, Place, Plan, RigStep, Setup, Task, What};
use crate::bench::{KitItem, Layout, Millimetres, Rig, RimTape, RingPins, bag};
use crate::knot::{Hand, PinRow, Rim};

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
    /// The first item of every page of the bag, counted from 1.
    item_pages: Vec<u16>,
    /// The first task of every page of the rigging.
    task_pages: Vec<u16>,
    hand: Hand,
    /// Millimetres that joins take besides.
    for_joins: f64,
}

/// So many things can be read in one look. *Common practice, no source.*
const AT_A_LOOK: u16 = 4;

impl Rigging {
    /// The rigging of a plan; none when it names no tube and cord, or a tube that does not take
    /// the knot.
    pub fn of(plan: &Plan) -> Option<Self> {
        let setup = plan.setup()?;
        let rig = plan.rig().ok()??;
        let items = items(plan, setup, rig);
        let (items, tasks) = if plan.tube_stands {
            (Vec::new(), cuts(&items))
        } else {
            let tasks = tasks(setup, rig, &items);
            (items, tasks)
        };
        Some(Self {
            item_pages: even_pages(count(&items)),
            task_pages: pages_of(&tasks),
            tasks,
            items,
            hand: plan.hand,
            for_joins: plan.cut_for_joins(),
        })
    }

    /// The same with everything on a page of its own, or as many things on one as belong together.
    pub(super) fn one_by_one(mut self, is_one_by_one: bool) -> Self {
        if is_one_by_one {
            self.item_pages = (1..=count(&self.items)).collect();
            self.task_pages = (1..=count(&self.tasks)).collect();
        } else {
            self.item_pages = even_pages(count(&self.items));
            self.task_pages = pages_of(&self.tasks);
        }
        self
    }

    /// What goes into the bag.
    pub fn items(&self) -> &[KitItem] {
        &self.items
    }

    /// What is done to the tube, in the order of the hands.
    pub(crate) fn tasks(&self) -> &[Task] {
        &self.tasks
    }

    /// All the cord there is to cut, in millimetres, what joins take besides among it.
    pub fn to_cut(&self) -> f64 {
        let cords = self.tasks.iter().map(|task| match task {
            Task::Cut { pieces, length, .. } => f64::from(*pieces) * length.get(),
            _ => 0.0,
        });
        cords.sum::<f64>() + self.for_joins
    }

    /// The first place of all.
    pub(super) const fn first(&self) -> Place {
        if self.items.is_empty() {
            Place::Rig { task: 1 }
        } else {
            Place::Kit { item: 1 }
        }
    }

    /// The last place before the first leg.
    pub(super) fn last(&self) -> Place {
        Place::Rig {
            task: last(&self.task_pages),
        }
    }

    /// The place itself, or the nearest there is; places of other phases stay as they are.
    pub(super) fn settle(&self, place: Place) -> Place {
        match place {
            Place::Kit { .. } if self.items.is_empty() => self.first(),
            Place::Kit { item } => Place::Kit {
                item: page_with(&self.item_pages, item),
            },
            Place::Rig { task } => Place::Rig {
                task: page_with(&self.task_pages, task),
            },
            place => place,
        }
    }

    /// The next place; none after the last.
    pub(super) fn next(&self, place: Place) -> Option<Place> {
        match place {
            Place::Kit { item } => Some(match after(&self.item_pages, item) {
                Some(item) => Place::Kit { item },
                None => Place::Rig { task: 1 },
            }),
            Place::Rig { task } => after(&self.task_pages, task).map(|task| Place::Rig { task }),
            _ => None,
        }
    }

    /// The place before; none before the first.
    pub(super) fn back(&self, place: Place) -> Option<Place> {
        match place {
            Place::Kit { item } => before(&self.item_pages, item).map(|item| Place::Kit { item }),
            Place::Rig { task } => match before(&self.task_pages, task) {
                Some(task) => Some(Place::Rig { task }),
                None if self.items.is_empty() => None,
                None => Some(Place::Kit {
                    item: last(&self.item_pages),
                }),
            },
            _ => None,
        }
    }

    /// What the step at a place asks for; none at a place of another phase.
    pub(super) fn what(&self, place: Place) -> Option<What> {
        match place {
            Place::Kit { item: number } => Some(What::Kit(KitStep {
                number,
                items: count(&self.items),
                things: on_page(&self.items, &self.item_pages, number)?.to_vec(),
            })),
            Place::Rig { task: number } => Some(What::Rig(RigStep {
                number,
                tasks: count(&self.tasks),
                hand: self.hand,
                things: on_page(&self.tasks, &self.task_pages, number)?.to_vec(),
            })),
            _ => None,
        }
    }

    /// How many items of the kit there are, and how many tasks of rigging.
    pub fn counts(&self) -> (u16, u16) {
        (count(&self.items), count(&self.tasks))
    }
}

/// The first of so many things on every page, the pages as alike in size as can be.
fn even_pages(things: u16) -> Vec<u16> {
    let told = AtOnce::UpTo(AT_A_LOOK);
    let pages = 0..told.parts(things);
    pages.map(|page| told.begins(page, things) + 1).collect()
}

/// The first task of every page: what belongs to the task before stands on the page with it.
fn pages_of(tasks: &[Task]) -> Vec<u16> {
    let mut pages: Vec<u16> = Vec::new();
    for (number, task) in (1..).zip(tasks) {
        let before = usize::from(number)
            .checked_sub(2)
            .and_then(|before| tasks.get(before));
        let is_full = pages.last().is_none_or(|first| number - first >= AT_A_LOOK);
        let belongs = before.is_some_and(|before| belongs_to(before, task));
        if is_full || !belongs {
            pages.push(number);
        }
    }
    pages
}

/// Whether a task is done in one go with the one before.
const fn belongs_to(before: &Task, task: &Task) -> bool {
    matches!(
        (before, task),
        (Task::Row { .. } | Task::Space { .. }, Task::Pins { .. })
            | (Task::Number { .. } | Task::Cut { .. }, Task::Cut { .. })
    )
}

/// The first thing of the page that a thing is on, or of the nearest page there is.
fn page_with(pages: &[u16], number: u16) -> u16 {
    let upto = pages.iter().take_while(|first| **first <= number);
    upto.last().or(pages.first()).copied().unwrap_or(1)
}

fn last(pages: &[u16]) -> u16 {
    pages.last().copied().unwrap_or(1)
}

/// The first thing of the page after that of this thing.
fn after(pages: &[u16], number: u16) -> Option<u16> {
    pages.iter().copied().find(|first| *first > number)
}

/// The first thing of the page before that of this thing.
fn before(pages: &[u16], number: u16) -> Option<u16> {
    let here = page_with(pages, number);
    pages
        .iter()
        .copied()
        .take_while(|first| *first < here)
        .last()
}

/// The things on the page that begins with this one.
fn on_page<'t, T>(things: &'t [T], pages: &[u16], number: u16) -> Option<&'t [T]> {
    let end = after(pages, number).map_or(things.len(), |next| usize::from(next) - 1);
    things.get(usize::from(number).checked_sub(1)?..end)
}

fn count<T>(things: &[T]) -> u16 {
    u16::try_from(things.len()).unwrap_or(u16::MAX)
}

/// What goes into the bag: each cord by the name that the plan gives it, a piece of its own.
fn items(plan: &Plan, setup: &Setup, rig: &Rig) -> Vec<KitItem> {
    let mut items = all_items(plan, setup, rig);
    if setup.in_place {
        // The marks are drawn on the tape itself.
        items.retain(|item| !matches!(item, KitItem::Strip { .. }));
    }
    items
}

/// The same with the strips of paper that are printed for it.
fn all_items(plan: &Plan, setup: &Setup, rig: &Rig) -> Vec<KitItem> {
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
        let nest = plan.knot().nest_of(run.strand);
        KitItem::cord(cord, 1, rig.cord.piece(nest, run.last - run.first + 1))
    });
    bag(rig, &setup.tube, cords)
}

/// The further rows of pins where bights are nested, with the row of the rings that each stands in;
/// none without rings.
fn nests<'a>(
    rig: &'a Rig,
    rows: impl Iterator<Item = Option<&'a RingPins>> + 'a,
) -> impl Iterator<Item = Task> + 'a {
    let apart = rig.laid.rows_apart.map_or(0.0, Millimetres::get);
    (2_u8..).zip(rows).filter_map(move |(row, ring)| {
        Some(Task::Nest {
            row: PinRow {
                number: row,
                of: u8::try_from(rig.counts.nested()).ok()?,
            },
            pins: rig.counts.bights(),
            ring: ring.cloned(),
            inside: Millimetres::new(apart * f64::from(row - 1)).ok()?,
        })
    })
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
            inner,
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
            let rows = inner.iter().map(|[bottom, _]| Some(bottom));
            tasks.extend(nests(rig, rows));
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
                thick: None,
            }));
            tasks.extend(nests(rig, (1..strip.nested).map(|_| None)));
        }
        Layout::Tapes(tapes) => {
            let tape = |(rim, tape): (Rim, &RimTape)| Task::Strip {
                rim,
                length: tape.length,
                pitch: tape.pitch,
                pins: rig.counts.bights(),
                spacing,
                shift: (rim == Rim::Top && rig.staggered)
                    .then(|| tape.marks.first().copied())
                    .flatten(),
                thick: setup.ground().thick_rim(),
            };
            let tapes = [(Rim::Bottom, &tapes.bottom), (Rim::Top, &tapes.top)];
            tasks.extend(tapes.map(tape));
            tasks.extend(nests(rig, (1..rig.counts.nested()).map(|_| None)));
        }
        Layout::Board(board) => tasks.push(Task::Board {
            outer: board.outer.across(),
            inner: board.inner.across(),
            pins: rig.counts.bights(),
            rows: rig.counts.nested(),
            staggered: rig.staggered,
        }),
    }
    // The printed sheet of a board has the numbers.
    if !matches!(rig.layout, Layout::Board(_)) {
        tasks.push(Task::Number {
            pins: rig.counts.bights(),
            rows: rig.counts.nested(),
            tape: rig.tape,
        });
    }
    tasks.extend(cuts(items));
    tasks
}

/// The pieces of cord to cut.
fn cuts(items: &[KitItem]) -> Vec<Task> {
    let cuts = items.iter().filter_map(|item| match item {
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
    });
    cuts.collect()
}
