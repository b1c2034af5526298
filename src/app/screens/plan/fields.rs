//! The fields of the plan screen's form.

use iced::widget::Id;

use crate::guide::{SetupError, SetupField};

/// The fields in the order of the Tab key. There is one for the object, which takes its diameter
/// or its girth.
pub(super) const FIELDS: [SetupField; 10] = [
    SetupField::Object,
    SetupField::Cover,
    SetupField::Cord,
    SetupField::Have,
    SetupField::Tube,
    SetupField::Rows,
    SetupField::Pin,
    SetupField::Thread,
    SetupField::RingWidth,
    SetupField::TubeLength,
];

/// The widget that the form is scrolled in.
pub(super) const FORM: &str = "plan-form";

/// The widget of a field.
pub(super) fn id(field: SetupField) -> Id {
    Id::from(format!("plan-{}", field.name()))
}

/// The field beside which a sentence stands.
pub(super) const fn place_of(error: &SetupError) -> SetupField {
    match error.field() {
        SetupField::Girth => SetupField::Object,
        SetupField::Firm | SetupField::Give => SetupField::Cord,
        SetupField::Wall => SetupField::Tube,
        field => field,
    }
}
