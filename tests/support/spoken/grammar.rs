//! A grammar that understands text: names, and for each of them what may be said.
//!
//! A phrase is plain text with holes. `{name}` is whatever the grammar has under that name; a name
//! that it has not is a number in digits, or for `cord` everything up to a closing quotation mark.
//! `{name=value}` hears nothing and notes the value. What fits is what fits to the end of the text.

/// Every name with its phrases, the likelier first.
pub type Grammar = &'static [(&'static str, &'static [&'static str])];

/// Holes for the number of a pin, and the name that its row is noted under.
const PINS: [(&str, &str); 6] = [
    ("from", "from-row"),
    ("to", "to-row"),
    ("landed", "landed-row"),
    ("past", "past-row"),
    ("left", "left-row"),
    ("beyond", "beyond-row"),
];

/// What was noted: names with their values, in the order of the text.
pub type Notes<'t> = Vec<(&'static str, &'t str)>;

/// Understands a text as what stands under `name`, or says where it could not go on.
pub fn understand<'t>(
    grammar: Grammar,
    name: &'static str,
    text: &'t str,
) -> Result<Notes<'t>, String> {
    let mut hearing = Hearing {
        grammar,
        notes: Vec::new(),
        furthest: text,
    };
    let phrases = hearing
        .phrases(name)
        .ok_or_else(|| format!("no {name} in the grammar"))?;
    for phrase in phrases {
        if hearing.fits(&[phrase], text) {
            return Ok(hearing.notes);
        }
    }
    Err(format!(
        "not understood at {:?} in {text:?}",
        hearing.furthest
    ))
}

struct Hearing<'t> {
    grammar: Grammar,
    notes: Notes<'t>,
    /// What was left where the hearing came furthest.
    furthest: &'t str,
}

impl<'t> Hearing<'t> {
    fn phrases(&self, name: &str) -> Option<&'static [&'static str]> {
        let found = self.grammar.iter().find(|(known, _)| *known == name);
        found.map(|(_, phrases)| *phrases)
    }

    /// Whether the text is these phrases one after the other; then what they note is noted.
    fn fits(&mut self, phrases: &[&'static str], text: &'t str) -> bool {
        if text.len() < self.furthest.len() {
            self.furthest = text;
        }
        let Some((&phrase, after)) = phrases.split_first() else {
            return text.is_empty();
        };
        let Some((plain, rest)) = phrase.split_once('{') else {
            return text
                .strip_prefix(phrase)
                .is_some_and(|text| self.fits(after, text));
        };
        let Some(text) = text.strip_prefix(plain) else {
            return false;
        };
        let (hole, rest) = rest.split_once('}').expect("a hole that ends");
        let then = |phrase: &[&'static str]| [phrase, &[rest], after].concat();
        if let Some((name, value)) = hole.split_once('=') {
            return self.noted(name, value, &then(&[]), text);
        }
        if let Some(choices) = self.phrases(hole) {
            return choices
                .iter()
                .any(|choice| self.fits(&then(&[choice]), text));
        }
        let length = if hole == "cord" {
            text.find(['”', '“', '»'])
                .map(|end| text[..end].trim_end().len())
        } else {
            Some(text.bytes().take_while(u8::is_ascii_digit).count())
        };
        let Some(length) = length.filter(|length| *length > 0) else {
            return false;
        };
        let (value, text) = text.split_at(length);
        let Some((name, row, text)) = self.row_after(hole, text) else {
            return self.noted(hole, value, &then(&[]), text);
        };
        let before = self.notes.len();
        self.notes.push((name, row));
        let fits = self.noted(hole, value, &then(&[]), text);
        if !fits {
            self.notes.truncate(before);
        }
        fits
    }

    /// The row of a pin where it is said after its number, with the name to note it under and what
    /// comes after it. The phrases of `rows` are the outer one of two, the inner one, and what comes
    /// before the number of one of more; the same again in brief.
    fn row_after(&self, hole: &str, text: &'t str) -> Option<(&'static str, &'t str, &'t str)> {
        let (_, name) = PINS.iter().find(|(pin, _)| *pin == hole)?;
        let mut said = self.phrases("rows")?.iter().enumerate();
        let (index, rest) =
            said.find_map(|(index, phrase)| Some((index, text.strip_prefix(phrase)?)))?;
        match index % 3 {
            0 => Some((name, "1", rest)),
            1 => Some((name, "2", rest)),
            _ => {
                let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
                let (row, rest) = rest.split_at(digits);
                (digits > 0).then_some((name, row, rest))
            }
        }
    }

    /// Notes a value, unless the phrases do not fit what comes after it.
    fn noted(
        &mut self,
        name: &'static str,
        value: &'t str,
        phrases: &[&'static str],
        text: &'t str,
    ) -> bool {
        let before = self.notes.len();
        self.notes.push((name, value));
        let fits = self.fits(phrases, text);
        if !fits {
            self.notes.truncate(before);
        }
        fits
    }
}
