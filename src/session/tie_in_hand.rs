//! A tie in hand: its way through the steps, its document, its lock, the time worked at it.

use std::time::Duration;

use super::opening::InHand;
use super::walk::Walk;
use super::work_timer::WorkTimer;
use crate::bench::BatchPace;
use crate::guide::{AtOnce, Checks, Place, Script};
use crate::shelf::{Held, Tie};
use crate::words::{Detail, Words};

/// A tie in hand.
///
/// ```
/// use std::time::Duration;
///
/// use marlinspeak::guide::Plan;
/// use marlinspeak::pedal::{Intent, Press};
/// use marlinspeak::session::{InHand, Session, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::Words;
///
/// let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
/// let bell_rope = Plan::read("3", "5", "1", "1").unwrap();
/// session.take_in_hand(InHand::begun(None, &bell_rope), Duration::ZERO);
/// session.press(Some(Intent::Next), &Press::default(), Duration::from_secs(8));
/// // The document goes along with the walk, and the time between the presses was work.
/// let in_hand = session.tie().unwrap();
/// assert_eq!(in_hand.tie().place, in_hand.walk().place());
/// assert_eq!(in_hand.tie().work_time.seconds(), 8.0);
/// assert!(!in_hand.may_be_logged(), "it is not done");
/// ```
#[derive(Debug)]
pub struct TieInHand {
    pub(super) walk: Walk,
    tie: Tie,
    held: Option<Held>,
    looks_only: bool,
    timer: WorkTimer,
    /// How long the other pieces of its batch took.
    series: BatchPace,
    /// Whether it was said that the next press begins another piece.
    pub(super) offers_next_piece: bool,
}

/// How a tie stood at a moment.
#[derive(Clone, Debug)]
pub(super) struct Stand {
    walk: Walk,
    tie: Tie,
    timer: WorkTimer,
    offers_next_piece: bool,
}

impl TieInHand {
    pub(super) fn new(
        in_hand: InHand,
        at_once: AtOnce,
        checks: Checks,
        words: &Words,
        now: Duration,
    ) -> Self {
        let InHand {
            tie,
            held,
            looks_only,
            pace,
            series,
            ..
        } = in_hand;
        let script = Script::new(tie.plan.clone(), at_once)
            .with_checks(checks)
            // What is taught is named thing by thing, with what it is for.
            .packing_one_by_one(words.detail() == Detail::Teach)
            .teaching(words.detail() == Detail::Teach);
        let place = tie.place;
        let mut walk = Walk::new(script, place, words);
        walk.set_pace(pace);
        walk.set_pieces(series.clone());
        if let Some(batch) = &tie.batch {
            let follows = batch.number() > 1;
            walk.among_pieces(follows, batch.has_next() && !looks_only);
            let is_first = walk.place() == walk.script().first();
            if follows && is_first && batch.tube_stands.is_none() {
                walk.ask_standing(words);
            }
        }
        Self {
            walk,
            tie,
            held,
            looks_only,
            timer: WorkTimer::begin(now),
            series,
            offers_next_piece: false,
        }
    }

    /// The way through its steps.
    pub const fn walk(&self) -> &Walk {
        &self.walk
    }

    /// Its document as it would be saved now.
    pub const fn tie(&self) -> &Tie {
        &self.tie
    }

    /// How long the other pieces of its batch took.
    pub(super) const fn series(&self) -> &BatchPace {
        &self.series
    }

    /// Whether somebody else works at it: then nothing is saved.
    pub const fn looks_only(&self) -> bool {
        self.looks_only
    }

    /// Whether it is a tie of the course.
    pub fn is_lesson(&self) -> bool {
        self.tie.lesson.is_some()
    }

    /// How it stands now, to be turned back to.
    pub(super) fn stand(&self) -> Stand {
        Stand {
            walk: self.walk.clone(),
            tie: self.tie.clone(),
            timer: self.timer.clone(),
            offers_next_piece: self.offers_next_piece,
        }
    }

    /// Stands as it stood before: the document too, but that it was pressed. Gives nothing back where
    /// it is another tie by now, or stands so already.
    pub(super) fn turn_back(&mut self, stand: Stand) -> bool {
        if stand.tie.id() != self.tie.id() {
            return false;
        }
        let presses = self.tie.presses;
        let has_moved = stand.tie.place != self.tie.place;
        (self.walk, self.tie, self.timer) = (stand.walk, stand.tie, stand.timer);
        self.offers_next_piece = stand.offers_next_piece;
        self.tie.presses = presses;
        self.tie.presses.add();
        has_moved
    }

    /// Whether everything is done, by this tyer.
    pub fn may_be_logged(&self) -> bool {
        self.walk.is_done() && !self.looks_only
    }

    /// The tyer is at something else: the time until the next press is not work.
    pub(super) const fn rest(&mut self) {
        self.timer.rest();
    }

    /// Notes where the tie stands after a press that led there from `before`, and the time it
    /// took.
    pub(super) fn moved_from(&mut self, before: Place, now: Duration) {
        self.offers_next_piece = false;
        if let Some(tube_stands) = self.walk.take_tube_stands() {
            self.tie.plan = self.walk.script().plan().clone();
            if let Some(batch) = &mut self.tie.batch {
                batch.tube_stands = Some(tube_stands);
            }
        }
        let here = self.walk.place();
        let onwards = self.walk.script().next(before) == Some(here);
        self.timer
            .press(now, onwards, (before, here), &mut self.tie.work_time);
        self.tie.place = here;
        let plan = self.walk.script().plan();
        if self.tie.plan.cord_history() != plan.cord_history() {
            self.tie.plan = plan.clone();
        }
        self.tie.presses.add();
    }

    /// Notes where the tie stands when its steps were portioned anew, and what became of its cords.
    pub(super) fn stand_where_it_is(&mut self) {
        self.tie.place = self.walk.place();
        self.tie.plan = self.walk.script().plan().clone();
        self.tie.presses.add();
    }

    /// The document, where it is to be saved.
    pub(super) fn to_keep(&self) -> Option<Box<Tie>> {
        (!self.looks_only).then(|| Box::new(self.tie.clone()))
    }

    /// Gives up the lock.
    pub(super) const fn let_go(&mut self) -> Option<Held> {
        self.held.take()
    }
}
