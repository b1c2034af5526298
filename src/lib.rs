//! A second pair of hands for people who tie ring knots (Turk's heads) on a pinned tube.

#[cfg(feature = "window")]
pub mod app;
pub mod bench;
pub mod cli;
pub mod files;
pub mod guide;
pub mod knot;
pub mod logging;
pub mod paper;
pub mod pedal;
pub mod picture;
pub mod session;
pub mod settings;
pub mod shelf;
mod sound_system;
pub mod voice;
pub mod words;
