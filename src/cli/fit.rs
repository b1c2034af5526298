//! `marlinspeak fit`: the knots that cover an object, best first.

use std::io::{self, Write};

use clap::Args;
use serde::Serialize;

use super::Complaint;
use super::print::{json, print, rounded};
use super::setup_options::{SetupOptions, ledger, rack_for};
use crate::bench::Answer;
use crate::guide::Wanted;
use crate::words::Words;

/// How many knots the table lists when nothing is said.
const MOST: usize = 10;

#[derive(Args)]
pub(super) struct FitOptions {
    #[command(flatten)]
    setup: SetupOptions,
    /// At most so many knots [default: 10, or all of them with --json]
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    most: Option<String>,
    /// Print one JSON document instead of text
    #[arg(long)]
    json: bool,
}

/// Prints the knots that fit.
pub(super) fn run(asked: &FitOptions, words: &Words) -> Result<(), Complaint> {
    let most = asked.most(words)?;
    let texts = asked.setup.asked(words)?;
    let question = texts
        .question(&rack_for(&texts, words)?)
        .map_err(|error| Complaint::input(words.ask_error(&error)))?;
    let question = ledger(words)?.teach(question);
    let answers = question.answers();
    if answers.is_empty() {
        return Err(Complaint::input(words.misfits(&question.misfits())));
    }
    if asked.json {
        let knots = answers
            .iter()
            .take(most.unwrap_or(usize::MAX))
            .map(KnotForm::of)
            .collect();
        return print(words, |out| json(out, &Document { knots }));
    }
    let shown = most.unwrap_or(MOST).min(answers.len());
    print(words, |out| table(out, &question, &answers, shown, words))
}

impl FitOptions {
    fn most(&self, words: &Words) -> Result<Option<usize>, Complaint> {
        let Some(given) = self.most.as_deref() else {
            return Ok(None);
        };
        match given.trim().parse() {
            Ok(most @ 1..=9999) => Ok(Some(most)),
            _ => Err(Complaint::input(
                words.plainly("most-unreadable", &[("given", given)]),
            )),
        }
    }
}

fn table(
    out: &mut impl Write,
    question: &Wanted,
    answers: &[Answer],
    shown: usize,
    words: &Words,
) -> io::Result<()> {
    writeln!(
        out,
        "{}\n",
        words.fit_heading(question, answers.len(), shown)
    )?;
    let mut rows = vec![words.fit_head()];
    let ranked = answers.iter().take(shown).enumerate();
    rows.extend(ranked.map(|(index, answer)| words.fit_row(index + 1, answer)));
    let columns = rows.first().map_or(0, Vec::len);
    let widths: Vec<usize> = (0..columns)
        .map(|column| {
            let cells = rows.iter().filter_map(|row| row.get(column));
            cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
        })
        .collect();
    for row in rows {
        let cells: Vec<String> = row
            .iter()
            .zip(&widths)
            .map(|(cell, &width)| format!("{cell:>width$}"))
            .collect();
        writeln!(out, "{}", cells.join("  ").trim_end())?;
    }
    if shown < answers.len() {
        writeln!(out, "\n{}", words.fit_more(answers.len()))?;
    }
    Ok(())
}

#[derive(Serialize)]
struct Document {
    knots: Vec<KnotForm>,
}

#[derive(Serialize)]
struct KnotForm {
    leads: u16,
    bights: u16,
    passes: u16,
    strands: u16,
    width_mm: f64,
    cover: f64,
    angle_deg: f64,
    faired: bool,
    cord_mm: f64,
    legs: u32,
    /// At the tyer's own pace, when the log knows it.
    #[serde(skip_serializing_if = "Option::is_none")]
    hours: Option<f64>,
}

impl KnotForm {
    fn of(answer: &Answer) -> Self {
        let Answer { counts, shape, .. } = answer;
        Self {
            leads: counts.leads(),
            bights: counts.bights(),
            passes: counts.passes(),
            strands: counts.strands(),
            width_mm: rounded(shape.width.get(), 3),
            cover: rounded(shape.cover, 4),
            angle_deg: rounded(shape.angle_degrees(), 3),
            faired: shape.faired,
            cord_mm: rounded(answer.cord.get(), 1),
            legs: counts.legs(),
            hours: answer.hours.map(|hours| rounded(hours, 2)),
        }
    }
}
