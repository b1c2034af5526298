//! The house colours: their hues, their contrast, and what is left of them for the colour-blind.

use marlinspeak::knot::PassLeg;
use marlinspeak::picture::{Colour, DefaultPalette, Palette, Role, okabe_ito};

#[test]
fn hues_are_those_of_okabe_and_ito() {
    // Okabe and Ito, Color Universal Design (2008), table of the eight colours, as 8-bit RGB.
    for (colour, published) in [
        (okabe_ito::ORANGE, [230, 159, 0]),
        (okabe_ito::SKY_BLUE, [86, 180, 233]),
        (okabe_ito::BLUISH_GREEN, [0, 158, 115]),
        (okabe_ito::YELLOW, [240, 228, 66]),
        (okabe_ito::BLUE, [0, 114, 178]),
        (okabe_ito::VERMILION, [213, 94, 0]),
        (okabe_ito::REDDISH_PURPLE, [204, 121, 167]),
    ] {
        assert_eq!([colour.red, colour.green, colour.blue], published);
    }
    assert_eq!(
        DefaultPalette::dark().colour(Role::Active),
        okabe_ito::YELLOW
    );
}

#[test]
fn all_that_must_be_seen_stands_out_three_to_one() {
    // WCAG 2.2, success criterion 1.4.11, Non-text Contrast. Its formula: black on white is 21.
    let (black, white) = (Colour::rgb(0), Colour::rgb(0x00FF_FFFF));
    assert!((black.contrast(white) - 21.0).abs() < 1e-4);
    for palette in palettes() {
        let on_tube = palette.colour(Role::Tube);
        let mut roles = vec![
            Role::Active,
            Role::ActiveRest,
            Role::Pin,
            Role::From,
            Role::To,
        ];
        for strand in 1..=7 {
            let pass_leg = PassLeg {
                pass: 1,
                strand,
                leg: 1,
            };
            roles.extend([Role::Laid(pass_leg), Role::Beside(pass_leg)]);
            assert!(
                palette.colour(Role::Beside(pass_leg)).contrast(on_tube)
                    > palette.colour(Role::Laid(pass_leg)).contrast(on_tube)
            );
        }
        for role in roles {
            for ground in [Role::Tube, Role::Ground] {
                let ratio = palette.colour(role).contrast(palette.colour(ground));
                assert!(
                    ratio >= 3.0,
                    "{role:?} on {ground:?}, dark {}: {ratio}",
                    palette.is_dark()
                );
            }
        }
        // Text asks for 7 : 1 (success criterion 1.4.6).
        for (role, ground) in [
            (Role::PinNumber, Role::Tube),
            (Role::Label, Role::Ground),
            (Role::FromNumber, Role::FromDisc),
            (Role::ToNumber, Role::To),
        ] {
            let ratio = palette.colour(role).contrast(palette.colour(ground));
            assert!(
                ratio >= 7.0,
                "{role:?} on {ground:?}, dark {}: {ratio}",
                palette.is_dark()
            );
        }
        for (role, ground) in [
            // The next leg is faint, and to be seen.
            (Role::ToCome, Role::Tube),
            (Role::Under, Role::UnderEdge),
            (Role::Over, Role::OverEdge),
        ] {
            let ratio = palette.colour(role).contrast(palette.colour(ground));
            assert!(
                ratio >= 3.0,
                "{role:?} on {ground:?}, dark {}: {ratio}",
                palette.is_dark()
            );
        }
    }
}

/// A sign is set off from its cord by its edge, or stands out by itself.
#[test]
fn a_sign_stands_out_from_the_cord_it_lies_on() {
    for palette in palettes() {
        let cord = palette.colour(Role::Active);
        let [fill, edge] =
            [Role::Over, Role::OverEdge].map(|role| palette.colour(role).contrast(cord));
        assert!(
            fill.max(edge) >= 3.0,
            "dark {}: {fill} {edge}",
            palette.is_dark()
        );
    }
}

/// One colour for one meaning: the leg and the discs of its pins, and over and under as the words have
/// them.
#[test]
fn a_colour_means_the_same_wherever_it_stands() {
    for palette in palettes() {
        for role in [Role::From, Role::To, Role::FromNumber] {
            assert_eq!(
                palette.colour(role),
                palette.colour(Role::Active),
                "{role:?}"
            );
        }
        // As on the plates of the words: a square filled with orange, a ring of blue.
        assert_eq!(palette.colour(Role::Over), okabe_ito::ORANGE);
        let blue = [Role::Under, Role::UnderEdge].map(|role| palette.colour(role));
        assert!(blue.iter().any(|part| part.blue > part.red), "{blue:?}");
        // By day the leg is clear of the orange for every eye; by night it is yellow and set off.
        if !palette.is_dark() {
            for cones in CONES {
                let [leg, over] = [Role::Active, Role::Over]
                    .map(|role| luminance(seen(palette.colour(role), cones)));
                let ratio = (leg.max(over) + 0.05) / (leg.min(over) + 0.05);
                assert!(ratio >= 3.0, "{ratio}");
            }
        }
    }
}

/// Every set of colours that there is: for a dark window, a light one, and paper.
fn palettes() -> [DefaultPalette; 3] {
    [
        DefaultPalette::dark(),
        DefaultPalette::by_day(),
        DefaultPalette::light(),
    ]
}

/// A colour as somebody sees it who lacks one kind of cone: protan, deutan, tritan.
///
/// Machado, Oliveira, Fernandes, "A physiologically-based model for simulation of color vision
/// deficiency", IEEE Trans. Vis. Comput. Graph. 15 (2009) 1291: matrices for severity 1.0, as
/// published with the paper, applied to linear RGB. Figures from memory.
const CONES: [[[f32; 3]; 3]; 3] = [
    [
        [0.152_286, 1.052_583, -0.204_868],
        [0.114_503, 0.786_281, 0.099_216],
        [-0.003_882, -0.048_116, 1.051_998],
    ],
    [
        [0.367_322, 0.860_646, -0.227_968],
        [0.280_085, 0.672_501, 0.047_413],
        [-0.011_820, 0.042_940, 0.968_881],
    ],
    [
        [1.255_528, -0.076_749, -0.178_779],
        [-0.078_411, 0.930_809, 0.147_602],
        [0.004_733, 0.691_367, 0.303_900],
    ],
];

fn linear(channel: u8) -> f32 {
    let value = f32::from(channel) / 255.0;
    if value <= 0.04045 {
        value / 12.92
    } else {
        ((value + 0.055) / 1.055).powf(2.4)
    }
}

fn seen(colour: Colour, cones: [[f32; 3]; 3]) -> [f32; 3] {
    let light = [colour.red, colour.green, colour.blue].map(linear);
    cones.map(|row| {
        row.iter()
            .zip(light)
            .map(|(a, b)| a * b)
            .sum::<f32>()
            .clamp(0.0, 1.0)
    })
}

fn luminance([red, green, blue]: [f32; 3]) -> f32 {
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

#[test]
fn over_and_under_signs_differ_for_every_kind_of_colour_vision() {
    for cones in CONES {
        // White stays white: each row of the matrix sums to 1.
        for row in cones {
            assert!((row.iter().sum::<f32>() - 1.0).abs() < 1e-4);
        }
        for palette in palettes() {
            let [over, under] =
                [Role::Over, Role::Under].map(|role| luminance(seen(palette.colour(role), cones)));
            let ratio = (over.max(under) + 0.05) / (over.min(under) + 0.05);
            assert!(ratio >= 3.0, "dark {}: {ratio}", palette.is_dark());
        }
    }
}
