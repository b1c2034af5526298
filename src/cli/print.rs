//! Writing to standard output.

use std::io::{self, BufWriter, ErrorKind, StdoutLock, Write};

use serde::Serialize;

use super::complaint::Complaint;
use crate::shelf::ShelfTrouble;
use crate::words::Words;

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

/// What was found wrong on the shelf, a sentence each, on standard error. Where that is closed
/// nobody can be told; the log has it.
pub(super) fn troubles(words: &Words, troubles: &[ShelfTrouble]) {
    for trouble in troubles {
        let _ = writeln!(io::stderr(), "{}", words.shelf_trouble(trouble));
    }
}

/// Writes one JSON document.
pub(super) fn json(out: &mut impl Write, document: &impl Serialize) -> io::Result<()> {
    serde_json::to_writer(&mut *out, document).map_err(io::Error::from)?;
    writeln!(out)
}

/// A number with so many decimals at the most: no more than is known.
pub(super) fn rounded(number: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    (number * scale).round() / scale
}
