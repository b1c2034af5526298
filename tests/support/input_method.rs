//! An input method, as those have it whose letters stand on no key: it gives a whole text to the field that
//! has the keys (the protocol `input-method-unstable-v2` of Wayland desktops).

use std::os::unix::net::UnixStream;
use std::path::Path;
use std::sync::mpsc;
use std::thread;

use wayland_client::globals::{GlobalListContents, registry_queue_init};
use wayland_client::protocol::wl_registry::{self, WlRegistry};
use wayland_client::protocol::wl_seat::WlSeat;
use wayland_client::{Connection, Dispatch, QueueHandle, delegate_noop};
use wayland_protocols_misc::zwp_input_method_v2::client::zwp_input_method_manager_v2::ZwpInputMethodManagerV2;
use wayland_protocols_misc::zwp_input_method_v2::client::zwp_input_method_v2::{
    self, ZwpInputMethodV2,
};

use crate::display::DEADLINE;

/// What the desktop has told it.
#[derive(Default)]
struct InputMethod {
    /// A field wants a text, as far as was told by now.
    is_wanted: bool,
    /// The same, with all that belongs to it.
    is_ready: bool,
    /// How often it was told that all is told.
    serial: u32,
}

/// Waits until a field wants a text, and gives it this one. `socket` is that of the desktop.
pub fn give(socket: &Path, text: &str) {
    let server = UnixStream::connect(socket).unwrap();
    let (tell, given) = mpsc::channel();
    let text = text.to_owned();
    thread::spawn(move || {
        let connection = Connection::from_socket(server).unwrap();
        let (globals, mut queue) = registry_queue_init::<InputMethod>(&connection).unwrap();
        let handle = queue.handle();
        let seat: WlSeat = globals.bind(&handle, 1..=1, ()).unwrap();
        let manager: ZwpInputMethodManagerV2 = globals.bind(&handle, 1..=1, ()).unwrap();
        let pen = manager.get_input_method(&seat, &handle, ());
        let mut told = InputMethod::default();
        while !told.is_ready {
            queue.blocking_dispatch(&mut told).unwrap();
        }
        pen.commit_string(text);
        pen.commit(told.serial);
        queue.roundtrip(&mut told).unwrap();
        // The test may have given up.
        let _ = tell.send(());
    });
    let given = given.recv_timeout(DEADLINE);
    given.expect("a field wants a text");
}

impl Dispatch<ZwpInputMethodV2, ()> for InputMethod {
    fn event(
        told: &mut Self,
        _: &ZwpInputMethodV2,
        event: zwp_input_method_v2::Event,
        (): &(),
        _: &Connection,
        _: &QueueHandle<Self>,
    ) {
        match event {
            zwp_input_method_v2::Event::Activate => told.is_wanted = true,
            zwp_input_method_v2::Event::Deactivate => told.is_wanted = false,
            zwp_input_method_v2::Event::Done => {
                told.serial += 1;
                told.is_ready = told.is_wanted;
            }
            _ => {}
        }
    }
}

impl Dispatch<WlRegistry, GlobalListContents> for InputMethod {
    fn event(
        _: &mut Self,
        _: &WlRegistry,
        _: wl_registry::Event,
        _: &GlobalListContents,
        _: &Connection,
        _: &QueueHandle<Self>,
    ) {
    }
}

delegate_noop!(InputMethod: ignore WlSeat);
delegate_noop!(InputMethod: ZwpInputMethodManagerV2);
