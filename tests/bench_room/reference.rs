//! Published tables; each file under `tests/data` names its source in its first lines.

use marlinspeak::bench::{
    BenchError, Millimetres, STANDARD_CORDS, Thread, ThreadSystem, crimp, pin_chord,
};

use crate::{mm, rows};

/// Peirce 1937 (J. Text. Inst. 28, T45): the first row, the jammed cloth, is published
/// (Balasubramanian, *Fabric Geometry*); the others solve his equations.
#[test]
fn crimp_is_that_of_peirces_square_weave() {
    let table = rows(include_str!("../data/peirce_square.csv"));
    assert_eq!(table.len(), 8);
    for row in table {
        let value: Vec<f64> = row.iter().map(|cell| cell.parse().unwrap()).collect();
        // D is the diameters of both cords together.
        let (cord, spacing) = (mm(4.0), mm(value[0] * 8.0));
        let exact = crimp::crimp(spacing, cord);
        assert!((exact - value[3]).abs() < 1.5e-6, "{row:?}: {exact}");
        let approximate = crimp::approximate(spacing, cord);
        assert!(
            (approximate - value[4]).abs() < 1.5e-6,
            "{row:?}: {approximate}"
        );
        let between = mm(value[2] * 8.0);
        let back = crimp::spacing_holding(between, cord).get();
        assert!((back - spacing.get()).abs() < 1e-4, "{row:?}: {back}");
    }
}

/// GATE TF 2009, question 54: 21 % in the jammed cloth.
#[test]
fn no_cord_crimps_more_than_in_jammed_cloth() {
    assert!((crimp::JAMMED - 0.2092).abs() < 5e-5);
    for spacing in [0.5, 4.0, 6.9] {
        assert_eq!(crimp::exact(mm(spacing), mm(4.0)), None);
        assert_eq!(crimp::crimp(mm(spacing), mm(4.0)), crimp::JAMMED);
    }
}

/// The text of the crimp module: from two diameters up, the approximation is within 0.005.
#[test]
fn the_approximation_is_close_where_ordinary_knots_cross() {
    for tenths in 20..200 {
        let spacing = mm(f64::from(tenths) / 10.0);
        let miss = crimp::crimp(spacing, mm(1.0)) - crimp::approximate(spacing, mm(1.0));
        assert!(miss.abs() < 0.005, "{spacing}: {miss}");
    }
}

/// Shop table of chords, and for 56 Machinery's Handbook Guide (29th). The table's entry for
/// 15 is a misprint: 0.2070 for sin 12° = 0.2079.
#[test]
fn pins_are_spaced_by_the_table_of_chords() {
    let table = rows(include_str!("../data/chords.csv"));
    assert_eq!(table.len(), 32);
    for row in table {
        let pins: u16 = row[0].parse().unwrap();
        let published: f64 = row[1].parse().unwrap();
        let chord = pin_chord(mm(1.0), pins).get();
        let agrees = (chord - published).abs() <= 0.6e-4;
        assert_eq!(agrees, pins != 15, "{pins}: {chord} and {published}");
        assert!((chord - row[2].parse::<f64>().unwrap()).abs() < 1e-6);
    }
}

/// Machinery's Handbook Guide (29th), section 2, examples 1 and 2; Machinery's Handbook (31st),
/// p. 711, example 3(a): holes at (11.8301, 8.5) and (7.5, 11.0) on a circle of 10.
#[test]
fn the_handbooks_examples_come_out() {
    let near = |one: f64, other: f64| (one - other).abs() < 6e-4;
    assert!(near(pin_chord(mm(38.452), 56).get(), 2.156));
    assert!(near(pin_chord(mm(6.0), 8).get(), 2.296));
    let apart = (11.8301_f64 - 7.5).hypot(8.5 - 11.0);
    assert!(near(pin_chord(mm(10.0), 6).get(), apart));
}

/// ASME B18.3 and DIN EN ISO 4026.
#[test]
fn every_thread_has_the_hex_key_of_the_standards() {
    let table = rows(include_str!("../data/hex_keys.csv"));
    assert_eq!(table.len(), Thread::all().len());
    for row in table {
        let thread = Thread::parse(row[0]).unwrap();
        let (scale, system) = match row[2] {
            "in" => (25.4, ThreadSystem::Inch),
            _ => (1.0, ThreadSystem::Metric),
        };
        let key = thread.hex_key();
        assert_eq!((thread.name(), key.size), (row[0], row[3]));
        assert_eq!((thread.system(), key.system), (system, system));
        let millimetres = |cell: &str| cell.parse::<f64>().unwrap() * scale;
        assert!((thread.diameter().get() - millimetres(row[1])).abs() < 1e-9);
        assert!((key.across_flats.get() - millimetres(row[4])).abs() < 1e-9);
    }
}

#[test]
fn a_thread_is_read_as_it_stands_on_the_packet() {
    for (text, name) in [
        ("8-32", "#8"),
        ("#8-32", "#8"),
        ("1/4-20", "1/4"),
        (" m4 ", "M4"),
        ("M4x0.7", "M4"),
        ("M5 × 0.8", "M5"),
    ] {
        assert_eq!(Thread::parse(text).unwrap().name(), name, "{text}");
    }
    for text in ["", "8", "M", "M7", "4", "x", "-", "#-1"] {
        let given = text.to_owned();
        assert_eq!(
            Thread::parse(text),
            Err(BenchError::UnknownThread { given })
        );
    }
}

/// MIL-C-5040H table II, as secondary copies quote it.
#[test]
fn standard_cords_weigh_what_the_table_says() {
    let table = rows(include_str!("../data/cord_specs.csv"));
    for cord in STANDARD_CORDS {
        let row = table.iter().find(|row| row[0] == cord.designation).unwrap();
        assert_eq!(row[5].parse(), Ok(cord.most_grams_per_metre));
        // Grams in a pound over metres in a foot.
        let grams = 453.592_37 / 0.3048 / row[4].parse::<f64>().unwrap();
        assert!((grams - cord.most_grams_per_metre).abs() < 1e-3);
        let diameter = cord.typical_diameter.map(Millimetres::get);
        assert_eq!(row[7].parse().ok(), diameter, "{}", cord.designation);
    }
}
