//! Between a tie on the shelf and what the guide makes of it.

use super::{Chosen, Place, Tie, parts};
use crate::guide::{self, Phase, Plan};

impl Tie {
    /// A new tie of a plan, standing at a place of it.
    pub fn of(plan: &Plan, place: guide::Place) -> Self {
        // Where an added cord begins follows from the names, and is not kept besides.
        let unnamed = plan.clone().with_cords(Vec::new());
        let laying = unnamed.as_ref().unwrap_or(plan).laying().clone();
        let knot = Chosen {
            laying,
            side: plan.side,
            hand: plan.hand,
        };
        let mut tie = Self::begin(knot, Place::from(place));
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

    /// Where it stands, or `None` when this version of the guide has no such phase.
    pub fn stands_at(&self) -> Option<guide::Place> {
        let Place {
            phase,
            pass,
            strand,
            leg,
            crossing,
        } = &self.place;
        let phase = PHASES
            .iter()
            .find(|(_, name)| name == phase)
            .map(|(phase, _)| *phase)?;
        Some(guide::Place {
            phase,
            pass: *pass,
            strand: *strand,
            leg: *leg,
            crossing: *crossing,
        })
    }

    /// Notes where it stands now.
    pub fn stand_at(&mut self, place: guide::Place) {
        self.place = Place::from(place);
    }
}

/// The field of a document that names the cords.
const CORDS: &str = "cords";

/// The field of a document that says which lesson it is the tie of.
const LESSON: &str = "lesson";

/// The names of the phases in a document. They must stay as they are.
const PHASES: [(Phase, &str); 8] = [
    (Phase::Kit, "kit"),
    (Phase::Rig, "rig"),
    (Phase::Lead, "lead"),
    (Phase::Follow, "follow"),
    (Phase::Check, "check"),
    (Phase::Lift, "lift"),
    (Phase::Fair, "fair"),
    (Phase::Finish, "finish"),
];

impl From<guide::Place> for Place {
    fn from(place: guide::Place) -> Self {
        let name = PHASES.iter().find(|(phase, _)| *phase == place.phase);
        Self {
            phase: name.map_or("lead", |(_, name)| name).to_owned(),
            pass: place.pass,
            strand: place.strand,
            leg: place.leg,
            crossing: place.crossing,
        }
    }
}
