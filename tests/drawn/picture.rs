//! The picture read back from its pixels: which cord lies on top, where the ground shows, what
//! the signs say.

use crate::dots;
use crate::flat_cords;

use kurbo::Shape as _;
use marlinspeak::guide::{AtOnce, FinishTask, Plan, Script, Step, What};
use marlinspeak::knot::{Hand, Knot, Lattice, Laying, LayingOrder, Leg, PassLeg, Rim, Side, Weave};
use marlinspeak::picture::{
    Colour, DefaultPalette, DisplayList, Image, Moment, Outline, Painter, Palette, Role, Scene,
    Subject, View, Viewport,
};

use flat_cords::{BARE, Flat, KNOTS, at, laying, moments, on_the_tube, told, tops_agree};

/// Calls `check` for every knot, moment, side, hand and order of laying.
fn for_each_picture(
    view: View,
    viewport: Viewport,
    mut check: impl FnMut(&str, &Laying, &Moment, &Scene, &Image, &Flat<'_>),
) {
    let mut painter = Painter::new();
    for (leads, bights, passes, weave) in KNOTS {
        for order in [LayingOrder::PassByPass, LayingOrder::StrandByStrand] {
            let mut laying = laying(leads, bights, passes, weave, order);
            if order == LayingOrder::StrandByStrand && laying.knot().strands() == 1 {
                if passes == 1 {
                    continue;
                }
                // With one strand there is no other order. Instead, the last pass has a cord of
                // its own, which begins at another pin.
                laying = laying.with_start(passes, 1);
            }
            for moment in moments(&laying) {
                for (side, hand) in [
                    (Side::Right, Hand::Right),
                    (Side::Left, Hand::Right),
                    (Side::Right, Hand::Left),
                    (Side::Left, Hand::Left),
                ] {
                    let what = format!(
                        "{leads} × {bights}, {passes} passes, weave {weave}, {order:?}, \
                         {moment:?}, {side:?}, {hand:?}"
                    );
                    let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
                    let (_, in_hand) = on_the_tube(&laying, &moment);
                    let flat = Flat {
                        laying: &laying,
                        in_hand,
                    };
                    let image = painter.paint(&DisplayList::of(&scene), &flat);
                    check(&what, &laying, &moment, &scene, image, &flat);
                }
            }
        }
    }
}

#[test]
fn rolled_out_the_cord_on_top_is_the_one_that_was_told_to_go_over() {
    for_each_picture(
        View::RolledOut,
        Viewport::new(900.0, 900.0),
        |what, laying, moment, scene, image, flat| {
            let told = told(laying, on_the_tube(laying, moment).0);
            let seen = tops_agree(what, &told, scene, image, flat);
            assert!(!scene.is_zoomed(), "{what}");
            for pair in told.keys() {
                assert!(
                    seen.contains(pair),
                    "{what}: {pair:?} is not in the picture"
                );
            }
            let knot = laying.knot();
            if *moment == Moment::Finished {
                let passes = usize::from(laying.passes());
                let crossings = usize::try_from(knot.crossings()).unwrap() * passes * passes;
                assert_eq!(seen.len(), crossings, "{what}");
            }
        },
    );
}

#[test]
fn round_the_tube_the_cord_on_top_is_the_one_that_was_told_to_go_over() {
    for_each_picture(
        View::RoundTheTube,
        Viewport::new(700.0, 900.0),
        |what, laying, moment, scene, image, flat| {
            let told = told(laying, on_the_tube(laying, moment).0);
            let seen = tops_agree(what, &told, scene, image, flat);
            if *moment == Moment::Finished {
                assert!(!seen.is_empty(), "{what}");
            }
        },
    );
}

/// Nests, leads, bights, lands, passes: each in both views, at every moment, for all sides and hands.
#[test]
fn nested_bights_lie_as_they_are_told_and_cross_nothing_else() {
    let mut painter = Painter::new();
    for (nested, leads, bights, lands, passes) in [
        (2, 3, 4, 2, 1),
        (2, 5, 3, 1, 2),
        (3, 4, 3, 2, 1),
        (4, 2, 5, 4, 1),
        (2, 6, 4, 2, 3),
    ] {
        let lattice = Lattice::plain(leads, bights).unwrap();
        let lattice = lattice.interwoven(nested, lands).unwrap();
        let knot = Knot::woven(lattice, Weave::Run(nested)).unwrap();
        for order in [LayingOrder::PassByPass, LayingOrder::StrandByStrand] {
            let laying = Laying::new(knot.clone(), passes, order).unwrap();
            for moment in moments(&laying) {
                for (side, hand) in [(Side::Right, Hand::Right), (Side::Left, Hand::Left)] {
                    for view in [View::RolledOut, View::RoundTheTube] {
                        let what =
                            format!("{lattice:?} × {passes}, {order:?}, {moment:?}, {hand:?}");
                        let viewport = Viewport::new(1600.0, 1600.0);
                        let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
                        let (laid, in_hand) = on_the_tube(&laying, &moment);
                        let flat = Flat {
                            laying: &laying,
                            in_hand,
                        };
                        let image = painter.paint(&DisplayList::of(&scene), &flat);
                        let told = told(&laying, laid);
                        let seen = tops_agree(&what, &told, &scene, image, &flat);
                        assert!(!scene.is_zoomed(), "{what}");
                        if view == View::RolledOut {
                            assert_eq!(seen.len(), told.len(), "{what}");
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn beside_an_over_cord_the_tube_shows_before_the_under_cord_does() {
    let mut gaps = 0;
    for_each_picture(
        View::RolledOut,
        Viewport::new(900.0, 900.0),
        |what, laying, moment, scene, image, flat| {
            let told = told(laying, on_the_tube(laying, moment).0);
            for point in scene.crossing_points() {
                let rising_on_top = told[&(point.rising, point.falling, point.row)];
                let (under, way) = if rising_on_top {
                    (point.falling, point.falling_way)
                } else {
                    (point.rising, point.rising_way)
                };
                let colour = flat.cord(under);
                for sign in [-0.25, 0.25] {
                    let mut ground = false;
                    for step in 1..1000_u16 {
                        match at(image, point.at + way * (f64::from(step) * sign)) {
                            Some(BARE) => ground = true,
                            Some(seen) if seen == colour => {
                                assert!(ground, "{what}: no gap at {:?}", point.at);
                                gaps += 1;
                                break;
                            }
                            Some(_) => {}
                            None => break,
                        }
                    }
                }
            }
        },
    );
    assert!(gaps > 10_000, "only {gaps} gaps were looked at");
}

#[test]
fn a_follower_lies_on_its_side_and_turns_inside_where_the_trade_says() {
    let laying = laying(3, 4, 2, "1", LayingOrder::default());
    for (side, hand) in [
        (Side::Right, Hand::Right),
        (Side::Left, Hand::Right),
        (Side::Right, Hand::Left),
        (Side::Left, Hand::Left),
    ] {
        let viewport = Viewport::new(900.0, 700.0);
        let scene = Scene::build(
            View::RolledOut,
            &laying,
            side,
            hand,
            &Moment::Finished,
            viewport,
        );
        let flat = Flat {
            laying: &laying,
            in_hand: None,
        };
        let mut painter = Painter::new();
        let image = painter.paint(&DisplayList::of(&scene), &flat);
        // On the right of a cord, for the eye, is a quarter turn clockwise from its travel.
        for point in scene.crossing_points() {
            let (first, way) = (point.rising, point.rising_way);
            let told = told(&laying, laying.legs());
            if first.pass != 1 || !told[&(first, point.falling, point.row)] {
                continue;
            }
            let turned = way.turn_90();
            let sign = if side == Side::Right { 1.0 } else { -1.0 };
            let beside = (1..200_u16)
                .filter_map(|step| at(image, point.at + turned * (sign * f64::from(step) / 2.0)))
                .find(|&colour| colour.blue == 0 && colour != flat.cord(first));
            assert_eq!(
                beside,
                Some(flat.cord(PassLeg { pass: 2, ..first })),
                "{side:?} {hand:?}"
            );
        }
        // Down the middle of the picture from the top edge to the middle: the first cord met at
        // a top pin is the outer one.
        for rim in [Rim::Top, Rim::Bottom] {
            let inside = side.turns_inside(rim, hand);
            let outer = if inside { 1 } else { 2 };
            let mut bights = 0;
            for column in (200..700).step_by(3) {
                let mut column: Vec<Colour> = (0..700)
                    .filter_map(|row| image.pixel(column, row))
                    .collect();
                if rim == Rim::Bottom {
                    column.reverse();
                }
                let cords: Vec<Colour> = column.into_iter().filter(|c| c.blue == 0).collect();
                let Some(&first) = cords.first() else {
                    continue;
                };
                let pass = (0..laying.legs())
                    .map(|nth| laying.nth_leg(nth).unwrap())
                    .find(|&pass_leg| flat.cord(pass_leg) == first);
                if let Some(pass_leg) = pass {
                    // The ends at the start pin hang lower than any bight.
                    let knot = laying.knot();
                    let loose = pass_leg.leg == 1 || pass_leg.leg == knot.legs_of(pass_leg.strand);
                    if rim == Rim::Top || !loose {
                        assert_eq!(pass_leg.pass, outer, "{rim:?} {side:?} {hand:?}");
                        bights += 1;
                    }
                }
            }
            assert!(bights > 20, "{bights}");
        }
    }
}

/// Only cords, pins and signs, in the house colours.
struct Wordless(DefaultPalette);

impl Palette for Wordless {
    fn colour(&self, role: Role) -> Colour {
        match role {
            Role::PinNumber | Role::FromNumber | Role::ToNumber => Colour::CLEAR,
            _ => self.0.colour(role),
        }
    }
}

#[test]
fn a_left_handed_tyer_sees_the_picture_mirrored_but_for_the_numbers() {
    let viewport = Viewport::new(800.0, 600.0);
    for view in [View::RolledOut, View::RoundTheTube] {
        for (leads, bights, passes) in [(5, 6, 2), (3, 2, 1), (7, 5, 3)] {
            let laying = laying(leads, bights, passes, "1", LayingOrder::default());
            let pass_leg = laying.nth_leg(laying.legs() - 3).unwrap();
            let image = |side, hand| {
                let scene =
                    Scene::build(view, &laying, side, hand, &Moment::at(pass_leg), viewport);
                Painter::new()
                    .paint(&DisplayList::of(&scene), &Wordless(DefaultPalette::dark()))
                    .clone()
            };
            let right = image(Side::Right, Hand::Right);
            let left = image(Side::Left, Hand::Left);
            assert_ne!(right, left);
            for row in 0..600 {
                for column in 0..800 {
                    let (one, other) = (right.pixel(column, row), left.pixel(799 - column, row));
                    assert!(
                        near(one.unwrap(), other.unwrap()),
                        "{view:?} {leads} × {bights} at {column}, {row}: {one:?} {other:?}"
                    );
                }
            }
        }
    }
}

/// Equal, but for what rounding does to a pixel at an edge.
fn near(one: Colour, other: Colour) -> bool {
    [
        (one.red, other.red),
        (one.green, other.green),
        (one.blue, other.blue),
    ]
    .into_iter()
    .all(|(one, other)| one.abs_diff(other) <= 6)
}

#[test]
fn signs_stand_at_the_crossings_told_and_nowhere_else() {
    let laying = laying(5, 6, 1, "1", LayingOrder::default());
    let pass_leg = laying.nth_leg(10).unwrap();
    let crossings: Vec<bool> = laying
        .crossings(pass_leg)
        .map(|crossing| crossing.over)
        .collect();
    assert_eq!(crossings, [true, false, true, false]);
    let viewport = Viewport::new(900.0, 700.0);
    let signs = |part: std::ops::Range<usize>| {
        let moment = Moment::At {
            pass_leg,
            crossings: part,
        };
        let scene = Scene::build(
            View::RolledOut,
            &laying,
            Side::Right,
            Hand::Right,
            &moment,
            viewport,
        );
        let list = DisplayList::of(&scene);
        let count = |role| list.items().iter().filter(|item| item.role == role).count();
        (
            count(Role::Over),
            count(Role::Under),
            count(Role::ActiveRest) > 0,
        )
    };
    assert_eq!(signs(0..4), (2, 2, false));
    assert_eq!(signs(0..1), (1, 0, true));
    assert_eq!(signs(1..2), (0, 1, true));
    // All of it lies: only what is still to be laid is thin.
    assert_eq!(signs(4..4), (0, 0, false));
    assert_eq!(signs(0..usize::MAX), (2, 2, false));
}

/// Both ends of 5 lead 6 bight, doubled: the working end follows up to where it goes under for the second time, the
/// tail likewise against the way it was laid, and neither further.
#[test]
fn the_tuck_of_an_end_is_shown_as_far_as_it_goes() {
    let script = Script::new(Plan::read("5", "6", "2", "1").unwrap(), AtOnce::default());
    let viewport = Viewport::new(900.0, 700.0);
    let mut ends = 0;
    for step in script.steps() {
        let What::Finish(finish) = &step.what else {
            continue;
        };
        let FinishTask::Tuck(tuck) = &finish.task else {
            continue;
        };
        let scene = Subject::of(&script, &step).scene(View::RolledOut, viewport);
        let list = DisplayList::of(&scene);
        let of_role = |role| list.items().iter().filter(move |item| item.role == role);
        let overs = tuck
            .crossings
            .iter()
            .filter(|crossing| crossing.over)
            .count();
        assert_eq!(of_role(Role::Over).count(), overs);
        assert_eq!(of_role(Role::Under).count(), tuck.crossings.len() - overs);
        assert_eq!(tuck.crossings.len() - overs, 2);
        assert!(of_role(Role::Active).count() > 0);
        // The knot has two cords on every leg, and the end makes a third on one.
        let laid = |step: &Step| {
            let scene = Subject::of(&script, step).scene(View::RolledOut, viewport);
            scene.crossing_points().len()
        };
        let done = script.step(script.last()).unwrap();
        assert!(laid(&step) > laid(&done));
        ends += 1;
    }
    assert_eq!(ends, 2);
}

#[test]
fn a_large_knot_in_a_small_frame_is_shown_in_part_round_the_leg_in_hand() {
    let laying = laying(40, 41, 1, "1", LayingOrder::default());
    let large = Viewport::new(1920.0, 1080.0);
    let small = Viewport::new(500.0, 400.0);
    let mut painter = Painter::new();
    for nth in [0, 50, 60, 81] {
        let pass_leg = laying.nth_leg(nth).unwrap();
        let build = |crossings, viewport| {
            let moment = Moment::At {
                pass_leg,
                crossings,
            };
            Scene::build(
                View::RolledOut,
                &laying,
                Side::Right,
                Hand::Right,
                &moment,
                viewport,
            )
        };
        assert!(!build(0..usize::MAX, large).is_zoomed());
        let met = laying.crossings(pass_leg).count();
        for part in [
            0..met.min(4),
            met / 2..(met / 2 + 4).min(met),
            met.saturating_sub(3)..met,
        ] {
            let scene = build(part.clone(), small);
            assert!(scene.is_zoomed());
            let shapes = DisplayList::of(&scene).items().len();
            assert!(shapes < 400, "{shapes}");
            let flat = Flat {
                laying: &laying,
                in_hand: Some(pass_leg),
            };
            let told = told(&laying, nth + 1);
            let image = painter.paint(&DisplayList::of(&scene), &flat);
            let seen = tops_agree("40 × 41", &told, &scene, image, &flat);
            // All that is told is in the picture.
            let rising = laying.leg(pass_leg).unwrap().from.rim == Rim::Bottom;
            for crossing in laying.crossings(pass_leg).skip(part.start).take(part.len()) {
                let Leg { strand, number, .. } = crossing.of;
                let other = PassLeg {
                    pass: 1,
                    strand,
                    leg: number,
                };
                let (up, down) = if rising {
                    (pass_leg, other)
                } else {
                    (other, pass_leg)
                };
                let pair = (up, down, crossing.row);
                assert!(seen.contains(&pair), "leg {nth}, part {part:?}: {pair:?}");
            }
        }
    }
}

#[test]
fn every_size_of_knot_and_frame_makes_a_picture() {
    for (leads, bights) in [(2, 2), (2, 999), (999, 2), (999, 998), (3, 40), (40, 3)] {
        let laying = laying(leads, bights, 9, "1", LayingOrder::default());
        for moment in [
            Moment::Bare,
            Moment::at(laying.nth_leg(laying.legs() / 2).unwrap()),
            Moment::at(PassLeg {
                pass: 10,
                strand: 1,
                leg: 1,
            }),
            Moment::Finished,
        ] {
            for viewport in [
                Viewport::new(1920.0, 1080.0),
                Viewport::new(200.0, 900.0),
                Viewport::new(0.0, f32::NAN),
            ] {
                for view in [View::RolledOut, View::RoundTheTube] {
                    let scene =
                        Scene::build(view, &laying, Side::Left, Hand::Left, &moment, viewport);
                    let image = Painter::new()
                        .paint(&DisplayList::of(&scene), &DefaultPalette::light())
                        .clone();
                    // The smallest picture there is, of an icon.
                    assert!(image.width() >= 24 && image.height() >= 24);
                    // Opaque all over: nothing of what was there before shines through.
                    assert!(image.pixels().chunks(4).all(|pixel| pixel[3] == 255));
                }
            }
        }
    }
}

#[test]
fn a_painter_used_again_gives_the_same_picture_as_a_new_one() {
    let laying = laying(5, 6, 2, "1", LayingOrder::default());
    let mut again = Painter::new();
    for nth in [3, 3, 4, 20, 21, 22, 5] {
        for palette in [DefaultPalette::dark(), DefaultPalette::light()] {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let viewport = Viewport::new(900.0, 500.0);
            let scene = Scene::build(
                View::RolledOut,
                &laying,
                Side::Right,
                Hand::Right,
                &moment,
                viewport,
            );
            let list = DisplayList::of(&scene);
            assert_eq!(
                again.paint(&list, &palette),
                Painter::new().paint(&list, &palette)
            );
        }
    }
}

/// A cord is begun with its tail hanging from its first pin, whose number says where it goes; a follower
/// goes on from the cord before and hangs nowhere.
#[test]
fn before_the_first_leg_the_tail_hangs_from_its_pin() {
    let laying = laying(5, 7, 2, "1", LayingOrder::default());
    for (pass, hangs) in [(1, true), (2, false)] {
        let moment = Moment::Before(PassLeg {
            pass,
            strand: 1,
            leg: 1,
        });
        let scene = Scene::build(
            View::RoundTheTube,
            &laying,
            Side::Right,
            Hand::Right,
            &moment,
            Viewport::new(620.0, 560.0),
        );
        let list = DisplayList::of(&scene);
        let circles = |role| circles_of(&list, role);
        let low = |y: f64, circle: kurbo::Circle| y.max(circle.center.y);
        let pins = circles(Role::Pin).fold(0.0, low);
        let tail = list.items().iter().filter(|item| item.role == Role::Active);
        let lowest: Option<f64> = tail
            .map(|item| match &item.outline {
                Outline::Path(path) => path.bounding_box().y1,
                Outline::Circle(circle) => circle.center.y,
            })
            .reduce(f64::max);
        assert_eq!(lowest.is_some_and(|lowest| lowest > pins + 5.0), hangs);
        assert_eq!(circles(Role::To).count(), 1, "{pass}");
    }
}

/// The circles of a role.
fn circles_of(list: &DisplayList, role: Role) -> impl Iterator<Item = kurbo::Circle> + '_ {
    let items = list.items().iter().filter(move |item| item.role == role);
    items.filter_map(|item| match item.outline {
        Outline::Circle(circle) => Some(circle),
        Outline::Path(_) => None,
    })
}

/// The numbers of pins on the far side stand where the cord goes round the edge of the tube, and not
/// beside another pin that is seen there.
#[test]
fn no_number_of_a_far_pin_stands_beside_another_pin() {
    for (leads, bights) in [(11, 9), (9, 7), (13, 10)] {
        let laying = laying(leads, bights, 1, "1", LayingOrder::default());
        for nth in 0..u32::from(bights) * 2 {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let scene = Scene::build(
                View::RoundTheTube,
                &laying,
                Side::Right,
                Hand::Right,
                &moment,
                Viewport::new(620.0, 560.0),
            );
            let list = DisplayList::of(&scene);
            let circles = |role| circles_of(&list, role);
            let numbers = circles(Role::FromDisc).chain(circles(Role::To));
            for number in numbers {
                for pin in circles(Role::Pin) {
                    let [across, up] = [
                        number.center.x - pin.center.x,
                        number.center.y - pin.center.y,
                    ];
                    let is_beside =
                        across.abs() < 2.5 * number.radius && up.abs() < 0.5 * number.radius;
                    assert!(
                        !is_beside,
                        "{leads} {bights}, leg {nth}: {number:?} {pin:?}"
                    );
                }
            }
        }
    }
}

/// A pin round the back of the tube has its number level with those of its own ring, beside the tube: half way
/// up it would belong to neither.
#[test]
fn the_number_of_a_far_pin_stands_level_with_its_ring() {
    let mut far = 0;
    for (leads, bights) in [(11, 9), (9, 7), (13, 10)] {
        let laying = laying(leads, bights, 1, "1", LayingOrder::default());
        for (nth, hand) in
            (0..u32::from(bights) * 2).flat_map(|nth| [(nth, Hand::Right), (nth, Hand::Left)])
        {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let viewport = Viewport::new(620.0, 560.0);
            let view = View::RoundTheTube;
            let scene = Scene::build(view, &laying, Side::Right, hand, &moment, viewport);
            let list = DisplayList::of(&scene);
            let middle = f64::from(viewport.width) / 2.0;
            let half = width_of_tube(&list) / 2.0;
            let plain = numbers_and_pins(&list).0;
            let levels: Vec<f64> = plain.iter().map(|number| number.center().y).collect();
            for role in [Role::FromDisc, Role::To] {
                for number in circles_of(&list, role) {
                    let at = format!("{leads} {bights}, leg {nth}, {hand:?}: {number:?}");
                    let is_level = |level: &f64| (level - number.center.y).abs() < 2.0;
                    let others = levels.iter().filter(|level| is_level(level)).count();
                    // Itself is among them.
                    assert!(others > 1, "{at} {levels:?}");
                    far += usize::from((number.center.x - middle).abs() > half);
                }
            }
        }
    }
    assert!(far > 10, "{far}");
}

/// The head of a cord that comes to its pin lies over no pin, and stays on the tube.
#[test]
fn the_head_of_a_leg_is_clear_of_its_pin_and_of_the_edge() {
    for (leads, bights, passes) in [(3, 5, 1), (5, 7, 1), (5, 7, 2), (11, 9, 1)] {
        let laying = laying(leads, bights, passes, "1", LayingOrder::default());
        for (nth, hand) in
            (0..u32::from(bights) * 2).flat_map(|nth| [(nth, Hand::Right), (nth, Hand::Left)])
        {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let viewport = Viewport::new(440.0, 580.0);
            let view = View::RoundTheTube;
            let scene = Scene::build(view, &laying, Side::Right, hand, &moment, viewport);
            let list = DisplayList::of(&scene);
            let half = width_of_tube(&list) / 2.0;
            let heads = list.items().iter().filter_map(|item| match &item.outline {
                Outline::Path(path) if item.role == Role::Active => Some(path),
                _ => None,
            });
            for head in heads.filter(|path| path.elements().len() == 4) {
                let at = format!("{leads} {bights} {passes}, leg {nth}, {hand:?}: {head:?}");
                let bounds = head.bounding_box();
                let middle = f64::from(viewport.width) / 2.0;
                let out = (bounds.x1 - middle).max(middle - bounds.x0) - half;
                assert!(out < 0.2 * bounds.width(), "{at} {half}");
                for pin in circles_of(&list, Role::Pin) {
                    let rim = (0..16).map(|nth| {
                        let angle = f64::from(nth) * std::f64::consts::TAU / 16.0;
                        pin.center + 0.8 * pin.radius * kurbo::Vec2::from_angle(angle)
                    });
                    let covered = rim.filter(|point| head.contains(*point)).count();
                    assert_eq!(covered, 0, "{at} {pin:?}");
                }
            }
        }
    }
}

/// Half a number can be read as another.
#[test]
fn however_low_the_picture_the_numbers_of_the_leg_are_whole() {
    let laying = laying(5, 6, 1, "1", LayingOrder::default());
    for height in (100..320_u16).step_by(6) {
        for nth in [0, 1, 6] {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let viewport = Viewport::new(900.0, f32::from(height));
            let (side, hand) = (Side::Right, Hand::Right);
            let scene = Scene::build(View::RolledOut, &laying, side, hand, &moment, viewport);
            let list = DisplayList::of(&scene);
            let rings = |role| list.items().iter().filter(move |item| item.role == role);
            for role in [Role::FromDisc, Role::To] {
                let mut found = 0;
                for item in rings(role) {
                    let Outline::Circle(circle) = item.outline else {
                        continue;
                    };
                    let whole = circle.radius..=f64::from(viewport.height) - circle.radius;
                    assert!(
                        whole.contains(&circle.center.y),
                        "{height} {nth} {role:?} {circle:?}"
                    );
                    found += 1;
                }
                assert_eq!(found, 1, "{height} {nth} {role:?}");
            }
        }
    }
}

#[test]
fn a_part_beyond_the_crossings_of_a_leg_is_looked_at_where_the_leg_ends() {
    let laying = laying(5, 6, 2, "1", LayingOrder::default());
    let pass_leg = laying.nth_leg(7).unwrap();
    for view in [View::RolledOut, View::RoundTheTube] {
        for crossings in [2..2, 90..99] {
            let moment = Moment::At {
                pass_leg,
                crossings,
            };
            let viewport = Viewport::new(400.0, 300.0);
            let (side, hand) = (Side::Right, Hand::Right);
            let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
            let segments = DisplayList::of(&scene).segments();
            assert!(segments > 200, "{view:?}: {segments}");
        }
    }
}

/// Cut open at one pin, at another, and round the tube: from leg to leg most of it is kept, and what
/// is not told to have changed is as it was in the picture before.
#[test]
fn leg_after_leg_a_painter_shows_the_whole_picture_and_tells_what_changed() {
    let viewport = Viewport::new(640.0, 400.0);
    let columns: Vec<_> = (0..640).step_by(32).map(|from| from..from + 32).collect();
    for (laying, view) in [
        (
            laying(8, 9, 3, "1", LayingOrder::default()),
            View::RolledOut,
        ),
        (
            laying(8, 9, 3, "1", LayingOrder::default()),
            View::RoundTheTube,
        ),
        // More than the frame has room for.
        (
            laying(25, 31, 2, "1", LayingOrder::default()),
            View::RolledOut,
        ),
    ] {
        let mut painter = Painter::new();
        let mut before: Option<Image> = None;
        let mut kept = 0;
        for nth in 10..40 {
            let moment = Moment::at(laying.nth_leg(nth).unwrap());
            let (side, hand) = (Side::Right, Hand::Right);
            let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
            let list = DisplayList::of(&scene);
            painter.paint(&list, &DefaultPalette::dark());
            let image = painter.image().clone();
            let anew = Painter::new().paint(&list, &DefaultPalette::dark()).clone();
            let differing = image.pixels().iter().zip(anew.pixels());
            // Sums of shares are rounded otherwise where less is summed.
            let worst = differing.map(|(one, other)| one.abs_diff(*other)).max();
            assert!(worst <= Some(1), "{view:?} {nth}: {worst:?}");
            if let Some(before) = &before {
                for columns in &columns {
                    if !painter.has_changed(columns, &(0..400)) {
                        let rows = 0..400;
                        assert!(image.part(columns, &rows) == before.part(columns, &rows));
                        kept += 1;
                    }
                }
            }
            before = Some(image);
        }
        if view == View::RoundTheTube {
            // What lies beside the tube.
            assert!(kept > 100, "{kept} strips");
        }
    }
}

#[test]
fn for_a_screen_of_finer_dots_the_same_is_painted_larger() {
    let laying = laying(5, 6, 2, "1", LayingOrder::default());
    let moment = Moment::at(laying.nth_leg(15).unwrap());
    let viewport = Viewport::new(600.0, 400.0);
    let (side, hand) = (Side::Right, Hand::Right);
    let scene = Scene::build(View::RolledOut, &laying, side, hand, &moment, viewport);
    let flat = Flat {
        laying: &laying,
        in_hand: laying.nth_leg(15),
    };
    let (mut plain, mut fine) = (Painter::new(), Painter::new());
    let list = DisplayList::of(&scene);
    let plain = plain.paint(&list, &flat);
    let fine = fine.paint_at(&list, &flat, 1.5);
    assert_eq!((fine.width(), fine.height()), (900, 600));
    let points = scene.crossing_points();
    assert!(points.len() > 20, "{} crossings", points.len());
    for point in points {
        let place = (point.at.to_vec2() * 1.5).to_point();
        assert_eq!(at(fine, place), at(plain, point.at), "{:?}", point.at);
    }
}

#[test]
fn the_png_says_its_size_and_300_dots_an_inch() {
    let laying = laying(3, 2, 1, "1", LayingOrder::default());
    let viewport = Viewport::new(320.0, 240.0);
    let scene = Scene::build(
        View::RolledOut,
        &laying,
        Side::Right,
        Hand::Right,
        &Moment::Finished,
        viewport,
    );
    let mut painter = Painter::new();
    let painted = painter.paint(&DisplayList::of(&scene), &DefaultPalette::light());
    let bytes = painted.png(300).unwrap();
    let read = image::load_from_memory(&bytes).unwrap();
    assert_eq!((read.width(), read.height()), (320, 240));
    // 300 dots in 25.4 mm are 11 811.02… in a metre.
    assert_eq!(dots::per_metre(&bytes), (11811, 11811));
    assert_eq!(read.into_rgba8().into_raw(), painted.pixels());
}

/// The bounds of what has a number in it, and where its pins stand.
fn numbers_and_pins(list: &DisplayList) -> (Vec<kurbo::Rect>, Vec<kurbo::Circle>) {
    let mut numbers: Vec<kurbo::Rect> = Vec::new();
    for item in list.items() {
        match (item.role, &item.outline) {
            (Role::PinNumber, Outline::Path(path)) => numbers.push(path.bounding_box()),
            (Role::FromDisc | Role::To, Outline::Circle(circle)) => {
                numbers.push(circle.bounding_box());
            }
            _ => {}
        }
    }
    (numbers, circles_of(list, Role::Pin).collect())
}

/// No number runs into another, and at the edges of a tube no pin stands without one.
#[test]
fn numbers_keep_apart_and_no_pin_at_the_edge_of_a_tube_is_without_one() {
    for (leads, bights, size) in [
        (5, 7, (530.0, 560.0)),
        (3, 5, (530.0, 560.0)),
        (11, 9, (530.0, 560.0)),
        (21, 40, (530.0, 560.0)),
        (7, 12, (900.0, 900.0)),
    ] {
        let laying = laying(leads, bights, 1, "1", LayingOrder::default());
        for nth in 0..u32::from(bights) * 2 {
            for view in [View::RoundTheTube, View::RolledOut] {
                let at = format!("{leads} {bights}, leg {nth}, {view:?}");
                let moment = Moment::at(laying.nth_leg(nth).unwrap());
                let viewport = Viewport::new(size.0, size.1);
                let (side, hand) = (Side::Right, Hand::Right);
                let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
                let list = DisplayList::of(&scene);
                let (numbers, pins) = numbers_and_pins(&list);
                for (nth, one) in numbers.iter().enumerate() {
                    for other in &numbers[nth + 1..] {
                        assert!(!one.overlaps(*other), "{at}: {one:?} {other:?}");
                    }
                }
                if view == View::RolledOut {
                    continue;
                }
                // Beyond four fifths of the way to its edge a tube bends away.
                let middle = f64::from(viewport.width) / 2.0;
                let bent = width_of_tube(&list) / 2.0 * 0.955;
                let is_top = |y: f64| y < f64::from(viewport.height) / 2.0;
                for pin in &pins {
                    let is_of_it = |number: &kurbo::Rect| {
                        (number.center().x - pin.center.x).abs() < 4.0
                            && is_top(number.center().y) == is_top(pin.center.y)
                    };
                    let is_in_front = (pin.center.x - middle).abs() < bent;
                    assert!(is_in_front || numbers.iter().any(is_of_it), "{at}: {pin:?}");
                }
            }
        }
    }
}

fn width_of_tube(list: &DisplayList) -> f64 {
    let mut items = list.items().iter();
    let tube = items.find(|item| item.role == Role::Tube).unwrap();
    match &tube.outline {
        Outline::Path(tube) => tube.bounding_box().width(),
        Outline::Circle(_) => panic!("a tube is a rectangle"),
    }
}

/// A knot has one form, however wide or high its picture is.
#[test]
fn a_knot_has_one_form_in_pictures_of_every_form() {
    let laying = laying(3, 5, 1, "1", LayingOrder::default());
    let moment = Moment::at(laying.nth_leg(6).unwrap());
    let mut first = None;
    for (width, height) in [
        (500.0, 540.0),
        (760.0, 420.0),
        (900.0, 900.0),
        (960.0, 1250.0),
    ] {
        let viewport = Viewport::new(width, height);
        let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
        let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
        let list = DisplayList::of(&scene);
        let heights = circles_of(&list, Role::Pin).map(|pin| pin.center.y);
        let [low, high] = heights.fold([f64::MAX, f64::MIN], |[low, high], y| {
            [low.min(y), high.max(y)]
        });
        let form = (high - low) / width_of_tube(&list);
        let first = *first.get_or_insert(form);
        assert!(
            (form / first - 1.0).abs() < 0.03,
            "{width} {height}: {form} {first}"
        );
        assert!(high - low > 0.25 * f64::from(height), "{width} {height}");
    }
}

/// The line of the edge of a tube runs through no number.
#[test]
fn the_edge_of_a_tube_is_left_out_where_a_number_stands_on_it() {
    let laying = laying(5, 7, 1, "1", LayingOrder::default());
    let mut crossed = 0;
    for nth in 0..14 {
        let moment = Moment::at(laying.nth_leg(nth).unwrap());
        let viewport = Viewport::new(530.0, 560.0);
        let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
        let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
        let list = DisplayList::of(&scene);
        let half = width_of_tube(&list) / 2.0;
        let bounds = |item: &marlinspeak::picture::DisplayItem| match &item.outline {
            Outline::Path(path) => path.bounding_box(),
            Outline::Circle(circle) => circle.bounding_box(),
        };
        let items = list.items();
        for (at, number) in items.iter().enumerate() {
            if number.role != Role::PinNumber {
                continue;
            }
            let number = bounds(number);
            for edge in [265.0 - half, 265.0 + half] {
                if number.x0 >= edge || edge >= number.x1 {
                    continue;
                }
                crossed += 1;
                // What covers the line lies above it and below the number, whole on both sides.
                let covers = |role: Role| {
                    items[..at].iter().skip(4).any(|item| {
                        let over = bounds(item);
                        let reaches = over.y0 <= number.y0 && over.y1 >= number.y1;
                        let touches = (over.x0 - edge).abs() < 0.1 || (over.x1 - edge).abs() < 0.1;
                        item.role == role && reaches && touches
                    })
                };
                assert!(
                    covers(Role::Ground) && covers(Role::Tube),
                    "leg {nth}: {number:?}"
                );
            }
        }
    }
    assert!(crossed > 3, "{crossed}");
}

/// Beginning and end of a cord hang side by side, with the tube between them.
#[test]
fn both_ends_of_a_cord_hang_apart() {
    for (leads, bights) in [(3, 5), (5, 7), (4, 7), (11, 9)] {
        let laying = laying(leads, bights, 1, "1", LayingOrder::default());
        for size in [(300_u16, 300_u16), (530, 560), (900, 700)] {
            let viewport = Viewport::new(size.0.into(), size.1.into());
            let (view, side, hand) = (View::RoundTheTube, Side::Right, Hand::Right);
            let moment = Moment::Laid;
            let scene = Scene::build(view, &laying, side, hand, &moment, viewport);
            let list = DisplayList::of(&scene);
            let cords: Vec<&kurbo::BezPath> = list
                .items()
                .iter()
                .filter(|item| matches!(item.role, Role::Laid(_) | Role::Beside(_)))
                .filter_map(|item| match &item.outline {
                    Outline::Path(path) => Some(path),
                    Outline::Circle(_) => None,
                })
                .collect();
            let lowest = cords.iter().map(|path| path.bounding_box().y1);
            let low = lowest.fold(0.0, f64::max);
            let is_cord = |x: f64| {
                let at = kurbo::Point::new(x, low - 2.0);
                cords.iter().any(|path| path.contains(at))
            };
            // From left to right: an end, what is between them, the other end.
            let mut runs: Vec<(bool, u32)> = Vec::new();
            for step in 0..4 * size.0 {
                let is_it = is_cord(f64::from(step) / 4.0);
                match runs.last_mut() {
                    Some((kind, long)) if *kind == is_it => *long += 1,
                    _ => runs.push((is_it, 1)),
                }
            }
            let kinds: Vec<bool> = runs.iter().map(|(kind, _)| *kind).collect();
            assert_eq!(
                kinds,
                [false, true, false, true, false],
                "{leads} {bights} {size:?}"
            );
            assert!(runs[2].1 >= 4, "{leads} {bights} {size:?}: {runs:?}");
        }
    }
}

/// A ring round a bight is whole where a knot of few bights takes all the width.
#[test]
fn a_ring_round_a_bight_is_whole_in_a_narrow_picture() {
    let plan = Plan::read("5", "2", "1", "1").unwrap();
    let bight = marlinspeak::knot::Pin::bottom(1);
    for (width, height) in [(294.0, 1250.0), (760.0, 900.0), (160.0, 160.0)] {
        let subject = Subject::finished(&plan).marked(marlinspeak::picture::Mark::Bight(bight));
        let scene = subject.scene(View::RoundTheTube, Viewport::new(width, height));
        let list = DisplayList::of(&scene);
        let rings: Vec<kurbo::Rect> = circles_of(&list, Role::From)
            .map(|ring| ring.bounding_box())
            .collect();
        assert!(!rings.is_empty());
        for ring in rings {
            let across = ring.x0 >= 2.0 && ring.x1 <= f64::from(width) - 2.0;
            assert!(
                across && ring.y1 <= f64::from(height),
                "{width} {height}: {ring:?}"
            );
        }
    }
}
