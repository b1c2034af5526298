//! A window without a display, that paints frame after frame as the toolkit does.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::time::Instant;

use iced::advanced::clipboard;
use iced::advanced::renderer::{Headless, Style};
use iced::futures::executor::block_on;
use iced::theme::Base;
use iced::window::RedrawRequest;
use iced::{Color, Element, Event, Rectangle, Size, Theme, mouse, window};
use iced_runtime::user_interface::{Cache, State, UserInterface};
use iced_tiny_skia::Layer;
use iced_tiny_skia::graphics::text::font_system;
use iced_tiny_skia::graphics::{Viewport, damage};
use marlinspeak::app;
use tiny_skia::{Mask, Pixmap};

/// A window without a display.
pub struct Window {
    renderer: iced::Renderer,
    surface: Surface,
    cache: Cache,
    is_whole: bool,
}

impl Window {
    /// Opens a window of so many pixels. `is_whole` to paint all of every frame, and not only what
    /// has changed.
    pub fn open((width, height): (u32, u32), is_whole: bool) -> Self {
        Self {
            renderer: renderer(),
            surface: Surface::new(Size::new(width, height)),
            cache: Cache::default(),
            is_whole,
        }
    }

    /// Lays out and paints a frame; whether another one is to follow at once.
    pub fn frame<'a, M: 'a>(&mut self, view: Element<'a, M>) -> bool {
        self.frame_at(view, Instant::now()) == RedrawRequest::NextFrame
    }

    /// The same at a moment of the test's own; when another one is to follow.
    pub fn frame_at<'a, M: 'a>(&mut self, view: Element<'a, M>, now: Instant) -> RedrawRequest {
        let mut screen = UserInterface::build(
            view,
            self.surface.viewport.logical_size(),
            std::mem::take(&mut self.cache),
            &mut self.renderer,
        );
        let theme = app::theme();
        let next = next_asked_for(&mut screen, &mut self.renderer, now);
        draw(&mut screen, &mut self.renderer, &theme);
        self.cache = screen.into_cache();
        let ground = theme.base().background_color;
        self.surface
            .present(&mut self.renderer, self.is_whole, ground);
        next
    }

    /// Its width and height in pixels.
    pub fn size(&self) -> (u32, u32) {
        let size = self.surface.viewport.physical_size();
        (size.width, size.height)
    }

    /// Blue, green, red and opacity of every pixel.
    pub fn pixels(&self) -> &[u8] {
        self.surface.pixels.data()
    }

    /// The rectangles that the last frame was painted in.
    pub fn painted(&self) -> &[Rectangle] {
        &self.surface.painted
    }
}

/// A software renderer with the faces of the app.
pub fn renderer() -> iced::Renderer {
    let settings = app::settings();
    // Each is loaded once, however often it is asked for.
    for face in settings.fonts {
        let mut system = font_system().write().expect("the fonts");
        system.load_font(face);
    }
    block_on(<iced::Renderer as Headless>::new(
        settings.default_font,
        settings.default_text_size,
        None,
    ))
    .expect("the software renderer")
}

/// Tells a screen that a frame is due now; when it wants the next one.
pub fn next_asked_for<M>(
    screen: &mut UserInterface<'_, M, Theme, iced::Renderer>,
    renderer: &mut iced::Renderer,
    now: Instant,
) -> RedrawRequest {
    let redraw = Event::Window(window::Event::RedrawRequested(now));
    let (state, _) = screen.update(
        &[redraw],
        mouse::Cursor::Unavailable,
        renderer,
        &mut clipboard::Null,
        &mut Vec::new(),
    );
    match state {
        State::Updated { redraw_request, .. } => redraw_request,
        State::Outdated => RedrawRequest::Wait,
    }
}

/// Draws a screen, without a pointer over it.
pub fn draw<M>(
    screen: &mut UserInterface<'_, M, Theme, iced::Renderer>,
    renderer: &mut iced::Renderer,
    theme: &Theme,
) {
    let style = Style {
        text_color: theme.base().text_color,
    };
    screen.draw(renderer, theme, &style, mouse::Cursor::Unavailable);
}

/// The memory of a window, painted as the toolkit paints it: all of it, or what differs from
/// the frame before.
struct Surface {
    viewport: Viewport,
    pixels: Pixmap,
    mask: Mask,
    before: Option<Vec<Layer>>,
    painted: Vec<Rectangle>,
}

impl Surface {
    fn new(size: Size<u32>) -> Self {
        let Size { width, height } = size;
        Self {
            viewport: Viewport::with_physical_size(size, 1.0),
            pixels: Pixmap::new(width, height).expect("a window's pixels"),
            mask: Mask::new(width, height).expect("a window's mask"),
            before: None,
            painted: Vec::new(),
        }
    }

    fn present(&mut self, renderer: &mut iced::Renderer, is_whole: bool, ground: Color) {
        let all = Rectangle::with_size(self.viewport.logical_size());
        let before = self.before.as_ref().filter(|_| !is_whole);
        let changed = before.map(|before| {
            let layers = renderer.layers();
            damage::diff(before, layers, |layer| vec![layer.bounds], Layer::damage)
        });
        let changed = changed.map_or_else(|| vec![all], |changed| damage::group(changed, all));
        self.before = Some(renderer.layers().to_vec());
        renderer.draw(
            &mut self.pixels.as_mut(),
            &mut self.mask,
            &self.viewport,
            &changed,
            ground,
        );
        self.painted = changed;
    }
}
