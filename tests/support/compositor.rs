//! A Wayland desktop without a screen, hands on its keyboard, and eyes on its picture: the compositor
//! sway, with wtype to press keys and grim to look.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use crate::in_time::InTime as _;
use std::io::{BufRead as _, BufReader};
use std::os::unix::fs::{MetadataExt as _, chown};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use serde_json::Value;
use tempfile::TempDir;

use crate::display::{DEADLINE, Desktop};
use crate::screenshot::Picture;

/// What the only screen is, in dots.
pub const SCREEN: [u32; 2] = [1280, 800];

/// Whom it runs as where root would: it refuses to run as root.
const NOBODY: u32 = 65_534;

/// Windows are as large as they ask to be, and nothing is drawn round them. At its start it tells
/// where it can be reached.
const CONFIGURATION: &str = r#"
output HEADLESS-1 resolution 1280x800
default_border none
default_floating_border none
for_window [app_id=".*"] floating enable
xwayland disable
exec printf '%s\n%s\n' "$WAYLAND_DISPLAY" "$SWAYSOCK"
"#;

/// A compositor of its own.
pub struct Compositor {
    server: Child,
    /// Holds a keyboard that is always plugged in: hands bring one of their own, and take it with
    /// them before a program that has never seen one would look.
    keyboard: Child,
    folder: TempDir,
    display: String,
    control: PathBuf,
}

impl Compositor {
    /// Starts it, and plugs its keyboard in.
    pub fn start() -> Self {
        let folder = TempDir::new().unwrap();
        let is_root = folder.path().metadata().unwrap().uid() == 0;
        let configuration = folder.path().join("configuration");
        std::fs::write(&configuration, CONFIGURATION).unwrap();
        let mut command = if is_root {
            chown(folder.path(), Some(NOBODY), Some(NOBODY)).unwrap();
            let mut command = Command::new("setpriv");
            let nobody = NOBODY.to_string();
            command.args(["--reuid", &nobody, "--regid", &nobody, "--clear-groups"]);
            command.arg("sway");
            command
        } else {
            Command::new("sway")
        };
        let mut server = command
            .arg("--config")
            .arg(&configuration)
            .env("XDG_RUNTIME_DIR", folder.path())
            .env("WLR_BACKENDS", "headless")
            .env("WLR_RENDERER", "pixman")
            .env("WLR_LIBINPUT_NO_DEVICES", "1")
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("WAYLAND_SOCKET")
            .env_remove("DISPLAY")
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("sway is installed");
        let mut told = BufReader::new(server.stdout.take().unwrap()).lines();
        let mut next = || told.next().expect("sway starts").unwrap();
        let (display, control) = (next(), PathBuf::from(next()));
        let keyboard = hands(folder.path(), &display)
            // Nothing is typed for a day.
            .args(["-s", "86400000"])
            .spawn()
            .expect("wtype is installed");
        let compositor = Self {
            server,
            keyboard,
            folder,
            display,
            control,
        };
        compositor.wait_for("a keyboard", || {
            let inputs = compositor.asked("get_inputs");
            let mut inputs = inputs.as_array()?.iter();
            inputs
                .any(|input| input["type"] == "keyboard")
                .then_some(())
        });
        compositor
    }

    /// Has it do something, in its own words.
    pub fn order(&self, order: &str) {
        let done = self.control_program().arg(order).output_in_time();
        let told = String::from_utf8_lossy(&done.stderr);
        assert!(done.status.success(), "{order}: {told}");
    }

    /// The window of the program, or one of them; none when there is none.
    pub fn window(&self) -> Option<Value> {
        self.windows().into_iter().next()
    }

    /// All windows.
    pub fn windows(&self) -> Vec<Value> {
        fn collect(node: &Value, windows: &mut Vec<Value>) {
            if node["app_id"].is_string() {
                windows.push(node.clone());
            }
            let inside = ["nodes", "floating_nodes"].map(|nodes| node[nodes].as_array());
            for node in inside.into_iter().flatten().flatten() {
                collect(node, windows);
            }
        }
        let mut windows = Vec::new();
        collect(&self.asked("get_tree"), &mut windows);
        windows
    }

    /// Waits until the window is as wished.
    pub fn wait_for_window(&self, what: &str, is_so: impl Fn(&Value) -> bool) -> Value {
        self.wait_for(what, || self.window().filter(&is_so))
    }

    /// Presses and lets go of a key by its X name, with those of `ctrl`, `shift` and `alt` held that stand
    /// before it, such as `ctrl+q`.
    pub fn press(&self, key: &str) {
        let mut parts: Vec<&str> = key.split('+').collect();
        let key = parts.pop().unwrap();
        let held = parts.into_iter().flat_map(|held| ["-M", held]);
        self.hands(&[held.collect(), vec!["-k", key]].concat());
    }

    /// Types a text, whatever letters it has.
    pub fn type_in(&self, text: &str) {
        self.hands(&["--", text]);
    }

    /// Presses a key and keeps it down until what is given back is dropped.
    pub fn hold(&self, key: &str) -> Held {
        let typing = hands(self.folder.path(), &self.display)
            .args(["-P", key, "-s", "86400000"])
            .spawn();
        Held(typing.unwrap())
    }

    /// Where a program of Wayland reaches it.
    pub fn socket(&self) -> PathBuf {
        self.folder.path().join(&self.display)
    }

    /// What stands on the clipboard.
    pub fn clipboard(&self) -> String {
        let pasted = self.client("wl-paste").arg("--no-newline").output_in_time();
        String::from_utf8(pasted.stdout).unwrap()
    }

    /// Puts a text on the clipboard.
    pub fn copy(&self, text: &str) {
        let copied = self.client("wl-copy").args(["--", text]).status();
        assert!(copied.expect("wl-clipboard is installed").success());
        self.wait_for("the clipboard", || (self.clipboard() == text).then_some(()));
    }

    /// What the first screen shows.
    pub fn picture(&self) -> Picture {
        self.picture_on("HEADLESS-1")
    }

    /// What a screen shows.
    pub fn picture_on(&self, screen: &str) -> Picture {
        let mut eyes = self.client("grim");
        let taken = eyes.args(["-o", screen, "-t", "ppm", "-"]).output_in_time();
        let complaint = String::from_utf8_lossy(&taken.stderr);
        assert!(taken.status.success(), "{complaint}");
        Picture::of_ppm(&taken.stdout)
    }

    /// Waits until the screen shows something that is as wished, and gives that.
    pub fn wait_for_picture(&self, what: &str, is_so: impl Fn(&Picture) -> bool) -> Picture {
        self.wait_for(what, || Some(self.picture()).filter(&is_so))
    }

    /// Asks again and again until there is an answer.
    pub fn wait_for<T>(&self, what: &str, mut ask: impl FnMut() -> Option<T>) -> T {
        let until = Instant::now() + DEADLINE;
        loop {
            if let Some(answer) = ask() {
                return answer;
            }
            let window = self.window();
            assert!(Instant::now() < until, "never {what}: {window:#?}");
            // Between two looks, not instead of one.
            std::thread::sleep(Duration::from_millis(20));
        }
    }

    /// What it tells of itself.
    fn asked(&self, kind: &str) -> Value {
        let told = self
            .control_program()
            .args(["-t", kind, "-r"])
            .output_in_time();
        serde_json::from_slice(&told.stdout).unwrap_or(Value::Null)
    }

    fn control_program(&self) -> Command {
        let mut command = self.client("swaymsg");
        command.env("SWAYSOCK", &self.control);
        command
    }

    fn hands(&self, args: &[&str]) {
        let status = hands(self.folder.path(), &self.display).args(args).status();
        assert!(status.unwrap().success(), "{args:?}");
    }

    /// A program that finds this compositor and no other display.
    pub fn client(&self, program: impl AsRef<std::ffi::OsStr>) -> Command {
        let mut command = Command::new(program);
        self.admit(&mut command);
        command
    }
}

fn hands(folder: &Path, display: &str) -> Command {
    let mut command = Command::new("wtype");
    command
        .env("XDG_RUNTIME_DIR", folder)
        .env("WAYLAND_DISPLAY", display);
    command
}

impl Desktop for Compositor {
    fn admit(&self, program: &mut Command) {
        program
            .env("XDG_RUNTIME_DIR", self.folder.path())
            .env("WAYLAND_DISPLAY", &self.display)
            .env_remove("WAYLAND_SOCKET")
            .env_remove("DISPLAY");
    }

    fn focus(&self, title: &str) {
        let has_keys = |window: &Value| {
            let name = window["name"].as_str();
            name.is_some_and(|name| name.contains(title)) && window["focused"] == true
        };
        self.wait_for_window("a window with the keys", has_keys);
    }
}

impl Drop for Compositor {
    fn drop(&mut self) {
        for child in [&mut self.keyboard, &mut self.server] {
            let _ = child.kill();
            let _ = child.wait();
        }
    }
}

/// A key that is held down.
pub struct Held(Child);

impl Drop for Held {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}
