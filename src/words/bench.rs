//! Knots that fit, and rigged tubes, in words.

use fluent::{FluentArgs, fluent_args};

use super::args::Selector;
use super::lengths::{cut, fine};
use super::spoken_messages::SpokenMessage;
use super::{Sentence, Spoken, Words};
use crate::bench::{Answer, Cord, Counts, Rig, Shape, Tube};
use crate::guide::{Asking, Wanted};

/// Columns of the table of knots that fit.
const COLUMNS: [&str; 11] = [
    "rank", "leads", "bights", "passes", "strands", "width", "cover", "angle", "cord", "legs",
    "drawn",
];

impl Words {
    /// The sentence above the table. `shown`: how many of them it lists.
    pub fn fit_heading(&self, question: &Wanted, count: usize, shown: usize) -> String {
        let args = fluent_args! {
            "count" => count, "shown" => if shown < count { shown } else { 0 },
            "object" => fine(question.object.diameter), "cover" => fine(question.object.cover),
            "cord" => fine(question.cord.diameter),
        };
        self.text("fit-heading", &args)
    }

    /// How to list all of them.
    pub fn fit_more(&self, count: usize) -> String {
        self.text("fit-more", &fluent_args! { "count" => count })
    }

    /// The heads of the columns.
    pub fn fit_head(&self) -> Vec<String> {
        let head = |column| self.text(&format!("fit-head-{column}"), &fluent_args! {});
        COLUMNS.into_iter().map(head).collect()
    }

    /// A row of the table.
    pub fn fit_row(&self, rank: usize, answer: &Answer) -> Vec<String> {
        let args = answer_args(answer);
        let cell = |column: &str| match column {
            "rank" => rank.to_string(),
            "leads" => answer.counts.leads().to_string(),
            "bights" => answer.counts.bights().to_string(),
            "passes" => answer.counts.passes().to_string(),
            "strands" => answer.counts.strands().to_string(),
            "legs" => answer.counts.legs().to_string(),
            _ => self.text(&format!("fit-cell-{column}"), &args),
        };
        COLUMNS.into_iter().map(cell).collect()
    }

    /// A knot on the plan screen: its name.
    pub fn answer_line(&self, answer: &Answer) -> String {
        self.text("plan-answer", &answer_args(answer))
    }

    /// A knot on the plan screen: what it comes to, in two lines.
    pub fn answer_facts(&self, answer: &Answer) -> [String; 2] {
        let args = answer_args(answer);
        ["plan-answer-shape", "plan-answer-work"].map(|id| self.text(id, &args))
    }

    /// What is said of a knot when it is chosen: the `rank`th of `count`.
    pub fn say_answer(&self, rank: usize, count: usize, answer: &Answer) -> Spoken {
        let mut args = answer_args(answer);
        args.set("rank", rank);
        args.set("count", count);
        self.spoken(SpokenMessage::PlanAnswerSay, &args)
    }

    /// Which of the knots are shown.
    pub fn answers_shown(&self, first: usize, last: usize, count: usize) -> String {
        let id = match last - first + 1 {
            shown if shown >= count => "plan-all",
            1 => "plan-more-one",
            _ => "plan-more",
        };
        self.text(
            id,
            &fluent_args! { "first" => first, "last" => last, "count" => count },
        )
    }

    /// What is said when a field of the plan is come to, with what is typed there.
    pub fn say_field(&self, asking: Asking, text: Option<&str>) -> Spoken {
        let args = fluent_args! { "asking" => asking.selector(), "text" => text.unwrap_or("none") };
        self.spoken(SpokenMessage::PlanFieldSay, &args)
    }

    /// What the plan still waits for.
    pub fn wanting(&self, asking: Asking) -> Sentence {
        self.sentence(
            "plan-wanting",
            &fluent_args! { "asking" => asking.selector() },
        )
    }

    /// What a rigged tube is for.
    pub fn rig_heading(&self, counts: Counts, tube: &Tube, cord: &Cord) -> String {
        let mut args = counts_args(counts);
        args.set("tube", fine(tube.diameter));
        args.set("cord", fine(cord.diameter));
        self.text("rig-heading", &args)
    }

    /// What the knot on a rigged tube comes to.
    pub fn rig_finished(&self, rig: &Rig) -> String {
        let mut args = shape_args(&rig.shape);
        args.set("slack", fine(rig.laid.slack));
        self.text("rig-finished", &args)
    }
}

fn answer_args(answer: &Answer) -> FluentArgs<'static> {
    let mut args = counts_args(answer.counts);
    for (name, value) in shape_args(&answer.shape) {
        args.set(name.into_owned(), value);
    }
    args.set("long", cut(answer.cord));
    args
}

fn counts_args(counts: Counts) -> FluentArgs<'static> {
    fluent_args! {
        "leads" => counts.leads(), "bights" => counts.bights(), "passes" => counts.passes(),
        "strands" => counts.strands(), "legs" => counts.legs(),
    }
}

fn shape_args(shape: &Shape) -> FluentArgs<'static> {
    fluent_args! {
        "width" => fine(shape.width), "faired" => shape.faired.selector(),
        "cover" => (shape.cover * 100.0).floor(), "angle" => shape.angle_degrees().round(),
    }
}
