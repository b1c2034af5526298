//! The windows of the system in which files are chosen: a real bus, and on it a portal that answers,
//! refuses, calls off, goes away, says nothing, or answers what is no answer.
#![cfg(all(feature = "window", target_os = "linux"))]

#[path = "support/bus.rs"]
mod bus;

use std::fs;
use std::io::Read as _;
use std::os::fd::OwnedFd;
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, Receiver};
use std::sync::{Arc, Mutex};
use std::thread::{self, JoinHandle};
use std::time::{Duration, Instant};

use bus::Bus;
use dbus::arg::{PropMap, RefArg, Variant};
use dbus::blocking::Connection;
use dbus::blocking::stdintf::org_freedesktop_dbus::RequestNameReply;
use dbus::channel::{Channel, MatchingReceiver as _, Sender as _};
use dbus::message::MatchRule;
use dbus::{Message, Path as ObjectPath};
use marlinspeak::app::{
    DialogError, FileDialogs as _, FileKind, OpenDialog, Portal as Dialogs, SaveDialog,
};
use tempfile::TempDir;

const PORTAL: &str = "org.freedesktop.portal.Desktop";
const DESKTOP: &str = "/org/freedesktop/portal/desktop";
const REQUEST: &str = "org.freedesktop.portal.Request";
const SOON: Duration = Duration::from_secs(30);
const TURN: Duration = Duration::from_millis(20);

fn dialogs(bus: &Bus) -> Dialogs {
    Dialogs::at(bus.address.clone())
}

/// What the portal does with a request.
#[derive(Clone, Debug)]
enum Manner {
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
struct Call {
    member: String,
    title: String,
    options: PropMap,
    /// What was in the file that was handed over.
    content: String,
}

/// A portal on the bus.
struct Portal {
    calls: Receiver<Call>,
    is_over: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
}

impl Portal {
    fn start(bus: &Bus, manner: Manner) -> Self {
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

    fn call(&self) -> Call {
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
        fs::File::from(file)
            .read_to_string(&mut call.content)
            .unwrap();
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

fn save() -> SaveDialog {
    SaveDialog {
        title: "Where the card goes".to_owned(),
        name: "Tiller, card.pdf".to_owned(),
        folder: Some(PathBuf::from("/loft/papers")),
        kind: FileKind {
            name: "PDF".to_owned(),
            endings: &["pdf"],
        },
    }
}

fn open() -> OpenDialog {
    OpenDialog {
        title: "Choose the photograph".to_owned(),
        kind: FileKind {
            name: "JPEG, PNG".to_owned(),
            endings: &["jpg", "png"],
        },
    }
}

fn go_on() -> AtomicBool {
    AtomicBool::new(false)
}

#[test]
fn what_is_chosen_is_the_path_and_the_portal_is_told_what_for() {
    let bus = Bus::start();
    let chosen = "file:///loft/papers/bell%20rope.pdf".to_owned();
    let portal = Portal::start(&bus, Manner::Answers(0, vec![chosen]));
    let path = dialogs(&bus).save(&save(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/papers/bell rope.pdf")));
    let call = portal.call();
    assert_eq!(
        (&*call.member, &*call.title),
        ("SaveFile", "Where the card goes")
    );
    let name = call.options["current_name"].0.as_str();
    assert_eq!(name, Some("Tiller, card.pdf"));
    let folder: Vec<u64> = call.options["current_folder"]
        .0
        .as_iter()
        .unwrap()
        .map(|byte| byte.as_u64().unwrap())
        .collect();
    let expected: Vec<u64> = b"/loft/papers\0"
        .iter()
        .map(|byte| (*byte).into())
        .collect();
    assert_eq!(folder, expected);

    let path = dialogs(&bus).open(&open(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/papers/bell rope.pdf")));
    let call = portal.call();
    assert_eq!(
        (&*call.member, &*call.title),
        ("OpenFile", "Choose the photograph")
    );
    let filters = format!("{:?}", call.options["filters"]);
    for form in ["*.jpg", "*.JPG", "*.png", "JPEG, PNG"] {
        assert!(filters.contains(form), "{form}: {filters}");
    }
}

#[test]
fn a_portal_that_answers_at_a_place_of_its_own_is_heard() {
    let bus = Bus::start();
    let uri = "file:///loft/card.pdf".to_owned();
    let _portal = Portal::start(&bus, Manner::AnswersElsewhere(uri));
    let path = dialogs(&bus).save(&save(), &go_on()).unwrap();
    assert_eq!(path, Some(PathBuf::from("/loft/card.pdf")));
}

#[test]
fn who_calls_it_off_gets_no_path_and_no_trouble() {
    let bus = Bus::start();
    let _portal = Portal::start(&bus, Manner::Answers(1, Vec::new()));
    assert_eq!(dialogs(&bus).save(&save(), &go_on()), Ok(None));
    assert_eq!(dialogs(&bus).open(&open(), &go_on()), Ok(None));
}

#[test]
fn a_portal_that_says_nothing_is_waited_for_until_the_tyer_gives_up() {
    let bus = Bus::start();
    let portal = Portal::start(&bus, Manner::IsSilent);
    let stop = Arc::new(go_on());
    let (dialogs, raised) = (dialogs(&bus), Arc::clone(&stop));
    let waiting = thread::spawn(move || dialogs.save(&save(), &raised));
    assert_eq!(portal.call().member, "SaveFile");
    assert!(!waiting.is_finished());
    stop.store(true, Ordering::Relaxed);
    assert_eq!(waiting.join().unwrap(), Ok(None));
    // Its window does not stay.
    assert_eq!(portal.call().member, "Close");
}

#[test]
fn where_no_window_comes_the_path_is_to_be_typed() {
    let bus = Bus::start();
    let unavailable = |told: Result<Option<PathBuf>, DialogError>, why: &str| {
        assert!(
            matches!(told, Err(DialogError::Unavailable(_))),
            "{why}: {told:?}"
        );
    };
    unavailable(dialogs(&bus).save(&save(), &go_on()), "no portal");
    let nowhere = Dialogs::at("unix:path=/nonexistent/bus".to_owned());
    unavailable(nowhere.save(&save(), &go_on()), "no bus");
    for manner in [
        Manner::Refuses,
        Manner::GoesAway,
        Manner::Answers(2, Vec::new()),
    ] {
        let _portal = Portal::start(&bus, manner.clone());
        let told = dialogs(&bus).save(&save(), &go_on());
        unavailable(told, &format!("{manner:?}"));
    }
}

#[test]
fn an_answer_that_names_no_file_is_no_answer() {
    let bus = Bus::start();
    let one = |uri: &str| Manner::Answers(0, vec![uri.to_owned()]);
    for manner in [
        Manner::Babbles,
        Manner::Answers(7, Vec::new()),
        Manner::Answers(0, Vec::new()),
        one("https://loft.example/card.pdf"),
        one("file://other-machine/card.pdf"),
        one("card.pdf"),
        one(""),
    ] {
        let _portal = Portal::start(&bus, manner.clone());
        let told = dialogs(&bus).open(&open(), &go_on());
        assert!(
            matches!(told, Err(DialogError::Nonsense(_))),
            "{manner:?}: {told:?}"
        );
    }
}

#[test]
fn what_was_made_is_handed_over_to_be_opened() {
    let bus = Bus::start();
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("card.pdf");
    fs::write(&file, "a card").unwrap();
    {
        let portal = Portal::start(&bus, Manner::Answers(0, Vec::new()));
        assert_eq!(dialogs(&bus).show(&file), Ok(()));
        let call = portal.call();
        assert_eq!((&*call.member, &*call.content), ("OpenFile", "a card"));
    }
    let _portal = Portal::start(&bus, Manner::Answers(2, Vec::new()));
    let told = dialogs(&bus).show(&file);
    assert!(matches!(told, Err(DialogError::Unavailable(_))), "{told:?}");
    let told = dialogs(&bus).show(&folder.path().join("none.pdf"));
    assert!(matches!(told, Err(DialogError::Unavailable(_))), "{told:?}");
}
