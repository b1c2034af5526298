//! Digits and short words as outlines, so that every painter draws the same ones.

use std::sync::OnceLock;

use kurbo::{BezPath, PathEl, Point, Vec2};
use ttf_parser::{Face, GlyphId, OutlineBuilder};

use super::item::{DisplayItem, Role};
use crate::picture::scene::{coordinates, point};

/// How heavy the letters are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// The face B612 Regular, for running text.
    Regular,
    /// The face B612 Bold, for what is looked for first.
    Bold,
}

/// The embedded face: B612, under the SIL Open Font License.
fn face(weight: Weight) -> Option<&'static Face<'static>> {
    static REGULAR: OnceLock<Option<Face<'static>>> = OnceLock::new();
    static BOLD: OnceLock<Option<Face<'static>>> = OnceLock::new();
    let cell = match weight {
        Weight::Regular => &REGULAR,
        Weight::Bold => &BOLD,
    };
    cell.get_or_init(|| Face::parse(file(weight), 0).ok())
        .as_ref()
}

/// The file of the face.
pub const fn file(weight: Weight) -> &'static [u8] {
    match weight {
        Weight::Regular => include_bytes!("../../../resources/fonts/B612-Regular.otf"),
        Weight::Bold => include_bytes!("../../../resources/fonts/B612-Bold.otf"),
    }
}

/// The width in pixels of `text` set `size` pixels to the em.
pub fn width(text: &str, size: f32, weight: Weight) -> f32 {
    face(weight).map_or(0.0, |face| {
        let mut units = 0.0;
        for letter in text.chars() {
            with_glyph(face, weight, letter, |glyph| units += glyph.advance);
        }
        units * size / f32::from(face.units_per_em())
    })
}

/// `text` as a filled shape, centred both ways on `centre`. Letters that the face lacks are
/// left out.
pub fn centred(role: Role, text: &str, size: f32, weight: Weight, centre: Point) -> DisplayItem {
    let height = face(weight).map_or(0.0, |face| {
        let capital = face.capital_height().map_or(0.0, f32::from);
        capital * size / f32::from(face.units_per_em())
    });
    let middle = Vec2::new(width(text, size, weight).into(), (-height).into()) / 2.0;
    line(role, text, size, weight, centre - middle)
}

/// `text` as a filled shape whose baseline begins at `from`. Letters that the face lacks are
/// left out.
pub fn line(role: Role, text: &str, size: f32, weight: Weight, from: Point) -> DisplayItem {
    let mut path = BezPath::new();
    if let Some(face) = face(weight) {
        let scale = size / f32::from(face.units_per_em());
        let (mut x, baseline) = coordinates(from);
        for letter in text.chars() {
            with_glyph(face, weight, letter, |glyph| {
                // Turned the right way up and scaled to pixels.
                let place = |at: Point| {
                    let (right, up) = coordinates(at);
                    point(x + right * scale, baseline - up * scale)
                };
                path.extend(glyph.outline.iter().map(|step| placed(step, place)));
                x += glyph.advance * scale;
            });
        }
    }
    DisplayItem::fill(role, path)
}

fn placed(step: PathEl, place: impl Fn(Point) -> Point) -> PathEl {
    match step {
        PathEl::MoveTo(to) => PathEl::MoveTo(place(to)),
        PathEl::LineTo(to) => PathEl::LineTo(place(to)),
        PathEl::QuadTo(one, to) => PathEl::QuadTo(place(one), place(to)),
        PathEl::CurveTo(one, two, to) => PathEl::CurveTo(place(one), place(two), place(to)),
        PathEl::ClosePath => PathEl::ClosePath,
    }
}

/// A letter, in the units of its face.
#[derive(Default)]
struct Glyph {
    outline: BezPath,
    advance: f32,
}

impl Glyph {
    /// Nothing at all for a letter that the face lacks.
    fn read(face: &Face<'_>, letter: char) -> Self {
        let Some(glyph) = glyph_of(face, letter) else {
            return Self::default();
        };
        let mut pen = Pen(BezPath::new());
        // A blank has no outline; it still takes its width.
        let _ = face.outline_glyph(glyph, &mut pen);
        Self {
            outline: pen.0,
            advance: advance(face, letter),
        }
    }
}

/// Shows a letter of the face. Digits are read out of it once: a picture has hundreds.
fn with_glyph(face: &Face<'_>, weight: Weight, letter: char, show: impl FnOnce(&Glyph)) {
    static REGULAR: OnceLock<[Glyph; 10]> = OnceLock::new();
    static BOLD: OnceLock<[Glyph; 10]> = OnceLock::new();
    let digits = match weight {
        Weight::Regular => &REGULAR,
        Weight::Bold => &BOLD,
    };
    let read =
        || ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9'].map(|digit| Glyph::read(face, digit));
    let digit = letter
        .to_digit(10)
        .and_then(|digit| usize::try_from(digit).ok());
    match digit.and_then(|digit| digits.get_or_init(read).get(digit)) {
        Some(glyph) => show(glyph),
        None => show(&Glyph::read(face, letter)),
    }
}

/// The glyphs that `text` is set with: the number of each in its face, how far it moves the
/// pen in ems, and which letter it stands for. Letters that the face lacks are left out.
pub fn glyphs(text: &str, weight: Weight) -> impl Iterator<Item = (u16, f32, char)> + '_ {
    face(weight).into_iter().flat_map(move |face| {
        let em = f32::from(face.units_per_em());
        text.chars().filter_map(move |letter| {
            let glyph = glyph_of(face, letter)?;
            Some((glyph.0, advance(face, letter) / em, letter))
        })
    })
}

/// The glyph of a letter. A space that the face lacks, such as the narrow one within French numbers, is
/// set as the usual one: without it 1 257 would read as if it had none.
fn glyph_of(face: &Face<'_>, letter: char) -> Option<GlyphId> {
    let space = || face.glyph_index(' ').filter(|_| letter.is_whitespace());
    face.glyph_index(letter).or_else(space)
}

fn advance(face: &Face<'_>, letter: char) -> f32 {
    glyph_of(face, letter)
        .and_then(|glyph| face.glyph_hor_advance(glyph))
        .map_or(0.0, f32::from)
}

/// Collects the outline of a glyph.
struct Pen(BezPath);

impl OutlineBuilder for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.0.move_to(point(x, y));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.0.line_to(point(x, y));
    }

    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.0.quad_to(point(x1, y1), point(x, y));
    }

    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        self.0.curve_to(point(x1, y1), point(x2, y2), point(x, y));
    }

    fn close(&mut self) {
        self.0.close_path();
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::draw::Outline;

    #[test]
    fn every_digit_has_an_outline_in_both_weights() {
        for weight in [Weight::Regular, Weight::Bold] {
            for digit in '0'..='9' {
                let text = digit.to_string();
                let digit = centred(Role::Label, &text, 20.0, weight, Point::ORIGIN);
                let Outline::Path(path) = digit.outline else {
                    panic!("letters are paths");
                };
                assert!(path.elements().len() > 4, "{text} {weight:?}");
            }
        }
    }

    #[test]
    fn letters_stand_centred_and_their_capitals_reach_half_way_up() {
        let middle = Point::new(50.0, 50.0);
        let letter = centred(Role::Label, "H", 100.0, Weight::Regular, middle);
        let Outline::Path(path) = letter.outline else {
            panic!("letters are paths");
        };
        let bounds = path.control_box();
        assert!((bounds.center().y - 50.0).abs() < 1.0, "{bounds}");
        assert!(bounds.height() > 60.0, "{bounds}");
    }
}
