//! The document: how preferences are written.

use serde_json::{Map, Value, json};

use super::{Light, Settings};
use crate::guide::AtOnce;
use crate::words::Units;

/// The version of the documents written here, and the newest that is read.
pub const VERSION: u64 = 1;

/// A JSON object.
pub(super) type Object = Map<String, Value>;

/// Writes `settings` over `document`, where fields that are not known here stay as they are.
pub(super) fn write(settings: &Settings, document: &mut Object) {
    let bindings: Vec<Value> = settings
        .bindings
        .iter()
        .map(|(input, intent)| json!({ "input": input.to_string(), "intent": intent.name() }))
        .collect();
    let manners: Object = settings
        .manners
        .iter()
        .map(|(tag, manner)| {
            let form = json!({
                "words_per_minute": manner.words_per_minute,
                "volume": manner.volume,
                "pitch": manner.pitch,
                "voice": manner.voice,
            });
            (tag.clone(), form)
        })
        .collect();
    let times = &settings.times;
    let millis = |time: std::time::Duration| u64::try_from(time.as_millis()).unwrap_or(u64::MAX);
    let form = json!({
        "version": VERSION,
        "language": settings.tongue.language,
        "units": settings.tongue.units.map(Units::name),
        "bindings": bindings,
        "presses": {
            "bounce_ms": millis(times.bounce),
            "long_ms": times.long.map(millis),
            "double_ms": times.double.map(millis),
        },
        "manners": manners,
        "cues": { "on": settings.cues.is_on, "volume": settings.cues.volume },
        "flash": settings.flash,
        "theme": match settings.light {
            Light::Dark => "dark",
            Light::Bright => "light",
        },
        "screen": {
            "distance_mm": settings.screen.distance,
            "width_mm": settings.screen.width,
        },
        "pacing": settings.pacing,
        "detail": settings.prose.detail.name(),
        "at_once": match settings.prose.at_once {
            AtOnce::WholeLeg => json!("leg"),
            AtOnce::UpTo(most) => json!(most),
        },
    });
    if let Value::Object(form) = form {
        lay_over(document, form);
    }
}

/// Puts the fields of `upper` into `lower`, objects field by field.
fn lay_over(lower: &mut Object, upper: Object) {
    for (name, value) in upper {
        match (lower.get_mut(&name), value) {
            (Some(Value::Object(below)), Value::Object(above)) => lay_over(below, above),
            (_, value) => {
                lower.insert(name, value);
            }
        }
    }
}
