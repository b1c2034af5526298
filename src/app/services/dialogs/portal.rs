//! The desktop portal over D-Bus (`org.freedesktop.portal.FileChooser`, `OpenURI` and `Request`,
//! documented by the XDG desktop portal), which shows the file window of whichever desktop runs.

use std::fs::File;
use std::os::fd::OwnedFd;
use std::os::unix::ffi::OsStrExt as _;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::mpsc::{self, Receiver, Sender};
use std::time::{Duration, Instant};

use dbus::Path as ObjectPath;
use dbus::arg::{AppendAll, PropMap, RefArg, Variant};
use dbus::blocking::{Connection, Proxy};
use dbus::channel::Channel;
use dbus::message::MatchRule;

use super::uri::path_of;
use super::{DialogError, FileDialogs, FileKind, OpenDialog, SaveDialog};

const PORTAL: &str = "org.freedesktop.portal.Desktop";
const DESKTOP: &str = "/org/freedesktop/portal/desktop";
const CHOOSER: &str = "org.freedesktop.portal.FileChooser";
const OPENER: &str = "org.freedesktop.portal.OpenURI";
const REQUEST: &str = "org.freedesktop.portal.Request";

/// How long the portal may take to take a request: it may have to be started for it.
const PATIENCE: Duration = Duration::from_secs(10);
/// How often it is looked whether the tyer has given up waiting for an answer.
const LOOK: Duration = Duration::from_millis(200);
/// How long it is listened whether a file could be opened. A window that asks for a program may stay for
/// ever, and nobody waits for that.
const OPENED: Duration = Duration::from_secs(20);

/// The desktop portal of a session.
#[derive(Clone, Debug, Default)]
pub struct Portal {
    /// The address of its bus, where it is not that of the session.
    address: Option<String>,
}

/// What came of a request.
#[derive(Debug)]
enum PortalAnswer {
    /// Done: these addresses were chosen, if any were asked for.
    Chosen(Vec<String>),
    /// The tyer thought better of it.
    Cancelled,
    /// The portal ended it in another way.
    Ended,
    /// It is no answer.
    Nonsense,
    /// The portal has left the bus.
    Gone,
}

impl Portal {
    /// The one of the session.
    pub const fn of_session() -> Self {
        Self { address: None }
    }

    /// The one on the bus at this address.
    pub const fn at(address: String) -> Self {
        Self {
            address: Some(address),
        }
    }

    fn connect(&self) -> Result<Connection, DialogError> {
        let connected = match &self.address {
            None => Connection::new_session(),
            Some(address) => Channel::open_private(address).and_then(|mut channel| {
                channel.register()?;
                Ok(channel.into())
            }),
        };
        connected.map_err(|error| unavailable(&error))
    }

    /// Has a file chosen in a window of this method.
    fn choose(
        &self,
        method: &'static str,
        title: &str,
        options: PropMap,
        stop: &AtomicBool,
    ) -> Result<Option<PathBuf>, DialogError> {
        let request = PortalRequest::begin(self.connect()?, options, |token| {
            (CHOOSER, method, ("", title, token))
        })?;
        match request.answer(stop, None)? {
            None | Some(PortalAnswer::Cancelled) => Ok(None),
            Some(PortalAnswer::Chosen(uris)) => {
                let first = uris.first().map(String::as_str).unwrap_or_default();
                let path = path_of(first);
                path.map(Some)
                    .ok_or_else(|| DialogError::Nonsense(format!("“{first}”")))
            }
            Some(other) => Err(other.into()),
        }
    }
}

impl FileDialogs for Portal {
    fn save(&self, asked: &SaveDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        let mut options = options(&asked.kind);
        put(&mut options, "current_name", asked.name.clone());
        if let Some(folder) = &asked.folder {
            // A string of bytes that ends in nought.
            let mut bytes = folder.as_os_str().as_bytes().to_vec();
            bytes.push(0);
            put(&mut options, "current_folder", bytes);
        }
        self.choose("SaveFile", &asked.title, options, stop)
    }

    fn open(&self, asked: &OpenDialog, stop: &AtomicBool) -> Result<Option<PathBuf>, DialogError> {
        self.choose("OpenFile", &asked.title, options(&asked.kind), stop)
    }

    fn show(&self, file: &Path) -> Result<(), DialogError> {
        let open = File::open(file).map_err(|error| DialogError::Unavailable(error.to_string()))?;
        let open = OwnedFd::from(open);
        let request = PortalRequest::begin(self.connect()?, PropMap::new(), |token| {
            (OPENER, "OpenFile", ("", open, token))
        })?;
        let until = Instant::now() + OPENED;
        match request.answer(&AtomicBool::new(false), Some(until))? {
            None | Some(PortalAnswer::Chosen(_) | PortalAnswer::Cancelled) => Ok(()),
            Some(other) => Err(other.into()),
        }
    }
}

impl From<PortalAnswer> for DialogError {
    fn from(answer: PortalAnswer) -> Self {
        match answer {
            PortalAnswer::Nonsense => Self::Nonsense("not the answer to a request".to_owned()),
            PortalAnswer::Gone => Self::Unavailable("the portal has gone".to_owned()),
            other => Self::Unavailable(format!("the portal ended it: {other:?}")),
        }
    }
}

/// A request that the portal has taken.
struct PortalRequest {
    bus: Connection,
    handle: ObjectPath<'static>,
    answers: Receiver<PortalAnswer>,
}

impl PortalRequest {
    /// Asks the portal for something. `call` gives interface, method and arguments for the options,
    /// the token of the request among them.
    fn begin<A: AppendAll>(
        bus: Connection,
        mut options: PropMap,
        call: impl FnOnce(PropMap) -> (&'static str, &'static str, A),
    ) -> Result<Self, DialogError> {
        static REQUESTS: AtomicU32 = AtomicU32::new(0);
        let number = REQUESTS.fetch_add(1, Ordering::Relaxed);
        let token = format!("marlinspeak_{}_{number}", std::process::id());
        put(&mut options, "handle_token", token.clone());
        let (tell, answers) = mpsc::channel();
        // Before it is asked: the answer may come at once. Where the request lies follows from who asks.
        let caller = bus.unique_name().trim_start_matches(':').replace('.', "_");
        let expected = format!("{DESKTOP}/request/{caller}/{token}");
        let expected = ObjectPath::new(expected).map_err(DialogError::Nonsense)?;
        listen(&bus, expected.clone(), tell.clone())?;
        watch(&bus, tell.clone())?;
        let (interface, method, arguments) = call(options);
        let asked = proxy(&bus).method_call(interface, method, arguments);
        let (handle,): (ObjectPath<'static>,) = asked.map_err(|error| unavailable(&error))?;
        // A portal of before 0.9 chose the place itself.
        if handle != expected {
            listen(&bus, handle.clone(), tell)?;
        }
        Ok(Self {
            bus,
            handle,
            answers,
        })
    }

    /// What comes of it; none when `stop` was raised before, or the time is over.
    fn answer(
        &self,
        stop: &AtomicBool,
        until: Option<Instant>,
    ) -> Result<Option<PortalAnswer>, DialogError> {
        loop {
            if let Ok(answer) = self.answers.try_recv() {
                return Ok(Some(answer));
            }
            if until.is_some_and(|until| Instant::now() >= until) {
                return Ok(None);
            }
            if stop.load(Ordering::Relaxed) {
                self.close();
                return Ok(None);
            }
            self.bus
                .process(LOOK)
                .map_err(|error| unavailable(&error))?;
        }
    }

    /// Has the portal take its window away.
    fn close(&self) {
        let request = self.bus.with_proxy(PORTAL, &self.handle, PATIENCE);
        let closed: Result<(), dbus::Error> = request.method_call(REQUEST, "Close", ());
        if let Err(error) = closed {
            // It ends at the latest with the connection.
            log::warn!("the portal does not close its window: {error}");
        }
    }
}

/// Hands on the answer to the request at this place.
fn listen(
    bus: &Connection,
    request: ObjectPath<'static>,
    tell: Sender<PortalAnswer>,
) -> Result<(), DialogError> {
    let rule = MatchRule::new_signal(REQUEST, "Response").with_path(request);
    let heard = bus.add_match(rule, move |(): (), _, message| {
        let answer = message.read2::<u32, PropMap>();
        let answer = answer.map_or(PortalAnswer::Nonsense, |(code, results)| {
            read(code, &results)
        });
        // Whoever asked may have given up.
        tell.send(answer).is_ok()
    });
    heard.map(drop).map_err(|error| unavailable(&error))
}

/// Hands on that the portal has left the bus: then nobody is there to answer.
fn watch(bus: &Connection, tell: Sender<PortalAnswer>) -> Result<(), DialogError> {
    let rule = MatchRule::new_signal("org.freedesktop.DBus", "NameOwnerChanged");
    let heard = bus.add_match(
        rule,
        move |(name, _, new): (String, String, String), _, _| {
            if name != PORTAL || !new.is_empty() {
                return true;
            }
            tell.send(PortalAnswer::Gone).is_ok()
        },
    );
    heard.map(drop).map_err(|error| unavailable(&error))
}

/// What the two parts of an answer mean: 0 is done, 1 is called off.
fn read(code: u32, results: &PropMap) -> PortalAnswer {
    match code {
        0 => {
            let uris = results.get("uris").and_then(|uris| uris.0.as_iter());
            let uris = uris.into_iter().flatten();
            PortalAnswer::Chosen(
                uris.filter_map(|uri| Some(uri.as_str()?.to_owned()))
                    .collect(),
            )
        }
        1 => PortalAnswer::Cancelled,
        2 => PortalAnswer::Ended,
        _ => PortalAnswer::Nonsense,
    }
}

/// The options that show files of this kind.
fn options(kind: &FileKind) -> PropMap {
    // 0: by the form of the name. Cameras write endings in large letters too.
    let cases = |ending: &&str| [ending.to_lowercase(), ending.to_uppercase()];
    let forms = kind.endings.iter().flat_map(cases);
    let forms: Vec<(u32, String)> = forms.map(|ending| (0, format!("*.{ending}"))).collect();
    let mut options = PropMap::new();
    put(&mut options, "filters", vec![(kind.name.clone(), forms)]);
    put(&mut options, "modal", true);
    options
}

fn put(options: &mut PropMap, name: &str, value: impl RefArg + 'static) {
    options.insert(name.to_owned(), Variant(Box::new(value)));
}

fn proxy(bus: &Connection) -> Proxy<'_, &Connection> {
    bus.with_proxy(PORTAL, DESKTOP, PATIENCE)
}

fn unavailable(error: &dbus::Error) -> DialogError {
    DialogError::Unavailable(error.to_string())
}
