//! Words for a knot that is counted until it is known.

use fluent::{FluentArgs, fluent_args};

use super::selectors::Selector;
use super::{Sentence, Shown, Spoken, Words};
use crate::guide::{ColoursFound, Plan};

/// What is asked of a knot, or found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CountAsked<'a> {
    /// How many scallops one rim has.
    Bights(u16),
    /// How many scallops lie nested one inside the other.
    Nested(u16),
    /// In which row of scallops the cord from an outermost one turns at the top.
    Lands(u16),
    /// How many crossings a cord has from rim to rim.
    Rows {
        /// So far.
        number: u16,
        /// Rows of scallops at each rim.
        nested: u16,
        /// The nearest numbers that there can be, when one was taken that cannot.
        nearest: Option<[u16; 2]>,
    },
    /// How many cords lie side by side.
    Passes(u16),
    /// Whether a cord that rises to the right goes over here.
    Over {
        /// The crossing, 1 the lowest.
        nth: u16,
        /// How many there are.
        of: u16,
        /// The row of scallops at the bottom from which the cord rises, 1 the outermost.
        from: u16,
        /// Rows of scallops at each rim.
        nested: u16,
    },
    /// How many colours there are.
    Colours(u16),
    /// The knot, and what its colours say.
    Found(&'a Plan, ColoursFound),
}

impl CountAsked<'_> {
    const fn name(&self) -> &'static str {
        match self {
            Self::Bights(_) => "bights",
            Self::Nested(_) => "nested",
            Self::Lands(_) => "lands",
            Self::Rows { .. } => "rows",
            Self::Passes(_) => "passes",
            Self::Over { .. } => "over",
            Self::Colours(_) => "colours",
            Self::Found(..) => "found",
        }
    }

    /// Whether a number is asked for.
    const fn is_number(&self) -> bool {
        !matches!(self, Self::Over { .. } | Self::Found(..))
    }
}

impl Words {
    /// What is asked of a knot, or found, and what next and back come to.
    pub fn say_count(&self, asked: &CountAsked<'_>) -> Spoken {
        let args = self.count_args(asked);
        let keys = if asked.is_number() {
            "counting-keys"
        } else {
            "count-keys"
        };
        let told = self.sentence("count-told", &args);
        let told = match asked {
            CountAsked::Rows {
                nearest: Some(_), ..
            } => self.sentence("count-misfit", &args).then(&told),
            _ => told,
        };
        told.then(&self.sentence(keys, &args)).into()
    }

    /// The number so far, after each press.
    pub fn say_count_briefly(&self, asked: &CountAsked<'_>) -> Spoken {
        if asked.is_number() {
            self.sentence("count-so-far", &self.count_args(asked))
                .into()
        } else {
            self.say_count(asked)
        }
    }

    /// The same on the screen; `is_typed` while digits are typed.
    pub fn show_count(&self, asked: &CountAsked<'_>, is_typed: bool) -> Shown {
        let args = self.count_args(asked);
        let line = match asked {
            CountAsked::Found(plan, _) => self.tie_line(plan),
            _ => self.text("count-so-far", &args),
        };
        let keys = match asked {
            _ if is_typed => "counting-keys-typed",
            _ if asked.is_number() => "counting-keys",
            _ => "count-keys",
        };
        let misfit = match asked {
            CountAsked::Rows {
                nearest: Some(_), ..
            } => Some(self.text("count-misfit", &args)),
            _ => None,
        };
        let told = [self.text("count-told", &args), self.text(keys, &args)];
        let notes = misfit.into_iter().chain(told).collect();
        self.aside("count-phase", line, notes)
    }

    /// That this knot alone is looked at on the plan screen, and how all are again.
    /// Where nothing is said of an object, it can be tied as it is: `is_bare`.
    pub fn only_knot(&self, plan: &Plan, is_bare: bool) -> Sentence {
        let tie = self.tie_line(plan);
        self.notice(
            "plan-only-told",
            &[("tie", &tie), ("bare", is_bare.selector())],
        )
    }

    /// The same on its button.
    pub fn only_knot_chip(&self, plan: &Plan, key: &str) -> String {
        let args = fluent_args! { "key" => key.to_owned(), "tie" => self.tie_line(plan) };
        self.text("plan-only", &args)
    }

    /// What was found, in one line.
    pub fn counted_knot(&self, plan: &Plan, found: ColoursFound) -> String {
        let args = self.count_args(&CountAsked::Found(plan, found));
        self.text("count-told", &args)
    }

    fn count_args(&self, asked: &CountAsked<'_>) -> FluentArgs<'static> {
        let mut args = fluent_args! {
            "asked" => asked.name(), "number" => 0, "of" => 0, "from" => 1, "nested" => 1,
            "less" => 0, "more" => 0, "colours" => "cord", "tie" => "", "possible" => "yes",
        };
        match asked {
            CountAsked::Bights(number)
            | CountAsked::Nested(number)
            | CountAsked::Lands(number)
            | CountAsked::Passes(number)
            | CountAsked::Colours(number) => args.set("number", *number),
            CountAsked::Rows {
                number,
                nested,
                nearest,
            } => {
                args.set("number", *number);
                args.set("nested", *nested);
                let [less, more] = nearest.unwrap_or_default();
                args.set("less", less);
                args.set("more", more);
            }
            CountAsked::Over {
                nth,
                of,
                from,
                nested,
            } => {
                args.set("number", *nth);
                args.set("of", *of);
                args.set("from", *from);
                args.set("nested", *nested);
            }
            CountAsked::Found(plan, found) => {
                args.set("number", plan.knot().strands());
                args.set("tie", self.tie_line(plan));
                args.set("possible", found.is_possible().selector());
                args.set("colours", found.name());
            }
        }
        args
    }
}
