//! Fields that this version does not know, so that they stay in a document that it writes.
//!
//! A field that stands in a section or in an element of a list belongs to that: where the section or
//! the element goes, it goes too. An element of a list is known again by its name, where the elements
//! of that list have one, and else by all that this version knows of it: then one that was changed is
//! another one. So it does not matter whether a list grew, shrank, or has another order since.

use std::collections::BTreeMap;

use serde_json::Value;

use super::Fields;

/// How far into a document of one kind fields that are not known are looked for.
#[derive(Clone, Copy, Debug)]
pub struct Within {
    /// Sections, one within another, that are compared field by field; whatever lies deeper counts as
    /// known. An element of a list is such a section.
    pub deep: u32,
    /// The lists whose elements have a name, each with the field that is the name.
    pub names: &'static [(&'static str, &'static str)],
}

/// What stands in a document besides the fields that this version knows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Unknown {
    fields: Fields,
    sections: BTreeMap<String, Self>,
    lists: BTreeMap<String, Vec<OfElement>>,
}

/// What is not known of an element of a list.
#[derive(Clone, Debug, PartialEq)]
struct OfElement {
    which: Which,
    unknown: Unknown,
}

/// Which element of a list.
#[derive(Clone, Debug, PartialEq)]
enum Which {
    /// The one whose field of this name has this value.
    Named(&'static str, Value),
    /// One of which exactly this is known.
    Same(Fields),
}

impl Unknown {
    /// What stands in `document` besides the fields in `known`.
    pub fn of(document: Fields, known: &Fields, within: Within) -> Self {
        let deeper = within.deep.checked_sub(1);
        let deeper = deeper.map(|deep| Within { deep, ..within });
        let mut unknown = Self::default();
        for (name, value) in document {
            match (value, known.get(&name), deeper) {
                (value, None, _) => {
                    unknown.fields.insert(name, value);
                }
                (Value::Object(section), Some(Value::Object(known)), Some(deeper)) => {
                    let section = Self::of(section, known, deeper);
                    if !section.is_empty() {
                        unknown.sections.insert(name, section);
                    }
                }
                (Value::Array(list), Some(Value::Array(known)), Some(deeper)) => {
                    let names = within.names.iter();
                    let named = names.copied().find(|(list, _)| *list == name);
                    let list = of_elements(list, known, named.map(|(_, field)| field), deeper);
                    if !list.is_empty() {
                        unknown.lists.insert(name, list);
                    }
                }
                _ => {}
            }
        }
        unknown
    }

    /// Whether there is nothing.
    pub fn is_empty(&self) -> bool {
        self.fields.is_empty() && self.sections.is_empty() && self.lists.is_empty()
    }

    /// A field of the document itself.
    pub fn get(&self, name: &str) -> Option<&Value> {
        self.fields.get(name)
    }

    /// The name of the first field of the document itself.
    pub fn first(&self) -> Option<&str> {
        self.fields.keys().next().map(String::as_str)
    }

    /// Puts a field into the document itself.
    pub fn insert(&mut self, name: impl Into<String>, value: impl Into<Value>) {
        self.fields.insert(name.into(), value.into());
    }

    /// Takes everything of this name out of the document itself, and gives the field.
    pub fn remove(&mut self, name: &str) -> Option<Value> {
        self.sections.remove(name);
        self.lists.remove(name);
        self.fields.remove(name)
    }

    /// Takes over from another document what is not known of one of its sections, in the place of what is
    /// not known of that section here. `way` names it, from the outside in.
    pub fn take_over(&mut self, from: &Self, way: &[&str]) {
        let Some((first, rest)) = way.split_first() else {
            self.clone_from(from);
            return;
        };
        if let Some(theirs) = from.sections.get(*first) {
            let ours = self.sections.entry((*first).to_owned()).or_default();
            ours.take_over(theirs, rest);
        }
    }

    /// Takes the fields of another document itself over that this one has not.
    pub fn take_over_missing(&mut self, from: &Self) {
        for (name, value) in &from.fields {
            if !self.fields.contains_key(name) {
                self.fields.insert(name.clone(), value.clone());
            }
        }
    }

    /// The known fields, and after them those that are not known. A field that both have keeps the
    /// known value.
    pub fn added_to(&self, known: Fields) -> Fields {
        let mut all = filled_up(known, &self.fields);
        for (name, unknown) in &self.sections {
            if let Some(Value::Object(section)) = all.get_mut(name) {
                *section = unknown.added_to(std::mem::take(section));
            }
        }
        for (name, unknown) in &self.lists {
            let Some(Value::Array(list)) = all.get_mut(name) else {
                continue;
            };
            let mut left: Vec<&OfElement> = unknown.iter().collect();
            for element in list {
                let Value::Object(element) = element else {
                    continue;
                };
                if let Some(at) = left.iter().position(|one| one.which.is(element)) {
                    let unknown = &left.remove(at).unknown;
                    *element = unknown.added_to(std::mem::take(element));
                }
            }
        }
        all
    }
}

impl From<Fields> for Unknown {
    /// These fields of the document itself, all of them not known.
    fn from(fields: Fields) -> Self {
        Self {
            fields,
            ..Self::default()
        }
    }
}

impl Which {
    fn of(known: &Fields, named: Option<&'static str>) -> Self {
        match named.and_then(|field| Some((field, known.get(field)?))) {
            Some((field, name)) => Self::Named(field, name.clone()),
            None => Self::Same(known.clone()),
        }
    }

    /// Whether this element, as far as it is known, is the one.
    fn is(&self, known: &Fields) -> bool {
        match self {
            Self::Named(field, name) => known.get(*field) == Some(name),
            Self::Same(same) => same == known,
        }
    }

    /// Whether it may have come of this element of a document.
    fn may_be(&self, given: &Fields) -> bool {
        match self {
            Self::Named(field, name) => given.get(*field) == Some(name),
            Self::Same(known) => known
                .iter()
                .all(|(name, value)| given.get(name) == Some(value)),
        }
    }
}

/// What is not known of the elements of a list. Where as many are known as were given they are the
/// same, one by one; where some of them were not believed, or stood there twice, the last holds that
/// fits.
fn of_elements(
    mut given: Vec<Value>,
    known: &[Value],
    named: Option<&'static str>,
    within: Within,
) -> Vec<OfElement> {
    let is_paired = given.len() == known.len();
    let mut all = Vec::new();
    for (at, known) in known.iter().enumerate() {
        let Value::Object(known) = known else {
            continue;
        };
        let which = Which::of(known, named);
        let fits = |one: &Value| matches!(one, Value::Object(one) if which.may_be(one));
        let place = if is_paired {
            Some(at)
        } else {
            given.iter().rposition(fits)
        };
        let one = place.and_then(|place| given.get_mut(place).map(Value::take));
        if let Some(Value::Object(one)) = one {
            let unknown = Unknown::of(one, known, within);
            if !unknown.is_empty() {
                all.push(OfElement { which, unknown });
            }
        }
    }
    all
}

/// These fields, and those of `usual` that are missing among them or in their sections.
pub fn filled_up(mut fields: Fields, usual: &Fields) -> Fields {
    for (name, value) in usual {
        match (fields.get_mut(name), value) {
            (None, value) => {
                fields.insert(name.clone(), value.clone());
            }
            (Some(Value::Object(section)), Value::Object(usual)) => {
                *section = filled_up(std::mem::take(section), usual);
            }
            (Some(_), _) => {}
        }
    }
    fields
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    const WITHIN: Within = Within {
        deep: 1,
        names: &[("pieces", "number")],
    };

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
        let unknown = Unknown::of(document, &known, WITHIN);
        let anew = fields(json!({ "name": "new", "knot": { "leads": 7 } }));
        assert_eq!(
            unknown.added_to(anew),
            fields(json!({
                "name": "new", "weather": "rain", "knot": { "leads": 7, "dye": "tan bark" },
            }))
        );
        // What stood in a section goes with it.
        let without = unknown.added_to(fields(json!({ "name": "new" })));
        assert_eq!(without, fields(json!({ "name": "new", "weather": "rain" })));
    }

    #[test]
    fn what_is_not_known_of_an_element_follows_it_wherever_it_stands() {
        let document = fields(json!({
            "measured": [{ "leg": 1 }, { "leg": 2, "by": "Ada" }, { "leg": 2, "by": "Ben" }],
            "pieces": [{ "number": 1, "count": 4, "dye": "oak" }, { "number": 2, "count": 6 }],
        }));
        let known = fields(json!({
            "measured": [{ "leg": 1 }, { "leg": 2 }, { "leg": 2 }],
            "pieces": [{ "number": 1, "count": 4 }, { "number": 2, "count": 6 }],
        }));
        let unknown = Unknown::of(document.clone(), &known, WITHIN);
        assert_eq!(unknown.added_to(known), document);
        // Some have gone, some have come, and they stand in another order.
        let later = fields(json!({
            "measured": [{ "leg": 2 }, { "leg": 3 }, { "leg": 1 }],
            "pieces": [{ "number": 3, "count": 4 }, { "number": 1, "count": 9 }],
        }));
        assert_eq!(
            unknown.added_to(later),
            fields(json!({
                "measured": [{ "leg": 2, "by": "Ada" }, { "leg": 3 }, { "leg": 1 }],
                "pieces": [{ "number": 3, "count": 4 }, { "number": 1, "count": 9, "dye": "oak" }],
            }))
        );
        // A list that has gone leaves nothing behind.
        assert_eq!(unknown.added_to(Fields::new()), Fields::new());
    }

    #[test]
    fn of_two_elements_of_a_name_the_last_one_holds() {
        let document = fields(json!({
            "pieces": [
                { "number": 1, "dye": "oak" }, "no piece", { "number": 1, "dye": "tan" },
            ],
        }));
        let known = fields(json!({ "pieces": [{ "number": 1 }] }));
        let unknown = Unknown::of(document, &known, WITHIN);
        assert_eq!(
            unknown.added_to(known),
            fields(json!({ "pieces": [{ "number": 1, "dye": "tan" }] }))
        );
    }
}
