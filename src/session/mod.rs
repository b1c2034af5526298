//! The tie in hand, from taking up to logging, whichever face it wears.
//!
//! Presses, reports of the services and the time go in; effects come out: what is to be said,
//! shown, saved, sounded. Nothing here knows a window or a terminal, and nothing here looks at a
//! clock. A face is a thin driver: it hands on what was pressed, carries out each [`Effect`], and
//! shows the [`Page`].
//!
//! ```
//! use std::time::Duration;
//!
//! use marlinspeak::guide::Plan;
//! use marlinspeak::pedal::{Intent, Press};
//! use marlinspeak::session::{Effect, InHand, Session, Wishes};
//! use marlinspeak::settings::Settings;
//! use marlinspeak::words::Words;
//!
//! let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
//! let plan = Plan::read("5", "7", "1", "1").unwrap();
//! session.take_in_hand(InHand::begun(None, &plan), Duration::ZERO);
//! session.effects();
//!
//! // One press leads from the hanging tail to the first leg.
//! session.press(Some(Intent::Next), &Press::default(), Duration::from_secs(5));
//! assert!(session.effects().iter().any(
//!     |effect| matches!(effect, Effect::Say(said) if said.as_str().contains("From bottom pin 1"))
//! ));
//! assert_eq!(session.page().unwrap().shown.phase, "Lead pass, leg 1 of 14");
//! ```

mod aside_keys;
mod asides;
mod auto_advance;
mod backing_up;
mod batch;
mod controller;
mod count_reading;
mod effect;
mod hearing;
mod inventory;
mod job_page;
mod knock_row;
mod knock_trial;
mod knocking;
mod knot_count;
mod listing;
mod log_form;
mod logbook;
mod next_piece;
mod notices;
mod opening;
mod order_book;
mod order_change;
mod order_jobs;
mod order_page;
mod order_presses;
mod order_reports;
mod order_shown;
mod order_typing;
mod page;
mod preferring;
mod pressing;
mod saving;
mod setting;
mod settings_list;
mod settings_steps;
mod taking_up;
mod tie_in_hand;
mod time_left;
mod walk;
mod work_timer;

pub use backing_up::{back_up, bring_back};
pub use batch::{NextOfOrder, next_knot, next_of_order, tied, unfinished_piece};
pub use controller::{Session, Wishes};
pub use effect::{Effect, Event, Timer, ToSession};
pub use inventory::{Inventory, inventory, known_ties};
pub use job_page::JobPage;
pub use knock_trial::KnockTrial;
pub use knot_count::{CountAction, CountKeys, KnotCount};
pub use listing::ListingNumber;
pub use log_form::{LogAction, LogField, LogForm};
pub use logbook::{NotLogged, as_path, entry_for, keep_entry};
pub use opening::{InHand, first_tie, lesson_tie, lessons, new_tie};
pub use order_book::{OrderAction, OrderBook};
pub use order_change::{OrderChange, OrderOutcome};
pub use order_jobs::{OpenOrder, OrderJob, OrderReport, OrderStock, answer_order, do_order_job};
pub use order_page::OrderLine;
pub use page::{Keys, Page, PagePart};
pub use setting::Setting;
pub use settings_list::{SettingsAction, SettingsList};
pub use tie_in_hand::TieInHand;
pub use walk::{Walk, WalkAction};
pub use work_timer::REST;
