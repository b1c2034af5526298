//! The tying screen: the one line that matters, its crossings, and where the tyer is.

mod job_strip;
mod over_card;
mod page_frame;
mod second_view;
mod view;

use std::time::Duration;

use iced::widget::{mouse_area, space};
use iced::{Element, Task};

use super::context::Context;
use super::route::{Go, Next, Route};
use super::screen_page::ScreenPage;
use crate::app::key_guide::{BarSlot, KeyGroup, KeyHint};
use crate::app::picture_view::{PictureView, Prominence};
use crate::app::widgets::key_bar::KeyFace;
use crate::pedal::{Intent, Press};
use crate::session::{Keys, Page, Walk};
use crate::shelf::TieId;
use crate::words::{Detail, Spoken, Words, bound};
use page_frame::{Around, Over};
pub use second_view::SecondView;

/// How the picture of the tie in hand is shown; the tie itself is the session's.
pub struct State {
    tie: Option<TieId>,
    picture: PictureView,
}

/// What happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {
    /// What stands over the step was clicked.
    OverClicked,
}

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

    /// What stands over the step goes: a pause ends, and the step is told.
    fn update(&mut self, Message::OverClicked: Message, context: &mut Context) -> Next<Message> {
        let intent = if context.session.is_paused() {
            Intent::Pause
        } else {
            Intent::Again
        };
        self.press(&Press::default(), Some(intent), context)
    }

    /// What asks something of the picture is done here, all else by the session.
    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if intent.is_none()
            && press.key.eq_ignore_ascii_case("o")
            && !press.is_repeat
            && let Some(tie) = context.session.tie()
        {
            let (tie, place) = (tie.tie(), tie.walk().place());
            let (plan, name) = (tie.plan.clone(), tie.name.clone());
            return Go::paper(plan, Some(place), name, Route::Start(())).into();
        }
        // What stands over the step goes before the tie is left.
        let intent = match intent {
            Some(Intent::Leave) if is_covered(context) => Some(Intent::Again),
            intent => intent,
        };
        let is_looking = match intent {
            Some(Intent::Leave) if self.is_whole(context) => {
                self.picture.leave_full();
                true
            }
            // The leg goes in once more while it is told once more.
            Some(Intent::Again) => {
                self.picture.replay();
                false
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
        let walk = context.session.walk();
        let depth = walk.map(Walk::depth);
        let prominence = match depth {
            // Where something is that is spoken of is to be seen.
            _ if walk.is_some_and(Walk::points_at_a_place) => Prominence::Taught,
            Some(Detail::Brief) => Prominence::Hidden,
            Some(Detail::Teach) => Prominence::Taught,
            Some(Detail::Plain) | None => Prominence::ByRoom,
        };
        show_step(&mut self.picture, context, context.dots(), prominence);
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let (Some(page), Some(walk)) = (context.session.page(), context.session.walk()) else {
            return space().into();
        };
        let shown = walk.shown();
        if self.is_whole(context) {
            return view::whole(shown, &self.picture, page);
        }
        let is_paused = context.session.is_paused();
        let mut around = Around {
            ways: self.ways(walk.keys(), context),
            ..around(page, context.words())
        };
        if let Some(over) = around.over.as_mut().filter(|_| is_paused) {
            let bindings = &context.session.settings().bindings;
            let goes_on = |hint: &KeyHint| {
                hint.intent == Some(Intent::Pause) || hint.slot == Some(BarSlot::Next)
            };
            let keys = self.keys(context);
            let caps = keys.iter().filter(|hint| goes_on(hint));
            over.caps = caps
                .map(|hint| KeyFace::new(*hint, context.words(), bindings).cap)
                .filter(|cap| !cap.is_empty())
                .collect();
        }
        let is_covered = around.over.is_some();
        let stage = mouse_area(view::fitted(shown, &self.picture, around));
        if is_covered {
            stage.on_press(Message::OverClicked).into()
        } else {
            stage.into()
        }
    }

    fn shows_notices(&self) -> bool {
        true
    }

    fn keys(&self, context: &Context) -> Vec<KeyHint> {
        let now = context.session.walk().map_or(Keys::Steps, Walk::keys);
        let is_paused = context.session.is_paused();
        let (next, back, wrong) = match now {
            _ if is_paused => ("paused-way", "key-back", "key-wrong"),
            Keys::Steps | Keys::Done => ("key-next", "key-back", "key-wrong"),
            Keys::PieceDone => ("key-next-piece", "key-back", "key-wrong"),
            Keys::Standing => ("key-yes", "key-no", "key-wrong"),
            Keys::Wrong => ("key-take-back", "key-find-place", "key-leave-as-is"),
            Keys::NothingToTakeBack => ("key-leave-as-is", "key-find-place", "key-leave-as-is"),
            Keys::TakingBack => ("key-one-more-back", "key-lay-again", "key-leave-as-is"),
            Keys::Searching => ("key-yes", "key-no", "key-leave-as-is"),
            Keys::Joining => ("key-next", "key-back", "key-leave-as-is"),
            Keys::Counting => ("key-one-more", "key-that-is-it", "key-leave-as-is"),
            Keys::Typing => ("key-that-is-it", "key-digit-away", "key-leave-as-is"),
            Keys::FaultFound => ("key-take-back", "key-another-place", "key-leave-as-is"),
        };
        let next = if now == Keys::Done && !is_paused {
            // After the last step there is nothing to go on to but what was used.
            KeyHint::new(KeyGroup::Steps, "l", "key-write-log").at(BarSlot::Next)
        } else {
            KeyHint::next(next)
        };
        let wrong = KeyHint::new(KeyGroup::Steps, "w", wrong)
            .meaning(Intent::Wrong)
            .at(BarSlot::Wrong);
        let place = match now {
            Keys::Wrong => "key-elsewhere",
            _ => "key-where",
        };
        let place = KeyHint::new(KeyGroup::Steps, "h", place)
            .meaning(Intent::Where)
            .at(BarSlot::Where);
        let leave = match now {
            _ if self.is_whole(context) => "key-smaller",
            _ if is_covered(context) => "key-to-step",
            Keys::Steps | Keys::Standing | Keys::PieceDone | Keys::Done => "key-leave",
            Keys::Wrong
            | Keys::TakingBack
            | Keys::Searching
            | Keys::Joining
            | Keys::Counting
            | Keys::FaultFound
            | Keys::NothingToTakeBack
            | Keys::Typing => "key-to-step",
        };
        let own = [
            next,
            KeyHint::back(back),
            wrong,
            place,
            KeyHint::again(),
            KeyHint::leave(leave),
            KeyHint::here("c", "key-cord").meaning(Intent::Cord),
            KeyHint::here("j", "key-join").meaning(Intent::Join),
        ];
        let log = KeyHint::new(KeyGroup::Steps, "l", "key-write-log");
        let log = (now == Keys::PieceDone).then_some(log);
        let mut keys: Vec<_> = own.into_iter().chain(log).chain(MORE).collect();
        if self.is_whole(context) {
            // It has the whole screen already.
            keys.retain(|hint| hint.slot != Some(BarSlot::Picture));
        }
        keys
    }

    fn close(self, context: &mut Context) {
        context.put_by(self);
    }
}

/// Whether it stands over the step where the tyer is.
fn is_covered(context: &Context) -> bool {
    context.session.walk().is_some_and(Walk::is_whereabouts)
}

/// What stands around the step.
fn around(page: Page, words: &Words) -> Around {
    let paused = page.pause.is_some().then(|| Over {
        told: words.plainly("paused-shown", &[]),
        caps: Vec::new(),
        way: words.plainly("paused-way", &[]),
    });
    let whereabouts = page.answer.clone().filter(|_| page.is_whereabouts);
    let whereabouts = whereabouts.map(|answer| Over {
        told: bound(&answer),
        ..Over::default()
    });
    Around {
        notices: page.notices,
        tie: page.tie,
        caution: page.shown.caution,
        ways: Vec::new(),
        over: paused.or(whereabouts),
        answer: page.answer.filter(|_| !page.is_whereabouts),
        job: page.job,
        time_left: page.time_left,
    }
}

/// Has a picture show the step: the leg in hand goes in.
fn show_step(picture: &mut PictureView, context: &Context, dots: f32, prominence: Prominence) {
    picture.set_dots(dots);
    picture.set_prominence(prominence);
    let walk = context.session.walk();
    let subject = walk.and_then(|walk| {
        let words = context.words().captions(walk.script().plan());
        Some(walk.subject()?.captioned(&words))
    });
    let film = subject.map_or_else(Vec::new, |subject| subject.film(MOST_STOPS));
    let each = stop(context, film.len());
    picture.play(context.moving(film), each);
}

/// In so many moves the leg in hand goes in at most, and in so much time.
const MOST_STOPS: usize = 12;
const LONGEST: Duration = Duration::from_secs(3);
/// Words in which the voice tells a crossing: “over 1”.
const CROSSING: u32 = 2;

/// How long each picture of a film stands: as long as the voice takes to tell a crossing, or less on a
/// leg of many.
fn stop(context: &Context, pictures: usize) -> Duration {
    let speech = context.session.settings().speech_in(context.words());
    let crossing = CROSSING * Duration::from_secs(60) / u32::from(speech.words_per_minute.max(1));
    let stops = u32::try_from(pictures.saturating_sub(1)).unwrap_or(u32::MAX);
    crossing.min(LONGEST / stops.max(1))
}

/// What is rare.
const MORE: [KeyHint; 13] = [
    KeyHint::new(KeyGroup::Telling, "1", "key-briefly"),
    KeyHint::new(KeyGroup::Telling, "2", "key-plainly"),
    KeyHint::new(KeyGroup::Telling, "3", "key-taught"),
    KeyHint::new(KeyGroup::Telling, "[", "key-less-at-once"),
    KeyHint::new(KeyGroup::Telling, "]", "key-more-at-once"),
    KeyHint::new(KeyGroup::Voice, "-", "key-slower").meaning(Intent::Slower),
    KeyHint::new(KeyGroup::Voice, "+", "key-faster").meaning(Intent::Faster),
    KeyHint::new(KeyGroup::Voice, "p", "key-pause").meaning(Intent::Pause),
    KeyHint::new(KeyGroup::Picture, "v", "key-turn-picture"),
    KeyHint::new(KeyGroup::Picture, "d", "key-size-picture"),
    KeyHint::new(KeyGroup::Picture, "f", "key-whole-picture")
        .shortly("key-picture")
        .at(BarSlot::Picture),
    KeyHint::new(KeyGroup::Places, "o", "key-on-paper"),
    KeyHint::new(KeyGroup::Places, "t", "key-settings"),
];

impl State {
    /// The key of each note, where the notes are ways out: nothing for one that is none.
    fn ways(&self, keys: Keys, context: &Context) -> Vec<Option<String>> {
        let slots: &[Option<BarSlot>] = match keys {
            Keys::Wrong => &[
                Some(BarSlot::Next),
                Some(BarSlot::Back),
                Some(BarSlot::Where),
                Some(BarSlot::Wrong),
            ],
            Keys::NothingToTakeBack => &[None, Some(BarSlot::Back), Some(BarSlot::Wrong)],
            _ => return Vec::new(),
        };
        let hints = self.keys(context);
        let bindings = &context.session.settings().bindings;
        let cap = |slot: &Option<BarSlot>| {
            let hint = hints
                .iter()
                .find(|hint| hint.slot == *slot && slot.is_some())?;
            Some(KeyFace::new(*hint, context.words(), bindings).cap)
        };
        slots.iter().map(cap).collect()
    }

    /// Whether the picture has the whole screen: not while the words have a question.
    fn is_whole(&self, context: &Context) -> bool {
        let is_asking = context.session.walk().is_some_and(Walk::is_asking);
        self.picture.is_full() && !is_asking
    }
}
