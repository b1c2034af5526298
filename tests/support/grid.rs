//! Many kinds of ties, thinned by a fixed pattern.

use marlinspeak::guide::{AtOnce, Checks, Plan, Script};
use marlinspeak::knot::{Hand, Knot, Laying, LayingOrder, Side, Weave};
use marlinspeak::words::Detail;

/// Ties drawn for each pair of leads and bights.
const DRAWN: usize = 6;

/// Coprime to the number of all choices, and large: neighbours differ in every choice.
const STRIDE: usize = 1009;

const AT_ONCE: [AtOnce; 6] = [
    AtOnce::UpTo(1),
    AtOnce::UpTo(2),
    AtOnce::UpTo(3),
    AtOnce::UpTo(4),
    AtOnce::UpTo(7),
    AtOnce::WholeLeg,
];

/// Scripts of every knot up to 12 leads and 12 bights, each with some of all the ways to choose
/// passes, weave, hand, side, order, names of cords, depth and how much is told at once.
pub fn grid() -> impl Iterator<Item = (Script, Detail)> {
    let pairs = (2..=12).flat_map(|leads| (2..=12).map(move |bights| (leads, bights)));
    pairs
        .flat_map(|pair| [pair; DRAWN])
        .enumerate()
        .map(|(index, (leads, bights))| {
            let mut rest = index * STRIDE;
            let mut choose = |among: usize| {
                let chosen = rest % among;
                rest /= among;
                chosen
            };
            let depth = Detail::ALL[choose(3)];
            let at_once = AT_ONCE[choose(6)];
            let passes = [1, 2, 3][choose(3)];
            let hand = [Hand::Right, Hand::Left][choose(2)];
            let side = [Side::Right, Side::Left][choose(2)];
            let order = [LayingOrder::PassByPass, LayingOrder::StrandByStrand][choose(2)];
            let run = [1, 2, 3][choose(3)];
            let checks = [Checks::EachRound, Checks::EachPass][choose(2)];
            let is_named = choose(2) == 1;
            // A run that does not fit is one that does.
            let knot = Knot::new(leads, bights, Weave::Run(run.min(leads - 1))).unwrap();
            let strands = knot.strands();
            let laying = Laying::new(knot, passes, order).unwrap();
            let plan = Plan::of(laying, side, hand);
            let names = if strands == 1 { passes } else { strands };
            let colours = ["blue", "blue", "white"];
            let names = (0..usize::from(names)).map(|name| colours[name % 3].to_owned());
            let plan = if is_named {
                plan.with_cords(names.collect()).unwrap()
            } else {
                plan
            };
            (Script::new(plan, at_once).with_checks(checks), depth)
        })
}
