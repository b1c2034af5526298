//! `marlinspeak tie` without a terminal: keys go in, what is said and printed comes out, with a
//! clock that goes on only when it is told to.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::io::{self, Write};
use std::path::Path;
use std::sync::{Arc, Mutex};
use std::time::Duration;

use jiff::Timestamp;
use marlinspeak::cli::tie::{TerminalDriver, TerminalEvent, TerminalServices};
use marlinspeak::pedal::{Input, InputEvent, Transition};
use marlinspeak::session::{Event, InHand, Session, Wishes, inventory};
use marlinspeak::settings::{Settings, SettingsFile};
use marlinspeak::shelf::{Keeper, Shelf, ShelfReading};
use marlinspeak::voice::{Chime, Cue, Speak};
use marlinspeak::words::{Spoken, Words};

/// A voice that only remembers.
#[derive(Clone, Default)]
struct Remembered(Arc<Mutex<Vec<String>>>);

impl Speak for Remembered {
    fn say(&self, text: &Spoken) {
        self.0.lock().unwrap().push(text.to_string());
    }

    fn hush(&self) {}
}

/// Sounds that are only remembered.
#[derive(Clone, Default)]
struct Sounds(Arc<Mutex<Vec<(Cue, u8)>>>);

impl Chime for Sounds {
    fn play(&self, cue: Cue, volume: u8) {
        self.0.lock().unwrap().push((cue, volume));
    }
}

/// A paper that is printed on.
#[derive(Clone, Default)]
struct Paper(Arc<Mutex<Vec<u8>>>);

impl Write for Paper {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.0.lock().unwrap().extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

/// Somebody at a terminal.
pub struct Terminal {
    driver: TerminalDriver<Paper>,
    voice: Remembered,
    sounds: Sounds,
    paper: Paper,
    shelf: Shelf,
    now: Duration,
}

impl Terminal {
    /// Takes up the newest tie in `folder`.
    pub fn take_up(words: Words, folder: &Path, settings: Settings) -> Self {
        let shelf = Shelf::open(folder).unwrap();
        let waiting = inventory(&shelf, None, Timestamp::now()).unwrap();
        let in_hand = ShelfReading::gather(|gathering| {
            let waiting = waiting.hand_on(gathering).waiting;
            let taken = InHand::taken_up(&shelf, waiting[0].tie.id(), false);
            taken.unwrap().hand_on(gathering)
        });
        Self::with(words, shelf, settings, in_hand)
    }

    /// With a tie in hand.
    pub fn with(
        words: Words,
        shelf: Shelf,
        settings: Settings,
        in_hand: ShelfReading<InHand>,
    ) -> Self {
        let (voice, sounds, paper) = Default::default();
        let (voice, sounds, paper): (Remembered, Sounds, Paper) = (voice, sounds, paper);
        let services = TerminalServices {
            ear: marlinspeak::pedal::Ear::default(),
            keeper: Some(Keeper::start(shelf.clone(), |_| {}).unwrap()),
            shelf: Some(shelf.clone()),
            voice: Box::new(voice.clone()),
            chime: Some(Box::new(sounds.clone())),
            file: SettingsFile::nowhere(),
        };
        let session = Session::new(words, settings, Wishes::default());
        let mut driver = TerminalDriver::new(session, services, paper.clone(), false);
        driver.take_in_hand(in_hand, Duration::ZERO).unwrap();
        Self {
            driver,
            voice,
            sounds,
            paper,
            shelf,
            // The press that took it up is let go of.
            now: Duration::from_millis(100),
        }
    }

    /// Presses a key some time after the last press, and lets go of it a tenth of a second later.
    pub fn press_after(&mut self, after: Duration, name: &str) {
        self.now += after;
        self.key(name, Transition::Down);
        self.now += Duration::from_millis(100);
        self.key(name, Transition::Up);
    }

    /// Presses a key.
    pub fn press(&mut self, name: &str) {
        self.press_after(Duration::from_secs(1), name);
    }

    /// A key repeats that is held.
    pub fn hold(&mut self, name: &str) {
        self.key(name, Transition::Repeat);
    }

    fn key(&mut self, name: &str, transition: Transition) {
        let is_letter = name.chars().count() == 1;
        let typed = is_letter.then(|| name.to_owned());
        let input = Input::key(name);
        self.take(TerminalEvent::Key(InputEvent { input, transition }, typed));
    }

    /// A line is typed.
    pub fn line(&mut self, typed: &str) {
        self.now += Duration::from_secs(1);
        self.take(TerminalEvent::Line(typed.to_owned()));
    }

    /// A service reports something.
    pub fn hear(&mut self, event: Event) {
        self.take(TerminalEvent::Session(event));
    }

    fn take(&mut self, event: TerminalEvent) {
        self.driver.take(Some(event), self.now).unwrap();
    }

    /// Everything said so far.
    pub fn said(&self) -> Vec<String> {
        self.voice.0.lock().unwrap().clone()
    }

    /// Every sound so far.
    pub fn sounded(&self) -> Vec<(Cue, u8)> {
        self.sounds.0.lock().unwrap().clone()
    }

    /// Every line printed so far.
    pub fn printed(&self) -> Vec<String> {
        let bytes = self.paper.0.lock().unwrap().clone();
        String::from_utf8(bytes)
            .unwrap()
            .lines()
            .map(str::to_owned)
            .collect()
    }

    /// The tie in hand and all that belongs to it.
    pub fn session(&self) -> &Session {
        self.driver.session()
    }

    /// Whether the tie was left.
    pub const fn is_over(&self) -> bool {
        self.driver.is_over()
    }

    /// The shelf, with everything saved that was asked for.
    pub fn shelf(&self) -> &Shelf {
        self.driver.flush(Duration::from_secs(10));
        &self.shelf
    }
}
