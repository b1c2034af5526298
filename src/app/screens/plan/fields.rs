//! The fields of the plan screen's form.

use iced::widget::Id;

use crate::guide::{SetupError, SetupField};
use crate::words::Units;

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanField {
    /// What is covered.
    Covers,
    /// Whether the knot is slid on.
    Slides,
    /// Something about object, cord or tube.
    Setup(SetupField),
    /// Leads and bights of a knot that the tyer has in mind.
    Knot,
}

impl From<SetupField> for PlanField {
    fn from(field: SetupField) -> Self {
        Self::Setup(field)
    }
}

/// All fields in the order of the Tab key. There is one for the object, which takes its diameter or
/// its girth, the ends of a taper, or the size of a ball or a mat.
pub(super) const FIELDS: [PlanField; 13] = [
    PlanField::Covers,
    PlanField::Slides,
    PlanField::Setup(SetupField::Object),
    PlanField::Setup(SetupField::Cover),
    PlanField::Setup(SetupField::Cord),
    PlanField::Knot,
    PlanField::Setup(SetupField::Have),
    PlanField::Setup(SetupField::Tube),
    PlanField::Setup(SetupField::Rows),
    PlanField::Setup(SetupField::Pin),
    PlanField::Setup(SetupField::Thread),
    PlanField::Setup(SetupField::RingWidth),
    PlanField::Setup(SetupField::TubeLength),
];

/// The ends of a taper that may be typed, for a tyer who measures so.
pub(super) const fn example_of_ends(units: Units) -> &'static str {
    match units {
        Units::Metric => "32:26 mm",
        Units::Inch => "1 1/4:1 in",
    }
}

/// What may be typed for a knot that the tyer has in mind.
pub(super) const KNOT_EXAMPLE: &str = "5 7";

/// The widget that the form is scrolled in.
pub(super) const FORM: &str = "plan-form";

/// The widget of a field.
pub(super) fn id(field: impl Into<PlanField>) -> Id {
    match field.into() {
        PlanField::Setup(field) => Id::from(format!("plan-{}", field.name())),
        PlanField::Knot => Id::new("plan-knot"),
        // Nothing can be typed there, and no text has the focus then.
        PlanField::Covers => Id::new("plan-covers"),
        PlanField::Slides => Id::new("plan-slides"),
    }
}

/// The field beside which a sentence stands.
pub(super) const fn place_of(error: &SetupError) -> SetupField {
    match error.field() {
        SetupField::Girth | SetupField::Ball | SetupField::Mat | SetupField::InPlace => {
            SetupField::Object
        }
        SetupField::Firm | SetupField::Give => SetupField::Cord,
        SetupField::Wall => SetupField::Tube,
        field => field,
    }
}

/// Whether a field takes a length: a bare number in it is of millimetres.
pub(super) const fn takes_length(field: SetupField) -> bool {
    !matches!(field, SetupField::Rows | SetupField::Thread)
}

/// What may be typed into a field, for a tyer who measures so.
pub(super) const fn example(field: SetupField, units: Units) -> &'static str {
    let [metric, inch] = match field {
        SetupField::Girth => ["94 mm", "3 3/4 in"],
        SetupField::Ball => ["38 mm", "1 1/2 in"],
        SetupField::Mat => ["150 mm", "6 in"],
        SetupField::Cover => ["36 mm", "1 1/2 in"],
        SetupField::Cord => ["4 mm", "5/32 in"],
        SetupField::Have => ["2 m", "7 ft"],
        SetupField::Tube => ["45 mm", "1 3/4 in"],
        SetupField::Rows => ["14,20", "14,20"],
        SetupField::Pin => ["12 mm", "1/2 in"],
        SetupField::Thread => ["M4", "#8"],
        SetupField::RingWidth => ["20 mm", "3/4 in"],
        SetupField::TubeLength => ["30 cm", "12 in"],
        _ => ["30 mm", "1 1/4 in"],
    };
    match units {
        Units::Metric => metric,
        Units::Inch => inch,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{KnownKnot, Presets, SetupForm};

    #[test]
    fn what_stands_in_an_empty_field_as_an_example_can_be_typed() {
        for units in Units::ALL {
            let said = FIELDS.iter().filter_map(|field| match field {
                PlanField::Setup(field) => Some((*field, example(*field, units))),
                _ => None,
            });
            let form: SetupForm = said.collect();
            let question = form.question(&Presets::default()).unwrap();
            assert!(!question.answers().is_empty(), "{units:?}");
            assert!(KnownKnot::parse(KNOT_EXAMPLE).is_some());
            let girth = [(SetupField::Girth, example(SetupField::Girth, units))];
            let girth = SetupForm::from_iter(girth).ground().unwrap().unwrap();
            let across = question.object.diameter();
            let girth = girth.thickest();
            assert!((girth.get() - across.get()).abs() < 1.5, "{units:?}");
        }
    }
}
