//! What is made of a tie to be taken along: cards, strips and stages on paper, and reels, each with
//! its words, into files that are written whole or not at all.
//!
//! Whoever asks says what is to be made and where it goes, is told page by page or frame by frame how
//! far it is, and can stop it there.

mod bounds;
mod card;
mod class;
mod error;
mod order;
mod order_sheet;
mod pages;
mod reel;
mod target;

pub use bounds::{check_card, check_class, check_strip};
pub use card::{PlanParts, card};
pub use class::{ClassSheet, Pupils, class};
pub use error::{PaperError, TooLong};
pub use order::{FileForm, Overwrite, PaperKind, PaperOrder, file_name};
pub use order_sheet::order_sheet;
pub use pages::{pinned, stage, strip};
pub use reel::{REEL_WIDTH, REEL_WIDTHS, TieReel};
pub use target::Target;
