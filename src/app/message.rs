//! What happens to the app.

use std::path::PathBuf;

use iced::{Point, Rectangle, Size, keyboard, window};

use super::key_guide::Tapped;
use super::screens::{OrderMessage, ScreenMessage, ShelfMessage, log, paper, plan, start};
use super::services::ServiceEvent;
use crate::guide::SetupField;
use crate::pedal::InputEvent;
use crate::session::{Event, InHand, LogField};
use crate::shelf::{Entry, ShelfError, ShelfReading};

/// What happens to the app: presses, events of screens and services, and what the window tells.
#[derive(Debug)]
pub enum Message {
    /// A key that no widget took.
    Key(keyboard::Event),
    /// A mouse button that no widget took did something.
    Button(InputEvent),
    /// A key on the screen was clicked or touched.
    Tapped(Tapped),
    /// Something on a screen besides presses.
    Screen(ScreenMessage),
    /// Something from a thread that is not the window's.
    Service(ServiceEvent),
    /// A tie comes into hand.
    InHand(Box<Result<ShelfReading<InHand>, ShelfError>>),
    /// What the form of the log begins with.
    ToLog(Box<Result<ShelfReading<Entry>, ShelfError>>),
    /// A file was dropped on the window.
    Dropped(PathBuf),
    /// The window has this size.
    Resized(Size),
    /// The upper left corner of the window is here.
    Moved(Point),
    /// What the window answers that was asked for its size.
    Measured(Size),
    /// The screen has so many dots for each pixel of the window's size.
    Density(f32),
    /// The program is to be left.
    Close,
    /// Something happened at this window.
    At(window::Id, Box<Message>),
    /// This window is to be closed.
    CloseWindow(window::Id),
    /// This window was closed.
    WindowClosed(window::Id),
    /// Where the monitors are, for a second window.
    Monitors(Vec<Rectangle>),
    /// The display of the second window has so many dots for each pixel.
    SecondDensity(window::Id, f32),
    /// A window lost the keys a moment ago.
    KeysGone,
    /// A press waited for the one before it to be on disk: whether that takes longer than it can wait.
    Settled(bool),
    /// The last save was waited for: whether everything is on disk.
    Flushed(bool),
}

impl Message {
    /// The session hears of something.
    pub const fn event(event: Event) -> Self {
        Self::Service(ServiceEvent::Session(event))
    }

    /// The window has or has lost the keys.
    pub const fn focus(has_focus: bool) -> Self {
        Self::event(Event::Focus(has_focus))
    }

    /// A tie comes into hand.
    pub fn in_hand(found: Result<ShelfReading<InHand>, ShelfError>) -> Self {
        Self::InHand(Box::new(found))
    }

    /// A text typed into a field of the start screen's form.
    pub fn typed(field: start::StartField, text: &str) -> Self {
        let message = start::Message::Typed(field, text.to_owned());
        Self::Screen(ScreenMessage::Start(message))
    }

    /// A text typed into a field of the plan screen's form.
    pub fn planned(field: SetupField, text: &str) -> Self {
        let message = plan::Message::Typed(field.into(), text.to_owned());
        Self::Screen(ScreenMessage::Plan(message))
    }

    /// A text typed into the line of the shelf screen.
    pub fn typed_on_shelf(text: &str) -> Self {
        let message = ShelfMessage::Typed(text.to_owned());
        Self::Screen(ScreenMessage::Shelf(message))
    }

    /// A path typed on the paper screen.
    pub fn typed_on_paper(text: &str) -> Self {
        let message = paper::Message::Typed(text.to_owned());
        Self::Screen(ScreenMessage::Paper(message))
    }

    /// A text typed into the line of the order screen.
    pub fn typed_on_orders(text: &str) -> Self {
        let message = OrderMessage::Typed(text.to_owned());
        Self::Screen(ScreenMessage::Order(message))
    }

    /// A text typed into a field of the log's form.
    pub fn typed_in_log(field: LogField, text: &str) -> Self {
        let message = log::Message::Typed(field, text.to_owned());
        Self::Screen(ScreenMessage::Log(message))
    }
}
