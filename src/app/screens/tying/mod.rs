//! The tying screen: the one line that matters, its crossings, and where the tyer is.

mod view;

use iced::widget::space;
use iced::{Element, Task};

use super::context::Context;
use super::route::Next;
use super::screen_page::ScreenPage;
use crate::app::picture_view::{PictureView, Prominence};
use crate::pedal::{Intent, Press};
use crate::session::{Keys, Walk};
use crate::shelf::TieId;
use crate::words::{Detail, Spoken};
use view::Around;

/// How the picture of the tie in hand is shown; the tie itself is the session's.
pub struct State {
    tie: Option<TieId>,
    picture: PictureView,
}

/// Nothing happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    /// The session has said the step. The picture of a tie that is come back to is shown as it
    /// was.
    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let tie = context.session.tie().map(|tie| tie.tie().id().clone());
        let before = context.fetch::<Self>().filter(|before| before.tie == tie);
        let state = before.map_or_else(
            || Self {
                tie,
                picture: PictureView::default(),
            },
            |before| *before,
        );
        (state, Task::none())
    }

    fn update(&mut self, message: Message, _: &mut Context) -> Next<Message> {
        match message {}
    }

    /// What asks something of the picture is done here, all else by the session.
    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        let is_looking = match intent {
            Some(Intent::Leave) if self.is_whole(context) => {
                self.picture.leave_full();
                true
            }
            Some(_) => false,
            None => !press.is_repeat && self.picture.press(&press.key),
        };
        if !is_looking {
            let now = context.now();
            context.session.press(intent, press, now);
        }
        Next::default()
    }

    fn title(&self, context: &Context) -> Option<String> {
        let walk = context.session.walk()?;
        Some(context.words().tie_line(walk.script().plan()))
    }

    fn say_again(&self, context: &Context) -> Spoken {
        let walk = context.session.walk();
        walk.map(|walk| walk.say().clone()).unwrap_or_default()
    }

    fn redraw(&mut self, context: &Context) {
        self.picture.set_dots(context.dots());
        let depth = context.session.walk().map(Walk::depth);
        self.picture.set_prominence(match depth {
            Some(Detail::Brief) => Prominence::Hidden,
            Some(Detail::Teach) => Prominence::Taught,
            Some(Detail::Plain) | None => Prominence::ByRoom,
        });
        self.picture
            .show(context.session.walk().and_then(Walk::subject));
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let (Some(page), Some(walk)) = (context.session.page(), context.session.walk()) else {
            return space().into();
        };
        let (shown, words) = (walk.shown(), context.words());
        if self.is_whole(context) {
            let keys = words.plainly("tying-keys-whole", &[]);
            return view::whole(shown, &self.picture, page, keys);
        }
        let keys = match page.keys {
            Keys::Done => words.plainly("tying-keys-log", &[]),
            Keys::Steps => ["tying-keys", "tying-keys-settings"]
                .map(|id| words.plainly(id, &[]))
                .join(" · "),
            Keys::Wrong => words.plainly("tying-keys-wrong", &[]),
        };
        let around = Around {
            notices: page.notices,
            tie: page.tie,
            keys,
            picture_keys: words.plainly("tying-keys-picture", &[]),
            caution: page.shown.caution,
            answer: page.answer,
            phase_progress: page.phase_progress,
        };
        view::fitted(shown, &self.picture, around)
    }

    fn close(self, context: &mut Context) {
        context.put_by(self);
    }
}

impl State {
    /// Whether the picture has the whole screen: not while the words have a question.
    fn is_whole(&self, context: &Context) -> bool {
        let is_asking = context.session.walk().is_some_and(Walk::is_asking);
        self.picture.is_full() && !is_asking
    }
}
