//! Reading the counts that a knot is named by.

use super::{KnotError, Quantity};

impl Quantity {
    /// Gives `count` back when it is within bounds.
    ///
    /// # Errors
    /// [`KnotError::OutOfRange`] when it is not.
    pub fn check(self, count: u16) -> Result<u16, KnotError> {
        if self.bounds().contains(&count) {
            Ok(count)
        } else {
            Err(KnotError::OutOfRange {
                quantity: self,
                given: count.to_string(),
            })
        }
    }

    /// Reads a count as a person types it.
    ///
    /// # Errors
    /// [`KnotError::NotANumber`] for anything but digits, [`KnotError::OutOfRange`] for a
    /// whole number outside the bounds, however large or negative.
    pub fn parse(self, text: &str) -> Result<u16, KnotError> {
        let text = text.trim();
        let digits = text.strip_prefix(['-', '+']).unwrap_or(text);
        if digits.is_empty() || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
            return Err(KnotError::NotANumber {
                quantity: self,
                given: text.to_owned(),
            });
        }
        match text.parse() {
            Ok(count) => self.check(count),
            Err(_) => Err(KnotError::OutOfRange {
                quantity: self,
                given: text.to_owned(),
            }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bounds_are_inclusive_and_named_in_the_error() {
        assert_eq!(Quantity::Leads.parse(" 2 "), Ok(2));
        assert_eq!(Quantity::Bights.parse("999"), Ok(999));
        assert_eq!(Quantity::Passes.parse("9"), Ok(9));
        for (quantity, text) in [
            (Quantity::Leads, "1"),
            (Quantity::Bights, "1000"),
            (Quantity::Passes, "0"),
            (Quantity::Leads, "-5"),
            (Quantity::Leads, "99999999999999999999"),
        ] {
            assert_eq!(
                quantity.parse(text),
                Err(KnotError::OutOfRange {
                    quantity,
                    given: text.to_owned()
                })
            );
        }
    }

    #[test]
    fn words_and_fractions_are_not_numbers() {
        for text in ["", "  ", "five", "5.5", "5x", "-", "٣"] {
            assert!(
                matches!(
                    Quantity::Leads.parse(text),
                    Err(KnotError::NotANumber { .. })
                ),
                "{text}"
            );
        }
    }
}
