//! Words of the shelf and its log, and of what can be wrong with their files.

use std::path::Path;

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::harmless::{shown_name, shown_note};
use super::lengths::{fine, sum};
use super::pins::set_nested;
use super::reasons::kind_of_format;
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Sentence, Spoken, Words};
use crate::bench::{LengthError, TyingPace};
use crate::files::FileError;
use crate::shelf::{
    Backup, CopyBefore, DocumentError, ImportOutcome, MOST_MINUTES, MeasureKind, Restored,
    ShelfError, ShelfTrouble, Shelved, TieIdError, Totals, WildMeasure,
};

impl Words {
    /// How a tie stands: "58 per cent, 14 of 24 legs, touched yesterday".
    pub fn tie_stand(&self, tie: &Shelved) -> String {
        let args = fluent_args! {
            "state" => tie.status().selector(), "percent" => tie.per_cent(),
            "laid" => tie.progress.laid, "legs" => tie.progress.legs, "days" => tie.days,
            "minutes" => tie.minutes, "hours" => tie.minutes / 60,
        };
        let stand = self.text("shelf-tie-stand", &args);
        match &tie.tie.batch {
            Some(batch) => format!("{stand} · {}", self.piece_of_batch(batch)),
            None => stand,
        }
    }

    /// What is said of a tie when it gets the focus. `number` counts from 1.
    pub fn say_tie(&self, tie: &Shelved, number: usize, ties: usize) -> Spoken {
        let mut args = fluent_args! {
            "number" => number, "ties" => ties,
            "name" => shown_name(&tie.tie.name), "note" => shown_note(&tie.tie.note),
            "named" => (!tie.tie.name.trim().is_empty()).selector(),
            "noted" => (!tie.tie.note.trim().is_empty()).selector(),
            "leads" => tie.tie.plan.knot().leads(), "bights" => tie.tie.plan.knot().bights(),
            "passes" => tie.tie.plan.laying().passes(), "pass" => tie.place.pass().unwrap_or(1),
            "phase" => tie.place.phase().name(), "state" => tie.status().selector(),
            "percent" => tie.per_cent(), "days" => tie.days,
        };
        set_nested(&mut args, tie.tie.plan.knot().lattice());
        let words = self.on(tie.tie.plan.rims());
        words.spoken(SpokenMessage::ShelfTieSay, &args)
    }

    /// What is said when the shelf appears with so many ties.
    pub fn say_shelf(&self, ties: usize) -> Spoken {
        let message = if ties == 0 {
            SpokenMessage::ShelfEmptySay
        } else {
            SpokenMessage::ShelfSay
        };
        self.spoken(message, &fluent_args! { "ties" => ties })
    }

    /// So many ties are not laid out just now.
    pub fn more_ties(&self, ties: usize) -> String {
        self.text("shelf-more-ties", &fluent_args! { "ties" => ties })
    }

    /// That so many more wait than the start screen has room for.
    pub fn ties_on_shelf(&self, ties: usize) -> String {
        self.text("start-more-ties", &fluent_args! { "ties" => ties })
    }

    /// Whether a finished tie is in the log.
    pub fn tie_log(&self, is_logged: bool) -> String {
        self.text(
            "shelf-tie-log",
            &fluent_args! { "logged" => is_logged.selector() },
        )
    }

    /// All logged ties together.
    pub fn totals(&self, totals: &Totals) -> String {
        let minutes = whole(totals.minutes);
        let cord = if totals.cord > 0.0 {
            FluentValue::from(sum(totals.cord))
        } else {
            "none".into()
        };
        let args = fluent_args! {
            "ties" => totals.ties, "legs" => totals.legs, "hours" => minutes / 60,
            "minutes" => minutes % 60, "cord" => cord,
        };
        self.text("shelf-totals", &args)
    }

    /// The tyer's own pace.
    pub fn pace(&self, pace: TyingPace) -> String {
        let seconds = pace.leg_seconds();
        let seconds = (seconds * 10.0).round() / 10.0;
        self.text("shelf-pace", &fluent_args! { "seconds" => seconds })
    }

    /// What a backup came to.
    pub fn backed_up(&self, file: &Path, backup: &Backup) -> Sentence {
        let args = fluent_args! {
            "file" => file.display().to_string(), "ties" => backup.ties,
            "logged" => backup.logged, "left" => backup.left_out,
        };
        self.sentence("shelf-backed-up", &args)
            .then(&self.orders_backed_up(backup.orders))
    }

    /// What came from a file, the settings among it or not.
    pub fn brought_in(&self, file: &Path, restored: &Restored, settings_came: bool) -> Sentence {
        let is_known = |fate: &ImportOutcome| matches!(fate, ImportOutcome::AlreadyHere);
        let known = restored
            .ties
            .iter()
            .filter(|tie| is_known(&tie.fate))
            .count();
        let args = fluent_args! {
            "file" => file.display().to_string(), "new" => restored.ties.len() - known,
            "logged" => restored.logged, "known" => known, "faults" => restored.faults.len(),
            "missing" => restored.missing, "shortened" => restored.shortened,
            "presets" => restored.presets, "settings" => settings_came.selector(),
        };
        self.sentence("shelf-brought-in", &args)
            .then(&self.orders_came(restored.orders))
    }

    /// So many documents are whole.
    pub fn all_whole(&self, documents: usize) -> String {
        self.text(
            "shelf-verify-whole",
            &fluent_args! { "documents" => documents },
        )
    }

    /// What is said of a field of the log's form.
    pub fn say_log_field(&self, field: &str, value: &str) -> Spoken {
        let args = fluent_args! {
            "field" => field, "value" => value, "filled" => (!value.trim().is_empty()).selector(),
        };
        self.spoken(SpokenMessage::LogFieldSay, &args)
    }

    /// The sentence for a photograph that is larger than so many megabytes, or has too many pixels.
    pub fn photograph_large(&self, file: &str, most: u64) -> Sentence {
        let args = fluent_args! { "file" => file.to_owned(), "most" => most };
        self.sentence("log-photograph-large", &args)
    }

    /// The sentence for minutes that are none.
    pub fn minutes_unreadable(&self, given: &str) -> Sentence {
        let args = fluent_args! { "given" => given, "most" => whole(MOST_MINUTES) };
        self.sentence("log-minutes-unreadable", &args)
    }

    /// Asks back a measure that is far from what it should come to.
    pub fn wild_measure(&self, wild: &WildMeasure) -> Sentence {
        let what = match wild.what {
            MeasureKind::Width => "width",
            MeasureKind::Cord => "cord",
        };
        let args = fluent_args! {
            "what" => what, "measured" => fine(wild.measured), "computed" => fine(wild.computed),
        };
        self.sentence("log-wild", &args)
    }

    /// The sentence for a length that cannot be used in the log's form.
    pub fn log_length_error(&self, error: &LengthError) -> Sentence {
        let (id, given) = match error {
            LengthError::Unreadable { given } => ("log-length-unreadable", given),
            LengthError::UnknownUnit { given, .. } => ("log-length-unit", given),
            LengthError::ThousandsOrDecimals { given } => ("log-length-comma", given),
            LengthError::BareFraction { given } => ("log-length-fraction", given),
            LengthError::NotPositive { given } => ("log-length-positive", given),
            LengthError::OutOfRange { given } => ("log-length-range", given),
        };
        self.notice(id, &[("given", given)])
    }

    /// Asks back when the tyer leaves what is not saved.
    pub fn leaving_unsaved(&self, failure: Option<&ShelfError>) -> Sentence {
        self.sentence("leaving-unsaved", &unsaved_args(self, failure))
    }

    /// The sentence for a tie that was left in the terminal and is not saved.
    pub fn left_unsaved(&self, failure: Option<&ShelfError>) -> String {
        self.text("tie-not-saved", &unsaved_args(self, failure))
    }

    /// The sentence for what was found wrong on the shelf, and what was done about it.
    pub fn shelf_trouble(&self, trouble: &ShelfTrouble) -> Sentence {
        let name = |path: &Path| -> String {
            let name = path.file_name().unwrap_or(path.as_os_str());
            name.to_string_lossy().into_owned()
        };
        let aside = trouble.moved_to.as_deref().map(name);
        let (file, state) = match (&trouble.error, &aside) {
            (ShelfError::File(FileError::Gone { file }), _) => (name(file), "gone"),
            (ShelfError::File(FileError::Unreadable { file, .. }), Some(_)) => {
                (name(file), "aside")
            }
            (ShelfError::File(FileError::Unreadable { file, .. }), None) => (name(file), "there"),
            (error, _) => return self.shelf_error(error),
        };
        let aside = aside.unwrap_or_default();
        let Some(copy) = trouble.copy_used else {
            return if state == "aside" {
                self.notice("trouble-damaged", &[("file", &file), ("aside", &aside)])
            } else {
                self.shelf_error(&trouble.error)
            };
        };
        let (kind, presses) = match copy {
            CopyBefore::PressesBehind(presses) => ("known", presses),
            CopyBefore::SomeWayBehind => ("unknown", 0),
            CopyBefore::AsKeptBefore => ("kept", 0),
        };
        let args = fluent_args! {
            "file" => file, "aside" => aside, "state" => state, "copy" => kind,
            "presses" => presses,
        };
        self.sentence("trouble-restored", &args)
    }

    /// The sentence for what the shelf could not do.
    pub fn shelf_error(&self, error: &ShelfError) -> Sentence {
        let shown = |path: &Path| path.display().to_string();
        match error {
            ShelfError::File(FileError::Io { action, path, .. }) => {
                let (path, reason) = (shown(path), self.reason(error.reason()));
                let texts = [
                    ("doing", action.into()),
                    ("path", path.as_str()),
                    ("reason", &reason),
                ];
                self.notice("shelf-error-io", &texts)
            }
            ShelfError::File(FileError::Unreadable { file, fault }) => {
                let (path, place) = (shown(file), self.place_in_brackets(fault));
                let texts = [("fault", kind(fault)), ("path", &path), ("place", &place)];
                self.notice("shelf-error-unreadable", &texts)
            }
            ShelfError::File(FileError::Gone { file }) => {
                self.notice("shelf-error-gone", &[("path", &shown(file))])
            }
            ShelfError::Stranger { file } => {
                self.notice("shelf-error-stranger", &[("path", &shown(file))])
            }
            ShelfError::Unwritable { id, .. } => {
                self.notice("shelf-error-unwritable", &[("id", id.as_str())])
            }
            ShelfError::InUse { .. } => self.notice("trouble-in-use", &[]),
            ShelfError::NoSuchTie { id } => {
                self.notice("shelf-error-no-such-tie", &[("id", id.as_str())])
            }
            ShelfError::NoSuchOrder { id } => {
                self.notice("order-none-of-name", &[("given", id.as_str())])
            }
            ShelfError::NotAnId(TieIdError { given }) => {
                self.notice("shelf-error-not-an-id", &[("given", given)])
            }
            ShelfError::File(FileError::Exists { file }) => {
                self.notice("shelf-error-exists", &[("path", &shown(file))])
            }
            ShelfError::NoHome => self.notice("shelf-error-no-home", &[]),
            ShelfError::After { troubles, error } => {
                self.shelf_troubles(troubles).then(&self.shelf_error(error))
            }
        }
    }

    /// The sentences for what was found wrong on the shelf, one after the other.
    pub(super) fn shelf_troubles(&self, troubles: &[ShelfTrouble]) -> Sentence {
        let sentences = troubles.iter().map(|trouble| self.shelf_trouble(trouble));
        sentences.fold(Sentence::default(), |told, next| told.then(&next))
    }
}

fn unsaved_args(words: &Words, failure: Option<&ShelfError>) -> FluentArgs<'static> {
    let reason = failure.map(|error| words.reason(error.reason()));
    let reason = reason.unwrap_or_default();
    fluent_args! { "known" => failure.is_some().selector(), "reason" => reason }
}

fn kind(fault: &DocumentError) -> &'static str {
    match fault {
        DocumentError::Format(fault) => kind_of_format(fault),
        DocumentError::Phase { .. } => "shape",
        DocumentError::Knot(_) => "knot",
        DocumentError::Place { .. } => "place",
    }
}

/// Rounded to a whole number.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and minutes are never negative"
)]
fn whole(minutes: f64) -> u64 {
    minutes.round() as u64
}
