//! A speaking program with nothing in it but the `tts` crate, which the real program is held
//! against: it says each line of its standard input, and cuts off what it says for the next.

use tts::Tts;

/// The speed mark of the real program's usual 165 words a minute: both say a text alike.
const RATE: f32 = -48.0;

fn main() {
    let mut tts = Tts::default().expect("the speech service answers");
    tts.set_rate(RATE).expect("a rate");
    tts.set_volume(100.0).expect("a volume");
    println!("ready");
    for line in std::io::stdin().lines() {
        let line = line.expect("a line");
        tts.speak(line, true).expect("it is said");
    }
    tts.stop().expect("it stops");
}
