//! The part of the shelf that is laid out, and the photographs that are read for it.

use std::ops::Range;
use std::sync::Arc;

use iced::Task;

use super::turns::Turns;
use super::{Message, State, thumbnails};
use crate::app::off_thread::off_thread;
use crate::app::widgets;
use crate::shelf::Photograph;

/// The list of ties.
pub(super) const LIST: &str = "shelf-list";

/// How many ties are laid out at once.
const MOST_IN_VIEW: usize = 80;

impl State {
    /// The ties that are laid out: those around the one in the focus. To lay out thousands would
    /// make every press wait.
    pub(super) fn in_view(&self) -> Range<usize> {
        let ties = self.stock.ties.len();
        let first = self.focus.saturating_sub(MOST_IN_VIEW / 2);
        let first = first.min(ties.saturating_sub(MOST_IN_VIEW));
        first..ties.min(first + MOST_IN_VIEW)
    }

    /// Has those photographs read that are in view and were not read yet.
    pub(super) fn read_photographs(&mut self) -> Task<Message> {
        let in_view = &self.stock.ties[self.in_view()];
        let wanted = self.stock.photographs.iter().filter(|(tie, _)| {
            let mut ties = in_view.iter();
            ties.any(|shelved| shelved.tie.id() == tie)
        });
        // One after the other: each is large while it is read.
        let turns = Arc::new(Turns::default());
        let tasks = wanted.filter_map(|(tie, file)| {
            let (tie, file, turns) = (tie.clone(), file.clone(), Arc::clone(&turns));
            self.thumbnails.ask_for(&tie).then(|| {
                off_thread(move || {
                    let read = turns.take(|| Photograph::read(&file, thumbnails::MOST_PIXELS));
                    let read = read.map_err(|error| ::log::warn!("{error}"));
                    Message::Photograph(tie, read.ok())
                })
            })
        });
        let tasks: Vec<Task<Message>> = tasks.collect();
        Task::batch(tasks)
    }

    /// Brings the tie in the focus into view.
    pub(super) fn scroll(&self) -> Task<Message> {
        let in_view = self.in_view();
        let place = self.focus.saturating_sub(in_view.start);
        widgets::bring_into_view(LIST, place, in_view.len())
    }
}
