//! Images as PNG files.

use super::error::ExportError;
use crate::picture::raster::Image;

impl Image {
    /// The bytes of a PNG file that says how many dots of it make an inch on paper.
    ///
    /// # Errors
    /// [`ExportError::Png`] when the picture can't be encoded.
    pub fn png(&self, dots_per_inch: u16) -> Result<Vec<u8>, ExportError> {
        let refused = |error: png::EncodingError| ExportError::Png(error.to_string());
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
        writer.write_image_data(self.pixels()).map_err(refused)?;
        writer.finish().map_err(refused)?;
        Ok(bytes)
    }
}
