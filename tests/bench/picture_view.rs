//! Drawing on the canvas shape by shape against showing an image, for pictures of every size:
//! where the second becomes the quicker, `MANY` of `src/app/picture.rs` is set. Each frame is
//! that of a step after another, at 1920 × 1080 with the picture alone.

#[path = "../support/frames.rs"]
mod frames;
#[path = "../support/window.rs"]
mod window;

use std::time::{Duration, Instant};

use marlinspeak::app::{self, PictureView};
use marlinspeak::guide::{AtOnce, Plan, Script};
use marlinspeak::picture::{DisplayList, Moment, Scene, Subject, View, Viewport};
use window::Pane;

fn main() {
    let frames = if std::env::args().any(|arg| arg == "--bench") {
        30
    } else {
        2
    };
    println!("knot            segments    shapes     image");
    for (leads, bights, passes) in [
        (3, 4, 1),
        (5, 6, 2),
        (9, 10, 2),
        (13, 16, 2),
        (21, 22, 2),
        (30, 31, 2),
        (40, 41, 3),
    ] {
        let plan = Plan::read(
            &leads.to_string(),
            &bights.to_string(),
            &passes.to_string(),
            "1",
        )
        .expect("a knot");
        let shapes = walk(&plan, usize::MAX, frames);
        let image = walk(&plan, 0, frames);
        println!(
            "{leads:>3} × {bights:<3} × {passes}  {:>9}  {shapes:>8.1?}  {image:>8.1?}",
            segments(&plan)
        );
    }
}

/// The median time of a frame.
fn walk(plan: &Plan, by_shapes: usize, frames: usize) -> Duration {
    let script = Script::new(plan.clone(), AtOnce::default());
    let mut picture = PictureView::default().by_shapes_up_to(by_shapes);
    let mut pane = Pane::new(1920, 1080);
    let places: Vec<_> = script.places().collect();
    let mut times: Vec<Duration> = places[places.len() / 2..]
        .iter()
        .take(frames)
        .map(|place| {
            let start = Instant::now();
            let step = script.step(*place).expect("a place of the script");
            picture.show(Some(Subject::of(&script, &step)));
            let pixels = pane.paint::<()>(picture.view(), &app::theme());
            std::hint::black_box(pixels);
            start.elapsed()
        })
        .collect();
    times.sort();
    times[times.len() / 2]
}

fn segments(plan: &Plan) -> usize {
    let pass_leg = plan.laying().nth_leg(plan.laying().legs() / 2);
    let moment = pass_leg.map_or(Moment::Finished, Moment::at);
    let viewport = Viewport::new(1920.0, 1080.0);
    let scene = Scene::build(
        View::RolledOut,
        plan.laying(),
        plan.side,
        plan.hand,
        &moment,
        viewport,
    );
    DisplayList::of(&scene).segments()
}
