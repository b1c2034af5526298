//! Outlines on the sheet.

use super::sheet_point::SheetPoint;

/// Closed outlines on the sheet: the corners of all of them in one list, since there are thousands
/// in a picture and most have four.
#[derive(Clone, Debug, Default)]
pub struct Outlines {
    corners: Vec<SheetPoint>,
    /// Where each outline ends among the corners.
    ends: Vec<usize>,
}

impl From<&[SheetPoint]> for Outlines {
    /// One outline.
    fn from(corners: &[SheetPoint]) -> Self {
        let mut outlines = Self::default();
        outlines.add(|outline| outline.extend_from_slice(corners));
        outlines
    }
}

impl Outlines {
    /// None yet, with room for so many of four corners.
    pub fn with_capacity(outlines: usize) -> Self {
        Self {
            corners: Vec::with_capacity(4 * outlines),
            ends: Vec::with_capacity(outlines),
        }
    }

    /// Adds an outline with the corners that `draw` appends.
    pub fn add(&mut self, draw: impl FnOnce(&mut Vec<SheetPoint>)) {
        let first = self.corners.len();
        draw(&mut self.corners);
        if self.corners.len() > first {
            self.ends.push(self.corners.len());
        }
    }

    /// Keeps the first so many.
    pub fn truncate(&mut self, outlines: usize) {
        self.ends.truncate(outlines);
        self.corners
            .truncate(self.ends.last().copied().unwrap_or(0));
    }

    /// The corners of each outline.
    pub fn iter(&self) -> impl Iterator<Item = &[SheetPoint]> {
        let mut first = 0;
        self.ends.iter().map(move |&end| {
            let outline = &self.corners[first..end];
            first = end;
            outline
        })
    }

    /// How many elements a path along all of them has.
    pub fn steps(&self) -> usize {
        self.corners.len() + self.ends.len()
    }
}
