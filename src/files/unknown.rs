//! Fields that this version does not know, so that they stay in a document that it writes.

use serde_json::{Map, Value};

use super::Fields;

/// What stands in `document` besides the fields in `known`. Sections that both have are compared
/// field by field, to a depth of `depth` sections; whatever lies deeper counts as known.
pub fn unknown_fields(document: Fields, known: &Fields, depth: u32) -> Fields {
    let mut unknown = Map::new();
    for (name, value) in document {
        match (value, known.get(&name)) {
            (value, None) => {
                unknown.insert(name, value);
            }
            (Value::Object(section), Some(Value::Object(known))) if depth > 0 => {
                let section = unknown_fields(section, known, depth - 1);
                if !section.is_empty() {
                    unknown.insert(name, section.into());
                }
            }
            _ => {}
        }
    }
    unknown
}

/// Adds the unknown fields after the known ones. A field that both have keeps the known value.
pub fn with_unknown(mut known: Fields, unknown: &Fields) -> Fields {
    for (name, value) in unknown {
        match (known.get_mut(name), value) {
            (None, value) => {
                known.insert(name.clone(), value.clone());
            }
            (Some(Value::Object(section)), Value::Object(unknown)) => {
                *section = with_unknown(std::mem::take(section), unknown);
            }
            (Some(_), _) => {}
        }
    }
    known
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn fields(value: Value) -> Fields {
        let Value::Object(fields) = value else {
            panic!("{value}");
        };
        fields
    }

    #[test]
    fn what_is_not_known_stays_and_what_is_known_is_written_anew() {
        let document = fields(json!({
            "name": "old", "weather": "rain",
            "knot": { "leads": 5, "dye": "tan bark", "pins": { "brass": 3 } },
        }));
        let known = fields(json!({ "name": "old", "knot": { "leads": 5, "pins": {} } }));
        let unknown = unknown_fields(document, &known, 1);
        assert_eq!(
            unknown,
            fields(json!({ "weather": "rain", "knot": { "dye": "tan bark" } }))
        );
        let anew = fields(json!({ "name": "new", "knot": { "leads": 7 } }));
        assert_eq!(
            with_unknown(anew, &unknown),
            fields(json!({
                "name": "new", "weather": "rain", "knot": { "leads": 7, "dye": "tan bark" },
            }))
        );
    }
}
