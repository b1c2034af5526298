//! The app without a window: presses go in, what is said and shown comes out. The app's own
//! tasks are run, with the real shelf in a folder of the test.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::task::{Context, Poll};
use std::time::{Duration, Instant};

use iced::advanced::widget::Operation;
use iced::futures::channel::mpsc;
use iced::futures::executor::block_on;
use iced::futures::stream::BoxStream;
use iced::futures::{StreamExt, task as futures_task};
use iced::keyboard::key::{NativeCode, Physical};
use iced::keyboard::{self, Key, Location, Modifiers};
use iced::{Element, Size, Task};
use iced_runtime::{Action, task};
use iced_test::Simulator;
use marlinspeak::app::{self, App, FileDialogs, Message, NoDialogs, PlatformServices, Services};
use marlinspeak::guide::Plan;
use marlinspeak::session::{Session, Wishes};
use marlinspeak::settings::Settings;
use marlinspeak::shelf::{Entry, Keeper, PresetsFile, Shelf, Tie};
use marlinspeak::voice::{Chime, Cue, Speak, SpeechSettings};
use marlinspeak::words::{Spoken, Words};

/// A voice that only remembers.
#[derive(Clone, Default)]
pub struct Remembered(Arc<Mutex<Vec<String>>>, Arc<Mutex<SpeechSettings>>);

/// Sounds that are only remembered.
#[derive(Clone, Default)]
pub struct Sounds(Arc<Mutex<Vec<(Cue, u8)>>>);

impl Chime for Sounds {
    fn play(&self, cue: Cue, volume: u8) {
        self.0.lock().unwrap().push((cue, volume));
    }
}

/// A clock that goes on only when it is told to.
#[derive(Clone, Default)]
pub struct Clock(Arc<Mutex<Duration>>);

impl Clock {
    fn now(&self) -> Duration {
        *self.0.lock().unwrap()
    }

    /// Lets time pass.
    pub fn pass(&self, time: Duration) {
        *self.0.lock().unwrap() += time;
    }
}

impl Speak for Remembered {
    fn say(&self, text: &Spoken) {
        self.0.lock().unwrap().push(text.to_string());
    }

    fn hush(&self) {
        self.0.lock().unwrap().push(String::new());
    }

    fn set_speech(&self, speech: SpeechSettings) {
        *self.1.lock().unwrap() = speech;
    }
}

/// Somebody at the app.
pub struct Hands {
    app: App,
    voice: Remembered,
    shelf: Shelf,
    keeper: Arc<Keeper>,
    sounds: Sounds,
    /// The clock the app sees.
    pub clock: Clock,
    /// Whether the app asked to be closed.
    pub has_exited: bool,
    left_unsaved: Arc<AtomicBool>,
    /// What it wants done to its widgets: the focus put on one, and the like.
    pub operations: Vec<Box<dyn Operation>>,
    /// Tasks that are still at work, when nobody waits for them.
    running: Vec<BoxStream<'static, Action<Message>>>,
    waits: bool,
}

/// How long something may take that somebody waits for.
const PATIENCE: Duration = Duration::from_secs(120);

impl Hands {
    /// Opens the app on the ties in `folder`, or on a plan.
    pub fn open(folder: &Path, plan: Option<Plan>) -> Self {
        Self::open_with(folder, plan, Settings::default())
    }

    /// The same for a tyer with preferences.
    pub fn open_with(folder: &Path, plan: Option<Plan>, settings: Settings) -> Self {
        Self::open_in(Words::english(), folder, plan, settings)
    }

    /// The same in other words.
    pub fn open_in(words: Words, folder: &Path, plan: Option<Plan>, settings: Settings) -> Self {
        Self::open_among(words, folder, plan, settings, Arc::new(NoDialogs))
    }

    /// The same on a system that has windows in which files are chosen.
    pub fn open_among(
        words: Words,
        folder: &Path,
        plan: Option<Plan>,
        settings: Settings,
        dialogs: Arc<dyn FileDialogs>,
    ) -> Self {
        let clock = Clock::default();
        let sounds = Sounds::default();
        let left_unsaved = Arc::<AtomicBool>::default();
        let platform = PlatformServices {
            clock: Box::new({
                let clock = clock.clone();
                move || clock.now()
            }),
            chime: Box::new(sounds.clone()),
            left_unsaved: Arc::clone(&left_unsaved),
            // The disk of a busy machine takes longer than anybody waits, and is not what is tried.
            moment: PATIENCE,
            dialogs,
            ..PlatformServices::default()
        };
        let shelf = Shelf::open(folder).unwrap();
        let keeper = Arc::new(Keeper::start(shelf.clone(), |_| {}).unwrap());
        let voice = Remembered::default();
        let services = Services {
            voice: Box::new(voice.clone()),
            shelf: Some(shelf.clone()),
            keeper: Some(Arc::clone(&keeper)),
            // Not among the ties: the shelf would call it a stranger.
            rack: Some(PresetsFile::at(folder.join("rack").join("rack.json"))),
            platform,
        };
        let (_, events) = mpsc::unbounded();
        let wishes = Wishes::default();
        let (app, task) = App::new(words, services, settings, wishes, plan, events);
        let mut hands = Self {
            app,
            voice,
            shelf,
            keeper,
            sounds,
            clock,
            has_exited: false,
            left_unsaved,
            operations: Vec::new(),
            running: Vec::new(),
            waits: true,
        };
        hands.run(task);
        hands
    }

    /// Presses a key once.
    pub fn press(&mut self, key: impl Into<Key>) {
        self.key(key.into(), Modifiers::empty(), false);
    }

    /// Presses a key so long after the last one, and lets go of it a tenth of a second later.
    pub fn press_after(&mut self, after: Duration, key: Key) {
        self.clock.pass(after);
        self.down(key.clone(), Modifiers::empty(), false);
        self.clock.pass(Duration::from_millis(100));
        self.up(key);
    }

    /// Presses a key that the system repeats because it is held.
    pub fn hold(&mut self, key: impl Into<Key>) {
        self.key(key.into(), Modifiers::empty(), true);
    }

    /// Presses a letter with Ctrl.
    pub fn press_ctrl(&mut self, letter: &str) {
        self.key(Key::Character(letter.into()), Modifiers::CTRL, false);
    }

    /// Presses a key at an unhurried pace: what went before is a second ago, and it is let go of
    /// a tenth of a second later.
    fn key(&mut self, key: Key, modifiers: Modifiers, repeat: bool) {
        if !repeat {
            self.clock.pass(Duration::from_secs(1));
        }
        self.down(key.clone(), modifiers, repeat);
        if !repeat {
            self.clock.pass(Duration::from_millis(100));
            self.up(key);
        }
    }

    /// Lets go of a key.
    pub fn up(&mut self, key: Key) {
        self.tell(Message::Key(keyboard::Event::KeyReleased {
            modified_key: key.clone(),
            key,
            physical_key: Physical::Unidentified(NativeCode::Unidentified),
            location: Location::Standard,
            modifiers: Modifiers::empty(),
        }));
    }

    /// A key goes down, and nothing more.
    pub fn down(&mut self, key: Key, modifiers: Modifiers, repeat: bool) {
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
        if !self.waits {
            self.running.push(stream);
            return self.hear();
        }
        while let Some(action) = block_on(stream.next()) {
            self.act(action);
        }
    }

    fn act(&mut self, action: Action<Message>) {
        match action {
            Action::Output(message) => self.tell(message),
            Action::Exit => self.has_exited = true,
            Action::Widget(operation) => self.operations.push(operation),
            // What is asked of the real window is never answered, since there is none.
            _ => {}
        }
    }

    /// From now on nobody waits for what the app has done on other threads: presses go on meanwhile.
    pub fn press_on(&mut self) {
        self.waits = false;
    }

    /// Hands the app what its other threads have to tell by now.
    fn hear(&mut self) {
        let mut context = Context::from_waker(futures_task::noop_waker_ref());
        let mut at = 0;
        while at < self.running.len() {
            match self.running[at].poll_next_unpin(&mut context) {
                Poll::Ready(Some(action)) => self.act(action),
                Poll::Ready(None) => drop(self.running.swap_remove(at)),
                Poll::Pending => at += 1,
            }
        }
    }

    /// Goes on hearing until something has come about.
    pub fn wait_until(&mut self, what: &str, has_come: impl Fn(&Self) -> bool) {
        let since = Instant::now();
        loop {
            self.hear();
            if has_come(self) {
                return;
            }
            let last = self.last_said();
            assert!(
                since.elapsed() < PATIENCE,
                "{what} has not come about: {last}"
            );
            std::thread::park_timeout(Duration::from_millis(2));
        }
    }

    /// Whether the tyer has left what was not saved.
    pub fn has_left_unsaved(&self) -> bool {
        self.left_unsaved.load(Ordering::Relaxed)
    }

    /// Everything said so far.
    pub fn said(&self) -> Vec<String> {
        let mut said = self.voice.0.lock().unwrap().clone();
        said.retain(|text| !text.is_empty());
        said
    }

    /// Whether the last wish was for silence.
    pub fn is_hushed(&self) -> bool {
        self.voice
            .0
            .lock()
            .unwrap()
            .last()
            .is_some_and(String::is_empty)
    }

    /// How the voice speaks.
    pub fn speech(&self) -> SpeechSettings {
        self.voice.1.lock().unwrap().clone()
    }

    /// Every sound so far.
    pub fn sounded(&self) -> Vec<(Cue, u8)> {
        self.sounds.0.lock().unwrap().clone()
    }

    /// What the tyer prefers by now.
    pub fn settings(&self) -> &Settings {
        self.app.settings()
    }

    /// The tie in hand and all that belongs to it.
    pub const fn session(&self) -> &Session {
        self.app.session()
    }

    /// The app itself.
    pub const fn app(&self) -> &App {
        &self.app
    }

    /// What was said last.
    pub fn last_said(&self) -> String {
        self.said().pop().unwrap_or_default()
    }

    /// What the window would show.
    pub fn view(&self) -> Element<'_, Message> {
        self.app.view()
    }

    /// Gives the window so many pixels; how much larger than usual everything is drawn in it.
    pub fn in_window(&mut self, size: Size) -> f32 {
        let before = self.app.scale_factor();
        self.tell(Message::Measured(size * (1.0 / before)));
        self.app.scale_factor()
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

    /// The ties on it, with which nothing is wrong.
    pub fn ties(&self) -> Vec<Tie> {
        self.shelf().list().unwrap().untroubled().unwrap()
    }

    /// The entries of its log, with which nothing is wrong.
    pub fn entries(&self) -> Vec<Entry> {
        self.shelf().ledger().unwrap().untroubled().unwrap().entries
    }
}
