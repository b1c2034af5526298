//! A tie laid by hand on graph paper: where every leg goes, what it meets, and what lies on the
//! tube at any moment. Points are (x, y): half pitches round the tube, of which there are 2 for every
//! bight, nested ones too; rows up it. A cord climbs or falls until it comes to a pin.
//!
//! From the plan it takes only what the tyer chose: the counts, the weave, the order, and at
//! which pin each pass begins.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::collections::BTreeMap;

use marlinspeak::guide::Plan;
use marlinspeak::knot::{LayingOrder, Pin, PinRow, Rim};

/// A crossing as it is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Met {
    pub row: u16,
    pub over: bool,
    pub cords: u16,
    /// The pins of the leg that lies there.
    pub of: (Pin, Pin),
}

/// A leg as it is laid.
#[derive(Clone, Debug)]
pub struct Laid {
    pub pass: u16,
    pub strand: u16,
    /// Its number in this pass, from 1.
    pub leg: u16,
    pub from: Pin,
    pub to: Pin,
    pub met: Vec<Met>,
    /// The rows it passes with their points, in the order it passes them.
    pub points: Vec<(u16, Point)>,
}

/// The whole tie.
#[derive(Debug)]
pub struct Walk {
    pub legs: Vec<Laid>,
    /// Half pitches round the tube.
    pub round: u16,
    /// Rows from rim to rim.
    pub height: u16,
    places: BTreeMap<Pin, Point>,
    pins: BTreeMap<Point, Pin>,
}

impl Walk {
    pub fn of(plan: &Plan) -> Self {
        let strands = plan.knot().strands();
        let passes = plan.laying().passes();
        let mut trips: Vec<(u16, u16)> = (1..=passes)
            .flat_map(|pass| (1..=strands).map(move |strand| (pass, strand)))
            .collect();
        if plan.laying().order() == LayingOrder::StrandByStrand {
            trips.sort_by_key(|(pass, strand)| (*strand, *pass));
        }
        let mut walk = Self::paper(plan);
        let mut tube = Tube::default();
        for (pass, strand) in trips {
            let start = plan.start_pin(pass, strand);
            let mut from = start;
            for leg in 1.. {
                let (to, points) = walk.way(from);
                let mut laid = Laid {
                    pass,
                    strand,
                    leg,
                    from,
                    to,
                    met: Vec::new(),
                    points,
                };
                let (id, rises) = (walk.legs.len(), laid.rises());
                for &(row, point) in &laid.points {
                    let crossed: Vec<usize> = tube
                        .at(point)
                        .iter()
                        .copied()
                        .filter(|other| walk.legs[*other].rises() != rises)
                        .collect();
                    if let Some(other) = crossed.first().map(|other| &walk.legs[*other]) {
                        laid.met.push(Met {
                            row,
                            over: plan.knot().weave().rising_over(row) == rises,
                            cords: crossed.len().try_into().unwrap(),
                            of: (other.from, other.to),
                        });
                    }
                    tube.put(point, id);
                }
                walk.legs.push(laid);
                from = to;
                if from == start {
                    break;
                }
            }
        }
        walk
    }

    /// The pins, where a tyer would draw them: at each rim as many rows as bights are nested, every
    /// second row of the paper, the pins of a number in line; the top ones half way on with odd leads.
    fn paper(plan: &Plan) -> Self {
        let lattice = plan.knot().lattice();
        let (leads, nested) = (lattice.leads(), lattice.nested());
        let (pitch, height) = (2 * nested, nested * leads + 2 * (lattice.lands() - 1));
        let mut walk = Self {
            legs: Vec::new(),
            round: pitch * lattice.bights(),
            height,
            places: BTreeMap::new(),
            pins: BTreeMap::new(),
        };
        let of = u8::try_from(nested).unwrap();
        for number in 1..=lattice.bights() {
            for row in 1..=of {
                let row = PinRow { number: row, of };
                let (x, inside) = (pitch * (number - 1), 2 * (u16::from(row.number) - 1));
                let stagger = if leads % 2 == 1 { nested } else { 0 };
                for (pin, point) in [
                    (Pin::bottom(number), (x, inside)),
                    (Pin::top(number), (x + stagger, height - inside)),
                ] {
                    walk.places.insert(pin.in_row(row), point);
                    walk.pins.insert(point, pin.in_row(row));
                }
            }
        }
        walk
    }

    /// Where a cord that leaves a pin lands, and the points that it passes.
    fn way(&self, from: Pin) -> (Pin, Vec<(u16, Point)>) {
        let (mut x, mut y) = self.place(from);
        let mut points = Vec::new();
        loop {
            x = (x + 1) % self.round;
            y = if from.rim == Rim::Bottom {
                y + 1
            } else {
                y - 1
            };
            match self.pins.get(&(x, y)) {
                Some(to) if to.rim != from.rim => return (*to, points),
                _ => points.push((y, (x, y))),
            }
        }
    }

    /// Where a pin stands.
    pub fn place(&self, pin: Pin) -> Point {
        self.places[&pin]
    }

    /// Legs in a pass of a strand.
    pub fn trip(&self, strand: u16) -> u16 {
        let of_pass = self.legs.iter();
        let of_pass = of_pass.filter(|laid| (laid.pass, laid.strand) == (1, strand));
        of_pass.count().try_into().unwrap()
    }

    /// Rows in which a leg crosses another, when the whole knot lies.
    pub fn crossed(&self, laid: &Laid) -> Vec<u16> {
        let is_met = |point: Point| {
            let others = self
                .legs
                .iter()
                .filter(|other| other.rises() != laid.rises());
            let mut points = others.flat_map(|other| &other.points);
            points.any(|(_, other)| *other == point)
        };
        let points = laid.points.iter();
        points
            .filter(|(_, point)| is_met(*point))
            .map(|(row, _)| *row)
            .collect()
    }

    /// The tube when so many legs lie whole, and so many crossings of the next are made.
    pub fn tube(&self, whole: usize, crossings: u16) -> Tube {
        let mut tube = Tube::default();
        for (id, laid) in self.legs.iter().enumerate().take(whole) {
            for &(_, point) in &laid.points {
                tube.put(point, id);
            }
            tube.wind(laid.to, id);
        }
        if let Some(laid) = self.legs.get(whole) {
            let met = laid.met[..usize::from(crossings)].last();
            for &(row, point) in &laid.points {
                let Some(last) = met else { break };
                tube.put(point, whole);
                if row == last.row {
                    break;
                }
            }
        }
        tube
    }

    /// How many cords have come to a pin when so many legs lie whole.
    pub fn come(&self, pin: Pin, whole: usize) -> usize {
        let legs = &self.legs[..whole];
        legs.iter().filter(|laid| laid.to == pin).count()
    }
}

impl Laid {
    pub fn rises(&self) -> bool {
        self.from.rim == Rim::Bottom
    }
}

/// Half pitch and row.
pub type Point = (u16, u16);

/// What lies where: the legs at every point and round every pin, the last one on top.
#[derive(Debug, Default)]
pub struct Tube {
    points: BTreeMap<Point, Vec<usize>>,
    pins: BTreeMap<Pin, Vec<usize>>,
}

impl Tube {
    /// The legs that pass a point, in the order they were laid.
    pub fn at(&self, point: Point) -> &[usize] {
        self.points.get(&point).map_or(&[], Vec::as_slice)
    }

    /// Takes a leg off a point, where it must be the last that was laid.
    pub fn take(&mut self, point: Point, id: usize) {
        let legs = self.points.get_mut(&point).unwrap();
        assert_eq!(legs.pop(), Some(id), "something lies on it");
    }

    /// Takes a leg off the pin where it landed last.
    pub fn unwind(&mut self, pin: Pin, id: usize) {
        let legs = self.pins.get_mut(&pin).unwrap();
        assert_eq!(legs.pop(), Some(id), "something is round it");
    }

    pub fn is_empty(&self) -> bool {
        self.points
            .values()
            .chain(self.pins.values())
            .all(Vec::is_empty)
    }

    fn put(&mut self, point: Point, id: usize) {
        self.points.entry(point).or_default().push(id);
    }

    fn wind(&mut self, pin: Pin, id: usize) {
        self.pins.entry(pin).or_default().push(id);
    }
}
