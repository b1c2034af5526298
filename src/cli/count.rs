//! `marlinspeak count`: a knot that somebody brings, counted until it is known, a line a question.

use std::io::{self, BufRead, ErrorKind, Write};

use clap::Args;

use super::complaint::Complaint;
use crate::guide::Plan;
use crate::session::{CountAction, KnotCount};
use crate::voice::{Mute, Speak, Speaker, SystemVoice};
use crate::words::Words;

#[derive(Args)]
pub(super) struct CountOptions {
    #[arg(long, help = "help-speech")]
    speech: bool,
}

/// Asks until the knot is known, and says how it is named everywhere else.
pub(super) fn run(asked: &CountOptions, words: &Words) -> Result<(), Complaint> {
    let voice: Box<dyn Speak> = if asked.speech {
        match Speaker::start(SystemVoice::maker(), |_| {}) {
            Ok(speaker) => Box::new(speaker),
            Err(error) => {
                log::warn!("no voice: {error}");
                Box::new(Mute)
            }
        }
    } else {
        Box::new(Mute)
    };
    let counted = count(io::stdin().lock(), io::stdout().lock(), &*voice, words);
    voice.hush();
    match counted {
        Err(fault) if fault.kind() != ErrorKind::BrokenPipe => {
            Err(Complaint::output(words, &fault))
        }
        _ => Ok(()),
    }
}

/// Asks on `out` what lines of `input` answer: nothing typed is next, `b` back, a number itself, `q`
/// leaves.
fn count(
    input: impl BufRead,
    mut out: impl Write,
    voice: &dyn Speak,
    words: &Words,
) -> io::Result<()> {
    let mut count = KnotCount::default();
    writeln!(out, "{}", words.plainly("count-lines", &[]))?;
    let mut said = count.say(words);
    for line in std::iter::once(Ok(String::new()))
        .chain(input.lines())
        .enumerate()
    {
        if let (1.., line) = line {
            let line = line?;
            let typed = line.trim();
            let is_number = !typed.is_empty() && typed.bytes().all(|byte| byte.is_ascii_digit());
            let action = if is_number {
                let is_typed = typed
                    .char_indices()
                    .all(|(at, digit)| count.type_in(&typed[at..at + digit.len_utf8()]));
                // Where no number is asked for, it is no answer.
                is_typed.then(|| count.press(true))
            } else {
                match typed
                    .chars()
                    .next()
                    .map(|letter| letter.to_ascii_lowercase())
                {
                    None => Some(count.press(true)),
                    Some('b') => Some(count.press(false)),
                    Some('q') => return Ok(()),
                    Some(_) => None,
                }
            };
            said = match action {
                Some(CountAction::Take(plan)) => return tell(&mut out, voice, words, &plan),
                Some(CountAction::Counted) => count.say_briefly(words),
                Some(CountAction::Asked) | None => count.say(words),
            };
        }
        voice.say(&said);
        writeln!(out, "{said}")?;
        out.flush()?;
    }
    Ok(())
}

fn tell(out: &mut impl Write, voice: &dyn Speak, words: &Words, plan: &Plan) -> io::Result<()> {
    let knot = plan.knot();
    let options = format!(
        "--leads {} --bights {} --passes {} --weave {}",
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
        // Seven scallops, four crossings, two together, over under over under, one colour; taken.
        let lines = "7\n4\n2\n\nb\n\nb\n1\n\n";
        let mut out = Vec::new();
        count(lines.as_bytes(), &mut out, &Mute, &Words::english()).unwrap();
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
    fn what_is_no_answer_is_asked_again_and_q_leaves() {
        let mut out = Vec::new();
        count("x\nq\n7\n".as_bytes(), &mut out, &Mute, &Words::english()).unwrap();
        let told = String::from_utf8(out).unwrap();
        assert_eq!(told.matches("How many scallops").count(), 2, "{told}");
    }
}
