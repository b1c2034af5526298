//! The steps by their numbers, found without going through each of them.

use super::{Place, Script};

/// Places that come one after the other within one leg, or a single one.
struct Run {
    first: Place,
    places: u16,
}

impl Script {
    /// How many places there are from the first to the last. Looks at each leg once, however many
    /// parts it is told in.
    ///
    /// ```
    /// use marlinspeak::guide::{AtOnce, Plan, Script};
    ///
    /// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::UpTo(1));
    /// assert_eq!(script.count(), script.places().count());
    /// assert_eq!(script.nth(40), script.places().nth(40));
    /// assert_eq!(script.nth(script.count()), None);
    /// # Ok::<(), marlinspeak::knot::KnotError>(())
    /// ```
    pub fn count(&self) -> usize {
        self.runs().map(|run| usize::from(run.places)).sum()
    }

    /// The place with this number, counted from 0, as quickly as [`Script::count`].
    pub fn nth(&self, number: usize) -> Option<Place> {
        let mut left = number;
        for run in self.runs() {
            match left.checked_sub(run.places.into()) {
                Some(rest) => left = rest,
                None => return self.part_of_run(&run, left),
            }
        }
        None
    }

    fn part_of_run(&self, run: &Run, part: usize) -> Option<Place> {
        match run.first {
            Place::Lay { pass_leg, .. } => {
                let at_once = self.told_at_once(pass_leg);
                Some(Place::Lay {
                    pass_leg,
                    crossing: at_once.begins(u16::try_from(part).ok()?, self.met(pass_leg)),
                })
            }
            place => Some(place),
        }
    }

    fn runs(&self) -> impl Iterator<Item = Run> + '_ {
        std::iter::successors(Some(self.run(self.first())), |run| {
            let next = match run.first {
                Place::Lay { pass_leg, .. } if self.is_checked(pass_leg) => Place::check(pass_leg),
                Place::Lay { pass_leg, .. } => self.after_leg(pass_leg),
                place => self.next(place)?,
            };
            Some(self.run(next))
        })
    }

    fn run(&self, first: Place) -> Run {
        let places = match first {
            Place::Lay { pass_leg, .. } => {
                let crossings = self.met(pass_leg);
                self.told_at_once(pass_leg).parts(crossings)
            }
            _ => 1,
        };
        Run { first, places }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use crate::guide::{AtOnce, Checks, Plan, Script};

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]

        #[test]
        fn a_place_has_the_number_that_going_through_all_of_them_gives_it(
            (leads, bights, passes) in (2_u16..9, 2_u16..9, 1_u16..4),
            at_once in prop_oneof![Just(AtOnce::WholeLeg), (1_u16..5).prop_map(AtOnce::UpTo)],
            (by_leg, teaches, each_round) in any::<(bool, bool, bool)>(),
        ) {
            let [leads, bights, passes] = [leads, bights, passes].map(|count| count.to_string());
            let plan = Plan::read(&leads, &bights, &passes, "1");
            prop_assume!(plan.is_ok());
            let checks = if each_round { Checks::EachRound } else { Checks::default() };
            let script = Script::new(plan.unwrap(), at_once)
                .with_checks(checks)
                .fairing_by_leg(by_leg)
                .teaching(teaches);
            let places: Vec<_> = script.places().collect();
            prop_assert_eq!(script.count(), places.len());
            for (number, place) in places.iter().enumerate() {
                prop_assert_eq!(script.nth(number), Some(*place));
            }
            prop_assert_eq!(script.nth(places.len()), None);
        }
    }
}
