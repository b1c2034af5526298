//! What a picture is made of: flat shapes with a role each.

use kurbo::{BezPath, Circle, Line, PathEl, Point, Rect, Shape, TranslateScale};

use crate::knot::PassLeg;

/// The form of a shape, in pixels.
#[derive(Clone, Debug, PartialEq)]
pub enum Outline {
    /// Contours; filled by the non-zero rule.
    Path(BezPath),
    /// A circle, which every painter rounds in its own way.
    Circle(Circle),
}

/// Whether a shape is an area or a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Paint {
    /// Filled, without an edge.
    Fill,
    /// A line of so many pixels along the outline.
    Stroke(f64),
}

/// What a shape stands for. A [`Palette`](super::Palette) turns it into a colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Everything behind the tube.
    Ground,
    /// The surface of the tube that is tied on.
    Tube,
    /// The edge of the tube, or the line where its surface is cut open.
    Edge,
    /// The way of a leg that has no cord yet.
    ToCome,
    /// Cord laid, beyond the edge where the rolled-out picture repeats itself.
    Beyond(PassLeg),
    /// Cord that is laid, of this turn of the tie.
    Laid(PassLeg),
    /// Cord laid, on the leg that the one in hand runs beside; and every cord once all is laid.
    Beside(PassLeg),
    /// The edge that sets the cord in hand off from the others.
    ActiveEdge,
    /// The part of the leg in hand that is being told.
    Active,
    /// What is left of the leg in hand: told before, or still to be told.
    ActiveRest,
    /// A pin that the cord turns round.
    Pin,
    /// The number of a pin that the leg in hand does not touch.
    PinNumber,
    /// The pin where the leg in hand starts: a ring round its number.
    From,
    /// The clear disc within that ring.
    FromDisc,
    /// The number in that ring.
    FromNumber,
    /// The pin where the leg in hand lands: a disc behind its number.
    To,
    /// The number on that disc.
    ToNumber,
    /// The sign for "over": a filled square.
    Over,
    /// The edge round that square.
    OverEdge,
    /// The sign for "under": a ring.
    Under,
    /// The edges of that ring.
    UnderEdge,
    /// Words given by the caller.
    Label,
}

/// One shape of a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct DisplayItem {
    /// What it stands for.
    pub role: Role,
    /// Whether it is filled or its outline drawn as a line.
    pub paint: Paint,
    /// The lines that it is bounded by or follows.
    pub outline: Outline,
}

impl DisplayItem {
    /// The same shape, larger and in another place.
    pub(in crate::picture) fn moved(&self, by: TranslateScale) -> Self {
        Self {
            role: self.role,
            paint: match self.paint {
                Paint::Fill => Paint::Fill,
                Paint::Stroke(width) => Paint::Stroke(width * by.scale),
            },
            outline: match &self.outline {
                Outline::Circle(circle) => Outline::Circle(by * *circle),
                Outline::Path(path) => Outline::Path(by * path),
            },
        }
    }

    /// A filled path.
    pub(in crate::picture) fn fill(role: Role, path: BezPath) -> Self {
        Self {
            role,
            paint: Paint::Fill,
            outline: Outline::Path(path),
        }
    }

    /// A circle, filled or as a line.
    pub(in crate::picture) fn circle(role: Role, paint: Paint, centre: Point, radius: f32) -> Self {
        Self {
            role,
            paint,
            outline: Outline::Circle(Circle::new(centre, radius.into())),
        }
    }

    /// A straight line.
    pub(in crate::picture) fn line(role: Role, width: f32, line: Line) -> Self {
        Self {
            role,
            paint: Paint::Stroke(width.into()),
            outline: Outline::Path(line.to_path(0.0)),
        }
    }

    /// A filled rectangle.
    pub(in crate::picture) fn rectangle(role: Role, rectangle: Rect) -> Self {
        Self::fill(role, rectangle.to_path(0.0))
    }
}

/// Adds a closed contour with these corners to `path`.
pub(super) fn polygon(path: &mut BezPath, corners: impl IntoIterator<Item = Point>) {
    let mut corners = corners.into_iter();
    if let Some(first) = corners.next() {
        path.move_to(first);
        path.extend(corners.map(PathEl::LineTo));
        path.close_path();
    }
}
