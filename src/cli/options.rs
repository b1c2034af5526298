//! The options that several commands share: how a knot is named, and how it is told.

use std::str::FromStr;

use clap::Args;
use strum::VariantNames as _;

use super::complaint::Complaint;
use crate::guide::{AtOnce, Checks, Plan};
use crate::knot::{Hand, LayingOrder, Quantity, Side};
use crate::words::Words;

/// Every value is taken as text and read by the same code that reads the app's form, so that
/// both say the same sentence about a bad one.
#[derive(Args)]
pub(super) struct KnotOptions {
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-leads"
    )]
    leads: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-bights"
    )]
    bights: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-nested"
    )]
    nested: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-lands"
    )]
    lands: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-passes"
    )]
    passes: Option<String>,
    #[arg(
        long,
        value_name = "value-number-or-code",
        allow_hyphen_values = true,
        help = "help-weave"
    )]
    weave: Option<String>,
    #[arg(long, value_name = "value-side", help = "help-side")]
    side: Option<String>,
    #[arg(long, value_name = "value-hand", help = "help-hand")]
    hand: Option<String>,
    #[arg(long, value_name = "passes|strands", help = "help-order")]
    order: Option<String>,
    #[arg(long, value_name = "value-names", help = "help-cords")]
    cords: Option<String>,
    #[arg(long = "round-hand", help = "help-round-hand")]
    round_hand: bool,
}

impl KnotOptions {
    pub fn is_empty(&self) -> bool {
        let Self {
            leads,
            bights,
            nested,
            lands,
            passes,
            weave,
            side,
            hand,
            order,
            cords,
            round_hand,
        } = self;
        let texts = [
            leads, bights, nested, lands, passes, weave, side, hand, order, cords,
        ];
        !round_hand && texts.iter().all(|option| option.is_none())
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
        let weave = self.weave.as_deref().unwrap_or_default();
        let [nested, lands] = [&self.nested, &self.lands].map(|option| option.as_deref());
        let counts = [
            &leads,
            &bights,
            nested.unwrap_or_default(),
            lands.unwrap_or_default(),
        ];
        let plan = Plan::read_nested(counts, passes, weave)
            .map_err(|error| Complaint::input(words.knot_error(&error)))?;
        let side = choice("--side", self.side.as_deref(), Side::VARIANTS, words)?;
        let hand = choice("--hand", self.hand.as_deref(), Hand::VARIANTS, words)?;
        let order = choice(
            "--order",
            self.order.as_deref(),
            LayingOrder::VARIANTS,
            words,
        )?;
        let usual = LayingOrder::usual(plan.knot());
        let plan = plan
            .with_side(side.unwrap_or_default())
            .with_hand(hand.unwrap_or_default())
            .with_order(order.unwrap_or(usual));
        // How many tucks there are depends on the order of the strands too, so the twin is chosen
        // after it.
        let plan = if weave.trim().is_empty() {
            plan.with_fewest_tucks()
        } else {
            plan
        };
        let plan = plan
            .with_cords(self.cord_names(words)?)
            .map_err(|error| Complaint::input(words.cords_error(&error)))?;
        if self.round_hand {
            plan.with_round_hand()
                .map_err(|error| Complaint::input(words.knot_error(&error)))
        } else {
            Ok(plan)
        }
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

/// How often there is a look at the work, where that is said.
pub(super) fn checks(given: Option<&str>, words: &Words) -> Result<Option<Checks>, Complaint> {
    choice("--checks", given, Checks::VARIANTS, words)
}

/// How much is told at once, where that is said.
pub(super) fn at_once(given: Option<&str>, words: &Words) -> Result<Option<AtOnce>, Complaint> {
    let Some(given) = given else {
        return Ok(None);
    };
    match (given.trim(), given.trim().parse()) {
        ("leg", _) => Ok(Some(AtOnce::WholeLeg)),
        (_, Ok(most @ 1..=999)) => Ok(Some(AtOnce::UpTo(most))),
        _ => Err(Complaint::input(
            words.plainly("at-once-unreadable", &[("given", given)]),
        )),
    }
}

/// Reads a choice among a few names, where one is given.
pub(super) fn choice<T: FromStr>(
    option: &str,
    given: Option<&str>,
    names: &[&str],
    words: &Words,
) -> Result<Option<T>, Complaint> {
    let read = |given: &str| {
        let choice = given.parse();
        choice.map_err(|_| Complaint::input(words.choice_unknown(option, given, names)))
    };
    given.map(read).transpose()
}
