//! Moving pictures: read back from the files that the command writes.

use crate::in_time;
use crate::moving;

use in_time::InTime as _;
use moving::{frames_of_png, lay};
use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use gif::{ColorOutput, DecodeOptions};
use image_webp::WebPDecoder;
use marlinspeak::guide::{AtOnce, FinishTask, Plan, Script, What};
use tempfile::TempDir;

fn reel(args: &[&str], out: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_marlinspeak"))
        .args(["sheet", "reel", "--leads", "3", "--bights", "4"])
        .args(args)
        .arg("--out")
        .arg(out)
        .env("LC_ALL", "C")
        .env("XDG_CONFIG_HOME", "/nonexistent")
        .env("XDG_DATA_HOME", "/nonexistent")
        .stdin(Stdio::null())
        .output_in_time()
}

fn made(folder: &TempDir, name: &str, args: &[&str]) -> PathBuf {
    let file = folder.path().join(name);
    let output = reel(args, &file);
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success() && errors.is_empty(), "{errors}");
    file
}

/// A moving picture as it is seen: every frame whole, with the hundredths of a second that it
/// stands.
struct Seen {
    width: usize,
    frames: Vec<(Vec<u8>, u32)>,
}

fn read_png(file: &Path) -> Seen {
    let frames = frames_of_png(file);
    Seen {
        width: frames[0].0.width,
        frames: frames
            .into_iter()
            .map(|(pixels, stands)| (pixels.rgb, stands))
            .collect(),
    }
}

fn read_gif(file: &Path) -> Seen {
    let mut options = DecodeOptions::new();
    options.set_color_output(ColorOutput::RGBA);
    let mut decoder = options.read_info(fs::File::open(file).unwrap()).unwrap();
    let width = usize::from(decoder.width());
    let mut canvas = vec![0; 3 * width * usize::from(decoder.height())];
    let mut frames = Vec::new();
    while let Some(frame) = decoder.read_next_frame().unwrap() {
        let part: Vec<u8> = frame
            .buffer
            .chunks(4)
            .flat_map(|pixel| pixel[..3].to_vec())
            .collect();
        let [left, top, across] = [frame.left, frame.top, frame.width].map(usize::from);
        lay(&mut canvas, width, [left, top, across], &part);
        frames.push((canvas.clone(), frame.delay.into()));
    }
    Seen { width, frames }
}

fn read_webp(file: &Path) -> Seen {
    let mut decoder = WebPDecoder::new(Cursor::new(fs::read(file).unwrap())).unwrap();
    assert!(decoder.is_animated() && !decoder.has_alpha());
    let (width, height) = decoder.dimensions();
    let mut frames = Vec::new();
    for _ in 0..decoder.num_frames() {
        let mut canvas = vec![0; 3 * width as usize * height as usize];
        let milliseconds = decoder.read_frame(&mut canvas).unwrap();
        frames.push((canvas, milliseconds / 10));
    }
    Seen {
        width: width as usize,
        frames,
    }
}

#[test]
fn the_three_kinds_of_file_show_the_same_tie() {
    let folder = TempDir::new().unwrap();
    let args = ["--width", "320"];
    let png = read_png(&made(&folder, "tie.png", &args));
    let webp = read_webp(&made(&folder, "tie.webp", &args));
    let gif = read_gif(&made(&folder, "tie.gif", &args));
    // A title, the cautions, eight legs of two crossings each, and what comes before and after.
    assert!(png.frames.len() > 2 + 8 * 2 + 5, "{}", png.frames.len());
    assert_eq!((png.width, webp.width, gif.width), (320, 320, 320));
    assert_eq!(png.frames.len(), webp.frames.len());
    assert_eq!(png.frames.len(), gif.frames.len());
    for (nth, ((png, webp), gif)) in png
        .frames
        .iter()
        .zip(&webp.frames)
        .zip(&gif.frames)
        .enumerate()
    {
        assert!(png == webp, "frame {nth} differs without loss");
        assert_eq!(png.1, gif.1, "frame {nth}");
        // Of 256 colours no flat one is off, and no mixture far.
        let pairs = || png.0.iter().zip(&gif.0);
        let off = pairs().filter(|(one, other)| one != other).count();
        let most = pairs().map(|(one, other)| one.abs_diff(*other)).max();
        assert!(off * 10 < png.0.len(), "frame {nth}: {off}");
        assert!(most < Some(64), "frame {nth}: {most:?}");
    }
}

#[test]
fn each_frame_stands_long_enough_to_be_read_and_the_picture_stands_still() {
    let folder = TempDir::new().unwrap();
    let seen = read_png(&made(&folder, "tie.png", &["--width", "320"]));
    let moving = |(_, hundredths): &&(Vec<u8>, u32)| *hundredths == 40;
    // All crossings of a leg, and of an end that is tucked, but the last are laid before it stands.
    let script = Script::new(Plan::read("3", "4", "1", "1").unwrap(), AtOnce::WholeLeg);
    let crossings = script.steps().map(|step| match step.what {
        What::Lay(lay) => lay.crossings.len().saturating_sub(1),
        What::Finish(finish) => match finish.task {
            FinishTask::Tuck(tuck) => tuck.crossings.len().saturating_sub(1),
            _ => 0,
        },
        _ => 0,
    });
    assert_eq!(
        seen.frames.iter().filter(moving).count(),
        crossings.sum::<usize>()
    );
    let standing = seen.frames.iter().filter(|frame| !moving(frame));
    assert!(standing.clone().all(|(_, hundredths)| *hundredths >= 200));
    // While a cord moves the words beside it stay: the left two fifths of every row.
    let words = |frame: &[u8]| -> Vec<u8> {
        let rows = frame.chunks(3 * seen.width);
        rows.flat_map(|row| row[..3 * seen.width * 2 / 5].to_vec())
            .collect()
    };
    for pair in seen.frames.windows(2).filter(|pair| pair[0].1 == 40) {
        assert!(words(&pair[0].0) == words(&pair[1].0));
        assert!(pair[0].0 != pair[1].0);
    }
}

#[test]
fn what_cannot_be_made_is_told_in_one_sentence_and_leaves_no_file() {
    let folder = TempDir::new().unwrap();
    let refused = |name: &str, args: &[&str]| {
        let file = folder.path().join(name);
        let output = reel(args, &file);
        assert!(!file.exists(), "{name}");
        let told = String::from_utf8(output.stderr).unwrap();
        assert_eq!(told.lines().count(), 1, "{told}");
        (output.status.code().unwrap(), told)
    };
    let (code, told) = refused("tie.pdf", &[]);
    assert_eq!(code, 2);
    assert!(told.contains("“.gif”, “.png” or “.webp”"), "{told}");
    let (code, told) = refused("tie.gif", &["--width", "319"]);
    assert_eq!(code, 2);
    assert!(told.contains("from 320 to 1,920"), "{told}");
    let (code, told) = refused("no/tie.gif", &["--width", "320"]);
    assert_eq!(code, 1);
    assert!(told.contains("could not be written"), "{told}");
    let file = made(&folder, "kept.gif", &["--width", "320"]);
    let before = fs::read(&file).unwrap();
    let output = reel(&["--width", "320", "--rolled-out"], &file);
    assert_eq!(output.status.code(), Some(2));
    assert_eq!(fs::read(&file).unwrap(), before);
}
