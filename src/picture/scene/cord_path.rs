//! One cord of one leg on the sheet, cut wherever it goes under.

use super::layout::SceneLayout;
use super::outlines::Outlines;
use super::rim_form::RimForm;
use super::sheet_point::{SheetPoint, real};
use crate::knot::Rim;

/// The radius in which a loose end turns down, at the middle of the cord, in widths of the cord.
pub(super) const END_BEND: f32 = 1.1;

/// A copy of a leg on the sheet. The sheet goes on for ever; a leg comes again every turn.
#[derive(Clone, Copy, Debug)]
pub struct CordPath<'a> {
    /// The measures of the picture.
    pub layout: &'a SceneLayout,
    /// Whether it runs from the bottom rim to the top one.
    pub rising: bool,
    /// Half pitch of the pin it starts from.
    pub start: i32,
    /// The row it starts in, 0 that of the outermost bottom pins.
    pub base: i32,
    /// Rows from its start to its end.
    pub rows: i32,
    /// Distance to the right of the middle of its cable.
    pub offset: f32,
    /// How much sooner its loose end stops, for the head that it has.
    pub head: f32,
}

/// Where a stretch of cord begins or ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Limit {
    /// At the bottom of the bight, half way round the pin; the offset of the cord that it is
    /// joined to there.
    Bight(f32),
    /// At the pin, with a loose end hanging down.
    End,
    /// Straight across, so far along the leg.
    Square(f32),
    /// Along the edge of a cord that is crossed: the number of the row on the way, and how far
    /// that edge is to the right of the middle of the cable crossed.
    Slant(i32, f32),
}

/// The straight of one edge of a cord: how far it is to the right of the middle line, and where
/// it begins and ends along it.
#[derive(Clone, Copy, Debug)]
struct Edge {
    across: f32,
    from: f32,
    to: f32,
}

/// A piece of cord between two limits.
pub type Stretch = (Limit, Limit);

impl CordPath<'_> {
    /// The point `along` the leg from where its middle line meets the rim line, and `across`
    /// to the right of that middle line.
    pub fn at(&self, along: f32, across: f32) -> SheetPoint {
        let layout = self.layout;
        let (base, way) = (real(self.base) * layout.row, self.way());
        (
            real(self.start) * layout.half_pitch + along * layout.cos + across * way * layout.sin,
            base + along * way * layout.sin - across * layout.cos,
        )
    }

    /// How far along a line that is `across` right of the middle meets, near the `nth` row on
    /// the way, a line of the leg crossed that is `other` right of *its* middle.
    pub fn meets(&self, nth: i32, across: f32, other: f32) -> f32 {
        let SceneLayout { tan, cot, .. } = *self.layout;
        let beyond = if self.rising {
            (across - other) * cot - (across + other) * tan
        } else {
            (other - across) * cot + (other + across) * tan
        };
        real(nth) * self.layout.diagonal + beyond / 2.0
    }

    /// Where the cord leaves its pin in a straight line, and where it comes to the next.
    pub fn straight(&self) -> [f32; 2] {
        let layout = self.layout;
        let [first, last] = [true, false].map(|start| {
            let form = self.form(start);
            layout.bend * form.sin / (form.around * layout.cos)
        });
        [first, real(self.rows) * layout.diagonal - last]
    }

    /// How the sheet is bent at its first pin, or at its last.
    pub fn form(&self, start: bool) -> RimForm {
        let row = self.row_of_pin(start);
        match self.rim(start) {
            Rim::Bottom => self.layout.rim_form(Rim::Bottom, row),
            Rim::Top => self.layout.rim_form(Rim::Top, self.layout.height - row),
        }
    }

    /// The rim of its first pin, or of its last.
    const fn rim(&self, start: bool) -> Rim {
        if self.rising == start {
            Rim::Bottom
        } else {
            Rim::Top
        }
    }

    const fn row_of_pin(&self, start: bool) -> i32 {
        match (start, self.rising) {
            (true, _) => self.base,
            (false, true) => self.base + self.rows,
            (false, false) => self.base - self.rows,
        }
    }

    /// How far along the leg a line square to it on the surface at a pin comes, for each step to its
    /// right: not at all where the surface is not bent.
    fn skew(&self, start: bool) -> f32 {
        let SceneLayout { sin, cos, .. } = *self.layout;
        let form = self.form(start);
        let (around, along) = (form.sin / form.around, form.cos / form.along);
        self.way() * (around * cos - along * sin) / (around * sin + along * cos)
    }

    /// How far along the straight a limit is for the edge of the cord at `across`; `end` is 0
    /// for the first pin, 1 for the last.
    fn along(&self, limit: Limit, end: usize, across: f32) -> f32 {
        let layout = self.layout;
        match limit {
            Limit::Bight(joined) => {
                let hub = self.hub_shift(end == 0, joined);
                let aside = across - hub * self.way() * layout.sin;
                self.straight()[end] + hub * layout.cos + self.skew(end == 0) * aside
            }
            Limit::End => {
                let aside = if end == 0 {
                    self.aside()
                } else {
                    -self.aside()
                };
                self.straight()[end] + aside + self.skew(end == 0) * across
            }
            Limit::Square(along) => along,
            Limit::Slant(nth, other) => self.meets(nth, across, other),
        }
    }

    /// Adds the outline of a stretch of the cord, `width` wide, with no straight line of it longer
    /// than `step`; nothing when nothing is left between its limits on one of the two edges.
    pub fn outline(&self, (from, to): Stretch, width: f32, step: f32, outlines: &mut Outlines) {
        let [left, right] = self.edges(from, to, width);
        if left.from >= left.to || right.from >= right.to {
            return;
        }
        outlines.add(|outline| {
            self.edge(from, to, left, step, outline);
            let back = outline.len();
            self.edge(from, to, right, step, outline);
            outline[back..].reverse();
        });
    }

    /// The left and the right edge of the cord between two limits.
    fn edges(&self, from: Limit, to: Limit, width: f32) -> [Edge; 2] {
        [-0.5, 0.5].map(|side| {
            let across = self.offset + side * width;
            Edge {
                across,
                from: self.along(from, 0, across),
                to: self.along(to, 1, across),
            }
        })
    }

    /// Adds one edge of the cord.
    fn edge(&self, from: Limit, to: Limit, edge: Edge, step: f32, rail: &mut Vec<SheetPoint>) {
        self.curve(from, true, edge.across, rail);
        let whole = edge.to - edge.from;
        let steps = (whole.abs() * self.layout.cos / step)
            .ceil()
            .clamp(1.0, 4096.0);
        let mut along = 0.0;
        while along <= steps {
            rail.push(self.at(edge.from + whole * along / steps, edge.across));
            along += 1.0;
        }
        self.curve(to, false, edge.across, rail);
    }

    /// Adds the curved part of one edge of the cord at its start or at its finish.
    fn curve(&self, limit: Limit, start: bool, across: f32, rail: &mut Vec<SheetPoint>) {
        let first = rail.len();
        match limit {
            Limit::Bight(joined) => self.bight(start, across, joined, rail),
            Limit::End => self.end(start, across, rail),
            Limit::Square(_) | Limit::Slant(..) => {}
        }
        if !start {
            rail[first..].reverse();
        }
    }

    /// Half a bight, from the far side of the pin to where the straight begins.
    fn bight(&self, start: bool, across: f32, joined: f32, rail: &mut Vec<SheetPoint>) {
        let layout = self.layout;
        let outwards = self.outwards(start);
        let middle = f32::midpoint(self.offset, joined);
        let form = self.form(start);
        // Of the same width as along the leg.
        let wide = form.around * form.sin / layout.sin;
        let radius = layout.bend + outwards * wide * (across - self.offset + middle);
        let pin = self.pin(start);
        let hub = pin.0 + self.hub_shift(start, joined);
        let angle = form.sin.asin();
        let turned = if start { 1.0 } else { -1.0 };
        // A little past the middle, so that no seam shows between the two halves.
        let past = -0.6 / layout.bend.max(0.6);
        let steps = (radius.max(4.0).sqrt() * 1.5).ceil().clamp(4.0, 24.0);
        let mut step = 0.0;
        while step < steps {
            let bent = past + (angle - past) * step / steps;
            rail.push((
                hub + turned * radius * bent.sin() / form.around,
                pin.1 - outwards * radius * bent.cos() / form.along,
            ));
            step += 1.0;
        }
    }

    /// 1 where the right of the cord is the outside of its bight, at the bottom; −1 at the top.
    fn outwards(&self, start: bool) -> f32 {
        if self.rising == start { 1.0 } else { -1.0 }
    }

    /// How far to the right of the pin the hub of a bight stands that joins this cord to one of
    /// another offset. The arc that touches both has the mean of their radii and stands half
    /// their difference aside, measured square to a leg.
    pub fn hub_shift(&self, start: bool, joined: f32) -> f32 {
        let turned = if start { 1.0 } else { -1.0 };
        self.outwards(start) * turned * (self.offset - joined) / (2.0 * self.layout.sin)
    }

    /// The middle of the arc in which a cord turns to hang down as a loose end, and how far it is to the right of
    /// the middle of the cable.
    pub fn hub_of_end(&self, start: bool) -> (SheetPoint, f32) {
        let across = self.offset + END_BEND * self.layout.cord;
        let along = self.along(Limit::End, usize::from(!start), across);
        (self.at(along, across), across)
    }

    /// How much sooner than at its pin a loose end begins to hang down, along the leg: beginning and end of
    /// one cord hang side by side with a gap between them, however close they pass their pin.
    fn aside(&self) -> f32 {
        let SceneLayout {
            sin,
            cos,
            cord,
            gap,
            bend,
            half_pitch,
            ..
        } = *self.layout;
        let hangs_at = (bend + self.offset) * sin - END_BEND * cord * (1.0 - sin);
        // Not before it has come out of its last crossing: an end that is not seen is worse than two in one.
        let room = half_pitch - cord;
        ((f32::midpoint(cord, gap) - hangs_at).min(room) / cos).max(0.0)
    }

    /// A loose end, from its tip to where it meets the straight. Only bottom pins have any.
    fn end(&self, start: bool, across: f32, rail: &mut Vec<SheetPoint>) {
        let form = self.form(start);
        let (hub, hub_across) = self.hub_of_end(start);
        let radius = hub_across - across;
        let sideways = if start { -1.0 } else { 1.0 };
        let tip = self.tip();
        rail.push((
            hub.0 + sideways * radius / form.around,
            tip.min(hub.1 - 1.0),
        ));
        // From level with the hub up to the end of the straight, which is square to the leg.
        let bent = form.sin.acos();
        let steps = 8_u8;
        for step in 0..steps {
            let angle = bent * f32::from(step) / f32::from(steps);
            rail.push((
                hub.0 + sideways * radius * angle.cos() / form.around,
                hub.1 + radius * angle.sin() / form.along,
            ));
        }
    }

    /// The pin it leaves or lands on.
    pub fn pin(&self, start: bool) -> SheetPoint {
        let layout = self.layout;
        let at = if start {
            self.start
        } else {
            self.start + self.rows
        };
        let form = self.form(start);
        let inside = layout.bend / form.cos / form.along;
        let inwards = match self.rim(start) {
            Rim::Bottom => inside,
            Rim::Top => -inside,
        };
        (
            real(at) * layout.half_pitch,
            real(self.row_of_pin(start)) * layout.row + inwards,
        )
    }

    /// Upwards or downwards.
    const fn way(&self) -> f32 {
        if self.rising { 1.0 } else { -1.0 }
    }

    /// Where a loose end stops that hangs down from the bottom bights of its row.
    pub fn tip(&self) -> f32 {
        let layout = self.layout;
        let bottom = if self.rising {
            self.base
        } else {
            self.base - self.rows
        };
        real(bottom) * layout.row - layout.overhang(Rim::Bottom) - layout.end_length() + self.head
    }
}
