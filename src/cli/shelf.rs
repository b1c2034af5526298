//! `marlinspeak shelf`: the ties that are kept, as files to hand on, to back up and to check.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::{Args, Subcommand};

use super::complaint::Complaint;
use super::error_lines::ErrorLines;
use super::print::{self, print};
use super::shelf_forms::{DocumentForm, ListForm, TieForm, VerifyForm};
use crate::files::FileError;
use crate::session::{back_up, bring_back};
use crate::settings::SettingsFile;
use crate::shelf::{
    self, DocumentState, IfThere, ImportOutcome, Shelf, ShelfError, ShelfReading, Shelved, Tie,
    TieId, VerifiedFile,
};
use crate::words::{Words, shown_name};

#[derive(Args)]
pub(super) struct ShelfOptions {
    #[command(subcommand)]
    command: ShelfCommand,
}

#[derive(Subcommand)]
enum ShelfCommand {
    #[command(about = "help-shelf-list")]
    List {
        #[arg(long, help = "help-json")]
        json: bool,
    },
    #[command(about = "help-shelf-export")]
    Export {
        #[arg(value_name = "value-tie", help = "help-shelf-tie")]
        tie: String,
        #[arg(value_name = "value-file", help = "help-file-out")]
        file: PathBuf,
        #[arg(long, help = "help-replace")]
        replace: bool,
    },
    #[command(about = "help-shelf-import")]
    Import {
        #[arg(value_name = "value-file", help = "help-file-in")]
        file: PathBuf,
    },
    #[command(about = "help-shelf-verify")]
    Verify {
        #[arg(long, help = "help-json")]
        json: bool,
    },
    #[command(about = "help-shelf-backup")]
    Backup {
        #[arg(value_name = "value-file", help = "help-file-out")]
        file: PathBuf,
        #[arg(long, help = "help-replace")]
        replace: bool,
    },
    #[command(about = "help-shelf-restore")]
    Restore {
        #[arg(value_name = "value-file", help = "help-file-in")]
        file: PathBuf,
    },
    #[command(about = "help-shelf-delete")]
    Delete {
        #[arg(value_name = "value-tie", help = "help-shelf-tie")]
        tie: String,
    },
    #[command(about = "help-shelf-undo")]
    Undo {
        #[arg(value_name = "value-tie", help = "help-shelf-undo-tie")]
        tie: String,
    },
}

/// Does what is asked and gives the exit code.
pub(super) fn run(asked: &ShelfOptions, words: &Words) -> Result<ExitCode, Complaint> {
    let shelf = Shelf::default_dir()
        .and_then(Shelf::open)
        .map_err(|error| complaint(&error, words))?;
    Runner { shelf, words }.run(&asked.command)
}

/// Names that no tie has and files that are there are slips of the command line; the rest
/// fails at run time.
fn complaint(error: &ShelfError, words: &Words) -> Complaint {
    log::warn!("{}", error.cause());
    let sentence = words.shelf_error(error);
    match error {
        ShelfError::NotAnId(_)
        | ShelfError::NoSuchTie { .. }
        | ShelfError::File(FileError::Exists { .. }) => Complaint::input(sentence),
        _ => Complaint::failure(sentence),
    }
}

/// What carries out a command on the shelf, and tells of it in these words.
struct Runner<'a> {
    shelf: Shelf,
    words: &'a Words,
}

impl Runner<'_> {
    fn run(&self, command: &ShelfCommand) -> Result<ExitCode, Complaint> {
        match command {
            ShelfCommand::List { json } => self.list(*json),
            ShelfCommand::Export { tie, file, replace } => {
                let id = self.id(tie)?;
                let mut errors = ErrorLines::new(self.words);
                let export = self.shelf.export(&id, file, if_there(*replace));
                self.done(export)?.hand_on(&mut errors);
                let texts = [("id", id.as_str()), ("file", &shown(file))];
                self.say("shelf-exported", &texts)?;
                Ok(errors.exit_code())
            }
            ShelfCommand::Import { file } => self.import(file),
            ShelfCommand::Verify { json } => self.verify(*json),
            ShelfCommand::Backup { file, replace } => {
                let mut errors = ErrorLines::new(self.words);
                let settings = SettingsFile::default_path();
                let backup = back_up(&self.shelf, settings.as_deref(), file, if_there(*replace));
                let backup = self.done(backup)?.hand_on(&mut errors);
                self.print(self.words.backed_up(file, &backup).shown())?;
                Ok(errors.exit_code())
            }
            ShelfCommand::Restore { file } => self.restore(file),
            ShelfCommand::Delete { tie } => {
                let id = self.id(tie)?;
                self.done(self.shelf.delete(&id))?;
                self.say("shelf-deleted", &[("id", id.as_str())])
            }
            ShelfCommand::Undo { tie } => {
                let id = self.id(tie)?;
                let deleted = self.done(self.shelf.deleted())?;
                let Some(deleted) = deleted.iter().rev().find(|deleted| *deleted.id() == id) else {
                    let texts = [("id", id.as_str())];
                    return Err(Complaint::input(
                        self.words.plainly("shelf-not-deleted", &texts),
                    ));
                };
                let mut errors = ErrorLines::new(self.words);
                let undone = self.done(self.shelf.undo_delete(deleted))?;
                let id = undone.hand_on(&mut errors);
                self.say("shelf-undone", &[("id", id.as_str())])?;
                Ok(errors.exit_code())
            }
        }
    }

    fn id(&self, text: &str) -> Result<TieId, Complaint> {
        self.done(TieId::parse(text).map_err(ShelfError::from))
    }

    /// What the shelf has done, or why it could not, as a sentence.
    fn done<T>(&self, result: Result<T, ShelfError>) -> Result<T, Complaint> {
        result.map_err(|error| complaint(&error, self.words))
    }

    fn print(&self, line: &str) -> Result<(), Complaint> {
        print(self.words, |out| writeln!(out, "{line}"))
    }

    fn say(&self, message: &str, texts: &[(&'static str, &str)]) -> Result<ExitCode, Complaint> {
        self.print(&self.words.plainly(message, texts))?;
        Ok(ExitCode::SUCCESS)
    }

    fn list(&self, json: bool) -> Result<ExitCode, Complaint> {
        let read = self.done(ShelfReading::try_gather(|gathering| {
            let listed = self.shelf.list()?.hand_on(gathering);
            Ok((listed, self.shelf.ledger()?.hand_on(gathering)))
        }))?;
        let troubles = read.troubles().iter();
        let troubles = troubles.map(|trouble| self.words.shelf_trouble(trouble).into());
        let troubles = troubles.collect();
        let mut errors = ErrorLines::new(self.words);
        let (listed, ledger) = read.hand_on(&mut errors);
        let now = shelf::now();
        let logged = ledger.ties();
        let is_logged = |tie: &Tie| logged.contains(tie.id());
        let ties: Vec<Shelved> = listed
            .into_iter()
            .map(|tie| {
                let is_logged = is_logged(&tie);
                Shelved::new(tie, now, is_logged)
            })
            .collect();
        if json {
            let list = ListForm {
                ties: ties.iter().map(TieForm::of).collect(),
                troubles,
            };
            print(self.words, |out| print::json(out, &list))?;
        } else {
            if ties.is_empty() {
                let folder = shown(self.shelf.folder());
                self.print(&self.words.plainly("shelf-no-ties", &[("folder", &folder)]))?;
            }
            for row in &ties {
                let stand = self.words.tie_stand(row);
                let line = self.words.tie_line(&row.tie.plan);
                let line = format!(
                    "{:10}  {line:28}  {stand:44}  {}",
                    row.tie.id(),
                    shown_name(&row.tie.name)
                );
                self.print(line.trim_end())?;
            }
            if !ledger.entries.is_empty() {
                self.print(&self.words.totals(&ledger.totals()))?;
            }
        }
        Ok(errors.exit_code())
    }

    fn import(&self, file: &Path) -> Result<ExitCode, Complaint> {
        let imported = self.done(self.shelf.import(file))?;
        let (fate, was) = match &imported.fate {
            ImportOutcome::Kept => ("kept", ""),
            ImportOutcome::Renumbered { was } => ("renumbered", was.as_str()),
            ImportOutcome::AlreadyHere => ("here", ""),
        };
        let texts = [
            ("fate", fate),
            ("id", imported.tie.id().as_str()),
            ("was", was),
            (
                "shortened",
                if imported.is_shortened { "yes" } else { "no" },
            ),
        ];
        self.say("shelf-imported", &texts)
    }

    fn restore(&self, file: &Path) -> Result<ExitCode, Complaint> {
        let mut errors = ErrorLines::new(self.words);
        let settings = SettingsFile::default_path();
        let restored = bring_back(&self.shelf, settings.as_deref(), file);
        let (restored, settings_came) = self.done(restored)?.hand_on(&mut errors);
        self.print(
            self.words
                .brought_in(file, &restored, settings_came)
                .shown(),
        )?;
        Ok(if restored.faults.is_empty() && restored.missing == 0 {
            errors.exit_code()
        } else {
            ExitCode::FAILURE
        })
    }

    fn verify(&self, json: bool) -> Result<ExitCode, Complaint> {
        let documents = self.done(self.shelf.verify())?;
        let is_whole = |one: &&VerifiedFile| {
            matches!(one.state, DocumentState::Whole | DocumentState::SetAside)
        };
        let all_whole = documents.iter().all(|one| is_whole(&one));
        if json {
            let forms = documents.iter().map(|one| self.verified(one)).collect();
            let verified = VerifyForm {
                whole: all_whole,
                documents: forms,
            };
            print(self.words, |out| print::json(out, &verified))?;
        } else {
            for why in documents.iter().filter_map(|one| self.verified(one).why) {
                self.print(&why)?;
            }
            if all_whole {
                let whole = documents
                    .iter()
                    .filter(|one| matches!(one.state, DocumentState::Whole));
                self.print(&self.words.all_whole(whole.count()))?;
            }
        }
        Ok(if all_whole {
            ExitCode::SUCCESS
        } else {
            ExitCode::FAILURE
        })
    }

    fn verified(&self, one: &VerifiedFile) -> DocumentForm {
        let file = shown(&one.file);
        let line = |state| {
            let texts = [("state", state), ("file", file.as_str())];
            Some(self.words.plainly("shelf-verify-line", &texts))
        };
        let (state, why) = match &one.state {
            DocumentState::Whole => ("whole", None),
            DocumentState::Unchecked => ("unchecked", line("unchecked")),
            DocumentState::SetAside => ("set-aside", line("aside")),
            DocumentState::Bad(error) => {
                log::warn!("{}", error.cause());
                ("bad", Some(self.words.shelf_error(error).into()))
            }
        };
        DocumentForm { file, state, why }
    }
}

fn if_there(replace: bool) -> IfThere {
    if replace {
        IfThere::Replace
    } else {
        IfThere::Refuse
    }
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}
