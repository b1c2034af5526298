//! The window without a window: what it would show, as pixels.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

#[path = "frames.rs"]
mod frames;

use std::path::Path;
use std::time::Instant;

use frames::is_another_asked_for;
use iced::advanced::clipboard;
use iced::advanced::renderer::{Headless, Style};
use iced::futures::executor::block_on;
use iced::theme::Base;
use iced::{Element, Event, Size, Theme, mouse, window};
use iced_runtime::user_interface::{Cache, UserInterface};
use marlinspeak::app;

/// A software renderer with the faces of the app.
pub struct Pane {
    renderer: iced::Renderer,
    size: (u32, u32),
}

impl Pane {
    /// A pane of so many pixels. The faces must be loaded by then.
    pub fn new(width: u32, height: u32) -> Self {
        let settings = app::settings();
        let renderer = block_on(<iced::Renderer as Headless>::new(
            settings.default_font,
            settings.default_text_size,
            None,
        ))
        .expect("the software renderer");
        Self {
            renderer,
            size: (width, height),
        }
    }

    /// Lays the view out, draws it and paints all of it: red, green, blue and opacity of
    /// every pixel.
    pub fn paint<'a, M: 'a>(&mut self, view: Element<'a, M>, theme: &Theme) -> Vec<u8> {
        let (width, height) = self.size;
        #[expect(clippy::cast_precision_loss)]
        let size = Size::new(width as f32, height as f32);
        let base = theme.base();
        let mut screen = UserInterface::build(view, size, Cache::default(), &mut self.renderer);
        let cursor = mouse::Cursor::Unavailable;
        // Frames follow one another as long as the screen asks for the next.
        loop {
            let redraw = Event::Window(window::Event::RedrawRequested(Instant::now()));
            let (state, _) = screen.update(
                &[redraw],
                cursor,
                &mut self.renderer,
                &mut clipboard::Null,
                &mut Vec::new(),
            );
            if !is_another_asked_for(&state) {
                break;
            }
        }
        let style = Style {
            text_color: base.text_color,
        };
        screen.draw(&mut self.renderer, theme, &style, cursor);
        self.renderer
            .screenshot(Size::new(width, height), 1.0, base.background_color)
    }

    /// Paints the view and writes it as a PNG file.
    pub fn write<'a, M: 'a>(&mut self, view: Element<'a, M>, theme: &Theme, file: &Path) {
        let pixels = self.paint(view, theme);
        let mut bytes = Vec::new();
        let mut encoder = png::Encoder::new(&mut bytes, self.size.0, self.size.1);
        encoder.set_color(png::ColorType::Rgba);
        encoder.set_depth(png::BitDepth::Eight);
        let mut writer = encoder.write_header().unwrap();
        writer.write_image_data(&pixels).unwrap();
        writer.finish().unwrap();
        std::fs::write(file, bytes).unwrap();
    }
}
