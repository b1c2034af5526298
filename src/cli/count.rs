//! `marlinspeak count`: a knot that somebody brings, counted until it is known, a line a question.

use std::io::{self, BufRead, ErrorKind, Write};

use clap::Args;
use serde::Serialize;

use super::complaint::Complaint;
use super::line_voice::LineVoice;
use super::print::json;
use crate::guide::Plan;
use crate::session::{CountAction, KnotCount};
use crate::voice::{Mute, Speak};
use crate::words::{Spoken, Words};

#[derive(Args)]
pub(super) struct CountOptions {
    #[arg(long, help = "help-speech")]
    speech: bool,
    #[arg(long, help = "help-json")]
    json: bool,
}

/// Asks until the knot is known, and says how it is named everywhere else.
pub(super) fn run(asked: &CountOptions, words: &Words) -> Result<(), Complaint> {
    let start = || LineVoice::start(words.plainly("count-no-voice", &[]));
    let voice = asked.speech.then(start);
    let speak: &dyn Speak = match &voice {
        Some(voice) => voice,
        None => &Mute,
    };
    // What is asked stands beside the document, not in it.
    let counted = if asked.json {
        count(io::stdin().lock(), io::stderr().lock(), speak, words)
    } else {
        count(io::stdin().lock(), io::stdout().lock(), speak, words)
    };
    let told = counted.and_then(|count| {
        let Some(count) = count else { return Ok(()) };
        if asked.json {
            return form(&count).map_or(Ok(()), |form| json(&mut io::stdout().lock(), &form));
        }
        let Some(plan) = count.plan() else {
            return Ok(());
        };
        tell(&mut io::stdout().lock(), speak, words, plan)
    });
    if let (Some(voice), Ok(())) = (&voice, &told) {
        voice.speak_out();
    }
    match told {
        Err(fault) if fault.kind() != ErrorKind::BrokenPipe => {
            Err(Complaint::output(words, &fault))
        }
        _ => Ok(()),
    }
}

/// A knot that was counted, as a document.
#[derive(Serialize)]
struct CountedForm {
    leads: u16,
    bights: u16,
    nested: u16,
    lands: u16,
    passes: u16,
    weave: String,
    strands: u16,
    colours: u16,
    cords: &'static str,
}

fn form(count: &KnotCount) -> Option<CountedForm> {
    let plan = count.plan()?;
    let (found, colours) = count.colours()?;
    let knot = plan.knot();
    Some(CountedForm {
        leads: knot.leads(),
        bights: knot.bights(),
        nested: knot.nested(),
        lands: knot.lattice().lands(),
        passes: plan.laying().passes(),
        weave: knot.weave().to_string(),
        strands: knot.strands(),
        colours,
        cords: found.name(),
    })
}

/// Asks on `out` what lines of `input` answer: nothing typed is next, `b` back, a number itself, `q`
/// leaves. Gives the count when its knot was taken.
fn count(
    input: impl BufRead,
    mut out: impl Write,
    voice: &dyn Speak,
    words: &Words,
) -> io::Result<Option<KnotCount>> {
    let mut count = KnotCount::default();
    writeln!(out, "{}", words.plainly("count-lines", &[]))?;
    let mut said = count.say(words);
    for line in std::iter::once(Ok(Vec::new()))
        .chain(input.split(b'\n'))
        .enumerate()
    {
        if let (1.., line) = line {
            let line = line?;
            // What is no text is no answer either.
            let line = String::from_utf8_lossy(&line);
            let typed = line.trim();
            let is_number = !typed.is_empty() && typed.bytes().all(|byte| byte.is_ascii_digit());
            let mut refusal = Spoken::default();
            let action = if is_number {
                match take(&mut count, typed) {
                    Ok(action) => action,
                    Err((least, most)) => {
                        let (least, most) = (least.to_string(), most.to_string());
                        let texts = [("given", typed), ("least", &*least), ("most", &*most)];
                        refusal = words.notice("count-beyond", &texts).into();
                        None
                    }
                }
            } else {
                match typed
                    .chars()
                    .next()
                    .map(|letter| letter.to_ascii_lowercase())
                {
                    None => Some(count.press(true)),
                    Some('b') => Some(count.press(false)),
                    Some('q') => {
                        voice.hush();
                        return Ok(None);
                    }
                    Some(_) => None,
                }
            };
            said = match action {
                Some(CountAction::Take(_)) => return Ok(Some(count)),
                Some(CountAction::Counted) => count.say_briefly(words),
                Some(CountAction::Asked) | None => refusal.then(&count.say(words)),
            };
        }
        voice.say(&said);
        writeln!(out, "{said}")?;
        out.flush()?;
    }
    Ok(None)
}

/// Takes a whole number as the answer; none where no number is asked for, which makes it no answer.
/// One beyond the bounds is refused with these: its digits alone would make another number of it.
fn take(count: &mut KnotCount, typed: &str) -> Result<Option<CountAction>, (u16, u16)> {
    let Some((least, most)) = count.bounds() else {
        return Ok(None);
    };
    if !typed
        .parse()
        .is_ok_and(|number: u16| (least..=most).contains(&number))
    {
        return Err((least, most));
    }
    let is_typed = typed
        .char_indices()
        .all(|(at, digit)| count.type_in(&typed[at..at + digit.len_utf8()]));
    Ok(is_typed.then(|| count.press(true)))
}

fn tell(out: &mut impl Write, voice: &dyn Speak, words: &Words, plan: &Plan) -> io::Result<()> {
    let knot = plan.knot();
    let nested = if knot.nested() > 1 {
        let lands = knot.lattice().lands();
        format!(" --nested {} --lands {lands}", knot.nested())
    } else {
        String::new()
    };
    let options = format!(
        "--leads {} --bights {}{nested} --passes {} --weave {}",
        knot.leads(),
        knot.bights(),
        plan.laying().passes(),
        knot.weave(),
    );
    let told = words.notice("count-go-on", &[("given", &options)]);
    voice.say(told.spoken());
    writeln!(out, "{told}")?;
    out.flush()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_knot_is_counted_by_lines() {
        // Seven scallops side by side, four crossings, two together, over under over under, one colour;
        // taken.
        let lines = "7\n1\n4\n2\n\nb\n\nb\n1\n\n";
        let (mut out, words) = (Vec::new(), Words::english());
        let counted = count(lines.as_bytes(), &mut out, &Mute, &words).unwrap();
        let counted = counted.unwrap();
        tell(&mut out, &Mute, &words, counted.plan().unwrap()).unwrap();
        let told = String::from_utf8(out).unwrap();
        let last = told.lines().last().unwrap();
        assert!(
            last.contains("marlinspeak rig --leads 5 --bights 7 --passes 2 --weave 1"),
            "{told}"
        );
        assert!(told.contains("5 lead 7 bight"), "{told}");
        assert!(told.contains("One cord makes all of it."), "{told}");
    }

    #[test]
    fn a_number_beyond_the_bounds_is_asked_again_with_them() {
        let mut out = Vec::new();
        // 1500 scallops, one alone, more than a number holds, bytes that are no text; then 7, 1, 4 and 12
        // cords side by side.
        let lines = b"1500\n1\n99999\n\xff\n7\n1\n4\n12\nq\n";
        count(&lines[..], &mut out, &Mute, &Words::english()).unwrap();
        let told = String::from_utf8(out).unwrap();
        assert!(
            told.contains("1500 cannot be: give a number from 2 to "),
            "{told}"
        );
        assert_eq!(told.matches("cannot be").count(), 4, "{told}");
        assert_eq!(told.matches("How many scallops has").count(), 5, "{told}");
        assert_eq!(told.matches("How many cords lie").count(), 2, "{told}");
    }

    #[test]
    fn an_interwoven_knot_is_counted_by_lines_and_goes_into_a_document() {
        // Four scallops in two rows, the first cord landing innermost; it crosses four times, single: over,
        // under, under, over; then one crossing higher up, over; two colours.
        let lines = "4\n2\n2\n4\n1\n\nb\nb\n\n\n2\n\n";
        let mut out = Vec::new();
        let counted = count(lines.as_bytes(), &mut out, &Mute, &Words::english());
        let counted = counted.unwrap();
        let told = String::from_utf8(out).unwrap();
        let counted = counted.unwrap_or_else(|| panic!("{told}"));
        let form = serde_json::to_value(form(&counted).unwrap()).unwrap();
        assert_eq!(form["nested"], 2, "{told}");
        assert_eq!(form["lands"], 2, "{told}");
        assert_eq!(form["leads"], 3, "{told}");
        assert_eq!(form["weave"], "2", "{told}");
        assert_eq!(form["strands"], 2);
        assert_eq!(
            (&form["colours"], &form["cords"]),
            (&2.into(), &"strands".into())
        );
    }

    #[test]
    fn what_is_no_answer_is_asked_again_and_q_leaves() {
        let mut out = Vec::new();
        count("x\nq\n7\n".as_bytes(), &mut out, &Mute, &Words::english()).unwrap();
        let told = String::from_utf8(out).unwrap();
        assert_eq!(told.matches("How many scallops has").count(), 2, "{told}");
    }
}
