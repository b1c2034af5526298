//! How large the window was and where it stood: kept from one time to the next, in a document of its
//! own. It belongs to this screen, not to the tyer, and is no setting.

use std::path::PathBuf;

use directories::ProjectDirs;
use iced::{Point, Rectangle, Size};
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

/// So much of the upper edge of a window must be on a monitor to be taken hold of.
const HOLD: Size = Size::new(160.0, 32.0);
/// No screen has more dots for each pixel, or fewer.
const DENSITIES: [f32; 2] = [0.5, 8.0];

/// Size and place of the window, in pixels before anything is drawn larger.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindowPlace {
    /// Its width and height.
    pub size: Size,
    /// Dots of its screen for each of those pixels.
    pub density: f32,
    /// Its upper left corner; none where the system does not tell.
    pub corner: Option<Point>,
}

/// The document, with its lengths in pixels.
#[derive(Serialize, Deserialize)]
struct PlaceDocument {
    version: u64,
    width: f32,
    height: f32,
    #[serde(default = "usual_density")]
    density: f32,
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

    /// The same where one of these monitors shows it, in dots of the desktop: as it is where its upper edge
    /// can be taken hold of, or else in the middle of the first, and no larger than that. As it is where
    /// no monitor is known.
    #[must_use]
    pub fn brought_into_view(self, monitors: &[Rectangle]) -> Self {
        let (Some(corner), Some(first)) = (self.corner, monitors.first()) else {
            return self;
        };
        let head = Rectangle::new(corner, Size::new(self.size.width, HOLD.height)) * self.density;
        let hold = HOLD * self.density;
        let is_in_view = monitors.iter().any(|monitor| {
            let shown = monitor.intersection(&head);
            shown.is_some_and(|shown| shown.width >= hold.width && shown.height >= hold.height)
        });
        if is_in_view {
            return self;
        }
        let first = *first * (1.0 / self.density);
        let size = Size::new(
            self.size.width.min(first.width).max(LEAST.width),
            self.size.height.min(first.height).max(LEAST.height),
        );
        let aside = |room: f32, length: f32| ((room - length) / 2.0).max(0.0);
        Self {
            size,
            corner: Some(Point::new(
                first.x + aside(first.width, size.width),
                first.y + aside(first.height, size.height),
            )),
            ..self
        }
    }

    fn write(self) -> Result<Vec<u8>, FormatError> {
        let document = PlaceDocument {
            version: VERSION,
            width: self.size.width,
            height: self.size.height,
            density: self.density,
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
        let [least, most] = DENSITIES;
        Ok(Self {
            size,
            density: if kept.density.is_finite() {
                kept.density.clamp(least, most)
            } else {
                usual_density()
            },
            corner: corner.map(|(left, top)| Point::new(within(left, 0.0), within(top, 0.0))),
        })
    }
}

/// Of a document in which it does not stand.
const fn usual_density() -> f32 {
    1.0
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
            density: 1.5,
            corner: Some(Point::new(40.0, 25.5)),
        };
        let read = <WindowPlace as Document>::read(&place.write().unwrap());
        assert_eq!(read.unwrap(), place);
        let wild = WindowPlace {
            size: Size::new(2.0, 1e9),
            density: 1e9,
            corner: Some(Point::new(-3000.0, 10.0)),
        };
        let read = <WindowPlace as Document>::read(&wild.write().unwrap()).unwrap();
        assert_eq!(read.size, Size::new(800.0, 16_384.0));
        assert_eq!(read.corner, Some(Point::new(0.0, 10.0)));
        assert!((read.density - 8.0).abs() < f32::EPSILON);
    }

    #[test]
    fn whatever_is_damaged_in_it_a_place_is_refused_or_one_that_a_window_can_have() {
        let place = WindowPlace {
            size: Size::new(1366.0, 720.0),
            density: 1.5,
            corner: Some(Point::new(40.0, 25.5)),
        };
        let sealed = String::from_utf8(place.write().unwrap()).unwrap();
        let mut fields: files::Fields = serde_json::from_str(&sealed).unwrap();
        fields.remove("checksum");
        let bare = serde_json::to_string(&fields).unwrap();
        let (mut read, mut refused) = (0, 0);
        for document in [sealed.into_bytes(), bare.into_bytes()] {
            for at in 0..document.len() {
                let flipped = (0..8).map(|bit| {
                    let mut damaged = document.clone();
                    damaged[at] ^= 1 << bit;
                    damaged
                });
                for damaged in flipped.chain([document[..at].to_vec()]) {
                    let Ok(place) = <WindowPlace as Document>::read(&damaged) else {
                        refused += 1;
                        continue;
                    };
                    read += 1;
                    let is_within = |length: f32, least: f32| (least..=MOST).contains(&length);
                    assert!(is_within(place.size.width, LEAST.width), "{place:?}");
                    assert!(is_within(place.size.height, LEAST.height), "{place:?}");
                    assert!((DENSITIES[0]..=DENSITIES[1]).contains(&place.density));
                    assert!(place.corner.is_none_or(|corner| {
                        is_within(corner.x, 0.0) && is_within(corner.y, 0.0)
                    }));
                }
            }
        }
        assert!(
            read > 100 && refused > 100,
            "{read} read, {refused} refused"
        );
    }

    #[test]
    fn a_window_of_a_monitor_that_is_gone_comes_into_view_and_any_other_stays() {
        let area = |x, y, width, height| Rectangle {
            x,
            y,
            width,
            height,
        };
        let both = [
            area(0.0, 0.0, 1366.0, 768.0),
            area(1366.0, 0.0, 1920.0, 1080.0),
        ];
        let at = |x, y| WindowPlace {
            size: Size::new(1600.0, 900.0),
            density: 1.0,
            corner: Some(Point::new(x, y)),
        };
        // On the second monitor, half over an edge, and where nobody knows the monitors.
        for (place, monitors) in [
            (at(1500.0, 90.0), &both[..]),
            (at(1000.0, 700.0), &both[..1]),
            (at(9000.0, 9000.0), &[]),
        ] {
            assert_eq!(place.brought_into_view(monitors), place);
        }
        // Gone to the right, and so far down that nothing is left of its upper edge.
        for place in [at(1500.0, 90.0), at(300.0, 760.0), at(1300.0, 0.0)] {
            let back = place.brought_into_view(&both[..1]);
            assert_eq!(back.size, Size::new(1366.0, 768.0), "{place:?}");
            assert_eq!(back.corner, Some(Point::ORIGIN), "{place:?}");
        }
        // In dots of a fine screen: the corner of these 1300 pixels is 2600 dots to the right.
        let fine = WindowPlace {
            size: Size::new(800.0, 480.0),
            density: 2.0,
            ..at(1300.0, 90.0)
        };
        let back = fine.brought_into_view(&[area(0.0, 0.0, 2560.0, 1440.0)]);
        assert_eq!(back.corner, Some(Point::new(240.0, 120.0)));
    }
}
