//! Photographs of finished ties: read within limits, turned as the camera says, and made small. The
//! file itself is never written.

use std::io::{self, BufReader, ErrorKind};
use std::path::Path;

use image::{DynamicImage, ImageDecoder as _, ImageError, ImageReader, Limits};
use thiserror::Error;

/// Bytes of a file at most.
pub const MOST_PHOTOGRAPH_BYTES: u64 = 64 << 20;
/// Pixels across or down at most.
const MOST_SIDE: u32 = 20_000;
/// Bytes that reading one may take: a hundred megapixels of four bytes.
const MOST_MEMORY: u64 = 400 << 20;

/// A photograph made small, row by row from the top.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photograph {
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// Red, green, blue and opacity of every pixel.
    pub pixels: Vec<u8>,
}

/// Why a photograph can't be shown.
#[derive(Debug, Error)]
pub enum PhotographError {
    /// The system does not give it.
    #[error("the photograph can't be read: {0}")]
    Io(#[source] io::Error),
    /// It is no JPEG, PNG or `WebP`.
    #[error("the file is no picture of a kind that is known")]
    UnknownKind,
    /// It is larger than [`MOST_PHOTOGRAPH_BYTES`], or has more pixels than are read.
    #[error("the photograph is too large")]
    TooLarge,
    /// It is of such a kind, and damaged.
    #[error("the photograph is damaged: {0}")]
    Damaged(String),
}

impl Photograph {
    /// Reads a file, and makes the picture no larger than `side` pixels each way.
    ///
    /// # Errors
    /// [`PhotographError`], with what is wrong.
    pub fn read(file: &Path, side: u32) -> Result<Self, PhotographError> {
        // Asked before opening: to open a pipe may wait for ever.
        let about = std::fs::metadata(file).map_err(PhotographError::Io)?;
        if !about.is_file() {
            return Err(PhotographError::UnknownKind);
        }
        if about.len() > MOST_PHOTOGRAPH_BYTES {
            return Err(PhotographError::TooLarge);
        }
        let open = std::fs::File::open(file).map_err(PhotographError::Io)?;
        let mut reader = ImageReader::new(BufReader::new(open))
            .with_guessed_format()
            .map_err(PhotographError::Io)?;
        if reader.format().is_none() {
            return Err(PhotographError::UnknownKind);
        }
        let mut limits = Limits::default();
        limits.max_image_width = Some(MOST_SIDE);
        limits.max_image_height = Some(MOST_SIDE);
        limits.max_alloc = Some(MOST_MEMORY);
        reader.limits(limits);
        let mut decoder = reader.into_decoder()?;
        if decoder.total_bytes() > MOST_MEMORY {
            return Err(PhotographError::TooLarge);
        }
        // A camera that says nothing held it upright.
        let orientation = decoder.orientation()?;
        let mut whole = DynamicImage::from_decoder(decoder)?;
        whole.apply_orientation(orientation);
        let small = if whole.width().max(whole.height()) > side {
            whole.thumbnail(side, side)
        } else {
            whole
        };
        Ok(Self {
            width: small.width(),
            height: small.height(),
            pixels: small.into_rgba8().into_raw(),
        })
    }
}

impl From<ImageError> for PhotographError {
    fn from(error: ImageError) -> Self {
        match error {
            ImageError::Limits(_) => Self::TooLarge,
            ImageError::Unsupported(_) => Self::UnknownKind,
            // A file that ends too soon is damaged, and no trouble of the disk.
            ImageError::IoError(error) if error.kind() != ErrorKind::UnexpectedEof => {
                Self::Io(error)
            }
            other => Self::Damaged(other.to_string()),
        }
    }
}
