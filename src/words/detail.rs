//! How much is said.

use std::str::FromStr;

/// The depth of what is spoken. What is to be done is the same in all.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, strum::VariantNames)]
#[strum(serialize_all = "lowercase")]
pub enum Detail {
    /// For who knows the work.
    Brief,
    /// For every day.
    #[default]
    Plain,
    /// For who learns it.
    Teach,
}

impl Detail {
    /// All depths, the shortest first.
    pub const ALL: [Self; 3] = [Self::Brief, Self::Plain, Self::Teach];

    /// Its name in options and settings.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Brief => "brief",
            Self::Plain => "plain",
            Self::Teach => "teach",
        }
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

/// A depth that does not exist.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnknownDetail;

impl FromStr for Detail {
    type Err = UnknownDetail;

    fn from_str(text: &str) -> Result<Self, UnknownDetail> {
        Self::ALL
            .into_iter()
            .find(|detail| detail.name() == text)
            .ok_or(UnknownDetail)
    }
}
