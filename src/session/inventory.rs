//! What is on the shelf, as it is known last. Everything here reads the disk: it is not for a thread
//! that somebody waits for.

use jiff::Timestamp;

use crate::bench::TyingPace;
use crate::shelf::{Keeper, Shelf, ShelfError, ShelfReading, Shelved, Tie, TieStatus};

/// What was found on the shelf for the start.
///
/// ```
/// use marlinspeak::session::{Inventory, inventory};
/// use marlinspeak::shelf::{Shelf, now};
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let Inventory { waiting, is_new, .. } =
///     inventory(&shelf, None, now()).unwrap().untroubled().unwrap();
/// assert!(waiting.is_empty() && is_new, "somebody begins for the first time");
/// ```
#[derive(Clone, Debug, Default)]
pub struct Inventory {
    /// Ties still to be tied that are not put away, newest first.
    pub waiting: Vec<Shelved>,
    /// The pace to go by for the first of them, where one is known.
    pub pace: Option<TyingPace>,
    /// Whether nothing was ever begun here: no tie is there, and none was deleted.
    pub is_new: bool,
}

/// Looks through the shelf for ties still to be tied that are not put away, newest first, each as
/// it was known last: the keeper may have it newer than the disk.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::{inventory, new_tie};
/// use marlinspeak::shelf::{Shelf, now};
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let [bell_rope, grip] = [("3", "5"), ("5", "7")].map(|(leads, bights)| {
///     let plan = Plan::read(leads, bights, "2", "").unwrap();
///     shelf.begin(new_tie(&plan)).unwrap().tie
/// });
/// assert!(shelf.put_away(bell_rope.id(), true).unwrap().untroubled().is_ok());
/// let found = inventory(&shelf, None, now()).unwrap().untroubled().unwrap();
/// let waiting: Vec<_> = found.waiting.iter().map(|shelved| shelved.tie.id()).collect();
/// assert_eq!(waiting, [grip.id()]);
/// ```
///
/// # Errors
/// When the folder cannot be read and the keeper has nothing either.
pub fn inventory(
    shelf: &Shelf,
    keeper: Option<&Keeper>,
    now: Timestamp,
) -> Result<ShelfReading<Inventory>, ShelfError> {
    // Where that cannot be told, nobody is taken for a beginner.
    let had_others = match shelf.deleted() {
        Ok(deleted) => !deleted.is_empty(),
        Err(error) => {
            ::log::warn!("what was deleted: {error}");
            true
        }
    };
    let found = |ties: Vec<Tie>| {
        let is_new = ties.is_empty() && !had_others;
        let waiting: Vec<_> = ties
            .into_iter()
            .map(|tie| Shelved::new(tie, now, false))
            .filter(|shelved| shelved.status() == TieStatus::Waiting)
            .collect();
        Inventory {
            pace: waiting.first().and_then(|first| pace_at(shelf, &first.tie)),
            waiting,
            is_new,
        }
    };
    let known = known_ties(shelf, keeper).or_else(|error| {
        // Where nothing can be read, what is known is there all the same.
        let unsaved = keeper.map(Keeper::unsaved).unwrap_or_default();
        if unsaved.is_empty() {
            return Err(error);
        }
        Ok(ShelfReading::of(unsaved, vec![error.into()]))
    })?;
    Ok(known.map(found))
}

/// The pace to go by for a tie. What is wrong with the log is told where the tie is taken up; until then
/// a log that is not whole knows none.
fn pace_at(shelf: &Shelf, tie: &Tie) -> Option<TyingPace> {
    let ledger = shelf.ledger().ok().and_then(|log| log.untroubled().ok());
    ledger.unwrap_or_default().pace_at(tie)
}

/// How often the shelf is listed at the most while ties are being saved.
const MOST_LISTINGS: usize = 4;

/// The ties of the shelf as they are known last: what the keeper still has to save comes before what
/// is on disk, and stands first. A tie that is saved while the shelf is being listed is as it was
/// saved.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
/// use marlinspeak::session::{known_ties, new_tie};
/// use marlinspeak::shelf::{Keeper, Shelf};
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = || Shelf::open(folder.path()).unwrap();
/// let plan = Plan::read("3", "5", "2", "").unwrap();
/// let on_disk = shelf().begin(new_tie(&plan)).unwrap();
/// let mut newer = on_disk.tie.clone();
/// newer.place = Script::new(plan, AtOnce::default()).last();
/// // Another program holds the tie, so that the keeper cannot save what it has.
/// let keeper = Keeper::start(shelf(), |_| ()).unwrap();
/// keeper.keep(newer.clone());
/// let known = known_ties(&shelf(), Some(&keeper)).unwrap().untroubled().unwrap();
/// assert_eq!(known, [newer]);
/// keeper.abandon();
/// ```
///
/// # Errors
/// When the folder cannot be read.
pub fn known_ties(
    shelf: &Shelf,
    keeper: Option<&Keeper>,
) -> Result<ShelfReading<Vec<Tie>>, ShelfError> {
    let unsaved = || keeper.map(Keeper::unsaved).unwrap_or_default();
    known_by(unsaved, || shelf.list())
}

/// The ties by what is unsaved at the time and what a listing finds.
fn known_by(
    unsaved: impl Fn() -> Vec<Tie>,
    list: impl Fn() -> Result<ShelfReading<Vec<Tie>>, ShelfError>,
) -> Result<ShelfReading<Vec<Tie>>, ShelfError> {
    ShelfReading::try_gather(|gathering| {
        let mut before = unsaved();
        let mut listed = list()?.hand_on(gathering);
        let mut after = unsaved();
        for _ in 1..MOST_LISTINGS {
            // What was saved meanwhile may have been listed as it was before that.
            if before.iter().all(|tie| is_among(tie, &after)) {
                break;
            }
            before = after;
            listed = list()?.hand_on(gathering);
            after = unsaved();
        }
        // Where saves never cease, the newer of both is taken.
        before.retain(|tie| {
            let mut listed = listed.iter();
            let is_as_new = |other: &Tie| other.id() == tie.id() && other.presses >= tie.presses;
            !is_among(tie, &after) && !listed.any(is_as_new)
        });
        let mut known = after;
        known.extend(before);
        listed.retain(|tie| !is_among(tie, &known));
        known.extend(listed);
        Ok(known)
    })
}

fn is_among(tie: &Tie, ties: &[Tie]) -> bool {
    ties.iter().any(|other| other.id() == tie.id())
}

#[cfg(test)]
mod tests {
    use std::cell::Cell;

    use super::super::opening::new_tie;
    use super::*;
    use crate::guide::Plan;
    use crate::shelf::{Presses, now};

    /// A bell rope after so many presses.
    fn after_presses(tie: &Tie, presses: u64) -> Tie {
        let mut tie = tie.clone();
        tie.presses = Presses(presses);
        tie
    }

    #[test]
    fn a_tie_saved_while_the_shelf_is_listed_is_as_it_was_saved() {
        let tie = new_tie(&Plan::read("3", "5", "2", "").unwrap());
        let unsaved_yet = after_presses(&tie, 1);
        // What a save adds stands only on the shelf.
        let mut saved = unsaved_yet.clone();
        saved.touched = now();
        let listings = Cell::new(0);
        let unsaved = || match listings.get() {
            0 => vec![unsaved_yet.clone()],
            _ => Vec::new(),
        };
        // At the first listing the tie is read, and saved before the rest of the shelf is.
        let list = || {
            let is_first = listings.replace(listings.get() + 1) == 0;
            let read = if is_first { &tie } else { &saved };
            Ok(ShelfReading::whole(vec![read.clone()]))
        };
        let known = known_by(unsaved, list).unwrap().untroubled().unwrap();
        assert_eq!(known, [saved]);
    }

    #[test]
    fn a_shelf_on_which_saves_never_cease_is_listed_a_few_times() {
        let plan = Plan::read("3", "5", "2", "").unwrap();
        let ties = [new_tie(&plan), new_tie(&plan)];
        let listings = Cell::new(0);
        // At each listing the tie that was unsaved is saved, and another one is not.
        let unsaved = || {
            let nth = listings.get();
            vec![after_presses(&ties[nth % 2], nth as u64 + 1)]
        };
        let list = || {
            listings.set(listings.get() + 1);
            let read = ties.iter().map(|tie| after_presses(tie, 0)).collect();
            Ok(ShelfReading::whole(read))
        };
        let known = known_by(unsaved, list).unwrap().untroubled().unwrap();
        assert_eq!(listings.get(), MOST_LISTINGS);
        // Both stand as they were known last, each of them once.
        let presses: Vec<u64> = known.iter().map(|tie| tie.presses.0).collect();
        assert_eq!(presses, [5, 4]);
    }
}
