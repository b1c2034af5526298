//! The help of the commands, in the language of the words.
//!
//! In the definitions of the commands stands the id of a message wherever help is given: for what a
//! command or an option does, and for the name of a value where that is a word. Here the messages are
//! put in their places.

use clap::builder::{Resettable, Str, StyledStr};
use clap::{Arg, ArgAction, Command};

use crate::words::Words;

/// What the ids of names of values begin with. Other names are signs or what is typed: `N`,
/// `round|pass`.
const VALUE: &str = "value-";

/// The definitions of the program, with what each command and option does.
pub(super) fn definitions(program: Command, words: &Words) -> Command {
    let told = |id: &'static str| words.plainly(id, &[]);
    let help = Arg::new("help")
        .short('h')
        .long("help")
        .action(ArgAction::Help)
        .help("help-help")
        .global(true);
    let version = Arg::new("version")
        .short('V')
        .long("version")
        .action(ArgAction::Version)
        .help("help-version");
    let program = program
        .disable_help_flag(true)
        .disable_version_flag(true)
        .subcommand_value_name(told("value-command"))
        .arg(help)
        .arg(version);
    worded(program, words)
}

/// The definitions with the headings that help on a screen has.
pub(super) fn on_screen(program: Command, words: &Words) -> Command {
    let mut program = definitions(program, words);
    // Only after this does each command know the names of those above it.
    program.build();
    headed(program, words)
}

fn worded(command: Command, words: &Words) -> Command {
    let told = |id: &str| words.plainly(id, &[]);
    let text = |id: Option<&StyledStr>| -> Resettable<StyledStr> {
        id.map(|id| StyledStr::from(told(&id.to_string()))).into()
    };
    let (about, more) = (text(command.get_about()), text(command.get_long_about()));
    let command = command
        .about(about)
        .long_about(more)
        .subcommand_value_name(told("value-command"))
        .mut_args(|arg| {
            let help = text(arg.get_help());
            let names: Option<Vec<Str>> = arg.get_value_names().map(|names| {
                let name = |name: &Str| match name.strip_prefix(VALUE) {
                    Some(_) => told(name).into(),
                    None => name.clone(),
                };
                names.iter().map(name).collect()
            });
            let arg = arg.help(help);
            match names {
                Some(names) => arg.value_names(names),
                None => arg,
            }
        });
    below(command, |command| worded(command, words))
}

fn headed(command: Command, words: &Words) -> Command {
    let told = |id: &'static str| words.plainly(id, &[]);
    // The parser puts a colon behind a heading itself.
    let heading = |id| told(id).trim_end_matches(':').to_owned();
    let mut command = command;
    let usage = command.render_usage().to_string();
    let usage = usage.strip_prefix("Usage: ").unwrap_or(&usage);
    let usage = usage.replace("[OPTIONS]", &format!("[{}]", told("value-options")));
    let header = *command.get_styles().get_header();
    let template = format!(
        "{{about-with-newline}}\n{header}{}{header:#} {{usage}}\n\n{{all-args}}",
        told("help-usage")
    );
    let command = command
        .override_usage(usage)
        .help_template(template)
        .subcommand_help_heading(heading("help-commands"))
        .mut_args(|arg| {
            let id = if arg.is_positional() {
                "help-arguments"
            } else {
                "help-options"
            };
            arg.help_heading(heading(id))
        });
    below(command, |command| headed(command, words))
}

/// A command with each of the commands below it changed.
fn below(command: Command, change: impl Fn(Command) -> Command) -> Command {
    let names: Vec<String> = command
        .get_subcommands()
        .map(|below| below.get_name().to_owned())
        .collect();
    names.into_iter().fold(command, |command, name| {
        command.mut_subcommand(name, &change)
    })
}
