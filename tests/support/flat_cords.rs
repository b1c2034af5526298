//! Every cord of a picture in a flat colour of its own, held against the steps that the tyer is told.

use std::collections::{HashMap, HashSet};

use kurbo::Point;
use marlinspeak::knot::{Knot, Laying, LayingOrder, PassLeg, Rim, Weave};
use marlinspeak::picture::{Colour, Image, Moment, Palette, Role, Scene};

pub const BARE: Colour = Colour::rgb(0x0000_00FF);

/// Gives every cord a flat colour of its own, and leaves out all but cords and tube.
pub struct Flat<'a> {
    pub laying: &'a Laying,
    pub in_hand: Option<PassLeg>,
}

impl Flat<'_> {
    pub fn cord(&self, pass_leg: PassLeg) -> Colour {
        // Red counts, green keeps neighbours apart, blue tells cord from tube.
        let number = self.laying.legs_before(pass_leg) + 1;
        Colour::rgb(((number * 0x8000) & 0x00FF_0000) | ((number % 256) << 8))
    }
}

impl Palette for Flat<'_> {
    fn colour(&self, role: Role) -> Colour {
        match role {
            Role::Ground | Role::Tube => BARE,
            Role::Laid(pass_leg) | Role::Beside(pass_leg) | Role::Beyond(pass_leg) => {
                self.cord(pass_leg)
            }
            Role::Active | Role::ActiveRest => self
                .in_hand
                .map_or(Colour::CLEAR, |pass_leg| self.cord(pass_leg)),
            _ => Colour::CLEAR,
        }
    }
}

/// Two cords that cross: the rising one, the falling one, the row. Legs that wind round the tube
/// more than once cross in several rows.
pub type Pair = (PassLeg, PassLeg, u16);

pub fn laying(leads: u16, bights: u16, passes: u16, weave: &str, order: LayingOrder) -> Laying {
    let knot = Knot::new(leads, bights, Weave::parse(weave).unwrap()).unwrap();
    Laying::new(knot, passes, order).unwrap()
}

/// Which cord of every pair lies on top when `laid` turns are on the tube, from the steps that
/// the tyer is told; `true` when it is the rising one.
pub fn told(laying: &Laying, laid: u32) -> HashMap<Pair, bool> {
    let mut pairs = HashMap::new();
    for pass_leg in (0..laid).map(|nth| laying.nth_leg(nth).unwrap()) {
        let rising = laying.leg(pass_leg).unwrap().from.rim == Rim::Bottom;
        for crossing in laying.crossings(pass_leg) {
            for pass in 1..=crossing.cords {
                let other = laying.pass_leg_of(pass, crossing.of);
                let (up, down) = if rising {
                    (pass_leg, other)
                } else {
                    (other, pass_leg)
                };
                let pair = (up, down, crossing.row);
                let before = pairs.insert(pair, crossing.over == rising);
                assert_eq!(before, None, "{pair:?} is told twice");
            }
        }
    }
    pairs
}

pub fn at(image: &Image, point: Point) -> Option<Colour> {
    if point.x < 0.0 || point.y < 0.0 {
        return None;
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    image.pixel(point.x as u32, point.y as u32)
}

/// The moments looked at: nothing but the first leg in hand, some on the way, all laid.
pub fn moments(laying: &Laying) -> Vec<Moment> {
    let legs = laying.legs();
    let mut moments: Vec<Moment> = [legs / 3, legs / 2, 5 * legs / 6, legs - 1]
        .into_iter()
        .map(|before| Moment::at(laying.nth_leg(before).unwrap()))
        .collect();
    moments.push(Moment::Before(laying.nth_leg(legs / 2).unwrap()));
    moments.push(Moment::Fairing(laying.nth_leg(legs / 2).unwrap()));
    moments.push(Moment::Looking(laying.nth_leg(legs / 2).unwrap()));
    moments.push(Moment::TakingBack {
        pass_leg: laying.nth_leg(legs / 2).unwrap(),
        crossings: usize::MAX,
    });
    moments.extend([
        Moment::Laid,
        Moment::TopPinsOut,
        Moment::Finished,
        Moment::Done,
    ]);
    moments
}

pub fn on_the_tube(laying: &Laying, moment: &Moment) -> (u32, Option<PassLeg>) {
    match moment {
        Moment::Bare => (0, None),
        Moment::Before(pass_leg) => (laying.legs_before(*pass_leg), None),
        Moment::At { pass_leg, .. } | Moment::TakingBack { pass_leg, .. } => {
            (laying.legs_before(*pass_leg) + 1, Some(*pass_leg))
        }
        Moment::Fairing(pass_leg) => (laying.legs(), Some(*pass_leg)),
        Moment::Looking(pass_leg) => (laying.legs_before(*pass_leg) + 1, Some(*pass_leg)),
        Moment::Tucking { .. }
        | Moment::Laid
        | Moment::TopPinsOut
        | Moment::Finished
        | Moment::Done => (laying.legs(), None),
    }
}

pub const KNOTS: [(u16, u16, u16, &str); 14] = [
    (3, 2, 1, "1"),
    (3, 2, 3, "1"),
    (5, 6, 1, "1"),
    (5, 6, 2, "2"),
    (5, 6, 3, "1"),
    (4, 3, 2, "1"),
    (4, 6, 2, "ouu"),
    (21, 4, 1, "1"),
    (21, 4, 2, "4"),
    (7, 5, 3, "3"),
    (2, 3, 3, "1"),
    (2, 2, 2, "1"),
    (6, 9, 3, "ouoou"),
    (9, 9, 1, "2"),
];

/// Checks every visible crossing of a picture; gives the pairs seen.
pub fn tops_agree(
    what: &str,
    told: &HashMap<Pair, bool>,
    scene: &Scene,
    image: &Image,
    flat: &Flat<'_>,
) -> HashSet<Pair> {
    let mut seen = HashSet::new();
    for point in scene.crossing_points() {
        let pair = (point.rising, point.falling, point.row);
        let Some(&rising_on_top) = told.get(&pair) else {
            panic!("{what}: {pair:?} are drawn across each other and never told");
        };
        let top = if rising_on_top { pair.0 } else { pair.1 };
        assert_eq!(
            at(image, point.at),
            Some(flat.cord(top)),
            "{what}: on top in row {} at {:?}",
            point.row,
            point.at
        );
        assert!(seen.insert(pair), "{what}: {pair:?} is drawn twice");
    }
    seen
}
