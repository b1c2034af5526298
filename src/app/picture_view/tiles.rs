//! A finished image on the window, in tiles: only those that changed are handed over anew, so the
//! toolkit converts and paints no more than them.
//!
//! Tiles, not squares: the toolkit repaints rectangle by rectangle, and joins neighbours into one
//! only where nothing but them lies in it.

use std::ops::Range;

use iced::advanced::image::{FilterMethod, Handle, Image, Renderer as _};
use iced::{Point, Rectangle, Renderer, Size};

use crate::app::widgets::repaint_layer::Repaints;
use crate::picture::Painter;

/// Dots of a strip across, or fewer in the last.
const ACROSS: u32 = 96;

/// A strip lies a hair to the right of and below its dot: the toolkit drops fractions, and a
/// fraction lost in rounding would move it by a whole dot.
const HAIR: f32 = 0.02;

/// The tiles as they were handed over.
#[derive(Debug, Default)]
pub struct Tiles {
    /// Of the whole image.
    size: (u32, u32),
    /// Dots of the screen for each pixel of the layout.
    dots: f32,
    /// From the left, or from the top where the image is higher than wide.
    handles: Vec<Handle>,
    /// Turned when there is little that stays.
    turns: Repaints,
}

impl Tiles {
    /// Takes over what was painted last, for a screen with so many dots for each pixel of the
    /// layout. It is told of every painting, in order.
    pub fn take(&mut self, painter: &Painter, dots: f32) {
        self.dots = dots;
        let image = painter.image();
        if self.size != (image.width(), image.height()) {
            self.size = (image.width(), image.height());
            self.handles.clear();
        }
        let known = self.handles.len();
        let mut fresh = 0;
        for (nth, (columns, rows)) in parts(self.size).enumerate() {
            if nth < known && !painter.has_changed(&columns, &rows) {
                continue;
            }
            fresh += 1;
            let [width, height] = [&columns, &rows].map(|range| range.end - range.start);
            let handle = Handle::from_rgba(width, height, image.part(&columns, &rows));
            if nth < known {
                self.handles[nth] = handle;
            } else {
                self.handles.push(handle);
            }
        }
        if 2 * fresh > self.handles.len() {
            self.turns.turn();
        }
    }

    /// Puts them on the window, dot for dot, as far as these bounds go, and what of them is seen: both
    /// are on whole dots.
    pub fn draw(&self, renderer: &mut Renderer, bounds: Rectangle, seen: Rectangle) {
        self.turns.draw(seen, renderer, |renderer| {
            for (handle, (columns, rows)) in self.handles.iter().zip(parts(self.size)) {
                // Its dots are the screen's: nothing is to be smoothed.
                let strip = Image::new(handle.clone()).filter_method(FilterMethod::Nearest);
                let place = place(&columns, &rows, self.dots) + (bounds.position() - Point::ORIGIN);
                renderer.draw_image(strip, place, seen);
            }
        });
    }
}

/// The columns and rows of every strip of an image.
fn parts((width, height): (u32, u32)) -> impl Iterator<Item = (Range<u32>, Range<u32>)> {
    let length = width.max(height);
    let starts = (0..length).step_by(ACROSS as usize);
    starts.map(move |start| {
        let strip = start..(start + ACROSS).min(length);
        if width >= height {
            (strip, 0..height)
        } else {
            (0..width, strip)
        }
    })
}

#[expect(clippy::cast_precision_loss, reason = "a window has few thousand dots")]
fn place(columns: &Range<u32>, rows: &Range<u32>, dots: f32) -> Rectangle {
    let [x, y] = [columns.start, rows.start].map(|start| (start as f32 + HAIR) / dots);
    let [width, height] = [columns, rows].map(|range| (range.end - range.start) as f32 / dots);
    Rectangle::new(Point::new(x, y), Size::new(width, height))
}
