//! Choosing among the knots that fit, and taking one.

use super::findings::Findings;
use super::form::{Action, State};
use crate::bench::FitAnswer;
use crate::guide::{FitQuestion, Plan};
use crate::knot::Knot;
use crate::words::{Sentence, Spoken, Words};

impl State {
    /// What the chosen knot comes to, and what to take care of with it; nothing while there is none.
    pub(super) fn say_chosen(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        words: &Words,
    ) -> Spoken {
        let Some(answer) = answers.get(self.chosen) else {
            return Spoken::default();
        };
        let said = words.say_answer(self.chosen + 1, answers.len(), answer, self.prices);
        let cautions = question.cautions(answer);
        cautions.iter().fold(said, |said, caution| {
            said.then(words.caution(caution).spoken())
        })
    }

    pub(super) fn choose(&mut self, index: usize, words: &Words) -> Action {
        let Findings::Knots(question, answers) = &self.found else {
            return Action::Say(self.sentence(words).into());
        };
        if answers.is_empty() {
            return Action::None;
        }
        self.chosen = index.min(answers.len() - 1);
        self.complaint = None;
        Action::Chosen(self.say_chosen(question, answers, words))
    }

    pub(super) fn take(&mut self, words: &Words) -> Action {
        let Findings::Knots(question, answers) = &self.found else {
            // A counted knot of which nothing is said is tied as it is.
            return match &self.only {
                Some(only) if self.form.is_empty() => Action::Begin(only.clone()),
                _ => Action::Say(self.sentence(words).into()),
            };
        };
        // What is in sight may answer what was typed before.
        if self.answered != self.asked {
            self.takes_best = true;
            return Action::None;
        }
        let Some(answer) = answers.get(self.chosen) else {
            return Action::None;
        };
        match self.plan(question, answer, words) {
            Ok(plan) => Action::Begin(Box::new(plan)),
            Err(sentence) => {
                self.complaint = Some(sentence.clone());
                Action::Say(sentence.into())
            }
        }
    }

    /// Has paper made of the chosen knot, once it is found.
    pub(super) fn on_paper(&mut self, words: &Words) -> Action {
        let taken = self.take(words);
        self.takes_best = false;
        match taken {
            Action::Begin(plan) => Action::OnPaper(plan),
            other => other,
        }
    }

    fn plan(
        &self,
        question: &FitQuestion,
        answer: &FitAnswer,
        words: &Words,
    ) -> Result<Plan, Sentence> {
        let counts = answer.counts;
        let knot = match &self.only {
            Some(only) => Ok(only.knot().clone()),
            None => Knot::woven(counts.lattice(), answer.weave()),
        };
        let plan = knot
            .and_then(|knot| Plan::new(knot, counts.passes(), self.side, self.hand))
            .map_err(|error| words.knot_error(&error))?
            .with_setup(question.setup(answer));
        match plan.rig() {
            Ok(_) => Ok(plan),
            Err(error) => Err(words.rig_error(error)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::fields::PlanField;
    use super::super::filters::PlanFilter;
    use super::super::findings::{Asked, FitOutcome};
    use super::super::form::Message;
    use super::*;
    use crate::guide::SetupField;
    use crate::session::{Session, Wishes};
    use crate::settings::Settings;
    use crate::shelf::ShelfReading;

    fn session() -> Session {
        Session::new(Words::english(), Settings::default(), Wishes::default())
    }

    /// Types a field and gives back the question that the form then asks.
    fn type_in(plan: &mut State, field: impl Into<PlanField>, text: &str) -> Option<(u64, Asked)> {
        match plan.told(
            Message::Typed(field.into(), text.to_owned()),
            &mut session(),
        ) {
            Action::Find(number, asked, _) => Some((number, asked)),
            _ => None,
        }
    }

    fn found(asked: u64, outcome: FitOutcome) -> Message {
        Message::Found(asked, ShelfReading::whole(outcome))
    }

    #[test]
    fn an_answer_to_what_was_typed_before_is_dropped() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "30");
        type_in(&mut plan, SetupField::Cover, "30");
        let (early, asked) = type_in(&mut plan, SetupField::Cord, "4").unwrap();
        let slow = FitOutcome::of(asked);
        let (late, asked) = type_in(&mut plan, SetupField::Cord, "40").unwrap();
        let quick = FitOutcome::of(asked);
        plan.told(found(late, quick), &mut session);
        plan.told(found(early, slow), &mut session);
        assert!(matches!(plan.found, Findings::Nothing(_)));
        assert!(matches!(
            plan.told(Message::Take, &mut session),
            Action::Say(_)
        ));
    }

    #[test]
    fn enter_before_the_answer_takes_its_best_knot() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "30");
        type_in(&mut plan, SetupField::Cover, "30");
        let (first, asked) = type_in(&mut plan, SetupField::Cord, "4").unwrap();
        plan.told(found(first, FitOutcome::of(asked)), &mut session);
        let (second, asked) = type_in(&mut plan, SetupField::Cord, "4.5").unwrap();
        let outcome = FitOutcome::of(asked);
        let best = outcome.answers[0].counts;
        // Not the one of the thinner cord, which is still in sight.
        let early = plan.told(Message::Take, &mut session);
        assert!(matches!(early, Action::None));
        let Action::Begin(begun) = plan.told(found(second, outcome), &mut session) else {
            panic!("nothing was taken");
        };
        assert_eq!(crate::bench::Counts::from(begun.laying()), best);
    }

    /// Types a knot and takes in what is found of it.
    fn with_knot(plan: &mut State, session: &mut Session, knot: &str) -> String {
        let (number, asked) = type_in(plan, PlanField::Knot, knot).unwrap();
        plan.told(found(number, FitOutcome::of(asked)), session);
        plan.say_found(session.words()).to_string()
    }

    #[test]
    fn a_knot_in_mind_is_told_of_and_offered_in_each_number_of_passes() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "28");
        type_in(&mut plan, SetupField::Cord, "4");
        // Without a length to cover it is told how wide it becomes.
        let said = with_knot(&mut plan, &mut session, "5 7");
        assert!(said.contains("drawn tight"), "{said}");
        let Findings::Knots(_, answers) = &plan.found else {
            panic!("nothing is offered");
        };
        assert!(answers.iter().all(|answer| answer.shape.is_tight()));
        let tight = answers[0].shape.width.get();
        // With one it is told whether it covers that, and what would where it does not.
        type_in(&mut plan, SetupField::Cover, &format!("{tight:.1}"));
        let said = with_knot(&mut plan, &mut session, "5x7");
        assert!(said.contains("Single: fits"), "{said}");
        assert!(!plan.known.are_others);
        type_in(&mut plan, SetupField::Cover, "150");
        let said = with_knot(&mut plan, &mut session, "3 5");
        assert!(said.contains("Single: too narrow for"), "{said}");
        assert!(plan.known.are_others);
        assert!(matches!(&plan.found, Findings::Knots(_, answers) if !answers.is_empty()));
    }

    #[test]
    fn a_knot_in_mind_is_told_of_in_the_passes_that_are_wanted() {
        let (mut plan, mut session) = (State::default(), session());
        type_in(&mut plan, SetupField::Object, "30");
        type_in(&mut plan, SetupField::Cover, "36");
        type_in(&mut plan, SetupField::Cord, "3.5");
        let passes = |plan: &State| -> Vec<u16> {
            let fits = plan.known.fits.iter();
            fits.map(|known| known.counts.passes()).collect()
        };
        with_knot(&mut plan, &mut session, "5 7");
        assert_eq!(passes(&plan), [1, 2, 3, 4]);
        // Singles, which are too narrow: others are offered.
        for (choice, are_others) in [(1, true), (2, false)] {
            let wanted = plan.told(Message::Filter(PlanFilter::Passes), &mut session);
            let Action::Find(number, asked, _) = wanted else {
                panic!("nothing is looked for");
            };
            plan.told(found(number, FitOutcome::of(asked)), &mut session);
            assert_eq!(passes(&plan), [choice]);
            assert_eq!(plan.known.are_others, are_others);
            let Findings::Knots(_, answers) = &plan.found else {
                panic!("nothing is offered");
            };
            let mut found = answers.iter().map(|answer| answer.counts.passes());
            assert!(found.all(|passes| passes == choice));
        }
    }

    #[test]
    fn what_names_no_knot_is_told_at_its_field_and_narrows_nothing() {
        let (mut plan, words) = (State::default(), Words::english());
        type_in(&mut plan, SetupField::Object, "28");
        type_in(&mut plan, SetupField::Cover, "30");
        type_in(&mut plan, SetupField::Cord, "4");
        let (_, asked) = type_in(&mut plan, PlanField::Knot, "5").unwrap();
        assert!(asked.in_mind.is_none());
        let wrong = plan.wrong_in(PlanField::Knot, &words).unwrap();
        assert!(wrong.shown().contains("“5” names no knot"), "{wrong}");
        type_in(&mut plan, PlanField::Knot, " ");
        assert!(plan.wrong_in(PlanField::Knot, &words).is_none());
    }
}
