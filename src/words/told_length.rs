//! A length once it is rounded: a number with its unit, for the ear and for the eye.

use fluent::{FluentArgs, fluent_args};

use super::inches::OnARule;
use super::spoken_messages::SpokenMessage;

/// What a length is told as.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum ToldLength {
    Mm(f64),
    Cm(f64),
    M(f64),
    In(f64),
    Ft(f64),
    /// Whole inches and a fraction.
    OnARule(OnARule),
    FeetAndInches(u32, u32),
}

impl ToldLength {
    /// As it stands on a rule; whole inches without a fraction.
    pub(super) fn rule(rule: OnARule) -> Self {
        if rule.above == 0 {
            Self::In(f64::from(rule.inches))
        } else {
            Self::OnARule(rule)
        }
    }

    pub(super) fn feet(inches: u32) -> Self {
        match (inches / 12, inches % 12) {
            (feet, 0) => Self::Ft(f64::from(feet)),
            (feet, inches) => Self::FeetAndInches(feet, inches),
        }
    }

    /// The message for it, and what goes in.
    pub(super) fn message(self) -> (SpokenMessage, FluentArgs<'static>) {
        let of = |message, number: f64| (message, fluent_args! { "number" => number });
        match self {
            Self::Mm(number) => of(SpokenMessage::LengthMmSay, number),
            Self::Cm(number) => of(SpokenMessage::LengthCmSay, number),
            Self::M(number) => of(SpokenMessage::LengthMSay, number),
            Self::In(number) => of(SpokenMessage::LengthInSay, number),
            Self::Ft(number) => of(SpokenMessage::LengthFtSay, number),
            Self::OnARule(OnARule {
                inches: 0,
                above,
                below,
            }) => (
                SpokenMessage::LengthFractionSay,
                fluent_args! { "above" => above, "below" => below },
            ),
            Self::OnARule(OnARule {
                inches,
                above,
                below,
            }) => (
                SpokenMessage::LengthInFractionSay,
                fluent_args! { "inches" => inches, "above" => above, "below" => below },
            ),
            Self::FeetAndInches(feet, inches) => (
                SpokenMessage::LengthFtInSay,
                fluent_args! { "feet" => feet, "inches" => inches },
            ),
        }
    }

    /// A number of centimetres, in metres from one metre up.
    pub(super) fn metres(centimetres: f64) -> Self {
        if centimetres < 100.0 {
            Self::Cm(centimetres)
        } else {
            Self::M(centimetres / 100.0)
        }
    }
}
