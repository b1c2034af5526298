//! The `lay` steps of `steps --json`, read as they stand.

use serde_json::Value;

/// One of the two edges of the knot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rim {
    Bottom,
    Top,
}

/// A pin as the story names it.
pub type Pin = (Rim, u64);

/// A leg of the story with its parts put together, before it is held against the others.
#[derive(Debug)]
pub struct Told {
    /// Pass and strand.
    pub trip: (u64, u64),
    pub number: u64,
    /// The pin it leaves and the pin it lands on.
    pub ends: (Pin, Pin),
    pub side: Option<String>,
    /// The last part read, and how many parts there are.
    pub parts: (u64, u64),
    pub crossings: Vec<Crossed>,
}

/// A crossing as it is told.
#[derive(Debug)]
pub struct Crossed {
    pub row: u64,
    pub over: bool,
    pub cords: u64,
    /// The ends of the leg crossed.
    pub of: (Pin, Pin),
}

/// The `lay` steps with the parts of a long leg joined into one.
pub fn told_legs(document: &Value) -> Result<Vec<Told>, String> {
    let mut legs: Vec<Told> = Vec::new();
    for step in list(document, "steps")? {
        if step["kind"] != "lay" {
            continue;
        }
        let part = part_of_leg(step)?;
        match legs.last_mut() {
            Some(leg) if (leg.trip, leg.number) == (part.trip, part.number) => {
                if part.parts != (leg.parts.0 + 1, leg.parts.1) || part.ends != leg.ends {
                    return Err(format!("the parts of {} do not join", name(&part)));
                }
                leg.parts = part.parts;
                leg.crossings.extend(part.crossings);
            }
            last => {
                if last.is_some_and(|leg| leg.parts.0 != leg.parts.1) || part.parts.0 != 1 {
                    return Err(format!("a part is missing before {}", name(&part)));
                }
                legs.push(part);
            }
        }
    }
    if legs.last().is_none_or(|leg| leg.parts.0 != leg.parts.1) {
        return Err("the last leg is missing".to_owned());
    }
    Ok(legs)
}

fn part_of_leg(step: &Value) -> Result<Told, String> {
    let ends = pins(step)?;
    let heading = match ends.0.0 {
        Rim::Bottom => "rising",
        Rim::Top => "falling",
    };
    if ends.0.0 == ends.1.0 || step["heading"] != heading {
        return Err(format!("not from rim to rim as its heading says: {step}"));
    }
    let crossings = list(step, "crossings")?.iter().map(|met| {
        let over = met["over"].as_bool();
        let over = over.ok_or_else(|| format!("neither over nor under in {met}"))?;
        Ok(Crossed {
            row: count(met, "row")?,
            over,
            cords: count(met, "cords")?,
            of: pins(&met["of"])?,
        })
    });
    Ok(Told {
        trip: (count(step, "pass")?, count(step, "strand")?),
        number: count(step, "leg")?,
        ends,
        side: step["side"].as_str().map(str::to_owned),
        parts: if step["part"].is_null() {
            (1, 1)
        } else {
            (count(step, "part")?, count(step, "parts")?)
        },
        crossings: crossings.collect::<Result<_, String>>()?,
    })
}

/// How a leg is called in a refusal.
pub fn name(leg: &Told) -> String {
    format!(
        "leg {} of strand {} in pass {}",
        leg.number, leg.trip.1, leg.trip.0
    )
}

fn list<'v>(value: &'v Value, key: &str) -> Result<&'v Vec<Value>, String> {
    value[key]
        .as_array()
        .ok_or_else(|| format!("no list {key:?} in {value}"))
}

fn count(value: &Value, key: &str) -> Result<u64, String> {
    value[key]
        .as_u64()
        .ok_or_else(|| format!("no count {key:?} in {value}"))
}

fn pins(value: &Value) -> Result<(Pin, Pin), String> {
    let pin = |key: &str| {
        let rim = match value[key]["rim"].as_str() {
            Some("bottom") => Rim::Bottom,
            Some("top") => Rim::Top,
            _ => return Err(format!("no rim in {key:?} of {value}")),
        };
        // A pin of another row is another pin: the outermost row is 1, and where there is but one,
        // nothing is said of it.
        let row = value[key]["row"].as_u64().unwrap_or(1) - 1;
        Ok((rim, 10_000 * row + count(&value[key], "pin")?))
    };
    Ok((pin("from")?, pin("to")?))
}
