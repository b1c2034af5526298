//! Paper for the bench: cards, strips and stages.
//!
//! A [`Sheet`] lays out [`SheetPage`]s, measured in millimetres, one at a time. A page becomes an
//! [`Image`](crate::picture::Image) of so many dots an inch, or [a page of a PDF](write_pdf), before the
//! next is begun. The texts come from the caller: nothing here knows a language.

mod board;
mod card;
mod card_ends;
mod card_flow;
mod card_sheet;
mod card_sizes;
mod list;
mod page;
mod pages;
mod pdf;
mod stage;
mod strip;
mod strip_part;

pub use board::{BoardSheet, Marks};
pub use card::{Card, CardEnd, CardParts, CardRow, LegLine};
pub use card_sheet::CardSheet;
pub use list::{ListPages, ListPart, ListSheet};
pub use page::{DOTS, Paper, SheetPage};
pub use pages::{PageTaker, Sheet};
pub use pdf::{PdfError, write_pdf};
pub use stage::{FramePlan, StageSheet};
pub use strip::StripSheet;
pub use strip_part::{Laid, StripRow, StripTexts};
