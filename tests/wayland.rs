//! The real program under Wayland, in a real compositor without a screen: worked by real keys, heard by
//! a speech service that keeps a record, and looked at after every step.
#![cfg(all(target_os = "linux", feature = "window"))]

#[path = "support/bus.rs"]
mod bus;
#[path = "support/compositor.rs"]
mod compositor;
#[path = "support/display.rs"]
mod display;
#[path = "support/in_time.rs"]
mod in_time;
#[path = "support/input_method.rs"]
mod input_method;
#[path = "support/portal.rs"]
mod portal;
#[path = "support/program.rs"]
mod program;
#[path = "support/screenshot.rs"]
mod screenshot;
#[path = "support/ssip.rs"]
mod ssip;

use in_time::InTime as _;
use std::path::Path;
use std::process::Command;
use std::sync::mpsc;
use std::thread;

use bus::Bus;
use compositor::{Compositor, SCREEN};
use dbus::Message;
use dbus::arg::RefArg as _;
use dbus::blocking::Connection;
use dbus::channel::{Channel, MatchingReceiver as _, Sender as _};
use dbus::message::MatchRule;
use display::DEADLINE;
use marlinspeak::bench::WeaveChoice;
use marlinspeak::guide::{AtOnce, COURSE, Place, Script};
use marlinspeak::session::lesson_tie;
use marlinspeak::shelf::Shelf;
use marlinspeak::words::{Detail, Words};
use portal::{Manner, Portal};
use program::{PROGRAM, Program, heard, wait_for};
use screenshot::Picture;
use serde_json::{Value, json};
use ssip::Service;
use tempfile::TempDir;

const KNOT: [&str; 4] = ["--leads", "3", "--bights", "5"];

/// A desktop, what it hears, and a folder for the program's data.
struct Room {
    desktop: Compositor,
    service: Service,
    data: TempDir,
    /// The bus of the session. Nobody there keeps the screen on or shows windows of files, unless a test
    /// brings one where somebody does.
    bus: String,
}

impl Room {
    fn new() -> Self {
        Self::with(&json!({}))
    }

    /// With these settings besides those that every test has.
    fn with(settings: &Value) -> Self {
        let data = TempDir::new().unwrap();
        let folder = data.path().join("config/marlinspeak");
        std::fs::create_dir_all(&folder).unwrap();
        // The hands of a test are quick, and a picture that stands can be compared.
        let mut own = json!({ "version": 1, "presses": { "bounce_ms": 0 }, "still": true });
        let more = settings.as_object().unwrap().clone();
        own.as_object_mut().unwrap().extend(more);
        std::fs::write(folder.join("settings.json"), own.to_string()).unwrap();
        Self {
            desktop: Compositor::start(),
            service: Service::start(),
            data,
            bus: "unix:path=/nonexistent".to_owned(),
        }
    }

    /// Starts the program, and waits until its window has the keys and shows something.
    fn open(&self, args: &[&str]) -> Program {
        let mut command = Command::new(PROGRAM);
        command
            .env("DBUS_SESSION_BUS_ADDRESS", &self.bus)
            .env("DBUS_SYSTEM_BUS_ADDRESS", "unix:path=/nonexistent");
        let (desktop, data) = (&self.desktop, self.data.path());
        let program = Program::start_by(&mut command, desktop, &self.service, data, args);
        desktop.wait_for_picture("something to see", Picture::shows_something);
        program
    }

    /// What is said next.
    #[track_caller]
    fn heard(&self) -> String {
        heard(&self.service)
    }

    /// Presses a key, and gives what is said then and what is seen when it is not what was seen before.
    fn press(&self, key: &str, before: &Picture) -> (String, Picture) {
        self.desktop.press(key);
        let said = self.heard();
        (said, self.changed(before))
    }

    /// What is seen when it is no more what was seen before.
    fn changed(&self, before: &Picture) -> Picture {
        self.desktop.wait_for_picture("another picture", |now| {
            now.shows_something() && now.difference(before) > 0.001
        })
    }

    /// Presses Ctrl and Q, and waits for the end.
    fn quit(&self, program: Program) {
        self.desktop.press("ctrl+q");
        assert_eq!(program.ends().0, Some(0));
    }
}

/// The steps of the first tie of the course, as a beginner hears them, each with its place.
fn taught() -> Vec<(Place, String)> {
    let tie = lesson_tie(COURSE[0], WeaveChoice::FewestTucks).unwrap();
    let script = Script::new(tie.plan, AtOnce::default()).teaching(true);
    let mut words = Words::english();
    words.set_detail(Detail::Teach);
    let step = |place| (place, words.say(&script.step(place).unwrap()).into());
    script.places().map(step).collect()
}

/// Waits until the one tie on the shelf is kept at a place.
fn stands_at(data: &Path, place: Place) {
    let shelf = Shelf::open(data.join("marlinspeak/ties")).unwrap();
    wait_for(|| {
        let ties = shelf.list().unwrap().untroubled().unwrap();
        ties.first().filter(|tie| tie.place == place).map(drop)
    });
}

#[test]
fn the_first_tie_goes_on_back_and_again_and_is_taken_up_where_it_was_left() {
    let room = Room::new();
    let steps = taught();
    let program = room.open(&[]);
    let opening = room.heard();
    let offer = "Shall we tie the first one together?";
    assert!(opening.starts_with(offer), "{opening}");
    let start = room.desktop.picture();

    // The first tie as it is offered, on to its first legs.
    let (said, mut seen) = room.press("space", &start);
    assert!(said.ends_with(&steps[0].1), "{said}");
    let legs = steps.iter().position(|(place, _)| place.leg() == Some(3));
    let third = legs.expect("it has three legs");
    for (place, say) in &steps[1..=third] {
        let (said, now) = room.press("space", &seen);
        assert_eq!(said, *say);
        stands_at(room.data.path(), *place);
        seen = now;
    }

    // Again shows the same, back what was there before, and next the same once more.
    room.desktop.press("r");
    assert_eq!(room.heard(), steps[third].1);
    let (said, before) = room.press("BackSpace", &seen);
    assert_eq!(said, steps[third - 1].1);
    room.desktop.press("space");
    assert_eq!(room.heard(), steps[third].1);
    room.desktop
        .wait_for_picture("the third leg again", |now| *now != before);
    room.desktop.press("BackSpace");
    assert_eq!(room.heard(), steps[third - 1].1);
    room.desktop
        .wait_for_picture("the second leg again", Picture::shows_something);

    // Left, and taken up there.
    let (said, left) = room.press("Escape", &before);
    assert!(
        said.starts_with("A tie is waiting: 3 lead, 5 bight"),
        "{said}"
    );
    let (said, _) = room.press("space", &left);
    assert!(said.starts_with("Taking up 3 lead, 5 bight."), "{said}");
    assert!(said.ends_with(&steps[third - 1].1), "{said}");

    // A power cut, and taken up there.
    stands_at(room.data.path(), steps[third - 1].0);
    program.kill();
    let program = room.open(&[]);
    assert!(
        room.heard()
            .starts_with("A tie is waiting: 3 lead, 5 bight")
    );
    room.desktop.press("space");
    assert!(room.heard().ends_with(&steps[third - 1].1));
    room.desktop.press("space");
    assert_eq!(room.heard(), steps[third].1);
    room.quit(program);
}

/// Width and height of the window, in the pixels of the desktop.
fn size(window: &Value) -> [u64; 2] {
    ["width", "height"].map(|length| window["rect"][length].as_u64().unwrap())
}

/// What is kept of the window.
fn kept(data: &Path) -> Value {
    let file = data.join("state/marlinspeak/window.json");
    serde_json::from_slice(&std::fs::read(file).unwrap()).unwrap()
}

#[test]
fn the_desktop_knows_it_by_its_entry_gives_it_the_screen_and_the_size_that_it_had() {
    let room = Room::new();
    let program = room.open(&[]);
    room.heard();
    let window = room.desktop.window().unwrap();
    let entry = format!("{}.desktop", window["app_id"].as_str().unwrap());
    assert!(
        Path::new("resources/packaging").join(&entry).is_file(),
        "{entry}"
    );
    assert_eq!(window["name"], "Marlinspeak");
    assert_eq!(size(&window), [1100, 760]);

    let small = room.desktop.picture();
    room.desktop.press("F11");
    let has_screen =
        |window: &Value| window["fullscreen_mode"] == 1 && size(window) == SCREEN.map(u64::from);
    room.desktop.wait_for_window("the whole screen", has_screen);
    // The edges of the screen are the compositor's own as long as the window is small.
    let edge = |picture: &Picture| picture.dots[0];
    room.desktop.wait_for_picture("its edges", |now| {
        now.shows_something() && edge(now) != edge(&small)
    });
    room.desktop.press("F11");
    let is_small = |window: &Value| window["fullscreen_mode"] == 0 && size(window) == [1100, 760];
    room.desktop.wait_for_window("its own size again", is_small);
    room.desktop
        .wait_for_picture("the same as before", |now| *now == small);

    // Made smaller, closed, and opened as it was.
    room.desktop
        .order("[app_id=marlinspeak] resize set 1000 600, move position 100 100");
    let is_smaller = |window: &Value| size(window) == [1000, 600];
    room.desktop.wait_for_window("another size", is_smaller);
    room.changed(&small);
    room.quit(program);
    let place = kept(room.data.path());
    assert_eq!([&place["width"], &place["height"]], [1000.0, 600.0]);
    // Nobody has told where it was.
    assert_eq!([&place["left"], &place["top"]], [&Value::Null; 2]);
    let program = room.open(&[]);
    assert_eq!(size(&room.desktop.window().unwrap()), [1000, 600]);
    room.quit(program);
}

#[test]
fn on_a_fine_screen_it_is_drawn_with_every_dot() {
    let room = Room::new();
    let program = room.open(&[]);
    room.heard();
    let coarse = room.desktop.picture();
    // A screen of the same size in pixels with four times the dots, as when a window is dragged to it.
    let [width, height] = SCREEN.map(|length| 2 * length);
    room.desktop.order(&format!(
        "output HEADLESS-1 resolution {width}x{height} scale 2"
    ));
    let fine = room.desktop.wait_for_picture("a fine picture", |now| {
        now.width == 2 * coarse.width && now.shows_something() && !now.is_blown_up()
    });
    assert_eq!(size(&room.desktop.window().unwrap()), [1100, 760]);
    // The same stands at the same place: as much of it is drawn.
    let difference = (fine.drawn().0 - coarse.drawn().0).abs();
    assert!(difference < 0.02, "{coarse:?}, {fine:?}");
    room.quit(program);
    let place = kept(room.data.path());
    assert_eq!(
        [&place["width"], &place["height"], &place["density"]],
        [1100.0, 760.0, 2.0]
    );
}

#[test]
fn the_screen_is_kept_on_as_long_as_a_tie_is_open() {
    let (mut room, bus) = (Room::new(), Bus::start());
    let mut channel = Channel::open_private(&bus.address).unwrap();
    channel.register().unwrap();
    let desktop: Connection = channel.into();
    let name = "org.freedesktop.ScreenSaver";
    desktop.request_name(name, false, false, true).unwrap();
    let (tell, asked) = mpsc::channel();
    let take = move |call: Message, desktop: &Connection| {
        let member = call.member().map(|member| member.to_string());
        desktop.send(call.method_return().append1(7_u32)).unwrap();
        tell.send(member.unwrap_or_default()).is_ok()
    };
    desktop.start_receive(MatchRule::new_method_call(), Box::new(take));
    thread::spawn(move || while desktop.process(DEADLINE).is_ok() {});
    room.bus.clone_from(&bus.address);
    let program = room.open(&KNOT);
    room.heard();
    assert_eq!(asked.recv_timeout(DEADLINE).unwrap(), "Inhibit");
    room.desktop.press("Escape");
    room.heard();
    assert_eq!(asked.recv_timeout(DEADLINE).unwrap(), "UnInhibit");
    room.quit(program);
}

#[test]
fn a_file_is_chosen_in_a_window_of_the_desktop() {
    let (mut room, bus) = (Room::new(), Bus::start());
    let file = room.data.path().join("bell rope.pdf");
    // Debian's window marks all but the ending: who types a whole name over that has the ending twice.
    let address = format!("file://{}.pdf", file.display()).replace(' ', "%20");
    let portal = Portal::start(&bus, Manner::Answers(0, vec![address]));
    room.bus.clone_from(&bus.address);
    let program = room.open(&KNOT);
    room.heard();
    let says = |key: &str, beginning: &str| {
        room.desktop.press(key);
        wait_for(|| Some(room.heard()).filter(|said| said.starts_with(beginning)))
    };
    says("o", "On paper or as a moving picture");
    // The card goes where the desktop was told, and is handed over to it to be opened.
    let told = says("space", "The card is in");
    assert!(told.contains(&file.display().to_string()), "{told}");
    let asked = wait_for(|| Some(portal.call()).filter(|call| call.member == "SaveFile"));
    let name = asked.options["current_name"].0.as_str().map(Path::new);
    let ending = name.and_then(Path::extension);
    assert_eq!(ending, Some("pdf".as_ref()), "{name:?}");
    assert!(std::fs::read(&file).unwrap().starts_with(b"%PDF-"));
    let opened = wait_for(|| Some(portal.call()).filter(|call| call.member == "OpenFile"));
    assert!(opened.content.starts_with("%PDF-"), "{opened:?}");
    room.quit(program);
}

#[test]
fn out_of_sight_it_says_so_goes_on_and_comes_back() {
    let room = Room::with(&json!({ "pacing": true }));
    let program = room.open(&KNOT);
    room.heard();
    // From two presses on it knows the pace, and goes on by itself.
    for _ in 0..2 {
        room.desktop.press("space");
        room.heard();
    }
    room.desktop.order("workspace 2");
    let lost = "Another window is taking the keys. Click here before you press on.";
    wait_for(|| (room.heard() == lost).then_some(()));
    room.desktop
        .wait_for_picture("an empty desktop", |now| !now.shows_something());
    // The compositor asks for no frame now, and the steps are told all the same.
    let told = room.heard();
    assert!(
        told.contains("top pin") || told.contains("bottom pin"),
        "{told}"
    );
    room.desktop.order("workspace 1");
    room.desktop
        .wait_for_picture("the step", Picture::shows_something);
    // Out of sight again, it can be closed.
    room.desktop.order("workspace 2");
    room.desktop
        .wait_for_picture("an empty desktop", |now| !now.shows_something());
    room.desktop.order("[app_id=marlinspeak] kill");
    assert_eq!(program.ends().0, Some(0));
}

#[test]
fn a_class_sees_each_step_on_a_screen_of_its_own() {
    let room = Room::new();
    let program = room.open(&KNOT);
    let first = room.heard();
    let own = room.desktop.window().unwrap();
    room.desktop.order("create_output");
    room.desktop.press("F12");
    let said = room.heard();
    assert!(
        said.starts_with("The step stands in a second window"),
        "{said}"
    );
    // The desktop alone puts windows in their places.
    let second = room.desktop.wait_for("a second window", || {
        let mut windows = room.desktop.windows().into_iter();
        windows.find(|window| window["id"] != own["id"])
    });
    assert_eq!(
        [&second["app_id"], &second["fullscreen_mode"]],
        [&own["app_id"], &json!(0)]
    );
    let its = |order: &str| {
        let order = format!("[con_id={}] {order}", second["id"]);
        room.desktop.order(&order);
    };
    its("move container to output HEADLESS-2, focus");
    room.desktop.press("F11");
    room.desktop.wait_for("over all of its screen", || {
        let windows = room.desktop.windows();
        let is_so =
            |window: &&Value| window["id"] == second["id"] && window["fullscreen_mode"] == 1;
        windows.iter().find(is_so).map(drop)
    });
    let class_sees = || room.desktop.picture_on("HEADLESS-2");
    let seen = room.desktop.wait_for("the step", || {
        let seen = class_sees();
        let is_whole = seen.dots[0] == seen.dots[seen.dots.len() - 1];
        (seen.shows_something() && is_whole).then_some(seen)
    });
    let own_before = room.desktop.picture();
    room.desktop.press("space");
    let next = room.heard();
    assert_ne!(next, first);
    room.desktop.wait_for("the next step", || {
        (class_sees().difference(&seen) > 0.001).then_some(())
    });
    room.changed(&own_before);

    // Closed like any window; the tyer's own goes on.
    its("kill");
    room.desktop.wait_for("one window", || {
        (room.desktop.windows().len() == 1).then_some(())
    });
    room.desktop.order(&format!("[con_id={}] focus", own["id"]));
    room.desktop
        .wait_for_window("its keys", |window| window["focused"] == true);
    room.desktop.press("BackSpace");
    wait_for(|| (room.heard() == first).then_some(()));
    room.quit(program);
}

#[test]
fn what_is_typed_and_copied_comes_in_and_goes_out_whole() {
    let room = Room::new();
    let program = room.open(&KNOT);
    // What was used is written down when the tie is done.
    while !room.heard().contains("Press L to write down what was used") {
        room.desktop.press("space");
    }
    room.desktop.press("l");
    room.heard();
    // Letters that stand on no key of an American keyboard.
    room.desktop.type_in("Hänf, ½ çañón");
    // The clipboard hears of keys on a line of its own: what is copied before it has heard of the latest
    // key does not count, and is copied once more.
    let copied = |wanted: &str| {
        wait_for(|| {
            room.desktop.press("ctrl+a");
            room.desktop.press("ctrl+c");
            (room.desktop.clipboard() == wanted).then_some(())
        });
    };
    copied("Hänf, ½ çañón");
    room.desktop.copy("Leinen ß");
    wait_for(|| {
        room.desktop.press("ctrl+a");
        room.desktop.press("ctrl+v");
        room.desktop.type_in("!");
        room.desktop.press("ctrl+a");
        room.desktop.press("ctrl+c");
        let copied = room.desktop.clipboard();
        if copied != "Leinen ß!" {
            room.desktop.copy("Leinen ß");
        }
        (copied == "Leinen ß!").then_some(())
    });
    // An input method gives a whole text, in the place of what is selected.
    room.desktop.press("ctrl+a");
    input_method::give(&room.desktop.socket(), "結び");
    copied("結び");
    // No window for files, and none can be dropped: nothing is promised.
    room.desktop.press("F2");
    let told = "The system shows no window for files here: type the path of the photograph.";
    // Whoever copies takes the keys for a moment, and the program tells of that.
    while room.heard() != told {}
    drop(program);
}

#[test]
fn a_key_is_learnt_and_a_held_one_repeats() {
    let room = Room::new();
    let program = room.open(&KNOT);
    let first = room.heard();
    let says = |key: &str| {
        room.desktop.press(key);
        room.heard()
    };
    let second = says("space");
    assert_ne!(first, second);
    assert!(says("t").contains("Press enter to learn others."));
    assert!(says("Return").ends_with("Press what you want for “next”."));
    // A pedal sends such a key.
    let learnt = says("F13");
    assert!(
        learnt.ends_with("Press what you want for “back”."),
        "{learnt}"
    );
    // Learnt already: it skips a line, and twice it is done.
    says("F13");
    let done = says("F13");
    assert!(done.ends_with("That is all, and it is kept."), "{done}");

    // Held down, an arrow goes on by the repeats that the desktop has set for the keyboard.
    let hears = |beginning: &str| {
        wait_for(|| room.heard().starts_with(beginning).then_some(()));
    };
    for line in [
        "Knocks on the bench",
        "Try the knocks",
        "Language",
        "Lengths",
        "Voice",
        "Speed of the voice: 165",
    ] {
        room.desktop.press("Down");
        hears(line);
    }
    let held = room.desktop.hold("Right");
    for speed in [175, 185, 195, 205] {
        hears(&format!("Speed of the voice: {speed} words a minute."));
    }
    drop(held);

    room.desktop.press("Escape");
    wait_for(|| (room.heard() == second).then_some(()));
    // Held down, the key that was learnt is one press.
    let held = room.desktop.hold("F13");
    let third = room.heard();
    assert_ne!(third, second);
    drop(held);
    assert_eq!(says("BackSpace"), second);
    assert_eq!(says("F13"), third);
    drop(program);
}

#[test]
fn the_doctor_says_what_wayland_does_not_give() {
    let room = Room::new();
    let told = room
        .desktop
        .client(PROGRAM)
        .arg("doctor")
        .env("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nonexistent")
        .env("SPEECHD_ADDRESS", room.service.address())
        .env("XDG_DATA_HOME", room.data.path())
        .env("XDG_CONFIG_HOME", room.data.path().join("config"))
        .env("XDG_STATE_HOME", room.data.path().join("state"))
        .env("XDG_DATA_DIRS", room.data.path())
        .env("LC_ALL", "C.UTF-8")
        .output_in_time();
    let told = String::from_utf8(told.stdout).unwrap();
    for part in [
        "Display: works. A window can open on “wayland-1”.",
        "Screen: may go dark while you tie.",
        "inhibit_idle visible",
        "where it stands is up to the desktop",
        "No file can be dropped on it",
        "Icon: the window has none",
        "Files: the desktop shows no window to choose them in",
        "All that is needed works.",
    ] {
        assert!(told.contains(part), "{part}: {told}");
    }
}
