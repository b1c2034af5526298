//! What the first question of the plan screen does to its form.

use strum::VariantArray as _;

use super::covering::Covered;
use super::fields::{FIELDS, PlanField};
use super::form::{Action, State};
use crate::guide::{SetupField, SetupForm};
use crate::words::{Sentence, Spoken, Words};

/// What belongs to a tube, which there is none of where nothing is slid on.
const OF_TUBE: [SetupField; 6] = [
    SetupField::Tube,
    SetupField::Rows,
    SetupField::Pin,
    SetupField::Thread,
    SetupField::RingWidth,
    SetupField::TubeLength,
];

impl State {
    /// Whether the knot is tied on what it covers: a mat always is.
    pub(super) fn is_in_place(&self) -> bool {
        self.covering.in_place || self.covering.covered == Covered::Mat
    }

    /// The fields that apply, in the order of the Tab key.
    pub(super) fn fields_in_sight(&self) -> Vec<PlanField> {
        let fields = FIELDS.into_iter();
        fields.filter(|field| self.is_in_sight(*field)).collect()
    }

    fn is_in_sight(&self, field: PlanField) -> bool {
        match field {
            // Of what has an end, all is covered.
            PlanField::Setup(SetupField::Cover) => {
                !matches!(self.covering.covered, Covered::Ball | Covered::Mat)
            }
            PlanField::Setup(field) if OF_TUBE.contains(&field) => !self.is_in_place(),
            PlanField::Slides => self.covering.covered != Covered::Mat,
            _ => true,
        }
    }

    /// What the form says in the fields that apply; what stands in the others is kept for when they do
    /// again.
    pub(super) fn said(&self) -> SetupForm {
        let mut said = self.form.clone();
        for field in OF_TUBE.into_iter().chain([SetupField::Cover]) {
            if !self.is_in_sight(field.into()) {
                said.say(field, "");
            }
        }
        let measure = self.said_as(SetupField::Object);
        for field in [
            SetupField::Object,
            SetupField::Girth,
            SetupField::Ball,
            SetupField::Mat,
        ] {
            if field != measure {
                said.say(field, "");
            }
        }
        // Tied in place on nothing is a slip; here that is still to be said.
        if self.is_in_place() && said.said(measure).is_some() {
            said.say(SetupField::InPlace, "yes");
        }
        said
    }

    /// Whether one end of a taper is still to be said.
    pub(super) fn wants_an_end(&self) -> bool {
        let object = self.form.said(SetupField::Object);
        self.covering.covered == Covered::Taper && object.is_some_and(|ends| !ends.contains(':'))
    }

    /// This is covered from now on.
    pub(super) fn cover_this(&mut self, covered: Covered, words: &Words) -> Action {
        self.covering.covered = covered;
        self.answered_first(PlanField::Covers, words)
    }

    /// It is tied in place from now on, or slid on.
    pub(super) fn tie_in_place(&mut self, in_place: bool, words: &Words) -> Action {
        self.covering.in_place = in_place;
        self.answered_first(PlanField::Slides, words)
    }

    fn answered_first(&mut self, field: PlanField, words: &Words) -> Action {
        self.focus = field;
        let said = self.say_field(words);
        let found = match self.look() {
            Action::Find(number, asked, _) => Action::Find(number, asked, said),
            _ => Action::Say(said),
        };
        Action::Filled(field, Box::new(found))
    }

    /// The next answer to the part of the question that is in turn, or the one before it; nothing
    /// elsewhere.
    pub(super) fn turn(&mut self, forward: bool, words: &Words) -> Action {
        match self.focus {
            PlanField::Covers => {
                let all = Covered::VARIANTS;
                let here = all
                    .iter()
                    .position(|covered| *covered == self.covering.covered);
                let by = if forward { 1 } else { all.len() - 1 };
                self.cover_this(all[(here.unwrap_or(0) + by) % all.len()], words)
            }
            PlanField::Slides => self.tie_in_place(!self.covering.in_place, words),
            _ => Action::None,
        }
    }

    /// What is told of the part of the question that is in turn.
    pub(super) fn say_covering(&self, field: PlanField, words: &Words) -> Spoken {
        let told = match field {
            PlanField::Slides => {
                let slides = if self.covering.in_place {
                    "place"
                } else {
                    "on"
                };
                words.notice("plan-slides-told", &[("slides", slides)])
            }
            _ => words.notice(
                "plan-covers-told",
                &[("covered", self.covering.covered.name())],
            ),
        };
        told.into()
    }

    /// What is still to be said of the thing itself.
    pub(super) fn wanting_measure(&self, words: &Words) -> Sentence {
        words.notice(
            "plan-measure-wanted",
            &[("covered", self.covering.covered.name())],
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::screens::plan::covering::Covering;
    use crate::bench::Ground;
    use crate::guide::Presets;

    fn filled(covered: Covered, in_place: bool) -> State {
        let mut state = State {
            covering: Covering { covered, in_place },
            ..State::default()
        };
        for (field, text) in [
            (SetupField::Object, "30"),
            (SetupField::Ball, "38"),
            (SetupField::Mat, "150"),
            (SetupField::Cover, "36"),
            (SetupField::Cord, "4"),
            (SetupField::Tube, "45"),
            (SetupField::Rows, "14,20"),
        ] {
            state.form.say(field, text);
        }
        if covered == Covered::Taper {
            state.form.say(SetupField::Object, "32:26");
        }
        state
    }

    #[test]
    fn what_is_typed_for_another_ground_does_not_count_on_this_one() {
        for covered in Covered::VARIANTS {
            for in_place in [false, true] {
                let state = filled(*covered, in_place);
                let question = state.said().question(&Presets::default()).unwrap();
                assert_eq!(question.in_place, state.is_in_place(), "{covered:?}");
                assert_eq!(question.tube.is_none(), state.is_in_place(), "{covered:?}");
                let is_meant = match question.object.ground {
                    Ground::Round(_) => *covered == Covered::Round,
                    Ground::Taper { .. } => *covered == Covered::Taper,
                    Ground::Ball(_) => *covered == Covered::Ball,
                    Ground::Flat { .. } => *covered == Covered::Mat,
                };
                assert!(is_meant, "{covered:?}: {:?}", question.object.ground);
            }
        }
    }

    #[test]
    fn fields_that_do_not_apply_are_not_gone_through() {
        let has = |covered, in_place, field: PlanField| {
            filled(covered, in_place).fields_in_sight().contains(&field)
        };
        let [tube, cover] = [SetupField::Tube, SetupField::Cover].map(PlanField::Setup);
        assert!(has(Covered::Round, false, tube) && !has(Covered::Round, true, tube));
        assert!(has(Covered::Ball, false, tube) && !has(Covered::Mat, false, tube));
        assert!(has(Covered::Taper, true, cover) && !has(Covered::Ball, true, cover));
        assert!(!has(Covered::Mat, false, PlanField::Slides));
    }
}
