//! An ear: text that is heard from its beginning on, a few words at a time.

use super::Pin;
use super::Rim;

/// What is still to be heard.
pub struct Ear<'t> {
    rest: &'t str,
}

impl<'t> Ear<'t> {
    pub fn new(text: &'t str) -> Self {
        Self { rest: text }
    }

    /// What was not heard yet.
    pub fn rest(&self) -> &'t str {
        self.rest
    }

    /// Whether these words come next; then they are heard.
    pub fn hears(&mut self, words: &str) -> bool {
        let rest = self.rest.strip_prefix(words);
        self.rest = rest.unwrap_or(self.rest);
        rest.is_some()
    }

    /// Hears these words, which must come next.
    pub fn must(&mut self, words: &str) -> Result<(), String> {
        if self.hears(words) {
            Ok(())
        } else {
            Err(format!("no {words:?}"))
        }
    }

    /// Hears one of these, the first that fits, and tells what it means.
    pub fn one_of<T: Copy>(&mut self, choices: &[(&str, T)]) -> Option<T> {
        let heard = choices.iter().find(|(words, _)| self.hears(words))?;
        Some(heard.1)
    }

    /// The same, where one of them must come next. `what` is said when none does.
    pub fn must_one_of<T: Copy>(&mut self, what: &str, choices: &[(&str, T)]) -> Result<T, String> {
        self.one_of(choices).ok_or_else(|| format!("no {what}"))
    }

    /// Whether a number comes next.
    pub fn has_number(&self) -> bool {
        self.rest.starts_with(|first: char| first.is_ascii_digit())
    }

    /// Hears a number in digits.
    pub fn number(&mut self) -> Result<u64, String> {
        let digits = self.rest.bytes().take_while(u8::is_ascii_digit).count();
        let (number, rest) = self.rest.split_at(digits);
        let number = number.parse().map_err(|_| "no number".to_owned())?;
        self.rest = rest;
        Ok(number)
    }

    /// Hears two numbers with these words between them.
    pub fn pair(&mut self, between: &str) -> Result<(u64, u64), String> {
        let first = self.number()?;
        self.must(between)?;
        Ok((first, self.number()?))
    }

    /// Hears a pin: the words before its number name the rim.
    pub fn pin_of(&mut self, rims: &[(&str, Rim)]) -> Result<Pin, String> {
        let rim = self.must_one_of("pin", rims)?;
        Ok((rim, self.number()?))
    }

    /// Hears everything up to a letter, and that letter.
    pub fn until(&mut self, end: char) -> Result<&'t str, String> {
        let (heard, rest) = self.rest.split_once(end).ok_or("an endless name")?;
        self.rest = rest;
        Ok(heard)
    }
}
