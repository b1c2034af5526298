//! A face in a PDF file: the letters that were used, and which letters they are.

use std::io::Write;

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::writers::{CidFont, FontDescriptor, Type0Font};
use pdf_writer::{Finish, Name, Rect, Ref, Str};
use subsetter::GlyphRemapper;
use ttf_parser::{Face, RawFace, Tag};

use super::error::PdfError;
use super::file::PdfFile;
use crate::picture::draw::{self, Weight};

/// How the numbers of letters are told from those of other collections: they are the file's own.
const OWN: SystemInfo<'static> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

/// A face on its way into a file. A letter gets the next number when it is used first, so that pages can
/// be written before all letters are known.
pub(super) struct PdfFace {
    weight: Weight,
    font: Ref,
    numbers: GlyphRemapper,
    /// By its number, from 1 on, what each letter reads as and how far it moves the pen, in ems.
    letters: Vec<(char, f32)>,
}

/// A text in the numbers of a face.
pub(super) struct SetText {
    /// Two bytes a letter.
    pub codes: Vec<u8>,
    /// What it reads as, where the face has one form for letters that are not the same, such as a space
    /// and one that keeps a line together.
    pub reads: Option<String>,
}

impl PdfFace {
    pub fn new<W: Write>(weight: Weight, file: &mut PdfFile<W>) -> Self {
        Self {
            weight,
            font: file.reserve(),
            numbers: GlyphRemapper::new(),
            letters: Vec::new(),
        }
    }

    /// What pages call it.
    pub const fn name(&self) -> Name<'static> {
        match self.weight {
            Weight::Regular => Name(b"regular"),
            Weight::Bold => Name(b"bold"),
        }
    }

    /// The object that it is.
    pub const fn font(&self) -> Ref {
        self.font
    }

    pub const fn is_used(&self) -> bool {
        !self.letters.is_empty()
    }

    /// A text in the numbers of this face. Letters that the face lacks are left out.
    pub fn set(&mut self, text: &str) -> SetText {
        let (mut codes, mut read, mut is_plain) = (Vec::new(), String::new(), true);
        for (glyph, advance, letter) in draw::glyphs(text, self.weight) {
            let number = self.numbers.remap(glyph);
            let place = usize::from(number).saturating_sub(1);
            if place == self.letters.len() {
                self.letters.push((letter, advance));
            }
            is_plain &= self
                .letters
                .get(place)
                .is_some_and(|(known, _)| *known == letter);
            codes.extend(number.to_be_bytes());
            read.push(letter);
        }
        SetText {
            codes,
            reads: (!is_plain).then_some(read),
        }
    }

    /// Writes the face with the letters that were used and no others.
    pub fn write<W: Write>(&self, file: &mut PdfFile<W>) -> Result<(), PdfError> {
        let refused =
            |reason: &dyn std::fmt::Display| PdfError::Face(format!("{:?}: {reason}", self.weight));
        let whole = draw::file(self.weight);
        let face = Face::parse(whole, 0).map_err(|error| refused(&error))?;
        let subset = subsetter::subset(whole, 0, &self.numbers).map_err(|error| refused(&error))?;
        // The outlines alone: the rest of the file says nothing that the objects here do not say.
        let outlines = RawFace::parse(&subset, 0)
            .ok()
            .and_then(|face| face.table(Tag::from_bytes(b"CFF ")))
            .ok_or_else(|| refused(&"no outlines"))?;
        let (cid_font, descriptor) = (file.reserve(), file.reserve());
        let (outlines_at, letters_at) = (file.reserve(), file.reserve());
        let name = self.tagged_name(outlines);
        let name_with_map = format!("{name}-Identity-H");
        file.put(self.font, |object| {
            object
                .start::<Type0Font>()
                .base_font(Name(name_with_map.as_bytes()))
                .encoding_predefined(Name(b"Identity-H"))
                .descendant_font(cid_font)
                .to_unicode(letters_at);
        })?;
        file.put(cid_font, |object| {
            let mut font = object.start::<CidFont>();
            font.subtype(CidFontType::Type0)
                .base_font(Name(name.as_bytes()))
                .system_info(OWN)
                .font_descriptor(descriptor)
                .default_width(0.0);
            let widths = self.letters.iter().map(|(_, advance)| advance * 1000.0);
            font.widths().consecutive(1, widths).finish();
        })?;
        let em = 1000.0 / f32::from(face.units_per_em());
        file.put(descriptor, |object| {
            let [left, low, right, high] = {
                let bounds = face.global_bounding_box();
                [bounds.x_min, bounds.y_min, bounds.x_max, bounds.y_max]
                    .map(|at| f32::from(at) * em)
            };
            let (ascent, descent) = (f32::from(face.ascender()), f32::from(face.descender()));
            let capitals = face.capital_height().unwrap_or(face.ascender());
            object
                .start::<FontDescriptor>()
                .name(Name(name.as_bytes()))
                .flags(FontFlags::SYMBOLIC)
                .bbox(Rect::new(left, low, right, high))
                .italic_angle(0.0)
                .ascent(ascent * em)
                .descent(descent * em)
                .cap_height(f32::from(capitals) * em)
                .stem_v(match self.weight {
                    // Asked for, and used where a reader puts another face in its place. By eye.
                    Weight::Regular => 80.0,
                    Weight::Bold => 140.0,
                })
                .font_file3(outlines_at);
        })?;
        file.put_stream(outlines_at, outlines, |stream| {
            stream.pair(Name(b"Subtype"), Name(b"CIDFontType0C"));
        })?;
        let mut letters = UnicodeCmap::new(Name(b"Letters"), OWN);
        for (number, (letter, _)) in (1_u16..).zip(&self.letters) {
            letters.pair(number, *letter);
        }
        Ok(file.put_stream(letters_at, &letters.finish(), |_| ())?)
    }

    /// The name of the face with six capitals before it, which tell one selection of its letters from
    /// another (ISO 32000, 9.9.2).
    fn tagged_name(&self, outlines: &[u8]) -> String {
        let mut sum = crc32fast::hash(outlines);
        let mut tag = String::new();
        for _ in 0..6 {
            let nth = u8::try_from(sum % 26).unwrap_or_default();
            tag.push(char::from(b'A' + nth));
            sum /= 26;
        }
        match self.weight {
            Weight::Regular => tag + "+B612-Regular",
            Weight::Bold => tag + "+B612-Bold",
        }
    }
}
