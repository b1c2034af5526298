//! What can hurt.

use strum::IntoStaticStr;

/// Something that can hurt, told where it belongs.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Caution, Plan, Script};
///
/// // Nobody is to trust a life to the finished knot.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let done = script.step(script.last()).unwrap();
/// assert_eq!(done.cautions(), [Caution::Load]);
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Caution {
    /// Pins stand proud of the tube.
    Pins,
    /// A cord that lies tight round a finger stops its blood.
    Fingers,
    /// Knives, picks and needles.
    Blades,
    /// The pick that opens the way for an end.
    Pick,
    /// A needle that sews a mat, and the glue that may hold it.
    Needle,
    /// Hot knife and flame.
    Heat,
    /// Never to hold a person or a load.
    Load,
    /// Cords and small parts near small children.
    Children,
    /// A cord that is pulled hard cuts into the hand, or slips.
    Pull,
    /// Hands tire in a long tie.
    Rest,
}
