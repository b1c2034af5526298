//! Lengths as numbers for messages: rounded as a person says them.

use crate::bench::Millimetres;

/// Millimetres to a tenth; above 100 mm to a whole one.
pub(super) fn mm(length: Millimetres) -> f64 {
    let millimetres = length.get();
    if millimetres < 0.1 {
        // Too thin for a tenth, and nothing is 0 mm thick.
        (millimetres * 100.0).round() / 100.0
    } else if millimetres < 100.0 {
        (millimetres * 10.0).round() / 10.0
    } else {
        millimetres.round()
    }
}

/// Whole centimetres, to the nearest.
pub(super) fn centimetres(length: Millimetres) -> u32 {
    whole((length.get() / 10.0).round())
}

/// Whole centimetres, rounded up: for what is cut.
pub(super) fn centimetres_up(length: Millimetres) -> u32 {
    up_of(length.get())
}

fn up_of(millimetres: f64) -> u32 {
    // What is a whole number but for the last bit is that number.
    whole((millimetres / 10.0 - 1e-6).ceil())
}

/// Metres with two decimals, rounded up as [`centimetres_up`].
pub(super) fn long(length: Millimetres) -> String {
    long_of(length.get())
}

/// The same for a sum of lengths in millimetres.
pub(super) fn long_of(millimetres: f64) -> String {
    let up = up_of(millimetres);
    format!("{}.{:02}", up / 100, up % 100)
}

/// The length as a fraction of inches with a denominator up to 32, if it is one.
pub(super) fn inches(length: Millimetres) -> Option<String> {
    let parts = length.get() / 25.4 * 32.0;
    if (parts - parts.round()).abs() > 1e-6 || parts < 1.0 {
        return None;
    }
    let (mut above, mut below) = (whole(parts.round()), 32);
    while above.is_multiple_of(2) && below > 1 {
        above /= 2;
        below /= 2;
    }
    let (inches, rest) = (above / below, above % below);
    Some(match (inches, rest) {
        (_, 0) => inches.to_string(),
        (0, _) => format!("{rest}/{below}"),
        _ => format!("{inches} {rest}/{below}"),
    })
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and lengths are positive"
)]
const fn whole(number: f64) -> u32 {
    number as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    fn length(millimetres: f64) -> Millimetres {
        Millimetres::new(millimetres).unwrap()
    }

    #[test]
    fn what_is_cut_is_rounded_up() {
        assert_eq!(centimetres_up(length(1900.0)), 190);
        assert_eq!(centimetres_up(length(1900.1)), 191);
        assert_eq!(long(length(1052.0)), "1.06");
    }

    #[test]
    fn set_screws_are_named_in_fractions_of_an_inch() {
        assert_eq!(inches(length(12.7)).as_deref(), Some("1/2"));
        assert_eq!(inches(length(9.525)).as_deref(), Some("3/8"));
        assert_eq!(inches(length(31.75)).as_deref(), Some("1 1/4"));
        assert_eq!(inches(length(50.8)).as_deref(), Some("2"));
        assert_eq!(inches(length(12.0)), None);
    }

    #[test]
    fn small_lengths_keep_a_tenth() {
        // As they are printed.
        let printed = |millimetres| mm(length(millimetres)).to_string();
        assert_eq!(printed(12.66), "12.7");
        assert_eq!(printed(125.66), "126");
        assert_eq!(printed(0.04), "0.04");
    }
}
