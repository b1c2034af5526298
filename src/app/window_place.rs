//! How large the window was and where it stood: kept from one time to the next, in a document of its
//! own. It belongs to this screen, not to the tyer, and is no setting.

use std::path::PathBuf;

use directories::ProjectDirs;
use iced::{Point, Size};
use serde::{Deserialize, Serialize};

use crate::files::{
    self, Document, DocumentFile, FileError, FileTrouble, FormatError, Found, Teller,
};

/// The version that is written, and the newest that is read.
const VERSION: u64 = 1;
/// Below this the line that matters is not large any more.
pub const LEAST: Size = Size::new(800.0, 480.0);
/// No window is larger, or farther to the right or further down, than so many pixels.
const MOST: f32 = 16_384.0;

/// Size and place of the window, in pixels before anything is drawn larger.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindowPlace {
    /// Its width and height.
    pub size: Size,
    /// Its upper left corner; none where the system does not tell.
    pub corner: Option<Point>,
}

/// The document, with its lengths in pixels.
#[derive(Serialize, Deserialize)]
struct PlaceDocument {
    version: u64,
    width: f32,
    height: f32,
    #[serde(default)]
    left: Option<f32>,
    #[serde(default)]
    top: Option<f32>,
}

/// The log file is all that is told of a damaged place: nothing of it is the tyer's.
struct Noted;

impl Teller<FileTrouble<FormatError>> for Noted {
    fn tell_of(&mut self, troubles: Vec<FileTrouble<FormatError>>) {
        for trouble in troubles {
            log::warn!("the place of the window: {}", trouble.error.cause());
        }
    }
}

impl WindowPlace {
    /// As it was the last time, when that is known. What is wrong with the document is noted in the log
    /// file, and the window opens as it does the first time.
    pub fn last() -> Option<Self> {
        let found = match file()?.find() {
            Ok(Found::Whole(place)) => return Some(place),
            Ok(Found::Missing) => return None,
            Ok(Found::Unreadable(fault)) => fault.to_string(),
            Err(error) => error.to_string(),
        };
        log::warn!("the place of the window: {found}");
        None
    }

    /// Keeps it for the next time.
    ///
    /// # Errors
    /// When the document cannot be written.
    pub fn keep(self) -> Result<(), FileError> {
        let Some(file) = file() else { return Ok(()) };
        if let Some(folder) = file.path().parent() {
            files::make_folder(folder)?;
        }
        let contents = self.write().map_err(FileError::unreadable(file.path()))?;
        file.write(&contents).hand_on(&mut Noted)
    }

    fn write(self) -> Result<Vec<u8>, FormatError> {
        let document = PlaceDocument {
            version: VERSION,
            width: self.size.width,
            height: self.size.height,
            left: self.corner.map(|corner| corner.x),
            top: self.corner.map(|corner| corner.y),
        };
        files::seal(files::encode(&document)?)
    }
}

impl Document for WindowPlace {
    type Error = FormatError;

    fn read(document: &[u8]) -> Result<Self, FormatError> {
        let (_, fields) = files::open(document, VERSION)?;
        let kept: PlaceDocument = files::decode(&fields)?;
        let within = |length: f32, least: f32| {
            if length.is_finite() {
                length.clamp(least, MOST)
            } else {
                least
            }
        };
        let size = Size::new(
            within(kept.width, LEAST.width),
            within(kept.height, LEAST.height),
        );
        let corner = kept.left.zip(kept.top);
        Ok(Self {
            size,
            corner: corner.map(|(left, top)| Point::new(within(left, 0.0), within(top, 0.0))),
        })
    }
}

/// Where it is kept: `$XDG_STATE_HOME/marlinspeak/window.json` or what the system has in its place.
fn file() -> Option<DocumentFile<WindowPlace>> {
    let folders = ProjectDirs::from("", "", "marlinspeak")?;
    let folder: PathBuf = folders
        .state_dir()
        .unwrap_or_else(|| folders.data_local_dir())
        .to_owned();
    Some(DocumentFile::named(&folder, "window"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_reads_back_as_it_was_written_and_within_what_a_window_can_be() {
        let place = WindowPlace {
            size: Size::new(1366.0, 720.0),
            corner: Some(Point::new(40.0, 25.5)),
        };
        let read = <WindowPlace as Document>::read(&place.write().unwrap());
        assert_eq!(read.unwrap(), place);
        let wild = WindowPlace {
            size: Size::new(2.0, 1e9),
            corner: Some(Point::new(-3000.0, 10.0)),
        };
        let read = <WindowPlace as Document>::read(&wild.write().unwrap()).unwrap();
        assert_eq!(read.size, Size::new(800.0, 16_384.0));
        assert_eq!(read.corner, Some(Point::new(0.0, 10.0)));
    }
}
