//! A display without a screen, and hands on its keyboard.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::io::{BufRead, BufReader, Read};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::{Duration, Instant};

use x11rb::CURRENT_TIME;
use x11rb::connection::Connection;
use x11rb::protocol::Event;
use x11rb::protocol::xproto::{
    ChangeWindowAttributesAux, ClientMessageEvent, ConnectionExt, EventMask, ImageFormat,
};

/// How long anything on the display may take before the test gives up.
pub const DEADLINE: Duration = Duration::from_secs(60);

/// Where a program opens its window: X11 here, or Wayland in `compositor.rs`.
pub trait Desktop {
    /// Has a program that is to be started open its window here and nowhere else.
    fn admit(&self, program: &mut Command);

    /// Waits for a window of this title, and until it has the keys: a press from now on is for it.
    fn focus(&self, title: &str);
}

/// An X server of its own.
pub struct Display {
    server: Child,
    name: String,
}

impl Display {
    /// Dots in a row of it.
    pub const WIDTH: usize = 1280;

    /// Starts a server; it picks a number that is free and says so when it is ready.
    pub fn start() -> Self {
        let mut server = Command::new("Xvfb")
            .args([
                "-displayfd",
                "1",
                "-screen",
                "0",
                "1280x800x24",
                "-nolisten",
                "tcp",
                // The last program may be killed and another one started.
                "-noreset",
            ])
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("Xvfb is installed");
        let mut number = String::new();
        let out = server.stdout.take().unwrap();
        BufReader::new(out).read_line(&mut number).unwrap();
        Self {
            server,
            name: format!(":{}", number.trim()),
        }
    }

    /// What `DISPLAY` is to be for a program that opens its window here.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Waits for a window of this title, gives it the keys, and waits until it knows: a press
    /// from now on is for it.
    pub fn focus(&self, title: &str) {
        self.xdotool(&[
            "search",
            "--sync",
            "--onlyvisible",
            "--name",
            title,
            "windowfocus",
            "--sync",
        ]);
        self.wait_until_heard();
    }

    /// Waits until the window with the keys has heard of everything that was sent to it so far.
    /// It hears in order, and answers a ping in its turn (Extended Window Manager Hints 1.5,
    /// `_NET_WM_PING`).
    pub fn wait_until_heard(&self) {
        let (server, screen) = x11rb::connect(Some(&self.name)).unwrap();
        let root = server.setup().roots[screen].root;
        let atom = |name: &[u8]| {
            let asked = server.intern_atom(false, name).unwrap();
            asked.reply().unwrap().atom
        };
        let (protocols, ping) = (atom(b"WM_PROTOCOLS"), atom(b"_NET_WM_PING"));
        // Answers go to the root window.
        let listen = ChangeWindowAttributesAux::new().event_mask(EventMask::SUBSTRUCTURE_NOTIFY);
        let listening = server.change_window_attributes(root, &listen).unwrap();
        listening.check().unwrap();
        let window = server.get_input_focus().unwrap().reply().unwrap().focus;
        let words = [ping, CURRENT_TIME, window, 0, 0];
        let asked = ClientMessageEvent::new(32, window, protocols, words);
        let sent = server.send_event(false, window, EventMask::NO_EVENT, asked);
        sent.unwrap().check().unwrap();
        let until = Instant::now() + DEADLINE;
        loop {
            match server.poll_for_event().unwrap() {
                Some(Event::ClientMessage(answer)) if answer.data.as_data32() == words => return,
                Some(_) => {}
                None => {
                    assert!(Instant::now() < until, "the window does not answer");
                    // Between two looks, not instead of one.
                    thread::sleep(Duration::from_millis(5));
                }
            }
        }
    }

    /// Gives the keys to a window of another program.
    pub fn unfocus(&self) {
        // The root window, which any display has.
        self.xdotool(&["search", "--maxdepth", "0", ".*", "windowfocus"]);
    }

    /// Presses and lets go of a key by its X name.
    pub fn press(&self, key: &str) {
        self.xdotool(&["key", key]);
    }

    /// Presses and lets go of it so many times, without any pause.
    pub fn press_often(&self, key: &str, times: usize) {
        self.xdotool(&[&["key", "--delay", "0"][..], &vec![key; times]].concat());
    }

    /// All that is to be seen: red, green and blue of every dot.
    pub fn look(&self) -> Vec<[u8; 3]> {
        let (server, screen) = x11rb::connect(Some(&self.name)).unwrap();
        let screen = &server.setup().roots[screen];
        let size = [screen.width_in_pixels, screen.height_in_pixels];
        let asked = server.get_image(
            ImageFormat::Z_PIXMAP,
            screen.root,
            0,
            0,
            size[0],
            size[1],
            !0,
        );
        let picture = asked.unwrap().reply().unwrap();
        assert_eq!(picture.depth, 24, "blue, green, red and a byte of nothing");
        let (dots, _) = picture.data.as_chunks::<4>();
        let dots = dots
            .iter()
            .map(|[blue, green, red, _]| [*red, *green, *blue]);
        dots.collect()
    }

    /// Presses a key and keeps it down.
    pub fn hold(&self, key: &str) {
        self.xdotool(&["keydown", key]);
    }

    /// Lets go of a key.
    pub fn let_go(&self, key: &str) {
        self.xdotool(&["keyup", key]);
    }

    /// Watches every key event of the display from now on; the answer gives one unit a press,
    /// the server's own repeats of a held key among them.
    pub fn watch_presses(&self) -> Presses {
        let mut watcher = Command::new("xinput")
            .args(["test-xi2", "--root"])
            .env("DISPLAY", &self.name)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("xinput is installed");
        let out = BufReader::new(watcher.stdout.take().unwrap());
        let (tell, heard) = mpsc::channel();
        thread::spawn(move || {
            for line in out.lines().map_while(Result::ok) {
                if line.contains("(KeyPress)") && tell.send(()).is_err() {
                    break;
                }
            }
        });
        Presses { watcher, heard }
    }

    fn xdotool(&self, args: &[&str]) {
        let mut child = Command::new("xdotool")
            .args(args)
            .env("DISPLAY", &self.name)
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .expect("xdotool is installed");
        let (tell, ended) = mpsc::channel();
        let mut errors = child.stderr.take().unwrap();
        thread::spawn(move || {
            let mut text = String::new();
            let _ = errors.read_to_string(&mut text);
            let _ = tell.send(text);
        });
        // Its standard error closes when it ends.
        let said = ended.recv_timeout(DEADLINE);
        if said.is_err() {
            let _ = child.kill();
        }
        let status = child.wait().unwrap();
        assert!(status.success(), "xdotool {args:?}: {said:?}");
    }
}

impl Desktop for Display {
    fn admit(&self, program: &mut Command) {
        program
            .env("DISPLAY", &self.name)
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("WAYLAND_SOCKET");
    }

    fn focus(&self, title: &str) {
        Self::focus(self, title);
    }
}

impl Drop for Display {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// Presses seen on the display.
pub struct Presses {
    watcher: Child,
    heard: Receiver<()>,
}

impl Presses {
    /// Waits until so many presses were seen.
    pub fn wait_for(&self, count: usize) {
        for seen in 0..count {
            let heard = self.heard.recv_timeout(DEADLINE);
            assert!(heard.is_ok(), "saw {seen} presses of {count}");
        }
    }
}

impl Drop for Presses {
    fn drop(&mut self) {
        let _ = self.watcher.kill();
        let _ = self.watcher.wait();
    }
}
