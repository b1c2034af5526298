//! A knot put together from what was heard of it, and from nothing else: the pins and the turns give
//! the leads, and what was laid before gives the cords that are met.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};

use super::spoken::{Depth, Lane, Pin, Rim, Spoken, language, listen};

/// The `lay` steps as `steps --json` would give them, worked out from everything that is
/// spoken during the job in the language of `tag`.
///
/// The tyer sees what lies in the way of a leg, and is told how to cross it: what is told must be as
/// many crossings as are met, of as many cords as lie there.
pub fn document(tag: &str, said: &[String], depth: Depth) -> Result<Value, String> {
    let begin = said.first().ok_or("nothing is said")?;
    let language = language(tag);
    let is_staggered = language
        .is_staggered(begin)
        .ok_or_else(|| format!("it is not said how the top pins stand: {begin:?}"))?;
    let laid: Vec<Spoken> = said
        .iter()
        .filter(|text| language.is_lay(text))
        .map(|text| listen(tag, text, depth))
        .collect::<Result<_, _>>()?;
    let tube = Tube::of(&laid, is_staggered)?;
    // How many cords lie on the leg from each pin.
    let mut cords: BTreeMap<Pin, u64> = BTreeMap::new();
    let mut in_the_way = Vec::new();
    let mut steps = Vec::new();
    for spoken in &laid {
        let (part, parts) = spoken.part;
        if part == 1 {
            in_the_way = tube.in_the_way(spoken, &cords);
        }
        let mut crossings = Vec::new();
        for crossed in &spoken.met {
            if in_the_way.is_empty() {
                return Err(format!("nothing is left to cross: {spoken:?}"));
            }
            let (row, of) = in_the_way.remove(0);
            if cords.get(&of.0) != Some(&crossed.cords) {
                return Err(format!("{of:?} has not so many cords: {spoken:?}"));
            }
            crossings.push(json!({
                "row": row, "over": crossed.over, "cords": crossed.cords,
                "of": { "from": pin(of.0), "to": pin(of.1) },
            }));
        }
        if part == parts {
            if !in_the_way.is_empty() {
                return Err(format!("not all is crossed: {spoken:?}"));
            }
            *cords.entry(spoken.from).or_default() += 1;
        }
        steps.push(json!({
            "kind": "lay", "pass": spoken.pass.unwrap_or(1), "strand": spoken.strand.unwrap_or(1),
            "leg": spoken.leg, "part": part, "parts": parts,
            "from": pin(spoken.from), "to": pin(spoken.to),
            "heading": if spoken.from.0 == Rim::Bottom { "rising" } else { "falling" },
            // The reader of the document asks only that a follower keeps to one side.
            "side": spoken.pass.is_some().then_some(match spoken.lane {
                Some(Lane::Top) => "left",
                Some(Lane::Bottom) | None => "right",
            }),
            "crossings": crossings,
        }));
    }
    Ok(json!({ "steps": steps }))
}

fn pin((rim, number): Pin) -> Value {
    let rim = if rim == Rim::Bottom { "bottom" } else { "top" };
    json!({ "rim": rim, "pin": number })
}

/// The tube with its pins, half pitch by half pitch.
struct Tube {
    leads: u64,
    bights: u64,
    stagger: u64,
}

impl Tube {
    fn of(laid: &[Spoken], is_staggered: bool) -> Result<Self, String> {
        let bottom: BTreeSet<Pin> = laid
            .iter()
            .map(|spoken| spoken.from)
            .filter(|pin| pin.0 == Rim::Bottom)
            .collect();
        let first = laid.first().ok_or("no leg is said")?;
        let mut tube = Self {
            leads: 0,
            bights: bottom.len() as u64,
            stagger: u64::from(is_staggered),
        };
        // A leg goes one row up for every half pitch, so it is as many leads high as half
        // pitches wide.
        let round = 2 * tube.bights;
        let apart = (tube.place(first.to) + round - tube.place(first.from)) % round;
        tube.leads = apart + round * first.turns.ok_or("no word of turns")?;
        Ok(tube)
    }

    /// Half pitches from bottom pin 1.
    fn place(&self, (rim, number): Pin) -> u64 {
        2 * (number - 1) + if rim == Rim::Top { self.stagger } else { 0 }
    }

    /// The pin at so many half pitches from bottom pin 1.
    fn pin_at(&self, rim: Rim, place: u64) -> Pin {
        let stagger = if rim == Rim::Top { self.stagger } else { 0 };
        let round = 2 * self.bights;
        (rim, (place + round - stagger) % round / 2 + 1)
    }

    /// The rows in which a leg meets cords that lie there, in the order in which it meets them, with
    /// the pins of their leg.
    ///
    /// The rising leg from `x` and the falling one from `z` are at the same place in row `y` when
    /// `x + y ≡ z + leads − y` (mod 2 bights).
    fn in_the_way(&self, spoken: &Spoken, cords: &BTreeMap<Pin, u64>) -> Vec<(u64, (Pin, Pin))> {
        let rises = spoken.from.0 == Rim::Bottom;
        let (start, round) = (self.place(spoken.from), 2 * self.bights);
        let mut rows: Vec<u64> = (1..self.leads).collect();
        if !rises {
            rows.reverse();
        }
        let met = rows.into_iter().map(|row| {
            // Far enough round not to fall below nothing.
            let far = round * (self.leads + 1);
            let (from, to) = if rises {
                (Rim::Top, (start + 2 * row + far - self.leads) % round)
            } else {
                (Rim::Bottom, (start + self.leads + far - 2 * row) % round)
            };
            let other = if from == Rim::Top {
                Rim::Bottom
            } else {
                Rim::Top
            };
            let landing = (to + self.leads) % round;
            (row, (self.pin_at(from, to), self.pin_at(other, landing)))
        });
        met.filter(|(_, (from, _))| cords.contains_key(from))
            .collect()
    }
}
