//! What to put in the bag for a tie.

use strum::IntoStaticStr;

use crate::knot::Nest;

use super::{BenchError, Cord, CordPiece, HexKey, Layout, Millimetres, Rig, Thread, Tube};

/// Of a board, what stays free round a mat. *Common practice, no source.*
const BOARD_RIM: f64 = 40.0;

/// A cord and the passes it makes.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{
///     BenchError, Cord, Counts, Millimetres, PassCord, RigJob, Tube, kit, rig,
/// };
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let rigged = rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0))).unwrap();
/// // A blue cord for one pass leaves the other of two without a cord.
/// let blue = PassCord { cord: Cord::new(mm(4.0)).named("blue"), passes: 1 };
/// let error = kit(&rigged, &tube, &[blue]).unwrap_err();
/// assert_eq!(error, BenchError::PassesShared { shared: 1, passes: 2 });
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct PassCord {
    /// What the cord is, and how thick.
    pub cord: Cord,
    /// How many passes it makes.
    pub passes: u16,
}

/// One thing in the bag.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, KitItem, Millimetres, RigJob, Thread, Tube, bag, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let mut tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// tube.thread = Some(Thread::parse("M4").unwrap());
/// let rigged = rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0))).unwrap();
/// let items = bag(&rigged, &tube, []);
/// // Seven pins a rim, long enough for two passes of 4 mm, and the key that turns them.
/// assert!(items.contains(&KitItem::Pins { count: 14, length: mm(12.0), thread: tube.thread }));
/// assert!(items.iter().any(|item| matches!(item, KitItem::HexKey(key) if key.size == "2")));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum KitItem {
    /// The tube that the knot is tied on.
    Tube {
        /// Its diameter.
        diameter: Millimetres,
    },
    /// Pins for both rings.
    Pins {
        /// How many.
        count: u32,
        /// How long.
        length: Millimetres,
        /// Their thread, when they are set screws of a known one.
        thread: Option<Thread>,
    },
    /// The key for the pins.
    HexKey(HexKey),
    /// Cord, cut to length.
    Cord {
        /// Name, diameter, weight.
        cord: Cord,
        /// How many pieces: one for each strand.
        pieces: u16,
        /// Length of each.
        length: Millimetres,
        /// Weight of all, when known.
        grams: Option<f64>,
    },
    /// Masking tape to number the pins on, or to hold the strip.
    Tape {
        /// How much of it.
        length: Millimetres,
        /// Scraps of it among that, one over each bight where a mark stands for a pin; none where pins
        /// hold the bights.
        scraps: u32,
    },
    /// The printed strip for a tube without rings.
    Strip {
        /// How long.
        length: Millimetres,
    },
    /// A board of cork or soft wood that T-pins go into.
    Board {
        /// How wide at the least, so that the mat on it lies on it whole.
        across: Millimetres,
    },
    /// The printed sheet with the marks of a board's pins, at true size.
    Sheet {
        /// How many pages of A4 it goes on over.
        pages: u16,
    },
    /// Picks to open a crossing and to tuck the end.
    Picks {
        /// How many.
        count: u16,
    },
    /// What is used on the way and left on the bench.
    Tool(Tool),
}

/// What a tie needs beside cord, tube and pins. *Common practice, no source.*
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Counts, KitItem, Millimetres, RigJob, Tool, Tube, bag, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let rigged = rig(&RigJob::new(Counts::new(3, 5, 1).unwrap(), &tube, mm(4.0))).unwrap();
/// let items = bag(&rigged, &tube, []);
/// let packed = |tool| items.contains(&KitItem::Tool(tool));
/// assert!(packed(Tool::Blade) && packed(Tool::Sealing), "the ends are cut, and kept from fraying");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Tool {
    /// Numbers the pins.
    Marker,
    /// Measures cord, rings and strip.
    Ruler,
    /// A sharp knife, or scissors.
    Blade,
    /// Keeps the pins together that come out.
    Dish,
    /// Fixes the crossings of a mat from below: needle and thread, or glue.
    Needle,
    /// Keeps the ends from fraying: heat for what melts, glue for what does not.
    Sealing,
}

impl KitItem {
    /// So many pieces of a cord, each of this length.
    pub fn cord(cord: Cord, pieces: u16, length: Millimetres) -> Self {
        let grams = cord.grams(length).map(|grams| grams * f64::from(pieces));
        Self::Cord {
            cord,
            pieces,
            length,
            grams,
        }
    }
}

/// The bag for this rig, with these cords in the order in which they are laid.
///
/// # Errors
/// [`BenchError::PassesShared`] when the cords do not make the passes of the knot.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Cord, Counts, KitItem, Millimetres, PassCord, RigJob, Tube, kit, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let tube = Tube::ringed(mm(45.0), &[14, 20]).unwrap();
/// let rigged = rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &tube, mm(4.0))).unwrap();
/// let cords = ["blue", "white"].map(|name| PassCord {
///     cord: Cord::new(mm(4.0)).named(name),
///     passes: 1,
/// });
/// let items = kit(&rigged, &tube, &cords).unwrap();
/// let is_cord = |item: &&KitItem| matches!(item, KitItem::Cord { pieces: 1, .. });
/// assert_eq!(items.iter().filter(is_cord).count(), 2);
/// ```
pub fn kit(rig: &Rig, tube: &Tube, cords: &[PassCord]) -> Result<Vec<KitItem>, BenchError> {
    Ok(bag(rig, tube, cord_items(rig, cords)?))
}

/// The bag for this rig with these items of cord.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Cord, Counts, KitItem, Millimetres, RigJob, Tube, bag, rig};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // A bottle has no rings: its pins stand where a printed strip has its marks.
/// let bottle = Tube::plain(mm(70.0));
/// let rigged = rig(&RigJob::new(Counts::new(5, 7, 2).unwrap(), &bottle, mm(4.0))).unwrap();
/// let cord = KitItem::cord(Cord::new(mm(4.0)), 1, rigged.cord.per_strand());
/// let items = bag(&rigged, &bottle, [cord.clone()]);
/// assert!(items.contains(&cord));
/// assert!(items.contains(&KitItem::Strip { length: bottle.circumference() }));
/// // A rail that a knot is tied on wants neither tube nor pins.
/// let rail = RigJob { in_place: true, ..RigJob::new(rigged.counts, &bottle, mm(4.0)) };
/// let items = bag(&rig(&rail).unwrap(), &bottle, []);
/// assert!(!items.iter().any(|item| matches!(item, KitItem::Tube { .. } | KitItem::Pins { .. })));
/// ```
pub fn bag(rig: &Rig, tube: &Tube, cords: impl IntoIterator<Item = KitItem>) -> Vec<KitItem> {
    let board = match &rig.layout {
        Layout::Board(board) => Some(KitItem::Board {
            // To the next five millimetres: nobody buys a board more closely.
            across: Millimetres::computed(
                ((board.across().get() + 2.0 * BOARD_RIM) / 5.0).ceil() * 5.0,
            ),
        }),
        _ => None,
    };
    // In place there are marks where there would be pins.
    let has_pins = board.is_some() || !rig.in_place;
    let marks = rig.counts.lattice().legs();
    let mut items = Vec::new();
    items.extend(board);
    if !rig.in_place {
        items.push(KitItem::Tube {
            diameter: tube.diameter,
        });
    }
    if has_pins {
        items.push(KitItem::Pins {
            count: marks,
            length: rig.pin_length,
            thread: tube.thread.filter(|_| !rig.in_place),
        });
    }
    items.extend(rig.hex_key.map(KitItem::HexKey));
    items.extend(cords);
    items.push(KitItem::Tape {
        length: rig.tape,
        scraps: if has_pins { 0 } else { marks },
    });
    let strip = |length: Millimetres| KitItem::Strip { length };
    match &rig.layout {
        Layout::Strip(marks) => items.push(strip(marks.length)),
        Layout::Tapes(tapes) => {
            items.extend(tapes.rows().flatten().map(|tape| strip(tape.length)));
        }
        Layout::Board(board) => items.push(KitItem::Sheet {
            pages: board.sheet_pages(),
        }),
        Layout::Rings { .. } => {}
    }
    // The sheet of a board has its numbers printed.
    let is_board = matches!(rig.layout, Layout::Board(_));
    items.extend((!is_board).then_some(KitItem::Tool(Tool::Marker)));
    items.push(KitItem::Tool(Tool::Ruler));
    items.push(KitItem::Picks { count: 1 });
    items.push(KitItem::Tool(Tool::Blade));
    items.extend(has_pins.then_some(KitItem::Tool(Tool::Dish)));
    items.extend(is_board.then_some(KitItem::Tool(Tool::Needle)));
    items.push(KitItem::Tool(Tool::Sealing));
    items
}

fn cord_items(rig: &Rig, cords: &[PassCord]) -> Result<Vec<KitItem>, BenchError> {
    let passes: Vec<u16> = cords.iter().map(|cord| cord.passes).collect();
    let pieces = rig.cord.pieces(&passes)?;
    // The strands of one nest are alike, so the first stands for all.
    let of_nest = |nest: Nest| {
        let first = pieces
            .iter()
            .filter(move |piece| piece.strand == nest.before + 1);
        let item = move |(given, piece): (&PassCord, &CordPiece)| {
            KitItem::cord(given.cord.clone(), nest.strands, piece.length)
        };
        cords.iter().zip(first).map(item).collect::<Vec<_>>()
    };
    Ok(rig.counts.lattice().nests().flat_map(of_nest).collect())
}
