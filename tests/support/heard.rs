//! A knot put together from what was heard of it in the words that teach, and from nothing
//! else: the pins and the turns give the leads, and counting gives the rows.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};

use super::spoken::{Depth, Lane, Pin, Rim, Spoken, language, listen};

/// The `lay` steps as `steps --json` would give them, worked out from everything that is
/// spoken during the job in the language of `tag`.
pub fn document(tag: &str, said: &[String]) -> Result<Value, String> {
    let begin = said.first().ok_or("nothing is said")?;
    let language = language(tag);
    let is_staggered = language
        .is_staggered(begin)
        .ok_or_else(|| format!("it is not said how the top pins stand: {begin:?}"))?;
    let laid: Vec<Spoken> = said
        .iter()
        .filter(|text| language.is_lay(text))
        .map(|text| listen(tag, text, Depth::Teach))
        .collect::<Result<_, _>>()?;
    let tube = Tube::of(&laid, is_staggered)?;
    // How often each leg was met so far on the leg that is being laid.
    let mut met = BTreeMap::new();
    let mut steps = Vec::new();
    for spoken in &laid {
        if spoken.part.0 == 1 {
            met.clear();
        }
        let crossings = spoken.met.iter().map(|crossed| {
            let of = crossed.of.ok_or("a cord without its pins")?;
            let times = met.entry(of).or_insert(0);
            let row = tube.row(spoken, of, *times)?;
            *times += 1;
            Ok(json!({
                "row": row, "over": crossed.over, "cords": crossed.cords,
                "of": { "from": pin(of.0), "to": pin(of.1) },
            }))
        });
        let crossings: Vec<Value> = crossings.collect::<Result<_, String>>()?;
        steps.push(json!({
            "kind": "lay", "pass": spoken.pass, "strand": spoken.strand.unwrap_or(1),
            "leg": spoken.leg.map(|leg| leg.0),
            "part": spoken.part.0, "parts": spoken.part.1,
            "from": pin(spoken.from), "to": pin(spoken.to),
            "heading": if spoken.from.0 == Rim::Bottom { "rising" } else { "falling" },
            // The reader of the document asks only that a follower keeps to one side.
            "side": spoken.lane.map(|lane| if lane == Lane::Below { "right" } else { "left" }),
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

    /// The row in which a leg meets another for the time after `times`.
    ///
    /// The rising leg from `x` and the falling one from `z` are at the same place in every row
    /// `y` with `x + y ≡ z + leads − y` (mod 2 bights).
    fn row(&self, spoken: &Spoken, of: (Pin, Pin), times: usize) -> Result<u64, String> {
        let rises = spoken.from.0 == Rim::Bottom;
        let (up, down) = if rises {
            (spoken.from, of.0)
        } else {
            (of.0, spoken.from)
        };
        let round = 2 * self.bights;
        let (up, down) = (self.place(up), self.place(down));
        let mut rows: Vec<u64> = (1..self.leads)
            .filter(|row| (up + row) % round == (down + self.leads - row) % round)
            .collect();
        if !rises {
            rows.reverse();
        }
        let row = rows.get(times).copied();
        row.ok_or_else(|| format!("{of:?} is not met that often by {spoken:?}"))
    }
}
