//! The story that `steps --json` tells, read from its `lay` steps alone and held to its
//! word.

use std::collections::BTreeMap;

use serde_json::Value;

use super::told::{Crossed, Pin, Rim, Told, name, told_legs};

/// A leg of the lead pass; followers run beside it.
#[derive(Debug)]
pub struct Leg {
    pub strand: u64,
    pub number: u64,
    pub from: Pin,
    pub to: Pin,
}

impl Leg {
    pub fn rises(&self) -> bool {
        self.from.0 == Rim::Bottom
    }
}

/// One leg laid in one pass, and what it meets.
#[derive(Debug)]
pub struct Laid {
    pub pass: usize,
    /// Its place in [`Story::legs`].
    pub leg: usize,
    pub met: Vec<Met>,
}

/// A crossing as it is told to the tyer: so many cords of one leg, over or under all of them.
#[derive(Debug)]
pub struct Met {
    pub row: u64,
    pub over: bool,
    pub cords: usize,
    /// Its place in [`Story::legs`].
    pub leg: usize,
}

/// Every leg of every pass, in the order told.
#[derive(Debug)]
pub struct Story {
    pub legs: Vec<Leg>,
    pub laid: Vec<Laid>,
    /// Whether followers keep to the right of what they follow.
    pub keeps_right: bool,
}

impl Story {
    /// Reads the document that `steps --json` prints.
    ///
    /// Says why not when the story contradicts itself: a leg that does not start where the last
    /// one ended, a strand that does not close, a cord crossed that is not there, ….
    pub fn read(document: &Value) -> Result<Self, String> {
        let told = told_legs(document)?;
        check_route(&told)?;
        let mut legs: Vec<Leg> = Vec::new();
        for leg in told.iter().filter(|told| told.trip.0 == 1) {
            if let Some(other) = legs
                .iter()
                .find(|other| other.from == leg.ends.0 || other.to == leg.ends.1)
            {
                return Err(format!("{} shares a pin with leg {other:?}", name(leg)));
            }
            legs.push(Leg {
                strand: leg.trip.1,
                number: leg.number,
                from: leg.ends.0,
                to: leg.ends.1,
            });
        }
        let mut cords = vec![0; legs.len()];
        let mut laid = Vec::new();
        for leg in &told {
            let index = legs
                .iter()
                .position(|lead| (lead.strand, lead.number) == (leg.trip.1, leg.number))
                .filter(|&index| (legs[index].from, legs[index].to) == leg.ends)
                .ok_or_else(|| format!("{} follows no leg of the lead pass", name(leg)))?;
            let met = what_it_meets(leg, &legs, &cords)?;
            cords[index] += 1;
            laid.push(Laid {
                pass: cords[index],
                leg: index,
                met,
            });
        }
        check_followers(&legs, &laid)?;
        Ok(Self {
            keeps_right: side_kept(&told)?,
            legs,
            laid,
        })
    }

    /// How often the cord goes round the whole pattern.
    pub fn passes(&self) -> usize {
        self.laid.iter().map(|laid| laid.pass).max().unwrap_or(0)
    }
}

/// A strand in one pass is one closed walk from pin to pin, told once, legs 1, 2, 3, ….
fn check_route(told: &[Told]) -> Result<(), String> {
    let mut lengths = BTreeMap::new();
    for trip in told.chunk_by(|one, next| one.trip == next.trip) {
        let (first, last) = (&trip[0], &trip[trip.len() - 1]);
        for (leg, number) in trip.iter().zip(1..) {
            if leg.number != number {
                return Err(format!("{} comes where leg {number} should", name(leg)));
            }
        }
        if let Some(leg) = trip
            .iter()
            .skip(1)
            .zip(trip)
            .find_map(|(leg, before)| (leg.ends.0 != before.ends.1).then_some(leg))
        {
            return Err(format!("{} does not start where the last ended", name(leg)));
        }
        if last.ends.1 != first.ends.0 {
            return Err(format!("the strand does not close after {}", name(last)));
        }
        let (pass, strand) = first.trip;
        if lengths.insert((strand, pass), trip.len()).is_some() {
            return Err(format!("strand {strand} is laid twice in pass {pass}"));
        }
        if pass > 1 && lengths.get(&(strand, pass - 1)) != Some(&trip.len()) {
            return Err(format!(
                "pass {pass} of strand {strand} follows no whole pass"
            ));
        }
    }
    let passes_of = |strand| lengths.keys().filter(|key| key.0 == strand).count();
    let passes = passes_of(1);
    match lengths.keys().find(|key| passes_of(key.0) != passes) {
        Some((strand, _)) => Err(format!(
            "strand {strand} has not as many passes as the first"
        )),
        None => Ok(()),
    }
}

/// The crossings of a leg, each held against the cords that lie on the tube: how many are laid
/// so far of every leg.
fn what_it_meets(leg: &Told, legs: &[Leg], cords: &[usize]) -> Result<Vec<Met>, String> {
    let rises = leg.ends.0.0 == Rim::Bottom;
    let rows = leg.crossings.iter().map(|met| met.row);
    if !rows.is_sorted_by(|one, next| if rises { one < next } else { one > next }) {
        return Err(format!("the rows of {} are out of order", name(leg)));
    }
    let met = leg.crossings.iter().map(|crossed| {
        let Crossed {
            row,
            over,
            cords: told,
            of,
        } = *crossed;
        let crossed = legs
            .iter()
            .position(|lead| (lead.from, lead.to) == of && lead.rises() != rises)
            .ok_or_else(|| format!("{} crosses {of:?}, which does not exist", name(leg)))?;
        if told == 0 || told != cords[crossed] as u64 {
            return Err(format!(
                "{} crosses {told} cords of {of:?}, where {} are laid",
                name(leg),
                cords[crossed]
            ));
        }
        Ok(Met {
            row,
            over,
            cords: cords[crossed],
            leg: crossed,
        })
    });
    met.collect()
}

/// Where two legs cross, all their cords do so alike: the rising ones over, or the falling ones.
fn check_followers(legs: &[Leg], laid: &[Laid]) -> Result<(), String> {
    let mut rising_over = BTreeMap::new();
    for laid in laid {
        for met in &laid.met {
            let place = (laid.leg.min(met.leg), laid.leg.max(met.leg), met.row);
            let over = met.over == legs[laid.leg].rises();
            if *rising_over.entry(place).or_insert(over) != over {
                return Err(format!(
                    "{:?} goes over in one pass and under in another, row {}",
                    legs[laid.leg], met.row
                ));
            }
        }
    }
    Ok(())
}

/// The one side all followers keep to; right when nothing is followed.
fn side_kept(told: &[Told]) -> Result<bool, String> {
    let mut sides = told
        .iter()
        .filter(|leg| leg.trip.0 > 1)
        .map(|leg| leg.side.as_deref());
    match sides.next() {
        Some(side) if sides.any(|other| other != side) => {
            Err("the followers change sides".to_owned())
        }
        None | Some(Some("right")) => Ok(true),
        Some(Some("left")) => Ok(false),
        Some(side) => Err(format!("a follower keeps to no side: {side:?}")),
    }
}
