//! `marlinspeak tie`: the whole guided job in a terminal, a line a step, for Braille lines,
//! screen readers and rooms without a desktop.

use std::io::{self, ErrorKind, IsTerminal as _, Write};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::time::{Duration, Instant};

use clap::Args;

use super::Complaint;
use super::options::{KnotOptions, at_once, checks};
use super::setup_options::SetupOptions;
use super::tty::{self, RawMode};
use crate::diary;
use crate::guide::{AtOnce, Script};
use crate::pedal::{self, Edge, Intent, Pedals, Raw};
use crate::settings::{Settings, SettingsFile};
use crate::shelf::{Held, Keeper, Kept, Shelf, ShelfError, TakenUp, Tie};
use crate::voice::{Manner, News, Speaker, SystemVoice};
use crate::walk::{Action, Walk};
use crate::words::Words;

/// How long leaving waits for the last save.
const LAST_SAVE: Duration = Duration::from_secs(2);
/// One press of faster or slower, in words a minute.
const SPEED_STEP: i16 = 10;

#[derive(Args)]
pub(super) struct TieOptions {
    #[command(flatten)]
    knot: KnotOptions,
    #[command(flatten)]
    setup: SetupOptions,
    /// A look at the work after each round or only after each pass [default: round]
    #[arg(long, value_name = "round|pass")]
    checks: Option<String>,
    /// Say each step aloud too
    #[arg(long)]
    speech: bool,
    /// At most so many crossings in a step, 1 to 999, or “leg” for whole legs [default: 4]
    #[arg(long, value_name = "N|leg", allow_hyphen_values = true)]
    at_once: Option<String>,
}

/// What happens to the tie.
pub(super) enum Event {
    /// An input did something.
    Raw(Raw),
    /// A line was typed where there are no single keys.
    Line(String),
    /// Whoever pressed is gone, or wants to be.
    Gone,
    /// A tie was saved, or was not.
    Kept(Kept),
    /// The voice has something to report.
    Voice(News),
    /// A sentence to be told.
    Told(String),
}

/// Guides through the tie.
pub(super) fn run(asked: &TieOptions, words: &Words) -> Result<(), Complaint> {
    if let Some(file) = diary::default_file() {
        diary::start(&file, "tie");
    }
    let at_once = at_once(asked.at_once.as_deref(), words)?;
    let checks = checks(asked.checks.as_deref(), words)?;
    let plan = if asked.knot.is_empty() && asked.setup.is_empty() {
        None
    } else {
        Some(asked.setup.equip(asked.knot.plan(words)?, words)?)
    };
    let refused = |error: ShelfError| Complaint::failure(refusal(&error, words));
    let shelf = Shelf::default_dir()
        .and_then(Shelf::open)
        .map_err(refused)?;
    let taken = match &plan {
        Some(plan) => shelf
            .begin(Tie::of(plan, Script::new(plan.clone(), at_once).first()))
            .map_err(refused)?,
        None => match newest(&shelf).map_err(refused)? {
            Some(tie) => shelf.take_up(tie.id()).map_err(refused)?,
            None => return Err(Complaint::input(words.plainly("tie-none-waiting", &[]))),
        },
    };
    let (tell, events) = mpsc::channel();
    let told = tell.clone();
    let keeper = Keeper::start(shelf, move |kept| {
        // When nobody listens any more the tie is put away, and the news with it.
        let _ = told.send(Event::Kept(kept));
    })
    .map_err(refused)?;
    let (file, settings) = settings(&tell, words);
    let speaker = asked
        .speech
        .then(|| speaker(&tell, &settings, words))
        .flatten();
    let (raw_mode, is_raw) = listen(&tell);
    let TakenUp {
        held,
        tie,
        troubles,
    } = taken;
    for trouble in &troubles {
        let _ = tell.send(Event::Told(refusal(&trouble.error, words)));
    }
    let script = Script::new(tie.plan(), at_once).with_checks(checks);
    let place = tie.stands_at().unwrap_or_else(|| script.first());
    let session = Session {
        words,
        walk: Walk::new(script, place, words),
        tie,
        held: Some(held),
        keeper,
        pedals: Pedals::new(settings.bindings.clone(), settings.times),
        settings,
        file,
        speaker,
        is_voice_lost: false,
        is_raw,
        out: io::stdout(),
    };
    let done = session.work(&events, plan.is_none());
    drop(raw_mode);
    match done {
        // Whoever reads has seen enough; the tie is kept.
        Err(fault) if fault.kind() != ErrorKind::BrokenPipe => {
            let reason = fault.to_string();
            Err(Complaint::failure(
                words.plainly("output-failed", &[("reason", &reason)]),
            ))
        }
        _ => Ok(()),
    }
}

/// The newest tie that is not done.
fn newest(shelf: &Shelf) -> Result<Option<Tie>, ShelfError> {
    let is_in_progress = |tie: &Tie| {
        let script = Script::new(tie.plan(), AtOnce::default());
        tie.stands_at()
            .and_then(|place| script.settle(place))
            .is_some_and(|place| place != script.last())
    };
    Ok(shelf.list()?.ties.into_iter().find(is_in_progress))
}

fn refusal(error: &ShelfError, words: &Words) -> String {
    match error {
        ShelfError::InUse { .. } => words.plainly("trouble-in-use", &[]),
        _ => words.plainly("trouble-io", &[("reason", &error.to_string())]),
    }
}

fn settings(tell: &Sender<Event>, words: &Words) -> (SettingsFile, Settings) {
    let Some(path) = SettingsFile::default_path() else {
        return (SettingsFile::nowhere(), Settings::default());
    };
    let opened = SettingsFile::open(&path, |_| {});
    if let Some(snag) = opened.snag {
        let _ = tell.send(Event::Told(snag.sentence(words)));
    }
    (opened.file, opened.settings)
}

fn speaker(tell: &Sender<Event>, settings: &Settings, words: &Words) -> Option<Speaker> {
    let told = tell.clone();
    let started = Speaker::start(SystemVoice::maker(), move |news| {
        let _ = told.send(Event::Voice(news));
    });
    if let Ok(speaker) = started {
        speaker.set_manner(settings.manner_of(words));
        Some(speaker)
    } else {
        let _ = tell.send(Event::Told(words.plainly("voice-lost", &[])));
        None
    }
}

/// Listens to keys and pedals, or to lines where the input is no terminal. The answer tells
/// whether the terminal gives single keys.
fn listen(tell: &Sender<Event>) -> (Option<RawMode>, bool) {
    let raw_mode = io::stdin().is_terminal().then(RawMode::begin).flatten();
    let is_raw = raw_mode.is_some();
    if is_raw {
        let told = tell.clone();
        pedal::listen(move |raw| {
            let _ = told.send(Event::Raw(raw));
        });
        tty::listen_to_keys(tell.clone());
    } else {
        tty::listen_to_lines(tell.clone());
    }
    (raw_mode, is_raw)
}

struct Session<'a> {
    words: &'a Words,
    walk: Walk,
    tie: Tie,
    held: Option<Held>,
    keeper: Keeper,
    settings: Settings,
    file: SettingsFile,
    pedals: Pedals,
    speaker: Option<Speaker>,
    is_voice_lost: bool,
    is_raw: bool,
    out: io::Stdout,
}

impl Session<'_> {
    /// Guides until the tyer leaves, and keeps the tie whatever happens.
    fn work(mut self, events: &Receiver<Event>, is_again: bool) -> io::Result<()> {
        let done = self.guide(events, is_again);
        if let Some(held) = self.held.take() {
            self.keeper.put_away(held);
        }
        self.keeper.flush(LAST_SAVE);
        done
    }

    fn guide(&mut self, events: &Receiver<Event>, is_again: bool) -> io::Result<()> {
        let keys = if self.is_raw {
            "tie-keys"
        } else {
            "tie-keys-lines"
        };
        self.print(&self.words.plainly(keys, &[]))?;
        if is_again {
            self.tell_taking_up()?;
        } else {
            self.tell_step()?;
        }
        let start = Instant::now();
        loop {
            let due = self.pedals.due();
            let event = match due {
                None => events.recv().map_err(|_| RecvTimeoutError::Disconnected),
                Some(due) => events.recv_timeout(due.saturating_sub(start.elapsed())),
            };
            let now = start.elapsed();
            let intent = match event {
                Err(RecvTimeoutError::Timeout) => self.pedals.wait(now),
                Err(RecvTimeoutError::Disconnected) | Ok(Event::Gone) => Some(Intent::Leave),
                Ok(Event::Raw(raw)) => self
                    .pedals
                    .take(&raw, now, false)
                    .or_else(|| self.letter(&raw)),
                Ok(Event::Line(line)) => self.line_intent(&line),
                Ok(event) => {
                    self.report(event)?;
                    None
                }
            };
            if let Some(intent) = intent
                && self.press(intent)?
            {
                return self.print(&self.words.plainly("tie-left", &[]));
            }
        }
    }

    /// Does what a press asks for; whether it was to leave.
    fn press(&mut self, intent: Intent) -> io::Result<bool> {
        match intent {
            Intent::Slower => return self.speed(-SPEED_STEP).map(|()| false),
            Intent::Faster => return self.speed(SPEED_STEP).map(|()| false),
            Intent::Pause => {
                if let Some(speaker) = &self.speaker {
                    speaker.hush();
                }
                self.print(&self.words.plainly("paused", &[]))?;
                return Ok(false);
            }
            _ => {}
        }
        match self.walk.press(intent, self.words) {
            Action::Leave => return Ok(true),
            Action::Say(sentence) => {
                self.say(&sentence);
                self.print(&sentence)?;
                return Ok(false);
            }
            Action::Moved => {
                self.tie.stand_at(self.walk.place());
                self.keeper.keep(self.tie.clone());
            }
            Action::Again => {}
        }
        self.tell_step()?;
        Ok(false)
    }

    /// Letters that mean something in a terminal alone, unless they are bound to something else.
    fn letter(&self, raw: &Raw) -> Option<Intent> {
        let letters = [("q", Intent::Leave), ("b", Intent::Back)];
        let is_free = self.pedals.bindings().intent(&raw.input).is_none();
        let found = letters
            .iter()
            .find(|(letter, _)| raw.input == pedal::Input::key(letter));
        found
            .filter(|_| is_free && raw.edge == Edge::Down)
            .map(|(_, intent)| *intent)
    }

    /// What a typed line means: nothing typed is next, else the key of its first letter.
    fn line_intent(&self, line: &str) -> Option<Intent> {
        let Some(letter) = line.trim().chars().next() else {
            return Some(Intent::Next);
        };
        match letter.to_ascii_lowercase() {
            'q' => Some(Intent::Leave),
            'b' => Some(Intent::Back),
            letter => {
                let input = pedal::Input::key(&letter.to_string());
                self.pedals.bindings().intent(&input)
            }
        }
    }

    fn speed(&mut self, by: i16) -> io::Result<()> {
        let tag = self.words.tag().to_string();
        let mut manner = self.settings.manner(&tag);
        let (least, most) = Manner::SPEEDS.into_inner();
        let speed = manner.words_per_minute.saturating_add_signed(by);
        manner.words_per_minute = speed.clamp(least, most);
        let sentence = self.words.say_speed(manner.words_per_minute);
        self.settings.set_manner(&tag, manner);
        if let Some(speaker) = &self.speaker {
            speaker.set_manner(self.settings.manner_of(self.words));
            speaker.say(&sentence);
        }
        self.file.keep(&self.settings);
        self.print(&sentence)
    }

    fn report(&mut self, event: Event) -> io::Result<()> {
        match event {
            Event::Told(sentence) => self.print(&sentence),
            Event::Kept(Kept::Failed {
                error, attempts: 1, ..
            }) => {
                let reason = error.to_string();
                self.print(&self.words.plainly("saving-failed", &[("reason", &reason)]))
            }
            Event::Voice(News::Lost(_)) if !self.is_voice_lost => {
                self.is_voice_lost = true;
                self.print(&self.words.plainly("voice-lost", &[]))
            }
            Event::Voice(News::NoSuchVoice(wanted)) => {
                self.print(&self.words.no_such_voice(&wanted))
            }
            Event::Voice(News::Ready) => {
                self.is_voice_lost = false;
                Ok(())
            }
            _ => Ok(()),
        }
    }

    /// Tells what stands on the screen of the window, as one line.
    fn tell_step(&mut self) -> io::Result<()> {
        self.say(self.walk.say());
        let shown = self.walk.shown();
        let line = shown.to_string().replace('\n', " · ");
        self.print(&format!("{} · {line}", shown.phase))
    }

    /// Tells which tie was taken up, where it stands, and the step.
    fn tell_taking_up(&mut self) -> io::Result<()> {
        let words = self.words;
        let place = words.say_taking_up(self.walk.script(), self.walk.place());
        self.print(&place)?;
        self.tell_step()?;
        self.say(&format!("{place} {}", self.walk.say()));
        Ok(())
    }

    fn say(&self, text: &str) {
        if let Some(speaker) = &self.speaker {
            speaker.say(text);
        }
    }

    /// Prints one line at once. A terminal that gives single keys does not go to the left by
    /// itself.
    fn print(&self, line: &str) -> io::Result<()> {
        let mut out = self.out.lock();
        let end = if self.is_raw { "\r\n" } else { "\n" };
        write!(out, "{line}{end}")?;
        out.flush()
    }
}
