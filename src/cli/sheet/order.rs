//! `marlinspeak sheet order`: an order on paper.

use std::path::{Path, PathBuf};

use clap::Args;

use super::progress::Progress;
use super::{PriceOptions, refused, target_of};
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
}

impl OrderArgs {
    pub fn run(&self, set: Prices, words: &Words) -> Result<(), Complaint> {
        let paper = super::paper_of(self.paper.as_deref(), words)?;
        let dpi = self.dpi.as_deref();
        let target = target_of(self.out.as_ref(), self.pdf, dpi, self.replace, words)?;
        let prices = self.prices.prices(set, words)?;
        let is_file = self.order == "-" || self.order.contains(['.', '/']);
        let order = if is_file {
            order::said(Path::new(&self.order), words)?
        } else {
            order::kept(&self.order, words)?
        };
        let answer = order::answer(&order, prices, words)?;
        let pages = order_sheet(&order, &answer, paper, words);
        let title = words.order_heading(&order.name, answer.count());
        let mut progress = Progress::begin(words);
        target
            .write(&pages, title.shown(), |done, pages| {
                progress.goes_on(done, pages)
            })
            .map(drop)
            .map_err(|error| refused(&error, words))
    }
}
