//! Fields that nobody knows, strewn all over a document.

use serde_json::Value;

/// The field that nobody knows.
const FIELD: &str = "aboard";
/// Where the names of fields are numbers, tags of languages, or what the tyer calls something.
const NAMES: [&str; 4] = ["/worked/legs", "/tubes", "/cords", "/manners"];

/// Puts such a field into the document, into each of its sections and into each element of its lists; its
/// value tells where it stands. Gives how many those are.
pub fn strew(value: &mut Value, at: &str) -> usize {
    let mut strewn = 0;
    match value {
        Value::Object(fields) => {
            for (name, value) in fields.iter_mut() {
                strewn += strew(value, &format!("{at}/{name}"));
            }
            if !NAMES.contains(&at) {
                fields.insert(FIELD.to_owned(), at.into());
                strewn += 1;
            }
        }
        Value::Array(list) => {
            for (nth, value) in list.iter_mut().enumerate() {
                strewn += strew(value, &format!("{at}/{nth}"));
            }
        }
        _ => {}
    }
    strewn
}

/// How many of them stand where they were strewn.
pub fn left(value: &Value, at: &str) -> usize {
    match value {
        Value::Object(fields) => fields
            .iter()
            .map(|(name, value)| {
                usize::from(name == FIELD && value == at) + left(value, &format!("{at}/{name}"))
            })
            .sum(),
        Value::Array(list) => (0..)
            .zip(list)
            .map(|(nth, value)| left(value, &format!("{at}/{nth}")))
            .sum(),
        _ => 0,
    }
}
