//! Every step of the job, worked out when it is asked for.

use crate::bench::Rig;
use crate::knot::PassLeg;

use super::finishing::FinishingItem;
use super::rigging::Rigging;
use super::{AtOnce, Checks, Place, Plan, Step, What};

/// How far the tyer has come.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Script};
///
/// // Doubled, 5 lead 7 bight has 28 legs, and all of them lie when it is lifted off the tube.
/// let script = Script::new(Plan::read("5", "7", "2", "1")?, AtOnce::default());
/// let progress = script.progress(script.last());
/// assert_eq!((progress.laid, progress.legs), (28, 28));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LegsLaid {
    /// Legs that lie on the tube.
    pub laid: u32,
    /// Legs of the whole tie.
    pub legs: u32,
}

/// The steps of a plan, from any place to the next. None is kept: the last leg of a long knot is
/// as quick to tell as the first.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Script};
///
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// // One press goes on, and one goes back to where it was.
/// let begin = script.first();
/// let first_leg = script.next(begin).unwrap();
/// assert!(matches!(first_leg, Place::Lay { .. }));
/// assert_eq!(script.back(first_leg), Some(begin));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Script {
    pub(super) plan: Plan,
    pub(super) at_once: AtOnce,
    checks: Checks,
    /// Whether a round of fairing is told leg by leg, and not once for all its legs.
    fairs_by_leg: bool,
    /// Whether every thing of bag and rigging is told by itself.
    packs_one_by_one: bool,
    /// Whether the legs that the hands learn on are told crossing by crossing.
    pub(super) teaches: bool,
    /// From this leg on the hands learn again: something was wrong there.
    pub(super) learns_again: Option<PassLeg>,
    /// What is done before the first leg, when that is known.
    rigging: Option<Rigging>,
    /// What is done to lift the knot, and to finish it: a handful of things.
    pub(super) lift: Vec<FinishingItem>,
    pub(super) finish: Vec<FinishingItem>,
}

impl Script {
    /// The script of a plan, with a look at the work after every round. Before the first leg it
    /// has steps when the plan has a tube that can be [rigged](Plan::rig) for the knot.
    pub fn new(plan: Plan, at_once: AtOnce) -> Self {
        let (lift, finish) = (FinishingItem::lift(&plan), FinishingItem::finish(&plan));
        Self {
            rigging: Rigging::of(&plan),
            plan,
            at_once,
            checks: Checks::default(),
            fairs_by_leg: false,
            packs_one_by_one: false,
            teaches: false,
            learns_again: None,
            lift,
            finish,
        }
    }

    /// The script of another plan, told in these portions and else as this one is.
    #[must_use]
    pub fn told_in(&self, plan: Plan, at_once: AtOnce) -> Self {
        Self::new(plan, at_once)
            .with_checks(self.checks)
            .fairing_by_leg(self.fairs_by_leg)
            .packing_one_by_one(self.packs_one_by_one)
            .learning_again(self.learns_again)
            .teaching(self.teaches)
    }

    /// The same of a plan that says more of its cords.
    #[must_use]
    pub fn with_plan(&self, plan: Plan) -> Self {
        self.told_in(plan, self.at_once)
    }

    /// The script with looks at the work as often as this.
    #[must_use]
    pub fn with_checks(self, checks: Checks) -> Self {
        Self { checks, ..self }
    }

    /// The script with the legs of a round of fairing told one by one, or all of them at once.
    #[must_use]
    pub fn fairing_by_leg(self, fairs_by_leg: bool) -> Self {
        Self {
            fairs_by_leg,
            ..self
        }
    }

    /// The same with every thing of bag and rigging told by itself, or several on a page.
    #[must_use]
    pub fn packing_one_by_one(self, one_by_one: bool) -> Self {
        Self {
            rigging: self.rigging.map(|rigging| rigging.one_by_one(one_by_one)),
            packs_one_by_one: one_by_one,
            ..self
        }
    }

    /// Whether every thing of bag and rigging is told by itself.
    pub const fn packs_one_by_one(&self) -> bool {
        self.packs_one_by_one
    }

    /// Whether a round of fairing is told leg by leg.
    pub const fn fairs_by_leg(&self) -> bool {
        self.fairs_by_leg
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

    /// The tube rigged for the plan, when there is one and it takes the knot. Why it does not,
    /// [`Plan::rig`] says.
    pub fn rig(&self) -> Option<&Rig> {
        self.plan.rig().unwrap_or_default()
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
        Place::Finish {
            task: self.finishes(),
        }
    }

    /// The next place, or `None` at the end. `place` must be [settled](Self::settle).
    pub fn next(&self, place: Place) -> Option<Place> {
        let first = PassLeg::FIRST;
        Some(match place {
            Place::Kit { .. } | Place::Rig { .. } => self
                .rigging
                .as_ref()
                .and_then(|rigging| rigging.next(place))
                .unwrap_or(Place::begin(1, 1)),
            Place::Begin { .. } => Place::lay(place.laying()?),
            Place::Lay { pass_leg, crossing } => self.after_part(pass_leg, crossing),
            Place::Check { pass_leg } => self.after_leg(pass_leg),
            Place::Lift { task } if task < self.lifts() => Place::Lift { task: task + 1 },
            Place::Lift { .. } => Place::fair(1, first),
            Place::Fair { round, pass_leg } => match self.fair_after(pass_leg) {
                Some(pass_leg) => Place::fair(round, pass_leg),
                None if round < self.fair_rounds() => Place::fair(round + 1, first),
                None => Place::Finish { task: 1 },
            },
            Place::Finish { task } if task < self.finishes() => Place::Finish { task: task + 1 },
            Place::Finish { .. } => return None,
        })
    }

    /// The place before, or `None` at the first. `place` must be [settled](Self::settle).
    pub fn back(&self, place: Place) -> Option<Place> {
        let laying = self.plan.laying();
        match place {
            Place::Kit { .. } | Place::Rig { .. } => self.rigging.as_ref()?.back(place),
            Place::Begin { .. } => {
                let laid = laying.legs_before(place.laying()?);
                match laid.checked_sub(1) {
                    Some(before) => laying.nth_leg(before).map(Place::check),
                    None => self.rigging.as_ref().map(Rigging::last),
                }
            }
            Place::Lay { pass_leg, crossing } if crossing > 0 => {
                let crossings = self.met(pass_leg);
                let part = self.told_at_once(pass_leg).part_of(crossing, crossings) - 1;
                Some(Place::Lay {
                    pass_leg,
                    crossing: self.told_at_once(pass_leg).begins(part, crossings),
                })
            }
            Place::Lay { pass_leg, .. } if pass_leg.leg == 1 => {
                Some(Place::begin(pass_leg.pass, pass_leg.strand))
            }
            Place::Lay { pass_leg, .. } => {
                let before = PassLeg {
                    leg: pass_leg.leg - 1,
                    ..pass_leg
                };
                Some(if self.is_checked(before) {
                    Place::check(before)
                } else {
                    self.last_part(before)
                })
            }
            Place::Check { pass_leg } => Some(self.last_part(pass_leg)),
            Place::Lift { task } if task > 1 => Some(Place::Lift { task: task - 1 }),
            Place::Lift { .. } => laying.nth_leg(laying.legs() - 1).map(Place::check),
            Place::Fair { round, pass_leg } => Some(match self.fair_before(pass_leg) {
                Some(pass_leg) => Place::fair(round, pass_leg),
                None if round > 1 => Place::fair(round - 1, self.fair_last()),
                None => Place::Lift { task: self.lifts() },
            }),
            Place::Finish { task } if task > 1 => Some(Place::Finish { task: task - 1 }),
            Place::Finish { .. } => Some(Place::fair(self.fair_rounds(), self.fair_last())),
        }
    }

    /// The step at a [settled](Self::settle) place, or `None` when the job has no such place.
    pub fn step(&self, place: Place) -> Option<Step> {
        let item = |items: &[FinishingItem], number: u16| {
            let index = usize::from(number.checked_sub(1)?);
            items.get(index).map(FinishingItem::what)
        };
        let what = match place {
            Place::Kit { .. } | Place::Rig { .. } => self.rigging.as_ref()?.what(place)?,
            Place::Begin { pass: 1, strand } => What::Begin(self.begin(strand)),
            Place::Begin { pass, strand } => What::Follow(self.follow(pass, strand)),
            Place::Lay { pass_leg, crossing } => What::Lay(self.lay(pass_leg, crossing)?),
            Place::Check { pass_leg } => What::Check(self.check(pass_leg)?),
            Place::Lift { task } => item(&self.lift, task)?,
            Place::Fair { round, pass_leg } => What::Fair(self.fair(round, pass_leg)?),
            Place::Finish { task } => item(&self.finish, task)?,
        };
        Some(Step {
            is_taught: self.is_taught(place),
            rims: self.plan.rims(),
            place,
            what,
        })
    }

    /// Every place from the first to the last.
    pub fn places(&self) -> impl Iterator<Item = Place> + '_ {
        std::iter::successors(Some(self.first()), |place| self.next(*place))
    }

    /// Every step from the first to the last.
    pub fn steps(&self) -> impl Iterator<Item = Step> + '_ {
        self.places().filter_map(|place| self.step(place))
    }

    /// Legs laid when the tyer stands before the step at `place`.
    pub fn progress(&self, place: Place) -> LegsLaid {
        let laying = self.plan.laying();
        let legs = laying.legs();
        let laid = match place {
            Place::Kit { .. } | Place::Rig { .. } => 0,
            Place::Begin { pass, strand } => laying.legs_before(PassLeg {
                pass,
                strand,
                leg: 1,
            }),
            Place::Lay { pass_leg, .. } => laying.legs_before(pass_leg),
            Place::Check { pass_leg } => laying.legs_before(pass_leg) + 1,
            Place::Lift { .. } | Place::Fair { .. } | Place::Finish { .. } => legs,
        };
        LegsLaid { laid, legs }
    }

    /// Whether there is a look at the work after this leg.
    pub(super) fn is_checked(&self, pass_leg: PassLeg) -> bool {
        self.ends_a_pass(pass_leg)
            || self.checks == Checks::EachRound
                && pass_leg.leg.is_multiple_of(2)
                && self.shows_more(pass_leg)
    }

    /// Whether the falling leg of a round crosses more than that of the round before: then there is
    /// something new to see. What is looked for is the order of overs and unders, and one crossing
    /// alone has none; a follower shows nothing that the first cord does not.
    fn shows_more(&self, pass_leg: PassLeg) -> bool {
        let before = pass_leg.leg.checked_sub(2).filter(|leg| *leg > 0);
        let met_before = before.map_or(0, |leg| self.met(PassLeg { leg, ..pass_leg }));
        pass_leg.pass == 1 && self.met(pass_leg) > met_before.max(1)
    }

    /// Whether a strand's pass is complete with this leg.
    pub(super) fn ends_a_pass(&self, pass_leg: PassLeg) -> bool {
        pass_leg.leg == self.plan.knot().legs_of(pass_leg.strand)
    }

    /// How many crossings a leg meets.
    pub(super) fn met(&self, pass_leg: PassLeg) -> u16 {
        self.plan.laying().met(pass_leg)
    }

    /// Where it goes on after the part of a leg that begins behind so many crossings.
    fn after_part(&self, pass_leg: PassLeg, crossing: u16) -> Place {
        let crossings = self.met(pass_leg);
        let part = self.told_at_once(pass_leg).part_of(crossing, crossings) + 1;
        if part < self.told_at_once(pass_leg).parts(crossings) {
            Place::Lay {
                pass_leg,
                crossing: self.told_at_once(pass_leg).begins(part, crossings),
            }
        } else if self.is_checked(pass_leg) {
            Place::check(pass_leg)
        } else {
            self.after_leg(pass_leg)
        }
    }

    /// Where it goes on when a leg is laid and looked at.
    pub(super) fn after_leg(&self, pass_leg: PassLeg) -> Place {
        if !self.ends_a_pass(pass_leg) {
            return Place::lay(PassLeg {
                leg: pass_leg.leg + 1,
                ..pass_leg
            });
        }
        match self
            .plan
            .laying()
            .nth_leg(self.plan.laying().legs_before(pass_leg) + 1)
        {
            Some(next) => Place::begin(next.pass, next.strand),
            None => Place::Lift { task: 1 },
        }
    }

    fn last_part(&self, pass_leg: PassLeg) -> Place {
        let crossings = self.met(pass_leg);
        let part = self.told_at_once(pass_leg).parts(crossings) - 1;
        Place::Lay {
            pass_leg,
            crossing: self.told_at_once(pass_leg).begins(part, crossings),
        }
    }
}

fn count(items: &[FinishingItem]) -> u16 {
    u16::try_from(items.len()).unwrap_or(u16::MAX)
}
