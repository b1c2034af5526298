//! Tubes and cords that the tyer keeps by name.

use std::collections::BTreeMap;

use thiserror::Error;

use crate::bench::{Cord, STANDARD_CORDS, Tube};

/// What is kept, in the order of the names.
///
/// ```
/// use marlinspeak::bench::{Cord, Millimetres};
/// use marlinspeak::guide::{Presets, SetupField, SetupForm};
///
/// // The bell rope of the loft is kept, and named where its diameter could stand.
/// let mut presets = Presets::default();
/// let cord = Cord::new(Millimetres::parse("6")?);
/// presets.cords.insert(Presets::cord_name("bell rope")?, cord.clone());
/// let form = SetupForm::from_iter([(SetupField::Cord, "bell rope")]);
/// assert_eq!(form.cord(&presets)?, Some(cord));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Presets {
    /// Tubes with their rows, wall and pins.
    pub tubes: BTreeMap<String, Tube>,
    /// Cords with their diameter, and what is known of them.
    pub cords: BTreeMap<String, Cord>,
}

/// Why something cannot be kept under a name. The words for it that a tyer reads are in `i18n/`;
/// the text here is for logs and for users of the library.
///
/// ```
/// use marlinspeak::guide::{PresetNameError, Presets};
///
/// // It would be taken for a length.
/// let given = "4mm blue".to_owned();
/// assert_eq!(Presets::cord_name(&given), Err(PresetNameError::Unusable { given }));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum PresetNameError {
    /// It does not begin with a letter, is longer than [`Presets::LONGEST_NAME`], or holds
    /// something that cannot be typed.
    #[error("{given:?} is no name that anything can be kept by")]
    Unusable {
        /// The name as given, trimmed.
        given: String,
    },
    /// A cord standard has it already.
    #[error("{given:?} is the name of a standard cord")]
    IsStandard {
        /// The name as given, trimmed.
        given: String,
    },
}

impl Presets {
    /// Letters that a name may have.
    pub const LONGEST_NAME: usize = 40;

    /// Reads the name for a tube. It begins with a letter, so that it is never taken for a
    /// length.
    ///
    /// # Errors
    /// [`PresetNameError::Unusable`].
    pub fn tube_name(text: &str) -> Result<String, PresetNameError> {
        let given = text.trim();
        let is_usable = given.starts_with(char::is_alphabetic)
            && given.chars().count() <= Self::LONGEST_NAME
            && !given.chars().any(char::is_control);
        if is_usable {
            Ok(given.to_owned())
        } else {
            Err(PresetNameError::Unusable {
                given: given.to_owned(),
            })
        }
    }

    /// Reads the name for a cord, which is not the designation of a standard either.
    ///
    /// # Errors
    /// A [`PresetNameError`].
    pub fn cord_name(text: &str) -> Result<String, PresetNameError> {
        let name = Self::tube_name(text)?;
        let is_standard = STANDARD_CORDS
            .iter()
            .any(|standard| standard.designation.eq_ignore_ascii_case(&name));
        if is_standard {
            Err(PresetNameError::IsStandard { given: name })
        } else {
            Ok(name)
        }
    }
}
