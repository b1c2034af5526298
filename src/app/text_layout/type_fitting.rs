//! How large each text of the tying screen can be, measured as it will be set.
//!
//! The line comes first: it takes the width, up to a good quarter of the height, and is broken
//! into rows only when it would be too small in one. What is left goes to the crossings, then
//! to the notes. When room is short everything else shrinks or goes before the line does.

use iced::Size;

use super::text_metrics::TextMetrics;
use crate::app::theme;
use crate::words::{CrossingMark, Shown};

/// The line's size where there is room: 0.7° at the tyer's distance, by EN 301 549 5.1.4 (see
/// [`super::type_size`]).
pub const LINE: f32 = 42.0;
/// The least size of the lines of a page of several things, where there is no room for [`LINE`]: what is
/// read out in passing, twice the least of ISO 9241-3.
const PAGE_LINE: f32 = 32.0;
/// They are no larger than this: what is noted of them is to be read beside them.
const LARGEST_PAGE_LINE: f32 = 56.0;
/// The line's share of the height that is left for line, crossings and notes.
const LINE_SHARE: f32 = 0.28;
/// The share of that height that is kept for it: two rows.
const LINE_PLACE: f32 = 0.4;
/// A line is broken into two rows where it is larger for it, by more than the eye would miss: a long one
/// stays as legible from afar as a short one, and one in a wide window is no smaller than in a narrow one.
const WORTH_TWO_ROWS: f32 = 1.05;
/// The crossings go into two rows where they are so much larger for it.
const WORTH_TWO_ROWS_OF_MARKS: f32 = 1.35;
/// Notes are no larger than this.
const LARGEST_NOTE: f32 = 44.0;
/// The height of a row of text in sizes of its type: the toolkit's own.
const ROW: f32 = 1.3;

/// Room in a plate above and below its word, in sizes of its type.
pub const PLATE_ENDS: f32 = 0.1;
/// Room in a plate left and right of its word, in sizes of its type.
pub const PLATE_SIDES: f32 = 0.35;
/// Room between two plates, in sizes of their type.
pub const PLATE_GAP: f32 = 0.35;
/// Between the line, the crossings and the notes, in sizes of the crossings.
pub const HEART_GAP: f32 = 0.5;
/// Between two things of a page, and between a thing and its notes, in sizes of their lines.
pub const THING_GAP: f32 = 0.5;
pub const THING_NOTE_GAP: f32 = 0.1;

/// Sizes of type, in logical pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sizes {
    /// The line that matters.
    pub line: f32,
    /// The words of the crossings.
    pub mark: f32,
    /// The notes; 0 when there is no room for them.
    pub note: f32,
    /// The height of the place that is kept for the line, so that what follows does not move from step
    /// to step; 0 where there is no room for that.
    pub line_place: f32,
    /// Whether all of it fits.
    pub fits: bool,
}

/// The texts of a step, shaped.
pub struct Texts {
    /// The step, or each thing of a page of several.
    things: Vec<ThingTexts>,
    /// The width of each crossing's word in sizes of its type.
    words: Vec<f32>,
}

/// A line, and the notes that stand under it.
struct ThingTexts {
    line: TextMetrics,
    notes: Vec<TextMetrics>,
}

impl ThingTexts {
    fn new(shown: &Shown) -> Self {
        let note = |note: &String| TextMetrics::new(note, theme::FACE);
        Self {
            line: TextMetrics::new(&shown.line, theme::BOLD),
            notes: shown.notes.iter().map(note).collect(),
        }
    }
}

impl Texts {
    /// Shapes what is shown.
    pub fn new(shown: &Shown) -> Self {
        Self {
            things: things(shown).iter().map(ThingTexts::new).collect(),
            words: shown.marks.iter().map(word_ems).collect(),
        }
    }

    /// Whether several things stand on a page.
    const fn is_page(&self) -> bool {
        self.things.len() > 1
    }

    /// The least size of the line at which all is as large as it should be: the things of a page may be
    /// smaller than a line by itself, as long as none of their notes goes for it.
    pub const fn good_line(&self) -> f32 {
        if self.is_page() { PAGE_LINE } else { LINE }
    }

    /// The width at which the line of a step, or that of the `nth` thing of a page, is broken into as many
    /// rows as at `width`, all about equally long: no word, no number and no arrow is left over for the last.
    pub fn even_width(&mut self, nth: usize, size: f32, width: f32) -> f32 {
        let Some(ThingTexts { line, .. }) = self.things.get_mut(nth) else {
            return width;
        };
        let broken = line.at(size, width).height;
        if broken < size * 1.5 * ROW {
            return width;
        }
        // The narrowest that takes no further row, found by halving.
        let (mut narrow, mut wide) = (0.0, width);
        while wide - narrow > 1.0 {
            let middle = f32::midpoint(narrow, wide);
            let taken = line.at(size, middle);
            if taken.height <= broken && taken.width <= middle {
                wide = middle;
            } else {
                narrow = middle;
            }
        }
        wide
    }

    /// How many crossings stand in a row, set at `size`: where they take several rows, about as many in each,
    /// so that none is left over for the last.
    pub fn marks_per_row(&self, size: f32, width: f32) -> usize {
        let all = self.words.len().max(1);
        let rows = rows_of(&self.words, size, width);
        let even = all.div_ceil(rows);
        let is_in_room = |row: &[f32]| rows_of(row, size, width) == 1;
        if self.words.chunks(even).all(is_in_room) {
            even
        } else {
            all
        }
    }

    fn notes(&self) -> impl Iterator<Item = &TextMetrics> {
        self.things.iter().flat_map(|thing| &thing.notes)
    }
}

/// What stands one below the other: the step itself, or the things of its page.
pub fn things(shown: &Shown) -> &[Shown] {
    if shown.things.is_empty() {
        std::slice::from_ref(shown)
    } else {
        &shown.things
    }
}

impl Sizes {
    /// The largest sizes at which everything fits into `space`, with a place of its own for the line
    /// where that leaves everything as large as it should be.
    pub fn of(texts: &mut Texts, space: Size) -> Self {
        let kept = Self::with_line_in(texts, space, space.height * LINE_PLACE);
        if kept.fits && kept.line >= texts.good_line() && kept.note > 0.0 {
            return kept;
        }
        Self::with_line_in(texts, space, 0.0)
    }

    /// The largest sizes at which everything fits, the line in a place of this height.
    fn with_line_in(texts: &mut Texts, space: Size, line_place: f32) -> Self {
        let line = Self::line_in(texts, space);
        let longest = texts
            .notes()
            .map(|note| note.size_in_one_row(space.width))
            .fold(f32::INFINITY, f32::min);
        let note = longest.min(line * 0.5).clamp(theme::BODY, LARGEST_NOTE);
        let largest = (line * 0.8).max(theme::BODY);
        // All in one row reads best, as long as it is not much smaller for it.
        let in_one_row = (space.width / row_ems(&texts.words)).max(theme::SMALL);
        let of_mark = |texts: &mut Texts, mark: f32| {
            let mut sizes = Self {
                line,
                mark,
                note,
                line_place,
                fits: false,
            };
            sizes.shrink(texts, space);
            sizes
        };
        let broken = of_mark(texts, largest);
        if in_one_row >= largest || texts.words.is_empty() {
            return broken;
        }
        let whole = of_mark(texts, in_one_row);
        let is_worth_it = broken.mark >= whole.mark * WORTH_TWO_ROWS_OF_MARKS
            && broken.line >= whole.line
            && broken.note >= whole.note.min(theme::BODY)
            && (broken.fits || !whole.fits);
        if is_worth_it { broken } else { whole }
    }

    /// The size of the line that is asked for: in one row, or in two where it is much larger so.
    fn line_in(texts: &mut Texts, space: Size) -> f32 {
        let rows = texts.things.iter();
        let in_one_row = rows
            .map(|thing| thing.line.size_in_one_row(space.width))
            .fold(f32::INFINITY, f32::min);
        let [least, most] = if texts.is_page() {
            [PAGE_LINE, LARGEST_PAGE_LINE]
        } else {
            [LINE.min(space.height * 0.5), f32::INFINITY]
        };
        let in_one_row = in_one_row.min(space.height * LINE_SHARE);
        let line = match &mut texts.things[..] {
            [only] => {
                // Both rows stand in the place that is kept for the line.
                let most = space.height * LINE_PLACE / (2.0 * ROW);
                let in_two_rows = only.line.size_in_two_rows(space.width, most);
                if in_two_rows >= in_one_row * WORTH_TWO_ROWS {
                    in_two_rows
                } else {
                    in_one_row
                }
            }
            _ => in_one_row,
        };
        line.min(most)
            .max(least)
            // A window can have no height at all while it opens.
            .max(theme::BODY)
    }

    /// Shrinks the crossings, then the notes, then both a little more, and then the line.
    fn shrink(&mut self, texts: &mut Texts, space: Size) {
        const STEP: f32 = 0.93;
        while !self.is_within(texts, space) {
            if self.mark > theme::BODY {
                self.mark = (self.mark * STEP).max(theme::BODY);
            } else if self.note > theme::SMALL {
                self.note = (self.note * STEP).max(theme::SMALL);
            } else if self.mark > theme::SMALL {
                self.mark = (self.mark * STEP).max(theme::SMALL);
            } else if texts.is_page() && self.line > PAGE_LINE {
                self.line = (self.line * STEP).max(PAGE_LINE);
            } else if self.note > 0.0 {
                self.note = 0.0;
            } else if self.line > theme::BODY {
                self.line = (self.line * STEP).max(theme::BODY);
            } else {
                self.make_room(texts, space);
                return;
            }
        }
        self.make_room(texts, space);
        self.fits = true;
    }

    /// A line that is taller than its place has as much as it takes.
    fn make_room(&mut self, texts: &mut Texts, space: Size) {
        if self.line_place > 0.0 {
            // A page of several has its lines one below the other and no place of its own for one.
            self.line_place = match &mut texts.things[..] {
                [only] => {
                    let taken = only.line.at(self.line, space.width).height;
                    self.line_place.max(taken)
                }
                _ => 0.0,
            };
        }
    }

    /// Whether everything fits at these sizes.
    fn is_within(&self, texts: &mut Texts, space: Size) -> bool {
        let is_page = texts.is_page();
        let gap = if is_page {
            self.line * THING_NOTE_GAP
        } else {
            self.mark * HEART_GAP
        };
        let (mut width, mut height) = (0.0_f32, 0.0);
        for (nth, thing) in texts.things.iter_mut().enumerate() {
            let line = thing.line.at(self.line, space.width);
            width = width.max(line.width);
            height += if is_page {
                line.height + if nth > 0 { self.line * THING_GAP } else { 0.0 }
            } else {
                line.height.max(self.line_place)
            };
            if self.note > 0.0 {
                for note in &mut thing.notes {
                    height += gap + note.at(self.note, space.width).height;
                }
            }
        }
        if !texts.words.is_empty() {
            height += gap + marks_height(&texts.words, self.mark, space.width);
        }
        width <= space.width && height <= space.height
    }
}

fn word_ems(mark: &CrossingMark) -> f32 {
    let font = if mark.over { theme::BOLD } else { theme::FACE };
    TextMetrics::new(&mark.text, font).ems()
}

/// The height that the crossings take when they are set at `size` and broken into rows.
fn marks_height(ems: &[f32], size: f32, width: f32) -> f32 {
    #[expect(clippy::cast_precision_loss, reason = "a few rows")]
    let rows = rows_of(ems, size, width) as f32;
    rows * size * (ROW + 2.0 * PLATE_ENDS) + (rows - 1.0) * size * PLATE_GAP
}

/// The rows of the crossings there, as many in each as have room.
fn rows_of(ems: &[f32], size: f32, width: f32) -> usize {
    let gap = size * PLATE_GAP;
    let (mut rows, mut used) = (1, 0.0_f32);
    for ems in ems {
        let plate = size * (ems + 2.0 * PLATE_SIDES) + 1.0;
        if used > 0.0 && used + gap + plate > width {
            rows += 1;
            used = plate;
        } else {
            used += plate + if used > 0.0 { gap } else { 0.0 };
        }
    }
    rows
}

/// The width of all the crossings side by side, in sizes of their type.
fn row_ems(ems: &[f32]) -> f32 {
    let plates = ems.iter().map(|ems| ems + 2.0 * PLATE_SIDES + PLATE_GAP);
    plates.sum::<f32>().max(1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(marks: &[&str]) -> Texts {
        let marks = marks.iter().map(|text| CrossingMark {
            text: (*text).to_owned(),
            over: text.starts_with("OVER"),
        });
        Texts::new(&Shown {
            line: "Top 5 down to bottom 2".to_owned(),
            marks: marks.collect(),
            ..Shown::default()
        })
    }

    #[test]
    fn a_wider_room_never_has_a_smaller_line() {
        let mut leg = texts(&["OVER 1", "under 1", "OVER 1", "under 1"]);
        let mut last = 0.0_f32;
        for width in (500..1200_u16).step_by(20) {
            let line = Sizes::of(&mut leg, Size::new(width.into(), 520.0)).line;
            assert!(line >= last * 0.95, "{width}: {line} after {last}");
            last = last.max(line);
        }
    }

    #[test]
    fn crossings_in_several_rows_are_about_as_many_in_each() {
        let four = texts(&["OVER 1", "under 1", "OVER 1", "under 1"]);
        let one = row_ems(&four.words) * 22.0;
        assert_eq!(four.marks_per_row(22.0, one + 10.0), 4);
        // Three would have room beside one another, and one would be left over.
        assert_eq!(rows_of(&four.words, 22.0, 0.8 * one), 2);
        assert_eq!(four.marks_per_row(22.0, 0.8 * one), 2);
        let five = texts(&["OVER 1", "under 1", "OVER 1", "under 1", "OVER 1"]);
        assert_eq!(five.marks_per_row(22.0, 0.8 * one), 3);
        // Where rows of as many would be too wide they are broken as before.
        let wide = texts(&[
            "OVER 1",
            "under 1",
            "OVER 12345678901234",
            "under 12345678901234",
        ]);
        let all = row_ems(&wide.words) * 22.0;
        assert_eq!(wide.marks_per_row(22.0, 0.66 * all), 4);
        assert_eq!(texts(&[]).marks_per_row(22.0, 300.0), 1);
    }
}
