//! A display without a screen, and hands on its keyboard.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::io::{BufRead, BufReader, Read};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{self, Receiver};
use std::thread;
use std::time::Duration;

/// How long anything on the display may take before the test gives up.
pub const DEADLINE: Duration = Duration::from_secs(60);

/// An X server of its own.
pub struct Display {
    server: Child,
    name: String,
}

impl Display {
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

    /// Waits for a window of this title and gives it the keys.
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
