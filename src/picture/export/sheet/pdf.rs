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
use kurbo::{PathEl, Shape, TranslateScale};

use super::page::{SheetPage, TextLine};
use crate::picture::draw::{
    self, Colour, DefaultPalette, DisplayItem, Outline, Paint, Palette, Role, Weight,
};
use crate::picture::export::error::ExportError;
use crate::picture::scene::{coordinates, single};

/// Points of PDF in a millimetre: 72 an inch (ISO 32000, "user space").
const POINTS: f32 = 72.0 / 25.4;

/// The bytes of a PDF file of these pages under a title.
///
/// # Errors
/// [`ExportError::Pdf`] when the writer can't take a page.
pub fn pdf(pages: &[SheetPage], title: &str) -> Result<Vec<u8>, ExportError> {
    let whole = pdf_while(pages, title, |_| true)?;
    Ok(whole.unwrap_or_default())
}

/// The same, as long as `goes_on` says so, which is asked after each page with how many are done. None
/// where it says no.
///
/// # Errors
/// As [`pdf`].
pub fn pdf_while(
    pages: &[SheetPage],
    title: &str,
    mut goes_on: impl FnMut(u32) -> bool,
) -> Result<Option<Vec<u8>>, ExportError> {
    let face = |weight| {
        Font::new(Data::from(draw::file(weight).to_vec()), 0)
            .ok_or_else(|| ExportError::Pdf(format!("the face {weight:?}")))
    };
    let (regular, bold) = (face(Weight::Regular)?, face(Weight::Bold)?);
    let palette = DefaultPalette::light();
    let larger = TranslateScale::scale(POINTS.into());
    let mut document = Document::new();
    document.set_metadata(Metadata::new().title(title.to_owned()));
    for (done, page) in (1..).zip(pages) {
        let settings = PageSettings::from_wh(page.width * POINTS, page.height * POINTS)
            .ok_or_else(|| ExportError::Pdf("the size of a page".to_owned()))?;
        let mut sheet = document.start_page_with(settings);
        let mut surface = sheet.surface();
        for item in &page.items {
            let colour = palette.colour(item.role);
            draw_item(&item.moved(larger), colour, &mut surface);
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
        if !goes_on(done) {
            return Ok(None);
        }
    }
    document
        .finish()
        .map(Some)
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
                width: single(width),
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
    let start = PdfPoint::from_xy(line.from.0 * POINTS, line.from.1 * POINTS);
    surface.draw_glyphs(start, &glyphs, font, &line.text, line.size * POINTS, false);
}

/// An outline as the PDF has it, which knows no circles: curves take their place that stray from
/// it by less than a thousandth of its radius.
fn path(outline: &Outline) -> Option<krilla::geom::Path> {
    let elements = match outline {
        Outline::Circle(circle) => circle.to_path(circle.radius * 1e-3),
        Outline::Path(path) => path.clone(),
    };
    let mut builder = PathBuilder::new();
    for element in elements {
        match element {
            PathEl::MoveTo(to) => {
                let (x, y) = coordinates(to);
                builder.move_to(x, y);
            }
            PathEl::LineTo(to) => {
                let (x, y) = coordinates(to);
                builder.line_to(x, y);
            }
            PathEl::QuadTo(one, to) => {
                let [(x1, y1), (x, y)] = [one, to].map(coordinates);
                builder.quad_to(x1, y1, x, y);
            }
            PathEl::CurveTo(one, two, to) => {
                let [(x1, y1), (x2, y2), (x, y)] = [one, two, to].map(coordinates);
                builder.cubic_to(x1, y1, x2, y2, x, y);
            }
            PathEl::ClosePath => builder.close(),
        }
    }
    builder.finish()
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
