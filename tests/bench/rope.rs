//! Cord drawn up on a cylinder as tight as it goes: the tests' own simulation, which knows nothing of
//! the bench's rules and so can judge them.
//!
//! A cord is a chain of points. Every step draws each point a little towards the middle of its
//! neighbours, which makes the chain shorter; then segments that are too near one another, bends
//! that are too sharp and points inside the cylinder are pushed out again. The pull is made weaker as soon
//! as nothing moves any more, until cords that touch hardly overlap (shortest length of a thick cord,
//! as P. Pierański's SONO looks for it, with the projections of position-based dynamics; both from
//! memory). Turned by one bight such a knot is the same again, so one rising and one falling leg of each
//! pass, and of every nest where bights are nested, are all that is simulated. Hard, frictionless cord.
//!
//! On a ball, points inside it are pushed out the same way; how far the cord then lies off it on the average,
//! says whether the ball holds it in two layers.
//!
//! `cargo bench --bench rope` prints the tables that `tests/data/simulated_widths.csv`,
//! `tests/data/simulated_nested_widths.csv` and `tests/data/simulated_balls.csv` hold; `-- LEADS BIGHTS PASSES
//! RUN CORD OBJECT`, with `NESTED LANDS` behind them for an interwoven knot, draws up one knot, and five of
//! them, without the run, one on a ball.

#![expect(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "points and bights are few"
)]

use std::env;
use std::f64::consts::{PI, TAU};

type Point = [f64; 3];

/// What is drawn up.
#[derive(Clone, Copy)]
struct TightKnot {
    leads: u16,
    bights: u16,
    passes: u16,
    /// Over so many, under so many.
    run: u16,
    cord: f64,
    object: f64,
    /// Bights nested at each rim: 1 in a plain knot.
    nested: u16,
    /// The top row, 1 the outermost, in which the first cord lands.
    lands: u16,
    /// Whether the object is a ball.
    on_ball: bool,
}

/// Knots on balls that just hold them by the law of the bench, half as large and twice as large, and with one
/// lead less than bights: leads, bights, passes, ball.
const BALLS: [[u16; 4]; 13] = [
    [4, 3, 1, 7],
    [5, 4, 1, 12],
    [7, 6, 1, 22],
    [8, 7, 1, 26],
    [9, 8, 1, 31],
    [5, 4, 2, 22],
    [5, 4, 1, 6],
    [7, 6, 1, 11],
    [5, 4, 2, 11],
    [7, 6, 1, 44],
    [4, 5, 1, 12],
    [4, 5, 1, 16],
    [8, 9, 1, 31],
];

/// Knots that show whether this simulation agrees with the published table, and such as that does not
/// reach: leads, bights, passes, run.
const KNOTS: [[u16; 4]; 24] = [
    // Of the published table.
    [3, 5, 1, 1],
    [5, 4, 1, 1],
    [7, 5, 1, 1],
    [17, 4, 1, 1],
    [5, 4, 2, 1],
    [5, 4, 3, 1],
    // Many bights: steep legs.
    [5, 9, 1, 1],
    [4, 7, 1, 1],
    [7, 8, 1, 1],
    [5, 7, 2, 1],
    [3, 5, 3, 1],
    // Few bights.
    [7, 3, 1, 1],
    [9, 2, 1, 1],
    // Four passes.
    [3, 4, 4, 1],
    [5, 3, 4, 1],
    // Longer runs.
    [5, 4, 1, 2],
    [5, 7, 1, 2],
    [9, 4, 1, 2],
    [7, 5, 1, 3],
    [13, 5, 1, 3],
    [13, 4, 1, 4],
    [5, 4, 2, 2],
    [9, 5, 2, 2],
    [7, 5, 2, 3],
];

/// Interwoven knots, over as many as are nested: nested, leads, bights, lands, passes, and the object.
const NESTED: [[u16; 6]; 11] = [
    // Of the published table, but of thicker cord on a thicker object.
    [2, 3, 4, 2, 1, 40],
    [2, 3, 4, 1, 1, 40],
    [2, 5, 4, 1, 1, 53],
    // Followed.
    [2, 3, 3, 2, 2, 40],
    // Three nests, and four.
    [3, 3, 4, 3, 1, 60],
    [3, 4, 3, 3, 1, 50],
    [3, 5, 3, 1, 1, 50],
    [3, 5, 4, 3, 1, 60],
    [4, 3, 3, 4, 1, 60],
    [4, 4, 3, 4, 1, 60],
    [4, 5, 4, 4, 1, 70],
];

/// Length of a segment of the loose cord, in cord diameters.
const SEGMENT: f64 = 0.45;
/// Segments further apart than touching by so much cannot touch before they are looked for again.
const SKIN: f64 = 0.35;
/// How strongly a point is drawn towards the middle of its neighbours: at first, and at last.
const PULL: [f64; 2] = [0.4, 0.004];
/// The same is called still when the width changes by no more than this share in so many steps.
const STILL: (f64, usize) = (2e-4, 400);

/// One pass of the cord of one nest.
#[derive(Clone, Copy)]
struct Cord {
    /// Its points.
    first: usize,
    size: usize,
    /// By so many bights it goes on from its rising leg to the next.
    leads: usize,
}

struct Rope {
    knot: TightKnot,
    /// One rising and one falling leg of each pass, cord by cord.
    points: Vec<Point>,
    cords: Vec<Cord>,
    /// The cord that each point belongs to.
    cord_of: Vec<usize>,
    inner: f64,
    /// Cosine and sine of so many bights.
    turns: Vec<[f64; 2]>,
    /// Segments that may touch: one, another, and by how many bights that is turned.
    near: Vec<[usize; 3]>,
    moved: f64,
}

impl Rope {
    /// The knot laid loosely, over and under already in two layers.
    fn laid(knot: TightKnot) -> Self {
        let pitches = f64::from(knot.nested * knot.bights);
        let inner = f64::midpoint(knot.object, knot.cord);
        // Rows so high that the bands of all passes have room.
        let half_pitch = PI * (inner + knot.cord) / pitches;
        let band = 1.25 * (f64::from(knot.passes) + 1.2) * knot.cord;
        let mut row = 0.25 * half_pitch;
        while 2.0 * half_pitch * row < band * half_pitch.hypot(row) && row < 40.0 * half_pitch {
            row *= 1.02;
        }
        // On a ball as large as gives them room, from near one pole to near the other.
        let leads = f64::from(knot.leads);
        let room = 1.4 * knot.cord * (f64::from(knot.passes) + 1.2) * (leads + pitches) / TAU;
        let ball = room.max(inner + knot.cord);
        if knot.on_ball {
            row = 2.0 * (pitches / (leads + pitches)).acos() * ball / leads;
        }
        let diagonal = half_pitch.hypot(row);
        let apart = 1.1 * knot.cord * diagonal / half_pitch;
        let (mut points, mut cords, mut cord_of) = (Vec::new(), Vec::new(), Vec::new());
        for (nest, pass) in
            (0..knot.nested).flat_map(|nest| (0..knot.passes).map(move |pass| (nest, pass)))
        {
            let [low, high] = knot.rims(nest);
            let climb = high - low;
            let size = (2.0 * climb * diagonal / (SEGMENT * knot.cord)).ceil();
            let first = points.len();
            let mut nth = 0.0;
            while nth < size {
                let along = nth / size * 2.0 * climb;
                let is_rising = along < climb;
                let height = low
                    + if is_rising {
                        along
                    } else {
                        2.0 * climb - along
                    };
                let layer = 1.05 * knot.cord * knot.layer(height, [low, high], is_rising);
                let y = rounded(height, [low, high]) * row - f64::from(pass) * apart;
                let angle = along * PI / pitches;
                let (rho, y) = if knot.on_ball {
                    let middle = (leads * row - f64::from(knot.passes - 1) * apart) / 2.0;
                    let (sin, cos) = ((y - middle) / ball).sin_cos();
                    let rho = ball + layer - knot.cord / 2.0;
                    (rho * cos, rho * sin)
                } else {
                    (inner + layer, y)
                };
                points.push([rho * angle.cos(), rho * angle.sin(), y]);
                cord_of.push(cords.len());
                nth += 1.0;
            }
            cords.push(Cord {
                first,
                size: points.len() - first,
                leads: (climb as usize) / usize::from(knot.nested),
            });
        }
        let turns = (0..knot.bights).map(|nth| {
            let angle = f64::from(nth) * TAU / f64::from(knot.bights);
            [angle.cos(), angle.sin()]
        });
        Self {
            knot,
            points,
            cords,
            cord_of,
            inner,
            turns: turns.collect(),
            near: Vec::new(),
            moved: f64::INFINITY,
        }
    }

    fn bights(&self) -> usize {
        self.turns.len()
    }

    /// The point so many points after another along its cord: its index, and by how many bights it
    /// is turned.
    fn after(&self, index: usize, by: usize) -> (usize, usize) {
        let cord = self.cords[self.cord_of[index]];
        let place = index - cord.first + by;
        let turns = place / cord.size * cord.leads;
        (cord.first + place % cord.size, turns % self.bights())
    }

    fn turned(&self, point: Point, by: usize) -> Point {
        let [cos, sin] = self.turns[by];
        [
            point[0] * cos - point[1] * sin,
            point[0] * sin + point[1] * cos,
            point[2],
        ]
    }

    fn at(&self, (index, turns): (usize, usize)) -> Point {
        self.turned(self.points[index], turns)
    }

    /// The ends of a segment that is turned by so many bights.
    fn segment(&self, index: usize, turns: usize) -> [Point; 2] {
        let next = self.after(index, 1);
        [
            self.at((index, turns)),
            self.at((next.0, (next.1 + turns) % self.bights())),
        ]
    }

    /// Moves a point that is seen turned by so many bights.
    fn shift(&mut self, (index, turns): (usize, usize), by: Point, share: f64) {
        let by = self.turned(by, (self.bights() - turns) % self.bights());
        for (at, by) in self.points[index].iter_mut().zip(by) {
            *at += share * by;
        }
    }

    /// Of one rising and one falling leg of each cord.
    fn length(&self) -> f64 {
        let segments = (0..self.points.len())
            .map(|index| distance(self.points[index], self.at(self.after(index, 1))));
        segments.sum()
    }

    /// From outer edge to outer edge.
    fn width(&self) -> f64 {
        let [low, high] = self.heights();
        high - low + self.knot.cord
    }

    /// How far its middle lies off the ball on the average, from the middle of the ball.
    fn far_out(&self) -> f64 {
        let far = self.points.iter().map(|point| dot(*point, *point).sqrt());
        far.sum::<f64>() / self.points.len() as f64
    }

    /// Between which heights it lies.
    fn heights(&self) -> [f64; 2] {
        let heights = || self.points.iter().map(|point| point[2]);
        [
            heights().fold(f64::MAX, f64::min),
            heights().fold(f64::MIN, f64::max),
        ]
    }

    /// Looks for the segments that could touch soon.
    fn find_near(&mut self) {
        let segment = self.length() / self.points.len() as f64;
        let reach = self.knot.cord * (1.0 + SKIN) + 1.2 * segment;
        let pitch = TAU / self.bights() as f64;
        let middles: Vec<(Point, f64)> = (0..self.points.len())
            .map(|index| {
                let middle = midpoint(self.points[index], self.at(self.after(index, 1)));
                (middle, middle[1].atan2(middle[0]))
            })
            .collect();
        // Nearer along the cord than half round a bend of its own thickness is no touching.
        let apart = (1.5 * self.knot.cord / segment).ceil() as usize;
        let mut near = Vec::new();
        for (one, (middle, angle)) in middles.iter().enumerate() {
            for (other, (beside, around)) in middles.iter().enumerate().skip(one) {
                if (middle[2] - beside[2]).abs() > reach {
                    continue;
                }
                let by = ((angle - around) / pitch).round() as isize;
                let spread = (reach / (self.inner * pitch)).ceil() as isize;
                // Near a pole all bights are near one another.
                let spread = if self.knot.on_ball {
                    isize::MAX
                } else {
                    spread
                };
                let spread = spread.min(self.bights() as isize / 2);
                let mut seen = Vec::new();
                for turns in by - spread..=by + spread {
                    let turns = turns.rem_euclid(self.bights() as isize) as usize;
                    let is_itself = one == other && (turns == 0 || 2 * turns > self.bights());
                    if is_itself
                        || seen.contains(&turns)
                        || distance(*middle, self.turned(*beside, turns)) > reach
                    {
                        continue;
                    }
                    seen.push(turns);
                    let (p, q) = (self.segment(one, 0), self.segment(other, turns));
                    let [s, t] = nearest(p, q);
                    let is_near =
                        distance(between(p, s), between(q, t)) < self.knot.cord * (1.0 + SKIN);
                    if is_near && !self.is_along(one, other, turns, apart) {
                        near.push([one, other, turns]);
                    }
                }
            }
        }
        self.near = near;
        self.moved = 0.0;
    }

    /// Whether two segments lie within so many points along one cord.
    fn is_along(&self, one: usize, other: usize, turns: usize, apart: usize) -> bool {
        let is_one_cord = self.cord_of[one] == self.cord_of[other];
        let back = (self.bights() - turns) % self.bights();
        is_one_cord
            && (0..apart).any(|by| {
                self.after(one, by) == (other, turns) || self.after(other, by) == (one, back)
            })
    }

    /// Draws every point towards the middle of its neighbours.
    fn pull(&mut self, strength: f64) {
        let mut pulled = self.points.clone();
        for index in 0..self.points.len() {
            let here = self.after(index, 1);
            let middle = midpoint(self.points[index], self.at(self.after(index, 2)));
            let at = self.at(here);
            let by = [0, 1, 2].map(|axis| strength * (middle[axis] - at[axis]));
            let by = self.turned(by, (self.bights() - here.1) % self.bights());
            for axis in 0..3 {
                pulled[here.0][axis] += by[axis];
            }
        }
        self.points = pulled;
    }

    /// Pushes apart what overlaps; the worst overlap that was found, in cord diameters.
    fn push(&mut self) -> f64 {
        let cord = self.knot.cord;
        let mut overlap = 0.0_f64;
        let near = std::mem::take(&mut self.near);
        for &[one, other, turns] in &near {
            let ends = [(one, 0), self.after(one, 1)];
            let next = self.after(other, 1);
            let others = [(other, turns), (next.0, (next.1 + turns) % self.bights())];
            let (segment, beside) = (ends.map(|end| self.at(end)), others.map(|end| self.at(end)));
            let [along, aside] = nearest(segment, beside);
            let (here, there) = (between(segment, along), between(beside, aside));
            let apart = distance(here, there);
            if apart >= cord {
                continue;
            }
            overlap = overlap.max((cord - apart) / cord);
            let weight =
                (1.0 - along).powi(2) + along * along + (1.0 - aside).powi(2) + aside * aside;
            let push = (cord - apart) / apart.max(1e-9) / weight;
            let by = [0, 1, 2].map(|axis| push * (here[axis] - there[axis]));
            for (end, share) in [
                (ends[0], 1.0 - along),
                (ends[1], along),
                (others[0], aside - 1.0),
                (others[1], -aside),
            ] {
                self.shift(end, by, share);
            }
        }
        self.near = near;
        self.straighten();
        let out = if self.knot.on_ball { 3 } else { 2 };
        for point in &mut self.points {
            let rho = point[..out].iter().map(|at| at * at).sum::<f64>().sqrt();
            if rho < self.inner {
                for at in &mut point[..out] {
                    *at *= self.inner / rho;
                }
            }
        }
        overlap
    }

    /// No bend is sharper than that of a cord that closes on itself.
    fn straighten(&mut self) {
        for index in 0..self.points.len() {
            let ends = [(index, 0), self.after(index, 2)];
            let at = ends.map(|end| self.at(end));
            let middle = self.at(self.after(index, 1));
            let way = distance(at[0], middle) + distance(middle, at[1]);
            let wide = distance(at[0], at[1]);
            let least = self.knot.cord * (way / self.knot.cord).min(PI / 2.0).sin();
            if wide < least {
                let push = 0.25 * (least - wide) / wide.max(1e-9);
                let by = [0, 1, 2].map(|axis| push * (at[1][axis] - at[0][axis]));
                self.shift(ends[1], by, 1.0);
                self.shift(ends[0], by, -1.0);
            }
        }
    }

    /// Draws the cord up as far as it goes; the worst overlap that is left, in cord diameters.
    fn draw_up(&mut self) -> f64 {
        let (still, steps) = STILL;
        let mut strength = PULL[0];
        let mut overlap = 0.0;
        while strength > PULL[1] {
            for _ in 0..120 {
                let before = self.width();
                for _ in 0..steps {
                    let start = self.points.clone();
                    if self.moved > SKIN * self.knot.cord / 2.0 {
                        self.find_near();
                    }
                    self.pull(strength);
                    overlap = self.push();
                    for _ in 0..3 {
                        overlap = self.push();
                    }
                    let most = start
                        .iter()
                        .zip(&self.points)
                        .map(|(a, b)| distance(*a, *b));
                    self.moved += most.fold(0.0, f64::max);
                }
                if (self.width() / before - 1.0).abs() < still {
                    break;
                }
            }
            strength /= 2.5;
        }
        overlap
    }
}

impl TightKnot {
    /// Rows from rim to rim.
    fn height(&self) -> u16 {
        self.nested * self.leads + 2 * (self.lands - 1)
    }

    /// Between which heights the cord of a nest goes, counted from the outermost as 0: that from
    /// bottom row *j* lands in top row *s − j*, round again where that is less than none.
    fn rims(&self, nest: u16) -> [f64; 2] {
        let top = (self.lands - 1 + self.nested - nest) % self.nested;
        [2 * nest, self.height() - 2 * top].map(f64::from)
    }

    /// 1 where a leg lies on the upper layer, 0 where on the lower, eased in between: at a crossing
    /// over it is up, under it is down. At its rims it is half way.
    fn layer(&self, height: f64, [low, high]: [f64; 2], is_rising: bool) -> f64 {
        let over = |row: f64| {
            if row < low + 0.5 || row > high - 0.5 {
                return 0.5;
            }
            let is_over = (((row - 1.0) / f64::from(self.run)).floor() as u16).is_multiple_of(2);
            f64::from(u8::from(is_over == is_rising))
        };
        let height = height.clamp(low, high);
        let (below, above) = (over(height.floor()), over((height.floor() + 1.0).min(high)));
        let eased = 0.5 - 0.5 * (PI * (height - height.floor())).cos();
        below + (above - below) * eased
    }
}

/// Heights with the bights rounded off.
fn rounded(height: f64, [low, high]: [f64; 2]) -> f64 {
    /// Rows from the rim that are.
    const EDGE: f64 = 0.35;
    let round = |height: f64| {
        if height < EDGE {
            EDGE / 2.0 + height * height / (2.0 * EDGE)
        } else {
            height
        }
    };
    let climb = high - low;
    low + climb - round(climb - round(height - low))
}

/// Where on two segments they come nearest, as shares of each.
#[expect(clippy::many_single_char_names, reason = "vectors and their products")]
fn nearest(p: [Point; 2], q: [Point; 2]) -> [f64; 2] {
    let (u, v, w) = (less(p[1], p[0]), less(q[1], q[0]), less(p[0], q[0]));
    let (a, b, c, d, e) = (dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w));
    let across = a * c - b * b;
    let along = if across > 1e-9 * a * c {
        ((b * e - c * d) / across).clamp(0.0, 1.0)
    } else {
        0.5
    };
    let other = ((b * along + e) / c.max(1e-12)).clamp(0.0, 1.0);
    let one = ((b * other - d) / a.max(1e-12)).clamp(0.0, 1.0);
    [one, other]
}

fn dot(a: Point, b: Point) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn less(a: Point, b: Point) -> Point {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn between([a, b]: [Point; 2], share: f64) -> Point {
    [0, 1, 2].map(|axis| a[axis] + share * (b[axis] - a[axis]))
}

fn midpoint(a: Point, b: Point) -> Point {
    between([a, b], 0.5)
}

fn distance(a: Point, b: Point) -> f64 {
    dot(less(a, b), less(a, b)).sqrt()
}

fn main() {
    let given: Vec<f64> = env::args()
        .skip(1)
        .filter_map(|text| text.parse().ok())
        .collect();
    if let [leads, bights, passes, run, cord, object, ref nests @ ..] = given[..] {
        let [leads, bights, passes, run] = [leads, bights, passes, run].map(|count| count as u16);
        let [nested, lands] = match nests {
            [nested, lands] => [*nested as u16, *lands as u16],
            _ => [1, 1],
        };
        print(TightKnot {
            leads,
            bights,
            passes,
            run,
            cord,
            object,
            nested,
            lands,
            on_ball: false,
        });
        return;
    }
    if let [leads, bights, passes, cord, object] = given[..] {
        let [leads, bights, passes] = [leads, bights, passes].map(|count| count as u16);
        print_ball([leads, bights, passes], cord, object);
        return;
    }
    println!("leads,bights,passes,run,cord_mm,object_mm,width_mm,length_mm");
    for [leads, bights, passes, run] in KNOTS {
        let object = if bights >= 8 { 40.0 } else { 30.0 };
        print(TightKnot {
            leads,
            bights,
            passes,
            run,
            cord: 4.0,
            object,
            nested: 1,
            lands: 1,
            on_ball: false,
        });
    }
    println!("nested,lands,leads,bights,passes,run,cord_mm,object_mm,width_mm,length_mm");
    for [nested, leads, bights, lands, passes, object] in NESTED {
        print(TightKnot {
            leads,
            bights,
            passes,
            run: nested,
            cord: 4.0,
            object: f64::from(object),
            nested,
            lands,
            on_ball: false,
        });
    }
    println!("leads,bights,passes,cord_mm,ball_mm,far_out_mm,leg_mm,low_mm,high_mm");
    for [leads, bights, passes, ball] in BALLS {
        print_ball([leads, bights, passes], 4.0, f64::from(ball));
    }
}

fn print_ball([leads, bights, passes]: [u16; 3], cord: f64, object: f64) {
    let mut rope = Rope::laid(TightKnot {
        leads,
        bights,
        passes,
        run: 1,
        cord,
        object,
        nested: 1,
        lands: 1,
        on_ball: true,
    });
    let overlap = rope.draw_up();
    let leg = rope.length() / f64::from(2 * passes);
    let [low, high] = rope.heights();
    let far = rope.far_out();
    println!("{leads},{bights},{passes},{cord},{object},{far:.2},{leg:.2},{low:.1},{high:.1}");
    warn_of(overlap);
}

fn warn_of(overlap: f64) {
    if overlap > 0.02 {
        eprintln!("cords still overlap by {overlap:.3} of their thickness");
    }
}

fn print(knot: TightKnot) {
    let mut rope = Rope::laid(knot);
    let overlap = rope.draw_up();
    let TightKnot {
        leads,
        bights,
        passes,
        run,
        cord,
        object,
        nested,
        lands,
        ..
    } = knot;
    let length = rope.length() * f64::from(bights);
    if nested > 1 {
        print!("{nested},{lands},");
    }
    println!(
        "{leads},{bights},{passes},{run},{cord},{object},{:.2},{length:.0}",
        rope.width()
    );
    warn_of(overlap);
}
