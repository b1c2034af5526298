//! Pages as a PDF file, in their true size, with the letters as text in embedded faces.

use krilla::color::rgb;
use krilla::geom::{PathBuilder, Point as PdfPoint};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};
use krilla::{Data, Document};

use super::page::{SheetPage, TextLine};
use crate::picture::draw::{
    self, Colour, DefaultPalette, DisplayItem, Outline, Paint, Palette, Role, Segment, Weight,
};
use crate::picture::export::error::ExportError;
use crate::picture::scene::Point;

/// Points of PDF in a millimetre: 72 an inch (ISO 32000, "user space").
const POINTS: f32 = 72.0 / 25.4;

/// The bytes of a PDF file of these pages under a title.
///
/// # Errors
/// [`ExportError::Pdf`] when the writer can't take a page.
pub fn pdf(pages: &[SheetPage], title: &str) -> Result<Vec<u8>, ExportError> {
    let face = |weight| {
        Font::new(Data::from(draw::file(weight).to_vec()), 0)
            .ok_or_else(|| ExportError::Pdf(format!("the face {weight:?}")))
    };
    let (regular, bold) = (face(Weight::Regular)?, face(Weight::Bold)?);
    let palette = DefaultPalette::light();
    let mut document = Document::new();
    document.set_metadata(Metadata::new().title(title.to_owned()));
    for page in pages {
        let settings = PageSettings::from_wh(page.width * POINTS, page.height * POINTS)
            .ok_or_else(|| ExportError::Pdf("the size of a page".to_owned()))?;
        let mut sheet = document.start_page_with(settings);
        let mut surface = sheet.surface();
        for item in &page.items {
            draw_item(
                &item.moved(POINTS, Point::default()),
                palette.colour(item.role),
                &mut surface,
            );
        }
        surface.set_stroke(None);
        surface.set_fill(Some(filled(palette.colour(Role::Label))));
        for line in &page.lines {
            let font = match line.weight {
                Weight::Regular => &regular,
                Weight::Bold => &bold,
            };
            write(line, font.clone(), &mut surface);
        }
        surface.finish();
        sheet.finish();
    }
    document
        .finish()
        .map_err(|error| ExportError::Pdf(format!("{error:?}")))
}

fn draw_item(item: &DisplayItem, colour: Colour, surface: &mut Surface<'_>) {
    let Some(path) = path(&item.outline) else {
        return;
    };
    match item.paint {
        Paint::Fill => {
            surface.set_stroke(None);
            surface.set_fill(Some(filled(colour)));
        }
        Paint::Stroke(width) => {
            surface.set_fill(None);
            surface.set_stroke(Some(Stroke {
                paint: ink(colour).into(),
                width,
                opacity: opacity(colour),
                ..Stroke::default()
            }));
        }
    }
    surface.draw_path(&path);
}

fn write(line: &TextLine, font: Font, surface: &mut Surface<'_>) {
    let glyphs: Vec<KrillaGlyph> = draw::glyphs(&line.text, line.weight)
        .map(|(number, advance, range)| {
            KrillaGlyph::new(
                GlyphId::new(number.into()),
                advance,
                0.0,
                0.0,
                0.0,
                range,
                None,
            )
        })
        .collect();
    let start = PdfPoint::from_xy(line.from.x * POINTS, line.from.y * POINTS);
    surface.draw_glyphs(start, &glyphs, font, &line.text, line.size * POINTS, false);
}

fn path(outline: &Outline) -> Option<krilla::geom::Path> {
    let mut builder = PathBuilder::new();
    match outline {
        Outline::Circle { centre, radius } => circle(&mut builder, *centre, *radius),
        Outline::Path(segments) => {
            for segment in segments {
                match *segment {
                    Segment::Move(to) => builder.move_to(to.x, to.y),
                    Segment::Line(to) => builder.line_to(to.x, to.y),
                    Segment::Cubic(one, two, to) => {
                        builder.cubic_to(one.x, one.y, two.x, two.y, to.x, to.y);
                    }
                    Segment::Close => builder.close(),
                }
            }
        }
    }
    builder.finish()
}

/// Four cubic curves; each strays from a quarter circle by less than 0.03 % of its radius when
/// the controls lie 4 (√2 − 1) / 3 of it away.
fn circle(builder: &mut PathBuilder, centre: Point, radius: f32) {
    let away = radius * (4.0 / 3.0) * (std::f32::consts::SQRT_2 - 1.0);
    let at = |right: f32, down: f32| (centre.x + right, centre.y + down);
    let quarters = [
        [(radius, away), (away, radius), (0.0, radius)],
        [(-away, radius), (-radius, away), (-radius, 0.0)],
        [(-radius, -away), (-away, -radius), (0.0, -radius)],
        [(away, -radius), (radius, -away), (radius, 0.0)],
    ];
    let (x, y) = at(radius, 0.0);
    builder.move_to(x, y);
    for [one, two, to] in quarters {
        let [one, two, to] = [one, two, to].map(|(right, down)| at(right, down));
        builder.cubic_to(one.0, one.1, two.0, two.1, to.0, to.1);
    }
    builder.close();
}

fn filled(colour: Colour) -> Fill {
    Fill {
        paint: ink(colour).into(),
        opacity: opacity(colour),
        rule: FillRule::NonZero,
    }
}

fn ink(colour: Colour) -> rgb::Color {
    rgb::Color::new(colour.red, colour.green, colour.blue)
}

fn opacity(colour: Colour) -> NormalizedF32 {
    NormalizedF32::new(f32::from(colour.opacity) / 255.0).unwrap_or(NormalizedF32::ONE)
}
