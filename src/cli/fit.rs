//! `marlinspeak fit`: the knots that cover an object, in the order in which a master would offer
//! them.

use std::io::{self, Write};

use clap::Args;
use serde::Serialize;

use super::complaint::Complaint;
use super::ground_form::{GroundForm, MiddleForm};
use super::print::{json, print, rounded};
use super::setup_options::{PriceOptions, SetupOptions, ledger, presets_for};
use crate::bench::{
    FitAnswer, FitFilter, FitSection, Ground, LeastCover, MOST_PASSES, Prices, WeaveChoice,
};
use crate::guide::FitQuestion;
use crate::words::Words;

/// How many knots the table lists when nothing is said.
const MOST: usize = 10;

#[derive(Args)]
pub(super) struct FitOptions {
    #[command(flatten)]
    setup: SetupOptions,
    #[command(flatten)]
    filter: FilterOptions,
    #[command(flatten)]
    prices: PriceOptions,
    #[arg(long, value_name = "N", allow_hyphen_values = true, help = "help-most")]
    most: Option<String>,
    #[arg(long, help = "help-json")]
    json: bool,
}

/// Which knots are wanted.
#[derive(Args)]
struct FilterOptions {
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-fit-passes"
    )]
    passes: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-fit-nested"
    )]
    nested: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-least-leads"
    )]
    least_leads: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-least-bights"
    )]
    least_bights: Option<String>,
    #[arg(long, help = "help-one-cord")]
    one_cord: bool,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-most-legs"
    )]
    most_legs: Option<String>,
    #[arg(
        long,
        alias = "least-cover",
        value_name = "value-percent",
        allow_hyphen_values = true,
        help = "help-least-hidden"
    )]
    least_hidden: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-fit-weave"
    )]
    weave: Option<String>,
}

/// Prints the knots that fit.
pub(super) fn run(asked: &FitOptions, set: Prices, words: &Words) -> Result<(), Complaint> {
    let most = number(words, "--most", asked.most.as_deref(), [1, 9999], 20)?;
    let prices = asked.prices.prices(set, words)?;
    let form = asked.setup.form(words)?;
    let presets = presets_for(&form, words)?;
    let question = form
        .question(&presets)
        .map_err(|error| Complaint::input(words.setup_error(&error)))?;
    let question = asked.filter.narrow(question, words)?;
    let question = ledger(words)?.teach(question);
    let answers = question.answers();
    if answers.is_empty() {
        return Err(Complaint::input(words.misfits(&question.misfits())));
    }
    let most = most.and_then(|most| usize::try_from(most).ok());
    if asked.json {
        let knots = answers
            .iter()
            .take(most.unwrap_or(usize::MAX))
            .map(|answer| {
                let cost = prices.cost(answer.cord, answer.minutes);
                FitKnotForm::of(question.object.ground, answer, cost)
            })
            .collect();
        let document = FitDocument {
            ground: GroundForm::of(question.object.ground),
            in_place: question.in_place,
            knots,
        };
        return print(words, |out| json(out, &document));
    }
    let shown = most.unwrap_or(MOST).min(answers.len());
    let mut notes = Vec::new();
    notes.extend(
        form.understood(&presets)
            .map(|cord| words.cord_understood(cord)),
    );
    notes.push(words.fit_times(&question));
    notes.extend(words.fit_corrected(&question, &answers[..shown]));
    let hampered = answers[..shown]
        .iter()
        .position(|answer| answer.is_hampered);
    notes.extend(hampered.map(|place| {
        let lines = question.cautions(&answers[place]).into_iter();
        let lines = lines.map(|caution| words.caution(&caution).to_string());
        let first = words.fit_hampered(place + 1);
        [first]
            .into_iter()
            .chain(lines)
            .collect::<Vec<_>>()
            .join("\n")
    }));
    if let Some(answer) = answers[..shown]
        .iter()
        .find(|answer| answer.section == FitSection::Interwoven)
    {
        notes.push(words.fit_interwoven(answer.counts));
    }
    if answers.iter().take(shown).any(|answer| answer.is_twin) {
        notes.push(words.plainly("fit-twins", &[]));
    }
    if shown < answers.len() {
        notes.push(words.fit_more(answers.len()));
    }
    if answers[..shown]
        .iter()
        .any(|answer| !answer.shape.is_borne_out)
    {
        notes.push(words.plainly("fit-unsure", &[]));
    }
    notes.push(words.choice_caution().to_string());
    let heading = words.fit_heading(&question, &answers, shown);
    let rows = words.fit_table(&question, &answers[..shown], prices);
    // The heading above each row that begins a section; the first row is the head of the table.
    let sections = [None].into_iter().chain((0..shown).map(|at| {
        let section = answers[at].section;
        let is_first = at == 0 || answers[at - 1].section != section;
        is_first.then(|| words.fit_section(&question, section))
    }));
    let sections: Vec<Option<String>> = sections.collect();
    print(words, |out| table(out, &heading, &rows, &sections, &notes))
}

impl FilterOptions {
    fn narrow(&self, question: FitQuestion, words: &Words) -> Result<FitQuestion, Complaint> {
        let count = |option, given: &Option<String>, bounds: [u16; 2], example| {
            let bounds = bounds.map(u32::from);
            let number = number(words, option, given.as_deref(), bounds, example)?;
            Ok::<_, Complaint>(number.and_then(|number| u16::try_from(number).ok()))
        };
        let all = FitFilter::default();
        let filter = FitFilter {
            passes: count("--passes", &self.passes, [1, MOST_PASSES], 2)?,
            nested: count("--nested", &self.nested, [1, 9], 2)?,
            least_leads: count("--least-leads", &self.least_leads, [2, 60], 3)?
                .unwrap_or(all.least_leads),
            least_bights: count("--least-bights", &self.least_bights, [2, 60], 3)?
                .unwrap_or(all.least_bights),
            one_cord: self.one_cord,
            most_legs: number(
                words,
                "--most-legs",
                self.most_legs.as_deref(),
                [1, 9999],
                60,
            )?,
        };
        let percent = self
            .least_hidden
            .as_deref()
            .map(|text| text.trim_end_matches('%'));
        let least = number(words, "--least-hidden", percent, [1, 100], 80)?;
        let run = count("--weave", &self.weave, [1, 9], 1)?;
        Ok(FitQuestion {
            filter,
            least_cover: least.map_or(LeastCover::default(), |percent| {
                LeastCover::Share(f64::from(percent) / 100.0)
            }),
            weave: run.map_or(WeaveChoice::FewestTucks, WeaveChoice::Run),
            ..question
        })
    }
}

/// A whole number that an option takes, within bounds.
fn number(
    words: &Words,
    option: &'static str,
    given: Option<&str>,
    [least, most]: [u32; 2],
    example: u32,
) -> Result<Option<u32>, Complaint> {
    let Some(given) = given else {
        return Ok(None);
    };
    match given.trim().parse() {
        Ok(number) if (least..=most).contains(&number) => Ok(Some(number)),
        _ => Err(Complaint::input(words.option_number(
            option,
            given,
            [least, most],
            example,
        ))),
    }
}

fn table(
    out: &mut impl Write,
    heading: &str,
    rows: &[Vec<String>],
    sections: &[Option<String>],
    notes: &[String],
) -> io::Result<()> {
    writeln!(out, "{heading}\n")?;
    let columns = rows.first().map_or(0, Vec::len);
    let widths: Vec<usize> = (0..columns)
        .map(|column| {
            let cells = rows.iter().filter_map(|row| row.get(column));
            cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
        })
        .collect();
    for (row, section) in rows.iter().zip(sections) {
        if let Some(section) = section {
            writeln!(out, "\n{section}")?;
        }
        let cells: Vec<String> = row
            .iter()
            .zip(&widths)
            .map(|(cell, &width)| format!("{cell:>width$}"))
            .collect();
        writeln!(out, "{}", cells.join("  ").trim_end())?;
    }
    for note in notes {
        writeln!(out, "\n{note}")?;
    }
    Ok(())
}

#[derive(Serialize)]
struct FitDocument {
    ground: GroundForm,
    in_place: bool,
    knots: Vec<FitKnotForm>,
}

#[derive(Serialize)]
struct FitKnotForm {
    leads: u16,
    bights: u16,
    /// Bights nested at each rim, and the top row that the first cord lands in: always 1 for a
    /// knot that is not interwoven.
    nested: u16,
    lands: u16,
    passes: u16,
    weave: String,
    strands: u16,
    width_mm: f64,
    tight_mm: f64,
    widest_mm: f64,
    scallop_mm: f64,
    cover: f64,
    angle_deg: f64,
    cord_mm: f64,
    legs: u32,
    tucks: u32,
    /// At the tyer's own pace, or at a usual one as long as the log knows none.
    minutes: f64,
    #[serde(flatten)]
    middle: MiddleForm,
    /// When prices are set.
    #[serde(skip_serializing_if = "Option::is_none")]
    cost: Option<f64>,
}

impl FitKnotForm {
    fn of(ground: Ground, answer: &FitAnswer, cost: Option<f64>) -> Self {
        let FitAnswer {
            counts,
            shape,
            range,
            ..
        } = answer;
        Self {
            leads: counts.leads(),
            bights: counts.bights(),
            nested: counts.nested(),
            lands: counts.lattice().lands(),
            passes: counts.passes(),
            weave: answer.weave().to_string(),
            strands: counts.strands(),
            width_mm: rounded(shape.width.get(), 3),
            tight_mm: rounded(range.tight.get(), 3),
            widest_mm: rounded(range.widest.get(), 3),
            scallop_mm: rounded(shape.scallop.get(), 3),
            cover: rounded(shape.cover, 4),
            angle_deg: rounded(shape.angle_degrees(), 3),
            cord_mm: rounded(answer.cord.get(), 1),
            legs: counts.legs(),
            tucks: answer.tucks,
            minutes: rounded(answer.minutes, 1),
            middle: MiddleForm::of(ground, shape),
            cost: cost.map(|cost| rounded(cost, 2)),
        }
    }
}
