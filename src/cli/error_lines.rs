//! Telling what is wrong with what was read, on standard error.

use std::io::{self, Write as _};
use std::process::ExitCode;

use crate::files::Teller;
use crate::settings::SettingsError;
use crate::shelf::ShelfTrouble;
use crate::words::{Sentence, Words};

/// Standard error, on which everything that is wrong is told, a sentence each.
pub(super) struct ErrorLines<'a> {
    words: &'a Words,
    has_told: bool,
}

impl<'a> ErrorLines<'a> {
    /// In these words, with nothing told yet.
    pub(super) const fn new(words: &'a Words) -> Self {
        Self {
            words,
            has_told: false,
        }
    }

    /// Whether anything had to be told, as an exit code.
    pub(super) const fn exit_code(&self) -> ExitCode {
        if self.has_told {
            ExitCode::FAILURE
        } else {
            ExitCode::SUCCESS
        }
    }

    /// Writes one line. Where standard error is closed nobody can be told, but the log has it.
    fn line(&mut self, sentence: &Sentence) {
        self.has_told = true;
        let _ = writeln!(io::stderr(), "{sentence}");
    }
}

impl Teller<ShelfTrouble> for ErrorLines<'_> {
    fn tell_of(&mut self, troubles: Vec<ShelfTrouble>) {
        for trouble in troubles {
            log::warn!("{}", trouble.noted());
            self.line(&self.words.shelf_trouble(&trouble));
        }
    }
}

impl Teller<SettingsError> for ErrorLines<'_> {
    fn tell_of(&mut self, troubles: Vec<SettingsError>) {
        for trouble in troubles {
            log::warn!("{trouble}");
            self.line(&trouble.sentence(self.words));
        }
    }
}

/// Tells what is wrong with the settings, in words of its own: those of the language that the
/// settings name are known only when they are read.
pub(super) struct SettingsLines {
    /// The words to tell it in.
    pub words: Words,
    /// Whether this command opens the settings later on. Then damaged ones are mended there and
    /// told of there.
    pub are_opened_later: bool,
}

impl Teller<SettingsError> for SettingsLines {
    fn tell_of(&mut self, troubles: Vec<SettingsError>) {
        if !self.are_opened_later {
            ErrorLines::new(&self.words).tell_of(troubles);
        }
    }
}
