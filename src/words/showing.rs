//! Steps as they stand on the screen.

use std::fmt;

use fluent::fluent_args;

use super::Words;
use super::args::Selector;
use super::saying::{begin_args, check_args, crossing_args, finish_args, follow_args, lay_args};
use crate::guide::{Lay, Script, Step, What};
use crate::knot::Knot;

/// A step on the screen.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    /// Phase and progress, above the line: "Lead pass, leg 7 of 12".
    pub phase: String,
    /// The one line that matters.
    pub line: String,
    /// The crossings in the order they are met.
    pub marks: Vec<Mark>,
    /// What else there is to say of the step: each a short line.
    pub notes: Vec<String>,
}

/// A crossing on the screen: its word, and whether it is over, so that it can differ in shape
/// and colour too.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Over or under.
    pub over: bool,
    /// The word with its count of cords.
    pub text: String,
}

impl fmt::Display for Shown {
    /// Everything but the phase, a line each.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.line)?;
        for (index, mark) in self.marks.iter().enumerate() {
            f.write_str(if index == 0 { "\n" } else { ", " })?;
            f.write_str(&mark.text)?;
        }
        self.notes.iter().try_for_each(|note| write!(f, "\n{note}"))
    }
}

impl Words {
    /// What the screen says of a step.
    pub fn show(&self, knot: &Knot, step: &Step) -> Shown {
        let (phase, parts) = match &step.what {
            What::Begin(_) | What::Follow(_) => ("begin", (1, 1)),
            What::Lay(lay) => ("lay", (lay.part, lay.parts)),
            What::Check(_) => ("check", (1, 1)),
            What::Finish(_) => ("finish", (1, 1)),
        };
        let args = fluent_args! {
            "phase" => phase, "pass" => step.place.pass,
            "strand" => step.place.strand, "strands" => knot.strands(),
            "leg" => step.place.leg, "legs" => knot.legs_per_strand(),
            "part" => parts.0, "parts" => parts.1,
        };
        let phase = self.text("phase-show", &args);
        let plain = |line, notes| Shown {
            phase: phase.clone(),
            line,
            marks: Vec::new(),
            notes,
        };
        match &step.what {
            What::Begin(begin) => {
                let args = begin_args(begin);
                plain(
                    self.text("begin-show", &args),
                    vec![self.text("begin-show-note", &args)],
                )
            }
            What::Follow(follow) => {
                let args = follow_args(follow);
                plain(
                    self.text("follow-show", &args),
                    vec![self.text("follow-show-note", &args)],
                )
            }
            What::Lay(lay) => self.show_lay(phase, lay),
            What::Check(check) => {
                let args = check_args(check);
                plain(
                    self.text("check-show", &args),
                    vec![self.text("check-show-note", &args)],
                )
            }
            What::Finish(finish) => {
                let args = finish_args(finish);
                plain(
                    self.text("finish-show", &args),
                    vec![self.text("finish-show-note", &args)],
                )
            }
        }
    }

    fn show_lay(&self, phase: String, lay: &Lay) -> Shown {
        let args = lay_args(lay);
        let marks: Vec<Mark> = lay
            .crossings
            .iter()
            .map(|crossing| Mark {
                over: crossing.over,
                text: self.text("lay-show-crossing", &crossing_args(crossing)),
            })
            .collect();
        let mut notes = Vec::new();
        if marks.is_empty() {
            notes.push(self.text("lay-show-clear", &args));
        }
        if lay.landmark.is_some() {
            notes.push(self.text("lay-show-note-on", &args));
        }
        notes.push(self.text("lay-show-note", &args));
        Shown {
            phase,
            line: self.text("lay-show", &args),
            marks,
            notes,
        }
    }

    /// What a knot comes to, in a sentence for the start screen.
    pub fn facts(&self, script: &Script) -> String {
        let knot = script.plan().knot();
        let args = fluent_args! {
            "leads" => knot.leads(), "bights" => knot.bights(), "strands" => knot.strands(),
            "crossings" => knot.crossings(), "staggered" => knot.is_staggered().selector(),
            "turns" => knot.turns(), "uneven" => (!knot.is_even()).selector(),
        };
        self.text("start-facts", &args)
    }
}
