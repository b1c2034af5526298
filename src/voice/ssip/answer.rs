//! What the service sends, line by line.

use std::io::{BufRead, Read as _};

use thiserror::Error;

/// The longest line that is read, in bytes.
const LONGEST_LINE: usize = 64 << 10;
/// The longest answer that is read, in bytes: the names of thirteen thousand voices are a tenth.
const LONGEST_ANSWER: usize = 8 << 20;

/// A whole answer, or a report of what happens to a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The number that says what it is.
    pub code: u16,
    /// What it holds, a line each, without the line that ends it.
    pub data: Vec<String>,
    /// The line that ends it.
    pub end: String,
}

impl Answer {
    /// Whether the service did what it was asked to.
    pub const fn is_yes(&self) -> bool {
        self.code >= 200 && self.code < 300
    }

    /// Whether it reports what happens to a text, unasked.
    pub const fn is_report(&self) -> bool {
        self.code >= 700 && self.code < 800
    }
}

/// Why nothing more can be read of what a service sends.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Unreadable {
    /// The service has hung up, in the middle of an answer or before it.
    #[error("it has hung up")]
    HungUp,
    /// The connection failed, and what the system says.
    #[error("{0}")]
    Io(String),
    /// A line is none of an answer.
    #[error("it sends what is no answer")]
    NoAnswer,
    /// A line or an answer is longer than any service has need of.
    #[error("its answer does not end")]
    TooLong,
}

/// Reads the next answer or report, within limits: a line, and an answer, has a longest.
///
/// # Errors
/// Why nothing more can be read.
pub fn read(service: &mut impl BufRead) -> Result<Answer, Unreadable> {
    let (mut data, mut code, mut length) = (Vec::new(), None, 0);
    loop {
        let line = read_line(service)?;
        length += line.len();
        if length > LONGEST_ANSWER {
            return Err(Unreadable::TooLong);
        }
        let (number, is_last, text) = parts(&line).ok_or(Unreadable::NoAnswer)?;
        if code.is_some_and(|code| code != number) {
            return Err(Unreadable::NoAnswer);
        }
        let text = String::from_utf8_lossy(text).into_owned();
        if is_last {
            return Ok(Answer {
                code: number,
                data,
                end: text,
            });
        }
        code = Some(number);
        data.push(text);
    }
}

fn read_line(service: &mut impl BufRead) -> Result<Vec<u8>, Unreadable> {
    let mut line = Vec::new();
    service
        .take(LONGEST_LINE as u64)
        .read_until(b'\n', &mut line)
        .map_err(|error| Unreadable::Io(error.to_string()))?;
    if line.pop_if(|last| *last == b'\n').is_none() {
        return Err(match line.len() {
            LONGEST_LINE => Unreadable::TooLong,
            _ => Unreadable::HungUp,
        });
    }
    line.pop_if(|last| *last == b'\r');
    Ok(line)
}

/// Three digits, then a space in the line that ends an answer and a hyphen in those before it.
fn parts(line: &[u8]) -> Option<(u16, bool, &[u8])> {
    let (digits, rest) = line.split_at_checked(3)?;
    let (separator, text) = rest.split_first()?;
    if !digits.iter().all(u8::is_ascii_digit) {
        return None;
    }
    let code = digits
        .iter()
        .fold(0, |code, digit| code * 10 + u16::from(digit - b'0'));
    match separator {
        b' ' => Some((code, true, text)),
        b'-' => Some((code, false, text)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use std::io::BufReader;

    use super::*;

    fn read_all(bytes: &[u8]) -> Result<Answer, Unreadable> {
        // A byte at a time: wherever an answer is split, it is the same.
        read(&mut BufReader::with_capacity(1, bytes))
    }

    #[test]
    fn answers_and_reports_are_read_however_they_are_split() {
        let answer = read_all(b"249-Ada\ten\tnone\r\n249-Bo\tde\tnone\r\n249 OK SENT\r\n").unwrap();
        assert_eq!(answer.data, ["Ada\ten\tnone", "Bo\tde\tnone"]);
        assert!(answer.is_yes() && !answer.is_report());
        let report = read_all(b"701-12\n701-1\n701 BEGIN\n").unwrap();
        assert_eq!(
            (report.data, report.end.as_str()),
            (vec!["12".to_owned(), "1".to_owned()], "BEGIN")
        );
    }

    #[test]
    fn what_is_no_answer_is_told_and_nothing_else_happens() {
        for (bytes, told) in [
            (&b""[..], Unreadable::HungUp),
            (b"208 OK", Unreadable::HungUp),
            (b"\r\n", Unreadable::NoAnswer),
            (b"\n", Unreadable::NoAnswer),
            (b"2\n", Unreadable::NoAnswer),
            (b"208\n", Unreadable::NoAnswer),
            (b"208OK\n", Unreadable::NoAnswer),
            (b"-20 OK\n", Unreadable::NoAnswer),
            (b"\xff\xfe\x00\x80 \n", Unreadable::NoAnswer),
            (b"249-Ada\n208 OK\n", Unreadable::NoAnswer),
        ] {
            assert_eq!(read_all(bytes), Err(told), "{bytes:?}");
        }
        let long = vec![b'2'; LONGEST_LINE + 1];
        assert_eq!(read_all(&long), Err(Unreadable::TooLong));
        let endless = b"249-Ada\ten\tnone\n".repeat(LONGEST_ANSWER / 15 + 1);
        assert_eq!(read(&mut &endless[..]), Err(Unreadable::TooLong));
    }
}
