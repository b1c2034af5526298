//! The window itself: what it is told, over the whole screen or not, how large it is and where it stands.

use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use iced::{Event, Task, event, window};

use super::App;
use crate::app::keys;
use crate::app::message::Message;
use crate::app::window_place::WindowPlace;

/// How long leaving waits for the place of the window.
const PATIENCE: Duration = Duration::from_millis(500);

impl App {
    /// What an event of the window is to the app, besides keys that no widget took. `status` says
    /// whether a widget took it.
    pub fn heard(event: Event, status: event::Status) -> Option<Message> {
        match event {
            // A text field takes this one for itself; leaving is the screen's affair too.
            Event::Keyboard(event) if keys::is_escape(&event) => {
                (status == event::Status::Captured).then_some(Message::Key(event))
            }
            Event::Mouse(event) if status == event::Status::Ignored => {
                keys::button(&event).map(Message::Button)
            }
            Event::Window(window::Event::Opened { size, .. } | window::Event::Resized(size)) => {
                Some(Message::Resized(size))
            }
            Event::Window(window::Event::FileDropped(file)) => Some(Message::Dropped(file)),
            Event::Window(window::Event::Moved(corner)) => Some(Message::Moved(corner)),
            Event::Window(window::Event::Focused) => Some(Message::focus(true)),
            Event::Window(window::Event::Unfocused) => Some(Message::focus(false)),
            _ => None,
        }
    }

    /// Has the window take the whole screen, or gives the screen back.
    pub(super) fn turn_full_screen(&mut self) -> Task<Message> {
        if let Some(task) = self.turn_second_full_screen() {
            return task;
        }
        if !self.is_full_screen {
            self.place = self.window_place();
        }
        self.is_full_screen = !self.is_full_screen;
        let mode = if self.is_full_screen {
            window::Mode::Fullscreen
        } else {
            window::Mode::Windowed
        };
        window::oldest().and_then(move |id| window::set_mode(id, mode))
    }

    /// How large the window is and where it stands, when it has told that.
    fn window_place(&self) -> Option<WindowPlace> {
        let size = self.context.window.size()?;
        Some(WindowPlace {
            size,
            density: self.context.window.density(),
            corner: self.corner,
        })
    }

    /// Keeps size and place of the window for the next time. A disk that hangs has it stay as it was
    /// kept before.
    pub(super) fn keep_place(&self) {
        let now = if self.is_full_screen {
            self.place
        } else {
            self.window_place()
        };
        let places = &self.context.services.platform;
        let Some(place) = now.filter(|_| places.keeps_window) else {
            return;
        };
        let (tell, done) = mpsc::channel();
        let started = thread::Builder::new()
            .name("window place".to_owned())
            .spawn(move || {
                if let Err(error) = place.keep() {
                    // The next time it opens as it did before: nothing of the tyer's is lost.
                    ::log::warn!("the place of the window is not kept: {error}");
                }
                // Nobody listens where it took too long.
                let _ = tell.send(());
            });
        match started {
            // It is kept, or the disk takes too long: either way the window goes.
            Ok(_) => drop(done.recv_timeout(PATIENCE)),
            Err(error) => ::log::warn!("the place of the window is not kept: {error}"),
        }
    }
}
