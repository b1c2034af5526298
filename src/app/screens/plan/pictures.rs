//! The pictures of the plan screen: the chosen knot large, and each knot on its card.

use std::cell::OnceCell;

use iced::widget::{Id, container, responsive};
use iced::{Element, Fill, Size};

use super::covering::Covered;
use crate::app::widgets::gallery::Gallery;
use crate::bench::{Cord, FitAnswer, Ground, Millimetres, Tube};
use crate::guide::{AtOnce, Plan, Script, Setup, Step, What};
use crate::knot::{Hand, Knot, Side};
use crate::picture::{Colour, Subject};

const CHOICES: usize = 6;

/// An answer to the first question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choice {
    /// What is covered.
    Covers(Covered),
    /// Tied in place, or slid on.
    Slides(bool),
}

impl Choice {
    const ALL: [Self; CHOICES] = [
        Self::Covers(Covered::Round),
        Self::Covers(Covered::Taper),
        Self::Covers(Covered::Ball),
        Self::Covers(Covered::Mat),
        Self::Slides(false),
        Self::Slides(true),
    ];

    /// Its widget.
    pub fn id(self) -> Id {
        match self {
            Self::Covers(covered) => Id::from(format!("plan-covers {}", covered.name())),
            Self::Slides(true) => Id::new("plan-slides place"),
            Self::Slides(false) => Id::new("plan-slides on"),
        }
    }

    /// What it shows: a knot that lies on such a ground; or one that is laid, on a tube with pins or on
    /// the thing itself. The sizes are those of things in the loft.
    fn subject(self) -> Option<Subject> {
        let [cord, rail, thin, long, ball, mat] =
            [4.0, 30.0, 22.0, 60.0, 38.0, 150.0].map(|length| Millimetres::new(length).ok());
        let (cord, rail) = (Cord::new(cord?), rail?);
        let plan = |leads, bights, passes| Plan::read(leads, bights, passes, "").ok();
        let on = |plan: Plan, ground| plan.with_setup(Some(Setup::in_place(ground, cord.clone())));
        Some(match self {
            Self::Covers(covered) => Subject::finished(&match covered {
                Covered::Round => on(plan("5", "7", "2")?, Ground::Round(rail)),
                Covered::Taper => on(
                    plan("5", "4", "2")?,
                    Ground::Taper {
                        bottom: rail,
                        top: thin?,
                        over: long?,
                    },
                ),
                Covered::Ball => on(plan("5", "4", "3")?, Ground::Ball(ball?)),
                Covered::Mat => on(
                    plan("5", "7", "3")?,
                    Ground::Flat {
                        outer: mat?,
                        hole: None,
                    },
                ),
            }),
            Self::Slides(in_place) => {
                let knot = plan("3", "5", "1")?;
                let knot = if in_place {
                    on(knot, Ground::Round(rail))
                } else {
                    knot.with_setup(Some(Setup::new(Tube::plain(rail), cord.clone())))
                };
                let script = Script::new(knot, AtOnce::WholeLeg);
                let mut steps = script.steps();
                // On pins all of it lies ready to be slid off; in place the cord is still being laid.
                let is_it = |step: &Step| match &step.what {
                    What::Lay(lay) => in_place && lay.pass_leg.leg == 7,
                    What::Lift(_) => true,
                    _ => false,
                };
                Subject::of(&script, &steps.find(is_it)?)
            }
        })
    }
}

/// The chosen knot, and those of the cards, by their places.
#[derive(Default)]
pub struct Pictures {
    chosen: Gallery,
    cards: Gallery,
    /// The answers to the first question, and what each shows.
    choices: Gallery,
    chosen_from: OnceCell<[Option<Subject>; CHOICES]>,
    /// The colour of the cord, where its name tells it.
    cord: Option<Colour>,
    /// The knot that was counted, while no other is looked at.
    only: Option<Knot>,
    /// What is to be covered.
    ground: Option<Ground>,
}

impl Pictures {
    /// Shows cord of this colour, where it is known, on a screen with so many dots for each pixel of the
    /// layout; `is_dark` for light on dark.
    pub fn set(&mut self, cord: Option<Colour>, only: Option<&Knot>, dots: f32, is_dark: bool) {
        self.cord = cord;
        if self.only.as_ref() != only {
            self.only = only.cloned();
        }
        self.chosen.set(dots, is_dark);
        self.cards.set(dots, is_dark);
        self.choices.set(dots, is_dark);
    }

    /// Shows the knots on what they are to cover.
    pub const fn cover(&mut self, ground: Option<Ground>) {
        self.ground = ground;
    }

    fn subject(&self, answer: &FitAnswer, hand: Hand, side: Side) -> Option<Subject> {
        let subject = match &self.only {
            Some(knot) => Subject::answer_of(knot.clone(), answer, hand, side),
            None => Subject::answer(answer, hand, side),
        }?;
        Some(match self.ground {
            Some(ground) => subject.on(ground),
            None => subject,
        })
    }

    /// The picture of an answer to the first question.
    pub fn choice<'a, M: 'a>(&'a self, choice: Choice, size: Size) -> Option<Element<'a, M>> {
        let subjects = self
            .chosen_from
            .get_or_init(|| Choice::ALL.map(Choice::subject));
        let place = Choice::ALL.iter().position(|known| *known == choice)?;
        let subject = subjects[place].clone()?;
        Some(self.choices.picture(place, subject, None, size))
    }

    /// The picture of an answer on the card at a place of the list.
    pub fn card<'a, M: 'a>(
        &'a self,
        place: usize,
        answer: &FitAnswer,
        (hand, side): (Hand, Side),
        size: Size,
    ) -> Option<Element<'a, M>> {
        let subject = self.subject(answer, hand, side)?;
        Some(self.cards.picture(place, subject, self.cord, size))
    }

    /// The picture of the answer that is chosen, as large as its place.
    pub fn chosen<'a, M: 'a>(
        &'a self,
        answer: &FitAnswer,
        (hand, side): (Hand, Side),
    ) -> Option<Element<'a, M>> {
        let subject = self.subject(answer, hand, side)?;
        let picture =
            responsive(move |size| self.chosen.picture(0, subject.clone(), self.cord, size));
        Some(
            container(picture)
                .id("picture")
                .width(Fill)
                .height(Fill)
                .into(),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_answer_to_the_first_question_has_a_picture_of_its_own() {
        let subjects = Choice::ALL.map(|choice| choice.subject().expect("a knot that can be tied"));
        for (at, one) in subjects.iter().enumerate() {
            let others = &subjects[at + 1..];
            assert!(!others.contains(one), "{:?}", Choice::ALL[at]);
        }
    }
}
