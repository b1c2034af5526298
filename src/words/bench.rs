//! Knots that fit, and rigged tubes, in words.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::covering::{ground_kind, set_ground, set_tied_on};
use super::labour::cost;
use super::lengths::{cut, fine};
use super::pins::set_nested;
use super::selectors::Selector;
use super::setup_form::or_none;
use super::spoken_messages::SpokenMessage;
use super::unbroken::unbroken;
use super::{Sentence, Spoken, Words};
use crate::bench::{
    CordStandard, Correction, Counts, DrawnUp, FitAnswer, FitSection, Ground, KnotShape, Prices,
    Rig,
};
use crate::guide::{FitQuestion, Setup, SetupField};

/// Columns of the table of knots that fit, the bare one of balls and mats alone; one more, the cost, when
/// prices are set.
const COLUMNS: [&str; 14] = [
    "rank", "leads", "bights", "passes", "strands", "width", "drawn", "range", "bare", "hides",
    "scallop", "cord", "tucks", "time",
];

/// Less than this, in millimetres, is no slack to speak of.
const LEAST_SLACK: f64 = 0.05;
/// Less than this stays bare at no pole and in no middle: the bights close it.
const LEAST_BARE: f64 = 0.5;

impl Words {
    /// The sentence above the table. `shown`: how many of them it lists.
    pub fn fit_heading(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        shown: usize,
    ) -> String {
        let wanted = question.object.cover;
        let count = answers
            .iter()
            .filter(|answer| answer.reaches(wanted))
            .count();
        let mut args = fluent_args! {
            "count" => count, "near" => answers.len() - count,
            "shown" => if shown < answers.len() { shown } else { 0 },
            "cover" => fine(question.object.cover), "cord" => fine(question.cord.diameter),
        };
        let ground = question.object.ground;
        set_ground(&mut args, ground);
        let id = match ground {
            Ground::Round(_) => "fit-heading",
            Ground::Taper { .. } => "fit-heading-taper",
            Ground::Ball(_) => "fit-heading-ball",
            Ground::Flat { .. } => "fit-heading-mat",
        };
        self.text(id, &args)
    }

    /// The heading of a part of the offer.
    pub fn fit_section(&self, question: &FitQuestion, section: FitSection) -> String {
        let args = fluent_args! {
            "section" => section.selector(), "cover" => fine(question.object.cover),
            "ground" => ground_kind(question.object.ground),
        };
        self.text("fit-section", &args)
    }

    /// Whose pace the times are told at.
    pub fn fit_times(&self, question: &FitQuestion) -> String {
        let pace = if question.own_pace.is_some() {
            "own"
        } else {
            "usual"
        };
        self.text("fit-times", &fluent_args! { "pace" => pace })
    }

    /// From which knot of the table on the tube hampers the work.
    pub fn fit_hampered(&self, first: usize) -> String {
        self.text("fit-hampered", &fluent_args! { "first" => first })
    }

    /// How to list more interwoven knots than those beside plain ones, of which this is one.
    pub fn fit_interwoven(&self, counts: Counts) -> String {
        self.text(
            "fit-interwoven",
            &fluent_args! { "nested" => counts.nested() },
        )
    }

    /// How to list all of them.
    pub fn fit_more(&self, count: usize) -> String {
        self.text("fit-more", &fluent_args! { "count" => count })
    }

    /// From how many ties the figures of these knots were corrected, if any were.
    pub fn fit_corrected(&self, question: &FitQuestion, answers: &[FitAnswer]) -> Option<String> {
        let ties = answers
            .iter()
            .map(|answer| question.correction(answer.counts).ties());
        let ties = (ties.clone().min()?, ties.max()?);
        (ties.1 > 0).then(|| {
            let args = fluent_args! { "least" => ties.0, "most" => ties.1 };
            self.text("fit-corrected", &args)
        })
    }

    /// From how many ties a figure was corrected, if it was.
    pub fn corrected(&self, correction: Correction) -> Option<String> {
        let ties = correction.ties();
        (ties > 0).then(|| {
            let args = fluent_args! { "least" => ties, "most" => ties };
            self.text("fit-corrected", &args)
        })
    }

    /// The sentence that says which standard cord was understood.
    pub fn cord_understood(&self, cord: &CordStandard) -> String {
        let args = fluent_args! {
            "designation" => cord.designation,
            "diameter" => cord.typical_diameter.map_or("none".into(), |diameter| {
                FluentValue::from(fine(diameter))
            }),
        };
        self.text("cord-understood", &args)
    }

    /// The sentence for an option that takes a whole number and was given something else.
    pub fn option_number(
        &self,
        option: &str,
        given: &str,
        [least, most]: [u32; 2],
        example: u32,
    ) -> Sentence {
        let args = fluent_args! {
            "option" => option, "given" => given, "least" => least, "most" => most,
            "example" => example.to_string(),
        };
        self.sentence("option-number", &args)
    }

    /// The table of knots, its head first.
    pub fn fit_table(
        &self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        prices: Prices,
    ) -> Vec<Vec<String>> {
        let is_priced = prices != Prices::default();
        let ground = question.object.ground;
        let has_middle = matches!(ground, Ground::Ball(_) | Ground::Flat { .. });
        let columns = COLUMNS
            .into_iter()
            .filter(|column| *column != "bare" || has_middle);
        let columns: Vec<&str> = columns.chain(is_priced.then_some("cost")).collect();
        let of_ground = fluent_args! { "ground" => ground_kind(ground) };
        let head = |column: &&str| self.text(&format!("fit-head-{column}"), &of_ground);
        let mut rows = vec![columns.iter().map(head).collect::<Vec<_>>()];
        for (index, answer) in answers.iter().enumerate() {
            let args = answer_args(answer, prices, self.time(answer.minutes));
            let cell = |column: &&str| match *column {
                "rank" => (index + 1).to_string(),
                "leads" => answer.counts.leads().to_string(),
                "bights" => answer.counts.bights().to_string(),
                "passes" => answer.counts.passes().to_string(),
                "strands" => answer.counts.strands().to_string(),
                "tucks" => answer.tucks.to_string(),
                column => self.text(&format!("fit-cell-{column}"), &args),
            };
            rows.push(columns.iter().map(cell).collect());
        }
        rows
    }

    /// A knot on the plan screen: its name.
    pub fn answer_line(&self, answer: &FitAnswer) -> String {
        self.text("plan-answer", &counts_args(answer.counts))
    }

    /// A knot on the plan screen: what it comes to, in two lines.
    pub fn answer_facts(&self, answer: &FitAnswer, prices: Prices) -> [String; 2] {
        let args = answer_args(answer, prices, self.time(answer.minutes));
        ["plan-answer-shape", "plan-answer-work"].map(|id| unbroken(&self.text(id, &args)))
    }

    /// A knot on its card: its few figures, a line each.
    pub fn answer_figures(&self, answer: &FitAnswer) -> [String; 4] {
        let args = answer_args(answer, Prices::default(), self.time(answer.minutes));
        let figures = [
            "plan-card-size",
            "plan-card-hides",
            "plan-card-tucks",
            "plan-card-cord",
        ];
        figures.map(|id| unbroken(&self.text(id, &args)))
    }

    /// The two lengths of a ground that is named by two: the ends of a taper, a mat and its hole.
    pub fn ends_read(&self, ground: Ground) -> Option<String> {
        let (shape, first, second) = match ground {
            Ground::Taper { bottom, top, .. } => ("taper", bottom, top),
            Ground::Flat {
                outer,
                hole: Some(hole),
            } => ("mat", outer, hole),
            _ => return None,
        };
        let args = fluent_args! {
            "shape" => shape, "first" => fine(first), "second" => fine(second),
        };
        Some(unbroken(&self.text("plan-ends-read", &args)))
    }

    /// The ends of the range of widths of a knot.
    pub fn answer_range(&self, answer: &FitAnswer) -> [String; 2] {
        let ends = [answer.shape.tight, answer.range.widest];
        ends.map(|width| self.text("fit-cell-width", &fluent_args! { "width" => fine(width) }))
    }

    /// What is said of a knot when it is chosen: the `rank`th of `count`.
    pub fn say_answer(
        &self,
        rank: usize,
        count: usize,
        answer: &FitAnswer,
        prices: Prices,
    ) -> Spoken {
        let mut args = answer_args(answer, prices, self.say_time(answer.minutes));
        args.set("rank", rank);
        args.set("count", count);
        self.spoken(SpokenMessage::PlanAnswerSay, &args)
    }

    /// A filter of the plan screen: its key and what it is set to; a choice of 0 lets every knot
    /// through.
    pub fn filter(&self, name: &'static str, key: &str, choice: u32) -> String {
        let args = fluent_args! { "filter" => name, "key" => key, "choice" => choice };
        self.text("plan-filter", &args)
    }

    /// The choice of a filter as it is said when it is changed.
    pub fn say_filter(&self, name: &'static str, choice: u32) -> Spoken {
        let args = fluent_args! { "filter" => name, "choice" => choice };
        self.spoken(SpokenMessage::PlanFilterSay, &args)
    }

    /// How many knots fit.
    pub fn answers_found(&self, count: usize) -> String {
        self.text("plan-all", &fluent_args! { "count" => count })
    }

    /// What is said when a field of the plan is come to, with what is typed there.
    pub fn say_field(&self, asking: SetupField, text: Option<&str>) -> Spoken {
        let args = fluent_args! { "asking" => asking.selector(), "text" => text.unwrap_or("none") };
        self.spoken(SpokenMessage::PlanFieldSay, &args)
    }

    /// What the plan still waits for.
    pub fn wanting(&self, asking: SetupField) -> Sentence {
        self.sentence(
            "plan-wanting",
            &fluent_args! { "asking" => asking.selector() },
        )
    }

    /// What a rigged tube, or what is rigged in its place, is for.
    pub fn rig_heading(&self, counts: Counts, setup: &Setup) -> String {
        let mut args = counts_args(counts);
        set_tied_on(&mut args, setup);
        args.set("cord", fine(setup.cord.diameter));
        self.text("rig-heading", &args)
    }

    /// The heading of what is done before the first leg: on the tube, on a board, or on the thing itself.
    pub fn rig_where(&self, setup: &Setup) -> String {
        let mut args = FluentArgs::new();
        set_tied_on(&mut args, setup);
        self.text("rig-where", &args)
    }

    /// What the knot on a rigged tube comes to, or what is rigged in its place.
    pub fn rig_finished(&self, setup: &Setup, rig: &Rig) -> String {
        let mut args = shape_args(&rig.shape);
        args.set("ground", ground_kind(setup.ground()));
        args.set("outer", fine(rig.shape.outer_edge()));
        let slack = Some(rig.laid.slack).filter(|slack| slack.get() >= LEAST_SLACK);
        args.set("slack", or_none(slack, fine));
        self.text("rig-finished", &args)
    }
}

/// `time`: what it takes, in words.
fn answer_args(answer: &FitAnswer, prices: Prices, time: String) -> FluentArgs<'static> {
    let mut args = counts_args(answer.counts);
    for (name, value) in shape_args(&answer.shape) {
        args.set(name.into_owned(), value);
    }
    args.set("drawn", answer.drawn_up().selector());
    args.set("near", (answer.section == FitSection::Near).selector());
    args.set("widest", fine(answer.range.widest));
    args.set("long", cut(answer.cord));
    args.set("tucks", answer.tucks);
    args.set(
        "other_tucks",
        if answer.is_twin {
            answer.other_tucks
        } else {
            0
        },
    );
    args.set("time", time);
    args.set("cost", cost(prices.cost(answer.cord, answer.minutes)));
    args
}

fn counts_args(counts: Counts) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "leads" => counts.leads(), "bights" => counts.bights(), "passes" => counts.passes(),
        "strands" => counts.strands(), "legs" => counts.legs(),
    };
    set_nested(&mut args, counts.lattice());
    args
}

fn shape_args(shape: &KnotShape) -> FluentArgs<'static> {
    fluent_args! {
        "width" => fine(shape.width), "tight" => fine(shape.tight),
        "drawn" => if shape.is_tight() { DrawnUp::Tight } else { DrawnUp::Open }.selector(),
        "hides" => (shape.cover * 100.0).floor(), "scallop" => fine(shape.scallop),
        "sure" => shape.is_borne_out.selector(),
        "angle" => shape.angle_degrees().round(),
        "bare" => or_none(shape.bare.filter(|bare| bare.get() >= LEAST_BARE), fine),
    }
}
