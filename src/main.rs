//! Marlinspeak: reads the command line, and opens the app when that is what it asks for.

use std::process::ExitCode;

use marlinspeak::cli::{self, Request};

fn main() -> ExitCode {
    match cli::run() {
        Ok((Request::Done(code), _)) => code,
        Ok((Request::Open(_plan), _words)) => ExitCode::SUCCESS,
        Err(complaint) => {
            eprintln!("{complaint}");
            complaint.code()
        }
    }
}
