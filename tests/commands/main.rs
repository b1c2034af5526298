//! The commands of the terminal, as its user gives them.

#[path = "../support/in_time.rs"]
mod in_time;
#[path = "../support/terminal.rs"]
mod terminal;
#[path = "../support/walk.rs"]
mod walk;

mod as_text;
mod batch;
mod day;
mod installing;
mod terminal_shelf;
