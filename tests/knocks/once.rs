//! What was taken for rows of knocks once: plucked strings, drops, and syllables of a slow voice. And what is a
//! row though much is like a train of drops: one row soon after another.

use crate::drawn::{self, EVERY_DAY, Lot};
use crate::no_knocks::{SPEECH_RATE, Sound};
use crate::{falsely, of_each, of_rows_taken};

#[test]
fn strings_and_drops_that_ring_on_into_the_next_are_no_rows() {
    let once = [
        (Lot(8), Sound::Strings, 90),
        (Lot(8), Sound::Drips, 55),
        (Lot(9), Sound::Strings, 71),
        (Lot(9), Sound::Drips, 67),
        (Lot(9), Sound::Drips, 24),
        (Lot(17), Sound::Drips, 24),
        (Lot(18), Sound::Drips, 64),
        (Lot(16), Sound::Strings, 1),
        (Lot(16), Sound::Strings, 102),
        (Lot(18), Sound::Strings, 81),
    ];
    for (lot, what, number) in once {
        let (sound, rate) = drawn::half_minute(lot, what, number);
        assert_eq!(falsely(&sound, rate), 0, "{lot:?}, {what:?} {number}");
    }
}

#[test]
fn syllables_that_go_on_into_one_another_are_no_rows() {
    let once = [
        (Lot(9), "fr", &[11_u32][..]),
        (Lot(16), "de", &[4, 10]),
        (Lot(16), "es", &[20]),
    ];
    for (lot, tag, numbers) in once {
        // The first voice of a language is the slow one.
        let mut voices = lot.voices();
        let voice = voices.find(|voice| voice.tag == tag).expect("a voice");
        // The parts are 22 seconds each, and what comes behind the last is not looked at.
        let last = numbers.last().expect("a part");
        let seconds = f64::from((last + 1) * 22).min(450.0);
        let parts = drawn::parts_of_a_voice(lot, &voice, seconds);
        for &number in numbers {
            let part = &parts[number as usize];
            let part = drawn::across_a_room(lot, part, number.into(), SPEECH_RATE);
            let rows = falsely(&part, SPEECH_RATE);
            assert_eq!(rows, 0, "{lot:?}, {voice:?} {number}");
        }
    }
}

#[test]
fn rows_of_two_every_second_and_a_half_are_no_train_of_drops() {
    let taken = of_each(10, |seed| {
        of_rows_taken(&drawn::quick_rows(EVERY_DAY, seed, 5))
    });
    let taken: u64 = taken.into_iter().sum();
    assert!(taken >= 49, "{taken} of 50");
}
