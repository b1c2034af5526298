//! Any ground: tapers, balls, mats, and what is tied in place, as a user of the terminal names them.

use crate::refused;

/// A doubled knot of the loft, to which each case adds what it is tied on.
const KNOT: [&str; 7] = ["rig", "--leads", "5", "--bights", "7", "--passes", "2"];

fn rig(more: &[&'static str]) -> Vec<&'static str> {
    [&KNOT[..], more].concat()
}

fn fit(more: &[&'static str]) -> Vec<&'static str> {
    [&["fit", "--cord", "3"], more].concat()
}

#[test]
#[expect(clippy::too_many_lines, reason = "one table of sentences")]
fn each_thing_wrong_with_a_ground_has_its_sentence() {
    for (args, sentence) in [
        (
            fit(&["--object", "30", "--ball", "38"]),
            "What is covered is named twice, by its diameter and as a ball: give one of the two.",
        ),
        (
            fit(&["--ball", "38", "--mat", "150"]),
            "What is covered is named twice, as a ball and as a mat: give one of the two.",
        ),
        (
            fit(&["--object", "30:", "--cover", "120"]),
            "“30:” does not say how thick a taper is: give both ends with one colon between, such as \
             30mm:24mm.",
        ),
        (
            fit(&["--object", "30:26:24", "--cover", "120"]),
            "“30:26:24” does not say how thick a taper is: give both ends with one colon between, such \
             as 30mm:24mm.",
        ),
        (
            fit(&["--object", "30:thin", "--cover", "120"]),
            "The diameter of the object cannot be “thin”: give a number with mm, cm, m, in or ft, such \
             as 30mm.",
        ),
        (
            fit(&["--object", "30mm:24mm"]),
            "A taper needs the length over which it gets thinner and none is given: give it as the \
             length to be covered, such as 120mm.",
        ),
        (
            fit(&["--object", "30mm:2mm", "--cover", "120"]),
            "The thin end of the taper, 2 mm, is thinner than the cord of 3 mm: use a thinner cord, or \
             let the knot end where the object is thicker.",
        ),
        (
            fit(&["--ball", "0"]),
            "The diameter of the ball must be more than zero and “0” is not: give a length such as 38mm.",
        ),
        (
            fit(&["--mat", "wide"]),
            "The size of the mat cannot be “wide”: give a number with mm, cm, m, in or ft, such as 150mm.",
        ),
        (
            fit(&["--mat", "150mm:"]),
            "“150mm:” is not the size of a mat: give it from edge to edge, such as 150mm, or with its \
             hole, such as 150mm:60mm.",
        ),
        (
            fit(&["--mat", "60mm:150mm"]),
            "A hole of 150 mm does not go into a mat of 60 mm: give the outer edge first and then the \
             hole, such as 150mm:60mm.",
        ),
        (
            fit(&["--mat", "150mm", "--cover", "40mm"]),
            "A mat has its size and no length to be covered besides: leave that length out, or give the \
             hole behind the outer edge, such as 150mm:60mm.",
        ),
        (
            rig(&["--cord", "3", "--mat", "150mm", "--tube", "45mm"]),
            "A mat is tied flat on a board and takes no tube: leave that out.",
        ),
        (
            rig(&["--cord", "3", "--mat", "150mm", "--rows", "14,20"]),
            "A mat is tied flat on a board and takes no rows of holes: leave that out.",
        ),
        (
            rig(&[
                "--cord",
                "3",
                "--object",
                "30mm",
                "--in-place",
                "--tube",
                "45mm",
            ]),
            "A knot that is tied in place takes no tube: leave that out, or leave out in place and slide \
             the knot on from the tube.",
        ),
        (
            rig(&[
                "--cord",
                "3",
                "--object",
                "30mm",
                "--in-place",
                "--pin",
                "12mm",
            ]),
            "A knot that is tied in place takes no length of pins: leave that out, or leave out in place \
             and slide the knot on from the tube.",
        ),
        (
            rig(&["--cord", "3", "--in-place"]),
            "A knot in place is tied on what it covers and that is not named: say how thick it is, such \
             as --object 30mm.",
        ),
        (
            rig(&["--object", "30mm", "--in-place"]),
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            rig(&["--mat", "150mm"]),
            "The cord is missing: add its thickness, such as --cord 4mm.",
        ),
        (
            rig(&["--cord", "3", "--ball", "38mm"]),
            "The tube is missing: add its diameter, such as --tube 45mm.",
        ),
        (
            fit(&["--object", "30mm", "--in-place"]),
            "The length to be covered is missing: add it, such as --cover 30mm.",
        ),
    ] {
        assert_eq!(refused(&args), sentence, "{args:?}");
    }
}
