//! The strip: where the pins go, at true size, to be cut out and laid round the tube.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::bench::{Layout, Tube};
use crate::knot::Hand;
use crate::picture::draw::{self, Paint, Role, Weight};
use crate::picture::scene::single;

/// One ring's marks on a strip, in millimetres from its left end.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StripRing {
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
    /// The marks of the top ring.
    pub top: StripRing,
    /// The marks of the bottom ring.
    pub bottom: StripRing,
}

/// Room left on every side of a page: printers leave more or less of it white.
const MARGIN: f32 = 12.0;
/// By how much the strips of two pages overlap.
const OVERLAP: f32 = 15.0;
/// Height of a strip.
const TALL: f32 = 30.0;
/// Top edges of the two strips.
const EDGES: [f32; 2] = [62.0, 114.0];
/// Width of a hole's mark, when there is room for it: a pin's, *common practice, no source*.
const HOLE: f32 = 4.0;

impl StripSheet {
    /// The strips for a tube pinned like this, for a tyer of this hand. Pins are numbered the
    /// way the cord travels. Both strips begin a quarter of a pitch (or of the way from hole
    /// to hole) before the first bottom pin, so that no mark lies on the cut.
    pub fn new(tube: &Tube, layout: &Layout, hand: Hand) -> Self {
        let length = single(tube.circumference().get());
        let place = |mark: f64| {
            let mark = single(mark).rem_euclid(length);
            match hand {
                Hand::Right => mark,
                Hand::Left => length - mark,
            }
        };
        let round = tube.circumference().get();
        let [top, bottom] = match layout {
            Layout::Strip(strip) => [&strip.top, &strip.bottom].map(|pins| StripRing {
                holes: Vec::new(),
                pins: pins
                    .iter()
                    .map(|pin| place(pin.get() + strip.pitch.get() / 4.0))
                    .collect(),
            }),
            Layout::Rings {
                bottom,
                top,
                turn_half_hole,
                ..
            } => [(top, *turn_half_hole), (bottom, false)].map(|(ring, turned)| {
                let apart = round / f64::from(ring.holes_in_row);
                let first = if turned { 0.75 } else { 0.25 };
                let at = |hole: u16| place((f64::from(hole) - 1.0 + first) * apart);
                StripRing {
                    holes: (1..=ring.holes_in_row).map(at).collect(),
                    pins: ring.holes.iter().map(|&hole| at(hole)).collect(),
                }
            }),
        };
        Self {
            length,
            top,
            bottom,
        }
    }

    /// How many pages of this paper it takes.
    pub fn count(&self, paper: Paper) -> usize {
        let mut count = 1;
        let mut reached = window(paper);
        while reached < self.length {
            reached += window(paper) - OVERLAP;
            count += 1;
        }
        count
    }

    /// The pages, each on its side. `join` gives the words on the line where the page of that
    /// number is to be laid, `foot` the line at the foot of a page from its number and how
    /// many there are.
    pub fn pages(
        &self,
        paper: Paper,
        texts: &StripTexts,
        join: impl Fn(usize) -> String,
        foot: impl Fn(usize, usize) -> String,
    ) -> Vec<SheetPage> {
        let count = self.count(paper);
        let step = window(paper) - OVERLAP;
        let mut from = 0.0;
        let mut pages = Vec::with_capacity(count);
        for nth in 1..=count {
            let mut page = SheetPage::new(paper, true);
            let to = (from + window(paper)).min(self.length);
            heading(&mut page, texts);
            let part = StripPart {
                from,
                to,
                is_first: nth == 1,
                is_last: nth == count,
                join: join(nth + 1),
            };
            for (ring, (edge, name)) in [&self.top, &self.bottom]
                .into_iter()
                .zip(EDGES.into_iter().zip(&texts.rings))
            {
                page.write(name, 4.0, Weight::Bold, Anchor::Start, (MARGIN, edge - 3.0));
                part.draw(&mut page, ring, edge, &texts.cut);
            }
            cautions(&mut page, texts);
            bar(&mut page, texts);
            let at = (page.width - MARGIN, page.height - MARGIN + 4.0);
            page.write(&foot(nth, count), 3.4, Weight::Regular, Anchor::End, at);
            pages.push(page);
            from += step;
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
fn cautions(page: &mut SheetPage, texts: &StripTexts) {
    let width = page.width - 2.0 * MARGIN;
    let lines = wrapped(&texts.cautions, 3.8, Weight::Regular, width);
    for (nth, line) in lines.iter().enumerate() {
        let at = (MARGIN, EDGES[1] + TALL + 13.0 + 5.2 * count(nth));
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
}

impl StripPart {
    fn x(&self, mark: f32) -> f32 {
        MARGIN + mark - self.from
    }

    fn draw(&self, page: &mut SheetPage, ring: &StripRing, edge: f32, cut: &str) {
        let (left, right) = (self.x(self.from), self.x(self.to));
        let low = edge + TALL;
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
                page.write(cut, 3.0, Weight::Regular, anchor, at);
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
        self.marks(page, ring, edge);
    }

    fn marks(&self, page: &mut SheetPage, ring: &StripRing, edge: f32) {
        let middle = edge + TALL * 0.56;
        let has = |mark: f32| (self.from..=self.to).contains(&mark);
        let apart = |marks: &[f32]| match marks {
            [one, other, ..] => (other - one).abs(),
            _ => f32::MAX,
        };
        let pitch = apart(&ring.pins);
        let radius = HOLE.min(0.6 * apart(&ring.holes).min(pitch)) / 2.0;
        for &hole in ring.holes.iter().filter(|&&hole| has(hole)) {
            let centre = (self.x(hole), middle);
            page.circle(Role::Label, Paint::Stroke(0.15), centre, radius);
        }
        let widest = draw::width(&ring.pins.len().to_string(), 6.0, Weight::Bold);
        let mut every = 1;
        while count(every) * pitch < widest * 1.2 && every < ring.pins.len() {
            every += 1;
        }
        for (nth, &pin) in ring.pins.iter().enumerate() {
            if !has(pin) {
                continue;
            }
            let x = self.x(pin);
            let centre = (x, middle);
            page.circle(Role::Label, Paint::Stroke(0.3), centre, radius);
            let across = radius + 1.0;
            let ends = [(x - across, middle), (x + across, middle)];
            page.rule(Role::Label, 0.15, ends[0], ends[1]);
            // From the hole to the lower edge, so that it can be seen from the side.
            let ends = [(x, middle - radius - 1.0), (x, edge + TALL)];
            page.rule(Role::Label, 0.2, ends[0], ends[1]);
            if nth % every == 0 {
                let at = (x, edge + TALL * 0.3);
                let number = (nth + 1).to_string();
                page.write(&number, 6.0, Weight::Bold, Anchor::Middle, at);
            }
        }
    }
}

#[expect(clippy::cast_precision_loss, reason = "two thousand at most")]
const fn count(things: usize) -> f32 {
    things as f32
}
