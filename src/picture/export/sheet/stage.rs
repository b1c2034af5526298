//! The picture at one step, on a page of its own.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::picture::draw::Weight;
use crate::picture::scene::{Scene, Viewport};

/// What stands round the picture.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct StageSheet {
    /// The knot, in small letters at the top right.
    pub knot: String,
    /// Where in the tie this is.
    pub phase: String,
    /// The line that matters.
    pub line: String,
    /// What else there is to say: crossings, notes.
    pub notes: Vec<String>,
    /// What the signs in the picture mean.
    pub signs: String,
}

/// Room left on every side.
const MARGIN: f32 = 14.0;
/// Pixels of a scene in a millimetre of paper: numbers come out near 3 mm.
const SCALE: f32 = 4.4;

impl StageSheet {
    /// The page, on its side. `scene` is asked for in the size that is there for it.
    pub fn page(&self, paper: Paper, scene: impl FnOnce(Viewport) -> Scene) -> SheetPage {
        let mut page = SheetPage::new(paper, true);
        let (left, right) = (MARGIN, page.width - MARGIN);
        let notes: Vec<String> = self
            .notes
            .iter()
            .flat_map(|note| wrapped(note, 4.6, Weight::Regular, right - left))
            .collect();
        let line = wrapped(&self.line, 9.0, Weight::Bold, right - left);
        let above = MARGIN + 8.0 + 10.5 * rows(line.len()) + 6.4 * rows(notes.len());
        let below = page.height - MARGIN - 7.0;
        let viewport = Viewport::new((right - left) * SCALE, (below - above) * SCALE);
        page.picture(&scene(viewport), (left, above), right - left);
        let mut y = MARGIN + 4.0;
        page.write(&self.phase, 4.6, Weight::Regular, Anchor::Start, (left, y));
        page.write(&self.knot, 4.6, Weight::Regular, Anchor::End, (right, y));
        for line in line {
            y += 10.5;
            page.write(&line, 9.0, Weight::Bold, Anchor::Start, (left, y));
        }
        for note in notes {
            y += 6.4;
            page.write(&note, 4.6, Weight::Regular, Anchor::Start, (left, y));
        }
        let foot = (left, page.height - MARGIN);
        page.write(&self.signs, 4.0, Weight::Regular, Anchor::Start, foot);
        page
    }
}

#[expect(clippy::cast_precision_loss, reason = "a few lines")]
const fn rows(count: usize) -> f32 {
    count as f32
}
