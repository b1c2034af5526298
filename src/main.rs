//! Marlinspeak: reads the command line, and opens the app when that is what it asks for.

use std::io::{self, Write as _};
use std::panic;
use std::process::ExitCode;

use marlinspeak::cli::{self, Complaint, Invocation, SlowDisk};
use marlinspeak::guide::Plan;
use marlinspeak::logging;
use marlinspeak::session::Wishes;
use marlinspeak::words::Words;

fn main() -> ExitCode {
    logging::log_panics(tell_of_a_fault);
    let done = panic::catch_unwind(run)
        .unwrap_or_else(|_| Err(stopped_by_a_fault(&cli::words_for_trouble())));
    logging::end();
    match done {
        Ok(code) => code,
        Err(complaint) => {
            tell(&complaint.to_string());
            complaint.code()
        }
    }
}

fn run() -> Result<ExitCode, Complaint> {
    match cli::run()? {
        Invocation::Done(code) => Ok(code),
        Invocation::Open {
            words,
            wishes,
            plan,
            looking_on,
        } => {
            open(*words, wishes, plan.map(|plan| *plan), looking_on)?;
            Ok(ExitCode::SUCCESS)
        }
    }
}

#[cfg(feature = "window")]
fn open(
    words: Words,
    wishes: Wishes,
    plan: Option<Plan>,
    looking_on: SlowDisk,
) -> Result<(), Complaint> {
    use std::env;

    use marlinspeak::app::{self, Failure};

    if let Some(file) = logging::default_file() {
        logging::start(&file, "the app");
    }
    // The app keeps the words; a failure needs some too.
    let tag = words.locale().to_string();
    app::run(words, wishes, plan, looking_on).map_err(|failure| {
        let words = Words::load(Some(&tag)).unwrap_or_else(|_| Words::english());
        match failure {
            Failure::NoDisplay => Complaint::failure(words.plainly("app-no-display", &[])),
            Failure::NoWindow => {
                let display = ["WAYLAND_DISPLAY", "DISPLAY"]
                    .iter()
                    .find_map(|name| env::var(name).ok());
                let display = display.unwrap_or_default();
                let sentence = words.plainly("app-window-failed", &[("display", &display)]);
                Complaint::failure(sentence)
            }
            Failure::LeftUnsaved => Complaint::failure(words.left_unsaved(None)),
            Failure::Fault => stopped_by_a_fault(&words),
        }
    })
}

#[cfg(not(feature = "window"))]
#[expect(clippy::needless_pass_by_value, reason = "the app keeps its words")]
fn open(words: Words, _: Wishes, _: Option<Plan>, _: SlowDisk) -> Result<(), Complaint> {
    let sentence = words.plainly("app-without-window", &[]);
    Err(Complaint::failure(sentence))
}

/// What is known of the fault stands in the log file.
fn stopped_by_a_fault(words: &Words) -> Complaint {
    Complaint::failure(words.plainly("app-fault", &[]))
}

/// Tells of a fault in a thread that is not the main one: the program goes on without it.
fn tell_of_a_fault() {
    let file = logging::default_file().map(|file| file.display().to_string());
    let file = file.unwrap_or_default();
    tell(&cli::words_for_trouble().plainly("fault-noted", &[("file", &file)]));
}

/// Where standard error is closed nobody can be told.
fn tell(sentence: &str) {
    let _ = writeln!(io::stderr(), "{sentence}");
}
