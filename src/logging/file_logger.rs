//! From a record to a line, and the thread that writes lines down.

use std::sync::Mutex;
use std::sync::mpsc::{self, Receiver, Sender, SyncSender};
use std::time::{Duration, SystemTime};

use jiff::Timestamp;
use log::{Level, Log, Metadata, Record};

use super::redaction::redacted;
use super::rotating_file::RotatingFile;

/// How long the end of the program, or a fault, waits for its last line.
const LAST_LINE: Duration = Duration::from_millis(500);
/// Letters of one line at most.
const LONGEST: usize = 600;

/// What the thread that writes is asked for.
pub(super) enum LogRequest {
    /// Write this line, which was logged at this time.
    Line(String, String),
    /// Answer when everything asked for before is written.
    Flush(Sender<()>),
}

/// The logger of the process.
pub(super) struct FileLogger {
    inbox: SyncSender<LogRequest>,
    home: Option<String>,
    /// What stands before the first line, until that comes.
    opening: Mutex<Option<String>>,
}

impl FileLogger {
    /// `opening` is written before the first line, if one ever comes.
    pub const fn new(
        inbox: SyncSender<LogRequest>,
        home: Option<String>,
        opening: Option<String>,
    ) -> Self {
        Self {
            inbox,
            home,
            opening: Mutex::new(opening),
        }
    }

    fn write(&self, record: &Record) {
        let text = redacted(&record.args().to_string(), self.home.as_deref());
        let text: String = text.chars().take(LONGEST).collect();
        let line = format!("{} {}: {text}", record.level(), record.target());
        // A clock that is set later than a timestamp can hold counts as the latest timestamp.
        let now = Timestamp::try_from(SystemTime::now()).unwrap_or(Timestamp::MAX);
        let at = now.strftime("%Y-%m-%dT%H:%M:%SZ").to_string();
        // When the queue is full the line is left out, so that nobody waits for the disk.
        let _ = self.inbox.try_send(LogRequest::Line(at, line));
    }
}

impl Log for FileLogger {
    /// Every record of the program itself, and warnings and errors of the libraries.
    fn enabled(&self, metadata: &Metadata) -> bool {
        let own = env!("CARGO_PKG_NAME");
        let room = metadata.target().split("::").next();
        let least = if room == Some(own) {
            Level::Info
        } else {
            Level::Warn
        };
        metadata.level() <= least
    }

    fn log(&self, record: &Record) {
        if !self.enabled(record.metadata()) {
            return;
        }
        let opening = self
            .opening
            .lock()
            .ok()
            .and_then(|mut opening| opening.take());
        if let Some(opening) = opening {
            self.write(
                &Record::builder()
                    .level(Level::Info)
                    .target(module_path!())
                    .args(format_args!("{opening}"))
                    .build(),
            );
        }
        self.write(record);
    }

    fn flush(&self) {
        let (done, written) = mpsc::channel();
        if self.inbox.try_send(LogRequest::Flush(done)).is_ok() {
            let _ = written.recv_timeout(LAST_LINE);
        }
    }
}

/// Writes what is asked for until nobody can ask any more. A line that comes again and again is written once, and counted.
pub(super) fn write_lines(requests: &Receiver<LogRequest>, mut file: RotatingFile) {
    let mut last = String::new();
    let mut again = 0_u32;
    while let Ok(request) = requests.recv() {
        if matches!(&request, LogRequest::Line(_, line) if *line == last) {
            again += 1;
            continue;
        }
        if again > 0 {
            // A log that cannot be written is no reason to stop: the tie matters more.
            let _ = file.write(&format!("  and {again} times more"));
            again = 0;
        }
        match request {
            LogRequest::Line(at, line) => {
                let _ = file.write(&format!("{at} {line}"));
                last = line;
            }
            LogRequest::Flush(done) => {
                let _ = done.send(());
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;
    use std::thread;

    /// What stands in the file after these records.
    fn written(records: &[(Level, &str, &str)]) -> Vec<String> {
        written_after(None, records)
    }

    /// The same, where this stands before the first line.
    fn written_after(opening: Option<&str>, records: &[(Level, &str, &str)]) -> Vec<String> {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("marlinspeak.log");
        let (inbox, requests) = mpsc::sync_channel(64);
        let rotating = RotatingFile::new(file.clone(), 10_000);
        let thread = thread::spawn(move || write_lines(&requests, rotating));
        let home = Some("/home/ada".to_owned());
        let logger = FileLogger::new(inbox, home, opening.map(str::to_owned));
        for (level, target, text) in records {
            logger.log(
                &Record::builder()
                    .level(*level)
                    .target(target)
                    .args(format_args!("{text}"))
                    .build(),
            );
        }
        logger.flush();
        drop(logger);
        thread.join().unwrap();
        let text = fs::read_to_string(&file).unwrap_or_default();
        // Without the time.
        let line = |line: &str| {
            line.split_once("Z ")
                .map_or(line, |(_, line)| line)
                .to_owned()
        };
        text.lines().map(line).collect()
    }

    #[test]
    fn its_own_news_and_the_warnings_of_others() {
        let lines = written(&[
            (Level::Info, "marlinspeak::voice", "a voice speaks"),
            (Level::Info, "winit::window", "chatter"),
            (Level::Warn, "winit::window", "trouble"),
            (Level::Debug, "marlinspeak::voice", "chatter"),
            (Level::Warn, "marlinspeaker", "no room of ours"),
            (Level::Info, "marlinspeaker", "no room of ours"),
        ]);
        assert_eq!(
            lines,
            [
                "INFO marlinspeak::voice: a voice speaks",
                "WARN winit::window: trouble",
                "WARN marlinspeaker: no room of ours",
            ]
        );
    }

    #[test]
    fn what_stands_before_the_first_line_waits_for_one() {
        let opening = Some("start of steps");
        let chatter = (Level::Debug, "marlinspeak::voice", "chatter");
        assert_eq!(written_after(opening, &[chatter]), [""; 0]);
        let trouble = (Level::Warn, "marlinspeak::cli", "trouble");
        assert_eq!(
            written_after(opening, &[chatter, trouble, chatter]),
            [
                "INFO marlinspeak::logging::file_logger: start of steps",
                "WARN marlinspeak::cli: trouble",
            ]
        );
    }

    #[test]
    fn what_comes_again_is_counted() {
        let lines = written(&[(Level::Warn, "winit", "flood"); 40]);
        assert_eq!(lines, ["WARN winit: flood", "  and 39 times more"]);
    }

    #[test]
    fn nothing_private_and_nothing_long() {
        let long = "x".repeat(5000);
        let lines = written(&[
            (
                Level::Warn,
                "marlinspeak",
                "/home/ada/t.json: invalid value “blue cord”\nat 3",
            ),
            (Level::Warn, "marlinspeak", &long),
        ]);
        assert_eq!(
            lines[0],
            "WARN marlinspeak: ~/t.json: invalid value “…” at 3"
        );
        assert!(lines[1].len() < 700 && lines.len() == 2, "{lines:?}");
    }

    #[test]
    fn a_folder_that_cannot_be_written_to_is_no_failure() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("file");
        fs::write(&file, "").unwrap();
        let (inbox, requests) = mpsc::sync_channel(64);
        let rotating = RotatingFile::new(file.join("marlinspeak.log"), 10_000);
        let thread = thread::spawn(move || write_lines(&requests, rotating));
        let logger = FileLogger::new(inbox, None, None);
        let text = format_args!("x");
        logger.log(&Record::builder().level(Level::Error).args(text).build());
        logger.flush();
        drop(logger);
        assert!(thread.join().is_ok());
    }
}
