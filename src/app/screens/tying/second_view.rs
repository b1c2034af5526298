//! The step once more, in a window of its own on another display: what a class sees.

use iced::widget::{column, container, text};
use iced::{Center, Element, Fill};

use super::{around, show_step, view};
use crate::app::picture_view::{PictureView, Prominence};
use crate::app::screens::context::Context;
use crate::app::theme;

/// The step as large as a window holds it, with its picture and without keys.
#[derive(Default)]
pub struct SecondView {
    picture: PictureView,
}

impl SecondView {
    /// Has the picture show the step. `dots` are those of its display for each pixel of the layout.
    pub fn redraw(&mut self, context: &Context, dots: f32) {
        show_step(&mut self.picture, context, dots, Prominence::ByRoom);
    }

    /// What stands in the window.
    pub fn view<'a, M: 'a>(&'a self, context: &'a Context) -> Element<'a, M> {
        let (Some(page), Some(walk)) = (context.session.page(), context.session.walk()) else {
            let name = text(context.plainly("app-title"))
                .size(theme::HEADING)
                .font(theme::BOLD);
            let waits = text(context.plainly("second-window-waits")).size(theme::BODY);
            let both = column![name, waits.center()].spacing(20).align_x(Center);
            return container(both).padding(40).center(Fill).into();
        };
        let mut around = around(page, context.words());
        // What must be known of the program is the tyer's affair.
        around.notices.clear();
        view::fitted(walk.shown(), &self.picture, around)
    }
}
