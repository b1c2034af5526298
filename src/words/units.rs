//! The units that lengths are told in.

use unic_langid::LanguageIdentifier;

/// The regions that measure in inches, from CLDR's supplemental data (`measurementData`, system
/// `US`): Liberia, Myanmar and the United States.
const INCH_REGIONS: [&str; 3] = ["LR", "MM", "US"];

/// The units that lengths are told in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Units {
    /// Millimetres, centimetres and metres.
    #[default]
    Metric,
    /// Inches and feet, with decimals.
    Inch,
}

impl Units {
    /// Both, the usual ones first.
    pub const ALL: [Self; 2] = [Self::Metric, Self::Inch];

    /// Their name in settings.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Metric => "mm",
            Self::Inch => "inch",
        }
    }

    /// The units with that name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|units| units.name() == name)
    }

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
            assert_eq!(Units::named(units.name()), Some(units));
        }
        assert_eq!(Units::named("cubit"), None);
    }
}
