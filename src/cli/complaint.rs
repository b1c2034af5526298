//! One sentence on standard error, and an exit code.

use std::fmt;
use std::io;
use std::process::ExitCode;

use clap::Command;
use clap::error::{ContextKind, ContextValue, ErrorKind};

use super::error_lines::SettingsLines;
use super::help;
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

/// The arguments of the program as text, with a replacement character for whatever is not Unicode.
fn arguments() -> impl Iterator<Item = String> {
    let arguments = std::env::args_os().skip(1);
    arguments.map(|argument| argument.to_string_lossy().into_owned())
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

/// The sentence for a slip of the command line.
fn slip(error: &clap::Error, program: &Command, words: &Words) -> String {
    let context = |kind| match error.get(kind) {
        Some(ContextValue::String(text)) => Some(text.clone()),
        Some(ContextValue::Strings(texts)) => texts.first().cloned(),
        _ => None,
    };
    let option = context(ContextKind::InvalidArg).unwrap_or_default();
    // The option as written, without the name of its value: "--leads <N>".
    let option = option.split([' ', '=']).next().unwrap_or_default();
    let command = arguments().next().filter(|name| {
        program
            .find_subcommand(name)
            .is_some_and(|command| !command.is_hide_set())
    });
    let help = command.map_or("marlinspeak --help".to_owned(), |name| {
        format!("marlinspeak {name} --help")
    });
    let help = help.as_str();
    match error.kind() {
        ErrorKind::UnknownArgument => {
            words.plainly("cli-unknown-option", &[("given", option), ("help", help)])
        }
        ErrorKind::InvalidSubcommand => {
            let given = context(ContextKind::InvalidSubcommand).unwrap_or_default();
            words.plainly("cli-unknown-option", &[("given", &given), ("help", help)])
        }
        ErrorKind::ArgumentConflict => words.plainly("cli-twice", &[("option", option)]),
        ErrorKind::InvalidValue | ErrorKind::WrongNumberOfValues | ErrorKind::TooFewValues => {
            words.plainly("cli-missing-value", &[("option", option), ("help", help)])
        }
        ErrorKind::InvalidUtf8 => words.plainly("cli-no-text", &[("help", help)]),
        _ => words.plainly("cli-needs-command", &[("help", help)]),
    }
}
