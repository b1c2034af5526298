//! Words of the fields of the plan screen, and of the cards of the knots that fit.

use fluent::fluent_args;

use super::selectors::Selector;
use super::{Units, Words};
use crate::bench::{FitAnswer, Thread, ThreadSystem};

/// A cord that can be picked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CordPick<'a> {
    /// By its name, with its diameter in millimetres.
    Named(&'a str, f64),
    /// By its diameter in millimetres.
    Metric(f64),
    /// By its diameter in inches, with the same in millimetres.
    Inches(&'a str, f64),
}

impl Words {
    /// A cord in the list to pick from.
    pub fn cord_pick(&self, cord: &CordPick) -> String {
        let (kind, name, millimetres) = match *cord {
            CordPick::Named(name, millimetres) => ("named", name, millimetres),
            CordPick::Metric(millimetres) => ("metric", "", millimetres),
            CordPick::Inches(inches, millimetres) => ("inches", inches, millimetres),
        };
        let tenths = (millimetres * 10.0).round() / 10.0;
        let args = fluent_args! { "kind" => kind, "name" => name, "millimetres" => tenths };
        self.text("plan-cord-pick", &args)
    }

    /// A thread in the list to pick from.
    pub fn thread_pick(&self, thread: Thread) -> String {
        let system = match thread.system() {
            ThreadSystem::Metric => Units::Metric,
            ThreadSystem::Inch => Units::Inch,
        };
        let args = fluent_args! { "name" => thread.name(), "units" => <&str>::from(system) };
        self.text("plan-thread-pick", &args)
    }

    /// What stands in an empty field.
    pub fn field_example(&self, example: &str) -> String {
        self.text("plan-example", &fluent_args! { "example" => example })
    }

    /// The words by which the name of a cord tells this colour, with blanks between them.
    pub fn colour_names(&self, colour: &str) -> String {
        self.text("plan-colour-names", &fluent_args! { "colour" => colour })
    }

    /// Where in its range a knot is drawn up to, in one word.
    pub fn drawn_word(&self, answer: &FitAnswer) -> String {
        let args = fluent_args! { "drawn" => answer.drawn_up().selector() };
        self.text("fit-cell-drawn", &args)
    }
}
