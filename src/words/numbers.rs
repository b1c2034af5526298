//! Numbers in the pattern of a locale, from CLDR by way of ICU4X.

use fixed_decimal::Decimal;
use fluent::FluentValue;
use icu_decimal::DecimalFormatter;
use icu_decimal::options::DecimalFormatterOptions;
use icu_locale_core::Locale;
use intl_memoizer::Memoizable;
use intl_memoizer::concurrent::IntlLangMemoizer;
use unic_langid::LanguageIdentifier;

/// The pattern of one locale; a bundle makes it once and keeps it.
struct Pattern(DecimalFormatter);

impl Memoizable for Pattern {
    type Args = ();
    type Error = ();

    fn construct(locale: LanguageIdentifier, (): ()) -> Result<Self, ()> {
        let locale: Locale = locale.to_string().parse().map_err(drop)?;
        DecimalFormatter::try_new(locale.into(), DecimalFormatterOptions::default())
            .map(Self)
            .map_err(drop)
    }
}

/// How a bundle writes a value: a number in the pattern of the bundle's locale, anything else by
/// itself.
pub(super) fn formatted(value: &FluentValue, locale: &IntlLangMemoizer) -> Option<String> {
    let FluentValue::Number(number) = value else {
        return None;
    };
    let number: Decimal = number.as_string().parse().ok()?;
    locale
        .with_try_get::<Pattern, _, _>((), |pattern| pattern.0.format(&number).to_string())
        .ok()
}

/// A text for a voice, which reads the digits on both sides of a space as two numbers: without
/// the spaces that some locales group digits with.
pub(super) fn ungrouped(text: &str) -> String {
    let letters: Vec<char> = text.chars().collect();
    let is_digit = |at: Option<usize>| {
        at.and_then(|at| letters.get(at))
            .is_some_and(char::is_ascii_digit)
    };
    let groups = |at: usize, letter: char| {
        matches!(letter, '\u{a0}' | '\u{202f}')
            && is_digit(at.checked_sub(1))
            && is_digit(Some(at + 1))
    };
    let kept = letters.iter().enumerate();
    kept.filter(|(at, letter)| !groups(*at, **letter))
        .map(|(_, letter)| letter)
        .collect()
}
