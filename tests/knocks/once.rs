//! What was taken for rows of knocks once: plucked strings, drops, and syllables of a slow voice.

use crate::drawn::{self, Lot};
use crate::falsely;
use crate::no_knocks::{SPEECH_RATE, Sound};

#[test]
fn strings_and_drops_that_ring_on_into_the_next_are_no_rows() {
    let once = [
        (Lot(8), Sound::Strings, 90),
        (Lot(8), Sound::Drips, 55),
        (Lot(9), Sound::Strings, 71),
        (Lot(9), Sound::Drips, 67),
        (Lot(16), Sound::Strings, 1),
        (Lot(16), Sound::Strings, 102),
    ];
    for (lot, what, number) in once {
        let (sound, rate) = drawn::half_minute(lot, what, number);
        assert_eq!(falsely(&sound, rate), 0, "{lot:?}, {what:?} {number}");
    }
}

#[test]
fn syllables_that_go_on_into_one_another_are_no_rows() {
    for (lot, tag, numbers) in [(Lot(9), "fr", &[11][..]), (Lot(16), "de", &[4, 10])] {
        // The first voice of a language is the slow one.
        let mut voices = lot.voices();
        let voice = voices.find(|voice| voice.tag == tag).expect("a voice");
        let parts = drawn::parts_of_a_voice(lot, &voice, 450.0);
        for &number in numbers {
            let part = drawn::across_a_room(lot, &parts[number], number as u64, SPEECH_RATE);
            let rows = falsely(&part, SPEECH_RATE);
            assert_eq!(rows, 0, "{lot:?}, {voice:?} {number}");
        }
    }
}
