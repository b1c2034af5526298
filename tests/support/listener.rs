//! Somebody who hears the program, for tests in which nothing but keys goes in and nothing but the record of
//! speech is looked at.

use iced::Size;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use marlinspeak::settings::Settings;
use marlinspeak::words::Words;
use tempfile::TempDir;

use crate::desk::Desk;
use crate::hands::Hands;

const WINDOW: Size = Size::new(1100.0, 760.0);

/// Somebody who hears the program and sees nothing of it.
pub struct Listener {
    pub desk: Desk,
    heard: usize,
    /// How often a key is pressed at the most until something is heard.
    pub patience: usize,
    _folder: TempDir,
}

impl Listener {
    /// The program is started, for the first time or not; and what it says then.
    pub fn start(words: Words) -> (Self, String) {
        let folder = TempDir::new().unwrap();
        // Orders and what else is kept lie beside the ties.
        let hands = Hands::open_in(
            words,
            &folder.path().join("ties"),
            None,
            Settings::default(),
        );
        let mut listener = Self {
            desk: Desk::new(hands, WINDOW),
            heard: 0,
            patience: 120,
            _folder: folder,
        };
        let said = listener.hears();
        (listener, said)
    }

    /// What is said since it was listened to last, all of it.
    pub fn hears(&mut self) -> String {
        let said = self.desk.hands.said();
        let new = said[self.heard..].join(" ");
        self.heard = said.len();
        new
    }

    pub fn press(&mut self, key: Named) -> String {
        self.desk.press(key);
        self.hears()
    }

    pub fn letter(&mut self, letter: &str) -> String {
        self.desk.press(Key::Character(letter.into()));
        self.hears()
    }

    /// Presses this key until something is heard that says so.
    pub fn press_until(&mut self, key: Named, wanted: &str) -> String {
        let mut all = Vec::new();
        for _ in 0..self.patience {
            let said = self.press(key);
            if said.contains(wanted) {
                return said;
            }
            all.push(said);
        }
        panic!("{wanted} was never said: {all:#?}");
    }
}

/// That all of these are said, in this order.
#[track_caller]
pub fn says(said: &str, parts: &[&str]) {
    let mut rest = said;
    for part in parts {
        let at = rest
            .find(part)
            .unwrap_or_else(|| panic!("no “{part}”, in this order, in: {said}"));
        rest = &rest[at + part.len()..];
    }
}
