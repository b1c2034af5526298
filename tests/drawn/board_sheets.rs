//! The printed sheet of a board, measured on the pixels of its pages; tapes of two lengths.

use crate::laid_out;

use std::f64::consts::TAU;

use marlinspeak::bench::{Board, Circle, Cord, Ground, Layout, Millimetres, RimTape, Tapes, Tube};
use marlinspeak::guide::{Plan, Setup};
use marlinspeak::knot::Hand;
use marlinspeak::paper;
use marlinspeak::picture::Image;
use marlinspeak::picture::sheet::{BoardSheet, Laid, Paper, SheetPage, StripSheet, StripTexts};
use marlinspeak::words::Words;

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// Circles of so many pins, the inner one half a pitch on.
fn board(outer: f64, inner: f64, pins: u16) -> Board {
    Board {
        outer: Circle::of(mm(outer), pins, 0.0),
        inner: Circle::of(mm(inner), pins, 0.5),
        nested: Vec::new(),
    }
}

fn pages(board: &Board, hand: Hand, paper: Paper) -> Vec<SheetPage> {
    let texts = StripTexts {
        title: "title".to_owned(),
        bar_length: 5000,
        ..StripTexts::default()
    };
    let join = |page| format!("page {page}");
    let foot = |page, pages| format!("{page} of {pages}");
    let sheet = BoardSheet::new(board, 2.7, hand);
    laid_out::pages(&Laid::on(sheet, paper, texts, join, foot))
}

const DPI: u16 = 200;

/// A page as it is printed.
struct Printed(Image);

impl Printed {
    fn new(page: &SheetPage) -> Self {
        Self(page.image(DPI))
    }

    /// Whether anything dark is within this many millimetres of a place on the page.
    fn is_dark(&self, (x, y): (f64, f64), within: f64) -> bool {
        let dots = f64::from(DPI) / 25.4;
        let steps = (within * dots).ceil();
        let (x, y) = (x * dots, y * dots);
        let offsets = || {
            (-20..=20_i32)
                .map(f64::from)
                .filter(move |step| step.abs() <= steps)
        };
        offsets().any(|down| {
            offsets().any(|right| {
                #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
                let (x, y) = ((x + right) as u32, (y + down) as u32);
                self.0
                    .pixel(x, y)
                    .is_some_and(|seen| seen.luminance() < 0.15)
            })
        })
    }

    /// Whether the ring of a pin is here, of this radius and no other, between the arms of its cross, of
    /// which one points this way.
    fn has_mark(&self, (x, y): (f64, f64), radius: f64, towards: f64) -> bool {
        let around = (0..4).map(|nth| towards + (f64::from(nth) + 0.5) * TAU / 4.0);
        let at = |angle: f64, radius: f64| (x + radius * angle.sin(), y + radius * angle.cos());
        let is_ring = around
            .clone()
            .all(|angle| self.is_dark(at(angle, radius), 0.12));
        let is_clear = around
            .clone()
            .all(|angle| !self.is_dark(at(angle, radius - 0.6), 0.05));
        is_ring && is_clear && self.is_dark((x, y), 0.12)
    }
}

/// The part of a board that each page holds, across and down: what a page leaves beside margins of 12 mm,
/// 62 mm above and 54 mm below, overlapping by 15 mm, the middle of the board in the middle of all.
fn tiles(outer: f64, (width, height): (f64, f64)) -> Vec<[f64; 2]> {
    let room = [width - 24.0, height - 62.0 - 54.0];
    let starts = room.map(|room| {
        let mut count = 1_i32;
        while room + f64::from(count - 1) * (room - 15.0) < 2.0 * (outer + 10.0) {
            count += 1;
        }
        let reached = room + f64::from(count - 1) * (room - 15.0);
        let start = |nth: i32| -reached / 2.0 + f64::from(nth) * (room - 15.0);
        (0..count).map(start).collect::<Vec<f64>>()
    });
    let [across, down] = starts;
    down.iter()
        .flat_map(|&down| across.iter().map(move |&across| [across, down]))
        .collect()
}

#[test]
fn every_pin_of_a_board_is_marked_at_its_radius_and_angle_on_each_page_that_has_it() {
    for (outer, inner, pins, paper, hand, most) in [
        (20.0, 8.0, 5, Paper::A4, Hand::Right, 1),
        (72.0, 19.0, 7, Paper::A4, Hand::Right, 1),
        (150.0, 40.0, 9, Paper::A4, Hand::Left, 4),
        (210.0, 90.0, 14, Paper::Letter, Hand::Right, 9),
    ] {
        let board = board(outer, inner, pins);
        let made = pages(&board, hand, paper);
        let size = match paper {
            Paper::A4 => (210.0, 297.0),
            Paper::Letter => (215.9, 279.4),
        };
        let tiles = tiles(outer, size);
        assert_eq!(made.len(), tiles.len(), "{outer}");
        assert_eq!(made.len(), most, "{outer}");
        let mut seen = 0;
        let mut on_two = 0;
        let printed: Vec<Printed> = made.iter().map(Printed::new).collect();
        for circle in [&board.outer, &board.inner] {
            let radius = circle.radius.get();
            let mark = (0.6 * TAU * radius / f64::from(pins)).min(4.0) / 2.0;
            for angle in &circle.angles {
                let angle = if hand == Hand::Left { -angle } else { *angle };
                let at = [radius * angle.sin(), radius * angle.cos()];
                let mut times = 0;
                for (page, [across, down]) in printed.iter().zip(&tiles) {
                    let spot = (12.0 + at[0] - across, 62.0 + at[1] - down);
                    let is_on_page = spot.0 >= 12.0 + mark
                        && spot.0 <= size.0 - 12.0 - mark
                        && spot.1 >= 62.0 + mark
                        && spot.1 <= size.1 - 54.0 - mark;
                    if is_on_page {
                        assert!(
                            page.has_mark(spot, mark, angle),
                            "{outer} mm: no mark at {spot:?} of radius {mark}"
                        );
                        let aside = (spot.0 + 0.6, spot.1);
                        assert!(!page.has_mark(aside, mark, angle), "{outer} mm: {spot:?}");
                        times += 1;
                    }
                }
                assert!(times > 0, "{outer} mm: the pin at {at:?} is on no page");
                seen += 1;
                on_two += usize::from(times > 1);
            }
        }
        assert_eq!(seen, 2 * pins);
        // Pin 1 of the outer circle lies where two pages of four overlap.
        assert!(on_two > 0 || most != 4, "shared by pages: {on_two}");
        // The middle of the board.
        let middle = tiles.iter().zip(&printed).any(|([across, down], page)| {
            let (x, y) = (12.0 - across, 62.0 - down);
            page.is_dark((x + 2.0, y), 0.12) && page.is_dark((x, y - 2.0), 0.12)
        });
        assert!(middle, "{outer} mm");
    }
}

#[test]
fn the_line_on_a_board_sheet_is_as_long_as_it_says() {
    for page in pages(&board(150.0, 40.0, 9), Hand::Right, Paper::A4) {
        let page = Printed::new(&page);
        let y = 297.0 - 12.0 - 14.0;
        let dots = f64::from(DPI) / 25.4;
        let dark = |x: &u32| page.is_dark((f64::from(*x) / dots, y), 0.0);
        let first = (0..1200).find(dark).unwrap();
        let last = (first..1200).take_while(dark).last().unwrap();
        let long = f64::from(last + 1 - first) / dots;
        assert!((long - 50.0).abs() < 0.4, "{long}");
    }
}

#[test]
fn tapes_of_a_taper_are_as_long_as_it_is_round_at_each_end() {
    let tapes = Tapes {
        bottom: RimTape::of(mm(140.0), 7, 0.0),
        top: RimTape::of(mm(105.0), 7, 0.5),
        inner: Vec::new(),
    };
    let tube = Tube::plain(mm(45.0));
    let strips = StripSheet::new(&tube, &Layout::Tapes(tapes), None, Hand::Right);
    assert_eq!(format!("{:?}", strips.lengths), "[105.0, 140.0]");
    for (row, long, first) in [
        (&strips.top[0], 105.0, 15.0 * 0.75),
        (&strips.bottom[0], 140.0, 5.0),
    ] {
        let pitch = long / 7.0;
        for (nth, pin) in row.pins.iter().enumerate() {
            #[expect(clippy::cast_precision_loss)]
            let at = first + nth as f32 * pitch;
            assert!((pin - at).abs() < 1e-3, "{nth}: {pin} and {at}");
        }
    }
}

#[test]
fn a_mat_has_a_board_sheet_and_no_strip_in_every_language() {
    let mat = Ground::Flat {
        outer: mm(150.0),
        hole: None,
    };
    for tag in ["en", "de", "es", "fr"] {
        let words = Words::load(Some(tag)).unwrap();
        let plan = Plan::read("6", "7", "1", "").unwrap();
        let plan = plan.with_setup(Some(Setup::in_place(mat, Cord::new(mm(5.0)))));
        let (tube, layout) = paper::pinned(&plan).unwrap();
        assert!(matches!(layout, Layout::Board(_)), "{layout:?}");
        let pages = laid_out::pages(&*paper::strip(&plan, tube, &layout, Paper::A4, &words));
        assert!(pages.len() <= 4, "{}", pages.len());
        let texts: Vec<&str> = pages.iter().flat_map(SheetPage::texts).collect();
        let title = words.board_title(
            &plan,
            match &layout {
                Layout::Board(board) => board,
                other => panic!("{other:?}"),
            },
        );
        assert!(texts.contains(&title.as_str()), "{texts:?}");
        for number in ["1", "7"] {
            let times = texts.iter().filter(|text| **text == number).count();
            assert!(times >= 2, "at each circle: {texts:?}");
        }
    }
}

/// The bag counts the pages before there is a sheet.
#[test]
fn the_bag_has_as_many_pages_of_a_board_as_are_printed() {
    let mut most = 0;
    for tenth in 1..90_u16 {
        let radius = 10.0 * f64::from(tenth);
        let board = board(radius, radius / 3.0, 7);
        let printed = pages(&board, Hand::Right, Paper::A4).len();
        assert_eq!(usize::from(board.sheet_pages()), printed, "{radius} mm");
        most = most.max(printed);
    }
    assert!(most > 20, "{most} pages");
}
