//! How much is told at once.

use strum::{EnumString, IntoStaticStr, VariantNames};

/// How many crossings are told at once.
///
/// ```
/// use marlinspeak::guide::AtOnce;
///
/// // The last leg of 5 lead 7 bight meets four cords: one step, or one for each.
/// assert_eq!(AtOnce::default().parts(4), 1);
/// assert_eq!(AtOnce::UpTo(1).parts(4), 4);
/// assert_eq!(AtOnce::UpTo(AtOnce::MOST).more(), AtOnce::WholeLeg);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum AtOnce {
    /// Every leg whole, however long it is.
    WholeLeg,
    /// At most so many crossings; 0 counts as 1.
    UpTo(u16),
}

impl Default for AtOnce {
    /// Four: as many as a tyer can hold in the head.
    fn default() -> Self {
        Self::UpTo(4)
    }
}

impl AtOnce {
    /// The most crossings that can be asked for; beyond it legs are told whole.
    pub const MOST: u16 = 12;

    /// The choice below: one crossing fewer, and never less than one.
    #[must_use]
    pub fn less(self) -> Self {
        match self {
            Self::WholeLeg => Self::UpTo(Self::MOST),
            Self::UpTo(most) => Self::UpTo((most - 1).max(1)),
        }
    }

    /// The choice above: one crossing more, and beyond the most the whole leg.
    #[must_use]
    pub fn more(self) -> Self {
        match self {
            Self::UpTo(most) if most < Self::MOST => Self::UpTo(most + 1),
            _ => Self::WholeLeg,
        }
    }

    /// In how many parts a leg of this many crossings is told.
    pub fn parts(self, crossings: u16) -> u16 {
        match self {
            Self::WholeLeg => 1,
            Self::UpTo(most) => crossings.div_ceil(most.max(1)).max(1),
        }
    }

    /// The first crossing of the part (both from 0) when the parts are made as alike in size
    /// as can be.
    pub(super) fn begins(self, part: u16, crossings: u16) -> u16 {
        let parts = u32::from(self.parts(crossings));
        #[expect(clippy::cast_possible_truncation, reason = "no more than `crossings`")]
        let begins = (u32::from(part) * u32::from(crossings) / parts) as u16;
        begins
    }

    /// The part (from 0) in which a crossing (from 0) is told.
    pub(super) fn part_of(self, crossing: u16, crossings: u16) -> u16 {
        let parts = self.parts(crossings);
        (1..parts)
            .take_while(|part| self.begins(*part, crossings) <= crossing)
            .last()
            .unwrap_or(0)
    }
}

/// How often the tyer is asked to look at the work.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Checks, Plan, Script, What};
///
/// // The fourteen legs of 5 lead 7 bight are seven rounds, of which four show something new.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let looks = |script: &Script| {
///     let steps = script.places().filter_map(|place| script.step(place));
///     steps.filter(|step| matches!(step.what, What::Check(_))).count()
/// };
/// assert_eq!(looks(&script), 4);
/// assert_eq!(looks(&script.with_checks(Checks::EachPass)), 1);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
pub enum Checks {
    /// After a round, a rising and a falling leg, that shows something new, and after every pass.
    #[default]
    #[strum(serialize = "round")]
    EachRound,
    /// After every pass of a strand.
    #[strum(serialize = "pass")]
    EachPass,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_add_up_and_differ_by_no_more_than_one() {
        for crossings in 0..60 {
            for most in 1..12 {
                let at_once = AtOnce::UpTo(most);
                let parts = at_once.parts(crossings);
                let sizes: Vec<u16> = (0..parts)
                    .map(|part| {
                        at_once.begins(part + 1, crossings) - at_once.begins(part, crossings)
                    })
                    .collect();
                assert_eq!(sizes.iter().sum::<u16>(), crossings);
                assert!(sizes.iter().all(|size| *size <= most));
                let (least, largest) = (sizes.iter().min().unwrap(), sizes.iter().max().unwrap());
                assert!(largest - least <= 1, "{crossings} in {most}: {sizes:?}");
                for crossing in 0..crossings {
                    let part = at_once.part_of(crossing, crossings);
                    let begins = at_once.begins(part, crossings);
                    assert!(begins <= crossing && crossing < at_once.begins(part + 1, crossings));
                }
            }
        }
    }
}
