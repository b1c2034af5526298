//! The 256 colours of a file that has no more.
//!
//! A drawing is of few flat colours and of the mixtures at their edges. The colours met most often
//! are kept as they are, so that no ground flickers; a mixture becomes the nearest of them.

use std::collections::HashMap;

use crate::picture::raster::Image;

pub(super) type Rgb = [u8; 3];

/// How many colours a file may have.
const MOST: usize = 256;
/// Colours whose channels differ by less than this in sum are not told apart.
const ALIKE: u32 = 9;

/// A choice of colours, and what each colour met so far becomes.
pub(super) struct ColourTable {
    colours: Vec<Rgb>,
    known: HashMap<Rgb, u8>,
}

impl ColourTable {
    /// The colours met most often in these images.
    pub fn of(samples: &[Image]) -> Self {
        let mut counts: HashMap<Rgb, u32> = HashMap::new();
        for pixel in samples.iter().flat_map(|image| image.pixels().chunks(4)) {
            *counts.entry(rgb(pixel)).or_default() += 1;
        }
        let mut met: Vec<(Rgb, u32)> = counts.into_iter().collect();
        // Equally frequent colours are sorted by their value, since a hash map has another order in
        // every run.
        met.sort_unstable_by_key(|&(colour, count)| (std::cmp::Reverse(count), colour));
        let mut colours: Vec<Rgb> = Vec::with_capacity(MOST);
        for (colour, _) in met {
            if colours.len() == MOST {
                break;
            }
            if colours
                .iter()
                .all(|&taken| distance(taken, colour) >= ALIKE)
            {
                colours.push(colour);
            }
        }
        Self {
            colours,
            known: HashMap::new(),
        }
    }

    /// Red, green and blue of each colour in turn.
    pub fn bytes(&self) -> Vec<u8> {
        self.colours.concat()
    }

    /// The number of the nearest colour to this pixel.
    pub fn nearest(&mut self, pixel: &[u8]) -> u8 {
        let colour = rgb(pixel);
        let colours = &self.colours;
        *self.known.entry(colour).or_insert_with(|| {
            let all = (0..=u8::MAX).zip(colours);
            let best = all.min_by_key(|(_, taken)| distance(**taken, colour));
            best.map_or(0, |(nth, _)| nth)
        })
    }
}

fn rgb(pixel: &[u8]) -> Rgb {
    let channel = |nth: usize| pixel.get(nth).copied().unwrap_or_default();
    [channel(0), channel(1), channel(2)]
}

fn distance(one: Rgb, other: Rgb) -> u32 {
    one.iter()
        .zip(other)
        .map(|(one, other)| u32::from(one.abs_diff(other)))
        .sum()
}
