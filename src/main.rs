//! Marlinspeak: reads the command line, and opens the app when that is what it asks for.

use std::env;
use std::process::ExitCode;

use marlinspeak::app::{self, Failure};
use marlinspeak::cli::{self, Complaint, Request};
use marlinspeak::words::Words;

fn main() -> ExitCode {
    match run() {
        Ok(code) => code,
        Err(complaint) => {
            eprintln!("{complaint}");
            complaint.code()
        }
    }
}

fn run() -> Result<ExitCode, Complaint> {
    let (request, words) = cli::run()?;
    match request {
        Request::Done(code) => Ok(code),
        Request::Open(plan) => {
            // The app keeps the words; a failure needs some too.
            let tag = words.locale().to_string();
            app::run(words, plan.map(|plan| *plan)).map_err(|failure| complaint(&failure, &tag))?;
            Ok(ExitCode::SUCCESS)
        }
    }
}

fn complaint(failure: &Failure, tag: &str) -> Complaint {
    let words = Words::load(Some(tag)).unwrap_or_else(|_| Words::english());
    Complaint::failure(match failure {
        Failure::NoDisplay => words.plainly("app-no-display", &[]),
        Failure::NoWindow => {
            let display = ["WAYLAND_DISPLAY", "DISPLAY"]
                .iter()
                .find_map(|name| env::var(name).ok());
            let display = display.unwrap_or_default();
            words.plainly("app-window-failed", &[("display", &display)])
        }
        Failure::Fault(reason) => words.plainly("app-fault", &[("reason", reason)]),
    })
}
