//! The parts of the form of the start screen.

use iced::widget::Id;

/// A part of the form that can have the focus, in the order of the Tab key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StartField {
    /// A text: leads.
    Leads,
    /// A text: bights.
    Bights,
    /// A text: passes.
    Passes,
    /// The button that begins the tie.
    Begin,
    /// A text: weave.
    Weave,
    /// Right or left.
    Hand,
    /// Right or left.
    Side,
    /// A text: bights nested at each rim.
    Nested,
    /// A text: the top row in which the first cord lands.
    Lands,
    /// On a tube, or round the hand.
    RoundHand,
}

/// What the knot of the form is tied on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum TiedOn {
    /// A tube with pins.
    #[default]
    Tube,
    /// The tyer's own hand.
    Hand,
}

impl TiedOn {
    pub(super) const fn other(self) -> Self {
        match self {
            Self::Tube => Self::Hand,
            Self::Hand => Self::Tube,
        }
    }
}

impl StartField {
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Leads => "leads",
            Self::Bights => "bights",
            Self::Passes => "passes",
            Self::Weave => "weave",
            Self::Hand => "hand",
            Self::Side => "side",
            Self::Nested => "nested",
            Self::Lands => "lands",
            Self::RoundHand => "round-hand",
            Self::Begin => "begin",
        }
    }
}

/// In the order of the Tab key.
pub(super) const FIELDS: [StartField; 10] = [
    StartField::Leads,
    StartField::Bights,
    StartField::Passes,
    StartField::Begin,
    StartField::Weave,
    StartField::Hand,
    StartField::Side,
    StartField::Nested,
    StartField::Lands,
    StartField::RoundHand,
];

/// The widget that the form is scrolled in.
pub(super) const FORM: &str = "start-form";

/// The widget of a field.
pub(super) fn id(field: StartField) -> Id {
    Id::new(field.name())
}

/// Which of the texts a field is; none for one that takes no text.
pub(super) fn text_slot(field: StartField) -> Option<usize> {
    match field {
        StartField::Leads => Some(0),
        StartField::Bights => Some(1),
        StartField::Passes => Some(2),
        StartField::Weave => Some(3),
        StartField::Nested => Some(4),
        StartField::Lands => Some(5),
        StartField::Hand | StartField::Side | StartField::RoundHand | StartField::Begin => None,
    }
}
