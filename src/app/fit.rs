//! How large each text of the tying screen can be, measured as it will be set.
//!
//! The line comes first: it takes the width, up to a good quarter of the height, and is broken
//! into rows only when it would be too small in one. What is left goes to the crossings, then
//! to the notes. When room is short everything else shrinks or goes before the line does.

use iced::advanced::text::{self, Paragraph as _};
use iced::{Font, Pixels, Size};

use super::theme;
use crate::words::{Mark, Shown};

/// The line's size where there is room: 0.7° at the tyer's distance, by EN 301 549 5.1.4 (see
/// [`super::type_size`]).
pub const LINE: f32 = 42.0;
/// The line's share of the height that is left for line, crossings and notes.
const LINE_SHARE: f32 = 0.28;
/// Notes are no larger than this.
const LARGEST_NOTE: f32 = 44.0;
/// The height of a row of text in sizes of its type: the toolkit's own.
const ROW: f32 = 1.3;

/// Room in a plate above and below its word, left and right of it, and between two plates, in
/// sizes of its type.
pub const PLATE_ENDS: f32 = 0.1;
/// Left and right.
pub const PLATE_SIDES: f32 = 0.35;
/// Between two plates.
pub const PLATE_GAP: f32 = 0.35;
/// Between the line, the crossings and the notes, in sizes of the crossings.
pub const HEART_GAP: f32 = 0.5;

/// Sizes of type, in logical pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sizes {
    /// The line that matters.
    pub line: f32,
    /// The crossings.
    pub mark: f32,
    /// The notes; 0 when there is no room for them.
    pub note: f32,
    /// Whether all of it fits.
    pub fits: bool,
}

impl Sizes {
    /// The largest sizes at which everything fits into `space`.
    pub fn of(shown: &Shown, space: Size) -> Self {
        let in_one_row = size_in_one_row(&shown.line, theme::BOLD, space.width);
        let line = in_one_row
            .min(space.height * LINE_SHARE)
            .max(LINE.min(space.height * 0.5))
            // A window can have no height at all while it opens.
            .max(theme::BODY);
        let longest = shown
            .notes
            .iter()
            .map(|note| size_in_one_row(note, theme::FACE, space.width))
            .fold(f32::INFINITY, f32::min);
        let note = longest.min(line * 0.5).clamp(theme::BODY, LARGEST_NOTE);
        let largest = (line * 0.8).max(theme::BODY);
        // All in one row reads best, as long as it is not much smaller for it.
        let ems = words_ems(&shown.marks);
        let in_one_row = (space.width / row_ems(&ems)).max(theme::SMALL);
        let mark = if in_one_row > line * 0.5 {
            largest.min(in_one_row)
        } else {
            largest
        };
        let mut sizes = Self {
            line,
            mark,
            note,
            fits: false,
        };
        sizes.shrink(shown, &ems, space);
        sizes
    }

    /// Shrinks the crossings, then the notes, then both a little more, and then the line.
    fn shrink(&mut self, shown: &Shown, ems: &[f32], space: Size) {
        const STEP: f32 = 0.93;
        while !self.is_within(shown, ems, space) {
            if self.mark > theme::BODY {
                self.mark = (self.mark * STEP).max(theme::BODY);
            } else if self.note > theme::SMALL {
                self.note = (self.note * STEP).max(theme::SMALL);
            } else if self.mark > theme::SMALL {
                self.mark = (self.mark * STEP).max(theme::SMALL);
            } else if self.note > 0.0 {
                self.note = 0.0;
            } else if self.line > theme::BODY {
                self.line = (self.line * STEP).max(theme::BODY);
            } else {
                return;
            }
        }
        self.fits = true;
    }

    fn is_within(&self, shown: &Shown, ems: &[f32], space: Size) -> bool {
        let line = measure(&shown.line, theme::BOLD, self.line, space.width);
        line.width <= space.width && self.height(shown, ems, space.width) <= space.height
    }

    /// The height that everything takes in this width.
    fn height(&self, shown: &Shown, ems: &[f32], width: f32) -> f32 {
        let gap = self.mark * HEART_GAP;
        let mut height = measure(&shown.line, theme::BOLD, self.line, width).height;
        if !shown.marks.is_empty() {
            height += gap + marks_height(ems, self.mark, width);
        }
        if self.note > 0.0 {
            for note in &shown.notes {
                height += gap + measure(note, theme::FACE, self.note, width).height;
            }
        }
        height
    }
}

/// How much room a text takes when it is broken into rows of at most this width.
pub fn measure(content: &str, font: Font, size: f32, width: f32) -> Size {
    type Paragraph = <iced::Renderer as text::Renderer>::Paragraph;
    Paragraph::with_text(text::Text {
        content,
        bounds: Size::new(width, f32::INFINITY),
        size: Pixels(size.max(1.0)),
        line_height: text::LineHeight::default(),
        font,
        align_x: text::Alignment::Default,
        align_y: iced::alignment::Vertical::Top,
        shaping: text::Shaping::default(),
        wrapping: text::Wrapping::default(),
    })
    .min_bounds()
}

/// The largest size at which a text takes one row of this width.
fn size_in_one_row(content: &str, font: Font, width: f32) -> f32 {
    const SAMPLE: f32 = 100.0;
    let sample = measure(content, font, SAMPLE, f32::INFINITY).width.max(1.0);
    // A hair less: a text as wide as its bounds may be broken for a rounding.
    SAMPLE * width / sample * 0.99
}

/// The width of each crossing's word in sizes of its type. It is the same at every size, so it
/// is measured once and not again at each try.
fn words_ems(marks: &[Mark]) -> Vec<f32> {
    marks.iter().map(word_ems).collect()
}

fn word_ems(mark: &Mark) -> f32 {
    const SAMPLE: f32 = 100.0;
    let font = if mark.over { theme::BOLD } else { theme::FACE };
    measure(&mark.text, font, SAMPLE, f32::INFINITY).width / SAMPLE
}

/// The height that the crossings take when they are set at `size` and broken into rows.
fn marks_height(ems: &[f32], size: f32, width: f32) -> f32 {
    let gap = size * PLATE_GAP;
    let (mut rows, mut used) = (1.0_f32, 0.0_f32);
    for ems in ems {
        let plate = size * (ems + 2.0 * PLATE_SIDES) + 1.0;
        if used > 0.0 && used + gap + plate > width {
            rows += 1.0;
            used = plate;
        } else {
            used += plate + if used > 0.0 { gap } else { 0.0 };
        }
    }
    rows * size * (ROW + 2.0 * PLATE_ENDS) + (rows - 1.0) * gap
}

/// The width of all the crossings side by side, in sizes of their type.
fn row_ems(ems: &[f32]) -> f32 {
    let plates = ems.iter().map(|ems| ems + 2.0 * PLATE_SIDES + PLATE_GAP);
    plates.sum::<f32>().max(1.0)
}
