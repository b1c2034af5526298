//! The ways that lead on from the start screen, each with its key.

use super::{Action, State, TiedOn};
use crate::knot::{Hand, Side};

/// Where the start screen can lead, besides to a tie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// The course for beginners.
    Course,
    /// A knot for an object.
    Plan,
    /// The form, for a knot that the tyer knows.
    Form,
    /// A knot that somebody brings, to be counted.
    Count,
    /// Several pieces at once.
    Orders,
    /// The ties that are kept.
    Shelf,
    /// The words of the trade.
    Glossary,
    /// The settings.
    Settings,
}

impl Way {
    /// All of them, as they stand.
    pub(super) const ALL: [Self; 8] = [
        Self::Course,
        Self::Plan,
        Self::Form,
        Self::Shelf,
        Self::Glossary,
        Self::Settings,
        Self::Count,
        Self::Orders,
    ];

    /// Its key.
    pub(super) const fn key(self) -> &'static str {
        match self {
            Self::Course => "c",
            Self::Plan => "p",
            Self::Form => "Tab",
            Self::Count => "k",
            Self::Orders => "o",
            Self::Shelf => "s",
            Self::Glossary => "g",
            Self::Settings => "t",
        }
    }

    /// The message that names it.
    pub(super) const fn label(self) -> &'static str {
        match self {
            Self::Course => "way-course",
            Self::Plan => "way-plan",
            Self::Form => "way-form",
            Self::Count => "way-count",
            Self::Orders => "way-orders",
            Self::Shelf => "way-shelf",
            Self::Glossary => "way-glossary",
            Self::Settings => "way-settings",
        }
    }

    /// The way of a key.
    pub(super) fn of_key(key: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|way| way.key().eq_ignore_ascii_case(key))
    }
}

impl State {
    pub(super) fn go(&mut self, way: Way) -> Action {
        match way {
            Way::Course => Action::Course,
            Way::Plan => Action::Plan(self.hand, self.side),
            Way::Form => {
                self.focus = None;
                self.move_focus(1)
            }
            Way::Count => Action::Count,
            Way::Orders => Action::Orders,
            Way::Shelf => Action::Shelf,
            Way::Glossary => Action::Glossary,
            Way::Settings => Action::Settings,
        }
    }
}

/// What was typed into the form, put by while another screen is up.
#[derive(PartialEq, Eq)]
pub(super) struct Typed {
    pub texts: [String; 6],
    pub hand: Hand,
    pub side: Side,
    pub tied_on: TiedOn,
}

impl Default for Typed {
    fn default() -> Self {
        Self {
            // No weave: over one, under one, begun so that it takes the fewest tucks.
            texts: ["5", "7", "1", "", "", ""].map(str::to_owned),
            hand: Hand::default(),
            side: Side::default(),
            tied_on: TiedOn::default(),
        }
    }
}
