//! Lengths for messages: rounded as a hand can measure them, in the units of the tyer.
//!
//! A length is one argument of a message. It stays a length until the message is looked up,
//! because only then is known whether it is to be heard ("15 centimetres") or seen ("15 cm").

use std::borrow::Cow;

use fluent::types::FluentType;
use fluent::{FluentArgs, FluentValue, fluent_args};

use super::channel::Channel;
use super::spoken_messages::SpokenMessage;
use super::{Units, Words};
use crate::bench::Millimetres;

const MM_PER_INCH: f64 = 25.4;
/// Three feet and more are told in feet.
const INCHES_IN_FEET: f64 = 36.0;

/// What is a whole number but for the last bits of a float is that number.
const BIT: f64 = 1e-6;

/// The unit a length is told in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, strum::Display)]
#[strum(serialize_all = "lowercase")]
enum Unit {
    Mm,
    Cm,
    M,
    In,
    Ft,
}

/// How a length is rounded, and which units it is told in.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Rounding {
    /// To a tenth of a millimetre, above 100 mm to a whole one, or to a hundredth of an inch.
    Fine,
    /// Like [`Rounding::Fine`], but up: what is named as enough must be.
    Enough,
    /// Like [`Rounding::Fine`], but down: what is named as a bound from above must be one.
    Bound,
    /// As a person shows it between the hands.
    ByHand,
    /// To centimetres, up: for what is cut.
    Cut,
    /// To centimetres, down: for what there is.
    AtHand,
    /// A sum of many cords, to a tenth of a metre.
    Sum,
    /// To a whole centimetre.
    Centimetres,
}

/// A length as a message is told it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Length {
    millimetres: f64,
    rounding: Rounding,
}

/// A length that is measured: a tube, a cord's thickness, a distance of pins.
pub(super) const fn fine(length: Millimetres) -> Length {
    Length::new(length.get(), Rounding::Fine)
}

/// A length that is named as enough, rounded up.
pub(super) const fn enough(length: Millimetres) -> Length {
    Length::new(length.get(), Rounding::Enough)
}

/// A length that is named as the least that is too much, rounded down.
pub(super) const fn bound(length: Millimetres) -> Length {
    Length::new(length.get(), Rounding::Bound)
}

/// Millimetres as a person shows them between the hands.
pub(super) const fn by_hand(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::ByHand)
}

/// A length that is cut, rounded up so that it is enough.
pub(super) const fn cut(length: Millimetres) -> Length {
    cut_of(length.get())
}

/// Like [`cut`], for a sum of lengths in millimetres.
pub(super) const fn cut_of(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Cut)
}

/// A length that there is to cut from, rounded down so that it is not less.
pub(super) const fn at_hand(length: Millimetres) -> Length {
    Length::new(length.get(), Rounding::AtHand)
}

/// All cord that was ever used, in millimetres.
pub(super) const fn sum(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Sum)
}

/// Millimetres told to a whole centimetre.
pub(super) const fn centimetres(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Centimetres)
}

impl Length {
    const fn new(millimetres: f64, rounding: Rounding) -> Self {
        Self {
            millimetres,
            rounding,
        }
    }

    /// The number that is told and the unit it is told in.
    fn measured(self, units: Units) -> (f64, Unit) {
        match units {
            Units::Metric => self.metric(),
            Units::Inch => self.inches(),
        }
    }

    fn metric(self) -> (f64, Unit) {
        let mm = self.millimetres;
        match self.rounding {
            // Too thin for a tenth, and nothing is 0 mm thick.
            Rounding::Fine if mm < 0.1 => (nearest(mm, 100.0), Unit::Mm),
            Rounding::Fine if mm < 100.0 => (nearest(mm, 10.0), Unit::Mm),
            Rounding::Fine => (mm.round(), Unit::Mm),
            Rounding::Enough => (up(mm, 10.0), Unit::Mm),
            Rounding::Bound if mm < 1.0 => (down(mm, 100.0), Unit::Mm),
            Rounding::Bound => (down(mm, 10.0), Unit::Mm),
            Rounding::ByHand if mm < 100.0 => (mm.round(), Unit::Mm),
            Rounding::ByHand if mm < 1000.0 => ((mm / 10.0).round(), Unit::Cm),
            Rounding::ByHand => (nearest(mm / 1000.0, 100.0), Unit::M),
            Rounding::Cut => in_metres(up(mm / 10.0, 1.0)),
            Rounding::AtHand => in_metres(down(mm / 10.0, 1.0)),
            Rounding::Sum => (nearest(mm / 1000.0, 10.0), Unit::M),
            Rounding::Centimetres => ((mm / 10.0).round(), Unit::Cm),
        }
    }

    fn inches(self) -> (f64, Unit) {
        let inches = self.millimetres / MM_PER_INCH;
        let fine = if inches < 0.1 { 1000.0 } else { 100.0 };
        let feet = inches >= INCHES_IN_FEET;
        match self.rounding {
            Rounding::Fine => (nearest(inches, fine), Unit::In),
            Rounding::Enough => (up(inches, fine), Unit::In),
            Rounding::Bound => (down(inches, fine), Unit::In),
            Rounding::ByHand if inches < 1.0 => (nearest(inches, 100.0), Unit::In),
            Rounding::ByHand if inches < 10.0 => (nearest(inches, 10.0), Unit::In),
            Rounding::ByHand if feet => (nearest(inches / 12.0, 10.0), Unit::Ft),
            Rounding::Cut if feet => (up(inches / 12.0, 10.0), Unit::Ft),
            Rounding::AtHand if feet => (down(inches / 12.0, 10.0), Unit::Ft),
            Rounding::Cut => (up(inches, 1.0), Unit::In),
            Rounding::AtHand => (down(inches, 1.0), Unit::In),
            Rounding::Sum => (nearest(inches / 12.0, 10.0), Unit::Ft),
            Rounding::ByHand | Rounding::Centimetres => (inches.round(), Unit::In),
        }
    }
}

impl FluentType for Length {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(*self)
    }

    /// Never reached by way of [`Words::text`], which tells lengths before anything else.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        let (number, unit) = self.measured(Units::default());
        format!("{number} {unit}").into()
    }

    fn as_string_threadsafe(
        &self,
        _: &intl_memoizer::concurrent::IntlLangMemoizer,
    ) -> Cow<'static, str> {
        let (number, unit) = self.measured(Units::default());
        format!("{number} {unit}").into()
    }
}

impl From<Length> for FluentValue<'_> {
    fn from(length: Length) -> Self {
        Self::Custom(Box::new(length))
    }
}

/// The length that an argument is, if it is one.
fn length_of(value: &FluentValue) -> Option<Length> {
    match value {
        FluentValue::Custom(custom) => (**custom).as_any().downcast_ref().copied(),
        _ => None,
    }
}

impl Words {
    /// The arguments of a message with every length told: its number with its unit, a whole word
    /// for the ear and a symbol for the eye. None when there is no length among them.
    pub(super) fn told_lengths<'args>(
        &self,
        args: &'args FluentArgs<'args>,
        channel: Channel,
    ) -> Option<FluentArgs<'args>> {
        if !args.iter().any(|(_, value)| length_of(value).is_some()) {
            return None;
        }
        let told = args.iter().map(|(name, value)| {
            let value = match length_of(value) {
                Some(length) => self.length(length, channel).into(),
                None => value.clone(),
            };
            (name.to_owned(), value)
        });
        Some(told.collect())
    }

    fn length(&self, length: Length, channel: Channel) -> String {
        let (number, unit) = length.measured(self.units());
        let message = match unit {
            Unit::Mm => SpokenMessage::LengthMmSay,
            Unit::Cm => SpokenMessage::LengthCmSay,
            Unit::M => SpokenMessage::LengthMSay,
            Unit::In => SpokenMessage::LengthInSay,
            Unit::Ft => SpokenMessage::LengthFtSay,
        };
        let args = fluent_args! { "number" => number };
        match channel {
            Channel::Ear => self.spoken(message, &args).into(),
            Channel::Eye => self.text(message.stem(), &args),
        }
    }
}

/// A number of centimetres, in metres from one metre up.
fn in_metres(centimetres: f64) -> (f64, Unit) {
    if centimetres < 100.0 {
        (centimetres, Unit::Cm)
    } else {
        (centimetres / 100.0, Unit::M)
    }
}

fn nearest(number: f64, parts: f64) -> f64 {
    (number * parts).round() / parts
}

fn up(number: f64, parts: f64) -> f64 {
    (number * parts - BIT).ceil() / parts
}

fn down(number: f64, parts: f64) -> f64 {
    (number * parts + BIT).floor() / parts
}

/// The length as a fraction of inches with a denominator up to 32, if it is one.
pub(super) fn inches(length: Millimetres) -> Option<String> {
    let parts = length.get() / MM_PER_INCH * 32.0;
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
pub(super) const fn whole(number: f64) -> u32 {
    number as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    fn length(millimetres: f64) -> Millimetres {
        Millimetres::new(millimetres).unwrap()
    }

    /// Every language tells these in its own way; here is what they are told from.
    fn told(length: Length, units: Units) -> String {
        let (number, unit) = length.measured(units);
        format!("{number} {unit}")
    }

    #[test]
    fn what_is_cut_is_rounded_up_and_what_there_is_down() {
        let metric = |length| told(length, Units::Metric);
        assert_eq!(metric(cut(length(1900.0))), "1.9 m");
        assert_eq!(metric(cut(length(1900.1))), "1.91 m");
        assert_eq!(metric(cut(length(1052.0))), "1.06 m");
        assert_eq!(metric(cut(length(991.0))), "1 m");
        assert_eq!(metric(cut(length(985.0))), "99 cm");
        assert_eq!(metric(at_hand(length(1058.0))), "1.05 m");
        assert_eq!(metric(enough(length(40.01))), "40.1 mm");
        assert_eq!(metric(bound(length(4.19))), "4.1 mm");
        assert_eq!(metric(bound(length(0.119))), "0.11 mm");
        let inch = |length| told(length, Units::Inch);
        assert_eq!(inch(cut(length(25.4 * 7.1))), "8 in");
        assert_eq!(inch(cut(length(304.8 * 6.01))), "6.1 ft");
        assert_eq!(inch(at_hand(length(304.8 * 6.09))), "6 ft");
        assert_eq!(inch(enough(length(25.4 * 1.501))), "1.51 in");
        assert_eq!(inch(bound(length(25.4 * 0.0589))), "0.058 in");
    }

    #[test]
    fn hands_measure_less_finely_the_longer_it_is() {
        let told = |mm| [Units::Metric, Units::Inch].map(|units| told(by_hand(mm), units));
        assert_eq!(told(9.2), ["9 mm", "0.36 in"]);
        assert_eq!(told(150.0), ["15 cm", "5.9 in"]);
        assert_eq!(told(400.0), ["40 cm", "16 in"]);
        assert_eq!(told(1234.0), ["1.23 m", "4 ft"]);
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
        let metric = |mm| told(fine(length(mm)), Units::Metric);
        assert_eq!(metric(12.66), "12.7 mm");
        assert_eq!(metric(125.66), "126 mm");
        assert_eq!(metric(0.04), "0.04 mm");
        let inch = |mm| told(fine(length(mm)), Units::Inch);
        assert_eq!(inch(4.0), "0.16 in");
        assert_eq!(inch(0.04), "0.002 in");
    }

    #[test]
    fn a_length_is_heard_in_words_and_seen_with_its_symbol() {
        let mut words = Words::english();
        let mut heard = |mm: f64, units| {
            words.set_units(units);
            [Channel::Ear, Channel::Eye].map(|channel| words.length(by_hand(mm), channel))
        };
        assert_eq!(heard(1.0, Units::Metric), ["1 millimetre", "1 mm"]);
        assert_eq!(heard(150.0, Units::Metric), ["15 centimetres", "15 cm"]);
        assert_eq!(heard(1200.0, Units::Metric), ["1.2 metres", "1.2 m"]);
        assert_eq!(heard(25.4, Units::Inch), ["1 inch", "1 in"]);
        assert_eq!(heard(12.7, Units::Inch), ["0.5 inches", "0.5 in"]);
        assert_eq!(heard(1524.0, Units::Inch), ["5 feet", "5 ft"]);
    }
}
