//! The real program in a real window, worked by real key presses, with the real speech service
//! on a sound sink that plays to nobody: how soon a press is heard and seen, how long speech
//! takes to come back, and what the program does when nothing happens.
//!
//! It needs what `make bench` installs and builds, the plain speaking program among it that the
//! real one is held against.

#[cfg(target_os = "linux")]
#[path = "../../support/failing_disk.rs"]
mod disk;
#[cfg(target_os = "linux")]
#[path = "../../support/display.rs"]
mod display;

#[cfg(target_os = "linux")]
mod bare;
#[cfg(target_os = "linux")]
mod ear;
#[cfg(target_os = "linux")]
mod eye;
#[cfg(target_os = "linux")]
#[path = "../line.rs"]
mod line;
#[cfg(target_os = "linux")]
mod loft;
#[cfg(target_os = "linux")]
mod measures;
#[cfg(target_os = "linux")]
mod program;

#[cfg(target_os = "linux")]
fn main() {
    measures::all(std::env::args().any(|arg| arg == "--bench"));
}

#[cfg(not(target_os = "linux"))]
fn main() {
    println!("The speech service of this bench is that of Linux: nothing measured.");
}
