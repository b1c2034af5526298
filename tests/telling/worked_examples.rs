//! Two knots written out leg by leg, worked by hand from the rules of the trade: the route
//! and the crossings met are common practice and have no published source.

use std::fmt::Write;

use marlinspeak::knot::{Knot, Laying, LayingOrder, PassLeg, Pin, Rim, Weave};

/// The legs of one pass, written as in the examples: `b5→t1 O1@1` is the leg from bottom pin 5
/// to top pin 1, over one cord in row 1.
fn told(leads: u16, bights: u16, pass: u16) -> Vec<String> {
    let knot = Knot::new(leads, bights, Weave::default()).unwrap();
    let laying = Laying::new(knot, pass, LayingOrder::default()).unwrap();
    (1..=laying.knot().legs_of(1))
        .map(|leg| {
            let pass_leg = PassLeg {
                pass,
                strand: 1,
                leg,
            };
            let laid = laying.leg(pass_leg).unwrap();
            let mut line = format!("{}→{}", short(laid.from), short(laid.to));
            for crossing in laying.crossings(pass_leg) {
                let way = if crossing.over { 'O' } else { 'U' };
                write!(line, " {way}{}@{}", crossing.cords, crossing.row).unwrap();
            }
            line
        })
        .collect()
}

fn short(pin: Pin) -> String {
    let rim = if pin.rim == Rim::Bottom { 'b' } else { 't' };
    format!("{rim}{}", pin.number)
}

#[test]
fn five_lead_six_bight_single() {
    assert_eq!(
        told(5, 6, 1),
        [
            "b1→t3",
            "t3→b6",
            "b6→t2",
            "t2→b5 O1@4",
            "b5→t1 O1@1",
            "t1→b4 O1@4 U1@3",
            "b4→t6 O1@1 U1@2",
            "t6→b3 O1@4 U1@3 O1@2",
            "b3→t5 O1@1 U1@2 O1@3",
            "t5→b2 O1@4 U1@3 O1@2 U1@1",
            "b2→t4 O1@1 U1@2 O1@3 U1@4",
            "t4→b1 O1@4 U1@3 O1@2 U1@1",
        ]
    );
}

#[test]
fn three_lead_four_bight_second_pass() {
    assert_eq!(
        told(3, 4, 2),
        [
            "b1→t2 O1@1 U1@2",
            "t2→b4 O1@2 U1@1",
            "b4→t1 O1@1 U1@2",
            "t1→b3 O2@2 U1@1",
            "b3→t4 O2@1 U1@2",
            "t4→b2 O2@2 U2@1",
            "b2→t3 O2@1 U2@2",
            "t3→b1 O2@2 U2@1",
        ]
    );
}
