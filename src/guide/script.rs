//! Every step of the job, worked out when it is asked for.

use crate::bench::Rig;
use crate::knot::Turn;

use super::after::Item;
use super::rigging::Rigging;
use super::{AtOnce, Checks, Phase, Place, Plan, Step, What};

/// How far the tyer has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// Legs that lie on the tube.
    pub laid: u32,
    /// Legs of the whole tie.
    pub legs: u32,
}

/// The steps of a plan, from any place to the next.
#[derive(Clone, Debug, PartialEq)]
pub struct Script {
    pub(super) plan: Plan,
    pub(super) at_once: AtOnce,
    checks: Checks,
    /// The tube rigged for the plan, when there is one and it takes the knot.
    pub(super) rig: Option<Box<Rig>>,
    /// What is done before the first leg, when that is known.
    rigging: Option<Rigging>,
    /// What is done to lift the knot, and to finish it: a handful of things.
    pub(super) lift: Vec<Item>,
    pub(super) finish: Vec<Item>,
}

impl Script {
    /// The script of a plan, with a look at the work after every round.
    pub fn new(plan: Plan, at_once: AtOnce) -> Self {
        let rig = plan
            .setup
            .as_ref()
            .and_then(|setup| setup.rig(plan.laying().into()).ok());
        let rigging = rig.as_ref().and_then(|rig| Rigging::of(&plan, rig));
        let (lift, finish) = (Item::lift(&plan), Item::finish(&plan));
        Self {
            plan,
            at_once,
            checks: Checks::default(),
            rig: rig.map(Box::new),
            rigging,
            lift,
            finish,
        }
    }

    /// The same with looks at the work as often as this.
    #[must_use]
    pub fn with_checks(self, checks: Checks) -> Self {
        Self { checks, ..self }
    }

    /// How often there is a look at the work.
    pub const fn checks(&self) -> Checks {
        self.checks
    }

    /// How much is told at once.
    pub const fn at_once(&self) -> AtOnce {
        self.at_once
    }

    /// The plan it tells.
    pub const fn plan(&self) -> &Plan {
        &self.plan
    }

    /// The first place of the job.
    pub fn first(&self) -> Place {
        self.rigging
            .as_ref()
            .map_or(Place::begin(1, 1), Rigging::first)
    }

    /// The tube rigged for the plan, when there is one and it takes the knot.
    pub fn rig(&self) -> Option<&Rig> {
        self.rig.as_deref()
    }

    /// What is done before the first leg, when tube and cord are known.
    pub const fn rigging(&self) -> Option<&Rigging> {
        self.rigging.as_ref()
    }

    /// Things to do to lift the knot.
    pub(super) fn lifts(&self) -> u16 {
        count(&self.lift)
    }

    /// Things to do to finish it.
    pub(super) fn finishes(&self) -> u16 {
        count(&self.finish)
    }

    /// The last place of the job.
    pub fn last(&self) -> Place {
        Place::item(Phase::Finish, self.finishes())
    }

    /// The place itself, moved to the beginning of the part it lies in, or `None` when this
    /// job has no such place.
    pub fn settle(&self, place: Place) -> Option<Place> {
        let turn = place.turn();
        match place.phase {
            // Without a rigging any more, the job begins with its first leg.
            Phase::Kit | Phase::Rig => Some(
                self.rigging
                    .as_ref()
                    .map_or(self.first(), |rigging| rigging.settle(place)),
            ),
            Phase::Lead | Phase::Follow if place.leg == 0 => {
                // The beginning of a pass is there exactly when its first leg is.
                self.plan.laying().leg(Turn { leg: 1, ..turn })?;
                Some(Place::begin(place.pass, place.strand))
            }
            Phase::Lead | Phase::Follow => {
                self.plan.laying().leg(turn)?;
                let crossings = self.met(turn);
                if place.crossing > crossings {
                    return None;
                }
                let part = self.at_once.part_of(place.crossing, crossings);
                let crossing = self.at_once.begins(part, crossings);
                Some(Place {
                    crossing,
                    ..Place::lay(turn)
                })
            }
            // A round can be looked at even when it is not asked for.
            Phase::Check => {
                let is_round = turn.leg > 0 && turn.leg.is_multiple_of(2);
                (is_round && self.plan.laying().leg(turn).is_some()).then(|| Place::check(turn))
            }
            Phase::Lift | Phase::Finish => {
                let items = if place.phase == Phase::Lift {
                    &self.lift
                } else {
                    &self.finish
                };
                (1..=count(items))
                    .contains(&place.leg)
                    .then(|| Place::item(place.phase, place.leg))
            }
            Phase::Fair => {
                self.plan.laying().leg(turn)?;
                (1..=self.fair_rounds())
                    .contains(&place.crossing)
                    .then(|| Place::fair(place.crossing, turn))
            }
        }
    }

    /// The next place, or `None` at the end. `place` must be [settled](Self::settle).
    pub fn next(&self, place: Place) -> Option<Place> {
        let turn = place.turn();
        match place.phase {
            Phase::Kit | Phase::Rig => {
                let next = self
                    .rigging
                    .as_ref()
                    .and_then(|rigging| rigging.next(place));
                next.or(Some(Place::begin(1, 1)))
            }
            Phase::Lead | Phase::Follow if place.leg == 0 => {
                Some(Place::lay(Turn { leg: 1, ..turn }))
            }
            Phase::Lead | Phase::Follow => Some(self.after_part(place)),
            Phase::Check => Some(self.after_leg(turn)),
            Phase::Lift if place.leg < self.lifts() => {
                Some(Place::item(Phase::Lift, place.leg + 1))
            }
            Phase::Lift => Some(Place::fair(
                1,
                Turn {
                    pass: 1,
                    strand: 1,
                    leg: 1,
                },
            )),
            Phase::Fair => Some(match self.fair_after(turn) {
                Some(turn) => Place::fair(place.crossing, turn),
                None if place.crossing < self.fair_rounds() => Place::fair(
                    place.crossing + 1,
                    Turn {
                        pass: 1,
                        strand: 1,
                        leg: 1,
                    },
                ),
                None => Place::item(Phase::Finish, 1),
            }),
            Phase::Finish => {
                (place.leg < self.finishes()).then(|| Place::item(Phase::Finish, place.leg + 1))
            }
        }
    }

    /// The place before, or `None` at the first. `place` must be [settled](Self::settle).
    pub fn back(&self, place: Place) -> Option<Place> {
        let (laying, turn) = (self.plan.laying(), place.turn());
        match place.phase {
            Phase::Kit | Phase::Rig => self.rigging.as_ref()?.back(place),
            Phase::Lead | Phase::Follow if place.leg == 0 => {
                let laid = laying.legs_before(Turn { leg: 1, ..turn });
                match laid.checked_sub(1) {
                    Some(before) => laying.turn(before).map(Place::check),
                    None => self.rigging.as_ref().map(Rigging::last),
                }
            }
            Phase::Lead | Phase::Follow if place.crossing > 0 => {
                let crossings = self.met(turn);
                let part = self.at_once.part_of(place.crossing, crossings) - 1;
                Some(Place {
                    crossing: self.at_once.begins(part, crossings),
                    ..place
                })
            }
            Phase::Lead | Phase::Follow => Some(match place.leg {
                1 => Place::begin(place.pass, place.strand),
                leg => {
                    let before = Turn {
                        leg: leg - 1,
                        ..turn
                    };
                    if self.is_checked(before) {
                        Place::check(before)
                    } else {
                        self.last_part(before)
                    }
                }
            }),
            Phase::Check => Some(self.last_part(turn)),
            Phase::Lift | Phase::Finish if place.leg > 1 => {
                Some(Place::item(place.phase, place.leg - 1))
            }
            Phase::Lift => laying.turn(laying.legs() - 1).map(Place::check),
            Phase::Fair => Some(match self.fair_before(turn) {
                Some(turn) => Place::fair(place.crossing, turn),
                None if place.crossing > 1 => Place::fair(place.crossing - 1, self.fair_last()),
                None => Place::item(Phase::Lift, self.lifts()),
            }),
            Phase::Finish => Some(Place::fair(self.fair_rounds(), self.fair_last())),
        }
    }

    /// The step at a [settled](Self::settle) place, or `None` when the job has no such place.
    pub fn step(&self, place: Place) -> Option<Step> {
        let item = |items: &[Item]| {
            let index = usize::from(place.leg.checked_sub(1)?);
            items.get(index).map(Item::what)
        };
        let what = match place.phase {
            Phase::Kit | Phase::Rig => self.rigging.as_ref()?.what(place)?,
            Phase::Lead if place.leg == 0 => What::Begin(self.begin(place.strand)),
            Phase::Follow if place.leg == 0 => What::Follow(self.follow(place)),
            Phase::Lead | Phase::Follow => What::Lay(self.lay(place)?),
            Phase::Check => What::Check(self.check(place.turn())?),
            Phase::Lift => item(&self.lift)?,
            Phase::Fair => What::Fair(self.fair(place)?),
            Phase::Finish => item(&self.finish)?,
        };
        Some(Step { place, what })
    }

    /// Every place from the first to the last.
    pub fn places(&self) -> impl Iterator<Item = Place> + '_ {
        std::iter::successors(Some(self.first()), |place| self.next(*place))
    }

    /// Legs laid when the tyer stands before the step at `place`.
    pub fn progress(&self, place: Place) -> Progress {
        let laying = self.plan.laying();
        let legs = laying.legs();
        let laid = match place.phase {
            Phase::Kit | Phase::Rig => 0,
            Phase::Lead | Phase::Follow => laying.legs_before(Turn {
                leg: place.leg.max(1),
                ..place.turn()
            }),
            Phase::Check => laying.legs_before(place.turn()) + 1,
            Phase::Lift | Phase::Fair | Phase::Finish => legs,
        };
        Progress { laid, legs }
    }

    /// Whether there is a look at the work after this leg.
    fn is_checked(&self, turn: Turn) -> bool {
        self.ends_a_pass(turn) || self.checks == Checks::EachRound && turn.leg.is_multiple_of(2)
    }

    /// Whether a strand's pass is complete with this leg.
    pub(super) fn ends_a_pass(&self, turn: Turn) -> bool {
        turn.leg == self.plan.knot().legs_per_strand()
    }

    /// How many crossings a leg meets.
    pub(super) fn met(&self, turn: Turn) -> u16 {
        let met = self.plan.laying().crossings(turn).count();
        u16::try_from(met).unwrap_or(u16::MAX)
    }

    fn after_part(&self, place: Place) -> Place {
        let crossings = self.met(place.turn());
        let part = self.at_once.part_of(place.crossing, crossings) + 1;
        if part < self.at_once.parts(crossings) {
            Place {
                crossing: self.at_once.begins(part, crossings),
                ..place
            }
        } else if self.is_checked(place.turn()) {
            Place::check(place.turn())
        } else {
            self.after_leg(place.turn())
        }
    }

    /// Where it goes on when a leg is laid and looked at.
    pub(super) fn after_leg(&self, turn: Turn) -> Place {
        if !self.ends_a_pass(turn) {
            return Place::lay(Turn {
                leg: turn.leg + 1,
                ..turn
            });
        }
        match self
            .plan
            .laying()
            .turn(self.plan.laying().legs_before(turn) + 1)
        {
            Some(next) => Place::begin(next.pass, next.strand),
            None => Place::item(Phase::Lift, 1),
        }
    }

    fn last_part(&self, turn: Turn) -> Place {
        let crossings = self.met(turn);
        let part = self.at_once.parts(crossings) - 1;
        Place {
            crossing: self.at_once.begins(part, crossings),
            ..Place::lay(turn)
        }
    }
}

fn count(items: &[Item]) -> u16 {
    u16::try_from(items.len()).unwrap_or(u16::MAX)
}
