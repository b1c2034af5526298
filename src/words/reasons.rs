//! Why something was refused or not believed, in words of this program: what the system and the
//! readers of documents say themselves stands in the log file alone.

use fluent::fluent_args;

use super::{Sentence, Words};
use crate::files::{FileError, FormatError, Reason};
use crate::logging::Platform;
use crate::shelf::{DocumentError, ShelfError};

impl Words {
    /// A reason, as it stands in brackets inside a sentence.
    pub fn reason(&self, reason: Reason) -> String {
        let name: &str = reason.into();
        self.text("reason", &fluent_args! { "why" => name })
    }

    /// What is wrong with a document, as it stands in brackets inside a sentence.
    pub fn fault(&self, fault: &FormatError) -> String {
        let args = fluent_args! {
            "fault" => kind_of_format(fault),
            "place" => self.place_of_fault(fault).unwrap_or_else(|| "none".to_owned()),
        };
        self.text("fault", &args)
    }

    /// The sentence for a tie that is not saved, which is tried again.
    pub fn not_saved(&self, error: &ShelfError) -> Sentence {
        self.notice("saving-failed", &[("reason", &self.reason(error.reason()))])
    }

    /// The sentence for a tie that is taken up where nothing that is done to it can be saved.
    pub fn nothing_saved(&self, error: &ShelfError) -> Sentence {
        self.notice(
            "saving-foreseen",
            &[("reason", &self.reason(error.reason()))],
        )
    }

    /// The sentence for a tie that cannot be saved since there is no place for any.
    pub fn saved_nowhere(&self, error: &ShelfError) -> Sentence {
        self.notice(
            "saving-nowhere",
            &[("reason", &self.reason(error.reason()))],
        )
    }

    /// The sentence for what keeps the tyer from the ties.
    pub fn no_ties(&self, error: &ShelfError) -> Sentence {
        match error {
            ShelfError::File(FileError::Io { path, .. }) => {
                let (path, reason) = (path.display().to_string(), self.reason(error.reason()));
                self.notice("trouble-io", &[("path", &path), ("reason", &reason)])
            }
            ShelfError::After { troubles, error } => {
                self.shelf_troubles(troubles).then(&self.no_ties(error))
            }
            _ => self.shelf_error(error),
        }
    }

    /// The sentence for kept tubes and cords that cannot be read or written.
    pub fn presets_failed(&self, error: &ShelfError) -> String {
        if error.is_newer() {
            return self.plainly("rack-newer", &[]);
        }
        let path = match error {
            ShelfError::File(error) => error.path().display().to_string(),
            error => return self.shelf_error(error).into(),
        };
        let reason = self.reason(error.reason());
        // Only what is damaged is to be moved away.
        let id = match error {
            ShelfError::File(FileError::Io { .. }) => "rack-io",
            _ => "rack-failed",
        };
        self.plainly(id, &[("path", &path), ("reason", &reason)])
    }

    /// The first line of the doctor: what the program runs on.
    pub fn doctor_head(&self, version: &str, system: &Platform) -> String {
        let known = |name: &Option<String>| name.clone().unwrap_or_else(|| "none".to_owned());
        let args = fluent_args! {
            "version" => version, "system" => system.name.as_str(),
            "processor" => system.processor, "session" => known(&system.session),
            "desktop" => known(&system.desktop), "locale" => known(&system.locale),
            "x11" => system.has_x11.to_string(), "wayland" => system.has_wayland.to_string(),
        };
        self.text("doctor-head", &args)
    }

    /// Where in a document the fault is: a line of it, a field, or its version, where that is known.
    fn place_of_fault(&self, fault: &FormatError) -> Option<String> {
        let told = |place: &str, name: &str, column: &str| {
            let texts = [("place", place), ("name", name), ("column", column)];
            Some(self.plainly("fault-place", &texts))
        };
        match fault {
            FormatError::NotJson { line, column, .. } => {
                told("line", &line.to_string(), &column.to_string())
            }
            FormatError::Shape { field, .. } if !field.is_empty() => told("field", field, ""),
            FormatError::Newer { version, .. } => told("version", &version.to_string(), ""),
            _ => None,
        }
    }

    /// [`Words::place_of_fault`] in brackets, with a space before them.
    pub(super) fn place_in_brackets(&self, fault: &DocumentError) -> String {
        let place = match fault {
            DocumentError::Format(fault) => self.place_of_fault(fault),
            _ => None,
        };
        place.map_or_else(String::new, |place| format!(" ({place})"))
    }
}

/// What a message selects a fault of a document by.
pub(super) fn kind_of_format(fault: &FormatError) -> &'static str {
    match fault {
        FormatError::TooLarge { .. } => "too-large",
        FormatError::NotAFile => "not-a-file",
        FormatError::NotJson { .. } => "not-json",
        FormatError::Newer { .. } => "newer",
        FormatError::Checksum { .. } => "checksum",
        FormatError::NotAnObject
        | FormatError::NoVersion
        | FormatError::Shape { .. }
        | FormatError::NotTheSame => "shape",
    }
}
