//! The whole program as it comes: from its start to the first frame of its window, the memory it
//! takes at most, and the size of what is installed.
//!
//! The window opens on a display without a screen and without a speech service. The frame is
//! there when letters can be seen in the display's own pixels.

#[path = "../support/display.rs"]
mod display;
#[path = "line.rs"]
mod line;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use display::{DEADLINE, Display};
use line::{head, line, times};
use tempfile::TempDir;
use x11rb::connection::Connection as _;
use x11rb::protocol::xproto::{ConnectionExt as _, ImageFormat};
use x11rb::rust_connection::RustConnection;

const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");
/// A large tie: 21 leads, 40 bights, ninefold.
const LARGE: [&str; 6] = ["--leads", "21", "--bights", "40", "--passes", "9"];
/// So many bright pixels are letters and not an edge.
const LETTERS: usize = 2000;

fn main() {
    // `cargo test --benches` asks whether it runs, not how fast.
    let (starts, presses) = if std::env::args().any(|arg| arg == "--bench") {
        (11, 60)
    } else {
        (1, 3)
    };
    head(&format!(
        "the whole program, {starts} starts on the display"
    ));
    let display = Display::start();
    let eye = Eye::open(&display);
    for (what, args) in [("start screen", &[][..]), ("large tie", &LARGE[..])] {
        let begun: Vec<Duration> = (0..starts).map(|_| start(&display, &eye, args)).collect();
        times(&format!("start to first frame, {what}"), &begun, "300 ms");
    }
    let megabytes = |what: &str, size: f64, goal: &str| {
        line(what, format!("{size:.1}MB"), "", goal);
    };
    let (first, most) = memory(&display, &eye, presses);
    megabytes("peak memory, start screen", first, "");
    let tie = format!("peak memory, large tie, {presses} presses");
    megabytes(&tie, most, "120 MB");
    let size = |path: &Path| fs::metadata(path).map(|about| mega(about.len()));
    match size(Path::new(PROGRAM)) {
        Ok(size) => megabytes("the program on disk", size, ""),
        Err(error) => line("the program on disk", error, "", ""),
    }
    for package in packages() {
        if let Ok(size) = size(&package) {
            megabytes("the Debian package", size, "15 MB");
        }
    }
}

/// Whole kilobytes or bytes as megabytes, for people.
#[expect(clippy::cast_precision_loss, reason = "shown with one decimal")]
fn mega(bytes: u64) -> f64 {
    bytes as f64 / 1e6
}

/// The packages that `make deb` has built beside the program.
fn packages() -> Vec<PathBuf> {
    let target = Path::new(PROGRAM)
        .ancestors()
        .nth(2)
        .unwrap_or(Path::new("."));
    let entries = fs::read_dir(target.join("deb")).into_iter().flatten();
    let paths = entries.filter_map(|entry| Some(entry.ok()?.path()));
    paths
        .filter(|path| path.extension().is_some_and(|ending| ending == "deb"))
        .collect()
}

/// Looks at the pixels of a display.
struct Eye {
    server: RustConnection,
    root: u32,
    width: u16,
    height: u16,
}

impl Eye {
    fn open(display: &Display) -> Self {
        let (server, number) =
            RustConnection::connect(Some(display.name())).expect("the display answers");
        let screen = &server.setup().roots[number];
        let (root, width, height) = (screen.root, screen.width_in_pixels, screen.height_in_pixels);
        Self {
            server,
            root,
            width,
            height,
        }
    }

    fn pixels(&self) -> Vec<u8> {
        let asked = self.server.get_image(
            ImageFormat::Z_PIXMAP,
            self.root,
            0,
            0,
            self.width,
            self.height,
            u32::MAX,
        );
        asked.expect("a question").reply().expect("pixels").data
    }

    /// Waits until a look satisfies.
    fn wait(&self, mut is_there: impl FnMut(&[u8]) -> bool) -> Instant {
        let until = Instant::now() + DEADLINE;
        loop {
            let pixels = self.pixels();
            let now = Instant::now();
            if is_there(&pixels) {
                return now;
            }
            assert!(now < until, "nothing to be seen in {DEADLINE:?}");
            // Between two looks: the program needs the processor too.
            thread::sleep(Duration::from_millis(1));
        }
    }
}

/// Whether there are letters: bright pixels on the dark ground.
fn has_letters(pixels: &[u8]) -> bool {
    let is_bright = |pixel: &&[u8]| pixel[..3].iter().all(|channel| *channel > 160);
    pixels.chunks_exact(4).filter(is_bright).count() > LETTERS
}

/// A running program in folders of its own.
struct Running {
    child: Child,
    _folder: TempDir,
}

impl Running {
    fn start(display: &Display, args: &[&str]) -> Self {
        let folder = TempDir::new().expect("a temporary folder");
        // Presses come faster than a foot's: none of them is a bounce.
        let settings = folder.path().join("config/marlinspeak");
        fs::create_dir_all(&settings).expect("a folder for settings");
        let quick = r#"{ "version": 1, "presses": { "bounce_ms": 0 } }"#;
        fs::write(settings.join("settings.json"), quick).expect("settings");
        let child = Command::new(PROGRAM)
            .args(args)
            .env("DISPLAY", display.name())
            .env_remove("WAYLAND_DISPLAY")
            .env("SPEECHD_ADDRESS", "unix_socket:/nonexistent")
            .env("XDG_DATA_HOME", folder.path())
            .env("XDG_CONFIG_HOME", folder.path().join("config"))
            .env("XDG_STATE_HOME", folder.path().join("state"))
            .stdin(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .expect("the program starts");
        Self {
            child,
            _folder: folder,
        }
    }

    /// Megabytes of memory at most so far (proc(5), `VmHWM`, in units of 1024 bytes).
    fn peak(&self) -> f64 {
        let status = fs::read_to_string(format!("/proc/{}/status", self.child.id()));
        let status = status.expect("the system tells of the program");
        let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
        let number = line.and_then(|line| line.split_whitespace().next());
        mega(1024 * number.expect("a peak").parse::<u64>().expect("a number"))
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// From the start to the first frame with letters.
fn start(display: &Display, eye: &Eye, args: &[&str]) -> Duration {
    // The window of the last one is gone.
    eye.wait(|pixels| !has_letters(pixels));
    let begun = Instant::now();
    let _running = Running::start(display, args);
    eye.wait(has_letters).duration_since(begun)
}

/// Peak memory of the start screen, and of a large tie through these presses with its picture
/// over the whole screen.
fn memory(display: &Display, eye: &Eye, presses: usize) -> (f64, f64) {
    eye.wait(|pixels| !has_letters(pixels));
    let running = Running::start(display, &[]);
    eye.wait(has_letters);
    let first = running.peak();
    drop(running);
    eye.wait(|pixels| !has_letters(pixels));
    let running = Running::start(display, &LARGE);
    eye.wait(has_letters);
    display.focus("Marlinspeak");
    let keys = std::iter::repeat_n("space", presses).chain(["v", "f"]);
    for key in keys {
        let before = eye.pixels();
        display.press(key);
        eye.wait(|pixels| pixels != before);
    }
    (first, running.peak())
}
