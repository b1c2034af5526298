//! Steps as they stand on the screen.

use std::fmt;

use fluent::{FluentArgs, fluent_args};

use super::lengths::cut_of;
use super::pins::set_nested;
use super::selectors::Selector;
use super::step_args::{
    begin_args, check_args, counted_args, crossing_args, draw_args, fair_args, fair_open_args,
    fair_way_args, finish_args, follow_args, is_draw_told, laced_args, lay_args, lift_args,
    splits_args,
};
use super::{Detail, Sentence, Words};
use crate::guide::{FinishTask, Landing, LayStep, Script, Step, What};
use crate::knot::{Crossing, Knot};

/// A step on the screen.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    /// Phase and progress, above the line: "Lead pass, leg 7 of 12".
    pub phase: String,
    /// The one line that matters.
    pub line: String,
    /// The line in words alone, where it has a sign such as an arrow.
    pub plain_line: Option<String>,
    /// The crossings in the order they are met.
    pub marks: Vec<CrossingMark>,
    /// What else there is to say of the step: each a short line.
    pub notes: Vec<String>,
    /// Where several things stand on a page: each with its own line and notes. Line and notes of the
    /// page are those of all of them.
    pub things: Vec<Self>,
    /// What can hurt here.
    pub caution: Option<String>,
}

/// A crossing on the screen: its word, and whether it is over, so that it can differ in shape
/// and colour too.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CrossingMark {
    /// Whether the cord in hand goes over; otherwise it goes under.
    pub over: bool,
    /// The word with its count of cords.
    pub text: String,
}

impl Shown {
    /// Everything but the phase, one sentence after the other, with nothing but words: a Braille
    /// display or a screen reader takes a sign for noise.
    pub fn in_words(&self) -> String {
        if !self.things.is_empty() {
            let things = self.things.iter().map(Self::in_words);
            return things.fold(String::new(), after);
        }
        let line = self.plain_line.as_ref().unwrap_or(&self.line);
        let marks = self.marks.iter().map(|mark| mark.text.as_str());
        let marks = marks.collect::<Vec<_>>().join(", ");
        let mut told = line.replace('\n', ", ");
        if !marks.is_empty() {
            told = format!("{told}: {marks}");
        }
        let notes = self.notes.iter().filter(|note| !note.is_empty());
        notes.map(|note| note.replace('\n', ", ")).fold(told, after)
    }
}

/// A sentence after others, or one that goes on with the last of them.
fn after(mut told: String, next: String) -> String {
    if told.is_empty() {
        return next;
    }
    told.push_str(match next.chars().next() {
        _ if told.ends_with(['.', '!', '?', ':']) => " ",
        Some(first) if first.is_lowercase() => ", ",
        _ => ". ",
    });
    told.push_str(&next);
    told
}

impl fmt::Display for Shown {
    /// Everything but the phase, a line each.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some((first, others)) = self.things.split_first() {
            write!(f, "{first}")?;
            return others.iter().try_for_each(|thing| write!(f, "\n{thing}"));
        }
        f.write_str(&self.line)?;
        for (index, mark) in self.marks.iter().enumerate() {
            f.write_str(if index == 0 { "\n" } else { ", " })?;
            f.write_str(&mark.text)?;
        }
        self.notes.iter().try_for_each(|note| write!(f, "\n{note}"))
    }
}

/// Whether the line alone would leave open what is to be done: where notes decide something, they
/// stand in brief too.
const fn decides_by_notes(what: &What) -> bool {
    match what {
        What::Lift(_) => false,
        What::Finish(finish) => !matches!(
            finish.task,
            FinishTask::Trim { .. } | FinishTask::Done { .. }
        ),
        _ => true,
    }
}

impl Words {
    /// What the screen says of a step.
    pub fn show(&self, knot: &Knot, step: &Step) -> Shown {
        self.on(step.rims).show_here(knot, step)
    }

    /// The same where these words are those of the step's own ground.
    fn show_here(&self, knot: &Knot, step: &Step) -> Shown {
        let depth = self.depth_of(step);
        let lines = |line: &str, notes: &[&str], args: &FluentArgs| Shown {
            line: self.text(line, args),
            notes: notes.iter().map(|note| self.text(note, args)).collect(),
            ..Shown::default()
        };
        let mut shown = match &step.what {
            What::Kit(kit) => self.show_kit(kit),
            What::Rig(step) => self.show_rig(step),
            What::Begin(begin) => {
                let mut shown = lines("begin-show", &["begin-show-note"], &begin_args(begin));
                if let Some(order) = begin.laced {
                    shown
                        .notes
                        .push(self.text("laced-show", &laced_args(begin, order)));
                }
                shown
            }
            What::Follow(follow) => {
                lines("follow-show", &["follow-show-note"], &follow_args(follow))
            }
            What::Lay(lay) => self.show_lay(lay, depth),
            What::Check(check) => {
                let notes = ["check-show-note-last", "check-show-note"];
                let mut args = check_args(check);
                let mut marks = Vec::new();
                let order = if let Some(counted) = counted_args(&check.last) {
                    self.text("check-order-show", &counted)
                } else if check.last.crossings.is_empty() {
                    self.text("lay-show-clear", &args)
                } else {
                    marks = self.show_crossings(&check.last.crossings);
                    String::new()
                };
                args.set("shown", (!marks.is_empty()).selector());
                args.set("order", order);
                Shown {
                    marks,
                    ..lines("check-show", &notes, &args)
                }
            }
            What::Lift(lift) => lines("lift-show", &["lift-show-note"], &lift_args(lift)),
            What::Fair(fair) => {
                let mut shown = lines("fair-show", &["fair-show-note"], &fair_args(fair));
                if let Some(way) = fair.way {
                    shown
                        .notes
                        .push(self.text("fair-way-show", &fair_way_args(fair, way)));
                }
                if let Some(width) = fair.left_open {
                    let args = fair_open_args(fair, width);
                    shown.notes.push(self.text("fair-open-show", &args));
                }
                shown
            }
            What::Finish(finish) => {
                let shown = lines("finish-show", &["finish-show-note"], &finish_args(finish));
                match &finish.task {
                    FinishTask::Tuck(tuck) => Shown {
                        marks: self.show_crossings(&tuck.crossings),
                        ..shown
                    },
                    _ => shown,
                }
            }
        };
        if depth == Detail::Brief && !decides_by_notes(&step.what) {
            shown.notes.clear();
        }
        shown.phase = self.phase(knot, step);
        let cautions = step.cautions().into_iter().map(|caution| {
            let args = fluent_args! { "caution" => caution.selector() };
            self.text("caution-show", &args)
        });
        shown.caution = cautions.reduce(|all, caution| format!("{all} {caution}"));
        shown
    }

    /// Phase and progress, above the line.
    fn phase(&self, knot: &Knot, step: &Step) -> String {
        let (mut cord, mut passes, mut is_whole) = (None, 1, false);
        let (phase, (part, parts), (item, items)) = match &step.what {
            What::Kit(kit) => return self.kit_phase(kit),
            What::Rig(step) => return self.rig_phase(step),
            What::Begin(begin) => {
                cord = begin.cord.as_deref();
                ("begin", (1, 1), (0, 0))
            }
            What::Follow(follow) => {
                cord = follow.cord.as_deref();
                ("begin", (1, 1), (0, 0))
            }
            What::Lay(lay) => {
                cord = lay.cord.as_deref();
                ("lay", (lay.part, lay.parts), (0, 0))
            }
            What::Check(_) => ("check", (1, 1), (0, 0)),
            What::Lift(lift) => ("lift", (1, 1), (step.place.item().unwrap_or(1), lift.of)),
            What::Fair(fair) => {
                passes = fair.passes;
                is_whole = fair.in_round.is_some();
                ("fair", (1, 1), (fair.round, fair.rounds))
            }
            What::Finish(finish) => (
                "finish",
                (1, 1),
                (step.place.item().unwrap_or(1), finish.of),
            ),
        };
        let args = fluent_args! {
            "phase" => phase, "pass" => step.place.pass().unwrap_or(1), "passes" => passes,
            "strand" => step.place.strand().unwrap_or(1), "strands" => knot.strands(),
            "leg" => step.place.leg().unwrap_or(0), "legs" => knot.legs_of(step.place.strand().unwrap_or(1)),
            "part" => part, "parts" => parts, "item" => item, "items" => items,
            "whole" => is_whole.selector(),
            "named" => cord.is_some().selector(), "cord" => cord.unwrap_or_default().to_owned(),
        };
        self.text("phase-show", &args)
    }

    fn show_lay(&self, lay: &LayStep, depth: Detail) -> Shown {
        let args = lay_args(lay);
        if let (Detail::Teach, [crossing]) = (depth, &lay.crossings[..]) {
            return self.show_one_crossing(lay, crossing, &args);
        }
        let marks = self.show_crossings(&lay.crossings);
        let mut notes = Vec::new();
        if marks.is_empty() && depth != Detail::Brief {
            notes.push(self.text("lay-show-clear", &args));
        }
        if let Some(draw) = lay.draw.as_ref().filter(|draw| is_draw_told(draw, depth)) {
            notes.push(self.text("draw-through-show", &draw_args(draw)));
        }
        match lay.splits {
            _ if lay.landmark.is_some() => notes.push(self.text("lay-show-note-on", &args)),
            Some(splits) if depth != Detail::Brief => {
                notes.push(self.text("lay-show-splits", &splits_args(lay, splits)));
            }
            _ => {}
        }
        if depth != Detail::Brief && lay.side.is_some() {
            notes.push(self.text("lay-show-lane", &args));
        }
        let is_plain_turn = matches!(lay.landing, Landing::Round | Landing::OnTheWay);
        if !(is_plain_turn && depth == Detail::Brief) {
            notes.push(self.text("lay-show-note", &args));
        }
        Shown {
            line: self.text("lay-show", &args),
            plain_line: Some(self.text("lay-print", &args)),
            marks,
            notes,
            ..Shown::default()
        }
    }

    /// The crossing in hand large, then how it is made, and then the way of the leg.
    fn show_one_crossing(&self, lay: &LayStep, crossing: &Crossing, args: &FluentArgs) -> Shown {
        let over = crossing_args(crossing, 0, 1);
        let mut notes = vec![
            self.text("lay-one-note", &over),
            self.text("lay-print", args),
        ];
        if let Some(draw) = &lay.draw {
            notes.push(self.text("draw-through-show", &draw_args(draw)));
        }
        if lay.landmark.is_some() {
            notes.push(self.text("lay-show-note-on", args));
        }
        notes.push(self.text("lay-show-note", args));
        Shown {
            line: self.text("lay-one", &over),
            notes,
            ..Shown::default()
        }
    }

    /// Overs and unders in the order in which a leg meets them.
    pub(super) fn show_crossings(&self, crossings: &[Crossing]) -> Vec<CrossingMark> {
        let count = crossings.len();
        let mark = |(index, crossing): (usize, &Crossing)| CrossingMark {
            over: crossing.over,
            text: self.text("lay-show-crossing", &crossing_args(crossing, index, count)),
        };
        crossings.iter().enumerate().map(mark).collect()
    }

    /// What a knot comes to, and what it must not be trusted with, where it is chosen.
    pub fn choice(&self, script: &Script) -> String {
        format!("{} {}", self.facts(script), self.choice_caution())
    }

    /// What no knot must be trusted with, where one is chosen.
    pub fn choice_caution(&self) -> Sentence {
        self.sentence("choice-caution", &FluentArgs::new())
    }

    /// What a knot comes to, in a sentence for the start screen.
    pub fn facts(&self, script: &Script) -> Sentence {
        let plan = script.plan();
        let knot = plan.knot();
        let mut args = fluent_args! {
            "leads" => knot.leads(), "bights" => knot.bights(), "strands" => knot.strands(),
            "hand" => plan.hand.selector(), "tucks" => plan.laying().tucks(),
            "other_tucks" => plan.tucks_begun_with_over().unwrap_or(0),
            "staggered" => knot.is_staggered().selector(),
            "turns" => knot.leg(1, 1).map_or(0, |leg| knot.turns_of(leg)), "uneven" => (!knot.is_even()).selector(),
        };
        set_nested(&mut args, knot.lattice());
        let message = if let Some(fingers) = plan.fingers() {
            args.set("cord", cut_of(fingers.cord(plan.laying().passes())));
            "start-facts-round-hand"
        } else {
            "start-facts"
        };
        self.on(plan.rims()).sentence(message, &args)
    }

    /// Whether a knot of many evenings is really meant.
    pub fn huge_knot(&self, plan: &crate::guide::Plan, legs: u32) -> Sentence {
        let knot = plan.knot();
        let args = fluent_args! {
            "leads" => knot.leads(), "bights" => knot.bights(), "legs" => legs,
        };
        self.sentence("start-huge", &args)
    }
}
