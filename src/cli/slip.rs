//! Slips of the command line, each in a sentence: what is wrong, what is allowed, and where more of it
//! stands.

use clap::Command;
use clap::error::{ContextKind, ContextValue, ErrorKind};

use crate::words::Words;

/// The name of the program as it is typed.
const PROGRAM: &str = "marlinspeak";

/// The arguments of the program as text, with a replacement character for whatever is not Unicode.
pub(super) fn arguments() -> impl Iterator<Item = String> {
    let arguments = std::env::args_os().skip(1);
    arguments.map(|argument| argument.to_string_lossy().into_owned())
}

/// The commands that were typed, the program itself first, as far as there are such commands.
struct Typed<'a> {
    commands: Vec<&'a Command>,
    /// As they are typed: "marlinspeak shelf".
    names: String,
}

impl<'a> Typed<'a> {
    fn of(program: &'a Command, arguments: impl Iterator<Item = String>) -> Self {
        let (mut commands, mut names, mut last) = (vec![program], PROGRAM.to_owned(), program);
        for argument in arguments {
            let below = last.find_subcommand(&argument);
            if let Some(command) = below.filter(|command| !command.is_hide_set()) {
                commands.push(command);
                names.push(' ');
                names.push_str(&argument);
                last = command;
            }
        }
        Self { commands, names }
    }

    /// The commands that may come next, in the order in which help lists them.
    fn next(&self) -> Vec<&str> {
        let last = self.commands.iter().next_back();
        let below = last.into_iter().flat_map(|last| last.get_subcommands());
        let shown = below.filter(|command| !command.is_hide_set());
        shown.map(Command::get_name).collect()
    }

    /// What an option of one of them is for, in the words that its help has.
    fn option(&self, option: &str, words: &Words) -> Option<String> {
        let name = option.strip_prefix("--")?;
        let arguments = self.commands.iter().rev();
        let mut arguments = arguments.flat_map(|command| command.get_arguments());
        let help = arguments.find(|argument| argument.get_long() == Some(name))?;
        Some(words.plainly(&help.get_help()?.to_string(), &[]))
    }
}

/// The sentence for a slip of the command line.
pub(super) fn slip(error: &clap::Error, program: &Command, words: &Words) -> String {
    let context = |kind| match error.get(kind) {
        Some(ContextValue::String(text)) => Some(text.clone()),
        Some(ContextValue::Strings(texts)) => texts.first().cloned(),
        _ => None,
    };
    let option = context(ContextKind::InvalidArg).unwrap_or_default();
    // The option as written, without the name of its value: "--leads <N>".
    let option = option.split([' ', '=']).next().unwrap_or_default();
    let typed = Typed::of(program, arguments());
    let help = format!("{} --help", typed.names);
    let help = ("help", help.as_str());
    let next = typed.next().join(", ");
    let (before, allowed) = (("before", &*typed.names), ("allowed", &*next));
    match error.kind() {
        ErrorKind::UnknownArgument => {
            words.plainly("cli-unknown-option", &[("given", option), help])
        }
        ErrorKind::InvalidSubcommand => {
            let given = context(ContextKind::InvalidSubcommand).unwrap_or_default();
            let given = ("given", given.as_str());
            words.plainly("cli-unknown-command", &[given, before, allowed, help])
        }
        ErrorKind::ArgumentConflict => words.plainly("cli-twice", &[("option", option)]),
        ErrorKind::InvalidValue | ErrorKind::WrongNumberOfValues | ErrorKind::TooFewValues => {
            match typed.option(option, words) {
                Some(what) => {
                    let what = ("what", what.as_str());
                    words.plainly("cli-missing-value-for", &[("option", option), what, help])
                }
                None => words.plainly("cli-missing-value", &[("option", option), help]),
            }
        }
        ErrorKind::InvalidUtf8 => words.plainly("cli-no-text", &[help]),
        _ if !next.is_empty() => words.plainly("cli-which-command", &[before, allowed, help]),
        _ => words.plainly("cli-needs-command", &[help]),
    }
}
