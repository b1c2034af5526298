//! `marlinspeak sheet class`: a card for each pupil, and the reel to show on a wall.

use std::path::PathBuf;

use clap::Args;

use super::progress::Progress;
use super::{DOTS_USUAL, paper_of, pinned, refused, refused_name};
use crate::bench::Prices;
use crate::cli::complaint::Complaint;
use crate::cli::options::KnotOptions;
use crate::cli::setup_options::{PriceOptions, SetupOptions, ledger};
use crate::files;
use crate::guide::Labour;
use crate::paper::{self, PaperError, Pupils, REEL_WIDTH, Target, TieReel};
use crate::picture::View;
use crate::picture::reel::ReelFormat;
use crate::words::Words;

#[derive(Args)]
pub(super) struct ClassArgs {
    #[command(flatten)]
    knot: KnotOptions,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-class-copies"
    )]
    copies: Option<String>,
    #[arg(long, value_name = "value-names", help = "help-class-names")]
    names: Option<String>,
    #[arg(long, value_name = "value-file", help = "help-class-out")]
    out: Option<PathBuf>,
    #[arg(long, help = "help-replace")]
    replace: bool,
    #[arg(long, value_name = "value-paper", help = "help-paper")]
    paper: Option<String>,
    #[command(flatten)]
    setup: SetupOptions,
    #[command(flatten)]
    prices: PriceOptions,
}

impl ClassArgs {
    /// Makes the cards in one PDF, and the reel beside it under the same name.
    pub fn run(&self, set: Prices, words: &Words) -> Result<(), Complaint> {
        let refuse = |error| refused(&error, words);
        let plan = self.knot.plan(words)?;
        let pupils = self.pupils(words)?;
        let paper = paper_of(self.paper.as_deref(), words)?;
        let (target, reel) = self.target(words)?;
        let pinned = pinned(&self.setup, &plan, words)?;
        let pinned = pinned.as_ref().map(|(tube, layout)| (tube, layout));
        let plan = if self.setup.names_tube_and_cord() {
            self.setup.equip(plan, words)?
        } else {
            plan
        };
        let prices = self.prices.prices(set, words)?;
        let labour = Labour::of(&plan, ledger(words)?.pace(), prices);
        paper::check_class(&plan, &pupils).map_err(refuse)?;
        let film = TieReel::new(plan.clone(), View::RoundTheTube, REEL_WIDTH, words);
        let film = film.map_err(refuse)?;
        let sheet = paper::class(&plan, pinned, &labour, &pupils, paper, words);
        let mut progress = Progress::begin(words);
        target
            .write(&sheet, &words.tie_line(&plan), |done, pages| {
                progress.goes_on(done, pages)
            })
            .map_err(refuse)?;
        film.write(&reel, ReelFormat::Gif, self.replace, |done, frames| {
            progress.goes_on(done, frames)
        })
        .map_err(|error| match error {
            PaperError::Stopped { done, count, .. } => {
                Complaint::failure(words.class_stopped(done, count))
            }
            error => refuse(error),
        })
    }

    /// Where the cards go and where the reel. Whether one of them is there is seen before either is
    /// written.
    fn target(&self, words: &Words) -> Result<(Target, PathBuf), Complaint> {
        let Some(file) = self.out.clone() else {
            return Err(Complaint::input(words.plainly("class-out-missing", &[])));
        };
        let is_pdf = file
            .extension()
            .is_some_and(|ending| ending.eq_ignore_ascii_case("pdf"));
        if !is_pdf {
            return Err(refused_name("class-out-ending", &file, words));
        }
        let reel = file.with_extension("gif");
        if !self.replace && files::exists(&reel).unwrap_or(false) {
            return Err(refused_name("sheet-exists", &reel, words));
        }
        let target = Target {
            file,
            is_pdf,
            dots: DOTS_USUAL,
            replace: self.replace,
        };
        Ok((target, reel))
    }

    /// Who gets a card.
    fn pupils(&self, words: &Words) -> Result<Pupils, Complaint> {
        match (&self.copies, &self.names) {
            (Some(_), Some(_)) => Err(Complaint::input(
                words.plainly("class-copies-or-names", &[]),
            )),
            (None, None) => Err(Complaint::input(words.plainly("class-who", &[]))),
            (Some(given), None) => {
                let count = given.trim().parse().ok();
                count
                    .filter(|count| (1..=Pupils::MOST).contains(count))
                    .map(Pupils::Count)
                    .ok_or_else(|| Complaint::input(words.class_copies(given, Pupils::MOST)))
            }
            (None, Some(given)) => {
                let names: Vec<String> = given
                    .split(',')
                    .map(|name| name.trim().to_owned())
                    .collect();
                if names.iter().any(String::is_empty) || names.len() > usize::from(Pupils::MOST) {
                    return Err(Complaint::input(words.class_names(given, Pupils::MOST)));
                }
                Ok(Pupils::Named(names))
            }
        }
    }
}
