//! Which orders are shown and which of them is open, whatever comes late: the newest listing holds, and
//! the page that was asked for last.

use super::job_page::JobPage;
use super::order_book::OrderBook;
use super::order_jobs::OrderStock;
use crate::shelf::ShelfError;

impl OrderBook {
    /// Shows what a job found, and says whether its page is the one that is up, and why the orders
    /// could not be read: then what is shown stays.
    pub(super) fn show(
        &mut self,
        page: &JobPage,
        stock: Result<OrderStock, ShelfError>,
    ) -> (bool, Result<(), ShelfError>) {
        let open = self.open_id();
        let (is_up, leads) = match page {
            JobPage::Stays(page) => (*page == open, false),
            page => {
                let is_wanted = self.wanted.as_ref().is_none_or(|wanted| wanted == page);
                (is_wanted, true)
            }
        };
        let stock = match stock {
            Ok(stock) => stock,
            Err(error) => return (is_up, Err(error)),
        };
        let is_newer = stock.listing >= self.stock.listing;
        let found = stock.open.as_ref().map(|open| &open.kept.id);
        let is_other = leads && found != open.as_ref();
        if is_up && (is_newer || is_other) {
            self.stock.open = stock.open;
        }
        if is_newer {
            self.stock.orders = stock.orders;
            self.stock.listing = stock.listing;
        }
        (is_up, Ok(()))
    }
}
