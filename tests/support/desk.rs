//! The app in a window without a display: every event goes to the widgets first, where they are laid
//! out, and what none of them takes goes to the app, as the toolkit sends it. The focus of a field is
//! that of the window.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use iced::advanced::clipboard;
use iced::advanced::widget::operation::Outcome;
use iced::event::Status;
use iced::keyboard::key::{NativeCode, Physical};
use iced::keyboard::{self, Key, Location, Modifiers};
use iced::widget::Id;
use iced::{Event, Point, Rectangle, Size, mouse, touch, window};
use iced_runtime::user_interface::{Cache, UserInterface};
use iced_test::selector;
use marlinspeak::app::{App, Message};

use super::frames;
use super::hands::Hands;

/// Somebody at a window.
pub struct Desk {
    /// Who sits at it.
    pub hands: Hands,
    size: Size,
    renderer: iced::Renderer,
    cache: Cache,
    cursor: mouse::Cursor,
}

impl Desk {
    /// Sits down at a window of this size.
    pub fn new(hands: Hands, size: Size) -> Self {
        let mut desk = Self {
            hands,
            size,
            renderer: frames::renderer(),
            cache: Cache::default(),
            cursor: mouse::Cursor::Unavailable,
        };
        desk.happen(Event::Window(window::Event::Focused));
        desk
    }

    /// An event of the window.
    pub fn happen(&mut self, event: Event) {
        let mut messages = Vec::new();
        let events = [event];
        let mut screen = UserInterface::build(
            self.hands.view(),
            self.size,
            std::mem::take(&mut self.cache),
            &mut self.renderer,
        );
        let (_, statuses) = screen.update(
            &events,
            self.cursor,
            &mut self.renderer,
            &mut clipboard::Null,
            &mut messages,
        );
        self.cache = screen.into_cache();
        for message in messages {
            self.tell(message);
        }
        let [event] = events;
        let status = statuses[0];
        if let (Event::Keyboard(key), Status::Ignored) = (&event, status) {
            self.tell(Message::Key(key.clone()));
        }
        if let Some(message) = App::heard(event, status) {
            self.tell(message);
        }
    }

    /// Tells the app something, and does to the widgets what it wants done.
    pub fn tell(&mut self, message: Message) {
        self.hands.tell(message);
        for operation in std::mem::take(&mut self.hands.operations) {
            let mut screen = UserInterface::build(
                self.hands.view(),
                self.size,
                std::mem::take(&mut self.cache),
                &mut self.renderer,
            );
            let mut next = Some(operation);
            while let Some(mut operation) = next.take() {
                screen.operate(&self.renderer, operation.as_mut());
                if let Outcome::Chain(chained) = operation.finish() {
                    next = Some(chained);
                }
            }
            self.cache = screen.into_cache();
        }
    }

    /// Where the part of the screen with this id is, if all of it is in the window.
    pub fn place_of(&self, id: impl Into<Id>) -> Option<Rectangle> {
        let mut screen = self.hands.screen(self.size);
        let found = screen.find(selector::id(id)).ok()?;
        let (bounds, visible) = (found.bounds(), found.visible_bounds()?);
        let is_whole = visible.width + 0.5 >= bounds.width && visible.height + 0.5 >= bounds.height;
        is_whole.then_some(bounds)
    }

    /// Where the button, or the text on it, that shows exactly this is.
    pub fn place_of_text(&self, text: &str) -> Rectangle {
        let mut screen = self.hands.screen(self.size);
        let found = screen.find(text).unwrap_or_else(|_| panic!("no {text}"));
        found.bounds()
    }

    /// Moves the pointer there.
    pub fn point_at(&mut self, at: Point) {
        self.cursor = mouse::Cursor::Available(at);
        self.happen(Event::Mouse(mouse::Event::CursorMoved { position: at }));
    }

    /// Clicks there.
    pub fn click(&mut self, at: Point) {
        self.hands.clock.pass(std::time::Duration::from_secs(1));
        self.point_at(at);
        let left = mouse::Button::Left;
        self.happen(Event::Mouse(mouse::Event::ButtonPressed(left)));
        self.happen(Event::Mouse(mouse::Event::ButtonReleased(left)));
    }

    /// Touches there.
    pub fn touch(&mut self, at: Point) {
        self.hands.clock.pass(std::time::Duration::from_secs(1));
        self.cursor = mouse::Cursor::Available(at);
        let (id, position) = (touch::Finger(1), at);
        self.happen(Event::Touch(touch::Event::FingerPressed { id, position }));
        self.happen(Event::Touch(touch::Event::FingerLifted { id, position }));
    }

    /// Clicks the part with this id.
    pub fn click_on(&mut self, id: impl Into<Id>) {
        let id = id.into();
        let place = self.place_of(id.clone());
        let place = place.unwrap_or_else(|| panic!("no {id:?} in sight"));
        self.click(place.center());
    }

    /// Presses a key and lets go of it.
    pub fn press(&mut self, key: impl Into<Key>) {
        let key = key.into();
        self.hands.clock.pass(std::time::Duration::from_secs(1));
        let text = match &key {
            Key::Character(letters) => Some(letters.clone()),
            Key::Named(keyboard::key::Named::Space) => Some(" ".into()),
            _ => None,
        };
        let physical_key = Physical::Unidentified(NativeCode::Unidentified);
        self.happen(Event::Keyboard(keyboard::Event::KeyPressed {
            key: key.clone(),
            modified_key: key.clone(),
            physical_key,
            location: Location::Standard,
            modifiers: Modifiers::empty(),
            text,
            repeat: false,
        }));
        self.happen(Event::Keyboard(keyboard::Event::KeyReleased {
            key: key.clone(),
            modified_key: key,
            physical_key,
            location: Location::Standard,
            modifiers: Modifiers::empty(),
        }));
    }

    /// Types letters one after the other.
    pub fn type_in(&mut self, text: &str) {
        for letter in text.chars() {
            if letter == ' ' {
                self.press(keyboard::key::Named::Space);
            } else {
                self.press(Key::Character(letter.to_string().into()));
            }
        }
    }

    /// Another window takes the keys, and this one has them again.
    pub fn look_away_and_back(&mut self) {
        self.happen(Event::Window(window::Event::Unfocused));
        self.happen(Event::Window(window::Event::Focused));
    }
}
