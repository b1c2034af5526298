//! Every step of the job, worked out when it is asked for.

use crate::knot::{Crossing, Turn};

use super::step::{Begin, Check, Finish, Follow, Landing, Lay};
use super::{Landmark, Phase, Place, Plan, Step, What};

/// How many crossings are told at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum AtOnce {
    /// Every leg whole.
    WholeLeg,
    /// At most so many crossings; 0 counts as 1.
    UpTo(u16),
}

impl Default for AtOnce {
    /// Four: as many as a tyer can hold in the head.
    fn default() -> Self {
        Self::UpTo(4)
    }
}

impl AtOnce {
    /// In how many parts a leg of this many crossings is told.
    pub fn parts(self, crossings: u16) -> u16 {
        match self {
            Self::WholeLeg => 1,
            Self::UpTo(most) => crossings.div_ceil(most.max(1)).max(1),
        }
    }

    /// The first crossing of the part (both from 0) when the parts are made as alike in size
    /// as can be.
    fn begins(self, part: u16, crossings: u16) -> u16 {
        let parts = u32::from(self.parts(crossings));
        #[expect(clippy::cast_possible_truncation, reason = "no more than `crossings`")]
        let begins = (u32::from(part) * u32::from(crossings) / parts) as u16;
        begins
    }

    /// The part (from 0) in which a crossing (from 0) is told.
    fn part_of(self, crossing: u16, crossings: u16) -> u16 {
        let parts = self.parts(crossings);
        (1..parts)
            .take_while(|part| self.begins(*part, crossings) <= crossing)
            .last()
            .unwrap_or(0)
    }
}

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
    plan: Plan,
    at_once: AtOnce,
}

impl Script {
    /// The script of a plan.
    pub const fn new(plan: Plan, at_once: AtOnce) -> Self {
        Self { plan, at_once }
    }

    /// The plan it tells.
    pub const fn plan(&self) -> &Plan {
        &self.plan
    }

    /// The first place of the job.
    pub const fn first() -> Place {
        Place::begin(1, 1)
    }

    /// The place itself, moved to the beginning of the part it lies in, or `None` when this
    /// job has no such place.
    pub fn settle(&self, place: Place) -> Option<Place> {
        let laying = self.plan.laying();
        let place = match place.phase {
            Phase::Finish => return Some(self.last()),
            Phase::Check => {
                let place = Place::check(place.turn());
                return self.ends_a_trip(place.turn()).then_some(place);
            }
            Phase::Lead | Phase::Follow if place.leg == 0 => Place::begin(place.pass, place.strand),
            Phase::Lead | Phase::Follow => Place {
                crossing: place.crossing,
                ..Place::lay(place.turn())
            },
        };
        // The beginning of a pass is there exactly when its first leg is.
        laying.leg(Turn {
            leg: place.leg.max(1),
            ..place.turn()
        })?;
        let crossings = self.met(place.turn());
        if place.crossing > crossings {
            return None;
        }
        let part = self.at_once.part_of(place.crossing, crossings);
        Some(Place {
            crossing: self.at_once.begins(part, crossings),
            ..place
        })
    }

    /// The next place, or `None` at the end. `place` must be [settled](Self::settle).
    pub fn next(&self, place: Place) -> Option<Place> {
        match place.phase {
            Phase::Finish => None,
            Phase::Check => {
                let laid = self.plan.laying().legs_before(place.turn()) + 1;
                Some(match self.plan.laying().turn(laid) {
                    Some(turn) => Place::begin(turn.pass, turn.strand),
                    None => self.last(),
                })
            }
            Phase::Lead | Phase::Follow if place.leg == 0 => Some(Place::lay(Turn {
                leg: 1,
                ..place.turn()
            })),
            Phase::Lead | Phase::Follow => Some(self.after_part(place)),
        }
    }

    /// The place before, or `None` at the first. `place` must be [settled](Self::settle).
    pub fn back(&self, place: Place) -> Option<Place> {
        let laying = self.plan.laying();
        match place.phase {
            Phase::Finish => laying.turn(laying.legs() - 1).map(Place::check),
            Phase::Check => Some(self.last_part(place.turn())),
            Phase::Lead | Phase::Follow if place.leg == 0 => {
                let laid = laying.legs_before(Turn {
                    leg: 1,
                    ..place.turn()
                });
                laying.turn(laid.checked_sub(1)?).map(Place::check)
            }
            Phase::Lead | Phase::Follow if place.crossing > 0 => {
                let crossings = self.met(place.turn());
                let part = self.at_once.part_of(place.crossing, crossings) - 1;
                Some(Place {
                    crossing: self.at_once.begins(part, crossings),
                    ..place
                })
            }
            Phase::Lead | Phase::Follow => Some(match place.leg {
                1 => Place::begin(place.pass, place.strand),
                leg => self.last_part(Turn {
                    leg: leg - 1,
                    ..place.turn()
                }),
            }),
        }
    }

    /// The step at a [settled](Self::settle) place, or `None` when the job has no such place.
    pub fn step(&self, place: Place) -> Option<Step> {
        let what = match place.phase {
            Phase::Finish => What::Finish(self.finish()),
            Phase::Check => What::Check(self.check(place.turn())),
            Phase::Lead if place.leg == 0 => What::Begin(self.begin(place.strand)),
            Phase::Follow if place.leg == 0 => What::Follow(self.follow(place)),
            Phase::Lead | Phase::Follow => What::Lay(self.lay(place)?),
        };
        Some(Step { place, what })
    }

    /// Every place from the first to the last.
    pub fn places(&self) -> impl Iterator<Item = Place> + '_ {
        std::iter::successors(Some(Self::first()), |place| self.next(*place))
    }

    /// Legs laid when the tyer stands before the step at `place`.
    pub fn progress(&self, place: Place) -> Progress {
        let laying = self.plan.laying();
        let legs = laying.legs();
        let laid = match place.phase {
            Phase::Finish => legs,
            Phase::Check => laying.legs_before(place.turn()) + 1,
            Phase::Lead | Phase::Follow => laying.legs_before(Turn {
                leg: place.leg.max(1),
                ..place.turn()
            }),
        };
        Progress { laid, legs }
    }

    fn last(&self) -> Place {
        Place {
            phase: Phase::Finish,
            pass: self.plan.laying().passes(),
            strand: self.plan.knot().strands(),
            leg: self.plan.knot().legs_per_strand(),
            crossing: 0,
        }
    }

    /// Whether a strand's pass is complete with this leg.
    fn ends_a_trip(&self, turn: Turn) -> bool {
        turn.leg == self.plan.knot().legs_per_strand() && self.plan.laying().leg(turn).is_some()
    }

    /// How many crossings a leg meets.
    fn met(&self, turn: Turn) -> u16 {
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
        } else if self.ends_a_trip(place.turn()) {
            Place::check(place.turn())
        } else {
            Place::lay(Turn {
                leg: place.leg + 1,
                ..place.turn()
            })
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

    fn begin(&self, strand: u16) -> Begin {
        Begin {
            strand,
            strands: self.plan.knot().strands(),
            pin: strand,
            hand: self.plan.hand,
            uneven: !self.plan.knot().is_even(),
        }
    }

    fn follow(&self, place: Place) -> Follow {
        Follow {
            pass: place.pass,
            strand: place.strand,
            strands: self.plan.knot().strands(),
            pin: place.strand,
            side: self.plan.side,
            inside_at_top: self
                .plan
                .side
                .turns_inside(crate::knot::Rim::Top, self.plan.hand),
        }
    }

    fn lay(&self, place: Place) -> Option<Lay> {
        let (laying, turn) = (self.plan.laying(), place.turn());
        let leg = laying.leg(turn)?;
        let knot = laying.knot();
        let met: Vec<Crossing> = laying.crossings(turn).collect();
        let crossings = u16::try_from(met.len()).unwrap_or(u16::MAX);
        let parts = self.at_once.parts(crossings);
        let part = self.at_once.part_of(place.crossing, crossings);
        let begins = usize::from(self.at_once.begins(part, crossings));
        let ends = usize::from(self.at_once.begins(part + 1, crossings));
        let landmark = (part > 0).then(|| Landmark::on(knot, leg, met[begins - 1].row));
        Some(Lay {
            turn,
            strands: knot.strands(),
            legs: knot.legs_per_strand(),
            leg,
            turns: knot.turns(),
            side: (turn.pass > 1).then_some(self.plan.side),
            hand: self.plan.hand,
            part: part + 1,
            parts,
            landmark,
            crossings: met[begins..ends].to_vec(),
            landing: if part + 1 < parts {
                Landing::OnTheWay
            } else {
                self.landing(turn)
            },
        })
    }

    fn landing(&self, turn: Turn) -> Landing {
        if turn.leg == self.plan.knot().legs_per_strand() {
            return Landing::Home;
        }
        match self.plan.laying().leg(turn) {
            Some(leg) if turn.pass > 1 => {
                if self.plan.side.turns_inside(leg.to.rim, self.plan.hand) {
                    Landing::Inside
                } else {
                    Landing::Outside
                }
            }
            _ => Landing::Round,
        }
    }

    fn check(&self, after: Turn) -> Check {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        // Every strand is as far along exactly when the next leg belongs to another pass of
        // the first strand, or there is none.
        let next = laying.turn(laying.legs_before(after) + 1);
        Check {
            after,
            passes: laying.passes(),
            strands: knot.strands(),
            bights: knot.bights(),
            cords: after.pass,
            rows: knot.rows(),
            is_whole: next.is_none_or(|turn| turn.strand == 1),
        }
    }

    fn finish(&self) -> Finish {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        Finish {
            leads: knot.leads(),
            bights: knot.bights(),
            passes: laying.passes(),
            strands: knot.strands(),
        }
    }
}
