//! Lengths as a tyer types them.

use marlinspeak::bench::{LengthError, Millimetres};

#[test]
fn a_length_is_read_in_any_usual_unit() {
    for (text, wanted) in [
        ("30", 30.0),
        ("30mm", 30.0),
        (" 30 mm ", 30.0),
        ("+30", 30.0),
        ("3cm", 30.0),
        ("3,5cm", 35.0),
        (".5 cm", 5.0),
        ("2.", 2.0),
        ("0.5m", 500.0),
        ("0,125 in", 3.175),
        ("1.25in", 31.75),
        ("1.25\"", 31.75),
        ("1.25″", 31.75),
        ("5/32in", 3.968_75),
        ("1 1/4in", 31.75),
        ("1-1/4in", 31.75),
        ("1 1/4 Inch", 31.75),
        ("2ft", 609.6),
        ("3'", 914.4),
        ("3,5\u{a0}cm", 35.0),
        ("2 Zoll", 50.8),
        ("2 pouces", 50.8),
        ("2 pulgadas", 50.8),
        ("2 Fuß", 609.6),
        ("2 pieds", 609.6),
        ("2 pies", 609.6),
        ("1,250m", 1250.0),
        ("100m", 100_000.0),
        ("½in", 12.7),
        ("1½ in", 38.1),
        ("1 ¼\"", 31.75),
        ("5ft 3in", 1600.2),
        ("5 ft 3 in", 1600.2),
        ("5' 3\"", 1600.2),
        ("5'3\"", 1600.2),
        ("5ft 3 1/2in", 1612.9),
        ("5ft 3-1/2in", 1612.9),
        ("6 pieds 2 pouces", 1879.6),
        ("1/2 m", 500.0),
    ] {
        let read = Millimetres::parse(text).unwrap().get();
        assert!((read - wanted).abs() < 1e-9, "{text}: {read}");
    }
}

#[test]
fn what_is_no_length_is_refused_by_its_kind() {
    for text in [
        "",
        "  ",
        "mm",
        "abc",
        "NaN",
        "inf",
        "-inf",
        "1/0",
        "1/0in",
        "1.2.3",
        "1-2in",
        "1-1-1/4in",
        "1.2,3",
        "/4",
        "1/",
        "1 2",
        "1 2 3/4",
        "1.5/2",
        "-",
        "--5",
        ".",
        ",",
        "٣",
        "1e5x",
        "½½in",
        "5ft 3",
        "5in 3ft",
        "5ft 3in 2in",
        "5m 3in",
        "5ft -3in",
    ] {
        let error = Millimetres::parse(text).unwrap_err();
        assert!(
            matches!(
                error,
                LengthError::Unreadable { .. } | LengthError::UnknownUnit { .. }
            ),
            "{text:?}: {error:?}"
        );
    }
    for text in ["0", "0mm", "-5", "-0.5 in", "0/4"] {
        let error = LengthError::NotPositive { given: given(text) };
        assert_eq!(Millimetres::parse(text), Err(error));
    }
    let huge = "9".repeat(400);
    for text in ["101m", "100001", "0.001", "99999999999ft", &huge] {
        let error = LengthError::OutOfRange { given: given(text) };
        assert_eq!(Millimetres::parse(text), Err(error));
    }
    assert_eq!(
        Millimetres::parse("5 furlongs"),
        Err(LengthError::UnknownUnit {
            given: given("5 furlongs"),
            unit: "furlongs".to_owned()
        })
    );
}

/// A rule in inches is read in fractions; a fraction of a millimetre is no measure.
#[test]
fn a_bare_fraction_is_asked_back() {
    for text in ["5/32", "1 1/4", "½", "3/4 "] {
        let error = LengthError::BareFraction { given: given(text) };
        assert_eq!(Millimetres::parse(text), Err(error));
    }
    assert!(Millimetres::parse("5/32in").is_ok() && Millimetres::parse("5/32mm").is_ok());
}

fn given(text: &str) -> String {
    text.trim().to_owned()
}

#[test]
fn a_comma_that_reads_two_ways_is_asked_about() {
    for text in ["1,250", "1,250 mm"] {
        let error = LengthError::ThousandsOrDecimals {
            given: text.to_owned(),
        };
        assert_eq!(Millimetres::parse(text), Err(error));
    }
    assert_eq!(Millimetres::parse("0,250").unwrap().get(), 0.25);
}

#[test]
fn numbers_are_checked_like_texts() {
    for bad in [
        0.0,
        -1.0,
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        1e9,
        1e-9,
    ] {
        assert!(Millimetres::new(bad).is_err(), "{bad}");
    }
    assert_eq!(Millimetres::new(4.0).unwrap().to_string(), "4 mm");
}
