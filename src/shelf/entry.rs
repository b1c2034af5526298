//! What was really used for a finished tie, and what that teaches.

use jiff::Timestamp;

use super::{Tie, TieId, WorkTime, clock};
use crate::bench::{
    Allowances, Braid, Consumption, Cord, Correction, Counts, Ground, Interlacing, KnotShape,
    Millimetres, Sample, bight_turn, give_of_width,
};
use crate::files::Unknown;
use crate::guide::Setup;

/// The most minutes that an entry may tell of.
pub const MOST_MINUTES: f64 = WorkTime::MOST / 60.0;

/// One finished tie in the log. Whatever the tyer did not measure is `None`.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The tie on the shelf that it tells of.
    pub tie: TieId,
    /// Its name when it was logged; may be empty.
    pub name: String,
    /// Leads, bights and passes.
    pub counts: Counts,
    /// When it was logged.
    pub logged: Timestamp,
    /// The cord it was tied with.
    pub cord: Option<Cord>,
    /// Cord cut for all strands together.
    pub cut: Option<Millimetres>,
    /// What was left over when the ends were trimmed, in millimetres; 0 … 100 000.
    pub left_over: Option<f64>,
    /// What the knot sits on.
    pub around: Option<Ground>,
    /// Finished width, edge to edge.
    pub width: Option<Millimetres>,
    /// Whether it was left open and not drawn up as tight as it goes.
    pub left_open: bool,
    /// Minutes of work, 0 … [`MOST_MINUTES`].
    pub minutes: Option<f64>,
    /// The time measured while tying.
    pub work_time: WorkTime,
    /// The batch that it is a piece of, when it is one of several.
    pub series: Option<String>,
    /// Whether its tube stood already: then there was no bag and no rigging in the minutes.
    pub tube_stood: bool,
    /// What the tyer wrote; may be empty.
    pub note: String,
    /// Where a photograph of it is; may be empty. Only the path is kept.
    pub photograph: String,
    /// Fields of the document, and of its sections, that this version does not know. They are
    /// kept when the entry is written again.
    pub unknown: Unknown,
}

impl Entry {
    /// What is known of a tie before its tyer says what was used: the setup and the time.
    pub fn of(tie: &Tie) -> Self {
        let setup = tie.plan.setup();
        let counts = Counts::from(tie.plan.laying());
        let worked = tie.work_time.seconds();
        let finish = setup.and_then(|setup| setup.finish);
        Self {
            tie: tie.id.clone(),
            name: tie.name.clone(),
            counts,
            logged: clock::now(),
            cord: setup.map(|setup| setup.cord.clone()),
            cut: tie
                .plan
                .rig()
                .unwrap_or_default()
                .map(|rig| rig.cord.to_cut().get() + tie.plan.cut_for_joins())
                .and_then(|cut| Millimetres::new(cut).ok()),
            left_over: None,
            around: setup.map(Setup::ground),
            width: None,
            left_open: finish.is_some_and(|finish| finish.open_to.is_some()),
            minutes: (worked >= 60.0).then(|| (worked / 60.0).round()),
            work_time: tie.work_time.clone(),
            series: tie.batch.as_ref().map(|batch| batch.series().to_owned()),
            tube_stood: tie.plan.tube_stands,
            note: String::new(),
            photograph: String::new(),
            unknown: Unknown::default(),
        }
    }

    /// What the knot sits on when it is measured to be so thick where it is thickest: it keeps its form,
    /// in proportion.
    pub fn around_measured(&self, thickest: Millimetres) -> Ground {
        let Some(ground) = self.around else {
            return thickest.into();
        };
        let by = thickest.get() / ground.thickest().get();
        // What is too small to be a length is none.
        let scaled = |length: Millimetres| Millimetres::new(length.get() * by).ok();
        let whole = match ground {
            Ground::Round(_) => Some(Ground::Round(thickest)),
            Ground::Ball(_) => Some(Ground::Ball(thickest)),
            Ground::Taper { bottom, top, over } => {
                let ends = scaled(bottom).zip(scaled(top));
                ends.map(|(bottom, top)| Ground::Taper { bottom, top, over })
            }
            Ground::Flat { hole, .. } => Some(Ground::Flat {
                outer: thickest,
                hole: hole.and_then(scaled),
            }),
        };
        whole.unwrap_or_else(|| thickest.into())
    }

    /// Cord that went into the knot: what was cut less what was left over.
    pub fn used(&self) -> Option<Millimetres> {
        Millimetres::new(self.cut?.get() - self.left_over?).ok()
    }

    /// Measured over computed length of the cord in the finished knot, without its ends. The
    /// knot is computed at the width it has, when that was measured.
    pub fn length_factor(&self) -> Option<f64> {
        Correction::factor(self.used()?, self.computed_cord()?).ok()
    }

    /// The factor of the length with what it was computed from.
    pub fn length_sample(&self) -> Option<Sample> {
        Some(Sample {
            kind: self.counts.into(),
            factor: self.length_factor()?,
            weight: 1.0,
        })
    }

    /// How closely the cord came to lie in this knot: `k` of its own weave, over what `cord` would
    /// lie like in it. A knot left open has the width its tyer gave it, and teaches nothing.
    pub fn give_sample(&self, cord: &Cord) -> Option<Sample> {
        if self.left_open {
            return None;
        }
        let (give, tells) = give_of_width(&self.braid()?, self.width?)?;
        let taken = cord.give.woven(self.counts.interlacing());
        let factor = give.get() / taken.get();
        Correction::new(1.0, factor).ok()?;
        Some(Sample {
            kind: self.counts.into(),
            factor,
            weight: tells * tells,
        })
    }

    fn braid(&self) -> Option<Braid> {
        let cord = self.cord.as_ref()?;
        Some(Braid {
            give: cord.give,
            ..Braid::new(self.counts, cord.diameter, self.around?)
        })
    }

    /// The width that the knot should come to when it is drawn up, whatever it came to.
    pub(super) fn tight(&self) -> Option<Millimetres> {
        Some(self.braid()?.tight().ok()?.width)
    }

    /// The finished knot, as near to the width it has as can be computed.
    fn computed(&self) -> Option<KnotShape> {
        let braid = self.braid()?;
        match self.width {
            Some(width) if self.left_open || braid.around.is_whole() => braid.opened(width).ok(),
            None if self.left_open => None,
            Some(width) => {
                let give = give_of_width(&braid, width).map(|(give, _)| give);
                // What no cord can come to tells nothing of its length either.
                let counts = self.counts.interlaced(Interlacing::PLAIN);
                let give = give?;
                Braid {
                    counts,
                    give,
                    ..braid
                }
                .tight()
                .ok()
            }
            None => braid.finished(None).ok(),
        }
    }

    /// Cord in the finished knot as it is computed, without its ends.
    pub fn computed_cord(&self) -> Option<Millimetres> {
        let (shape, cord) = (self.computed()?, self.cord.as_ref()?.diameter);
        let turn = bight_turn(cord, None, shape.angle);
        let plain = (Correction::default(), Allowances::default());
        let computed = Consumption::new(self.counts, shape.cord_in_leg(), turn, plain.0, plain.1);
        Some(computed.in_knot())
    }
}
