//! Knots on a board, a ball and a taper, read back from their pixels: which cord lies on top, at which
//! pins a leg begins and ends, how the outlines run.

use crate::flat_cords;

use kurbo::{Point, Shape as _, Vec2};
use marlinspeak::bench::{Cord, Finish, Ground, Millimetres, Tube};
use marlinspeak::guide::{AtOnce, Captions, LiftTask, Plan, RimNames, Script, Setup, What};
use marlinspeak::knot::{Hand, Knot, LayingOrder, PassLeg, Pin, Rim, Side};
use marlinspeak::picture::{
    Colour, DisplayList, Image, Moment, Outline, Paint, Painter, Palette, Role, Scene, Subject,
    View, Viewport,
};

use flat_cords::{Flat, KNOTS, laying, moments, on_the_tube, told, tops_agree};

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

fn mat() -> Ground {
    Ground::Flat {
        outer: mm(150.0),
        hole: None,
    }
}

fn holed() -> Ground {
    Ground::Flat {
        outer: mm(160.0),
        hole: Some(mm(60.0)),
    }
}

fn taper() -> Ground {
    Ground::Taper {
        bottom: mm(40.0),
        top: mm(26.0),
        over: mm(80.0),
    }
}

fn ball() -> Ground {
    Ground::Ball(mm(38.0))
}

/// A knot on a ground at a moment.
fn subject(
    counts: (u16, u16, u16, &str),
    (side, hand): (Side, Hand),
    moment: Moment,
    ground: Ground,
) -> Subject {
    let (leads, bights, passes, weave) = counts;
    Subject::Knot {
        laying: laying(leads, bights, passes, weave, LayingOrder::default()),
        side,
        hand,
        moment,
        shape: None,
        ground: Some(ground),
        has_pins: true,
        captions: Captions::default(),
    }
}

#[test]
fn on_every_ground_the_cord_on_top_is_the_one_that_was_told_to_go_over() {
    let mut painter = Painter::new();
    for ground in [mat(), holed(), ball(), taper()] {
        for counts in KNOTS {
            let (leads, bights, passes, weave) = counts;
            let laying = laying(leads, bights, passes, weave, LayingOrder::default());
            for moment in moments(&laying) {
                for turned in [(Side::Right, Hand::Right), (Side::Left, Hand::Left)] {
                    let what = format!("{ground:?}, {counts:?}, {moment:?}, {turned:?}");
                    let viewport = Viewport::new(1100.0, 1100.0);
                    let scene = subject(counts, turned, moment.clone(), ground)
                        .scene(View::RoundTheTube, viewport);
                    let (laid, in_hand) = on_the_tube(&laying, &moment);
                    let flat = Flat {
                        laying: &laying,
                        in_hand,
                    };
                    let image = painter.paint(&DisplayList::of(&scene), &flat);
                    let told = told(&laying, laid);
                    let seen = tops_agree(&what, &told, &scene, image, &flat);
                    if ground.is_flat() {
                        assert!(!scene.is_zoomed(), "{what}");
                        assert_eq!(seen.len(), told.len(), "all of a board is seen: {what}");
                    } else if told.len() > 4 {
                        assert!(!seen.is_empty(), "{what}");
                    }
                }
            }
        }
    }
}

/// Where the pins of a picture stand, those farther from its middle first.
fn pins(list: &DisplayList) -> Vec<Point> {
    let circles = list.items().iter().filter_map(|item| match &item.outline {
        Outline::Circle(circle) if item.role == Role::Pin => Some(circle.center),
        _ => None,
    });
    circles.collect()
}

/// The pin of a rim of a board, among those of a picture: numbers run to the right hand of a tyer who
/// works to the right, seen from the outer side, and the board is turned by so many half pitches.
fn stands(pin: Pin, (knot, turned): (&Knot, f64), middle: Point, pins: &[Point]) -> Point {
    let half_pitches = f64::from(knot.stands_at(pin).1) - turned;
    let share = half_pitches / f64::from(knot.lattice().round());
    let (sin, cos) = (share * std::f64::consts::TAU).sin_cos();
    let way = Vec2::new(sin, cos);
    let reach = |at: &&Point| {
        let from = **at - middle;
        let off = (from.normalize() - way).hypot();
        (off < 1e-3).then_some(from.hypot())
    };
    let mut found: Vec<(f64, Point)> = pins
        .iter()
        .filter_map(|at| reach(&at).map(|reach| (reach, *at)))
        .collect();
    found.sort_by(|one, other| one.0.total_cmp(&other.0));
    match pin.rim {
        Rim::Bottom => found.last().unwrap().1,
        Rim::Top => found.first().unwrap().1,
    }
}

/// The leg in hand in one colour on bare ground.
struct InHand;

impl Palette for InHand {
    fn colour(&self, role: Role) -> Colour {
        match role {
            Role::Ground | Role::Tube => Colour::rgb(0x00FF_FFFF),
            Role::Active | Role::ActiveRest => Colour::rgb(0),
            _ => Colour::CLEAR,
        }
    }
}

/// How near to a point the picture is black.
fn nearest(image: &Image, to: Point) -> f64 {
    let mut nearest = f64::MAX;
    for y in 0..image.height() {
        for x in 0..image.width() {
            if image.pixel(x, y).is_some_and(|seen| seen.red < 128) {
                let here = Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5);
                nearest = nearest.min(here.distance(to));
            }
        }
    }
    nearest
}

#[test]
fn a_leg_of_a_mat_begins_and_ends_at_its_pins_and_at_no_others() {
    let mut painter = Painter::new();
    let (leads, bights) = (5, 7);
    let laying = laying(leads, bights, 1, "1", LayingOrder::default());
    let size = Viewport::new(420.0, 420.0);
    for nth in 0..laying.legs() {
        let pass_leg = laying.nth_leg(nth).unwrap();
        let moment = Moment::at(pass_leg);
        let of = (leads, bights, 1, "1");
        let scene =
            subject(of, (Side::Right, Hand::Right), moment, mat()).scene(View::RoundTheTube, size);
        let list = DisplayList::of(&scene);
        let pins = pins(&list);
        assert_eq!(pins.len(), 2 * usize::from(bights));
        let image = painter.paint(&list, &InHand);
        let mut by_distance: Vec<(f64, Point)> =
            pins.iter().map(|at| (nearest(image, *at), *at)).collect();
        by_distance.sort_by(|one, other| one.0.total_cmp(&other.0));
        let leg = laying.leg(pass_leg).unwrap();
        let middle = Point::new(210.0, 210.0);
        let knot = laying.knot();
        // The middle of the leg is nearest to the tyer.
        let turned = f64::from(knot.stands_at(leg.from).1) + f64::from(leads) / 2.0;
        for pin in [leg.from, leg.to] {
            let there = stands(pin, (knot, turned), middle, &pins);
            let nearest = &by_distance[..2];
            assert!(
                nearest.iter().any(|(_, at)| at.distance(there) < 0.5),
                "{pass_leg:?}: {pin:?} at {there:?}, but the cord is at {nearest:?}"
            );
        }
        let [landed, next] = [by_distance[1].0, by_distance[2].0];
        assert!(next > landed + 2.0, "{pass_leg:?}: {by_distance:?}");
    }
}

#[test]
fn legs_of_a_mat_lie_as_close_at_the_inner_circle_as_at_the_outer_one() {
    // cos α = B s / 2πr at every radius r: r cos α is the same all along a leg.
    for (counts, ground) in [
        ((6, 7, 1, "1"), mat()),
        ((5, 7, 1, "1"), holed()),
        ((9, 8, 1, "1"), mat()),
    ] {
        let scene = subject(counts, (Side::Right, Hand::Right), Moment::Laid, ground)
            .scene(View::RoundTheTube, Viewport::new(900.0, 900.0));
        let middle = Point::new(450.0, 450.0);
        let products: Vec<f64> = scene
            .crossing_points()
            .iter()
            .flat_map(|point| {
                let from = point.at - middle;
                [point.rising_way, point.falling_way].map(|way| way.normalize().dot(from).abs())
            })
            .collect();
        #[expect(clippy::cast_precision_loss)]
        let mean = products.iter().sum::<f64>() / products.len() as f64;
        for product in &products {
            assert!(
                (product / mean - 1.0).abs() < 0.03,
                "{counts:?}: {product} and {mean}"
            );
        }
    }
}

/// The ground alone.
struct Outlined;

impl Palette for Outlined {
    fn colour(&self, role: Role) -> Colour {
        match role {
            Role::Ground => Colour::rgb(0x00FF_FFFF),
            Role::Tube => Colour::rgb(0),
            _ => Colour::CLEAR,
        }
    }
}

/// Left and right edge of what is black in a row of pixels.
fn edges(image: &Image, y: u32) -> Option<(f64, f64)> {
    let dark = |x: &u32| image.pixel(*x, y).is_some_and(|seen| seen.red < 128);
    let first = (0..image.width()).find(dark)?;
    let last = (0..image.width()).rev().find(dark)?;
    Some((f64::from(first), f64::from(last) + 1.0))
}

#[test]
fn a_ball_is_round_and_a_taper_as_pointed_as_it_is() {
    let mut painter = Painter::new();
    let mut image = |ground| {
        let scene = subject(
            (5, 7, 1, "1"),
            (Side::Right, Hand::Right),
            Moment::Laid,
            ground,
        )
        .scene(View::RoundTheTube, Viewport::new(600.0, 600.0));
        let list = DisplayList::of(&scene);
        painter.paint(&list, &Outlined).clone()
    };
    let round = image(ball());
    let rows: Vec<(u32, f64, f64)> = (0..600)
        .filter_map(|y| edges(&round, y).map(|(left, right)| (y, left, right)))
        .collect();
    let (top, bottom) = (
        f64::from(rows[0].0),
        f64::from(rows[rows.len() - 1].0) + 1.0,
    );
    let (radius, middle) = ((bottom - top) / 2.0, f64::midpoint(top, bottom));
    assert!(radius > 150.0, "as large as fits: {radius}");
    for (y, left, right) in rows {
        let up = f64::from(y) + 0.5 - middle;
        let half = (radius * radius - up * up).max(0.0).sqrt();
        // Nearer to the poles a dot up is many across.
        if half > 0.5 * radius {
            let [left, right] = [300.0 - left, right - 300.0];
            assert!(
                (left - half).abs() < 1.5 && (right - half).abs() < 1.5,
                "{y}"
            );
        }
    }
    // 40 mm at the bottom, 26 mm at the top, 80 mm along it: so much narrower for each pixel up.
    let pointed = image(taper());
    let slope: f64 = (40.0 - 26.0) / 80.0;
    let slope = 2.0 * (slope / 2.0) / (1.0 - slope * slope / 4.0).sqrt();
    let width = |y: u32| {
        edges(&pointed, y)
            .map(|(left, right)| right - left)
            .unwrap()
    };
    let measured = (width(590) - width(10)) / 580.0;
    assert!((measured - slope).abs() < 0.006, "{measured} and {slope}");
}

#[test]
fn only_what_is_tied_in_place_is_seen_on_its_ground_before_it_is_lifted() {
    let cord = || Cord::new(mm(3.0));
    let plan = |setup: Setup| {
        let plan = Plan::read("5", "7", "1", "").unwrap();
        plan.with_setup(Some(setup))
    };
    let grounds = |plan: Plan| {
        let script = Script::new(plan, AtOnce::default());
        let mut laid = Vec::new();
        let mut after = Vec::new();
        for step in script.steps() {
            let Subject::Knot { ground, .. } = Subject::of(&script, &step) else {
                continue;
            };
            match step.what {
                What::Lay(_) => laid.push(ground),
                What::Fair(_) | What::Finish(_) => after.push(ground),
                _ => {}
            }
        }
        laid.dedup();
        after.dedup();
        (laid, after)
    };
    let mut lifted = Setup::in_place(ball(), cord());
    lifted.in_place = false;
    assert_eq!(grounds(plan(lifted)), (vec![None], vec![Some(ball())]));
    let fixed = plan(Setup::in_place(ball(), cord()));
    assert_eq!(grounds(fixed), (vec![Some(ball())], vec![Some(ball())]));
    let board = plan(Setup::in_place(mat(), cord()));
    assert_eq!(board.rims(), RimNames::OuterInner);
    let (laid, after) = grounds(board);
    for seen in [laid, after] {
        assert!(matches!(seen[..], [Some(Ground::Flat { .. })]), "{seen:?}");
    }
}

#[test]
fn rolled_out_a_mat_is_the_lattice_of_a_tube() {
    let pass_leg = PassLeg {
        pass: 1,
        strand: 1,
        leg: 9,
    };
    let size = Viewport::new(800.0, 500.0);
    let on_board = subject(
        (5, 7, 1, "1"),
        (Side::Right, Hand::Right),
        Moment::at(pass_leg),
        mat(),
    );
    let laying = laying(5, 7, 1, "1", LayingOrder::default());
    let moment = Moment::at(pass_leg);
    let tube = Scene::build(
        View::RolledOut,
        &laying,
        Side::Right,
        Hand::Right,
        &moment,
        size,
    );
    let [board, tube] =
        [on_board.scene(View::RolledOut, size), tube].map(|scene| DisplayList::of(&scene));
    assert_eq!(board.items(), tube.items());
}

/// On the tube while it is tied and lifted, and from where it goes over the ball on the ball.
#[test]
fn a_knot_that_is_slipped_over_its_ball_is_seen_on_it() {
    let setup = Setup {
        finish: Some(Finish {
            around: ball(),
            open_to: None,
        }),
        ..Setup::new(Tube::plain(mm(45.0)), Cord::new(mm(3.0)))
    };
    let plan = Plan::read("9", "8", "2", "").unwrap();
    let script = Script::new(plan.with_setup(Some(setup)), AtOnce::default());
    let lifts: Vec<(LiftTask, Option<Ground>)> = script
        .steps()
        .filter_map(|step| match (&step.what, Subject::of(&script, &step)) {
            (What::Lift(lift), Subject::Knot { ground, .. }) => Some((lift.task, ground)),
            _ => None,
        })
        .collect();
    let [before @ .., last] = &lifts[..] else {
        panic!("nothing is lifted");
    };
    assert_eq!(*last, (LiftTask::OverBall, Some(ball())));
    assert!(before.len() > 1 && before.iter().all(|(_, ground)| ground.is_none()));
}

/// How far the shapes of a picture reach beyond its edges.
fn beyond(list: &DisplayList) -> f64 {
    let size = list.viewport();
    let [width, height] = [size.width, size.height].map(f64::from);
    let mut most = f64::MIN;
    for item in list.items() {
        if item.role == Role::Ground {
            continue;
        }
        let edge = match item.paint {
            Paint::Stroke(line) => line / 2.0,
            Paint::Fill => 0.0,
        };
        let reach = match &item.outline {
            Outline::Path(path) => path.bounding_box(),
            Outline::Circle(circle) => circle.bounding_box(),
        };
        for past in [-reach.x0, -reach.y0, reach.x1 - width, reach.y1 - height] {
            most = most.max(past + edge);
        }
    }
    most
}

#[test]
fn a_mat_is_whole_however_small_its_picture_is() {
    // That of the first question of the plan screen, and smaller and larger ones.
    let sizes = [
        (54.0, 48.0),
        (30.0, 34.0),
        (64.0, 64.0),
        (96.0, 54.0),
        (300.0, 240.0),
    ];
    for counts in [
        ["5", "7", "3"],
        ["6", "7", "2"],
        ["9", "8", "1"],
        ["12", "13", "1"],
        ["21", "20", "1"],
        ["30", "49", "1"],
    ] {
        for ground in [
            mat(),
            holed(),
            Ground::Flat {
                outer: mm(500.0),
                hole: None,
            },
        ] {
            let [leads, bights, passes] = counts;
            let plan = Plan::read(leads, bights, passes, "").unwrap();
            let setup = Setup::in_place(ground, Cord::new(mm(4.0)));
            let rigged = plan.with_setup(Some(setup));
            for (width, height) in sizes {
                let size = Viewport::new(width, height);
                let scene = Subject::finished(&rigged).scene(View::RoundTheTube, size);
                let list = DisplayList::of(&scene);
                let what = format!("{counts:?} {ground:?} {width} × {height}");
                assert_eq!(list.viewport(), size, "{what}");
                let past = beyond(&list);
                assert!(past <= 0.0, "{what}: cut by {past}");
                // And as large as it can be: it has most of its picture.
                if counts == ["5", "7", "3"] && ground == mat() {
                    assert!(past > -6.0, "{what}: {past}");
                }
                assert!(!scene.is_zoomed(), "{what}");
            }
        }
    }
}

/// The middles of the numbers of a picture, those of the leg in hand among them.
fn numbers(list: &DisplayList) -> Vec<Point> {
    let items = list.items().iter();
    let numbers = items.filter_map(|item| match (item.role, &item.outline) {
        (Role::PinNumber, Outline::Path(path)) => Some(path.bounding_box().center()),
        (Role::FromDisc | Role::To, Outline::Circle(circle)) => Some(circle.center),
        _ => None,
    });
    numbers.collect()
}

/// All pins of a board are seen at once: those of a circle have their numbers, or none but those of the leg.
#[test]
fn the_pins_of_a_circle_of_a_board_are_numbered_all_or_none() {
    let (mut all, hands) = (0, (Side::Right, Hand::Right));
    for counts in [
        (6, 5, 2, "1"),
        (5, 7, 1, "1"),
        (9, 8, 1, "1"),
        (7, 24, 1, "1"),
    ] {
        for ground in [mat(), holed()] {
            for size in [
                (420.0, 420.0),
                (570.0, 570.0),
                (541.0, 541.0),
                (900.0, 800.0),
            ] {
                let viewport = Viewport::new(size.0, size.1);
                let laid = laying(
                    counts.0,
                    counts.1,
                    counts.2,
                    counts.3,
                    LayingOrder::default(),
                );
                for moment in moments(&laid) {
                    let what = format!("{counts:?} {ground:?} {size:?} {moment:?}");
                    let scene =
                        subject(counts, hands, moment, ground).scene(View::RoundTheTube, viewport);
                    if scene.is_zoomed() {
                        continue;
                    }
                    let list = DisplayList::of(&scene);
                    let middle = Point::new(f64::from(size.0) / 2.0, f64::from(size.1) / 2.0);
                    let off = |at: &Point| (*at - middle).hypot();
                    let pins = pins(&list);
                    if pins.is_empty() {
                        continue;
                    }
                    let nearest = pins.iter().map(off).fold(f64::MAX, f64::min);
                    let farthest = pins.iter().map(off).fold(0.0, f64::max);
                    let numbers = numbers(&list);
                    let within = numbers.iter().filter(|at| off(at) < nearest).count();
                    let around = numbers.iter().filter(|at| off(at) > farthest).count();
                    let bights = usize::from(counts.1);
                    for count in [within, around] {
                        assert!(count <= 2 || count == bights, "{what}: {count}");
                    }
                    all += usize::from(within == bights);
                }
            }
        }
    }
    assert!(all > 60, "{all}");
}

/// The inner pins of a mat of few bights have their numbers where its picture is not small.
#[test]
fn a_mat_of_few_bights_has_all_of_its_numbers() {
    let hands = (Side::Right, Hand::Right);
    let counts = (6, 5, 2, "1");
    for side in [570.0, 700.0, 900.0] {
        for moment in moments(&laying(6, 5, 2, "1", LayingOrder::default())) {
            let what = format!("{side} {moment:?}");
            let is_tied = !matches!(moment, Moment::Finished);
            let ground = Ground::Flat {
                outer: mm(150.0),
                hole: Some(mm(40.0)),
            };
            let scene = subject(counts, hands, moment, ground);
            let scene = scene.scene(View::RoundTheTube, Viewport::new(side, side));
            let list = DisplayList::of(&scene);
            // While both circles of pins are in.
            if is_tied && pins(&list).len() >= 10 {
                assert!(
                    numbers(&list).len() >= 10,
                    "{what}: {}",
                    numbers(&list).len()
                );
            }
        }
    }
}

/// The number of a mark on a ball stands above it or below it, and not where the ball would be thinner.
#[test]
fn numbers_of_a_ball_stand_over_and_under_its_pins() {
    let hands = (Side::Right, Hand::Right);
    for counts in [(6, 5, 3, "1"), (5, 7, 1, "1"), (4, 9, 1, "1")] {
        let laid = laying(
            counts.0,
            counts.1,
            counts.2,
            counts.3,
            LayingOrder::default(),
        );
        for moment in moments(&laid) {
            let what = format!("{counts:?} {moment:?}");
            let scene = subject(counts, hands, moment, ball());
            let scene = scene.scene(View::RoundTheTube, Viewport::new(540.0, 560.0));
            let list = DisplayList::of(&scene);
            let pins = pins(&list);
            if pins.is_empty() {
                // They are out, and their numbers tell where they stood.
                continue;
            }
            let items = list.items().iter();
            let plain = items.filter_map(|item| match &item.outline {
                Outline::Path(path) if item.role == Role::PinNumber => Some(path.bounding_box()),
                _ => None,
            });
            for number in plain {
                let is_over = |pin: &Point| (pin.x - number.center().x).abs() < 4.0;
                assert!(pins.iter().any(is_over), "{what}: {number:?} {pins:?}");
            }
        }
    }
}
