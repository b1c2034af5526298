//! Pictures as SVG (W3C, *Scalable Vector Graphics 1.1*), which is drawn in any size.

use std::fmt::Write as _;

use kurbo::{BezPath, PathEl};

use crate::picture::draw::{Colour, DisplayList, Outline, Paint, Palette};
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
            Outline::Circle(circle) => writeln!(
                text,
                "<circle cx=\"{:.2}\" cy=\"{:.2}\" r=\"{:.2}\" {paint}/>",
                circle.center.x, circle.center.y, circle.radius
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

/// The data of a path to a hundredth of a pixel: with all digits the file would be thrice as long.
fn path_data(path: &BezPath) -> String {
    let mut text = String::new();
    for element in path {
        let (letter, points) = match element {
            PathEl::MoveTo(to) => ('M', vec![to]),
            PathEl::LineTo(to) => ('L', vec![to]),
            PathEl::QuadTo(one, to) => ('Q', vec![one, to]),
            PathEl::CurveTo(one, two, to) => ('C', vec![one, two, to]),
            PathEl::ClosePath => ('Z', Vec::new()),
        };
        text.push(letter);
        let points = points.iter().map(|at| format!("{:.2} {:.2}", at.x, at.y));
        text.push_str(&points.collect::<Vec<_>>().join(" "));
    }
    text
}
