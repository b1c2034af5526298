//! A tie: the knot chosen, how far it has come, and what the tyer wrote about it.

use jiff::Timestamp;

use super::{Batch, Presses, TieId, WorkTime, clock};
use crate::files::Unknown;
use crate::guide::{CordHistory, Place, Plan};

/// The sections of a document that tell of one tie alone, and not of the next one of the same
/// knot.
const OWN_SECTIONS: [&str; 3] = ["batch", "place", "worked"];

/// The longest name that a tie from outside keeps, and that is shown of any, in letters.
pub const LONGEST_NAME: usize = 120;
/// The same for its note.
pub const LONGEST_NOTE: usize = 2000;

/// Cuts a text to so many letters; whether something was cut.
///
/// ```
/// use marlinspeak::shelf::cut_to;
///
/// let mut name = "über drei".to_owned();
/// assert!(cut_to(&mut name, 4) && !cut_to(&mut name, 4));
/// assert_eq!(name, "über");
/// ```
pub fn cut_to(text: &mut String, most: usize) -> bool {
    match text.char_indices().nth(most) {
        None => false,
        Some((at, _)) => {
            text.truncate(at);
            true
        }
    }
}

/// A tie in progress.
#[derive(Clone, Debug, PartialEq)]
pub struct Tie {
    pub(super) id: TieId,
    /// What the tyer calls it; may be empty.
    pub name: String,
    /// What the tyer wrote about it; may be empty.
    pub note: String,
    /// Everything the tyer chose.
    pub plan: Plan,
    /// Where the tyer stands. It lies in the knot, or the tie is not written.
    pub place: Place,
    /// When it was begun.
    pub begun: Timestamp,
    /// When it was last saved; [`super::Shelf::save`] sets it.
    pub touched: Timestamp,
    /// Which piece of a batch it is, when it is one of several.
    pub batch: Option<Batch>,
    /// The number of the lesson of the course that it is the tie of.
    pub lesson: Option<u16>,
    /// Whether the tyer has put it away: it stays on the shelf and waits no more.
    pub is_put_away: bool,
    /// The time worked at it.
    pub work_time: WorkTime,
    /// How many presses have changed it.
    pub presses: Presses,
    /// Fields of the document, and of its sections, that this version does not know. They are
    /// kept when the tie is saved.
    pub unknown: Unknown,
}

impl Tie {
    /// A tie just begun, with a name of its own on the shelf and nothing written about it.
    pub fn begin(plan: Plan, place: Place) -> Self {
        let now = clock::now();
        Self {
            id: TieId::draw(),
            name: String::new(),
            note: String::new(),
            // Of another tie of this plan, cords may have been measured.
            plan: plan.with_cord_history(CordHistory::default()),
            place,
            begun: now,
            touched: now,
            batch: None,
            lesson: None,
            is_put_away: false,
            work_time: WorkTime::default(),
            presses: Presses::default(),
            unknown: Unknown::default(),
        }
    }

    /// Its name on the shelf.
    pub const fn id(&self) -> &TieId {
        &self.id
    }

    /// Cuts name and note to what is kept of those that come from outside; whether something was cut.
    pub(super) fn shorten(&mut self) -> bool {
        let name = cut_to(&mut self.name, LONGEST_NAME);
        cut_to(&mut self.note, LONGEST_NOTE) || name
    }

    /// The same knot, begun again at `start` under another id, as the next piece of a batch unless it is
    /// a lesson. What belongs to this tie alone is not taken along.
    #[must_use]
    pub fn again(&self, start: Place) -> Self {
        let mut unknown = self.unknown.clone();
        for section in OWN_SECTIONS {
            unknown.remove(section);
        }
        Self {
            name: self.name.clone(),
            note: self.note.clone(),
            lesson: self.lesson,
            batch: match self.lesson {
                None => Some(Batch::after(self.batch.as_ref(), &self.id)),
                Some(_) => None,
            },
            unknown,
            ..Self::begin(self.plan.clone(), start)
        }
    }
}
