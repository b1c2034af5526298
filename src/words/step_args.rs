//! What the messages of a step are told.

use fluent::{FluentArgs, fluent_args};

use super::lengths::by_hand;
use super::selectors::Selector;
use crate::bench::Millimetres;
use crate::guide::{
    BeginStep, CheckStep, FairStep, FinishStep, FinishTask, FollowStep, Landmark, LastLeg, LayStep,
    LiftStep, Question, TakeBack, Tuck,
};
use crate::knot::{Crossing, PassLeg, Rim};

/// The tail to leave when the tube is not known. *Common practice, no source.*
const USUAL_TAIL: f64 = 150.0;

fn set_cord(args: &mut FluentArgs<'_>, cord: Option<&str>) {
    args.set("named", cord.is_some().selector());
    args.set("cord", cord.unwrap_or_default().to_owned());
}

fn set_tail(args: &mut FluentArgs<'_>, tail: Option<Millimetres>) {
    args.set("tail", by_hand(tail.map_or(USUAL_TAIL, Millimetres::get)));
}

pub(super) fn begin_args(begin: &BeginStep) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "strand" => begin.strand, "strands" => begin.strands, "pin" => begin.pin,
        "hand" => begin.hand.selector(), "uneven" => begin.is_uneven.selector(),
        "staggered" => begin.is_staggered.selector(),
    };
    set_cord(&mut args, begin.cord.as_deref());
    set_tail(&mut args, begin.tail);
    args
}

pub(super) fn follow_args(follow: &FollowStep) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "pass" => follow.pass, "strand" => follow.strand, "strands" => follow.strands,
        "pin" => follow.pin, "apart" => follow.is_apart.selector(),
        "lane" => if follow.inside_at_top { "bottom" } else { "top" },
        "inside" => if follow.inside_at_top { "top" } else { "bottom" },
        "added" => follow.is_added.selector(),
    };
    set_cord(&mut args, follow.cord.as_deref());
    set_tail(&mut args, follow.tail);
    args
}

pub(super) fn lay_args(lay: &LayStep) -> FluentArgs<'static> {
    let PassLeg { pass, strand, leg } = lay.pass_leg;
    let mut args = fluent_args! {
        "pass" => pass, "strand" => strand, "strands" => lay.strands,
        "leg" => leg, "legs" => lay.legs, "part" => lay.part, "parts" => lay.parts,
        "heading" => lay.leg.heading().selector(),
        "from" => lay.leg.from.number, "to" => lay.leg.to.number,
        "turns" => lay.turns, "hand" => lay.hand.selector(), "lane" => lane(lay),
        "landing" => lay.landing.selector(),
        "first" => (lay.pass_leg == PassLeg { pass: 1, strand: 1, leg: 1 }).selector(),
    };
    if let Some(Landmark {
        share, past, turns, ..
    }) = lay.landmark
    {
        args.set("share", share.selector());
        // The pin from which the leg has just set out tells nothing of the way, and the one where it is to
        // land, with a turn of the tube still to go, would be taken for its end.
        let is_start = past == lay.leg.from && turns == 0;
        let rim = if is_start || past == lay.leg.to {
            "none"
        } else {
            past.rim.selector()
        };
        args.set("rim", rim);
        args.set("past", past.number);
        args.set("made", turns);
    }
    set_cord(&mut args, lay.cord.as_deref());
    args
}

/// The rim towards which a follower lies of the first cord: the bottom one when it turns inside at the
/// top.
fn lane(lay: &LayStep) -> &'static str {
    match lay.side {
        None => "none",
        Some(side) if side.turns_inside(Rim::Top, lay.hand) => "bottom",
        Some(_) => "top",
    }
}

/// The crossing at `index` of `count`; it lies on a leg that goes the other way than the one
/// it is met by.
pub(super) fn crossing_args(
    crossing: &Crossing,
    index: usize,
    count: usize,
) -> FluentArgs<'static> {
    let place = match index {
        0 if count == 1 => "only",
        0 => "first",
        index if index + 1 == count => "last",
        _ => "next",
    };
    fluent_args! {
        "over" => crossing.over.selector(), "cords" => crossing.cords, "place" => place,
        "heading" => crossing.of.heading().opposite().selector(),
        "of-from" => crossing.of.from.number, "of-to" => crossing.of.to.number,
    }
}

pub(super) fn check_args(check: &CheckStep) -> FluentArgs<'static> {
    fluent_args! {
        "pass" => check.after.pass, "passes" => check.passes,
        "strand" => check.after.strand, "strands" => check.strands,
        "round" => check.round, "rounds" => check.rounds,
        "ends" => check.ends_pass().selector(), "whole" => check.is_whole.selector(),
        "cords" => check.cords, "rows" => check.rows, "at" => check.at.number,
        "counted" => check.crossings.is_some().selector(),
        "first" => (check.after == PassLeg { pass: 1, strand: 1, leg: 2 }).selector(),
        "crossings" => check.crossings.unwrap_or(0),
        "from" => check.last.leg.from.number, "to" => check.last.leg.to.number,
    }
}

pub(super) fn lift_args(lift: &LiftStep) -> FluentArgs<'static> {
    fluent_args! { "task" => lift.task.selector(), "bights" => lift.bights, "ends" => lift.ends }
}

/// Crossings of a leg that a look tells one by one; of more nobody would follow the order.
/// *Common practice, no source.*
const MOST_IN_ORDER: usize = 8;

/// How many overs and unders a leg has, where they are too many to be told one by one.
pub(super) fn counted_args(last: &LastLeg) -> Option<FluentArgs<'static>> {
    let crossings = last.crossings.len();
    let overs = last
        .crossings
        .iter()
        .filter(|crossing| crossing.over)
        .count();
    (crossings > MOST_IN_ORDER).then(|| {
        fluent_args! {
            "crossings" => crossings, "overs" => overs, "unders" => crossings - overs,
        }
    })
}

pub(super) fn fair_args(fair: &FairStep) -> FluentArgs<'static> {
    let PassLeg { pass, strand, leg } = fair.pass_leg;
    let mut args = fluent_args! {
        "round" => fair.round, "rounds" => fair.rounds, "passes" => fair.passes,
        "pass" => pass, "strand" => strand, "strands" => fair.strands,
        "leg" => leg, "legs" => fair.legs, "heading" => fair.leg.heading().selector(),
        "from" => fair.leg.from.number, "to" => fair.leg.to.number,
        "first" => fair.is_first.selector(), "last" => fair.is_last.selector(),
        "whole" => fair.in_round.is_some().selector(), "round-legs" => fair.in_round.unwrap_or(0),
    };
    let draw = fair.draw.and_then(by_fingers);
    let gathered = fair.gathered.and_then(by_fingers).or(draw);
    args.set("known", draw.is_some().selector());
    args.set("draw", by_hand(draw.unwrap_or_default()));
    args.set("gathered", by_hand(gathered.unwrap_or_default()));
    set_cord(&mut args, fair.cord.as_deref());
    args
}

/// A length that fingers can draw: to a millimetre, above 10 mm in steps of 5; none below what they
/// can tell from nothing. *Common practice, no source.*
pub(super) fn by_fingers(length: Millimetres) -> Option<f64> {
    const LEAST: f64 = 1.5;
    let length = length.get();
    let step = if length < 10.0 { 1.0 } else { 5.0 };
    (length >= LEAST).then(|| (length / step).round() * step)
}

pub(super) fn finish_args(finish: &FinishStep) -> FluentArgs<'static> {
    match &finish.task {
        FinishTask::Tuck(tuck) => tuck_args(tuck),
        FinishTask::Trim { ends } => fluent_args! { "task" => "trim", "ends" => *ends },
        FinishTask::Seal { ends } => fluent_args! { "task" => "seal", "ends" => *ends },
        FinishTask::Done {
            leads,
            bights,
            passes,
        } => fluent_args! {
            "task" => "done", "leads" => *leads, "bights" => *bights, "passes" => *passes,
        },
    }
}

fn tuck_args(tuck: &Tuck) -> FluentArgs<'static> {
    let top = if tuck.is_working {
        tuck.along.to
    } else {
        tuck.along.from
    };
    let mut args = fluent_args! {
        "task" => "tuck", "order" => "", "strand" => tuck.strand, "strands" => tuck.strands,
        "end" => if tuck.is_working { "working" } else { "standing" },
        "pin" => tuck.pin, "top" => top.number, "lane" => tuck.lane.selector(),
        "cords" => tuck.beside, "under" => (!tuck.crossings.is_empty()).selector(),
    };
    set_cord(&mut args, tuck.cord.as_deref());
    args
}

pub(super) fn take_back_args(back: &TakeBack) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "pass" => back.pass_leg.pass, "strand" => back.pass_leg.strand, "strands" => back.strands,
        "leg" => back.pass_leg.leg,
        "heading" => back.leg.heading().selector(), "whole" => back.is_whole.selector(),
        "from" => back.leg.from.number, "to" => back.leg.to.number,
        "tail" => back.tail_off.map_or(0, |pin| pin.number),
        "first-rim" => back.first_back_to.map_or("none", |pin| pin.rim.selector()),
        "first" => back.first_back_to.map_or(0, |pin| pin.number),
    };
    set_cord(&mut args, back.cord.as_deref());
    args
}

pub(super) fn question_args(question: &Question) -> FluentArgs<'static> {
    let (kind, pin, count) = match *question {
        Question::LastPin(pin) => ("pin", pin, 0),
        Question::Came { pin, cords } => ("cords", pin, cords),
        Question::OnlyTail { pin, pass } => ("tail", pin, pass - 1),
        Question::CameHome { pin, times } => ("home", pin, times),
        Question::Crossed { pin, crossings } => ("crossed", pin, crossings),
    };
    fluent_args! {
        "question" => kind, "rim" => pin.rim.selector(), "pin" => pin.number, "count" => count,
    }
}
