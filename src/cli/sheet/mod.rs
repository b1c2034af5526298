//! `marlinspeak sheet`: cards, strips and stages as PNG or PDF, and reels.

mod pages;
mod progress;
mod reel;
mod target;

use std::path::PathBuf;

use clap::{Args, Subcommand};

pub use pages::{card, stage, strip};
use reel::ReelArgs;
use target::{Target, refused_name};

use super::complaint::Complaint;
use super::options::KnotOptions;
use super::setup_options::{PriceOptions, SetupOptions, ledger, presets_for};
use crate::bench::{Counts, Layout, Prices, RigError, Tube, pinning};
use crate::guide::{AtOnce, Labour, Plan, Script};
use crate::picture::View;
use crate::picture::sheet::{DOTS, Paper, SheetPage, StripSheet};
use crate::words::Words;

/// Crossings on a card at most: a few hundred pages.
const MOST_CROSSINGS: u32 = 150_000;
/// Pages of a strip at most.
const MOST_PAGES: u32 = 100;

#[derive(Args)]
pub(super) struct SheetOptions {
    #[command(subcommand)]
    what: Kind,
}

/// Which of the papers to make.
#[derive(Subcommand)]
enum Kind {
    #[command(about = "help-sheet-card")]
    Card(CardArgs),
    #[command(about = "help-sheet-strip")]
    Strip(SheetArgs),
    #[command(about = "help-sheet-stage")]
    Stage(StageArgs),
    #[command(about = "help-sheet-reel")]
    Reel(ReelArgs),
}

#[derive(Args)]
struct CardArgs {
    #[command(flatten)]
    sheet: SheetArgs,
    #[command(flatten)]
    prices: PriceOptions,
}

#[derive(Args)]
struct StageArgs {
    #[command(flatten)]
    sheet: SheetArgs,
    #[arg(long, value_name = "N", allow_hyphen_values = true, help = "help-step")]
    step: Option<String>,
    #[arg(long, help = "help-rolled-out")]
    rolled_out: bool,
    /// A stage shows this anyway. The option is still taken because older command lines have it.
    #[arg(
        long,
        hide = true,
        conflicts_with = "rolled_out",
        help = "help-rolled-out"
    )]
    round: bool,
}

#[derive(Args)]
struct SheetArgs {
    #[command(flatten)]
    knot: KnotOptions,
    #[arg(long, value_name = "value-file", help = "help-out")]
    out: Option<PathBuf>,
    #[arg(long, help = "help-replace")]
    replace: bool,
    #[arg(long, help = "help-pdf")]
    pdf: bool,
    #[arg(long, value_name = "N", allow_hyphen_values = true, help = "help-dpi")]
    dpi: Option<String>,
    #[arg(long, value_name = "value-paper", help = "help-paper")]
    paper: Option<String>,
    #[command(flatten)]
    setup: SetupOptions,
}

/// Makes the sheet that is asked for and says nothing when all went well.
pub(super) fn run(asked: &SheetOptions, set: Prices, words: &Words) -> Result<(), Complaint> {
    let args = match &asked.what {
        Kind::Card(card) => &card.sheet,
        Kind::Strip(args) => args,
        Kind::Stage(stage) => &stage.sheet,
        Kind::Reel(reel) => return reel.run(words),
    };
    let plan = args.knot.plan(words)?;
    let paper = args.paper(words)?;
    let target = args.target(words)?;
    let title = words.tie_line(&plan);
    let pages = match &asked.what {
        Kind::Card(card) => card.pages(&plan, set, paper, words)?,
        Kind::Strip(args) => args.strip(&plan, paper, words)?,
        Kind::Stage(stage) => vec![stage.page(&plan, paper, words)?],
        Kind::Reel(_) => Vec::new(),
    };
    target.write(&pages, &title, words)
}

impl StageArgs {
    fn page(&self, plan: &Plan, paper: Paper, words: &Words) -> Result<SheetPage, Complaint> {
        let plan = if self.sheet.setup.is_empty() {
            plan.clone()
        } else {
            self.sheet.setup.equip(plan.clone(), words)?
        };
        let script = Script::new(plan, AtOnce::default());
        let place = match self.step.as_deref() {
            None => Some(script.last()),
            Some(given) => {
                let number: Option<usize> = given.trim().parse().ok();
                number
                    .and_then(|number| number.checked_sub(1))
                    .and_then(|before| script.nth(before))
            }
        };
        let Some(step) = place.and_then(|place| script.step(place)) else {
            let given = self.step.as_deref().unwrap_or_default();
            let sentence = words.sheet_step(given, script.count());
            return Err(Complaint::input(sentence));
        };
        let view = if self.rolled_out {
            View::RolledOut
        } else {
            View::RoundTheTube
        };
        Ok(stage(&script, &step, view, paper, words))
    }
}

impl CardArgs {
    fn pages(
        &self,
        plan: &Plan,
        set: Prices,
        paper: Paper,
        words: &Words,
    ) -> Result<Vec<SheetPage>, Complaint> {
        let passes = u64::from(plan.laying().passes());
        let crossings = u64::from(plan.knot().crossings());
        if crossings * passes * passes > u64::from(MOST_CROSSINGS) {
            let sentence = words.sheet_long("sheet-card-long", MOST_CROSSINGS);
            return Err(Complaint::input(sentence));
        }
        let setup = &self.sheet.setup;
        let equipped = if setup.names_tube_and_cord() {
            &setup.equip(plan.clone(), words)?
        } else {
            plan
        };
        let prices = self.prices.prices(set, words)?;
        let labour = Labour::of(equipped, ledger(words)?.pace(), prices);
        let pinned = self.sheet.pinned(plan, words)?;
        let pinned = pinned.as_ref().map(|(tube, layout)| (tube, layout));
        Ok(card(equipped, pinned, &labour, paper, words))
    }
}

impl SheetArgs {
    fn strip(&self, plan: &Plan, paper: Paper, words: &Words) -> Result<Vec<SheetPage>, Complaint> {
        let Some((tube, layout)) = self.pinned(plan, words)? else {
            let sentence = words.plainly("sheet-tube-missing", &[]);
            return Err(Complaint::input(sentence));
        };
        if StripSheet::new(&tube, &layout, plan.hand).count(paper) > MOST_PAGES as usize {
            let sentence = words.sheet_long("sheet-strip-long", MOST_PAGES);
            return Err(Complaint::input(sentence));
        }
        let plan = if self.setup.names_tube_and_cord() {
            &self.setup.equip(plan.clone(), words)?
        } else {
            plan
        };
        Ok(strip(plan, &tube, &layout, paper, words))
    }

    fn paper(&self, words: &Words) -> Result<Paper, Complaint> {
        match self.paper.as_deref() {
            None | Some("a4") => Ok(Paper::A4),
            Some("letter") => Ok(Paper::Letter),
            Some(given) => Err(Complaint::input(words.choice_unknown(
                "--paper",
                given,
                &["a4", "letter"],
            ))),
        }
    }

    /// The tube and where its pins go, when a tube is named.
    fn pinned(&self, plan: &Plan, words: &Words) -> Result<Option<(Tube, Layout)>, Complaint> {
        let form = self.setup.form(words)?;
        let presets = presets_for(&form, words)?;
        let tube = form
            .tube(&presets)
            .map_err(|error| Complaint::input(words.setup_error(&error)))?;
        let Some(tube) = tube else {
            return Ok(None);
        };
        let knot = plan.knot();
        let Some(layout) = pinning(&tube, knot.lattice()) else {
            let error = RigError::no_row(Counts::from(plan.laying()), &tube);
            return Err(Complaint::input(words.rig_error(&error)));
        };
        Ok(Some((tube, layout)))
    }

    fn target(&self, words: &Words) -> Result<Target, Complaint> {
        let Some(file) = self.out.clone() else {
            return Err(Complaint::input(words.plainly("sheet-out-missing", &[])));
        };
        let ending = file
            .extension()
            .map(|ending| ending.to_string_lossy().to_lowercase());
        let is_pdf = match ending.as_deref() {
            _ if self.pdf => true,
            Some("pdf") => true,
            Some("png") => false,
            _ => {
                return Err(refused_name("sheet-out-ending", &file, words));
            }
        };
        let dots = match self.dpi.as_deref() {
            None => 300,
            Some(given) => match given.trim().parse() {
                Ok(dots) if DOTS.contains(&dots) => dots,
                _ => {
                    let sentence = words.sheet_dpi(given, *DOTS.start(), *DOTS.end());
                    return Err(Complaint::input(sentence));
                }
            },
        };
        Ok(Target {
            file,
            is_pdf,
            dots,
            replace: self.replace,
        })
    }
}
