//! What a tie in a terminal works with.

use crate::pedal::Ear;
use crate::settings::SettingsFile;
use crate::shelf::{Keeper, Shelf};
use crate::voice::{Chime, Speak};

/// The services behind a tie in a terminal.
pub struct TerminalServices {
    /// The ties; none when there is no folder for them.
    pub shelf: Option<Shelf>,
    /// What saves them.
    pub keeper: Option<Keeper>,
    /// The voice, when it is wished for.
    pub voice: Box<dyn Speak>,
    /// What sounds, with the voice.
    pub chime: Option<Box<dyn Chime>>,
    /// What listens for knocks.
    pub ear: Ear,
    /// Where the settings are saved.
    pub file: SettingsFile,
}
