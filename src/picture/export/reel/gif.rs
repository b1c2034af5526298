//! `GIF89a`.

use std::borrow::Cow;
use std::io::Write;

use gif::{DisposalMethod, Encoder, EncodingError, Frame, Repeat};

use super::change::Area;
use super::colours::ColourTable;
use super::error::ReelError;
use crate::picture::raster::Image;

pub(super) struct Gif<W: Write> {
    encoder: Encoder<W>,
    colours: ColourTable,
}

impl<W: Write> Gif<W> {
    pub fn begin(out: W, size: [u32; 2], samples: &[Image]) -> Result<Self, ReelError> {
        let colours = ColourTable::of(samples);
        let [width, height] = [short(size[0])?, short(size[1])?];
        let mut encoder = Encoder::new(out, width, height, &colours.bytes()).map_err(refused)?;
        encoder.set_repeat(Repeat::Infinite).map_err(refused)?;
        Ok(Self { encoder, colours })
    }

    pub fn frame(&mut self, image: &Image, area: &Area, hundredths: u16) -> Result<(), ReelError> {
        let pixels = image.part(&area.columns, &area.rows);
        let numbers = pixels
            .chunks_exact(4)
            .map(|pixel| self.colours.nearest(pixel));
        let frame = Frame {
            delay: hundredths,
            dispose: DisposalMethod::Keep,
            left: short(area.columns.start)?,
            top: short(area.rows.start)?,
            width: short(area.width())?,
            height: short(area.height())?,
            buffer: Cow::Owned(numbers.collect()),
            ..Frame::default()
        };
        self.encoder.write_frame(&frame).map_err(refused)
    }

    pub fn finish(self) -> Result<(), ReelError> {
        let mut out = self.encoder.into_inner().map_err(refused)?;
        Ok(out.flush()?)
    }
}

/// Lengths of a GIF have 16 bits.
fn short(length: u32) -> Result<u16, ReelError> {
    u16::try_from(length).map_err(ReelError::refused)
}

fn refused(error: EncodingError) -> ReelError {
    match error {
        EncodingError::Io(error) => error.into(),
        other => ReelError::refused(other),
    }
}
