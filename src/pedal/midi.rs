//! MIDI pedals.

use std::collections::HashMap;
use std::thread;
use std::time::Duration;

use midir::{Ignore, MidiInput, MidiInputConnection};

use super::{Edge, Input, Raw};

/// How our ends of the connections are called.
const NAME: &str = "Marlinspeak";
/// Between two looks at which pedals are plugged in: MIDI tells nobody.
const LOOK: Duration = Duration::from_secs(3);
/// The same on a system that has no MIDI at all.
const RARE_LOOK: Duration = Duration::from_secs(30);

/// Follows them. A thread of its own looks now and then for pedals plugged in or out.
pub(super) fn listen(tell: impl Fn(Raw) + Clone + Send + 'static) {
    // Without a thread there are no MIDI pedals; the keys are there all the same.
    let _ = thread::Builder::new()
        .name("midi".to_owned())
        .spawn(move || {
            let mut plugged: HashMap<String, MidiInputConnection<Wire>> = HashMap::new();
            loop {
                thread::sleep(if look(&mut plugged, &tell) {
                    LOOK
                } else {
                    RARE_LOOK
                });
            }
        });
}

/// Connects what is new and forgets what is gone; whether there is any MIDI.
fn look(
    plugged: &mut HashMap<String, MidiInputConnection<Wire>>,
    tell: &(impl Fn(Raw) + Clone + Send + 'static),
) -> bool {
    if !has_midi() {
        plugged.clear();
        return false;
    }
    let Ok(looker) = MidiInput::new(NAME) else {
        plugged.clear();
        return false;
    };
    let ports = looker.ports();
    let ids: Vec<String> = ports.iter().map(midir::MidiInputPort::id).collect();
    let before = plugged.len();
    plugged.retain(|id, _| ids.contains(id));
    if plugged.len() < before {
        log::info!("{} MIDI inputs unplugged", before - plugged.len());
    }
    for (port, id) in ports.iter().zip(ids) {
        if plugged.contains_key(&id) {
            continue;
        }
        let Ok(mut input) = MidiInput::new(NAME) else {
            continue;
        };
        input.ignore(Ignore::All);
        let tell = tell.clone();
        let connected = input.connect(
            port,
            NAME,
            move |_, message, wire| wire.take(message).into_iter().for_each(&tell),
            Wire::default(),
        );
        // What cannot be connected now is tried again at the next look.
        if let Ok(connection) = connected {
            log::info!("a MIDI input is plugged in");
            plugged.insert(id, connection);
        }
    }
    true
}

/// How many inputs there are now.
pub(super) fn count() -> usize {
    if !has_midi() {
        return 0;
    }
    MidiInput::new(NAME).map_or(0, |looker| looker.ports().len())
}

/// Asked before the sound library is, which complains on standard error.
#[cfg(target_os = "linux")]
fn has_midi() -> bool {
    std::path::Path::new("/dev/snd/seq").exists()
}

#[cfg(not(target_os = "linux"))]
fn has_midi() -> bool {
    true
}

/// What came in on one connection: whether a controller is down is told by its last value.
#[derive(Debug, Default)]
pub struct Wire {
    down: HashMap<u8, bool>,
}

impl Wire {
    /// What one message of MIDI 1.0 does. A controller is down from half of its way on, as the
    /// damper pedal is; one that sends its value again and again has not moved. A programme
    /// change is a press and a release.
    pub fn take(&mut self, message: &[u8]) -> Vec<Raw> {
        let one = |input, edge| vec![Raw { input, edge }];
        match *message {
            [status, note, velocity] if status & 0xF0 == 0x90 && velocity > 0 => {
                one(Input::Note(note & 0x7F), Edge::Down)
            }
            [status, note, _] if matches!(status & 0xF0, 0x80 | 0x90) => {
                one(Input::Note(note & 0x7F), Edge::Up)
            }
            // From 120 on they are messages about the channel, not controllers.
            [status, number @ 0..=119, value] if status & 0xF0 == 0xB0 => {
                let is_down = value >= 64;
                let was_down = self.down.insert(number, is_down).unwrap_or(false);
                match (was_down, is_down) {
                    (false, true) => one(Input::Controller(number), Edge::Down),
                    (true, false) => one(Input::Controller(number), Edge::Up),
                    _ => Vec::new(),
                }
            }
            [status, number] if status & 0xF0 == 0xC0 => {
                let input = Input::Programme(number & 0x7F);
                [Edge::Down, Edge::Up]
                    .map(|edge| Raw {
                        input: input.clone(),
                        edge,
                    })
                    .to_vec()
            }
            _ => Vec::new(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn heard(messages: &[&[u8]]) -> Vec<String> {
        let mut wire = Wire::default();
        messages
            .iter()
            .flat_map(|message| wire.take(message))
            .map(|raw| format!("{} {:?}", raw.input, raw.edge))
            .collect()
    }

    #[test]
    fn notes_go_down_and_up() {
        assert_eq!(
            heard(&[&[0x90, 60, 100], &[0x93, 60, 0], &[0x80, 61, 64]]),
            ["note:60 Down", "note:60 Up", "note:61 Up"]
        );
    }

    #[test]
    fn a_controller_tells_when_it_passes_half_way() {
        let swell: Vec<[u8; 3]> = [0, 30, 64, 90, 127, 127, 80, 63, 10, 0]
            .map(|value| [0xB2, 64, value])
            .to_vec();
        let swell: Vec<&[u8]> = swell.iter().map(<[u8; 3]>::as_slice).collect();
        assert_eq!(heard(&swell), ["controller:64 Down", "controller:64 Up"]);
    }

    #[test]
    fn a_programme_change_is_a_whole_press() {
        assert_eq!(heard(&[&[0xC0, 5]]), ["programme:5 Down", "programme:5 Up"]);
    }

    #[test]
    fn clocks_and_broken_messages_are_nothing() {
        assert_eq!(
            heard(&[
                &[0xF8],
                &[0xFE],
                &[],
                &[0x90],
                &[0xB0, 123, 0],
                &[0xE0, 0, 64]
            ]),
            Vec::<String>::new()
        );
    }
}
