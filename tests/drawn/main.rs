//! What is drawn and printed: pictures, sheets, reels, photographs.

#[path = "../support/dots.rs"]
mod dots;
#[path = "../support/flat_cords.rs"]
mod flat_cords;
#[path = "../support/in_time.rs"]
mod in_time;
#[path = "../support/laid_out.rs"]
mod laid_out;
#[path = "../support/moving.rs"]
mod moving;
#[path = "../support/pdf.rs"]
mod pdf;

mod board_sheets;
mod photographs;
mod picture;
mod picture_colours;
mod picture_grounds;
mod picture_pins;
mod picture_words;
mod reel;
mod sheets;
