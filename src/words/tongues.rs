//! The languages to choose from, by the names they have for themselves, and the words of the one
//! that is chosen.

use std::sync::LazyLock;

use fluent::{FluentArgs, fluent_args};
use unic_langid::LanguageIdentifier;

use super::language::{of_system, own_name};
use super::{Sentence, Units, Words};

/// The language and the units that a tyer chose, where they are not to be the system's.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tongue {
    /// A BCP 47 tag, perhaps with a region; none for the system's language.
    pub language: Option<String>,
    /// None for what is usual in the language's region.
    pub units: Option<Units>,
}

/// Each language there is: its tag and its own name for itself.
static NAMES: LazyLock<Vec<(LanguageIdentifier, String)>> = LazyLock::new(|| {
    let names = Words::known().into_iter().map(|tag| {
        let name = own_name(&tag).unwrap_or_else(|| tag.to_string());
        (tag, name)
    });
    names.collect()
});

impl Tongue {
    /// The next choice of language, or the one before: the system's, then each there is.
    pub fn turn_language(&mut self, forward: bool) {
        let tags: Vec<String> = NAMES.iter().map(|(tag, _)| tag.to_string()).collect();
        let here = self.language.as_deref().and_then(|chosen| {
            let words = Words::load(Some(chosen)).ok()?;
            let tag = words.tag().to_string();
            tags.iter().position(|known| *known == tag)
        });
        self.language = turned(&tags, here, forward);
    }

    /// The next choice of units, or the one before: the region's, then each there is.
    pub fn turn_units(&mut self, forward: bool) {
        let here = Units::ALL
            .iter()
            .position(|units| Some(*units) == self.units);
        self.units = turned(&Units::ALL, here, forward);
    }
}

/// The language there is that a locale asks for, or the locale itself.
fn nearest(locale: &LanguageIdentifier) -> LanguageIdentifier {
    let exact = NAMES.iter().find(|(known, _)| known == locale);
    let near = || {
        NAMES
            .iter()
            .find(|(known, _)| known.language == locale.language)
    };
    let found = exact.or_else(near);
    found.map_or_else(|| locale.clone(), |(known, _)| known.clone())
}

/// The neighbour of `here` in the ring of no choice and then every choice, forward or backward.
pub fn turned<T: Clone>(choices: &[T], here: Option<usize>, forward: bool) -> Option<T> {
    let places = choices.len() + 1;
    let place = here.map_or(0, |here| here + 1);
    let next = if forward {
        (place + 1) % places
    } else {
        (place + places - 1) % places
    };
    next.checked_sub(1).map(|index| choices[index].clone())
}

impl Words {
    /// The words of a choice. A language that is not there (any more) is as if none were chosen.
    pub fn chosen(tongue: &Tongue) -> Self {
        let wished = tongue.language.as_deref();
        let words = wished.and_then(|tag| Self::load(Some(tag)).ok());
        let mut words = words.unwrap_or_else(Self::of_system);
        words.measure_in(tongue.units);
        words
    }

    /// Tells lengths in these units from now on; in those of the region when none are named.
    pub fn measure_in(&mut self, units: Option<Units>) {
        self.set_units(units.unwrap_or_else(|| Units::of_locale(self.locale())));
    }

    /// The name of the language that is spoken, in itself, with the region it was asked for with.
    pub fn language_name(&self) -> String {
        self.name_of(self.tag(), self.locale())
    }

    fn name_of(&self, tag: &LanguageIdentifier, locale: &LanguageIdentifier) -> String {
        let own = NAMES.iter().find(|(known, _)| known == tag);
        let name = own.map_or_else(|| tag.to_string(), |(_, name)| name.clone());
        match locale.region {
            Some(region) if tag.region.is_none() => self.text(
                "language-in-region",
                &fluent_args! { "name" => name, "region" => region.as_str().to_owned() },
            ),
            _ => name,
        }
    }

    /// The sentence for a voice that is not there: `wanted` is its name, or the tag of the language
    /// that has none.
    pub fn no_such_voice(&self, wanted: &str) -> Sentence {
        if *self.locale() == wanted || *self.tag() == wanted {
            self.notice("voice-no-language", &[("name", &self.language_name())])
        } else {
            self.notice("voice-not-there", &[("name", wanted)])
        }
    }

    /// What the lines of the settings are told: `field` is language or units.
    pub(super) fn tongue_args(&self, field: &str, tongue: &Tongue) -> FluentArgs<'static> {
        let choice = match field {
            "language" if tongue.language.is_some() => "name",
            "language" => "system",
            _ if tongue.units.is_some() => "given",
            _ => "region",
        };
        // With --lang the words are others than those of the setting.
        let named = tongue.language.as_deref().and_then(|tag| tag.parse().ok());
        let named = named.map(|locale: LanguageIdentifier| (nearest(&locale), locale));
        let (tag, locale) = named.unwrap_or_else(of_system);
        let name = self.name_of(&tag, &locale);
        fluent_args! {
            "choice" => choice, "name" => name, "units" => <&str>::from(self.units()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn other_units_leave_the_language_as_it_is() {
        let mut words = Words::load(Some("de-AT")).unwrap();
        for (units, wanted) in [(Some(Units::Inch), Units::Inch), (None, Units::Metric)] {
            words.measure_in(units);
            assert_eq!(words.locale().to_string(), "de-AT");
            assert_eq!(words.units(), wanted);
        }
    }

    #[test]
    fn a_line_of_the_settings_names_the_language_that_is_set_and_not_the_one_it_is_said_in() {
        let words = Words::load(Some("de")).unwrap();
        for (tag, name) in [
            ("fr", "Français"),
            ("es-MX", "Español (MX)"),
            ("de", "Deutsch"),
        ] {
            let tongue = Tongue {
                language: Some(tag.to_owned()),
                ..Tongue::default()
            };
            let args = words.tongue_args("language", &tongue);
            assert_eq!(args.get("name"), Some(&name.into()), "{tag}");
        }
    }

    #[test]
    fn turning_goes_round_by_way_of_the_systems() {
        let mut tongue = Tongue::default();
        let mut seen = Vec::new();
        for _ in 0..=NAMES.len() {
            tongue.turn_language(true);
            seen.push(tongue.language.clone());
        }
        assert_eq!(seen[0].as_deref(), Some("en"));
        assert_eq!(seen.last(), Some(&None));
        tongue.turn_language(false);
        assert_eq!(tongue.language, seen[seen.len() - 2]);
        // From a region one goes on to the next language.
        tongue.language = Some("en-GB".to_owned());
        tongue.turn_language(false);
        assert_eq!(tongue.language, None);
    }

    #[test]
    fn units_are_the_regions_until_they_are_chosen() {
        let mut tongue = Tongue {
            language: Some("en-US".to_owned()),
            units: None,
        };
        assert_eq!(Words::chosen(&tongue).units(), Units::Inch);
        tongue.turn_units(true);
        assert_eq!(tongue.units, Some(Units::Metric));
        assert_eq!(Words::chosen(&tongue).units(), Units::Metric);
        tongue.turn_units(true);
        tongue.turn_units(true);
        assert_eq!(tongue.units, None);
    }

    #[test]
    fn a_language_names_itself_with_its_region() {
        let name = |tag| Words::load(Some(tag)).unwrap().language_name();
        assert_eq!(name("en"), "English");
        assert_eq!(name("en-GB"), "English (GB)");
    }

    #[test]
    fn a_language_that_is_not_there_is_as_if_none_were_chosen() {
        let tongue = Tongue {
            language: Some("tlh".to_owned()),
            units: Some(Units::Inch),
        };
        let words = Words::chosen(&tongue);
        assert_eq!(words.tag(), Words::of_system().tag());
        assert_eq!(words.units(), Units::Inch);
    }
}
