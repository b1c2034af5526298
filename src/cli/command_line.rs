//! The whole command line: its options, its commands, and how they are read.

use clap::{Parser, Subcommand};
use strum::IntoStaticStr;

use super::complaint::Complaint;
use super::count::CountOptions;
use super::fit::FitOptions;
use super::install_artifacts::InstallArtifactsOptions;
use super::options::{KnotOptions, choice};
use super::order::OrderOptions;
use super::rig::RigOptions;
use super::setup_options::SetupOptions;
use super::sheet::SheetOptions;
use super::shelf::ShelfOptions;
use super::steps::StepsOptions;
use super::tie::TieOptions;
use crate::guide::Plan;
use crate::words::{Detail, Words};

/// What can be written behind the name of the program. Where help is given stands the id of its
/// message: `help.rs` puts that into words.
#[derive(Parser)]
#[command(
    version,
    about = "help-marlinspeak",
    long_about = "help-marlinspeak-more",
    max_term_width = 100,
    disable_help_subcommand = true
)]
pub(super) struct CommandLine {
    #[command(flatten)]
    pub knot: KnotOptions,
    #[command(flatten)]
    pub setup: SetupOptions,
    #[arg(long, global = true, value_name = "value-tag", help = "help-lang")]
    pub lang: Option<String>,
    #[arg(long, global = true, value_name = "value-depth", help = "help-detail")]
    detail: Option<String>,
    #[command(subcommand)]
    pub command: Option<SubCommand>,
}

// In the log file a command has the name that is typed. (This is no documentation comment, since
// the parser would take one for the help of the whole program.)
#[derive(IntoStaticStr, Subcommand)]
#[strum(serialize_all = "kebab-case")]
pub(super) enum SubCommand {
    #[command(about = "help-steps")]
    Steps(StepsOptions),
    #[command(about = "help-fit")]
    Fit(FitOptions),
    #[command(about = "help-rig")]
    Rig(RigOptions),
    #[command(about = "help-shelf")]
    Shelf(ShelfOptions),
    #[command(about = "help-tie")]
    Tie(TieOptions),
    #[command(about = "help-sheet")]
    Sheet(SheetOptions),
    #[command(about = "help-count")]
    Count(CountOptions),
    #[command(about = "help-orders")]
    Order(OrderOptions),
    #[command(about = "help-doctor")]
    Doctor,
    #[command(about = "help-install-artifacts", hide = true)]
    InstallArtifacts(InstallArtifactsOptions),
}

impl CommandLine {
    /// Whether neither a knot nor a tube, cord or object is named.
    pub fn is_plain(&self) -> bool {
        self.knot.is_empty() && self.setup.is_empty()
    }

    /// The plan, or `None` when nothing of one is named at all.
    pub fn plan_if_any(&self, words: &Words) -> Result<Option<Plan>, Complaint> {
        if self.is_plain() {
            return Ok(None);
        }
        let plan = self.knot.plan(words)?;
        self.setup.equip(plan, words).map(Some)
    }

    /// How much is said of a step, where that is said.
    pub fn detail(&self, words: &Words) -> Result<Option<Detail>, Complaint> {
        let depths = [Detail::Plain, Detail::Brief, Detail::Teach].map(Detail::name);
        choice("--detail", self.detail.as_deref(), &depths, words)
    }
}
