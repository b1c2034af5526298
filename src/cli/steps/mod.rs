//! `marlinspeak steps`: every step of a tie, as text or as one JSON document.

mod forms;

use std::io::{self, Write};

use clap::Args;
use forms::StepsDocument;

use super::complaint::Complaint;
use super::options::{KnotOptions, at_once, checks};
use super::print::{json, print};
use super::setup_options::SetupOptions;
use crate::guide::{AtOnce, Script, What};
use crate::words::{Detail, Shown, Words};

#[derive(Args)]
pub(super) struct StepsOptions {
    #[command(flatten)]
    knot: KnotOptions,
    #[command(flatten)]
    setup: SetupOptions,
    #[arg(long, help = "help-json")]
    json: bool,
    #[arg(long, help = "help-summary")]
    summary: bool,
    #[arg(
        long,
        value_name = "N|leg",
        allow_hyphen_values = true,
        help = "help-at-once"
    )]
    at_once: Option<String>,
    #[arg(long, value_name = "round|pass", help = "help-checks")]
    checks: Option<String>,
}

/// Prints every step of the tie that is asked for.
pub(super) fn run(asked: &StepsOptions, words: &Words) -> Result<(), Complaint> {
    let plan = asked.setup.equip(asked.knot.plan(words)?, words)?;
    let at_once = at_once(asked.at_once.as_deref(), words)?.unwrap_or_default();
    let checks = checks(asked.checks.as_deref(), words)?.unwrap_or_default();
    let is_taught = words.detail() == Detail::Teach;
    // Told in the smallest portions, bag and rigging come one by one, a round of fairing leg by leg.
    let is_smallest = at_once == AtOnce::UpTo(1);
    let script = Script::new(plan, at_once)
        .with_checks(checks)
        .fairing_by_leg(is_smallest)
        .packing_one_by_one(is_smallest || is_taught)
        .teaching(is_taught);
    print(words, |out| {
        if asked.summary {
            write_summary(out, &script, words)
        } else if asked.json {
            json(out, &StepsDocument::of(&script, words))
        } else {
            write_text(out, &script, words)
        }
    })
}

/// A line for each kind of step: how many there are, and the seconds they take to be spoken; then one
/// for them all.
fn write_summary(out: &mut impl Write, script: &Script, words: &Words) -> io::Result<()> {
    let mut kinds: Vec<(&str, u32, f64)> = Vec::new();
    for step in script.steps() {
        let seconds = words.seconds(&words.say(&step));
        let name = kind(&step.what);
        match kinds.iter_mut().find(|(known, ..)| *known == name) {
            Some((_, count, sum)) => (*count, *sum) = (*count + 1, *sum + seconds),
            None => kinds.push((name, 1, seconds)),
        }
    }
    let all = kinds
        .iter()
        .fold((0, 0.0), |(steps, sum), (_, count, seconds)| {
            (steps + count, sum + seconds)
        });
    for (name, count, seconds) in kinds.into_iter().chain([("all", all.0, all.1)]) {
        let kind = words.plainly("steps-kind", &[("kind", name)]);
        writeln!(out, "{kind:12}{count:6}{seconds:9.1} s")?;
    }
    Ok(())
}

/// The name of a kind of step in the JSON document.
const fn kind(what: &What) -> &'static str {
    match what {
        What::Kit(_) => "kit",
        What::Rig(_) => "rig",
        What::Begin(_) => "begin",
        What::Follow(_) => "follow",
        What::Lay(_) => "lay",
        What::Check(_) => "check",
        What::Lift(_) => "lift",
        What::Fair(_) => "fair",
        What::Finish(_) => "finish",
    }
}

fn write_text(out: &mut impl Write, script: &Script, words: &Words) -> io::Result<()> {
    writeln!(out, "{}", words.choice(script))?;
    let mut section = None;
    for (index, step) in script.steps().enumerate() {
        let shown = words.show(script.plan().knot(), &step);
        let before = matches!(step.what, What::Kit(_) | What::Rig(_)).then_some(step.place.phase());
        // What is no pass of a cord stands with the first pass of the first strand.
        let here = (
            before,
            step.place.pass().unwrap_or(1),
            step.place.strand().unwrap_or(1),
        );
        if section.replace(here) != Some(here) {
            writeln!(out)?;
        }
        let number = (index + 1).to_string();
        let things = words.things_on_page(&step);
        if things.len() < 2 {
            write_row(out, &number, &shown.phase, &shown)?;
        } else {
            // Of several on a page each has a row, with its own notes.
            for (nth, thing) in things.iter().enumerate() {
                let (number, phase) = if nth == 0 {
                    (number.as_str(), shown.phase.as_str())
                } else {
                    ("", "")
                };
                write_row(out, number, phase, thing)?;
            }
        }
        // A caution has a line of its own: at the end of a long row it would not be read.
        if let Some(caution) = &shown.caution {
            writeln!(out, "      {caution}")?;
        }
    }
    Ok(())
}

/// A row of the text: which step, in which phase, what is to be done, and what else there is to say.
fn write_row(out: &mut impl Write, number: &str, phase: &str, shown: &Shown) -> io::Result<()> {
    let mut columns = vec![format!("{phase:30}"), format!("{:26}", shown.line)];
    let marks: Vec<&str> = shown.marks.iter().map(|mark| mark.text.as_str()).collect();
    if !marks.is_empty() {
        columns.push(marks.join(", "));
    }
    columns.extend(shown.notes.iter().cloned());
    writeln!(out, "{number:>4}  {}", columns.join("  ").trim_end())
}
