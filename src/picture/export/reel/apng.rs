//! Animated PNG.

use std::io::Write;

use png::{BitDepth, ColorType, Compression, Encoder, EncodingError, Writer};

use super::change::{Area, opaque};
use super::error::ReelError;
use crate::picture::raster::Image;

pub(super) struct Apng<W: Write> {
    writer: Writer<W>,
}

impl<W: Write> Apng<W> {
    pub fn begin(out: W, size: [u32; 2], frames: u32) -> Result<Self, ReelError> {
        let mut encoder = Encoder::new(out, size[0], size[1]);
        encoder.set_color(ColorType::Rgb);
        encoder.set_depth(BitDepth::Eight);
        encoder.set_compression(Compression::Default);
        // No number of plays means that it is repeated without end.
        encoder.set_animated(frames, 0).map_err(refused)?;
        let writer = encoder.write_header().map_err(refused)?;
        Ok(Self { writer })
    }

    pub fn frame(&mut self, image: &Image, area: &Area, hundredths: u16) -> Result<(), ReelError> {
        let writer = &mut self.writer;
        writer
            .reset_frame_position()
            .and_then(|()| writer.set_frame_dimension(area.width(), area.height()))
            .and_then(|()| writer.set_frame_position(area.columns.start, area.rows.start))
            .and_then(|()| writer.set_frame_delay(hundredths, 100))
            .and_then(|()| writer.write_image_data(&opaque(image, area)))
            .map_err(refused)
    }

    pub fn finish(self) -> Result<(), ReelError> {
        self.writer.finish().map_err(refused)
    }
}

fn refused(error: EncodingError) -> ReelError {
    match error {
        EncodingError::IoError(error) => error.into(),
        other => ReelError::refused(other),
    }
}
