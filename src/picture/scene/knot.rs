//! A knot on its tube, as it is seen at one moment.

use kurbo::Point;

use super::focus::Focus;
use super::laid_cords::{LaidCords, ShownPins};
use super::layout::{Constraints, REPEAT, SceneLayout};
use super::mark::Mark;
use super::moment::Moment;
use super::projection::{Projection, Span};
use super::sheet_point::{SheetPoint, real};
use super::view::{View, Viewport};
use crate::bench::{Ground, KnotShape};
use crate::guide::Captions;
use crate::knot::{Hand, Knot, Laying, Side};

/// A knot on its tube, as it is seen at one moment: what is worked out before any of it is drawn.
#[derive(Clone, Debug)]
pub struct KnotScene {
    /// The knot and its passes.
    pub laying: Laying,
    /// Which cords lie on the tube.
    pub laid: LaidCords,
    /// How large everything is.
    pub layout: SceneLayout,
    /// Where the eye rests.
    pub focus: Focus,
    /// From the sheet to the picture.
    pub projection: Projection,
    /// The pixels there are.
    pub viewport: Viewport,
    /// Whether it is shown as it comes off the tube, in its own proportions: without pins, numbers
    /// or legs to come.
    pub is_off_the_tube: bool,
    /// What is written in it.
    pub captions: Captions,
}

/// Which part of the tube is looked at, and how large: pictures from one viewpoint have most of
/// their shapes in common.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Viewpoint {
    middle: f32,
    base: f32,
    half_pitch: f32,
    row: f32,
}

/// How a knot is looked at: in which view, lying on what where that is no straight tube, and in how many
/// pixels.
#[derive(Clone, Copy, Debug)]
pub struct Sight<'a> {
    /// The view.
    pub view: View,
    /// What it lies on; `None` for the straight tube.
    pub ground: Option<Ground>,
    /// Whether its bights are held by pins, and not at marks or on fingers.
    pub has_pins: bool,
    /// What is written in it.
    pub captions: &'a Captions,
    /// The pixels there are.
    pub viewport: Viewport,
    /// How many of them at the right are for something else than the knot.
    pub beside: f32,
}

impl Sight<'_> {
    /// What it is seen on: nothing is bent when it is rolled out.
    const fn ground(&self) -> Option<&Ground> {
        match self.view {
            View::RolledOut => None,
            View::RoundTheTube => self.ground.as_ref(),
        }
    }

    fn constraints(&self, knot: &Knot, rows_in_hand: f32) -> Constraints {
        Constraints {
            width: self.viewport.width - self.beside,
            height: self.viewport.height,
            across: across(self.view, knot.lattice().round()),
            rows_in_hand,
            has_one_form: self.view == View::RoundTheTube,
            crowding: crowding(self.view),
            letters: self.captions.letters().map(letters),
            inner_word: self
                .captions
                .circles
                .as_ref()
                .map_or(0.0, |[_, inner]| letters(inner.chars().count())),
        }
    }
}

impl KnotScene {
    /// The knot while it is tied, as large as fits and no smaller than the eye can follow.
    pub fn tied(
        sight: Sight<'_>,
        laying: &Laying,
        side: Side,
        hand: Hand,
        moment: &Moment,
    ) -> Self {
        let knot = laying.knot();
        let mut laid = LaidCords::new(laying, moment);
        if !sight.has_pins && laid.pins == ShownPins::All {
            laid.pins = ShownPins::Marks;
        }
        let rows = rows_in_hand(&laid, f32::from(knot.lattice().height()));
        let constraints = sight.constraints(knot, rows);
        let on_ground = sight.ground().and_then(|ground| {
            SceneLayout::unset(knot, laid.passes(), side, hand, constraints).tied_on(
                ground,
                laid.pins != ShownPins::None,
                constraints,
            )
        });
        let layout = on_ground
            .unwrap_or_else(|| SceneLayout::new(knot, laid.passes(), side, hand, constraints));
        Self::in_layout(sight, laying, laid, layout, hand)
    }

    /// The finished knot in the proportions that were computed for it.
    pub fn finished(
        sight: Sight<'_>,
        laying: &Laying,
        side: Side,
        hand: Hand,
        moment: &Moment,
        shape: &KnotShape,
    ) -> Self {
        let knot = laying.knot();
        let laid = LaidCords::new(laying, moment);
        let constraints = sight.constraints(knot, f32::from(knot.lattice().height()));
        let passes = laid.passes();
        let on_ground = sight.ground().and_then(|ground| {
            SceneLayout::unset(knot, passes, side, hand, constraints).finished_on(
                ground,
                shape,
                constraints,
            )
        });
        let layout = on_ground.unwrap_or_else(|| {
            SceneLayout::proportioned(knot, passes, side, hand, constraints, shape)
        });
        Self {
            is_off_the_tube: true,
            ..Self::in_layout(sight, laying, laid, layout, hand)
        }
    }

    /// What is laid, in this layout, looked at where the tyer works.
    fn in_layout(
        sight: Sight<'_>,
        laying: &Laying,
        laid: LaidCords,
        layout: SceneLayout,
        hand: Hand,
    ) -> Self {
        let Sight {
            view,
            captions,
            viewport,
            beside,
            ..
        } = sight;
        let focus = Focus::new(&layout, &laid, laying.knot());
        let mirrored = hand == Hand::Left;
        let mut projection = Projection::new(view, &layout, focus, viewport, mirrored);
        projection.leave_free(viewport.width - beside);
        Self {
            laying: laying.clone(),
            projection,
            laid,
            layout,
            focus,
            viewport,
            is_off_the_tube: false,
            captions: captions.clone(),
        }
    }

    /// Turns the tube so that what is pointed at is in front, where it is not in sight already.
    pub fn turn_to(&mut self, view: View, mark: Mark) {
        let Some((start, row)) = mark.stands_at(self.laying.knot()) else {
            return;
        };
        // Of its places along the sheet, which goes on and on round the tube, the one nearest to
        // the middle of the picture.
        let turn = real(self.layout.turn());
        let middle = self.projection.middle / self.layout.half_pitch;
        let start = f32::from(start);
        let start = start + ((middle - start) / turn).round() * turn;
        let (x, y) = (
            start * self.layout.half_pitch,
            f32::from(row) * self.layout.row,
        );
        let is_in_sight = self.projection.turned(x) < IN_SIGHT
            && self.projection.across.contains(x)
            && self.projection.upright.contains(y);
        if is_in_sight {
            return;
        }
        let there = Focus {
            middle: (start, f32::from(row)),
            ..self.focus
        };
        let mirrored = self.projection.mirrored;
        self.projection = Projection::new(view, &self.layout, there, self.viewport, mirrored);
    }

    /// From where the tube is looked at.
    pub const fn viewpoint(&self) -> Viewpoint {
        Viewpoint {
            middle: self.projection.middle,
            base: self.projection.base,
            half_pitch: self.layout.half_pitch,
            row: self.layout.row,
        }
    }

    /// The range of the sheet that shows every part of the tube at most once.
    pub fn inner(&self) -> Span {
        self.projection.seams.unwrap_or(self.projection.across)
    }

    /// The point of the picture for a point of the sheet.
    pub fn point(&self, at: SheetPoint) -> Point {
        self.projection.place(at.0, at.1)
    }
}

/// What is turned away from the eye less than this is in sight: 0 in front, 1 at the edge of the tube.
const IN_SIGHT: f32 = 0.5;

/// Half pitches that must fit side by side to show the whole knot.
fn across(view: View, round: u16) -> f32 {
    let turn = f32::from(round);
    match view {
        View::RolledOut => turn + 2.0 * REPEAT,
        // Seen from the side a tube is a third as wide as when rolled out.
        View::RoundTheTube => turn / std::f32::consts::PI * 1.12,
    }
}

/// How much closer two numbers stand at the sides than in the middle.
const fn crowding(view: View) -> f32 {
    match view {
        View::RolledOut => 1.0,
        // Farther round, where a tube bends away, there are none.
        View::RoundTheTube => 0.6,
    }
}

/// A number of letters, to measure with.
#[expect(clippy::cast_precision_loss, reason = "a word or two")]
const fn letters(count: usize) -> f32 {
    count as f32
}

/// How many rows the part in hand takes.
fn rows_in_hand(laid: &LaidCords, rows: f32) -> f32 {
    match &laid.active {
        Some(active) => active.rows.end.clamp(0.0, rows) - active.rows.start.clamp(0.0, rows),
        // A dozen rows show what lies round the pin where the cord stands.
        None if laid.stands_at.is_some() => rows.min(12.0),
        None => rows,
    }
}
