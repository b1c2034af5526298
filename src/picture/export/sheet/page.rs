//! A page of paper, in millimetres from its top left corner.

use std::ops::RangeInclusive;

use crate::picture::draw::{self, DefaultPalette, DisplayItem, DisplayList, Paint, Role, Weight};
use crate::picture::raster::{Image, Painter};
use crate::picture::scene::{Point, Scene, Viewport};

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
    /// The text begins at the point.
    Start,
    /// The middle of the text is at the point.
    Middle,
    /// The text ends at the point.
    End,
}

/// A line of text on a page.
#[derive(Clone, Debug)]
pub(super) struct TextLine {
    pub text: String,
    /// Millimetres to the em.
    pub size: f32,
    pub weight: Weight,
    /// Left end of the baseline.
    pub from: Point,
}

/// A page of paper: shapes, and texts on top of them.
#[derive(Clone, Debug)]
pub struct SheetPage {
    pub(super) width: f32,
    pub(super) height: f32,
    pub(super) items: Vec<DisplayItem>,
    pub(super) lines: Vec<TextLine>,
}

impl SheetPage {
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
            items: vec![DisplayItem::rectangle(
                Role::Ground,
                Point::default(),
                corner,
            )],
            lines: Vec::new(),
        }
    }

    /// Millimetres from the left edge to the right one.
    pub const fn width(&self) -> f32 {
        self.width
    }

    /// Millimetres from the top edge to the bottom one.
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
        let width = draw::width(text, size, weight);
        let x = match anchor {
            Anchor::Start => at.x,
            Anchor::Middle => at.x - width / 2.0,
            Anchor::End => at.x - width,
        };
        self.lines.push(TextLine {
            text: text.to_owned(),
            size,
            weight,
            from: Point::new(x, at.y),
        });
    }

    /// Draws a straight line.
    pub(super) fn rule(&mut self, role: Role, width: f32, from: Point, to: Point) {
        self.items.push(DisplayItem::line(role, width, from, to));
    }

    /// Draws a circle, filled or as a line.
    pub(super) fn circle(&mut self, role: Role, paint: Paint, centre: Point, radius: f32) {
        self.items
            .push(DisplayItem::circle(role, paint, centre, radius));
    }

    /// Fills the rectangle between two opposite corners.
    pub(super) fn plate(&mut self, role: Role, corner: Point, opposite: Point) {
        self.items
            .push(DisplayItem::rectangle(role, corner, opposite));
    }

    /// Puts a picture on the page, its width made `width` millimetres. What lies beyond its
    /// edges is covered: put pictures on a page first.
    pub(super) fn picture(&mut self, scene: &Scene, corner: Point, width: f32) {
        let viewport = scene.viewport();
        let scale = width / viewport.width;
        let opposite = Point::new(corner.x + width, corner.y + viewport.height * scale);
        let list = DisplayList::of(scene);
        self.items
            .extend(list.items().iter().map(|item| item.moved(scale, corner)));
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
        let viewport = Viewport::new((self.width * dots).round(), (self.height * dots).round());
        // Paper is hardly ever a whole number of dots wide: the last ones are ground too.
        let opposite = Point::new(viewport.width, viewport.height);
        let mut items = vec![DisplayItem::rectangle(Role::Ground, corner, opposite)];
        items.extend(self.items.iter().map(|item| item.moved(dots, corner)));
        items.extend(self.lines.iter().map(|line| {
            let from = Point::new(line.from.x * dots, line.from.y * dots);
            draw::line(Role::Label, &line.text, line.size * dots, line.weight, from)
        }));
        let mut painter = Painter::new();
        painter.paint(&DisplayList::new(viewport, items), &DefaultPalette::light());
        painter.into_image()
    }
}

/// The lines that `text` takes when none may be wider than `width`, broken between words.
pub(super) fn wrapped(text: &str, size: f32, weight: Weight, width: f32) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        match longer {
            Some(longer) if draw::width(&longer, size, weight) <= width => {
                if let Some(line) = lines.last_mut() {
                    *line = longer;
                }
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
