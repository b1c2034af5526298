//! Paper for the bench: measured on the files that the commands write.

#[path = "sheets/class_and_order.rs"]
mod class_and_order;
use crate::dots;
use crate::in_time;
use crate::laid_out;
#[path = "sheets/page_by_page.rs"]
mod page_by_page;
#[cfg(unix)]
#[path = "sheets/stopped.rs"]
mod stopped;

use in_time::InTime as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use marlinspeak::bench::{Cord, Millimetres, Prices, Tube, TyingPace, pinning};
use marlinspeak::guide::{AtOnce, FinishTask, Labour, Plan, Script, Setup, What};
use marlinspeak::paper;
use marlinspeak::picture::sheet::{Paper, SheetPage};
use marlinspeak::words::Words;
use tempfile::TempDir;

const KNOT: [&str; 4] = ["--leads", "5", "--bights", "6"];

fn marlinspeak(args: &[&str], out: Option<&Path>) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
    command
        .arg("sheet")
        .args(args)
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env(
            "XDG_DATA_HOME",
            std::env::temp_dir().join("marlinspeak-none"),
        )
        .stdin(Stdio::null());
    if let Some(out) = out {
        command.arg("--out").arg(out);
    }
    command.output_in_time()
}

/// Makes a sheet and gives the file.
fn made(folder: &TempDir, name: &str, args: &[&str]) -> PathBuf {
    let file = folder.path().join(name);
    let output = marlinspeak(args, Some(&file));
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{args:?}: {errors}");
    // In debug builds, on a busy machine, a few pages can take long.
    let is_progress = |line: &str| line.starts_with("Made so far: ");
    assert!(
        output.stdout.is_empty() && errors.lines().all(is_progress),
        "{errors}"
    );
    file
}

/// Runs what must fail, and gives the exit code and the sentence.
fn refused(args: &[&str], out: Option<&Path>) -> (i32, String) {
    let output = marlinspeak(args, out);
    assert!(output.stdout.is_empty());
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(errors.lines().count(), 1, "{errors}");
    (output.status.code().unwrap(), errors.trim_end().to_owned())
}

/// A PNG page: its darkness, pixel by pixel, and its dots to a millimetre.
struct Paint {
    width: usize,
    height: usize,
    dark: Vec<f64>,
    per_metre: u32,
}

impl Paint {
    fn read(file: &Path) -> Self {
        let bytes = fs::read(file).unwrap();
        let page = image::load_from_memory(&bytes).unwrap().into_rgb8();
        let (across, down) = dots::per_metre(&bytes);
        assert_eq!(across, down);
        Self {
            width: page.width() as usize,
            height: page.height() as usize,
            dark: page
                .pixels()
                .map(|pixel| (255.0 - f64::from(pixel[1])) / 255.0)
                .collect(),
            per_metre: across,
        }
    }

    /// Where the dark runs of a line of pixels are, by their centres of darkness: millimetres
    /// from the left, for a line so many millimetres from the top.
    fn runs(&self, down: f64, dpi: f64) -> Vec<f64> {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let row = (down * dpi / 25.4) as usize;
        let line = &self.dark[row * self.width..(row + 1) * self.width];
        dark_runs(line.iter().copied(), dpi)
    }

    /// The same down a line so many millimetres from the left, between two heights.
    fn down(&self, across: f64, dpi: f64, from: f64, to: f64) -> Vec<f64> {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let [column, first, last] = [across, from, to].map(|at| (at * dpi / 25.4) as usize);
        let line = (first..last).map(|row| self.dark[row * self.width + column]);
        #[expect(clippy::cast_precision_loss)]
        let before = first as f64 * 25.4 / dpi;
        let runs = dark_runs(line, dpi).into_iter();
        runs.map(|run| before + run).collect()
    }
}

/// The centres of darkness of the dark runs of a line, in millimetres from where it begins.
fn dark_runs(line: impl Iterator<Item = f64>, dpi: f64) -> Vec<f64> {
    let (mut runs, mut sum, mut weighed) = (Vec::new(), 0.0, 0.0);
    let mut x = 0.5;
    for dark in line.chain([0.0]) {
        if dark > 0.02 {
            sum += dark;
            weighed += dark * x;
        } else if sum > 0.0 {
            runs.push(weighed / sum * 25.4 / dpi);
            (sum, weighed) = (0.0, 0.0);
        }
        x += 1.0;
    }
    runs
}

/// Millimetres from the top of a page to a line below the holes of the top strip, and of the
/// bottom one: pins and cuts cross it, nothing else does.
const BELOW_HOLES: [f64; 2] = [88.0, 140.0];

#[test]
fn pins_of_a_strip_stand_the_circumference_over_the_bights_apart() {
    let folder = TempDir::new().unwrap();
    for (nth, (bights, tube, dpi, more)) in [
        (6, 60.0, 300, vec![]),
        (4, 25.4, 150, vec!["--hand", "left"]),
        (9, 48.3, 200, vec!["--paper", "letter"]),
        (6, 80.0, 150, vec!["--rows", "12,18"]),
        (6, 80.0, 150, vec!["--rows", "6"]),
        (31, 70.0, 200, vec![]),
    ]
    .into_iter()
    .enumerate()
    {
        let (tube_text, dpi_text) = (format!("{tube}mm"), dpi.to_string());
        let bights_text = bights.to_string();
        let mut args = vec![
            "strip",
            "--leads",
            "5",
            "--bights",
            &bights_text,
            "--tube",
            &tube_text,
            "--dpi",
            &dpi_text,
        ];
        args.extend(more.iter().copied());
        let page = Paint::read(&made(&folder, &format!("{nth}.png"), &args));
        let round = tube * std::f64::consts::PI;
        let mut first = Vec::new();
        for down in BELOW_HOLES {
            let runs = page.runs(down, f64::from(dpi));
            assert_eq!(runs.len(), bights + 2, "{args:?}: {runs:?}");
            let (left, right) = (runs[0], runs[runs.len() - 1]);
            assert!((right - left - round).abs() < 0.1, "{left} to {right}");
            #[expect(clippy::cast_precision_loss)]
            let pitch = round / bights as f64;
            for pair in runs[1..=bights].windows(2) {
                assert!(
                    (pair[1] - pair[0] - pitch).abs() < 0.1,
                    "{args:?}: {runs:?}"
                );
            }
            first.push((runs[1] - left) / pitch);
        }
        // Of an odd number of leads the top pins stand half a pitch on.
        let apart = (first[0] - first[1]).abs();
        assert!((apart - 0.5).abs() < 0.01, "{args:?}: {first:?}");
    }
}

#[test]
fn pins_of_an_even_knot_stand_one_above_the_other() {
    let folder = TempDir::new().unwrap();
    let args = ["strip", "--leads", "4", "--bights", "5", "--tube", "2in"];
    let page = Paint::read(&made(&folder, "even.png", &args));
    let [top, bottom] = BELOW_HOLES.map(|down| page.runs(down, 300.0));
    assert_eq!(top.len(), 7);
    for (top, bottom) in top.iter().zip(&bottom) {
        assert!((top - bottom).abs() < 0.05);
    }
}

/// Bights nested: a line for every row at its true distance, and the pins of a number in line on all.
/// Strips too high to stand one below the other have a page each.
#[test]
fn strips_of_nested_bights_have_the_marks_of_every_row() {
    let folder = TempDir::new().unwrap();
    for (name, nested, tube, more, holes) in [
        ("two.png", "2", "60mm", &[][..], [4, 4]),
        ("three.png", "3", "80mm", &["--hand", "left"], [4, 4]),
        ("rings.png", "2", "70mm", &["--rows", "8,16"], [8, 16]),
    ] {
        let knot = [
            "--leads", "3", "--bights", "4", "--nested", nested, "--tube", tube, "--cord", "3mm",
        ];
        let knot = [&knot[..], more].concat();
        let rig = rigged(&knot);
        let inner = rig["inner"].as_array().unwrap();
        let inside = inner.iter().map(|row| row["inside_mm"].as_f64().unwrap());
        let inside: Vec<f64> = [0.0].into_iter().chain(inside).collect();
        assert_eq!(inside.len().to_string(), nested);
        made(
            &folder,
            name,
            &[&["strip", "--dpi", "120"], &knot[..]].concat(),
        );
        let reach = inside[inside.len() - 1];
        let (first, last) = (62.0 + 30.0 * 0.56, 62.0 + 30.0 * 0.56 + reach);
        let stem = name.trim_end_matches(".png");
        assert!(!folder.path().join(format!("{stem}-3.png")).exists());
        for (page, is_top) in [(1, true), (2, false)] {
            let page = Paint::read(&folder.path().join(format!("{stem}-{page}.png")));
            let below = page.runs(62.0 + 30.0 + reach - 2.0, 120.0);
            let round = tube.trim_end_matches("mm").parse::<f64>().unwrap() * std::f64::consts::PI;
            assert_eq!(below.len(), 4 + 2, "{name}: {below:?}");
            let pins = &below[1..5];
            for pair in pins.windows(2) {
                assert!(
                    (pair[1] - pair[0] - round / 4.0).abs() < 0.1,
                    "{name}: {pins:?}"
                );
            }
            // Between two pins a line of dots meets the edges and the rows, and nothing else.
            let between = pins[2] + round / 4.0 * 0.35;
            let lines = page.down(between, 120.0, 60.0, 62.0 + 30.0 + reach + 1.0);
            let rows: Vec<f64> = inside
                .iter()
                .map(|inside| {
                    if is_top {
                        first + inside
                    } else {
                        last - inside
                    }
                })
                .collect();
            let mut expected = [&[62.0], &rows[..], &[62.0 + 30.0 + reach]].concat();
            expected.sort_by(f64::total_cmp);
            assert_eq!(
                lines.len(),
                expected.len(),
                "{name}: {lines:?} {expected:?}"
            );
            for (line, expected) in lines.iter().zip(&expected) {
                assert!(
                    (line - expected).abs() < 0.1,
                    "{name}: {lines:?} {expected:?}"
                );
            }
            // A little above the middle of its mark each pin of a row is met on the left and right.
            for (nth, row) in rows.iter().enumerate() {
                let across = page.runs(row - 1.2, 120.0);
                let holes = holes[nth.min(1)];
                let radius = 2.0_f64.min(0.3 * round / f64::from(holes));
                if radius < 1.4 {
                    continue;
                }
                let aside = (radius * radius - 1.2 * 1.2).sqrt();
                for pin in pins {
                    for mark in [pin - aside, pin + aside] {
                        assert!(
                            across.iter().any(|run| (run - mark).abs() < 0.25),
                            "{name}, row {nth}: {mark} {across:?}"
                        );
                    }
                }
            }
        }
    }
    // Without a cord nobody knows how far apart they stand: the marks of one row serve for all.
    let bare = [
        "strip", "--leads", "3", "--bights", "4", "--nested", "2", "--tube", "60mm", "--dpi", "120",
    ];
    let page = Paint::read(&made(&folder, "bare.png", &bare));
    for down in BELOW_HOLES {
        assert_eq!(page.runs(down, 120.0).len(), 4 + 2);
    }
}

/// What `marlinspeak rig --json` says.
fn rigged(args: &[&str]) -> serde_json::Value {
    let output = Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args([&["rig", "--json"], args].concat())
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env(
            "XDG_DATA_HOME",
            std::env::temp_dir().join("marlinspeak-none"),
        )
        .output_in_time();
    assert!(output.status.success(), "{output:?}");
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn a_long_strip_goes_on_where_the_page_before_overlaps() {
    let folder = TempDir::new().unwrap();
    let args = [
        "strip", "--leads", "5", "--bights", "16", "--tube", "200mm", "--dpi", "150",
    ];
    made(&folder, "long.png", &args);
    let round = 200.0 * std::f64::consts::PI;
    let mut pins: Vec<f64> = Vec::new();
    let mut from = 0.0;
    let mut end = 0.0;
    for nth in 1..=3 {
        let page = Paint::read(&folder.path().join(format!("long-{nth}.png")));
        assert_eq!((page.width, page.height), (1754, 1240));
        for run in page.runs(BELOW_HOLES[1], 150.0) {
            let at = from + run - 12.0;
            end = at;
            if !pins.iter().any(|pin| (pin - at).abs() < 0.1) {
                pins.push(at);
            }
        }
        // A page holds 273 mm, of which 15 come again.
        from += 273.0 - 15.0;
    }
    assert!(!folder.path().join("long-4.png").exists());
    assert!((end - round).abs() < 0.1);
    let pitch = round / 16.0;
    let expected: Vec<f64> = (0..16).map(|pin| pitch * (f64::from(pin) + 0.25)).collect();
    for at in expected {
        assert!(
            pins.iter().any(|pin| (pin - at).abs() < 0.1),
            "{at}: {pins:?}"
        );
    }
    // Besides the pins: both cuts, and on two pages the line where the next one goes.
    assert!(pins.len() <= 16 + 4, "{pins:?}");
}

#[test]
fn the_check_bar_is_50_mm_long() {
    let folder = TempDir::new().unwrap();
    for (name, dpi) in [("a.png", 150), ("b.png", 96)] {
        let dpi_text = dpi.to_string();
        let args = [&["strip", "--tube", "60mm", "--dpi", &dpi_text], &KNOT[..]].concat();
        let page = Paint::read(&made(&folder, name, &args));
        // A little above its line only its two ends are met.
        let runs = page.runs(210.0 - 26.0 - 2.0, f64::from(dpi));
        assert!((runs[1] - runs[0] - 50.0).abs() < 0.1, "{runs:?}");
    }
}

#[test]
fn a_png_says_its_size_and_its_dots() {
    let folder = TempDir::new().unwrap();
    for (name, more, (width, height), per_metre) in [
        ("a4.png", &[][..], (2480, 3508), 11811),
        (
            "letter.png",
            &["--paper", "letter"][..],
            (2550, 3300),
            11811,
        ),
        ("coarse.png", &["--dpi", "100"][..], (827, 1169), 3937),
    ] {
        let file = made(&folder, name, &[&["card"], &KNOT[..], more].concat());
        let page = Paint::read(&file);
        assert_eq!((page.width, page.height), (width, height), "{name}");
        assert_eq!(page.per_metre, per_metre, "{name}");
    }
}

/// Width and height of every page of a PDF, in points.
fn media_boxes(bytes: &[u8]) -> Vec<(f64, f64)> {
    let text: String = bytes.iter().map(|byte| char::from(*byte)).collect();
    text.match_indices("/MediaBox")
        .map(|(at, name)| {
            let rest = &text[at + name.len()..];
            let (open, close) = (rest.find('[').unwrap(), rest.find(']').unwrap());
            let corners: Vec<f64> = rest[open + 1..close]
                .split_whitespace()
                .map(|number| number.parse().unwrap())
                .collect();
            (corners[2] - corners[0], corners[3] - corners[1])
        })
        .collect()
}

#[test]
fn a_pdf_has_pages_of_the_true_size_and_its_faces_in_it() {
    let folder = TempDir::new().unwrap();
    let millimetre = 72.0 / 25.4;
    for (name, kind, more, (width, height), pages) in [
        (
            "card.pdf",
            "card",
            &["--passes", "3"][..],
            (210.0, 297.0),
            2,
        ),
        (
            "strip.pdf",
            "strip",
            &["--tube", "200mm"][..],
            (297.0, 210.0),
            3,
        ),
        (
            "stage.pdf",
            "stage",
            &["--paper", "letter", "--step", "9"][..],
            (279.4, 215.9),
            1,
        ),
    ] {
        let bytes = fs::read(made(&folder, name, &[&[kind], &KNOT[..], more].concat())).unwrap();
        let boxes = media_boxes(&bytes);
        assert_eq!(boxes.len(), pages, "{name}");
        for (wide, high) in boxes {
            assert!((wide / millimetre - width).abs() < 0.05, "{name}: {wide}");
            assert!((high / millimetre - height).abs() < 0.05, "{name}: {high}");
        }
        let holds = |name: &str| {
            bytes
                .windows(name.len())
                .any(|part| part == name.as_bytes())
        };
        assert!(holds("/FontFile3") && holds("B612-Bold") && holds("B612-Regular"));
    }
}

fn plan(leads: u16, bights: u16, passes: u16) -> Plan {
    let [leads, bights, passes] = [leads, bights, passes].map(|count| count.to_string());
    Plan::read(&leads, &bights, &passes, "1").unwrap()
}

fn labour(plan: &Plan) -> Labour {
    Labour::of(plan, None, Prices::default())
}

fn texts(pages: &[SheetPage]) -> Vec<&str> {
    pages.iter().flat_map(SheetPage::texts).collect()
}

/// All that is written on the pages, line after line: sentences are broken where a column ends.
fn in_one(pages: &[SheetPage]) -> String {
    texts(pages).join(" ")
}

#[test]
fn a_card_holds_every_leg_in_order_and_the_cautions() {
    let words = Words::english();
    let plan = plan(5, 6, 2);
    let pages = laid_out::pages(&paper::card(&plan, None, &labour(&plan), Paper::A4, &words));
    let all = texts(&pages);
    let ways: Vec<&&str> = all.iter().filter(|text| text.contains(" to ")).collect();
    let ways: Vec<&&&str> = ways
        .iter()
        .filter(|text| text.starts_with("Bottom ") || text.starts_with("Top "))
        .collect();
    assert_eq!(ways.len(), 24);
    assert_eq!(**ways[6], "Bottom 4 up to top 6");
    // 24 crossings, and in the second pass 24 with one cord and, doubled by then, some with two:
    // 2 × 24 meetings more with the cords of the first pass and 24 among themselves.
    let marks = |word: &str| {
        all.iter()
            .filter_map(|text| text.strip_prefix(word))
            .filter_map(|count| count.parse::<u32>().ok())
            .sum::<u32>()
    };
    assert_eq!(marks("OVER ") + marks("under "), 4 * 24);
    for caution in [
        "Never let it hold a person",
        "Hot knife or flame",
        "Hands tire",
    ] {
        assert!(in_one(&pages[..1]).contains(caution), "{caution}");
    }
    assert!(all.contains(&"Page 1 of 1"));
}

#[test]
fn a_card_says_what_the_work_takes_and_costs() {
    let words = Words::english();
    let plan = plan(5, 6, 2);
    let (pace, prices) = (
        TyingPace::new(60.0).unwrap(),
        Prices {
            metre: None,
            hour: Some(20.0),
        },
    );
    let labour = Labour::of(&plan, Some(pace), prices);
    let pages = laid_out::pages(&paper::card(&plan, None, &labour, Paper::A4, &words));
    // 24 legs and 34 tucks of 26⅔ seconds each, and eight tenths more for all that is not laying.
    let sentence = format!(
        "It takes {} tucks and about 45 min at your own pace, and costs 15.47.",
        plan.laying().tucks()
    );
    assert!(in_one(&pages).contains(&sentence), "{:?}", texts(&pages));
}

#[test]
fn a_card_says_which_holes_take_the_pins() {
    let words = Words::english();
    let plan = plan(5, 6, 1);
    let tube = Tube::ringed(Millimetres::parse("60mm").unwrap(), &[16, 12]).unwrap();
    let layout = pinning(&tube, plan.knot().lattice()).unwrap();
    let card = paper::card(
        &plan,
        Some((&tube, &layout)),
        &labour(&plan),
        Paper::A4,
        &words,
    );
    let pages = laid_out::pages(&card);
    for sentence in [
        "Bottom ring, row 2 of 12 holes: pin 1 in hole 1, each next pin 2 holes on.",
        "Top ring, row 2 of 12 holes: pin 1 in hole 2, each next pin 2 holes on.",
    ] {
        assert!(in_one(&pages).contains(sentence), "{:?}", texts(&pages));
    }
    let plain = Tube::plain(Millimetres::parse("60mm").unwrap());
    let layout = pinning(&plain, plan.knot().lattice()).unwrap();
    let card = paper::card(
        &plan,
        Some((&plain, &layout)),
        &labour(&plan),
        Paper::A4,
        &words,
    );
    let pages = laid_out::pages(&card);
    let sentence = "On a tube of 60 mm the pins stand 31.4 mm apart, measured round the tube.";
    assert!(in_one(&pages).contains(sentence));
}

/// A sentence with one kind of space, as its lines are put together again.
fn on_paper(sentence: &str) -> String {
    sentence.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A doubled knot of the loft, with all that comes after the last leg, on one page in every language.
#[test]
fn a_card_goes_from_the_pins_to_the_trimmed_ends_on_one_page() {
    for tag in Words::known() {
        let words = Words::load(Some(&tag.to_string())).unwrap();
        let plan = plan(5, 6, 2);
        let pages = laid_out::pages(&paper::card(&plan, None, &labour(&plan), Paper::A4, &words));
        assert_eq!(pages.len(), 1, "{tag}");
        let told = in_one(&pages);
        let script = Script::new(plan.clone(), AtOnce::default());
        for sentence in words
            .card_after(&script)
            .into_iter()
            .chain(words.card_cautions())
        {
            assert!(told.contains(&on_paper(&sentence)), "{tag}: {sentence}");
        }
        // Both ends: where each goes, and the picture of it.
        let ends = script.steps().filter(|step| {
            matches!(&step.what, What::Finish(finish) if matches!(finish.task, FinishTask::Tuck(_)))
        });
        for end in ends {
            let way = words.show(plan.knot(), &end).in_words();
            assert!(told.contains(&on_paper(&way)), "{tag}: {way}");
        }
    }
    // What is known of tube and cord is on it too.
    let setup = Setup::new(
        Tube::ringed(Millimetres::parse("45mm").unwrap(), &[14, 20]).unwrap(),
        Cord::new(Millimetres::parse("3.5mm").unwrap()),
    );
    let rigged = plan(5, 7, 2).with_setup(Some(setup));
    let words = Words::english();
    let pages = laid_out::pages(&paper::card(
        &rigged,
        None,
        &labour(&rigged),
        Paper::A4,
        &words,
    ));
    let told = in_one(&pages);
    assert!(
        told.contains("Pin rows ") && told.contains("Cut "),
        "{told}"
    );
}

#[test]
fn a_strip_says_how_far_apart_the_pins_stand_and_what_can_hurt() {
    let tube = Tube::ringed(Millimetres::parse("45mm").unwrap(), &[14, 20]).unwrap();
    let layout = pinning(&tube, plan(5, 7, 2).knot().lattice()).unwrap();
    let setup = Setup::new(
        tube.clone(),
        Cord::new(Millimetres::parse("3.5mm").unwrap()),
    );
    let known = plan(5, 7, 2).with_setup(Some(setup));
    let spacing = known.rig().unwrap().unwrap().laid.ring_spacing.get();
    for tag in Words::known() {
        let words = Words::load(Some(&tag.to_string())).unwrap();
        let told = |plan: &Plan| {
            let strips = paper::strip(plan, &tube, &layout, Paper::A4, &words);
            in_one(&laid_out::pages(&*strips))
        };
        assert!(
            told(&known).contains(&on_paper(&words.strip_cautions())),
            "{tag}"
        );
        // To a tenth, with the decimal sign of the language.
        let tenths = format!("{}", (spacing * 10.0).round() / 10.0);
        let known = told(&known).replace(',', ".");
        assert!(
            known.contains(&tenths) && !known.contains("--cord"),
            "{tag}: {known}"
        );
        assert!(told(&plan(5, 7, 2)).contains("--cord"), "{tag}");
    }
}

#[test]
fn nothing_on_a_page_runs_off_it() {
    let words = Words::english();
    for (leads, bights, passes) in [(2, 3, 1), (5, 6, 2), (21, 4, 1), (40, 41, 3), (99, 98, 1)] {
        let plan = plan(leads, bights, passes);
        for paper in [Paper::A4, Paper::Letter] {
            let pages = laid_out::pages(&paper::card(&plan, None, &labour(&plan), paper, &words));
            let page = &pages[pages.len() / 2];
            let image = page.image(72);
            let (width, height) = (image.width(), image.height());
            let white = |column, row| {
                let colour = image.pixel(column, row).unwrap();
                [colour.red, colour.green, colour.blue] == [255; 3]
            };
            // A margin of 8 mm is left at every edge.
            assert!((0..width).all(|x| (0..22).all(|y| white(x, y) && white(x, height - 1 - y))));
            assert!((0..height).all(|y| (0..22).all(|x| white(x, y) && white(width - 1 - x, y))));
        }
    }
}

#[test]
fn a_stage_shows_the_step_that_steps_counts() {
    let folder = TempDir::new().unwrap();
    let args =
        |step: &'static str| [&["stage", "--dpi", "100", "--step", step], &KNOT[..]].concat();
    let [one, other] = ["8", "9"].map(|step| made(&folder, &format!("{step}.png"), &args(step)));
    assert_ne!(fs::read(one).unwrap(), fs::read(other).unwrap());
    let standing = fs::read(folder.path().join("8.png")).unwrap();
    let with = |option| {
        let file = made(
            &folder,
            &format!("{option}.png"),
            &[&args("8")[..], &[option]].concat(),
        );
        fs::read(file).unwrap()
    };
    assert_ne!(with("--rolled-out"), standing);
    // Named by older command lines, where it was not what came without it.
    assert_eq!(with("--round"), standing);
}

#[test]
fn bad_input_gets_one_sentence() {
    let folder = TempDir::new().unwrap();
    let out = folder.path().join("x.png");
    let cases: [(&str, &[&str], &str); 11] = [
        (
            "stage",
            &["--step", "0"],
            "--step takes a step of this tie, 1 to 30, and “0” is not one: “marlinspeak steps” lists them.",
        ),
        (
            "stage",
            &["--step", "66"],
            "--step takes a step of this tie, 1 to 30, and “66” is not one: “marlinspeak steps” lists them.",
        ),
        (
            "stage",
            &["--step", "many"],
            "--step takes a step of this tie, 1 to 30, and “many” is not one: “marlinspeak steps” lists them.",
        ),
        (
            "strip",
            &[],
            "A strip is as long as the tube is round, and no tube is named: add --tube with its diameter, such as --tube 48mm.",
        ),
        (
            "strip",
            &["--tube", "thick"],
            "“thick” is not a tube: give its diameter, such as 45mm. Tubes that you keep by name can be given too; none is kept yet.",
        ),
        (
            "strip",
            &["--tube", "50m"],
            "A strip for this tube would take more than 100 pages: check that --tube is the diameter, such as --tube 48mm.",
        ),
        (
            "strip",
            &["--tube", "48mm", "--rows", "16"],
            "No row of this tube (16 holes) can be shared evenly among 6 bights: it takes 2, 4, 8, 16 bights.",
        ),
        (
            "card",
            &["--rows", "12"],
            "Rows belong to a tube and none is given: add its diameter, such as 45mm.",
        ),
        (
            "card",
            &["--dpi", "1200"],
            "--dpi takes a whole number from 72 to 600, and “1200” is not one: try --dpi 300.",
        ),
        (
            "card",
            &["--paper", "a5"],
            "“a5” is not a choice for --paper: it takes a4, letter; try --paper a4.",
        ),
        (
            "card",
            &["--tube", "48mm", "--rows", "a"],
            "Rows are whole numbers of holes and “a” is something else: give one for each row of a ring, such as 14,20.",
        ),
    ];
    for (kind, more, sentence) in cases {
        let args = [&[kind], &KNOT[..], more].concat();
        assert_eq!(refused(&args, Some(&out)), (2, sentence.to_owned()));
    }
    let card = [&["card"], &KNOT[..]].concat();
    let (code, sentence) = refused(&card, None);
    assert_eq!(code, 2);
    assert!(sentence.starts_with("There is nowhere to put the sheet: add --out"));
    let (code, sentence) = refused(&card, Some(&folder.path().join("card")));
    assert_eq!(code, 2);
    assert!(sentence.ends_with("end the name in “.png” or “.pdf”, or add --pdf."));
    let large = ["card", "--leads", "999", "--bights", "998"];
    // As many crossings as a number of 32 bits takes, and a thousand more.
    let larger = [
        "card", "--leads", "718", "--bights", "913", "--nested", "9", "--passes", "9",
    ];
    for args in [&large[..], &larger] {
        let (code, sentence) = refused(args, Some(&out));
        assert_eq!(code, 2);
        assert!(sentence.starts_with("A card of this knot would have more than 150,000 crossings"));
    }
    assert_eq!(
        fs::read_dir(folder.path()).unwrap().count(),
        0,
        "nothing was written"
    );
}

#[test]
fn a_file_that_is_there_is_left_alone_until_it_may_be_replaced() {
    let folder = TempDir::new().unwrap();
    let args = [&["stage", "--dpi", "72"], &KNOT[..]].concat();
    let file = folder.path().join("mine.png");
    fs::write(&file, "mine").unwrap();
    let (code, sentence) = refused(&args, Some(&file));
    assert_eq!(code, 2);
    assert!(
        sentence.ends_with(
            "is there already and is left alone: choose another name, or add --replace."
        )
    );
    assert_eq!(fs::read(&file).unwrap(), b"mine");
    made(&folder, "mine.png", &[&args[..], &["--replace"]].concat());
    Paint::read(&file);
    // Of several pages none is written when one is in the way.
    fs::write(folder.path().join("card-2.png"), "mine").unwrap();
    let card = [&["card", "--passes", "3"], &KNOT[..]].concat();
    let (code, sentence) = refused(&card, Some(&folder.path().join("card.png")));
    assert_eq!(code, 2);
    assert!(sentence.contains("card-2.png"));
    assert!(!folder.path().join("card-1.png").exists());
}

#[test]
fn a_path_that_cannot_be_written_is_named() {
    let folder = TempDir::new().unwrap();
    let args = [&["stage", "--dpi", "72"], &KNOT[..]].concat();
    for name in ["none/there.png", "none/there.pdf"] {
        let (code, sentence) = refused(&args, Some(&folder.path().join(name)));
        assert_eq!(code, 1);
        assert!(
            sentence.contains(name) && sentence.contains("could not be written"),
            "{sentence}"
        );
    }
}
