//! Animated `WebP`: the container of RFC 9649, 2.7, round pictures that the encoder made.

use std::io::{Seek, SeekFrom, Write};

use image_webp::{ColorType, EncodingError, WebPEncoder};

use super::change::{Area, opaque};
use super::error::ReelError;
use crate::picture::raster::Image;

/// The flag of a file that moves (2.7.1).
const MOVES: u8 = 0x02;
/// What a frame shows covers what was there (2.7.1.1, B).
const COVERS: u8 = 0x02;
/// Bytes of `RIFF`, the length that follows it, and of the head of each chunk.
const HEAD: usize = 8;

pub(super) struct WebP<W: Write + Seek> {
    out: W,
}

impl<W: Write + Seek> WebP<W> {
    pub fn begin(mut out: W, size: [u32; 2]) -> Result<Self, ReelError> {
        out.write_all(b"RIFF\0\0\0\0WEBP")?;
        let mut canvas = vec![MOVES, 0, 0, 0];
        canvas.extend(size.iter().flat_map(|&length| three(length - 1)));
        let mut webp = Self { out };
        webp.chunk(*b"VP8X", &canvas)?;
        // A white ground, and no number of plays: it is repeated without end.
        webp.chunk(*b"ANIM", &[255, 255, 255, 255, 0, 0])?;
        Ok(webp)
    }

    pub fn frame(&mut self, image: &Image, area: &Area, hundredths: u16) -> Result<(), ReelError> {
        let area = area.begun_evenly();
        let (width, height) = (area.width(), area.height());
        let mut still = Vec::new();
        WebPEncoder::new(&mut still)
            .encode(&opaque(image, &area), width, height, ColorType::Rgb8)
            .map_err(refused)?;
        // A frame holds the chunks of a still picture without the head of the file.
        let chunks = still.get(HEAD + 4..).unwrap_or_default();
        let mut frame = Vec::with_capacity(chunks.len() + 16);
        frame.extend(three(area.columns.start / 2));
        frame.extend(three(area.rows.start / 2));
        frame.extend(three(width - 1));
        frame.extend(three(height - 1));
        frame.extend(three(u32::from(hundredths) * 10));
        frame.push(COVERS);
        frame.extend_from_slice(chunks);
        self.chunk(*b"ANMF", &frame)
    }

    pub fn finish(mut self) -> Result<(), ReelError> {
        let end = self.out.stream_position()?;
        let length = u32::try_from(end - HEAD as u64).map_err(ReelError::refused)?;
        self.out.seek(SeekFrom::Start(4))?;
        self.out.write_all(&length.to_le_bytes())?;
        self.out.seek(SeekFrom::Start(end))?;
        Ok(self.out.flush()?)
    }

    /// A name, the length of what follows, and that, made even (2.3).
    fn chunk(&mut self, name: [u8; 4], bytes: &[u8]) -> Result<(), ReelError> {
        let length = u32::try_from(bytes.len()).map_err(ReelError::refused)?;
        self.out.write_all(&name)?;
        self.out.write_all(&length.to_le_bytes())?;
        self.out.write_all(bytes)?;
        if bytes.len() % 2 == 1 {
            self.out.write_all(&[0])?;
        }
        Ok(())
    }
}

/// The lower three bytes of a number, the lowest first.
fn three(number: u32) -> impl Iterator<Item = u8> {
    number.to_le_bytes().into_iter().take(3)
}

fn refused(error: EncodingError) -> ReelError {
    match error {
        EncodingError::IoError(error) => error.into(),
        other => ReelError::refused(other),
    }
}
