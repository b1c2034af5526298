//! The physical side of a tie: cord, object and tube; how wide the finished knot is, how much
//! cord it takes, what fits an object, and how the tube is pinned. Millimetres and grams.
//!
//! A finished ring knot is what textile engineers call a biaxial tubular braid: [`Braid`]
//! turns counts and diameters into a [`Shape`], with the crimp of each leg from Peirce's
//! plain weave ([`crimp`]). On the tube the legs are longer than in the finished knot
//! ([`Laid`]); the difference is the slack that fairing draws out. From these follow the
//! [`Consumption`] of cord, the knots that [`fit()`] an object, the [`Rig`] and the [`kit()`].
//!
//! Widths and lengths can be corrected by what a tyer measured last time ([`Correction`]).

mod consumption;
mod cord;
mod correction;
mod counts;
pub mod crimp;
mod error;
mod faired;
mod fit;
mod hex_key;
mod kit;
mod length;
mod misfit;
mod object;
mod on_tube;
mod pin_length;
mod pinning;
mod rig;
mod tube;

pub use consumption::{Allowances, Consumption, Piece, bight_turn};
pub use cord::{Cord, CordStandard, STANDARD_CORDS};
pub use correction::Correction;
pub use counts::Counts;
pub use error::{BenchError, Counted};
pub use faired::{Braid, Shape, ShapeError};
pub use fit::{Answer, FAULT_STEP, MOST_LEADS_AND_BIGHTS, MOST_PASSES, Pace, Wish, fit};
pub use hex_key::{HexKey, System, Thread};
pub use kit::{Item, PassCord, kit};
pub use length::{LengthError, Millimetres};
pub use misfit::{Misfit, why_nothing_fits};
pub use object::Object;
pub use on_tube::{LEAST_ANGLE, Laid, MOST_FILL, TubeTooFull};
pub use pin_length::{pin_holds, pin_needed, pin_to_buy};
pub use pinning::{Layout, RingPins, Strip, pin_chord, pinning};
pub use rig::{Caution, Finish, Job, Rig, RigError, Start, rig};
pub use tube::Tube;
