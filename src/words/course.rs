//! Words of the course for beginners and of the glossary.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Sentence, Spoken, Words};
use crate::guide::{COURSE, Lesson, LessonState, Plan};
use crate::knot::{Knot, Weave};

/// What the words of the trade mean, in an order to be read in.
const GLOSSARY: [SpokenMessage; 21] = [
    SpokenMessage::GlossaryLeadSay,
    SpokenMessage::GlossaryBightSay,
    SpokenMessage::GlossaryPassSay,
    SpokenMessage::GlossaryLegSay,
    SpokenMessage::GlossaryRoundSay,
    SpokenMessage::GlossaryStrandSay,
    SpokenMessage::GlossaryStandingEndSay,
    SpokenMessage::GlossaryWorkingEndSay,
    SpokenMessage::GlossaryCrossingSay,
    SpokenMessage::GlossaryOverUnderSay,
    SpokenMessage::GlossaryTuckSay,
    SpokenMessage::GlossaryWeaveSay,
    SpokenMessage::GlossaryFollowSay,
    SpokenMessage::GlossarySnugSay,
    SpokenMessage::GlossaryFairSay,
    SpokenMessage::GlossaryTubeSay,
    SpokenMessage::GlossaryRingSay,
    SpokenMessage::GlossaryRowSay,
    SpokenMessage::GlossaryPinSay,
    SpokenMessage::GlossaryRimSay,
    SpokenMessage::GlossaryStaggerSay,
];

/// A word of the trade.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GlossaryEntry {
    /// The word, as a title.
    pub word: String,
    /// What it means, in a sentence or two.
    pub meaning: String,
    /// Both, for the ear.
    pub say: Spoken,
}

impl Words {
    /// A lesson in the list.
    pub fn lesson_line(&self, lesson: Lesson, state: LessonState) -> String {
        self.text("course-line", &lesson_args(lesson, state))
    }

    /// A lesson as it is spoken when it is chosen.
    pub fn say_lesson(&self, lesson: Lesson, state: LessonState) -> Spoken {
        self.spoken(SpokenMessage::CourseLineSay, &lesson_args(lesson, state))
    }

    /// How the weave of a lesson's knot begins, and its tucks.
    pub fn lesson_weave(&self, plan: &Plan) -> String {
        self.text("course-weave", &weave_args(plan))
    }

    /// The weave of the lessons, spoken when it is exchanged.
    pub fn say_lesson_weave(&self, plan: &Plan) -> Spoken {
        self.spoken(SpokenMessage::CourseWeaveSay, &weave_args(plan))
    }

    /// The idea that is new in a lesson.
    pub fn lesson_idea(&self, number: u16) -> Sentence {
        self.sentence("course-idea", &fluent_args! { "lesson" => number })
    }

    /// Every word of the glossary, in an order to be read in.
    pub fn glossary(&self) -> Vec<GlossaryEntry> {
        let entry = |message: &SpokenMessage| {
            let word = self.plainly(message.stem(), &[]);
            let meaning = self.spoken(*message, &FluentArgs::new());
            GlossaryEntry {
                say: Spoken::new(format!("{word}. {meaning}")),
                meaning: meaning.into(),
                word,
            }
        };
        GLOSSARY.iter().map(entry).collect()
    }
}

fn weave_args(plan: &Plan) -> FluentArgs<'static> {
    let (kind, _) = weave_of(plan.knot());
    fluent_args! { "kind" => kind, "tucks" => plan.laying().tucks() }
}

/// What a weave is told as: `run` or `twin` with the run's length, or `code` with all of it.
pub(super) fn weave_of(knot: &Knot) -> (&'static str, FluentValue<'static>) {
    let weave = knot.weave();
    match (weave, weave.twin_run(knot.rows())) {
        (Weave::Run(run), _) => ("run", (*run).into()),
        (Weave::Rows(_), Some(run)) => ("twin", run.into()),
        (Weave::Rows(_), None) => ("code", weave.to_string().into()),
    }
}

fn lesson_args(lesson: Lesson, state: LessonState) -> FluentArgs<'static> {
    fluent_args! {
        "lesson" => lesson.number, "number" => lesson.number, "lessons" => COURSE.len(),
        "state" => state.selector(),
    }
}
