//! Every screen without a window, worked by presses, clicks and touches.
//!
//! One program, since each would take seconds to be put together.

#[path = "../support/desk.rs"]
mod desk;
#[path = "../support/frames.rs"]
mod frames;
#[path = "../support/given_lines.rs"]
mod given_lines;
#[path = "../support/hands.rs"]
mod hands;
#[path = "../support/in_time.rs"]
mod in_time;
#[path = "../support/listener.rs"]
mod listener;
#[path = "../support/terminal.rs"]
mod terminal;
#[path = "../support/window.rs"]
mod window;
#[path = "../support/worked.rs"]
mod worked;

mod app;
mod by_ear;
mod comfort;
mod every_hand;
mod first_question;
mod gallery;
mod illustrations;
mod knocks_screen;
mod languages;
mod long_names;
mod looks;
mod moving_leg;
mod order_screen;
mod paper_screen;
mod parity;
mod picture_screen;
mod plan_layout;
mod plan_screen;
mod readme_pictures;
mod repaints;
mod screens_by_ear;
mod second_window;
mod shelf_screen;
mod type_fits;
mod whole_jobs;
