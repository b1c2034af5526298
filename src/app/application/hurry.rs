//! Presses that come faster than the disk: each waits until the one before it is on disk, but no longer
//! than a moment, and none of this keeps the window from painting. So, however fast they come, no more
//! than one of them is not on disk while the window does not show that the disk is slow.

use std::collections::VecDeque;
use std::time::Duration;

use iced::Task;

use super::App;
use crate::app::message::Message;
use crate::app::off_thread::off_thread;
use crate::app::screens::Screen;
use crate::pedal::{Intent, Press};
use crate::shelf::Waited;

/// What the presses mean that wait for the one before them, in their order.
#[derive(Debug, Default)]
pub(super) struct Hurried {
    presses: VecDeque<(Option<Intent>, Option<Press>)>,
    /// A thread waits for the disk, and will tell.
    is_awaited: bool,
}

impl Hurried {
    /// One more waits.
    pub fn push(&mut self, meant: (Option<Intent>, Option<Press>)) {
        self.presses.push_back(meant);
    }
}

impl App {
    /// Whether the next press has to wait for the one before it.
    pub(super) fn is_ahead_of_disk(&self) -> bool {
        let keeper = self.context.services.keeper.as_ref();
        !self.hurried.presses.is_empty()
            || matches!(self.screen, Screen::Tying(_))
                && !self.context.session.is_saving_late()
                && keeper.is_some_and(|keeper| !keeper.flush(Duration::ZERO))
    }

    /// Has it told when everything is on disk or refused, or when the moment is over.
    pub(super) fn wait_for_disk(&mut self) -> Task<Message> {
        match self.context.services.keeper.clone() {
            Some(keeper) if !self.hurried.is_awaited => {
                self.hurried.is_awaited = true;
                let moment = self.context.services.platform.moment;
                off_thread(move || Message::Settled(matches!(keeper.wait(moment), Waited::Slow)))
            }
            _ => Task::none(),
        }
    }

    /// What waited goes on, press by press.
    pub(super) fn settled(&mut self, is_slow: bool) -> Task<Message> {
        self.hurried.is_awaited = false;
        let waits = std::mem::take(&mut self.hurried.presses);
        let mut waits = waits.into_iter();
        let Some((intent, press)) = waits.next() else {
            return Task::none();
        };
        if is_slow && !self.context.session.is_saving_late() {
            self.context.session.goes_on_unsaved();
        }
        // The others find out by themselves whether they have to wait again.
        let mut tasks = vec![self.act_on(intent, press), self.carry_out()];
        for (intent, press) in waits {
            tasks.push(self.meant(intent, press));
            tasks.push(self.carry_out());
        }
        Task::batch(tasks)
    }

    /// What waits does so no longer: the tyer leaves.
    pub(super) fn hurry_on(&mut self) -> Task<Message> {
        let waits = std::mem::take(&mut self.hurried.presses);
        let tasks: Vec<_> = waits
            .into_iter()
            .flat_map(|(intent, press)| [self.act_on(intent, press), self.carry_out()])
            .collect();
        Task::batch(tasks)
    }
}
