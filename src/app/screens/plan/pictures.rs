//! The pictures of the plan screen: the chosen knot large, and each knot on its card.

use iced::widget::{container, responsive};
use iced::{Element, Fill, Size};

use crate::app::widgets::gallery::Gallery;
use crate::bench::{FitAnswer, Ground};
use crate::knot::{Hand, Knot, Side};
use crate::picture::{Colour, Subject};

/// The chosen knot, and those of the cards, by their places.
#[derive(Default)]
pub struct Pictures {
    chosen: Gallery,
    cards: Gallery,
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
