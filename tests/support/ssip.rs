//! A speech service for tests: it speaks SSIP, the protocol of Speech Dispatcher (documented with
//! it), on a Unix socket of its own, says nothing, and keeps a record of what it was told.
//!
//! A program under test is started with `SPEECHD_ADDRESS` set to [`Service::address`]. The
//! service can be slow, dumb, frozen, killed and started again as a real one can.

// Each test file that includes this uses a part of it.
#![allow(dead_code)]

use std::io::{BufRead, BufReader, Write};
use std::net::Shutdown;
use std::os::unix::net::{UnixListener, UnixStream};
use std::path::PathBuf;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::TempDir;

/// How the service treats a text that it has accepted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Speech {
    /// Begins it and ends it after this time, if it is not cancelled.
    Lasts(Duration),
    /// Begins it; [`Service::end_speech`] ends it. If nobody does, this is a service without a
    /// sound server.
    UntilTold,
    /// Accepts it and never begins it.
    Dumb,
}

/// How the service sends its answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Answering {
    AsUsual,
    ByteByByte,
    /// After an answer without an end it hangs up.
    HangingUp,
}

/// What happened, in order.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// A client connected and got this number.
    Connected(u64),
    /// A command of a client, as sent; texts are not commands.
    Command(u64, String),
    /// Message number and text, with the dots restored that SSIP doubles.
    Text(u64, String),
    /// The message was told to have begun.
    Began(u64),
    /// The message was told to have ended.
    Ended(u64),
    /// The message was told to have been cancelled.
    Cancelled(u64),
}

/// A message that is being spoken.
struct Message {
    id: u64,
    client: u64,
    begun: bool,
    /// When it ends by itself.
    ends: Option<Instant>,
    line: Arc<Mutex<UnixStream>>,
}

struct State {
    speech: Speech,
    frozen: bool,
    /// Grows with every kill: threads of an older life end.
    life: u64,
    alive: bool,
    last_message: u64,
    last_client: u64,
    speaking: Vec<Message>,
    streams: Vec<UnixStream>,
    events: Vec<Event>,
    /// How many of the texts [`Service::next_text`] has given.
    given: usize,
    voices: Vec<(String, String)>,
    /// Its engines, the own choice first, each with its voices; none of a service that tells of none.
    engines: Vec<(String, Vec<(String, String)>)>,
    /// What is sent in the place of an answer, after so many good ones.
    instead: Option<(usize, Vec<u8>)>,
    answering: Answering,
}

struct Shared {
    state: Mutex<State>,
    changed: Condvar,
}

impl Shared {
    fn lock(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn change<T>(&self, change: impl FnOnce(&mut State) -> T) -> T {
        let result = change(&mut self.lock());
        self.changed.notify_all();
        result
    }

    /// Waits until `met` gives something, or the time is up.
    fn wait<T>(&self, time: Duration, mut met: impl FnMut(&mut State) -> Option<T>) -> Option<T> {
        let until = Instant::now() + time;
        let mut state = self.lock();
        loop {
            if let Some(found) = met(&mut state) {
                return Some(found);
            }
            let left = until.checked_duration_since(Instant::now())?;
            state = self
                .changed
                .wait_timeout(state, left)
                .unwrap_or_else(PoisonError::into_inner)
                .0;
        }
    }
}

/// The service, on a socket in a folder of its own that goes with it.
pub struct Service {
    folder: TempDir,
    shared: Arc<Shared>,
}

impl Service {
    /// A running service that ends each text as soon as it has begun.
    pub fn start() -> Self {
        let service = Self::absent();
        service.restart();
        service
    }

    /// A service that is not running: there is no socket until [`Service::restart`].
    pub fn absent() -> Self {
        let state = State {
            speech: Speech::Lasts(Duration::ZERO),
            frozen: false,
            life: 0,
            alive: false,
            last_message: 0,
            last_client: 0,
            speaking: Vec::new(),
            streams: Vec::new(),
            events: Vec::new(),
            given: 0,
            voices: [("Ada", "en-GB"), ("Ada+deep", "en-GB"), ("Bruno", "de")]
                .map(|(name, language)| (name.to_owned(), language.to_owned()))
                .to_vec(),
            engines: Vec::new(),
            instead: None,
            answering: Answering::AsUsual,
        };
        let shared = Shared {
            state: Mutex::new(state),
            changed: Condvar::new(),
        };
        Self {
            folder: tempfile::tempdir().expect("a temporary folder"),
            shared: Arc::new(shared),
        }
    }

    /// The value for `SPEECHD_ADDRESS`.
    pub fn address(&self) -> String {
        format!("unix_socket:{}", self.path().display())
    }

    fn path(&self) -> PathBuf {
        self.folder.path().join("speech.sock")
    }

    /// From the next text on; a text that was met by dumbness is begun now.
    pub fn set_speech(&self, speech: Speech) {
        self.shared.change(|state| state.speech = speech);
    }

    /// The voices listed, each a name and a language.
    pub fn set_voices(&self, voices: Vec<(String, String)>) {
        self.shared.change(|state| state.voices = voices);
    }

    /// The engines, its own choice first, and each with its voices by name and language.
    pub fn set_engines(&self, engines: &[(&str, &[(&str, &str)])]) {
        let owned = |(name, language): &(&str, &str)| ((*name).to_owned(), (*language).to_owned());
        let engines = engines.iter().map(|(engine, voices)| {
            let voices = voices.iter().map(owned).collect();
            ((*engine).to_owned(), voices)
        });
        let engines = engines.collect();
        self.shared.change(|state| state.engines = engines);
    }

    /// Sends this in the place of the answer that follows after so many good ones.
    pub fn answer_once_after(&self, good: usize, bytes: Vec<u8>) {
        self.shared
            .change(|state| state.instead = Some((good, bytes)));
    }

    /// Hangs up after an answer without an end.
    pub fn hang_up_on_unfinished(&self) {
        self.shared
            .change(|state| state.answering = Answering::HangingUp);
    }

    /// Sends every answer a byte at a time.
    pub fn answer_byte_by_byte(&self) {
        self.shared
            .change(|state| state.answering = Answering::ByteByByte);
    }

    /// Stops reading and answering; connections still come about, as with a stopped process.
    pub fn freeze(&self) {
        self.shared.change(|state| state.frozen = true);
    }

    /// Takes up again what [`Service::freeze`] left.
    pub fn thaw(&self) {
        self.shared.change(|state| state.frozen = false);
    }

    /// Ends everything being spoken that has begun.
    pub fn end_speech(&self) {
        self.shared.change(|state| {
            for message in &mut state.speaking {
                message.ends = Some(Instant::now());
            }
        });
    }

    /// Closes all connections and removes the socket.
    pub fn kill(&self) {
        let streams = self.shared.change(|state| {
            state.alive = false;
            state.frozen = false;
            state.life += 1;
            state.speaking.clear();
            std::mem::take(&mut state.streams)
        });
        let path = self.path();
        // Wakes the thread that waits for connections, so that it sees that its life is over.
        let _ = UnixStream::connect(&path);
        let _ = std::fs::remove_file(&path);
        for stream in streams {
            let _ = stream.shutdown(Shutdown::Both);
        }
    }

    /// Starts the service, which counts its messages and clients anew; the record goes on.
    pub fn restart(&self) {
        let listener = UnixListener::bind(self.path()).expect("a socket in a fresh folder");
        let life = self.shared.change(|state| {
            state.alive = true;
            state.last_message = 0;
            state.last_client = 0;
            state.life
        });
        let shared = Arc::clone(&self.shared);
        thread::spawn(move || listen(&shared, &listener, life));
        let shared = Arc::clone(&self.shared);
        thread::spawn(move || speak(&shared, life));
    }

    /// The next text that has not been given yet; `None` when none comes in time.
    pub fn next_text(&self, deadline: Duration) -> Option<String> {
        self.shared.wait(deadline, |state| {
            let text = texts(&state.events).nth(state.given)?.to_owned();
            state.given += 1;
            Some(text)
        })
    }

    /// All texts so far, over all clients and lives.
    pub fn texts(&self) -> Vec<String> {
        texts(&self.shared.lock().events)
            .map(str::to_owned)
            .collect()
    }

    /// The whole record so far.
    pub fn events(&self) -> Vec<Event> {
        self.shared.lock().events.clone()
    }

    /// Waits for an event; `false` when it has not happened in time. It may have happened before.
    pub fn happens(&self, deadline: Duration, wanted: impl Fn(&Event) -> bool) -> bool {
        self.shared
            .wait(deadline, |state| {
                state.events.iter().any(&wanted).then_some(())
            })
            .is_some()
    }
}

impl Drop for Service {
    fn drop(&mut self) {
        if self.shared.lock().alive {
            self.kill();
        }
    }
}

fn texts(events: &[Event]) -> impl Iterator<Item = &str> {
    events.iter().filter_map(|event| match event {
        Event::Text(_, text) => Some(text.as_str()),
        _ => None,
    })
}

fn listen(shared: &Arc<Shared>, listener: &UnixListener, life: u64) {
    for stream in listener.incoming() {
        let Ok(stream) = stream else { return };
        let Ok(spare) = stream.try_clone() else {
            return;
        };
        let client = shared.change(|state| {
            (state.life == life).then(|| {
                state.last_client += 1;
                state.streams.push(spare);
                state.events.push(Event::Connected(state.last_client));
                state.last_client
            })
        });
        let Some(client) = client else { return };
        let shared = Arc::clone(shared);
        thread::spawn(move || {
            // A client that hangs up ends its conversation.
            let _ = Conversation::new(shared, stream, client, life).and_then(Conversation::hold);
        });
    }
}

/// Begins and ends the messages when their time has come.
fn speak(shared: &Shared, life: u64) {
    let mut state = shared.lock();
    while state.life == life {
        let now = Instant::now();
        let mut told = Vec::new();
        if !state.frozen {
            let speech = state.speech;
            state.speaking.retain_mut(|message| {
                if !message.begun && speech != Speech::Dumb {
                    message.begun = true;
                    if let Speech::Lasts(time) = speech {
                        message.ends = Some(now + time);
                    }
                    message.tell(701, "BEGIN");
                    told.push(Event::Began(message.id));
                }
                let over = message.begun && message.ends.is_some_and(|ends| ends <= now);
                if over {
                    message.tell(702, "END");
                    told.push(Event::Ended(message.id));
                }
                !over
            });
        }
        if !told.is_empty() {
            state.events.extend(told);
            shared.changed.notify_all();
        }
        let next = state
            .speaking
            .iter()
            .filter_map(|message| message.ends)
            .min();
        let wait = match next {
            Some(next) if !state.frozen && next > now => next - now,
            _ => Duration::from_secs(3600),
        };
        state = shared
            .changed
            .wait_timeout(state, wait)
            .unwrap_or_else(PoisonError::into_inner)
            .0;
    }
}

impl Message {
    fn tell(&self, code: u16, name: &str) {
        let (id, client) = (self.id, self.client);
        send(
            &self.line,
            &format!("{code}-{id}\r\n{code}-{client}\r\n{code} {name}\r\n"),
        );
    }
}

/// A client that has hung up need not be told.
fn send(line: &Mutex<UnixStream>, text: &str) {
    let mut stream = line.lock().unwrap_or_else(PoisonError::into_inner);
    let _ = stream.write_all(text.as_bytes());
}

/// The connection of one client, and what it was told so far.
struct Conversation {
    shared: Arc<Shared>,
    input: BufReader<UnixStream>,
    line: Arc<Mutex<UnixStream>>,
    client: u64,
    life: u64,
    /// The engine that it has set.
    engine: Option<String>,
}

impl Conversation {
    fn new(
        shared: Arc<Shared>,
        stream: UnixStream,
        client: u64,
        life: u64,
    ) -> std::io::Result<Self> {
        let output = Arc::new(Mutex::new(stream.try_clone()?));
        Ok(Self {
            shared,
            input: BufReader::new(stream),
            line: output,
            client,
            life,
            engine: None,
        })
    }

    /// The next line without its end, once the service is not frozen; `None` at the end.
    fn read(&mut self) -> std::io::Result<Option<String>> {
        let mut bytes = Vec::new();
        if self.input.read_until(b'\n', &mut bytes)? == 0 {
            return Ok(None);
        }
        let life = self.life;
        let alive = self.shared.wait(Duration::from_secs(3600), |state| {
            (!state.frozen || state.life != life).then_some(state.life == life)
        });
        let text = String::from_utf8_lossy(&bytes);
        Ok((alive == Some(true)).then(|| text.trim_end_matches(['\r', '\n']).to_owned()))
    }

    fn hold(mut self) -> std::io::Result<()> {
        while let Some(command) = self.read()? {
            let client = self.client;
            self.shared.change(|state| {
                state.events.push(Event::Command(client, command.clone()));
            });
            let upper = command.to_ascii_uppercase();
            let mut words = upper.split_whitespace();
            match (
                words.next().unwrap_or_default(),
                words.next().unwrap_or_default(),
            ) {
                ("SPEAK", _) => {
                    self.answer("230 OK RECEIVING DATA");
                    if !self.take_text()? {
                        break;
                    }
                }
                ("CANCEL" | "STOP", _) => {
                    self.answer("210 OK CANCELED");
                    self.cancel();
                }
                ("HISTORY", _) => self.answer(&format!("245-{client}\r\n245 OK CLIENT ID SENT")),
                ("LIST", "SYNTHESIS_VOICES") => {
                    let voices = self.voices();
                    let list: Vec<_> = voices
                        .iter()
                        .map(|(name, language)| format!("249-{name}\t{language}\tnone\r\n"))
                        .collect();
                    self.answer(&format!("{}249 OK VOICE LIST SENT", list.concat()));
                }
                ("LIST", "OUTPUT_MODULES") if self.has_engines() => {
                    let engines = self.shared.lock().engines.clone();
                    let names = engines.iter().map(|(name, _)| format!("250-{name}\r\n"));
                    let names: String = names.collect();
                    self.answer(&format!("{names}250 OK MODULE LIST SENT"));
                }
                ("GET", "OUTPUT_MODULE") if self.has_engines() => {
                    let engine = self.engine.clone();
                    let engine = engine.unwrap_or_else(|| self.shared.lock().engines[0].0.clone());
                    self.answer(&format!("251-{engine}\r\n251 OK GET RETURNED"));
                }
                ("SET", "SELF") if upper.contains(" OUTPUT_MODULE ") => {
                    self.engine = command.split_whitespace().last().map(str::to_owned);
                    self.answer("216 OK OUTPUT MODULE SET");
                }
                ("SET", _) => self.answer("208 OK SET"),
                ("QUIT", _) => {
                    self.answer("231 HAPPY HACKING");
                    break;
                }
                _ => self.answer("300 ERR INVALID COMMAND"),
            }
        }
        Ok(())
    }

    fn has_engines(&self) -> bool {
        !self.shared.lock().engines.is_empty()
    }

    /// The voices of the engine that this client has set, or of the first where there is none of that
    /// name; all of a service without engines.
    fn voices(&self) -> Vec<(String, String)> {
        let state = self.shared.lock();
        let is_set = |(name, _): &&(String, _)| Some(name) == self.engine.as_ref();
        let engine = state.engines.iter().find(is_set);
        let engine = engine.or(state.engines.first());
        engine.map_or_else(|| state.voices.clone(), |(_, voices)| voices.clone())
    }

    /// Reads the lines of a text to its lone dot; `false` when the client hangs up before it.
    fn take_text(&mut self) -> std::io::Result<bool> {
        let mut lines = Vec::new();
        loop {
            match self.read()? {
                None => return Ok(false),
                Some(line) if line == "." => break,
                Some(line) => {
                    let undone = line.strip_prefix('.').filter(|rest| rest.starts_with('.'));
                    lines.push(undone.map_or(line.clone(), str::to_owned));
                }
            }
        }
        let (client, line) = (self.client, Arc::clone(&self.line));
        let mut state = self.shared.lock();
        state.last_message += 1;
        let id = state.last_message;
        state.events.push(Event::Text(id, lines.join("\n")));
        self.answer_as(&mut state, &format!("225-{id}\r\n225 OK MESSAGE QUEUED"));
        state.speaking.push(Message {
            id,
            client,
            begun: false,
            ends: None,
            line,
        });
        drop(state);
        self.shared.changed.notify_all();
        Ok(true)
    }

    fn cancel(&self) {
        let client = self.client;
        self.shared.change(|state| {
            let (own, others) = std::mem::take(&mut state.speaking)
                .into_iter()
                .partition::<Vec<_>, _>(|message| message.client == client);
            state.speaking = others;
            for message in own {
                message.tell(703, "CANCELED");
                state.events.push(Event::Cancelled(message.id));
            }
        });
    }

    fn answer(&self, text: &str) {
        self.answer_as(&mut self.shared.lock(), text);
    }

    fn answer_as(&self, state: &mut State, text: &str) {
        let instead = match &mut state.instead {
            Some((good, _)) if *good > 0 => {
                *good -= 1;
                None
            }
            instead => instead.take(),
        };
        let answer =
            instead.map_or_else(|| format!("{text}\r\n").into_bytes(), |(_, answer)| answer);
        let pieces = if state.answering == Answering::ByteByByte {
            1
        } else {
            answer.len().max(1)
        };
        let mut stream = self.line.lock().unwrap_or_else(PoisonError::into_inner);
        for piece in answer.chunks(pieces) {
            // A client that has hung up need not be told.
            let _ = stream.write_all(piece);
        }
        if state.answering == Answering::HangingUp && !answer.ends_with(b"\n") {
            let _ = stream.shutdown(Shutdown::Both);
        }
    }
}
