//! Steps as they are spoken.

use fluent::{FluentArgs, fluent_args};

use super::pins::{named, set_nested};
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::step_args::{
    begin_args, check_args, counted_args, crossing_args, draw_args, fair_args, fair_open_args,
    fair_way_args, finish_args, follow_args, is_draw_told, laced_args, lay_args, lift_args,
    splits_args,
};
use super::{Detail, Spoken, Words};
use crate::guide::{
    Caution, FinishTask, LayStep, Phase, Place, Plan, Script, Step, What, Whereabouts,
};
use crate::knot::{Crossing, PassLeg};

impl Words {
    /// What is spoken for a step: exactly this, free of markup. A caution comes before what can
    /// hurt.
    pub fn say(&self, step: &Step) -> Spoken {
        self.on(step.rims).say_here(step)
    }

    /// The same where these words are those of the step's own ground.
    fn say_here(&self, step: &Step) -> Spoken {
        let depth = self.depth_of(step);
        let say = |message, args: &FluentArgs| self.spoken_in(depth, message, args);
        let said = match &step.what {
            What::Kit(kit) => self.say_kit(kit),
            What::Rig(step) => self.say_rig(step),
            What::Begin(begin) => {
                let said = say(SpokenMessage::BeginSay, &begin_args(begin));
                if let Some(order) = begin.laced {
                    said.then(&say(SpokenMessage::LacedSay, &laced_args(begin, order)))
                } else {
                    said
                }
            }
            What::Follow(follow) => say(SpokenMessage::FollowSay, &follow_args(follow)),
            What::Lay(lay) => self.say_lay(lay, depth),
            What::Check(check) => {
                let mut args = check_args(check);
                let order = match counted_args(&check.last) {
                    Some(counted) => say(SpokenMessage::CheckOrderSay, &counted),
                    None => self.say_order(&check.last.crossings),
                };
                args.set("order", order.to_string());
                say(SpokenMessage::CheckSay, &args)
            }
            What::Lift(lift) => say(SpokenMessage::LiftSay, &lift_args(lift)),
            What::Fair(fair) => {
                let mut said = say(SpokenMessage::FairSay, &fair_args(fair));
                if let Some(way) = fair.way.filter(|_| depth != Detail::Brief) {
                    said = said.then(&say(SpokenMessage::FairWaySay, &fair_way_args(fair, way)));
                }
                if let Some(width) = fair.left_open {
                    said = said.then(&say(
                        SpokenMessage::FairOpenSay,
                        &fair_open_args(fair, width),
                    ));
                }
                said
            }
            What::Finish(finish) => {
                let mut args = finish_args(finish);
                if let FinishTask::Tuck(tuck) = &finish.task
                    && !tuck.crossings.is_empty()
                {
                    let plainly = if depth == Detail::Brief {
                        depth
                    } else {
                        Detail::Plain
                    };
                    let order = self.say_crossings(&tuck.crossings, &[], plainly);
                    args.set("order", order.to_string());
                }
                say(SpokenMessage::FinishSay, &args)
            }
        };
        step.cautions_to_say()
            .into_iter()
            .rev()
            .fold(said, |said, caution| {
                let args = fluent_args! { "caution" => caution.selector() };
                let cautioned = self.spoken(SpokenMessage::CautionSay, &args);
                match caution {
                    // What the knot is for, and who should not play with it, comes when it is done.
                    Caution::Load | Caution::Children => said.then(&cautioned),
                    _ => cautioned.then(&said),
                }
            })
    }

    /// Where a tie stands, and how much is left. `minutes` is the time left at the tyer's own
    /// pace, when that is known.
    pub fn say_whereabouts(&self, script: &Script, place: Place, minutes: Option<u32>) -> Spoken {
        let words = self.on(script.plan().rims());
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
            Phase::Kit | Phase::Rig => return words.say_where_rigging(script, place),
            Phase::Lead | Phase::Follow | Phase::Check => "laying",
            Phase::Lift => "lift",
            Phase::Fair => "fair",
            Phase::Finish if place == script.last() => "done",
            Phase::Finish => "finish",
        };
        let (round, faired) = fairing.unwrap_or((
            0,
            PassLeg {
                pass,
                strand,
                leg: 0,
            },
        ));
        let args = fluent_args! {
            "phase" => phase, "pass" => faired.pass, "strand" => faired.strand,
            "strands" => strands, "passes" => script.plan().laying().passes(),
            "round" => round, "leg" => faired.leg, "crossed" => crossed,
            "whole" => (!script.fairs_by_leg()).selector(),
            "laid" => laid, "legs" => legs, "left" => left,
            "at-rim" => at.rim.selector(), "at" => named(at),
            "next-rim" => next.map_or("none", |pin| pin.rim.selector()),
            "next" => next.map_or(0.into(), named),
            "timed" => minutes.is_some().selector(), "minutes" => minutes.unwrap_or(0),
        };
        words.spoken(SpokenMessage::WhereSay, &args)
    }

    /// Which tie is taken up, and where it stands.
    pub fn say_taking_up(&self, script: &Script, place: Place) -> Spoken {
        let plan: &Plan = script.plan();
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
        };
        set_nested(&mut args, plan.knot().lattice());
        let taking_up = self.spoken(SpokenMessage::WhereTakingUpSay, &args);
        taking_up.then(&self.say_whereabouts(script, place, None))
    }

    /// How deep a step is told: to who learns, plainly where it teaches nothing new.
    pub const fn depth_of(&self, step: &Step) -> Detail {
        match self.detail() {
            Detail::Teach if !step.is_taught => Detail::Plain,
            depth => depth,
        }
    }

    fn say_lay(&self, lay: &LayStep, depth: Detail) -> Spoken {
        let args = lay_args(lay);
        let way = if lay.landmark.is_some() {
            SpokenMessage::LaySayWayOn
        } else {
            SpokenMessage::LaySayWay
        };
        let said = self.spoken_in(depth, way, &args);
        let said = match lay.splits {
            Some(splits) if lay.landmark.is_none() && depth != Detail::Brief => {
                said.then(&self.spoken_in(
                    depth,
                    SpokenMessage::LaySaySplits,
                    &splits_args(lay, splits),
                ))
            }
            _ => said,
        };
        let drawn = match &lay.draw {
            Some(draw) if is_draw_told(draw, depth) => {
                self.spoken_in(depth, SpokenMessage::DrawThroughSay, &draw_args(draw))
            }
            _ => Spoken::default(),
        };
        said.then(&self.say_crossings(&lay.crossings, &lay.new_crossings, depth))
            .then(&drawn)
            .then(&self.spoken_in(depth, SpokenMessage::LaySayLanding, &args))
    }

    /// Overs and unders of a leg that lies there, to be looked at.
    fn say_order(&self, crossings: &[Crossing]) -> Spoken {
        let said = crossings.iter().enumerate().map(|(index, crossing)| {
            let args = crossing_args(crossing, index, crossings.len());
            self.spoken(SpokenMessage::CheckSayCrossing, &args)
        });
        said.reduce(|said, crossing| said.then(&crossing))
            .unwrap_or_else(|| self.spoken(SpokenMessage::TakeBackSayClear, &fluent_args! {}))
    }

    /// Overs and unders in the order in which a leg meets them, to be laid; those at `new` are told what they
    /// are.
    pub(super) fn say_crossings(
        &self,
        crossings: &[Crossing],
        new: &[usize],
        depth: Detail,
    ) -> Spoken {
        let said = crossings.iter().enumerate().map(|(index, crossing)| {
            let mut args = crossing_args(crossing, index, crossings.len());
            args.set("new", new.contains(&index).selector());
            self.spoken_in(depth, SpokenMessage::LaySayCrossing, &args)
        });
        said.reduce(|said, crossing| said.then(&crossing))
            .unwrap_or_else(|| self.spoken_in(depth, SpokenMessage::LaySayClear, &fluent_args! {}))
    }
}
