//! Saving on a thread of its own, so that nobody waits for the disk.

use std::collections::HashMap;
use std::fmt;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

use jiff::Timestamp;

use super::lock::enter;
use super::{Held, Presses, Shelf, ShelfError, ShelfReading, ShelfTrouble, Tie, TieId};
use crate::files::{FileAction, Teller};

/// How long after a failure the save is tried again.
const RETRY_AFTER: Duration = Duration::from_secs(1);

/// How long letting go of the keeper waits for the disk.
const LAST_CHANCE: Duration = Duration::from_secs(5);

/// What became of a tie that was to be kept.
#[derive(Clone, Debug)]
pub enum Kept {
    /// It is on disk.
    Saved {
        /// The tie that was saved.
        id: TieId,
        /// The time it was saved with.
        touched: Timestamp,
        /// How many presses the state that is saved has seen.
        presses: Presses,
    },
    /// Something that is not believed stood in its place, or was the copy before it, and was set
    /// aside. Whether the tie is on disk is reported after it.
    SetAside(ShelfReading<()>),
    /// It is not on disk and will be tried again, soon and at the next keep.
    Failed {
        /// The tie that is not on disk.
        id: TieId,
        /// Why it could not be saved.
        error: ShelfError,
        /// How often it has failed since it was last saved.
        attempts: u32,
    },
}

/// What came of waiting for the disk.
#[derive(Clone, Debug)]
pub enum Waited {
    /// Everything asked for is there.
    Saved,
    /// It takes its time.
    Slow,
    /// It refused, as was reported or is about to be.
    Refused(Kept),
}

/// Saves ties behind the caller's back. Letting go of it saves what is still to be saved.
pub struct Keeper {
    queue: Arc<SaveQueue>,
}

/// What the callers and the thread share. The thread locks it only between saves, so that no
/// caller waits for the disk.
#[derive(Default)]
struct SaveQueue {
    work: Mutex<Work>,
    /// Wakes the thread when there is something to do.
    bell: Condvar,
    /// Wakes the callers that wait when something is done.
    done: Condvar,
}

#[derive(Default)]
struct Work {
    /// To be saved now, one state a tie, in the order they were asked for.
    waiting: Vec<Tie>,
    /// To be saved again when the time comes.
    failed: Vec<Tie>,
    retry_at: Option<Instant>,
    attempts: HashMap<TieId, u32>,
    /// The last failure, when nothing was saved since.
    failure: Option<Kept>,
    /// To be let go of as soon as their ties are saved.
    leaving: Vec<Held>,
    /// What is being saved just now.
    saving: Option<Tie>,
    closing: bool,
    closed: bool,
    /// Nobody waits for the last save any more.
    is_abandoned: bool,
}

impl Keeper {
    /// Starts the thread. `notify` is called on it for every save and every failure; it should
    /// not wait for anything.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the system has no thread to give.
    pub fn start(shelf: Shelf, notify: impl Fn(Kept) + Send + 'static) -> Result<Self, ShelfError> {
        let queue = Arc::new(SaveQueue::default());
        let folder = shelf.folder().to_owned();
        let in_thread = Arc::clone(&queue);
        thread::Builder::new()
            .name("keeper".to_owned())
            .spawn(move || in_thread.work_at(&shelf, &notify))
            .map_err(ShelfError::io(FileAction::Write, &folder))?;
        Ok(Self { queue })
    }

    /// Has this state of a tie saved. It takes the place of an earlier one that still waits.
    pub fn keep(&self, tie: Tie) {
        let mut work = enter(&self.queue.work);
        work.failed.retain(|other| other.id != tie.id);
        work.retry_now();
        match work.waiting.iter_mut().find(|other| other.id == tie.id) {
            Some(waiting) => *waiting = tie,
            None => work.waiting.push(tie),
        }
        self.queue.bell.notify_all();
    }

    /// Lets go of a tie as soon as its last state is saved.
    pub fn put_away(&self, held: Held) {
        enter(&self.queue.work).leaving.push(held);
        self.queue.bell.notify_all();
    }

    /// The newest states that are not known to be on disk.
    pub fn unsaved(&self) -> Vec<Tie> {
        let work = enter(&self.queue.work);
        let mut unsaved: Vec<Tie> = work.waiting.iter().chain(&work.failed).cloned().collect();
        let is_overtaken = |tie: &Tie| unsaved.iter().any(|newer| newer.id == tie.id);
        if let Some(saving) = work.saving.as_ref().filter(|tie| !is_overtaken(tie)) {
            unsaved.push(saving.clone());
        }
        unsaved
    }

    /// Gives a tie back that was put away and whose last state is not on disk yet, as it stands.
    pub fn take_back(&self, id: &TieId) -> Option<(Held, Tie)> {
        let newest = self.unsaved().into_iter().find(|tie| tie.id == *id)?;
        let mut work = enter(&self.queue.work);
        let place = work.leaving.iter().position(|held| held.id() == id)?;
        Some((work.leaving.remove(place), newest))
    }

    /// From now on nobody waits for the disk when the keeper is let go of.
    pub fn abandon(&self) {
        enter(&self.queue.work).is_abandoned = true;
    }

    /// Waits until everything asked for is on disk or the disk has refused it, at most this long.
    pub fn wait(&self, at_most: Duration) -> Waited {
        let is_under_way = |work: &mut Work| !work.is_idle() && work.failure.is_none();
        self.queue
            .wait(enter(&self.queue.work), at_most, is_under_way);
        let work = enter(&self.queue.work);
        match &work.failure {
            _ if work.is_idle() => Waited::Saved,
            Some(failure) => Waited::Refused(failure.clone()),
            None => Waited::Slow,
        }
    }

    /// Waits until everything asked for is on disk, at most this long, and says whether it is.
    pub fn flush(&self, at_most: Duration) -> bool {
        let mut work = enter(&self.queue.work);
        work.retry_now();
        self.queue.bell.notify_all();
        self.queue.wait(work, at_most, |work| !work.is_idle());
        enter(&self.queue.work).is_idle()
    }
}

impl Drop for Keeper {
    fn drop(&mut self) {
        let mut work = enter(&self.queue.work);
        work.retry_now();
        work.closing = true;
        self.queue.bell.notify_all();
        if work.is_abandoned {
            return;
        }
        // A disk that does not answer must not keep the program from ending.
        self.queue.wait(work, LAST_CHANCE, |work| !work.closed);
    }
}

impl fmt::Debug for Keeper {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Keeper").finish_non_exhaustive()
    }
}

impl Work {
    fn retry_now(&mut self) {
        self.retry_at = None;
        let newer = std::mem::take(&mut self.waiting);
        self.waiting = std::mem::take(&mut self.failed);
        self.waiting.extend(newer);
    }

    fn is_idle(&self) -> bool {
        self.waiting.is_empty()
            && self.failed.is_empty()
            && self.leaving.is_empty()
            && self.saving.is_none()
    }

    fn will_save(&self, id: &TieId) -> bool {
        self.waiting
            .iter()
            .chain(&self.failed)
            .any(|tie| tie.id == *id)
    }
}

/// What a save set aside, on its way to whoever is notified.
struct SetAside(Vec<ShelfTrouble>);

impl Teller<ShelfTrouble> for SetAside {
    fn tell_of(&mut self, troubles: Vec<ShelfTrouble>) {
        self.0.extend(troubles);
    }
}

impl SetAside {
    /// The error itself, once what it took along is here: it is told once and not at every attempt.
    fn told_before(&mut self, error: ShelfError) -> ShelfError {
        match error {
            ShelfError::After { troubles, error } => {
                self.tell_of(troubles);
                *error
            }
            error => error,
        }
    }

    fn reported(self) -> Option<Kept> {
        (!self.0.is_empty()).then(|| Kept::SetAside(ShelfReading::of((), self.0)))
    }
}

impl SaveQueue {
    /// Saves what waits, until the keeper is let go of and nothing waits any more.
    fn work_at(&self, place: &Shelf, notify: &dyn Fn(Kept)) {
        while let Some(tie) = self.next() {
            let mut found = SetAside(Vec::new());
            let result = place.save(&tie).map(|saved| saved.hand_on(&mut found));
            let result = result.map_err(|error| found.told_before(error));
            let news = self.settle(tie, result);
            if let Kept::Failed { error, .. } = &news {
                log::warn!("a tie is not saved: {error}");
            }
            for news in found.reported().into_iter().chain([news]) {
                // A caller that panics must not cost the tyer the next save.
                let _ = catch_unwind(AssertUnwindSafe(|| notify(news)));
            }
            self.rest();
        }
        let mut work = enter(&self.work);
        work.leaving.clear();
        work.closed = true;
        self.done.notify_all();
    }

    /// Waits for the next tie to save; `None` when it is time to end.
    fn next(&self) -> Option<Tie> {
        let mut work = enter(&self.work);
        loop {
            if work.retry_at.is_some_and(|at| at <= Instant::now()) {
                work.retry_now();
            }
            if !work.waiting.is_empty() {
                let tie = work.waiting.remove(0);
                work.saving = Some(tie.clone());
                return Some(tie);
            }
            if work.closing {
                return None;
            }
            if !work.leaving.is_empty() {
                self.let_go(&mut work);
            }
            work = match work.retry_at {
                None => self.bell.wait(work).unwrap_or_else(PoisonError::into_inner),
                Some(at) => {
                    let rest = at.saturating_duration_since(Instant::now());
                    let woken = self.bell.wait_timeout(work, rest);
                    woken.unwrap_or_else(PoisonError::into_inner).0
                }
            };
        }
    }

    /// Notes what became of a save.
    fn settle(&self, tie: Tie, result: Result<Tie, ShelfError>) -> Kept {
        let mut work = enter(&self.work);
        match result {
            Ok(saved) => {
                work.attempts.remove(&saved.id);
                work.failure = None;
                Kept::Saved {
                    id: saved.id,
                    touched: saved.touched,
                    presses: saved.presses,
                }
            }
            Err(error) => {
                let id = tie.id.clone();
                let attempts = work.attempts.entry(id.clone()).or_insert(0);
                *attempts = attempts.saturating_add(1);
                let attempts = *attempts;
                // A newer state may have been asked for meanwhile.
                if !work.will_save(&id) {
                    work.failed.push(tie);
                }
                work.retry_at = Some(Instant::now() + RETRY_AFTER);
                let failure = Kept::Failed {
                    id,
                    error,
                    attempts,
                };
                work.failure = Some(failure.clone());
                failure
            }
        }
    }

    fn rest(&self) {
        let mut work = enter(&self.work);
        work.saving = None;
        self.let_go(&mut work);
        self.done.notify_all();
    }

    fn let_go(&self, work: &mut Work) {
        let leaving = std::mem::take(&mut work.leaving);
        let (stay, go): (Vec<_>, Vec<_>) = leaving
            .into_iter()
            .partition(|held| work.will_save(held.id()));
        work.leaving = stay;
        drop(go);
        self.done.notify_all();
    }

    fn wait(
        &self,
        work: MutexGuard<'_, Work>,
        at_most: Duration,
        unfinished: impl FnMut(&mut Work) -> bool,
    ) {
        // Whether it came to an end is for the caller to ask.
        drop(self.done.wait_timeout_while(work, at_most, unfinished));
    }
}
