//! Words for a new cord in place of one that ran out or frayed.

use fluent::{FluentArgs, fluent_args};

use super::lengths::cut_of;
use super::pins::named;
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Detail, Shown, Spoken, Words};
use crate::bench::Millimetres;
use crate::guide::{JoinStep, Joining};

impl Words {
    /// What is done now to join two cords, with what can hurt before it.
    pub fn say_join(&self, joining: &Joining, step: JoinStep, melts: bool) -> Spoken {
        let said: Spoken = self
            .sentence("join-told", &args(joining, step, melts))
            .into();
        let order = match step {
            JoinStep::Back => self.say_coming_out(&joining.out_of),
            JoinStep::Rest => self.say_crossings(&joining.through, &[], Detail::Plain),
            _ => Spoken::default(),
        };
        let cautions = step.cautions(melts).into_iter().map(|caution| {
            let args = fluent_args! { "caution" => caution.selector() };
            self.spoken(SpokenMessage::CautionSay, &args)
        });
        let before: Spoken = cautions.collect();
        before.then(&said).then(&order)
    }

    /// That a new cord is being joined, and how far that is.
    pub fn say_join_whereabouts(&self, step: JoinStep) -> Spoken {
        let args = fluent_args! { "step" => step as usize + 1, "steps" => JoinStep::ALL.len() };
        self.sentence("join-where", &args).into()
    }

    /// The same on the screen.
    pub fn show_join(&self, joining: &Joining, step: JoinStep, melts: bool) -> Shown {
        let args = args(joining, step, melts);
        let marks = match step {
            JoinStep::Back => self.show_coming_out(&joining.out_of),
            JoinStep::Rest => self.show_crossings(&joining.through),
            _ => Vec::new(),
        };
        let cautions = step.cautions(melts).into_iter().map(|caution| {
            let args = fluent_args! { "caution" => caution.selector() };
            self.text("caution-show", &args)
        });
        Shown {
            marks,
            caution: cautions.reduce(|all, caution| format!("{all} {caution}")),
            ..self.aside(
                "join-phase",
                self.text("join-line", &args),
                vec![self.text("join-told", &args)],
            )
        }
    }
}

fn args(joining: &Joining, step: JoinStep, melts: bool) -> FluentArgs<'static> {
    let to_cut = joining.to_cut.map_or(0.0, Millimetres::get);
    fluent_args! {
        "step" => match step {
            JoinStep::Melts => "melts",
            JoinStep::Cut => "cut",
            JoinStep::Back => "back",
            JoinStep::OldEnd => "old-end",
            JoinStep::NewEnd => "new-end",
            JoinStep::Rest => "rest",
            JoinStep::Finish => "finish",
        },
        "leg" => joining.pass_leg.leg, "pass" => joining.pass_leg.pass,
        "strand" => joining.pass_leg.strand, "strands" => joining.strands,
        "row" => joining.under.row, "cords" => joining.under.cords,
        "heading" => joining.leg.heading().selector(),
        "to" => named(joining.leg.to), "whole" => joining.is_whole.selector(),
        "known" => joining.to_cut.is_some().selector(), "length" => cut_of(to_cut),
        "legs" => joining.legs_after + 1, "melts" => melts.selector(), "ends" => joining.ends,
    }
}
