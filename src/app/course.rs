//! First ties: the screen of the course for beginners.

use iced::widget::{button, column, row, scrollable, text};
use iced::{Element, Fill, FillPortion};

use super::{house, theme};
use crate::guide::{COURSE, Lesson, LessonState};
use crate::pedal::{Intent, Press};
use crate::words::Words;

/// Which lesson is chosen, and how far the tyer is with each.
#[derive(Debug, Default)]
pub struct State {
    chosen: usize,
    states: [LessonState; COURSE.len()],
}

/// What happens on the screen besides presses.
#[derive(Clone, Copy, Debug)]
pub enum Message {
    /// The lesson at this place of the list is to be begun.
    Begin(usize),
}

/// What the parent has to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// Nothing.
    None,
    /// Say this.
    Say(String),
    /// Begin a lesson.
    Begin(Lesson),
    /// Back to the start screen.
    Leave,
}

impl State {
    /// The screen, with the first lesson chosen that is not done.
    pub fn new(states: [LessonState; COURSE.len()]) -> Self {
        let chosen = states.iter().position(|state| *state != LessonState::Done);
        Self {
            chosen: chosen.unwrap_or(0),
            states,
        }
    }

    /// What is said when the screen appears.
    pub fn say(&self, words: &Words) -> String {
        format!(
            "{} {}",
            words.plainly("course-say", &[]),
            self.say_chosen(words)
        )
    }

    /// Does what a message asks for.
    pub fn update(&mut self, message: Message) -> Action {
        let Message::Begin(index) = message;
        self.chosen = index.min(COURSE.len() - 1);
        COURSE
            .get(index)
            .map_or(Action::None, |lesson| Action::Begin(*lesson))
    }

    /// Does what a press asks for.
    pub fn press(&mut self, press: &Press, intent: Option<Intent>, words: &Words) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        match (press.key.as_str(), intent) {
            ("ArrowDown" | "Tab", _) => self.choose((self.chosen + 1) % COURSE.len(), words),
            ("ArrowUp" | "Shift+Tab", _) | (_, Some(Intent::Back)) => {
                self.choose((self.chosen + COURSE.len() - 1) % COURSE.len(), words)
            }
            (_, Some(Intent::Next)) => Action::Begin(COURSE[self.chosen]),
            (_, Some(Intent::Leave)) => Action::Leave,
            (_, Some(Intent::Again)) => Action::Say(self.say_chosen(words)),
            (key, _) => match key.parse::<usize>() {
                Ok(digit) if (1..=COURSE.len()).contains(&digit) => self.choose(digit - 1, words),
                _ => Action::None,
            },
        }
    }

    fn choose(&mut self, index: usize, words: &Words) -> Action {
        self.chosen = index;
        Action::Say(self.say_chosen(words))
    }

    fn say_chosen(&self, words: &Words) -> String {
        let lesson = COURSE[self.chosen];
        let line = words.say_lesson(lesson, self.states[self.chosen]);
        format!("{line} {}", words.lesson_idea(lesson.number))
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, Message> {
        let mut page = column![].spacing(14).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        let mut list = column![].spacing(12).width(FillPortion(1));
        for (index, (lesson, state)) in COURSE.iter().zip(self.states).enumerate() {
            let line = text(words.lesson_line(*lesson, state)).size(26);
            list = list.push(
                button(line)
                    .width(Fill)
                    .padding(14)
                    .style(theme::pressable(index == self.chosen))
                    .on_press(Message::Begin(index)),
            );
        }
        let idea = words.lesson_idea(COURSE[self.chosen].number);
        let idea = text(idea).size(28).width(FillPortion(1));
        page.push(
            text(words.plainly("course-heading", &[]))
                .size(theme::HEADING)
                .font(theme::BOLD),
        )
        .push(
            scrollable(row![list, idea].spacing(40))
                .spacing(8)
                .width(Fill)
                .height(Fill),
        )
        .push(house::quiet(words.plainly("course-keys", &[]), theme::BODY))
        .into()
    }
}
