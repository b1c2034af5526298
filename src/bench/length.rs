//! Lengths in millimetres, and reading them as a tyer types them.

use std::fmt;

use thiserror::Error;

/// Millimetres in an inch.
const INCH: f64 = 25.4;
/// Millimetres in a foot.
const FOOT: f64 = 12.0 * INCH;

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
    /// The number is a decimal with a point or a comma (`1.25`, `3,5`), a fraction (`5/32`, `½`)
    /// or a whole number and a fraction (`1 1/4`, `1-1/4`). The unit is `mm`, `cm`, `m`, `in` (also
    /// `inch`, `"`) or `ft` (also `'`), inches and feet also as German, Spanish and French write
    /// them; feet may have inches after them (`5ft 3in`). A number without a unit is in
    /// millimetres, but for a fraction, which is asked back: it is inches on most rules.
    ///
    /// # Errors
    /// A [`LengthError`] that holds the text as given, trimmed.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{LengthError, Millimetres};
    ///
    /// let read = |text| Millimetres::parse(text).map(Millimetres::get);
    /// assert_eq!(read("3,5cm"), Ok(35.0));
    /// assert!((read("5' 3\"").unwrap() - 1600.2).abs() < 1e-6);
    /// assert!(matches!(read("5/32"), Err(LengthError::BareFraction { .. })));
    /// ```
    pub fn parse(text: &str) -> Result<Self, LengthError> {
        Self::parse_up_to(text, Self::MOST)
    }

    /// The same for what may be longer, or must be shorter, than [`Self::MOST`].
    ///
    /// # Errors
    /// As [`Self::parse`], with [`LengthError::OutOfRange`] beyond `most`.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{LONGEST_SPOOL, Millimetres};
    ///
    /// assert!(Millimetres::parse("200 m").is_err());
    /// assert_eq!(Millimetres::parse_up_to("200 m", LONGEST_SPOOL).map(Millimetres::get), Ok(200_000.0));
    /// ```
    pub fn parse_up_to(text: &str, most: Self) -> Result<Self, LengthError> {
        let given = text.trim();
        let unreadable = || LengthError::Unreadable {
            given: given.to_owned(),
        };
        let spelt_out = spell_out_fractions(given);
        let (number, unit, rest) = split(&spelt_out);
        if number.is_empty() {
            return Err(unreadable());
        }
        let scale = |unit: &str| {
            scale(unit).ok_or_else(|| LengthError::UnknownUnit {
                given: given.to_owned(),
                unit: unit.to_owned(),
            })
        };
        let first = scale(unit)?;
        let (negative, digits) = match number.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, number.strip_prefix('+').unwrap_or(number)),
        };
        if first <= 1.0 && looks_like_thousands(digits) {
            return Err(LengthError::ThousandsOrDecimals {
                given: given.to_owned(),
            });
        }
        let mut value = read_number(digits).ok_or_else(unreadable)? * first;
        if !rest.is_empty() {
            let (inches, unit, more) = split(rest);
            let is_feet_and_inches = first == FOOT && scale(unit)? == INCH && more.is_empty();
            if !is_feet_and_inches {
                return Err(unreadable());
            }
            value += read_number(inches).ok_or_else(unreadable)? * INCH;
        }
        let value = if negative { -value } else { value };
        if unit.is_empty() && digits.contains('/') && value > 0.0 {
            return Err(LengthError::BareFraction {
                given: given.to_owned(),
            });
        }
        Self::checked_up_to(value, given, most)
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
        Self::checked_up_to(millimetres, given, Self::MOST)
    }

    fn checked_up_to(millimetres: f64, given: &str, most: Self) -> Result<Self, LengthError> {
        let given = || given.to_owned();
        if millimetres.is_nan() {
            Err(LengthError::Unreadable { given: given() })
        } else if millimetres <= 0.0 {
            Err(LengthError::NotPositive { given: given() })
        } else if (Self::LEAST.0..=most.0).contains(&millimetres) {
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

/// A number, its unit and what comes after it, all without blanks round them.
fn split(text: &str) -> (&str, &str, &str) {
    let is_of_number = |c: char| c.is_ascii_digit() || c.is_whitespace() || "+-.,/".contains(c);
    let end = text.find(|c| !is_of_number(c)).unwrap_or(text.len());
    let (number, rest) = text.split_at(end);
    let end = rest
        .find(|c: char| c.is_ascii_digit())
        .unwrap_or(rest.len());
    let (unit, rest) = rest.split_at(end);
    (number.trim(), unit.trim(), rest.trim())
}

/// The same text with `½` and its like written as fractions.
fn spell_out_fractions(text: &str) -> String {
    const FRACTIONS: [(char, &str); 9] = [
        ('½', "1/2"),
        ('¼', "1/4"),
        ('¾', "3/4"),
        ('⅛', "1/8"),
        ('⅜', "3/8"),
        ('⅝', "5/8"),
        ('⅞', "7/8"),
        ('⅓', "1/3"),
        ('⅔', "2/3"),
    ];
    let mut spelt_out = String::with_capacity(text.len());
    for letter in text.chars() {
        match FRACTIONS.iter().find(|(sign, _)| *sign == letter) {
            Some((_, fraction)) => {
                spelt_out.push(' ');
                spelt_out.push_str(fraction);
            }
            None => spelt_out.push(letter),
        }
    }
    spelt_out
}

fn scale(unit: &str) -> Option<f64> {
    Some(match unit.to_lowercase().as_str() {
        "" | "mm" => 1.0,
        "cm" => 10.0,
        "m" => 1000.0,
        "in" | "inch" | "inches" | "\"" | "″" | "”" | "zoll" | "po" | "pouce" | "pouces"
        | "pulg" | "pulgada" | "pulgadas" => INCH,
        "ft" | "foot" | "feet" | "'" | "′" | "’" | "fuß" | "fuss" | "pi" | "pied" | "pieds"
        | "pie" | "pies" => FOOT,
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
        (None, _) if first.contains('/') => match first.split_once('-') {
            Some((whole, fraction)) => Some(read_digits(whole)? + read_fraction(fraction)?),
            None => read_fraction(first),
        },
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

/// Why a length cannot be used. The words for it that a tyer reads are made elsewhere; its own are
/// for logs and for users of the library.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{LengthError, Millimetres};
///
/// let error = |text| Millimetres::parse(text).unwrap_err();
/// let given = "1,250".to_owned();
/// assert_eq!(error(" 1,250 "), LengthError::ThousandsOrDecimals { given });
/// assert!(error("3 spans").to_string().ends_with("is not one of mm, cm, m, in and ft"));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum LengthError {
    /// Not a number with a unit; also a fraction over nought.
    #[error("a length is a number and a unit, not {given:?}")]
    Unreadable {
        /// The text as given, trimmed.
        given: String,
    },
    /// A number, but no unit of length known here.
    #[error("{unit:?} in {given:?} is not one of mm, cm, m, in and ft")]
    UnknownUnit {
        /// The text as given, trimmed.
        given: String,
        /// What stands where the unit should be.
        unit: String,
    },
    /// A comma before three digits, which reads two ways in millimetres.
    #[error("the comma in {given:?} may be read two ways; write a point or no comma")]
    ThousandsOrDecimals {
        /// The text as given, trimmed.
        given: String,
    },
    /// A fraction without a unit: inches were likely meant, and millimetres would be read.
    #[error("{given:?} is a fraction without a unit; is it inches?")]
    BareFraction {
        /// The text as given, trimmed.
        given: String,
    },
    /// Zero or less.
    #[error("a length must be more than nought, not {given:?}")]
    NotPositive {
        /// The text as given, trimmed.
        given: String,
    },
    /// Shorter than [`Millimetres::LEAST`] or longer than the most, mostly [`Millimetres::MOST`].
    #[error("{given:?} is no length that can be used here")]
    OutOfRange {
        /// The text as given, trimmed.
        given: String,
    },
}
