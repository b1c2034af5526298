//! Words in pictures: the finger of every bight of a knot round the hand, and where in and out are on a
//! board; in the window, on paper and in moving pictures.

use crate::moving;

use std::collections::BTreeSet;

use kurbo::{Point, Rect, Shape};
use marlinspeak::bench::{Cord, Ground, Millimetres};
use marlinspeak::guide::{AtOnce, Captions, Plan, Script, Setup, Step, What};
use marlinspeak::knot::{Hand, Pin, Rim};
use marlinspeak::paper;
use marlinspeak::picture::reel::ReelFormat;
use marlinspeak::picture::sheet::Paper;
use marlinspeak::picture::{DisplayItem, DisplayList, Outline, Role, Subject, View, Viewport};
use marlinspeak::words::Words;
use tempfile::TempDir;

const TAGS: [&str; 4] = ["en", "de", "es", "fr"];
const ON_HAND: [[&str; 2]; 4] = [["3", "4"], ["3", "5"], ["4", "5"], ["5", "4"]];

fn words(tag: &str) -> Words {
    Words::load(Some(tag)).unwrap()
}

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

fn round_hand([leads, bights]: [&str; 2], hand: Hand) -> Plan {
    let plan = Plan::read(leads, bights, "1", "").unwrap();
    plan.with_hand(hand).with_round_hand().unwrap()
}

fn mat(counts: [&str; 3]) -> Plan {
    let [leads, bights, passes] = counts;
    let ground = Ground::Flat {
        outer: mm(180.0),
        hole: Some(mm(60.0)),
    };
    let plan = Plan::read(leads, bights, passes, "").unwrap();
    plan.with_setup(Some(Setup::in_place(ground, Cord::new(mm(4.0)))))
}

/// Every step in which a leg is laid.
fn legs(script: &Script) -> Vec<(Step, [Pin; 2])> {
    let laid = script.steps().filter_map(|step| match &step.what {
        What::Lay(lay) => Some((step.clone(), [lay.leg.from, lay.leg.to])),
        _ => None,
    });
    laid.collect()
}

fn shapes(subject: &Subject, view: View, size: Viewport) -> Vec<DisplayItem> {
    DisplayList::of(&subject.scene(view, size)).items().to_vec()
}

fn bounds(item: &DisplayItem) -> Rect {
    match &item.outline {
        Outline::Path(path) => path.bounding_box(),
        Outline::Circle(circle) => circle.bounding_box(),
    }
}

fn of(items: &[DisplayItem], role: Role) -> Vec<&DisplayItem> {
    items.iter().filter(|item| item.role == role).collect()
}

#[test]
fn every_bight_round_the_hand_has_a_name_of_its_own_in_every_language() {
    for counts in ON_HAND {
        let plan = round_hand(counts, Hand::Right);
        let mut seen = BTreeSet::new();
        for tag in TAGS {
            let captions = words(tag).captions(&plan);
            for (rim, names) in [Rim::Bottom, Rim::Top].into_iter().zip(&captions.bights) {
                assert_eq!(names.len(), plan.knot().pins(rim).count());
                let own: BTreeSet<&String> = names.iter().collect();
                assert_eq!(own.len(), names.len(), "{tag}: {names:?}");
                for (number, name) in (1..).zip(names) {
                    assert!(name.starts_with(&format!("{number} ")), "{tag}: {name}");
                    assert!(name.chars().count() <= 20, "{tag}: {name}");
                }
            }
            assert!(
                seen.insert(captions.bights),
                "{tag} has the words of another"
            );
        }
        let tube = Plan::read("3", "5", "1", "").unwrap();
        let of_tube = words("en").captions(&tube);
        assert_eq!(of_tube.bights, Captions::default().bights);
        assert_eq!(of_tube.circles, None);
        assert_eq!(of_tube.behind.as_deref(), Some("behind"));
    }
}

/// Both bights of the leg in hand are named, whole and apart, and by their own fingers: another word for a
/// finger changes that plate and no other.
#[test]
fn both_bights_of_the_leg_in_hand_are_named_by_their_fingers() {
    let sizes = [
        Viewport::new(300.0, 260.0),
        Viewport::new(420.0, 640.0),
        Viewport::new(1000.0, 700.0),
    ];
    for counts in ON_HAND {
        for (tag, hand) in TAGS
            .into_iter()
            .zip([Hand::Right, Hand::Left].into_iter().cycle())
        {
            let script = Script::new(round_hand(counts, hand), AtOnce::WholeLeg);
            let captions = words(tag).captions(script.plan());
            for (step, [from, to]) in legs(&script) {
                let subject = Subject::of(&script, &step).captioned(&captions);
                for size in sizes {
                    for view in [View::RoundTheTube, View::RolledOut] {
                        let what = format!("{tag} {counts:?} {from:?} {to:?} {size:?} {view:?}");
                        named_whole(&subject, view, size, &what);
                        for (pin, role) in [(from, Role::FromNumber), (to, Role::ToNumber)] {
                            let mut other = captions.clone();
                            let rim = usize::from(pin.rim == Rim::Top);
                            other.bights[rim][usize::from(pin.number - 1)] = "thumb".to_owned();
                            let told = [&captions, &other].map(|captions| {
                                let subject = subject.clone().captioned(captions);
                                let items = shapes(&subject, view, size);
                                [Role::FromNumber, Role::ToNumber].map(|role| {
                                    of(&items, role).last().map(|item| bounds(item).width())
                                })
                            });
                            let is_from = usize::from(role == Role::ToNumber);
                            assert_ne!(told[0][is_from], told[1][is_from], "{what}: {role:?}");
                        }
                    }
                }
            }
        }
    }
}

fn named_whole(subject: &Subject, view: View, size: Viewport, what: &str) {
    let items = shapes(subject, view, size);
    let picture = Rect::new(0.0, 0.0, size.width.into(), size.height.into()).inflate(0.5, 0.5);
    let plates = [Role::FromDisc, Role::To].map(|role| {
        let plates = of(&items, role);
        assert!(!plates.is_empty(), "{what}: no {role:?}");
        plates.into_iter().map(bounds).collect::<Vec<_>>()
    });
    for plate in plates.iter().flatten() {
        assert!(picture.contains_rect(*plate), "{what}: {plate:?} is cut");
    }
    let [from, to] = plates;
    for (one, other) in from
        .iter()
        .flat_map(|one| to.iter().map(move |other| (one, other)))
    {
        assert!(
            one.intersect(*other).is_zero_area(),
            "{what}: {one:?} {other:?}"
        );
    }
    // What else is named keeps clear of these.
    for name in of(&items, Role::PinNumber) {
        let name = bounds(name);
        for plate in from.iter().chain(&to) {
            assert!(
                name.intersect(*plate).is_zero_area(),
                "{what}: {name:?} {plate:?}"
            );
        }
    }
}

#[test]
fn a_board_says_where_in_and_out_are_beyond_its_circles_and_within() {
    for tag in TAGS {
        for counts in [["5", "7", "1"], ["6", "7", "2"], ["9", "8", "1"]] {
            let script = Script::new(mat(counts), AtOnce::WholeLeg);
            let captions = words(tag).captions(script.plan());
            let [out, within] = captions.circles.clone().expect("words for a board");
            assert_ne!(out, within);
            for size in [Viewport::new(420.0, 400.0), Viewport::new(1100.0, 760.0)] {
                for (step, _) in legs(&script) {
                    let subject = Subject::of(&script, &step).captioned(&captions);
                    let items = shapes(&subject, View::RoundTheTube, size);
                    let what = format!("{tag} {counts:?} {size:?} {:?}", step.place);
                    let words: Vec<Rect> =
                        of(&items, Role::Label).into_iter().map(bounds).collect();
                    // A picture that is hardly large enough for its numbers has no room in its middle.
                    let (outer, inner) = match words[..] {
                        [outer, inner] => (outer, Some(inner)),
                        [outer] if size.width < 500.0 => (outer, None),
                        _ => panic!("{what}: {words:?}"),
                    };
                    let wordless = Subject::of(&script, &step).scene(View::RoundTheTube, size);
                    let scene = subject.scene(View::RoundTheTube, size);
                    assert_eq!(scene.is_zoomed(), wordless.is_zoomed(), "{what}");
                    let middle =
                        Point::new(f64::from(size.width) / 2.0, f64::from(size.height) / 2.0);
                    assert!(
                        inner.is_none_or(|inner| inner.contains(middle)),
                        "{what}: {inner:?}"
                    );
                    let far = |rect: Rect| (rect.center() - middle).hypot();
                    let pins = of(&items, Role::Pin)
                        .into_iter()
                        .map(|pin| far(bounds(pin)));
                    let pins: Vec<f64> = pins.collect();
                    let most = pins.iter().copied().fold(0.0, f64::max);
                    assert!(far(outer) > most + 10.0, "{what}: {outer:?} {most}");
                    // Clear of numbers and of cords.
                    for role in [Role::PinNumber, Role::FromDisc, Role::To, Role::Pin] {
                        for item in of(&items, role) {
                            for word in [Some(outer), inner].into_iter().flatten() {
                                assert!(is_clear(item, word), "{what}: {item:?} {word:?}");
                            }
                        }
                    }
                }
            }
        }
    }
}

/// What is looked at of the last leg stands in large type, as it stood when the leg was laid.
#[test]
fn the_crossings_of_a_look_stand_as_those_of_a_leg_do() {
    let plan = Plan::read("5", "7", "1", "1").unwrap();
    let script = Script::new(plan, AtOnce::default());
    for tag in TAGS {
        let words = words(tag);
        let mut looks = 0;
        for step in script.steps() {
            let What::Check(check) = &step.what else {
                continue;
            };
            let shown = words.show(script.plan().knot(), &step);
            let over: Vec<bool> = shown.marks.iter().map(|mark| mark.over).collect();
            let lies: Vec<bool> = check.last.crossings.iter().map(|lies| lies.over).collect();
            assert_eq!(over, lies, "{tag}");
            for mark in &shown.marks {
                let is_told_again = shown.notes.iter().any(|note| note.contains(&mark.text));
                assert!(!is_told_again, "{tag}: {shown}");
            }
            looks += 1;
        }
        assert!(looks > 3, "{looks}");
    }
}

/// On a mat nothing goes up, down or along a tube: the line of a leg has no arrow, and the circles are called
/// in the picture as their pins are in the line.
#[test]
fn the_line_of_a_leg_on_a_mat_has_no_arrow_and_the_words_of_its_picture() {
    for tag in TAGS {
        let script = Script::new(mat(["5", "7", "1"]), AtOnce::WholeLeg);
        let words = words(tag);
        let [outer, inner] = words.captions(script.plan()).circles.unwrap();
        for (step, _) in legs(&script) {
            let line = words.show(script.plan().knot(), &step).line;
            assert!(!line.contains(['↗', '↘', '↖', '↙']), "{tag}: {line}");
            let line = line.to_lowercase();
            for circle in [&outer, &inner] {
                assert!(
                    line.contains(&circle.to_lowercase()),
                    "{tag}: {line}, {circle}"
                );
            }
        }
    }
}

fn is_clear(item: &DisplayItem, word: Rect) -> bool {
    match &item.outline {
        Outline::Path(path) => path.bounding_box().intersect(word).is_zero_area(),
        Outline::Circle(circle) => {
            let [x, y] = [
                circle.center.x.clamp(word.x0, word.x1),
                circle.center.y.clamp(word.y0, word.y1),
            ];
            (Point::new(x, y) - circle.center).hypot() >= circle.radius
        }
    }
}

/// The head of the cord in hand as it is drawn: from the middle of its base to its tip.
fn head(items: &[DisplayItem]) -> Option<(Point, Point)> {
    let triangle = items.iter().rev().find_map(|item| match &item.outline {
        Outline::Path(path) if item.role == Role::Active && path.elements().len() == 4 => {
            let corners: Vec<Point> = path
                .elements()
                .iter()
                .filter_map(kurbo::PathEl::end_point)
                .collect();
            (corners.len() >= 3).then(|| [corners[0], corners[1], corners[2]])
        }
        _ => None,
    });
    triangle.map(|[one, tip, other]| (one.midpoint(other), tip))
}

/// A leg of a mat that rises goes in, one that falls comes out, and both with or against the clock: so does
/// the head of the cord wherever a leg is told in parts.
#[test]
fn the_head_of_the_cord_points_the_way_that_a_leg_goes_on_a_disc() {
    for (hand, counts) in [
        (Hand::Right, ["5", "7", "1"]),
        (Hand::Left, ["5", "7", "1"]),
        (Hand::Right, ["9", "8", "1"]),
    ] {
        let plan = mat(counts).with_hand(hand);
        let script = Script::new(plan, AtOnce::UpTo(1));
        let size = Viewport::new(900.0, 900.0);
        let middle = Point::new(450.0, 450.0);
        let mut seen = BTreeSet::new();
        for step in script.steps() {
            let What::Lay(lay) = &step.what else {
                continue;
            };
            // At a pin the head goes round it.
            if lay.part == lay.parts {
                continue;
            }
            let subject = Subject::of(&script, &step);
            let items = shapes(&subject, View::RoundTheTube, size);
            let (base, tip) = head(&items).expect("a head");
            let (out, way) = (base - middle, tip - base);
            let inwards = -out.dot(way) > 0.0;
            assert_eq!(inwards, lay.leg.to.rim == Rim::Top, "{:?}", step.place);
            // Against the clock, as it is seen from above, for who works to the right.
            let against = out.cross(way) < 0.0;
            assert_eq!(against, hand == Hand::Right, "{:?}", step.place);
            seen.insert((inwards, against));
            // Square to the way of the involute: as steep as it lies there, not as on a tube.
            let round = (out.cross(way) / out.hypot() / way.hypot()).abs();
            assert!((0.3..0.999).contains(&round), "{:?}: {round}", step.place);
        }
        assert_eq!(seen.len(), 2, "{hand:?}");
    }
}

/// How many pixels of two images of one size are far apart, from one place to another in per cent of their
/// width and height.
fn apart(one: &moving::Pixels, other: &moving::Pixels, from: [usize; 2], to: [usize; 2]) -> usize {
    let size = [one.width, one.height];
    assert_eq!(size, [other.width, other.height]);
    let of = |share: [usize; 2]| [0, 1].map(|side| size[side] * share[side] / 100);
    let ([left, top], [right, low]) = (of(from), of(to));
    let mut apart = 0;
    for y in top..low {
        for x in left..right {
            let at = 3 * (y * one.width + x);
            let [here, there] = [one, other].map(|image| &image.rgb[at..at + 3]);
            let mut channels = here.iter().zip(there);
            apart += usize::from(channels.any(|(here, there)| here.abs_diff(*there) > 80));
        }
    }
    apart
}

/// The same picture in two languages is another one for its words alone.
#[test]
fn fingers_and_circles_are_named_on_paper_and_in_moving_pictures() {
    for plan in [round_hand(["3", "5"], Hand::Right), mat(["5", "7", "1"])] {
        let script = Script::new(plan.clone(), AtOnce::WholeLeg);
        let (step, _) = legs(&script).swap_remove(4);
        let [one, other] = ["en", "de"].map(|tag| {
            let page = paper::stage(
                &script,
                &step,
                View::RoundTheTube,
                Paper::A4,
                &words(tag).on(plan.rims()),
            );
            moving::Pixels::of(&page.image(72))
        });
        // Below the words of the step, above what the signs mean.
        let stage = apart(&one, &other, [20, 50], [80, 88]);
        assert!(stage > 20, "a stage: {stage}");
        let folder = TempDir::new().unwrap();
        let [one, other] = ["en", "de"].map(|tag| {
            let file = folder.path().join(format!("{tag}.png"));
            let reel =
                paper::TieReel::new(plan.clone(), View::RoundTheTube, 480, &words(tag)).unwrap();
            reel.write(&file, ReelFormat::Png, false, |_, _| true)
                .unwrap();
            moving::frames_of_png(&file)
        });
        assert_eq!(one.len(), other.len());
        let frames = one.iter().zip(&other);
        let named =
            frames.filter(|((one, _), (other, _))| apart(one, other, [50, 5], [99, 95]) > 20);
        assert!(named.count() > one.len() / 2, "a reel");
    }
}
