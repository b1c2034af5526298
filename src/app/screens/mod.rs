//! The screens. Each has one file or folder, with its state, its messages, what presses mean on
//! it, what it says, and what it looks like.

mod context;
mod count;
mod course;
mod glossary;
mod key_binding;
mod knocks;
mod list;
pub mod log;
mod order;
pub mod paper;
pub mod plan;
mod route;
mod screen_page;
pub mod settings;
mod shelf;
pub mod start;
mod tying;

use std::path::PathBuf;

use iced::{Element, Task};

use crate::app::key_guide::KeyHint;
use crate::pedal::{InputEvent, Intent, Press};
use crate::session::Event;
use crate::shelf::ShelfError;
use crate::words::Spoken;
pub use context::Context;
use list::for_each_screen;
pub use order::Message as OrderMessage;
pub use route::{Go, Next, Route};
use screen_page::ScreenPage;
pub use shelf::Message as ShelfMessage;
pub use tying::SecondView;

macro_rules! screens {
    ($($name:ident($file:ident, $opening:ty),)*) => {
        /// The screen that is up.
        pub enum Screen {
            $(
                #[doc = concat!("The screen in `", stringify!($file), "`.")]
                $name(Box<$file::State>),
            )*
        }

        /// What happens on the screens besides presses.
        #[derive(Clone, Debug)]
        pub enum ScreenMessage {
            $(
                #[doc = concat!("On the screen in `", stringify!($file), "`.")]
                $name($file::Message),
            )*
        }

        impl Screen {
            /// The names of all screens.
            pub const NAMES: &[&str] = &[$(stringify!($name)),*];

            /// The name of this one.
            pub const fn name(&self) -> &'static str {
                match self {
                    $(Self::$name(_) => stringify!($name),)*
                }
            }

            /// Opens a screen: it says itself.
            pub fn open(route: Route, context: &mut Context) -> (Self, Task<ScreenMessage>) {
                match route {
                    $(Route::$name(opening) => {
                        let (state, task) = <$file::State as ScreenPage>::open(opening, context);
                        (Self::$name(Box::new(state)), task.map(ScreenMessage::$name))
                    })*
                }
            }

            /// Whether the window may be closed.
            pub fn may_close(&mut self, context: &mut Context) -> bool {
                match self {
                    $(Self::$name(state) => ScreenPage::may_close(&mut **state, context),)*
                }
            }

            /// Another screen takes its place.
            pub fn close(self, context: &mut Context) {
                match self {
                    $(Self::$name(state) => state.close(context),)*
                }
            }

            /// The title of the window; none where it is the program's name alone.
            pub fn title(&self, context: &Context) -> Option<String> {
                match self {
                    $(Self::$name(state) => ScreenPage::title(&**state, context),)*
                }
            }

            /// Takes in what happened on it. What comes from a screen that is no longer up is
            /// dropped: the tyer has gone elsewhere.
            pub fn update(
                &mut self,
                message: ScreenMessage,
                context: &mut Context,
            ) -> Next<ScreenMessage> {
                match (self, message) {
                    $((Self::$name(state), ScreenMessage::$name(message)) => {
                        ScreenPage::update(&mut **state, message, context).map(ScreenMessage::$name)
                    })*
                    _ => Next::default(),
                }
            }

            /// Does what a press asks for that no field took.
            pub fn press(
                &mut self,
                press: &Press,
                intent: Option<Intent>,
                context: &mut Context,
            ) -> Next<ScreenMessage> {
                match self {
                    $(Self::$name(state) => {
                        ScreenPage::press(&mut **state, press, intent, context).map(ScreenMessage::$name)
                    })*
                }
            }

            /// Takes an input before it is looked at as a gesture, on a screen that wants it so.
            pub fn input(
                &mut self,
                raw: &InputEvent,
                context: &mut Context,
            ) -> Option<Next<ScreenMessage>> {
                match self {
                    $(Self::$name(state) => {
                        let next = ScreenPage::input(&mut **state, raw, context)?;
                        Some(next.map(ScreenMessage::$name))
                    })*
                }
            }

            /// Takes a file that was dropped on the window.
            pub fn dropped(
                &mut self,
                file: PathBuf,
                context: &mut Context,
            ) -> Next<ScreenMessage> {
                match self {
                    $(Self::$name(state) => {
                        ScreenPage::dropped(&mut **state, file, context).map(ScreenMessage::$name)
                    })*
                }
            }

            /// Takes in what the session hears too.
            pub fn hear(&mut self, event: &Event, context: &mut Context) {
                match self {
                    $(Self::$name(state) => ScreenPage::hear(&mut **state, event, context),)*
                }
            }

            /// Whether keys are typed into a field of it.
            pub fn takes_text(&self) -> bool {
                match self {
                    $(Self::$name(state) => state.takes_text(),)*
                }
            }

            /// Its keys, those of the bar among them.
            pub fn keys(&self, context: &Context) -> Vec<KeyHint> {
                match self {
                    $(Self::$name(state) => ScreenPage::keys(&**state, context),)*
                }
            }

            /// Whether it shows the notices itself, in a place of its own.
            pub fn shows_notices(&self) -> bool {
                match self {
                    $(Self::$name(state) => ScreenPage::shows_notices(&**state),)*
                }
            }

            /// What was said last of it, as far as it can be said again.
            pub fn say_again(&self, context: &Context) -> Spoken {
                match self {
                    $(Self::$name(state) => ScreenPage::say_again(&**state, context),)*
                }
            }

            /// Has its pictures show what has changed.
            pub fn redraw(&mut self, context: &Context) {
                match self {
                    $(Self::$name(state) => ScreenPage::redraw(&mut **state, context),)*
                }
            }

            /// What it looks like.
            pub fn view<'a>(&'a self, context: &'a Context) -> Element<'a, ScreenMessage> {
                match self {
                    $(Self::$name(state) => {
                        ScreenPage::view(&**state, context).map(ScreenMessage::$name)
                    })*
                }
            }
        }
    };
}
for_each_screen!(screens);

impl ScreenMessage {
    /// There is no shelf to look through.
    pub const fn no_shelf(error: ShelfError) -> Self {
        Self::Start(start::Message::Looked(Err(error)))
    }
}
