//! A number that is counted up by presses, or typed.

/// A number within bounds, counted up by one press after another, or typed digit by digit.
///
/// Counted, next is one more and back takes it; typed, next takes it and back takes the last digit
/// away. So one pedal for next and one for back are enough, and so are keys.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::session) struct Tally {
    number: u16,
    least: u16,
    most: u16,
    typed: String,
}

/// What a press on a tally came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::session) enum Counted {
    /// The number is another one.
    Changed,
    /// That is the number.
    Taken,
}

impl Tally {
    /// From `least` to `most`, beginning at the least.
    pub const fn new(least: u16, most: u16) -> Self {
        Self {
            number: least,
            least,
            most,
            typed: String::new(),
        }
    }

    /// The same beginning at this number, if it is within the bounds.
    #[must_use]
    pub fn at(self, number: u16) -> Self {
        Self {
            number: number.clamp(self.least, self.most),
            ..self
        }
    }

    /// The least and the most that it can be.
    pub const fn bounds(&self) -> (u16, u16) {
        (self.least, self.most)
    }

    /// Whether it is typed: then next takes the number, and back takes its last digit away.
    pub const fn is_typed(&self) -> bool {
        !self.typed.is_empty()
    }

    /// The number so far.
    pub const fn number(&self) -> u16 {
        self.number
    }

    /// Takes a press of next or back. Beyond the most it begins at the least again.
    pub fn press(&mut self, is_next: bool) -> Counted {
        match (self.typed.is_empty(), is_next) {
            (true, true) => {
                self.number = if self.number >= self.most {
                    self.least
                } else {
                    self.number + 1
                };
                Counted::Changed
            }
            (true, false) | (false, true) => Counted::Taken,
            (false, false) => {
                self.typed.pop();
                self.read();
                Counted::Changed
            }
        }
    }

    /// Takes a digit; one that leads beyond the most begins the number anew, and what is no digit is
    /// left be.
    pub fn type_in(&mut self, key: &str) -> bool {
        if key.len() != 1 || !key.bytes().all(|byte| byte.is_ascii_digit()) {
            return false;
        }
        self.typed.push_str(key);
        if self
            .typed
            .parse()
            .is_ok_and(|number: u16| number > self.most)
        {
            key.clone_into(&mut self.typed);
        }
        self.read();
        true
    }

    fn read(&mut self) {
        let typed = self.typed.parse().unwrap_or(self.least);
        self.number = typed.clamp(self.least, self.most);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_counted_by_next_and_taken_by_back() {
        let mut tally = Tally::new(1, 3);
        assert_eq!(tally.press(true), Counted::Changed);
        assert_eq!(tally.number(), 2);
        tally.press(true);
        tally.press(true);
        assert_eq!(tally.number(), 1, "beyond the most comes the least");
        assert_eq!(tally.press(false), Counted::Taken);
        assert_eq!(tally.at(9).number(), 3);
    }

    #[test]
    fn it_is_typed_and_taken_by_next() {
        let mut tally = Tally::new(0, 120);
        assert!(tally.type_in("1") && tally.type_in("2") && !tally.type_in("x"));
        assert_eq!(tally.number(), 12);
        assert_eq!(tally.press(false), Counted::Changed);
        assert_eq!(tally.number(), 1);
        tally.type_in("1");
        tally.type_in("3");
        assert_eq!(tally.number(), 113);
        tally.type_in("7");
        assert_eq!(tally.number(), 7, "1137 is beyond the most");
        assert_eq!(tally.press(true), Counted::Taken);
    }
}
