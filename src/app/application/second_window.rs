//! A second window, for another monitor or a projector: a class sees the step there, and the tyer's own
//! window stays as it is. It is moved and closed like any window.

use std::thread;
use std::time::Duration;

use iced::{Element, Point, Rectangle, Size, Task, window};

use super::App;
use crate::app::message::Message;
use crate::app::off_thread::off_thread;
use crate::app::screens::SecondView;
use crate::app::services::ServiceEvent;
use crate::app::{monitors, window_settings};
use crate::session::Event;
use crate::words::Remark;

/// Its size where it has no display of its own.
const SIZE: Size = Size::new(960.0, 600.0);
/// From one window of the program to the other the keys go within so long. Wayland desktops made with the
/// library wlroots, moreover, take them away and give them back in one breath whenever another keyboard is
/// used than before, and many a pedal is a keyboard.
const HANDED_OVER: Duration = Duration::from_millis(120);

/// The second window while it is open.
pub(super) struct SecondWindow {
    pub(super) id: window::Id,
    view: SecondView,
    /// Dots of its display for each pixel.
    density: f32,
    is_full_screen: bool,
}

impl App {
    /// The second window, while it is open.
    pub fn second_window(&self) -> Option<window::Id> {
        self.second.as_ref().map(|second| second.id)
    }

    pub(super) fn is_second(&self, id: window::Id) -> bool {
        self.second_window() == Some(id)
    }

    /// What stands in a window of the program.
    pub fn view_of(&self, id: window::Id) -> Element<'_, Message> {
        match &self.second {
            Some(second) if second.id == id => second.view.view(&self.context),
            _ => self.view(),
        }
    }

    /// Opens the second window, or closes it.
    pub(super) fn turn_second_window(&mut self) -> Task<Message> {
        if let Some(second) = self.second.take() {
            self.context
                .say(&self.context.remark(Remark::SecondWindowClosedSay));
            let close = window::close(second.id);
            if self.focused == Some(second.id) {
                // The tyer's own window has them next, or nobody.
                self.focused = None;
                return Task::batch([close, keys_gone_soon()]);
            }
            return close;
        }
        // To ask where the monitors are is not for the thread of the window.
        off_thread(|| Message::Monitors(monitors::monitors()))
    }

    /// Opens it on the monitor on which the tyer's own window is not, over all of it; where there is but
    /// one, or the system does not tell, as a window to be moved.
    pub(super) fn open_second_window(&mut self, monitors: &[Rectangle]) -> Task<Message> {
        if self.second.is_some() {
            return Task::none();
        }
        let density = self.context.window.density();
        let corner = self.corner.unwrap_or(Point::ORIGIN);
        let own = Point::new(corner.x * density, corner.y * density);
        let place = free_monitor(monitors, own).map(|monitor| monitor * (1.0 / density));
        let (id, opened) = window::open(window::Settings {
            size: place.map_or(SIZE, |place| place.size()),
            position: place.map_or_else(window::Position::default, |place| {
                window::Position::Specific(place.position())
            }),
            ..window_settings()
        });
        self.second = Some(SecondWindow {
            id,
            view: SecondView::default(),
            density,
            is_full_screen: place.is_some(),
        });
        self.context
            .say(&self.context.remark(Remark::SecondWindowSay));
        let over_all = if place.is_some() {
            window::set_mode(id, window::Mode::Fullscreen)
        } else {
            Task::none()
        };
        opened.discard().chain(over_all)
    }

    /// The second window was closed from outside.
    pub(super) fn second_window_closed(&mut self, id: window::Id) {
        if self.is_second(id) {
            self.second = None;
        }
    }

    /// What happened at one of the windows.
    pub(super) fn at_window(&mut self, id: window::Id, message: Message) -> Task<Message> {
        if let Message::Service(ServiceEvent::Session(Event::Focus(has_focus))) = message {
            return self.has_keys(id, has_focus);
        }
        if !self.is_second(id) {
            return self.take_in(message);
        }
        match message {
            Message::Resized(_) => {
                window::scale_factor(id).map(move |density| Message::SecondDensity(id, density))
            }
            Message::Moved(_) => Task::none(),
            other => self.take_in(other),
        }
    }

    /// The second window's display has so many dots for each pixel.
    pub(super) fn set_second_density(&mut self, id: window::Id, density: f32) {
        if let Some(second) = self.second.as_mut().filter(|second| second.id == id) {
            second.density = density;
        }
    }

    /// A window has the keys, or has lost them. Where they come back at once, or only go to the other window
    /// of the program, they are not lost: that is known a moment later.
    fn has_keys(&mut self, id: window::Id, has_focus: bool) -> Task<Message> {
        if has_focus {
            self.focused = Some(id);
            return self.take_in(Message::focus(true));
        }
        if self.focused == Some(id) {
            self.focused = None;
        }
        keys_gone_soon()
    }

    /// Some time ago a window lost the keys.
    pub(super) fn keys_gone(&mut self) -> Task<Message> {
        if self.focused.is_some() {
            return Task::none();
        }
        self.take_in(Message::focus(false))
    }

    /// Has the second window take its whole display, or gives that back, when it is the one that has the
    /// keys.
    pub(super) fn turn_second_full_screen(&mut self) -> Option<Task<Message>> {
        let focused = self.focused?;
        let second = self.second.as_mut().filter(|second| second.id == focused)?;
        second.is_full_screen = !second.is_full_screen;
        let mode = if second.is_full_screen {
            window::Mode::Fullscreen
        } else {
            window::Mode::Windowed
        };
        Some(window::set_mode(second.id, mode))
    }

    /// Has its picture show the step.
    pub(super) fn redraw_second(&mut self) {
        if let Some(second) = &mut self.second {
            second.view.redraw(&self.context, second.density);
        }
    }
}

/// Asks a moment later whether the keys are gone.
fn keys_gone_soon() -> Task<Message> {
    off_thread(|| {
        thread::sleep(HANDED_OVER);
        Message::KeysGone
    })
}

/// The first monitor on which the window with its upper left corner there does not stand. All in dots of
/// the desktop.
fn free_monitor(monitors: &[Rectangle], corner: Point) -> Option<Rectangle> {
    // A corner may stand a little outside: what counts is a place within the upper edge.
    let hold = Point::new(corner.x + 40.0, corner.y + 40.0);
    let own = monitors.iter().position(|monitor| monitor.contains(hold));
    let own = own.unwrap_or(0);
    let mut others = monitors.iter().enumerate();
    let free = others.find(|(at, _)| *at != own);
    free.map(|(_, monitor)| *monitor)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_class_gets_the_monitor_that_the_tyer_has_not() {
        let monitor = |x| Rectangle::new(Point::new(x, 0.0), Size::new(1920.0, 1080.0));
        let [desk, projector] = [0.0, 1920.0].map(monitor);
        let free = |corner| free_monitor(&[desk, projector], Point::new(corner, 5.0));
        assert_eq!(free(300.0), Some(projector));
        assert_eq!(free(1900.0), Some(desk));
        assert_eq!(free(2500.0), Some(desk));
        // From nowhere the first counts as the tyer's.
        assert_eq!(free(-900.0), Some(projector));
        assert_eq!(free_monitor(&[desk], Point::ORIGIN), None);
        assert_eq!(free_monitor(&[], Point::ORIGIN), None);
    }
}
