//! The colours that are seen in a knot, held against the cords it can be made of.

use super::Plan;

/// What the colours of a knot say of its cords.
#[derive(Clone, Copy, Debug, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum ColoursFound {
    /// One cord makes all of it, in one colour.
    #[strum(serialize = "cord")]
    OneCord,
    /// One strand, of which passes have cords of their own.
    #[strum(serialize = "passes")]
    CordsByPass,
    /// Several strands; each has a cord, or more.
    #[strum(serialize = "strands")]
    CordsByStrand,
    /// Fewer colours than strands: some cords look alike.
    Alike,
    /// No such knot has so many colours: something was miscounted.
    TooMany,
}

impl ColoursFound {
    /// What so many colours say.
    ///
    /// ```
    /// use marlinspeak::guide::{ColoursFound, Plan};
    ///
    /// // Four leads and six bights are two strands.
    /// let plan = Plan::read("4", "6", "1", "1")?;
    /// assert_eq!(ColoursFound::of(&plan, 2), ColoursFound::CordsByStrand);
    /// assert_eq!(ColoursFound::of(&plan, 3), ColoursFound::TooMany);
    /// // One strand has another colour in its second pass, at the most.
    /// let plan = Plan::read("5", "7", "2", "1")?;
    /// assert_eq!(ColoursFound::of(&plan, 2), ColoursFound::CordsByPass);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn of(plan: &Plan, colours: u16) -> Self {
        let (strands, passes) = (plan.knot().strands(), plan.laying().passes());
        match colours {
            _ if u32::from(colours) > u32::from(strands) * u32::from(passes) => Self::TooMany,
            _ if colours < strands => Self::Alike,
            _ if strands > 1 => Self::CordsByStrand,
            0 | 1 => Self::OneCord,
            _ => Self::CordsByPass,
        }
    }

    /// Its name in documents and among the messages.
    pub fn name(self) -> &'static str {
        self.into()
    }

    /// Whether a knot can have them.
    pub const fn is_possible(self) -> bool {
        !matches!(self, Self::TooMany)
    }
}
