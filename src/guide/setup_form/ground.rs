//! What is covered, read from what was said: a round thing, a taper, a ball, a mat; slid on or tied
//! in place.

use std::f64::consts::PI;

use super::{GroundError, OF_TUBE, SetupError, SetupField, SetupForm};
use crate::bench::{Cord, Ground, LengthError, Millimetres, Object};

/// The ways to say what is covered, of which one is enough.
const GROUNDS: [SetupField; 4] = [
    SetupField::Object,
    SetupField::Girth,
    SetupField::Ball,
    SetupField::Mat,
];

/// Stands between two lengths, since a comma is of decimals.
pub(super) const BETWEEN: char = ':';

impl SetupForm {
    /// What is covered, if it was said. The length of a taper is the length to be covered.
    ///
    /// # Errors
    /// A [`SetupError`] about what is covered.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Ground, Millimetres};
    /// use marlinspeak::guide::{GroundError, SetupField, SetupForm};
    ///
    /// let mm = |length| Millimetres::new(length).unwrap();
    /// let mut tiller = SetupForm::from_iter([(SetupField::Object, "32:26mm")]);
    /// assert_eq!(tiller.ground(), Err(GroundError::TaperWithoutCover.into()));
    /// tiller.say(SetupField::Cover, "120");
    /// let taper = Ground::Taper { bottom: mm(32.0), top: mm(26.0), over: mm(120.0) };
    /// assert_eq!(tiller.ground(), Ok(Some(taper)));
    /// ```
    pub fn ground(&self) -> Result<Option<Ground>, SetupError> {
        let mut said = GROUNDS
            .into_iter()
            .filter(|field| self.said(*field).is_some());
        let Some(field) = said.next() else {
            return Ok(None);
        };
        if let Some(other) = said.next() {
            return Err(GroundError::Twice(field, other).into());
        }
        let ground = match field {
            SetupField::Girth => self.round_by_girth()?,
            SetupField::Ball => self.length(field)?.map(Ground::Ball),
            SetupField::Mat => self.mat()?,
            _ => self.round_or_taper()?,
        };
        Ok(ground)
    }

    /// Whether the knot is tied on what it covers, so that nothing is slid on: where that is said,
    /// and always for a mat.
    ///
    /// # Errors
    /// [`GroundError::InPlaceUnknown`], and [`GroundError::InPlaceOnNothing`] where nothing is named.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{SetupField, SetupForm};
    ///
    /// let mut boathook = SetupForm::from_iter([(SetupField::Object, "30mm")]);
    /// assert_eq!(boathook.is_in_place(), Ok(false));
    /// boathook.say(SetupField::InPlace, "yes");
    /// assert_eq!(boathook.is_in_place(), Ok(true));
    /// ```
    pub fn is_in_place(&self) -> Result<bool, SetupError> {
        let is_said = match self.said(SetupField::InPlace) {
            None | Some("no") => false,
            Some("yes") => true,
            Some(given) => {
                let given = given.to_owned();
                return Err(GroundError::InPlaceUnknown { given }.into());
            }
        };
        if is_said && GROUNDS.iter().all(|field| self.said(*field).is_none()) {
            return Err(GroundError::InPlaceOnNothing.into());
        }
        Ok(is_said || self.said(SetupField::Mat).is_some())
    }

    /// How much of it is to be covered: what was said, or all of what has an end. Of a mat that is
    /// the way from the edge to the hole, of a ball from pole to pole.
    ///
    /// # Errors
    /// [`SetupError::Length`], and [`GroundError::WholeWithCover`].
    pub(in crate::guide) fn cover_of(
        &self,
        ground: Ground,
    ) -> Result<Option<Millimetres>, SetupError> {
        let said = self.length(SetupField::Cover)?;
        let (whole, field) = match ground {
            Ground::Flat { outer, hole } => {
                let hole = hole.map_or(0.0, Millimetres::get);
                ((outer.get() - hole) / 2.0, SetupField::Mat)
            }
            Ground::Ball(diameter) => (diameter.get() * PI / 2.0, SetupField::Ball),
            Ground::Round(_) | Ground::Taper { .. } => return Ok(said),
        };
        match said {
            Some(_) => Err(GroundError::WholeWithCover(field).into()),
            None => Ok(Millimetres::new(whole).ok()),
        }
    }

    /// That a cord goes round a taper at both ends.
    pub(in crate::guide) fn check_ends(ground: Ground, cord: &Cord) -> Result<(), SetupError> {
        let end = ground.thinnest();
        match ground {
            Ground::Taper { .. } if end < cord.diameter => Err(GroundError::EndTooThin {
                end,
                cord: cord.diameter,
            }
            .into()),
            _ => Ok(()),
        }
    }

    /// That nothing is said of a tube where there is none.
    pub(super) fn check_tube_is_wanted(&self) -> Result<(), SetupError> {
        let is_mat = self.said(SetupField::Mat).is_some();
        if !self.is_in_place()? {
            return Ok(());
        }
        let mut of_tube = [SetupField::Tube].into_iter().chain(OF_TUBE);
        match of_tube.find(|field| self.said(*field).is_some()) {
            Some(field) if is_mat => Err(GroundError::MatWithTube(field).into()),
            Some(field) => Err(GroundError::InPlaceWithTube(field).into()),
            None => Ok(()),
        }
    }

    fn round_by_girth(&self) -> Result<Option<Ground>, SetupError> {
        let Some(girth) = self.length(SetupField::Girth)? else {
            return Ok(None);
        };
        let diameter = Object::by_girth(girth, girth).diameter();
        // A girth may be long enough where its diameter is not.
        match Millimetres::new(diameter.get()) {
            Ok(diameter) => Ok(Some(Ground::Round(diameter))),
            Err(_) => Err(SetupError::Length {
                field: SetupField::Girth,
                error: LengthError::OutOfRange {
                    given: self.said(SetupField::Girth).unwrap_or_default().to_owned(),
                },
            }),
        }
    }

    fn round_or_taper(&self) -> Result<Option<Ground>, SetupError> {
        let Some((bottom, top)) = self.halves(SetupField::Object)? else {
            return Ok(None);
        };
        let Some(top) = top.filter(|top| *top != bottom) else {
            return Ok(Some(Ground::Round(bottom)));
        };
        let over = self.length(SetupField::Cover)?;
        let over = over.ok_or(GroundError::TaperWithoutCover)?;
        Ok(Some(Ground::Taper { bottom, top, over }))
    }

    fn mat(&self) -> Result<Option<Ground>, SetupError> {
        let Some((outer, hole)) = self.halves(SetupField::Mat)? else {
            return Ok(None);
        };
        match hole {
            Some(hole) if hole >= outer => Err(GroundError::HoleTooWide { outer, hole }.into()),
            hole => Ok(Some(Ground::Flat { outer, hole })),
        }
    }

    /// The length that a field says, and the one behind a colon, if there is one. Where one of them
    /// has no unit, it has that of the other.
    fn halves(
        &self,
        field: SetupField,
    ) -> Result<Option<(Millimetres, Option<Millimetres>)>, SetupError> {
        let Some(given) = self.said(field) else {
            return Ok(None);
        };
        let Some((first, second)) = given.split_once(BETWEEN) else {
            return Ok(self.length(field)?.map(|length| (length, None)));
        };
        let halves = [first.trim(), second.trim()];
        if halves.iter().any(|half| half.is_empty()) || second.contains(BETWEEN) {
            let given = given.to_owned();
            return Err(GroundError::Halves { field, given }.into());
        }
        let read = |half: &str, other: &str| {
            let is_lent = unit(half).is_empty() && Millimetres::parse(other).is_ok();
            let lent = if is_lent { unit(other) } else { "" };
            Millimetres::parse(&format!("{half}{lent}"))
                .map_err(|error| SetupError::Length { field, error })
        };
        let [first, second] = halves;
        Ok(Some((read(first, second)?, Some(read(second, first)?))))
    }
}

/// The unit at the end of a length.
fn unit(length: &str) -> &str {
    let is_of_number = |letter: char| {
        letter.is_ascii_digit() || letter.is_whitespace() || ".,/½¼¾⅛⅜⅝⅞⅓⅔".contains(letter)
    };
    let end = length.trim_end_matches(|letter| !is_of_number(letter));
    &length[end.len()..]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(length: f64) -> Millimetres {
        Millimetres::new(length).unwrap()
    }

    fn form(said: &[(SetupField, &str)]) -> SetupForm {
        said.iter().copied().collect()
    }

    #[test]
    fn the_unit_of_one_end_of_a_taper_stands_for_both() {
        let ends = |text: &str| {
            let said = form(&[(SetupField::Object, text), (SetupField::Cover, "12cm")]);
            match said.ground().unwrap().unwrap() {
                Ground::Taper { bottom, top, over } => {
                    assert_eq!(over, mm(120.0));
                    [bottom, top].map(|end| format!("{:.2}", end.get()))
                }
                other => panic!("{text}: {other:?}"),
            }
        };
        for (text, expected) in [
            ("30mm:24mm", ["30.00", "24.00"]),
            ("30:24mm", ["30.00", "24.00"]),
            ("30mm:24", ["30.00", "24.00"]),
            ("30:24", ["30.00", "24.00"]),
            (" 3 : 2,4 cm ", ["30.00", "24.00"]),
            ("3cm:24mm", ["30.00", "24.00"]),
            ("1:1 1/4in", ["25.40", "31.75"]),
            ("1½\":1¼", ["38.10", "31.75"]),
        ] {
            assert_eq!(ends(text), expected, "{text}");
        }
    }

    #[test]
    fn a_taper_with_equal_ends_is_round_and_needs_no_length() {
        let said = form(&[(SetupField::Object, "30mm:3cm")]);
        assert_eq!(said.ground(), Ok(Some(Ground::Round(mm(30.0)))));
    }

    #[test]
    fn a_mat_is_said_with_its_hole_or_without() {
        let mat = |text: &str| form(&[(SetupField::Mat, text)]).ground();
        let of = |outer, hole: Option<f64>| {
            let hole = hole.map(mm);
            Ok(Some(Ground::Flat {
                outer: mm(outer),
                hole,
            }))
        };
        assert_eq!(mat("150mm"), of(150.0, None));
        assert_eq!(mat("15:6cm"), of(150.0, Some(60.0)));
        let error = mat("60mm:150mm").unwrap_err();
        assert_eq!(error.field(), SetupField::Mat);
        assert!(matches!(
            error,
            SetupError::Ground(GroundError::HoleTooWide { .. })
        ));
    }

    #[test]
    fn what_is_covered_is_said_in_one_way() {
        for (at, one) in GROUNDS.into_iter().enumerate() {
            for other in &GROUNDS[at + 1..] {
                let said = form(&[(one, "40"), (*other, "40")]);
                assert_eq!(said.ground(), Err(GroundError::Twice(one, *other).into()));
            }
        }
    }

    #[test]
    fn two_lengths_have_one_colon_between_them() {
        for given in [":", "30:", ":24mm", "30:24:20"] {
            for field in [SetupField::Object, SetupField::Mat] {
                let said = form(&[(field, given), (SetupField::Cover, "40")]);
                let given = given.to_owned();
                assert_eq!(
                    said.ground(),
                    Err(GroundError::Halves { field, given }.into())
                );
            }
        }
        // A ball and a girth are one length.
        for field in [SetupField::Ball, SetupField::Girth] {
            let said = form(&[(field, "30:24")]);
            assert_eq!(said.ground().unwrap_err().field(), field);
        }
    }

    #[test]
    fn nothing_is_said_of_a_tube_where_there_is_none() {
        let presets = crate::guide::Presets::default();
        for field in [SetupField::Tube].into_iter().chain(OF_TUBE) {
            let mat = form(&[(SetupField::Mat, "150"), (field, "12")]);
            assert_eq!(
                mat.tube(&presets),
                Err(GroundError::MatWithTube(field).into())
            );
            let rail = form(&[
                (SetupField::Object, "30"),
                (SetupField::InPlace, "yes"),
                (field, "12"),
            ]);
            assert_eq!(
                rail.tube(&presets),
                Err(GroundError::InPlaceWithTube(field).into())
            );
        }
    }
}
