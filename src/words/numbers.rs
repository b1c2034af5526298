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

#[cfg(test)]
mod tests {
    use fluent::concurrent::FluentBundle;
    use fluent::{FluentArgs, FluentResource};

    use super::*;

    fn written(locale: &str, number: f64) -> String {
        let mut bundle = FluentBundle::new_concurrent(vec![locale.parse().unwrap()]);
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(formatted));
        let source = "number = { $number }".to_owned();
        bundle
            .add_resource(FluentResource::try_new(source).unwrap())
            .unwrap();
        let pattern = bundle.get_message("number").unwrap().value().unwrap();
        let args: FluentArgs = [("number", number)].into_iter().collect();
        let mut faults = Vec::new();
        let text = bundle.format_pattern(pattern, Some(&args), &mut faults);
        assert_eq!(faults, []);
        text.into_owned()
    }

    /// The signs and `minimumGroupingDigits` of CLDR's `main/<locale>/numbers.json`, noted by hand
    /// from memory and held against the data that comes with ICU4X.
    #[test]
    fn numbers_are_written_as_in_the_region() {
        for (locale, grouped, ungrouped) in [
            ("en", "12,345.5", "1,234"),
            ("en-GB", "12,345.5", "1,234"),
            ("en-US", "12,345.5", "1,234"),
            ("de", "12.345,5", "1.234"),
            ("de-AT", "12\u{a0}345,5", "1\u{a0}234"),
            ("es", "12.345,5", "1234"),
            ("es-MX", "12,345.5", "1,234"),
            ("fr", "12\u{202f}345,5", "1\u{202f}234"),
            ("fr-CA", "12\u{a0}345,5", "1\u{a0}234"),
        ] {
            assert_eq!(written(locale, 12_345.5), grouped, "{locale}");
            assert_eq!(written(locale, 1234.0), ungrouped, "{locale}");
            assert_eq!(written(locale, 999.0), "999", "{locale}");
        }
    }

    #[test]
    fn spaces_between_digits_are_not_spoken() {
        assert_eq!(ungrouped("1\u{202f}234 brins"), "1234 brins");
        let kept = "Attention\u{202f}: 2\u{a0}brins";
        assert_eq!(ungrouped(kept), kept);
    }
}
