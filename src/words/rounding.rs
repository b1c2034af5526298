//! How lengths are rounded before they are told: as a hand can measure them, and never to the wrong
//! side.

use super::Units;
use super::inches::{OnARule, Toward, whole};
use super::told_length::ToldLength;
use crate::bench::ThreadSystem;

const MM_PER_INCH: f64 = 25.4;
/// Three feet and more are told in feet.
const INCHES_IN_FEET: f64 = 36.0;
/// Thinner than any mark of a rule, in inches.
const NO_MARK: f64 = 1.0 / 64.0;

/// How a length is rounded, and which units it is told in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Rounding {
    /// To a tenth of a millimetre, above 100 mm to a whole one, or to a mark of a rule.
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
    /// A sum of many cords, to a tenth of a metre or a whole foot.
    Sum,
    /// To a whole centimetre.
    Centimetres,
    /// As it is sold, whatever the tyer's units: never rounded.
    AsSold(ThreadSystem),
}

/// A length as a message is told it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Length {
    millimetres: f64,
    rounding: Rounding,
}

impl Length {
    pub(super) const fn new(millimetres: f64, rounding: Rounding) -> Self {
        Self {
            millimetres,
            rounding,
        }
    }

    /// In millimetres.
    pub(super) const fn millimetres(self) -> f64 {
        self.millimetres
    }

    /// What it is told as.
    pub(super) fn told(self, units: Units) -> ToldLength {
        match (self.rounding, units) {
            (Rounding::AsSold(ThreadSystem::Metric), _) => {
                ToldLength::Mm(nearest(self.millimetres, 100.0))
            }
            (Rounding::AsSold(ThreadSystem::Inch), _) => self.as_sold(),
            (_, Units::Metric) => self.metric(),
            (_, Units::Inch) => self.inches(),
        }
    }

    fn as_sold(self) -> ToldLength {
        let inches = self.millimetres / MM_PER_INCH;
        OnARule::exact(inches).map_or(ToldLength::In(nearest(inches, 1000.0)), ToldLength::rule)
    }

    fn metric(self) -> ToldLength {
        let mm = self.millimetres;
        match self.rounding {
            // Too thin for a tenth, and nothing is 0 mm thick.
            Rounding::Fine if mm < 0.1 => ToldLength::Mm(nearest(mm, 100.0)),
            Rounding::Fine if mm < 100.0 => ToldLength::Mm(nearest(mm, 10.0)),
            Rounding::Enough => ToldLength::Mm(Toward::Up.of(mm * 10.0) / 10.0),
            Rounding::Bound if mm < 1.0 => ToldLength::Mm(Toward::Down.of(mm * 100.0) / 100.0),
            Rounding::Bound => ToldLength::Mm(Toward::Down.of(mm * 10.0) / 10.0),
            Rounding::ByHand if mm < 100.0 => ToldLength::Mm(mm.round()),
            Rounding::ByHand if mm < 1000.0 => ToldLength::Cm((mm / 10.0).round()),
            Rounding::ByHand => ToldLength::M(nearest(mm / 1000.0, 100.0)),
            Rounding::Cut => ToldLength::metres(Toward::Up.of(mm / 10.0)),
            Rounding::AtHand => ToldLength::metres(Toward::Down.of(mm / 10.0)),
            Rounding::Sum => ToldLength::M(nearest(mm / 1000.0, 10.0)),
            Rounding::Centimetres => ToldLength::Cm((mm / 10.0).round()),
            Rounding::Fine | Rounding::AsSold(_) => ToldLength::Mm(mm.round()),
        }
    }

    fn inches(self) -> ToldLength {
        let inches = self.millimetres / MM_PER_INCH;
        let toward = match self.rounding {
            Rounding::Enough | Rounding::Cut => Toward::Up,
            Rounding::Bound | Rounding::AtHand => Toward::Down,
            _ => Toward::Nearest,
        };
        let is_far = inches >= INCHES_IN_FEET;
        match self.rounding {
            Rounding::Fine | Rounding::Enough | Rounding::Bound if inches < NO_MARK => {
                ToldLength::In(toward.of(inches * 1000.0) / 1000.0)
            }
            Rounding::Fine | Rounding::Enough | Rounding::Bound | Rounding::AsSold(_) => {
                ToldLength::rule(OnARule::fine(inches, toward))
            }
            Rounding::ByHand if inches < 1.0 => ToldLength::rule(OnARule::to(inches, 8, toward)),
            Rounding::ByHand if inches < 10.0 => ToldLength::rule(OnARule::to(inches, 4, toward)),
            Rounding::Sum if is_far => ToldLength::Ft((inches / 12.0).round()),
            Rounding::ByHand | Rounding::Cut | Rounding::AtHand if is_far => {
                ToldLength::feet(whole(toward.of(inches)))
            }
            Rounding::ByHand
            | Rounding::Cut
            | Rounding::AtHand
            | Rounding::Centimetres
            | Rounding::Sum => ToldLength::In(toward.of(inches)),
        }
    }
}

fn nearest(number: f64, parts: f64) -> f64 {
    (number * parts).round() / parts
}
