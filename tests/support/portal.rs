//! A portal of a desktop on a bus of a test's own: it answers, refuses, calls off, goes away, is silent or
//! babbles.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::fs;
use std::io::Read as _;
use std::os::fd::OwnedFd;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, Receiver};
use std::sync::{Arc, Mutex};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use crate::bus::Bus;
use dbus::arg::{PropMap, RefArg, Variant};
use dbus::blocking::Connection;
use dbus::blocking::stdintf::org_freedesktop_dbus::RequestNameReply;
use dbus::channel::{Channel, MatchingReceiver as _, Sender as _};
use dbus::message::MatchRule;
use dbus::{Message, Path as ObjectPath};

const PORTAL: &str = "org.freedesktop.portal.Desktop";
const DESKTOP: &str = "/org/freedesktop/portal/desktop";
const REQUEST: &str = "org.freedesktop.portal.Request";
const SOON: Duration = Duration::from_secs(30);
const TURN: Duration = Duration::from_millis(20);

/// What the portal does with a request.
#[derive(Clone, Debug)]
pub enum Manner {
    /// Answers with this code and these addresses.
    Answers(u32, Vec<String>),
    /// Answers at another place than the caller has named, as portals of before 0.9 did.
    AnswersElsewhere(String),
    /// Answers with something else than a code and results.
    Babbles,
    /// Will not take it.
    Refuses,
    /// Takes it, and says nothing.
    IsSilent,
    /// Takes it, and leaves the bus.
    GoesAway,
}

/// A call that the portal was given.
#[derive(Debug)]
pub struct Call {
    pub member: String,
    pub title: String,
    pub options: PropMap,
    /// What was in the file that was handed over.
    pub content: String,
}

/// A portal on the bus.
pub struct Portal {
    calls: Receiver<Call>,
    is_over: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Portal {
    /// Begins to answer.
    pub fn start(bus: &Bus, manner: Manner) -> Self {
        let mut channel = Channel::open_private(&bus.address).unwrap();
        channel.register().unwrap();
        let server: Connection = channel.into();
        // A portal of before may still be leaving the bus.
        let since = Instant::now();
        while server.request_name(PORTAL, false, false, true).unwrap()
            != RequestNameReply::PrimaryOwner
        {
            assert!(since.elapsed() < SOON, "another portal is on the bus");
            thread::park_timeout(TURN);
        }
        let (tell, calls) = mpsc::channel();
        let is_over = Arc::<AtomicBool>::default();
        let leaves = Arc::new(Mutex::new(false));
        // Said again and again: the caller learns of the place with the answer to its call, and
        // listens there from then on.
        let repeated = Arc::new(Mutex::new(None::<Message>));
        let (over, left) = (Arc::clone(&is_over), Arc::clone(&leaves));
        let again = Arc::clone(&repeated);
        let take = move |message: Message, server: &Connection| {
            let call = read(&message);
            let is_close = call.member == "Close";
            let _ = tell.send(call);
            if is_close {
                server.send(message.method_return()).unwrap();
            } else {
                let signal = answer(&message, &manner, server);
                *repeated.lock().unwrap() = signal;
                *leaves.lock().unwrap() = matches!(manner, Manner::GoesAway);
            }
            true
        };
        server.start_receive(MatchRule::new_method_call(), Box::new(take));
        let thread = thread::spawn(move || {
            while !over.load(Ordering::Relaxed) && !*left.lock().unwrap() {
                server.process(TURN).unwrap();
                if let Some(signal) = &*again.lock().unwrap() {
                    server.send(signal.duplicate().unwrap()).unwrap();
                }
            }
        });
        Self {
            calls,
            is_over,
            thread: Some(thread),
        }
    }

    /// The next call that it is given.
    pub fn call(&self) -> Call {
        self.calls.recv_timeout(SOON).expect("the portal is called")
    }
}

impl Drop for Portal {
    fn drop(&mut self) {
        self.is_over.store(true, Ordering::Relaxed);
        if let Some(thread) = self.thread.take() {
            thread.join().unwrap();
        }
    }
}

fn read(message: &Message) -> Call {
    let member = message.member().unwrap().to_string();
    let mut call = Call {
        member,
        title: String::new(),
        options: PropMap::new(),
        content: String::new(),
    };
    if let Ok((_, title, options)) = message.read3::<&str, &str, PropMap>() {
        (call.title, call.options) = (title.to_owned(), options);
    } else if let Ok((_, file, options)) = message.read3::<&str, OwnedFd, PropMap>() {
        let mut content = Vec::new();
        fs::File::from(file).read_to_end(&mut content).unwrap();
        call.content = String::from_utf8_lossy(&content).into_owned();
        call.options = options;
    }
    call
}

/// Answers a request, and gives what is to be said again.
fn answer(message: &Message, manner: &Manner, server: &Connection) -> Option<Message> {
    if let Manner::Refuses = manner {
        let refusal = message.error(
            &"org.freedesktop.portal.Error.NotAllowed".into(),
            c"not in this loft",
        );
        server.send(refusal).unwrap();
        return None;
    }
    let options = read(message).options;
    let token = options["handle_token"].0.as_str().unwrap().to_owned();
    let caller = message.sender().unwrap().to_string();
    let place = caller.trim_start_matches(':').replace('.', "_");
    let place = match manner {
        Manner::AnswersElsewhere(_) => format!("{DESKTOP}/request/of_its_own"),
        _ => format!("{DESKTOP}/request/{place}/{token}"),
    };
    let place = ObjectPath::new(place).unwrap();
    server
        .send(message.method_return().append1(place.clone()))
        .unwrap();
    let response = || {
        let mut signal = Message::new_signal(&*place, REQUEST, "Response").unwrap();
        signal.set_destination(Some(caller.clone().into()));
        signal
    };
    let signal = match manner {
        Manner::Answers(code, uris) => response().append2(*code, results(uris)),
        Manner::AnswersElsewhere(uri) => {
            response().append2(0_u32, results(std::slice::from_ref(uri)))
        }
        Manner::Babbles => response().append2("a card", 7_i64),
        Manner::Refuses | Manner::IsSilent | Manner::GoesAway => return None,
    };
    if let Manner::AnswersElsewhere(_) = manner {
        return Some(signal);
    }
    server.send(signal).unwrap();
    None
}

fn results(uris: &[String]) -> PropMap {
    let mut results = PropMap::new();
    let uris: Box<dyn RefArg> = Box::new(uris.to_vec());
    results.insert("uris".to_owned(), Variant(uris));
    results
}
