//! Kit and rig steps in the JSON document of `marlinspeak steps`.

use serde::Serialize;

use super::print::rounded;
use crate::bench::{KitItem, Millimetres, RigCaution, Thread};
use crate::guide::Task;

/// A thing for the bag.
#[derive(Serialize)]
#[serde(tag = "what", rename_all = "lowercase")]
pub(super) enum ItemForm {
    Tube {
        diameter_mm: f64,
    },
    Pins {
        count: u32,
        length_mm: f64,
        thread: Option<&'static str>,
    },
    Key {
        hex_key: &'static str,
    },
    Cord {
        name: Option<String>,
        diameter_mm: f64,
        pieces: u16,
        length_mm: f64,
        grams: Option<f64>,
    },
    Tape {
        length_mm: f64,
        #[serde(skip_serializing_if = "is_none")]
        scraps: u32,
    },
    Sheet {
        pages: u16,
    },
    Strip {
        length_mm: f64,
    },
    Board {
        across_mm: f64,
    },
    Picks {
        count: u16,
    },
    Tool {
        tool: &'static str,
    },
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "serde asks for a reference"
)]
const fn is_none(scraps: &u32) -> bool {
    *scraps == 0
}

/// Something to do to the tube.
#[derive(Serialize)]
#[serde(tag = "what", rename_all = "lowercase")]
pub(super) enum TaskForm {
    Heed {
        caution: &'static str,
    },
    Row {
        row: usize,
        holes: u16,
    },
    Pins {
        rim: &'static str,
        holes: Vec<u16>,
        staggered: bool,
        length_mm: f64,
        thread: Option<&'static str>,
        hex_key: Option<&'static str>,
    },
    Space {
        spacing_mm: f64,
        turn_half_hole: bool,
    },
    Strip {
        rim: &'static str,
        length_mm: f64,
        pitch_mm: f64,
        pins: u16,
        spacing_mm: f64,
        shift_mm: f64,
    },
    Board {
        outer_mm: f64,
        inner_mm: f64,
        pins: u16,
        staggered: bool,
    },
    Nest {
        row: u8,
        pins: u16,
        ring_row: Option<usize>,
        inside_mm: f64,
    },
    Number {
        pins: u16,
        tape_mm: f64,
    },
    Cut {
        name: Option<String>,
        pieces: u16,
        length_mm: f64,
    },
}

impl ItemForm {
    pub fn of(item: &KitItem) -> Self {
        match item {
            KitItem::Tube { diameter } => Self::Tube {
                diameter_mm: mm(*diameter),
            },
            KitItem::Pins {
                count,
                length,
                thread,
            } => Self::Pins {
                count: *count,
                length_mm: mm(*length),
                thread: thread.map(Thread::name),
            },
            KitItem::HexKey(key) => Self::Key { hex_key: key.size },
            KitItem::Cord {
                cord,
                pieces,
                length,
                grams,
            } => Self::Cord {
                name: cord.name.clone(),
                diameter_mm: mm(cord.diameter),
                pieces: *pieces,
                length_mm: mm(*length),
                grams: grams.map(|grams| rounded(grams, 1)),
            },
            KitItem::Tape { length, scraps } => Self::Tape {
                length_mm: mm(*length),
                scraps: *scraps,
            },
            KitItem::Sheet { pages } => Self::Sheet { pages: *pages },
            KitItem::Strip { length } => Self::Strip {
                length_mm: mm(*length),
            },
            KitItem::Board { across } => Self::Board {
                across_mm: mm(*across),
            },
            KitItem::Picks { count } => Self::Picks { count: *count },
            KitItem::Tool(tool) => Self::Tool { tool: tool.into() },
        }
    }
}

impl TaskForm {
    pub fn of(task: &Task) -> Self {
        match task {
            Task::Heed(caution) => Self::Heed {
                caution: match caution {
                    RigCaution::PinsTooShort { .. } => "pins-too-short",
                    RigCaution::ObjectThickerThanTube { .. } => "object-thicker-than-tube",
                    RigCaution::PinsClose { .. } => "pins-close",
                    RigCaution::TubeTooThick { .. } => "tube-too-thick",
                    RigCaution::RingsTooWide { .. } => "rings-too-wide",
                },
            },
            Task::Row { row, holes, .. } => Self::Row {
                row: *row,
                holes: *holes,
            },
            Task::Pins {
                rim,
                holes,
                staggered,
                length,
                thread,
                key,
                ..
            } => Self::Pins {
                rim: rim.into(),
                holes: holes.clone(),
                staggered: *staggered,
                length_mm: mm(*length),
                thread: thread.map(Thread::name),
                hex_key: key.map(|key| key.size),
            },
            Task::Space {
                spacing,
                turn_half_hole,
            } => Self::Space {
                spacing_mm: mm(*spacing),
                turn_half_hole: *turn_half_hole,
            },
            Task::Strip {
                rim,
                length,
                pitch,
                pins,
                spacing,
                shift,
                ..
            } => Self::Strip {
                rim: rim.into(),
                length_mm: mm(*length),
                pitch_mm: mm(*pitch),
                pins: *pins,
                spacing_mm: mm(*spacing),
                shift_mm: shift.map_or(0.0, mm),
            },
            Task::Board {
                outer,
                inner,
                pins,
                staggered,
                ..
            } => Self::Board {
                outer_mm: mm(*outer),
                inner_mm: mm(*inner),
                pins: *pins,
                staggered: *staggered,
            },
            Task::Nest {
                row,
                pins,
                ring,
                inside,
            } => Self::Nest {
                row: row.number,
                pins: *pins,
                ring_row: ring.as_ref().map(|ring| ring.row),
                inside_mm: mm(*inside),
            },
            Task::Number { pins, tape, .. } => Self::Number {
                pins: *pins,
                tape_mm: mm(*tape),
            },
            Task::Cut {
                cord,
                pieces,
                length,
            } => Self::Cut {
                name: cord.clone(),
                pieces: *pieces,
                length_mm: mm(*length),
            },
        }
    }
}

fn mm(length: Millimetres) -> f64 {
    rounded(length.get(), 3)
}
