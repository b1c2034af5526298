//! Lengths in millimetres, and reading them as a tyer types them.

use std::error::Error;
use std::fmt;

const MM_PER_INCH: f64 = 25.4;

/// A length in millimetres.
///
/// What a person gives is checked by [`Millimetres::new`] or [`Millimetres::parse`]; what the
/// program works out from checked lengths is always finite.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Millimetres(f64);

impl Millimetres {
    /// The shortest length taken from a person.
    pub const LEAST: Self = Self(0.01);
    /// The longest length taken from a person: 100 m.
    pub const MOST: Self = Self(100_000.0);

    /// A length given by a person, in millimetres.
    ///
    /// # Errors
    /// [`LengthError::NotPositive`], [`LengthError::OutOfRange`], or
    /// [`LengthError::Unreadable`] for what is not a number.
    pub fn new(millimetres: f64) -> Result<Self, LengthError> {
        Self::checked(millimetres, &millimetres.to_string())
    }

    /// Reads a length as a person types it: a number and a unit.
    ///
    /// The number is a decimal with a point or a comma (`1.25`, `3,5`), a fraction (`5/32`)
    /// or a whole number and a fraction (`1 1/4`). The unit is `mm`, `cm`, `m`, `in` (also
    /// `inch`, `"`) or `ft` (also `'`), inches and feet also as German, Spanish and French write
    /// them; without one the number is in millimetres.
    ///
    /// # Errors
    /// A [`LengthError`] that holds the text as given, trimmed.
    pub fn parse(text: &str) -> Result<Self, LengthError> {
        let given = text.trim();
        let unreadable = || LengthError::Unreadable {
            given: given.to_owned(),
        };
        let end = given
            .find(|c: char| !(c.is_ascii_digit() || c.is_whitespace() || "+-.,/".contains(c)))
            .unwrap_or(given.len());
        let (number, unit) = given.split_at(end);
        let (number, unit) = (number.trim(), unit.trim());
        if number.is_empty() {
            return Err(unreadable());
        }
        let scale = scale(unit).ok_or_else(|| LengthError::UnknownUnit {
            given: given.to_owned(),
            unit: unit.to_owned(),
        })?;
        let (negative, digits) = match number.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, number.strip_prefix('+').unwrap_or(number)),
        };
        if scale <= 1.0 && looks_like_thousands(digits) {
            return Err(LengthError::ThousandsOrDecimals {
                given: given.to_owned(),
            });
        }
        let value = read_number(digits).ok_or_else(unreadable)?;
        Self::checked(if negative { -value } else { value } * scale, given)
    }

    /// The number of millimetres.
    pub const fn get(self) -> f64 {
        self.0
    }

    /// A length worked out from checked ones.
    pub(super) const fn computed(millimetres: f64) -> Self {
        Self(millimetres)
    }

    fn checked(millimetres: f64, given: &str) -> Result<Self, LengthError> {
        let given = || given.to_owned();
        if millimetres.is_nan() {
            Err(LengthError::Unreadable { given: given() })
        } else if millimetres <= 0.0 {
            Err(LengthError::NotPositive { given: given() })
        } else if (Self::LEAST.0..=Self::MOST.0).contains(&millimetres) {
            Ok(Self(millimetres))
        } else {
            Err(LengthError::OutOfRange { given: given() })
        }
    }
}

impl fmt::Display for Millimetres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} mm", (self.0 * 100.0).round() / 100.0)
    }
}

fn scale(unit: &str) -> Option<f64> {
    Some(match unit.to_lowercase().as_str() {
        "" | "mm" => 1.0,
        "cm" => 10.0,
        "m" => 1000.0,
        "in" | "inch" | "inches" | "\"" | "″" | "”" | "zoll" | "po" | "pouce" | "pouces"
        | "pulg" | "pulgada" | "pulgadas" => MM_PER_INCH,
        "ft" | "foot" | "feet" | "'" | "′" | "’" | "fuß" | "fuss" | "pi" | "pied" | "pieds"
        | "pie" | "pies" => 12.0 * MM_PER_INCH,
        _ => return None,
    })
}

/// Whether a number such as `1,250` may mean one and a quarter or twelve hundred and fifty.
fn looks_like_thousands(number: &str) -> bool {
    number.split_once(',').is_some_and(|(whole, after)| {
        after.len() == 3 && after.bytes().all(|b| b.is_ascii_digit()) && !whole.starts_with('0')
    })
}

fn read_number(text: &str) -> Option<f64> {
    let mut parts = text.split_whitespace();
    let (first, second, more) = (parts.next()?, parts.next(), parts.next());
    match (second, more) {
        (None, _) if first.contains('/') => read_fraction(first),
        (None, _) => read_decimal(first),
        (Some(second), None) => Some(read_digits(first)? + read_fraction(second)?),
        (Some(_), Some(_)) => None,
    }
}

fn read_fraction(text: &str) -> Option<f64> {
    let (above, below) = text.split_once('/')?;
    let (above, below) = (read_digits(above)?, read_digits(below)?);
    let fraction = above / below;
    fraction.is_finite().then_some(fraction)
}

fn read_decimal(text: &str) -> Option<f64> {
    match text.split_once(['.', ',']) {
        None => read_digits(text),
        Some((whole, after)) => {
            let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
            if !digits(whole) || !digits(after) || whole.len() + after.len() == 0 {
                return None;
            }
            format!("0{whole}.{after}0").parse().ok()
        }
    }
}

fn read_digits(text: &str) -> Option<f64> {
    let all_digits = !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    all_digits.then(|| text.parse().ok()).flatten()
}

/// Why a length cannot be used. The words for it that a tyer reads are made elsewhere;
/// [`fmt::Display`] here is for logs and for users of the library.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LengthError {
    /// Not a number with a unit; also a fraction over nought.
    Unreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// A number, but no unit of length known here.
    UnknownUnit {
        /// The text as given, trimmed.
        given: String,
        /// What stands where the unit should be.
        unit: String,
    },
    /// A comma before three digits, which reads two ways in millimetres.
    ThousandsOrDecimals {
        /// The text as given, trimmed.
        given: String,
    },
    /// A fraction without a unit: inches were likely meant, and millimetres would be read.
    BareFraction {
        /// The text as given, trimmed.
        given: String,
    },
    /// Zero or less.
    NotPositive {
        /// The text as given, trimmed.
        given: String,
    },
    /// Shorter than [`Millimetres::LEAST`] or longer than [`Millimetres::MOST`].
    OutOfRange {
        /// The text as given, trimmed.
        given: String,
    },
}

impl fmt::Display for LengthError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable { given } => {
                write!(f, "a length is a number and a unit, not {given:?}")
            }
            Self::UnknownUnit { given, unit } => {
                write!(
                    f,
                    "{unit:?} in {given:?} is not one of mm, cm, m, in and ft"
                )
            }
            Self::ThousandsOrDecimals { given } => write!(
                f,
                "the comma in {given:?} may be read two ways; write a point or no comma"
            ),
            Self::BareFraction { given } => {
                write!(f, "{given:?} is a fraction without a unit; is it inches?")
            }
            Self::NotPositive { given } => {
                write!(f, "a length must be more than nought, not {given:?}")
            }
            Self::OutOfRange { given } => write!(
                f,
                "a length must be {} to {}, not {given:?}",
                Millimetres::LEAST,
                Millimetres::MOST
            ),
        }
    }
}

impl Error for LengthError {}
