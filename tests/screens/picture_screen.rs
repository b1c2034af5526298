//! The picture on the screens: the canvas against the picture's own painter, and its keys.
#![cfg(feature = "window")]

use crate::hands;
use crate::window;

use hands::Hands;
use iced::keyboard::Key;
use iced::keyboard::key::Named;
use iced::{Size, Theme};
use iced_test::selector;
use kurbo::Shape as _;
use marlinspeak::app::{self, Message, PictureView};
use marlinspeak::bench::{Cord, Ground, Layout, Millimetres, Tube, pinning};
use marlinspeak::guide::{AtOnce, Checks, Plan, Script, Setup, SetupField, What};
use marlinspeak::knot::{Hand, Lattice, Rim, Side};
use marlinspeak::picture::{
    DefaultPalette, DisplayList, Moment, Painter, Role, Scene, Subject, View, Viewport,
};
use marlinspeak::settings::ColourScheme;
use tempfile::TempDir;
use window::Pane;

const SPACE: Key = Key::Named(Named::Space);
/// What stands in the bar of keys while the picture has the whole screen.
const SMALLER: &str = "smaller";

fn plan(leads: u16, bights: u16, passes: u16, weave: &str) -> Plan {
    let [leads, bights, passes] = [leads, bights, passes].map(|count| count.to_string());
    Plan::read(&leads, &bights, &passes, weave).unwrap()
}

fn letter(letter: &str) -> Key {
    Key::Character(letter.into())
}

/// The subject at the step so many steps on, and the moment it shows.
fn subject(plan: &Plan, steps: usize) -> (Subject, Moment) {
    let script = Script::new(plan.clone(), AtOnce::default());
    let place = script.places().nth(steps).unwrap();
    let step = script.step(place).unwrap();
    (Subject::of(&script, &step), Moment::of_step(&step))
}

/// The mean difference of two pictures, 0 … 1, and the share of pixels that differ by a
/// quarter or more of the range of a channel.
fn difference(one: &[u8], other: &[u8]) -> (f64, f64) {
    assert_eq!(one.len(), other.len());
    let (mut sum, mut far) = (0_u64, 0_u32);
    for (one, other) in one.chunks(4).zip(other.chunks(4)) {
        let apart = |channel: usize| one[channel].abs_diff(other[channel]);
        sum += (0..3).map(|channel| u64::from(apart(channel))).sum::<u64>();
        far += u32::from((0..3).any(|channel| apart(channel) >= 64));
    }
    #[expect(clippy::cast_precision_loss)]
    let (sum, pixels) = (sum as f64, (one.len() / 4) as f64);
    (sum / (3.0 * 255.0 * pixels), f64::from(far) / pixels)
}

#[test]
fn canvas_and_painter_agree() {
    let (width, height) = (900, 600);
    let mut pane = Pane::new(width, height);
    for (leads, bights, passes, weave, hand) in [
        (3, 2, 1, "1", Hand::Right),
        (5, 6, 2, "1", Hand::Left),
        (4, 6, 3, "ouu", Hand::Right),
        (21, 4, 1, "1", Hand::Right),
        (40, 41, 2, "1", Hand::Right),
    ] {
        let plan = plan(leads, bights, passes, weave).with_hand(hand);
        let count = Script::new(plan.clone(), AtOnce::default())
            .places()
            .count();
        for steps in [0, count / 3, 2 * count / 3, count - 1] {
            let (subject, moment) = subject(&plan, steps);
            for (view, theme) in [
                (View::RolledOut, app::theme()),
                (View::RoundTheTube, app::theme()),
                (View::RolledOut, Theme::Light),
            ] {
                let mut picture = PictureView::default();
                // The largest is left to whichever way the app takes.
                if leads < 40 {
                    picture = picture.by_shapes_up_to(usize::MAX);
                }
                if view == View::RolledOut {
                    picture = picture.rolled_out();
                }
                picture.show(Some(subject.clone()));
                let canvas = pane.paint::<()>(picture.view(), &theme);
                let tones = if theme == Theme::Light {
                    DefaultPalette::by_day()
                } else {
                    DefaultPalette::dark()
                };
                #[expect(clippy::cast_precision_loss)]
                let viewport = Viewport::new(width as f32, height as f32);
                let scene = Scene::build(view, plan.laying(), Side::Right, hand, &moment, viewport);
                let mut painter = Painter::new();
                let painted = painter.paint(&DisplayList::of(&scene), &tones);
                let (mean, far) = difference(&canvas, painted.pixels());
                let what = format!("{leads} × {bights} × {passes}, step {steps}, {view:?}");
                assert!(mean < 0.01, "{what}: {mean} on the mean");
                assert!(far < 0.01, "{what}: {far} of the pixels");
            }
        }
    }
}

#[test]
fn shown_as_an_image_the_picture_is_the_same() {
    let plan = plan(9, 10, 2, "1");
    let (subject, moment) = subject(&plan, 40);
    let mut picture = PictureView::default().rolled_out().by_shapes_up_to(0);
    picture.show(Some(subject));
    let shown = Pane::new(800, 500).paint::<()>(picture.view(), &app::theme());
    let scene = Scene::build(
        View::RolledOut,
        plan.laying(),
        plan.side,
        plan.hand,
        &moment,
        Viewport::new(800.0, 500.0),
    );
    let mut painter = Painter::new();
    assert!(
        shown
            == painter
                .paint(&DisplayList::of(&scene), &DefaultPalette::dark())
                .pixels()
    );
}

#[test]
fn a_step_a_size_and_a_theme_each_draw_the_picture_anew() {
    let plan = plan(5, 6, 2, "1");
    let [early, late] = [10, 20].map(|steps| subject(&plan, steps).0);
    let fresh = |subject: &Subject, pane: &mut Pane, theme: &Theme| {
        let mut picture = PictureView::default();
        picture.show(Some(subject.clone()));
        pane.paint::<()>(picture.view(), theme)
    };
    let mut panes = [Pane::new(800, 500), Pane::new(500, 400)];
    let (dark, light) = (app::theme(), Theme::Light);
    let mut picture = PictureView::default();
    for (subject, pane, theme) in [
        (&early, 0, &dark),
        (&late, 0, &dark),
        (&late, 1, &dark),
        (&late, 1, &light),
        (&late, 1, &dark),
    ] {
        picture.show(Some(subject.clone()));
        let kept = panes[pane].paint::<()>(picture.view(), theme);
        assert!(kept == fresh(subject, &mut panes[pane], theme));
    }
    let before = fresh(&early, &mut panes[0], &dark);
    assert!(before != fresh(&late, &mut panes[0], &dark));
}

/// What the tying screen shows.
fn look(hands: &Hands) -> Vec<u8> {
    Pane::new(1100, 760).paint(hands.view(), &app::theme())
}

fn sees_picture(hands: &Hands, size: Size) -> bool {
    hands.screen(size).find(selector::id("picture")).is_ok()
}

#[test]
fn a_small_window_is_left_to_the_words_until_the_picture_is_asked_for() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1, "1")));
    let (small, large) = (Size::new(800.0, 480.0), Size::new(1100.0, 760.0));
    assert!(!sees_picture(&hands, small));
    assert!(sees_picture(&hands, large));
    hands.press(letter("d"));
    assert!(sees_picture(&hands, small));
    hands.press(letter("d"));
    assert!(!sees_picture(&hands, small));
    assert!(!sees_picture(&hands, large));
    hands.press(letter("d"));
    assert!(sees_picture(&hands, large));
}

#[test]
fn the_picture_grows_and_shrinks() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1, "1")));
    let mut looks = vec![look(&hands)];
    for _ in 0..5 {
        hands.press(letter("d"));
        looks.push(look(&hands));
    }
    // As it comes, large, off, small, middle, large again.
    for (one, other) in [(0, 1), (1, 2), (2, 3), (3, 4), (4, 5)] {
        assert!(looks[one] != looks[other], "{one} and {other}");
    }
    assert!(looks[1] == looks[5]);
}

#[test]
fn v_turns_the_view_and_back_and_says_nothing() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1, "1")));
    for _ in 0..6 {
        hands.press(SPACE);
    }
    let (flat, said) = (look(&hands), hands.said().len());
    hands.press(letter("v"));
    assert!(look(&hands) != flat);
    hands.hold(letter("v"));
    assert!(look(&hands) != flat, "a held key counts once");
    hands.press(letter("v"));
    assert!(look(&hands) == flat);
    assert_eq!(hands.said().len(), said);
}

#[test]
fn one_press_gives_the_picture_the_whole_screen_and_one_takes_it_back() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 6, 1, "1")));
    // The tail, six legs, and a look after the last of them.
    for _ in 0..8 {
        hands.press(SPACE);
    }
    let before = look(&hands);
    for back in [letter("f"), Key::Named(Named::Escape)] {
        hands.press(letter("f"));
        assert!(hands.sees(SMALLER));
        // The words of the step stay.
        assert!(hands.sees("Bottom 4 up to top 6 ↗"));
        assert!(hands.sees("OVER 1"));
        hands.press(back);
        assert!(look(&hands) == before);
    }
    hands.press(letter("f"));
    hands.press(SPACE);
    assert!(hands.sees(SMALLER));
    assert!(hands.sees("Top 6 down to bottom 3 ↘"));
    hands.press(Key::Named(Named::Escape));
    hands.press(Key::Named(Named::Escape));
    assert!(hands.last_said().starts_with("A tie is waiting"));
}

#[test]
fn the_picture_moves_along_a_long_leg_part_by_part() {
    let plan = plan(21, 4, 1, "1");
    let script = Script::new(plan.clone(), AtOnce::default());
    let parts: Vec<Moment> = script
        .places()
        .filter(|place| place.leg() == Some(8) && place.phase() == marlinspeak::guide::Phase::Lead)
        .map(|place| Moment::of_place(&script, place))
        .collect();
    let crossings: Vec<_> = parts
        .iter()
        .map(|part| match part {
            Moment::At {
                pass_leg,
                crossings,
            } => {
                assert_eq!(pass_leg.leg, 8);
                crossings.clone()
            }
            other => panic!("{other:?}"),
        })
        .collect();
    // A long leg is told two crossings a breath.
    let told: Vec<_> = (0..10).map(|part| 2 * part..2 * part + 2).collect();
    assert_eq!(crossings, told);
}

#[test]
fn between_legs_all_that_is_laid_is_shown_and_nothing_in_hand() {
    let plan = plan(5, 6, 2, "1");
    let script = Script::new(plan.clone(), AtOnce::WholeLeg).with_checks(Checks::EachPass);
    let moments: Vec<Moment> = script
        .places()
        .map(|place| Moment::of_place(&script, place))
        .collect();
    let pass_leg = |nth| plan.laying().nth_leg(nth).unwrap();
    // The beginning, 12 legs, a check, the beginning of pass 2, 12 legs, a check, the end.
    assert_eq!(moments[0], Moment::Before(pass_leg(0)));
    // A look lights the leg that was laid last.
    assert_eq!(moments[13], Moment::Looking(pass_leg(11)));
    assert_eq!(moments[14], Moment::Before(pass_leg(12)));
    assert_eq!(moments[27], Moment::Looking(pass_leg(23)));
    // While it is lifted the pins go rim by rim: the ends are secured, the top pins come out, the ring, the
    // bottom pins, and it is slipped off.
    let lifting = [
        Moment::Laid,
        Moment::Laid,
        Moment::TopPinsOut,
        Moment::TopPinsOut,
        Moment::Finished,
    ];
    assert_eq!(moments[28..33], lifting);
    let pins = |moment: &Moment| {
        let viewport = Viewport::new(600.0, 300.0);
        let (side, hand) = (plan.side, plan.hand);
        let scene = Scene::build(View::RolledOut, plan.laying(), side, hand, moment, viewport);
        let list = DisplayList::of(&scene);
        list.items()
            .iter()
            .filter(|item| item.role == Role::Pin)
            .count()
    };
    let [all, bottom, none] =
        [Moment::Laid, Moment::TopPinsOut, Moment::Finished].map(|moment| pins(&moment));
    assert!(
        bottom > 0 && all > bottom && none == 0,
        "{all}, {bottom}, {none}"
    );
    assert_eq!(moments.last(), Some(&Moment::Done));
    // Nothing is laid before the first leg, all before the check at the end.
    let picture = |moment: &Moment| {
        let viewport = Viewport::new(600.0, 300.0);
        Scene::build(
            View::RolledOut,
            plan.laying(),
            plan.side,
            plan.hand,
            moment,
            viewport,
        )
        .crossing_points()
        .len()
    };
    assert_eq!(picture(&moments[0]), 0);
    assert_eq!(picture(&moments[13]), 24);
    assert_eq!(picture(&moments[27]), 4 * 24);
}

#[test]
fn the_start_screen_shows_the_knot_in_the_form_where_there_is_room() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    // Past the first tie that is offered.
    hands.press(Key::Named(Named::Tab));
    // The right of the screen, where there is nothing but the picture.
    let right = |pixels: &[u8]| -> Vec<u8> {
        pixels
            .chunks(4 * 1100)
            .take(600)
            .flat_map(|line| line[4 * 700..].to_vec())
            .collect()
    };
    let before = right(&look(&hands));
    hands.tell(app::Message::typed(app::StartField::Bights, "9"));
    assert!(right(&look(&hands)) != before);
    hands.tell(app::Message::typed(app::StartField::Bights, "7"));
    assert!(right(&look(&hands)) == before);
    hands.tell(app::Message::typed(app::StartField::Bights, "none"));
    let blank = right(&look(&hands));
    assert!(blank.chunks(4).take(1000).all(|pixel| pixel == &blank[..4]));
    let narrow = Pane::new(700, 600).paint(hands.view(), &app::theme());
    assert_eq!(narrow.len(), 4 * 700 * 600);
}

fn tube(diameter: &str, rows: &[u16]) -> Tube {
    Tube::ringed(Millimetres::parse(diameter).unwrap(), rows).unwrap()
}

#[test]
fn a_finished_knot_has_the_proportions_computed_for_it() {
    let cord = Cord::new(Millimetres::parse("4mm").unwrap());
    for (leads, bights, passes, around, open_to) in [
        (5, 6, 2, "30mm", None),
        (5, 6, 2, "30mm", Some("45mm")),
        (3, 8, 1, "30mm", None),
        (13, 6, 3, "60mm", None),
        (9, 4, 1, "20mm", Some("80mm")),
    ] {
        let plan = plan(leads, bights, passes, "1");
        let mut setup = Setup::new(tube("60mm", &[24]), cord.clone());
        setup.finish = Some(marlinspeak::bench::Finish {
            around: Millimetres::parse(around).unwrap().into(),
            open_to: open_to.map(|width| Millimetres::parse(width).unwrap()),
        });
        let shape = setup.rig(plan.laying().into()).unwrap().shape;
        let round = shape.run.get() * 2.0 * f64::from(bights) / f64::from(leads);
        for view in [View::RolledOut, View::RoundTheTube] {
            let viewport = Viewport::new(900.0, 500.0);
            let scene = Scene::finished(
                view,
                plan.laying(),
                plan.side,
                plan.hand,
                &Moment::Finished,
                &shape,
                viewport,
            );
            let drawn = f64::from(scene.knot_width()) / f64::from(scene.round());
            let computed = shape.width.get() / round;
            assert!(
                (drawn / computed - 1.0).abs() < 0.005,
                "{leads} × {bights} × {passes} on {around}, {open_to:?}: {drawn} for {computed}"
            );
            assert!(!scene.is_zoomed());
        }
        // The same knot, asked for by its plan.
        let named = plan.with_setup(Some(setup));
        let mut picture = PictureView::default();
        picture.show(Some(Subject::finished(&named)));
        let shown = Pane::new(900, 500).paint::<()>(picture.view(), &app::theme());
        let scene = Scene::finished(
            View::RoundTheTube,
            named.laying(),
            named.side,
            named.hand,
            &Moment::Done,
            &shape,
            Viewport::new(900.0, 500.0),
        );
        let mut painter = Painter::new();
        let painted = painter.paint(&DisplayList::of(&scene), &DefaultPalette::dark());
        assert!(difference(&shown, painted.pixels()).0 < 0.01);
    }
}

#[test]
fn while_fairing_the_leg_that_is_told_is_bright_and_the_others_are_quiet() {
    use marlinspeak::guide::What;
    use marlinspeak::picture::Role;
    let cord = Cord::new(Millimetres::parse("4mm").unwrap());
    let mut setup = Setup::new(tube("60mm", &[24]), cord);
    setup.finish = Some(marlinspeak::bench::Finish {
        around: Millimetres::parse("30mm").unwrap().into(),
        open_to: None,
    });
    for setup in [None, Some(setup)] {
        let plan = plan(5, 6, 2, "1").with_setup(setup);
        let script = Script::new(plan, AtOnce::WholeLeg).fairing_by_leg(true);
        let mut faired = 0;
        for place in script.places() {
            let step = script.step(place).unwrap();
            let What::Fair(fair) = &step.what else {
                continue;
            };
            faired += 1;
            for view in [View::RolledOut, View::RoundTheTube] {
                let subject = Subject::of(&script, &step);
                let scene = subject.scene(view, Viewport::new(900.0, 600.0));
                let roles: Vec<Role> = DisplayList::of(&scene)
                    .items()
                    .iter()
                    .map(|item| item.role)
                    .collect();
                let bright = roles.iter().filter(|role| **role == Role::Active);
                // In front of the tyer, once.
                assert_eq!(bright.count(), 1, "{:?} in {view:?}", fair.pass_leg);
                assert!(!roles.contains(&Role::Laid(fair.pass_leg)));
                assert!(roles.iter().any(|role| matches!(role, Role::Laid(_))));
                assert!(!roles.iter().any(|role| matches!(role, Role::Beside(_))));
            }
        }
        assert!(faired >= 24, "only {faired} legs were faired");
    }
}

#[test]
fn rings_show_every_hole_and_a_pin_where_the_layout_says() {
    use marlinspeak::picture::{Outline, Paint, Role};
    for (rows, leads, bights, hand) in [
        (vec![12], 5, 6, Hand::Right),
        (vec![12, 16], 4, 8, Hand::Right),
        (vec![12, 16, 18], 3, 9, Hand::Left),
        (vec![6], 5, 6, Hand::Right),
    ] {
        let tube = tube("60mm", &rows);
        let layout = pinning(&tube, Lattice::plain(leads, bights).unwrap()).unwrap();
        let Layout::Rings {
            bottom,
            top,
            turn_half_hole,
            ..
        } = &layout
        else {
            panic!("a tube with rings");
        };
        let viewport = Viewport::new(1000.0, 400.0);
        let scene = Scene::rings(&layout, &rows, hand, viewport);
        let (mut holes, mut pins) = (Vec::new(), Vec::new());
        for item in DisplayList::of(&scene).items() {
            if let Outline::Circle(circle) = item.outline {
                let centre = circle.center;
                match (item.paint, item.role) {
                    (Paint::Stroke(_), _) => holes.push(centre),
                    (Paint::Fill, Role::To) => pins.push(centre),
                    other => panic!("{other:?}"),
                }
            }
        }
        let all: u16 = rows.iter().sum();
        assert_eq!(holes.len(), 2 * usize::from(all));
        assert_eq!(pins.len(), 2 * usize::from(bights));
        // Every pin stands in a hole.
        for pin in &pins {
            assert!(
                holes
                    .iter()
                    .any(|hole| (hole.x - pin.x).abs() < 0.1 && (hole.y - pin.y).abs() < 0.1)
            );
        }
        // The top ones first; how far round each stands, against the number of its hole.
        let (above, below) = pins.split_at(usize::from(bights));
        assert!(above[0].y < below[0].y);
        let row = f64::from(bottom.holes_in_row);
        let width = (below[1].x - below[0].x).abs() * f64::from(bights);
        for (ring, pins, turned) in [(bottom, below, 0.0), (top, above, 1.0)] {
            let half = if *turn_half_hole { 0.5 * turned } else { 0.0 };
            for (pin, hole) in pins.iter().zip(&ring.holes) {
                let share = (f64::from(*hole) - 1.0 + 0.25 + half) / row;
                let way = if hand == Hand::Left { -1.0 } else { 1.0 };
                let from = below[0].x - way * 0.25 / row * width;
                assert!((pin.x - from - way * share * width).abs() < 0.5);
            }
        }
    }
}

/// While the rings are rigged only what the step tells is lit, what stands already is there, and what is told
/// later has nothing but its holes; and the number of a hole stands nearer to its row than to the next.
#[test]
fn the_rings_light_what_the_step_tells_and_number_the_holes_of_their_row() {
    use marlinspeak::guide::{Task, What};
    use marlinspeak::picture::{Outline, Paint, Role};
    let setup = Setup::new(
        tube("45mm", &[14, 20]),
        Cord::new(Millimetres::parse("3.5").unwrap()),
    );
    let plan = plan(5, 7, 1, "1").with_setup(Some(setup));
    let script = Script::new(plan, AtOnce::default());
    let mut seen = Vec::new();
    for step in script.steps() {
        let (What::Rig(_) | What::Kit(_)) = &step.what else {
            continue;
        };
        let scene =
            Subject::of(&script, &step).scene(View::RoundTheTube, Viewport::new(420.0, 580.0));
        let list = DisplayList::of(&scene);
        let circles = |paint: fn(&Paint) -> bool, role| {
            let all = list.items().iter();
            let all = all.filter(move |item| item.role == role && paint(&item.paint));
            all.filter_map(|item| match item.outline {
                Outline::Circle(circle) => Some(circle.center.y),
                Outline::Path(_) => None,
            })
        };
        let is_filled = |paint: &Paint| matches!(paint, Paint::Fill);
        let pins = |role, is_top: bool| {
            circles(is_filled, role)
                .filter(|y| (*y < 290.0) == is_top)
                .count()
        };
        let lit = [pins(Role::To, false), pins(Role::To, true)];
        let standing = [pins(Role::Pin, false), pins(Role::Pin, true)];
        let tells = |rim| {
            let What::Rig(rig) = &step.what else {
                return false;
            };
            let mut things = rig.things.iter();
            things.any(|task| matches!(task, Task::Pins { rim: of, .. } if *of == rim))
        };
        for (ring, rim) in [Rim::Bottom, Rim::Top].into_iter().enumerate() {
            assert_eq!(lit[ring], if tells(rim) { 7 } else { 0 }, "{:?}", step.what);
        }
        seen.push((lit, standing));
        // The rows of holes, and the numbers beside them.
        let rows = circles(|paint| matches!(paint, Paint::Stroke(_)), Role::PinNumber);
        let mut rows: Vec<f64> = rows.collect();
        rows.sort_by(f64::total_cmp);
        rows.dedup_by(|one, other| (*one - *other).abs() < 1.0);
        assert_eq!(rows.len(), 4);
        let used = circles(is_filled, Role::To).chain(circles(is_filled, Role::Pin));
        let used: Vec<f64> = used.collect();
        let numbers = list.items().iter().filter_map(|item| match &item.outline {
            Outline::Path(path) if item.role == Role::Label => Some(path.bounding_box()),
            _ => None,
        });
        // Left of the rings stand the numbers of the rows.
        let numbers: Vec<kurbo::Rect> = numbers.filter(|number| number.x0 > 50.0).collect();
        assert_eq!(numbers.is_empty(), used.is_empty());
        for (nth, one) in numbers.iter().enumerate() {
            for other in &numbers[nth + 1..] {
                assert!(!one.inflate(1.5, 0.0).overlaps(*other), "{one:?} {other:?}");
            }
        }
        for number in numbers.iter().map(|number| number.center().y) {
            let to = |rows: &mut dyn Iterator<Item = f64>| {
                rows.map(|y| (y - number).abs()).fold(f64::MAX, f64::min)
            };
            let own = to(&mut used.iter().copied());
            let others = rows.iter().copied();
            let mut others = others.filter(|y| used.iter().all(|pin| (pin - y).abs() > 2.0));
            assert!(2.0 * own < to(&mut others), "{number} {used:?} {rows:?}");
        }
    }
    assert!(seen.contains(&([7, 0], [0, 0])), "{seen:?}");
    assert!(seen.contains(&([0, 7], [7, 0])), "{seen:?}");
}

/// The list of cords stands where the form of the plan ends, and the knot that is chosen below it: letters
/// of the list that reach beyond the end are not painted over its name.
#[test]
fn nothing_of_a_list_is_painted_beyond_the_end_of_its_form() {
    const SIZE: (u32, u32) = (1100, 760);
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), None);
    hands.press(letter("p"));
    for _ in 0..3 {
        hands.press(Named::ArrowRight);
    }
    for (field, typed) in [(SetupField::Mat, "150:40"), (SetupField::Cord, "6")] {
        hands.tell(Message::planned(field, typed));
    }
    let name = {
        let mut screen = hands.screen(Size::new(1100.0, 760.0));
        screen.find("6 lead 5 bight, doubled").unwrap().bounds()
    };
    assert!(name.x < 40.0 && name.y > 400.0, "{name:?}");
    let pixels = Pane::new(SIZE.0, SIZE.1).paint(hands.view(), &app::theme_of(ColourScheme::Dark));
    // Right of the name, where the arrow of the list would be; the bar to scroll with comes after it.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let (top, low) = (name.y as u32, (name.y + name.height) as u32);
    let dot = |x: u32, y: u32| {
        let first = ((y * SIZE.0 + x) * 4) as usize;
        &pixels[first..first + 3]
    };
    let ground = dot(335, top);
    let differ = (top..low).flat_map(|y| (305..345).map(move |x| (x, y)));
    let differ: Vec<_> = differ.filter(|(x, y)| dot(*x, *y) != ground).collect();
    assert!(differ.is_empty(), "{differ:?}");
}

/// Over the whole screen the picture has all of the height but for the bar, and is larger for it.
#[test]
fn over_the_whole_screen_the_picture_has_all_of_the_height() {
    let folder = TempDir::new().unwrap();
    let mut hands = Hands::open(folder.path(), Some(plan(5, 7, 1, "1")));
    for _ in 0..16 {
        hands.press(SPACE);
    }
    for size in [(800.0, 480.0), (1366.0, 768.0), (1920.0, 1080.0)] {
        let size = Size::from(size);
        let height = |hands: &Hands| {
            let mut screen = hands.screen(size);
            let picture = screen.find(selector::id("picture")).ok();
            picture.map_or(0.0, |picture| picture.bounds().height)
        };
        let beside = height(&hands);
        hands.press(letter("f"));
        let whole = height(&hands);
        hands.press(letter("f"));
        assert!(whole >= beside + 80.0, "{size:?}: {beside} {whole}");
        assert!(whole >= size.height - 110.0, "{size:?}: {whole}");
    }
}

/// A board is as wide as it is tall: beside the words its picture has more of the width than that of a tube,
/// and all of what is written in it.
#[test]
fn beside_the_words_a_board_has_more_of_the_width_than_a_tube() {
    let size = Size::new(1100.0, 760.0);
    let width = |plan: Plan| {
        let folder = TempDir::new().unwrap();
        let mut hands = Hands::open(folder.path(), Some(plan));
        for _ in 0..200 {
            let is_leg = hands.session().walk().is_some_and(|walk| {
                let step = walk.script().step(walk.place());
                step.is_some_and(|step| matches!(step.what, What::Lay(_)))
            });
            if is_leg {
                break;
            }
            hands.press(SPACE);
        }
        let mut screen = hands.screen(size);
        let picture = screen.find(selector::id("picture")).ok();
        picture.map_or(0.0, |picture| picture.bounds().width)
    };
    let ground = Ground::Flat {
        outer: Millimetres::new(150.0).unwrap(),
        hole: Some(Millimetres::new(40.0).unwrap()),
    };
    let cord = Cord::new(Millimetres::new(6.0).unwrap());
    let tube = plan(6, 5, 2, "1");
    let board = tube.clone().with_setup(Some(Setup::in_place(ground, cord)));
    let [tube, board] = [tube, board].map(width);
    assert!(tube > 300.0, "{tube}");
    assert!(board > 1.15 * tube, "{board} {tube}");
}
