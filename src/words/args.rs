//! Selectors: how a value of the domain is named to a message.

use crate::guide::{Caution, Landing, LegShare};
use crate::knot::{Hand, Heading, Quantity, Rim, Side};

/// The name a message selects a value by.
pub(super) trait Selector {
    fn selector(self) -> &'static str;
}

impl Selector for bool {
    fn selector(self) -> &'static str {
        if self { "yes" } else { "no" }
    }
}

impl Selector for Heading {
    fn selector(self) -> &'static str {
        match self {
            Self::Rising => "rising",
            Self::Falling => "falling",
        }
    }
}

impl Selector for Rim {
    fn selector(self) -> &'static str {
        match self {
            Self::Bottom => "bottom",
            Self::Top => "top",
        }
    }
}

impl Selector for Hand {
    fn selector(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Left => "left",
        }
    }
}

impl Selector for Side {
    fn selector(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Left => "left",
        }
    }
}

impl Selector for Quantity {
    fn selector(self) -> &'static str {
        match self {
            Self::Leads => "leads",
            Self::Bights => "bights",
            Self::Passes => "passes",
        }
    }
}

impl Selector for Landing {
    fn selector(self) -> &'static str {
        match self {
            Self::OnTheWay => "on-the-way",
            Self::Round => "round",
            Self::Inside => "inside",
            Self::Outside => "outside",
            Self::HomeAndOn => "home-and-on",
            Self::HomeToWait => "home-to-wait",
            Self::HomeToEnd => "home-to-end",
        }
    }
}

impl Selector for LegShare {
    fn selector(self) -> &'static str {
        match self {
            Self::Little => "little",
            Self::Quarter => "quarter",
            Self::Third => "third",
            Self::Half => "half",
            Self::TwoThirds => "two-thirds",
            Self::ThreeQuarters => "three-quarters",
            Self::Most => "most",
        }
    }
}

impl Selector for Caution {
    fn selector(self) -> &'static str {
        match self {
            Self::Pins => "pins",
            Self::Blades => "blades",
            Self::Heat => "heat",
            Self::Load => "load",
            Self::Children => "children",
            Self::Rest => "rest",
        }
    }
}
