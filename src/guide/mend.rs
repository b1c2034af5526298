//! When something is wrong: where the tyer is, taking a leg back, finding a lost place.

use crate::knot::{Crossing, Leg, Pin, Rim, Turn};

use super::{Phase, Place, Script};

/// Where the cord is, and how much is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whereabouts {
    /// The part of the job; a look at the work belongs to the pass it looks at.
    pub phase: Phase,
    /// The pass that is being laid.
    pub pass: u16,
    /// Its strand.
    pub strand: u16,
    /// How many strands the knot has.
    pub strands: u16,
    /// Legs of this pass of the strand that lie on the tube.
    pub laid: u16,
    /// Legs in one pass of a strand.
    pub legs: u16,
    /// The pin that the cord went round last, or where its tail is.
    pub at: Pin,
    /// The pin that comes next, while there is one.
    pub next: Option<Pin>,
    /// Legs still to be laid in the whole tie.
    pub left: u32,
}

/// A leg to be taken out again, or as much of it as was laid.
#[derive(Clone, Debug, PartialEq)]
pub struct TakeBack {
    /// Which leg of which pass.
    pub turn: Turn,
    /// How many strands the knot has.
    pub strands: u16,
    /// The leg.
    pub leg: Leg,
    /// Whether it was laid to its end, so that it must come off its pin first.
    pub is_whole: bool,
    /// Its crossings in the order they are undone: the last one laid comes first.
    pub crossings: Vec<Crossing>,
    /// Where the tyer stands when it is out.
    pub place: Place,
}

impl Script {
    /// The last leg that lies whole on the tube when the tyer stands at `place`.
    pub fn laid_last(&self, place: Place) -> Option<Turn> {
        let laying = self.plan.laying();
        laying.turn(self.progress(place).laid.checked_sub(1)?)
    }

    /// Where the tyer is at a [settled](Self::settle) place.
    pub fn whereabouts(&self, place: Place) -> Whereabouts {
        let (laying, knot) = (self.plan.laying(), self.plan.knot());
        let legs = knot.legs_per_strand();
        let progress = self.progress(place);
        let (turn, laid) = match place.phase {
            Phase::Kit | Phase::Rig => (Place::begin(1, 1).turn(), 0),
            Phase::Check => (place.turn(), place.leg),
            Phase::Lead | Phase::Follow => (
                Turn {
                    leg: place.leg.max(1),
                    ..place.turn()
                },
                place.leg.saturating_sub(1),
            ),
            Phase::Lift | Phase::Fair | Phase::Finish => (
                Turn {
                    pass: laying.passes(),
                    strand: knot.strands(),
                    leg: legs,
                },
                legs,
            ),
        };
        let leg = |turn| laying.leg(turn);
        // The cord stands where the leg before landed, or where this pass begins.
        let at = match laid {
            0 => leg(Turn { leg: 1, ..turn }).map(|leg| leg.from),
            laid => leg(Turn { leg: laid, ..turn }).map(|leg| leg.to),
        };
        let next = leg(Turn {
            leg: laid + 1,
            ..turn
        })
        .map(|leg| leg.to);
        Whereabouts {
            phase: place.phase,
            pass: turn.pass,
            strand: turn.strand,
            strands: knot.strands(),
            laid,
            legs,
            at: at.unwrap_or(Pin::bottom(turn.strand)),
            next,
            left: progress.legs - progress.laid,
        }
    }

    /// How to take out what was laid last when the tyer stands at `place`; `None` when the
    /// tube is empty or the knot is off it.
    pub fn take_back(&self, place: Place) -> Option<TakeBack> {
        if matches!(place.phase, Phase::Fair | Phase::Finish) {
            return None;
        }
        let laying = self.plan.laying();
        let is_part = matches!(place.phase, Phase::Lead | Phase::Follow) && place.crossing > 0;
        let turn = if is_part {
            place.turn()
        } else {
            self.laid_last(place)?
        };
        let leg = laying.leg(turn)?;
        let laid = if is_part {
            usize::from(place.crossing)
        } else {
            usize::MAX
        };
        let mut crossings: Vec<Crossing> = laying.crossings(turn).take(laid).collect();
        crossings.reverse();
        Some(TakeBack {
            turn,
            strands: self.plan.knot().strands(),
            leg,
            is_whole: !is_part,
            crossings,
            place: Place::lay(turn),
        })
    }
}

/// A question to a tyer who has lost the place, to be answered with yes or no.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// Did the cord in hand go round this pin last, or begin there?
    LastPin(Pin),
    /// Have so many cords come to this pin?
    Came {
        /// The pin.
        pin: Pin,
        /// Cords that have come to it, the one in hand among them.
        cords: u16,
    },
    /// Is there nothing of the cord in hand at this pin but its tail?
    OnlyTail {
        /// The pin.
        pin: Pin,
        /// The pass that would begin there.
        pass: u16,
    },
    /// Has the cord crossed so many times since that pin?
    Crossed {
        /// The pin.
        pin: Pin,
        /// Crossings made since.
        crossings: u16,
    },
}

/// Finding a lost place by at most three questions: which pin, how many cords on it, how many
/// crossings since. Each is put as one likely answer after the other, the likeliest first.
#[derive(Clone, Debug)]
pub struct Search {
    pins: Vec<Pin>,
    passes: u16,
    recorded: Place,
    stage: Stage,
    /// The answer that is proposed now, from 0; it starts anew after the last.
    proposal: usize,
}

#[derive(Clone, Debug)]
enum Stage {
    Pin,
    Cords(Vec<Question>),
    Crossings(Pin, Place, Vec<u16>),
    Found(Place),
}

impl Search {
    /// Begins a search near the place that was recorded.
    pub fn new(script: &Script, recorded: Place) -> Self {
        let laying = script.plan.laying();
        let per_trip = u32::from(script.plan.knot().legs_per_strand());
        let recorded = script.settle(recorded).unwrap_or_else(|| script.first());
        let whereabouts = script.whereabouts(recorded);
        // From the recorded pin outwards, back before on: who loses count is sooner ahead of
        // the record than behind it by a press too many, or behind by one forgotten.
        let mut pins = vec![whereabouts.at];
        let laid = script.progress(recorded).laid;
        let landing = |laid: u32| {
            let turn = laying.turn(laid.checked_sub(1)?)?;
            laying.leg(turn).map(|leg| leg.to)
        };
        let all = usize::from(script.plan.knot().bights()) * 2;
        for apart in 1..=laying.legs().max(per_trip) {
            if pins.len() == all {
                break;
            }
            for pin in [
                laid.checked_sub(apart).and_then(landing),
                landing(laid + apart),
            ] {
                pins.extend(pin.filter(|pin| !pins.contains(pin)));
            }
        }
        Self {
            pins,
            passes: laying.passes(),
            recorded,
            stage: Stage::Pin,
            proposal: 0,
        }
    }

    /// The question that stands, or `None` when the place is found.
    pub fn question(&self) -> Option<Question> {
        match &self.stage {
            Stage::Pin => self.pins.get(self.proposal).copied().map(Question::LastPin),
            Stage::Cords(questions) => questions.get(self.proposal).copied(),
            Stage::Crossings(pin, _, crossings) => {
                crossings
                    .get(self.proposal)
                    .map(|crossings| Question::Crossed {
                        pin: *pin,
                        crossings: *crossings,
                    })
            }
            Stage::Found(_) => None,
        }
    }

    /// The place, when it is found.
    pub fn found(&self) -> Option<Place> {
        match self.stage {
            Stage::Found(place) => Some(place),
            _ => None,
        }
    }

    /// Takes a no: the next likely answer is proposed.
    pub fn no(&mut self) {
        let proposals = match &self.stage {
            Stage::Pin => self.pins.len(),
            Stage::Cords(questions) => questions.len(),
            Stage::Crossings(_, _, crossings) => crossings.len(),
            Stage::Found(_) => 1,
        };
        self.proposal = (self.proposal + 1) % proposals.max(1);
    }

    /// Takes a yes.
    pub fn yes(&mut self, script: &Script) {
        let Some(question) = self.question() else {
            return;
        };
        self.proposal = 0;
        self.stage = match question {
            Question::LastPin(pin) => self.ask_for_cords(script, pin),
            Question::Came { pin, cords } => {
                let leg = script.plan.knot().leg_to(pin);
                let turn = script.plan.laying().turn_of(cords, leg);
                self.ask_for_crossings(script, pin, script.after_leg(turn))
            }
            Question::OnlyTail { pin, pass } => {
                let strand = script.plan.knot().leg_from(pin).strand;
                self.ask_for_crossings(script, pin, Place::begin(pass, strand))
            }
            Question::Crossed { crossings, .. } => match &self.stage {
                Stage::Crossings(_, place, _) => {
                    let place = Place {
                        crossing: crossings,
                        ..*place
                    };
                    Stage::Found(script.settle(place).unwrap_or(place))
                }
                _ => return,
            },
        };
    }

    fn ask_for_cords(&self, script: &Script, pin: Pin) -> Stage {
        let plan = &script.plan;
        let mut questions: Vec<Question> = (1..=self.passes)
            .map(|cords| Question::Came { pin, cords })
            .collect();
        let strand = plan.knot().leg_from(pin).strand;
        let begins =
            |pass: &u16| plan.begins_a_cord(*pass) && plan.start_pin(*pass, strand) == pin.number;
        if pin.rim == Rim::Bottom {
            let tails = (1..=self.passes).filter(begins);
            questions.extend(tails.map(|pass| Question::OnlyTail { pin, pass }));
        }
        // What the record says comes first.
        let whereabouts = script.whereabouts(self.recorded);
        questions.sort_by_key(|question| match *question {
            Question::Came { cords, .. } => {
                (whereabouts.laid == 0, cords.abs_diff(whereabouts.pass))
            }
            Question::OnlyTail { pass, .. } => {
                (whereabouts.laid > 0, pass.abs_diff(whereabouts.pass))
            }
            _ => (true, u16::MAX),
        });
        Stage::Cords(questions)
    }

    fn ask_for_crossings(&self, script: &Script, pin: Pin, place: Place) -> Stage {
        let turn = Turn {
            leg: place.leg.max(1),
            ..place.turn()
        };
        let is_laying = matches!(place.phase, Phase::Lead | Phase::Follow);
        let crossings = if is_laying { script.met(turn) } else { 0 };
        let parts = script.at_once.parts(crossings);
        if parts == 1 {
            return Stage::Found(place);
        }
        let mut begins: Vec<u16> = (0..parts)
            .map(|part| script.at_once.begins(part, crossings))
            .collect();
        begins.sort_by_key(|begins| begins.abs_diff(self.recorded.crossing));
        // Part of a first leg may lie there already, so its pass has begun.
        Stage::Crossings(pin, Place::lay(turn), begins)
    }
}
