//! A knot diagram built from the steps a tyer is told, and from nothing else.
//!
//! The cord always travels to the right, up or down. (For a left-handed tyer the picture is the
//! mirror image, which has the same determinant and the same Alexander polynomial.)

// Each file that includes this uses a part of it.
#![allow(dead_code)]

pub mod exact;
mod invariants;
mod story;
mod told;

use serde_json::Value;

use story::{Laid, Story};

/// One cord over another.
#[derive(Debug)]
struct Crossing {
    /// How far up the tube, in steps from one crossing along a cord to the next.
    height: i64,
    /// Whether the rising cord is the upper one.
    rising_over: bool,
}

/// One closed cord of the diagram: the crossings it goes through in its direction of travel.
type Strand = Vec<Visit>;

#[derive(Clone, Copy, Debug)]
struct Visit {
    crossing: usize,
    rising: bool,
}

/// A crossing as one of its two cords meets it: in which row, and which pass of the other leg.
#[derive(Clone, Copy, Debug)]
struct Point {
    row: u64,
    pass: usize,
    crossing: usize,
}

/// A diagram on the tube.
#[derive(Debug)]
pub struct Diagram {
    crossings: Vec<Crossing>,
    strands: Vec<Strand>,
    /// For every corner of every crossing, the face of the diagram it lies in.
    faces: Vec<usize>,
}

/// The four corners at a crossing.
#[derive(Clone, Copy)]
enum Corner {
    Left,
    Top,
    Right,
    Bottom,
}

impl Diagram {
    /// The diagram of the lead pass, from the document of `steps --json`.
    pub fn of_lead_pass(document: &Value) -> Result<Self, String> {
        Self::of_passes(&Story::read(document)?, 1, is_nested(document))
    }

    /// The same of one strand by itself, all others left out.
    pub fn of_strand(document: &Value, strand: u64) -> Result<Self, String> {
        let mut story = Story::read(document)?;
        let is_own: Vec<bool> = story.legs.iter().map(|leg| leg.strand == strand).collect();
        story.laid.retain(|laid| is_own[laid.leg]);
        for laid in &mut story.laid {
            laid.met.retain(|met| is_own[met.leg]);
        }
        Self::of_passes(&story, 1, true)
    }

    /// The diagram of the finished cable, every pass closed upon itself. A crossing told as so
    /// many cords is that many crossings.
    pub fn of_cable(document: &Value) -> Result<Self, String> {
        let story = Story::read(document)?;
        Self::of_passes(&story, story.passes(), is_nested(document))
    }

    fn of_passes(story: &Story, passes: usize, is_nested: bool) -> Result<Self, String> {
        let mut crossings = Vec::new();
        let mut cords = vec![Vec::new(); story.legs.len() * passes];
        for laid in story.laid.iter().filter(|laid| laid.pass <= passes) {
            let rises = story.legs[laid.leg].rises();
            for met in &laid.met {
                for pass in 1..=met.cords.min(passes) {
                    let crossing = crossings.len();
                    let mut meets = |leg: usize, own: usize, pass: usize| {
                        cords[leg * passes + own - 1].push(Point {
                            row: met.row,
                            pass,
                            crossing,
                        });
                    };
                    meets(laid.leg, laid.pass, pass);
                    meets(met.leg, pass, laid.pass);
                    // Followers on the right lie below, whether the cord rises or falls.
                    let lower = i64::try_from(laid.pass + pass).unwrap();
                    let height = i64::try_from(met.row * passes as u64).unwrap();
                    crossings.push(Crossing {
                        height: if story.keeps_right {
                            height - lower
                        } else {
                            height + lower
                        },
                        rising_over: met.over == rises,
                    });
                }
            }
        }
        for (cord, points) in cords.iter_mut().enumerate() {
            points.sort_by_key(|point| crossings[point.crossing].height);
            if !story.legs[cord / passes].rises() {
                points.reverse();
            }
        }
        let rows = cords
            .iter()
            .flatten()
            .map(|point| point.row)
            .max()
            .unwrap_or(0);
        for (cord, points) in cords.iter().enumerate() {
            check_rows(points, (!is_nested).then_some(rows), passes).map_err(|why| {
                format!(
                    "{why}: pass {} of {:?}",
                    cord % passes + 1,
                    story.legs[cord / passes]
                )
            })?;
        }
        let strands = strands(story, passes, &cords);
        let faces = faces(crossings.len(), &strands)?;
        Ok(Self {
            crossings,
            strands,
            faces,
        })
    }

    /// How many crossings the diagram has.
    pub fn crossings(&self) -> usize {
        self.crossings.len()
    }

    /// How many closed cords the diagram has.
    pub fn strands(&self) -> usize {
        self.strands.len()
    }

    fn face(&self, crossing: usize, corner: Corner) -> usize {
        self.faces[4 * crossing + corner as usize]
    }
}

/// Whether bights are nested: then a leg near a rim has rows in which it meets nobody.
fn is_nested(document: &Value) -> bool {
    document["knot"]["nested"]
        .as_u64()
        .is_some_and(|nested| nested > 1)
}

/// A cord meets every cord of the cable that it crosses in a row once, in every row of so many.
fn check_rows(points: &[Point], rows: Option<u64>, passes: usize) -> Result<(), String> {
    let mut met: Vec<_> = points.iter().map(|point| (point.row, point.pass)).collect();
    met.sort_unstable();
    if let Some(pair) = met.windows(2).find(|pair| pair[0] == pair[1]) {
        return Err(format!("row {} is met twice", pair[0].0));
    }
    let rows: Vec<u64> = match rows {
        Some(rows) => (1..=rows).collect(),
        None => met
            .iter()
            .map(|point| point.0)
            .collect::<std::collections::BTreeSet<_>>()
            .into_iter()
            .collect(),
    };
    let all = rows
        .into_iter()
        .flat_map(|row| (1..=passes).map(move |pass| (row, pass)));
    match all.clone().find(|point| !met.contains(point)) {
        Some((row, _)) => Err(format!("row {row} is not met")),
        None if met.len() > all.count() => Err("there is no row 0".to_owned()),
        None => Ok(()),
    }
}

/// Joins the legs of each strand in each pass.
fn strands(story: &Story, passes: usize, cords: &[Vec<Point>]) -> Vec<Strand> {
    let trips = story.laid.chunk_by(|one, next| {
        one.pass == next.pass && story.legs[one.leg].strand == story.legs[next.leg].strand
    });
    let visits = |laid: &Laid| {
        let rising = story.legs[laid.leg].rises();
        let points = &cords[laid.leg * passes + laid.pass - 1];
        points.iter().map(move |point| Visit {
            crossing: point.crossing,
            rising,
        })
    };
    trips
        .filter(|trip| trip[0].pass <= passes)
        .map(|trip| trip.iter().flat_map(visits).collect())
        .collect()
}

/// The face each corner lies in, found by walking both banks of every cord. A diagram that lies
/// flat on the tube has two faces more than crossings (Euler); any other story is impossible.
fn faces(crossings: usize, strands: &[Strand]) -> Result<Vec<usize>, String> {
    let mut faces: Vec<usize> = (0..4 * crossings).collect();
    let mut join = |one: usize, other: usize| {
        let (one, other) = (faces[one], faces[other]);
        for face in &mut faces {
            if *face == other {
                *face = one;
            }
        }
    };
    for strand in strands {
        for (at, visit) in strand.iter().enumerate() {
            let next = strand[(at + 1) % strand.len()];
            let leaves = if visit.rising {
                [Corner::Top, Corner::Right]
            } else {
                [Corner::Right, Corner::Bottom]
            };
            let arrives = if next.rising {
                [Corner::Left, Corner::Bottom]
            } else {
                [Corner::Top, Corner::Left]
            };
            for (bank, other) in leaves.into_iter().zip(arrives) {
                join(
                    4 * visit.crossing + bank as usize,
                    4 * next.crossing + other as usize,
                );
            }
        }
    }
    let mut distinct = faces.clone();
    distinct.sort_unstable();
    distinct.dedup();
    if distinct.len() == crossings + 2 {
        Ok(faces)
    } else {
        Err(format!(
            "{} faces round {crossings} crossings do not lie flat on a tube",
            distinct.len()
        ))
    }
}
