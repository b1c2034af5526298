//! A ring knot tied on graph paper: every cord is a mark on each lattice point it passes.
//!
//! Slow and plain, to hold the quick program against. A point is (x mod 2B, y): half pitches
//! round the tube, rows up it. Shares no code with the program.

/// A pin: whether it stands at the top, and its number from 1.
pub type Pin = (bool, usize);

/// What is to be tied.
pub struct Pattern<'w> {
    pub leads: usize,
    pub bights: usize,
    pub passes: usize,
    /// All passes of a strand before the next strand, not a pass of every strand.
    pub strand_by_strand: bool,
    /// Whether the rising leg goes over in this row, 1 … leads − 1.
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

/// A cord on a lattice point: whether it rises, and where its leg starts and ends.
type Mark = (bool, usize, usize);

impl Pattern<'_> {
    /// Ties the whole knot and hands over every leg as it is laid.
    pub fn tie(&self, mut each: impl FnMut(Laid)) {
        let round = 2 * self.bights;
        let mut paper: Vec<Vec<Mark>> = vec![Vec::new(); round * (self.leads + 1)];
        for [pass, strand] in self.trips() {
            let start = 2 * (strand - 1);
            let mut x = start;
            for leg in 1.. {
                let rises = leg % 2 == 1;
                let mut met = Vec::new();
                let end = (x + self.leads) % round;
                for step in 0..=self.leads {
                    let y = if rises { step } else { self.leads - step };
                    let marks = &mut paper[y * round + (x + step) % round];
                    let mut there = marks.iter().filter(|mark| mark.0 != rises);
                    // At a rim the next leg takes over on the same point: no crossing.
                    if let Some(&mark) = there.next().filter(|_| 0 < y && y < self.leads) {
                        assert!(there.clone().all(|other| *other == mark));
                        let over = (self.rising_over)(y) == rises;
                        let [from, to] = self.ends(mark);
                        met.push((y, over, 1 + there.count(), from, to));
                    }
                    marks.push((rises, x, end));
                }
                let [from, to] = self.ends((rises, x, end));
                each(Laid {
                    pass_leg: [pass, strand, leg],
                    from,
                    to,
                    met,
                });
                x = end;
                if !rises && x == start {
                    break;
                }
            }
        }
    }

    /// Pass and strand of every trip, in the order they are made.
    fn trips(&self) -> Vec<[usize; 2]> {
        let strands = self.strands();
        let mut trips: Vec<_> = (1..=self.passes)
            .flat_map(|pass| (1..=strands).map(move |strand| [pass, strand]))
            .collect();
        if self.strand_by_strand {
            trips.sort_by_key(|&[pass, strand]| (strand, pass));
        }
        trips
    }

    /// Closed paths, found by walking from every bottom pin that no path has touched.
    fn strands(&self) -> usize {
        let mut touched = vec![false; self.bights];
        let mut strands = 0;
        while let Some(free) = touched.iter().position(|touched| !touched) {
            strands += 1;
            let mut pin = free;
            while !std::mem::replace(&mut touched[pin], true) {
                pin = (pin + self.leads) % self.bights;
            }
        }
        strands
    }

    /// The pins a leg runs between: bottom pins stand at even x, top pins the leads further on.
    fn ends(&self, (rises, start, end): Mark) -> [Pin; 2] {
        [(!rises, start), (rises, end)].map(|(top, x)| {
            let stagger = if top { self.leads % 2 } else { 0 };
            assert_eq!((x + stagger) % 2, 0, "no pin stands there");
            (top, x / 2 + 1)
        })
    }
}
