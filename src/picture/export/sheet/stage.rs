//! The picture at one step, on a page of its own.

use super::page::{Anchor, Paper, SheetPage, wrapped};
use crate::picture::draw::Weight;
use crate::picture::raster::{Image, Painter};
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
    /// What the cord crosses, which a class reads from afar.
    pub crossings: String,
    /// What else there is to say: notes, cautions.
    pub notes: Vec<String>,
    /// What the signs in the picture mean.
    pub signs: String,
}

/// Room left on every side.
const MARGIN: f32 = 14.0;
/// Size of the line that matters, and from one of its lines to the next.
const LINE: f32 = 9.0;
const LINE_STEP: f32 = 10.5;
/// Size of what else there is to say: on paper, and on a screen that a class looks at.
const NOTE: f32 = 4.6;
const FRAME_NOTE: f32 = 5.6;
/// From one line of that to the next, as a multiple of its size.
const NOTE_STEP: f32 = 1.4;
/// Size of the crossings, in sizes of what else there is to say.
const CROSSINGS: f32 = 1.3;
/// Pixels of a scene in a millimetre of paper: numbers come out near 3 mm.
const SCALE: f32 = 4.4;

/// Size of what the signs mean: on paper, and on a screen that a class looks at.
const SIGNS: f32 = 4.0;
const FRAME_SIGNS: f32 = 5.0;
/// From one line of that to the next, as a multiple of its size.
const SIGNS_STEP: f32 = 1.35;

/// Width and height of a frame of a reel in millimetres, four to three as most projectors have it.
const FRAME: (f32, f32) = (200.0, 150.0);
/// Room left on every side of a frame.
const FRAME_MARGIN: f32 = 9.0;
/// Width of the words of a frame, beside its picture.
const BESIDE: f32 = 84.0;

/// Where the picture of a frame stands, which must be the same for all frames of a reel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FramePlan {
    /// Right of the words: a tube that stands is taller than wide.
    Beside,
    /// Under the words, which take so many millimetres.
    Under(f32),
}

/// The words above or beside a picture, line by line.
struct Broken {
    phase: Vec<String>,
    line: Vec<String>,
    crossings: Vec<String>,
    notes: Vec<String>,
}

/// Where words and picture stand on a page, in millimetres.
#[derive(Clone, Copy)]
struct Places {
    left: f32,
    top: f32,
    /// Width of the words.
    width: f32,
    /// Size of what else there is to say.
    note: f32,
    /// Size of what the signs mean.
    signs: f32,
    /// Bottom of the page within its margin.
    bottom: f32,
    /// Left, upper and right edge of the picture.
    picture: [f32; 3],
}

impl StageSheet {
    /// The page, on its side. `scene` is asked for in the size that is there for it.
    pub fn page(&self, paper: Paper, scene: impl FnOnce(Viewport) -> Scene) -> SheetPage {
        let page = SheetPage::new(paper, true);
        let width = page.width() - 2.0 * MARGIN;
        let above = MARGIN + self.words_height(width, NOTE);
        let places = Places {
            left: MARGIN,
            top: MARGIN,
            width,
            note: NOTE,
            signs: SIGNS,
            bottom: page.height() - MARGIN,
            picture: [MARGIN, above, MARGIN + width],
        };
        self.on(page, places, Some(scene))
    }

    /// Millimetres that the words of a frame take above a picture.
    pub fn height_in_frame(&self) -> f32 {
        self.words_height(FRAME.0 - 2.0 * FRAME_MARGIN, FRAME_NOTE)
    }

    /// The page as an image so many pixels wide, to be one of a row whose picture stands still.
    /// Without a scene there are words alone, over all of its width.
    pub fn frame<'a>(
        &self,
        plan: FramePlan,
        width: u16,
        painter: &'a mut Painter,
        scene: Option<impl FnOnce(Viewport) -> Scene>,
    ) -> &'a Image {
        let (left, right) = (FRAME_MARGIN, FRAME.0 - FRAME_MARGIN);
        let (width_of_words, picture) = match plan {
            FramePlan::Beside if scene.is_some() => {
                let beside = left + BESIDE + FRAME_MARGIN;
                (BESIDE, [beside, FRAME_MARGIN, right])
            }
            FramePlan::Beside => (right - left, [left, FRAME_MARGIN, right]),
            FramePlan::Under(above) => (right - left, [left, FRAME_MARGIN + above, right]),
        };
        let places = Places {
            left,
            top: FRAME_MARGIN,
            width: width_of_words,
            note: FRAME_NOTE,
            signs: FRAME_SIGNS,
            bottom: FRAME.1 - FRAME_MARGIN,
            picture,
        };
        let page = self.on(SheetPage::of_size(FRAME), places, scene);
        page.painted(f32::from(width) / FRAME.0, painter)
    }

    fn words_height(&self, width: f32, note: f32) -> f32 {
        let broken = self.broken(width, note);
        let small = broken.phase.len().saturating_sub(1) + broken.notes.len();
        let small = rows(small) + CROSSINGS * rows(broken.crossings.len());
        8.0 + LINE_STEP * rows(broken.line.len()) + NOTE_STEP * note * small
    }

    /// The words as they are broken within this width, the small ones in the size of a note.
    fn broken(&self, width: f32, note: f32) -> Broken {
        let small = |text: &str| {
            let lines = text.lines();
            let lines = lines.flat_map(|line| wrapped(line, note, Weight::Regular, width));
            lines.collect::<Vec<_>>()
        };
        let lines = self.line.lines();
        let line = lines.flat_map(|line| wrapped(line, LINE, Weight::Bold, width));
        Broken {
            phase: small(&self.phase),
            line: line.collect(),
            crossings: wrapped(&self.crossings, CROSSINGS * note, Weight::Bold, width),
            notes: self.notes.iter().flat_map(|text| small(text)).collect(),
        }
    }

    fn on(
        &self,
        mut page: SheetPage,
        places: Places,
        scene: Option<impl FnOnce(Viewport) -> Scene>,
    ) -> SheetPage {
        let Places {
            left,
            top,
            width,
            note,
            signs: size_of_signs,
            bottom,
            picture: [from, above, to],
        } = places;
        let signs = wrapped(&self.signs, size_of_signs, Weight::Regular, width);
        let signs_step = SIGNS_STEP * size_of_signs;
        let foot = bottom - signs_step * rows(signs.len().saturating_sub(1));
        // A picture under the words ends above the line that tells what the signs mean.
        let below = if from > left { bottom } else { foot - 7.0 };
        if let Some(scene) = scene {
            let viewport = Viewport::new((to - from) * SCALE, (below - above) * SCALE);
            page.picture(&scene(viewport), (from, above), to - from);
        }
        let Broken {
            phase,
            line,
            crossings,
            notes,
        } = self.broken(width, note);
        let mut y = top + 4.0;
        let mut write = |text: &str, size: f32, weight: Weight, y: f32| {
            page.write(text, size, weight, Anchor::Start, (left, y));
        };
        for (nth, text) in phase.iter().enumerate() {
            y += NOTE_STEP * note * rows(nth.min(1));
            write(text, note, Weight::Regular, y);
        }
        for line in line {
            y += LINE_STEP;
            write(&line, LINE, Weight::Bold, y);
        }
        // A little more room between the line that matters and the notes.
        y += 0.2 * note;
        for text in crossings {
            y += NOTE_STEP * CROSSINGS * note;
            write(&text, CROSSINGS * note, Weight::Bold, y);
        }
        for text in notes {
            y += NOTE_STEP * note;
            write(&text, note, Weight::Regular, y);
        }
        for (nth, line) in signs.iter().enumerate() {
            let y = foot + signs_step * rows(nth);
            write(line, size_of_signs, Weight::Regular, y);
        }
        let right = (left + width, top + 4.0);
        page.write(&self.knot, note, Weight::Regular, Anchor::End, right);
        page
    }
}

#[expect(clippy::cast_precision_loss, reason = "a few lines")]
const fn rows(count: usize) -> f32 {
    count as f32
}
