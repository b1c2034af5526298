//! Words of the course for beginners and of the glossary.

use fluent::{FluentArgs, FluentValue, fluent_args};
use strum::VariantArray as _;

use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Sentence, Spoken, Words};
use crate::guide::{COURSE, GlossaryWord, Lesson, LessonState, Plan};
use crate::knot::{Knot, Weave};

/// What says what a word of the trade means.
const fn meaning_of(word: GlossaryWord) -> SpokenMessage {
    match word {
        GlossaryWord::Lead => SpokenMessage::GlossaryLeadSay,
        GlossaryWord::Bight => SpokenMessage::GlossaryBightSay,
        GlossaryWord::Pass => SpokenMessage::GlossaryPassSay,
        GlossaryWord::Leg => SpokenMessage::GlossaryLegSay,
        GlossaryWord::Round => SpokenMessage::GlossaryRoundSay,
        GlossaryWord::Strand => SpokenMessage::GlossaryStrandSay,
        GlossaryWord::StandingEnd => SpokenMessage::GlossaryStandingEndSay,
        GlossaryWord::WorkingEnd => SpokenMessage::GlossaryWorkingEndSay,
        GlossaryWord::Crossing => SpokenMessage::GlossaryCrossingSay,
        GlossaryWord::OverUnder => SpokenMessage::GlossaryOverUnderSay,
        GlossaryWord::Tuck => SpokenMessage::GlossaryTuckSay,
        GlossaryWord::Weave => SpokenMessage::GlossaryWeaveSay,
        GlossaryWord::Follow => SpokenMessage::GlossaryFollowSay,
        GlossaryWord::Snug => SpokenMessage::GlossarySnugSay,
        GlossaryWord::Fair => SpokenMessage::GlossaryFairSay,
        GlossaryWord::Tube => SpokenMessage::GlossaryTubeSay,
        GlossaryWord::Ring => SpokenMessage::GlossaryRingSay,
        GlossaryWord::Row => SpokenMessage::GlossaryRowSay,
        GlossaryWord::Pin => SpokenMessage::GlossaryPinSay,
        GlossaryWord::Rim => SpokenMessage::GlossaryRimSay,
        GlossaryWord::Stagger => SpokenMessage::GlossaryStaggerSay,
        GlossaryWord::Nested => SpokenMessage::GlossaryNestedSay,
    }
}

/// A word of the trade.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GlossaryEntry {
    /// Which of the words it is.
    pub of: GlossaryWord,
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
        let entry = |&of: &GlossaryWord| {
            let message = meaning_of(of);
            let word = self.plainly(message.stem(), &[]);
            let meaning = self.spoken(message, &FluentArgs::new());
            GlossaryEntry {
                of,
                say: Spoken::new(format!("{word}. {meaning}")),
                meaning: meaning.into(),
                word,
            }
        };
        GlossaryWord::VARIANTS.iter().map(entry).collect()
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
