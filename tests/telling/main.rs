//! What is told: the steps of every kind of knot, in every language, held to the knot.

mod crooked;
#[path = "../support/diagram.rs"]
mod diagram;
#[path = "../support/files.rs"]
mod files;
#[path = "../support/grid.rs"]
mod grid;
#[path = "../support/heard.rs"]
mod heard;
#[path = "../support/in_time.rs"]
mod in_time;
#[path = "../support/lattice.rs"]
mod lattice;
#[path = "../support/messages.rs"]
mod messages;
#[path = "../support/spoken/mod.rs"]
mod spoken;
#[path = "../support/walk.rs"]
mod walk;

mod breath;
mod every_message;
mod fixtures;
mod guide_laws;
mod heard_apart;
mod in_own_words;
mod knot_laws;
mod refused;
mod right_knot;
mod round_hand;
mod spoken_on_grounds;
mod spoken_plain;
mod told_in_time;
mod told_on_grounds;
mod whole_script;
mod worked_examples;
