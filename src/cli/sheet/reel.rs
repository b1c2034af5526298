//! `marlinspeak sheet reel`: a whole tie as a moving picture, for a class or a wall.

use std::path::PathBuf;

use clap::Args;

use super::progress::Progress;
use super::{refused, refused_name};
use crate::cli::complaint::Complaint;
use crate::cli::options::KnotOptions;
use crate::cli::setup_options::SetupOptions;
use crate::paper::{REEL_WIDTH, REEL_WIDTHS, TieReel};
use crate::picture::View;
use crate::picture::reel::ReelFormat;
use crate::words::Words;

#[derive(Args)]
pub(super) struct ReelArgs {
    #[command(flatten)]
    knot: KnotOptions,
    #[arg(long, value_name = "value-file", help = "help-reel-out")]
    out: Option<PathBuf>,
    #[arg(long, help = "help-replace")]
    replace: bool,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-reel-width"
    )]
    width: Option<String>,
    #[arg(long, help = "help-rolled-out")]
    rolled_out: bool,
    #[command(flatten)]
    setup: SetupOptions,
}

impl ReelArgs {
    pub fn run(&self, words: &Words) -> Result<(), Complaint> {
        let plan = self.knot.plan(words)?;
        let plan = if self.setup.is_empty() {
            plan
        } else {
            self.setup.equip(plan, words)?
        };
        let (file, format) = self.target(words)?;
        let width = self.width(words)?;
        let view = if self.rolled_out {
            View::RolledOut
        } else {
            View::RoundTheTube
        };
        let mut progress = Progress::begin(words);
        TieReel::new(plan, view, width, words)
            .and_then(|reel| {
                reel.write(&file, format, self.replace, |done, frames| {
                    progress.goes_on(done, frames)
                })
            })
            .map_err(|error| refused(&error, words))
    }

    fn target(&self, words: &Words) -> Result<(PathBuf, ReelFormat), Complaint> {
        let Some(file) = self.out.clone() else {
            return Err(Complaint::input(
                words.plainly("sheet-reel-out-missing", &[]),
            ));
        };
        let ending = file.extension().unwrap_or_default().to_string_lossy();
        match ReelFormat::of_ending(&ending) {
            Some(format) => Ok((file, format)),
            None => Err(refused_name("sheet-reel-ending", &file, words)),
        }
    }

    fn width(&self, words: &Words) -> Result<u16, Complaint> {
        let Some(given) = self.width.as_deref() else {
            return Ok(REEL_WIDTH);
        };
        let [least, most] = REEL_WIDTHS;
        match given.trim().parse() {
            Ok(width) if (least..=most).contains(&width) => Ok(width),
            _ => Err(Complaint::input(words.sheet_width(given, least, most))),
        }
    }
}
