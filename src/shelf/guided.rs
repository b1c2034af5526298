//! Between a tie on the shelf and what the guide makes of it.

use super::{Chosen, Tie, parts};
use crate::guide::{Place, Plan};

impl Tie {
    /// A new tie of a plan, standing at a place of it.
    pub fn of(plan: &Plan, place: Place) -> Self {
        // Where an added cord begins follows from the names, and is not kept besides.
        let unnamed = plan.clone().with_cords(Vec::new());
        let laying = unnamed.as_ref().unwrap_or(plan).laying().clone();
        let knot = Chosen {
            laying,
            side: plan.side,
            hand: plan.hand,
        };
        let mut tie = Self::begin(knot, place);
        if let Some(setup) = &plan.setup {
            parts::put(&mut tie.extras, setup);
        }
        if !plan.cords().is_empty() {
            tie.extras.insert(CORDS.to_owned(), plan.cords().into());
        }
        tie
    }

    /// The same, as the tie of a lesson of the course.
    #[must_use]
    pub fn for_lesson(mut self, lesson: u16) -> Self {
        self.extras.insert(LESSON.to_owned(), lesson.into());
        self
    }

    /// The lesson it is the tie of.
    pub fn lesson(&self) -> Option<u16> {
        self.extras.get(LESSON)?.as_u64()?.try_into().ok()
    }

    /// The plan that is tied. Its tube and cord were checked when the document was read. Names
    /// of cords that do not go with the knot are left out.
    pub fn plan(&self) -> Plan {
        let Chosen { laying, side, hand } = &self.knot;
        let setup = parts::setup(&self.extras).unwrap_or_default();
        let plan = Plan::of(laying.clone(), *side, *hand).with_setup(setup);
        let names = self.extras.get(CORDS).and_then(|names| names.as_array());
        let cords: Option<Vec<String>> = names.and_then(|names| {
            names
                .iter()
                .map(|name| name.as_str().map(str::to_owned))
                .collect()
        });
        plan.clone()
            .with_cords(cords.unwrap_or_default())
            .unwrap_or(plan)
    }
}

/// The field of a document that names the cords.
const CORDS: &str = "cords";

/// The field of a document that says which lesson it is the tie of.
const LESSON: &str = "lesson";
