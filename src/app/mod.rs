//! The app: a window that shows each step in very large type while the voice says it.
//!
//! It drives a [`Session`](crate::session::Session): presses go in, effects come out. What is seen
//! is a screen, each in a file or folder of its own under `screens`; the [`App`] shows one and goes
//! from one to the next.

mod application;
mod jobs;
mod key_guide;
mod keys;
mod message;
mod monitors;
mod off_thread;
mod picture_view;
mod screens;
mod services;
mod text_layout;
mod theme;
mod widgets;
mod window_metrics;
mod window_place;

use std::cell::RefCell;
use std::panic;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

use iced::futures::channel::mpsc;
use iced::{Settings, Size, Task, window};

pub use application::App;
pub use message::Message;
pub use picture_view::PictureView;
pub use screens::start::StartField;
pub use services::{
    DialogError, FileDialogs, FileKind, NoDialogs, OpenDialog, PlatformServices, Portal,
    SaveDialog, ServiceEvent, Services,
};
pub use theme::{of as theme_of, theme};

use crate::guide::Plan;
use crate::session::Wishes;
use crate::words::Words;
use window_place::WindowPlace;

/// Why the app ended other than by being closed.
#[derive(Debug)]
pub enum Failure {
    /// The session has no display.
    NoDisplay,
    /// The window could not be opened: the display does not answer, or refuses.
    NoWindow,
    /// The tyer has left what could not be saved.
    LeftUnsaved,
    /// A fault in the app itself ended it; what is known of it stands in the log file.
    Fault,
}

/// Opens the window and runs until it is closed. `looking_on` is let go of once nothing on the way to the
/// window waits for the disk any more.
///
/// # Errors
/// A [`Failure`] when there is no display, or the window ends by a fault.
pub fn run(
    words: Words,
    wishes: Wishes,
    plan: Option<Plan>,
    looking_on: impl Sized + 'static,
) -> Result<(), Failure> {
    if !has_display() {
        return Err(Failure::NoDisplay);
    }
    let is_open = Arc::new(AtomicBool::new(false));
    let seen_open = Arc::clone(&is_open);
    let left_unsaved = Arc::new(AtomicBool::new(false));
    let has_left = Arc::clone(&left_unsaved);
    // The window library panics when a display that is named does not answer. The tyer gets a
    // sentence instead.
    let ran = panic::catch_unwind(panic::AssertUnwindSafe(|| {
        open((words, plan, looking_on), wishes, is_open, left_unsaved)
    }));
    match ran {
        Ok(Ok(())) if has_left.load(Ordering::Relaxed) => Err(Failure::LeftUnsaved),
        Ok(Ok(())) => Ok(()),
        Err(_) if seen_open.load(Ordering::Relaxed) => Err(Failure::Fault),
        Ok(Err(error)) => {
            ::log::error!("no window: {error}");
            Err(Failure::NoWindow)
        }
        Err(_) => Err(Failure::NoWindow),
    }
}

/// The size the window opens with the first time, in logical pixels.
const WINDOW: Size = Size::new(1100.0, 760.0);

fn open(
    launch: (Words, Option<Plan>, impl Sized + 'static),
    wishes: Wishes,
    is_open: Arc<AtomicBool>,
    left_unsaved: Arc<AtomicBool>,
) -> iced::Result {
    // The closure that boots the app may be called but once; what it uses up is handed over in
    // a cell.
    let launch = RefCell::new(Some(launch));
    let boot = move || {
        is_open.store(true, Ordering::Relaxed);
        let (words, plan, looking_on) = match launch.take() {
            Some((words, plan, looking_on)) => (words, plan, Some(looking_on)),
            None => (Words::english(), None, None),
        };
        let (tell, events) = mpsc::unbounded();
        let (mut services, settings) = Services::start(move |event| {
            // When nobody listens any more the window is gone, and the event with it.
            let _ = tell.unbounded_send(event);
        });
        services.platform.left_unsaved = Arc::clone(&left_unsaved);
        let (app, task) = App::new(words, services, settings, wishes, plan, events);
        let (_, opened) = window::open(window());
        drop(looking_on);
        (app, Task::batch([opened.discard(), task]))
    };
    iced::daemon(boot, App::update, App::view_of)
        .title(|app: &App, _| app.title())
        .subscription(App::subscription)
        .theme(|app: &App, _| app.theme())
        .scale_factor(App::scale_factor_of)
        .settings(settings())
        .run()
}

/// How the window opens: as it was closed the last time.
fn window() -> window::Settings {
    // Only a corner can be out of view.
    let last = WindowPlace::last().map(|last| match last.corner {
        Some(_) => last.brought_into_view(&monitors::monitors()),
        None => last,
    });
    window::Settings {
        size: last.map_or(WINDOW, |last| last.size),
        position: last
            .and_then(|last| last.corner)
            .map_or_else(window::Position::default, window::Position::Specific),
        min_size: Some(window_place::LEAST),
        ..window_settings()
    }
}

/// What all windows have in common.
fn window_settings() -> window::Settings {
    window::Settings {
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

fn has_display() -> bool {
    ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"]
        .iter()
        .any(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty()))
        || cfg!(not(target_os = "linux"))
}
