//! Steps as they are spoken.

use fluent::{FluentArgs, fluent_args};

use super::Words;
use super::args::Selector;
use crate::guide::{Begin, Check, Finish, Follow, Landmark, Lay, Phase, Place, Plan, Step, What};
use crate::knot::{Crossing, Turn};

impl Words {
    /// What is spoken for a step: exactly this, free of markup.
    pub fn say(&self, step: &Step) -> String {
        match &step.what {
            What::Begin(begin) => self.text("begin-say", &begin_args(begin)),
            What::Follow(follow) => self.text("follow-say", &follow_args(follow)),
            What::Lay(lay) => self.say_lay(lay),
            What::Check(check) => self.text("check-say", &check_args(check)),
            What::Finish(finish) => self.text("finish-say", &finish_args(finish)),
        }
    }

    /// Where a tie stands, for a tyer who takes it up again at `place`.
    pub fn say_where(&self, plan: &Plan, place: Place) -> String {
        let knot = plan.knot();
        let (phase, laid) = match place.phase {
            Phase::Finish => ("finish", place.leg),
            Phase::Check => ("laying", place.leg),
            Phase::Lead | Phase::Follow => ("laying", place.leg.saturating_sub(1)),
        };
        let args = fluent_args! {
            "leads" => knot.leads(), "bights" => knot.bights(), "phase" => phase,
            "pass" => place.pass, "strand" => place.strand, "strands" => knot.strands(),
            "laid" => laid, "legs" => knot.legs_per_strand(),
        };
        self.text("where-say", &args)
    }

    fn say_lay(&self, lay: &Lay) -> String {
        let args = lay_args(lay);
        let way = if lay.landmark.is_some() {
            "lay-say-way-on"
        } else {
            "lay-say-way"
        };
        let mut sentences = vec![self.text(way, &args)];
        let last = lay.crossings.len().saturating_sub(1);
        for (index, crossing) in lay.crossings.iter().enumerate() {
            let place = match index {
                0 if last == 0 => "only",
                0 => "first",
                index if index == last => "last",
                _ => "next",
            };
            let mut args = crossing_args(crossing);
            args.set("place", place);
            sentences.push(self.text("lay-say-crossing", &args));
        }
        if lay.crossings.is_empty() {
            sentences.push(self.text("lay-say-clear", &args));
        }
        sentences.push(self.text("lay-say-landing", &args));
        sentences.join(" ")
    }
}

pub(super) fn begin_args(begin: &Begin) -> FluentArgs<'static> {
    fluent_args! {
        "strand" => begin.strand, "strands" => begin.strands, "pin" => begin.pin,
        "hand" => begin.hand.selector(), "uneven" => begin.uneven.selector(),
    }
}

pub(super) fn follow_args(follow: &Follow) -> FluentArgs<'static> {
    fluent_args! {
        "pass" => follow.pass, "strand" => follow.strand, "strands" => follow.strands,
        "pin" => follow.pin, "side" => follow.side.selector(),
        "inside" => if follow.inside_at_top { "top" } else { "bottom" },
    }
}

pub(super) fn lay_args(lay: &Lay) -> FluentArgs<'static> {
    let Turn { pass, strand, leg } = lay.turn;
    let mut args = fluent_args! {
        "pass" => pass, "strand" => strand, "strands" => lay.strands,
        "leg" => leg, "legs" => lay.legs, "part" => lay.part, "parts" => lay.parts,
        "heading" => lay.leg.heading().selector(),
        "from" => lay.leg.from.number, "to" => lay.leg.to.number,
        "turns" => lay.turns, "hand" => lay.hand.selector(), "side" => lay.side.selector(),
        "landing" => lay.landing.selector(),
    };
    if let Some(Landmark {
        share, past, turns, ..
    }) = lay.landmark
    {
        args.set("share", share.selector());
        args.set("rim", past.rim.selector());
        args.set("past", past.number);
        args.set("made", turns);
    }
    args
}

pub(super) fn crossing_args(crossing: &Crossing) -> FluentArgs<'static> {
    fluent_args! { "over" => crossing.over.selector(), "cords" => crossing.cords }
}

pub(super) fn check_args(check: &Check) -> FluentArgs<'static> {
    fluent_args! {
        "pass" => check.after.pass, "passes" => check.passes,
        "strand" => check.after.strand, "strands" => check.strands,
        "cords" => check.cords, "rows" => check.rows, "whole" => check.is_whole.selector(),
    }
}

pub(super) fn finish_args(finish: &Finish) -> FluentArgs<'static> {
    fluent_args! {
        "leads" => finish.leads, "bights" => finish.bights, "passes" => finish.passes,
        "strands" => finish.strands,
    }
}
