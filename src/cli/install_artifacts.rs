//! `marlinspeak install-artifacts`: what an installed program has beside it, made from the program itself.
//!
//! Hidden, as only `make` calls it. Pages and completions follow from the definitions of the
//! commands, so that they cannot say anything else.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use clap::{Args, Command};
use clap_complete::Shell;
use clap_mangen::Man;

use super::complaint::Complaint;
use crate::picture::{ICON_SIZES, icon_png, icon_svg};
use crate::words::Words;

const NAME: &str = "marlinspeak";

/// What the page of the whole program has besides what the definitions know.
const FILES: &str = r#".SH FILES
.TP
\fI$XDG_DATA_HOME/marlinspeak/ties\fR
Every tie as one document, and the log of finished ties. Usually in ~/.local/share.
.TP
\fI$XDG_DATA_HOME/marlinspeak/rack.json\fR
Tubes and cords that are kept by name.
.TP
\fI$XDG_CONFIG_HOME/marlinspeak/settings.json\fR
The settings. Usually in ~/.config.
.TP
\fI$XDG_STATE_HOME/marlinspeak/window.json\fR
Where the window stood and how large it was.
.TP
\fI$XDG_STATE_HOME/marlinspeak/marlinspeak.log\fR
What a report of a fault needs: 256 kilobytes at most, and as many in the file before it. Usually in ~/.local/state.
.SH "EXIT STATUS"
.TP
\fB0\fR
All went well.
.TP
\fB1\fR
Something failed at run time, or \fBdoctor\fR or \fBshelf verify\fR found something wrong.
.TP
\fB2\fR
Bad input; one sentence on standard error says what is wrong, what is allowed and what to try.
.SH "SEE ALSO"
\fBspd\-say\fR(1), \fBspd\-conf\fR(1)
"#;

#[derive(Args)]
pub(super) struct InstallArtifactsOptions {
    #[arg(value_name = "value-folder", help = "help-folder")]
    folder: PathBuf,
}

/// Writes `man`, `completions` and `icons` into the folder; `program` is the whole command line, as it is
/// to be told there.
pub(super) fn run(
    asked: &InstallArtifactsOptions,
    program: &Command,
    words: &Words,
) -> Result<(), Complaint> {
    write_all(program, &asked.folder).map_err(|error| Complaint::output(words, &error))
}

fn write_all(program: &Command, folder: &Path) -> io::Result<()> {
    let [man, completions, icons] = ["man", "completions", "icons"].map(|name| folder.join(name));
    for folder in [&man, &completions, &icons] {
        fs::create_dir_all(folder)?;
    }
    pages(program, &man)?;
    for shell in [Shell::Bash, Shell::Zsh, Shell::Fish] {
        clap_complete::generate_to(shell, &mut shown(program), NAME, &completions)?;
    }
    let svg = icon_svg().map_err(io::Error::other)?;
    fs::write(icons.join(format!("{NAME}.svg")), svg)?;
    for size in ICON_SIZES {
        let png = icon_png(size).map_err(io::Error::other)?;
        fs::write(icons.join(format!("{NAME}-{size}.png")), png)?;
    }
    Ok(())
}

/// The definitions without what is hidden: completions would offer it.
fn shown(program: &Command) -> Command {
    let visible: Vec<Command> = program
        .get_subcommands()
        .filter(|command| !command.is_hide_set())
        .cloned()
        .collect();
    let mut shown = Command::new(NAME)
        .version(env!("CARGO_PKG_VERSION"))
        .disable_help_subcommand(true)
        // The options that are copied have them already.
        .disable_help_flag(true)
        .disable_version_flag(true)
        .subcommands(visible);
    for option in program.get_arguments() {
        shown = shown.arg(option.clone());
    }
    shown
}

/// A page for the program, and one for each command that is shown.
fn pages(program: &Command, folder: &Path) -> io::Result<()> {
    let mut built = program.clone();
    built.build();
    page(&built, NAME, FILES, folder)?;
    for command in built.get_subcommands().filter(|one| !one.is_hide_set()) {
        page(
            command,
            &format!("{NAME}-{}", command.get_name()),
            "",
            folder,
        )?;
        for below in command.get_subcommands().filter(|one| !one.is_hide_set()) {
            let name = format!("{NAME}-{}-{}", command.get_name(), below.get_name());
            page(below, &name, "", folder)?;
        }
    }
    Ok(())
}

fn page(command: &Command, name: &str, more: &str, folder: &Path) -> io::Result<()> {
    let mut text = Vec::new();
    // The date would make two builds of the same source differ.
    Man::new(command.clone().display_name(name.to_owned()))
        .date("")
        .manual("Marlinspeak")
        .render(&mut text)?;
    text.extend_from_slice(more.as_bytes());
    fs::write(folder.join(format!("{name}.1")), text)
}
