//! The parts of the plan screen's form.

use iced::widget::Id;

use crate::bench::BenchError;
use crate::guide::{AskError, Asking};

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

pub(super) const fn asking(field: PlanField, is_girth: bool) -> Asking {
    match field {
        PlanField::Object if is_girth => Asking::Girth,
        PlanField::Object => Asking::Object,
        PlanField::Cover => Asking::Cover,
        PlanField::Cord => Asking::Cord,
        PlanField::Tube => Asking::Tube,
        PlanField::Rows => Asking::Rows,
        PlanField::Pin => Asking::Pin,
        PlanField::Thread => Asking::Thread,
        PlanField::Have => Asking::Have,
    }
}

/// The field beside which a sentence stands.
pub(super) const fn place_of(error: &AskError) -> PlanField {
    match error {
        AskError::Length { asking, .. }
        | AskError::Missing(asking)
        | AskError::WithoutTube(asking) => match asking {
            Asking::Object | Asking::Girth => PlanField::Object,
            Asking::Cover => PlanField::Cover,
            Asking::Cord => PlanField::Cord,
            Asking::Tube | Asking::Wall => PlanField::Tube,
            Asking::Rows => PlanField::Rows,
            Asking::Pin => PlanField::Pin,
            Asking::Thread => PlanField::Thread,
            Asking::Have => PlanField::Have,
        },
        AskError::ObjectTwice => PlanField::Object,
        AskError::CordUnknown { .. } | AskError::CordUnmeasured { .. } => PlanField::Cord,
        AskError::TubeUnknown { .. } | AskError::WallTooThick { .. } => PlanField::Tube,
        AskError::Bench(BenchError::UnknownThread { .. }) => PlanField::Thread,
        AskError::HolesTooClose { .. } | AskError::Bench(_) => PlanField::Rows,
    }
}
