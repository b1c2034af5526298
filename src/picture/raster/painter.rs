//! The painter that makes pixels of display lists.

use std::borrow::Cow;
use std::ops::Range;

use kurbo::TranslateScale;

use super::band::{Band, PaintJob};
use super::buffer::Buffer;
use super::contours::{contours, fingerprints};
use super::damage::Damage;
use super::image::Image;
use crate::picture::draw::{Colour, DisplayItem, DisplayList, Palette};

/// Pictures with more pixels than this are painted in bands, side by side on several threads.
const SMALL: usize = 300_000;

/// Paints display lists into images of its own, again and again.
///
/// A picture that is rolled out and cut open just before one pin or another goes to and fro between
/// the two from leg to leg. So the last two viewpoints are kept, and what is painted anew is what
/// has changed since the picture from the same one.
#[derive(Debug, Default)]
pub struct Painter {
    /// The one painted last, and the one before that.
    buffers: [Buffer; 2],
    bands: Vec<Band>,
    /// Where the image may differ from the one before.
    changed: Damage,
}

impl Painter {
    /// A painter with nothing painted yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// The image painted last.
    pub fn into_image(self) -> Image {
        let [last, _] = self.buffers;
        last.image
    }

    /// The image painted last.
    pub const fn image(&self) -> &Image {
        &self.buffers[0].image
    }

    /// Whether anything in these columns and rows may differ from the image before.
    pub fn has_changed(&self, columns: &Range<u32>, rows: &Range<u32>) -> bool {
        let [columns, rows] = [columns, rows].map(|range| range.start as usize..range.end as usize);
        self.changed.has_any(&columns, &rows)
    }

    /// Paints a list and gives the image, of the size of the list's viewport. Where it shows the
    /// same as a list painted before, nothing is done.
    pub fn paint(&mut self, list: &DisplayList, palette: &dyn Palette) -> &Image {
        self.paint_at(list, palette, 1.0)
    }

    /// Paints a list with `scale` dots for a pixel of its viewport, each way: for screens that show
    /// everything larger.
    pub fn paint_at(&mut self, list: &DisplayList, palette: &dyn Palette, scale: f32) -> &Image {
        let viewport = list.viewport();
        let [width, height] =
            [viewport.width, viewport.height].map(|length| pixels(length * scale));
        let (size, viewpoint) = ((width, height), list.viewpoint());
        let items = enlarged(list.items(), scale);
        let colours: Vec<Colour> = items.iter().map(|item| palette.colour(item.role)).collect();
        let contours = contours(&items, &colours);
        let fingerprints = fingerprints(&contours);
        let mut damage = self.buffers[0].damage(size, viewpoint, &fingerprints);
        self.changed = damage.clone();
        if !self.buffers[0].is_of(size, viewpoint) {
            self.buffers.swap(0, 1);
            damage = self.buffers[0].damage(size, viewpoint, &fingerprints);
        }
        let buffer = &mut self.buffers[0];
        buffer.set(size, viewpoint, fingerprints);
        let (width, height) = (width as usize, height as usize);
        let count = if width * height <= SMALL {
            1
        } else {
            std::thread::available_parallelism().map_or(1, |threads| threads.get().min(8))
        };
        let rows = height.div_ceil(count);
        self.bands.resize_with(count, Band::default);
        let parts = buffer.image.pixels_mut().chunks_mut(4 * width * rows);
        let job = PaintJob {
            items: &items,
            colours: &colours,
            contours: &contours,
        };
        let damage = &damage;
        let paint = move |nth: usize, band: &mut Band, part: &mut [u8]| {
            let top = nth * rows;
            for layer in damage.layers(&(top..top + rows)) {
                band.paint(job, part, width, top, layer);
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
        &buffer.image
    }
}

/// The shapes for a screen with `scale` dots for each pixel.
fn enlarged(items: &[DisplayItem], scale: f32) -> Cow<'_, [DisplayItem]> {
    #[expect(clippy::float_cmp, reason = "1 is told as it is")]
    if scale == 1.0 {
        return Cow::Borrowed(items);
    }
    let by = TranslateScale::scale(scale.into());
    let items = items.iter().map(|item| item.moved(by));
    Cow::Owned(items.collect())
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a viewport is 64 to 16 384 pixels each way"
)]
fn pixels(length: f32) -> u32 {
    length.round() as u32
}
