//! MIDI pedals: which are plugged in, and what their messages mean.

use std::collections::HashMap;
use std::thread;
use std::time::Duration;

use midir::{Ignore, MidiInput, MidiInputConnection};

use super::input::{Input, InputEvent, Transition};

/// The name under which other programs see the connections of this one.
const NAME: &str = "Marlinspeak";
/// How long between two looks at which pedals are plugged in: MIDI does not report it.
const LOOK: Duration = Duration::from_secs(3);
/// The same on a system that has no MIDI at all.
const RARE_LOOK: Duration = Duration::from_secs(30);

/// Tells what every MIDI pedal does. A thread of its own looks now and then for pedals plugged in
/// or out.
pub(super) fn listen(tell: impl Fn(InputEvent) + Clone + Send + 'static) {
    let started = thread::Builder::new()
        .name("midi".to_owned())
        .spawn(move || {
            let mut plugged: HashMap<String, MidiInputConnection<MidiDecoder>> = HashMap::new();
            loop {
                thread::sleep(if look(&mut plugged, &tell) {
                    LOOK
                } else {
                    RARE_LOOK
                });
            }
        });
    if let Err(error) = started {
        // The keyboard works without them.
        log::warn!("MIDI pedals cannot be followed: {error}");
    }
}

/// Connects what is new and forgets what is gone. Says whether the system has MIDI at all.
fn look(
    plugged: &mut HashMap<String, MidiInputConnection<MidiDecoder>>,
    tell: &(impl Fn(InputEvent) + Clone + Send + 'static),
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
            move |_, message, decoder| decoder.take(message).into_iter().for_each(&tell),
            MidiDecoder::default(),
        );
        // What cannot be connected now is tried again at the next look.
        if let Ok(connection) = connected {
            log::info!("a MIDI input is plugged in");
            plugged.insert(id, connection);
        }
    }
    true
}

/// How many MIDI inputs there are now.
pub(super) fn count() -> usize {
    if !has_midi() {
        return 0;
    }
    MidiInput::new(NAME).map_or(0, |looker| looker.ports().len())
}

/// Whether the system has MIDI at all. Where it has none the sound library would complain on
/// standard error, so it is not asked.
#[cfg(target_os = "linux")]
fn has_midi() -> bool {
    std::path::Path::new("/dev/snd/seq").exists()
}

#[cfg(not(target_os = "linux"))]
fn has_midi() -> bool {
    true
}

/// Reads the messages of one connection. Whether a controller is down is told by its last value,
/// which is remembered.
#[derive(Debug, Default)]
pub struct MidiDecoder {
    down: HashMap<u8, bool>,
}

impl MidiDecoder {
    /// What one message of MIDI 1.0 does. A controller is down from half of its way on, as the
    /// damper pedal is; one that sends its value again and again has not moved. A programme
    /// change is a press and a release.
    pub fn take(&mut self, message: &[u8]) -> Vec<InputEvent> {
        let one = |input, transition| vec![InputEvent { input, transition }];
        match *message {
            [status, note, velocity] if status & 0xF0 == 0x90 && velocity > 0 => {
                one(Input::Note(note & 0x7F), Transition::Down)
            }
            [status, note, _] if matches!(status & 0xF0, 0x80 | 0x90) => {
                one(Input::Note(note & 0x7F), Transition::Up)
            }
            // From 120 on they are messages about the channel, not controllers.
            [status, number @ 0..=119, value] if status & 0xF0 == 0xB0 => {
                let is_down = value >= 64;
                let was_down = self.down.insert(number, is_down).unwrap_or(false);
                match (was_down, is_down) {
                    (false, true) => one(Input::Controller(number), Transition::Down),
                    (true, false) => one(Input::Controller(number), Transition::Up),
                    _ => Vec::new(),
                }
            }
            [status, number] if status & 0xF0 == 0xC0 => {
                let input = Input::Programme(number & 0x7F);
                [Transition::Down, Transition::Up]
                    .map(|transition| InputEvent {
                        input: input.clone(),
                        transition,
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
        let mut decoder = MidiDecoder::default();
        messages
            .iter()
            .flat_map(|message| decoder.take(message))
            .map(|event| format!("{} {:?}", event.input, event.transition))
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
