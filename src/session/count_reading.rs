//! What is read off a knot that is counted: how many leads so many crossings are, which crossings must
//! be asked about, and the weave that the answers make.

use crate::guide::Plan;
use crate::knot::{Hand, Knot, Lattice, Quantity, Rim, Side, Weave};

/// The counts so far; 0 where nothing is counted yet.
#[derive(Clone, Debug)]
pub(super) struct Counts {
    pub bights: u16,
    pub nested: u16,
    /// The row of scallops in which the cord from an outermost one turns at the top.
    pub lands: u16,
    /// Crossings along that cord.
    pub rows: u16,
    pub leads: u16,
    pub passes: u16,
}

impl Default for Counts {
    fn default() -> Self {
        Self {
            bights: 0,
            nested: 1,
            lands: 1,
            rows: 0,
            leads: 0,
            passes: 1,
        }
    }
}

/// From the least to the most that a number can be.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bounds {
    pub least: u16,
    pub most: u16,
}

impl Bounds {
    pub fn of(quantity: Quantity) -> Self {
        let (least, most) = quantity.bounds().into_inner();
        Self { least, most }
    }
}

/// A crossing that is asked about.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Asked {
    /// The row of scallops at the bottom from which the cord rises, 1 the outermost.
    pub from: u16,
    /// Which of its crossings, from the bottom.
    pub nth: u16,
    /// How many it has.
    pub of: u16,
    /// The row of crossings that it lies in, 1 the lowest.
    pub row: u16,
}

impl Counts {
    /// The lattice of the knot; none while it has no leads or bights.
    pub fn lattice(&self) -> Option<Lattice> {
        self.lattice_of(self.leads)
    }

    fn lattice_of(&self, leads: u16) -> Option<Lattice> {
        let plain = Lattice::plain(leads, self.bights).ok()?;
        plain.interwoven(self.nested, self.lands).ok()
    }

    pub fn plan(&self, lattice: Lattice, weave: Weave) -> Option<Plan> {
        let knot = Knot::woven(lattice, weave).ok()?;
        Plan::new(knot, self.passes, Side::default(), Hand::default()).ok()
    }

    fn least_leads(&self) -> u16 {
        let least = *Quantity::Leads.bounds().start();
        // Further cords have two leads fewer, unless the first one lands innermost.
        if self.lands < self.nested {
            least + 1
        } else {
            least
        }
    }

    /// How many crossings the first cord has on its way up with so many leads.
    fn crossings(&self, leads: u16) -> Option<u16> {
        let knot = Knot::woven(self.lattice_of(leads)?, Weave::default()).ok()?;
        let leg = knot.leg(1, 1)?;
        u16::try_from(knot.crossings_of(leg).count()).ok()
    }

    /// From the fewest crossings that it can have to the most.
    pub fn rows_bounds(&self) -> Bounds {
        let most = *Quantity::Leads.bounds().end();
        let crossings = |leads| self.crossings(leads).unwrap_or(1);
        Bounds {
            least: crossings(self.least_leads()),
            most: crossings(most),
        }
    }

    /// The leads of a knot whose first cord has so many crossings on its way up.
    ///
    /// # Errors
    /// The nearest numbers of crossings that there can be, when this is none of them: with every lead
    /// there are as many more as bights are nested.
    pub fn leads_of(&self, crossings: u16) -> Result<u16, [u16; 2]> {
        let Bounds { least, most } = self.rows_bounds();
        let beyond = crossings.clamp(least, most) - least;
        let leads = self.least_leads() + beyond / self.nested;
        let less = self.crossings(leads).unwrap_or(least);
        if less == crossings {
            return Ok(leads);
        }
        Err([less, self.crossings(leads + 1).unwrap_or(most)])
    }
}

/// The crossings that must be asked about for every row to be known in which cords cross: along the cord
/// from an outermost scallop, and where that does not come, along those from the rows inside it.
pub(super) fn questions(lattice: Option<Lattice>) -> Vec<Asked> {
    let knot = lattice.and_then(|lattice| Knot::woven(lattice, Weave::default()).ok());
    let Some(knot) = knot else {
        return Vec::new();
    };
    let mut asked: Vec<Asked> = Vec::new();
    for from in 1..=knot.nested() {
        let Some(pin) = knot.pin(Rim::Bottom, from, 1) else {
            continue;
        };
        let rows: Vec<u16> = knot
            .crossings_of(knot.leg_from(pin))
            .map(|(row, _)| row)
            .collect();
        let of = u16::try_from(rows.len()).unwrap_or(u16::MAX);
        for (nth, row) in (1..).zip(rows) {
            if !asked.iter().any(|other| other.row == row) {
                asked.push(Asked { from, nth, of, row });
            }
        }
    }
    asked
}

/// The weave of these answers, by the name that it has where it is over so many, under so many, or the
/// twin of that. Where nothing crosses, and where nothing was answered yet, it is as it is in such a
/// weave.
pub(super) fn weave_of(lattice: Lattice, answers: &[bool]) -> Weave {
    let rows = lattice.rows();
    let asked = questions(Some(lattice));
    let known: Vec<(u16, bool)> = asked
        .iter()
        .zip(answers)
        .map(|(asked, over)| (asked.row, *over))
        .collect();
    let goes = |weave: &Weave| {
        let mut known = known.iter();
        known.all(|(row, over)| weave.rising_over(*row) == *over)
    };
    // Each cord by itself is over one, under one in what is tied most.
    let runs = || std::iter::once(lattice.nested().min(rows)).chain(1..=rows);
    let by_run = runs().map(Weave::Run).find(|weave| goes(weave));
    let by_twin = || {
        runs()
            .map(|run| Weave::Run(run).twin(rows))
            .find(|weave| goes(weave))
    };
    by_run.or_else(by_twin).unwrap_or_else(|| {
        let mut code: Box<[bool]> = (1..=rows)
            .map(|row| Weave::default().rising_over(row))
            .collect();
        for (row, over) in &known {
            code[usize::from(*row) - 1] = *over;
        }
        Weave::Rows(code)
    })
}
