//! The physical side of a tie: cord, object and tube; how wide the finished knot is, how much
//! cord it takes, what fits an object, and how the tube is pinned. Millimetres and grams.
//!
//! A finished ring knot is bands of cord that lie side by side, and other bands that pass between
//! them. How close they come depends on the cord ([`Give`]) and on the weave ([`Interlacing`]);
//! from that and from counts and diameters [`Braid`] makes a [`KnotShape`]: tight, or opened as
//! far as its [`WidthRange`] goes. How much it hides is measured on the [`Bands`] that are drawn. On
//! the tube the legs are longer than in the finished knot ([`OnTube`]); the difference is the
//! slack that fairing draws out. From these follow the [`Consumption`] of cord, the knots that
//! [`fit()`] an object, the [`Rig`] and the [`kit()`].
//!
//! What a knot lies on is a [`Ground`]: round, or a taper, a ball, a mat, on which the bands are as far apart
//! everywhere and the angle of the legs changes from rim to rim. It is tied on a tube, or where it stays:
//! by marks on [`Tapes`], or round the pins of a [`Board`].
//!
//! Estimates are corrected by what a tyer measured before ([`Correction`], [`learnt`]).

mod bands;
mod batch;
mod board;
mod braid;
mod consumption;
mod cord;
mod correction;
mod counts;
pub mod crimp;
mod error;
mod fit;
mod give;
mod ground;
mod ground_limits;
mod hex_key;
mod in_place;
mod job;
mod kit;
mod learning;
mod least_cover;
mod leg;
mod legs;
mod length;
mod meridian;
mod object;
mod on_ground;
mod on_tube;
mod order;
mod pace;
mod pin_length;
mod pinning;
mod range;
mod remaining;
mod rig;
mod rig_error;
mod shape;
mod shape_error;
mod tube;
mod tube_rules;

pub use bands::Bands;
pub use batch::{BatchPace, PieceTime};
pub use board::{Board, Circle, RimTape, Tapes};
pub use braid::Braid;
pub use consumption::{Allowances, Consumption, CordPiece, bight_turn};
pub use cord::{Cord, CordStandard, STANDARD_CORDS};
pub use correction::{Correction, Corrections};
pub use counts::{Counts, Interlacing};
pub use error::{BenchError, Counted};
pub use fit::{
    FAULT_STEP, FitAnswer, FitFilter, FitGroup, FitSection, FitWish, MOST_LEADS_AND_BIGHTS,
    MOST_PASSES, Misfit, OneKnot, WeaveChoice, fit, why_nothing_fits,
};
pub use give::{Firmness, Give};
pub use ground::Ground;
pub use hex_key::{HexKey, Thread, ThreadSystem};
pub use job::{Finish, RigJob};
pub use kit::{KitItem, PassCord, Tool, bag, kit};
pub use learning::{Sample, Scatter, TieKind, give_of_width, learnt, shared};
pub use least_cover::LeastCover;
pub use leg::LEAST_ANGLE;
pub use length::{LengthError, Millimetres};
pub use object::Object;
pub use on_tube::OnTube;
pub use order::{
    CordCut, CordToBuy, LONGEST_SPOOL, Spools, Stick, StickKnot, Waste, one_bag, to_buy,
};
pub use pace::{Prices, TyingPace};
pub use pin_length::{pin_holds, pin_needed, pin_to_buy};
pub use pinning::{Layout, RingPins, Strip, pin_chord, pin_gap, pinning};
pub use range::{DrawnUp, WidthRange};
pub use remaining::{LegsLeft, Reach};
pub use rig::{Rig, Start, rig};
pub use rig_error::{RigError, RoomCure};
pub use shape::KnotShape;
pub use shape_error::ShapeError;
pub use tube::Tube;
pub use tube_rules::RigCaution;
