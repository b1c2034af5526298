//! Leaving out of the log what is the tyer's own.

/// The marks that open and close a quotation.
const QUOTES: [(char, char); 3] = [('“', '”'), ('"', '"'), ('`', '`')];
/// What Rust itself quotes when it reports a panic: it tells nothing about the tyer.
const HARMLESS: [&str; 6] = [
    "Option::unwrap()",
    "Result::unwrap()",
    "None",
    "Some",
    "Ok",
    "Err",
];

/// The text on one line, with `~` for the home folder and without what stands in quotes.
pub(super) fn redacted(text: &str, home: Option<&str>) -> String {
    let text = match home {
        // Every path begins with “/”, so a home folder of that name would turn all of them into
        // “~”.
        Some(home) if home.len() > 1 => text.replace(home, "~"),
        _ => text.to_owned(),
    };
    let mut kept = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some((at, (open, close))) = first_quote(rest) {
        kept.push_str(&rest[..at]);
        kept.push(open);
        let inside = &rest[at + open.len_utf8()..];
        let (quoted, after) = inside.split_once(close).unwrap_or((inside, ""));
        kept.push_str(if HARMLESS.contains(&quoted) {
            quoted
        } else {
            "…"
        });
        kept.push(close);
        rest = after;
    }
    kept.push_str(rest);
    let kept = kept.replace(|letter: char| letter.is_control(), " ");
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn first_quote(text: &str) -> Option<(usize, (char, char))> {
    let opens = |letter: char| QUOTES.iter().find(|(open, _)| *open == letter);
    text.char_indices()
        .find_map(|(at, letter)| opens(letter).map(|quotes| (at, *quotes)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_homes_are_left_out() {
        for (text, home, kept) in [
            ("plain words", None, "plain words"),
            ("two\n  lines", None, "two lines"),
            ("in /home/ada/x", Some("/home/ada"), "in ~/x"),
            ("in /etc/x", Some("/"), "in /etc/x"),
            ("cord “grey line” is short", None, "cord “…” is short"),
            (
                r#"invalid value: string "blue", expected"#,
                None,
                r#"invalid value: string "…", expected"#,
            ),
            (
                "byte index 1 of `häkeln`; it",
                None,
                "byte index 1 of `…`; it",
            ),
            (
                "called `Option::unwrap()` on a `None` value",
                None,
                "called `Option::unwrap()` on a `None` value",
            ),
            ("never “closed", None, "never “…”"),
            ("it's the tyer's", None, "it's the tyer's"),
        ] {
            assert_eq!(redacted(text, home), kept);
        }
    }
}
