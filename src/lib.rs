//! A second pair of hands for people who tie ring knots (Turk's heads) on a pinned tube.

pub mod knot;
