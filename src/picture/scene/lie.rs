//! What a knot lies on in a picture, where that is no straight tube, and how large it is drawn there.

use std::f32::consts::{PI, TAU};

use super::layout::{
    COMFORTABLE, Constraints, DIGIT, LARGEST, NUMBER_RING, Proportions, SMALLEST,
    SMALLEST_FINISHED, SMALLEST_WITH_RIMS, STEEPNESS, SceneLayout, USUAL_TEXT, largest,
};
use super::layout_room::AT_THE_EDGE;
use super::meridian::{Bend, Meridian, TIGHTEST};
use super::sheet_point::real;
use super::view::single;
use crate::bench::{Ground, KnotShape};
use crate::knot::Rim;

/// A taper is never drawn more pointed than this.
const MOST_POINTED: f32 = 0.5;
/// The least cosine of the angle between a leg and a rim where a taper is tied on.
const LEAST_COS: f32 = 0.5;
/// So much wider than what it is of a picture from the side is.
const BESIDE: f32 = 1.06;
/// The least half pitch of a mat of which nothing is to be followed: a mat that is cut is none.
const TINY: f32 = 0.02;
/// So much wider than a finished mat its board is drawn.
const AROUND_FINISHED: f32 = 1.05;
/// Legs of a board are not drawn closer than this so that its numbers become larger.
const LEAST_FOR_NUMBERS: f32 = 11.0;
/// Inner circles of boards that are tried one after another until their numbers have room, in those on
/// which bights would lie close.
const INNER_CIRCLES: [f32; 8] = [1.2, 1.4, 1.7, 2.0, 2.5, 3.2, 4.2, 6.0];

impl Meridian {
    /// The line from rim to rim of a knot that is being tied on a ground; none on a straight one. How
    /// steep legs stand is not said by a taper.
    fn tied(ground: &Ground, angle: f32, tangent: f32) -> Option<Self> {
        match *ground {
            Ground::Round(_) => None,
            Ground::Taper { .. } => {
                let (slope, _) = taper(ground)?;
                Some(Self::new(Bend::Taper(slope), angle, tangent))
            }
            Ground::Ball(_) => Some(Self::ball(angle)),
            Ground::Flat { outer, hole } => Some(match hole {
                Some(hole) => Self::between(angle, single(outer.get()), single(hole.get())),
                None => Self::board(angle, INNER_CIRCLES[0]),
            }),
        }
    }
}

/// How a taper changes its radius for each step along it, over its radius in the middle; and that
/// radius in millimetres.
fn taper(ground: &Ground) -> Option<(f32, f32)> {
    let Ground::Taper { bottom, top, over } = *ground else {
        return None;
    };
    let [bottom, top, over] = [bottom, top, over].map(|length| single(length.get()));
    let slope = ((top - bottom) / 2.0 / over).clamp(-MOST_POINTED, MOST_POINTED);
    Some((slope, (top + bottom) / 4.0))
}

/// The way of a leg of a board from a circle of one radius to a circle of another: how far round, of an
/// angle in all, and how far from the middle.
pub fn involutes(angle: f32, outer: f32, inner: f32) -> Vec<(f32, f32)> {
    let board = Meridian::between(angle, outer, inner);
    let points = board.points(0.0, 0.0, STEPS);
    let [far, near] = [Rim::Bottom, Rim::Top].map(|rim| board.end(rim)[0]);
    let steps = f32::from(STEPS - 1);
    let way = (0..STEPS).zip(points).map(|(step, [radius, _])| {
        // Where the legs can't keep side by side all the way, it begins and ends at its circles all the same.
        let share = (radius - near) / (far - near);
        (
            angle * f32::from(step) / steps,
            inner + share * (outer - inner),
        )
    });
    way.collect()
}

/// From the word in the middle of a board to the numbers round it, at the least.
pub const CLEAR_OF_NUMBERS: f32 = 6.0;
/// The smallest type of a word in a picture, and the width of a letter in sizes of its type.
pub const SMALLEST_WORD: f32 = 12.0;
const LETTER: f32 = 0.62;
/// Points of the way of a leg.
const STEPS: u16 = 120;

impl SceneLayout {
    /// These measures for a knot that is tied on a ground, as large as fits; `None` on a straight one,
    /// and where the whole of it would be too small to follow: then its surroundings are shown as on a
    /// straight tube.
    pub fn tied_on(
        mut self,
        ground: &Ground,
        has_numbers: bool,
        constraints: Constraints,
    ) -> Option<Self> {
        if !has_numbers {
            self.largest_text = 0.0;
        }
        match ground {
            Ground::Round(_) => None,
            Ground::Flat { .. } => Some(self.on_board(ground, constraints)),
            _ => self.beside(ground, constraints),
        }
    }

    /// How far a leg goes round, in radians.
    fn angle(&self) -> f32 {
        TAU * real(self.height) / real(self.turn())
    }

    /// A ball or a taper, from the side.
    fn beside(mut self, ground: &Ground, constraints: Constraints) -> Option<Self> {
        let angle = self.angle();
        let numbers = self.number_pitch;
        // How far the legs of a taper can stand up until those at its thin end run along it.
        let lies = |tangent: f32| {
            let line = Meridian::tied(ground, angle, tangent);
            line.is_some_and(|line| {
                let rims = [Rim::Bottom, Rim::Top].map(|rim| line.rim_cos(rim, 0.0));
                rims[0].min(rims[1]) > LEAST_COS
            })
        };
        let flattest = largest([0.1, STEEPNESS[0]], lies);
        let mut fits = |half_pitch: f32, tangent: f32| {
            self.meridian = Meridian::tied(ground, angle, tangent);
            let tangent = self.meridian.map_or(tangent, |line| line.tangent());
            // At the rims of a ball, and at the thin end of a taper, numbers stand closer.
            let thin = self.meridian.map_or(1.0, |line| {
                line.end(Rim::Bottom)[0].min(line.end(Rim::Top)[0])
            });
            self.number_pitch = numbers * thin.min(1.0);
            self.set(half_pitch, half_pitch * tangent);
            self.fits_upright(constraints)
        };
        let half_pitch = largest([1.0, LARGEST], |half_pitch| fits(half_pitch, flattest));
        let tangent = largest([flattest, STEEPNESS[1]], |tangent| {
            lies(tangent) && fits(half_pitch, tangent)
        });
        fits(half_pitch, tangent);
        (self.half_pitch.min(self.row) >= SMALLEST).then_some(self)
    }

    /// Whether all of it is in the picture, seen from the side.
    fn fits_upright(&self, constraints: Constraints) -> bool {
        let widest = self.meridian.map_or(1.0, |line| match line.bend {
            Bend::Ball => 1.0,
            _ => line.end(Rim::Bottom)[0].max(line.end(Rim::Top)[0]),
        });
        let across = 2.0 * self.unit() * widest * BESIDE;
        self.upright().iter().sum::<f32>() <= constraints.height && across <= constraints.width
    }

    /// A board, from above.
    fn on_board(mut self, ground: &Ground, constraints: Constraints) -> Self {
        let room = constraints.width.min(constraints.height) / 2.0;
        // A board is as tall as it is wide: the numbers leave the knot its room.
        let has_numbers = self.largest_text > 0.0;
        if has_numbers {
            self.largest_text = (0.12 * room).clamp(18.0, 42.0);
        }
        let angle = self.angle();
        let line = Meridian::tied(ground, angle, 1.0);
        let open = line.map_or(TIGHTEST, |line| line.opening());
        // All of a board is in view at once, so that smaller cells do.
        let [smallest, least] = if has_numbers {
            [1.0, SMALLEST_WITH_RIMS]
        } else {
            [TINY, 0.0]
        };
        // Numbers have to stand within the inner circle, which is drawn wider for them.
        let wider = INNER_CIRCLES.into_iter().filter(|wider| *wider > open);
        // As wide as numbers need it to be read as easily as elsewhere, and the word besides. The best that was
        // found before the legs would lie too close for that.
        let mut best: Option<(u8, Self)> = None;
        for open in std::iter::once(open).chain(wider) {
            self.meridian = Some(Meridian::board(angle, open));
            let half_pitch = largest([smallest, LARGEST], |half_pitch| {
                self.set_board(half_pitch);
                self.board() <= room
            });
            self.set_board(half_pitch);
            if half_pitch < least {
                self.zoomed = true;
                self.set_board(COMFORTABLE);
            }
            if self.zoomed && best.is_some() {
                break;
            }
            if !has_numbers || self.zoomed {
                return self;
            }
            if !self.inner_numbers_fit() {
                continue;
            }
            let is_clear = half_pitch >= LEAST_FOR_NUMBERS && self.text >= USUAL_TEXT;
            let has_word = self.inner_word_fits(constraints.inner_word);
            let rank = 2 * u8::from(is_clear) + u8::from(has_word);
            if best.as_ref().is_none_or(|(before, _)| *before < rank) {
                best = Some((rank, self.clone()));
            }
            if is_clear && has_word {
                break;
            }
        }
        best.map_or(self, |(_, layout)| layout)
    }

    /// Works out everything that follows from the size of a cell on a board.
    fn set_board(&mut self, half_pitch: f32) {
        let inner = self.meridian.map_or(1.0, |line| line.end(Rim::Top)[0]);
        let unit = half_pitch * real(self.turn()) / TAU;
        // The numbers within the inner circle stand closest.
        let within = (inner * unit - 34.0).max(6.0);
        self.number_pitch = within / unit * real(self.turn()) / real(self.bights);
        self.set(half_pitch, half_pitch);
    }

    /// From the middle of a board to the edge of what is drawn on it.
    pub fn board(&self) -> f32 {
        let outer = self.meridian.map_or(1.0, |line| line.end(Rim::Bottom)[0]);
        let outer = outer * self.unit();
        if self.finished.is_some() {
            // No numbers stand round it, and nothing hangs from it.
            let reach = outer + self.beyond(Rim::Bottom);
            return reach * AROUND_FINISHED + 2.0;
        }
        outer + self.below()
    }

    /// Whether the numbers within the inner circle keep clear of one another.
    fn inner_numbers_fit(&self) -> bool {
        let inner = self.meridian.map_or(1.0, |line| line.end(Rim::Top)[0]);
        let to_numbers = self.above() - self.ring() - AT_THE_EDGE;
        let radius = inner * self.unit() - to_numbers;
        let bights = real(self.bights);
        let half = (DIGIT * self.digits * self.text).max(0.75 * self.text) / 2.0;
        // A number in a ring stands between two others.
        let wide = half + (NUMBER_RING * self.large_text).max(half) + 3.0;
        let across = 2.0 * radius * (PI / bights.max(2.0)).sin();
        radius > 0.0 && across >= wide
    }

    /// How far from the middle of a board its inner numbers begin.
    pub fn within_inner_numbers(&self) -> f32 {
        let inner = self.meridian.map_or(1.0, |line| line.end(Rim::Top)[0]);
        inner * self.unit() - self.above()
    }

    /// Whether a word of so many letters has room within those numbers.
    fn inner_word_fits(&self, letters: f32) -> bool {
        let half = letters * LETTER * SMALLEST_WORD / 2.0;
        let room = self.within_inner_numbers() - CLEAR_OF_NUMBERS;
        letters <= 0.0 || half.hypot(SMALLEST_WORD / 2.0) <= room
    }

    /// These measures for a finished knot on what it covers, in its own proportions and as large as
    /// fits; `None` on a straight tube.
    pub fn finished_on(
        mut self,
        ground: &Ground,
        shape: &KnotShape,
        constraints: Constraints,
    ) -> Option<Self> {
        let (line, unit) = self.meridian_of(ground, shape)?;
        self.meridian = Some(line);
        self.finished = Some(Proportions {
            half_pitch: unit * TAU / real(self.turn()),
            band: single(shape.bands.band()),
            bend: single(shape.bands.bend()),
        });
        let tangent = line.tangent();
        let room = constraints.width.min(constraints.height) / 2.0;
        let is_board = line.is_board();
        let least = if is_board { TINY } else { 1.0 };
        let half_pitch = largest([least, LARGEST], |half_pitch| {
            self.set(half_pitch, half_pitch * tangent);
            if is_board {
                self.board() <= room
            } else {
                self.fits_upright(constraints)
            }
        });
        self.set(half_pitch, half_pitch * tangent);
        if half_pitch < SMALLEST_FINISHED && !is_board {
            self.set(SMALLEST_FINISHED, SMALLEST_FINISHED * tangent);
            self.zoomed = true;
        }
        Some(self)
    }

    /// The line from rim to rim of a finished knot, and the radius in millimetres on which the sheet
    /// closes.
    fn meridian_of(&self, ground: &Ground, shape: &KnotShape) -> Option<(Meridian, f32)> {
        let angle = self.angle();
        let bend = single(shape.bands.bend());
        let cord = single(shape.bands.band()) / f32::from(self.passes);
        let rise = single(shape.rise.get());
        // Between the lines of the rims there is more than between the bights, which round them off.
        let lines = |line: &Meridian, unit: f32| {
            let rims = [Rim::Bottom, Rim::Top];
            let rounded = rims.map(|rim| bend * (1.0 / line.rim_cos(rim, bend / unit) - 1.0));
            rise + rounded[0] + rounded[1]
        };
        match *ground {
            Ground::Round(_) => None,
            Ground::Ball(diameter) => {
                let unit = single(diameter.get()) / 2.0 + cord;
                let line = Meridian::reaching(Bend::Ball, angle, rise / unit);
                let along = lines(&line, unit) / unit;
                Some((Meridian::reaching(Bend::Ball, angle, along), unit))
            }
            Ground::Taper { .. } => {
                let (slope, middle) = taper(ground)?;
                let unit = middle + cord;
                let line = Meridian::reaching(Bend::Taper(slope), angle, rise / unit);
                let along = lines(&line, unit) / unit;
                Some((Meridian::reaching(Bend::Taper(slope), angle, along), unit))
            }
            Ground::Flat { .. } => {
                // The circles on which the middles of its bights lie.
                let [far, near] = shape.rims.map(|across| single(across.get()) / 2.0);
                let near = near.max(0.05 * far);
                let mut line = Meridian::between(angle, far, near);
                let mut unit = far / line.end(Rim::Bottom)[0];
                for _ in 0..2 {
                    let more = |rim| bend * (1.0 / line.rim_cos(rim, bend / unit) - 1.0);
                    let [outside, inside] = [more(Rim::Bottom), more(Rim::Top)];
                    let [far, near] = [far + outside, (near - inside).max(0.05 * far)];
                    line = Meridian::between(angle, far, near);
                    unit = far / line.end(Rim::Bottom)[0];
                }
                Some((line, unit))
            }
        }
    }
}
