//! The painter that makes pixels, and PNG files of them.

use std::borrow::Cow;
use std::error::Error;
use std::fmt;
use std::ops::Range;

use super::band::{Band, Plan};
use super::changes::{Trace, changes, contours, traces};
use super::palette::{Colour, Palette};
use super::scene::{Look, Scene};
use super::shape::{Point, Shape};
use super::wanted::Wanted;

/// A finished picture, row by row from the top.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Image {
    width: u32,
    height: u32,
    pixels: Vec<u8>,
}

impl Image {
    /// Width in pixels.
    pub const fn width(&self) -> u32 {
        self.width
    }

    /// Height in pixels.
    pub const fn height(&self) -> u32 {
        self.height
    }

    /// The pixels in these columns and rows, row by row, as [`pixels`](Self::pixels) has them.
    /// What lies outside the picture is left out.
    pub fn part(&self, columns: &Range<u32>, rows: &Range<u32>) -> Vec<u8> {
        let (start, end) = (4 * columns.start as usize, 4 * columns.end as usize);
        let width = (4 * self.width as usize).max(1);
        let rows = self
            .pixels
            .chunks_exact(width)
            .take(rows.end as usize)
            .skip(rows.start as usize);
        let mut part = Vec::with_capacity((end - start) * rows.len());
        for row in rows {
            part.extend_from_slice(row.get(start..end).unwrap_or_default());
        }
        part
    }

    /// Red, green, blue and opacity of every pixel. A [`Tones`](super::Tones) picture is opaque
    /// all over; where another palette leaves the ground out, colours are multiplied by their
    /// opacity.
    pub fn pixels(&self) -> &[u8] {
        &self.pixels
    }

    /// The colour of one pixel, or `None` outside the picture.
    pub fn pixel(&self, column: u32, row: u32) -> Option<Colour> {
        if column >= self.width || row >= self.height {
            return None;
        }
        let at = 4 * (row as usize * self.width as usize + column as usize);
        match self.pixels.get(at..at + 4)? {
            &[red, green, blue, opacity] => Some(Colour {
                red,
                green,
                blue,
                opacity,
            }),
            _ => None,
        }
    }

    /// The bytes of a PNG file that says how many dots of it make an inch on paper.
    ///
    /// # Errors
    /// [`RasterError::Png`] when the picture can't be encoded.
    pub fn png(&self, dots_per_inch: u16) -> Result<Vec<u8>, RasterError> {
        let refused = |error: png::EncodingError| RasterError::Png(error.to_string());
        let mut bytes = Vec::new();
        let mut encoder = png::Encoder::new(&mut bytes, self.width(), self.height());
        encoder.set_color(png::ColorType::Rgba);
        encoder.set_depth(png::BitDepth::Eight);
        // An inch is 25.4 mm, so n dots an inch are n / 0.0254 a metre.
        let per_metre = (u32::from(dots_per_inch) * 10_000 + 127) / 254;
        encoder.set_pixel_dims(Some(png::PixelDimensions {
            xppu: per_metre,
            yppu: per_metre,
            unit: png::Unit::Meter,
        }));
        let mut writer = encoder.write_header().map_err(refused)?;
        writer.write_image_data(&self.pixels).map_err(refused)?;
        writer.finish().map_err(refused)?;
        Ok(bytes)
    }
}

/// Why there is no picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RasterError {
    /// The PNG encoder refused, with its own words.
    Png(String),
}

impl fmt::Display for RasterError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Png(reason) => write!(f, "the picture can't be encoded as PNG: {reason}"),
        }
    }
}

impl Error for RasterError {}

/// Pictures with more pixels than this are painted in bands, side by side on several threads.
const SMALL: usize = 300_000;

/// Paints scenes into images of its own, again and again.
///
/// A picture that is rolled out and cut open just before one pin or another goes to and fro between
/// the two from leg to leg. So the last two looks at the tube are kept, and what is painted anew is
/// what has changed since the same look.
#[derive(Debug, Default)]
pub struct Painter {
    /// The one painted last, and the one before that.
    pages: [Page; 2],
    bands: Vec<Band>,
    /// Where the image may differ from the one before.
    changed: Wanted,
}

/// An image and what it shows.
#[derive(Debug, Default)]
struct Page {
    image: Image,
    look: Option<Look>,
    traces: Vec<Trace>,
}

impl Page {
    fn is_of(&self, size: (u32, u32), look: Option<Look>) -> bool {
        self.size() == size && self.look == look
    }

    const fn size(&self) -> (u32, u32) {
        (self.image.width, self.image.height)
    }

    /// Where it shows something else than these traces in an image of that size and look.
    fn differences(&self, size: (u32, u32), look: Option<Look>, traces: &[Trace]) -> Wanted {
        let (width, height) = (size.0 as usize, size.1 as usize);
        if self.size() != size {
            return Wanted::all(width, height);
        }
        let mut wanted = Wanted::none(width, height);
        if self.look == look {
            changes(&self.traces, traces, |columns, rows| {
                wanted.add(columns, rows);
            });
        } else {
            // From another look nearly everything differs, and one piece is painted sooner.
            changes(&self.traces, traces, |columns, rows| {
                wanted.stretch(columns, rows);
            });
        }
        wanted
    }

    /// Takes what is to be seen; the image is to be painted yet.
    fn turn_to(&mut self, size: (u32, u32), look: Option<Look>, traces: Vec<Trace>) {
        if self.size() != size {
            let (width, height) = size;
            self.image = Image {
                width,
                height,
                pixels: vec![0; 4 * width as usize * height as usize],
            };
        }
        self.look = look;
        self.traces = traces;
    }
}

impl Painter {
    /// A painter with nothing painted yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// The image painted last.
    pub fn into_image(self) -> Image {
        let [last, _] = self.pages;
        last.image
    }

    /// The image painted last.
    pub const fn image(&self) -> &Image {
        &self.pages[0].image
    }

    /// Whether anything in these columns and rows may differ from the image before.
    pub fn has_changed(&self, columns: &Range<u32>, rows: &Range<u32>) -> bool {
        let [columns, rows] = [columns, rows].map(|range| range.start as usize..range.end as usize);
        self.changed.has_any(&columns, &rows)
    }

    /// Paints a scene and gives the image, of the size of the scene's frame. Where it shows the
    /// same as a scene painted before, nothing is done.
    pub fn paint(&mut self, scene: &Scene, palette: &dyn Palette) -> &Image {
        self.paint_at(scene, palette, 1.0)
    }

    /// The same with `scale` dots for a pixel of the frame, each way: for screens that show
    /// everything larger.
    pub fn paint_at(&mut self, scene: &Scene, palette: &dyn Palette, scale: f32) -> &Image {
        let frame = scene.frame();
        let [width, height] = [frame.width, frame.height].map(|length| pixels(length * scale));
        let (size, look) = ((width, height), scene.look());
        let shapes = enlarged(scene.shapes(), scale);
        let colours: Vec<Colour> = shapes
            .iter()
            .map(|shape| palette.colour(shape.role))
            .collect();
        let contours = contours(&shapes, &colours);
        let traces = traces(&contours);
        let mut wanted = self.pages[0].differences(size, look, &traces);
        self.changed = wanted.clone();
        if !self.pages[0].is_of(size, look) {
            self.pages.swap(0, 1);
            wanted = self.pages[0].differences(size, look, &traces);
        }
        let page = &mut self.pages[0];
        page.turn_to(size, look, traces);
        let (width, height) = (width as usize, height as usize);
        let count = if width * height <= SMALL {
            1
        } else {
            std::thread::available_parallelism().map_or(1, |threads| threads.get().min(8))
        };
        let rows = height.div_ceil(count);
        self.bands.resize_with(count, Band::default);
        let parts = page.image.pixels.chunks_mut(4 * width * rows);
        let plan = Plan {
            shapes: &shapes,
            colours: &colours,
            contours: &contours,
        };
        let wanted = &wanted;
        let paint = move |nth: usize, band: &mut Band, part: &mut [u8]| {
            let top = nth * rows;
            for layer in wanted.layers(&(top..top + rows)) {
                band.paint(plan, part, width, top, layer);
            }
        };
        std::thread::scope(|scope| {
            let mut own = None;
            for (nth, (band, part)) in self.bands.iter_mut().zip(parts).enumerate() {
                if nth == 0 {
                    own = Some((band, part));
                } else {
                    scope.spawn(move || paint(nth, band, part));
                }
            }
            // The first band is painted here, while the others are painted beside it.
            if let Some((band, part)) = own {
                paint(0, band, part);
            }
        });
        &page.image
    }
}

fn enlarged(shapes: &[Shape], scale: f32) -> Cow<'_, [Shape]> {
    #[expect(clippy::float_cmp, reason = "1 is told as it is")]
    if scale == 1.0 {
        return Cow::Borrowed(shapes);
    }
    let origin = Point::default();
    let shapes = shapes.iter().map(|shape| shape.moved(scale, origin));
    Cow::Owned(shapes.collect())
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a frame is 64 to 16 384 pixels each way"
)]
fn pixels(length: f32) -> u32 {
    length.round() as u32
}
