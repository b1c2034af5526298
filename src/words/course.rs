//! Words of the course for beginners and of the glossary.

use fluent::{FluentArgs, fluent_args};

use super::Words;
use crate::guide::{COURSE, Lesson, LessonState};

/// The words of the trade that the glossary explains, in an order to be read in.
const GLOSSARY: [&str; 21] = [
    "lead",
    "bight",
    "pass",
    "leg",
    "round",
    "strand",
    "standing-end",
    "working-end",
    "crossing",
    "over-under",
    "tuck",
    "weave",
    "follow",
    "snug",
    "fair",
    "tube",
    "ring",
    "row",
    "pin",
    "rim",
    "stagger",
];

impl Words {
    /// A lesson in the list.
    pub fn lesson_line(&self, lesson: Lesson, state: LessonState) -> String {
        self.text("course-line", &lesson_args(lesson, state))
    }

    /// A lesson as it is spoken when it is chosen.
    pub fn say_lesson(&self, lesson: Lesson, state: LessonState) -> String {
        self.text("course-line-say", &lesson_args(lesson, state))
    }

    /// The idea that is new in a lesson.
    pub fn lesson_idea(&self, number: u16) -> String {
        self.text("course-idea", &fluent_args! { "lesson" => number })
    }

    /// The glossary: each word and its meaning.
    pub fn glossary(&self) -> Vec<(String, String)> {
        let meaning = |word: &&str| {
            let [id, say] = [format!("glossary-{word}"), format!("glossary-{word}-say")];
            [id, say]
                .map(|id| self.text(&id, &FluentArgs::new()))
                .into()
        };
        GLOSSARY.iter().map(meaning).collect()
    }
}

fn lesson_args(lesson: Lesson, state: LessonState) -> FluentArgs<'static> {
    let state = match state {
        LessonState::New => "new",
        LessonState::Begun => "begun",
        LessonState::Done => "done",
    };
    fluent_args! {
        "lesson" => lesson.number, "number" => lesson.number, "lessons" => COURSE.len(),
        "state" => state,
    }
}
