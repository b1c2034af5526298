//! What the tyer prefers, kept from one day to the next.
//!
//! One JSON document, `settings.json`, with a version. Fields that this program does not know
//! are kept. A document that cannot be believed is set aside and told of, never overwritten; one
//! of a newer version is left alone and nothing is saved.

mod document;
mod file;
mod preferences;
mod read;

pub use document::VERSION;
pub use file::{Health, Opened, SettingsFile, Snag};
pub use preferences::{Cues, DISTANCES, Light, Prose, SCREEN_WIDTHS, Screen, Settings};
