//! What a picture shows one after another, and which of it now.

use std::cell::Cell;
use std::time::{Duration, Instant};

use crate::picture::Subject;

/// Pictures that follow one another once; the last stays.
#[derive(Default)]
pub(super) struct Film {
    frames: Vec<Subject>,
    /// How long each stands.
    each: Duration,
    /// Which of them is shown, and since when the first.
    place: Cell<usize>,
    begun: Cell<Option<Instant>>,
}

impl Film {
    /// These, each for so long, from when the first is shown.
    pub(super) fn new(frames: Vec<Subject>, each: Duration) -> Self {
        Self {
            frames,
            each,
            ..Self::default()
        }
    }

    /// Whether it is of these pictures.
    pub(super) fn is_of(&self, frames: &[Subject]) -> bool {
        self.frames == frames
    }

    pub(super) const fn is_empty(&self) -> bool {
        self.frames.is_empty()
    }

    pub(super) const fn len(&self) -> usize {
        self.frames.len()
    }

    /// From the first picture again.
    pub(super) fn rewind(&self) {
        self.place.set(0);
        self.begun.set(None);
    }

    /// Which picture is shown, counted from 0.
    pub(super) const fn place(&self) -> usize {
        self.place.get()
    }

    /// The picture that is shown, if there is one.
    pub(super) fn now(&self) -> Option<&Subject> {
        self.frames.get(self.place())
    }

    /// Goes on to what is to be shown now, and says when the next is due; nothing where the picture
    /// stands still.
    pub(super) fn wind(&self, now: Instant) -> Option<Instant> {
        let last = self.len().checked_sub(1)?;
        if self.place() >= last {
            return None;
        }
        let begun = self.begun.get().unwrap_or(now);
        self.begun.set(Some(begun));
        let due = |place: usize| begun + self.each * u32::try_from(place).unwrap_or(u32::MAX);
        while self.place() < last && due(self.place() + 1) <= now {
            self.place.set(self.place() + 1);
        }
        (self.place() < last).then(|| due(self.place() + 1))
    }
}
