//! The words of the trade that a beginner has to learn.

use strum::VariantArray;

/// A word of the trade, in an order to be read in.
///
/// ```
/// use marlinspeak::guide::GlossaryWord;
/// use strum::VariantArray;
///
/// // What is seen first on any knot comes first.
/// assert_eq!(GlossaryWord::VARIANTS[..2], [GlossaryWord::Lead, GlossaryWord::Bight]);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, VariantArray)]
#[expect(
    missing_docs,
    reason = "each stands for the word, and i18n says what it means"
)]
pub enum GlossaryWord {
    Lead,
    Bight,
    Pass,
    Leg,
    Round,
    Strand,
    StandingEnd,
    WorkingEnd,
    Crossing,
    OverUnder,
    Tuck,
    Weave,
    Follow,
    Snug,
    Fair,
    Tube,
    Ring,
    Row,
    Pin,
    Rim,
    Stagger,
    Nested,
}
