//! Small pictures of many knots side by side. They are painted on a thread beside that of the window,
//! and no more of them than are in view; a place shows what it showed before until its picture is there.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread;
use std::time::{Duration, Instant};

use iced::advanced::image::{FilterMethod, Handle, Image, Renderer as _};
use iced::advanced::widget::Tree;
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, renderer};
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, window};

use crate::app::theme;
use crate::picture::{Colour, DefaultPalette, DisplayList, Painter, Subject, View, Viewport};

/// How long a frame waits for a picture: keys are answered in between.
const PATIENCE: Duration = Duration::from_millis(3);
/// Places to either side of one that was looked at whose pictures are kept.
const KEPT: usize = 40;

/// The pictures, by their places.
#[derive(Default)]
pub struct Gallery {
    /// Dots of the screen for each pixel of the layout.
    dots: f32,
    is_dark: bool,
    slots: RefCell<BTreeMap<usize, Slot>>,
    painting: RefCell<Option<Painting>>,
    /// The frame that has waited for a picture: each waits once.
    waited: Cell<Option<Instant>>,
}

/// What is shown in a place, and what is to be.
#[derive(Default)]
struct Slot {
    shown: Option<(Wanted, Handle)>,
    asked: Option<Wanted>,
}

/// A picture of a place.
#[derive(Clone, Debug, PartialEq)]
struct Wanted {
    subject: Subject,
    /// The colour of the cord, where it is known.
    cord: Option<Colour>,
    size: Size,
    dots: f32,
    is_dark: bool,
}

/// The thread that paints: what it is asked for, and what it has done.
struct Painting {
    asked: Sender<(usize, Wanted)>,
    done: Receiver<(usize, Wanted, Handle)>,
}

impl Painting {
    fn begin() -> std::io::Result<Self> {
        let (asked, jobs) = channel();
        let (results, done) = channel();
        let thread = thread::Builder::new().name("gallery".to_owned());
        thread.spawn(move || paint_all(&jobs, &results))?;
        Ok(Self { asked, done })
    }
}

/// Paints what is asked for until nobody asks any more. Of several wishes for a place the last counts.
fn paint_all(jobs: &Receiver<(usize, Wanted)>, done: &Sender<(usize, Wanted, Handle)>) {
    let mut waiting = BTreeMap::new();
    loop {
        if waiting.is_empty() {
            match jobs.recv() {
                Ok((place, wanted)) => waiting.insert(place, wanted),
                Err(_) => return,
            };
        }
        waiting.extend(jobs.try_iter());
        if let Some((place, wanted)) = waiting.pop_first() {
            let handle = paint(&wanted);
            if done.send((place, wanted, handle)).is_err() {
                return;
            }
        }
    }
}

fn paint(wanted: &Wanted) -> Handle {
    let viewport = Viewport::new(wanted.size.width, wanted.size.height);
    let scene = wanted.subject.scene(View::default(), viewport);
    let (palette, tones) = if wanted.is_dark {
        (DefaultPalette::dark(), theme::DARK)
    } else {
        (DefaultPalette::by_day(), theme::LIGHT)
    };
    // They stand on buttons.
    let [red, green, blue, opacity] = tones.raised.into_rgba8();
    let palette = palette.on(Colour {
        red,
        green,
        blue,
        opacity,
    });
    let palette = match wanted.cord {
        Some(cord) => palette.with_cord(cord),
        None => palette,
    };
    let mut painter = Painter::new();
    let image = painter.paint_at(&DisplayList::of(&scene), &palette, wanted.dots);
    Handle::from_rgba(image.width(), image.height(), image.pixels().to_vec())
}

impl Gallery {
    /// Paints from now on for a screen with so many dots for each pixel of the layout, and light on
    /// dark or dark on light.
    pub const fn set(&mut self, dots: f32, is_dark: bool) {
        self.dots = dots;
        self.is_dark = is_dark;
    }

    /// The picture of this in a place, in this size; of a cord of this colour, where it is known.
    pub fn picture<'a, M: 'a>(
        &'a self,
        place: usize,
        subject: Subject,
        cord: Option<Colour>,
        size: Size,
    ) -> Element<'a, M> {
        let wanted = Wanted {
            subject,
            cord,
            size: Size::new(size.width.floor(), size.height.floor()),
            dots: self.dots,
            is_dark: self.is_dark,
        };
        Element::new(GalleryPicture {
            gallery: self,
            place,
            wanted,
        })
    }

    /// Sees to it that a place will show this; whether it will only do so in a frame to come.
    fn want(&self, place: usize, wanted: &Wanted, now: Instant) -> bool {
        self.take_in(Duration::ZERO);
        {
            let mut slots = self.slots.borrow_mut();
            slots.retain(|other, _| other.abs_diff(place) <= KEPT);
            let slot = slots.entry(place).or_default();
            if is_shown(slot, wanted) {
                return false;
            }
            if slot.asked.as_ref() != Some(wanted) {
                slot.asked = Some(wanted.clone());
                if !self.ask(place, wanted) {
                    slot.shown = Some((wanted.clone(), paint(wanted)));
                    return false;
                }
            }
        }
        if self.waited.replace(Some(now)) != Some(now) && !self.take_in(PATIENCE) {
            return false;
        }
        let slots = self.slots.borrow();
        !slots.get(&place).is_some_and(|slot| is_shown(slot, wanted))
    }

    /// Has a picture painted; `false` where there is no thread for it.
    fn ask(&self, place: usize, wanted: &Wanted) -> bool {
        let mut painting = self.painting.borrow_mut();
        if painting.is_none() {
            match Painting::begin() {
                Ok(begun) => *painting = Some(begun),
                Err(error) => ::log::warn!("no thread to paint on: {error}"),
            }
        }
        let job = (place, wanted.clone());
        painting
            .as_ref()
            .is_some_and(|painting| painting.asked.send(job).is_ok())
    }

    /// Takes in what is painted by now, and waits so long for the first of it; `false` when nothing
    /// more will come.
    fn take_in(&self, patience: Duration) -> bool {
        let painting = self.painting.borrow();
        let Some(Painting { done, .. }) = painting.as_ref() else {
            return true;
        };
        let first = match done.recv_timeout(patience) {
            Ok(first) => first,
            Err(RecvTimeoutError::Timeout) => return true,
            Err(RecvTimeoutError::Disconnected) => return false,
        };
        let mut slots = self.slots.borrow_mut();
        for (place, wanted, handle) in std::iter::once(first).chain(done.try_iter()) {
            if let Some(slot) = slots.get_mut(&place) {
                slot.shown = Some((wanted, handle));
            }
        }
        true
    }
}

fn is_shown(slot: &Slot, wanted: &Wanted) -> bool {
    slot.shown
        .as_ref()
        .is_some_and(|(shown, _)| shown == wanted)
}

/// The widget that shows one of them.
struct GalleryPicture<'a> {
    gallery: &'a Gallery,
    place: usize,
    wanted: Wanted,
}

impl<M> Widget<M, Theme, Renderer> for GalleryPicture<'_> {
    fn size(&self) -> Size<Length> {
        Size::new(
            Length::Fixed(self.wanted.size.width),
            Length::Fixed(self.wanted.size.height),
        )
    }

    fn layout(&mut self, _: &mut Tree, _: &Renderer, limits: &layout::Limits) -> layout::Node {
        let Size { width, height } = self.wanted.size;
        layout::atomic(limits, width, height)
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
        viewport: &Rectangle,
    ) {
        if let Event::Window(window::Event::RedrawRequested(now)) = event
            && layout.bounds().intersects(viewport)
            && self.gallery.want(self.place, &self.wanted, *now)
        {
            shell.request_redraw();
        }
    }

    fn draw(
        &self,
        _: &Tree,
        renderer: &mut Renderer,
        _: &Theme,
        _: &renderer::Style,
        layout: Layout<'_>,
        _: mouse::Cursor,
        clip: &Rectangle,
    ) {
        let slots = self.gallery.slots.borrow();
        let shown = slots.get(&self.place).and_then(|slot| slot.shown.as_ref());
        let Some((shown, handle)) = shown else {
            return;
        };
        // On whole dots, so that nothing is to be smoothed.
        let whole = |length: f32| (length * shown.dots).round() / shown.dots;
        let corner = layout.position();
        let bounds = Rectangle {
            x: whole(corner.x),
            y: whole(corner.y),
            width: shown.size.width,
            height: shown.size.height,
        };
        let image = Image::new(handle.clone()).filter_method(FilterMethod::Nearest);
        renderer.draw_image(image, bounds, *clip);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::Plan;

    fn wanted(leads: &str) -> Wanted {
        let plan = Plan::read(leads, "7", "1", "1").unwrap();
        Wanted {
            subject: Subject::finished(&plan),
            cord: None,
            size: Size::new(120.0, 140.0),
            dots: 1.0,
            is_dark: true,
        }
    }

    /// Frame after frame until the place shows what it should.
    fn frames(gallery: &Gallery, place: usize, wanted: &Wanted) -> usize {
        let begun = Instant::now();
        let mut frames = 0;
        while gallery.want(place, wanted, Instant::now()) {
            frames += 1;
            assert!(begun.elapsed() < Duration::from_secs(60), "never painted");
        }
        frames
    }

    #[test]
    fn a_picture_is_painted_beside_the_window_and_then_stands() {
        let gallery = Gallery::default();
        let [five, four] = ["5", "4"].map(wanted);
        frames(&gallery, 3, &five);
        assert_eq!(frames(&gallery, 3, &five), 0, "painted anew");
        // What is wanted instead is asked for, and until then the place is not empty.
        gallery.want(3, &four, Instant::now());
        assert!(gallery.slots.borrow()[&3].shown.is_some());
        frames(&gallery, 3, &four);
        assert!(is_shown(&gallery.slots.borrow()[&3], &four));
    }

    #[test]
    fn pictures_far_away_are_given_up() {
        let gallery = Gallery::default();
        frames(&gallery, 0, &wanted("5"));
        frames(&gallery, KEPT + 1, &wanted("5"));
        assert!(!gallery.slots.borrow().contains_key(&0));
    }
}
