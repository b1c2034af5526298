//! How the document of the settings is, for whoever only looks.

use std::path::Path;

use super::SettingsFile;
use super::file::file_at;
use crate::files::{FormatError, Found, Reason};

/// How the document of the settings is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SettingsHealth {
    /// There is none yet: the usual settings hold.
    None,
    /// It can be read.
    Whole,
    /// A newer version of this program wrote it, with this number.
    Newer(u64),
    /// It cannot be believed, and why.
    Damaged(FormatError),
    /// It cannot be read, or its folder not be written to, and why.
    Refused(Reason),
}

impl SettingsFile {
    /// How the document is, without setting anything aside. Its folder is made, and tried by
    /// writing to it.
    pub fn examine(path: &Path) -> SettingsHealth {
        let can_write = std::fs::create_dir_all(folder_of(path))
            .and_then(|()| tempfile::tempfile_in(folder_of(path)));
        match (file_at(path).find(), can_write) {
            (Err(error), _) => {
                log::warn!("{error}");
                SettingsHealth::Refused(error.reason())
            }
            (_, Err(error)) => {
                log::warn!("the folder of the settings: {error}");
                SettingsHealth::Refused(Reason::of(&error))
            }
            (Ok(Found::Missing), _) => SettingsHealth::None,
            (Ok(Found::Whole(_)), _) => SettingsHealth::Whole,
            (Ok(Found::Unreadable(FormatError::Newer { version, .. })), _) => {
                SettingsHealth::Newer(version)
            }
            (Ok(Found::Unreadable(fault)), _) => {
                log::warn!("the settings: {fault}");
                SettingsHealth::Damaged(fault)
            }
        }
    }
}

fn folder_of(path: &Path) -> &Path {
    path.parent().unwrap_or(Path::new("."))
}
