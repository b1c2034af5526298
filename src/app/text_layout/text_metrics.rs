//! A text that is shaped once and then measured at any size and width.
//!
//! To shape a text, that is to find a glyph and an advance for each letter, is what costs; to
//! break it into rows is cheap. Advances grow with the size of the type, so one shaping at a
//! sample size serves all sizes that are tried.

use iced::advanced::text::{self, Paragraph as _};
use iced::{Font, Pixels, Size};

type Paragraph = <iced::Renderer as text::Renderer>::Paragraph;

/// The size a text is shaped at, in logical pixels.
const SAMPLE: f32 = 100.0;
/// The part of a width that is used: glyphs are set on fractions of a pixel, and a text as wide
/// as its bounds may be broken for a rounding.
const SAFE: f32 = 0.995;

/// A text shaped once, to be measured at any size.
pub struct TextMetrics {
    paragraph: Paragraph,
    one_row: Size,
    /// What was asked last, by size and width, and the answer: most is asked again.
    last: Option<((f32, f32), Size)>,
}

impl TextMetrics {
    /// Shapes a text in a face; this is the costly part.
    pub fn new(content: &str, font: Font) -> Self {
        let paragraph = Paragraph::with_text(text::Text {
            content,
            bounds: Size::INFINITE,
            size: Pixels(SAMPLE),
            line_height: text::LineHeight::default(),
            font,
            align_x: text::Alignment::Default,
            align_y: iced::alignment::Vertical::Top,
            shaping: text::Shaping::default(),
            wrapping: text::Wrapping::default(),
        });
        let one_row = paragraph.min_bounds();
        Self {
            paragraph,
            one_row,
            last: None,
        }
    }

    /// The width in one row, in sizes of its type.
    pub fn ems(&self) -> f32 {
        self.one_row.width / SAMPLE
    }

    /// The largest size at which it takes one row of this width.
    pub fn size_in_one_row(&self, width: f32) -> f32 {
        width / self.ems().max(1.0 / SAMPLE) * SAFE * SAFE
    }

    /// The largest size up to `most` at which it takes two rows of this width, but for steps of a
    /// sixteenth; where its words leave no such size, one at which it takes one.
    pub fn size_in_two_rows(&mut self, width: f32, most: f32) -> f32 {
        let one = self.size_in_one_row(width);
        let mut size = (2.0 * one).min(most);
        while size > one {
            let taken = self.at(size, width);
            if taken.height < size * 3.0 && taken.width <= width {
                return size;
            }
            size *= 15.0 / 16.0;
        }
        one
    }

    /// How much room it takes at a size of type when it is broken into rows of at most this width.
    pub fn at(&mut self, size: f32, width: f32) -> Size {
        if let Some((asked, taken)) = self.last
            && asked == (size, width)
        {
            return taken;
        }
        let scale = size.max(1.0) / SAMPLE;
        let within = width * SAFE / scale;
        let taken = if self.one_row.width <= within {
            self.one_row
        } else {
            self.paragraph.resize(Size::new(within, f32::INFINITY));
            self.paragraph.min_bounds()
        };
        let taken = taken * scale;
        self.last = Some(((size, width), taken));
        taken
    }
}
