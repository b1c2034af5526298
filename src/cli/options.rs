//! The options, and how a knot is named by them.

use clap::{Args, Parser, Subcommand};

use super::Complaint;
use super::fit::FitOptions;
use super::rig::RigOptions;
use super::setup_options::SetupOptions;
use super::tie::TieOptions;
use crate::guide::{AtOnce, Checks, Plan};
use crate::knot::{Hand, LayingOrder, Quantity, Side};
use crate::words::{Detail, Words};

/// Tells a tyer of Turk's heads every step of the knot, aloud and in large type.
///
/// Without a command it opens the app: with --leads and --bights on that tie, begun.
#[derive(Parser)]
#[command(version, max_term_width = 100, disable_help_subcommand = true)]
pub(super) struct Options {
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
    pub command: Option<Command>,
}

#[derive(Subcommand)]
pub(super) enum Command {
    /// Print every step of a tie
    Steps(StepsOptions),
    /// Find the knots that cover an object, best first
    Fit(FitOptions),
    /// Say how a tube is rigged for a knot: pins, rings, cord
    Rig(RigOptions),
    /// The ties that are kept: list, hand on, back up, check
    Shelf(super::shelf::ShelfOptions),
    /// Guide through a tie in the terminal; with no knot named, through the newest one
    Tie(TieOptions),
    /// Make paper for the bench: a card, a strip or a stage
    Sheet(super::sheet::SheetOptions),
    /// Say what works here of display, speech, sound, pedals and folders, and how to mend the rest
    Doctor,
    /// Write the man pages, the completions and the icons that are installed
    #[command(hide = true)]
    InstallArtifacts(super::install_artifacts::InstallArtifactsOptions),
}

#[derive(Args)]
pub(super) struct StepsOptions {
    #[command(flatten)]
    pub knot: KnotOptions,
    #[command(flatten)]
    pub setup: SetupOptions,
    /// Print one JSON document instead of text
    #[arg(long)]
    pub json: bool,
    /// At most so many crossings in a step, 1 to 999, or “leg” for whole legs [default: 4]
    #[arg(long, value_name = "N|leg", allow_hyphen_values = true)]
    at_once: Option<String>,
    /// How often there is a look at the work: after every round or every pass [default: round]
    #[arg(long, value_name = "round|pass")]
    checks: Option<String>,
}

/// Every value is taken as text and read by the same code that reads the app's form, so that
/// both say the same sentence about a bad one.
#[derive(Args)]
pub(super) struct KnotOptions {
    /// Leads, 2 to 999: cords met on a straight line from rim to rim
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    leads: Option<String>,
    /// Bights, 2 to 999: scallops along each rim, and pins on each ring
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    bights: Option<String>,
    /// Passes, 1 to 9: 1 is single, 2 doubled, 3 tripled [default: 1]
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    passes: Option<String>,
    /// Over n, under n; or a row code of o and u from the bottom row up, such as ouuo [default: 1]
    #[arg(long, value_name = "N|CODE", allow_hyphen_values = true)]
    weave: Option<String>,
    /// The side of the first cord that later passes keep to, right or left [default: right]
    #[arg(long, value_name = "SIDE")]
    side: Option<String>,
    /// The way round the tube that the tyer works, right or left [default: right]
    #[arg(long, value_name = "HAND")]
    hand: Option<String>,
    /// Several strands: passes lays the lead pass of them all first, strands finishes one strand
    /// after the other [default: passes]
    #[arg(long, value_name = "passes|strands")]
    order: Option<String>,
    /// What you call the cords: one name for each strand, or for each pass of a knot of one
    /// strand, such as “blue,white”
    #[arg(long, value_name = "NAMES")]
    cords: Option<String>,
}

impl Options {
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
}

impl KnotOptions {
    pub fn is_empty(&self) -> bool {
        let Self {
            leads,
            bights,
            passes,
            weave,
            side,
            hand,
            order,
            cords,
        } = self;
        [leads, bights, passes, weave, side, hand, order, cords]
            .iter()
            .all(|option| option.is_none())
    }

    /// The plan that the options name.
    pub fn plan(&self, words: &Words) -> Result<Plan, Complaint> {
        let needed = |option: &Option<String>, quantity| {
            option
                .clone()
                .ok_or_else(|| Complaint::input(words.missing(quantity)))
        };
        let leads = needed(&self.leads, Quantity::Leads)?;
        let bights = needed(&self.bights, Quantity::Bights)?;
        let passes = self.passes.as_deref().unwrap_or("1");
        let weave = self.weave.as_deref().unwrap_or("1");
        let plan = Plan::read(&leads, &bights, passes, weave)
            .map_err(|error| Complaint::input(words.knot_error(&error)))?;
        let sides = [("right", Side::Right), ("left", Side::Left)];
        let side = choice("--side", self.side.as_deref(), words, sides)?;
        let hands = [("right", Hand::Right), ("left", Hand::Left)];
        let hand = choice("--hand", self.hand.as_deref(), words, hands)?;
        let orders = [
            ("passes", LayingOrder::PassByPass),
            ("strands", LayingOrder::StrandByStrand),
        ];
        let order = choice("--order", self.order.as_deref(), words, orders)?;
        let plan = plan.with_side(side).with_hand(hand).with_order(order);
        plan.with_cords(self.cord_names(words)?)
            .map_err(|error| Complaint::input(words.cords_error(&error)))
    }

    fn cord_names(&self, words: &Words) -> Result<Vec<String>, Complaint> {
        let Some(given) = self.cords.as_deref() else {
            return Ok(Vec::new());
        };
        let names: Vec<String> = given
            .split(',')
            .map(|name| name.trim().to_owned())
            .collect();
        if names.iter().any(String::is_empty) {
            let sentence = words.plainly("cords-unreadable", &[("given", given)]);
            return Err(Complaint::input(sentence));
        }
        Ok(names)
    }
}

impl Options {
    /// How much is said of a step, where that was asked for.
    pub fn detail(&self, words: &Words) -> Result<Option<Detail>, Complaint> {
        let Some(given) = self.detail.as_deref() else {
            return Ok(None);
        };
        let depths = [Detail::Plain, Detail::Brief, Detail::Teach];
        let depths = depths.map(|depth| (depth.name(), depth));
        choice("--detail", Some(given), words, depths).map(Some)
    }
}

impl StepsOptions {
    /// How often there is a look at the work.
    pub fn checks(&self, words: &Words) -> Result<Checks, Complaint> {
        checks(self.checks.as_deref(), words)
    }

    /// How much is told at once.
    pub fn at_once(&self, words: &Words) -> Result<AtOnce, Complaint> {
        at_once(self.at_once.as_deref(), words)
    }
}

/// How often there is a look at the work.
pub(super) fn checks(given: Option<&str>, words: &Words) -> Result<Checks, Complaint> {
    let choices = [("round", Checks::EachRound), ("pass", Checks::EachPass)];
    choice("--checks", given, words, choices)
}

/// How much is told at once.
pub(super) fn at_once(given: Option<&str>, words: &Words) -> Result<AtOnce, Complaint> {
    let Some(given) = given else {
        return Ok(AtOnce::default());
    };
    match given.trim() {
        "leg" => Ok(AtOnce::WholeLeg),
        number => match number.parse() {
            Ok(most @ 1..=999) => Ok(AtOnce::UpTo(most)),
            _ => Err(Complaint::input(
                words.plainly("at-once-unreadable", &[("given", given)]),
            )),
        },
    }
}

/// Reads a choice among a few; the first when nothing is given.
fn choice<T: Copy, const N: usize>(
    option: &str,
    given: Option<&str>,
    words: &Words,
    choices: [(&str, T); N],
) -> Result<T, Complaint> {
    let Some(given) = given else {
        return Ok(choices[0].1);
    };
    let found = choices.iter().find(|(name, _)| *name == given);
    found.map(|(_, choice)| *choice).ok_or_else(|| {
        Complaint::input(words.choice_unknown(option, given, &choices.map(|(name, _)| name)))
    })
}
