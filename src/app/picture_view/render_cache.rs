//! What an picture's picture is drawn on: its shapes one by one where they are few, or else an image
//! that the picture's own painter makes of them.
//!
//! A large knot takes longer to paint than the words of a step. So the window shows the new words
//! at once, while a thread beside it paints the picture, and the picture in the frame after that.

use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::thread;
use std::time::Duration;

use iced::advanced::Renderer as _;
use iced::advanced::graphics::geometry::Renderer as _;
use iced::widget::canvas::{self, Frame, Path, Stroke};
use iced::{Color, Point, Rectangle, Renderer, Size, Vector};
use kurbo::PathEl;

use super::tiles::Tiles;
use crate::app::widgets::repaint_layer::Repaints;
use crate::picture::{
    Colour, DefaultPalette, DisplayList, Outline, Paint, Painter, Palette, Subject, View, Viewport,
    single,
};

/// How long a frame waits for a picture before it is shown without: keys are answered in between.
const PATIENCE: Duration = Duration::from_millis(3);

/// A picture as it was drawn last.
#[derive(Default)]
pub struct RenderCache {
    is_dark: bool,
    /// For what the picture that is shown was made.
    made: Option<PictureKey>,
    shown: OnScreen,
    tiles: Tiles,
    /// Here while nothing is being painted.
    painter: Painter,
    /// The next picture, while it is painted.
    next: Option<(PictureKey, Receiver<Painted>)>,
}

/// What a picture depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PictureKey {
    /// Another number for another subject or view.
    pub number: u64,
    /// The size of the picture.
    pub size: Size,
    /// Dots of the screen for each pixel of the layout.
    pub dots: f32,
}

/// What is to be painted.
pub struct Motif {
    /// What it is of, if of anything.
    pub subject: Option<Subject>,
    /// How the tube is shown.
    pub view: View,
    /// Segments of a scene above which it is shown as an image.
    pub many: usize,
}

#[derive(Default)]
enum OnScreen {
    #[default]
    Nothing,
    Image,
    Shapes(Box<ShapeCache>),
}

/// What comes of painting.
struct Painted {
    painter: Painter,
    outcome: PaintOutcome,
}

enum PaintOutcome {
    Nothing,
    /// The painter has it.
    Image,
    /// To be drawn shape by shape.
    Drawn(Box<DisplayList>),
}

/// Paints, or leaves it for the canvas.
fn painted(mut painter: Painter, motif: Motif, wanted: PictureKey, is_dark: bool) -> Painted {
    let viewport = Viewport::new(wanted.size.width, wanted.size.height);
    let list = motif
        .subject
        .map(|subject| DisplayList::of(&subject.scene(motif.view, viewport)));
    let outcome = match list {
        None => PaintOutcome::Nothing,
        Some(list) if list.segments() > motif.many => {
            painter.paint_at(&list, &palette(is_dark), wanted.dots);
            PaintOutcome::Image
        }
        Some(list) => PaintOutcome::Drawn(Box::new(list)),
    };
    Painted { painter, outcome }
}

fn palette(is_dark: bool) -> DefaultPalette {
    if is_dark {
        DefaultPalette::dark()
    } else {
        DefaultPalette::by_day()
    }
}

impl RenderCache {
    /// Keeps nothing of what was shown: the next picture is made while it is drawn. For one that
    /// was away for a while, or comes back in quite another size.
    pub fn wipe(&mut self) {
        self.has_finished(Duration::MAX);
        self.made = None;
    }

    /// Sees to it that the picture will be what is wanted now; whether it will only be so in a
    /// frame to come.
    pub fn prepare(&mut self, wanted: PictureKey, motif: impl FnOnce() -> Motif) -> bool {
        if !self.has_finished(PATIENCE) {
            return true;
        }
        if self.made.is_none() || self.made == Some(wanted) {
            return false;
        }
        let (painter, is_dark) = (std::mem::take(&mut self.painter), self.is_dark);
        let motif = motif();
        let (done, next) = channel();
        let painting = thread::Builder::new().name("picture".to_owned());
        let painting = painting.spawn(move || {
            // The cache may be gone by now.
            let _ = done.send(painted(painter, motif, wanted, is_dark));
        });
        match painting {
            Ok(_) => self.next = Some((wanted, next)),
            // No thread is to be had: it is painted while it is drawn.
            Err(_) => self.made = None,
        }
        self.next.is_some()
    }

    /// Draws it in these bounds, and what of it lies in `clip`: in a list only a part may be in view.
    /// `is_dark` for light on dark.
    pub fn draw(
        &mut self,
        renderer: &mut Renderer,
        bounds: Rectangle,
        clip: &Rectangle,
        is_dark: bool,
        wanted: PictureKey,
        motif: impl FnOnce() -> Motif,
    ) {
        let Some(seen) = bounds.intersection(clip) else {
            return;
        };
        if self.made.is_none() || self.is_dark != is_dark {
            self.has_finished(Duration::MAX);
            self.is_dark = is_dark;
            let painter = std::mem::take(&mut self.painter);
            self.show(wanted, painted(painter, motif(), wanted, is_dark));
        }
        // On whole dots: an image is painted from the dot that its corner lies in, a layer is
        // cleared and masked from the first dot of which it has the middle.
        let whole = |length: f32| (length * wanted.dots).round() / wanted.dots;
        let [bounds, seen] = [bounds, seen].map(|bounds| Rectangle {
            x: whole(bounds.x),
            y: whole(bounds.y),
            width: whole(bounds.width),
            height: whole(bounds.height),
        });
        match &self.shown {
            OnScreen::Nothing => {}
            OnScreen::Image => self.tiles.draw(renderer, bounds, seen),
            OnScreen::Shapes(shapes) => shapes.draw(renderer, bounds, seen),
        }
    }

    /// Shows the picture that is being painted, if any, from now on; whether it was done in time.
    fn has_finished(&mut self, patience: Duration) -> bool {
        let Some((made, next)) = &self.next else {
            return true;
        };
        let made = *made;
        match next.recv_timeout(patience) {
            Ok(painted) => self.show(made, painted),
            Err(RecvTimeoutError::Timeout) => return false,
            // Its thread has failed. Rather no picture than one of another step.
            Err(RecvTimeoutError::Disconnected) => {
                self.made = Some(made);
                self.shown = OnScreen::Nothing;
                self.tiles = Tiles::default();
            }
        }
        self.next = None;
        true
    }

    fn show(&mut self, made: PictureKey, Painted { painter, outcome }: Painted) {
        self.shown = match outcome {
            PaintOutcome::Nothing => OnScreen::Nothing,
            PaintOutcome::Image => {
                self.tiles.take(&painter, made.dots);
                OnScreen::Image
            }
            PaintOutcome::Drawn(list) => OnScreen::Shapes(Box::new(ShapeCache {
                list,
                palette: palette(self.is_dark),
                cache: canvas::Cache::new(),
            })),
        };
        self.painter = painter;
        self.made = Some(made);
    }
}

/// A scene that is drawn shape by shape.
struct ShapeCache {
    list: Box<DisplayList>,
    palette: DefaultPalette,
    cache: canvas::Cache,
}

impl ShapeCache {
    fn draw(&self, renderer: &mut Renderer, bounds: Rectangle, seen: Rectangle) {
        // In a layer of its own, like the tiles: a canvas among texts puts the text that stands
        // in its place a frame later to the wrong spot, where the window works out what has
        // changed, and a part of a new sentence would never be painted.
        Repaints::default().draw(seen, renderer, |renderer| {
            let size = self.list.viewport();
            let size = Size::new(size.width, size.height);
            let shapes = self.cache.draw(renderer, size, |frame| {
                paint(&self.list, &self.palette, frame);
            });
            let place = Vector::new(bounds.x, bounds.y);
            renderer.with_translation(place, |renderer| renderer.draw_geometry(shapes));
        });
    }
}

/// Puts the shapes of a scene on a canvas, back to front.
fn paint(list: &DisplayList, palette: &dyn Palette, frame: &mut Frame) {
    for item in list.items() {
        let colour = palette.colour(item.role);
        if colour.opacity == 0 {
            continue;
        }
        let path = path(&item.outline);
        match item.paint {
            Paint::Fill => frame.fill(&path, on_screen(colour)),
            Paint::Stroke(width) => {
                let stroke = Stroke::default()
                    .with_color(on_screen(colour))
                    .with_width(single(width));
                frame.stroke(&path, stroke);
            }
        }
    }
}

fn path(outline: &Outline) -> Path {
    match outline {
        Outline::Circle(circle) => Path::circle(point(circle.center), single(circle.radius)),
        Outline::Path(elements) => Path::new(|path| {
            for element in elements {
                match element {
                    PathEl::MoveTo(to) => path.move_to(point(to)),
                    PathEl::LineTo(to) => path.line_to(point(to)),
                    PathEl::QuadTo(one, to) => path.quadratic_curve_to(point(one), point(to)),
                    PathEl::CurveTo(one, two, to) => {
                        path.bezier_curve_to(point(one), point(two), point(to));
                    }
                    PathEl::ClosePath => path.close(),
                }
            }
        }),
    }
}

fn point(at: kurbo::Point) -> Point {
    Point::new(single(at.x), single(at.y))
}

fn on_screen(colour: Colour) -> Color {
    let opacity = f32::from(colour.opacity) / 255.0;
    Color::from_rgba8(colour.red, colour.green, colour.blue, opacity)
}
