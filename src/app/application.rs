//! The application: which screen is up, and who hears of what happens. What happens to a tie is
//! the session's affair, and what happens on a screen the screen's.

use std::sync::atomic::Ordering;
use std::time::Duration;

use iced::futures::channel::mpsc::UnboundedReceiver;
use iced::{Element, Event, Size, Subscription, Task, Theme, event, keyboard, window};

use super::message::Message;
use super::off_thread::off_thread;
use super::screens::{Context, Go, Next, Route, Screen, ScreenMessage};
use super::services::{LAST_SAVE, ServiceEvent, Services};
use super::{keys, theme, widgets};
use crate::guide::Plan;
use crate::pedal::{InputEvent, Intent, Press, Transition};
use crate::session::{self, InHand, Session, Timer, Wishes, entry_for, new_tie};
use crate::settings::Settings;
use crate::shelf::{Entry, ShelfError, ShelfReading};
use crate::words::Words;

/// The whole state of the app.
pub struct App {
    context: Context,
    screen: Screen,
    leaving: Leaving,
}

/// How far the tyer is with leaving.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Leaving {
    /// Nothing of the kind.
    Not,
    /// The last save is waited for.
    Waiting,
    /// It has not come about, and it is asked whether to leave without it.
    Asked,
}

/// Asks the window for its size: when it is resized twice in a moment, what it told the second time
/// is in pixels of a scale that is no longer in effect when it is heard.
fn ask_size() -> Task<Message> {
    let size = window::oldest().and_then(window::size);
    size.map(Message::Measured)
}

impl App {
    /// The app at its beginning: on `plan`, begun, if there is one, or else on the start
    /// screen.
    pub fn new(
        words: Words,
        services: Services,
        settings: Settings,
        wishes: Wishes,
        plan: Option<Plan>,
        events: UnboundedReceiver<ServiceEvent>,
    ) -> (Self, Task<Message>) {
        let session = Session::new(words, settings, wishes);
        let mut context = Context::new(session, services);
        let listen = Task::run(events, Message::Service);
        let (screen, opened) = Screen::open(Route::Start(()), &mut context);
        let mut app = Self {
            context,
            screen,
            leaving: Leaving::Not,
        };
        let open = match plan {
            Some(plan) => app.go(Go::Begin(Box::new(new_tie(&plan)))),
            None => opened.map(Message::Screen),
        };
        let task = Task::batch([listen, open, app.carry_out()]);
        (app, task)
    }

    /// What the tyer prefers.
    pub const fn settings(&self) -> &Settings {
        self.context.session.settings()
    }

    /// The tie in hand and all that belongs to it.
    pub const fn session(&self) -> &Session {
        &self.context.session
    }

    /// The title of the window.
    pub fn title(&self) -> String {
        let name = self.context.plainly("app-title");
        match self.screen.title(&self.context) {
            Some(title) => format!("{title} – {name}"),
            None => name,
        }
    }

    /// What the app listens to.
    pub fn subscription(&self) -> Subscription<Message> {
        Subscription::batch([
            keyboard::listen().map(Message::Key),
            window::close_requests().map(|_| Message::Close),
            event::listen_with(|event, status, _| match event {
                // A text field takes this one for itself; leaving is the screen's affair too.
                Event::Keyboard(event) if keys::is_escape(&event) => {
                    (status == event::Status::Captured).then_some(Message::Key(event))
                }
                Event::Mouse(event) if status == event::Status::Ignored => {
                    keys::button(&event).map(Message::Button)
                }
                Event::Window(
                    window::Event::Opened { size, .. } | window::Event::Resized(size),
                ) => Some(Message::Resized(size)),
                Event::Window(window::Event::FileDropped(file)) => Some(Message::Dropped(file)),
                Event::Window(window::Event::Focused) => Some(Message::focus(true)),
                Event::Window(window::Event::Unfocused) => Some(Message::focus(false)),
                _ => None,
            }),
        ])
    }

    /// Takes in what happened, and has the pictures show it.
    pub fn update(&mut self, message: Message) -> Task<Message> {
        let task = self.take_in(message);
        let carried_out = self.carry_out();
        self.screen.redraw(&self.context);
        Task::batch([task, carried_out])
    }

    fn take_in(&mut self, message: Message) -> Task<Message> {
        match message {
            Message::Key(event) => self.key(&event),
            Message::Button(raw) => self.pressed(&raw, None),
            Message::Screen(message) => {
                let next = self.screen.update(message, &mut self.context);
                self.follow(next)
            }
            Message::Service(event) => self.service(event),
            Message::InHand(found) => self.in_hand(*found),
            Message::ToLog(entry) => self.show_log(*entry),
            Message::Dropped(file) => {
                let next = self.screen.dropped(file, &mut self.context);
                self.follow(next)
            }
            Message::Resized(size) => {
                self.resized(size);
                let density = window::oldest().and_then(window::scale_factor);
                Task::batch([density.map(Message::Density), ask_size()])
            }
            Message::Measured(size) if self.resized(size) => ask_size(),
            Message::Measured(_) => Task::none(),
            Message::Density(density) => {
                self.context.window.set_density(density);
                Task::none()
            }
            Message::Close => self.close(),
            Message::Flushed(is_saved) => self.flushed(is_saved),
        }
    }

    /// Does what the session wants done.
    fn carry_out(&mut self) -> Task<Message> {
        match self.context.carry_out() {
            Some(go) => {
                let task = self.go(go);
                // Going there may want something done in its turn.
                Task::batch([task, self.carry_out()])
            }
            None => Task::none(),
        }
    }

    /// Does what a screen wants done.
    fn follow(&mut self, next: Next<ScreenMessage>) -> Task<Message> {
        let task = next.task.map(Message::Screen);
        match next.go {
            Some(go) => Task::batch([task, self.go(go)]),
            None => task,
        }
    }

    fn go(&mut self, go: Go) -> Task<Message> {
        let shelf = self.context.services.shelf.clone();
        match go {
            Go::To(route) => {
                if matches!(route, Route::Start(())) {
                    self.context.session.put_away();
                }
                self.show(route)
            }
            Go::Back(otherwise) => {
                let now = self.context.now();
                if self.context.session.come_back(now) {
                    self.show(Route::Tying(()))
                } else {
                    self.show(otherwise)
                }
            }
            Go::Begin(tie) => {
                off_thread(move || Message::in_hand(Ok(InHand::new(shelf.as_ref(), *tie))))
            }
            Go::TakeUp(id) => {
                let may_look = self.context.session.may_look(&id);
                let keeper = self.context.services.keeper.clone();
                match shelf {
                    Some(shelf) => off_thread(move || {
                        let keeper = keeper.as_deref();
                        let back =
                            keeper.and_then(|keeper| InHand::taken_back(&shelf, keeper, &id));
                        let taken =
                            back.map_or_else(|| InHand::taken_up(&shelf, &id, may_look), Ok);
                        Message::in_hand(taken)
                    }),
                    None => Task::none(),
                }
            }
            Go::Log(tie) => match shelf {
                Some(shelf) => {
                    off_thread(move || Message::ToLog(Box::new(entry_for(&shelf, &tie))))
                }
                None => Task::none(),
            },
        }
    }

    fn show(&mut self, route: Route) -> Task<Message> {
        let (screen, task) = Screen::open(route, &mut self.context);
        std::mem::replace(&mut self.screen, screen).close(&mut self.context);
        task.map(Message::Screen)
    }

    fn service(&mut self, event: ServiceEvent) -> Task<Message> {
        match event {
            ServiceEvent::Session(session::Event::Woken(Timer::Gesture)) => {
                let now = self.context.now();
                let intent = self.context.session.gesture_due(now);
                self.meant(intent, None)
            }
            // The start screen tells of it, and is ready without one.
            ServiceEvent::Session(session::Event::NoShelf(error)) => {
                let message = ScreenMessage::no_shelf(error);
                let next = self.screen.update(message, &mut self.context);
                self.follow(next)
            }
            ServiceEvent::Session(event) => {
                self.screen.hear(&event, &mut self.context);
                let now = self.context.now();
                let here = self.screen.say_again(&self.context);
                self.context.session.hear(event, &here, now);
                Task::none()
            }
            ServiceEvent::Pedal(raw) => {
                let press = (raw.transition == Transition::Down).then(Press::default);
                self.pressed(&raw, press)
            }
        }
    }

    fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        if keys::is_ctrl(event, "q") {
            return self.close();
        }
        match keys::raw(event) {
            Some(raw) => self.pressed(&raw, keys::press(event)),
            None => Task::none(),
        }
    }

    /// Takes in what an input did. `press` is the same for screens with a form.
    fn pressed(&mut self, raw: &InputEvent, press: Option<Press>) -> Task<Message> {
        if let Some(next) = self.screen.input(raw, &mut self.context) {
            return self.follow(next);
        }
        if raw.transition == Transition::Down && !keys::is_modifier(raw) {
            self.context.session.seen();
            // Who goes on does not leave.
            if self.leaving == Leaving::Asked {
                self.leaving = Leaving::Not;
            }
        }
        let now = self.context.now();
        let intent = self.context.session.take(raw, now);
        self.meant(intent, press)
    }

    /// Does what a press means on the screen that is up.
    fn meant(&mut self, intent: Option<Intent>, press: Option<Press>) -> Task<Message> {
        if intent.is_none() && press.is_none() {
            return Task::none();
        }
        if let Some(is_faster) = intent.and_then(Intent::speed)
            && !self.screen.takes_text()
        {
            self.context.session.change_speed(is_faster);
            return Task::none();
        }
        let press = press.unwrap_or_default();
        let next = self.screen.press(&press, intent, &mut self.context);
        self.follow(next)
    }

    /// A tie comes into hand, or is refused.
    fn in_hand(&mut self, found: Result<ShelfReading<InHand>, ShelfError>) -> Task<Message> {
        let now = self.context.now();
        let is_there = found.is_ok();
        self.context.session.open(found, now);
        if is_there {
            self.show(Route::Tying(()))
        } else {
            Task::none()
        }
    }

    /// What the form of the log begins with is known. The tyer may have gone elsewhere meanwhile.
    fn show_log(&mut self, entry: Result<ShelfReading<Entry>, ShelfError>) -> Task<Message> {
        match entry {
            Err(error) => {
                let sentence = self.context.session.refuse(&error);
                self.context.say(sentence.spoken());
                Task::none()
            }
            Ok(entry) => {
                let entry = entry.hand_on(&mut self.context.session);
                if matches!(self.screen, Screen::Tying(_) | Screen::Shelf(_)) {
                    self.show(Route::Log(Box::new(entry)))
                } else {
                    Task::none()
                }
            }
        }
    }

    fn resized(&mut self, size: Size) -> bool {
        let screen = self.context.session.settings().screen;
        self.context.window.resized(size, screen)
    }

    /// What the window shows: the screen that is up, with an edge round it while it flashes.
    pub fn view(&self) -> Element<'_, Message> {
        let page = self.screen.view(&self.context).map(Message::Screen);
        widgets::edged(page, self.context.session.is_flashing())
    }

    /// The colours that the tyer prefers.
    pub fn theme(&self) -> Theme {
        theme::of(self.settings().colours)
    }

    /// How much larger than 1 everything is drawn, for the tyer's distance.
    pub fn scale_factor(&self) -> f32 {
        self.context.window.take_scale(self.settings().screen)
    }

    /// The tyer wants to leave: at once when everything is on disk, else when it is, and without it
    /// only when the tyer says so once more.
    fn close(&mut self) -> Task<Message> {
        match self.leaving {
            Leaving::Not => {}
            Leaving::Waiting => return Task::none(),
            Leaving::Asked => {
                let unsaved = &self.context.services.platform.left_unsaved;
                unsaved.store(true, Ordering::Relaxed);
                if let Some(keeper) = &self.context.services.keeper {
                    keeper.abandon();
                }
                return iced::exit();
            }
        }
        self.context.session.put_away();
        self.context.carry_out();
        self.context.services.voice.hush();
        match self.context.services.keeper.clone() {
            Some(keeper) if !keeper.flush(Duration::ZERO) => {
                self.leaving = Leaving::Waiting;
                off_thread(move || Message::Flushed(keeper.flush(LAST_SAVE)))
            }
            _ => iced::exit(),
        }
    }

    /// The disk had its time for the last save.
    fn flushed(&mut self, is_saved: bool) -> Task<Message> {
        if is_saved {
            return iced::exit();
        }
        self.leaving = Leaving::Asked;
        self.context.session.ask_before_leaving();
        self.show(Route::Start(()))
    }
}
