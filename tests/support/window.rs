//! The window without a window: what it would show, as pixels.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::path::Path;
use std::time::Instant;

use iced::advanced::renderer::Headless as _;
use iced::theme::Base;
use iced::window::RedrawRequest;
use iced::{Element, Size, Theme};
use iced_runtime::user_interface::{Cache, UserInterface};

use crate::frames;

/// A software renderer with the faces of the app.
pub struct Pane {
    renderer: iced::Renderer,
    size: (u32, u32),
    /// How much larger than usual everything is drawn.
    scale: f32,
}

impl Pane {
    /// A pane of so many pixels.
    pub fn new(width: u32, height: u32) -> Self {
        Self {
            renderer: frames::renderer(),
            size: (width, height),
            scale: 1.0,
        }
    }

    /// The same with everything drawn larger by a factor.
    pub fn drawn_larger(self, scale: f32) -> Self {
        Self { scale, ..self }
    }

    /// Lays the view out, draws it and paints all of it: red, green, blue and opacity of
    /// every pixel.
    pub fn paint<'a, M: 'a>(&mut self, view: Element<'a, M>, theme: &Theme) -> Vec<u8> {
        let (width, height) = self.size;
        #[expect(clippy::cast_precision_loss)]
        let size = Size::new(width as f32 / self.scale, height as f32 / self.scale);
        let mut screen = UserInterface::build(view, size, Cache::default(), &mut self.renderer);
        // What moves comes to stand first.
        let mut now = Instant::now();
        loop {
            match frames::next_asked_for(&mut screen, &mut self.renderer, now) {
                RedrawRequest::NextFrame => {}
                RedrawRequest::At(due) => now = due,
                RedrawRequest::Wait => break,
            }
        }
        frames::draw(&mut screen, &mut self.renderer, theme);
        let ground = theme.base().background_color;
        self.renderer
            .screenshot(Size::new(width, height), self.scale, ground)
    }

    /// Paints the view and writes it as a PNG file.
    pub fn write<'a, M: 'a>(&mut self, view: Element<'a, M>, theme: &Theme, file: &Path) {
        let pixels = self.paint(view, theme);
        let (width, height) = self.size;
        image::save_buffer(file, &pixels, width, height, image::ColorType::Rgba8).unwrap();
    }
}
