//! The words: one whole Fluent message for each kind of step and channel, from `i18n/<tag>/`.
//!
//! Only numbers and selectors go into a message, never words of another one. What is made of
//! several sentences, such as a leg with its crossings, is those sentences one after the
//! other, in the order of the hands.

mod batch;
mod bench;
mod by_ground;
mod channel;
mod counting;
mod course;
mod covering;
mod day;
mod detail;
mod doctor;
mod ear;
mod errors;
mod fingers;
mod ground_errors;
mod harmless;
mod inches;
mod joining;
mod knocks;
mod known;
mod labour;
mod language;
mod language_choice;
mod lengths;
mod misfits;
mod numbers;
mod order;
mod paper;
mod pins;
mod plan_form;
mod pseudo;
mod reasons;
mod rig_cautions;
mod rigging;
mod rounding;
mod saying;
mod screens;
mod selectors;
mod settings;
mod setup_form;
mod sheet;
mod shelf;
mod showing;
mod speech_length;
mod spoken;
mod spoken_messages;
mod step_args;
mod taking_back;
mod told_length;
mod unbroken;
mod units;

pub use counting::CountAsked;
pub use course::GlossaryEntry;
pub use day::FaultAsked;
pub use detail::Detail;
pub use harmless::{harmless, shortened, shown_name, shown_note};
pub use language::{UnknownLanguage, Words};
pub use language_choice::{LanguageChoice, cycled};
pub use plan_form::CordPick;
pub use settings::SettingValue;
pub use showing::{CrossingMark, Shown};
pub use spoken::{Sentence, Spoken};
pub use spoken_messages::Remark;
pub use unbroken::{bound, unbroken};
pub use units::Units;
