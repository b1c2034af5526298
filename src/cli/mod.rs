//! The same knots from a terminal.

mod command_line;
mod complaint;
mod count;
mod doctor;
mod error_lines;
mod fit;
mod ground_form;
mod help;
mod install_artifacts;
mod line_voice;
mod options;
mod order;
mod order_forms;
mod print;
mod rig;
mod rigging_forms;
mod setup_options;
mod sheet;
mod shelf;
mod shelf_forms;
mod slip;
mod slow_disk;
mod steps;
pub mod tie;

use std::process::ExitCode;

use clap::{CommandFactory as _, Parser as _};
use command_line::{CommandLine, SubCommand};
pub use complaint::{Complaint, words_for_trouble};
use error_lines::SettingsLines;
pub use slow_disk::SlowDisk;

use crate::guide::Plan;
use crate::logging;
use crate::session::Wishes;
use crate::settings::SettingsFile;
use crate::words::{LanguageChoice, Words};

/// What the command line asks for once it is understood.
pub enum Invocation {
    /// Open the app in these words, on this plan if there is one.
    Open {
        /// The words of the language asked for.
        words: Box<Words>,
        /// What was asked for on the command line.
        wishes: Wishes,
        /// The plan that the options name, if any.
        plan: Option<Box<Plan>>,
        /// Tells of a slow disk until there is a window that does.
        looking_on: SlowDisk,
    },
    /// Everything was done; leave with this code.
    Done(ExitCode),
}

/// The words of the language that is asked for, or else of the one in the settings; the units are
/// those of the settings.
fn words(asked: Option<&str>, language: &LanguageChoice) -> Result<Words, Complaint> {
    let mut language = language.clone();
    if let Some(asked) = asked {
        if let Err(error) = Words::load(Some(asked)) {
            let sentence = Words::chosen(&language).language_unknown(&error);
            return Err(Complaint::input(sentence));
        }
        language.tag = Some(asked.to_owned());
    }
    Ok(Words::chosen(&language))
}

/// Reads the command line, does what can be done in the terminal, and says what remains.
///
/// # Errors
/// A [`Complaint`]: one sentence for standard error and an exit code.
pub fn run() -> Result<Invocation, Complaint> {
    let options = match CommandLine::try_parse() {
        Ok(options) => options,
        Err(error) => {
            return complaint::of_clap(&error, CommandLine::command()).map(Invocation::Done);
        }
    };
    let asked = options.lang.as_deref();
    let in_words_asked_for = {
        let asked = asked.map(str::to_owned);
        // Which words are set is not known before the settings are read.
        move || {
            let words = Words::load(asked.as_deref()).or_else(|_| Words::load(None));
            words.unwrap_or_else(|_| Words::english())
        }
    };
    // The guided job and the window keep a log from their own beginning; what is told before that is told
    // there once more.
    if let (Some(file), Some(command)) = (logging::default_file(), &options.command)
        && !matches!(command, SubCommand::Tie(_))
    {
        logging::stand_by(&file, command.into());
    }
    let looking_on = SlowDisk::look_on(in_words_asked_for);
    let settings = SettingsFile::peek().hand_on_by(|settings| SettingsLines {
        words: words(asked, &settings.language)
            .unwrap_or_else(|_| Words::chosen(&settings.language)),
        are_opened_later: matches!(
            options.command,
            None | Some(SubCommand::Tie(_) | SubCommand::Doctor)
        ),
    });
    let mut words = words(asked, &settings.language)?;
    looking_on.tell_in(words.maker());
    let prices = settings.prices;
    let detail = options.detail(&words)?;
    words.set_detail(detail.unwrap_or_default());
    Ok(match &options.command {
        None => Invocation::Open {
            plan: options.plan_if_any(&words)?.map(Box::new),
            wishes: Wishes {
                detail,
                ..Wishes::default()
            },
            words: Box::new(words),
            looking_on,
        },
        Some(command) => {
            if !options.is_plain() {
                return Err(Complaint::input(words.plainly("cli-options-first", &[])));
            }
            // The doctor asks with a deadline.
            let looking_on = (!matches!(command, SubCommand::Doctor)).then_some(looking_on);
            let code = match command {
                SubCommand::Shelf(asked) => shelf::run(asked, &words)?,
                SubCommand::Steps(asked) => {
                    steps::run(asked, &words).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Fit(asked) => {
                    fit::run(asked, prices, &words).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Rig(asked) => {
                    rig::run(asked, prices, &words).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Tie(asked) => {
                    tie::run(asked, words, detail, looking_on).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Sheet(asked) => {
                    sheet::run(asked, prices, &words).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Count(asked) => {
                    count::run(asked, &words).map(|()| ExitCode::SUCCESS)?
                }
                SubCommand::Order(asked) => order::run(asked, prices, &words)?,
                SubCommand::Doctor => doctor::run(&words)?,
                SubCommand::InstallArtifacts(asked) => install_artifacts::run(
                    asked,
                    &help::definitions(CommandLine::command(), &Words::english()),
                    &words,
                )
                .map(|()| ExitCode::SUCCESS)?,
            };
            Invocation::Done(code)
        }
    })
}
