//! First ties: the screen of the course for beginners.

use std::time::Duration;

use iced::widget::{Column, button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, FillPortion, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::{theme, widgets};
use crate::bench::WeaveChoice;
use crate::guide::{COURSE, LessonState};
use crate::knot::KnotError;
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::session::{lesson_tie, lessons};
use crate::shelf::{ShelfError, ShelfReading, Tie};
use crate::words::{Remark, Spoken, Words};

/// The list of lessons.
const LIST: &str = "lessons";

/// Below this height the picture stands beside what is told and not above it.
const LOW: f32 = 420.0;
/// The most of the height that what is told takes; more of it is scrolled.
const MOST_TOLD: f32 = 0.34;

/// How long each picture of a lesson stands.
const STANDS: Duration = Duration::from_millis(600);

/// The part of a height that whole rows of running text take: none is cut through where it is scrolled.
fn whole_rows(height: f32) -> f32 {
    let row = 1.3 * theme::BODY;
    // A little more than that, so that what has room is not scrolled for a rounding.
    (height / row).floor() * row + 0.5
}

/// Which lesson is chosen, and how far the tyer is with each.
#[derive(Default)]
pub struct State {
    chosen: usize,
    /// Whether the weave begins with over, as it is named, even where its twin takes fewer tucks.
    begins_over: bool,
    states: [LessonState; COURSE.len()],
    picture: PictureView,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// The shelf was asked how far the tyer is.
    Asked(Result<ShelfReading<[LessonState; COURSE.len()]>, ShelfError>),
    /// The lesson at this place of the list was clicked: another is read first, and the one that is
    /// chosen is begun.
    Clicked(usize),
    /// The weave is to begin the other way.
    Exchange,
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    /// The screen says itself once it is known how far the tyer is.
    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let task = match context.services.shelf.clone() {
            Some(shelf) => off_thread(move || Message::Asked(lessons(&shelf))),
            None => Task::done(Message::Asked(Ok(ShelfReading::whole(Default::default())))),
        };
        (Self::default(), task)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        match message {
            Message::Asked(states) => {
                let troubles;
                (self.states, troubles) = match states {
                    Ok(states) => context.session.noted(states),
                    Err(error) => {
                        context.session.refuse(&error);
                        Default::default()
                    }
                };
                // The first lesson that is not done is the one to go on with.
                let not_done = |state: &LessonState| *state != LessonState::Done;
                self.chosen = self.states.iter().position(not_done).unwrap_or(0);
                self.illustrate(context);
                let opening = context.remark(Remark::CourseSay);
                let opening = troubles.then(&opening);
                let opening = opening.then(context.words().choice_caution().spoken());
                context.say(&opening.then(&self.say_chosen(context)));
                Next::default()
            }
            Message::Clicked(index) if index == self.chosen => self.begin(context),
            Message::Clicked(index) => self.choose(index.min(COURSE.len() - 1), context),
            Message::Exchange => {
                self.begins_over = !self.begins_over;
                self.illustrate(context);
                context.say(&self.say_weave(context.words()));
                Next::default()
            }
        }
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if press.is_repeat {
            return Next::default();
        }
        match (press.key.as_str(), intent) {
            ("ArrowDown" | "Tab", _) => self.choose((self.chosen + 1) % COURSE.len(), context),
            ("ArrowUp" | "Shift+Tab", _) | (_, Some(Intent::Back)) => {
                self.choose((self.chosen + COURSE.len() - 1) % COURSE.len(), context)
            }
            (_, Some(Intent::Next)) => self.begin(context),
            (_, Some(Intent::Leave)) => Go::start().into(),
            (_, Some(Intent::Again)) => self.choose(self.chosen, context),
            (key, _) if key.eq_ignore_ascii_case("w") => self.update(Message::Exchange, context),
            (key, _) => match key.parse::<usize>() {
                Ok(digit) if (1..=COURSE.len()).contains(&digit) => self.choose(digit - 1, context),
                _ => Next::default(),
            },
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        context
            .remark(Remark::CourseSay)
            .then(&self.say_chosen(context))
    }

    fn redraw(&mut self, context: &Context) {
        self.picture.set_dots(context.dots());
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let heading = text(words.plainly("course-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        // What the knot looks like has the room that is left.
        let lessons = responsive(move |room| {
            let picture = container(self.picture.view());
            let told = || container(scrollable(self.told(words)).spacing(8)).id("lesson-told");
            let list = container(self.list(words));
            if room.height > room.width {
                let told = told().max_height(whole_rows(room.height / 4.0));
                return column![list.max_height(room.height / 3.0), picture.height(Fill)]
                    .push(told)
                    .push(self.weave(words))
                    .spacing(14)
                    .into();
            }
            // Where it is low the picture has the whole height beside the words.
            if room.height < LOW {
                let told =
                    responsive(move |room| told().max_height(whole_rows(room.height)).into());
                let told = column![told].push(self.weave(words));
                return row![
                    list.width(FillPortion(6)),
                    container(told.spacing(8)).width(FillPortion(6)),
                    picture.width(FillPortion(5)),
                ]
                .spacing(20)
                .into();
            }
            let told = told().max_height(whole_rows(room.height * MOST_TOLD));
            let beside = column![picture.height(Fill), told].push(self.weave(words));
            row![
                list.width(FillPortion(2)),
                container(beside.spacing(14)).width(FillPortion(3)),
            ]
            .spacing(30)
            .into()
        });
        let caution = widgets::quiet(words.choice_caution().to_string(), theme::SMALL);
        let head = row![heading, container(caution).width(Fill)];
        widgets::page(14)
            .push(head.spacing(24).align_y(Center))
            .push(lessons)
            .into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        vec![
            KeyHint::next("key-begin"),
            KeyHint::back("key-lesson-above"),
            KeyHint::again(),
            KeyHint::here("ArrowDown", "key-lesson-below"),
            KeyHint::here("w", "key-exchange-weave"),
            KeyHint::leave("key-leave"),
        ]
    }
}

impl State {
    /// The lessons, each with how far the tyer is with it.
    fn list<'a>(&self, words: &Words) -> Element<'a, Message> {
        let lessons = COURSE.iter().zip(self.states).enumerate();
        let lessons = lessons.map(|(index, (lesson, state))| {
            button(text(words.lesson_line(*lesson, state)).size(theme::BODY))
                .width(Fill)
                .padding(14)
                .style(theme::pressable(index == self.chosen))
                .on_press(Message::Clicked(index))
                .into()
        });
        scrollable(column(lessons).spacing(12))
            .id(LIST)
            .spacing(8)
            .into()
    }

    /// What is new in the lesson that is chosen.
    fn told<'a>(&self, words: &Words) -> Column<'a, Message> {
        let idea = words.lesson_idea(COURSE[self.chosen].number).to_string();
        column![text(idea).size(theme::BODY)].width(Fill)
    }

    /// How its weave begins, with the key that has it begin the other way: always in sight.
    fn weave<'a>(&self, words: &Words) -> Option<Element<'a, Message>> {
        let tie = self.tie().ok()?;
        let weave = text(words.lesson_weave(&tie.plan)).size(theme::BODY);
        let weave = button(weave)
            .padding([9, 14])
            .style(theme::pressable(false))
            .on_press(Message::Exchange);
        Some(container(weave).id("lesson-weave").into())
    }

    fn choose(&mut self, index: usize, context: &Context) -> Next<Message> {
        self.chosen = index;
        self.illustrate(context);
        context.say(&self.say_chosen(context));
        Next::run(widgets::bring_into_view(LIST, index, COURSE.len()))
    }

    /// Shows the knot of the lesson.
    fn illustrate(&mut self, context: &Context) {
        // A lesson whose knot can't be tied says so when it is begun.
        let film = self.tie().map(|tie| {
            let words = context.words().captions(&tie.plan);
            let film = Subject::of_lesson(&tie.plan).into_iter();
            film.map(|subject| subject.captioned(&words)).collect()
        });
        let film = context.moving(film.unwrap_or_default());
        self.picture.play(film, STANDS);
    }

    fn say_chosen(&self, context: &Context) -> Spoken {
        let (lesson, words) = (COURSE[self.chosen], context.words());
        let line = words.say_lesson(lesson, self.states[self.chosen]);
        line.then(words.lesson_idea(lesson.number).spoken())
    }

    /// The tie of the lesson that is chosen.
    fn tie(&self) -> Result<Tie, KnotError> {
        let weave = if self.begins_over {
            WeaveChoice::Run(1)
        } else {
            WeaveChoice::FewestTucks
        };
        lesson_tie(COURSE[self.chosen], weave)
    }

    fn say_weave(&self, words: &Words) -> Spoken {
        match self.tie() {
            Ok(tie) => words.say_lesson_weave(&tie.plan),
            Err(error) => words.knot_error(&error).into(),
        }
    }

    fn begin(&self, context: &Context) -> Next<Message> {
        match self.tie() {
            Ok(tie) => Go::Begin(Box::new(tie)).into(),
            Err(error) => {
                context.say(context.words().knot_error(&error).spoken());
                Next::default()
            }
        }
    }
}
