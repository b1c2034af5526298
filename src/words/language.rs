//! Choosing a language and looking up its messages.

use std::borrow::Cow;
use std::fmt;

use fluent::concurrent::FluentBundle;
use fluent::{FluentArgs, FluentResource};
use fluent_langneg::{NegotiationStrategy, negotiate_languages};
use rust_embed::RustEmbed;
use unic_langid::LanguageIdentifier;

use super::Detail;

/// The language that every message exists in.
const FALLBACK: &str = "en";

#[derive(RustEmbed)]
#[folder = "i18n/"]
struct Assets;

/// A language that was asked for and is not there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnknownLanguage {
    /// The tag as given.
    pub given: String,
}

/// The messages of one language, with English behind them.
pub struct Words {
    tag: LanguageIdentifier,
    detail: Detail,
    bundles: Vec<FluentBundle<FluentResource>>,
}

impl Words {
    /// The words of the language that was asked for, or of the system's own language as near
    /// as there is one.
    ///
    /// # Errors
    /// [`UnknownLanguage`] when one was asked for and no folder of `i18n/` matches it.
    pub fn load(asked: Option<&str>) -> Result<Self, UnknownLanguage> {
        let known = Self::known();
        let chosen = if let Some(tag) = asked {
            negotiated(&[tag.to_owned()], &known).ok_or_else(|| UnknownLanguage {
                given: tag.to_owned(),
            })?
        } else {
            negotiated(&system_languages(), &known).unwrap_or_else(fallback)
        };
        Ok(Self::of(chosen))
    }

    /// The words in English, which are always there.
    pub fn english() -> Self {
        Self::of(fallback())
    }

    /// The languages there are, English first.
    pub fn known() -> Vec<LanguageIdentifier> {
        let mut tags: Vec<LanguageIdentifier> = Assets::iter()
            .filter_map(|path| path.split('/').next().and_then(|tag| tag.parse().ok()))
            .collect();
        tags.sort_by_key(|tag| (*tag != fallback(), tag.to_string()));
        tags.dedup();
        tags
    }

    /// How much is said of a step.
    pub const fn detail(&self) -> Detail {
        self.detail
    }

    /// Says more or less of a step from now on.
    pub fn set_detail(&mut self, detail: Detail) {
        self.detail = detail;
    }

    /// The language spoken.
    pub const fn tag(&self) -> &LanguageIdentifier {
        &self.tag
    }

    /// Whether this is the language that the system itself is set to. A system that is set to
    /// none counts as speaking English.
    pub fn is_system_language(&self) -> bool {
        let system = system_languages();
        let first = system
            .iter()
            .find_map(|tag| tag.parse::<LanguageIdentifier>().ok());
        first.unwrap_or_else(fallback).language == self.tag.language
    }

    fn of(tag: LanguageIdentifier) -> Self {
        let mut chain = vec![tag.clone()];
        if tag != fallback() {
            chain.push(fallback());
        }
        let bundles = chain.iter().map(bundle).collect();
        Self {
            tag,
            detail: Detail::default(),
            bundles,
        }
    }

    /// A message, in the chosen language or else in English.
    ///
    /// # Panics
    /// In debug builds, when no language has the message or an argument is missing; a release
    /// build gives back what can be said.
    pub(super) fn text(&self, id: &str, args: &FluentArgs) -> String {
        for bundle in &self.bundles {
            let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else {
                continue;
            };
            let mut faults = Vec::new();
            let text = bundle.format_pattern(pattern, Some(args), &mut faults);
            debug_assert!(faults.is_empty(), "{id}: {faults:?}");
            return tidy(text);
        }
        debug_assert!(false, "no message {id}");
        id.to_owned()
    }
}

impl fmt::Debug for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Words")
            .field("tag", &self.tag)
            .finish_non_exhaustive()
    }
}

/// The languages that the system is set to, the wished-for first. The locale `C` is none.
fn system_languages() -> Vec<String> {
    sys_locale::get_locales()
        .filter(|tag| tag != "C" && tag != "POSIX")
        .collect()
}

fn fallback() -> LanguageIdentifier {
    FALLBACK.parse().unwrap_or_default()
}

fn negotiated(asked: &[String], known: &[LanguageIdentifier]) -> Option<LanguageIdentifier> {
    let asked: Vec<LanguageIdentifier> = asked.iter().filter_map(|tag| tag.parse().ok()).collect();
    negotiate_languages(&asked, known, None, NegotiationStrategy::Lookup)
        .first()
        .map(|tag| (*tag).clone())
}

fn bundle(tag: &LanguageIdentifier) -> FluentBundle<FluentResource> {
    let mut bundle = FluentBundle::new_concurrent(vec![tag.clone()]);
    // The marks that isolate an insert are for mixed writing directions; a voice stumbles
    // over them.
    bundle.set_use_isolating(false);
    for path in Assets::iter().filter(|path| path.starts_with(&format!("{tag}/"))) {
        let Some(file) = Assets::get(&path) else {
            continue;
        };
        let source = String::from_utf8_lossy(&file.data).into_owned();
        let resource = FluentResource::try_new(source).unwrap_or_else(|(resource, faults)| {
            debug_assert!(faults.is_empty(), "{path}: {faults:?}");
            resource
        });
        let added = bundle.add_resource(resource);
        debug_assert!(added.is_ok(), "{path}: a message is there twice: {added:?}");
    }
    bundle
}

/// Selectors that come to nothing leave spaces behind: one between words, none at the ends.
fn tidy(text: Cow<'_, str>) -> String {
    if text.contains("  ") || text.trim() != text {
        let lines = text.lines().map(|line| {
            line.split(' ')
                .filter(|word| !word.is_empty())
                .collect::<Vec<_>>()
                .join(" ")
        });
        return lines.collect::<Vec<_>>().join("\n").trim().to_owned();
    }
    text.into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_is_found_by_its_tag_and_its_region() {
        assert_eq!(Words::load(Some("en")).unwrap().tag().to_string(), "en");
        assert_eq!(Words::load(Some("en-GB")).unwrap().tag().to_string(), "en");
    }

    #[test]
    fn an_unknown_language_is_named() {
        for tag in ["xx", "", "not a tag"] {
            assert_eq!(Words::load(Some(tag)).unwrap_err().given, tag);
        }
    }

    #[test]
    fn english_comes_first() {
        assert_eq!(Words::known()[0].to_string(), "en");
    }
}
