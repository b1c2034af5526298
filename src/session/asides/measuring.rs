//! What was measured in the hand, told by presses: first the whole metres or feet, then what is over.

use super::Came;
use super::tally::{Counted, Tally};
use crate::bench::Millimetres;
use crate::words::{Shown, Spoken, Units, Words};

/// Millimetres of a large and of a small step, and how many small ones make a large one.
const METRIC: (f64, f64, u16) = (1000.0, 100.0, 10);
const INCH: (f64, f64, u16) = (304.8, 25.4, 12);
/// As many large steps as cord is measured in, at the most.
const MOST: u16 = 90;

/// A length on its way.
#[derive(Clone, Debug)]
pub(in crate::session) struct Measuring {
    steps: (f64, f64, u16),
    large: Tally,
    small: Tally,
    is_at_small: bool,
}

impl Measuring {
    /// In the units of the words.
    pub fn new(words: &Words) -> Self {
        let steps = match words.units() {
            Units::Metric => METRIC,
            Units::Inch => INCH,
        };
        Self {
            steps,
            large: Tally::new(0, MOST),
            small: Tally::new(0, steps.2 - 1),
            is_at_small: false,
        }
    }

    fn millimetres(&self) -> f64 {
        let (large, small, _) = self.steps;
        f64::from(self.large.number()) * large + f64::from(self.small.number()) * small
    }

    /// Whether the number so far is typed.
    pub const fn is_typed(&self) -> bool {
        if self.is_at_small {
            self.small.is_typed()
        } else {
            self.large.is_typed()
        }
    }

    const fn tally(&mut self) -> &mut Tally {
        if self.is_at_small {
            &mut self.small
        } else {
            &mut self.large
        }
    }

    pub(super) fn type_in(&mut self, key: &str) -> bool {
        self.tally().type_in(key)
    }

    pub(super) fn press(&mut self, is_next: bool) -> Came {
        match self.tally().press(is_next) {
            Counted::Changed => Came::Counted,
            Counted::Taken if !self.is_at_small => {
                self.is_at_small = true;
                Came::Asked
            }
            Counted::Taken => match Millimetres::new(self.millimetres()) {
                Ok(measured) => Came::Measured(measured),
                // Of the lengths that can be counted here nothing is the only one that is none.
                Err(_) => Came::NothingMeasured,
            },
        }
    }

    pub(super) fn show(&self, words: &Words) -> Shown {
        words.show_measuring(self.millimetres(), self.step(), self.is_typed())
    }

    pub(super) fn say(&self, words: &Words) -> Spoken {
        words.say_measuring(self.millimetres(), self.step(), self.is_at_small)
    }

    pub(super) fn say_briefly(&self, words: &Words) -> Spoken {
        words.say_measured_so_far(self.millimetres())
    }

    const fn step(&self) -> f64 {
        if self.is_at_small {
            self.steps.1
        } else {
            self.steps.0
        }
    }
}
