//! Writing to standard output.

use std::io::{self, BufWriter, ErrorKind, StdoutLock, Write};

use serde::Serialize;
use serde_json::Serializer;
use serde_json::ser::{CharEscape, Formatter};

use super::complaint::Complaint;
use crate::words::{Words, harmless};

/// Writes all of it, or complains. A reader that has seen enough is no failure:
/// `marlinspeak steps … | head`.
pub(super) fn print(
    words: &Words,
    write: impl FnOnce(&mut BufWriter<StdoutLock>) -> io::Result<()>,
) -> Result<(), Complaint> {
    let mut out = BufWriter::new(io::stdout().lock());
    match write(&mut out).and_then(|()| out.flush()) {
        Err(fault) if fault.kind() == ErrorKind::BrokenPipe => Ok(()),
        Err(fault) => Err(Complaint::output(words, &fault)),
        Ok(()) => Ok(()),
    }
}

/// Writes one JSON document. What would steer a terminal is left out of its texts, as in everything
/// that is printed: names and files come from outside.
pub(super) fn json(out: &mut impl Write, document: &impl Serialize) -> io::Result<()> {
    let mut serializer = Serializer::with_formatter(&mut *out, HarmlessJson);
    document
        .serialize(&mut serializer)
        .map_err(io::Error::from)?;
    writeln!(out)
}

/// JSON on one line whose texts are [`harmless`].
struct HarmlessJson;

impl Formatter for HarmlessJson {
    fn write_string_fragment<W: ?Sized + Write>(
        &mut self,
        out: &mut W,
        fragment: &str,
    ) -> io::Result<()> {
        out.write_all(harmless(fragment).as_bytes())
    }

    fn write_char_escape<W: ?Sized + Write>(
        &mut self,
        out: &mut W,
        escape: CharEscape,
    ) -> io::Result<()> {
        match escape {
            CharEscape::Quote => out.write_all(b"\\\""),
            CharEscape::ReverseSolidus => out.write_all(b"\\\\"),
            CharEscape::Solidus => out.write_all(b"/"),
            // A line break within a text is kept, since as an escape it breaks no line of the
            // output.
            CharEscape::LineFeed => out.write_all(b"\\n"),
            _ => out.write_all(b" "),
        }
    }
}

/// A number with so many decimals at the most: no more than is known.
pub(super) fn rounded(number: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    (number * scale).round() / scale
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_text_of_a_json_document_steers_a_terminal() {
        let mut out = Vec::new();
        let name = "\u{1b}]0;x\u{7} \"a\\b\" \u{9b}2J\u{202e}\n\u{7f}grün";
        json(&mut out, &serde_json::json!({ "name": name })).unwrap();
        let text = String::from_utf8(out).unwrap();
        assert!(
            !text
                .trim_end()
                .contains(|one: char| one.is_control() || one == '\u{202e}')
        );
        let read: serde_json::Value = serde_json::from_str(&text).unwrap();
        assert_eq!(read["name"], " ]0;x  \"a\\b\"  2J\n grün");
    }
}
