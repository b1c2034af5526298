//! A knot put together from what was heard of it, and from nothing else: the pins and the turns give
//! the leads, and what was laid before gives the cords that are met.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};

use super::spoken::{Depth, Lane, Pin, ROW, Rim, Spoken, language, listen};

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
    document_of(&laid, is_staggered)
}

/// The same from the steps as they were heard.
pub fn document_of(laid: &[Spoken], is_staggered: bool) -> Result<Value, String> {
    let tube = Tube::of(laid, is_staggered)?;
    // How many cords lie on the leg from each pin.
    let mut cords: BTreeMap<Pin, u64> = BTreeMap::new();
    let mut in_the_way = Vec::new();
    let mut steps = Vec::new();
    for spoken in laid {
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
    Ok(json!({ "knot": { "nested": tube.nested }, "steps": steps }))
}

fn pin((rim, number): Pin) -> Value {
    let rim = if rim == Rim::Bottom { "bottom" } else { "top" };
    json!({ "rim": rim, "row": number / ROW + 1, "pin": number % ROW })
}

/// The tube with its pins, half pitch by half pitch: those of one number in line, every row of them two
/// rows of crossings inside the one before.
struct Tube {
    nested: u64,
    bights: u64,
    stagger: u64,
    height: u64,
}

impl Tube {
    fn of(laid: &[Spoken], is_staggered: bool) -> Result<Self, String> {
        let pins: BTreeSet<Pin> = laid
            .iter()
            .map(|spoken| spoken.from)
            .filter(|pin| pin.0 == Rim::Bottom)
            .collect();
        let nested = pins.iter().map(|pin| pin.1 / ROW + 1).max().unwrap_or(1);
        let first = laid.first().ok_or("no leg is said")?;
        let mut tube = Self {
            nested,
            bights: pins.len() as u64 / nested,
            stagger: if is_staggered { nested } else { 0 },
            height: 0,
        };
        // A leg goes one row up for every half pitch, so it is as many rows high as half pitches
        // wide; the rows outside the pin where it lands come on top of that.
        let round = tube.round();
        let apart = (tube.across(first.to) + round - tube.across(first.from)) % round;
        let climbed = apart + round * first.turns.ok_or("no word of turns")?;
        tube.height = climbed + 2 * (first.from.1 / ROW + first.to.1 / ROW);
        Ok(tube)
    }

    fn round(&self) -> u64 {
        2 * self.nested * self.bights
    }

    /// Half pitches from bottom pin 1.
    fn across(&self, (rim, number): Pin) -> u64 {
        let stagger = if rim == Rim::Top { self.stagger } else { 0 };
        2 * self.nested * (number % ROW - 1) + stagger
    }

    /// Rows above the outermost bottom pins.
    fn up(&self, (rim, number): Pin) -> u64 {
        let inside = 2 * (number / ROW);
        if rim == Rim::Top {
            self.height - inside
        } else {
            inside
        }
    }

    fn pins(&self, rim: Rim) -> impl Iterator<Item = Pin> + '_ {
        let rows = 0..self.nested;
        rows.flat_map(move |row| (1..=self.bights).map(move |number| (rim, ROW * row + number)))
    }

    /// Where a cord is that left this pin, in that row; nothing before it left and once it has come to
    /// a pin of the other rim.
    fn passes(&self, from: Pin, row: u64) -> Option<u64> {
        let rises = from.0 == Rim::Bottom;
        let climbed = if rises {
            row.checked_sub(self.up(from))?
        } else {
            self.up(from).checked_sub(row)?
        };
        let landed = self.landing(from)?;
        let is_on_the_way = if rises {
            row < self.up(landed)
        } else {
            row > self.up(landed)
        };
        (climbed > 0 && is_on_the_way).then(|| (self.across(from) + climbed) % self.round())
    }

    /// The first pin of the other rim that a cord comes to.
    fn landing(&self, from: Pin) -> Option<Pin> {
        let other = if from.0 == Rim::Bottom {
            Rim::Top
        } else {
            Rim::Bottom
        };
        let round = self.round();
        let met = self.pins(other).filter(|pin| {
            let climbed = self.up(*pin).abs_diff(self.up(from));
            (self.across(from) + climbed) % round == self.across(*pin) % round
        });
        met.min_by_key(|pin| self.up(*pin).abs_diff(self.up(from)))
    }

    /// The rows in which a leg meets cords that lie there, in the order in which it meets them, with
    /// the pins of their leg.
    fn in_the_way(&self, spoken: &Spoken, cords: &BTreeMap<Pin, u64>) -> Vec<(u64, (Pin, Pin))> {
        let rises = spoken.from.0 == Rim::Bottom;
        let mut rows: Vec<u64> = (1..self.height).collect();
        if !rises {
            rows.reverse();
        }
        let far = if rises { Rim::Top } else { Rim::Bottom };
        let met = rows.into_iter().filter_map(|row| {
            let here = self.passes(spoken.from, row)?;
            let from = self
                .pins(far)
                .find(|pin| self.passes(*pin, row) == Some(here))?;
            Some((row, (from, self.landing(from)?)))
        });
        met.filter(|(_, (from, _))| cords.contains_key(from))
            .collect()
    }
}
