//! The marks of a strip, and how the part of it that a page holds is drawn.

use super::page::{Anchor, Paper, SheetPage};
use crate::knot::Rim;
use crate::picture::draw::{self, Paint, Role, Weight};

/// The marks of one row of pins, in millimetres from the left end of the strip.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StripRow {
    /// How far it lies inside the outermost row, towards the middle of the knot.
    pub inside: f32,
    /// Every hole of the row that is used; none on a tube without rings.
    pub holes: Vec<f32>,
    /// Every pin, pin 1 first.
    pub pins: Vec<f32>,
}

/// Everything that is written on a strip.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct StripTexts {
    /// The knot and the tube.
    pub title: String,
    /// What to do with it: sentences.
    pub how: Vec<String>,
    /// Over the strip of the top ring, and of the bottom ring.
    pub rings: [String; 2],
    /// Beside the rows of pins where bights are nested, outermost first.
    pub rows: Vec<String>,
    /// Beside the line that shows whether a page was printed at its true size.
    pub bar: String,
    /// How long that line is, in whole hundredths of a millimetre.
    pub bar_length: u16,
    /// Where paper is to be cut.
    pub cut: String,
    /// What the tyer must mind: a paragraph.
    pub cautions: String,
}

/// Strips or the sheet of a board on paper, with their words, laid out page by page.
pub struct Laid<S, J, F> {
    pub(super) of: S,
    pub(super) paper: Paper,
    pub(super) texts: StripTexts,
    pub(super) join: J,
    foot: F,
}

impl<S, J, F> Laid<S, J, F>
where
    J: Fn(usize) -> String,
    F: Fn(usize, usize) -> String,
{
    /// A sheet on this paper. `join` gives the words on the line where the page of that number is to be
    /// laid, `foot` the line at the foot of a page from its number and how many there are.
    pub const fn on(of: S, paper: Paper, texts: StripTexts, join: J, foot: F) -> Self {
        Self {
            of,
            paper,
            texts,
            join,
            foot,
        }
    }

    /// Writes the line at the foot of a page, of so many.
    pub(super) fn write_foot(&self, page: &mut SheetPage, number: usize, count: usize) {
        let at = (page.width - MARGIN, page.height - MARGIN + 4.0);
        let text = (self.foot)(number, count);
        page.write(&text, 3.4, Weight::Regular, Anchor::End, at);
    }
}

/// Room left on every side of a page: printers leave more or less of it white.
pub(super) const MARGIN: f32 = 12.0;
/// By how much the strips of two pages overlap.
pub(super) const OVERLAP: f32 = 15.0;
/// Height of a strip with one row of pins.
pub(super) const TALL: f32 = 30.0;
/// How far the first row of pins stands below the top edge of a strip.
const FIRST_ROW: f32 = TALL * 0.56;
/// Width of a hole's mark, when there is room for it: a pin's, *common practice, no source*.
const HOLE: f32 = 4.0;

/// The part of the strips that one page holds.
pub(super) struct StripPart {
    /// Where on the strip the page begins.
    pub from: f32,
    /// Where on the strip it ends.
    pub to: f32,
    pub is_first: bool,
    pub is_last: bool,
    /// What stands where the next page is to be laid.
    pub join: String,
    /// Top edge of the strip on the page.
    pub edge: f32,
    /// Height of the strip.
    pub tall: f32,
}

impl StripPart {
    fn x(&self, mark: f32) -> f32 {
        MARGIN + mark - self.from
    }

    pub(super) fn draw(
        &self,
        page: &mut SheetPage,
        rim: Rim,
        rows: &[StripRow],
        texts: &StripTexts,
    ) {
        let (left, right) = (self.x(self.from), self.x(self.to));
        let (edge, low) = (self.edge, self.edge + self.tall);
        for y in [edge, low] {
            page.rule(Role::Label, 0.2, (left, y), (right, y));
        }
        for (x, is_end) in [(left, self.is_first), (right, self.is_last)] {
            if is_end {
                // The line to cut along reaches beyond the strip at both ends, so that it can be
                // seen.
                let ends = [(x, edge - 2.0), (x, low + 2.0)];
                page.rule(Role::Label, 0.2, ends[0], ends[1]);
                let anchor = if x < page.width / 2.0 {
                    Anchor::Start
                } else {
                    Anchor::End
                };
                let at = (x, low + 5.4);
                page.write(&texts.cut, 3.0, Weight::Regular, anchor, at);
            }
        }
        if !self.is_last {
            let x = right - OVERLAP;
            let mut y = edge;
            while y < low {
                let ends = [(x, y), (x, (y + 1.2).min(low))];
                page.rule(Role::Label, 0.2, ends[0], ends[1]);
                y += 2.4;
            }
            let at = (right, low + 5.4);
            page.write(&self.join, 3.0, Weight::Regular, Anchor::End, at);
        }
        // The top rim is above: there the rows inside follow below, at the bottom rim above.
        let reach = rows.last().map_or(0.0, |row| row.inside);
        let height = |row: &StripRow| match rim {
            Rim::Top => edge + FIRST_ROW + row.inside,
            Rim::Bottom => edge + FIRST_ROW + reach - row.inside,
        };
        if rows.len() > 1 {
            for (row, name) in rows.iter().zip(&texts.rows) {
                let y = height(row);
                page.rule(Role::Label, 0.12, (left, y), (right, y));
                self.name(page, row, y, name);
            }
        }
        for row in rows {
            self.marks(page, row, height(row));
        }
        if let [outermost, ..] = rows {
            self.numbers(page, outermost);
        }
    }

    /// The name of a row, between its first two pins that are on the page, where it has room.
    fn name(&self, page: &mut SheetPage, row: &StripRow, y: f32, name: &str) {
        let wide = draw::width(name, 2.8, Weight::Regular);
        let mut on_page: Vec<f32> = row
            .pins
            .iter()
            .copied()
            .filter(|pin| self.has(*pin))
            .collect();
        on_page.sort_unstable_by(f32::total_cmp);
        if let [one, other, ..] = on_page[..]
            && other - one > wide + row.mark() + 3.0
        {
            let above = if row.holes.is_empty() {
                0.8
            } else {
                row.mark() / 2.0 + 0.6
            };
            let at = (self.x(f32::midpoint(one, other)), y - above);
            page.write(name, 2.8, Weight::Regular, Anchor::Middle, at);
        }
    }

    fn has(&self, mark: f32) -> bool {
        (self.from..=self.to).contains(&mark)
    }

    /// The holes and pins of a row.
    fn marks(&self, page: &mut SheetPage, row: &StripRow, y: f32) {
        let radius = row.mark() / 2.0;
        for &hole in row.holes.iter().filter(|&&hole| self.has(hole)) {
            let centre = (self.x(hole), y);
            page.circle(Role::Label, Paint::Stroke(0.15), centre, radius);
        }
        for &pin in row.pins.iter().filter(|&&pin| self.has(pin)) {
            let x = self.x(pin);
            page.circle(Role::Label, Paint::Stroke(0.3), (x, y), radius);
            let across = radius + 1.0;
            let ends = [(x - across, y), (x + across, y)];
            page.rule(Role::Label, 0.15, ends[0], ends[1]);
            // From the hole to the lower edge, so that it can be seen from the side.
            let ends = [(x, y - radius - 1.0), (x, self.edge + self.tall)];
            page.rule(Role::Label, 0.2, ends[0], ends[1]);
        }
    }

    /// The numbers of the pins over them, as many as have room.
    fn numbers(&self, page: &mut SheetPage, row: &StripRow) {
        let widest = draw::width(&row.pins.len().to_string(), 6.0, Weight::Bold);
        let pitch = apart(&row.pins);
        let mut every = 1;
        while count(every) * pitch < widest * 1.2 && every < row.pins.len() {
            every += 1;
        }
        for (nth, &pin) in row.pins.iter().enumerate().step_by(every) {
            if self.has(pin) {
                let at = (self.x(pin), self.edge + TALL * 0.3);
                let number = (nth + 1).to_string();
                page.write(&number, 6.0, Weight::Bold, Anchor::Middle, at);
            }
        }
    }
}

impl StripRow {
    /// Across the mark of a hole.
    fn mark(&self) -> f32 {
        HOLE.min(0.6 * apart(&self.holes).min(apart(&self.pins)))
    }
}

/// From a mark to the next.
fn apart(marks: &[f32]) -> f32 {
    match marks {
        [one, other, ..] => (other - one).abs(),
        _ => f32::MAX,
    }
}

/// How many pages what is so long goes on over, when a page has so much room and each begins with the end
/// of the one before.
pub(super) fn pages_over(length: f32, room: f32) -> usize {
    let (mut pages, mut reached) = (1, room);
    while reached < length {
        reached += room - OVERLAP;
        pages += 1;
    }
    pages
}

#[expect(clippy::cast_precision_loss, reason = "two thousand at most")]
pub(super) const fn count(things: usize) -> f32 {
    things as f32
}
