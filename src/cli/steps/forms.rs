//! The shapes of the JSON document of `marlinspeak steps`.

use serde::{Serialize, Serializer};

use crate::bench::Millimetres;
use crate::cli::ground_form::GroundForm;
use crate::cli::rigging_forms::{ItemForm, TaskForm};
use crate::guide::{FinishTask, LayStep, Plan, Script, Step, What};
use crate::knot::{Crossing, Leg, Pin};
use crate::words::Words;

#[derive(Serialize)]
pub(super) struct StepsDocument<'a> {
    knot: KnotForm,
    /// What it covers, when that is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    ground: Option<GroundForm>,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    in_place: bool,
    steps: StepForms<'a>,
}

impl<'a> StepsDocument<'a> {
    pub(super) fn of(script: &'a Script, words: &'a Words) -> Self {
        let setup = script.plan().setup();
        Self {
            knot: KnotForm::of(script.plan()),
            ground: setup.map(|setup| GroundForm::of(setup.ground())),
            in_place: setup.is_some_and(|setup| setup.in_place),
            steps: StepForms { script, words },
        }
    }
}

#[derive(Serialize)]
struct KnotForm {
    leads: u16,
    bights: u16,
    nested: u16,
    lands: u16,
    passes: u16,
    weave: String,
    side: &'static str,
    hand: &'static str,
    strands: u16,
    crossings: u32,
}

impl KnotForm {
    fn of(plan: &Plan) -> Self {
        let knot = plan.knot();
        Self {
            leads: knot.leads(),
            bights: knot.bights(),
            nested: knot.nested(),
            lands: knot.lattice().lands(),
            passes: plan.laying().passes(),
            weave: knot.weave().to_string(),
            side: plan.side.into(),
            hand: plan.hand.into(),
            strands: knot.strands(),
            crossings: knot.crossings(),
        }
    }
}

/// The steps, written as they are worked out: a large tie is never held in memory.
struct StepForms<'a> {
    script: &'a Script,
    words: &'a Words,
}

impl Serialize for StepForms<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.script.steps().enumerate().map(|(index, step)| {
            let said = self.words.say(&step);
            let shown = self.words.show(self.script.plan().knot(), &step);
            StepForm {
                number: index + 1,
                seconds: (self.words.seconds(&said) * 10.0).round() / 10.0,
                say: said.into(),
                show: shown.to_string(),
                show_caution: shown.caution,
                what: WhatForm::of(&step),
            }
        }))
    }
}

#[derive(Serialize)]
struct StepForm {
    number: usize,
    #[serde(flatten)]
    what: WhatForm,
    /// How long `say` takes to be spoken.
    seconds: f64,
    say: String,
    show: String,
    /// Where the step can hurt somebody; `say` tells it too.
    #[serde(skip_serializing_if = "Option::is_none")]
    show_caution: Option<String>,
}

#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
enum WhatForm {
    Kit {
        item: u16,
        items: u16,
        /// The first thing of the page, beside the step, as when each had a step of its own.
        #[serde(flatten)]
        first: Option<ItemForm>,
        things: Vec<ItemForm>,
    },
    Rig {
        step: u16,
        steps: u16,
        #[serde(flatten)]
        first: Option<TaskForm>,
        things: Vec<TaskForm>,
    },
    Begin {
        pass: u16,
        strand: u16,
        at: PinForm,
        #[serde(skip_serializing_if = "Option::is_none")]
        cord: Option<String>,
    },
    Follow {
        pass: u16,
        strand: u16,
        at: PinForm,
        side: &'static str,
        added: bool,
        #[serde(skip_serializing_if = "Option::is_none")]
        cord: Option<String>,
    },
    Lay(LayForm),
    Check {
        pass: u16,
        strand: u16,
        leg: u16,
        round: u16,
        rounds: u16,
        cords: u16,
        at: PinForm,
        crossings: Option<u32>,
    },
    Lift {
        task: &'static str,
    },
    Fair {
        round: u16,
        rounds: u16,
        /// How many legs this step is about: those of a round, or the one that is named.
        legs: u32,
        #[serde(flatten)]
        leg: Option<FairedLegForm>,
        draw_mm: Option<f64>,
    },
    Finish(FinishForm),
}

#[derive(Serialize)]
#[serde(tag = "task", rename_all = "lowercase")]
enum FinishForm {
    Tuck {
        strand: u16,
        end: &'static str,
        at: PinForm,
        along: LegForm,
        /// The rim towards which the end lies of the cords that are there.
        toward: &'static str,
        crossings: Vec<CrossingForm>,
        under: Option<CrossingForm>,
    },
    Join {
        pass: u16,
        strand: u16,
        leg: u16,
        row: u16,
    },
    Trim {
        ends: u16,
    },
    Seal {
        ends: u16,
    },
    Press,
    Done,
}

/// The leg that is faired, where legs are told one by one.
#[derive(Serialize)]
struct FairedLegForm {
    pass: u16,
    strand: u16,
    leg: u16,
    from: PinForm,
    to: PinForm,
}

#[derive(Serialize)]
struct LayForm {
    pass: u16,
    strand: u16,
    leg: u16,
    #[serde(skip_serializing_if = "Option::is_none")]
    part: Option<u16>,
    #[serde(skip_serializing_if = "Option::is_none")]
    parts: Option<u16>,
    from: PinForm,
    to: PinForm,
    heading: &'static str,
    turns: u16,
    crossings: Vec<CrossingForm>,
    side: Option<&'static str>,
}

#[derive(Serialize)]
struct CrossingForm {
    row: u16,
    over: bool,
    cords: u16,
    of: LegForm,
}

#[derive(Serialize)]
struct LegForm {
    from: PinForm,
    to: PinForm,
}

#[derive(Serialize)]
struct PinForm {
    rim: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    row: Option<u8>,
    pin: u16,
}

impl WhatForm {
    fn of(step: &Step) -> Self {
        match &step.what {
            What::Kit(kit) => Self::Kit {
                item: kit.number,
                items: kit.items,
                first: kit.things.first().map(ItemForm::of),
                things: kit.things.iter().map(ItemForm::of).collect(),
            },
            What::Rig(rig) => Self::Rig {
                step: rig.number,
                steps: rig.tasks,
                first: rig.things.first().map(TaskForm::of),
                things: rig.things.iter().map(TaskForm::of).collect(),
            },
            What::Begin(begin) => Self::Begin {
                pass: 1,
                strand: begin.strand,
                at: PinForm::of(begin.pin),
                cord: begin.cord.clone(),
            },
            What::Follow(follow) => Self::Follow {
                pass: follow.pass,
                strand: follow.strand,
                at: PinForm::of(follow.pin),
                side: follow.side.into(),
                added: follow.is_added,
                cord: follow.cord.clone(),
            },
            What::Lay(lay) => Self::Lay(LayForm::of(lay)),
            What::Check(check) => Self::Check {
                pass: check.after.pass,
                strand: check.after.strand,
                leg: check.after.leg,
                round: check.round,
                rounds: check.rounds,
                cords: check.cords,
                at: PinForm::of(check.at),
                crossings: check.crossings,
            },
            What::Lift(lift) => Self::Lift {
                task: lift.task.into(),
            },
            What::Fair(fair) => Self::Fair {
                round: fair.round,
                rounds: fair.rounds,
                legs: fair.in_round.map_or(1, |round| round.legs),
                leg: fair.in_round.is_none().then(|| FairedLegForm {
                    pass: fair.pass_leg.pass,
                    strand: fair.pass_leg.strand,
                    leg: fair.pass_leg.leg,
                    from: PinForm::of(fair.leg.from),
                    to: PinForm::of(fair.leg.to),
                }),
                draw_mm: fair.draw.map(Millimetres::get),
            },
            What::Finish(finish) => Self::Finish(match &finish.task {
                FinishTask::Tuck(tuck) => FinishForm::Tuck {
                    strand: tuck.strand,
                    end: if tuck.is_working {
                        "working"
                    } else {
                        "standing"
                    },
                    at: PinForm::of(tuck.pin),
                    along: LegForm::of(tuck.along),
                    toward: tuck.lane.into(),
                    crossings: tuck.crossings.iter().map(CrossingForm::of).collect(),
                    under: tuck.crossings.last().map(CrossingForm::of),
                },
                FinishTask::Join(join) => FinishForm::Join {
                    pass: join.pass_leg.pass,
                    strand: join.pass_leg.strand,
                    leg: join.pass_leg.leg,
                    row: join.row,
                },
                FinishTask::Trim { ends } => FinishForm::Trim { ends: *ends },
                FinishTask::Seal { ends } => FinishForm::Seal { ends: *ends },
                FinishTask::Press => FinishForm::Press,
                FinishTask::Done { .. } => FinishForm::Done,
            }),
        }
    }
}

impl LegForm {
    fn of(leg: Leg) -> Self {
        Self {
            from: PinForm::of(leg.from),
            to: PinForm::of(leg.to),
        }
    }
}

impl LayForm {
    fn of(lay: &LayStep) -> Self {
        let in_parts = lay.parts > 1;
        Self {
            pass: lay.pass_leg.pass,
            strand: lay.pass_leg.strand,
            leg: lay.pass_leg.leg,
            part: in_parts.then_some(lay.part),
            parts: in_parts.then_some(lay.parts),
            from: PinForm::of(lay.leg.from),
            to: PinForm::of(lay.leg.to),
            heading: lay.leg.heading().into(),
            turns: lay.turns,
            crossings: lay.crossings.iter().map(CrossingForm::of).collect(),
            side: lay.side.map(Into::into),
        }
    }
}

impl CrossingForm {
    fn of(crossing: &Crossing) -> Self {
        Self {
            row: crossing.row,
            over: crossing.over,
            cords: crossing.cords,
            of: LegForm::of(crossing.of),
        }
    }
}

impl PinForm {
    fn of(pin: Pin) -> Self {
        Self {
            rim: pin.rim.into(),
            row: pin.row.is_one_of_several().then_some(pin.row.number),
            pin: pin.number,
        }
    }
}
