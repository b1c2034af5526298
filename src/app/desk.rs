//! What the screens work with: the voice, the shelf, and the thread that saves.

use std::sync::Arc;
use std::time::Duration;

use jiff::Timestamp;

use super::comforts::Comforts;
use crate::bench::Pace;
use crate::guide::{AtOnce, COURSE, LessonState, Script, Wanted};
use crate::shelf::{
    Held, Keeper, RackFile, Shelf, ShelfError, Shelved, Standing, TakenUp, Tie, TieId, Trouble,
};
use crate::voice::{Manner, Speaker};

/// How long leaving waits for the last save.
pub const LAST_SAVE: Duration = Duration::from_secs(2);

/// Speaks one text at a time; a new one cuts off the old.
pub trait Speak {
    /// Says this instead of whatever is being said.
    fn say(&self, text: &str);
    /// Says nothing more.
    fn hush(&self);
    /// How everything from now on is to be said.
    fn set_manner(&self, _manner: Manner) {}
    /// Asks for the voices there are.
    fn ask_for_voices(&self) {}
}

impl Speak for Speaker {
    fn say(&self, text: &str) {
        Speaker::say(self, text);
    }

    fn hush(&self) {
        Speaker::hush(self);
    }

    fn set_manner(&self, manner: Manner) {
        Speaker::set_manner(self, manner);
    }

    fn ask_for_voices(&self) {
        self.voices();
    }
}

/// No voice at all.
pub struct Mute;

impl Speak for Mute {
    fn say(&self, _: &str) {}

    fn hush(&self) {}
}

/// The services behind the screens. Nothing here makes the window wait.
pub struct Desk {
    /// The voice.
    pub voice: Box<dyn Speak>,
    /// The ties; none when there is no folder for them.
    pub shelf: Option<Shelf>,
    /// Tubes and cords kept by name; none when there is no folder for them.
    pub rack: Option<RackFile>,
    /// What saves them.
    pub keeper: Option<Arc<Keeper>>,
    /// What the tyer prefers, and what serves it.
    pub comforts: Comforts,
}

impl Desk {
    /// Has the state of a tie saved.
    pub fn keep(&self, tie: &Tie) {
        if let Some(keeper) = &self.keeper {
            keeper.keep(tie.clone());
        }
    }

    /// Lets go of a tie when its last state is saved.
    pub fn put_away(&self, held: Option<Held>) {
        if let (Some(keeper), Some(held)) = (&self.keeper, held) {
            keeper.put_away(held);
        }
    }

    /// Falls silent and sees that everything is on disk.
    pub fn close(&self) {
        self.voice.hush();
        if let Some(keeper) = &self.keeper {
            keeper.flush(LAST_SAVE);
        }
    }
}

/// What lies on the shelf: ties still to be tied, newest first, and what is wrong with others.
#[derive(Debug, Default)]
pub struct Inventory {
    /// Ties in progress.
    pub waiting: Vec<Shelved>,
    /// What could not be read.
    pub troubles: Vec<Trouble>,
}

/// Looks through the shelf. Reads the disk: not for the thread of the window.
///
/// # Errors
/// When the folder cannot be read.
pub fn inventory(shelf: &Shelf, now: Timestamp) -> Result<Inventory, ShelfError> {
    let listing = shelf.list()?;
    let waiting = listing
        .ties
        .into_iter()
        .map(|tie| Shelved::new(tie, now, false))
        .filter(|shelved| shelved.standing() == Standing::Waiting)
        .collect();
    Ok(Inventory {
        waiting,
        troubles: listing.troubles,
    })
}

/// How far the tyer is with each lesson of the course, from the ties on the shelf. Reads the
/// disk: not for the thread of the window.
///
/// # Errors
/// When the folder cannot be read.
pub fn lessons(shelf: &Shelf) -> Result<[LessonState; COURSE.len()], ShelfError> {
    let mut states = [LessonState::New; COURSE.len()];
    for tie in shelf.list()?.ties {
        let index = COURSE
            .iter()
            .position(|lesson| Some(lesson.number) == tie.lesson());
        if let Some(state) = index.map(|index| &mut states[index]) {
            let script = Script::new(tie.plan(), AtOnce::default());
            let is_done = tie.stands_at() == Some(script.last());
            *state = (*state).max(if is_done {
                LessonState::Done
            } else {
                LessonState::Begun
            });
        }
    }
    Ok(states)
}

/// A question of fit with what the log says. Reads the disk: not for the thread of the window.
/// A log that cannot be read says nothing; the shelf screen tells of it.
pub fn taught(shelf: Option<&Shelf>, question: Wanted) -> Wanted {
    let ledger = shelf.and_then(|shelf| shelf.ledger().ok());
    ledger.unwrap_or_default().teach(question)
}

/// A tie in hand, and what keeps others off it.
#[derive(Debug)]
pub struct InHand {
    /// The tie.
    pub tie: Tie,
    /// Its lock; none when it could not be put on the shelf.
    pub held: Option<Held>,
    /// What was wrong with its document.
    pub troubles: Vec<Trouble>,
    /// Why it is not on the shelf.
    pub error: Option<ShelfError>,
    /// Whether somebody else works at it, and this is only to look at.
    pub looks_only: bool,
    /// The tyer's pace, when known.
    pub pace: Option<Pace>,
}

/// Puts a new tie on the shelf. One that cannot be put there is in hand all the same: the
/// keeper goes on trying. Writes to the disk: not for the thread of the window.
pub fn begin(shelf: Option<&Shelf>, tie: Tie) -> InHand {
    match shelf.map(|shelf| shelf.begin(tie.clone())) {
        Some(Ok(taken)) => InHand::of(taken).at_pace(shelf),
        Some(Err(error)) => InHand {
            tie,
            held: None,
            troubles: Vec::new(),
            error: Some(error),
            looks_only: false,
            pace: None,
        },
        None => InHand {
            tie,
            held: None,
            troubles: Vec::new(),
            error: None,
            looks_only: false,
            pace: None,
        },
    }
}

/// Takes a tie up from the shelf, or, when it is in use and `may_look`, only to look at it.
/// Reads the disk: not for the thread of the window.
///
/// # Errors
/// When it is in use or cannot be read.
pub fn take_up(shelf: &Shelf, id: &TieId, may_look: bool) -> Result<InHand, ShelfError> {
    match shelf.take_up(id) {
        Err(ShelfError::InUse { .. }) if may_look => {
            let (tie, troubles) = shelf.look(id)?;
            let looked_at = InHand {
                tie,
                held: None,
                troubles,
                error: None,
                looks_only: true,
                pace: None,
            };
            Ok(looked_at.at_pace(Some(shelf)))
        }
        taken => taken.map(|taken| InHand::of(taken).at_pace(Some(shelf))),
    }
}

impl InHand {
    /// With the pace to go by. A log that cannot be read knows none; the shelf screen tells of it.
    fn at_pace(self, shelf: Option<&Shelf>) -> Self {
        let ledger = shelf.and_then(|shelf| shelf.ledger().ok());
        Self {
            pace: ledger.unwrap_or_default().pace_at(&self.tie),
            ..self
        }
    }

    fn of(taken: TakenUp) -> Self {
        let TakenUp {
            held,
            tie,
            troubles,
        } = taken;
        Self {
            tie,
            held: Some(held),
            troubles,
            error: None,
            looks_only: false,
            pace: None,
        }
    }
}
