//! Taking a tie in hand: new from a plan, or up from the shelf. Everything here reads or writes
//! the disk: it is not for a thread that somebody waits for.

use super::batch::pace_of;
use crate::bench::{BatchPace, TyingPace, WeaveChoice};
use crate::files::Gathering;
use crate::guide::{AtOnce, COURSE, Lesson, LessonState, Plan, Script};
use crate::knot::{Hand, Knot, KnotError, Lattice, Side, Weave};
use crate::shelf::{
    Held, Keeper, Ledger, Presses, Shelf, ShelfError, ShelfReading, ShelfTrouble, TakenUp, Tie,
    TieId,
};

/// How far the tyer is with each lesson of the course, from the ties on the shelf.
///
/// ```
/// use marlinspeak::bench::WeaveChoice;
/// use marlinspeak::guide::{COURSE, LessonState};
/// use marlinspeak::session::{lesson_tie, lessons};
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// shelf.begin(lesson_tie(COURSE[0], WeaveChoice::FewestTucks).unwrap()).unwrap();
/// let states = lessons(&shelf).unwrap().untroubled().unwrap();
/// assert_eq!(states[..2], [LessonState::Begun, LessonState::New]);
/// ```
///
/// # Errors
/// When the folder cannot be read.
pub fn lessons(shelf: &Shelf) -> Result<ShelfReading<[LessonState; COURSE.len()]>, ShelfError> {
    Ok(shelf.list()?.map(lesson_states))
}

fn lesson_states(ties: Vec<Tie>) -> [LessonState; COURSE.len()] {
    let mut states = [LessonState::New; COURSE.len()];
    for tie in ties {
        let script = Script::new(tie.plan, AtOnce::default());
        let is_done = tie.place == script.last();
        for (lesson, state) in COURSE.iter().zip(&mut states) {
            // Whoever has tied the knot of a lesson has tied it, wherever it was begun.
            if Some(lesson.number) == tie.lesson || is_done && is_knot_of(*lesson, script.plan()) {
                *state = (*state).max(if is_done {
                    LessonState::Done
                } else {
                    LessonState::Begun
                });
            }
        }
    }
    states
}

/// Whether a tie of this plan comes to the knot of a lesson.
fn is_knot_of(lesson: Lesson, plan: &Plan) -> bool {
    let knot = plan.knot();
    (knot.leads(), knot.bights(), knot.nested()) == (lesson.leads, lesson.bights, lesson.nested)
        && plan.laying().passes() == lesson.passes
        && plan.is_round_hand() == lesson.round_hand
}

/// A tie of a plan, before its first step.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::new_tie;
///
/// let boathook_ring = Plan::read("4", "7", "2", "1").unwrap();
/// let tie = new_tie(&boathook_ring);
/// assert_eq!(tie.plan, boathook_ring);
/// assert_eq!(tie.lesson, None);
/// ```
pub fn new_tie(plan: &Plan) -> Tie {
    let first = Script::new(plan.clone(), AtOnce::default()).first();
    Tie::begin(plan.clone(), first)
}

/// The tie of a lesson of the course, before its first step: over one, under one.
///
/// # Errors
/// When the lesson names no knot that can be tied, or not in this weave.
///
/// ```
/// use marlinspeak::bench::WeaveChoice;
/// use marlinspeak::guide::COURSE;
/// use marlinspeak::session::lesson_tie;
///
/// for lesson in COURSE {
///     let tie = lesson_tie(lesson, WeaveChoice::FewestTucks).unwrap();
///     assert_eq!(tie.lesson, Some(lesson.number));
/// }
/// ```
pub fn lesson_tie(lesson: Lesson, weave: WeaveChoice) -> Result<Tie, KnotError> {
    let Lesson { nested, .. } = lesson;
    let lattice = Lattice::plain(lesson.leads, lesson.bights)?.interwoven(nested, nested)?;
    let knot = Knot::woven(lattice, Weave::Run(weave.run(nested)))?;
    let plan = Plan::new(knot, lesson.passes, Side::default(), Hand::default())?;
    let plan = match weave {
        WeaveChoice::FewestTucks => plan.with_fewest_tucks(),
        WeaveChoice::Run(_) => plan,
    };
    let plan = if lesson.round_hand {
        plan.with_round_hand()?
    } else {
        plan
    };
    let mut tie = new_tie(&plan);
    tie.lesson = Some(lesson.number);
    Ok(tie)
}

/// The tie that a beginner ties first.
///
/// # Errors
/// When the first lesson names no knot that can be tied.
///
/// ```
/// let tie = marlinspeak::session::first_tie()?;
/// assert_eq!((tie.plan.knot().leads(), tie.plan.knot().bights()), (3, 5));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
pub fn first_tie() -> Result<Tie, KnotError> {
    lesson_tie(COURSE[0], WeaveChoice::FewestTucks)
}

/// A tie of the shelf that was begun like this one, alone and without a name, and left without a press.
fn untouched(shelf: &Shelf, tie: &Tie, gathering: &mut Gathering<ShelfTrouble>) -> Option<TakenUp> {
    if tie.batch.is_some() {
        return None;
    }
    let ties = shelf.list().ok()?.hand_on(gathering);
    let is_alike = |other: &&Tie| {
        let is_untouched = other.presses == Presses::default() && !other.is_put_away;
        let is_unnamed = other.name.is_empty() && other.note.is_empty();
        is_untouched
            && is_unnamed
            && other.batch.is_none()
            && (&other.plan, other.lesson) == (&tie.plan, tie.lesson)
    };
    let alike = ties.iter().find(is_alike)?;
    let taken = shelf.take_up(alike.id()).ok()?.hand_on(gathering);
    Some(taken).filter(|taken| taken.unsaved.is_none())
}

/// A tie as it comes into hand, and what keeps others off it.
///
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::session::InHand;
/// use marlinspeak::shelf::Shelf;
///
/// let folder = tempfile::tempdir().unwrap();
/// let shelf = Shelf::open(folder.path()).unwrap();
/// let bell_rope = Plan::read("3", "5", "2", "").unwrap();
/// let begun = InHand::begun(Some(&shelf), &bell_rope).untroubled().unwrap();
/// let id = begun.tie.id().clone();
/// // While it is in hand, nobody else takes it up; who asks to may look.
/// assert!(InHand::taken_up(&shelf, &id, false).is_err());
/// let look = InHand::taken_up(&shelf, &id, true).unwrap().untroubled().unwrap();
/// assert!(look.looks_only && look.held.is_none());
/// drop(begun);
/// let again = InHand::taken_up(&shelf, &id, false).unwrap().untroubled().unwrap();
/// assert!(again.is_again && again.held.is_some());
/// ```
#[derive(Debug)]
pub struct InHand {
    /// Its document, as it was begun or as it was kept last.
    pub tie: Tie,
    /// Its lock; none when it could not be put on the shelf, or is only looked at.
    pub held: Option<Held>,
    /// Why it is not on the shelf, or, where it was taken up again, why nothing can be saved that is done
    /// to it.
    pub error: Option<ShelfError>,
    /// Whether somebody else works at it, and this is only to look at.
    pub looks_only: bool,
    /// Whether it was taken up again and not begun just now.
    pub is_again: bool,
    /// The tyer's pace, when known.
    pub pace: Option<TyingPace>,
    /// How long the other pieces of its batch took.
    pub series: BatchPace,
}

impl InHand {
    /// Begins a tie of a plan, on the shelf if there is one. A tie that cannot be put there is in
    /// hand all the same: saving it is tried again with every step.
    pub fn begun(shelf: Option<&Shelf>, plan: &Plan) -> ShelfReading<Self> {
        Self::new(shelf, new_tie(plan))
    }

    /// Begins a tie that is more than its plan, such as one of a lesson. One that was begun so before
    /// and left without a press comes into hand once more: the shelf does not fill with ties of no leg.
    ///
    /// ```
    /// use marlinspeak::guide::Plan;
    /// use marlinspeak::session::{InHand, new_tie};
    /// use marlinspeak::shelf::Shelf;
    ///
    /// let folder = tempfile::tempdir().unwrap();
    /// let shelf = Shelf::open(folder.path()).unwrap();
    /// let bell_rope = Plan::read("3", "5", "2", "").unwrap();
    /// let begin = || InHand::new(Some(&shelf), new_tie(&bell_rope)).untroubled().unwrap();
    /// let first = begin().tie.id().clone();
    /// assert_eq!(*begin().tie.id(), first);
    /// ```
    pub fn new(shelf: Option<&Shelf>, tie: Tie) -> ShelfReading<Self> {
        ShelfReading::gather(|gathering| {
            let begun = shelf.map(|shelf| match untouched(shelf, &tie, gathering) {
                Some(untouched) => Ok(untouched),
                None => shelf.begin(tie.clone()),
            });
            let in_hand = match begun {
                Some(Ok(taken)) => Self::of(taken),
                refused => Self {
                    error: refused.and_then(Result::err),
                    ..Self::unheld(tie)
                },
            };
            in_hand.at_pace(shelf, gathering)
        })
    }

    /// Takes a tie back that was put away a moment ago and is not on disk yet, as it stands.
    pub fn taken_back(shelf: &Shelf, keeper: &Keeper, id: &TieId) -> Option<ShelfReading<Self>> {
        let (held, tie) = keeper.take_back(id)?;
        let in_hand = Self {
            is_again: true,
            ..Self::of(TakenUp {
                held,
                tie,
                unsaved: None,
            })
        };
        Some(ShelfReading::gather(|gathering| {
            in_hand.at_pace(Some(shelf), gathering)
        }))
    }

    /// Takes a tie up from the shelf, or, when it is in use and `may_look`, only to look at it. On a disk
    /// that lets nobody write it is in hand all the same.
    ///
    /// # Errors
    /// When it is in use or cannot be read.
    pub fn taken_up(
        shelf: &Shelf,
        id: &TieId,
        may_look: bool,
    ) -> Result<ShelfReading<Self>, ShelfError> {
        ShelfReading::try_gather(|gathering| {
            let in_hand = match shelf.take_up(id) {
                Err(ShelfError::InUse { .. }) if may_look => Self {
                    looks_only: true,
                    ..Self::unheld(shelf.look(id)?.hand_on(gathering))
                },
                taken => Self::of(taken?.hand_on(gathering)),
            };
            let in_hand = Self {
                is_again: true,
                ..in_hand
            };
            Ok(in_hand.at_pace(Some(shelf), gathering))
        })
    }

    /// With the pace to go by. A log that cannot be read knows none, and is told of.
    fn at_pace(mut self, shelf: Option<&Shelf>, gathering: &mut Gathering<ShelfTrouble>) -> Self {
        let ledger = match shelf.map(Shelf::ledger) {
            Some(Ok(ledger)) => ledger.hand_on(gathering),
            Some(Err(error)) => {
                gathering.add(error.into());
                Ledger::default()
            }
            None => Ledger::default(),
        };
        self.pace = ledger.pace_at(&self.tie);
        if let (Some(shelf), Some(batch)) = (shelf, &self.tie.batch) {
            match shelf.list() {
                Ok(ties) => {
                    let ties = ties.hand_on(gathering);
                    self.series = pace_of(&ties, &ledger, batch.series(), self.tie.id());
                }
                Err(error) => gathering.add(error.into()),
            }
        }
        self
    }

    fn of(TakenUp { held, tie, unsaved }: TakenUp) -> Self {
        Self {
            held: Some(held),
            error: unsaved,
            ..Self::unheld(tie)
        }
    }

    fn unheld(tie: Tie) -> Self {
        Self {
            tie,
            held: None,
            error: None,
            looks_only: false,
            is_again: false,
            pace: None,
            series: BatchPace::default(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_knot_of_a_lesson_counts_wherever_it_was_tied() {
        let of = |leads: &str, passes: &str, is_done: bool| {
            let mut tie = new_tie(&Plan::read(leads, "5", passes, "1").unwrap());
            if is_done {
                tie.place = Script::new(tie.plan.clone(), AtOnce::default()).last();
            }
            lesson_states(vec![tie])[0]
        };
        assert_eq!(of("3", "1", true), LessonState::Done);
        // Only begun, doubled, or of other leads, it is none of the course.
        for other in [of("3", "1", false), of("3", "2", true), of("4", "1", true)] {
            assert_eq!(other, LessonState::New);
        }
    }
}
