//! The picture of the knot on a screen: how large it is, which view it shows, and the painter
//! that puts its shapes on the window.

mod render_cache;
mod tiles;

use std::cell::{Cell, RefCell};
use std::time::{Duration, Instant};

use iced::advanced::widget::Tree;
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, renderer};
use iced::widget::{column, container, row};
use iced::{Element, Event, Fill, FillPortion, Length, Rectangle, Renderer, Size, Theme, window};

use crate::picture::{Subject, View};
use render_cache::{Motif, PictureKey, RenderCache};

/// Segments of a scene above which the pixels are made by the picture's own painter and shown
/// as one image: measured, it is the quicker way from here on.
const MANY: usize = 1_500;

/// How wide a room must be for its height, to have the picture beside the words and not below them:
/// there both are larger so.
const WIDE: f32 = 1.35;

/// A room of a smaller area than this belongs to the words alone, unless the tyer asks for the picture;
/// and so does one that is shorter or narrower than this.
const ROOM: f32 = 400_000.0;
const LEAST_SIDE: f32 = 420.0;

/// Between words and picture.
const GAP: f32 = 12.0;

/// How much of the screen the picture takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum PictureSize {
    /// As much as there is room for beside large type.
    ByRoom,
    Off,
    Small,
    Middle,
    Large,
}

/// How much a screen makes of its picture as long as the tyer has not chosen a size.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Prominence {
    /// There is none.
    Hidden,
    /// It stands where there is room for it beside large type.
    #[default]
    ByRoom,
    /// It stands there unless the words would not fit: it is part of what is taught.
    Taught,
}

/// Where a picture goes on a screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placement {
    is_wide: bool,
    /// Twentieths of the room that are the picture's.
    twentieths: u16,
    /// Whether the tyer chose its size, and so that there is one.
    pub is_asked_for: bool,
    /// Whether it goes only where the words would not fit with it.
    pub is_taught: bool,
}

impl Placement {
    /// What is left of a room for the words.
    pub fn left_of(self, room: Size) -> Size {
        let share = 1.0 - f32::from(self.twentieths) / 20.0;
        if self.is_wide {
            Size::new(((room.width - GAP) * share).max(0.0), room.height)
        } else {
            Size::new(room.width, ((room.height - GAP) * share).max(0.0))
        }
    }
}

/// A picture on a screen.
pub struct PictureView {
    /// What is shown one after another; the last stays.
    film: Vec<Subject>,
    /// Which of them is shown, and since when the first.
    frame: Cell<usize>,
    begun: Cell<Option<Instant>>,
    /// How long each stands.
    each: Duration,
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
            film: Vec::new(),
            frame: Cell::new(0),
            begun: Cell::new(None),
            each: Duration::ZERO,
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
    pub fn play(&mut self, film: Vec<Subject>, each: Duration) {
        if self.film == film {
            return;
        }
        self.replay();
        self.film = film;
        self.each = each;
    }

    /// Plays it once more from the beginning.
    pub fn replay(&mut self) {
        self.renew();
        self.frame.set(0);
        self.begun.set(None);
    }

    /// Another picture is wanted from now on: each of a film has a number of its own.
    const fn renew(&mut self) {
        self.number += self.film.len() as u64 + 1;
    }

    /// Goes on to what is to be shown now, and says when the next is due; nothing where the picture
    /// stands still.
    fn wind(&self, now: Instant) -> Option<Instant> {
        let last = self.film.len().checked_sub(1)?;
        if self.frame.get() >= last {
            return None;
        }
        let begun = self.begun.get().unwrap_or(now);
        self.begun.set(Some(begun));
        let due = |frame: usize| begun + self.each * u32::try_from(frame).unwrap_or(u32::MAX);
        while self.frame.get() < last && due(self.frame.get() + 1) <= now {
            self.frame.set(self.frame.get() + 1);
        }
        (self.frame.get() < last).then(|| due(self.frame.get() + 1))
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
                self.share = match self.share {
                    PictureSize::ByRoom | PictureSize::Middle => PictureSize::Large,
                    PictureSize::Large => PictureSize::Off,
                    PictureSize::Off => PictureSize::Small,
                    PictureSize::Small => PictureSize::Middle,
                }
            }
            _ => return false,
        }
        true
    }

    /// Where the picture goes on a screen with this much room, if anywhere: beside the words
    /// where it is wide, below them where it is tall.
    pub fn place(&self, room: Size) -> Option<Placement> {
        let is_asked_for = self.share != PictureSize::ByRoom;
        let is_taught = !is_asked_for && self.prominence == Prominence::Taught;
        let is_hidden = !is_asked_for && self.prominence == Prominence::Hidden;
        let is_wide = room.width > WIDE * room.height;
        let twentieths = match self.share {
            PictureSize::Off => return None,
            _ if is_hidden => return None,
            // Beside it the line has the width that it needs for one row.
            PictureSize::ByRoom if is_wide => 8,
            PictureSize::ByRoom | PictureSize::Middle => 9,
            PictureSize::Small => 6,
            PictureSize::Large => 13,
        };
        let is_roomy =
            room.width * room.height >= ROOM && room.width.min(room.height) >= LEAST_SIDE;
        let is_there = is_roomy || is_asked_for || is_taught;
        (!self.film.is_empty() && is_there).then_some(Placement {
            is_wide,
            twentieths,
            is_asked_for,
            is_taught,
        })
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

    /// A list with the picture below it, where there is room for both.
    pub fn below<'a, M: 'a>(
        &'a self,
        room: Size,
        list: impl FnOnce(Size) -> Element<'a, M>,
    ) -> Element<'a, M> {
        // Two knots of a list, or near enough.
        let height = room.height * 0.4;
        if height < 180.0 || self.film.is_empty() {
            return list(room);
        }
        let list = list(Size::new(room.width, room.height - height - GAP));
        column![
            container(list).height(Fill),
            container(self.view()).height(height),
        ]
        .spacing(GAP)
        .into()
    }

    /// The screen with the picture at its right, or below it in a room that is taller than wide.
    pub fn next_to<'a, M: 'a>(&'a self, room: Size, screen: Element<'a, M>) -> Element<'a, M> {
        if self.film.is_empty() {
            return screen;
        }
        if room.width > room.height {
            row![
                container(screen).width(FillPortion(3)),
                container(self.view()).width(FillPortion(2)),
            ]
            .spacing(2.0 * GAP)
            .into()
        } else {
            column![
                container(screen).height(FillPortion(3)),
                container(self.view()).height(FillPortion(2)),
            ]
            .spacing(2.0 * GAP)
            .into()
        }
    }

    /// What a picture of this size depends on now.
    fn wanted(&self, size: Size) -> PictureKey {
        PictureKey {
            number: self.number + self.frame.get() as u64,
            size,
            dots: self.dots,
        }
    }

    fn motif(&self) -> Motif {
        Motif {
            subject: self.film.get(self.frame.get()).cloned(),
            view: self.view,
            many: self.many,
        }
    }
}

/// The widget that shows it, as large as its place.
struct Canvas<'a>(&'a PictureView);

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
            if let Some(due) = picture.wind(*now) {
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
