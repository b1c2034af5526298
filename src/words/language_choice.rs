//! Choosing a language among those there are, each by the name it has for itself, and the units
//! that lengths are told in.

use std::sync::LazyLock;

use fluent::{FluentArgs, fluent_args};
use unic_langid::LanguageIdentifier;

use super::language::{of_system, own_name};
use super::{Sentence, Units, Words};

/// The language and the units that a tyer chose, where they are not to be the system's.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LanguageChoice {
    /// A BCP 47 tag, perhaps with a region; none for the system's language.
    pub tag: Option<String>,
    /// Those that were chosen; none for what is usual in the language's region.
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

impl LanguageChoice {
    /// The next choice of language, or the one before: the system's, then each there is.
    pub fn next_language(&mut self, forward: bool) {
        let tags: Vec<String> = NAMES.iter().map(|(tag, _)| tag.to_string()).collect();
        let here = self.tag.as_deref().and_then(|chosen| {
            let words = Words::load(Some(chosen)).ok()?;
            let tag = words.tag().to_string();
            tags.iter().position(|known| *known == tag)
        });
        self.tag = cycled(&tags, here, forward);
    }

    /// The next choice of units, or the one before: the region's, then each there is.
    pub fn next_units(&mut self, forward: bool) {
        let here = Units::ALL
            .iter()
            .position(|units| Some(*units) == self.units);
        self.units = cycled(&Units::ALL, here, forward);
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
pub fn cycled<T: Clone>(choices: &[T], here: Option<usize>, forward: bool) -> Option<T> {
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
    /// The words of a choice. A language that is not there (any more) is as if none were chosen:
    /// the settings show which one speaks.
    pub fn chosen(choice: &LanguageChoice) -> Self {
        let mut words = Self::load(choice.tag.as_deref()).unwrap_or_else(|error| {
            log::warn!("{error}");
            Self::of_system()
        });
        words.measure_in(choice.units);
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
        self.with_region(name, tag, locale)
    }

    /// A language as it is called in the words of this one.
    fn name_in_words(&self, tag: &LanguageIdentifier, locale: &LanguageIdentifier) -> String {
        let own = self.name_of(tag, tag);
        let args = fluent_args! { "tag" => tag.language.as_str().to_owned(), "name" => own };
        self.with_region(self.text("language-in-words", &args), tag, locale)
    }

    fn with_region(
        &self,
        name: String,
        tag: &LanguageIdentifier,
        locale: &LanguageIdentifier,
    ) -> String {
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

    /// What the line of the settings is told that shows which language is chosen.
    pub(super) fn language_args(&self, choice: &LanguageChoice) -> FluentArgs<'static> {
        // With --lang the words are others than those of the setting.
        let named = choice.tag.as_deref().and_then(|tag| tag.parse().ok());
        let named = named.map(|locale: LanguageIdentifier| (nearest(&locale), locale));
        let is_system = named.is_none();
        let (tag, locale) = named.unwrap_or_else(of_system);
        let (choice, name) = if is_system && tag == *self.tag() {
            ("system", self.name_in_words(&tag, &locale))
        } else if is_system {
            // Nothing else is chosen, and the words are others than the system's: those that are read.
            ("name", self.language_name())
        } else {
            ("name", self.name_of(&tag, &locale))
        };
        fluent_args! { "choice" => choice, "name" => name }
    }

    /// What the line of the settings is told that shows which units are chosen.
    pub(super) fn units_args(&self, choice: &LanguageChoice) -> FluentArgs<'static> {
        fluent_args! {
            "choice" => if choice.units.is_some() { "given" } else { "region" },
            "units" => <&str>::from(self.units()),
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
            let choice = LanguageChoice {
                tag: Some(tag.to_owned()),
                ..LanguageChoice::default()
            };
            let args = words.language_args(&choice);
            assert_eq!(args.get("name"), Some(&name.into()), "{tag}");
        }
    }

    #[test]
    fn where_the_words_are_others_than_the_systems_the_line_names_those_that_are_read() {
        let system = Words::of_system();
        for tag in ["en", "de", "es", "fr"] {
            let words = Words::load(Some(tag)).unwrap();
            let args = words.language_args(&LanguageChoice::default());
            let is_systems = words.tag() == system.tag();
            let choice = if is_systems { "system" } else { "name" };
            assert_eq!(args.get("choice"), Some(&choice.into()), "{tag}");
            if !is_systems {
                assert_eq!(
                    args.get("name"),
                    Some(&words.language_name().into()),
                    "{tag}"
                );
            }
        }
    }

    #[test]
    fn the_language_of_the_system_is_named_in_the_words_that_are_read() {
        let words = Words::load(Some("de")).unwrap();
        let named = |tag: &str| {
            let locale: LanguageIdentifier = tag.parse().unwrap();
            words.name_in_words(&nearest(&locale), &locale)
        };
        assert_eq!(named("en"), "Englisch");
        assert_eq!(named("fr-CA"), "Französisch (CA)");
        // A language that there are no words for has no other name.
        assert_eq!(named("it"), "it");
    }

    #[test]
    fn turning_goes_round_by_way_of_the_systems() {
        let mut choice = LanguageChoice::default();
        let mut seen = Vec::new();
        for _ in 0..=NAMES.len() {
            choice.next_language(true);
            seen.push(choice.tag.clone());
        }
        assert_eq!(seen[0].as_deref(), Some("en"));
        assert_eq!(seen.last(), Some(&None));
        choice.next_language(false);
        assert_eq!(choice.tag, seen[seen.len() - 2]);
        // From a region one goes on to the next language.
        choice.tag = Some("en-GB".to_owned());
        choice.next_language(false);
        assert_eq!(choice.tag, None);
    }

    #[test]
    fn units_are_the_regions_until_they_are_chosen() {
        let mut choice = LanguageChoice {
            tag: Some("en-US".to_owned()),
            units: None,
        };
        assert_eq!(Words::chosen(&choice).units(), Units::Inch);
        choice.next_units(true);
        assert_eq!(choice.units, Some(Units::Metric));
        assert_eq!(Words::chosen(&choice).units(), Units::Metric);
        choice.next_units(true);
        choice.next_units(true);
        assert_eq!(choice.units, None);
    }

    #[test]
    fn a_language_names_itself_with_its_region() {
        let name = |tag| Words::load(Some(tag)).unwrap().language_name();
        assert_eq!(name("en"), "English");
        assert_eq!(name("en-GB"), "English (GB)");
    }

    #[test]
    fn a_language_that_is_not_there_is_as_if_none_were_chosen() {
        let choice = LanguageChoice {
            tag: Some("tlh".to_owned()),
            units: Some(Units::Inch),
        };
        let words = Words::chosen(&choice);
        assert_eq!(words.tag(), Words::of_system().tag());
        assert_eq!(words.units(), Units::Inch);
    }
}
