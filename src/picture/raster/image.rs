//! A picture as pixels.

use std::ops::Range;

use crate::picture::draw::Colour;

/// A finished picture, row by row from the top.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Image {
    width: u32,
    height: u32,
    pixels: Vec<u8>,
}

impl Image {
    /// A picture of this size in pixels with nothing painted on it.
    pub(super) fn blank(width: u32, height: u32) -> Self {
        Self {
            width,
            height,
            pixels: vec![0; 4 * width as usize * height as usize],
        }
    }

    /// Pixels from the left edge to the right one.
    pub const fn width(&self) -> u32 {
        self.width
    }

    /// Pixels from the top edge to the bottom one.
    pub const fn height(&self) -> u32 {
        self.height
    }

    /// Width and height in pixels.
    pub(super) const fn size(&self) -> (u32, u32) {
        (self.width, self.height)
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

    /// Red, green, blue and opacity of every pixel. A picture in the colours of
    /// [`DefaultPalette`](super::super::DefaultPalette) is opaque all over; where another palette
    /// leaves the ground out, colours are multiplied by their opacity.
    pub fn pixels(&self) -> &[u8] {
        &self.pixels
    }

    /// The pixels, to be painted on.
    pub(super) fn pixels_mut(&mut self) -> &mut [u8] {
        &mut self.pixels
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
}
