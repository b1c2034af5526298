//! The request over D-Bus: to the screen saver of the desktop (freedesktop.org, *Idle Inhibition
//! Service* 0.1), and to the login manager, which would send an idle machine to sleep (systemd,
//! *Inhibitor Locks*). Both are asked alike under X11 and Wayland; Wayland's own protocol for it wants
//! the surface of the window, which the window library does not hand out.

use std::os::fd::OwnedFd;
use std::time::Duration;

use dbus::Error;

use dbus::blocking::{Connection, Proxy};

use super::NAME;

const SCREEN_SAVER: &str = "org.freedesktop.ScreenSaver";
const LOGIN: &str = "org.freedesktop.login1";
/// How long each may take to answer.
const PATIENCE: Duration = Duration::from_secs(10);

/// A request that was granted; dropping it takes it back.
pub struct Request {
    session: Connection,
    cookie: u32,
    /// The login manager holds its lock until this is closed. None where no login manager runs: nobody
    /// sends an idle machine to sleep there.
    _lock: Option<OwnedFd>,
}

impl Request {
    /// Asks that the screen stays on, for a reason that the desktop may show.
    ///
    /// # Errors
    /// What the bus or the screen saver says.
    pub fn make(reason: &str) -> Result<Self, Error> {
        let session = Connection::new_session()?;
        Self::make_on(session, Connection::new_system(), reason)
    }

    fn make_on(
        session: Connection,
        system: Result<Connection, Error>,
        reason: &str,
    ) -> Result<Self, Error> {
        let (cookie,) =
            screen_saver(&session).method_call(SCREEN_SAVER, "Inhibit", (NAME, reason))?;
        let locked = system.and_then(|system| {
            let login = system.with_proxy(LOGIN, "/org/freedesktop/login1", PATIENCE);
            let (lock,) = login.method_call(
                "org.freedesktop.login1.Manager",
                "Inhibit",
                ("idle", NAME, reason, "block"),
            )?;
            Ok(lock)
        });
        let lock = locked
            .inspect_err(|error| log::info!("no lock of the login manager: {error}"))
            .ok();
        Ok(Self {
            session,
            cookie,
            _lock: lock,
        })
    }
}

impl Drop for Request {
    fn drop(&mut self) {
        let asked: Result<(), Error> =
            screen_saver(&self.session).method_call(SCREEN_SAVER, "UnInhibit", (self.cookie,));
        if let Err(error) = asked {
            // It ends at the latest with the connection.
            log::warn!("the screen saver does not take the request back: {error}");
        }
    }
}

fn screen_saver(session: &Connection) -> Proxy<'_, &Connection> {
    session.with_proxy(SCREEN_SAVER, "/org/freedesktop/ScreenSaver", PATIENCE)
}

#[cfg(test)]
#[path = "../../../../tests/support/bus.rs"]
mod session_bus;

#[cfg(test)]
mod tests {
    use std::io::{PipeReader, Read as _};
    use std::sync::mpsc::{self, Receiver};
    use std::thread;

    use dbus::Message;
    use dbus::channel::{Channel, MatchingReceiver as _, Sender as _};
    use dbus::message::MatchRule;

    use super::session_bus::Bus;
    use super::*;

    const SOON: Duration = Duration::from_secs(30);

    fn connect(bus: &Bus) -> Connection {
        let mut channel = Channel::open_private(&bus.address).unwrap();
        channel.register().unwrap();
        channel.into()
    }

    /// Answers for the screen saver and the login manager. The answers are what they are
    /// asked, and the other end of the lock that the login manager gives.
    fn serve(bus: &Bus, names: &[&str]) -> (Receiver<String>, PipeReader) {
        let server = connect(bus);
        for name in names {
            server.request_name(*name, false, false, true).unwrap();
        }
        let (tell, asked) = mpsc::channel();
        let (end, lock) = std::io::pipe().unwrap();
        let mut lock = Some(lock);
        let take = move |call: Message, server: &Connection| {
            let mut answer = call.method_return();
            let heard = if let Ok((app, reason)) = call.read2::<&str, &str>() {
                if let Ok((_, _, why, mode)) = call.read4::<&str, &str, &str, &str>() {
                    let lock = lock.take().expect("one lock");
                    answer = answer.append1(OwnedFd::from(lock));
                    format!("lock {app} for {reason}: {why}, {mode}")
                } else {
                    answer = answer.append1(7_u32);
                    format!("stay on for {app}: {reason}")
                }
            } else {
                format!("take back {:?}", call.read1::<u32>())
            };
            server.send(answer).unwrap();
            tell.send(heard).is_ok()
        };
        server.start_receive(MatchRule::new_method_call(), Box::new(take));
        thread::spawn(move || while server.process(SOON).is_ok() {});
        (asked, end)
    }

    #[test]
    fn the_screen_saver_and_the_login_manager_are_asked_and_told_when_it_is_over() {
        let bus = Bus::start();
        let (asked, mut lock) = serve(&bus, &[SCREEN_SAVER, LOGIN]);
        let reason = "Ein Knoten ist offen";
        let request = Request::make_on(connect(&bus), Ok(connect(&bus)), reason).unwrap();
        assert_eq!(
            [(); 2].map(|()| asked.recv_timeout(SOON).unwrap()),
            [
                "stay on for Marlinspeak: Ein Knoten ist offen",
                "lock idle for Marlinspeak: Ein Knoten ist offen, block"
            ]
        );
        drop(request);
        let told = asked.recv_timeout(SOON).unwrap();
        assert_eq!(told, "take back Ok(7)");
        // The lock is open nowhere any more.
        assert_eq!(lock.read(&mut [0]).unwrap(), 0);
    }

    #[test]
    fn the_screen_saver_alone_keeps_the_screen_on() {
        let bus = Bus::start();
        let (asked, _) = serve(&bus, &[SCREEN_SAVER]);
        // A bus without a login manager, and a system without a bus for it.
        for system in [Ok(connect(&bus)), Err(Error::new_failed("no such bus"))] {
            let request = Request::make_on(connect(&bus), system, "a tie").unwrap();
            drop(request);
            assert_eq!(
                [(); 2].map(|()| asked.recv_timeout(SOON).unwrap()),
                ["stay on for Marlinspeak: a tie", "take back Ok(7)"]
            );
        }
    }

    #[test]
    fn where_nobody_answers_it_is_refused() {
        let bus = Bus::start();
        let (_asked, _) = serve(&bus, &[LOGIN]);
        let refused = Request::make_on(connect(&bus), Ok(connect(&bus)), "");
        let error = refused.err().expect("nobody is there to grant it");
        assert!(error.to_string().contains(SCREEN_SAVER), "{error}");
    }
}
