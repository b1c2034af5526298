//! Lengths for messages: rounded as a hand can measure them, in the units of the tyer.
//!
//! A length is one argument of a message. It stays a length until the message is looked up,
//! because only then is known whether it is to be heard ("15 centimetres") or seen ("15 cm").

use std::borrow::Cow;

use fluent::types::FluentType;
use fluent::{FluentArgs, FluentValue};

use super::Words;
use super::channel::Channel;
use super::fingers::fingers_of;
use super::labour::work_time_of;
use super::pins::pin_of;
use super::rounding::{Length, Rounding};
use crate::bench::{Millimetres, ThreadSystem};

/// A length that is measured: a tube, a cord's thickness, a distance of pins.
pub(super) const fn fine(length: Millimetres) -> Length {
    Length::new(length.get(), Rounding::Fine)
}

/// Across a circle of a board, to the next half of a millimetre up: nobody sets pins more closely.
pub(super) fn to_half(length: Millimetres) -> Length {
    Length::new((2.0 * length.get()).ceil() / 2.0, Rounding::Fine)
}

/// A place along a stick, in millimetres from its end; it may be none.
pub(super) const fn along(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Fine)
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

/// Like [`at_hand`], for what may be nothing.
pub(super) const fn at_hand_of(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::AtHand)
}

/// All cord that was ever used, in millimetres.
pub(super) const fn sum(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Sum)
}

/// Millimetres told to a whole centimetre.
pub(super) const fn centimetres(millimetres: f64) -> Length {
    Length::new(millimetres, Rounding::Centimetres)
}

/// What is sold in sizes: set screws by their length, keys by what they measure across the flats.
pub(super) const fn as_sold(length: Millimetres, system: ThreadSystem) -> Length {
    Length::new(length.get(), Rounding::AsSold(system))
}

impl FluentType for Length {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(*self)
    }

    /// Never reached by way of [`Words::text`], which tells lengths before anything else.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        format!("{} mm", self.millimetres()).into()
    }

    fn as_string_threadsafe(
        &self,
        _: &intl_memoizer::concurrent::IntlLangMemoizer,
    ) -> Cow<'static, str> {
        format!("{} mm", self.millimetres()).into()
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
    /// The arguments of a message with every length and every time of work told, the number with its
    /// unit, a whole word for the ear and a symbol for the eye; and every pin of one row of several with
    /// its row. None when there is nothing of these among them.
    pub(super) fn told<'args>(
        &self,
        args: &'args FluentArgs<'args>,
        channel: Channel,
    ) -> Option<FluentArgs<'args>> {
        let is_told = |value| {
            length_of(value).is_some()
                || pin_of(value).is_some()
                || fingers_of(value).is_some()
                || work_time_of(value).is_some()
        };
        if !args.iter().any(|(_, value)| is_told(value)) {
            return None;
        }
        let told = args.iter().map(|(name, value)| {
            let value = if let Some(length) = length_of(value) {
                self.length(length, channel).into()
            } else if let Some(pin) = pin_of(value) {
                self.pin(pin, channel).into()
            } else if let Some(fingers) = fingers_of(value) {
                self.of_fingers(fingers).into()
            } else if let Some(time) = work_time_of(value) {
                self.work_time(time, channel).into()
            } else {
                value.clone()
            };
            (name.to_owned(), value)
        });
        Some(told.collect())
    }

    fn length(&self, length: Length, channel: Channel) -> String {
        let (message, args) = length.told(self.units()).message();
        match channel {
            Channel::Ear => self.spoken(message, &args).into(),
            Channel::Eye => self.text(message.stem(), &args),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Units;
    use super::super::told_length::ToldLength;
    use super::*;

    fn length(millimetres: f64) -> Millimetres {
        Millimetres::new(millimetres).unwrap()
    }

    /// Every language tells these in its own way; here is what they are told from.
    fn told(length: Length, units: Units) -> String {
        match length.told(units) {
            ToldLength::Mm(number) => format!("{number} mm"),
            ToldLength::Cm(number) => format!("{number} cm"),
            ToldLength::M(number) => format!("{number} m"),
            ToldLength::In(number) => format!("{number} in"),
            ToldLength::Ft(number) => format!("{number} ft"),
            ToldLength::OnARule(rule) if rule.inches == 0 => {
                format!("{}/{} in", rule.above, rule.below)
            }
            ToldLength::OnARule(rule) => {
                format!("{} {}/{} in", rule.inches, rule.above, rule.below)
            }
            ToldLength::FeetAndInches(feet, inches) => format!("{feet} ft {inches} in"),
        }
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
        assert_eq!(inch(cut(length(304.8 * 6.01))), "6 ft 1 in");
        assert_eq!(inch(cut(length(304.8 * 6.0))), "6 ft");
        assert_eq!(inch(at_hand(length(304.8 * 6.2))), "6 ft 2 in");
        assert_eq!(inch(enough(length(25.4 * 1.501))), "1 17/32 in");
        assert_eq!(inch(bound(length(25.4 * 0.0589))), "3/64 in");
    }

    #[test]
    fn hands_measure_less_finely_the_longer_it_is() {
        let told = |mm| [Units::Metric, Units::Inch].map(|units| told(by_hand(mm), units));
        assert_eq!(told(9.2), ["9 mm", "3/8 in"]);
        assert_eq!(told(150.0), ["15 cm", "6 in"]);
        assert_eq!(told(400.0), ["40 cm", "16 in"]);
        assert_eq!(told(1234.0), ["1.23 m", "4 ft 1 in"]);
    }

    #[test]
    fn what_is_sold_in_sizes_is_told_in_its_own() {
        for units in Units::ALL {
            let inch = |mm| told(as_sold(length(mm), ThreadSystem::Inch), units);
            assert_eq!(inch(12.7), "1/2 in");
            assert_eq!(inch(31.75), "1 1/4 in");
            assert_eq!(inch(50.8), "2 in");
            assert_eq!(inch(25.4 * 5.0 / 64.0), "5/64 in");
            assert_eq!(inch(25.4 * 0.035), "0.035 in");
            let metric = |mm| told(as_sold(length(mm), ThreadSystem::Metric), units);
            assert_eq!(
                (metric(12.0), metric(2.5)),
                ("12 mm".into(), "2.5 mm".into())
            );
        }
    }

    #[test]
    fn small_lengths_keep_a_tenth() {
        let metric = |mm| told(fine(length(mm)), Units::Metric);
        assert_eq!(metric(12.66), "12.7 mm");
        assert_eq!(metric(125.66), "126 mm");
        assert_eq!(metric(0.04), "0.04 mm");
        let inch = |mm| told(fine(length(mm)), Units::Inch);
        assert_eq!(inch(4.0), "5/32 in");
        assert_eq!(inch(40.0), "1 9/16 in");
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
        assert_eq!(heard(12.7, Units::Inch), ["half an inch", "1/2 in"]);
        assert_eq!(
            heard(44.45, Units::Inch),
            ["1 and three quarter inches", "1 3/4 in"]
        );
        assert_eq!(heard(1524.0, Units::Inch), ["5 feet", "5 ft"]);
        assert_eq!(heard(1600.0, Units::Inch), ["5 feet 3 inches", "5 ft 3 in"]);
    }

    #[test]
    fn inches_are_told_as_at_the_bench_in_every_language() {
        let lengths = [12.7, 44.45, 63.5, 1600.0].map(by_hand);
        let told = |tag: &str, channel| {
            let mut words = Words::load(Some(tag)).unwrap();
            words.set_units(Units::Inch);
            lengths.map(|length| words.length(length, channel))
        };
        for (tag, heard, seen) in [
            (
                "de",
                [
                    "einhalb Zoll",
                    "eindreiviertel Zoll",
                    "2 einhalb Zoll",
                    "5 Fuß und 3 Zoll",
                ],
                ["1/2″", "1 3/4″", "2 1/2″", "5′ 3″"],
            ),
            (
                "es",
                [
                    "media pulgada",
                    "una pulgada y tres cuartos",
                    "2 pulgadas y media",
                    "5 pies y 3 pulgadas",
                ],
                ["1/2 in", "1 3/4 in", "2 1/2 in", "5 ft 3 in"],
            ),
            (
                "fr",
                [
                    "un demi-pouce",
                    "1 pouce trois quarts",
                    "2 pouces et demi",
                    "5 pieds 3 pouces",
                ],
                [
                    "1/2 pouce",
                    "1 3/4 pouce",
                    "2 1/2 pouces",
                    "5 pieds 3 pouces",
                ],
            ),
        ] {
            assert_eq!(told(tag, Channel::Ear), heard, "{tag}");
            assert_eq!(told(tag, Channel::Eye), seen, "{tag}");
        }
    }
}
