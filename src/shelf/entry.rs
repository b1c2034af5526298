//! What was really used for a finished tie, and what that teaches.

use jiff::Timestamp;

use super::{Tie, TieId, WorkTime};
use crate::bench::bight_turn;
use crate::bench::{Allowances, Braid, Consumption, Cord, Correction, Counts, Millimetres, Shape};
use crate::files::Fields;

/// The most minutes that an entry may tell of.
pub const MOST_MINUTES: f64 = WorkTime::MOST / 60.0;

/// One finished tie in the log. Whatever the tyer did not measure is `None`.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The tie on the shelf.
    pub tie: TieId,
    /// Its name when it was logged; may be empty.
    pub name: String,
    /// Leads, bights and passes.
    pub counts: Counts,
    /// When it was logged.
    pub logged: Timestamp,
    /// The cord.
    pub cord: Option<Cord>,
    /// Cord cut for all strands together.
    pub cut: Option<Millimetres>,
    /// What was left over when the ends were trimmed, in millimetres; 0 … 100 000.
    pub left_over: Option<f64>,
    /// Diameter of what the knot sits on.
    pub around: Option<Millimetres>,
    /// Finished width, edge to edge.
    pub width: Option<Millimetres>,
    /// Whether it was left open and not drawn up as tight as it goes.
    pub left_open: bool,
    /// Minutes of work, 0 … [`MOST_MINUTES`].
    pub minutes: Option<f64>,
    /// The time measured while tying.
    pub work_time: WorkTime,
    /// What the tyer wrote; may be empty.
    pub note: String,
    /// Where a photograph of it is; may be empty. Only the path is kept.
    pub photograph: String,
    /// Fields of the document, and of its sections, that this version does not know. They are
    /// kept when the entry is written again.
    pub unknown: Fields,
}

impl Entry {
    /// What is known of a tie before its tyer says what was used: the setup and the time.
    pub fn of(tie: &Tie) -> Self {
        let setup = tie.plan.setup.as_ref();
        let counts = Counts::from(tie.plan.laying());
        let worked = tie.work_time.seconds();
        let finish = setup.and_then(|setup| setup.finish);
        Self {
            tie: tie.id.clone(),
            name: tie.name.clone(),
            counts,
            logged: Timestamp::now(),
            cord: setup.map(|setup| setup.cord.clone()),
            cut: setup.and_then(|setup| Some(setup.rig(counts).ok()?.cord.to_cut())),
            left_over: None,
            around: finish
                .map(|finish| finish.around)
                .or_else(|| setup.map(|setup| setup.tube.diameter)),
            width: None,
            left_open: finish.is_some_and(|finish| finish.open_to.is_some()),
            minutes: (worked >= 60.0).then(|| (worked / 60.0).round()),
            work_time: tie.work_time.clone(),
            note: String::new(),
            photograph: String::new(),
            unknown: Fields::new(),
        }
    }

    /// Cord that went into the knot: what was cut less what was left over.
    pub fn used(&self) -> Option<Millimetres> {
        Millimetres::new(self.cut?.get() - self.left_over?).ok()
    }

    /// Measured over computed length of the cord in the finished knot, without its ends. A
    /// knot left open is computed at the width it has.
    pub fn length_factor(&self) -> Option<f64> {
        let (shape, cord) = (self.computed()?, self.cord.as_ref()?.diameter);
        let turn = bight_turn(cord, None, shape.angle);
        let plain = (Correction::default(), Allowances::default());
        let computed = Consumption::new(self.counts, shape.cord_in_leg(), turn, plain.0, plain.1);
        Correction::factor(self.used()?, computed.in_knot()).ok()
    }

    /// Measured over computed width. A knot left open has the width its tyer gave it, and
    /// teaches nothing.
    pub fn width_factor(&self) -> Option<f64> {
        if self.left_open {
            return None;
        }
        Correction::factor(self.width?, self.computed()?.width).ok()
    }

    /// The finished knot as it is computed with nothing measured yet.
    fn computed(&self) -> Option<Shape> {
        let braid = Braid {
            counts: self.counts,
            cord: self.cord.as_ref()?.diameter,
            around: self.around?,
            correction: Correction::default(),
        };
        match self.width {
            Some(width) if self.left_open => braid.left_open(width).ok(),
            None if self.left_open => None,
            _ => braid.faired().ok(),
        }
    }
}
