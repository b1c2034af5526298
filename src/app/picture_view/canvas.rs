//! The widget that shows a picture, as large as its place.

use iced::advanced::widget::Tree;
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, renderer};
use iced::{Event, Fill, Length, Rectangle, Renderer, Size, Theme, window};

use super::PictureView;

/// The widget that shows it, as large as its place.
pub(super) struct Canvas<'a>(pub(super) &'a PictureView);

impl<M> Widget<M, Theme, Renderer> for Canvas<'_> {
    fn size(&self) -> Size<Length> {
        Size::new(Fill, Fill)
    }

    fn layout(&mut self, _: &mut Tree, _: &Renderer, limits: &layout::Limits) -> layout::Node {
        layout::atomic(limits, Fill, Fill)
    }

    fn update(
        &mut self,
        _: &mut Tree,
        event: &Event,
        layout: Layout<'_>,
        _: mouse::Cursor,
        _: &Renderer,
        _: &mut dyn Clipboard,
        shell: &mut Shell<'_, M>,
        _: &Rectangle,
    ) {
        let Self(picture) = self;
        if let Event::Window(window::Event::RedrawRequested(now)) = event {
            if let Some(due) = picture.film.wind(*now) {
                shell.request_redraw_at(window::RedrawRequest::At(due));
            }
            let mut cache = picture.cache.borrow_mut();
            let wanted = picture.wanted(layout.bounds().size());
            if cache.prepare(wanted, || picture.motif()) {
                shell.request_redraw();
            }
        }
    }

    fn draw(
        &self,
        _: &Tree,
        renderer: &mut Renderer,
        theme: &Theme,
        _: &renderer::Style,
        layout: Layout<'_>,
        _: mouse::Cursor,
        clip: &Rectangle,
    ) {
        let Self(picture) = self;
        let (bounds, is_dark) = (layout.bounds(), theme.extended_palette().is_dark);
        let mut cache = picture.cache.borrow_mut();
        let wanted = picture.wanted(bounds.size());
        cache.draw(renderer, bounds, clip, is_dark, wanted, || picture.motif());
    }
}
