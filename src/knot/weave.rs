//! Which rows a rising leg goes over.

use std::fmt;

use super::KnotError;

/// The weave: for every row of crossings, whether the rising leg goes over there. The falling
/// leg does the opposite.
///
/// ```
/// use marlinspeak::knot::Weave;
///
/// let herringbone = Weave::parse("2")?;
/// assert!(herringbone.rising_over(2) && !herringbone.rising_over(3));
/// // Over two under two goes round the rims without a fault only where two divides the rows.
/// assert!(herringbone.is_even(4) && !herringbone.is_even(3));
/// // Any other weave is a row code from the bottom up.
/// assert_eq!(Weave::parse("ouuo")?.check(4), Ok(()));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Weave {
    /// Over n, under n, beginning with over in row 1.
    Run(u16),
    /// One entry a row from the bottom up: does the rising leg go over?
    Rows(Box<[bool]>),
}

impl Default for Weave {
    /// Over one, under one.
    fn default() -> Self {
        Self::Run(1)
    }
}

impl Weave {
    /// Reads a weave as the tyer writes it: a run length such as `2`, or a row code of the
    /// letters `o` (over) and `u` (under) from the bottom row up, such as `ouuo`.
    ///
    /// # Errors
    /// [`KnotError::WeaveUnreadable`] for anything else. Whether it fits a knot is asked by
    /// [`Weave::check`].
    pub fn parse(text: &str) -> Result<Self, KnotError> {
        let text = text.trim();
        let unreadable = || KnotError::WeaveUnreadable {
            given: text.to_owned(),
        };
        if !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit()) {
            // A number too large to hold is too long a run for any knot; `check` says so.
            return match text.parse().unwrap_or(u16::MAX) {
                0 => Err(unreadable()),
                run => Ok(Self::Run(run)),
            };
        }
        let rows: Option<Box<[bool]>> = text
            .chars()
            .map(|letter| match letter {
                'o' | 'O' => Some(true),
                'u' | 'U' => Some(false),
                _ => None,
            })
            .collect();
        rows.filter(|rows| !rows.is_empty())
            .map(Self::Rows)
            .ok_or_else(unreadable)
    }

    /// Asks whether the weave fits a knot with this many rows of crossings (of a plain one leads − 1).
    ///
    /// # Errors
    /// [`KnotError::RunTooLong`] or [`KnotError::CodeLength`].
    pub fn check(&self, rows: u16) -> Result<(), KnotError> {
        match self {
            Self::Run(run) if *run > rows => Err(KnotError::RunTooLong {
                given: run.to_string(),
                rows,
            }),
            Self::Rows(code) if code.len() != usize::from(rows) => Err(KnotError::CodeLength {
                letters: code.len(),
                rows,
            }),
            _ => Ok(()),
        }
    }

    /// Whether the rising leg goes over in `row`, 1 the lowest.
    ///
    /// # Panics
    /// When a row code has no such row; a [`super::Knot`] never asks for one.
    pub fn rising_over(&self, row: u16) -> bool {
        match self {
            Self::Run(run) => ((row - 1) / run).is_multiple_of(2),
            Self::Rows(code) => code[usize::from(row - 1)],
        }
    }

    /// Whether the rising leg goes over, for each of so many rows from the bottom up.
    ///
    /// # Panics
    /// As [`Self::rising_over`], when a row is asked for that a row code does not have.
    pub(super) fn rising(&self, rows: u16) -> impl Iterator<Item = bool> {
        // Without a division for each row, as `rising_over` needs it.
        let (mut over, mut left) = (false, 0);
        (1..=rows).map(move |row| match self {
            Self::Run(run) => {
                if left == 0 {
                    (over, left) = (!over, *run);
                }
                left -= 1;
                over
            }
            Self::Rows(code) => code[usize::from(row - 1)],
        })
    }

    /// The weave that looks alike with overs and unders exchanged, over so many rows. It is
    /// even when this one is, and often takes far fewer tucks, or far more.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::knot::Weave;
    ///
    /// let twin = Weave::Run(1).twin(4);
    /// assert_eq!(twin.to_string(), "uouo");
    /// assert_eq!(twin.twin(4), Weave::Run(1));
    /// ```
    #[must_use]
    pub fn twin(&self, rows: u16) -> Self {
        let exchanged: Box<[bool]> = (1..=rows).map(|row| !self.rising_over(row)).collect();
        let as_run = (1..=rows).find(|&run| {
            (1..=rows)
                .zip(&exchanged)
                .all(|(row, over)| Self::Run(run).rising_over(row) == *over)
        });
        as_run.map_or(Self::Rows(exchanged), Self::Run)
    }

    /// The run of which this is the twin over so many rows, if it is one: over and under by turns
    /// as in that, but begun with under.
    pub fn twin_run(&self, rows: u16) -> Option<u16> {
        match (self, self.twin(rows)) {
            (Self::Rows(_), Self::Run(run)) => Some(run),
            _ => None,
        }
    }

    /// Whether overs and unders come in runs of one length all along the strand, round both
    /// rims, in a knot with this many rows.
    ///
    /// At a rim the cord turns from rising to falling in the same row, so a run always ends
    /// there: every run must be whole when it does. Over-n-under-n is even exactly when n
    /// divides leads − 1.
    pub fn is_even(&self, rows: u16) -> bool {
        match self {
            Self::Run(run) => rows.is_multiple_of(*run),
            Self::Rows(code) => Self::runs_alike(code),
        }
    }

    /// Whether overs and unders in this order come in runs of one length.
    pub(super) fn runs_alike(code: &[bool]) -> bool {
        let mut runs = code.chunk_by(|one, next| one == next).map(<[bool]>::len);
        let first = runs.next();
        runs.all(|run| Some(run) == first)
    }
}

impl fmt::Display for Weave {
    /// The same text that [`Weave::parse`] reads.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Run(run) => write!(f, "{run}"),
            Self::Rows(code) => code
                .iter()
                .try_for_each(|over| f.write_str(if *over { "o" } else { "u" })),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_back_what_it_writes() {
        for text in ["1", "2", "12", "o", "ouuo", "uo"] {
            assert_eq!(Weave::parse(text).unwrap().to_string(), text);
        }
        assert_eq!(Weave::parse(" OuO ").unwrap().to_string(), "ouo");
    }

    #[test]
    fn refuses_what_is_neither_run_nor_code() {
        for text in ["", "0", "-1", "over", "o1", "o u", "1.5"] {
            assert!(Weave::parse(text).is_err(), "{text}");
        }
    }

    #[test]
    fn fits_only_knots_with_rows_enough() {
        assert_eq!(Weave::Run(3).check(3), Ok(()));
        assert!(Weave::Run(4).check(3).is_err());
        assert!(Weave::parse("99999999").unwrap().check(998).is_err());
        assert_eq!(Weave::parse("ouo").unwrap().check(3), Ok(()));
        assert_eq!(
            Weave::parse("ouo").unwrap().check(4),
            Err(KnotError::CodeLength {
                letters: 3,
                rows: 4
            })
        );
    }

    #[test]
    fn over_two_under_two_needs_an_even_number_of_rows() {
        assert!(Weave::Run(2).is_even(4));
        assert!(!Weave::Run(2).is_even(5));
        assert!(Weave::parse("oouu").unwrap().is_even(4));
        assert!(!Weave::parse("ouuo").unwrap().is_even(4));
    }
}
