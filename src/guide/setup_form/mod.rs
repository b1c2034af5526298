//! What the tyer says about object, cord and tube, as typed: at the options of a command or in
//! the fields of a form.

mod error;
mod field;
mod ground;
mod ground_error;

use strum::{EnumCount as _, VariantArray as _};

pub use error::SetupError;
pub use field::SetupField;
pub use ground_error::GroundError;

use super::Presets;
use crate::bench::{Cord, CordStandard, Firmness, Give, Millimetres, Thread, Tube};

/// What was typed for each [`SetupField`]; a blank text says nothing.
///
/// ```
/// use marlinspeak::guide::{Presets, SetupError, SetupField, SetupForm};
///
/// // A boathook of 30 mm and a tube of 4.5 cm with two rows of holes.
/// let form = SetupForm::from_iter([
///     (SetupField::Girth, "94.25"),
///     (SetupField::Tube, "4.5cm"),
///     (SetupField::Rows, "14,20"),
/// ]);
/// assert_eq!(form.ground()?.map(|ground| ground.thickest().get().round()), Some(30.0));
/// // The first row takes seven bights: a pin in every other hole.
/// let tube = form.tube(&Presets::default())?;
/// assert!(tube.is_some_and(|tube| tube.takes(7)));
/// # Ok::<(), SetupError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SetupForm {
    texts: [String; SetupField::COUNT],
}

impl<T: Into<String>> FromIterator<(SetupField, T)> for SetupForm {
    fn from_iter<I: IntoIterator<Item = (SetupField, T)>>(said: I) -> Self {
        let mut form = Self::default();
        for (field, text) in said {
            form.say(field, text);
        }
        form
    }
}

impl SetupForm {
    /// Fills in a field anew.
    pub fn say(&mut self, field: SetupField, text: impl Into<String>) {
        self.texts[field as usize] = text.into();
    }

    /// What was typed into a field, letter by letter.
    pub fn text(&self, field: SetupField) -> &str {
        &self.texts[field as usize]
    }

    /// What a field says, without blanks round it; none when it says nothing.
    pub fn said(&self, field: SetupField) -> Option<&str> {
        let text = self.text(field).trim();
        (!text.is_empty()).then_some(text)
    }

    /// Whether nothing was said at all.
    pub fn is_empty(&self) -> bool {
        SetupField::VARIANTS
            .iter()
            .all(|&field| self.said(field).is_none())
    }

    /// The length that a field says.
    ///
    /// # Errors
    /// [`SetupError::Length`].
    pub fn length(&self, field: SetupField) -> Result<Option<Millimetres>, SetupError> {
        let Some(given) = self.said(field) else {
            return Ok(None);
        };
        if given.contains(ground::BETWEEN) {
            let given = given.to_owned();
            return Err(GroundError::OneLength { field, given }.into());
        }
        let read = Millimetres::parse(given).map(Some);
        read.map_err(|error| SetupError::Length { field, error })
    }

    /// Whether a cord or a tube may be meant that is kept by name. A standard cord is known
    /// without what is kept.
    pub fn may_name_a_preset(&self) -> bool {
        let is_name = |field| {
            self.said(field)
                .is_some_and(|text| text.starts_with(char::is_alphabetic))
        };
        let is_standard = || self.cord(&Presets::default()).is_ok();
        is_name(SetupField::Tube) || is_name(SetupField::Cord) && !is_standard()
    }

    /// The cord, if it was said.
    ///
    /// # Errors
    /// A [`SetupError`] about the cord.
    pub fn cord(&self, presets: &Presets) -> Result<Option<Cord>, SetupError> {
        let give = self.give()?;
        let Some(cord) = self.cord_alone(presets)? else {
            return Ok(None);
        };
        Ok(Some(Cord {
            give: give.unwrap_or(cord.give),
            ..cord
        }))
    }

    fn cord_alone(&self, presets: &Presets) -> Result<Option<Cord>, SetupError> {
        let Some(given) = self.said(SetupField::Cord) else {
            return Ok(None);
        };
        if let Some(cord) = presets.cords.get(given) {
            return Ok(Some(cord.clone()));
        }
        if let Some(standard) = CordStandard::named(given) {
            let unmeasured = SetupError::CordUnmeasured {
                designation: standard.designation,
            };
            return standard.cord().map(Some).ok_or(unmeasured);
        }
        if given.starts_with(char::is_alphabetic) {
            return Err(SetupError::CordUnknown {
                given: given.to_owned(),
                kept: presets.cords.keys().cloned().collect(),
            });
        }
        let diameter = self.length(SetupField::Cord)?;
        Ok(diameter.map(Cord::new))
    }

    /// The standard cord that another name of it was understood as, if so.
    pub fn understood(&self, presets: &Presets) -> Option<&'static CordStandard> {
        let given = self.said(SetupField::Cord)?;
        if presets.cords.contains_key(given) {
            return None;
        }
        CordStandard::named(given)
            .filter(|standard| !standard.designation.eq_ignore_ascii_case(given))
    }

    /// How closely the cord lies, if anything was said of it.
    fn give(&self) -> Result<Option<Give>, SetupError> {
        let firm = self.said(SetupField::Firm);
        let give = self.said(SetupField::Give);
        match (firm, give) {
            (Some(_), Some(_)) => Err(SetupError::GiveTwice),
            (Some(given), None) => match given.parse::<Firmness>() {
                Ok(firmness) => Ok(Some(firmness.into())),
                Err(_) => Err(SetupError::FirmUnknown {
                    given: given.to_owned(),
                }),
            },
            (None, Some(given)) => Ok(Some(Give::parse(given)?)),
            (None, None) => Ok(None),
        }
    }

    /// The tube, if it was said: one from the presets with whatever else was said put in its
    /// place, or one of this diameter.
    ///
    /// # Errors
    /// An [`SetupError`] about the tube.
    pub fn tube(&self, presets: &Presets) -> Result<Option<Tube>, SetupError> {
        self.check_tube_is_wanted()?;
        let rows = self.said(SetupField::Rows).map(Tube::parse_rows);
        let rows = rows.transpose()?;
        let thread = self.said(SetupField::Thread).map(Thread::parse);
        let thread = thread.transpose()?;
        let pin = self.length(SetupField::Pin)?;
        let wall = self.length(SetupField::Wall)?;
        let ring_width = self.length(SetupField::RingWidth)?;
        let tube_length = self.length(SetupField::TubeLength)?;
        let Some(given) = self.said(SetupField::Tube) else {
            let of_tube = OF_TUBE
                .into_iter()
                .find(|&field| self.said(field).is_some());
            return of_tube.map_or(Ok(None), |field| Err(SetupError::WithoutTube(field)));
        };
        let kept = if given.starts_with(char::is_alphabetic) {
            let kept = presets
                .tubes
                .get(given)
                .ok_or_else(|| SetupError::TubeUnknown {
                    given: given.to_owned(),
                    kept: presets.tubes.keys().cloned().collect(),
                })?;
            kept.clone()
        } else {
            let diameter = self.length(SetupField::Tube)?;
            Tube::plain(diameter.ok_or(SetupError::Missing(SetupField::Tube))?)
        };
        let rows = rows.or_else(|| kept.rows().map(<[u16]>::to_vec));
        let tube = match rows {
            Some(rows) => Tube::ringed(kept.diameter, &rows)?,
            None if ring_width.is_some() => return Err(SetupError::WithoutRings),
            None => Tube::plain(kept.diameter),
        };
        let mut tube = tube.with_ring_width(ring_width.or(kept.ring_width()));
        tube.wall = wall.or(kept.wall);
        tube.pin_length = pin.or(kept.pin_length);
        tube.thread = thread.or(kept.thread);
        tube.length = tube_length.or(kept.length);
        error::check(&tube)?;
        Ok(Some(tube))
    }
}

/// What is said of a tube besides itself.
const OF_TUBE: [SetupField; 6] = [
    SetupField::Rows,
    SetupField::Pin,
    SetupField::Thread,
    SetupField::Wall,
    SetupField::RingWidth,
    SetupField::TubeLength,
];
