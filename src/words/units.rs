//! The units that lengths are told in.

use strum::{EnumString, IntoStaticStr, VariantNames};
use unic_langid::LanguageIdentifier;

/// The regions that measure in inches, from CLDR's supplemental data (`measurementData`, system
/// `US`): Liberia, Myanmar and the United States.
const INCH_REGIONS: [&str; 3] = ["LR", "MM", "US"];

/// The units that lengths are told in.
///
/// The names in settings must stay as they are.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, EnumString, IntoStaticStr, VariantNames,
)]
pub enum Units {
    /// Millimetres, centimetres and metres.
    #[default]
    #[strum(serialize = "mm")]
    Metric,
    /// Inches with the fractions of a rule, and feet.
    #[strum(serialize = "inch")]
    Inch,
}

impl Units {
    /// Both, the usual ones first.
    pub const ALL: [Self; 2] = [Self::Metric, Self::Inch];

    /// What the region of a locale measures in; a locale without a region is metric.
    pub fn of_locale(locale: &LanguageIdentifier) -> Self {
        match locale.region {
            Some(region) if INCH_REGIONS.contains(&region.as_str()) => Self::Inch,
            _ => Self::Metric,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_region_chooses_and_not_the_language() {
        let units = |tag: &str| Units::of_locale(&tag.parse().unwrap());
        assert_eq!(units("en-US"), Units::Inch);
        assert_eq!(units("es-US"), Units::Inch);
        for metric in ["en", "en-GB", "de", "es-MX", "fr-CA"] {
            assert_eq!(units(metric), Units::Metric, "{metric}");
        }
    }

    #[test]
    fn each_is_found_by_its_name() {
        for units in Units::ALL {
            assert_eq!(<&str>::from(units).parse(), Ok(units));
        }
        assert!("cubit".parse::<Units>().is_err());
    }
}
