//! Where a screen can lead.

use iced::Task;

use super::list::for_each_screen;
use crate::guide::{Place, Plan};
use crate::shelf::{Tie, TieId};

macro_rules! routes {
    ($($name:ident($file:ident, $opening:ty),)*) => {
        /// A screen, and what it takes to open it.
        #[derive(Debug)]
        pub enum Route {
            $(
                #[doc = concat!("The screen in `", stringify!($file), "`.")]
                $name($opening),
            )*
        }
    };
}
for_each_screen!(routes);

/// A tie of which something is to be made.
#[derive(Debug)]
pub struct TieOnPaper {
    /// The tie.
    pub plan: Plan,
    /// Where it stands; its end when nothing is said.
    pub place: Option<Place>,
    /// What its tyer calls it.
    pub name: String,
    /// The screen to go back to, unless a tie is in hand.
    pub back: Route,
}

/// What is to happen after a screen has done its part.
#[derive(Debug)]
pub enum Go {
    /// To another screen.
    To(Route),
    /// Back to the tie in hand, or else to this screen.
    Back(Route),
    /// To a new tie.
    Begin(Box<Tie>),
    /// To a tie on the shelf.
    TakeUp(TieId),
    /// To the form of the log for this tie.
    Log(Box<Tie>),
}

impl Go {
    /// To what can be made of a tie.
    pub fn paper(plan: Plan, place: Option<Place>, name: String, back: Route) -> Self {
        Self::To(Route::Paper(Box::new(TieOnPaper {
            plan,
            place,
            name,
            back,
        })))
    }

    /// To the start screen.
    pub const fn start() -> Self {
        Self::To(Route::Start(()))
    }

    /// To the settings.
    pub const fn settings() -> Self {
        Self::To(Route::Settings(None))
    }
}

/// What a screen wants done after a message or a press.
#[must_use]
pub struct Next<M> {
    /// Work for the toolkit.
    pub task: Task<M>,
    /// Where to go.
    pub go: Option<Go>,
}

impl<M> Default for Next<M> {
    fn default() -> Self {
        Self {
            task: Task::none(),
            go: None,
        }
    }
}

impl<M: 'static> Next<M> {
    /// This task, and the screen stays.
    pub fn run(task: Task<M>) -> Self {
        Self { task, go: None }
    }

    /// What comes next, with its messages wrapped into another type.
    pub fn map<N: Send + 'static>(self, wrap: impl FnMut(M) -> N + Send + 'static) -> Next<N>
    where
        M: Send,
    {
        Next {
            task: self.task.map(wrap),
            go: self.go,
        }
    }
}

impl<M> From<Go> for Next<M> {
    fn from(go: Go) -> Self {
        Self {
            task: Task::none(),
            go: Some(go),
        }
    }
}
