//! A picture of a screen, and whether anything is to be seen on it.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::collections::HashMap;
use std::fmt;

/// A picture in dots, row by row from the top.
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    /// How many dots stand in a row.
    pub width: usize,
    /// How many rows there are.
    pub height: usize,
    /// Red, green and blue of each.
    pub dots: Vec<[u8; 3]>,
}

impl Picture {
    /// Reads what the Netpbm project calls a PPM of its plain binary form, P6 (`ppm(5)` of its manual).
    pub fn of_ppm(bytes: &[u8]) -> Self {
        let mut at = 0;
        let mut word = || {
            let length = bytes[at..]
                .iter()
                .position(u8::is_ascii_whitespace)
                .unwrap();
            let word = std::str::from_utf8(&bytes[at..at + length]).unwrap();
            at += length + 1;
            word
        };
        assert_eq!(word(), "P6");
        let [width, height, most] = [(); 3].map(|()| word().parse::<usize>().unwrap());
        assert_eq!(most, 255, "a byte for each colour");
        let (dots, rest) = bytes[at..].as_chunks::<3>();
        assert!(rest.is_empty() && dots.len() == width * height);
        Self {
            width,
            height,
            dots: dots.to_vec(),
        }
    }

    /// The share of the dots that are not of the commonest colour, and how many colours there are.
    pub fn drawn(&self) -> (f64, usize) {
        let mut colours: HashMap<[u8; 3], u32> = HashMap::new();
        for dot in &self.dots {
            *colours.entry(*dot).or_default() += 1;
        }
        let commonest = colours.values().copied().max().unwrap_or(0);
        let all = u32::try_from(self.dots.len()).unwrap();
        (1.0 - f64::from(commonest) / f64::from(all), colours.len())
    }

    /// Whether more than a plain ground is to be seen: letters alone cover some of the hundred dots, with
    /// edges in between of many shades.
    pub fn shows_something(&self) -> bool {
        let (share, colours) = self.drawn();
        share > 0.02 && colours > 20
    }

    /// The share of the dots that differ.
    pub fn difference(&self, other: &Self) -> f64 {
        assert_eq!(
            [self.width, self.height],
            [other.width, other.height],
            "pictures of one size"
        );
        let pairs = self.dots.iter().zip(&other.dots);
        let differ = u32::try_from(pairs.filter(|(one, other)| one != other).count()).unwrap();
        f64::from(differ) / f64::from(u32::try_from(self.dots.len()).unwrap())
    }

    /// Whether every two by two dots are alike: what was drawn for half as many, and blown up.
    pub fn is_blown_up(&self) -> bool {
        self.dots.chunks_exact(2 * self.width).all(|rows| {
            let (upper, lower) = rows.split_at(self.width);
            upper == lower
                && upper
                    .as_chunks::<2>()
                    .0
                    .iter()
                    .all(|[one, other]| one == other)
        })
    }
}

impl fmt::Debug for Picture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (share, colours) = self.drawn();
        let Self { width, height, .. } = self;
        write!(f, "{width} × {height}, {share:.3} drawn, {colours} colours")
    }
}
