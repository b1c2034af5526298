//! Digits and short words as outlines, so that every painter draws the same ones.

use std::ops::Range;
use std::sync::OnceLock;

use kurbo::{BezPath, Point, Vec2};
use ttf_parser::{Face, OutlineBuilder};

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
        let units: f32 = text.chars().map(|letter| advance(face, letter)).sum();
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
    let mut pen = Pen::default();
    if let Some(face) = face(weight) {
        pen.scale = size / f32::from(face.units_per_em());
        (pen.x, pen.baseline) = coordinates(from);
        for letter in text.chars() {
            if let Some(glyph) = face.glyph_index(letter) {
                // A blank has no outline; it still takes its width.
                let _ = face.outline_glyph(glyph, &mut pen);
            }
            pen.x += advance(face, letter) * pen.scale;
        }
    }
    DisplayItem::fill(role, pen.path)
}

/// The glyphs that `text` is set with: the number of each in its face, how far it moves the
/// pen in ems, and which bytes of the text it stands for. Letters that the face lacks are left
/// out.
pub fn glyphs(text: &str, weight: Weight) -> impl Iterator<Item = (u16, f32, Range<usize>)> + '_ {
    face(weight).into_iter().flat_map(move |face| {
        let em = f32::from(face.units_per_em());
        text.char_indices().filter_map(move |(start, letter)| {
            let glyph = face.glyph_index(letter)?;
            let range = start..start + letter.len_utf8();
            Some((glyph.0, advance(face, letter) / em, range))
        })
    })
}

fn advance(face: &Face<'_>, letter: char) -> f32 {
    face.glyph_index(letter)
        .and_then(|glyph| face.glyph_hor_advance(glyph))
        .map_or(0.0, f32::from)
}

/// Collects outlines, turned the right way up and scaled to pixels.
#[derive(Default)]
struct Pen {
    path: BezPath,
    scale: f32,
    x: f32,
    baseline: f32,
}

impl Pen {
    fn place(&self, x: f32, y: f32) -> Point {
        point(self.x + x * self.scale, self.baseline - y * self.scale)
    }
}

impl OutlineBuilder for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.path.move_to(self.place(x, y));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.path.line_to(self.place(x, y));
    }

    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.path.quad_to(self.place(x1, y1), self.place(x, y));
    }

    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        let controls = (self.place(x1, y1), self.place(x2, y2));
        self.path.curve_to(controls.0, controls.1, self.place(x, y));
    }

    fn close(&mut self) {
        self.path.close_path();
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
