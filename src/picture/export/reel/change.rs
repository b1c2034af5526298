//! Where an image differs from the one before.

use std::ops::Range;

use crate::picture::raster::Image;

/// A rectangle of an image, in pixels; never empty.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Area {
    pub columns: Range<u32>,
    pub rows: Range<u32>,
}

impl Area {
    pub fn whole(image: &Image) -> Self {
        Self {
            columns: 0..image.width(),
            rows: 0..image.height(),
        }
    }

    pub const fn width(&self) -> u32 {
        self.columns.end - self.columns.start
    }

    pub const fn height(&self) -> u32 {
        self.rows.end - self.rows.start
    }

    /// This area enlarged to begin at even pixels, as the frames of some kinds of file have to.
    pub fn begun_evenly(&self) -> Self {
        let even = |range: &Range<u32>| range.start - range.start % 2..range.end;
        Self {
            columns: even(&self.columns),
            rows: even(&self.rows),
        }
    }
}

/// Red, green and blue of the pixels of an area, row by row: every picture of a page is opaque.
pub(super) fn opaque(image: &Image, area: &Area) -> Vec<u8> {
    let pixels = image.part(&area.columns, &area.rows);
    let colours = pixels.chunks_exact(4).flat_map(|pixel| &pixel[..3]);
    colours.copied().collect()
}

/// The smallest rectangle that holds every pixel in which two images of one size differ; one pixel
/// when they are equal.
pub(super) fn change(before: &Image, image: &Image) -> Area {
    let width = (4 * image.width() as usize).max(1);
    let [old, new] = [before, image].map(|image| image.pixels().chunks_exact(width));
    let mut changed: Option<Area> = None;
    for (row, (old, new)) in (0..).zip(old.zip(new)) {
        let Some(columns) = differing(old, new) else {
            continue;
        };
        let before = changed.unwrap_or(Area {
            columns: columns.clone(),
            rows: row..row,
        });
        let from = columns.start.min(before.columns.start);
        let to = columns.end.max(before.columns.end);
        changed = Some(Area {
            columns: from..to,
            rows: before.rows.start..row + 1,
        });
    }
    changed.unwrap_or(Area {
        columns: 0..1,
        rows: 0..1,
    })
}

/// From the first to the last pixel in which two rows of one length differ.
fn differing(old: &[u8], new: &[u8]) -> Option<Range<u32>> {
    let pixels = (0..).zip(old.chunks_exact(4).zip(new.chunks_exact(4)));
    let mut differing = pixels
        .filter(|(_, (old, new))| old != new)
        .map(|(column, _)| column);
    let first: u32 = differing.next()?;
    Some(first..differing.last().unwrap_or(first) + 1)
}
