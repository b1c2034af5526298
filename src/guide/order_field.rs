//! What can be said of an order and of its pieces.

use super::SetupField;

/// What can be said of a piece.
///
/// ```
/// use marlinspeak::guide::{PieceField, SetupField};
///
/// assert_eq!(PieceField::named("cord"), Some(PieceField::Setup(SetupField::Cord)));
/// assert_eq!(PieceField::named("colour"), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum PieceField {
    /// What it is called.
    Name,
    /// How many of it.
    Count,
    /// Leads.
    Leads,
    /// Bights.
    Bights,
    /// Bights nested at each rim; a plain knot when it is not said.
    Nested,
    /// The top row in which the first cord lands.
    Lands,
    /// Passes; one when they are not said.
    Passes,
    /// The weave; the one with the fewest tucks when it is not said.
    Weave,
    /// The side of the cord already there that a follower keeps to.
    Side,
    /// Which way round the tube the tyer works.
    Hand,
    /// The order in which strands and passes are laid.
    Order,
    /// What the cords are called, with commas between.
    Cords,
    /// What is said of object, cord and tube.
    Setup(SetupField),
    /// What stays bare before it on a stick.
    Gap,
}

impl PieceField {
    /// All of them, as they are asked for.
    pub const ALL: [Self; 29] = [
        Self::Name,
        Self::Count,
        Self::Leads,
        Self::Bights,
        Self::Nested,
        Self::Lands,
        Self::Passes,
        Self::Weave,
        Self::Side,
        Self::Hand,
        Self::Order,
        Self::Cords,
        Self::Setup(SetupField::Object),
        Self::Setup(SetupField::Girth),
        Self::Setup(SetupField::Ball),
        Self::Setup(SetupField::Mat),
        Self::Setup(SetupField::InPlace),
        Self::Setup(SetupField::Cover),
        Self::Setup(SetupField::Cord),
        Self::Setup(SetupField::Firm),
        Self::Setup(SetupField::Give),
        Self::Setup(SetupField::Tube),
        Self::Setup(SetupField::Rows),
        Self::Setup(SetupField::Pin),
        Self::Setup(SetupField::Thread),
        Self::Setup(SetupField::Wall),
        Self::Setup(SetupField::RingWidth),
        Self::Setup(SetupField::TubeLength),
        Self::Gap,
    ];

    /// Its name in documents. These must stay as they are.
    pub fn name(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Count => "count",
            Self::Leads => "leads",
            Self::Bights => "bights",
            Self::Nested => "nested",
            Self::Lands => "lands",
            Self::Passes => "passes",
            Self::Weave => "weave",
            Self::Side => "side",
            Self::Hand => "hand",
            Self::Order => "order",
            Self::Cords => "cords",
            Self::Setup(SetupField::Give) => "cord_give",
            Self::Setup(SetupField::InPlace) => "in_place",
            Self::Setup(SetupField::RingWidth) => "ring_width",
            Self::Setup(SetupField::TubeLength) => "tube_length",
            Self::Setup(field) => field.name(),
            Self::Gap => "gap",
        }
    }

    /// The field of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|field| field.name() == name)
    }

    /// Whether it is yes or no.
    pub const fn is_choice(self) -> bool {
        matches!(self, Self::Setup(SetupField::InPlace))
    }

    /// Whether it is a whole number.
    pub const fn is_count(self) -> bool {
        matches!(
            self,
            Self::Count | Self::Leads | Self::Bights | Self::Nested | Self::Lands | Self::Passes
        )
    }
}

/// What is said of an order itself.
///
/// ```
/// use marlinspeak::guide::OrderField;
///
/// assert_eq!(<&str>::from(OrderField::Spool), "spool");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum OrderField {
    /// What it is called.
    Name,
    /// The stick that all sit on.
    Stick,
    /// Cord on a spool.
    Spool,
    /// Per cent of waste.
    Waste,
}

/// A field that is typed into.
///
/// ```
/// use marlinspeak::guide::{OrderEntry, OrderField, PieceField};
///
/// // How many of the second piece is another field than how long the stick is.
/// let count = OrderEntry::Piece(2, PieceField::Count);
/// assert_ne!(count, OrderEntry::Of(OrderField::Stick));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OrderEntry {
    /// One of the order.
    Of(OrderField),
    /// One of a piece.
    Piece(u16, PieceField),
}

#[cfg(test)]
mod tests {
    use super::*;
    use strum::VariantArray as _;

    #[test]
    fn every_field_of_a_setup_but_the_cord_at_hand_can_be_said_of_a_piece() {
        for field in SetupField::VARIANTS {
            let is_asked = PieceField::ALL.contains(&PieceField::Setup(*field));
            assert_eq!(is_asked, *field != SetupField::Have, "{field:?}");
        }
        for field in PieceField::ALL {
            assert_eq!(PieceField::named(field.name()), Some(field));
        }
    }
}
