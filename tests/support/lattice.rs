//! Ring knots tied on graph paper: every cord is a mark on each lattice point it passes.
//!
//! Slow and plain, to hold the quick program against. A point is (x mod round, y): half pitches
//! round the tube, rows up it. Pins are points of their own, drawn before anything is tied; a cord
//! climbs or falls until it comes to one. Shares no code with the program.

use std::collections::{BTreeMap, BTreeSet};

/// A pin: whether it stands at the top, its row from 1, the outermost, and its number from 1.
pub type Pin = (bool, usize, usize);

/// What is to be tied.
pub struct Pattern<'w> {
    pub leads: usize,
    pub bights: usize,
    /// Bights nested at each rim, and the top row in which the first cord lands.
    pub nested: usize,
    pub lands: usize,
    pub passes: usize,
    /// All passes of a strand before the next strand, not a pass of every strand.
    pub strand_by_strand: bool,
    /// Whether the rising leg goes over in this row, 1 the lowest.
    pub rising_over: &'w dyn Fn(usize) -> bool,
}

/// A leg as it was laid.
#[derive(Debug)]
pub struct Laid {
    /// Pass, strand and leg, each from 1.
    pub pass_leg: [usize; 3],
    pub from: Pin,
    pub to: Pin,
    /// What it met, in order.
    pub met: Vec<Met>,
}

/// Row, over?, cords, and the ends of the leg they belong to.
pub type Met = (usize, bool, usize, Pin, Pin);

/// A cord on a lattice point: whether it rises, and the pins where its leg starts and ends.
type Mark = (bool, Pin, Pin);

type Point = (usize, usize);

/// The paper before anything is tied.
struct Paper {
    round: usize,
    /// The pin on every point, row by row.
    pins: Vec<Option<Pin>>,
    at: BTreeMap<Pin, Point>,
}

impl Paper {
    fn place(&self, (x, y): Point) -> usize {
        y * self.round + x
    }

    fn pin(&self, point: Point) -> Option<Pin> {
        self.pins[self.place(point)]
    }

    /// The points that a cord passes from a pin to the pin where it lands, both among them.
    fn way(&self, from: Pin) -> Vec<Point> {
        let mut way = vec![self.at[&from]];
        loop {
            let (x, y) = way[way.len() - 1];
            let next = ((x + 1) % self.round, if from.0 { y - 1 } else { y + 1 });
            way.push(next);
            if self.pin(next).is_some_and(|pin| pin.0 != from.0) {
                return way;
            }
        }
    }

    fn lands(&self, from: Pin) -> Pin {
        self.pin(*self.way(from).last().unwrap()).unwrap()
    }
}

impl Pattern<'_> {
    /// Ties the whole knot and hands over every leg as it is laid.
    pub fn tie(&self, mut each: impl FnMut(Laid)) {
        let paper = self.paper();
        let mut marks: Vec<Vec<Mark>> = vec![Vec::new(); paper.pins.len()];
        for ([pass, strand], start) in self.trips(&paper) {
            let mut from = start;
            for leg in 1.. {
                let rises = !from.0;
                let way = paper.way(from);
                let to = paper.pin(way[way.len() - 1]).unwrap();
                let mut met = Vec::new();
                for point in way {
                    let marks = &mut marks[paper.place(point)];
                    let mut there = marks.iter().filter(|mark| mark.0 != rises);
                    // At a pin the next leg takes over on the same point: no crossing.
                    let is_pin = paper.pin(point).is_some();
                    if let Some(&mark) = there.next().filter(|_| !is_pin) {
                        assert!(there.clone().all(|other| *other == mark));
                        let over = (self.rising_over)(point.1) == rises;
                        met.push((point.1, over, 1 + there.count(), mark.1, mark.2));
                    }
                    marks.push((rises, from, to));
                }
                each(Laid {
                    pass_leg: [pass, strand, leg],
                    from,
                    to,
                    met,
                });
                from = to;
                if from == start {
                    break;
                }
            }
        }
    }

    /// The pins, where a tyer would draw them: at each rim as many rows as bights are nested, every
    /// second row of the paper, the pins of a number in line; the top ones half way on with odd
    /// leads.
    fn paper(&self) -> Paper {
        let pitch = 2 * self.nested;
        let top = self.nested * self.leads + 2 * (self.lands - 1);
        let round = pitch * self.bights;
        let mut pins = vec![None; round * (top + 1)];
        let mut at = BTreeMap::new();
        let mut stand = |x: usize, y: usize, pin: Pin| {
            pins[y * round + x] = Some(pin);
            at.insert(pin, (x, y));
        };
        for number in 1..=self.bights {
            for row in 1..=self.nested {
                let (x, inside) = (pitch * (number - 1), 2 * (row - 1));
                stand(x, inside, (false, row, number));
                let x = x + if self.leads % 2 == 1 { pitch / 2 } else { 0 };
                stand(x, top - inside, (true, row, number));
            }
        }
        Paper { round, pins, at }
    }

    /// Pass and strand of every trip with the pin where it begins, in the order they are made.
    fn trips(&self, paper: &Paper) -> Vec<([usize; 2], Pin)> {
        let starts = self.starts(paper);
        let mut trips: Vec<_> = (1..=self.passes)
            .flat_map(|pass| {
                let starts = starts.iter().zip(1..);
                starts.map(move |(start, strand)| ([pass, strand], *start))
            })
            .collect();
        if self.strand_by_strand {
            trips.sort_by_key(|&([pass, strand], _)| (strand, pass));
        }
        trips
    }

    /// Where closed paths begin, found by walking from every bottom pin that no path has touched, the
    /// outermost row first.
    fn starts(&self, paper: &Paper) -> Vec<Pin> {
        let mut touched = BTreeSet::new();
        let mut starts = Vec::new();
        for row in 1..=self.nested {
            for number in 1..=self.bights {
                let start = (false, row, number);
                if touched.contains(&start) {
                    continue;
                }
                starts.push(start);
                let mut pin = start;
                while touched.insert(pin) {
                    pin = paper.lands(paper.lands(pin));
                }
            }
        }
        starts
    }
}
