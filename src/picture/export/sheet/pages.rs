//! Pages one after the other.

use std::ops::ControlFlow;

use super::page::SheetPage;

/// Takes a page that is laid out, and breaks off where it wants no more.
pub type PageTaker<'t> = dyn FnMut(SheetPage) -> ControlFlow<()> + 't;

/// What goes onto pages. No page is begun before the one before it was taken, so that whoever takes them
/// one by one holds one, however many there are.
pub trait Sheet {
    /// How many pages there are.
    fn count(&self) -> usize;

    /// Lays the pages out and hands each on before the next is begun. Breaks off where the taker does.
    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()>;
}

impl<S: Sheet + ?Sized> Sheet for Box<S> {
    fn count(&self) -> usize {
        (**self).count()
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        (**self).lay_out(take)
    }
}

/// A single page.
impl Sheet for SheetPage {
    fn count(&self) -> usize {
        1
    }

    fn lay_out(&self, take: &mut PageTaker<'_>) -> ControlFlow<()> {
        take(self.clone())
    }
}
