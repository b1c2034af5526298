//! A knot that somebody brings: counted on the knot itself, by single presses, until it is known.

use super::asides::{Counted, Tally};
use super::count_reading::{Asked, Bounds, Counts, questions, weave_of};
use crate::guide::{ColoursFound, Plan};
use crate::knot::{Heading, Pin, PinRow, Quantity, Rim};
use crate::picture::{Mark, Subject};
use crate::words::{CountAsked, Shown, Spoken, Words};

/// As many colours as are told apart in a knot.
const MOST_COLOURS: u16 = 9;
/// Leads of the knot that is shown before its crossings are counted.
const SHOWN_LEADS: u16 = 5;

/// What is counted of a knot so far.
///
/// ```
/// use marlinspeak::session::KnotCount;
///
/// // Seven scallops, side by side, four crossings from rim to rim, two cords together; along a cord
/// // that rises to the right over, under, over, under; one colour.
/// let mut count = KnotCount::default();
/// for number in ["7", "1", "4", "2"] {
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
    counts: Counts,
    /// For every question about the weave, whether the cord goes over.
    weave: Vec<bool>,
    stage: Stage,
}

#[derive(Clone, Debug)]
enum Stage {
    /// Scallops along one rim.
    Bights(Tally),
    /// Scallops nested one inside the other.
    Nested(Tally),
    /// The row of scallops in which the cord from an outermost one turns at the top.
    Lands(Tally),
    /// Crossings along that cord, from rim to rim; and those that there can be on either side of a
    /// number that cannot be.
    Rows(Tally, Option<[u16; 2]>),
    /// Cords that lie side by side.
    Passes(Tally),
    /// Whether a cord that rises to the right goes over at each crossing that is asked about.
    Weave(Vec<Asked>),
    /// Colours that are seen.
    Colours(Tally),
    /// The knot, and how many colours were counted.
    Found(Box<Plan>, ColoursFound, u16),
}

/// What next and back come to.
///
/// ```
/// use marlinspeak::session::{CountKeys, KnotCount};
///
/// // First the scallops are counted.
/// let mut count = KnotCount::default();
/// assert_eq!(count.keys(), CountKeys::Number);
/// count.type_in("7");
/// assert_eq!(count.keys(), CountKeys::Typing);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CountKeys {
    /// One more; that is it.
    Number,
    /// That is it; a digit away.
    Typing,
    /// Over; under.
    OverOrUnder,
    /// Take the knot; count again.
    Found,
    /// Count again, either way.
    Miscounted,
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
            counts: Counts::default(),
            weave: Vec::new(),
            stage: Stage::Bights(tally(Bounds::of(Quantity::Bights))),
        }
    }
}

fn tally(Bounds { least, most }: Bounds) -> Tally {
    Tally::new(least, most)
}

impl KnotCount {
    /// The knot, when it is known.
    pub fn plan(&self) -> Option<&Plan> {
        match &self.stage {
            Stage::Found(plan, ..) => Some(plan),
            _ => None,
        }
    }

    /// What its colours say, when it is known, and how many were counted.
    pub const fn colours(&self) -> Option<(ColoursFound, u16)> {
        match &self.stage {
            Stage::Found(_, found, colours) => Some((*found, *colours)),
            _ => None,
        }
    }

    /// What next and back come to now.
    pub const fn keys(&self) -> CountKeys {
        match &self.stage {
            Stage::Weave(_) => CountKeys::OverOrUnder,
            Stage::Found(_, found, _) if found.is_possible() => CountKeys::Found,
            Stage::Found(..) => CountKeys::Miscounted,
            _ => match self.tally() {
                Some(tally) if tally.is_typed() => CountKeys::Typing,
                _ => CountKeys::Number,
            },
        }
    }

    /// The least and the most that the number can be; none where no number is asked for.
    pub fn bounds(&self) -> Option<(u16, u16)> {
        self.tally().map(Tally::bounds)
    }

    const fn tally(&self) -> Option<&Tally> {
        match &self.stage {
            Stage::Bights(tally)
            | Stage::Nested(tally)
            | Stage::Lands(tally)
            | Stage::Rows(tally, _)
            | Stage::Passes(tally)
            | Stage::Colours(tally) => Some(tally),
            Stage::Weave(_) | Stage::Found(..) => None,
        }
    }

    const fn tally_mut(&mut self) -> Option<&mut Tally> {
        match &mut self.stage {
            Stage::Bights(tally)
            | Stage::Nested(tally)
            | Stage::Lands(tally)
            | Stage::Rows(tally, _)
            | Stage::Passes(tally)
            | Stage::Colours(tally) => Some(tally),
            Stage::Weave(_) | Stage::Found(..) => None,
        }
    }

    /// Takes a digit where a number is asked for.
    pub fn type_in(&mut self, key: &str) -> bool {
        let is_taken = self.tally_mut().is_some_and(|tally| tally.type_in(key));
        if is_taken {
            self.forget_misfit();
        }
        is_taken
    }

    /// What was said of a number that cannot be is over.
    const fn forget_misfit(&mut self) {
        if let Stage::Rows(_, misfit) = &mut self.stage {
            *misfit = None;
        }
    }

    /// Takes a press of next or back.
    pub fn press(&mut self, is_next: bool) -> CountAction {
        if let Some(tally) = self.tally_mut() {
            let counted = tally.press(is_next);
            let number = tally.number();
            self.forget_misfit();
            if counted == Counted::Changed {
                return CountAction::Counted;
            }
            self.take(number);
            return CountAction::Asked;
        }
        match &self.stage {
            Stage::Found(plan, found, _) if is_next && found.is_possible() => {
                CountAction::Take(plan.clone())
            }
            Stage::Weave(asked) => {
                self.weave.push(is_next);
                if self.weave.len() >= asked.len() {
                    self.stage = Stage::Colours(Tally::new(1, MOST_COLOURS));
                }
                CountAction::Asked
            }
            _ => {
                // Counted once more, with what was counted before at hand.
                self.weave.clear();
                self.stage =
                    Stage::Bights(tally(Bounds::of(Quantity::Bights)).at(self.counts.bights));
                CountAction::Asked
            }
        }
    }

    fn take(&mut self, number: u16) {
        let counts = &mut self.counts;
        self.stage = match &self.stage {
            Stage::Bights(_) => {
                counts.bights = number;
                Stage::Nested(tally(Bounds::of(Quantity::Nested)).at(counts.nested))
            }
            Stage::Nested(_) => {
                if counts.nested != number {
                    // All cords alike is what is tied most: the first one lands innermost.
                    (counts.nested, counts.lands, counts.rows) = (number, number, 0);
                }
                if number > 1 {
                    Stage::Lands(Tally::new(1, number).at(counts.lands))
                } else {
                    self.ask_rows()
                }
            }
            Stage::Lands(_) => {
                if counts.lands != number {
                    (counts.lands, counts.rows) = (number, 0);
                }
                self.ask_rows()
            }
            Stage::Rows(..) => match counts.leads_of(number) {
                Ok(leads) => {
                    (counts.rows, counts.leads) = (number, leads);
                    let passes = Bounds::of(Quantity::Passes);
                    Stage::Passes(tally(passes).at(counts.passes))
                }
                // What is typed next is another number.
                Err(nearest) => {
                    let rows = tally(counts.rows_bounds()).at(number);
                    Stage::Rows(rows, Some(nearest))
                }
            },
            Stage::Passes(_) => {
                counts.passes = number;
                self.weave.clear();
                Stage::Weave(questions(counts.lattice()))
            }
            Stage::Colours(_) => match self.knot() {
                Some(plan) => {
                    let found = ColoursFound::of(&plan, number);
                    Stage::Found(Box::new(plan), found, number)
                }
                None => Self::default().stage,
            },
            other => other.clone(),
        };
    }

    fn ask_rows(&self) -> Stage {
        let rows = tally(self.counts.rows_bounds());
        let rows = match self.counts.rows {
            0 => rows,
            before => rows.at(before),
        };
        Stage::Rows(rows, None)
    }

    /// The knot of these counts; every one of them is within its bounds.
    fn knot(&self) -> Option<Plan> {
        let lattice = self.counts.lattice()?;
        let weave = weave_of(lattice, &self.weave);
        self.counts.plan(lattice, weave)
    }

    /// The knot as far as it is counted, with what is usual for the rest.
    fn so_far(&self) -> Option<Plan> {
        let mut counts = self.counts.clone();
        let number = self.tally().map_or(0, Tally::number);
        if counts.leads == 0 {
            counts.leads = SHOWN_LEADS;
        }
        match &self.stage {
            Stage::Bights(_) => counts.bights = number,
            Stage::Nested(_) => (counts.nested, counts.lands) = (number, number),
            Stage::Lands(_) => counts.lands = number,
            Stage::Rows(..) => {
                counts.leads = match counts.leads_of(number) {
                    Ok(leads) => leads,
                    Err(nearest) => counts.leads_of(nearest[1]).ok()?,
                }
            }
            Stage::Passes(_) => counts.passes = number,
            Stage::Weave(_) | Stage::Colours(_) | Stage::Found(..) => {}
        }
        let lattice = counts.lattice()?;
        let weave = weave_of(lattice, &self.weave);
        counts.plan(lattice, weave)
    }

    fn asked(&self) -> CountAsked<'_> {
        let nested = self.counts.nested;
        match &self.stage {
            Stage::Bights(tally) => CountAsked::Bights(tally.number()),
            Stage::Nested(tally) => CountAsked::Nested(tally.number()),
            Stage::Lands(tally) => CountAsked::Lands(tally.number()),
            Stage::Rows(tally, nearest) => CountAsked::Rows {
                number: tally.number(),
                nested,
                nearest: *nearest,
            },
            Stage::Passes(tally) => CountAsked::Passes(tally.number()),
            Stage::Weave(asked) => {
                let asked = asked.get(self.weave.len()).copied().unwrap_or_default();
                CountAsked::Over {
                    nth: asked.nth,
                    of: asked.of,
                    from: asked.from,
                    nested,
                }
            }
            Stage::Colours(tally) => CountAsked::Colours(tally.number()),
            Stage::Found(plan, found, _) => CountAsked::Found(plan, *found),
        }
    }

    /// What is asked, or found, on the screen.
    pub fn show(&self, words: &Words) -> Shown {
        words.show_count(&self.asked(), self.keys() == CountKeys::Typing)
    }

    /// The same for the ear.
    pub fn say(&self, words: &Words) -> Spoken {
        words.say_count(&self.asked())
    }

    /// The number so far, after each press.
    pub fn say_briefly(&self, words: &Words) -> Spoken {
        words.say_count_briefly(&self.asked())
    }

    /// The knot as far as it is counted, with what is asked about pointed at.
    pub fn subject(&self) -> Option<Subject> {
        if let Stage::Found(plan, ..) = &self.stage {
            return Some(Subject::finished(plan));
        }
        let plan = self.so_far()?;
        let finished = Subject::finished(&plan);
        let knot = plan.knot();
        let first = knot.leg_from(Pin::bottom(1).in_row(outermost(knot.nested())));
        let crossed = || knot.crossings_of(first).map(|(row, _)| row);
        let mark = match &self.stage {
            // One of those that are counted: the others are like it, once round.
            Stage::Bights(_) | Stage::Nested(_) => Mark::Bight(first.from),
            Stage::Lands(_) => Mark::Bight(first.to),
            Stage::Rows(..) => Mark::Crossing(first.from, crossed().last()?),
            Stage::Weave(asked) => {
                let asked = asked.get(self.weave.len())?;
                let from = knot.pin(Rim::Bottom, asked.from, 1)?;
                debug_assert_eq!(knot.leg_from(from).heading(), Heading::Rising);
                Mark::Crossing(from, asked.row)
            }
            Stage::Passes(_) | Stage::Colours(_) | Stage::Found(..) => return Some(finished),
        };
        Some(finished.marked(mark))
    }
}

/// The outermost row of pins of so many.
fn outermost(nested: u16) -> PinRow {
    PinRow {
        number: 1,
        of: u8::try_from(nested).unwrap_or(u8::MAX),
    }
}

#[cfg(test)]
mod tests;
