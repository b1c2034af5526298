//! What every screen can do.

use std::path::PathBuf;

use iced::{Element, Task};

use super::context::Context;
use super::route::Next;
use crate::app::key_guide::KeyHint;
use crate::pedal::{InputEvent, Intent, Press};
use crate::session::Event;
use crate::words::Spoken;

/// A screen: its state, its messages, what presses mean on it, what it says, what it looks like.
pub trait ScreenPage: Sized {
    /// What happens on it besides presses.
    type Message: Send + 'static;
    /// What it takes to open it.
    type Opening;

    /// The screen as it appears. It says itself.
    fn open(opening: Self::Opening, context: &mut Context) -> (Self, Task<Self::Message>);

    /// Takes in what happened on it.
    fn update(&mut self, message: Self::Message, context: &mut Context) -> Next<Self::Message>;

    /// Does what a press asks for that no field took. `intent` is what the press means on every
    /// screen.
    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Self::Message>;

    /// What it looks like.
    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Self::Message>;

    /// The title of the window, where it is not the program's name alone.
    fn title(&self, _context: &Context) -> Option<String> {
        None
    }

    /// Whether keys are typed into a field of it: then signs such as plus are no commands.
    fn takes_text(&self) -> bool {
        false
    }

    /// Takes an input before it is looked at as a gesture; `None` where the screen leaves it be.
    fn input(&mut self, _raw: &InputEvent, _context: &mut Context) -> Option<Next<Self::Message>> {
        None
    }

    /// Takes a file that was dropped on the window.
    fn dropped(&mut self, _file: PathBuf, _context: &mut Context) -> Next<Self::Message> {
        Next::default()
    }

    /// Takes in what the session hears too.
    fn hear(&mut self, _event: &Event, _context: &mut Context) {}

    /// What was said last of it, as far as it can be said again.
    fn say_again(&self, _context: &Context) -> Spoken {
        Spoken::default()
    }

    /// Has its pictures show what has changed.
    fn redraw(&mut self, _context: &Context) {}

    /// Its keys, those of the bar among them.
    fn keys(&self, context: &Context) -> Vec<KeyHint>;

    /// Whether it shows the notices itself, in a place of its own.
    fn shows_notices(&self) -> bool {
        false
    }

    /// Whether the window may be closed: a screen on which something would be lost says so first.
    fn may_close(&mut self, _context: &mut Context) -> bool {
        true
    }

    /// Another screen takes its place: what must not be lost is put by.
    fn close(self, _context: &mut Context) {}
}
