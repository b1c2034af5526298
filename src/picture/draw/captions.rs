//! Words in a picture: what bights are called where they have no numbers, and where out and in are on a
//! board.

use kurbo::{BezPath, Point, Rect, Shape, Size};

use super::item::{DisplayItem, Outline, Paint, Role};
use super::knot::KnotDrawing;
use super::lettering::{self, Weight};
use crate::knot::Pin;
use crate::picture::scene::{CLEAR_OF_NUMBERS, NUMBER_RING, SMALLEST_WORD, point};

/// The largest type of a word beside the circles of a board.
const LARGEST_WORD: f32 = 22.0;
/// From the edge of a board, or of the picture, to a word.
const INSET: f64 = 8.0;

/// The name of a bight, and where it would stand.
#[derive(Clone, Copy)]
pub(super) struct Name {
    pub role: Role,
    pub pin: Pin,
    pub at: Point,
}

impl KnotDrawing<'_> {
    /// Whether bights have names here in the place of numbers.
    pub(super) fn has_names(&self) -> bool {
        self.scene.captions.letters().is_some()
    }

    /// Draws the names of bights, those of the leg in hand before others. One that would run into another
    /// is left out: half a name tells nothing. `taken`: names that are drawn in the end, over all else.
    pub(super) fn names(&mut self, mut names: Vec<Name>, taken: &[Name]) {
        let boxes = taken.iter().filter_map(|name| self.name_box(name));
        let mut kept: Vec<Rect> = boxes.collect();
        names.sort_by_key(|name| !is_of_leg(name.role));
        for name in names {
            let Some(place) = self.name_box(&name) else {
                continue;
            };
            let around = place.inset(2.0);
            if kept.iter().all(|other| !around.overlaps(*other)) {
                self.name(&name);
                kept.push(place);
            }
        }
    }

    /// Draws the name of a bight: on a plate, or in a frame, when it is one of the leg in hand.
    pub(super) fn name(&mut self, name: &Name) {
        let Some(place) = self.name_box(name) else {
            return;
        };
        let scene = self.scene;
        let Some(text) = scene.captions.bight(name.pin) else {
            return;
        };
        let (size, weight) = self.type_of(name.role);
        let role = match name.role {
            Role::To => {
                self.items.push(plate(Role::To, Paint::Fill, place));
                Role::ToNumber
            }
            Role::From => {
                let line = f64::from((size * 0.13).max(2.0));
                self.items.push(plate(Role::FromDisc, Paint::Fill, place));
                let frame = plate(Role::From, Paint::Stroke(line), place.inset(-line / 2.0));
                self.items.push(frame);
                Role::FromNumber
            }
            role => role,
        };
        let written = lettering::centred(role, text, size, weight, place.center());
        self.items.push(written);
    }

    /// The place of a name: as near to where it would stand as the edges of the picture let it.
    fn name_box(&self, name: &Name) -> Option<Rect> {
        let text = self.scene.captions.bight(name.pin)?;
        let (size, weight) = self.type_of(name.role);
        let wide = lettering::width(text, size, weight);
        let half = if is_of_leg(name.role) {
            (wide / 2.0 + 0.45 * size, NUMBER_RING * size)
        } else {
            (wide / 2.0, 0.55 * size)
        };
        let (half_wide, half_tall) = (f64::from(half.0), f64::from(half.1));
        let width = f64::from(self.scene.viewport.width);
        let x = name.at.x.min(width - half_wide).max(half_wide);
        let size = Size::new(2.0 * half_wide, 2.0 * half_tall);
        Some(Rect::from_center_size((x, name.at.y), size))
    }

    fn type_of(&self, role: Role) -> (f32, Weight) {
        if is_of_leg(role) {
            (self.scene.layout.large_text, Weight::Bold)
        } else {
            (self.scene.layout.text, Weight::Regular)
        }
    }

    /// Writes where out and where in are on a board: in a corner beyond the outer circle, and in its
    /// middle. Where there is no room a word is left out.
    pub fn circles(&mut self) {
        let scene = self.scene;
        let (Some([outer, inner]), Some(_)) = (&scene.captions.circles, scene.projection.board())
        else {
            return;
        };
        let middle = point(scene.viewport.width / 2.0, scene.projection.base);
        let reach = f64::from(scene.layout.board());
        let edges = Rect::from_center_size(middle, (2.0 * reach, 2.0 * reach));
        let edges = edges.intersect(scene.viewport.rect()).inset(-INSET);
        let outside = sizes().find_map(|size| {
            let (half_wide, half_tall) = half_of(outer, size);
            let corner = |left: bool, upper: bool| {
                let x = if left {
                    edges.x0 + half_wide
                } else {
                    edges.x1 - half_wide
                };
                let y = if upper {
                    edges.y0 + half_tall
                } else {
                    edges.y1 - half_tall
                };
                Point::new(x, y)
            };
            let corners = [(true, true), (false, true), (true, false), (false, false)];
            let corners = corners.map(|(left, upper)| corner(left, upper));
            let is_clear = |at: &Point| {
                let near = Point::new(
                    ((at.x - middle.x).abs() - half_wide).max(0.0),
                    ((at.y - middle.y).abs() - half_tall).max(0.0),
                );
                near.to_vec2().hypot() >= reach - INSET / 2.0
            };
            let found = corners.into_iter().find(is_clear);
            found.map(|at| (outer, size, at))
        });
        let room = f64::from(scene.layout.within_inner_numbers() - CLEAR_OF_NUMBERS);
        let within = sizes().find_map(|size| {
            let (half_wide, half_tall) = half_of(inner, size);
            let fits = half_wide.hypot(half_tall) <= room;
            let is_seen = scene.viewport.rect().inset(-half_wide).contains(middle);
            (fits && is_seen).then_some((inner, size, middle))
        });
        for (word, size, at) in outside.into_iter().chain(within) {
            let word = lettering::centred(Role::Label, word, size, Weight::Bold, at);
            self.items.push(word);
        }
    }
}

/// Sizes of type, the largest first.
fn sizes() -> impl Iterator<Item = f32> {
    let steps = (0_u8..).map(|step| LARGEST_WORD - f32::from(step));
    steps.take_while(|size| *size >= SMALLEST_WORD)
}

/// Half the width and half the height of a word.
fn half_of(word: &str, size: f32) -> (f64, f64) {
    let wide = lettering::width(word, size, Weight::Bold);
    (f64::from(wide) / 2.0, f64::from(size) / 2.0)
}

pub(super) const fn is_of_leg(role: Role) -> bool {
    matches!(role, Role::From | Role::To)
}

/// A plate with round ends.
fn plate(role: Role, paint: Paint, place: Rect) -> DisplayItem {
    let round = place.to_rounded_rect(place.height().min(place.width()) / 2.0);
    // In straight steps, so that every painter draws the same ends.
    let mut outline = BezPath::new();
    kurbo::flatten(round.to_path(0.05), 0.1, |step| outline.push(step));
    DisplayItem {
        role,
        paint,
        outline: Outline::Path(outline),
    }
}
