//! Which knots the plan screen shows: the choices above the list, each with a key of its own.

use crate::bench::{Cord, Firmness, FitFilter, MOST_PASSES, WeaveChoice};
use crate::guide::FitQuestion;

/// A filter, in the order in which they stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanFilter {
    /// Every number of passes, or one.
    Passes,
    /// Leads and bights from three.
    FromThree,
    /// Of one strand.
    OneCord,
    /// Most legs.
    MostLegs,
    /// The weave as it is named, or begun so that it takes the fewest tucks.
    Weave,
    /// What the cord is like.
    Firm,
    /// Plain knots and the best interwoven ones, or those of so many bights nested at each rim.
    Nested,
}

impl PlanFilter {
    /// All of them.
    pub(super) const ALL: [Self; 7] = [
        Self::Passes,
        Self::FromThree,
        Self::OneCord,
        Self::MostLegs,
        Self::Weave,
        Self::Firm,
        Self::Nested,
    ];

    /// The filter that a key of the standard changes.
    pub(super) fn of_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|filter| filter.key() == key)
    }

    /// Its key.
    pub(super) const fn key(self) -> &'static str {
        match self {
            Self::Passes => "F2",
            Self::FromThree => "F3",
            Self::OneCord => "F4",
            Self::MostLegs => "F5",
            Self::Weave => "F6",
            Self::Firm => "F7",
            Self::Nested => "F8",
        }
    }

    /// Its name among the messages.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Passes => "passes",
            Self::FromThree => "from-three",
            Self::OneCord => "one-cord",
            Self::MostLegs => "most-legs",
            Self::Weave => "weave",
            Self::Firm => "firm",
            Self::Nested => "nested",
        }
    }
}

/// Legs at the most, from choice to choice: an evening's work, two, a long one.
const LEGS: [u32; 3] = [24, 48, 96];
/// Bights nested at the most, from choice to choice: more take more evenings than one.
const MOST_NESTED: u16 = 3;
/// Least leads and bights of a knot that is a braid.
const THREE: u16 = 3;

/// What the filters are set to.
#[derive(Clone, Copy, Debug)]
pub(super) struct Filters {
    filter: FitFilter,
    weave: WeaveChoice,
    /// What the cord is like; none for what is known of it, or else usual.
    firmness: Option<Firmness>,
    /// Whether they stand in the place of the knots, where they have no place of their own.
    pub(super) are_shown: bool,
}

impl Default for Filters {
    fn default() -> Self {
        Self {
            filter: FitFilter::default(),
            weave: WeaveChoice::FewestTucks,
            firmness: None,
            are_shown: false,
        }
    }
}

impl Filters {
    /// Sets one to its next choice.
    pub fn change(&mut self, filter: PlanFilter) {
        let all = FitFilter::default();
        let new = &mut self.filter;
        match filter {
            PlanFilter::Passes => {
                new.passes = match new.passes {
                    None => Some(1),
                    Some(MOST_PASSES..) => None,
                    Some(passes) => Some(passes + 1),
                };
            }
            PlanFilter::FromThree => {
                let least = if new.least_leads == THREE {
                    all.least_leads
                } else {
                    THREE
                };
                (new.least_leads, new.least_bights) = (least, least);
            }
            PlanFilter::OneCord => new.one_cord = !new.one_cord,
            PlanFilter::MostLegs => {
                let here = LEGS.iter().position(|legs| Some(*legs) == new.most_legs);
                new.most_legs = LEGS.get(here.map_or(0, |here| here + 1)).copied();
            }
            PlanFilter::Weave => {
                self.weave = match self.weave {
                    WeaveChoice::FewestTucks => WeaveChoice::Run(1),
                    WeaveChoice::Run(_) => WeaveChoice::FewestTucks,
                }
            }
            PlanFilter::Nested => {
                new.nested = match new.nested {
                    None => Some(1),
                    Some(MOST_NESTED..) => None,
                    Some(nested) => Some(nested + 1),
                };
            }
            PlanFilter::Firm => {
                let here = Firmness::ALL
                    .iter()
                    .position(|kind| Some(*kind) == self.firmness);
                self.firmness = Firmness::ALL.get(here.map_or(0, |here| here + 1)).copied();
            }
        }
    }

    /// What one is set to: 0 where it lets every knot through, and every cord be as it is known.
    pub fn choice(&self, filter: PlanFilter) -> u32 {
        match filter {
            PlanFilter::Passes => self.filter.passes.map_or(0, u32::from),
            PlanFilter::FromThree => u32::from(self.filter.least_leads == THREE),
            PlanFilter::OneCord => u32::from(self.filter.one_cord),
            PlanFilter::MostLegs => self.filter.most_legs.unwrap_or(0),
            PlanFilter::Weave => u32::from(self.weave != WeaveChoice::FewestTucks),
            PlanFilter::Nested => self.filter.nested.map_or(0, u32::from),
            PlanFilter::Firm => match self.firmness {
                None => 0,
                Some(Firmness::Hard) => 1,
                Some(Firmness::Soft) => 2,
                Some(Firmness::Flat) => 3,
            },
        }
    }

    /// The question, narrowed.
    pub fn narrow(&self, question: FitQuestion) -> FitQuestion {
        let give = self.firmness.map_or(question.cord.give, Into::into);
        FitQuestion {
            filter: self.filter,
            weave: self.weave,
            cord: Cord {
                give,
                ..question.cord
            },
            ..question
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_filter_comes_round_to_letting_every_knot_through() {
        for filter in PlanFilter::ALL {
            let mut filters = Filters::default();
            assert_eq!(PlanFilter::of_key(filter.key()), Some(filter));
            let mut choices = vec![filters.choice(filter)];
            loop {
                filters.change(filter);
                match filters.choice(filter) {
                    0 => break,
                    choice => choices.push(choice),
                }
            }
            assert_eq!(filters.filter, FitFilter::default());
            assert!(choices.len() > 1, "{filter:?}");
        }
    }
}
