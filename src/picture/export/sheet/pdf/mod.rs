//! Pages as a PDF file, in their true size, with the letters as text in embedded faces.
//!
//! Each page is in the file before the next is laid out. What is kept of it is where it begins, and which
//! letters of each face stand on it: the faces come at the end, with no others.

mod error;
mod face;
mod file;

use std::io::{self, Write};
use std::ops::ControlFlow;

use kurbo::{BezPath, PathEl, Point, QuadBez, Shape};
use pdf_writer::writers::{Catalog, DocumentInfo, Resources};
use pdf_writer::{Content, Name, Rect, Ref, Str, TextStr};

pub use self::error::PdfError;
use self::face::PdfFace;
use self::file::PdfFile;
use super::page::{SheetPage, TextLine};
use super::pages::Sheet;
use crate::picture::draw::{
    Colour, DefaultPalette, DisplayItem, Outline, Paint, Palette, Role, Weight,
};
use crate::picture::scene::{coordinates, single};

/// Points of PDF in a millimetre: 72 an inch (ISO 32000, "user space").
const POINTS: f32 = 72.0 / 25.4;

/// Writes a sheet into a PDF file under a title, page by page. `goes_on` is told after each how many are
/// done, and of how many, and says whether to go on.
///
/// # Errors
/// [`PdfError`] when it can't be written, or is stopped.
pub fn write_pdf(
    sheet: &(impl Sheet + ?Sized),
    title: &str,
    out: impl Write,
    mut goes_on: impl FnMut(u32, u32) -> bool,
) -> Result<(), PdfError> {
    let mut pdf = PdfPages::begin(out)?;
    let count = u32::try_from(sheet.count()).unwrap_or(u32::MAX);
    let (mut done, mut fault) = (0, None);
    let laid_out = sheet.lay_out(&mut |page| {
        if let Err(error) = pdf.page(&page) {
            fault = Some(error);
            return ControlFlow::Break(());
        }
        done += 1;
        if goes_on(done, count) {
            ControlFlow::Continue(())
        } else {
            ControlFlow::Break(())
        }
    });
    match (fault, laid_out) {
        (Some(fault), _) => Err(fault.into()),
        (None, ControlFlow::Break(())) => Err(PdfError::Stopped { done, count }),
        (None, ControlFlow::Continue(())) => pdf.finish(title),
    }
}

/// A PDF file on its way.
struct PdfPages<W> {
    file: PdfFile<W>,
    /// What lists the pages, and what they are drawn with: both are written once all pages are there.
    tree: Ref,
    resources: Ref,
    pages: Vec<Ref>,
    faces: [PdfFace; 2],
    palette: DefaultPalette,
}

impl<W: Write> PdfPages<W> {
    fn begin(out: W) -> io::Result<Self> {
        let mut file = PdfFile::begin(out)?;
        let (tree, resources) = (file.reserve(), file.reserve());
        let faces = [Weight::Regular, Weight::Bold].map(|weight| PdfFace::new(weight, &mut file));
        Ok(Self {
            file,
            tree,
            resources,
            pages: Vec::new(),
            faces,
            palette: DefaultPalette::light(),
        })
    }

    fn page(&mut self, page: &SheetPage) -> io::Result<()> {
        let mut content = Content::new();
        // From here on as on the page: millimetres, from the top left corner down.
        content.transform([POINTS, 0.0, 0.0, -POINTS, 0.0, page.height * POINTS]);
        for item in &page.items {
            draw(item, self.palette.colour(item.role), &mut content);
        }
        let [red, green, blue] = ink(self.palette.colour(Role::Label));
        content.set_fill_rgb(red, green, blue);
        for line in &page.lines {
            let nth = usize::from(line.weight == Weight::Bold);
            write(line, &mut self.faces[nth], &mut content);
        }
        let contents = self.file.reserve();
        self.file.put_stream(contents, &content.finish(), |_| ())?;
        let number = self.file.reserve();
        let (tree, resources) = (self.tree, self.resources);
        self.file.put(number, |object| {
            let mut sheet = object.start::<pdf_writer::writers::Page>();
            let (width, height) = (page.width * POINTS, page.height * POINTS);
            sheet
                .parent(tree)
                .media_box(Rect::new(0.0, 0.0, width, height))
                .contents(contents)
                .pair(Name(b"Resources"), resources);
        })?;
        self.pages.push(number);
        Ok(())
    }

    fn finish(mut self, title: &str) -> Result<(), PdfError> {
        let faces = self.faces.iter().filter(|face| face.is_used());
        let faces: Vec<&PdfFace> = faces.collect();
        for face in &faces {
            face.write(&mut self.file)?;
        }
        let file = &mut self.file;
        file.put(self.resources, |object| {
            let mut resources = object.start::<Resources>();
            let mut fonts = resources.fonts();
            for face in &faces {
                fonts.pair(face.name(), face.font());
            }
        })?;
        file.put(self.tree, |object| {
            let mut tree = object.start::<pdf_writer::writers::Pages>();
            let count = i32::try_from(self.pages.len()).unwrap_or(i32::MAX);
            tree.count(count).kids(self.pages.iter().copied());
        })?;
        let (root, info) = (file.reserve(), file.reserve());
        file.put(root, |object| {
            object.start::<Catalog>().pages(self.tree);
        })?;
        file.put(info, |object| {
            object.start::<DocumentInfo>().title(TextStr(title));
        })?;
        Ok(self.file.finish(root, info)?)
    }
}

/// A shape. No colour lets another through: a shape is seen or left out.
fn draw(item: &DisplayItem, colour: Colour, content: &mut Content) {
    if colour.opacity == 0 {
        return;
    }
    let [red, green, blue] = ink(colour);
    match item.paint {
        Paint::Fill => content.set_fill_rgb(red, green, blue),
        Paint::Stroke(width) => content
            .set_stroke_rgb(red, green, blue)
            .set_line_width(single(width)),
    };
    match &item.outline {
        // The format knows no circles: curves take its place that stray from it by less than a
        // thousandth of its radius.
        Outline::Circle(circle) => follow(&circle.to_path(circle.radius * 1e-3), content),
        Outline::Path(path) => follow(path, content),
    }
    match item.paint {
        Paint::Fill => content.fill_nonzero(),
        Paint::Stroke(_) => content.stroke(),
    };
}

fn follow(path: &BezPath, content: &mut Content) {
    let mut last = Point::ORIGIN;
    for element in path.elements() {
        match *element {
            PathEl::MoveTo(to) => {
                let (x, y) = coordinates(to);
                content.move_to(x, y);
            }
            PathEl::LineTo(to) => {
                let (x, y) = coordinates(to);
                content.line_to(x, y);
            }
            PathEl::QuadTo(one, to) => {
                let curve = QuadBez::new(last, one, to).raise();
                curve_to([curve.p1, curve.p2, to], content);
            }
            PathEl::CurveTo(one, two, to) => curve_to([one, two, to], content),
            PathEl::ClosePath => {
                content.close_path();
            }
        }
        last = element.end_point().unwrap_or(last);
    }
}

fn curve_to(points: [Point; 3], content: &mut Content) {
    let [(x1, y1), (x2, y2), (x, y)] = points.map(coordinates);
    content.cubic_to(x1, y1, x2, y2, x, y);
}

/// A line of text, upright on a page that is upside down to the format.
fn write(line: &TextLine, face: &mut PdfFace, content: &mut Content) {
    let set = face.set(&line.text);
    if let Some(text) = &set.reads {
        content
            .begin_marked_content_with_properties(Name(b"Span"))
            .properties()
            .actual_text(TextStr(text));
    }
    let (x, y) = line.from;
    content
        .begin_text()
        .set_font(face.name(), line.size)
        .set_text_matrix([1.0, 0.0, 0.0, -1.0, x, y])
        .show(Str(&set.codes))
        .end_text();
    if set.reads.is_some() {
        content.end_marked_content();
    }
}

fn ink(colour: Colour) -> [f32; 3] {
    [colour.red, colour.green, colour.blue].map(|part| f32::from(part) / 255.0)
}
