//! The pictures of the plan screen: the chosen knot large, and each knot of the list small.

use std::collections::BTreeMap;
use std::ops::Range;

use iced::Element;
use iced::widget::container;

use crate::app::picture_view::PictureView;
use crate::bench::FitAnswer;
use crate::knot::{Hand, Side};
use crate::picture::Subject;

/// Knots in sight at once, at the most.
pub const MOST_SHOWN: usize = 6;
/// Knots more, to scroll to.
pub const MORE: usize = 2;

/// Width and height of a picture in the list.
const SIZE: [f32; 2] = [92.0, 84.0];

/// The chosen knot, and those of the list around it, by their place in it.
#[derive(Default)]
pub struct Pictures {
    /// Shows the chosen knot.
    pub chosen: PictureView,
    small: BTreeMap<usize, PictureView>,
}

impl Pictures {
    /// Shows of these answers the chosen one, and small those in a range of the list, on a screen
    /// with so many dots for each pixel of the layout.
    pub fn show(
        &mut self,
        answers: &[FitAnswer],
        chosen: usize,
        in_list: Range<usize>,
        (hand, side): (Hand, Side),
        dots: f32,
    ) {
        let subject = |answer: &FitAnswer| Subject::answer(answer, hand, side);
        self.chosen.set_dots(dots);
        self.chosen.show(answers.get(chosen).and_then(subject));
        self.small.retain(|place, _| in_list.contains(place));
        for place in in_list {
            // The picture of a place stays when another knot comes there: until that is painted,
            // the window need not wait.
            let picture = self.small.entry(place).or_default();
            picture.set_dots(dots);
            picture.show(answers.get(place).and_then(subject));
        }
    }

    /// The picture of the knot at a place of the list.
    pub fn small<'a, M: 'a>(&'a self, place: usize) -> Option<Element<'a, M>> {
        let picture = self.small.get(&place)?;
        let [width, height] = SIZE;
        let view = container(picture.view()).width(width).height(height);
        Some(view.into())
    }
}

/// The places of the list that can come into sight with the chosen one.
pub fn in_reach(chosen: usize, answers: usize) -> Range<usize> {
    let first = chosen.saturating_sub(MOST_SHOWN - 1);
    first..answers.min(chosen + MOST_SHOWN + MORE)
}
