//! Moving pictures: one image after another in a file that loops.
//!
//! An image is handed over as it was painted and forgotten: only the one before it is kept, since
//! a frame of a file holds no more than the rectangle that differs from the frame before.

mod apng;
mod change;
mod colours;
mod error;
mod gif;
mod webp;

use std::io::{Seek, Write};

use self::apng::Apng;
use self::change::{Area, change};
pub use self::error::ReelError;
use self::gif::Gif;
use self::webp::WebP;
use crate::picture::raster::Image;

/// The kinds of file that can hold a moving picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReelFormat {
    /// `GIF89a`, of 256 colours.
    Gif,
    /// An animated PNG (W3C, *Portable Network Graphics*, third edition), in all colours.
    Png,
    /// An animated `WebP` without loss (RFC 9649).
    WebP,
}

impl ReelFormat {
    /// The kind that the ending of a file's name asks for, whatever its case.
    ///
    /// ```
    /// use marlinspeak::picture::reel::ReelFormat;
    ///
    /// assert_eq!(ReelFormat::of_ending("GIF"), Some(ReelFormat::Gif));
    /// assert_eq!(ReelFormat::of_ending("pdf"), None);
    /// ```
    pub fn of_ending(ending: &str) -> Option<Self> {
        match ending.to_lowercase().as_str() {
            "gif" => Some(Self::Gif),
            "png" => Some(Self::Png),
            "webp" => Some(Self::WebP),
            _ => None,
        }
    }
}

/// A moving picture on its way into a file.
pub struct Reel<W: Write + Seek> {
    encoder: Encoder<W>,
    before: Option<Image>,
}

enum Encoder<W: Write + Seek> {
    Gif(Box<Gif<W>>),
    Png(Box<Apng<W>>),
    WebP(WebP<W>),
}

impl<W: Write + Seek> Reel<W> {
    /// Begins a file of so many frames, all of the size of `samples`: images painted in the
    /// colours that will be used, of which a file of few colours takes its choice. There must be
    /// one at least.
    ///
    /// # Errors
    /// [`ReelError`] when the head of the file can't be made or written.
    pub fn begin(
        out: W,
        format: ReelFormat,
        frames: u32,
        samples: &[Image],
    ) -> Result<Self, ReelError> {
        let Some(first) = samples.first() else {
            return Err(ReelError::refused("no image to begin with"));
        };
        let size = [first.width(), first.height()];
        let encoder = match format {
            ReelFormat::Gif => Encoder::Gif(Box::new(Gif::begin(out, size, samples)?)),
            ReelFormat::Png => Encoder::Png(Box::new(Apng::begin(out, size, frames)?)),
            ReelFormat::WebP => Encoder::WebP(WebP::begin(out, size)?),
        };
        Ok(Self {
            encoder,
            before: None,
        })
    }

    /// Adds an image that stands for so many hundredths of a second.
    ///
    /// # Errors
    /// [`ReelError`] when it can't be encoded or written.
    pub fn frame(&mut self, image: &Image, hundredths: u16) -> Result<(), ReelError> {
        let area = match &self.before {
            Some(before) => change(before, image),
            None => Area::whole(image),
        };
        match &mut self.encoder {
            Encoder::Gif(gif) => gif.frame(image, &area, hundredths)?,
            Encoder::Png(png) => png.frame(image, &area, hundredths)?,
            Encoder::WebP(webp) => webp.frame(image, &area, hundredths)?,
        }
        self.before = Some(image.clone());
        Ok(())
    }

    /// Ends the file.
    ///
    /// # Errors
    /// [`ReelError`] when what was left could not be written.
    pub fn finish(self) -> Result<(), ReelError> {
        match self.encoder {
            Encoder::Gif(gif) => gif.finish(),
            Encoder::Png(png) => png.finish(),
            Encoder::WebP(webp) => webp.finish(),
        }
    }
}
