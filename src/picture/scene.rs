//! The picture of a knot at a moment of its tie.

use super::cords::Drawing;
use super::course::Limit;
use super::gauge::{Gauge, REPEAT, Room, real};
use super::laid::Laid;
use super::lens::{Focus, Lens, Span};
use super::lettering::{self, Weight};
use super::shape::{Outline, Point, Role, Shape};
use super::{Frame, Progress, View};
use crate::bench;
use crate::knot::{Hand, Heading, Laying, Pin, Rim, Side, Turn};

/// More legs than this would make a thicket of the far side of the tube.
const FAR_LEGS: i32 = 40;

/// A crossing of two cords that can be seen in a [`Scene`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossingPoint {
    /// Where their middles meet, in pixels of the frame.
    pub at: Point,
    /// The row it lies in, 1 … leads − 1 from the bottom.
    pub row: u16,
    /// The cord that rises there.
    pub rising: Turn,
    /// The cord that falls there.
    pub falling: Turn,
    /// The way the rising cord travels through the point, per pixel of its length.
    pub rising_way: Point,
    /// The way the falling cord travels through the point, per pixel of its length.
    pub falling_way: Point,
}

/// Which part of the tube is looked at, and how large: scenes of one look have most of their shapes
/// in common.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Look {
    middle: f32,
    base: f32,
    half_pitch: f32,
    row: f32,
}

/// A picture of a knot: shapes, back to front, in pixels of the frame it was made for.
#[derive(Clone, Debug)]
pub struct Scene {
    frame: Frame,
    shapes: Vec<Shape>,
    /// None for a picture that is not one of cords.
    drawing: Option<Drawing>,
}

impl Scene {
    /// Makes the picture of `laying` when it has come as far as `progress`, followers lying on
    /// `side` of the cord they follow, for a tyer of this hand.
    ///
    /// Only what can be seen is worked out. A turn that the tie does not have shows the bare
    /// tube.
    pub fn build(
        view: View,
        laying: &Laying,
        side: Side,
        hand: Hand,
        progress: &Progress,
        frame: Frame,
    ) -> Self {
        let frame = frame.usable();
        let laid = Laid::new(laying, progress);
        let knot = laying.knot();
        let room = Room {
            width: frame.width,
            height: frame.height,
            across: across(view, knot.bights()),
            rows_in_hand: rows_in_hand(&laid, f32::from(knot.leads())),
        };
        let gauge = Gauge::new(knot, laid.passes(), side, hand, room);
        let focus = focus(&gauge, &laid);
        let lens = Lens::new(view, &gauge, focus, frame, hand == Hand::Left);
        let drawing = Drawing {
            laying: laying.clone(),
            laid,
            gauge,
            lens,
        };
        let mut shapes = Vec::new();
        drawing.tube(frame, &mut shapes);
        drawing.far_side(&mut shapes);
        drawing.legs_to_come(&mut shapes);
        drawing.laid_cords(&mut shapes);
        drawing.cord_in_hand(&mut shapes);
        drawing.pins(&mut shapes);
        drawing.signs(&mut shapes);
        if let Some(hand) = &drawing.laid.in_hand {
            let row = focus.middle.0 - real(focus.start);
            let [from, to] = drawing.far_numbers(focus.start, row, frame);
            for (point, pin, role) in [
                (from, hand.leg.from, Role::From),
                (to, hand.leg.to, Role::To),
            ] {
                if let Some(point) = point {
                    drawing.number(role, pin.number, point, &mut shapes);
                }
            }
        }
        Self {
            frame,
            shapes,
            drawing: Some(drawing),
        }
    }

    /// The finished knot in the proportions that were computed for it, without pins or
    /// numbers. `progress` is finished, or fairing: then the turn that is faired is bright.
    ///
    /// Cords are drawn a little thinner than they are where their bights would run into one
    /// another, and so that they can be told apart.
    pub fn finished(
        view: View,
        laying: &Laying,
        side: Side,
        hand: Hand,
        progress: &Progress,
        shape: &bench::Shape,
        frame: Frame,
    ) -> Self {
        let frame = frame.usable();
        let laid = Laid::new(laying, progress);
        let knot = laying.knot();
        let room = Room {
            width: frame.width,
            height: frame.height,
            across: across(view, knot.bights()),
            rows_in_hand: f32::from(knot.leads()),
        };
        let gauge = Gauge::proportioned(knot, laid.passes(), side, hand, room, shape);
        let lens = Lens::new(
            view,
            &gauge,
            focus(&gauge, &laid),
            frame,
            hand == Hand::Left,
        );
        let drawing = Drawing {
            laying: laying.clone(),
            laid,
            gauge,
            lens,
        };
        let mut shapes = Vec::new();
        drawing.tube(frame, &mut shapes);
        drawing.laid_cords(&mut shapes);
        Self {
            frame,
            shapes,
            drawing: Some(drawing),
        }
    }

    /// A picture of shapes made elsewhere.
    pub(super) const fn of(frame: Frame, shapes: Vec<Shape>) -> Self {
        Self {
            frame,
            shapes,
            drawing: None,
        }
    }

    /// The frame the picture was made for.
    pub const fn frame(&self) -> Frame {
        self.frame
    }

    /// The shapes, back to front.
    pub fn shapes(&self) -> &[Shape] {
        &self.shapes
    }

    /// How much there is to draw: the steps of all paths, a circle counting as four.
    pub fn segments(&self) -> usize {
        let count = |shape: &Shape| match &shape.outline {
            Outline::Path(path) => path.len(),
            Outline::Circle { .. } => 4,
        };
        self.shapes.iter().map(count).sum()
    }

    /// How the tube is looked at, in a picture of cords.
    pub(super) fn look(&self) -> Option<Look> {
        let Drawing { gauge, lens, .. } = self.drawing.as_ref()?;
        Some(Look {
            middle: lens.middle,
            base: lens.base,
            half_pitch: gauge.half_pitch,
            row: gauge.row,
        })
    }

    /// Whether the whole knot would be too small to follow, so that only the surroundings of
    /// the part in hand are shown.
    pub fn is_zoomed(&self) -> bool {
        self.drawing
            .as_ref()
            .is_some_and(|drawing| drawing.gauge.zoomed)
    }

    /// Width of a cord in pixels, where it faces the eye; 0 in a picture without cords.
    pub fn cord_width(&self) -> f32 {
        self.drawing
            .as_ref()
            .map_or(0.0, |drawing| drawing.gauge.cord)
    }

    /// Width of the whole knot from edge to edge, in pixels along the tube; 0 in a picture
    /// without cords.
    pub fn knot_width(&self) -> f32 {
        self.drawing.as_ref().map_or(0.0, |drawing| {
            drawing.gauge.top() + 2.0 * drawing.gauge.overhang()
        })
    }

    /// Once round the tube, in pixels of its surface; 0 in a picture without cords.
    pub fn round(&self) -> f32 {
        self.drawing
            .as_ref()
            .map_or(0.0, |drawing| drawing.gauge.round())
    }

    /// Writes a few words of the caller's, centred on a point, `size` pixels to the em.
    pub fn write(&mut self, text: &str, centre: Point, size: f32) {
        let label = lettering::centred(Role::Label, text, size, Weight::Regular, centre);
        self.shapes.push(label);
    }

    /// Every crossing of two cords that can be seen, once each. The cord in hand counts as
    /// laid.
    pub fn crossing_points(&self) -> Vec<CrossingPoint> {
        let Some(drawing) = &self.drawing else {
            return Vec::new();
        };
        let Drawing { gauge, lens, .. } = drawing;
        let inner = drawing.inner();
        let mut points = Vec::new();
        for rising in drawing.sightings(Heading::Rising, inner) {
            for nth in rising.seen.0.max(1)..=rising.seen.1.min(gauge.leads - 1) {
                let Some((falling, cords)) = drawing.crossed(rising.start, nth) else {
                    continue;
                };
                let Ok(row) = u16::try_from(nth) else {
                    continue;
                };
                let turn = |leg, pass| drawing.laying.turn_of(pass, leg);
                for (one, other) in
                    (1..=rising.cords).flat_map(|one| (1..=cords).map(move |other| (one, other)))
                {
                    let course = drawing.course(&rising, one);
                    let along = course.meets(nth, course.offset, gauge.offset(other));
                    let spot = course.at(along, course.offset);
                    let at = drawing.point(spot);
                    let shown = inner.contains(spot.0)
                        && lens.turned(spot.0) < 0.85
                        && (0.0..=self.frame.width).contains(&at.x)
                        && (0.0..=self.frame.height).contains(&at.y);
                    if shown {
                        points.push(CrossingPoint {
                            at,
                            row,
                            rising: turn(rising.leg, one),
                            falling: turn(falling, other),
                            rising_way: lens.direction(spot.0, gauge.cos, gauge.sin),
                            falling_way: lens.direction(spot.0, gauge.cos, -gauge.sin),
                        });
                    }
                }
            }
        }
        points
    }
}

/// Half pitches that must fit side by side to show the whole knot.
fn across(view: View, bights: u16) -> f32 {
    let turn = 2.0 * f32::from(bights);
    match view {
        View::RolledOut => turn + 2.0 * REPEAT,
        // Seen from the side a tube is a third as wide as when rolled out.
        View::RoundTheTube => turn / std::f32::consts::PI * 1.12,
    }
}

/// How many rows the part in hand takes.
fn rows_in_hand(laid: &Laid, leads: f32) -> f32 {
    match &laid.in_hand {
        Some(hand) => hand.rows.end.clamp(0.0, leads) - hand.rows.start.clamp(0.0, leads),
        // Some way round the pin where the cord stands.
        None if laid.stands_at.is_some() => leads.min(12.0),
        None => leads,
    }
}

/// Where the eye rests: on the part in hand, or where the cord stands when there is none.
fn focus(gauge: &Gauge, laid: &Laid) -> Focus {
    let leads = real(gauge.leads);
    if let Some((_, leg)) = laid.faired {
        return on_the_way(gauge, leg.from, leads / 2.0);
    }
    let Some(hand) = &laid.in_hand else {
        let (start, row) = laid.stands_at.map_or((0, leads / 2.0), |pin| {
            let start = 2 * (i32::from(pin.number) - 1);
            match pin.rim {
                Rim::Bottom => (start, 0.0),
                Rim::Top => (start + gauge.stagger, leads),
            }
        });
        return Focus {
            start: 0,
            middle: (real(start), row),
        };
    };
    let [start, end] = [hand.rows.start, hand.rows.end].map(|row| row.clamp(0.0, leads));
    let nth = f32::midpoint(start, end);
    on_the_way(gauge, hand.leg.from, nth)
}

/// The `nth` row on the way of the leg from a pin.
fn on_the_way(gauge: &Gauge, from: Pin, nth: f32) -> Focus {
    let index = i32::from(from.number) - 1;
    let (start, row) = match from.rim {
        Rim::Bottom => (2 * index, nth),
        Rim::Top => (2 * index + gauge.stagger, real(gauge.leads) - nth),
    };
    Focus {
        start,
        middle: (real(start) + nth, row),
    }
}

impl Drawing {
    /// The ground and the tube.
    fn tube(&self, frame: Frame, shapes: &mut Vec<Shape>) {
        let corner = Point::new(0.0, 0.0);
        let opposite = Point::new(frame.width, frame.height);
        shapes.push(Shape::rectangle(Role::Ground, corner, opposite));
        let edges = self.inner();
        let [one, other] = [edges.from, edges.to].map(|x| self.lens.place(x, 0.0).x);
        let (left, right) = (one.min(other), one.max(other));
        shapes.push(Shape::rectangle(
            Role::Tube,
            Point::new(left, 0.0),
            Point::new(right, frame.height),
        ));
        if self.lens.seams.is_some() || self.lens.radius.is_some() {
            for x in [left, right] {
                shapes.push(Shape::line(
                    Role::Edge,
                    1.5,
                    Point::new(x, 0.0),
                    Point::new(x, frame.height),
                ));
            }
        }
    }

    /// What lies on the far side of the tube, thin.
    fn far_side(&self, shapes: &mut Vec<Shape>) {
        let Some(radius) = self.lens.radius else {
            return;
        };
        let turn = self.gauge.round();
        let front = self.lens.across;
        if front.to - front.from < turn / 2.0 - 1.0 {
            // Closer than the edges of the tube: nothing of the far side can be seen.
            return;
        }
        let far = Span {
            from: front.to,
            to: front.to + radius * std::f32::consts::PI,
        };
        let few = 2 * self.gauge.bights <= FAR_LEGS;
        for heading in [Heading::Falling, Heading::Rising] {
            for sighting in self.sightings(heading, far) {
                let in_hand = self.laid.is_in_hand(sighting.leg.from);
                if sighting.cords == 0 || !(few || in_hand) {
                    continue;
                }
                let (role, share) = if in_hand {
                    (Role::InHandBehind, 0.5)
                } else {
                    (Role::Behind, 0.14)
                };
                let width = (self.gauge.cord * share).max(1.2);
                let outline = self.course(&sighting, sighting.cords).stretch(
                    Limit::Bight(self.gauge.offset(sighting.cords)),
                    Limit::Bight(self.gauge.offset(sighting.cords)),
                    width,
                    self.lens.step(),
                );
                self.place_within(&[outline], &[far], role, shapes);
            }
        }
    }

    /// The courses of legs that have no cord yet, thin.
    fn legs_to_come(&self, shapes: &mut Vec<Shape>) {
        let width = (self.gauge.cord * 0.1).clamp(1.2, 3.0);
        for heading in [Heading::Falling, Heading::Rising] {
            for sighting in self.sightings(heading, self.lens.across) {
                if sighting.cords > 0 {
                    continue;
                }
                let course = self.course(&sighting, 1);
                let bight = Limit::Bight(course.offset);
                let outline = course.stretch(bight, bight, width, self.lens.step());
                self.place(&[outline], Role::ToCome, Role::ToCome, shapes);
            }
        }
    }

    /// The falling leg, and its cords, that crosses in row `nth` the rising leg from `start`.
    fn crossed(&self, start: i32, nth: i32) -> Option<(crate::knot::Leg, u16)> {
        let from = start + nth - (self.gauge.leads - nth) - self.gauge.stagger;
        let index = (from / 2).rem_euclid(self.gauge.bights);
        let pin = u16::try_from(index + 1).ok()?;
        let leg = self.laying.knot().leg_from(crate::knot::Pin::top(pin));
        let cords = self
            .laid
            .cords(Heading::Falling, usize::try_from(index).ok()?);
        (cords > 0).then_some((leg, cords))
    }
}
