//! How large the window is, and how much larger than usual everything in it is drawn.

use std::cell::Cell;

use iced::{Point, Size};

use super::text_layout::type_size;
use crate::settings::ScreenGeometry;

/// Size and scale of the window.
#[derive(Debug)]
pub struct WindowMetrics {
    /// The size in pixels, before anything is drawn larger.
    size: Size,
    monitor_width: Option<f32>,
    /// Dots of the screen for each of those pixels.
    density: f32,
    /// The factor the window draws by until it next asks for it.
    scale_in_effect: Cell<f32>,
}

impl Default for WindowMetrics {
    /// Nothing is drawn larger before the window has told its size: it would be opened larger
    /// too.
    fn default() -> Self {
        Self {
            size: Size::ZERO,
            monitor_width: None,
            density: 1.0,
            scale_in_effect: Cell::new(1.0),
        }
    }
}

impl WindowMetrics {
    /// The window has this size, in logical pixels of the scale in effect; whether another scale
    /// follows from it.
    pub fn resized(&mut self, size: Size, screen: ScreenGeometry) -> bool {
        let scale = self.scale(screen);
        let seen_before = self.size != Size::ZERO;
        self.size = size * self.scale_in_effect.get();
        if !seen_before {
            let Size { width, height } = self.size;
            log::info!("window open, {width} × {height}");
        }
        #[expect(clippy::float_cmp, reason = "of one size comes one scale")]
        let is_other = scale != self.scale(screen);
        is_other
    }

    /// The size in pixels, before anything is drawn larger; none before the window has told it.
    pub fn size(&self) -> Option<Size> {
        (self.size != Size::ZERO).then_some(self.size)
    }

    /// A place in logical pixels of the scale in effect, in pixels before anything is drawn larger.
    pub fn before_scaling(&self, place: Point) -> Point {
        let scale = self.scale_in_effect.get();
        Point::new(place.x * scale, place.y * scale)
    }

    /// The monitor is so many pixels wide, if that is known.
    pub const fn set_monitor_width(&mut self, width: Option<f32>) {
        self.monitor_width = width;
    }

    /// The screen has so many dots for each pixel of the window's size.
    pub const fn set_density(&mut self, density: f32) {
        self.density = density;
    }

    /// Dots of the screen for each pixel of the window's size.
    pub const fn density(&self) -> f32 {
        self.density
    }

    /// How much larger than 1 everything is drawn, for the tyer's distance; the window asks, and
    /// draws by it from now on.
    pub fn take_scale(&self, screen: ScreenGeometry) -> f32 {
        let scale = self.scale(screen);
        self.scale_in_effect.set(scale);
        scale
    }

    /// Dots of the screen for each logical pixel.
    pub fn dots(&self, screen: ScreenGeometry) -> f32 {
        self.scale(screen) * self.density
    }

    /// How much larger than 1 everything should be drawn, whatever the window draws by now.
    fn scale(&self, screen: ScreenGeometry) -> f32 {
        let wanted = type_size::scale(screen, self.monitor_width);
        type_size::within(wanted, self.size)
    }
}
