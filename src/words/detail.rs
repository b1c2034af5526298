//! How much is said.

use strum::{EnumString, IntoStaticStr, VariantNames};

/// The depth of what is spoken. What is to be done is the same in all.
///
/// The names in options and settings must stay as they are.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
#[strum(serialize_all = "lowercase")]
pub enum Detail {
    /// As little as possible, for tyers who know the work by heart.
    Brief,
    /// Whole sentences, for every day.
    #[default]
    Plain,
    /// What to do and where it is seen, for tyers who learn.
    Teach,
}

impl Detail {
    /// All depths, the shortest first.
    pub const ALL: [Self; 3] = [Self::Brief, Self::Plain, Self::Teach];

    /// Its name in options and settings, from which it is parsed.
    pub fn name(self) -> &'static str {
        self.into()
    }

    /// What a message of this depth has at the end of its name.
    pub(super) const fn ending(self) -> &'static str {
        match self {
            Self::Brief => "-brief",
            Self::Plain => "",
            Self::Teach => "-teach",
        }
    }
}
