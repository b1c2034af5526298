//! An ear: text that is heard from its beginning on, a few words at a time.

use super::meaning::{Pin, Rim};

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

    /// Hears one of these, of which one must come next. `what` is said when none does.
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

    /// Hears everything up to these words, and those.
    pub fn until(&mut self, end: &str) -> Result<&'t str, String> {
        let (heard, rest) = self.rest.split_once(end).ok_or("an endless name")?;
        self.rest = rest;
        Ok(heard)
    }

    /// Hears one thing after another with these words between them, and the full stop after the
    /// last. `item` hears one, and is told whether it is the first.
    pub fn list<T>(
        &mut self,
        between: &str,
        mut item: impl FnMut(&mut Self, bool) -> Result<T, String>,
    ) -> Result<Vec<T>, String> {
        let mut items = vec![item(self, true)?];
        while self.hears(between) {
            items.push(item(self, false)?);
        }
        self.must(".")?;
        Ok(items)
    }

    /// Hears sentences that tell by their first words which of the row they are.
    pub fn row<T>(
        &mut self,
        starts: &RowStarts,
        mut item: impl FnMut(&mut Self) -> Result<T, String>,
    ) -> Result<Vec<T>, String> {
        // Whether it is the first, and whether more follow.
        let starts = [
            (starts.first, (true, true)),
            (starts.only, (true, false)),
            (starts.next, (false, true)),
            (starts.last, (false, false)),
        ];
        let mut items = Vec::new();
        loop {
            let (is_first, has_more) = self.must_one_of("cord", &starts)?;
            if is_first != items.is_empty() {
                return Err("out of order".to_owned());
            }
            items.push(item(self)?);
            if !has_more {
                return Ok(items);
            }
        }
    }
}

/// How a sentence begins that is the only one of its row, the first of several, one of those
/// between, and the last.
pub struct RowStarts {
    pub only: &'static str,
    pub first: &'static str,
    pub next: &'static str,
    pub last: &'static str,
}
