//! `marlinspeak sheet order`: an order on paper.

use std::path::Path;

use clap::Args;

use super::file_options::FileOptions;
use super::progress::Progress;
use super::{PriceOptions, refused};
use crate::bench::Prices;
use crate::cli::complaint::Complaint;
use crate::cli::order;
use crate::paper::order_sheet;
use crate::words::Words;

#[derive(Args)]
pub(super) struct OrderArgs {
    #[arg(value_name = "value-order", help = "help-sheet-order-what")]
    order: String,
    #[command(flatten)]
    prices: PriceOptions,
    #[command(flatten)]
    file: FileOptions,
}

impl OrderArgs {
    pub fn run(&self, set: Prices, words: &Words) -> Result<(), Complaint> {
        let paper = self.file.paper(words)?;
        let target = self.file.target(words)?;
        let prices = self.prices.prices(set, words)?;
        let is_file = self.order == "-" || self.order.contains(['.', '/']);
        let order = if is_file {
            order::said(Path::new(&self.order), words)?
        } else {
            order::kept(&self.order, words)?
        };
        let answer = order::answer(&order, prices, words)?;
        let sheet = order_sheet(&order, &answer, paper, words);
        let title = words.order_heading(&order.name, answer.count());
        let mut progress = Progress::begin(words);
        target
            .write(&sheet, title.shown(), |done, pages| {
                progress.goes_on(done, pages)
            })
            .map(drop)
            .map_err(|error| refused(&error, words))
    }
}
