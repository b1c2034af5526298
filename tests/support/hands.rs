//! The app without a window: presses go in, what is said and shown comes out. The app's own
//! tasks are run, with the real shelf in a folder of the test.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::path::Path;
use std::sync::{Arc, Mutex};

use iced::futures::StreamExt;
use iced::futures::channel::mpsc;
use iced::futures::executor::block_on;
use iced::keyboard::key::{NativeCode, Physical};
use iced::keyboard::{self, Key, Location, Modifiers};
use iced::{Element, Size, Task};
use iced_runtime::{Action, task};
use iced_test::Simulator;
use marlinspeak::app::{self, App, Desk, Message, Speak};
use marlinspeak::guide::Plan;
use marlinspeak::shelf::{Keeper, RackFile, Shelf};
use marlinspeak::words::Words;

/// A voice that only remembers.
#[derive(Clone, Default)]
pub struct Remembered(Arc<Mutex<Vec<String>>>);

impl Speak for Remembered {
    fn say(&self, text: &str) {
        self.0.lock().unwrap().push(text.to_owned());
    }

    fn hush(&self) {}
}

/// Somebody at the app.
pub struct Hands {
    app: App,
    voice: Remembered,
    shelf: Shelf,
    keeper: Arc<Keeper>,
    /// Whether the app asked to be closed.
    pub has_exited: bool,
}

impl Hands {
    /// Opens the app on the ties in `folder`, or on a plan.
    pub fn open(folder: &Path, plan: Option<Plan>) -> Self {
        let shelf = Shelf::open(folder).unwrap();
        let keeper = Arc::new(Keeper::start(shelf.clone(), |_| {}).unwrap());
        let voice = Remembered::default();
        let desk = Desk {
            voice: Box::new(voice.clone()),
            shelf: Some(shelf.clone()),
            keeper: Some(Arc::clone(&keeper)),
            // Not among the ties: the shelf would call it a stranger.
            rack: Some(RackFile::at(folder.join("rack").join("rack.json"))),
        };
        let (_, outside) = mpsc::unbounded();
        let (app, task) = App::new(Words::english(), desk, plan, outside);
        let mut hands = Self {
            app,
            voice,
            shelf,
            keeper,
            has_exited: false,
        };
        hands.run(task);
        hands
    }

    /// Presses a key once.
    pub fn press(&mut self, key: impl Into<Key>) {
        self.key(key.into(), Modifiers::empty(), false);
    }

    /// Presses a key that the system repeats because it is held.
    pub fn hold(&mut self, key: impl Into<Key>) {
        self.key(key.into(), Modifiers::empty(), true);
    }

    /// Presses a letter with Ctrl.
    pub fn press_ctrl(&mut self, letter: &str) {
        self.key(Key::Character(letter.into()), Modifiers::CTRL, false);
    }

    fn key(&mut self, key: Key, modifiers: Modifiers, repeat: bool) {
        self.tell(Message::Key(keyboard::Event::KeyPressed {
            modified_key: key.clone(),
            key,
            physical_key: Physical::Unidentified(NativeCode::Unidentified),
            location: Location::Standard,
            modifiers,
            text: None,
            repeat,
        }));
    }

    /// Hands the app a message and does what it asks for.
    pub fn tell(&mut self, message: Message) {
        let task = self.app.update(message);
        self.run(task);
    }

    fn run(&mut self, task: Task<Message>) {
        let Some(mut stream) = task::into_stream(task) else {
            return;
        };
        while let Some(action) = block_on(stream.next()) {
            match action {
                Action::Output(message) => self.tell(message),
                Action::Exit => self.has_exited = true,
                // Focus and the like are the real window's affair.
                _ => {}
            }
        }
    }

    /// Everything said so far.
    pub fn said(&self) -> Vec<String> {
        self.voice.0.lock().unwrap().clone()
    }

    /// What was said last.
    pub fn last_said(&self) -> String {
        self.said().pop().unwrap_or_default()
    }

    /// What the window would show.
    pub fn view(&self) -> Element<'_, Message> {
        self.app.view()
    }

    /// The screen at a size, for looking at and clicking.
    pub fn screen(&self, size: Size) -> Simulator<'_, Message> {
        let settings = app::settings();
        Simulator::with_size(settings, size, self.app.view())
    }

    /// Whether the screen shows exactly this text somewhere.
    pub fn sees(&self, text: &str) -> bool {
        self.screen(Size::new(1100.0, 760.0)).find(text).is_ok()
    }

    /// Clicks what shows this text.
    pub fn click(&mut self, text: &str) {
        let messages: Vec<Message> = {
            let mut screen = self.screen(Size::new(1100.0, 760.0));
            screen.click(text).unwrap();
            screen.into_messages().collect()
        };
        for message in messages {
            self.tell(message);
        }
    }

    /// The shelf, with everything saved that the app asked for.
    pub fn shelf(&self) -> &Shelf {
        assert!(self.keeper.flush(std::time::Duration::from_secs(10)));
        &self.shelf
    }
}
