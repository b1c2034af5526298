//! Cord drawn up on a cylinder as tight as it goes: the tests' own simulation, which knows nothing of
//! the bench's rules and so can judge them.
//!
//! A cord is a chain of points. Step by step every chain gets a little shorter; then points that are
//! too near one another, or inside the cylinder, are pushed out again, until all hold or the chain
//! cannot get shorter (position-based dynamics, with the shrinking of P. Pierański's SONO, both
//! from memory). Hard, frictionless cord. `cargo bench --bench rope` prints the table that
//! `tests/data/simulated_widths.csv` holds; `-- L B P RUN CORD OBJECT` simulates one knot.

use std::collections::HashMap;
use std::f64::consts::{PI, TAU};

type Point = [f64; 3];

/// What is simulated.
#[derive(Clone, Copy)]
struct TightKnot {
    leads: u32,
    bights: u32,
    passes: u32,
    /// Over so many, under so many.
    run: u32,
    cord: f64,
    object: f64,
}

/// Knots that the published table does not reach, and those of it that show whether this simulation
/// agrees: leads, bights, passes, run.
const KNOTS: [[u32; 4]; 24] = [
    // Of the published table.
    [3, 4, 1, 1],
    [5, 4, 1, 1],
    [7, 5, 1, 1],
    [3, 4, 2, 1],
    [5, 4, 2, 1],
    [5, 4, 3, 1],
    // Many bights: steep legs.
    [5, 9, 1, 1],
    [4, 7, 1, 1],
    [7, 8, 1, 1],
    [5, 7, 2, 1],
    [3, 5, 3, 1],
    // Few bights and two leads.
    [7, 3, 1, 1],
    [2, 3, 1, 1],
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
];

struct Rope {
    points: Vec<Point>,
    /// For every point the next one of its chain.
    next: Vec<usize>,
    /// Chain and place in it.
    place: Vec<(usize, usize)>,
    sizes: Vec<usize>,
    cord: f64,
    inner: f64,
    segment: f64,
    near: Vec<(usize, usize)>,
    moved: f64,
}

impl Rope {
    /// The knot laid loosely, over and under already in two layers.
    fn laid(knot: TightKnot) -> Self {
        let (leads, bights) = (f64::from(knot.leads), f64::from(knot.bights));
        let inner = knot.object / 2.0 + knot.cord / 2.0;
        let strands = gcd(knot.leads, knot.bights);
        let radius = inner + knot.cord;
        // Rows so high that even the bands of all passes have room.
        let half_pitch = TAU * radius / (2.0 * bights);
        let spacing = 1.25 * (f64::from(knot.passes) + 1.2) * knot.cord;
        let mut row = 0.25 * half_pitch;
        while 2.0 * half_pitch * row / half_pitch.hypot(row) < spacing && row < 40.0 * half_pitch {
            row *= 1.02;
        }
        let slope = half_pitch.hypot(row);
        let apart = 1.1 * knot.cord * slope / half_pitch;
        let step = 0.28 * knot.cord;
        let mut rope = Self {
            points: Vec::new(),
            next: Vec::new(),
            place: Vec::new(),
            sizes: Vec::new(),
            cord: knot.cord,
            inner,
            segment: 0.0,
            near: Vec::new(),
            moved: f64::INFINITY,
        };
        let legs = 2 * knot.bights / strands;
        let mut dice = Dice(20);
        for strand in 0..strands {
            for pass in 0..knot.passes {
                let first = rope.points.len();
                let per_leg = (leads * slope / step).ceil();
                let all = f64::from(legs) * per_leg;
                let mut index = 0.0;
                while index < all {
                    // Along the strand in half pitches; the height is a triangle wave.
                    let along = index / all * f64::from(legs) * leads;
                    let leg = (along / leads).floor();
                    let within = along - leg * leads;
                    let rising = leg % 2.0 == 0.0;
                    let height = if rising { within } else { leads - within };
                    // Bights are rounded off.
                    let edge = 0.35;
                    let round = |h: f64| {
                        if h < edge {
                            edge / 2.0 + h * h / (2.0 * edge)
                        } else {
                            h
                        }
                    };
                    let height = round(height);
                    let height = leads - round(leads - height);
                    let x = f64::from(2 * strand) + along;
                    let y = height * row - f64::from(pass) * apart;
                    let lifted = lift(height, rising, knot);
                    let rho = inner + 0.02 * dice.throw() + lifted * 1.05 * knot.cord;
                    let angle = TAU * x / (2.0 * bights);
                    rope.points.push([rho * angle.cos(), rho * angle.sin(), y]);
                    rope.place
                        .push((rope.sizes.len(), rope.points.len() - 1 - first));
                    index += 1.0;
                }
                let size = rope.points.len() - first;
                rope.next
                    .extend((0..size).map(|nth| first + (nth + 1) % size));
                rope.sizes.push(size);
            }
        }
        let length = rope.length();
        rope.segment = length / rope.points.len() as f64;
        rope
    }

    fn length(&self) -> f64 {
        let ends = self.points.iter().zip(&self.next);
        ends.map(|(point, &next)| distance(*point, self.points[next]))
            .sum()
    }

    /// From outer edge to outer edge.
    fn width(&self) -> f64 {
        let heights = || self.points.iter().map(|point| point[2]);
        heights().fold(f64::MIN, f64::max) - heights().fold(f64::MAX, f64::min) + self.cord
    }

    /// Points that could touch soon.
    fn find_near(&mut self) {
        let reach = 1.6 * self.cord;
        let cell = |point: &Point| point.map(|x| (x / reach).floor() as i32);
        let mut cells: HashMap<[i32; 3], Vec<usize>> = HashMap::new();
        for (index, point) in self.points.iter().enumerate() {
            cells.entry(cell(point)).or_default().push(index);
        }
        self.near.clear();
        // Nearer along the cord than half round a bend of its own thickness is no touching.
        let apart = (1.45 * self.cord / self.segment).ceil() as usize;
        for (index, point) in self.points.iter().enumerate() {
            let [x, y, z] = cell(point);
            for dx in -1..=1 {
                for dy in -1..=1 {
                    for dz in -1..=1 {
                        let Some(others) = cells.get(&[x + dx, y + dy, z + dz]) else {
                            continue;
                        };
                        for &other in others {
                            if other <= index || distance(*point, self.points[other]) > reach {
                                continue;
                            }
                            let (one, two) = (self.place[index], self.place[other]);
                            if one.0 == two.0 {
                                let size = self.sizes[one.0];
                                let along = one.1.abs_diff(two.1);
                                if along.min(size - along) < apart {
                                    continue;
                                }
                            }
                            self.near.push((index, other));
                        }
                    }
                }
            }
        }
        self.moved = 0.0;
    }

    /// Pushes everything towards where it may be once; the worst overlap that was found, in cord
    /// diameters, and the worst stretch, as a share.
    fn relax(&mut self) -> (f64, f64) {
        if self.moved > 0.28 * self.cord {
            self.find_near();
        }
        let (mut overlap, mut stretch, mut moved) = (0.0_f64, 0.0_f64, 0.0_f64);
        let near = std::mem::take(&mut self.near);
        for &(one, two) in &near {
            let (a, b) = (self.points[one], self.points[two]);
            let apart = distance(a, b);
            if apart < self.cord {
                let push = 0.5 * (self.cord - apart) / apart.max(1e-9);
                overlap = overlap.max((self.cord - apart) / self.cord);
                for axis in 0..3 {
                    let by = push * (a[axis] - b[axis]);
                    self.points[one][axis] += by;
                    self.points[two][axis] -= by;
                }
                moved = moved.max(push * apart);
            }
        }
        self.near = near;
        for index in 0..self.points.len() {
            let next = self.next[index];
            let (a, b) = (self.points[index], self.points[next]);
            let long = distance(a, b);
            let pull = 0.5 * (long - self.segment) / long.max(1e-9);
            stretch = stretch.max((long / self.segment - 1.0).abs());
            for axis in 0..3 {
                let by = pull * (b[axis] - a[axis]);
                self.points[index][axis] += by;
                self.points[next][axis] -= by;
            }
            moved = moved.max((pull * long).abs());
        }
        // A cord does not kink: each point is drawn a little to the middle of its neighbours when
        // the bend is tighter than the cord's own thickness.
        for index in 0..self.points.len() {
            let last = self.next[self.next[index]];
            let (a, b) = (self.points[index], self.points[last]);
            let wide = distance(a, b);
            let straight = 2.0 * self.segment;
            // The chord over two segments on a circle as thick as the cord.
            let least = self.cord * (straight / self.cord).sin();
            if wide < least {
                let push = 0.25 * (least - wide) / wide.max(1e-9);
                for axis in 0..3 {
                    let by = push * (b[axis] - a[axis]);
                    self.points[last][axis] += by;
                    self.points[index][axis] -= by;
                }
            }
        }
        for point in &mut self.points {
            let rho = point[0].hypot(point[1]);
            if rho < self.inner {
                let push = self.inner / rho;
                point[0] *= push;
                point[1] *= push;
            }
        }
        self.moved += 2.0 * moved;
        (overlap, stretch)
    }

    /// Draws the cord up as far as it goes.
    fn draw_up(&mut self) {
        self.find_near();
        for _ in 0..400 {
            self.relax();
        }
        let mut shrink = 2e-3;
        let mut kept = (self.points.clone(), self.segment);
        while shrink > 1e-5 {
            self.segment *= 1.0 - shrink;
            let mut worst = (1.0, 1.0);
            for _ in 0..40 {
                for _ in 0..20 {
                    worst = self.relax();
                }
                if worst.0 < 0.005 && worst.1 < 0.01 {
                    break;
                }
            }
            if worst.0 < 0.005 && worst.1 < 0.01 {
                kept = (self.points.clone(), self.segment);
            } else {
                (self.points, self.segment) = kept.clone();
                self.find_near();
                shrink /= 2.0;
            }
        }
        (self.points, self.segment) = kept;
    }
}

/// 1 where a leg lies on the upper layer, 0 where on the lower, smoothly in between: at a crossing over
/// it is up, under it is down.
fn lift(height: f64, rising: bool, knot: TightKnot) -> f64 {
    let rows = f64::from(knot.leads) - 1.0;
    let over = |row: f64| {
        let index = (row.clamp(1.0, rows) - 1.0) as u32;
        let rising_over = (index / knot.run) % 2 == 0;
        if rising_over == rising { 1.0 } else { 0.0 }
    };
    let (below, above) = (over(height.floor()), over(height.floor() + 1.0));
    let share = height - height.floor();
    let eased = 0.5 - 0.5 * (PI * share).cos();
    // At a rim, half way: it changes from a falling to a rising leg there.
    if height < 1.0 {
        0.5 + (over(1.0) - 0.5) * (0.5 - 0.5 * (PI * height).cos())
    } else if height > rows {
        let left = f64::from(knot.leads) - height;
        0.5 + (over(rows) - 0.5) * (0.5 - 0.5 * (PI * left).cos())
    } else {
        below + (above - below) * eased
    }
}

fn distance(a: Point, b: Point) -> f64 {
    ((a[0] - b[0]).powi(2) + (a[1] - b[1]).powi(2) + (a[2] - b[2]).powi(2)).sqrt()
}

const fn gcd(mut one: u32, mut other: u32) -> u32 {
    while other != 0 {
        (one, other) = (other, one % other);
    }
    one
}

/// Numbers between 0 and 1, the same in every run: a linear congruential generator with the
/// multiplier and increment of D. E. Knuth's MMIX (from memory).
struct Dice(u64);

impl Dice {
    fn throw(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 32) as f64 / f64::from(u32::MAX)
    }
}

fn main() {
    let given: Vec<f64> = std::env::args()
        .skip(1)
        .filter_map(|text| text.parse().ok())
        .collect();
    let count = |nth: usize| given[nth] as u32;
    if given.len() == 6 {
        let knot = TightKnot {
            leads: count(0),
            bights: count(1),
            passes: count(2),
            run: count(3),
            cord: given[4],
            object: given[5],
        };
        print(knot);
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
        });
    }
}

fn print(knot: TightKnot) {
    let mut rope = Rope::laid(knot);
    rope.draw_up();
    println!(
        "{},{},{},{},{},{},{:.2},{:.0}",
        knot.leads,
        knot.bights,
        knot.passes,
        knot.run,
        knot.cord,
        knot.object,
        rope.width(),
        rope.length()
    );
}
