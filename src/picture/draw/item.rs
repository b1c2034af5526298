//! What a picture is made of: flat shapes with a role each.

use crate::knot::PassLeg;
use crate::picture::scene::Point;

/// One step of a path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Segment {
    /// Begin a new contour here.
    Move(Point),
    /// A straight line to here.
    Line(Point),
    /// A cubic Bézier curve: two control points and the end.
    Cubic(Point, Point, Point),
    /// Back to where the contour began.
    Close,
}

/// The form of a shape.
#[derive(Clone, Debug, PartialEq)]
pub enum Outline {
    /// Contours; filled by the non-zero rule.
    Path(Vec<Segment>),
    /// A circle, which every painter rounds in its own way.
    Circle {
        /// The point that all of it is equally far from.
        centre: Point,
        /// Its radius in pixels.
        radius: f32,
    },
}

/// Whether a shape is an area or a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Paint {
    /// Filled, without an edge.
    Fill,
    /// A line of so many pixels along the outline.
    Stroke(f32),
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
    /// Cord on the far side of the tube.
    Behind,
    /// Cord of the leg in hand on the far side of the tube.
    ActiveBehind,
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
    /// The same, `scale` times as large about the origin and then moved by `by`.
    pub(in crate::picture) fn moved(&self, scale: f32, by: Point) -> Self {
        let place = |point: Point| Point::new(point.x * scale + by.x, point.y * scale + by.y);
        let outline = match &self.outline {
            Outline::Circle { centre, radius } => Outline::Circle {
                centre: place(*centre),
                radius: radius * scale,
            },
            Outline::Path(path) => Outline::Path(
                path.iter()
                    .map(|segment| match *segment {
                        Segment::Move(to) => Segment::Move(place(to)),
                        Segment::Line(to) => Segment::Line(place(to)),
                        Segment::Cubic(one, two, to) => {
                            Segment::Cubic(place(one), place(two), place(to))
                        }
                        Segment::Close => Segment::Close,
                    })
                    .collect(),
            ),
        };
        let paint = match self.paint {
            Paint::Fill => Paint::Fill,
            Paint::Stroke(width) => Paint::Stroke(width * scale),
        };
        Self {
            role: self.role,
            paint,
            outline,
        }
    }

    pub(in crate::picture) fn fill(role: Role, path: Vec<Segment>) -> Self {
        Self {
            role,
            paint: Paint::Fill,
            outline: Outline::Path(path),
        }
    }

    pub(in crate::picture) const fn circle(
        role: Role,
        paint: Paint,
        centre: Point,
        radius: f32,
    ) -> Self {
        Self {
            role,
            paint,
            outline: Outline::Circle { centre, radius },
        }
    }

    pub(in crate::picture) fn line(role: Role, width: f32, from: Point, to: Point) -> Self {
        Self {
            role,
            paint: Paint::Stroke(width),
            outline: Outline::Path(vec![Segment::Move(from), Segment::Line(to)]),
        }
    }

    pub(in crate::picture) fn rectangle(role: Role, corner: Point, opposite: Point) -> Self {
        let corners = [
            corner,
            Point::new(opposite.x, corner.y),
            opposite,
            Point::new(corner.x, opposite.y),
        ];
        let mut path = Vec::new();
        polygon(&mut path, corners);
        Self::fill(role, path)
    }
}

/// Adds a closed contour with these corners to `path`.
pub(super) fn polygon(path: &mut Vec<Segment>, corners: impl IntoIterator<Item = Point>) {
    let before = path.len();
    for corner in corners {
        path.push(if path.len() == before {
            Segment::Move(corner)
        } else {
            Segment::Line(corner)
        });
    }
    if path.len() > before {
        path.push(Segment::Close);
    }
}
