//! The pins of a leg and their numbers: where they are not seen the picture says so, and a look at a leg has
//! the same marks as the leg.

use crate::flat_cords;

use kurbo::{BezPath, Circle, ParamCurve as _, PathEl, Point, Rect, Shape as _};
use marlinspeak::bench::{Ground, Millimetres};
use marlinspeak::guide::{AtOnce, Captions, GlossaryWord, Plan, Script};
use marlinspeak::knot::{Hand, LayingOrder, Side};
use marlinspeak::picture::{
    DisplayItem, DisplayList, Moment, Outline, Role, Scene, Subject, View, Viewport,
};
use marlinspeak::words::Words;

use flat_cords::{laying, moments};

const TAGS: [&str; 4] = ["en", "de", "es", "fr"];

fn bounds(item: &DisplayItem) -> Rect {
    match &item.outline {
        Outline::Path(path) => path.bounding_box(),
        Outline::Circle(circle) => circle.bounding_box(),
    }
}

fn circles(list: &DisplayList, role: Role) -> Vec<Circle> {
    let items = list.items().iter().filter(|item| item.role == role);
    let circles = items.filter_map(|item| match item.outline {
        Outline::Circle(circle) => Some(circle),
        Outline::Path(_) => None,
    });
    circles.collect()
}

fn paths(list: &DisplayList, role: Role) -> Vec<&BezPath> {
    let items = list.items().iter().filter(|item| item.role == role);
    let paths = items.filter_map(|item| match &item.outline {
        Outline::Path(path) => Some(path),
        Outline::Circle(_) => None,
    });
    paths.collect()
}

fn picture(size: Viewport) -> Rect {
    Rect::new(0.0, 0.0, size.width.into(), size.height.into())
}

fn tube(list: &DisplayList) -> Rect {
    let mut items = list.items().iter();
    bounds(items.find(|item| item.role == Role::Tube).unwrap())
}

/// A leg of a large knot goes out of a narrow picture: the number of the pin beyond is whole, stands where the
/// cord goes out and not among the numbers of pins that are seen, and has a tip that points out.
#[test]
fn the_number_of_a_pin_beyond_the_picture_points_to_it() {
    let laying = laying(21, 40, 2, "1", LayingOrder::default());
    let (mut beyond, mut at_cords) = (0, 0);
    for (width, height) in [(348.0, 448.0), (500.0, 420.0), (348.0, 447.0)] {
        let size = Viewport::new(width, height);
        for nth in 24..44 {
            let pass_leg = laying.nth_leg(nth).unwrap();
            for crossings in [0..4, 8..12, 16..usize::MAX] {
                let moment = Moment::At {
                    pass_leg,
                    crossings,
                };
                let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
                let scene = Scene::build(view, &laying, side, hand, &moment, size);
                if !scene.is_zoomed() {
                    continue;
                }
                let list = DisplayList::of(&scene);
                let pins = circles(&list, Role::Pin);
                let is_top = |y: f32, at: Point| at.y < f64::from(y) / 2.0;
                for (disc, tip) in [(Role::FromDisc, Role::From), (Role::To, Role::To)] {
                    for number in circles(&list, disc) {
                        let what = format!("{width} {height} {moment:?}: {number:?}");
                        let edges = picture(size);
                        assert!(edges.contains_rect(number.bounding_box()), "{what}");
                        let mut tips = paths(&list, tip).into_iter();
                        let tip =
                            tips.find(|tip| tip.bounding_box().overlaps(number.bounding_box()));
                        let at_it = pins.iter().filter(|pin| {
                            let is_of_rim =
                                is_top(height, pin.center) == is_top(height, number.center);
                            is_of_rim && (pin.center.x - number.center.x).abs() < number.radius
                        });
                        let at_it = at_it.count();
                        let Some(tip) = tip else {
                            assert_eq!(at_it, 1, "{what}");
                            continue;
                        };
                        // It stands at its cord: clear of every pin, and of the numbers of its rim.
                        let plain = paths(&list, Role::PinNumber).into_iter();
                        let mut plain = plain.map(BezPath::bounding_box);
                        let row = plain.find(|other| {
                            let middle = other.center();
                            let is_of_rim = is_top(height, middle) == is_top(height, number.center);
                            is_of_rim && (middle.y - number.center.y).abs() < number.radius
                        });
                        let nearest = pins.iter().map(|pin| {
                            (pin.center - number.center).hypot() - pin.radius - number.radius
                        });
                        let nearest = nearest.fold(f64::MAX, f64::min);
                        let is_at_cord = row.is_none() && nearest > 0.0;
                        assert!(is_at_cord || at_it == 0, "{what}: {nearest} {row:?}");
                        at_cords += usize::from(is_at_cord);
                        let corners = tip.segments().map(|edge| edge.start());
                        let out = corners.map(|corner| (corner - number.center).hypot());
                        let out = out.fold(0.0, f64::max) - number.radius;
                        let tip = tip.bounding_box();
                        assert!(out > 3.0, "{what}: {out}");
                        assert!(edges.contains_rect(tip), "{what}: {tip:?}");
                        beyond += 1;
                    }
                }
            }
        }
    }
    assert!(beyond > 20 && at_cords > beyond / 2, "{beyond} {at_cords}");
}

/// A leg of a knot on a ground, with the words of a language in its picture.
fn told(counts: (u16, u16), ground: Option<Ground>, nth: u32, behind: &Captions) -> Subject {
    let laying = laying(counts.0, counts.1, 1, "1", LayingOrder::default());
    Subject::Knot {
        moment: Moment::at(laying.nth_leg(nth).unwrap()),
        laying,
        side: Side::Right,
        hand: Hand::Right,
        shape: None,
        ground,
        has_pins: true,
        captions: behind.clone(),
    }
}

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// What is round the back has a dashed number, a word for it that is whole and clear of all numbers, and a
/// dashed way to where its ring goes out of sight. What is seen has none of it.
#[test]
fn a_pin_round_the_back_is_said_to_be_behind_in_every_language() {
    let plan = Plan::read("11", "9", "1", "").unwrap();
    for tag in TAGS {
        let captions = Words::load(Some(tag)).unwrap().captions(&plan);
        let (mut with_word, mut behind, mut led) = (0, 0, 0);
        for (counts, ground) in [
            ((11, 9), None),
            ((9, 7), None),
            ((5, 7), None),
            ((6, 5), Some(Ground::Ball(mm(38.0)))),
        ] {
            for nth in 0..2 * u32::from(counts.1) {
                for (width, height) in [(348.0, 448.0), (640.0, 560.0)] {
                    let size = Viewport::new(width, height);
                    let subject = told(counts, ground, nth, &captions);
                    let list = DisplayList::of(&subject.scene(View::RoundTheTube, size));
                    let what = format!("{tag} {counts:?} leg {nth} {width}");
                    let words = paths(&list, Role::Label);
                    // A dashed ring has a contour for each of its dashes.
                    let dashed = |role| {
                        let rings = paths(&list, role).into_iter();
                        let count = rings.filter(|path| contours(path).len() > 7);
                        count.map(BezPath::bounding_box).collect::<Vec<_>>()
                    };
                    let far: Vec<Rect> = [Role::From, Role::To].map(dashed).concat();
                    behind += far.len();
                    with_word += words.len();
                    assert!(words.len() <= far.len(), "{what}");
                    let numbers = list.items().iter().filter(|item| {
                        matches!(item.role, Role::PinNumber | Role::FromDisc | Role::To)
                    });
                    let numbers: Vec<Rect> = numbers.map(bounds).collect();
                    for word in &words {
                        let word = word.bounding_box();
                        assert!(picture(size).contains_rect(word), "{what}: {word:?}");
                        let touched = numbers.iter().find(|number| number.overlaps(word));
                        assert!(touched.is_none(), "{what}: {word:?} {touched:?}");
                        assert!(
                            far.iter().any(|ring| near(*ring, word) < 40.0),
                            "{what}: {word:?} {far:?}"
                        );
                    }
                    if ground.is_none() {
                        let tube = tube(&list);
                        let tips = [Role::From, Role::To]
                            .map(|role| paths(&list, role))
                            .concat();
                        led += tips
                            .iter()
                            .flat_map(|path| contours(path))
                            .filter(|contour| contour.elements().len() == 4)
                            .filter(|contour| {
                                let at = contour.bounding_box();
                                let is_at = |edge: f64| {
                                    (at.x0 - edge).abs() < 2.0 || (at.x1 - edge).abs() < 2.0
                                };
                                is_at(tube.x0) || is_at(tube.x1)
                            })
                            .count();
                    }
                }
            }
        }
        assert!(behind > 20, "{tag}: {behind}");
        assert!(2 * with_word > behind, "{tag}: {with_word} of {behind}");
        assert!(led > 5, "{tag}: {led}");
    }
    // A leg that is seen from pin to pin.
    let captions = Words::english().captions(&plan);
    let subject = told((3, 9), None, 8, &captions);
    let list = DisplayList::of(&subject.scene(View::RoundTheTube, Viewport::new(500.0, 500.0)));
    assert!(paths(&list, Role::Label).is_empty());
    assert!(paths(&list, Role::To).is_empty());
}

/// How far two rectangles are apart.
fn near(one: Rect, other: Rect) -> f64 {
    let aside = (one.x0 - other.x1).max(other.x0 - one.x1).max(0.0);
    let above = (one.y0 - other.y1).max(other.y0 - one.y1).max(0.0);
    aside.hypot(above)
}

/// The closed lines of a path, each by itself.
fn contours(path: &BezPath) -> Vec<BezPath> {
    let mut contours: Vec<BezPath> = Vec::new();
    for element in path {
        if matches!(element, PathEl::MoveTo(_)) {
            contours.push(BezPath::new());
        }
        if let Some(last) = contours.last_mut() {
            last.push(element);
        }
    }
    contours
}

/// In every picture with room for them the same pins and the same numbers are seen, those at the very edge
/// among them: how large it is decides nothing.
#[test]
fn the_same_pins_have_their_numbers_in_pictures_of_every_size() {
    let knob = [
        (348.0, 448.0),
        (437.0, 461.0),
        (445.0, 500.0),
        (533.0, 461.0),
        (640.0, 560.0),
        (662.0, 641.0),
        (768.0, 700.0),
    ];
    let tube = [
        (540.0, 560.0),
        (620.0, 600.0),
        (662.0, 641.0),
        (900.0, 800.0),
    ];
    for (counts, ground, sizes) in [
        ((6, 5), Some(Ground::Ball(mm(40.0))), &knob[..]),
        ((11, 9), None, &tube[..]),
        ((9, 7), None, &tube[..]),
    ] {
        for nth in 0..2 * u32::from(counts.1) {
            let mut first = None;
            for &(width, height) in sizes {
                let size = Viewport::new(width, height);
                let subject = told(counts, ground, nth, &Captions::default());
                let list = DisplayList::of(&subject.scene(View::RoundTheTube, size));
                let pins = circles(&list, Role::Pin);
                let seen = if ground.is_some() {
                    (pins.len(), paths(&list, Role::PinNumber).len())
                } else {
                    // Where a tube bends away the room between numbers is another in each picture.
                    let edges = tube_edges(&list);
                    let is_at_edge =
                        |pin: &&Circle| edges.iter().any(|edge| (pin.center.x - edge).abs() < 1.5);
                    (pins.iter().filter(is_at_edge).count(), 0)
                };
                let first = *first.get_or_insert(seen);
                assert_eq!(seen, first, "{counts:?} leg {nth} {width} × {height}");
            }
        }
    }
}

/// The way to a pin round the back ends at no pin that is seen: it would be taken for the one that is meant.
#[test]
fn the_way_to_a_far_pin_ends_at_no_other_pin() {
    let mut tips = 0;
    for counts in [(11, 9), (9, 7), (7, 5)] {
        for nth in 0..2 * u32::from(counts.1) {
            for (width, height) in [(540.0, 560.0), (662.0, 641.0), (900.0, 800.0)] {
                let mut subject = told(counts, None, nth, &Captions::default());
                // Its first part alone: the leg stands in the middle only as far as it is told.
                if let Subject::Knot { moment, laying, .. } = &mut subject {
                    *moment = Moment::At {
                        pass_leg: laying.nth_leg(nth).unwrap(),
                        crossings: 0..2,
                    };
                }
                let size = Viewport::new(width, height);
                let list = DisplayList::of(&subject.scene(View::RoundTheTube, size));
                let pins = circles(&list, Role::Pin);
                let shapes = [Role::From, Role::To].map(|role| paths(&list, role));
                let shapes = shapes.iter().flatten().map(kurbo::Shape::bounding_box);
                // A tip is 9 pixels long and 10 wide.
                let is_tip = |shape: &Rect| {
                    (shape.width() - 9.0).abs() < 0.1 && (shape.height() - 10.0).abs() < 0.1
                };
                for tip in shapes.filter(is_tip) {
                    let touched = pins.iter().find(|pin| pin.bounding_box().overlaps(tip));
                    assert!(
                        touched.is_none(),
                        "{counts:?} leg {nth}: {tip:?} {touched:?}"
                    );
                    tips += 1;
                }
            }
        }
    }
    assert!(tips > 5, "{tips}");
}

fn tube_edges(list: &DisplayList) -> [f64; 2] {
    let tube = tube(list);
    [tube.x0, tube.x1]
}

/// A look at the work has the leg that was laid last with its signs and the numbers of its pins, as when it
/// was told.
#[test]
fn the_leg_that_is_looked_at_has_the_marks_of_a_leg() {
    for (leads, bights, passes) in [(5, 7, 1), (5, 7, 2), (4, 5, 3)] {
        let laying = laying(leads, bights, passes, "1", LayingOrder::default());
        for nth in 0..laying.legs() {
            let pass_leg = laying.nth_leg(nth).unwrap();
            for view in [View::RoundTheTube, View::RolledOut] {
                let marks = |moment: &Moment| {
                    let size = Viewport::new(760.0, 560.0);
                    let scene = Scene::build(view, &laying, Side::Right, Hand::Right, moment, size);
                    let list = DisplayList::of(&scene);
                    let signs = [Role::Over, Role::Under]
                        .map(|role| list.items().iter().filter(|item| item.role == role).count());
                    let ends = [Role::FromDisc, Role::To].map(|role| circles(&list, role).len());
                    (signs, ends)
                };
                let what = format!("{leads} {bights} {passes}, leg {nth} {view:?}");
                let looked = marks(&Moment::Looking(pass_leg));
                assert_eq!(looked, marks(&Moment::at(pass_leg)), "{what}");
                assert_eq!(looked.1, [1, 1], "{what}");
                let over = laying.crossings(pass_leg).filter(|crossing| crossing.over);
                if view == View::RolledOut {
                    assert!(looked.0[0] >= over.count(), "{what}");
                }
            }
        }
    }
}

/// On a board of the size that a window of 1100 × 760 has for it the numbers are as large as elsewhere, and
/// both circles are called by their names.
#[test]
fn numbers_of_a_small_board_are_as_large_as_elsewhere() {
    let ground = Ground::Flat {
        outer: mm(150.0),
        hole: Some(mm(40.0)),
    };
    let setup = marlinspeak::guide::Setup::in_place(ground, marlinspeak::bench::Cord::new(mm(6.0)));
    let plan = Plan::read("6", "5", "2", "")
        .unwrap()
        .with_setup(Some(setup));
    let captions = Words::english().captions(&plan);
    let tall = |width: f32, height: f32| {
        let script = Script::new(plan.clone(), AtOnce::WholeLeg);
        let laid = moments(plan.laying()).remove(1);
        let subject = Subject::tied(script.plan(), laid).captioned(&captions);
        let size = Viewport::new(width, height);
        let list = DisplayList::of(&subject.scene(View::RoundTheTube, size));
        let numbers = paths(&list, Role::PinNumber).into_iter();
        let tall = numbers.map(|number| number.bounding_box().height());
        let words = paths(&list, Role::Label).len();
        (tall.fold(f64::MAX, f64::min), words)
    };
    let (large, _) = tall(900.0, 900.0);
    let (small, words) = tall(445.0, 448.0);
    assert!(small > 0.95 * large, "{small} {large}");
    assert_eq!(words, 2);
    let (smaller, _) = tall(348.0, 448.0);
    assert!(smaller > 0.8 * large, "{smaller} {large}");
}

/// The numbers that count leads stand beside the tube and whole, over no pin, in every place that the
/// glossary has for its picture.
#[test]
fn what_counts_the_leads_covers_no_pin() {
    let [leads] = &Subject::of_word(GlossaryWord::Lead).unwrap()[..] else {
        panic!("one picture");
    };
    for (width, height) in [
        (155.0, 333.0),
        (430.0, 1140.0),
        (300.0, 300.0),
        (640.0, 330.0),
    ] {
        let size = Viewport::new(width, height);
        let list = DisplayList::of(&leads.scene(View::RoundTheTube, size));
        let discs = circles(&list, Role::To);
        assert_eq!(discs.len(), 5);
        let tube = tube(&list);
        for disc in discs {
            let what = format!("{width} {height}: {disc:?} {tube:?}");
            assert!(picture(size).contains_rect(disc.bounding_box()), "{what}");
            assert!(disc.bounding_box().x0 >= tube.x1, "{what}");
            for pin in circles(&list, Role::Pin) {
                let apart = (pin.center - disc.center).hypot();
                assert!(apart > pin.radius + disc.radius, "{what}: {pin:?}");
            }
        }
        assert!(tube.x0 >= -0.5, "{tube:?}");
    }
}

/// No stray piece of an end hangs at the very edge of a tube.
#[test]
fn an_end_at_the_edge_of_a_tube_leaves_no_sliver_below() {
    let mut ends = 0;
    for (leads, bights) in [(5, 4), (3, 4), (5, 7), (4, 5), (11, 9)] {
        let laying = laying(leads, bights, 2, "1", LayingOrder::default());
        for side in [Side::Right, Side::Left] {
            let mut hung: Vec<(String, Rect, Rect)> = Vec::new();
            // All ends hang down equally far, farther than any bight.
            let mut tip: f64 = 0.0;
            for nth in 0..laying.legs() {
                let moment = Moment::at(laying.nth_leg(nth).unwrap());
                let size = Viewport::new(890.0, 553.0);
                let view = View::RoundTheTube;
                let scene = Scene::build(view, &laying, side, Hand::Right, &moment, size);
                let list = DisplayList::of(&scene);
                let (tube, items) = (tube(&list), list.items().iter());
                let cords = items.filter_map(|item| match &item.outline {
                    Outline::Path(path) if matches!(item.role, Role::Laid(_) | Role::Beside(_)) => {
                        Some(contours(path))
                    }
                    _ => None,
                });
                let pins = circles(&list, Role::Pin);
                let lowest = pins.iter().map(|pin| pin.center.y + 1.5 * pin.radius);
                let lowest = lowest.fold(0.0, f64::max);
                for cord in cords.flatten().map(|cord| cord.bounding_box()) {
                    tip = tip.max(cord.y1);
                    // What shows again of an end beyond the bights that lie over it.
                    if cord.y0 > lowest && cord.height() < 40.0 {
                        let what = format!("{leads} {bights} leg {nth} {side:?}");
                        hung.push((what, cord, tube));
                    }
                }
            }
            for (what, end, tube) in hung.iter().filter(|(_, cord, _)| cord.y1 > tip - 2.0) {
                let is_at_edge = end.x0 < tube.x0 + 6.0 || end.x1 > tube.x1 - 6.0;
                assert!(!is_at_edge || end.width() > 5.0, "{what}: {end:?} {tube:?}");
                ends += 1;
            }
        }
    }
    assert!(ends > 10, "{ends}");
}

/// Over the whole screen a knot takes most of the height: what lies between it, its numbers and the edges is
/// no more than they need.
#[test]
fn a_knot_takes_most_of_the_height_of_its_picture() {
    let laying = laying(5, 7, 1, "1", LayingOrder::default());
    for (width, height, least) in [(890.0, 553.0, 0.625), (640.0, 310.0, 0.45)] {
        for nth in 0..laying.legs() {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let size = Viewport::new(width, height);
            let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
            let scene = Scene::build(view, &laying, side, hand, &moment, size);
            let share = scene.knot_width() / height;
            assert!(share > least, "{width} {height} leg {nth}: {share}");
        }
    }
    // The loose end of the last leg, its head with it, stops short of the numbers.
    let moment = Moment::at(laying.nth_leg(laying.legs() - 1).unwrap());
    let size = Viewport::new(890.0, 553.0);
    let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
    let list = DisplayList::of(&Scene::build(view, &laying, side, hand, &moment, size));
    let lowest = paths(&list, Role::ActiveEdge);
    let lowest = lowest.iter().map(|path| path.bounding_box().y1);
    let lowest = lowest.fold(0.0, f64::max);
    for number in circles(&list, Role::To) {
        let top = number.bounding_box().y0;
        assert!(lowest <= top, "{lowest} {number:?}");
    }
}
