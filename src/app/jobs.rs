//! What the shelf screen has done on the disk. Nothing here is for the thread of the window.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use crate::bench::TyingPace;
use crate::files::Gathering;
use crate::guide::{AtOnce, FitQuestion, Script};
use crate::session::{ListingNumber, back_up, bring_back, known_ties};
use crate::shelf::{
    self, Backup, Deleted, IfThere, Imported, Keeper, Ledger, Restored, Shelf, ShelfError,
    ShelfReading, ShelfTrouble, Shelved, Tie, TieId, TieStatus, Totals,
};

/// Something to be done.
#[derive(Clone, Debug)]
pub enum Job {
    /// Look the shelf through.
    Look,
    /// Give a tie a name.
    Name(TieId, String),
    /// Give a tie a note.
    Note(TieId, String),
    /// Begin the same tie again.
    Again(TieId),
    /// Put a tie away, or out again.
    PutAway(TieId, bool),
    /// Delete a tie.
    Delete(TieId),
    /// Bring back the tie that was deleted last.
    Undo,
    /// Write everything to a new file.
    BackUp(PathBuf),
    /// Bring in what a file holds.
    BringIn(PathBuf),
}

/// What came of it.
#[derive(Clone, Debug)]
pub enum JobOutcome {
    /// The shelf was looked through.
    Looked,
    /// The tie has its name.
    Named,
    /// The tie has its note.
    Noted,
    /// The tie is begun again, as this one.
    Again(TieId),
    /// The tie is put away (`true`) or out.
    PutAway(bool),
    /// The tie is deleted.
    Deleted,
    /// This tie is back; none when none was deleted.
    Undone(Option<TieId>),
    /// Everything is in this file.
    BackedUp(PathBuf, Backup),
    /// This came from that file.
    /// The settings came too where this is said.
    BroughtIn(PathBuf, Restored, bool),
}

/// All that the screen shows.
#[derive(Clone, Debug, Default)]
pub struct Stock {
    /// The ties: those that wait first, then those put away, then the finished ones.
    pub ties: Vec<Shelved>,
    /// All logged ties together.
    pub totals: Totals,
    /// The tyer's pace.
    pub pace: Option<TyingPace>,
    /// Where the photographs of logged ties are.
    pub photographs: Vec<(TieId, PathBuf)>,
    /// Which listing it is.
    pub listing: ListingNumber,
}

impl Stock {
    /// Gives way to a newer one; one that comes late shows the shelf as it was before.
    pub fn take_in(&mut self, other: Self) {
        if other.listing >= self.listing {
            *self = other;
        }
    }
}

/// What came of a job, and the shelf after it.
#[derive(Clone, Debug)]
pub struct JobReport {
    /// What came of it.
    pub outcome: Result<JobOutcome, ShelfError>,
    /// The shelf after it.
    pub stock: Result<Stock, ShelfError>,
}

/// Does a job once everything that was to be saved is saved, and looks the shelf through.
pub fn do_job(
    shelf: &Shelf,
    keeper: Option<&Keeper>,
    settings: Option<&Path>,
    at_most: Duration,
    job: Job,
) -> ShelfReading<JobReport> {
    if let Some(keeper) = keeper {
        keeper.flush(at_most);
    }
    ShelfReading::gather(|gathering| JobReport {
        outcome: outcome(shelf, settings, job, gathering),
        stock: stock(shelf, keeper, gathering),
    })
}

fn outcome(
    shelf: &Shelf,
    settings: Option<&Path>,
    job: Job,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<JobOutcome, ShelfError> {
    Ok(match job {
        Job::Look => JobOutcome::Looked,
        Job::Name(id, name) => {
            shelf.rename(&id, name.trim())?.hand_on(gathering);
            JobOutcome::Named
        }
        Job::Note(id, note) => {
            shelf.note(&id, note.trim())?.hand_on(gathering);
            JobOutcome::Noted
        }
        Job::Again(id) => {
            let plan = shelf.look(&id)?.hand_on(gathering).plan;
            let start = Script::new(plan, AtOnce::default()).first();
            let copy = shelf.copy(&id, start)?.hand_on(gathering);
            JobOutcome::Again(copy.id().clone())
        }
        Job::PutAway(id, away) => {
            shelf.put_away(&id, away)?.hand_on(gathering);
            JobOutcome::PutAway(away)
        }
        Job::Delete(id) => shelf.delete(&id).map(|_| JobOutcome::Deleted)?,
        Job::Undo => match newest(shelf.deleted()?) {
            Some(deleted) => {
                let id = shelf.undo_delete(&deleted)?.hand_on(gathering);
                JobOutcome::Undone(Some(id))
            }
            None => JobOutcome::Undone(None),
        },
        Job::BackUp(file) => {
            let backup = back_up(shelf, settings, &file, IfThere::Refuse)?.hand_on(gathering);
            JobOutcome::BackedUp(file, backup)
        }
        Job::BringIn(file) => {
            let (restored, settings_came) = bring_in(shelf, settings, &file, gathering)?;
            JobOutcome::BroughtIn(file, restored, settings_came)
        }
    })
}

/// The tie whose folder was moved into last.
fn newest(deleted: Vec<Deleted>) -> Option<Deleted> {
    let moved = |deleted: &Deleted| fs::metadata(deleted.folder()).and_then(|one| one.modified());
    deleted
        .into_iter()
        .max_by_key(|deleted| moved(deleted).ok())
}

/// A backup, or else a single tie.
fn bring_in(
    shelf: &Shelf,
    settings: Option<&Path>,
    file: &Path,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<(Restored, bool), ShelfError> {
    match bring_back(shelf, settings, file) {
        Err(ShelfError::File(error)) if error.is_damaged() => {
            let imported: Imported = shelf.import(file)?;
            let restored = Restored {
                shortened: usize::from(imported.is_shortened),
                ties: vec![imported],
                logged: 0,
                presets: 0,
                orders: 0,
                settings: None,
                faults: Vec::new(),
                missing: 0,
            };
            Ok((restored, false))
        }
        restored => Ok(restored?.hand_on(gathering)),
    }
}

fn stock(
    shelf: &Shelf,
    keeper: Option<&Keeper>,
    gathering: &mut Gathering<ShelfTrouble>,
) -> Result<Stock, ShelfError> {
    let listing = ListingNumber::draw();
    let listed = known_ties(shelf, keeper)?.hand_on(gathering);
    let ledger = shelf.ledger()?.hand_on(gathering);
    let now = shelf::now();
    let logged = ledger.ties();
    let is_logged = |tie: &Tie| logged.contains(tie.id());
    let mut ties: Vec<Shelved> = listed
        .into_iter()
        .map(|tie| {
            let is_logged = is_logged(&tie);
            Shelved::new(tie, now, is_logged)
        })
        .collect();
    ties.sort_by_key(|tie| match tie.status() {
        TieStatus::Waiting => 0,
        TieStatus::PutAway => 1,
        TieStatus::Finished => 2,
    });
    let (totals, pace) = (ledger.totals(), ledger.pace());
    let entries = ledger.entries.into_iter();
    let entries = entries.filter(|entry| !entry.photograph.is_empty());
    let photographs = entries.map(|entry| (entry.tie, PathBuf::from(entry.photograph)));
    Ok(Stock {
        ties,
        totals,
        pace,
        photographs: photographs.collect(),
        listing,
    })
}

/// A file that a backup can go to, named after the day.
pub fn backup_path() -> String {
    let name = shelf::now()
        .strftime("marlinspeak-%Y-%m-%d.backup")
        .to_string();
    // The other folders of a person stand in a file.
    directories::BaseDirs::new()
        .map_or_else(|| PathBuf::from(&name), |dirs| dirs.home_dir().join(&name))
        .display()
        .to_string()
}

/// A question of fit with what the log says. A log that cannot be read says nothing, and is told
/// of.
pub fn taught(shelf: Option<&Shelf>, question: FitQuestion) -> ShelfReading<FitQuestion> {
    let ledger = match shelf.map(Shelf::ledger) {
        Some(Ok(ledger)) => ledger,
        Some(Err(error)) => ShelfReading::of(Ledger::default(), vec![error.into()]),
        None => ShelfReading::whole(Ledger::default()),
    };
    ledger.map(|ledger| ledger.teach(question))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::Plan;
    use crate::session::new_tie;

    #[test]
    fn a_listing_that_comes_late_does_not_take_the_place_of_a_newer_one() {
        let folder = tempfile::tempdir().unwrap();
        let shelf = Shelf::open(folder.path()).unwrap();
        let plan = Plan::read("3", "5", "2", "").unwrap();
        let tie = shelf.begin(new_tie(&plan)).unwrap().tie;
        let done = |job| {
            let report = do_job(&shelf, None, None, Duration::ZERO, job);
            report.untroubled().unwrap().stock.unwrap()
        };
        let late = done(Job::Look);
        let mut shown = done(Job::Name(tie.id().clone(), "bell rope".to_owned()));
        shown.take_in(late);
        assert_eq!(shown.ties[0].tie.name, "bell rope");
        shown.take_in(done(Job::Delete(tie.id().clone())));
        assert!(shown.ties.is_empty());
    }
}
