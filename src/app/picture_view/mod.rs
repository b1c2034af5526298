//! The picture of the knot on a screen: how large it is, which view it shows, and the painter
//! that puts its shapes on the window.

mod canvas;
mod film;
mod placement;
mod render_cache;
mod tiles;

use std::cell::RefCell;
use std::time::Duration;

use iced::widget::{column, container, row};
use iced::{Element, Fill, FillPortion, Size};

use crate::picture::{Subject, View};
use canvas::Canvas;
use film::Film;
pub use placement::{Claim, Placement, Prominence};
use placement::{GAP, PictureSize};
use render_cache::{Motif, PictureKey, RenderCache};

/// Segments of a scene above which the pixels are made by the picture's own painter and shown
/// as one image: measured, it is the quicker way from here on.
const MANY: usize = 1_500;

/// A picture on a screen.
pub struct PictureView {
    film: Film,
    view: View,
    /// Another one whenever another picture is wanted.
    number: u64,
    share: PictureSize,
    prominence: Prominence,
    is_full: bool,
    cache: RefCell<RenderCache>,
    /// Dots of the screen for each pixel of the layout.
    dots: f32,
    many: usize,
}

impl Default for PictureView {
    fn default() -> Self {
        Self {
            film: Film::default(),
            view: View::default(),
            number: 0,
            share: PictureSize::ByRoom,
            prominence: Prominence::default(),
            is_full: false,
            cache: RefCell::default(),
            dots: 1.0,
            many: MANY,
        }
    }
}

impl PictureView {
    /// This view with the tube cut open and laid flat.
    #[must_use]
    pub fn rolled_out(self) -> Self {
        Self {
            view: View::RolledOut,
            ..self
        }
    }

    /// This view with scenes of up to so many segments drawn on the canvas shape by shape and
    /// larger ones shown as an image.
    #[must_use]
    pub fn by_shapes_up_to(self, segments: usize) -> Self {
        Self {
            many: segments,
            ..self
        }
    }

    /// Shows this from now on, or nothing.
    pub fn show(&mut self, subject: Option<Subject>) {
        self.play(subject.into_iter().collect(), Duration::ZERO);
    }

    /// Shows these one after another from now on, each for so long, and then the last. What is
    /// playing already goes on.
    pub fn play(&mut self, frames: Vec<Subject>, each: Duration) {
        if !self.film.is_of(&frames) {
            self.renew();
            self.film = Film::new(frames, each);
        }
    }

    /// Plays it once more from the beginning.
    pub fn replay(&mut self) {
        if self.film.len() > 1 {
            self.renew();
            self.film.rewind();
        }
    }

    /// Another picture is wanted from now on: each of a film has a number of its own.
    const fn renew(&mut self) {
        self.number += self.film.len() as u64 + 1;
    }

    /// Makes so much of the picture from now on.
    pub const fn set_prominence(&mut self, prominence: Prominence) {
        self.prominence = prominence;
    }

    /// Draws for a screen with so many dots for each pixel of the layout.
    pub fn set_dots(&mut self, dots: f32) {
        self.dots = dots;
    }

    /// Whether the picture stands over the whole screen.
    pub const fn is_full(&self) -> bool {
        self.is_full
    }

    /// Puts the picture back in its place.
    pub fn leave_full(&mut self) {
        self.rest();
        self.is_full = false;
    }

    /// There is no picture for now, or the next one is another in size: what was shown of a former
    /// step must not come back for a frame.
    pub fn rest(&self) {
        self.cache.borrow_mut().wipe();
    }

    /// Does what a key asks for; `false` when it is none of the picture's.
    pub fn press(&mut self, key: &str) -> bool {
        match key {
            "v" | "V" => {
                self.view = match self.view {
                    View::RolledOut => View::RoundTheTube,
                    View::RoundTheTube => View::RolledOut,
                };
                self.renew();
            }
            "f" | "F" => {
                self.is_full = !self.is_full;
                self.rest();
            }
            "d" | "D" => {
                self.rest();
                self.share = self.share.next();
            }
            _ => return false,
        }
        true
    }

    /// Where the picture goes on a screen with this much room, if anywhere.
    pub fn place(&self, room: Size) -> Option<Placement> {
        let is_board =
            self.view == View::RoundTheTube && self.film.now().is_some_and(Subject::is_on_board);
        let place = self.share.place(self.prominence, is_board, room);
        place.filter(|_| !self.film.is_empty())
    }

    /// The words of the screen, and the picture in its place beside them.
    pub fn beside<'a, M: 'a>(&'a self, place: Placement, words: Element<'a, M>) -> Element<'a, M> {
        let picture = self.view();
        let shares = [20 - place.twentieths, place.twentieths].map(FillPortion);
        if place.is_wide {
            row![
                container(words).width(shares[0]).height(Fill),
                container(picture).width(shares[1]).height(Fill),
            ]
            .spacing(GAP)
            .into()
        } else {
            column![
                container(words).width(Fill).height(shares[0]),
                container(picture).width(Fill).height(shares[1]),
            ]
            .spacing(GAP)
            .into()
        }
    }

    /// The picture alone, as large as its place.
    pub fn view<'a, M: 'a>(&'a self) -> Element<'a, M> {
        container(Element::new(Canvas(self))).id("picture").into()
    }

    /// What a picture of this size depends on now.
    fn wanted(&self, size: Size) -> PictureKey {
        PictureKey {
            number: self.number + self.film.place() as u64,
            size,
            dots: self.dots,
        }
    }

    fn motif(&self) -> Motif {
        Motif {
            subject: self.film.now().cloned(),
            view: self.view,
            many: self.many,
        }
    }
}
