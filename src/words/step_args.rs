//! What the messages of a step are told.

use fluent::{FluentArgs, fluent_args};

use super::Detail;
use super::fingers;
use super::lengths::{at_hand_of, by_hand, to_half};
use super::pins::{named, set_nested};
use super::selectors::Selector;
use crate::bench::Millimetres;
use crate::guide::{
    BeginStep, CheckStep, DrawThrough, FairStep, FairWay, FinishStep, FinishTask, FollowStep,
    Landmark, LastLeg, LayStep, LiftStep, Question, TakeBack, Tuck,
};
use crate::knot::{Crossing, Heading, LayingOrder, PassLeg, Pin, Rim};

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
        "strand" => begin.strand, "strands" => begin.strands, "pin" => named(begin.pin),
        "hand" => begin.hand.selector(), "uneven" => begin.is_uneven.selector(),
        "staggered" => begin.is_staggered.selector(),
        "woven" => begin.pin.row.is_one_of_several().selector(),
    };
    if let Some(place) = begin.finger {
        args.set("place", fingers::place(place));
    }
    set_cord(&mut args, begin.cord.as_deref());
    set_tail(&mut args, begin.tail);
    args
}

pub(super) fn follow_args(follow: &FollowStep) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "pass" => follow.pass, "strand" => follow.strand, "strands" => follow.strands,
        "pin" => named(follow.pin), "apart" => follow.is_apart.selector(),
        "lane" => if follow.inside_at_top { "bottom" } else { "top" },
        "inside" => if follow.inside_at_top { "top" } else { "bottom" },
        "added" => follow.is_added.selector(),
        "own" => follow.pin.row.is_one_of_several().selector(),
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
        "from" => named(lay.leg.from), "to" => named(lay.leg.to),
        "turns" => lay.turns, "hand" => lay.hand.selector(), "lane" => lane(lay),
        "landing" => lay.landing.selector(),
        "first" => (lay.pass_leg == PassLeg { pass: 1, strand: 1, leg: 1 }).selector(),
    };
    if let Some(leg) = lay.fingers {
        fingers::set_leg(&mut args, leg);
    }
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
        args.set("past", named(past));
        args.set("made", turns);
    }
    set_cord(&mut args, lay.cord.as_deref());
    args
}

/// The rim towards which a follower lies of the cord it follows: the bottom one when it turns inside
/// at the top. Where cords are nested that is its own first pass, not the first cord of all.
fn lane(lay: &LayStep) -> &'static str {
    let is_nested = lay.leg.from.row.is_one_of_several();
    match lay.side {
        None => "none",
        Some(side) if side.turns_inside(Rim::Top, lay.hand) => {
            if is_nested {
                "bottom-own"
            } else {
                "bottom"
            }
        }
        Some(_) if is_nested => "top-own",
        Some(_) => "top",
    }
}

/// The two legs between which a leg of a nested cord is laid.
pub(super) fn splits_args(lay: &LayStep, [one, other]: [Pin; 2]) -> FluentArgs<'static> {
    fluent_args! {
        "heading" => lay.leg.heading().selector(), "left" => named(one), "next" => named(other),
    }
}

/// What there is to say where a cord of an interwoven knot begins.
pub(super) fn laced_args(begin: &BeginStep, order: LayingOrder) -> FluentArgs<'static> {
    fluent_args! {
        "rows" => begin.pin.row.of, "row" => begin.pin.row.number,
        "whole" => (order == LayingOrder::StrandByStrand).selector(),
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
        "of-from" => named(crossing.of.from), "of-to" => named(crossing.of.to),
    }
}

pub(super) fn check_args(check: &CheckStep) -> FluentArgs<'static> {
    fluent_args! {
        "pass" => check.after.pass, "passes" => check.passes,
        "strand" => check.after.strand, "strands" => check.strands,
        "round" => check.round, "rounds" => check.rounds,
        "ends" => check.ends_pass().selector(), // Where the legs of some strand cross more than others, there is no one number for all.
        "whole" => (check.is_whole && check.rows_alike).selector(),
        "cords" => check.cords, "rows" => check.rows, "at" => named(check.at),
        "counted" => check.crossings.is_some().selector(),
        "first" => (check.after == PassLeg { pass: 1, strand: 1, leg: 2 }).selector(),
        "crossings" => check.crossings.unwrap_or(0),
        "from" => named(check.last.leg.from), "to" => named(check.last.leg.to),
    }
}

pub(super) fn lift_args(lift: &LiftStep) -> FluentArgs<'static> {
    fluent_args! {
        "task" => lift.task.selector(), "pins" => lift.pins, "all" => 2 * lift.pins,
        "ends" => lift.ends, "thick" => lift.thick.map_or("none", Rim::selector),
    }
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
        "from" => named(fair.leg.from), "to" => named(fair.leg.to),
        "first" => fair.is_first.selector(), "last" => fair.is_last.selector(),
        "whole" => fair.in_round.is_some().selector(),
        "round-legs" => fair.in_round.map_or(0, |round| round.legs),
        "cords" => fair.in_round.map_or(1, |round| round.cords),
    };
    let draw = fair.draw.and_then(by_fingers);
    let gathered = fair.gathered.and_then(by_fingers).or(draw);
    args.set("known", draw.is_some().selector());
    args.set("draw", by_hand(draw.unwrap_or_default()));
    args.set("gathered", by_hand(gathered.unwrap_or_default()));
    set_cord(&mut args, fair.cord.as_deref());
    args
}

/// Where the slack is worked first, until the last time through.
pub(super) fn fair_way_args(fair: &FairStep, way: FairWay) -> FluentArgs<'static> {
    let is_last_time = fair.round == fair.rounds;
    fluent_args! { "way" => way.selector(), "last" => is_last_time.selector() }
}

/// How wide it is left.
pub(super) fn fair_open_args(fair: &FairStep, width: Millimetres) -> FluentArgs<'static> {
    let way = fair.way.map_or("none", |way| way.selector());
    fluent_args! { "way" => way, "width" => to_half(width) }
}

/// Whether what is drawn through at a tuck is told in this depth: who learns hears it every time, and
/// who knows the work only on request.
pub(super) fn is_draw_told(draw: &DrawThrough, depth: Detail) -> bool {
    match depth {
        Detail::Brief => false,
        Detail::Plain => draw.is_new,
        Detail::Teach => true,
    }
}

/// How much cord is drawn through at a tuck.
pub(super) fn draw_args(draw: &DrawThrough) -> FluentArgs<'static> {
    fluent_args! {
        "known" => draw.length.is_some().selector(),
        "length" => at_hand_of(draw.length.map_or(0.0, Millimetres::get)),
    }
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
        FinishTask::Join(join) => {
            let [bottom, top] = match join.leg.heading() {
                Heading::Rising => [join.leg.from, join.leg.to],
                Heading::Falling => [join.leg.to, join.leg.from],
            };
            fluent_args! {
                "task" => "join", "strand" => join.pass_leg.strand, "strands" => join.strands,
                "pin" => named(bottom), "top" => named(top), "row" => join.row, "named" => "no",
                "ends" => 2,
            }
        }
        FinishTask::Trim { ends } => fluent_args! { "task" => "trim", "ends" => *ends },
        FinishTask::Press => fluent_args! { "task" => "press" },
        FinishTask::Seal { ends } => fluent_args! { "task" => "seal", "ends" => *ends },
        FinishTask::Done { lattice, passes } => {
            let mut args = fluent_args! {
                "task" => "done", "leads" => lattice.leads(), "bights" => lattice.bights(),
                "passes" => *passes,
            };
            set_nested(&mut args, *lattice);
            args
        }
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
        "pin" => named(tuck.pin), "top" => named(top), "lane" => tuck.lane.selector(),
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
        "from" => named(back.leg.from), "to" => named(back.leg.to),
        "off" => back.tail_off.is_some().selector(),
        "tail" => back.tail_off.map_or(0.into(), named),
        "first-rim" => back.first_back_to.map_or("none", |pin| pin.rim.selector()),
        "first" => back.first_back_to.map_or(0.into(), named),
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
        "question" => kind, "rim" => pin.rim.selector(), "pin" => named(pin), "count" => count,
    }
}
