//! `marlinspeak doctor` and the log file, with the real program: what works, what does not, and
//! how to mend it.
#![cfg(all(target_os = "linux", feature = "window"))]

#[path = "support/bus.rs"]
mod bus;
#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/ssip.rs"]
mod ssip;

use std::fs;
use std::io::Read as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use bus::Bus;
use dbus::arg::Variant;
use dbus::blocking::Connection;
use dbus::channel::{Channel, MatchingReceiver as _, Sender as _};
use dbus::message::MatchRule;
use display::{DEADLINE, Display};
use in_time::InTime as _;
use marlinspeak::logging::Platform;
use marlinspeak::voice::VoiceSource;
use ssip::Service;
use tempfile::TempDir;

/// Folders of a tyer's own, and the program in them.
struct Home {
    folder: TempDir,
    service: Service,
    display: Option<String>,
    changed: Vec<(&'static str, PathBuf)>,
}

/// The exit code and the lines.
type Told = (i32, Vec<String>);

impl Home {
    fn new(service: Service) -> Self {
        Self {
            folder: TempDir::new().unwrap(),
            service,
            display: None,
            changed: Vec::new(),
        }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        command
            .args(args)
            .env("HOME", self.folder.path())
            .env("LC_ALL", "C")
            .env("SPEECHD_ADDRESS", self.service.address())
            .env("XDG_DATA_HOME", self.path("data"))
            .env("XDG_CONFIG_HOME", self.path("config"))
            .env("XDG_STATE_HOME", self.path("state"))
            .env("XDG_DATA_DIRS", self.path("shared"))
            .env("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nonexistent")
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("WAYLAND_SOCKET")
            .env_remove("DISPLAY");
        if let Some(name) = &self.display {
            command.env("DISPLAY", name);
        }
        for (name, value) in &self.changed {
            command.env(name, value);
        }
        command
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped());
        command
    }

    fn run(&self, args: &[&str]) -> Told {
        let mut child = self.command(args).spawn().unwrap();
        let mut out = child.stdout.take().unwrap();
        let mut errors = child.stderr.take().unwrap();
        let (tell, told) = mpsc::channel();
        thread::spawn(move || {
            let (mut text, mut complaints) = (String::new(), String::new());
            let _ = out.read_to_string(&mut text);
            let _ = errors.read_to_string(&mut complaints);
            let _ = tell.send((text, complaints));
        });
        // Its output closes when it ends. It never hangs.
        let told = told.recv_timeout(DEADLINE);
        if told.is_err() {
            let _ = child.kill();
        }
        let code = child.wait().unwrap().code().unwrap();
        let (text, complaints) = told.expect("the program ends");
        assert_eq!(complaints, "", "{text}");
        (code, text.lines().map(str::to_owned).collect())
    }

    fn doctor(&self) -> Told {
        self.run(&["doctor"])
    }
}

/// The line that begins with this word.
fn line<'a>(lines: &'a [String], beginning: &str) -> &'a str {
    let mut found = lines.iter().filter(|line| line.starts_with(beginning));
    let line = found.next();
    assert!(
        found.next().is_none(),
        "{beginning} comes twice: {lines:#?}"
    );
    line.unwrap_or_else(|| panic!("no {beginning}: {lines:#?}"))
}

const PARTS: [&str; 12] = [
    "Display: ",
    "Screen: ",
    "Window: ",
    "Icon: ",
    "Files: ",
    "Speech: ",
    "Sound: ",
    "Pedals: ",
    "Microphone: ",
    "Ties: ",
    "Settings: ",
    "Log: ",
];

#[test]
fn where_all_that_is_needed_works_it_says_so() {
    let display = Display::start();
    let mut home = Home::new(Service::start());
    home.display = Some(display.name().to_owned());
    let (code, lines) = home.doctor();
    assert_eq!(lines.len(), PARTS.len() + 2, "{lines:#?}");
    let head = format!("Marlinspeak {} on ", env!("CARGO_PKG_VERSION"));
    assert!(lines[0].starts_with(&head), "{lines:#?}");
    for part in PARTS {
        line(&lines, part);
    }
    assert_eq!(
        line(&lines, "Display:"),
        format!("Display: works. A window can open on “{}”.", display.name())
    );
    // Ada, Ada+deep (the same voice) and Bruno.
    let speech = line(&lines, "Speech:");
    assert!(
        speech.starts_with(
            "Speech: works. The speech service answers; it has 2 voices, 1 of them in the language \
             “English”. None of them is natural, made of a person’s own speech. "
        ),
        "{speech}"
    );
    let way = match VoiceSource::of("en", Platform::is_debian()) {
        VoiceSource::Debian(package) => format!("“sudo apt install {package}” adds one."),
        _ => "look among the packages of this system.".to_owned(),
    };
    assert!(speech.ends_with(&way), "{speech}");
    let ties = home.path("data/marlinspeak/ties").display().to_string();
    let told = line(&lines, "Ties:");
    assert!(
        told.starts_with(&format!("Ties: work. “{ties}” can be written to, with "))
            && told.ends_with(" MB free; no tie is on the shelf yet."),
        "{told}"
    );
    assert!(line(&lines, "Settings:").starts_with("Settings: work. There are none yet"));
    assert!(line(&lines, "Log:").starts_with("Log: works."));
    assert_eq!(lines[lines.len() - 1], "All that is needed works.");
    assert_eq!(code, 0, "{lines:#?}");
    // Nothing is left behind in the folders that it tried.
    for folder in ["data/marlinspeak/ties", "config/marlinspeak"] {
        assert_eq!(fs::read_dir(home.path(folder)).unwrap().count(), 0);
    }
}

/// A place on the bus.
fn on(bus: &Bus) -> Connection {
    let mut channel = Channel::open_private(&bus.address).unwrap();
    channel.register().unwrap();
    channel.into()
}

/// Answers for the screen saver and the portal of a desktop as long as the bus is there.
fn serve_desktop(bus: &Bus) {
    let server = on(bus);
    for name in [
        "org.freedesktop.ScreenSaver",
        "org.freedesktop.portal.Desktop",
    ] {
        server.request_name(name, false, false, true).unwrap();
    }
    server.start_receive(
        MatchRule::new_method_call(),
        Box::new(|call, server| {
            // Whatever it is asked for, it has the fourth version of it.
            server
                .send(call.method_return().append1(Variant(4_u32)))
                .is_ok()
        }),
    );
    thread::spawn(move || while server.process(DEADLINE).is_ok() {});
}

#[test]
fn natural_voices_are_named() {
    let service = Service::start();
    service.set_engines(&[
        ("espeak-ng", &[("English", "en"), ("French", "fr")]),
        ("flite", &[("kal16", "en"), ("slt", "en")]),
    ]);
    let (_, lines) = Home::new(service).doctor();
    assert_eq!(
        line(&lines, "Speech:"),
        "Speech: works. The speech service answers; it has 4 voices, 3 of them in the language \
         “English”. Natural voices, made of a person’s own speech: kal16, slt."
    );
}

#[test]
fn what_the_desktop_does_for_a_window_is_told_but_not_needed() {
    let (display, bus) = (Display::start(), Bus::start());
    let mut home = Home::new(Service::start());
    home.display = Some(display.name().to_owned());
    let (code, lines) = home.doctor();
    assert!(line(&lines, "Screen:").starts_with("Screen: may go dark while you tie."));
    assert!(line(&lines, "Icon:").starts_with("Icon: the window has none"));
    assert!(line(&lines, "Files:").contains("so their paths are typed"));
    assert_eq!(code, 0, "{lines:#?}");

    serve_desktop(&bus);
    let entry = home.path("shared/applications/marlinspeak.desktop");
    fs::create_dir_all(entry.parent().unwrap()).unwrap();
    fs::write(&entry, "").unwrap();
    let address = bus.address.clone().into();
    home.changed.push(("DBUS_SESSION_BUS_ADDRESS", address));
    let (code, lines) = home.doctor();
    for (part, told) in [
        (
            "Screen:",
            "Screen: works. The desktop keeps it on while a tie is open.",
        ),
        (
            "Window:",
            "Window: works. It opens as large as it was, where it was.",
        ),
        (
            "Files:",
            "Files: work. They are chosen in a window of the desktop.",
        ),
    ] {
        assert_eq!(line(&lines, part), told);
    }
    let icon = format!(
        "Icon: works. The desktop finds it by “{}”.",
        entry.display()
    );
    assert_eq!(line(&lines, "Icon:"), icon);
    assert_eq!(code, 0, "{lines:#?}");
}

#[test]
fn without_display_and_speech_it_says_how_to_mend_them() {
    let home = Home::new(Service::absent());
    let (code, lines) = home.doctor();
    assert_eq!(
        line(&lines, "Display:"),
        "Display: there is none here. Start Marlinspeak from a desktop session; without one, \
         “marlinspeak tie” guides in the terminal."
    );
    let speech = line(&lines, "Speech:");
    assert!(
        speech.starts_with("Speech: does not work (")
            && speech.contains("sudo apt install speech-dispatcher")
            && speech.ends_with("“spd-say hello” should be heard."),
        "{speech}"
    );
    assert!(line(&lines, "Ties:").starts_with("Ties: work."));
    assert!(lines[lines.len() - 1].starts_with("Something that is needed does not work"));
    assert_eq!(code, 1);
}

#[test]
fn a_display_that_does_not_answer_is_named() {
    let mut home = Home::new(Service::start());
    home.display = Some(":4095".to_owned());
    let (code, lines) = home.doctor();
    let told = line(&lines, "Display:");
    assert!(
        told.starts_with("Display: does not work. Nothing answers on “:4095”."),
        "{told}"
    );
    home.display = None;
    home.changed.push(("WAYLAND_DISPLAY", "wayland-9".into()));
    home.changed.push(("XDG_RUNTIME_DIR", home.path("run")));
    let (_, lines) = home.doctor();
    let told = line(&lines, "Display:");
    assert!(told.contains("Nothing answers on “wayland-9”"), "{told}");
    assert_eq!(code, 1);
}

#[test]
fn a_speech_service_that_hangs_is_given_up() {
    let service = Service::start();
    service.freeze();
    let home = Home::new(service);
    let (code, lines) = home.doctor();
    let told = line(&lines, "Speech:");
    assert!(
        told.starts_with("Speech: does not work. The speech service does not answer."),
        "{told}"
    );
    assert_eq!(code, 1);
}

#[test]
fn voices_of_other_languages_only_are_counted() {
    let voice = |name: &str, language: &str| (name.to_owned(), language.to_owned());
    for (voices, said) in [
        (
            vec![voice("Bruno", "de"), voice("Carla", "es")],
            "The speech service has 2 voices and none of them speaks it.",
        ),
        (vec![], "The speech service answers but has no voices."),
    ] {
        let service = Service::start();
        service.set_voices(voices);
        let (code, lines) = Home::new(service).doctor();
        let told = line(&lines, "Speech:");
        assert!(told.contains(said), "{told}");
        assert_eq!(code, 1);
    }
}

#[test]
fn folders_that_cannot_be_written_to_are_named() {
    let mut home = Home::new(Service::start());
    // Below a file there are no folders, whoever asks.
    fs::write(home.path("file"), "").unwrap();
    for (name, part) in [
        ("XDG_DATA_HOME", "Ties: would not be kept."),
        ("XDG_CONFIG_HOME", "Settings: would not be kept."),
        ("XDG_STATE_HOME", "Log: is not kept."),
    ] {
        home.changed = vec![(name, home.path("file/below"))];
        let (_, lines) = home.doctor();
        let told = line(&lines, part);
        assert!(told.contains(&home.path("file/below").display().to_string()));
        assert!(told.contains(name), "{told}");
    }
}

#[test]
fn the_log_and_the_devices_are_not_needed() {
    let display = Display::start();
    let mut home = Home::new(Service::start());
    home.display = Some(display.name().to_owned());
    fs::write(home.path("file"), "").unwrap();
    home.changed = vec![("XDG_STATE_HOME", home.path("file/below"))];
    let (code, lines) = home.doctor();
    assert!(line(&lines, "Log:").starts_with("Log: is not kept."));
    assert_eq!(code, 0, "{lines:#?}");
}

#[test]
fn damaged_documents_are_counted_and_left_alone() {
    let display = Display::start();
    let mut home = Home::new(Service::start());
    home.display = Some(display.name().to_owned());
    let ties = home.path("data/marlinspeak/ties");
    fs::create_dir_all(&ties).unwrap();
    let tie = ties.join("b3k7m.json");
    fs::write(&tie, "{").unwrap();
    let (code, lines) = home.doctor();
    let told = line(&lines, "Ties:");
    assert!(told.starts_with("Ties: 1 document in "), "{told}");
    assert_eq!(code, 1);
    assert_eq!(fs::read_to_string(&tie).unwrap(), "{");
    fs::remove_file(&tie).unwrap();

    let settings = home.path("config/marlinspeak/settings.json");
    fs::create_dir_all(settings.parent().unwrap()).unwrap();
    for (document, said) in [
        ("{ \"version\": 1 }", "Settings: work. “"),
        ("{ \"version\": 99 }", "was written by a newer Marlinspeak"),
        ("[]", "is damaged (it is not what it should be)"),
    ] {
        fs::write(&settings, document).unwrap();
        let (code, lines) = home.doctor();
        let told = line(&lines, "Settings:");
        assert!(told.contains(said), "{told}");
        assert_eq!(code, i32::from(!said.contains("work.")), "{told}");
        assert_eq!(fs::read_to_string(&settings).unwrap(), document);
    }
}

#[test]
fn the_version_is_told() {
    let home = Home::new(Service::absent());
    let version = concat!("marlinspeak ", env!("CARGO_PKG_VERSION"));
    assert_eq!(home.run(&["--version"]), (0, vec![version.to_owned()]));
}

/// What stands in the log after a tie with a named cord was begun in the terminal, and left
/// when the log had this many lines about the voice.
fn logged(home: &Home, losses: usize) -> String {
    let mut command = home.command(&["tie", "--leads", "3", "--bights", "4"]);
    command.args(["--cords", "sea-green", "--speech"]);
    let mut child = command.stdin(Stdio::piped()).spawn().unwrap();
    let file = home.path("state/marlinspeak/marlinspeak.log");
    let read = || fs::read_to_string(&file).unwrap_or_default();
    let until = Instant::now() + DEADLINE;
    while read().matches("no voice: ").count() < losses {
        assert!(Instant::now() < until, "{}", read());
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(5));
    }
    // Whoever pressed is gone.
    drop(child.stdin.take());
    assert!(in_time::end_in_time(&mut child).success());
    read()
}

#[test]
fn the_log_has_what_a_report_needs_and_nothing_private() {
    let home = Home::new(Service::absent());
    let log = logged(&home, 1);
    let start = format!("start of tie: Marlinspeak {}, ", env!("CARGO_PKG_VERSION"));
    assert!(log.contains(&start) && log.contains("no voice: "), "{log}");
    assert!(log.trim_end().ends_with("end"), "{log}");
    for private in ["sea-green", &home.folder.path().display().to_string()] {
        assert!(!log.contains(private), "{private} stands in {log}");
    }
    // The next start goes on in the same file.
    assert_eq!(logged(&home, 2).matches("start of tie").count(), 2);
}

/// Whoever mends a fault has the log and not what was told then.
#[test]
fn whatever_is_told_of_damage_stands_in_the_log_too() {
    let home = Home::new(Service::absent());
    let told = |args: &[&str]| {
        let output = home.command(args).output_in_time();
        let told = [output.stderr, output.stdout].concat();
        String::from_utf8(told).unwrap()
    };
    let file = home.path("state/marlinspeak/marlinspeak.log");
    // What was noted since it was asked for last.
    let noted = || {
        let noted = fs::read_to_string(&file).unwrap_or_default();
        let _ = fs::remove_file(&file);
        noted
    };
    for bights in ["4", "5"] {
        told(&["tie", "--leads", "3", "--bights", bights]);
    }
    let backup = home.path("all of it");
    told(&["shelf", "backup", backup.to_str().unwrap()]);
    let ties = home.path("data/marlinspeak/ties");
    let names = fs::read_dir(&ties).unwrap();
    let names = names.map(|entry| entry.unwrap().file_name().into_string().unwrap());
    let names: Vec<String> = names
        .filter(|name| Path::new(name).extension() == Some("json".as_ref()))
        .collect();
    let [lost, behind] = &names[..] else {
        panic!("{names:?}");
    };
    let copy = behind.replace(".json", ".previous.json");
    fs::copy(ties.join(behind), ties.join(copy)).unwrap();
    for name in [lost, behind] {
        fs::write(ties.join(name), "{").unwrap();
    }
    fs::write(ties.join("my own ring.json"), "{}").unwrap();
    fs::create_dir_all(home.path("config/marlinspeak")).unwrap();
    let settings = home.path("config/marlinspeak/settings.json");
    let spoilt = r#"{ "version": 1, "screen": "very large" }"#;
    fs::write(&settings, spoilt).unwrap();
    let damaged_settings = "the settings were damaged";
    noted();

    let text = told(&["shelf", "list"]);
    let log = noted();
    for part in [lost, behind, damaged_settings, "the name is none of a tie"] {
        assert!(log.contains(part), "{part} not in {log} of {text}");
    }
    assert!(!log.contains("my own ring"), "{log}");

    // The same where it comes to light in the guided job.
    fs::write(ties.join(behind), "{").unwrap();
    let text = told(&["tie"]);
    let log = noted();
    for part in [behind, damaged_settings] {
        assert!(log.contains(part), "{part} not in {log} of {text}");
    }

    let whole = fs::read_to_string(&backup).unwrap();
    fs::write(&backup, whole.replacen("\n{", "\n[", 1)).unwrap();
    let text = told(&["shelf", "restore", backup.to_str().unwrap()]);
    let log = noted();
    assert!(log.contains("line 2 of a backup"), "{log} of {text}");
}

#[test]
fn a_log_that_cannot_be_written_stops_nothing() {
    let mut home = Home::new(Service::absent());
    fs::write(home.path("file"), "").unwrap();
    home.changed = vec![("XDG_STATE_HOME", home.path("file/below"))];
    let (code, lines) = home.run(&["tie", "--leads", "3", "--bights", "4"]);
    assert_eq!(code, 0, "{lines:#?}");
    assert!(lines.len() > 1, "{lines:#?}");
}

#[test]
fn a_fault_in_a_thread_is_noted_and_told_of_once() {
    let folder = TempDir::new().unwrap();
    let file = folder.path().join("deep/marlinspeak.log");
    let (tell, told) = mpsc::channel();
    marlinspeak::logging::start(&file, "a test");
    marlinspeak::logging::log_panics(move || {
        let _ = tell.send(());
    });
    let name = "sea-green";
    let fell = thread::Builder::new()
        .name("part".to_owned())
        .spawn(move || panic!("no cord “{name}” here"))
        .unwrap()
        .join();
    // From here on a failed assertion of this test is printed as usual.
    drop(std::panic::take_hook());
    assert!(fell.is_err());
    assert_eq!(told.recv_timeout(Duration::from_secs(10)), Ok(()));
    let log = fs::read_to_string(&file).unwrap();
    let place = format!("fault in thread part at {}:", Path::new(file!()).display());
    assert!(log.contains(&place), "{log}");
    assert!(log.contains("no cord “…” here"), "{log}");
    assert!(told.try_recv().is_err());
}
