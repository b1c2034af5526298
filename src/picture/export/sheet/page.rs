//! A page of paper, in millimetres from its top left corner.

use std::ops::RangeInclusive;

use kurbo::{Line, Rect, TranslateScale};

use crate::picture::draw::{self, DefaultPalette, DisplayItem, DisplayList, Paint, Role, Weight};
use crate::picture::raster::{Image, Painter};
use crate::picture::scene::{Scene, Viewport, point};

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

/// Millimetres from the left and from the top edge of a page.
pub(super) type Spot = (f32, f32);

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
    pub from: Spot,
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
        match (paper.size(), on_its_side) {
            (size, false) => Self::of_size(size),
            ((width, height), true) => Self::of_size((height, width)),
        }
    }

    /// An empty page of so many millimetres across and down.
    pub(super) fn of_size((width, height): (f32, f32)) -> Self {
        let mut page = Self {
            width,
            height,
            items: Vec::new(),
            lines: Vec::new(),
        };
        page.plate(page.rect());
        page
    }

    /// All of the page.
    fn rect(&self) -> Rect {
        Rect::new(0.0, 0.0, self.width.into(), self.height.into())
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

    /// Writes a line of text, anchored at a place on its baseline.
    pub(super) fn write(
        &mut self,
        text: &str,
        size: f32,
        weight: Weight,
        anchor: Anchor,
        at: Spot,
    ) {
        let width = draw::width(text, size, weight);
        let x = match anchor {
            Anchor::Start => at.0,
            Anchor::Middle => at.0 - width / 2.0,
            Anchor::End => at.0 - width,
        };
        self.lines.push(TextLine {
            text: text.to_owned(),
            size,
            weight,
            from: (x, at.1),
        });
    }

    /// Draws a straight line.
    pub(super) fn rule(&mut self, role: Role, width: f32, from: Spot, to: Spot) {
        let line = Line::new(point(from.0, from.1), point(to.0, to.1));
        self.items.push(DisplayItem::line(role, width, line));
    }

    /// Draws a square with its top left corner there, as a line.
    pub(super) fn square(&mut self, (left, high): Spot, side: f32) {
        let (right, low) = (left + side, high + side);
        let corners = [(left, high), (right, high), (right, low), (left, low)];
        for nth in 0..4 {
            self.rule(Role::Label, 0.3, corners[nth], corners[(nth + 1) % 4]);
        }
    }

    /// The page with a name in its upper right corner, as large as there is room for it.
    #[must_use]
    pub fn signed(mut self, name: &str) -> Self {
        let (side, size) = (15.0, 6.0);
        let room = self.width - 2.0 * side;
        let size = size * (room / draw::width(name, size, Weight::Bold)).min(1.0);
        self.write(
            name,
            size,
            Weight::Bold,
            Anchor::End,
            (self.width - side, 11.0),
        );
        self
    }

    /// Draws a circle, filled or as a line.
    pub(super) fn circle(&mut self, role: Role, paint: Paint, centre: Spot, radius: f32) {
        let centre = point(centre.0, centre.1);
        self.items
            .push(DisplayItem::circle(role, paint, centre, radius));
    }

    /// Fills a rectangle with the ground.
    fn plate(&mut self, rectangle: Rect) {
        self.items
            .push(DisplayItem::rectangle(Role::Ground, rectangle));
    }

    /// Puts a picture on the page with its top left corner there, its width made `width`
    /// millimetres. What lies beyond its edges is covered: put pictures on a page first.
    pub(super) fn picture(&mut self, scene: &Scene, corner: Spot, width: f32) {
        let (page, picture) = (self.rect(), self.inset(scene, corner, width));
        for beside in [
            Rect {
                y1: picture.y0,
                ..page
            },
            Rect {
                y0: picture.y1,
                ..page
            },
            Rect {
                x1: picture.x0,
                x0: page.x0,
                ..picture
            },
            Rect {
                x0: picture.x1,
                x1: page.x1,
                ..picture
            },
        ] {
            self.plate(beside);
        }
    }

    /// Puts the picture of a whole knot among other things on the page, with its top left corner there
    /// and its width made `width` millimetres, and says where it lies: such a picture keeps to its
    /// edges, so that nothing has to be covered.
    pub(super) fn inset(&mut self, scene: &Scene, corner: Spot, width: f32) -> Rect {
        let viewport = scene.viewport();
        let corner = point(corner.0, corner.1);
        let by = TranslateScale::new(corner.to_vec2(), (width / viewport.width).into());
        let list = DisplayList::of(scene);
        self.items
            .extend(list.items().iter().map(|item| item.moved(by)));
        by * viewport.rect()
    }

    /// The page painted with so many dots an inch, brought within [`DOTS`].
    pub fn image(&self, dots_per_inch: u16) -> Image {
        let dots = f32::from(dots_per_inch.clamp(*DOTS.start(), *DOTS.end())) / INCH;
        self.painted(dots, &mut Painter::new()).clone()
    }

    /// The page painted with so many dots to a millimetre.
    pub(super) fn painted<'a>(&self, dots: f32, painter: &'a mut Painter) -> &'a Image {
        let viewport = Viewport::new((self.width * dots).round(), (self.height * dots).round());
        // Paper is hardly ever a whole number of dots wide, so the last dots are painted as ground
        // too.
        let mut items = vec![DisplayItem::rectangle(Role::Ground, viewport.rect())];
        let larger = TranslateScale::scale(dots.into());
        items.extend(self.items.iter().map(|item| item.moved(larger)));
        items.extend(self.lines.iter().map(|line| {
            let from = point(line.from.0 * dots, line.from.1 * dots);
            draw::line(Role::Label, &line.text, line.size * dots, line.weight, from)
        }));
        painter.paint(&DisplayList::new(viewport, items), &DefaultPalette::light())
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_as_large_as_the_page_has_room_for() {
        for (name, is_full) in [("Ada".to_owned(), true), ("Ada ".repeat(90), false)] {
            let page = SheetPage::new(Paper::A4, false).signed(name.trim());
            let line = &page.lines[0];
            let right = line.from.0 + draw::width(&line.text, line.size, line.weight);
            assert!(
                line.from.0 > 14.9 && right < 195.1,
                "{} to {right}",
                line.from.0
            );
            assert_eq!(line.size >= 6.0, is_full);
        }
    }
}
