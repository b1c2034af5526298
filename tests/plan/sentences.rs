//! The one sentence for each thing that can be wrong.

use marlinspeak::words::Words;

use crate::{RING, refused};

#[test]
#[expect(clippy::too_many_lines, reason = "one table of sentences")]
fn each_thing_wrong_with_a_length_has_its_sentence() {
    let fit = |object: &'static str, cover: &'static str, cord: &'static str| {
        vec!["fit", "--object", object, "--cover", cover, "--cord", cord]
    };
    for (args, sentence) in [
        (
            fit("0", "30", "4"),
            "The diameter of the object must be more than zero and “0” is not: give a length \
             such as 30mm.",
        ),
        (
            fit("30", "-3cm", "4"),
            "The length to be covered must be more than zero and “-3cm” is not: give a length \
             such as 30mm.",
        ),
        (
            fit("30", "30", "4 stone"),
            "The thickness of the cord has a unit that is not known, “stone” in “4 stone”: use \
             mm, cm, m, in or ft, such as 4mm.",
        ),
        (
            fit("500m", "30", "4"),
            "The diameter of the object must be from 0.01 mm to 100 m and “500m” is not: give a \
             length such as 30mm.",
        ),
        (
            fit("thick", "30", "4"),
            "The diameter of the object cannot be “thick”: give a number with mm, cm, m, in or \
             ft, such as 30mm.",
        ),
        (
            fit("1,250", "30", "4"),
            "The diameter of the object may be read two ways, “1,250”: write it with a point or \
             without the comma.",
        ),
        (
            fit("30", "30", "40"),
            "Nothing fits: a cord of 40 mm is thicker than what it goes round, 30 mm; use a thinner \
             cord.",
        ),
        (
            fit("30", "30", "II"),
            "Cord II has no published thickness: measure yours and give that, such as 4mm.",
        ),
        (
            fit("30", "30", "bootlace"),
            "“bootlace” is not a cord: give its thickness, such as 4mm, or a standard cord (I, \
             IA, III). Cords that you keep by name can be given too; none is kept yet.",
        ),
        (
            vec!["fit", "--cover", "30", "--cord", "4"],
            "What is to be covered is missing: say how thick it is, such as --object 30mm, measure \
             round it, such as --girth 94mm, or name a ball or a mat, such as --ball 38mm or --mat \
             150mm.",
        ),
        (
            vec!["fit", "--object", "30", "--cord", "4"],
            "The length to be covered is missing: add it, such as --cover 30mm.",
        ),
        (
            vec!["fit", "--object", "30", "--cover", "30"],
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            fit("30", "30", "5/32"),
            "The thickness of the cord is a fraction without a unit, “5/32”: if it is inches, write \
             5/32in; else give it with mm or cm, such as 4mm.",
        ),
        (
            [fit("30", "30", "4"), vec!["--firm", "stiff"]].concat(),
            "“stiff” is not a kind of cord: say hard, soft or flat, such as --firm soft.",
        ),
        (
            [fit("30", "30", "4"), vec!["--cord-give", "9"]].concat(),
            "How closely a cord lies is a number from 0.8 to 2.5 and “9” is not one: try 1.62, which \
             is soft line.",
        ),
        (
            [
                fit("30", "30", "4"),
                vec!["--cord-give", "1.7", "--firm", "hard"],
            ]
            .concat(),
            "The cord is told by its kind and by a number: give one of the two, --firm or \
             --cord-give.",
        ),
        (
            [fit("30", "30", "4"), vec!["--tube-length", "30cm"]].concat(),
            "A length belongs to a tube whose diameter is known and none is given: add its diameter, \
             such as 45mm.",
        ),
        (
            [
                fit("30", "30", "4"),
                vec!["--tube", "40", "--ring-width", "2cm"],
            ]
            .concat(),
            "A width of rings belongs to rings and none are given: add their rows of holes, such as \
             14,20.",
        ),
        (
            [fit("30", "30", "4"), vec!["--passes", "5"]].concat(),
            "--passes takes a whole number from 1 to 4 and “5” is not one: try --passes 2.",
        ),
        (
            [fit("30", "30", "4"), vec!["--least-leads", "x"]].concat(),
            "--least-leads takes a whole number from 2 to 60 and “x” is not one: try --least-leads 3.",
        ),
        (
            [fit("30", "30", "4"), vec!["--least-bights", "1"]].concat(),
            "--least-bights takes a whole number from 2 to 60 and “1” is not one: try \
             --least-bights 3.",
        ),
        (
            [fit("30", "30", "4"), vec!["--most-legs", "-3"]].concat(),
            "--most-legs takes a whole number from 1 to 9,999 and “-3” is not one: try --most-legs \
             60.",
        ),
        (
            [fit("30", "30", "4"), vec!["--least-hidden", "101%"]].concat(),
            "--least-hidden takes a whole number from 1 to 100 and “101” is not one: try \
             --least-hidden 80.",
        ),
        (
            [fit("30", "30", "4"), vec!["--weave", "ouo"]].concat(),
            "--weave takes a whole number from 1 to 9 and “ouo” is not one: try --weave 1.",
        ),
        (
            [fit("30", "30", "4"), vec!["--price-hour", "cheap"]].concat(),
            "A price is a number from 0 to 1,000,000 and “cheap” is not one: give it without a \
             currency, such as 0.35.",
        ),
        (
            [fit("30", "30", "4"), vec!["--girth", "94"]].concat(),
            "What is covered is named twice, by its diameter and by its girth: give one of the two.",
        ),
        (
            [fit("30", "30", "4"), vec!["--most", "0"]].concat(),
            "--most takes a whole number from 1 to 9,999 and “0” is not one: try --most 20.",
        ),
        (
            [fit("30", "30", "4"), vec!["--rows", "12"]].concat(),
            "Rows belong to a tube and none is given: add its diameter, such as 45mm.",
        ),
    ] {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
}

#[test]
fn each_thing_wrong_with_a_tube_has_its_sentence() {
    let tube = |more: &[&'static str]| [&RING[..], &["--cord", "4"], more].concat();
    for (args, sentence) in [
        (
            tube(&["--rows", "12,sixteen"]),
            "Rows are whole numbers of holes and “12,sixteen” is something else: give one for \
             each row of a ring, such as 14,20.",
        ),
        (
            tube(&["--rows", "1"]),
            "A row has 2 to 1,998 holes and 1 is not such a number: give the holes of each row, \
             such as 14,20.",
        ),
        (
            tube(&["--rows", "16,10"]),
            "No row of this tube (16, 10 holes) can be shared evenly among 6 bights: it takes 2, \
             4, 5, 8, 10, 16 bights.",
        ),
        (
            tube(&["--rows", "120"]),
            "A row of 120 holes on this tube puts them 1 mm apart, and a pin needs 1.6 mm: give \
             fewer holes or a thicker tube.",
        ),
        (
            tube(&["--wall", "21"]),
            "A wall of 21 mm does not fit into a tube of 40 mm: give the thickness of the wall \
             alone.",
        ),
    ] {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
    let many: Vec<String> = (2..=140).map(|holes: u16| holes.to_string()).collect();
    let many = refused(&[&RING[..], &["--cord", "4", "--rows", &many.join(",")]].concat());
    assert_eq!(
        many,
        "A ring has 1 to 99 rows and 139 are too many: give fewer."
    );
    let unknown = refused(&tube(&["--thread", "M7"]));
    assert!(
        unknown.starts_with("The thread “M7” is not known: it may be #2, #3"),
        "{unknown}"
    );
    assert!(unknown.ends_with("M12; try M4 or M5."), "{unknown}");
}

#[test]
fn each_tube_and_cord_that_do_not_take_the_knot_have_their_sentence() {
    let tube = |more: &[&'static str]| [&RING[..], &["--cord", "4"], more].concat();
    for (args, sentence) in [
        (
            tube(&["--have", "1m"]),
            "This knot takes 2.28 m of cord and there are 1 m: use more cord, fewer leads or \
             fewer passes.",
        ),
        (
            tube(&["--object", "3"]),
            "A cord of 4 mm is thicker than what it goes round, 3 mm: use a cord of 3 mm at the most.",
        ),
        (
            tube(&["--object", "30", "--cover", "10"]),
            "This knot is 33.8 mm wide at the least and cannot cover just 10 mm: use fewer \
             leads, or cover more.",
        ),
        (
            vec!["rig", "--leads", "5", "--bights", "6"],
            "No tube and cord are given: add them, such as --tube 45mm --rows 14,20 --cord 4mm, or what it \
             is tied on in place, such as --object 30mm --in-place --cord 4mm.",
        ),
        (
            [&RING[..], &[]].concat(),
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            vec![
                "rig", "--leads", "5", "--bights", "6", "--tube", "oak", "--cord", "4",
            ],
            "“oak” is not a tube: give its diameter, such as 45mm. Tubes that you keep by name \
             can be given too; none is kept yet.",
        ),
        (
            vec![
                "rig", "--leads", "5", "--bights", "40", "--tube", "20", "--cord", "4",
            ],
            "40 pins on this tube leave 0.56 mm between them, and the cords of a bight need 4 mm: use \
             a tube of 108.4 mm or more, or at most 7 bights.",
        ),
        (
            tube(&["--keep-tube", "2nd"]),
            "“2nd” is not a name to keep something by: use up to 40 letters, beginning with a \
             letter, such as oak.",
        ),
        (
            tube(&["--keep-cord", "iii"]),
            "“iii” is the name of a standard cord: choose another name.",
        ),
        (
            tube(&["--pin", ""]),
            "The option --pin needs a value after it: “marlinspeak --help” shows which.",
        ),
    ] {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
}

const NESTED: [&str; 11] = [
    "rig", "--leads", "3", "--bights", "5", "--nested", "2", "--tube", "90", "--cord", "3",
];

#[test]
fn each_knot_that_is_too_much_for_tube_or_object_has_its_sentence() {
    for (args, sentence) in [
        (
            vec![
                "rig", "--leads", "5", "--bights", "14", "--passes", "2", "--tube", "45", "--rows",
                "14", "--thread", "M6", "--cord", "3",
            ],
            "14 pins on this tube leave 4 mm between them, and the cords of a bight need 6 mm: use a \
             tube of 54 mm or more, or at most 7 bights, or 1 pass, or pins no thicker than 4 mm.",
        ),
        (
            vec![
                "rig", "--leads", "5", "--bights", "6", "--passes", "3", "--tube", "40", "--cord",
                "6",
            ],
            "6 bights in 3 passes leave no room to tuck on this tube: use a tube of 48.8 mm or more, or \
             at most 4 bights, or at most 2 passes.",
        ),
        (
            [&RING[..], &["--cord", "41", "--object", "50"]].concat(),
            "A cord of 41 mm is thicker than the tube of 40 mm: use a thinner cord or a thicker tube.",
        ),
        (
            vec![
                "rig",
                "--leads",
                "5",
                "--bights",
                "6",
                "--tube",
                "40",
                "--rows",
                "12",
                "--cord",
                "4",
                "--tube-length",
                "20",
                "--ring-width",
                "10",
            ],
            "This knot with its rings takes up 33.7 mm of the tube, which is 20 mm long: use a longer \
             tube, or a knot of fewer leads.",
        ),
        (
            vec![
                "rig", "--leads", "5", "--bights", "12", "--passes", "2", "--tube", "60", "--rows",
                "12", "--cord", "4", "--object", "30",
            ],
            "12 bights in 2 passes of 4 mm cord do not go round the object side by side: use at most 11 \
             bights, or a cord thinner than 3.7 mm.",
        ),
        (
            [&NESTED[..], &["--rows", "20,14"]].concat(),
            "2 nested rows of 5 pins need 2 rows of holes that stand in line, and that can be shared \
             evenly among 5 bights; this tube has 20, 14 holes: use a strip of paper on a tube without \
             rings, fewer nested bights, or another number of bights.",
        ),
        (
            [&NESTED[..], &["--rows", "20,10", "--ring-width", "10"]].concat(),
            "2 nested rows of pins with their bights take rings at least 11 mm wide, and these are 10 \
             mm wide: use wider rings, thinner cord, or a strip of paper on a tube without rings.",
        ),
    ] {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
}

#[test]
fn nothing_fits_says_why_and_what_would() {
    for (args, parts) in [
        (
            &["--object", "30", "--cover", "3", "--cord", "4"][..],
            ["the narrowest knot is", "cover more, or use a cord of"],
        ),
        (
            &["--object", "30", "--cover", "2m", "--cord", "1"],
            ["too much of the object bare", "or use a cord of"],
        ),
        (
            &[
                "--object", "30", "--cover", "30", "--cord", "4", "--tube", "40", "--rows", "31",
            ],
            ["the rows of the tube take 31", "Nothing fits this tube"],
        ),
        (
            &[
                "--object", "30", "--cover", "30", "--cord", "4", "--have", "50cm",
            ],
            ["Nothing fits the cord at hand", "there are 50 cm"],
        ),
        (
            &["--object", "3", "--cover", "30", "--cord", "4"],
            [
                "a cord of 4 mm is thicker than what it goes round, 3 mm",
                "use a thinner cord",
            ],
        ),
        (
            &[
                "--object",
                "30",
                "--cover",
                "30",
                "--cord",
                "4",
                "--tube",
                "40",
                "--rows",
                "12",
                "--tube-length",
                "20",
                "--ring-width",
                "10",
            ],
            [
                "it is 20 mm long, and a knot with its rings takes up",
                "use a longer tube",
            ],
        ),
        (
            &[
                "--object", "30", "--cover", "30", "--cord", "4", "--tube", "5",
            ],
            ["5 mm across, it is too thin for the cords", "use a tube of"],
        ),
        (
            &[
                "--object",
                "30",
                "--cover",
                "30",
                "--cord",
                "4",
                "--most-legs",
                "1",
            ],
            ["Nothing fits what you asked to see", "ask for less at once"],
        ),
        (
            &["--cover", "30", "--cord", "4"],
            ["What is to be covered is missing", "such as --object 30mm"],
        ),
        (
            &["--object", "30", "--cord", "4"],
            [
                "The length to be covered is missing",
                "such as --cover 30mm",
            ],
        ),
    ] {
        let sentence = refused(&[&["fit"], args].concat());
        assert!(
            parts.iter().all(|part| sentence.contains(part)),
            "{sentence}"
        );
    }
}

#[test]
fn nothing_fits_rings_that_are_too_narrow_for_the_rows() {
    let sentence = refused(&[
        "fit",
        "--object",
        "60",
        "--cover",
        "40",
        "--cord",
        "3",
        "--nested",
        "2",
        "--tube",
        "90",
        "--rows",
        "20,10",
        "--ring-width",
        "5",
    ]);
    assert_eq!(
        sentence,
        "2 nested rows of pins with their bights take rings at least 11 mm wide, and these are 5 mm \
         wide: use wider rings, thinner cord, or a strip of paper on a tube without rings."
    );
}

/// Where no one thing is found that stands in the way, there is still something to try.
#[test]
fn nothing_fits_has_a_sentence_without_a_reason() {
    assert_eq!(
        Words::english().misfits(&[]).shown(),
        "Nothing fits: try a thinner cord, another length to be covered, or no particular tube."
    );
}
