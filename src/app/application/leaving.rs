//! Leaving the program: when everything is on disk, or when the tyer says so once more.

use std::sync::atomic::Ordering;
use std::time::Duration;

use iced::Task;

use super::App;
use crate::app::message::Message;
use crate::app::off_thread::off_thread;
use crate::app::screens::Route;
use crate::app::services::LAST_SAVE;

/// How far the tyer is with leaving.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Leaving {
    /// Nothing of the kind.
    Not,
    /// The last save is waited for.
    Waiting,
    /// It has not come about, and it is asked whether to leave without it.
    Asked,
}

impl App {
    /// The tyer wants to leave: at once when everything is on disk, else when it is, and without it
    /// only when the tyer says so once more.
    pub(super) fn close(&mut self) -> Task<Message> {
        let hurried = self.hurry_on();
        let close = self.close_now();
        Task::batch([hurried, close])
    }

    fn close_now(&mut self) -> Task<Message> {
        match self.leaving {
            Leaving::Not => {}
            Leaving::Waiting => return Task::none(),
            Leaving::Asked => {
                let unsaved = &self.context.services.platform.left_unsaved;
                unsaved.store(true, Ordering::Relaxed);
                if let Some(keeper) = &self.context.services.keeper {
                    keeper.abandon();
                }
                return self.exit();
            }
        }
        // A screen with something half done asks once.
        if !self.screen.may_close(&mut self.context) {
            return Task::none();
        }
        self.context.session.put_away();
        self.context.carry_out();
        self.context.services.voice.hush();
        match self.context.services.keeper.clone() {
            Some(keeper) if !keeper.flush(Duration::ZERO) => {
                self.leaving = Leaving::Waiting;
                off_thread(move || Message::Flushed(keeper.flush(LAST_SAVE)))
            }
            _ if self.context.session.is_lost() => self.flushed(false),
            _ => self.exit(),
        }
    }

    /// The disk had its time for the last save.
    pub(super) fn flushed(&mut self, is_saved: bool) -> Task<Message> {
        if is_saved {
            return self.exit();
        }
        self.leaving = Leaving::Asked;
        self.context.session.ask_before_leaving();
        self.show(Route::Start(()))
    }

    /// Leaves, with size and place of the window kept for the next time.
    fn exit(&self) -> Task<Message> {
        self.keep_place();
        iced::exit()
    }
}
