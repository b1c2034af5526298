//! Putting a tie on the shelf that comes from elsewhere: each once, however often it comes.

use std::collections::HashMap;
use std::time::Duration;

use super::names::Names;
use super::{Shelf, ShelfError, Tie, TieId};
use crate::files::{FileLock, Found};

/// What became of a tie that came to the shelf.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ImportOutcome {
    /// It kept its id.
    Kept,
    /// The shelf has another tie of its id, so it got a new one.
    Renumbered {
        /// The id it had.
        was: TieId,
    },
    /// The very same tie is on the shelf already; nothing was written.
    AlreadyHere,
}

/// A tie that came to the shelf.
#[derive(Clone, Debug)]
pub struct Imported {
    /// As it stands on the shelf now.
    pub tie: Tie,
    /// Whether it has the id that it came with.
    pub fate: ImportOutcome,
    /// Whether its name or its note was longer than what is kept of it.
    pub is_shortened: bool,
}

/// How long bringing something in waits for another program that does so.
const OTHERS_BRING_IN: Duration = Duration::from_secs(60);

/// The ties on a shelf by what they hold, once that had to be known.
#[derive(Default)]
pub(super) struct ByContents(Option<HashMap<String, TieId>>);

impl Shelf {
    /// Keeps other programs from bringing something in at the same time: what comes twice would
    /// be there twice.
    pub(super) fn bring_alone(&self) -> Result<FileLock, ShelfError> {
        let lock = self.folder().join(".bringing-in.lock");
        Ok(FileLock::wait_for(&lock, OTHERS_BRING_IN)?)
    }

    /// Puts a tie on the shelf. `here` is the same for all that come together.
    pub(super) fn take_in(
        &self,
        mut tie: Tie,
        ByContents(here): &mut ByContents,
    ) -> Result<Imported, ShelfError> {
        let _changing = self.change();
        let was = tie.id.clone();
        let already_here = |tie: Tie| {
            Ok(Imported {
                tie,
                fate: ImportOutcome::AlreadyHere,
                is_shortened: false,
            })
        };
        let file = self.file(&was);
        if matches!(file.find(), Ok(Found::Whole(here)) if here == tie) {
            return already_here(tie);
        }
        let is_shortened = tie.shorten();
        // It may have come before, when it got a new id.
        if file.exists()? {
            if here.is_none() {
                *here = Some(self.by_contents()?);
            }
            if let Some(id) = here.as_ref().and_then(|here| here.get(&contents_of(&tie))) {
                tie.id = id.clone();
                return already_here(tie);
            }
        }
        let contents = contents_of(&tie);
        // A time from another clock must not stand before all that this shelf will ever save.
        tie.touched = tie.touched.min(self.now_or_newest()?);
        let (_held, tie) = self.add(tie)?;
        if let Some(here) = here {
            here.insert(contents, tie.id.clone());
        }
        let fate = if tie.id == was {
            ImportOutcome::Kept
        } else {
            ImportOutcome::Renumbered { was }
        };
        Ok(Imported {
            tie,
            fate,
            is_shortened,
        })
    }

    /// Every tie on the shelf that can be read, by what it holds besides its id and the time of its last
    /// save. What is wrong with the others is told by whoever looks for them.
    fn by_contents(&self) -> Result<HashMap<String, TieId>, ShelfError> {
        let ids = Names::in_folder(self.folder())?.ids;
        let whole = ids
            .into_iter()
            .filter_map(|id| match self.file(&id).find() {
                Ok(Found::Whole(tie)) => Some((contents_of(&tie), id)),
                _ => None,
            });
        Ok(whole.collect())
    }
}

/// What tells a tie from every other, whatever its id and whenever it was saved last: a tie begun
/// again, or worked at since, is another one.
fn contents_of(tie: &Tie) -> String {
    let Tie {
        id: _,
        touched: _,
        name,
        note,
        plan,
        place,
        begun,
        batch,
        lesson,
        is_put_away,
        work_time,
        presses,
        unknown,
    } = tie;
    format!(
        "{:?}",
        (
            name,
            note,
            plan,
            place,
            begun,
            batch,
            lesson,
            is_put_away,
            work_time,
            presses,
            unknown
        )
    )
}
