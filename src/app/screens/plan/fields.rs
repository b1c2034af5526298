//! The parts of the plan screen's form.

use iced::widget::Id;

use crate::bench::BenchError;
use crate::guide::{AskError, Asking};

/// A part of the form, in the order of the Tab key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
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
pub(super) const FIELDS: [Field; 8] = [
    Field::Object,
    Field::Cover,
    Field::Cord,
    Field::Have,
    Field::Tube,
    Field::Rows,
    Field::Pin,
    Field::Thread,
];

/// The widget of a field.
pub(super) fn id(field: Field) -> Id {
    Id::new(match field {
        Field::Object => "plan-object",
        Field::Cover => "plan-cover",
        Field::Cord => "plan-cord",
        Field::Tube => "plan-tube",
        Field::Rows => "plan-rows",
        Field::Pin => "plan-pin",
        Field::Thread => "plan-thread",
        Field::Have => "plan-have",
    })
}

pub(super) const fn slot(field: Field) -> usize {
    field as usize
}

pub(super) const fn asking(field: Field, is_girth: bool) -> Asking {
    match field {
        Field::Object if is_girth => Asking::Girth,
        Field::Object => Asking::Object,
        Field::Cover => Asking::Cover,
        Field::Cord => Asking::Cord,
        Field::Tube => Asking::Tube,
        Field::Rows => Asking::Rows,
        Field::Pin => Asking::Pin,
        Field::Thread => Asking::Thread,
        Field::Have => Asking::Have,
    }
}

/// The field beside which a sentence stands.
pub(super) const fn place_of(error: &AskError) -> Field {
    match error {
        AskError::Length { asking, .. }
        | AskError::Missing(asking)
        | AskError::WithoutTube(asking) => match asking {
            Asking::Object | Asking::Girth => Field::Object,
            Asking::Cover => Field::Cover,
            Asking::Cord => Field::Cord,
            Asking::Tube | Asking::Wall => Field::Tube,
            Asking::Rows => Field::Rows,
            Asking::Pin => Field::Pin,
            Asking::Thread => Field::Thread,
            Asking::Have => Field::Have,
        },
        AskError::ObjectTwice => Field::Object,
        AskError::CordUnknown { .. } | AskError::CordUnmeasured { .. } => Field::Cord,
        AskError::TubeUnknown { .. } | AskError::WallTooThick { .. } => Field::Tube,
        AskError::Bench(BenchError::UnknownThread { .. }) => Field::Thread,
        AskError::HolesTooClose { .. } | AskError::Bench(_) => Field::Rows,
    }
}
