//! All pages of a sheet at once, for tests that compare them.

use std::ops::ControlFlow;

use marlinspeak::picture::sheet::{Sheet, SheetPage};

/// Every page, in order.
pub fn pages(sheet: &dyn Sheet) -> Vec<SheetPage> {
    let mut pages = Vec::new();
    let laid_out = sheet.lay_out(&mut |page| {
        pages.push(page);
        ControlFlow::Continue(())
    });
    assert!(laid_out.is_continue());
    assert_eq!(pages.len(), sheet.count(), "as many as it says");
    pages
}
