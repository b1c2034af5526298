//! A tie laid by hand on graph paper: where every leg goes, what it meets, and what lies on the
//! tube at any moment. Points are (x mod 2B, y): half pitches round the tube, rows up it.
//!
//! From the plan it takes only what the tyer chose: the counts, the weave, the order, and at
//! which pin each pass begins.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use std::collections::BTreeMap;

use marlinspeak::guide::Plan;
use marlinspeak::knot::{LayingOrder, Pin, Rim};

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
    start: u16,
}

/// The whole tie.
#[derive(Debug)]
pub struct Walk {
    pub legs: Vec<Laid>,
    /// Legs in a pass of a strand.
    pub per_trip: u16,
    leads: u16,
    bights: u16,
}

impl Walk {
    pub fn of(plan: &Plan) -> Self {
        let (leads, bights) = (plan.knot().leads(), plan.knot().bights());
        let strands = plan.knot().strands();
        let passes = plan.laying().passes();
        let mut trips: Vec<(u16, u16)> = (1..=passes)
            .flat_map(|pass| (1..=strands).map(move |strand| (pass, strand)))
            .collect();
        if plan.laying().order() == LayingOrder::StrandByStrand {
            trips.sort_by_key(|(pass, strand)| (*strand, *pass));
        }
        let per_trip = 2 * bights / strands;
        let mut walk = Self {
            legs: Vec::new(),
            per_trip,
            leads,
            bights,
        };
        let mut tube = Tube::default();
        for (pass, strand) in trips {
            let mut start = 2 * (plan.start_pin(pass, strand).number - 1);
            for leg in 1..=per_trip {
                let rises = leg % 2 == 1;
                let end = (start + leads) % (2 * bights);
                let mut laid = Laid {
                    pass,
                    strand,
                    leg,
                    from: walk.pin(!rises, start),
                    to: walk.pin(rises, end),
                    met: Vec::new(),
                    start,
                };
                let id = walk.legs.len();
                for (row, point) in walk.points(&laid) {
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
                start = end;
            }
        }
        walk
    }

    /// The tube when so many legs lie whole, and so many crossings of the next are made.
    pub fn tube(&self, whole: usize, crossings: u16) -> Tube {
        let mut tube = Tube::default();
        for (id, laid) in self.legs.iter().enumerate().take(whole) {
            for (_, point) in self.points(laid) {
                tube.put(point, id);
            }
            tube.wind(laid.to, id);
        }
        if let Some(laid) = self.legs.get(whole) {
            let met = laid.met[..usize::from(crossings)].last();
            for (row, point) in self.points(laid) {
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

    /// The rows of a leg with their points, in the order it passes them.
    pub fn points(&self, laid: &Laid) -> Vec<(u16, Point)> {
        let (leads, round) = (self.leads, 2 * self.bights);
        (1..leads)
            .map(|step| {
                let row = if laid.rises() { step } else { leads - step };
                (row, ((laid.start + step) % round, row))
            })
            .collect()
    }

    fn pin(&self, top: bool, x: u16) -> Pin {
        let stagger = if top { self.leads % 2 } else { 0 };
        let round = 2 * self.bights;
        let number = (x + round - stagger) % round / 2 + 1;
        if top {
            Pin::top(number)
        } else {
            Pin::bottom(number)
        }
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
