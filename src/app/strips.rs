//! A finished image on the window, in strips: only those that changed are handed over anew, so the
//! toolkit converts and paints no more than them.
//!
//! Strips, not squares: the toolkit repaints rectangle by rectangle, and joins neighbours into one
//! only where nothing but them lies in it.

use std::ops::Range;

use iced::advanced::image::{FilterMethod, Handle};
use iced::widget::canvas::{Frame, Image};
use iced::{Point, Rectangle, Size};

use crate::picture::Painter;

/// Dots of a strip across, or fewer in the last.
const ACROSS: u32 = 96;

/// A strip lies a hair to the right of and below its dot: the toolkit drops fractions, and a
/// fraction lost in rounding would move it by a whole dot.
const HAIR: f32 = 0.02;

/// The strips as they were handed over.
#[derive(Debug, Default)]
pub struct Strips {
    /// Of the whole image.
    size: (u32, u32),
    /// From the left, or from the top where the image is higher than wide.
    handles: Vec<Handle>,
}

impl Strips {
    /// Shows what was painted last, dot for dot, on a screen with so many dots for each pixel of
    /// the layout. It is told of every painting, in order.
    pub fn show(&mut self, painter: &Painter, dots: f32, frame: &mut Frame) {
        let image = painter.image();
        let (width, height) = (image.width(), image.height());
        if self.size != (width, height) {
            self.size = (width, height);
            self.handles.clear();
        }
        let is_wide = width >= height;
        for (nth, strip) in strips(width.max(height)).enumerate() {
            let (columns, rows) = if is_wide {
                (strip, 0..height)
            } else {
                (0..width, strip)
            };
            let is_known = self.handles.len() > nth;
            if !is_known || painter.has_changed(&columns, &rows) {
                let [width, height] = [&columns, &rows].map(|range| range.end - range.start);
                let handle = Handle::from_rgba(width, height, image.part(&columns, &rows));
                if is_known {
                    self.handles[nth] = handle;
                } else {
                    self.handles.push(handle);
                }
            }
            // Its dots are the screen's: nothing is to be smoothed.
            let strip = Image::new(self.handles[nth].clone()).filter_method(FilterMethod::Nearest);
            frame.draw_image(place(&columns, &rows, dots), strip);
        }
    }
}

fn strips(length: u32) -> impl Iterator<Item = Range<u32>> {
    let starts = (0..length).step_by(ACROSS as usize);
    starts.map(move |start| start..(start + ACROSS).min(length))
}

#[expect(clippy::cast_precision_loss, reason = "a window has few thousand dots")]
fn place(columns: &Range<u32>, rows: &Range<u32>, dots: f32) -> Rectangle {
    let [x, y] = [columns.start, rows.start].map(|start| (start as f32 + HAIR) / dots);
    let [width, height] = [columns, rows].map(|range| (range.end - range.start) as f32 / dots);
    Rectangle::new(Point::new(x, y), Size::new(width, height))
}
