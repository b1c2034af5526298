//! Every crossing of a knot told in turn, and the floor under that: a bare loop over as many.

use std::hint::black_box;

use marlinspeak::knot::{Knot, Lattice, Laying, LayingOrder, Weave};

/// A knot of so many leads and bights.
pub fn laying((leads, bights): (u16, u16), passes: u16) -> Laying {
    let knot = Knot::new(leads, bights, Weave::default()).expect("within bounds");
    Laying::new(knot, passes, LayingOrder::default()).expect("within bounds")
}

/// The same with so many bights nested at each rim, every cord by itself over one, under one.
pub fn interwoven((leads, bights): (u16, u16), nested: u16) -> Laying {
    let plain = Lattice::plain(leads, bights).expect("within bounds");
    let lattice = plain.interwoven(nested, nested).expect("within bounds");
    let knot = Knot::woven(lattice, Weave::Run(nested)).expect("the run fits");
    Laying::new(knot, 1, LayingOrder::StrandByStrand).expect("within bounds")
}

/// Tells every leg of the tie in turn; gives back how many crossings there were.
pub fn tell_all(laying: &Laying) -> u32 {
    let turns = (0..laying.legs()).filter_map(|before| laying.nth_leg(before));
    let crossings = turns.flat_map(|pass_leg| laying.crossings(pass_leg));
    crossings.map(black_box).fold(0, |told, _| told + 1)
}

/// Counts as many crossings, row after row of leg after leg, and does nothing else.
pub fn count_all(laying: &Laying) -> u32 {
    let legs = 0..laying.legs() / 2;
    let rows = legs.flat_map(|_| 1..=laying.knot().rows());
    rows.map(black_box).fold(0, |counted, _| counted + 1)
}
