//! Pictures as SVG (W3C, *Scalable Vector Graphics 1.1*), which is drawn in any size.

use std::fmt::Write as _;

use crate::picture::draw::{Colour, DisplayList, Outline, Paint, Palette, Segment};
use crate::picture::scene::Viewport;

/// The text of an SVG file of a picture. Its letters are outlines.
pub fn svg(list: &DisplayList, palette: &dyn Palette) -> String {
    let Viewport { width, height } = list.viewport();
    let mut text =
        format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\">\n");
    for item in list.items() {
        let colour = palette.colour(item.role);
        if colour.opacity == 0 {
            continue;
        }
        let paint = match item.paint {
            Paint::Fill => format!("fill=\"{}\"", code(colour)),
            Paint::Stroke(width) => {
                format!(
                    "fill=\"none\" stroke=\"{}\" stroke-width=\"{width:.2}\"",
                    code(colour)
                )
            }
        };
        // Writing to a text does not fail.
        let _ = match &item.outline {
            Outline::Circle { centre, radius } => writeln!(
                text,
                "<circle cx=\"{:.2}\" cy=\"{:.2}\" r=\"{radius:.2}\" {paint}/>",
                centre.x, centre.y
            ),
            Outline::Path(path) => writeln!(text, "<path d=\"{}\" {paint}/>", path_data(path)),
        };
    }
    text.push_str("</svg>\n");
    text
}

fn code(colour: Colour) -> String {
    format!("#{:02x}{:02x}{:02x}", colour.red, colour.green, colour.blue)
}

fn path_data(path: &[Segment]) -> String {
    let mut text = String::new();
    for segment in path {
        let _ = match segment {
            Segment::Move(to) => write!(text, "M{:.2} {:.2}", to.x, to.y),
            Segment::Line(to) => write!(text, "L{:.2} {:.2}", to.x, to.y),
            Segment::Cubic(one, two, to) => write!(
                text,
                "C{:.2} {:.2} {:.2} {:.2} {:.2} {:.2}",
                one.x, one.y, two.x, two.y, to.x, to.y
            ),
            Segment::Close => write!(text, "Z"),
        };
    }
    text
}
