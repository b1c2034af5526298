//! What the tyer prefers, kept from one day to the next.
//!
//! One JSON document, `settings.json`, with a version, kept as [`crate::files`] keeps documents,
//! with the copy before it. Of a damaged one every setting that can be read holds. What two
//! programs change at the same time holds from both. Fields that this program does not know are
//! kept. When the document is of a newer version, nothing is saved.

mod document;
mod error;
mod fields;
mod file;
mod health;
mod preferences;
mod saving;

pub use document::{VERSION, read_settings, salvage_settings, write_settings};
pub use error::{SettingsError, SettingsKept};
pub use file::{Opened, SettingsFile, SettingsReading};
pub use health::SettingsHealth;
pub use preferences::{
    ColourScheme, Cues, DISTANCES, SCREEN_WIDTHS, ScreenGeometry, Settings, Verbosity,
};
