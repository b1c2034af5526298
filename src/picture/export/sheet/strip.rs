//! The strip: where the pins go, at true size, to be cut out and laid round the tube.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::bench::{Layout, Millimetres, RingPins, Tube};
use crate::knot::{Hand, Rim};
use crate::picture::draw::{self, Paint, Role, Weight};
use crate::picture::scene::single;

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

/// Both rings' strips for a tube.
#[derive(Clone, Debug, PartialEq)]
pub struct StripSheet {
    /// Once round the tube, in millimetres.
    pub length: f32,
    /// The marks of the top ring, row by row, the outermost first.
    pub top: Vec<StripRow>,
    /// The marks of the bottom ring.
    pub bottom: Vec<StripRow>,
}

/// Room left on every side of a page: printers leave more or less of it white.
const MARGIN: f32 = 12.0;
/// By how much the strips of two pages overlap.
const OVERLAP: f32 = 15.0;
/// Height of a strip with one row of pins.
const TALL: f32 = 30.0;
/// How far the first row of pins stands below the top edge of a strip.
const FIRST_ROW: f32 = TALL * 0.56;
/// Top edge of the first strip of a page.
const EDGE: f32 = 62.0;
/// From a strip to what stands below it: the next one, with its name, or the cautions.
const BELOW: [f32; 2] = [22.0, 13.0];
/// Room for the cautions and the line that is measured, at the foot of a page.
const FOOT: f32 = 54.0;
/// Width of a hole's mark, when there is room for it: a pin's, *common practice, no source*.
const HOLE: f32 = 4.0;

impl StripSheet {
    /// The strips for a tube pinned like this, for a tyer of this hand. Pins are numbered the
    /// way the cord travels. Both strips begin a quarter of a pitch (or of the way from hole
    /// to hole) before the first bottom pin, so that no mark lies on the cut.
    ///
    /// Where bights are nested, `apart` is the way from a row of pins to the next; without it the
    /// outermost rows alone are drawn, with whose pins those of the others stand in line.
    pub fn new(tube: &Tube, layout: &Layout, apart: Option<Millimetres>, hand: Hand) -> Self {
        let round = tube.circumference().get();
        let length = single(round);
        let place = |mark: f64| {
            let mark = single(mark).rem_euclid(length);
            match hand {
                Hand::Right => mark,
                Hand::Left => length - mark,
            }
        };
        let of_row = |nth: usize, holes: Vec<f32>, pins: Vec<f32>| StripRow {
            inside: apart.map_or(0.0, |apart| count(nth) * single(apart.get())),
            holes,
            pins,
        };
        let drawn = |rows: usize| if apart.is_some() { rows } else { 1 };
        let [top, bottom] = match layout {
            Layout::Strip(strip) => [&strip.top, &strip.bottom].map(|pins| {
                let at = |pin: &Millimetres| place(pin.get() + strip.pitch.get() / 4.0);
                let pins: Vec<f32> = pins.iter().map(at).collect();
                let rows = 0..drawn(strip.nested.into());
                rows.map(|nth| of_row(nth, Vec::new(), pins.clone()))
                    .collect()
            }),
            Layout::Rings {
                bottom,
                top,
                inner,
                turn_half_hole,
            } => [Rim::Top, Rim::Bottom].map(|rim| {
                let outermost = [bottom, top];
                let inner = inner.iter().map(|[bottom, top]| [bottom, top]);
                let rows = [outermost].into_iter().chain(inner);
                let of_ring = |(nth, [bottom, top]): (usize, [&RingPins; 2])| {
                    let ring = if rim == Rim::Top { top } else { bottom };
                    let from_hole_to_hole = round / f64::from(ring.holes_in_row);
                    // Pins of one number stand in line, whatever the holes of their rows.
                    let quarter = round / f64::from(outermost[0].holes_in_row) / 4.0;
                    let turned = if rim == Rim::Top && *turn_half_hole {
                        from_hole_to_hole / 2.0
                    } else {
                        0.0
                    };
                    let at = |hole: u16| {
                        place((f64::from(hole) - 1.0) * from_hole_to_hole + turned + quarter)
                    };
                    let holes = (1..=ring.holes_in_row).map(at).collect();
                    of_row(
                        nth,
                        holes,
                        ring.holes.iter().map(|&hole| at(hole)).collect(),
                    )
                };
                let rows = rows.enumerate().map(of_ring);
                rows.take(drawn(usize::MAX)).collect()
            }),
        };
        Self {
            length,
            top,
            bottom,
        }
    }

    /// Height of each strip.
    fn tall(&self) -> f32 {
        TALL + self.top.last().map_or(0.0, |row| row.inside)
    }

    /// The same with the outermost rows alone, when all of them do not go on a page.
    fn within(&self, paper: Paper) -> Self {
        if EDGE + self.tall() + FOOT <= paper.size().0 {
            return self.clone();
        }
        Self {
            top: self.top[..1].to_vec(),
            bottom: self.bottom[..1].to_vec(),
            ..*self
        }
    }

    /// How many strips, one below the other, go on a page.
    fn on_a_page(&self, paper: Paper) -> usize {
        let both = EDGE + 2.0 * self.tall() + BELOW[0] + FOOT;
        if both <= paper.size().0 { 2 } else { 1 }
    }

    /// How many pages of this paper it takes.
    pub fn count(&self, paper: Paper) -> usize {
        self.lengths(paper) * (2 / self.within(paper).on_a_page(paper))
    }

    /// How many pages a strip goes on over.
    fn lengths(&self, paper: Paper) -> usize {
        let mut count = 1;
        let mut reached = window(paper);
        while reached < self.length {
            reached += window(paper) - OVERLAP;
            count += 1;
        }
        count
    }

    /// The pages, each on its side: both strips on each, or where they are too high for that all of
    /// the top one before the bottom one. `join` gives the words on the line where the page of that
    /// number is to be laid, `foot` the line at the foot of a page from its number and how
    /// many there are.
    pub fn pages(
        &self,
        paper: Paper,
        texts: &StripTexts,
        join: impl Fn(usize) -> String,
        foot: impl Fn(usize, usize) -> String,
    ) -> Vec<SheetPage> {
        let strips = self.within(paper);
        let tall = strips.tall();
        let (lengths, count) = (self.lengths(paper), self.count(paper));
        let rims = [
            (Rim::Top, &strips.top, &texts.rings[0]),
            (Rim::Bottom, &strips.bottom, &texts.rings[1]),
        ];
        let mut pages = Vec::with_capacity(count);
        for together in rims.chunks(strips.on_a_page(paper)) {
            let mut from = 0.0;
            for nth in 1..=lengths {
                let mut page = SheetPage::new(paper, true);
                heading(&mut page, texts);
                let mut part = StripPart {
                    from,
                    to: (from + window(paper)).min(self.length),
                    is_first: nth == 1,
                    is_last: nth == lengths,
                    join: join(pages.len() + 2),
                    edge: EDGE,
                    tall,
                };
                for (rim, rows, name) in together {
                    let at = (MARGIN, part.edge - 3.0);
                    page.write(name, 4.0, Weight::Bold, Anchor::Start, at);
                    part.draw(&mut page, *rim, rows, texts);
                    part.edge += tall + BELOW[0];
                }
                cautions(&mut page, texts, part.edge - BELOW[0] + BELOW[1]);
                bar(&mut page, texts);
                let at = (page.width - MARGIN, page.height - MARGIN + 4.0);
                let text = foot(pages.len() + 1, count);
                page.write(&text, 3.4, Weight::Regular, Anchor::End, at);
                pages.push(page);
                from += window(paper) - OVERLAP;
            }
        }
        pages
    }
}

/// How much of a strip a page holds.
fn window(paper: Paper) -> f32 {
    paper.size().1 - 2.0 * MARGIN
}

fn heading(page: &mut SheetPage, texts: &StripTexts) {
    let width = page.width - 2.0 * MARGIN;
    let mut y = MARGIN + 5.0;
    let at = (MARGIN, y);
    page.write(&texts.title, 6.0, Weight::Bold, Anchor::Start, at);
    y += 2.0;
    for line in texts
        .how
        .iter()
        .flat_map(|sentence| wrapped(sentence, 3.8, Weight::Regular, width))
    {
        y += 5.2;
        let at = (MARGIN, y);
        page.write(&line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}

/// Writes the cautions between the strips and the line that is measured.
fn cautions(page: &mut SheetPage, texts: &StripTexts, top: f32) {
    let width = page.width - 2.0 * MARGIN;
    let lines = wrapped(&texts.cautions, 3.8, Weight::Regular, width);
    for (nth, line) in lines.iter().enumerate() {
        let at = (MARGIN, top + 5.2 * count(nth));
        page.write(line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}

/// Draws the line of known length between two upright ones.
fn bar(page: &mut SheetPage, texts: &StripTexts) {
    let y = page.height - MARGIN - 14.0;
    let (left, right) = (MARGIN, MARGIN + f32::from(texts.bar_length) / 100.0);
    page.rule(Role::Label, 0.5, (left, y), (right, y));
    for x in [left, right] {
        page.rule(Role::Label, 0.25, (x, y - 3.0), (x, y + 3.0));
    }
    let width = page.width - right - 6.0 - MARGIN;
    for (nth, line) in wrapped(&texts.bar, 3.8, Weight::Regular, width)
        .iter()
        .enumerate()
    {
        let at = (right + 6.0, y + 1.3 + 5.2 * count(nth));
        page.write(line, 3.8, Weight::Regular, Anchor::Start, at);
    }
}

/// The part of the strips that one page holds.
struct StripPart {
    from: f32,
    to: f32,
    is_first: bool,
    is_last: bool,
    join: String,
    /// Top edge of the strip on the page.
    edge: f32,
    tall: f32,
}

impl StripPart {
    fn x(&self, mark: f32) -> f32 {
        MARGIN + mark - self.from
    }

    fn draw(&self, page: &mut SheetPage, rim: Rim, rows: &[StripRow], texts: &StripTexts) {
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

#[expect(clippy::cast_precision_loss, reason = "two thousand at most")]
const fn count(things: usize) -> f32 {
    things as f32
}
