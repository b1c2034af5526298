//! What can go wrong, in one sentence that says what is wrong, what is allowed, what to try.

use fluent::{FluentArgs, fluent_args};

use super::selectors::Selector;
use super::{Sentence, UnknownLanguage, Words};
use crate::guide::{CordsError, Fingers};
use crate::knot::{KnotError, Quantity};

impl Words {
    /// The sentence for a knot that can't be built.
    pub fn knot_error(&self, error: &KnotError) -> Sentence {
        match error {
            KnotError::NotANumber { quantity, given } if given.is_empty() => {
                self.sentence("knot-empty", &quantity_args(*quantity, given))
            }
            KnotError::NotANumber { quantity, given } => {
                self.sentence("knot-not-a-number", &quantity_args(*quantity, given))
            }
            KnotError::OutOfRange { quantity, given } => {
                self.sentence("knot-out-of-range", &quantity_args(*quantity, given))
            }
            KnotError::WeaveUnreadable { given } => self.sentence(
                "knot-weave-unreadable",
                &fluent_args! { "given" => given.as_str() },
            ),
            KnotError::RunTooLong { given, rows } => {
                let args = fluent_args! {
                    "given" => given.as_str(), "rows" => *rows, "leads" => *rows + 1,
                };
                self.sentence("knot-run-too-long", &args)
            }
            KnotError::CodeLength { letters, rows } => {
                let args = fluent_args! {
                    "letters" => *letters, "rows" => *rows, "leads" => *rows + 1,
                };
                self.sentence("knot-code-length", &args)
            }
            KnotError::WeaveNested { rows } => {
                self.sentence("knot-weave-nested", &fluent_args! { "rows" => *rows })
            }
            KnotError::LandsBeyond { given, nested } => self.sentence(
                "knot-lands-beyond",
                &fluent_args! { "given" => given.as_str(), "nested" => *nested },
            ),
            KnotError::NotRoundHand {
                leads,
                bights,
                nested,
                passes,
            } => self.sentence(
                "knot-not-round-hand",
                &fluent_args! {
                    "leads" => *leads, "bights" => *bights, "nested" => *nested, "passes" => *passes,
                    "small" => Fingers::would_hold(*leads, *bights, *nested, *passes).selector(),
                },
            ),
            KnotError::NoLeadsLeft { leads, nested } => self.sentence(
                "knot-no-leads-left",
                &fluent_args! { "leads" => *leads, "nested" => *nested },
            ),
        }
    }

    /// The sentence for names of cords that do not go with the knot.
    pub fn cords_error(&self, error: &CordsError) -> String {
        self.text("cords-do-not-go", &self.cords_args(error))
    }

    pub(super) fn cords_args(&self, error: &CordsError) -> FluentArgs<'static> {
        fluent_args! {
            "given" => error.given, "strands" => error.strands, "passes" => error.passes,
            "all" => error.strands * error.passes, "example" => self.cords_example(error.strands),
        }
    }

    /// The option with a name for each strand.
    fn cords_example(&self, strands: u16) -> String {
        let names = self.plainly("cords-example", &[]);
        let names: Vec<&str> = names.split(',').collect();
        let strands = (0..strands.into()).map(|strand| names[strand % names.len()]);
        format!("--cords {}", strands.collect::<Vec<_>>().join(","))
    }

    /// The sentence for a count that was not given at all.
    pub fn missing(&self, quantity: Quantity) -> String {
        self.text("knot-missing", &quantity_args(quantity, ""))
    }

    /// The sentence for a choice that an option does not have. `allowed` are the ones it has.
    pub fn choice_unknown(&self, option: &str, given: &str, allowed: &[&str]) -> String {
        let args = fluent_args! {
            "option" => option, "given" => given, "allowed" => allowed.join(", "),
            "example" => allowed.first().copied().unwrap_or_default(),
        };
        self.text("choice-unknown", &args)
    }

    /// The sentence for a language that is not there.
    pub fn language_unknown(&self, error: &UnknownLanguage) -> String {
        let known: Vec<String> = Self::known().iter().map(ToString::to_string).collect();
        let args = fluent_args! {
            "given" => error.given.as_str(), "known" => known.join(", "),
            "example" => known.first().map_or("en", String::as_str),
        };
        self.text("language-unknown", &args)
    }

    /// A message for the eye without arguments, or with texts only: file names, reasons, what was
    /// typed.
    pub fn plainly(&self, id: &str, texts: &[(&'static str, &str)]) -> String {
        self.text(id, &of_texts(texts))
    }

    /// A message that is shown and spoken, such as a notice; otherwise like [`Words::plainly`].
    pub fn notice(&self, id: &str, texts: &[(&'static str, &str)]) -> Sentence {
        self.sentence(id, &of_texts(texts))
    }
}

fn of_texts<'a>(texts: &[(&'static str, &'a str)]) -> FluentArgs<'a> {
    texts.iter().map(|(name, text)| (*name, *text)).collect()
}

fn quantity_args(quantity: Quantity, given: &str) -> FluentArgs<'_> {
    let bounds = quantity.bounds();
    let example = match quantity {
        Quantity::Leads => 5,
        Quantity::Bights => 6,
        Quantity::Passes | Quantity::Nested => 2,
        Quantity::Lands => 1,
    };
    fluent_args! {
        "quantity" => quantity.selector(), "given" => given,
        "least" => *bounds.start(), "most" => *bounds.end(), "example" => example,
    }
}
