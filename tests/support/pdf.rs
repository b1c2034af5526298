//! A reader of PDF files, of what these tests ask of them: objects where the table says that they are,
//! pages, and the text on a page as a reader of PDF would copy it (ISO 32000, 7.3, 7.5 and 9.10).

use std::collections::HashMap;
use std::io::Read;

use flate2::read::ZlibDecoder;

/// A file, object by object.
pub struct Pdf {
    objects: HashMap<usize, Vec<u8>>,
    root: usize,
}

/// A face: what each number reads as, and the outlines of the letters.
pub struct Face {
    pub reads: HashMap<u16, char>,
    pub outlines: Vec<u8>,
}

/// A line of text on a page.
pub struct Line {
    pub face: String,
    pub codes: Vec<u16>,
    /// What is copied of it.
    pub text: String,
}

/// The bytes as text of as many bytes; what is no letter of ASCII is of no matter here.
fn latin(bytes: &[u8]) -> String {
    let letter = |byte: &u8| {
        if byte.is_ascii() {
            char::from(*byte)
        } else {
            '?'
        }
    };
    bytes.iter().map(letter).collect()
}

/// What stands between two marks, the first of them.
fn between<'a>(text: &'a str, from: &str, to: &str) -> Option<&'a str> {
    let (_, rest) = text.split_once(from)?;
    rest.split_once(to).map(|(inside, _)| inside)
}

impl Pdf {
    /// Reads a file by its table. Every line of it must lead to the object of its number.
    pub fn read(bytes: &[u8]) -> Self {
        assert!(bytes.starts_with(b"%PDF-1.7\n"));
        let text = latin(bytes);
        let table = text.rsplit_once("startxref\n").unwrap().1;
        let table: usize = table.lines().next().unwrap().parse().unwrap();
        let (head, rows) = text[table..].split_once('\n').unwrap();
        assert_eq!(head, "xref");
        let (span, rows) = rows.split_once('\n').unwrap();
        let size: usize = span.strip_prefix("0 ").unwrap().parse().unwrap();
        let mut objects = HashMap::new();
        for number in 1..size {
            let row = &rows[20 * number..20 * (number + 1)];
            assert!(row.ends_with(" 00000 n\r\n"), "{number}: {row:?}");
            let begin: usize = row[..10].parse().unwrap();
            let head = format!("{number} 0 obj\n");
            assert!(text[begin..].starts_with(&head), "object {number}");
            let body = &bytes[begin + head.len()..];
            objects.insert(number, body.to_vec());
        }
        let trailer = &rows[20 * size..];
        assert!(trailer.starts_with("trailer\n") && trailer.ends_with("%%EOF\n"));
        assert!(trailer.contains(&format!("/Size {size} ")));
        let root = reference(trailer, "/Root").unwrap();
        Self { objects, root }
    }

    /// The words of an object, up to the bytes of its stream.
    fn object(&self, number: usize) -> String {
        let body = latin(&self.objects[&number]);
        let end = body.find("endobj").unwrap_or(body.len());
        let stream = body.find("stream").unwrap_or(body.len());
        body[..end.min(stream)].to_owned()
    }

    /// The bytes of a stream, unpacked.
    fn stream(&self, number: usize) -> Vec<u8> {
        let body = &self.objects[&number];
        let words = self.object(number);
        assert!(words.contains("/FlateDecode"), "{words}");
        let length = words.split("/Length").nth(1).unwrap().trim_start();
        let length: String = length.chars().take_while(char::is_ascii_digit).collect();
        let begin = words.len() + "stream\n".len();
        let packed = &body[begin..begin + length.parse::<usize>().unwrap()];
        let mut bytes = Vec::new();
        ZlibDecoder::new(packed).read_to_end(&mut bytes).unwrap();
        bytes
    }

    /// The objects that are pages, in order.
    pub fn pages(&self) -> Vec<usize> {
        let tree = self.object(reference(&self.object(self.root), "/Pages").unwrap());
        let kids = between(&tree, "/Kids [", "]").unwrap();
        let kids: Vec<&str> = kids.split(" R").collect();
        let kids = kids.iter().filter_map(|kid| kid.split_whitespace().next());
        let kids: Vec<usize> = kids.map(|kid| kid.parse().unwrap()).collect();
        assert!(tree.contains(&format!("/Count {}", kids.len())), "{tree}");
        kids
    }

    /// The title of the document, where it is of plain letters.
    pub fn title(&self) -> Option<String> {
        let info = self.objects.keys().map(|number| self.object(*number));
        let mut titles =
            info.filter_map(|words| between(&words, "/Title (", ")").map(str::to_owned));
        titles.next()
    }

    /// The faces of a page by their names.
    pub fn faces(&self, page: usize) -> HashMap<String, Face> {
        let resources = reference(&self.object(page), "/Resources").unwrap();
        let resources = self.object(resources);
        let names = ["regular", "bold"].into_iter();
        let faces = names.filter_map(|name| {
            let font = self.object(reference(&resources, &format!("/{name}"))?);
            let letters = latin(&self.stream(reference(&font, "/ToUnicode").unwrap()));
            let reads = letters.lines().filter_map(|line| {
                let (code, letter) = line.strip_prefix('<')?.split_once("> <")?;
                let [code, letter] = [code, letter.strip_suffix('>')?]
                    .map(|hex| u16::from_str_radix(hex, 16).unwrap());
                Some((code, char::from_u32(letter.into()).unwrap()))
            });
            let reads = reads.filter(|(code, _)| *code != 0).collect();
            let of_letters = between(&font, "/DescendantFonts [", "]").unwrap();
            let of_letters: usize = of_letters
                .split_whitespace()
                .next()
                .unwrap()
                .parse()
                .unwrap();
            let descriptor = reference(&self.object(of_letters), "/FontDescriptor").unwrap();
            let outlines = reference(&self.object(descriptor), "/FontFile3").unwrap();
            let outlines = self.stream(outlines);
            Some((name.to_owned(), Face { reads, outlines }))
        });
        faces.collect()
    }

    /// The lines of text of a page, in the order in which they are drawn.
    pub fn lines(&self, page: usize) -> Vec<Line> {
        let faces = self.faces(page);
        let content = self.stream(reference(&self.object(page), "/Contents").unwrap());
        let (mut lines, mut face, mut reads) = (Vec::new(), String::new(), None);
        let content = latin(&content);
        let mut rest = content.as_str();
        while let Some((at, next)) = next_of(rest) {
            rest = &rest[at..];
            match next {
                Next::Font => {
                    let (name, after) = rest[1..].split_once(' ').unwrap();
                    name.clone_into(&mut face);
                    rest = after;
                }
                Next::Reads => {
                    let (bytes, after) = string(rest.trim_start_matches("/ActualText "));
                    reads = Some(match bytes.strip_prefix(&[0xFE, 0xFF]) {
                        Some(wide) => String::from_utf16(&pairs(wide)).unwrap(),
                        None => latin(&bytes),
                    });
                    rest = after;
                }
                Next::Text => {
                    let (bytes, after) = string(rest);
                    rest = after;
                    assert!(rest.starts_with(" Tj"), "{:?}", &rest[..9]);
                    let codes = pairs(&bytes);
                    let known = &faces[&face].reads;
                    let text = codes.iter().map(|code| known[code]).collect();
                    lines.push(Line {
                        face: face.clone(),
                        codes,
                        text: reads.take().unwrap_or(text),
                    });
                }
            }
        }
        lines
    }
}

enum Next {
    Font,
    Reads,
    Text,
}

/// The next thing that has to do with text.
fn next_of(content: &str) -> Option<(usize, Next)> {
    let found = [
        content.find("/regular ").map(|at| (at, Next::Font)),
        content.find("/bold ").map(|at| (at, Next::Font)),
        content.find("/ActualText ").map(|at| (at, Next::Reads)),
        content.find('(').map(|at| (at, Next::Text)),
        content
            .match_indices('<')
            .find(|(at, _)| !content[*at..].starts_with("<<"))
            .filter(|(at, _)| !content[..*at].ends_with('<'))
            .map(|(at, _)| (at, Next::Text)),
    ];
    found.into_iter().flatten().min_by_key(|(at, _)| *at)
}

/// A string, in letters or in hexadecimal digits, and what follows it.
fn string(text: &str) -> (Vec<u8>, &str) {
    if let Some(hex) = text.strip_prefix('<') {
        let (hex, after) = hex.split_once('>').unwrap();
        let digits = hex.as_bytes().chunks(2);
        let bytes = digits.map(|pair| u8::from_str_radix(&latin(pair), 16).unwrap());
        return (bytes.collect(), after);
    }
    let (mut bytes, mut depth) = (Vec::new(), 0);
    let mut letters = text.char_indices();
    while let Some((at, letter)) = letters.next() {
        match letter {
            '(' if depth > 0 => bytes.push(b'('),
            ')' if depth == 1 => return (bytes, &text[at + 1..]),
            ')' => bytes.push(b')'),
            '\\' => {
                let (_, escaped) = letters.next().unwrap();
                bytes.push(match escaped {
                    'n' => b'\n',
                    'r' => b'\r',
                    't' => b'\t',
                    'b' => 8,
                    'f' => 12,
                    '0'..='3' => {
                        let mut octal = escaped.to_string();
                        octal.extend(letters.by_ref().take(2).map(|(_, digit)| digit));
                        u8::from_str_radix(&octal, 8).unwrap()
                    }
                    other => u8::try_from(other).unwrap(),
                });
            }
            '(' => {}
            other => bytes.push(u8::try_from(u32::from(other)).unwrap()),
        }
        match letter {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ => {}
        }
    }
    panic!("a string without an end");
}

fn pairs(bytes: &[u8]) -> Vec<u16> {
    let pairs = bytes.chunks(2);
    pairs
        .map(|pair| u16::from_be_bytes([pair[0], pair[1]]))
        .collect()
}

/// The number of the object that an entry refers to.
fn reference(words: &str, entry: &str) -> Option<usize> {
    let after = words.split_once(&format!("{entry} "))?.1;
    let mut parts = after.split_whitespace();
    let number = parts.next()?.parse().ok()?;
    (parts.next() == Some("0") && parts.next()?.starts_with('R')).then_some(number)
}
