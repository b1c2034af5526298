//! Steps as they are spoken.

use fluent::{FluentArgs, fluent_args};

use super::Words;
use super::args::Selector;
use super::step_args::{
    begin_args, check_args, crossing_args, fair_args, finish_args, follow_args, lay_args, lift_args,
};
use crate::guide::{Caution, Lay, Phase, Place, Plan, Script, Step, What, Whereabouts};
use crate::knot::Turn;

impl Words {
    /// What is spoken for a step: exactly this, free of markup. A caution comes before what can
    /// hurt.
    pub fn say(&self, step: &Step) -> String {
        let said = match &step.what {
            What::Kit(kit) => self.say_kit(kit),
            What::Rig(step) => self.say_rig(step),
            What::Begin(begin) => self.by_detail("begin-say", &begin_args(begin)),
            What::Follow(follow) => self.by_detail("follow-say", &follow_args(follow)),
            What::Lay(lay) => self.say_lay(lay),
            What::Check(check) => self.by_detail("check-say", &check_args(check)),
            What::Lift(lift) => self.by_detail("lift-say", &lift_args(lift)),
            What::Fair(fair) => self.by_detail("fair-say", &fair_args(fair)),
            What::Finish(finish) => self.by_detail("finish-say", &finish_args(finish)),
        };
        let Some(caution) = step.caution_to_say() else {
            return said;
        };
        let caution_said = self.text(
            "caution-say",
            &fluent_args! { "caution" => caution.selector() },
        );
        match caution {
            // What the knot is for, and who should not play with it, comes when it is done.
            Caution::Load | Caution::Children => format!("{said} {caution_said}"),
            _ => format!("{caution_said} {said}"),
        }
    }

    /// Where a tie stands, and how much is left. `minutes` is the time left at the tyer's own
    /// pace, when that is known.
    pub fn say_whereabouts(&self, script: &Script, place: Place, minutes: Option<u32>) -> String {
        let Whereabouts {
            phase,
            pass,
            strand,
            strands,
            laid,
            legs,
            at,
            next,
            crossed,
            left,
            fairing,
        } = script.whereabouts(place);
        let phase = match phase {
            Phase::Kit | Phase::Rig => return self.say_where_rigging(script, place),
            Phase::Lead | Phase::Follow | Phase::Check => "laying",
            Phase::Lift => "lift",
            Phase::Fair => "fair",
            Phase::Finish => "finish",
        };
        let (round, faired) = fairing.unwrap_or((
            0,
            Turn {
                pass,
                strand,
                leg: 0,
            },
        ));
        let args = fluent_args! {
            "phase" => phase, "pass" => faired.pass, "strand" => faired.strand,
            "strands" => strands, "passes" => script.plan().laying().passes(),
            "round" => round, "leg" => faired.leg, "crossed" => crossed,
            "laid" => laid, "legs" => legs, "left" => left,
            "at-rim" => at.rim.selector(), "at" => at.number,
            "next-rim" => next.map_or("none", |pin| pin.rim.selector()),
            "next" => next.map_or(0, |pin| pin.number),
            "timed" => minutes.is_some().selector(), "minutes" => minutes.unwrap_or(0),
        };
        self.text("where-say", &args)
    }

    /// Which tie is taken up, and where it stands.
    pub fn say_taking_up(&self, script: &Script, place: Place) -> String {
        let plan: &Plan = script.plan();
        let args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
        };
        let taking_up = self.text("where-taking-up-say", &args);
        format!("{taking_up} {}", self.say_whereabouts(script, place, None))
    }

    fn say_lay(&self, lay: &Lay) -> String {
        let args = lay_args(lay);
        let way = if lay.landmark.is_some() {
            "lay-say-way-on"
        } else {
            "lay-say-way"
        };
        let mut sentences = vec![self.by_detail(way, &args)];
        for (index, crossing) in lay.crossings.iter().enumerate() {
            let args = crossing_args(crossing, index, lay.crossings.len());
            sentences.push(self.by_detail("lay-say-crossing", &args));
        }
        if lay.crossings.is_empty() {
            sentences.push(self.by_detail("lay-say-clear", &args));
        }
        sentences.push(self.by_detail("lay-say-landing", &args));
        sentences.retain(|sentence| !sentence.is_empty());
        sentences.join(" ")
    }

    /// A message in the depth that is set.
    pub(super) fn by_detail(&self, id: &str, args: &FluentArgs) -> String {
        self.text(&format!("{id}{}", self.detail().ending()), args)
    }
}
