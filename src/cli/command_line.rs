//! The whole command line: its options, its commands, and how they are read.

use clap::{Parser, Subcommand};

use super::complaint::Complaint;
use super::fit::FitOptions;
use super::install_artifacts::InstallArtifactsOptions;
use super::options::{KnotOptions, choice};
use super::rig::RigOptions;
use super::setup_options::SetupOptions;
use super::sheet::SheetOptions;
use super::shelf::ShelfOptions;
use super::steps::StepsOptions;
use super::tie::TieOptions;
use crate::guide::Plan;
use crate::words::{Detail, Words};

/// Tells a tyer of Turk's heads every step of the knot, aloud and in large type.
///
/// Without a command it opens the app: with --leads and --bights on that tie, begun.
#[derive(Parser)]
#[command(version, max_term_width = 100, disable_help_subcommand = true)]
pub(super) struct CommandLine {
    #[command(flatten)]
    pub knot: KnotOptions,
    #[command(flatten)]
    pub setup: SetupOptions,
    /// The language of the words, such as en [default: the system's]
    #[arg(long, global = true, value_name = "TAG")]
    pub lang: Option<String>,
    /// How much is said of a step: brief, plain or teach [default: plain]
    #[arg(long, global = true, value_name = "DEPTH")]
    detail: Option<String>,
    #[command(subcommand)]
    pub command: Option<SubCommand>,
}

#[derive(Subcommand)]
pub(super) enum SubCommand {
    /// Print every step of a tie
    Steps(StepsOptions),
    /// Find the knots that cover an object, best first
    Fit(FitOptions),
    /// Say how a tube is rigged for a knot: pins, rings, cord
    Rig(RigOptions),
    /// The ties that are kept: list, hand on, back up, check
    Shelf(ShelfOptions),
    /// Guide through a tie in the terminal; with no knot named, through the newest one
    Tie(TieOptions),
    /// Make paper for the bench: a card, a strip or a stage
    Sheet(SheetOptions),
    /// Say what works here of display, speech, sound, pedals and folders, and how to mend the rest
    Doctor,
    /// Write the man pages, the completions and the icons that are installed
    #[command(hide = true)]
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
