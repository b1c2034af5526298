//! `marlinspeak sheet`: cards, strips, stages and orders as PNG or PDF, reels, and both for a class.

mod class;
mod file_options;
mod order;
mod progress;
mod reel;

use std::path::Path;

use clap::{Args, Subcommand};

use class::ClassArgs;
use file_options::FileOptions;
use order::OrderArgs;
use progress::Progress;
use reel::ReelArgs;

use super::complaint::Complaint;
use super::options::KnotOptions;
use super::setup_options::{PriceOptions, SetupOptions, ledger, presets_for};
use crate::bench::{Counts, Layout, Prices, RigError, Tube, pinning};
use crate::guide::{AtOnce, Labour, Plan, Script};
use crate::paper::{self, PaperError, TooLong};
use crate::picture::View;
use crate::picture::sheet::{Paper, Sheet, SheetPage};
use crate::words::Words;

/// Dots an inch of a page when nothing is said.
const DOTS_USUAL: u16 = 300;

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
    #[command(about = "help-sheet-class")]
    Class(ClassArgs),
    #[command(about = "help-sheet-order")]
    Order(OrderArgs),
}

#[derive(Args)]
struct CardArgs {
    #[command(flatten)]
    args: SheetArgs,
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
    #[command(flatten)]
    file: FileOptions,
    #[command(flatten)]
    setup: SetupOptions,
}

/// Makes the sheet that is asked for and says nothing when all went well.
pub(super) fn run(asked: &SheetOptions, set: Prices, words: &Words) -> Result<(), Complaint> {
    let args = match &asked.what {
        Kind::Card(card) => &card.args,
        Kind::Strip(args) => args,
        Kind::Stage(stage) => &stage.sheet,
        Kind::Reel(reel) => return reel.run(words),
        Kind::Class(class) => return class.run(set, words),
        Kind::Order(order) => return order.run(set, words),
    };
    let plan = args.knot.plan(words)?;
    let paper = args.file.paper(words)?;
    let target = args.file.target(words)?;
    let title = words.tie_line(&plan);
    let sheet: Box<dyn Sheet> = match &asked.what {
        Kind::Card(card) => card.sheet(&plan, set, paper, words)?,
        Kind::Strip(args) => args.strip(&plan, paper, words)?,
        Kind::Stage(stage) => Box::new(stage.page(&plan, paper, words)?),
        Kind::Reel(_) | Kind::Class(_) | Kind::Order(_) => return Ok(()),
    };
    let mut progress = Progress::begin(words);
    target
        .write(&*sheet, &title, |done, pages| progress.goes_on(done, pages))
        .map(drop)
        .map_err(|error| refused(&error, words))
}

/// The sentence for what could not be made.
fn refused(error: &PaperError, words: &Words) -> Complaint {
    log::warn!("no sheet: {error}");
    match error {
        PaperError::Long { what, most } => {
            let id = match what {
                TooLong::Card => "sheet-card-long",
                TooLong::Class => "class-long",
                TooLong::Strip => "sheet-strip-long",
                TooLong::Reel => "sheet-reel-long",
            };
            Complaint::input(words.sheet_long(id, *most))
        }
        PaperError::NoTube => Complaint::input(words.plainly("sheet-tube-missing", &[])),
        PaperError::Exists(file) => refused_name("sheet-exists", file, words),
        PaperError::Unwritable { file, fault } => {
            let file = file.to_string_lossy();
            Complaint::failure(PaperError::unwritable(&file, fault, words))
        }
        PaperError::Stopped {
            done,
            count,
            is_one_file,
        } => Complaint::failure(words.sheet_stopped(*done, *count, *is_one_file)),
        PaperError::Refused(_) => Complaint::failure(words.plainly("sheet-failed", &[])),
    }
}

/// The sentence about the name of a file that can't be used.
fn refused_name(id: &str, file: &Path, words: &Words) -> Complaint {
    Complaint::input(words.plainly(id, &[("file", &file.to_string_lossy())]))
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
        Ok(paper::stage(&script, &step, view, paper, words))
    }
}

impl CardArgs {
    fn sheet(
        &self,
        plan: &Plan,
        set: Prices,
        paper: Paper,
        words: &Words,
    ) -> Result<Box<dyn Sheet>, Complaint> {
        paper::check_card(plan).map_err(|error| refused(&error, words))?;
        let setup = &self.args.setup;
        let equipped = if setup.names_tube_and_cord() {
            &setup.equip(plan.clone(), words)?
        } else {
            plan
        };
        let prices = self.prices.prices(set, words)?;
        let labour = Labour::of(equipped, ledger(words)?.pace(), prices);
        let pinned = pinned(setup, plan, words)?;
        let pinned = pinned.as_ref().map(|(tube, layout)| (tube, layout));
        let card = paper::card(equipped, pinned, &labour, paper, words);
        Ok(Box::new(card))
    }
}

impl SheetArgs {
    fn strip(&self, plan: &Plan, paper: Paper, words: &Words) -> Result<Box<dyn Sheet>, Complaint> {
        if plan.is_round_hand() && self.setup.is_empty() {
            let sentence = words.plainly("round-hand-no-strip", &[]);
            return Err(Complaint::input(sentence));
        }
        let Some((tube, layout)) = pinned(&self.setup, plan, words)? else {
            let sentence = words.plainly("sheet-tube-missing", &[]);
            return Err(Complaint::input(sentence));
        };
        let plan = if self.setup.names_tube_and_cord() {
            &self.setup.equip(plan.clone(), words)?
        } else {
            plan
        };
        paper::check_strip(plan, &tube, &layout, paper).map_err(|error| refused(&error, words))?;
        Ok(paper::strip(plan, &tube, &layout, paper, words))
    }
}

/// The tube and where its pins go, when a tube is named; or what the knot is tied on in place, and where
/// its marks go, or the pins of a board.
fn pinned(
    setup: &SetupOptions,
    plan: &Plan,
    words: &Words,
) -> Result<Option<(Tube, Layout)>, Complaint> {
    let form = setup.form(words)?;
    let sentence = |error| Complaint::input(words.setup_error(&error));
    if form.is_in_place().map_err(sentence)? {
        let equipped = setup.equip(plan.clone(), words)?;
        let rig = equipped.rig().unwrap_or_default();
        let laid = equipped.setup().zip(rig);
        return Ok(laid.map(|(setup, rig)| (setup.tube.clone(), rig.layout.clone())));
    }
    let presets = presets_for(&form, words)?;
    let Some(tube) = form.tube(&presets).map_err(sentence)? else {
        return Ok(None);
    };
    let knot = plan.knot();
    let Some(layout) = pinning(&tube, knot.lattice()) else {
        let error = RigError::no_row(Counts::from(plan.laying()), &tube);
        return Err(Complaint::input(words.rig_error(&error)));
    };
    Ok(Some((tube, layout)))
}

/// The paper that is asked for.
fn paper_of(given: Option<&str>, words: &Words) -> Result<Paper, Complaint> {
    match given {
        None | Some("a4") => Ok(Paper::A4),
        Some("letter") => Ok(Paper::Letter),
        Some(given) => Err(Complaint::input(words.choice_unknown(
            "--paper",
            given,
            &["a4", "letter"],
        ))),
    }
}
