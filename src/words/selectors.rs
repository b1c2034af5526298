//! Selectors: how a value of the domain is named to a message.

use crate::bench::{Counted, DrawnUp, FitSection, ThreadSystem, Tool};
use crate::guide::{Caution, FairWay, Landing, LegShare, LessonState, LiftTask, SetupField};
use crate::knot::{Hand, Heading, Quantity, Rim, Side};
use crate::shelf::TieStatus;

/// The name a message selects a value by.
pub(super) trait Selector {
    fn selector(self) -> &'static str;
}

impl Selector for bool {
    fn selector(self) -> &'static str {
        if self { "yes" } else { "no" }
    }
}

/// These are selected by the names of their variants.
macro_rules! by_variant_name {
    ($($name:ty),* $(,)?) => {
        $(
            impl Selector for $name {
                fn selector(self) -> &'static str {
                    self.into()
                }
            }
        )*
    };
}
by_variant_name!(
    Caution,
    Counted,
    DrawnUp,
    FairWay,
    FitSection,
    Hand,
    Heading,
    Landing,
    LegShare,
    LessonState,
    LiftTask,
    Quantity,
    Rim,
    SetupField,
    Side,
    ThreadSystem,
    TieStatus,
    Tool,
);
