//! From the address of a file to its path (RFC 8089).

use std::ffi::OsString;
use std::os::unix::ffi::OsStringExt as _;
use std::path::PathBuf;

/// The path in an address such as `file:///home/ada/bell%20rope.pdf`; none where it names no file of
/// this machine.
pub fn path_of(uri: &str) -> Option<PathBuf> {
    let rest = uri.strip_prefix("file://")?;
    // Before the path may stand the name of the machine.
    let ("" | "localhost", path) = rest.split_once('/')? else {
        return None;
    };
    let mut bytes = vec![b'/'];
    let mut rest = path.bytes();
    while let Some(byte) = rest.next() {
        let byte = if byte == b'%' {
            hex(rest.next()?)? << 4 | hex(rest.next()?)?
        } else {
            byte
        };
        if byte == 0 {
            return None;
        }
        bytes.push(byte);
    }
    Some(PathBuf::from(OsString::from_vec(bytes)))
}

fn hex(digit: u8) -> Option<u8> {
    let value = char::from(digit).to_digit(16)?;
    u8::try_from(value).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_of_a_file_is_its_path() {
        for (uri, path) in [
            ("file:///home/ada/card.pdf", Some("/home/ada/card.pdf")),
            (
                "file:///home/ada/bell%20rope.pdf",
                Some("/home/ada/bell rope.pdf"),
            ),
            ("file://localhost/t%C3%BCr.gif", Some("/tür.gif")),
            ("file:///100%25.png", Some("/100%.png")),
            ("file://loft/card.pdf", None),
            ("https://loft.example/card.pdf", None),
            ("/home/ada/card.pdf", None),
            ("file:///cut%2", None),
            ("file:///cut%zz", None),
            ("file:///nought%00.pdf", None),
            ("", None),
        ] {
            assert_eq!(path_of(uri), path.map(PathBuf::from), "{uri}");
        }
    }
}
