//! `marlinspeak tie`: the whole guided job in a terminal, a line a step, for Braille lines,
//! screen readers and rooms without a desktop.

mod batch;
mod driver;
mod input;
mod keyboard;
mod overlay;
mod page_news;
mod services;
mod signals;

use std::io::{self, ErrorKind, IsTerminal as _};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::time::{Duration, Instant};

use clap::Args;

use super::complaint::Complaint;
use super::error_lines::ErrorLines;
use super::options::{KnotOptions, at_once, checks};
use super::setup_options::SetupOptions;
use super::slow_disk::SlowDisk;
use crate::bench::WeaveChoice;
use crate::guide::{AtOnce, COURSE, Script};
use crate::logging;
use crate::pedal::{self, Ear};
use crate::session::{Event, InHand, Session, ToSession, Wishes, inventory, lesson_tie, new_tie};
use crate::settings::{Settings, SettingsFile};
use crate::shelf::{self, Keeper, Shelf, ShelfError, ShelfReading, Tie};
use crate::voice::{CuePlayer, Mute, Speaker, SystemVoice, VoiceError, VoiceEvent};
use crate::words::{Detail, Words};
use batch::Wanted;
pub use driver::{TerminalDriver, TieLeft};
pub use input::TerminalEvent;
use keyboard::RawMode;
pub use services::TerminalServices;

/// How long leaving waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(5);

#[derive(Args)]
pub(super) struct TieOptions {
    #[command(flatten)]
    knot: KnotOptions,
    #[command(flatten)]
    setup: SetupOptions,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-lesson"
    )]
    lesson: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-tie-pieces"
    )]
    pieces: Option<String>,
    #[arg(
        long = "from-order",
        value_name = "value-order",
        help = "help-tie-order"
    )]
    from_order: Option<String>,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-tie-piece"
    )]
    piece: Option<String>,
    #[arg(long, value_name = "round|pass", help = "help-checks")]
    checks: Option<String>,
    #[arg(long, help = "help-speech")]
    speech: bool,
    #[arg(
        long,
        value_name = "N|leg",
        allow_hyphen_values = true,
        help = "help-tie-at-once"
    )]
    at_once: Option<String>,
}

/// Guides through the tie. `detail` is what was asked for on the command line; `looking_on` tells of the disk
/// until the session does.
pub(super) fn run(
    asked: &TieOptions,
    words: Words,
    detail: Option<Detail>,
    looking_on: Option<SlowDisk>,
) -> Result<(), Complaint> {
    if let Some(file) = logging::default_file() {
        logging::start(&file, "tie");
    }
    let wishes = Wishes {
        detail,
        at_once: at_once(asked.at_once.as_deref(), &words)?,
        checks: checks(asked.checks.as_deref(), &words)?,
    };
    let opened = Shelf::default_dir().and_then(Shelf::open);
    let tie = match batch::from_order(asked, &opened, &words)? {
        Some(tie) => Some(tie),
        None => named(asked, &words)?.map(|tie| Wanted::Begin(Box::new(tie))),
    };
    let facts = match &tie {
        Some(Wanted::Begin(tie)) => {
            let script = Script::new(tie.plan.clone(), AtOnce::default());
            Some(words.choice(&script))
        }
        _ => None,
    };
    let (tell, events) = mpsc::channel();
    let in_hand = taken(&opened, tie, &words)?;
    let (services, settings) = start_services(opened, asked.speech, &tell);
    drop(looking_on);
    let raw_mode = io::stdin().is_terminal().then(RawMode::begin).flatten();
    let has_single_keys = raw_mode.is_some();
    listen(&tell, has_single_keys);
    let keys = if has_single_keys {
        "tie-keys"
    } else {
        "tie-keys-lines"
    };
    let opening: Vec<String> = [words.plainly(keys, &[])]
        .into_iter()
        .chain(facts)
        .collect();
    let session = Session::new(words, settings, wishes);
    let mut driver = TerminalDriver::new(session, services, io::stdout(), has_single_keys);
    let guided = guide(&mut driver, &events, in_hand, &opening);
    // The terminal is given back before the disk is waited for.
    drop(raw_mode);
    let left = driver.close(LAST_SAVE);
    let words = driver.session().words();
    if let TieLeft::Unsaved(failure) = left {
        return Err(Complaint::failure(words.left_unsaved(failure.as_ref())));
    }
    let told = match (guided, left) {
        (Ok(()), TieLeft::Saved) => {
            let kept = words.plainly("tie-left", &[]);
            driver.print(&kept)
        }
        (guided, _) => guided,
    };
    match told {
        // A reader that is gone is no failure, and the tie is kept.
        Err(fault) if !is_gone(&fault) => Err(Complaint::output(driver.session().words(), &fault)),
        _ => Ok(()),
    }
}

/// Whether nobody reads any more: a pipe that is closed, or a terminal that is gone.
fn is_gone(fault: &io::Error) -> bool {
    #[cfg(unix)]
    if fault.raw_os_error() == Some(rustix::io::Errno::IO.raw_os_error()) {
        return true;
    }
    fault.kind() == ErrorKind::BrokenPipe
}

impl TieOptions {
    fn names_knot(&self) -> bool {
        !self.knot.is_empty() || !self.setup.is_empty()
    }
}

/// The tie that the options name, if they name one.
fn named(asked: &TieOptions, words: &Words) -> Result<Option<Tie>, Complaint> {
    let names_knot = asked.names_knot();
    let batch = batch::asked_for(asked, words)?;
    match &asked.lesson {
        Some(_) if names_knot => Err(Complaint::input(words.plainly("tie-lesson-or-knot", &[]))),
        Some(given) => {
            let number = given.trim().parse::<u16>().ok();
            let lesson = COURSE
                .into_iter()
                .find(|lesson| Some(lesson.number) == number)
                .ok_or_else(|| {
                    let numbers = COURSE.map(|lesson| lesson.number.to_string());
                    let numbers = numbers.each_ref().map(String::as_str);
                    Complaint::input(words.choice_unknown("--lesson", given, &numbers))
                })?;
            lesson_tie(lesson, WeaveChoice::FewestTucks)
                .map(Some)
                .map_err(|error| Complaint::input(words.knot_error(&error)))
        }
        None if names_knot => {
            let plan = asked.setup.equip(asked.knot.plan(words)?, words)?;
            let mut tie = new_tie(&plan);
            tie.batch = batch;
            Ok(Some(tie))
        }
        None => Ok(None),
    }
}

/// Takes the tie in hand: the one that is named, begun, or else the newest that waits. Without a
/// shelf a tie can still be begun, as in the window.
fn taken(
    opened: &Result<Shelf, ShelfError>,
    named: Option<Wanted>,
    words: &Words,
) -> Result<ShelfReading<InHand>, Complaint> {
    let shelf = match (opened, named) {
        (opened, Some(Wanted::Begin(tie))) => {
            return Ok(InHand::new(opened.as_ref().ok(), *tie));
        }
        (Ok(shelf), Some(Wanted::TakeUp(id))) => {
            let taken = InHand::taken_up(shelf, &id, false);
            return taken.map_err(|error| refused(&error, words));
        }
        (Ok(shelf), None) => shelf,
        (Err(error), _) => return Err(refused(error, words)),
    };
    let refused = |error: ShelfError| refused(&error, words);
    let waiting = inventory(shelf, None, shelf::now()).map_err(refused)?;
    let newest = match waiting
        .map(|found| found.waiting.into_iter().next())
        .found()
    {
        Ok(newest) => newest,
        Err(nothing) => {
            nothing.hand_on(&mut ErrorLines::new(words));
            return Err(Complaint::input(words.plainly("tie-none-waiting", &[])));
        }
    };
    // Damage was mended, and told of, when the shelf was looked through.
    let in_hand = ShelfReading::try_gather(|gathering| {
        let newest = newest.hand_on(gathering);
        Ok(InHand::taken_up(shelf, newest.tie.id(), false)?.hand_on(gathering))
    });
    in_hand.map_err(refused)
}

fn refused(error: &ShelfError, words: &Words) -> Complaint {
    log::warn!("{}", error.cause());
    Complaint::failure(match error {
        ShelfError::InUse { .. } => words.plainly("tie-in-use", &[]),
        error => words.no_ties(error).into(),
    })
}

/// Starts the real services. What they report goes to `tell`; when nobody listens any more the
/// tie is put away, and the reports with it.
fn start_services(
    opened: Result<Shelf, ShelfError>,
    has_speech: bool,
    tell: &Sender<TerminalEvent>,
) -> (TerminalServices, Settings) {
    let session = |tell: Sender<TerminalEvent>| {
        move |event: Event| {
            let _ = tell.send(TerminalEvent::Session(event));
        }
    };
    let (mut file, mut settings) = (SettingsFile::nowhere(), Settings::default());
    if let Some(path) = SettingsFile::default_path() {
        let told = session(tell.clone());
        let opened = SettingsFile::open(&path, move |trouble| told(Event::Settings(trouble)));
        let opened = opened.hand_on(&mut ToSession(session(tell.clone())));
        (file, settings) = (opened.file, opened.settings);
    }
    let mut services = TerminalServices {
        shelf: None,
        keeper: None,
        voice: Box::new(Mute),
        chime: None,
        ear: Ear::new(
            {
                let tell = tell.clone();
                move |raw| {
                    let _ = tell.send(TerminalEvent::Pedal(raw));
                }
            },
            {
                let told = session(tell.clone());
                move |news| told(Event::Ear(news))
            },
        ),
        file,
    };
    let told = session(tell.clone());
    let kept = opened.and_then(|shelf| {
        let keeper = Keeper::start(shelf.clone(), move |kept| told(Event::Kept(kept)))?;
        Ok((shelf, keeper))
    });
    match kept {
        Ok((shelf, keeper)) => {
            (services.shelf, services.keeper) = (Some(shelf), Some(keeper));
        }
        Err(error) => session(tell.clone())(Event::NoShelf(error)),
    }
    if has_speech {
        let told = session(tell.clone());
        let started = Speaker::start(SystemVoice::maker(), move |news| told(Event::Voice(news)));
        match started {
            Ok(speaker) => services.voice = Box::new(speaker),
            Err(error) => {
                let loss = VoiceEvent::Lost(VoiceError::NoService(error.to_string()));
                session(tell.clone())(Event::Voice(loss));
            }
        }
        services.chime = Some(Box::new(CuePlayer::start()));
    }
    (services, settings)
}

/// Listens to signals, to keys and pedals, or to lines where the input is no terminal.
fn listen(tell: &Sender<TerminalEvent>, has_single_keys: bool) {
    signals::listen(tell);
    if has_single_keys {
        let told = tell.clone();
        pedal::listen(move |raw| {
            let _ = told.send(TerminalEvent::Pedal(raw));
        });
        keyboard::listen_to_keys(tell.clone());
    } else {
        keyboard::listen_to_lines(tell.clone());
    }
}

/// Guides until the tyer leaves, having printed these lines.
fn guide(
    driver: &mut TerminalDriver<io::Stdout>,
    events: &Receiver<TerminalEvent>,
    in_hand: ShelfReading<InHand>,
    opening: &[String],
) -> io::Result<()> {
    let start = Instant::now();
    for line in opening {
        driver.print(line)?;
    }
    driver.take_in_hand(in_hand, start.elapsed())?;
    while !driver.is_over() {
        let event = match driver.due(start.elapsed()) {
            None => events.recv().map_err(|_| RecvTimeoutError::Disconnected),
            Some(rest) => events.recv_timeout(rest),
        };
        let event = match event {
            Ok(event) => Some(event),
            Err(RecvTimeoutError::Timeout) => None,
            Err(RecvTimeoutError::Disconnected) => Some(TerminalEvent::Gone),
        };
        if event.as_ref().is_some_and(TerminalEvent::is_press) {
            driver.settle(start.elapsed());
        }
        driver.take(event, start.elapsed())?;
    }
    Ok(())
}
