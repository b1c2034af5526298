//! Paper for the bench: cards, strips and stages.
//!
//! A sheet is a row of [`SheetPage`]s measured in millimetres. A page becomes an
//! [`Image`](crate::picture::Image) of so many dots an inch or, with its fellows, a [`pdf()`]. The texts
//! come from the caller: nothing here knows a language.

mod board;
mod card;
mod card_flow;
mod card_sizes;
mod list;
mod page;
mod pdf;
mod stage;
mod strip;
mod strip_part;

pub use board::{BoardSheet, Marks};
pub use card::{Card, CardEnd, CardSection, LegLine};
pub use list::{ListPart, ListSheet};
pub use page::{DOTS, Paper, SheetPage};
pub use pdf::{pdf, pdf_while};
pub use stage::{FramePlan, StageSheet};
pub use strip::StripSheet;
pub use strip_part::{StripRow, StripTexts};
