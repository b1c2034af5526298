//! The parts of the plan screen's form.

use iced::widget::Id;

use crate::bench::BenchError;
use crate::guide::{SetupError, SetupField};

/// A part of the form, in the order of the Tab key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanField {
    /// Diameter or girth of the object.
    Object,
    /// Length to be covered.
    Cover,
    /// The cord.
    Cord,
    /// Cord at hand.
    Have,
    /// The tube.
    Tube,
    /// Rows of its rings.
    Rows,
    /// Length of its pins.
    Pin,
    /// Their thread.
    Thread,
}

/// All of them.
pub(super) const FIELDS: [PlanField; 8] = [
    PlanField::Object,
    PlanField::Cover,
    PlanField::Cord,
    PlanField::Have,
    PlanField::Tube,
    PlanField::Rows,
    PlanField::Pin,
    PlanField::Thread,
];

/// The widget of a field.
pub(super) fn id(field: PlanField) -> Id {
    Id::new(match field {
        PlanField::Object => "plan-object",
        PlanField::Cover => "plan-cover",
        PlanField::Cord => "plan-cord",
        PlanField::Tube => "plan-tube",
        PlanField::Rows => "plan-rows",
        PlanField::Pin => "plan-pin",
        PlanField::Thread => "plan-thread",
        PlanField::Have => "plan-have",
    })
}

pub(super) const fn slot(field: PlanField) -> usize {
    field as usize
}

pub(super) const fn asking(field: PlanField, is_girth: bool) -> SetupField {
    match field {
        PlanField::Object if is_girth => SetupField::Girth,
        PlanField::Object => SetupField::Object,
        PlanField::Cover => SetupField::Cover,
        PlanField::Cord => SetupField::Cord,
        PlanField::Tube => SetupField::Tube,
        PlanField::Rows => SetupField::Rows,
        PlanField::Pin => SetupField::Pin,
        PlanField::Thread => SetupField::Thread,
        PlanField::Have => SetupField::Have,
    }
}

/// The field beside which a sentence stands.
pub(super) const fn place_of(error: &SetupError) -> PlanField {
    match error {
        SetupError::Length { asking, .. }
        | SetupError::Missing(asking)
        | SetupError::WithoutTube(asking) => match asking {
            SetupField::Object | SetupField::Girth => PlanField::Object,
            SetupField::Cover => PlanField::Cover,
            SetupField::Cord | SetupField::Firm | SetupField::Give => PlanField::Cord,
            SetupField::Tube
            | SetupField::Wall
            | SetupField::RingWidth
            | SetupField::TubeLength => PlanField::Tube,
            SetupField::Rows => PlanField::Rows,
            SetupField::Pin => PlanField::Pin,
            SetupField::Thread => PlanField::Thread,
            SetupField::Have => PlanField::Have,
        },
        SetupError::ObjectTwice => PlanField::Object,
        SetupError::CordUnknown { .. }
        | SetupError::CordUnmeasured { .. }
        | SetupError::FirmUnknown { .. }
        | SetupError::GiveTwice
        | SetupError::Bench(BenchError::Give { .. }) => PlanField::Cord,
        SetupError::TubeUnknown { .. }
        | SetupError::WallTooThick { .. }
        | SetupError::WithoutRings => PlanField::Tube,
        SetupError::Bench(BenchError::UnknownThread { .. }) => PlanField::Thread,
        SetupError::HolesTooClose { .. } | SetupError::Bench(_) => PlanField::Rows,
    }
}
