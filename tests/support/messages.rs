//! The messages of a language as they are written: their ids, and what they are told.

use std::collections::BTreeMap;

/// A message as it stands in a file.
#[derive(Debug)]
pub struct Message {
    pub id: String,
    /// Every argument, with the keys it is selected by: none when it is only inserted.
    pub arguments: BTreeMap<String, Vec<String>>,
}

/// Reads the messages of one file.
pub fn messages(source: &str) -> Vec<Message> {
    let mut texts: Vec<(String, String)> = Vec::new();
    for line in source.lines() {
        let is_id = line.starts_with(|first: char| first.is_ascii_lowercase());
        if let (true, Some((id, text))) = (is_id, line.split_once(" =")) {
            texts.push((id.to_owned(), text.to_owned()));
        } else if let (true, Some((_, text))) = (line.starts_with(' '), texts.last_mut()) {
            text.push('\n');
            text.push_str(line);
        }
    }
    let read = |(id, text): (String, String)| Message {
        arguments: arguments(&text),
        id,
    };
    texts.into_iter().map(read).collect()
}

/// The arguments of a message. The keys of a selector stand each at the beginning of a line,
/// inside its braces.
fn arguments(text: &str) -> BTreeMap<String, Vec<String>> {
    let mut arguments: BTreeMap<String, Vec<String>> = BTreeMap::new();
    // For every open brace the argument that selects there, if one does.
    let mut open: Vec<Option<String>> = Vec::new();
    for line in text.lines() {
        let start = line.trim_start().trim_start_matches('*');
        if let Some((key, _)) = start.strip_prefix('[').and_then(|key| key.split_once(']'))
            && let Some(Some(argument)) = open.last()
        {
            let keys = arguments.entry(argument.clone()).or_default();
            if !keys.iter().any(|known| known == key) {
                keys.push(key.to_owned());
            }
        }
        let mut rest = line;
        while let Some(at) = rest.find(['{', '}']) {
            let is_open = rest[at..].starts_with('{');
            rest = &rest[at + 1..];
            if !is_open {
                open.pop();
                continue;
            }
            let name = rest.trim_start().strip_prefix('$').map(|name| {
                let ends = |letter: char| !letter.is_alphanumeric() && !"-_".contains(letter);
                name.split(ends).next().unwrap_or_default().to_owned()
            });
            if let Some(name) = &name {
                arguments.entry(name.clone()).or_default();
            }
            open.push(name);
        }
    }
    assert!(open.is_empty(), "unequal braces in {text}");
    arguments
}
