//! How long a text takes to be spoken.

use super::{Spoken, Words};

/// Words a minute: the middle of the 150 to 200 that listeners find comfortable.
const WORDS_A_MINUTE: f64 = 165.0;

/// What the length of a language's words is counted by; all from memory.
struct Measure {
    /// The name of its folder of messages.
    tag: &'static str,
    /// Syllables in a word of running text, on the mean.
    mean: f64,
    /// Syllables of the numbers from 0 to 19.
    small: [u16; 20],
    /// Syllables of 20, 30 … 90.
    tens: [u16; 8],
    /// Endings that are written and not spoken.
    mute: &'static [&'static str],
}

const MEASURES: [Measure; 4] = [
    Measure {
        tag: "en",
        mean: 1.5,
        small: [2, 1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 3, 1, 2, 2, 2, 2, 3, 2, 2],
        tens: [2, 2, 2, 2, 2, 3, 2, 2],
        mute: &["e"],
    },
    Measure {
        tag: "de",
        mean: 1.8,
        small: [1, 1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2],
        tens: [3, 3, 3, 3, 3, 3, 3, 3],
        mute: &[],
    },
    Measure {
        tag: "fr",
        mean: 1.6,
        small: [2, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 1, 1, 2, 2, 2],
        tens: [1, 1, 2, 2, 2, 3, 3, 3],
        mute: &["es", "e"],
    },
    Measure {
        tag: "es",
        mean: 1.9,
        small: [2, 2, 1, 1, 2, 2, 1, 2, 2, 2, 1, 2, 2, 2, 3, 2, 4, 4, 4, 4],
        tens: [3, 3, 4, 4, 4, 4, 4, 4],
        mute: &[],
    },
];

impl Words {
    /// Seconds that a text takes at 165 words a minute, without the pauses that a voice makes.
    ///
    /// Its syllables are counted (a run of vowels is one, a number is counted as it is read), and a
    /// word stands for as many of them as a word of the language has on the mean: short words are
    /// quicker to say. A language without a measure of its own is counted as English.
    ///
    /// Read aloud by espeak-ng 1.51 at 165 words a minute, pauses and all, a whole job in plain words takes
    /// 1.2 times as long in English, 1.35 times in German, 0.95 times in French, 1.05 times in Spanish.
    pub fn seconds(&self, said: &Spoken) -> f64 {
        self.seconds_of(said.as_str())
    }

    /// The same of a text that was spoken once.
    pub fn seconds_of(&self, said: &str) -> f64 {
        let tag = self.tag().language.as_str();
        let own = MEASURES.iter().find(|measure| measure.tag == tag);
        let measure = own.unwrap_or(&MEASURES[0]);
        let syllables: u32 = said
            .split(|letter: char| !letter.is_alphanumeric())
            .map(|word| u32::from(measure.syllables(word)))
            .sum();
        f64::from(syllables) / measure.mean / WORDS_A_MINUTE * 60.0
    }
}

impl Measure {
    fn syllables(&self, word: &str) -> u16 {
        if let Ok(number) = word.parse() {
            return self.of_number(number);
        }
        let lower = word.to_lowercase();
        let spoken = self
            .mute
            .iter()
            .find_map(|ending| lower.strip_suffix(ending))
            .filter(|rest| rest.contains(is_vowel))
            .unwrap_or(&lower);
        let mut runs = 0;
        let mut is_in_run = false;
        for letter in spoken.chars() {
            runs += u16::from(is_vowel(letter) && !is_in_run);
            is_in_run = is_vowel(letter);
        }
        // A word without a vowel is a letter or two read by name.
        runs.max(u16::from(!word.is_empty()))
    }

    fn of_number(&self, number: u32) -> u16 {
        let digit = |number: u32| usize::try_from(number).unwrap_or(usize::MAX);
        match number {
            0..20 => self.small[digit(number)],
            20..100 => {
                let tens = self.tens[digit(number / 10 - 2)];
                tens + if number.is_multiple_of(10) {
                    0
                } else {
                    self.small[digit(number % 10)]
                }
            }
            _ => {
                let hundreds = self.of_number(number / 100) + 2;
                hundreds
                    + if number.is_multiple_of(100) {
                        0
                    } else {
                        self.of_number(number % 100)
                    }
            }
        }
    }
}

fn is_vowel(letter: char) -> bool {
    "aeiouyàâäáæéèêëíîïóôöœúùûü".contains(letter)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn syllables(tag: &str, text: &str) -> u16 {
        let measure = MEASURES.iter().find(|measure| measure.tag == tag).unwrap();
        text.split(' ').map(|word| measure.syllables(word)).sum()
    }

    /// Counted by hand.
    #[test]
    fn syllables_are_counted_as_they_are_spoken() {
        assert_eq!(
            syllables("en", "Leg 11 From bottom pin 4 up and right to top pin 6"),
            16
        );
        assert_eq!(syllables("en", "outside the hole"), 4);
        assert_eq!(syllables("de", "Tauch unter einer Schnur durch"), 7);
        assert_eq!(syllables("fr", "Glissez sous 21 cordons"), 7);
        assert_eq!(syllables("es", "por debajo de 2 cabos"), 8);
    }
}
