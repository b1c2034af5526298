//! The application: which screen is up, and who hears of what happens. What happens to a tie is
//! the session's affair, and what happens on a screen the screen's.

mod hurry;
mod leaving;
mod presses;
mod second_window;
mod window_state;

use iced::futures::channel::mpsc::UnboundedReceiver;
use iced::widget::{column, container};
use iced::{Element, Fill, Point, Size, Subscription, Task, Theme, event, keyboard, window};

use crate::app::key_guide::Tapped;
use crate::app::keys::KeysDown;
use crate::app::message::Message;
use crate::app::off_thread::off_thread;
use crate::app::screens::{Context, Go, Next, Route, Screen, ScreenMessage};
use crate::app::services::{LAST_SAVE, ServiceEvent, Services};
use crate::app::theme;
use crate::app::widgets::{self, key_bar, key_sheet};
use crate::app::window_place::WindowPlace;
use crate::guide::Plan;
use crate::pedal::{Press, Transition};
use crate::session::{self, InHand, Session, Timer, Wishes, entry_for, new_tie};
use crate::settings::Settings;
use crate::shelf::{Entry, ShelfError, ShelfReading};
use crate::words::Words;
use hurry::Hurried;
use leaving::Leaving;
use second_window::SecondWindow;

/// The whole state of the app.
pub struct App {
    context: Context,
    screen: Screen,
    leaving: Leaving,
    hurried: Hurried,
    keys_down: KeysDown,
    /// All the keys stand over the screen.
    shows_keys: bool,
    is_full_screen: bool,
    /// As it was before it had the whole screen.
    place: Option<WindowPlace>,
    corner: Option<Point>,
    /// For another display.
    second: Option<SecondWindow>,
    /// Which window has the keys.
    focused: Option<window::Id>,
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
            hurried: Hurried::default(),
            keys_down: KeysDown::default(),
            shows_keys: false,
            is_full_screen: false,
            place: None,
            corner: None,
            second: None,
            focused: None,
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
            window::close_requests().map(Message::CloseWindow),
            window::close_events().map(Message::WindowClosed),
            event::listen_with(|event, status, id| {
                let message = Self::heard(event, status)?;
                Some(Message::At(id, Box::new(message)))
            }),
        ])
    }

    /// Takes in what happened, and has the pictures show it.
    pub fn update(&mut self, message: Message) -> Task<Message> {
        let task = self.take_in(message);
        let carried_out = self.carry_out();
        self.screen.redraw(&self.context);
        self.redraw_second();
        Task::batch([task, carried_out])
    }

    fn take_in(&mut self, message: Message) -> Task<Message> {
        match message {
            Message::Key(event) => self.key(&event),
            Message::Button(raw) => self.pressed(&raw, None),
            Message::Tapped(Tapped::Key(hint)) => self.tap(hint),
            Message::Tapped(Tapped::AllKeys) => {
                // Who points at it sees it.
                self.shows_keys = !self.shows_keys;
                Task::none()
            }
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
            Message::Moved(corner) => {
                self.corner = Some(self.context.window.before_scaling(corner));
                Task::none()
            }
            Message::Density(density) => {
                self.context.window.set_density(density);
                Task::none()
            }
            Message::At(id, message) => self.at_window(id, *message),
            Message::CloseWindow(id) if self.is_second(id) => self.turn_second_window(),
            Message::Close | Message::CloseWindow(_) => self.close(),
            Message::WindowClosed(id) => {
                self.second_window_closed(id);
                Task::none()
            }
            Message::Monitors(monitors) => self.open_second_window(&monitors),
            Message::SecondDensity(id, density) => {
                self.set_second_density(id, density);
                Task::none()
            }
            Message::KeysGone => self.keys_gone(),
            Message::Settled(is_slow) => self.settled(is_slow),
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
                let keeper = self.context.services.keeper.clone();
                off_thread(move || {
                    // The piece before is saved as it was left when the next one lies there.
                    if let Some(keeper) = keeper {
                        keeper.flush(LAST_SAVE);
                    }
                    Message::in_hand(Ok(InHand::new(shelf.as_ref(), *tie)))
                })
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
        self.shows_keys = false;
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
            ServiceEvent::Session(session::Event::NoShelf(error))
                if matches!(self.screen, Screen::Start(_)) =>
            {
                self.context.session.no_shelf(&error);
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

    /// What the window shows: the screen that is up, below it what must be known and the bar of its
    /// keys, with an edge round it while it flashes; and over it all its keys when they are asked for.
    pub fn view(&self) -> Element<'_, Message> {
        let session = &self.context.session;
        let (words, bindings) = (session.words(), session.pedals().bindings());
        let hints = self.screen.keys(&self.context);
        let no_voice = session.voice_lost();
        let sign = no_voice
            .is_some()
            .then(|| words.plainly("voice-lost-sign", &[]));
        // The place of each part stays, whether anything stands there or not: a field that is typed
        // into must not be taken for another one.
        let notices = if self.screen.shows_notices() {
            Vec::new()
        } else {
            session.notices()
        };
        let page = self.screen.view(&self.context).map(Message::Screen);
        let page = column![
            container(page).height(Fill),
            widgets::notices(notices),
            key_bar::key_bar(&hints, sign, words, bindings).map(Message::Tapped),
        ];
        let sheet = self.shows_keys.then(|| {
            key_sheet::key_sheet(&self.all_keys(), no_voice, words, bindings).map(Message::Tapped)
        });
        widgets::edged(page.into(), session.is_flashing(), sheet)
    }

    /// The colours that the tyer prefers.
    pub fn theme(&self) -> Theme {
        theme::of(self.settings().colours)
    }

    /// The same for a window: in the second one nothing is drawn larger, since it is as large as its
    /// display.
    pub fn scale_factor_of(&self, id: window::Id) -> f32 {
        if self.is_second(id) {
            return 1.0;
        }
        self.scale_factor()
    }

    /// How much larger than 1 everything is drawn, for the tyer's distance.
    pub fn scale_factor(&self) -> f32 {
        self.context.window.take_scale(self.settings().screen)
    }
}
