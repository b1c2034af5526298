//! A knot that somebody brings: counted on the knot itself, by single presses, until it is known.

use super::asides::{Counted, Tally};
use crate::guide::{ColoursFound, Plan};
use crate::knot::{Hand, Knot, Quantity, Side, Weave};
use crate::picture::{Mark, Subject};
use crate::words::{CountAsked, Shown, Spoken, Words};

/// As many colours as are told apart in a knot.
const MOST_COLOURS: u16 = 9;
/// As many passes as are told apart.
const MOST_TOGETHER: u16 = *Quantity::Passes.bounds().end();

/// What is counted of a knot so far.
///
/// ```
/// use marlinspeak::session::KnotCount;
///
/// // Seven scallops, four crossings from rim to rim, two cords side by side; along a cord that rises
/// // to the right over, under, over, under; one colour.
/// let mut count = KnotCount::default();
/// for number in ["7", "4", "2"] {
///     count.type_in(number);
///     count.press(true);
/// }
/// for over in [true, false, true, false] {
///     count.press(over);
/// }
/// count.press(false);
/// let knot = count.plan().unwrap().knot();
/// assert_eq!((knot.leads(), knot.bights()), (5, 7));
/// ```
#[derive(Clone, Debug)]
pub struct KnotCount {
    bights: u16,
    rows: u16,
    passes: u16,
    weave: Vec<bool>,
    stage: Stage,
}

#[derive(Clone, Debug)]
enum Stage {
    /// Scallops along one rim.
    Bights(Tally),
    /// Crossings along one cord, from rim to rim.
    Rows(Tally),
    /// Cords that lie side by side.
    Passes(Tally),
    /// Whether a cord that rises to the right goes over in the next row.
    Weave,
    /// Colours that are seen.
    Colours(Tally),
    /// The knot.
    Found(Box<Plan>, ColoursFound),
}

/// What next and back come to.
///
/// ```
/// use marlinspeak::session::{CountKeys, KnotCount};
///
/// // First the scallops are counted.
/// assert_eq!(KnotCount::default().keys(), CountKeys::Number);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CountKeys {
    /// One more; that is it.
    Number,
    /// Over; under.
    OverOrUnder,
    /// Take the knot; count again.
    Found,
}

/// What a press comes to.
///
/// ```
/// use marlinspeak::session::{CountAction, KnotCount};
///
/// let mut count = KnotCount::default();
/// assert_eq!(count.press(true), CountAction::Counted);
/// // That is it: something else is asked.
/// assert_eq!(count.press(false), CountAction::Asked);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum CountAction {
    /// A number is another one: say it.
    Counted,
    /// Something else is asked, or told: say it.
    Asked,
    /// The knot is taken.
    Take(Box<Plan>),
}

impl Default for KnotCount {
    fn default() -> Self {
        Self {
            bights: 0,
            rows: 0,
            passes: 1,
            weave: Vec::new(),
            stage: Stage::Bights(of(Quantity::Bights, 0)),
        }
    }
}

/// From the least to the most of a quantity, less so much.
fn of(quantity: Quantity, less: u16) -> Tally {
    let (least, most) = quantity.bounds().into_inner();
    Tally::new(least - less, most - less)
}

impl KnotCount {
    /// The knot, when it is known.
    pub fn plan(&self) -> Option<&Plan> {
        match &self.stage {
            Stage::Found(plan, _) => Some(plan),
            _ => None,
        }
    }

    /// What next and back come to now.
    pub const fn keys(&self) -> CountKeys {
        match &self.stage {
            Stage::Bights(_) | Stage::Rows(_) | Stage::Passes(_) | Stage::Colours(_) => {
                CountKeys::Number
            }
            Stage::Weave => CountKeys::OverOrUnder,
            Stage::Found(..) => CountKeys::Found,
        }
    }

    /// The least and the most that the number can be; none where no number is asked for.
    pub const fn bounds(&self) -> Option<(u16, u16)> {
        match &self.stage {
            Stage::Bights(tally)
            | Stage::Rows(tally)
            | Stage::Passes(tally)
            | Stage::Colours(tally) => Some(tally.bounds()),
            Stage::Weave | Stage::Found(..) => None,
        }
    }

    const fn tally(&mut self) -> Option<&mut Tally> {
        match &mut self.stage {
            Stage::Bights(tally)
            | Stage::Rows(tally)
            | Stage::Passes(tally)
            | Stage::Colours(tally) => Some(tally),
            Stage::Weave | Stage::Found(..) => None,
        }
    }

    /// Takes a digit where a number is asked for.
    pub fn type_in(&mut self, key: &str) -> bool {
        self.tally().is_some_and(|tally| tally.type_in(key))
    }

    /// Takes a press of next or back.
    pub fn press(&mut self, is_next: bool) -> CountAction {
        if let Some(tally) = self.tally() {
            let counted = tally.press(is_next);
            let number = tally.number();
            if counted == Counted::Changed {
                return CountAction::Counted;
            }
            self.take(number);
            return CountAction::Asked;
        }
        match &self.stage {
            Stage::Found(plan, found) if is_next && found.is_possible() => {
                CountAction::Take(plan.clone())
            }
            Stage::Weave => {
                self.weave.push(is_next);
                if self.weave.len() >= usize::from(self.rows) {
                    self.stage = Stage::Colours(Tally::new(1, MOST_COLOURS));
                }
                CountAction::Asked
            }
            _ => {
                // Counted once more, with what was counted before at hand.
                self.stage = Stage::Bights(of(Quantity::Bights, 0).at(self.bights));
                CountAction::Asked
            }
        }
    }

    fn take(&mut self, number: u16) {
        self.stage = match &self.stage {
            Stage::Bights(_) => {
                self.bights = number;
                // A straight line meets one lead more than it has crossings.
                let rows = of(Quantity::Leads, 1);
                Stage::Rows(if self.rows > 0 {
                    rows.at(self.rows)
                } else {
                    rows
                })
            }
            Stage::Rows(_) => {
                self.rows = number;
                Stage::Passes(Tally::new(1, MOST_TOGETHER).at(self.passes))
            }
            Stage::Passes(_) => {
                self.passes = number;
                self.weave.clear();
                Stage::Weave
            }
            Stage::Colours(_) => match self.knot() {
                Some(plan) => {
                    let found = ColoursFound::of(&plan, number);
                    Stage::Found(Box::new(plan), found)
                }
                None => Self::default().stage,
            },
            other => other.clone(),
        };
    }

    /// The knot of these counts; every one of them is within its bounds.
    fn knot(&self) -> Option<Plan> {
        let code = Weave::Rows(self.weave.clone().into());
        // By the name that it has where it is over so many, under so many: the twin of its twin.
        let weave = code.twin(self.rows).twin(self.rows);
        let knot = Knot::new(self.rows + 1, self.bights, weave).ok()?;
        Plan::new(knot, self.passes, Side::default(), Hand::default()).ok()
    }

    fn asked(&self) -> CountAsked<'_> {
        match &self.stage {
            Stage::Bights(tally) => CountAsked::Bights(tally.number()),
            Stage::Rows(tally) => CountAsked::Rows(tally.number()),
            Stage::Passes(tally) => CountAsked::Passes(tally.number()),
            Stage::Weave => CountAsked::Over {
                row: u16::try_from(self.weave.len() + 1).unwrap_or(u16::MAX),
                rows: self.rows,
            },
            Stage::Colours(tally) => CountAsked::Colours(tally.number()),
            Stage::Found(plan, found) => CountAsked::Found(plan, *found),
        }
    }

    /// What is asked, or found, on the screen.
    pub fn show(&self, words: &Words) -> Shown {
        words.show_count(&self.asked())
    }

    /// The same for the ear.
    pub fn say(&self, words: &Words) -> Spoken {
        words.say_count(&self.asked())
    }

    /// The number so far, after each press.
    pub fn say_briefly(&self, words: &Words) -> Spoken {
        words.say_count_briefly(&self.asked())
    }

    /// What is being counted, shown on a knot of the loft, or the knot that was found.
    pub fn subject(&self) -> Option<Subject> {
        if let Stage::Found(plan, _) = &self.stage {
            return Some(Subject::finished(plan));
        }
        let tiller = Plan::read("5", "7", "2", "1").ok()?;
        let finished = Subject::finished(&tiller);
        Some(match &self.stage {
            Stage::Bights(_) => finished.marked(Mark::Rims),
            Stage::Rows(_) | Stage::Weave => finished.marked(Mark::Leads),
            _ => finished,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Counts a knot as its tyer would, and gives what comes of it.
    fn counted(plan: &Plan, colours: u16) -> KnotCount {
        let knot = plan.knot();
        let mut count = KnotCount::default();
        let type_in = |count: &mut KnotCount, number: u16| {
            for digit in number.to_string().chars() {
                assert!(count.type_in(&digit.to_string()));
            }
            assert_eq!(count.press(true), CountAction::Asked);
        };
        type_in(&mut count, knot.bights());
        type_in(&mut count, knot.rows());
        type_in(&mut count, plan.laying().passes());
        for row in 1..=knot.rows() {
            count.press(knot.weave().rising_over(row));
        }
        type_in(&mut count, colours);
        count
    }

    #[test]
    fn a_knot_described_by_counting_is_the_knot() {
        for leads in ["2", "3", "4", "5", "8", "17"] {
            for bights in ["2", "3", "7", "10"] {
                for (passes, weave) in [("1", "1"), ("2", ""), ("3", "1")] {
                    let plan = Plan::read(leads, bights, passes, weave).unwrap();
                    let count = counted(&plan, plan.knot().strands().min(MOST_COLOURS));
                    let found = count.plan().unwrap();
                    assert_eq!(found.knot(), plan.knot());
                    assert_eq!(found.laying().passes(), plan.laying().passes());
                }
            }
        }
        let codes = ["oouu", "ouuo", "uuoo"];
        for code in codes {
            let plan = Plan::read("5", "7", "1", code).unwrap();
            assert_eq!(
                counted(&plan, 1)
                    .plan()
                    .unwrap()
                    .knot()
                    .goes_over(crate::knot::Heading::Rising, 3),
                code.as_bytes()[2] == b'o'
            );
        }
    }

    #[test]
    fn colours_that_no_such_knot_can_have_are_counted_again() {
        let one_cord = Plan::read("5", "7", "1", "1").unwrap();
        let mut count = counted(&one_cord, 2);
        assert_eq!(count.press(true), CountAction::Asked, "it is not taken");
        assert_eq!(count.plan(), None);
        let mut count = counted(&one_cord, 1);
        let CountAction::Take(plan) = count.press(true) else {
            panic!("it is taken");
        };
        assert_eq!(plan.knot(), one_cord.knot());
    }

    #[test]
    fn it_is_counted_by_two_presses_alone() {
        let mut count = KnotCount::default();
        // Three scallops from the least of two, two crossings from one, single, over then under, one
        // colour.
        for is_next in [true, false, true, false, false, true, false, false] {
            count.press(is_next);
        }
        let knot = count.plan().unwrap().knot();
        let least = *Quantity::Bights.bounds().start();
        assert_eq!((knot.leads(), knot.bights()), (3, least + 1));
        assert_eq!(knot.weave(), &Weave::Run(1));
    }
}
