//! Choosing a language and looking up its messages.

use std::borrow::Cow;
use std::fmt;
use std::sync::Arc;

use fluent::concurrent::FluentBundle;
use fluent::{FluentArgs, FluentResource, FluentValue};
use fluent_langneg::{NegotiationStrategy, negotiate_languages};
use thiserror::Error;
use unic_langid::LanguageIdentifier;

use super::by_ground::{ByGround, MESSAGES};
use super::channel::Channel;
use super::harmless::{harmless, shortened};
use super::numbers::ungrouped;
use super::spoken_messages::{Remark, SpokenMessage};
use super::{Detail, Sentence, Spoken, Units};
use crate::guide::RimNames;
use crate::shelf::LONGEST_NAME;

/// The language that every message exists in.
const FALLBACK: &str = "en";

/// What stands in the place of a message that no language has.
const NO_WORDS: &str = "There are no words for this here. The log file names what is missing.";

/// A language that was asked for and is not there.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("there is no language {given:?}")]
pub struct UnknownLanguage {
    /// The tag as given.
    pub given: String,
}

/// The messages of one language, with English behind them.
///
/// Those of a knot on a tube, unless they are asked for [on another ground](Self::on).
#[derive(Clone)]
pub struct Words {
    tag: LanguageIdentifier,
    locale: LanguageIdentifier,
    detail: Detail,
    units: Units,
    rims: RimNames,
    /// The chosen language, and English unless it is chosen.
    languages: Arc<[ByGround]>,
}

impl Words {
    /// The words of the language that was asked for, or of the system's own language as near
    /// as there is one.
    ///
    /// # Errors
    /// [`UnknownLanguage`] when one was asked for and no folder of `i18n/` matches it.
    pub fn load(asked: Option<&str>) -> Result<Self, UnknownLanguage> {
        let Some(asked) = asked else {
            return Ok(Self::of_system());
        };
        let (tag, locale) = negotiated([asked.to_owned()]).ok_or_else(|| UnknownLanguage {
            given: asked.to_owned(),
        })?;
        Ok(Self::of(tag, locale))
    }

    /// The words of the system's own language, as near as there is one.
    pub fn of_system() -> Self {
        let (tag, locale) = of_system();
        Self::of(tag, locale)
    }

    /// The words in English, which are always there.
    pub fn english() -> Self {
        Self::of(fallback(), fallback())
    }

    /// The languages there are, English first.
    pub fn known() -> Vec<LanguageIdentifier> {
        let mut tags: Vec<LanguageIdentifier> = MESSAGES
            .dirs()
            .filter_map(|folder| folder.path().to_str()?.parse().ok())
            .collect();
        tags.sort_by_key(|tag| (*tag != fallback(), tag.to_string()));
        tags
    }

    /// What the rims are called in these words.
    pub(super) const fn rims(&self) -> RimNames {
        self.rims
    }

    /// How much is said of a step.
    pub const fn detail(&self) -> Detail {
        self.detail
    }

    /// Says more or less of a step from now on.
    pub fn set_detail(&mut self, detail: Detail) {
        self.detail = detail;
    }

    /// The units that lengths are told in.
    pub const fn units(&self) -> Units {
        self.units
    }

    pub(super) const fn set_units(&mut self, units: Units) {
        self.units = units;
    }

    /// The language with the region that was asked for: numbers are written as they are there.
    pub const fn locale(&self) -> &LanguageIdentifier {
        &self.locale
    }

    /// The language of the messages, without the region that was asked for.
    pub const fn tag(&self) -> &LanguageIdentifier {
        &self.tag
    }

    /// Whether this is the language that every message exists in.
    pub fn is_english(&self) -> bool {
        self.tag.language == fallback().language
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

    /// What makes the same words on another thread: to load them takes some milliseconds.
    pub fn maker(&self) -> impl FnOnce() -> Self + Send + 'static + use<> {
        let (tag, locale) = (self.tag.clone(), self.locale.clone());
        let (detail, units) = (self.detail, self.units);
        move || Self {
            detail,
            units,
            ..Self::of(tag, locale)
        }
    }

    fn of(tag: LanguageIdentifier, locale: LanguageIdentifier) -> Self {
        let mut languages = vec![ByGround::of(&tag, &locale)];
        if tag != fallback() {
            languages.push(ByGround::of(&fallback(), &locale));
        }
        Self {
            units: Units::of_locale(&locale),
            tag,
            locale,
            detail: Detail::default(),
            rims: RimNames::default(),
            languages: languages.into(),
        }
    }

    /// The same words where the rims of the knot are called this. What they are called is made once
    /// for all, when it is first asked for.
    ///
    /// ```
    /// use marlinspeak::guide::RimNames;
    /// use marlinspeak::knot::Pin;
    /// use marlinspeak::words::Words;
    ///
    /// let words = Words::english();
    /// let head = |words: &Words| words.card_pass(1, 1, 1, Pin::bottom(1));
    /// assert_eq!(head(&words), "Lead pass: leave a tail at bottom pin 1");
    /// let on_a_rail = words.on(RimNames::NearFar);
    /// assert_eq!(head(&on_a_rail), "Lead pass: leave a tail at near mark 1");
    /// // Whoever holds the first words goes on hearing of a tube.
    /// assert_eq!(head(&words), "Lead pass: leave a tail at bottom pin 1");
    /// ```
    #[must_use]
    pub fn on(&self, rims: RimNames) -> Self {
        Self {
            tag: self.tag.clone(),
            locale: self.locale.clone(),
            languages: Arc::clone(&self.languages),
            rims,
            ..*self
        }
    }

    /// A message for the eye.
    pub(super) fn text(&self, id: &str, args: &FluentArgs) -> String {
        self.put(id, args, Channel::Eye)
    }

    /// A message for the ear, in the depth that is set where there are several.
    pub(super) fn spoken(&self, message: SpokenMessage, args: &FluentArgs) -> Spoken {
        self.spoken_in(self.detail, message, args)
    }

    /// The same in this depth, whatever is set.
    pub(super) fn spoken_in(
        &self,
        depth: Detail,
        message: SpokenMessage,
        args: &FluentArgs,
    ) -> Spoken {
        self.heard(&message.id(depth), args)
    }

    /// A sentence that is spoken as it stands.
    pub fn remark(&self, remark: Remark) -> Spoken {
        self.heard(remark.into(), &FluentArgs::new())
    }

    /// A message that is shown and spoken.
    pub(super) fn sentence(&self, id: &str, args: &FluentArgs) -> Sentence {
        Sentence::new(self.text(id, args), self.heard(id, args))
    }

    fn heard(&self, id: &str, args: &FluentArgs) -> Spoken {
        Spoken::new(ungrouped(&self.put(id, args, Channel::Ear)))
    }

    /// A message put into text, in the chosen language or else in English.
    ///
    /// That no language has it, or that an argument is missing, is a fault of the program that
    /// its tests look for. A release that has it all the same says a sentence of its own, or what
    /// can be said, and never an id.
    ///
    /// # Panics
    /// In debug builds, at such a fault.
    fn put(&self, id: &str, args: &FluentArgs, channel: Channel) -> String {
        let told = self.told(args, channel);
        let args = told.as_ref().unwrap_or(args);
        let cleaned = cleaned(args);
        let args = cleaned.as_ref().unwrap_or(args);
        for language in self.languages.iter() {
            let bundle = language.bundle(self.rims);
            let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) else {
                log::error!("{} has no message {id}", self.tag);
                continue;
            };
            let mut faults = Vec::new();
            let text = bundle.format_pattern(pattern, Some(args), &mut faults);
            if !faults.is_empty() {
                log::error!("message {id}: {faults:?}");
            }
            debug_assert!(faults.is_empty(), "{id}: {faults:?}");
            let text = tidy(text);
            return if self.tag.language.as_str() == "fr" {
                elided(&text)
            } else {
                text
            };
        }
        debug_assert!(false, "no message {id}");
        NO_WORDS.to_owned()
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

/// The language that the system's own comes to here, and the system's own.
pub(super) fn of_system() -> (LanguageIdentifier, LanguageIdentifier) {
    negotiated(system_languages()).unwrap_or_else(|| (fallback(), fallback()))
}

fn fallback() -> LanguageIdentifier {
    FALLBACK.parse().unwrap_or_default()
}

/// The first of the wished-for languages that there is, and that wish as it was made, with its
/// region.
fn negotiated(
    asked: impl IntoIterator<Item = String>,
) -> Option<(LanguageIdentifier, LanguageIdentifier)> {
    let known = Words::known();
    asked.into_iter().find_map(|tag| {
        let locale: LanguageIdentifier = tag.parse().ok()?;
        let found = negotiate_languages(
            std::slice::from_ref(&locale),
            &known,
            None,
            NegotiationStrategy::Lookup,
        );
        found.first().map(|tag| ((*tag).clone(), locale.clone()))
    })
}

/// The name that a language has for itself.
pub(super) fn own_name(tag: &LanguageIdentifier) -> Option<String> {
    let file = MESSAGES.get_file(format!("{tag}/language.ftl"))?;
    let source = file.contents_utf8()?.to_owned();
    let mut bundle = FluentBundle::new_concurrent(vec![tag.clone()]);
    bundle
        .add_resource(FluentResource::try_new(source).ok()?)
        .ok()?;
    let pattern = bundle.get_message("language-name")?.value()?;
    let name = bundle.format_pattern(pattern, None, &mut Vec::new());
    Some(name.into_owned())
}

/// The arguments with every text in them made harmless and every name short; none when all are. Names and reasons from
/// outside come into the words by this way alone.
fn cleaned<'args>(args: &'args FluentArgs<'args>) -> Option<FluentArgs<'args>> {
    fn shown<'text>(name: &str, text: &'text str) -> Cow<'text, str> {
        let is_name = matches!(name, "name" | "cord" | "given");
        match harmless(text) {
            Cow::Borrowed(text) if is_name => shortened(text, LONGEST_NAME),
            Cow::Owned(text) if is_name => shortened(&text, LONGEST_NAME).into_owned().into(),
            text => text,
        }
    }
    let is_fit = |(name, value): (&str, &FluentValue)| match value {
        FluentValue::String(text) => matches!(shown(name, text), Cow::Borrowed(_)),
        _ => true,
    };
    if args.iter().all(is_fit) {
        return None;
    }
    let cleaned = args.iter().map(|(name, value)| {
        let value = match value {
            FluentValue::String(text) => shown(name, text).into_owned().into(),
            value => value.clone(),
        };
        (name.to_owned(), value)
    });
    Some(cleaned.collect())
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

/// French runs "de" and the "un" of an insert together, which no message can do: it knows only one of
/// the two.
fn elided(text: &str) -> String {
    text.replace(" de un ", " d’un ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn french_runs_together_what_an_insert_brings() {
        let words = Words::load(Some("fr")).unwrap();
        let args = fluent::fluent_args! {
            "number" => 1, "items" => 1, "count" => 2, "length" => "un demi-pouce",
            "thread" => "none", "numbered" => "none", "fraction" => "none",
        };
        let said: String = words.spoken(SpokenMessage::KitPinsSay, &args).into();
        assert!(said.contains("2 picots d’un demi-pouce de long"), "{said}");
    }

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
