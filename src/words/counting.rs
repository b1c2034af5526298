//! Words for a knot that is counted until it is known.

use fluent::{FluentArgs, fluent_args};

use super::{Shown, Spoken, Words};
use crate::guide::{ColoursFound, Plan};

/// What is asked of a knot, or found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CountAsked<'a> {
    /// How many scallops one rim has.
    Bights(u16),
    /// How many crossings a cord has from rim to rim.
    Rows(u16),
    /// How many cords lie side by side.
    Passes(u16),
    /// Whether a cord that rises to the right goes over here.
    Over {
        /// The row, 1 the lowest.
        row: u16,
        /// How many there are.
        rows: u16,
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
            Self::Rows(_) => "rows",
            Self::Passes(_) => "passes",
            Self::Over { .. } => "over",
            Self::Colours(_) => "colours",
            Self::Found(..) => "found",
        }
    }
}

impl Words {
    /// What is asked of a knot, or found, and what next and back come to.
    pub fn say_count(&self, asked: &CountAsked<'_>) -> Spoken {
        let args = self.count_args(asked);
        let told = self.sentence("count-told", &args);
        let keys = match asked {
            CountAsked::Over { .. } | CountAsked::Found(..) => "count-keys",
            _ => "counting-keys",
        };
        told.then(&self.sentence(keys, &args)).into()
    }

    /// The number so far, after each press.
    pub fn say_count_briefly(&self, asked: &CountAsked<'_>) -> Spoken {
        match asked {
            CountAsked::Over { .. } | CountAsked::Found(..) => self.say_count(asked),
            _ => self
                .sentence("count-so-far", &self.count_args(asked))
                .into(),
        }
    }

    /// The same on the screen.
    pub fn show_count(&self, asked: &CountAsked<'_>) -> Shown {
        let args = self.count_args(asked);
        let line = match asked {
            CountAsked::Found(plan, _) => self.tie_line(plan),
            _ => self.text("count-so-far", &args),
        };
        let keys = match asked {
            CountAsked::Over { .. } | CountAsked::Found(..) => "count-keys",
            _ => "counting-keys",
        };
        self.aside(
            "count-phase",
            line,
            vec![self.text("count-told", &args), self.text(keys, &args)],
        )
    }

    /// What was found, in one line.
    pub fn counted_knot(&self, plan: &Plan, found: ColoursFound) -> String {
        let args = self.count_args(&CountAsked::Found(plan, found));
        self.text("count-told", &args)
    }

    fn count_args(&self, asked: &CountAsked<'_>) -> FluentArgs<'static> {
        let (number, of) = match asked {
            CountAsked::Bights(number)
            | CountAsked::Rows(number)
            | CountAsked::Passes(number)
            | CountAsked::Colours(number) => (*number, 0),
            CountAsked::Over { row, rows } => (*row, *rows),
            CountAsked::Found(plan, _) => (plan.knot().strands(), 0),
        };
        let mut args = fluent_args! {
            "asked" => asked.name(), "number" => number, "of" => of,
            "colours" => "cord", "tie" => "", "possible" => "yes",
        };
        if let CountAsked::Found(plan, found) = asked {
            args.set("tie", self.tie_line(plan));
            args.set("possible", if found.is_possible() { "yes" } else { "no" });
            args.set(
                "colours",
                match found {
                    ColoursFound::OneCord => "cord",
                    ColoursFound::CordsByPass => "passes",
                    ColoursFound::CordsByStrand => "strands",
                    ColoursFound::Alike => "alike",
                    ColoursFound::TooMany => "too-many",
                },
            );
        }
        args
    }
}
