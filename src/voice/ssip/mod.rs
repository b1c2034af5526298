//! A client of SSIP, the protocol of Speech Dispatcher, as far as this program speaks it. *Source:
//! the manual “SSIP Documentation” of Speech Dispatcher 0.11.*
//!
//! Nothing that a service sends can do more than end its connection: every answer is read within
//! limits, and what is no answer is a reason to connect anew.

mod address;
mod answer;
mod link;

pub use answer::{Answer, Unreadable, read as read_answer};
pub(super) use link::Link;
