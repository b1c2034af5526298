//! Our painter beside two general ones, tiny-skia and `vello_cpu`, on the same scenes: what the
//! painter of our own gains, as one table of medians and ratios.
//!
//! Each paints the same display lists, anti-aliased. The first picture is painted whole. For the
//! picture of a next leg ours finds out by itself what has changed and paints that; the general
//! painters know nothing of the picture before, so they paint it whole again, into a pixmap that is
//! kept. That the three paint the same is asserted before anything is timed.

use std::time::{Duration, Instant};

use kurbo::{BezPath, PathEl, Shape};
use marlinspeak::knot::{Hand, Knot, Laying, LayingOrder, Side, Weave};
use marlinspeak::picture::{
    Colour, DefaultPalette, DisplayItem, DisplayList, Moment, Outline, Paint, Painter, Palette,
    Scene, View, Viewport,
};
use vello_cpu::{Pixmap, RenderContext, RenderSettings, Resources};

/// A knot, and the window that it is shown in.
struct Sight {
    name: &'static str,
    leads: u16,
    bights: u16,
    passes: u16,
    view: View,
    size: (f32, f32),
}

const SIGHTS: [Sight; 3] = [
    Sight {
        name: "40 × 41 tripled, rolled out",
        leads: 40,
        bights: 41,
        passes: 3,
        view: View::RolledOut,
        size: (1920.0, 1080.0),
    },
    Sight {
        name: "40 × 41 tripled, round the tube",
        leads: 40,
        bights: 41,
        passes: 3,
        view: View::RoundTheTube,
        size: (1920.0, 1080.0),
    },
    Sight {
        name: "5 × 7 doubled, rolled out",
        leads: 5,
        bights: 7,
        passes: 2,
        view: View::RolledOut,
        size: (1100.0, 760.0),
    },
];

/// Pictures that are timed of each scene.
const ROUNDS: u32 = 25;

impl Sight {
    /// The picture some legs into the last pass.
    fn list(&self, nth: u32) -> DisplayList {
        let knot = Knot::new(self.leads, self.bights, Weave::default()).expect("a knot in bounds");
        let laying =
            Laying::new(knot, self.passes, LayingOrder::default()).expect("passes in bounds");
        let legs = laying.legs();
        let pass_leg = laying
            .nth_leg(legs / 2 + nth % (legs / 3))
            .expect("a leg of this tie");
        let viewport = Viewport::new(self.size.0, self.size.1);
        DisplayList::of(&Scene::build(
            self.view,
            &laying,
            Side::Right,
            Hand::Right,
            &Moment::at(pass_leg),
            viewport,
        ))
    }
}

/// The path of an item, with circles as curves.
fn path(item: &DisplayItem) -> BezPath {
    match &item.outline {
        Outline::Path(path) => path.clone(),
        Outline::Circle(circle) => circle.to_path(0.05),
    }
}

fn by_tiny_skia(list: &DisplayList, palette: &dyn Palette, pixmap: &mut tiny_skia::Pixmap) {
    use tiny_skia::{FillRule, PathBuilder, Transform};
    pixmap.fill(tiny_skia::Color::TRANSPARENT);
    for item in list.items() {
        let mut builder = PathBuilder::new();
        #[expect(clippy::cast_possible_truncation, reason = "pixels")]
        let pair = |point: kurbo::Point| (point.x as f32, point.y as f32);
        for element in &path(item) {
            match element {
                PathEl::MoveTo(to) => builder.move_to(pair(to).0, pair(to).1),
                PathEl::LineTo(to) => builder.line_to(pair(to).0, pair(to).1),
                PathEl::QuadTo(by, to) => {
                    builder.quad_to(pair(by).0, pair(by).1, pair(to).0, pair(to).1);
                }
                PathEl::CurveTo(one, two, to) => {
                    let [one, two, to] = [one, two, to].map(pair);
                    builder.cubic_to(one.0, one.1, two.0, two.1, to.0, to.1);
                }
                PathEl::ClosePath => builder.close(),
            }
        }
        let Some(outline) = builder.finish() else {
            continue;
        };
        let Colour {
            red,
            green,
            blue,
            opacity,
        } = palette.colour(item.role);
        let mut paint = tiny_skia::Paint::default();
        paint.set_color_rgba8(red, green, blue, opacity);
        match item.paint {
            Paint::Fill => {
                let (rule, transform) = (FillRule::Winding, Transform::identity());
                pixmap.fill_path(&outline, &paint, rule, transform, None);
            }
            #[expect(clippy::cast_possible_truncation, reason = "pixels")]
            Paint::Stroke(width) => {
                let stroke = tiny_skia::Stroke {
                    width: width as f32,
                    ..tiny_skia::Stroke::default()
                };
                pixmap.stroke_path(&outline, &paint, &stroke, Transform::identity(), None);
            }
        }
    }
}

/// A context of `vello_cpu` with what it needs beside it.
struct Vello {
    context: RenderContext,
    resources: Resources,
    pixmap: Pixmap,
}

impl Vello {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a window's size"
    )]
    fn new((width, height): (f32, f32)) -> Self {
        let (width, height) = (width as u16, height as u16);
        Self {
            context: RenderContext::new_with(width, height, RenderSettings::default()),
            resources: Resources::new(),
            pixmap: Pixmap::new(width, height),
        }
    }

    fn paint(&mut self, list: &DisplayList, palette: &dyn Palette) {
        use vello_cpu::color::AlphaColor;
        let context = &mut self.context;
        context.reset();
        for item in list.items() {
            let colour = palette.colour(item.role);
            context.set_paint(AlphaColor::from_rgba8(
                colour.red,
                colour.green,
                colour.blue,
                colour.opacity,
            ));
            match item.paint {
                Paint::Fill => context.fill_path(&path(item)),
                Paint::Stroke(width) => {
                    let stroke = kurbo::Stroke::new(width).with_caps(kurbo::Cap::Butt);
                    context.set_stroke(stroke.with_join(kurbo::Join::Miter));
                    context.stroke_path(&path(item));
                }
            }
        }
        context.flush();
        context.render(&mut self.pixmap, &mut self.resources);
    }
}

/// The mean difference of two pictures, in steps of 255 a channel.
fn difference(ours: &[u8], theirs: &[u8]) -> f64 {
    assert_eq!(ours.len(), theirs.len());
    let sum: u64 = ours
        .iter()
        .zip(theirs)
        .map(|(one, other)| u64::from(one.abs_diff(*other)))
        .sum();
    #[expect(clippy::cast_precision_loss, reason = "some millions")]
    let mean = sum as f64 / ours.len() as f64;
    mean
}

/// The median of several runs.
fn median(mut run: impl FnMut(u32)) -> Duration {
    run(0);
    let mut times: Vec<Duration> = (1..=ROUNDS)
        .map(|nth| {
            let start = Instant::now();
            run(nth);
            start.elapsed()
        })
        .collect();
    times.sort();
    times[times.len() / 2]
}

fn line(what: &str, ours: Duration, skia: Duration, vello: Duration) {
    let ratio = |theirs: Duration| theirs.as_secs_f64() / ours.as_secs_f64();
    let millis = |time: Duration| time.as_secs_f64() * 1000.0;
    println!(
        "| {what} | {:.1} ms | {:.1} ms, {:.1} times | {:.1} ms, {:.1} times |",
        millis(ours),
        millis(skia),
        ratio(skia),
        millis(vello),
        ratio(vello),
    );
}

fn main() {
    let palette = DefaultPalette::dark();
    println!("| scene | ours | tiny-skia | vello_cpu |");
    println!("|---|---|---|---|");
    for sight in &SIGHTS {
        let (width, height) = sight.size;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a window's size"
        )]
        let mut pixmap =
            tiny_skia::Pixmap::new(width as u32, height as u32).expect("a size above nothing");
        let mut vello = Vello::new(sight.size);
        let lists: Vec<DisplayList> = (0..=ROUNDS).map(|nth| sight.list(nth)).collect();
        let list = |nth: u32| &lists[nth as usize];

        let mut painter = Painter::new();
        let ours = painter.paint(list(0), &palette).pixels().to_vec();
        by_tiny_skia(list(0), &palette, &mut pixmap);
        vello.paint(list(0), &palette);
        let theirs = [pixmap.data(), vello.pixmap.data_as_u8_slice()];
        for (theirs, name) in theirs.into_iter().zip(["tiny-skia", "vello_cpu"]) {
            let mean = difference(&ours, theirs);
            assert!(mean < 1.0, "{}: {name} differs by {mean:.2}", sight.name);
        }

        let first = median(|_| {
            Painter::new().paint(list(0), &palette);
        });
        let next = median(|nth| {
            painter.paint(list(nth), &palette);
        });
        let skia = median(|nth| by_tiny_skia(list(nth), &palette, &mut pixmap));
        let vello = median(|nth| vello.paint(list(nth), &palette));
        line(
            &format!("{}, first picture", sight.name),
            first,
            skia,
            vello,
        );
        line(&format!("{}, each next leg", sight.name), next, skia, vello);
    }
}
