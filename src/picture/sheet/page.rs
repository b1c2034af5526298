//! A page of paper, in millimetres from its top left corner.

use std::ops::RangeInclusive;

use crate::picture::lettering::{self, Weight};
use crate::picture::raster::{Image, Painter};
use crate::picture::scene::Scene;
use crate::picture::shape::{Paint, Point, Role, Shape};
use crate::picture::{Frame, Tones};

/// Dots an inch that a page can be painted with.
pub const DOTS: RangeInclusive<u16> = 72..=600;

/// Millimetres in an inch.
const INCH: f32 = 25.4;

/// A size of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Paper {
    /// A4: 210 by 297 mm (ISO 216).
    #[default]
    A4,
    /// Letter: 8½ by 11 inches (ANSI/ASME Y14.1).
    Letter,
}

impl Paper {
    /// Width and height in millimetres, held upright.
    pub const fn size(self) -> (f32, f32) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}

/// Where a text stands at its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Anchor {
    /// It begins there.
    Start,
    /// Its middle is there.
    Middle,
    /// It ends there.
    End,
}

/// A line of text on a page.
#[derive(Clone, Debug)]
pub(super) struct Line {
    pub text: String,
    /// Millimetres to the em.
    pub size: f32,
    pub weight: Weight,
    /// Left end of the baseline.
    pub from: Point,
}

/// A page: shapes, and texts on top of them.
#[derive(Clone, Debug)]
pub struct Page {
    pub(super) width: f32,
    pub(super) height: f32,
    pub(super) shapes: Vec<Shape>,
    pub(super) lines: Vec<Line>,
}

impl Page {
    /// An empty page, upright or on its side.
    pub(super) fn new(paper: Paper, on_its_side: bool) -> Self {
        let (width, height) = match (paper.size(), on_its_side) {
            (size, false) => size,
            ((width, height), true) => (height, width),
        };
        let corner = Point::new(width, height);
        Self {
            width,
            height,
            shapes: vec![Shape::rectangle(Role::Ground, Point::default(), corner)],
            lines: Vec::new(),
        }
    }

    /// Width in millimetres.
    pub const fn width(&self) -> f32 {
        self.width
    }

    /// Height in millimetres.
    pub const fn height(&self) -> f32 {
        self.height
    }

    /// Everything that is written on it, in no particular order.
    pub fn texts(&self) -> impl Iterator<Item = &str> {
        self.lines.iter().map(|line| line.text.as_str())
    }

    /// Writes a line; `at` is a point of its baseline.
    pub(super) fn write(
        &mut self,
        text: &str,
        size: f32,
        weight: Weight,
        anchor: Anchor,
        at: Point,
    ) {
        let width = lettering::width(text, size, weight);
        let x = match anchor {
            Anchor::Start => at.x,
            Anchor::Middle => at.x - width / 2.0,
            Anchor::End => at.x - width,
        };
        self.lines.push(Line {
            text: text.to_owned(),
            size,
            weight,
            from: Point::new(x, at.y),
        });
    }

    /// Draws a straight line.
    pub(super) fn rule(&mut self, role: Role, width: f32, from: Point, to: Point) {
        self.shapes.push(Shape::line(role, width, from, to));
    }

    /// Draws a circle, filled or as a line.
    pub(super) fn circle(&mut self, role: Role, paint: Paint, centre: Point, radius: f32) {
        self.shapes.push(Shape::circle(role, paint, centre, radius));
    }

    /// Fills a rectangle.
    pub(super) fn plate(&mut self, role: Role, corner: Point, opposite: Point) {
        self.shapes.push(Shape::rectangle(role, corner, opposite));
    }

    /// Puts a picture on the page, its width made `width` millimetres. What lies beyond its
    /// frame is covered: put pictures on a page first.
    pub(super) fn picture(&mut self, scene: &Scene, corner: Point, width: f32) {
        let scale = width / scene.frame().width;
        let opposite = Point::new(corner.x + width, corner.y + scene.frame().height * scale);
        self.shapes.extend(
            scene
                .shapes()
                .iter()
                .map(|shape| shape.moved(scale, corner)),
        );
        let (right, bottom) = (self.width, self.height);
        for (one, other) in [
            (Point::default(), Point::new(right, corner.y)),
            (Point::new(0.0, opposite.y), Point::new(right, bottom)),
            (Point::new(0.0, corner.y), Point::new(corner.x, opposite.y)),
            (
                Point::new(opposite.x, corner.y),
                Point::new(right, opposite.y),
            ),
        ] {
            self.plate(Role::Ground, one, other);
        }
    }

    /// The page painted with so many dots an inch, brought within [`DOTS`].
    pub fn image(&self, dots_per_inch: u16) -> Image {
        let dots = f32::from(dots_per_inch.clamp(*DOTS.start(), *DOTS.end())) / INCH;
        let corner = Point::default();
        let frame = Frame::new((self.width * dots).round(), (self.height * dots).round());
        // Paper is hardly ever a whole number of dots wide: the last ones are ground too.
        let opposite = Point::new(frame.width, frame.height);
        let mut shapes = vec![Shape::rectangle(Role::Ground, corner, opposite)];
        shapes.extend(self.shapes.iter().map(|shape| shape.moved(dots, corner)));
        shapes.extend(self.lines.iter().map(|line| {
            let from = Point::new(line.from.x * dots, line.from.y * dots);
            lettering::line(Role::Label, &line.text, line.size * dots, line.weight, from)
        }));
        let mut painter = Painter::new();
        painter.paint(&Scene::of(frame, shapes), &Tones::light());
        painter.into_image()
    }
}

/// The lines that `text` takes when none may be wider than `width`, broken between words.
pub(super) fn wrapped(text: &str, size: f32, weight: Weight, width: f32) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match longer {
            Some(longer) if lettering::width(&longer, size, weight) <= width => {
                if let Some(line) = lines.last_mut() {
                    *line = longer;
                }
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
