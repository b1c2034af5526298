//! One connection: commands go out, answers are waited for, reports come on a thread of their own.

use std::io::{BufReader, Write as _};
use std::sync::mpsc::{self, Receiver, Sender};
use std::thread;
use std::time::Duration;

use super::address::Wire;
use super::answer::{self, Answer, Unreadable};
use crate::voice::engine::{CallError, EventSink, MessageKey, SpeechEvent};
use crate::voice::pending_events::PendingEvents;
use crate::voice::speakable::SpeakableText;

/// The codes of those answers and reports that make a difference here.
const DATA_WANTED: u16 = 230;
const QUEUED: u16 = 225;
const VOICES: u16 = 249;
const ENGINES: u16 = 250;
const SETTING: u16 = 251;
const BEGAN: u16 = 701;
const ENDED: u16 = 702;
const CANCELLED: u16 = 703;

/// How long an answer may take before the connection is given up. Whoever asked has long gone on by
/// then; but each thread that waits for ever takes the place of another connection.
const LONGEST_ANSWER: Duration = Duration::from_secs(15);

/// A connection to the speech service, owned by one thread.
pub(in crate::voice) struct Link {
    wire: Wire,
    answers: Receiver<Result<Answer, Unreadable>>,
    pending: Option<PendingEvents>,
}

impl Link {
    /// Connects, and has the service report what happens to its texts. `name` tells this
    /// connection from others of the program.
    pub(in crate::voice) fn open(name: &str, events: &EventSink) -> Result<Self, CallError> {
        let wire = Wire::open().map_err(|error| CallError::Gone(error.to_string()))?;
        Self::over(wire, name, events)
    }

    fn over(wire: Wire, name: &str, events: &EventSink) -> Result<Self, CallError> {
        let gone = |error: std::io::Error| CallError::Gone(error.to_string());
        let reading = wire.try_clone().map_err(gone)?;
        let (pending, over) = PendingEvents::none();
        let (tell, answers) = mpsc::channel();
        let events = events.clone();
        thread::Builder::new()
            .name("speech reports".to_owned())
            .spawn(move || listen(reading, &tell, &events, &over))
            .map_err(gone)?;
        let mut link = Self {
            wire,
            answers,
            pending: Some(pending),
        };
        link.set(&format!("CLIENT_NAME tyer:marlinspeak:{name}"))?;
        link.set("PRIORITY IMPORTANT")?;
        for report in ["BEGIN", "END", "CANCEL"] {
            link.set(&format!("NOTIFICATION {report} ON"))?;
        }
        Ok(link)
    }

    /// Sets something for this connection.
    pub(in crate::voice) fn set(&mut self, what: &str) -> Result<(), CallError> {
        self.ask(&format!("SET SELF {what}")).map(drop)
    }

    /// Stops everything that this connection says. Where all of it is over nothing is asked for, so that the
    /// next text is at the service sooner.
    pub(in crate::voice) fn cancel(&mut self) -> Result<(), CallError> {
        let pending = self.pending.as_mut();
        if pending.is_some_and(PendingEvents::is_quiet) {
            return Ok(());
        }
        self.ask("CANCEL SELF").map(drop)
    }

    /// Has a text said, and gives its name at the service.
    pub(in crate::voice) fn speak(
        &mut self,
        text: &SpeakableText,
    ) -> Result<MessageKey, CallError> {
        if self.ask("SPEAK")?.code != DATA_WANTED {
            return Err(out_of_step());
        }
        // In the protocol a line of a single dot ends the text, so a dot that begins the text is
        // doubled.
        let text = text.as_str();
        let dot = if text.starts_with('.') { "." } else { "" };
        let queued = self.ask(&format!("{dot}{text}\r\n."))?;
        match (queued.code, queued.data.first()) {
            (QUEUED, Some(id)) => {
                self.pending.iter_mut().for_each(PendingEvents::add_speech);
                Ok(MessageKey(id.clone()))
            }
            _ => Err(out_of_step()),
        }
    }

    /// The voices by name and language.
    pub(in crate::voice) fn voices(&mut self) -> Result<Vec<(String, String)>, CallError> {
        let answer = self.ask("LIST SYNTHESIS_VOICES")?;
        if answer.code != VOICES {
            return Err(out_of_step());
        }
        let named = answer.data.iter().map(|line| {
            let mut fields = line.split('\t').map(str::to_owned);
            let (name, language) = (fields.next(), fields.next());
            (name.unwrap_or_default(), language.unwrap_or_default())
        });
        Ok(named.collect())
    }

    /// The engines of the service; none where it tells of none.
    pub(in crate::voice) fn engines(&mut self) -> Result<Vec<String>, CallError> {
        self.told("LIST OUTPUT_MODULES", ENGINES)
    }

    /// The engine that speaks on this connection, where the service tells.
    pub(in crate::voice) fn engine(&mut self) -> Result<Option<String>, CallError> {
        Ok(self.told("GET OUTPUT_MODULE", SETTING)?.into_iter().next())
    }

    /// What the answer to a question holds, a line each; nothing where the service does not know it.
    fn told(&mut self, question: &str, code: u16) -> Result<Vec<String>, CallError> {
        match self.ask(question) {
            Ok(answer) if answer.code == code => Ok(answer.data),
            Ok(_) => Err(out_of_step()),
            Err(CallError::Refused(_)) => Ok(Vec::new()),
            Err(gone) => Err(gone),
        }
    }

    /// Sends a command and waits for its answer.
    fn ask(&mut self, command: &str) -> Result<Answer, CallError> {
        match self.answers.try_recv() {
            Ok(Ok(_)) => return Err(out_of_step()),
            Ok(Err(reason)) => return Err(self.gone(reason.to_string())),
            Err(_) => {}
        }
        let sent = self.wire.write_all(format!("{command}\r\n").as_bytes());
        sent.map_err(|error| self.gone(error.to_string()))?;
        match self.answers.recv_timeout(LONGEST_ANSWER) {
            Ok(Ok(answer)) if answer.is_yes() => Ok(answer),
            Ok(Ok(answer)) => Err(CallError::Refused(answer.end)),
            Ok(Err(reason)) => Err(self.gone(reason.to_string())),
            Err(_) => Err(self.gone(Unreadable::HungUp.to_string())),
        }
    }

    /// Nothing more will come of this connection.
    fn gone(&mut self, reason: String) -> CallError {
        self.pending.iter_mut().for_each(PendingEvents::mark_broken);
        CallError::Gone(reason)
    }
}

impl Drop for Link {
    /// Waits a moment, so that the end of what was being said can still be reported.
    fn drop(&mut self) {
        if let Some(pending) = self.pending.take() {
            pending.wait();
        }
        self.wire.hang_up();
    }
}

/// The service has given an answer to something that was not asked. From here on its answers cannot
/// be matched with the commands.
fn out_of_step() -> CallError {
    CallError::Gone("it answers what it was not asked".to_owned())
}

/// Hands on what the service sends, until that cannot be read.
fn listen(
    reading: Wire,
    tell: &Sender<Result<Answer, Unreadable>>,
    events: &EventSink,
    over: &Sender<()>,
) {
    let mut service = BufReader::new(reading);
    loop {
        let answer = answer::read(&mut service);
        let is_end = answer.is_err();
        match answer {
            Ok(report) if report.is_report() => hear(&report, events, over),
            answer => {
                if tell.send(answer).is_err() {
                    return;
                }
            }
        }
        if is_end {
            service.get_ref().hang_up();
            return;
        }
    }
}

fn hear(report: &Answer, events: &EventSink, over: &Sender<()>) {
    let Some(id) = report.data.first() else {
        return;
    };
    let key = MessageKey(id.clone());
    let event = match report.code {
        BEGAN => SpeechEvent::Began(key),
        ENDED => SpeechEvent::Ended(key),
        CANCELLED => SpeechEvent::Stopped(key),
        _ => return,
    };
    let is_over = report.code != BEGAN;
    events.send(event);
    if is_over {
        // Somebody waits for it only while the connection is being dropped.
        let _ = over.send(());
    }
}

#[cfg(test)]
mod tests {
    use std::io::BufRead as _;
    use std::os::unix::net::UnixStream;

    use super::*;

    /// What a well-behaved service answers to the first commands of a connection and one text.
    const ANSWERS: [&[u8]; 8] = [
        b"208 OK CLIENT NAME SET\r\n",
        b"202 OK PRIORITY SET\r\n",
        b"220 OK NOTIFICATION SET\r\n",
        b"220 OK NOTIFICATION SET\r\n",
        b"220 OK NOTIFICATION SET\r\n",
        b"230 OK RECEIVING DATA\r\n",
        b"225-1\r\n225 OK MESSAGE QUEUED\r\n",
        b"218 OK VOLUME SET\r\n",
    ];

    /// Connects to a service that gives these answers, has it say something and asks once more.
    fn talk(answers: Vec<Vec<u8>>) -> Result<MessageKey, CallError> {
        let (here, there) = UnixStream::pair().unwrap();
        let service = thread::spawn(move || {
            let mut output = there.try_clone().unwrap();
            let mut lines = BufReader::new(there).lines();
            for answer in answers {
                let Some(Ok(line)) = lines.next() else { return };
                // The text takes a line of its own before the dot that ends it.
                if line == "Over one." && lines.next().is_none() {
                    return;
                }
                if output.write_all(&answer).is_err() {
                    return;
                }
            }
        });
        let events = EventSink::new(|_| {});
        let said = Link::over(Wire::Unix(here), "test", &events).and_then(|mut link| {
            let text = SpeakableText::from_raw("Over one.").unwrap();
            let key = link.speak(&text)?;
            link.set("VOLUME 100")?;
            link.pending = None;
            Ok(key)
        });
        service.join().unwrap();
        said
    }

    fn answers() -> Vec<Vec<u8>> {
        ANSWERS.map(<[u8]>::to_vec).to_vec()
    }

    #[test]
    fn a_text_has_the_name_that_the_service_gives_it() {
        assert_eq!(talk(answers()), Ok(MessageKey("1".to_owned())));
    }

    #[test]
    fn a_thousand_hostile_answers_end_a_connection_at_most() {
        let long = [b"249-".to_vec(), vec![b'a'; 70_000]].concat();
        let hostile: [Vec<u8>; 9] = [
            b"\r\n".to_vec(),
            b"\n".to_vec(),
            b"2\r\n".to_vec(),
            b"208\r\n".to_vec(),
            b"\xff\x00\x1b[2J\r\n".to_vec(),
            b"500 ERR INTERNAL\r\n".to_vec(),
            b"999 \r\n".to_vec(),
            b"701 BEGIN\r\n208 OK\r\n".to_vec(),
            long,
        ];
        let (mut told, mut ended) = (0, 0);
        let mut check = |answers: Vec<Vec<u8>>| {
            told += 1;
            ended += usize::from(talk(answers).is_err());
        };
        for (at, good) in ANSWERS.iter().enumerate() {
            let with = |answer: Vec<u8>| {
                let mut all = answers();
                all[at] = answer;
                all
            };
            for answer in &hostile {
                check(with(answer.clone()));
            }
            // Twice, and with every byte damaged in several ways.
            check(with(good.repeat(2)));
            for byte in 0..good.len() {
                for mask in [1, 4, 16, 64, 128, 255] {
                    let mut answer = good.to_vec();
                    answer[byte] ^= mask;
                    // A line that does not end is one that never comes: the supervisor's affair.
                    answer.extend_from_slice(b"\n");
                    check(with(answer));
                }
            }
            // Hung up in the middle of it.
            for length in 0..good.len() {
                let mut cut: Vec<_> = answers().into_iter().take(at).collect();
                cut.push(good[..length].to_vec());
                check(cut);
            }
        }
        assert!(told > 1000 && ended > told / 4, "{ended} of {told}");
    }
}
