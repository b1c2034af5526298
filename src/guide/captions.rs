//! What is written in a picture of a tie in words: the words fill it in, and the picture draws it.

use crate::knot::{Pin, Rim};

/// Short words for the picture of a tie, in the language of whoever looks at it.
///
/// # Examples
/// ```
/// use marlinspeak::guide::Plan;
/// use marlinspeak::knot::Pin;
/// use marlinspeak::words::Words;
///
/// // Round the hand a bight has a finger beside its number, on a tube the number alone.
/// let (plan, words) = (Plan::read("3", "4", "1", "")?, Words::english());
/// assert_eq!(words.captions(&plan).bight(Pin::bottom(3)), None);
/// let hand = plan.with_round_hand()?;
/// assert_eq!(words.captions(&hand).bight(Pin::bottom(3)), Some("3 back little"));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Captions {
    /// What stands at the bights in the place of their numbers alone, those of the bottom rim before those of
    /// the top one, each from the first on; nothing where a number is enough.
    pub bights: [Vec<String>; 2],
    /// On a board: where out and where in are, written beyond the outer circle and within the inner one.
    pub circles: Option<[String; 2]>,
    /// At the number of a pin that is round the back of what is tied on, where there is room for it.
    pub behind: Option<String>,
}

impl Captions {
    /// What stands at a bight in the place of its number alone.
    pub fn bight(&self, pin: Pin) -> Option<&str> {
        let of_rim = &self.bights[usize::from(pin.rim == Rim::Top)];
        let nth = usize::from(pin.number).checked_sub(1)?;
        of_rim.get(nth).map(String::as_str)
    }

    /// Letters of the longest of them; none where numbers are enough.
    pub(crate) fn letters(&self) -> Option<usize> {
        let bights = self.bights.iter().flatten();
        bights.map(|name| name.chars().count()).max()
    }
}
