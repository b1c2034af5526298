//! Photographs as cameras write them: of three kinds, turned, large, damaged.

use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};

use image::{ImageFormat, Rgb, RgbImage};
use marlinspeak::shelf::{Photograph, PhotographError};
use tempfile::TempDir;

const RED: Rgb<u8> = Rgb([220, 20, 20]);
const BLUE: Rgb<u8> = Rgb([20, 20, 220]);

/// Forty wide and twenty high, its left half red and its right half blue.
fn picture() -> RgbImage {
    RgbImage::from_fn(40, 20, |x, _| if x < 20 { RED } else { BLUE })
}

fn bytes(format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    picture().write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

fn written(folder: &TempDir, name: &str, bytes: &[u8]) -> PathBuf {
    let file = folder.path().join(name);
    fs::write(&file, bytes).unwrap();
    file
}

/// A JPEG that says how the camera was held (Exif 2.32, tag 0x0112).
fn held(orientation: u8) -> Vec<u8> {
    let mut exif = b"Exif\0\0II*\0\x08\0\0\0\x01\0".to_vec();
    exif.extend([
        0x12,
        0x01,
        3,
        0,
        1,
        0,
        0,
        0,
        orientation,
        0,
        0,
        0,
        0,
        0,
        0,
        0,
    ]);
    let length = u16::try_from(exif.len() + 2).unwrap().to_be_bytes();
    let plain = bytes(ImageFormat::Jpeg);
    let segment = [&[0xFF, 0xE1][..], &length, &exif].concat();
    [&plain[..2], &segment, &plain[2..]].concat()
}

fn is_near(pixel: &[u8], colour: Rgb<u8>) -> bool {
    pixel
        .iter()
        .zip(colour.0)
        .all(|(one, other)| one.abs_diff(other) < 40)
}

fn at(photograph: &Photograph, x: u32, y: u32) -> &[u8] {
    let at = 4 * (y * photograph.width + x) as usize;
    &photograph.pixels[at..at + 3]
}

fn read(file: &Path) -> Photograph {
    Photograph::read(file, 100).unwrap_or_else(|error| panic!("{}: {error}", file.display()))
}

#[test]
fn the_three_kinds_are_read_whatever_the_name_ends_in() {
    let folder = TempDir::new().unwrap();
    for (format, name) in [
        (ImageFormat::Jpeg, "one"),
        (ImageFormat::Png, "two.jpg"),
        (ImageFormat::WebP, "three.jpeg"),
    ] {
        let photograph = read(&written(&folder, name, &bytes(format)));
        assert_eq!(
            (photograph.width, photograph.height),
            (40, 20),
            "{format:?}"
        );
        assert!(is_near(at(&photograph, 3, 10), RED), "{format:?}");
        assert!(is_near(at(&photograph, 36, 10), BLUE), "{format:?}");
    }
}

#[test]
fn a_photograph_stands_upright_however_the_camera_was_held() {
    let folder = TempDir::new().unwrap();
    // Exif: 3 is half a turn; 6 and 8 are held on one side and on the other.
    for (orientation, size, red, blue) in [
        (1, (40, 20), (3, 10), (36, 10)),
        (3, (40, 20), (36, 10), (3, 10)),
        (6, (20, 40), (10, 3), (10, 36)),
        (8, (20, 40), (10, 36), (10, 3)),
    ] {
        let file = written(&folder, "turned.jpg", &held(orientation));
        let photograph = read(&file);
        assert_eq!((photograph.width, photograph.height), size, "{orientation}");
        assert!(is_near(at(&photograph, red.0, red.1), RED), "{orientation}");
        assert!(
            is_near(at(&photograph, blue.0, blue.1), BLUE),
            "{orientation}"
        );
    }
}

#[test]
fn it_is_made_small_and_keeps_its_shape() {
    let folder = TempDir::new().unwrap();
    let file = written(&folder, "small.png", &bytes(ImageFormat::Png));
    let photograph = Photograph::read(&file, 10).unwrap();
    assert_eq!((photograph.width, photograph.height), (10, 5));
    assert_eq!(photograph.pixels.len(), 4 * 10 * 5);
}

#[test]
fn what_ends_too_soon_is_damaged_and_nothing_panics() {
    let folder = TempDir::new().unwrap();
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let whole = bytes(format);
        let mut told = 0;
        for length in 0..whole.len() {
            let file = written(&folder, "cut", &whole[..length]);
            match Photograph::read(&file, 100) {
                // A few last bytes carry nothing of the picture.
                Ok(photograph) => assert_eq!(photograph.width, 40),
                Err(PhotographError::Damaged(_) | PhotographError::UnknownKind) => told += 1,
                Err(other) => panic!("{format:?} cut at {length}: {other}"),
            }
        }
        assert!(
            told * 2 > whole.len(),
            "{format:?}: {told} of {}",
            whole.len()
        );
    }
}

#[test]
fn what_would_take_too_much_memory_is_refused_before_it_is_read() {
    let folder = TempDir::new().unwrap();
    let mut huge = bytes(ImageFormat::Png);
    // Width and height of the header, and its checksum (W3C, PNG, 11.2.1 and 5.3).
    huge[16..24].copy_from_slice(&[0, 0, 0xEA, 0x60, 0, 0, 0xEA, 0x60]);
    let checksum = crc32fast::hash(&huge[12..29]).to_be_bytes();
    huge[29..33].copy_from_slice(&checksum);
    let file = written(&folder, "huge.png", &huge);
    let told = Photograph::read(&file, 100);
    assert!(matches!(told, Err(PhotographError::TooLarge)), "{told:?}");
    let told = Photograph::read(folder.path(), 100);
    assert!(
        matches!(told, Err(PhotographError::UnknownKind)),
        "{told:?}"
    );
}
