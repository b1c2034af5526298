//! Reading a document: each field that is there must be as it was meant; one that is missing
//! is as usual.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;
use std::time::Duration;

use serde_json::Value;

use super::document::Object;
use super::{Cues, DISTANCES, Light, Prose, SCREEN_WIDTHS, Screen, Settings};
use crate::guide::AtOnce;
use crate::pedal::{Bindings, Input, Intent, Times};
use crate::voice::Manner;
use crate::words::{Detail, Tongue, Units};

/// Reads all that is known here.
///
/// # Errors
/// Which field is wrong, and what it may be.
pub(super) fn read(document: &Object) -> Result<Settings, String> {
    let top = Section {
        path: String::new(),
        fields: Some(document),
    };
    let usual = Settings::default();
    let (cues, screen) = (top.section("cues")?, top.section("screen")?);
    Ok(Settings {
        tongue: Tongue {
            language: top.text("language")?,
            units: units(&top)?,
        },
        bindings: bindings(document)?,
        times: times(&top.section("presses")?)?,
        manners: manners(&top.section("manners")?)?,
        cues: Cues {
            is_on: cues.flag("on", usual.cues.is_on)?,
            volume: cues.number("volume", 0..=100, usual.cues.volume)?,
        },
        flash: top.flag("flash", usual.flash)?,
        light: top.choice("theme", [("dark", Light::Dark), ("light", Light::Bright)])?,
        screen: Screen {
            distance: screen.number("distance_mm", DISTANCES, usual.screen.distance)?,
            width: screen.maybe_number("width_mm", SCREEN_WIDTHS, usual.screen.width)?,
        },
        pacing: top.flag("pacing", usual.pacing)?,
        prose: Prose {
            detail: top.choice(
                "detail",
                [
                    ("plain", Detail::Plain),
                    ("brief", Detail::Brief),
                    ("teach", Detail::Teach),
                ],
            )?,
            at_once: match document.get("at_once") {
                Some(Value::String(leg)) if leg == "leg" => AtOnce::WholeLeg,
                _ => AtOnce::UpTo(top.number("at_once", 1..=999, 4)?),
            },
        },
    })
}

fn units(top: &Section) -> Result<Option<Units>, String> {
    let Some(given) = top.text("units")? else {
        return Ok(None);
    };
    let known = Units::ALL.map(Units::name).join(", ");
    let units = Units::named(&given);
    let units = units.ok_or_else(|| format!("units is {given:?}; it may be {known}"));
    units.map(Some)
}

fn bindings(document: &Object) -> Result<Bindings, String> {
    let Some(value) = document.get("bindings") else {
        return Ok(Bindings::default());
    };
    let table = value.as_array().ok_or("bindings is not a list")?;
    let read = table.iter().map(|entry| {
        let text = |name| entry.get(name).and_then(Value::as_str);
        let input = text("input").and_then(Input::parse);
        let intent = text("intent").and_then(Intent::from_name);
        input
            .zip(intent)
            .ok_or_else(|| format!("bindings has an entry that names no input or intent: {entry}"))
    });
    read.collect::<Result<Vec<_>, _>>().map(Bindings::of)
}

fn times(presses: &Section) -> Result<Times, String> {
    let usual = Times::default();
    let millis = |millis: u16| Duration::from_millis(millis.into());
    Ok(Times {
        bounce: millis(presses.number("bounce_ms", Times::BOUNCE, 300)?),
        long: presses
            .maybe_number("long_ms", Times::LONG, None)?
            .map(millis)
            .or(usual.long),
        double: presses
            .maybe_number("double_ms", Times::DOUBLE, None)?
            .map(millis)
            .or(usual.double),
    })
}

fn manners(section: &Section) -> Result<BTreeMap<String, Manner>, String> {
    let tags = section.fields.into_iter().flat_map(|fields| fields.keys());
    let usual = Manner::default();
    tags.map(|tag| {
        let manner = section.section(tag)?;
        Ok((
            tag.clone(),
            Manner {
                words_per_minute: manner.number(
                    "words_per_minute",
                    Manner::SPEEDS,
                    usual.words_per_minute,
                )?,
                volume: manner.number("volume", 0..=100, usual.volume)?,
                pitch: manner.number("pitch", 0..=100, usual.pitch)?,
                voice: manner.text("voice")?,
                language: Some(tag.clone()),
            },
        ))
    })
    .collect()
}

/// An object in the document, with its name for what is said about it.
struct Section<'a> {
    path: String,
    fields: Option<&'a Object>,
}

impl<'a> Section<'a> {
    fn get(&self, name: &str) -> Option<&'a Value> {
        self.fields?.get(name).filter(|value| !value.is_null())
    }

    fn named(&self, name: &str) -> String {
        format!("{}{name}", self.path)
    }

    fn section(&self, name: &str) -> Result<Section<'a>, String> {
        let fields = match self.get(name) {
            None => None,
            Some(Value::Object(fields)) => Some(fields),
            Some(_) => return Err(format!("{} is not an object", self.named(name))),
        };
        Ok(Section {
            path: format!("{}.", self.named(name)),
            fields,
        })
    }

    fn flag(&self, name: &str, usual: bool) -> Result<bool, String> {
        match self.get(name) {
            None => Ok(usual),
            Some(Value::Bool(flag)) => Ok(*flag),
            Some(_) => Err(format!("{} is neither true nor false", self.named(name))),
        }
    }

    fn text(&self, name: &str) -> Result<Option<String>, String> {
        match self.get(name) {
            None => Ok(None),
            Some(Value::String(text)) => Ok(Some(text.clone())),
            Some(_) => Err(format!("{} is not a text", self.named(name))),
        }
    }

    fn number<N: TryFrom<u64> + PartialOrd + std::fmt::Display>(
        &self,
        name: &str,
        bounds: RangeInclusive<N>,
        usual: N,
    ) -> Result<N, String> {
        Ok(self.maybe_number(name, bounds, None)?.unwrap_or(usual))
    }

    fn maybe_number<N: TryFrom<u64> + PartialOrd + std::fmt::Display>(
        &self,
        name: &str,
        bounds: RangeInclusive<N>,
        usual: Option<N>,
    ) -> Result<Option<N>, String> {
        let Some(value) = self.get(name) else {
            return Ok(usual);
        };
        value
            .as_u64()
            .and_then(|number| N::try_from(number).ok())
            .filter(|number| bounds.contains(number))
            .map(Some)
            .ok_or_else(|| {
                format!(
                    "{} is {value}; it may be {} to {}",
                    self.named(name),
                    bounds.start(),
                    bounds.end()
                )
            })
    }

    /// One of these; the first when it is missing.
    fn choice<T: Copy, const N: usize>(
        &self,
        name: &str,
        choices: [(&str, T); N],
    ) -> Result<T, String> {
        let given = self.text(name)?;
        let found = match &given {
            None => choices.first(),
            Some(given) => choices.iter().find(|(choice, _)| choice == given),
        };
        found.map(|(_, value)| *value).ok_or_else(|| {
            format!(
                "{} is {:?}; it may be {}",
                self.named(name),
                given.unwrap_or_default(),
                choices.map(|(choice, _)| choice).join(", ")
            )
        })
    }
}
