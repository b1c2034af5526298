//! The app: a window that shows each step in very large type while the voice says it.
//!
//! One file a screen. A screen has a `State`, takes messages and presses, and gives back an
//! action; only [`state::App`] acts on it.

mod alarm;
mod awake;
mod board;
mod comfort;
mod comforts;
mod course;
mod desk;
mod fit;
mod glossary;
mod house;
mod keys;
mod leaf;
mod learn;
mod log;
mod measured;
mod notices;
mod pace;
mod picture;
mod plan;
mod settings;
mod shelf;
mod shelf_jobs;
mod start;
mod state;
mod strips;
mod theme;
mod tying;
mod type_size;
mod watch;

use std::cell::RefCell;
use std::panic;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use iced::futures::channel::mpsc;
use iced::{Settings, Size, window};

pub use alarm::Hour;
pub use comforts::{Chime, Comforts, Outside};
pub use desk::{Desk, Speak};
pub use log::Field as LogField;
pub use picture::Easel;
pub use plan::Field as PlanField;
pub use settings::Field as Setting;
pub use start::Field;
pub use state::{App, FromOutside, Keeping, Message};
pub use theme::{of as theme_of, theme};

use crate::diary;
use crate::guide::Plan;
use crate::shelf::{Keeper, RackFile, Shelf};
use crate::voice::{Loss, News, Speaker, SystemVoice};
use crate::words::Words;

/// Why the app ended other than by being closed.
#[derive(Debug)]
pub enum Failure {
    /// The session has no display.
    NoDisplay,
    /// The window could not be opened: the display does not answer, or refuses.
    NoWindow,
    /// A fault in the app itself ended it; with what is known of it.
    Fault(String),
}

/// Opens the window and runs until it is closed.
///
/// # Errors
/// A [`Failure`] when there is no display, or the window ends by a fault.
pub fn run(words: Words, plan: Option<Plan>) -> Result<(), Failure> {
    if !has_display() {
        return Err(Failure::NoDisplay);
    }
    let is_open = Arc::new(AtomicBool::new(false));
    let seen_open = Arc::clone(&is_open);
    // The window library panics when a display that is named does not answer. The tyer gets a
    // sentence instead.
    let ran = panic::catch_unwind(panic::AssertUnwindSafe(|| open(words, plan, is_open)));
    match ran {
        Ok(Ok(())) => Ok(()),
        Err(cause) if seen_open.load(Ordering::Relaxed) => {
            Err(Failure::Fault(diary::reason(cause.as_ref())))
        }
        Ok(Err(error)) => {
            ::log::error!("no window: {error}");
            Err(Failure::NoWindow)
        }
        Err(_) => Err(Failure::NoWindow),
    }
}

/// The size the window opens with, in logical pixels.
const WINDOW: Size = Size::new(1100.0, 760.0);

fn open(words: Words, plan: Option<Plan>, is_open: Arc<AtomicBool>) -> iced::Result {
    // The closure that boots the app may be called but once; what it uses up is handed over in
    // a cell.
    let launch = RefCell::new(Some((words, plan)));
    let boot = move || {
        is_open.store(true, Ordering::Relaxed);
        let (words, plan) = launch.take().unwrap_or_else(|| (Words::english(), None));
        let (tell, outside) = mpsc::unbounded();
        let desk = furnish(&tell);
        App::new(words, desk, plan, outside)
    };
    iced::application(boot, App::update, App::view)
        .title(App::title)
        .subscription(App::subscription)
        .theme(App::theme)
        .scale_factor(App::scale_factor)
        .settings(settings())
        .window(window())
        .run()
}

/// How the window opens.
fn window() -> window::Settings {
    window::Settings {
        size: WINDOW,
        // Below this the line that matters is not large any more.
        min_size: Some(Size::new(800.0, 480.0)),
        // The desktop finds the icon and the entry of its menu by this name.
        #[cfg(target_os = "linux")]
        platform_specific: window::settings::PlatformSpecific {
            application_id: "marlinspeak".to_owned(),
            ..window::settings::PlatformSpecific::default()
        },
        exit_on_close_request: false,
        ..window::Settings::default()
    }
}

/// The face and size of text, everywhere.
pub fn settings() -> Settings {
    Settings {
        default_font: theme::FACE,
        default_text_size: theme::BODY.into(),
        fonts: theme::FACES.map(Into::into).to_vec(),
        ..Settings::default()
    }
}

/// Starts the real services.
fn furnish(tell: &mpsc::UnboundedSender<FromOutside>) -> Desk {
    let told = tell.clone();
    let speaker = Speaker::start(SystemVoice::maker(), move |news| {
        // When nobody listens any more the window is gone, and the news with it.
        let _ = told.unbounded_send(FromOutside::Voice(news));
    });
    let voice: Box<dyn Speak> = match speaker {
        Ok(speaker) => Box::new(speaker),
        Err(error) => {
            let loss = News::Lost(Loss::NoService(error.to_string()));
            let _ = tell.unbounded_send(FromOutside::Voice(loss));
            Box::new(desk::Mute)
        }
    };
    let told = tell.clone();
    let mut desk = Desk {
        voice,
        rack: RackFile::default_place().ok(),
        shelf: None,
        keeper: None,
        comforts: Comforts::start(move |news| {
            let _ = told.unbounded_send(FromOutside::Comfort(news));
        }),
    };
    let opened = Shelf::default_dir()
        .and_then(Shelf::open)
        .and_then(|shelf| {
            let told = tell.clone();
            let keeper = Keeper::start(shelf.clone(), move |kept| {
                let _ = told.unbounded_send(FromOutside::Kept(kept));
            })?;
            Ok((shelf, keeper))
        });
    match opened {
        Ok((shelf, keeper)) => {
            desk.shelf = Some(shelf);
            desk.keeper = Some(Arc::new(keeper));
        }
        Err(error) => {
            ::log::error!("no shelf: {error}");
            let _ = tell.unbounded_send(FromOutside::NoShelf(error));
        }
    }
    desk
}

fn has_display() -> bool {
    ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"]
        .iter()
        .any(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty()))
        || cfg!(not(target_os = "linux"))
}
