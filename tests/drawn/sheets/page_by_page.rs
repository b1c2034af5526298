//! However many pages there are, one is in hand: each is in the file before the next is laid out. And what
//! a PDF made so is worth: its text can be copied, its faces hold what is used, two runs are one.

use std::cell::{Cell, RefCell};
use std::collections::HashSet;
use std::io::{self, Write};
use std::ops::ControlFlow;

use marlinspeak::bench::{Board, Circle, Millimetres, Prices, Tube, pinning};
use marlinspeak::guide::{Labour, Plan};
use marlinspeak::knot::Hand;
use marlinspeak::paper::{self, Pupils};
use marlinspeak::picture::sheet::{
    BoardSheet, Card, CardEnd, CardParts, CardRow, CardSheet, Laid, LegLine, ListPart, ListSheet,
    Paper, PdfError, Sheet, StripTexts, write_pdf,
};
use marlinspeak::picture::{Moment, Scene, Subject, View, Viewport};
use marlinspeak::words::Words;
use ttf_parser::{GlyphId, OutlineBuilder};

use crate::laid_out;
use crate::pdf::Pdf;

/// A file of which the number of bytes is known while it is written.
#[derive(Default)]
struct Counted {
    bytes: RefCell<Vec<u8>>,
}

impl Write for &Counted {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.bytes.borrow_mut().extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

impl Counted {
    /// Pages that are in it.
    fn pages(&self) -> usize {
        let bytes = self.bytes.borrow();
        let name = b"/Type /Page\n";
        bytes
            .windows(name.len())
            .filter(|part| part == name)
            .count()
    }
}

/// Legs without end, of which it is known how many were asked for.
struct Legs<'a> {
    count: u32,
    told: &'a Cell<u32>,
}

impl CardParts for Legs<'_> {
    fn rows(&self) -> Box<dyn Iterator<Item = CardRow> + '_> {
        self.told.set(0);
        Box::new((1..=self.count).map(|number| {
            self.told.set(number);
            CardRow::Leg(LegLine {
                number: format!("leg {number}"),
                way: "from here to there".to_owned(),
                crossings: vec![(true, "OVER 1".to_owned())],
            })
        }))
    }

    fn ends(&self) -> Box<dyn Iterator<Item = CardEnd> + '_> {
        Box::new(std::iter::empty())
    }

    fn scene(&self, frame: Viewport) -> Scene {
        let plan = Plan::read("3", "5", "1", "").unwrap();
        Subject::tied(&plan, Moment::Finished).scene(View::RoundTheTube, frame)
    }

    fn foot(&self, page: usize, pages: usize) -> String {
        format!("{page} of {pages}")
    }
}

#[test]
fn no_leg_of_the_next_page_is_told_before_a_page_is_written() {
    let told = Cell::new(0);
    let legs = Legs {
        count: 400,
        told: &told,
    };
    let sheet = CardSheet::new(Card::default(), legs, Paper::A4);
    let count = sheet.count();
    assert!(count > 6, "{count}");
    let out = Counted::default();
    let mut before = 0;
    write_pdf(&sheet, "legs", &out, |done, all| {
        assert_eq!(all as usize, count);
        assert_eq!(
            out.pages(),
            done as usize,
            "each page is written as it is done"
        );
        // Between 20 and 80 of them go on a page: the pages still to come are not laid out.
        let on_page = told.get() - before;
        assert!((1..=80).contains(&on_page), "page {done}: {on_page} legs");
        before = told.get();
        true
    })
    .unwrap();
    assert_eq!(told.get(), 400);
    // The first leg that has no room is told, and stands on the next page.
    let mut last = 0;
    let laid_out = sheet.lay_out(&mut |page| {
        let legs = page.texts().filter_map(|text| text.strip_prefix("leg "));
        let legs: Vec<u32> = legs.map(|number| number.parse().unwrap()).collect();
        assert_eq!(legs.first(), Some(&(last + 1)));
        last = *legs.last().unwrap();
        assert!(
            told.get() <= last + 1,
            "{last} on the page, {} told",
            told.get()
        );
        ControlFlow::Continue(())
    });
    assert!(laid_out.is_continue());
    assert_eq!(last, 400);
}

fn millimetres(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// A sheet of several pages of every kind.
fn kinds(words: &Words) -> Vec<(&'static str, Box<dyn Sheet>)> {
    let plan = Plan::read("15", "16", "3", "").unwrap();
    let labour = Labour::of(&plan, None, Prices::default());
    let tube = Tube::plain(millimetres(400.0));
    let layout = pinning(&tube, plan.knot().lattice()).unwrap();
    let board = Board {
        outer: Circle::of(millimetres(400.0), 12, 0.0),
        inner: Circle::of(millimetres(90.0), 12, 0.5),
        nested: Vec::new(),
    };
    let (join, foot) = (
        |page| format!("page {page}"),
        |page, pages| format!("{page} of {pages}"),
    );
    let texts = StripTexts {
        title: "a board".to_owned(),
        bar_length: 5000,
        ..StripTexts::default()
    };
    let part = |nth| ListPart {
        head: format!("part {nth}"),
        lines: (0..20).map(|line| (true, format!("line {line}"))).collect(),
    };
    let list = ListSheet {
        title: "a list".to_owned(),
        parts: (0..9).map(part).collect(),
    };
    let names = Pupils::Named(vec!["Ada".to_owned(), "Ben".to_owned()]);
    vec![
        (
            "card",
            Box::new(paper::card(&plan, None, &labour, Paper::A4, words)),
        ),
        (
            "class",
            Box::new(paper::class(
                &plan,
                None,
                &labour,
                &names,
                Paper::Letter,
                words,
            )),
        ),
        (
            "strip",
            paper::strip(&plan, &tube, &layout, Paper::A4, words),
        ),
        (
            "board",
            Box::new(Laid::on(
                BoardSheet::new(&board, 2.7, Hand::Right),
                Paper::A4,
                texts,
                join,
                foot,
            )),
        ),
        ("list", Box::new(list.on(Paper::Letter, foot))),
    ]
}

#[test]
fn a_sheet_of_every_kind_is_written_page_by_page_and_stops_after_any() {
    let words = Words::english();
    for (kind, sheet) in kinds(&words) {
        let count = sheet.count();
        assert!(count > 2, "{kind}: {count}");
        let out = Counted::default();
        let whole = write_pdf(&*sheet, kind, &out, |done, all| {
            assert_eq!(
                (out.pages(), all as usize),
                (done as usize, count),
                "{kind}"
            );
            true
        });
        whole.unwrap();
        let pdf = Pdf::read(&out.bytes.borrow());
        assert_eq!(pdf.pages().len(), count, "{kind}");
        assert_eq!(pdf.title().as_deref(), Some(kind));
        // Stopped after the second, no other is laid out.
        let mut laid_out = 0;
        let stopped = sheet.lay_out(&mut |_| {
            laid_out += 1;
            match laid_out {
                2 => ControlFlow::Break(()),
                _ => ControlFlow::Continue(()),
            }
        });
        assert_eq!((stopped, laid_out), (ControlFlow::Break(()), 2), "{kind}");
        let stopped = write_pdf(&*sheet, kind, io::sink(), |done, _| done < 2);
        let stopped_there = matches!(stopped, Err(PdfError::Stopped { done: 2, count: all })
            if all as usize == count);
        assert!(stopped_there, "{kind}: {stopped:?}");
        // Every page says which it is, and of how many.
        for (nth, page) in laid_out::pages(&*sheet).iter().enumerate() {
            let number = if kind == "class" {
                nth % (count / 2)
            } else {
                nth
            } + 1;
            let all = if kind == "class" { count / 2 } else { count };
            let foot = |text: &str| {
                text.contains(&number.to_string()) && text.contains(&format!("of {all}"))
            };
            assert!(page.texts().any(foot), "{kind}: page {number} of {all}");
        }
    }
}

#[test]
fn a_disk_that_is_full_ends_a_pdf_at_the_page_that_it_has_no_room_for() {
    /// Takes so many bytes.
    struct Full(usize);

    impl Write for Full {
        fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
            let taken = bytes.len().min(self.0);
            self.0 -= taken;
            match taken {
                0 => Err(io::ErrorKind::StorageFull.into()),
                taken => Ok(taken),
            }
        }

        fn flush(&mut self) -> io::Result<()> {
            Ok(())
        }
    }

    let words = Words::english();
    let (_, sheet) = kinds(&words).swap_remove(0);
    let mut whole = Vec::new();
    write_pdf(&*sheet, "", &mut whole, |_, _| true).unwrap();
    let mut after = HashSet::new();
    for room in (0..whole.len()).step_by(whole.len() / 23) {
        let mut pages = 0;
        let cut = write_pdf(&*sheet, "", Full(room), |done, _| {
            pages = done;
            true
        });
        let said = match cut {
            Err(PdfError::Unwritable(fault)) => fault.kind(),
            other => panic!("{room} bytes: {other:?}"),
        };
        assert_eq!(said, io::ErrorKind::StorageFull);
        after.insert(pages);
    }
    assert!(after.len() > 2, "{after:?}");
}

#[test]
fn the_text_of_a_pdf_is_read_back_letter_by_letter_in_every_language() {
    for tag in ["en", "de", "es", "fr"] {
        let words = Words::load(Some(tag)).unwrap();
        for (kind, sheet) in kinds(&words) {
            let mut bytes = Vec::new();
            write_pdf(&*sheet, "", &mut bytes, |_, _| true).unwrap();
            let pdf = Pdf::read(&bytes);
            let pages = laid_out::pages(&*sheet);
            for (page, number) in pages.iter().zip(pdf.pages()) {
                let written: Vec<&str> = page.texts().collect();
                let lines = pdf.lines(number);
                let copied: Vec<&str> = lines.iter().map(|line| &*line.text).collect();
                assert_eq!(copied, written, "{tag}, {kind}");
            }
        }
    }
}

/// What a pen draws.
#[derive(Default, PartialEq, Debug)]
struct Drawn(Vec<(char, Vec<f32>)>);

impl OutlineBuilder for Drawn {
    fn move_to(&mut self, x: f32, y: f32) {
        self.0.push(('M', vec![x, y]));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.0.push(('L', vec![x, y]));
    }

    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.0.push(('Q', vec![x1, y1, x, y]));
    }

    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        self.0.push(('C', vec![x1, y1, x2, y2, x, y]));
    }

    fn close(&mut self) {
        self.0.push(('Z', Vec::new()));
    }
}

#[test]
fn the_faces_of_a_pdf_hold_the_letters_that_are_used_in_their_own_forms_and_no_others() {
    let words = Words::english();
    let (_, sheet) = kinds(&words).swap_remove(0);
    let mut bytes = Vec::new();
    write_pdf(&*sheet, "", &mut bytes, |_, _| true).unwrap();
    let pdf = Pdf::read(&bytes);
    for (name, file) in [
        (
            "regular",
            &include_bytes!("../../../resources/fonts/B612-Regular.otf")[..],
        ),
        (
            "bold",
            include_bytes!("../../../resources/fonts/B612-Bold.otf"),
        ),
    ] {
        let whole = ttf_parser::Face::parse(file, 0).unwrap();
        let mut used = HashSet::new();
        let pages = pdf.pages();
        for page in &pages {
            let lines = pdf.lines(*page);
            let lines = lines.into_iter().filter(|line| line.face == name);
            used.extend(lines.flat_map(|line| line.codes));
        }
        let face = &pdf.faces(pages[0])[name];
        let outlines = ttf_parser::cff::Table::parse(&face.outlines).unwrap();
        // And the form for what is not there, which every face must have.
        assert_eq!(usize::from(outlines.number_of_glyphs()), used.len() + 1);
        assert!(
            face.outlines.len() < file.len() / 3,
            "{}",
            face.outlines.len()
        );
        for code in used {
            let letter = face.reads[&code];
            let (mut kept, mut was) = (Drawn::default(), Drawn::default());
            let _ = outlines.outline(GlyphId(code), &mut kept);
            let glyph = whole.glyph_index(letter).unwrap();
            let _ = whole.outline_glyph(glyph, &mut was);
            assert_eq!(kept, was, "{name}: {letter:?}");
            assert_eq!(kept.0.is_empty(), letter.is_whitespace(), "{letter:?}");
        }
    }
}

#[test]
fn two_runs_make_one_and_the_same_pdf() {
    let words = Words::english();
    for (kind, sheet) in kinds(&words) {
        let made = || {
            let mut bytes = Vec::new();
            write_pdf(&*sheet, kind, &mut bytes, |_, _| true).unwrap();
            bytes
        };
        assert!(made() == made(), "{kind}");
    }
}
