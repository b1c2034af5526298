//! One sentence on standard error, and an exit code.

use std::fmt;
use std::io;
use std::process::ExitCode;

use clap::Command;
use clap::error::ErrorKind;

use super::error_lines::SettingsLines;
use super::help;
use super::slip::{arguments, slip};
use crate::files::Reason;
use crate::settings::SettingsFile;
use crate::words::Words;

/// Why a command was not carried out.
#[derive(Debug)]
pub struct Complaint {
    sentence: String,
    code: u8,
}

impl Complaint {
    /// Bad input: exit code 2.
    pub fn input(sentence: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            code: 2,
        }
    }

    /// Something failed at run time: exit code 1.
    pub fn failure(sentence: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            code: 1,
        }
    }

    /// Output that cannot be written: exit code 1.
    pub(super) fn output(words: &Words, fault: &io::Error) -> Self {
        log::warn!("no output: {fault}");
        let reason = words.reason(Reason::of(fault));
        Self::failure(words.plainly("output-failed", &[("reason", &reason)]))
    }

    /// The exit code: 2 for bad input, 1 for what failed at run time.
    pub fn code(&self) -> ExitCode {
        ExitCode::from(self.code)
    }
}

impl fmt::Display for Complaint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

/// The words of `--lang`, which the option parser does not tell when anything else is wrong.
fn asked_for() -> Option<Words> {
    let mut arguments = arguments();
    let tag = arguments.find_map(|argument| match argument.strip_prefix("--lang")? {
        "" => Some(None),
        rest => rest.strip_prefix('=').map(|tag| Some(tag.to_owned())),
    })?;
    let tag = tag.or_else(|| arguments.next())?;
    Words::load(Some(&tag)).ok()
}

/// The words for what goes wrong before any are chosen: those of `--lang`, or of the settings.
pub fn words_for_trouble() -> Words {
    asked_for().unwrap_or_else(|| {
        let settings = SettingsFile::peek().hand_on_by(|settings| SettingsLines {
            words: Words::chosen(&settings.language),
            are_opened_later: false,
        });
        Words::chosen(&settings.language)
    })
}

/// Prints help or the version when that is what was asked for, or turns what the option
/// parser found wrong into one sentence. `program` is what was parsed.
pub(super) fn of_clap(error: &clap::Error, program: Command) -> Result<ExitCode, Complaint> {
    let words = words_for_trouble();
    let printed = match error.kind() {
        // The parser’s own definitions have no words for the help: it is printed from those that
        // have.
        ErrorKind::DisplayHelp => match help::on_screen(program, &words).try_get_matches() {
            Err(told) => told.print(),
            Ok(_) => Ok(()),
        },
        ErrorKind::DisplayVersion => error.print(),
        _ => return Err(Complaint::input(slip(error, &program, &words))),
    };
    match printed {
        Ok(()) => Ok(ExitCode::SUCCESS),
        // The reader has closed the pipe, which is no failure: `marlinspeak steps --help | head`.
        Err(fault) if fault.kind() == io::ErrorKind::BrokenPipe => Ok(ExitCode::SUCCESS),
        Err(fault) => Err(Complaint::output(&words, &fault)),
    }
}
