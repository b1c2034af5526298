//! How long the pieces of a batch took, and what the next one takes.

/// How long one piece of a batch took.
///
/// ```
/// use marlinspeak::bench::{BatchPace, PieceTime};
///
/// let first = PieceTime { minutes: 50.0, tube_stood: false };
/// assert_eq!(BatchPace::new(vec![first]).newest(), Some(50.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PieceTime {
    /// Minutes of work.
    pub minutes: f64,
    /// Whether the tube stood already: then there was no bag and no rigging in them.
    pub tube_stood: bool,
}

/// How fast the pieces of a batch are tied. It stays with the batch: a knot tied for the tenth time
/// says little of the first time of another.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BatchPace(Vec<PieceTime>);

/// So many of the newest pieces say what the next takes, since a tyer gets quicker. *Common practice,
/// no source.*
const NEWEST: usize = 5;

impl BatchPace {
    /// From the pieces that are done, the newest last.
    pub fn new(pieces: Vec<PieceTime>) -> Self {
        Self(pieces)
    }

    /// One more piece is done.
    pub fn add(&mut self, piece: PieceTime) {
        self.0.push(piece);
    }

    /// How many pieces it is made of.
    pub fn pieces(&self) -> usize {
        self.0.len()
    }

    /// Minutes of the piece that was done last.
    pub fn newest(&self) -> Option<f64> {
        self.0.last().map(|piece| piece.minutes)
    }

    /// The mean of all pieces, in minutes.
    pub fn mean(&self) -> Option<f64> {
        #[expect(clippy::cast_precision_loss, reason = "a few pieces")]
        let pieces = self.0.len() as f64;
        let sum: f64 = self.0.iter().map(|piece| piece.minutes).sum();
        (pieces > 0.0).then(|| sum / pieces)
    }

    /// What the next piece should take, in minutes: the median of the newest pieces that were begun
    /// like it, or of the newest of all where none was. An evening of interruptions does not move it.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{BatchPace, PieceTime};
    ///
    /// // The first with bag and rigging; then the tube stood, and once the telephone rang.
    /// let piece = |minutes, tube_stood| PieceTime { minutes, tube_stood };
    /// let pace = BatchPace::new(vec![
    ///     piece(60.0, false),
    ///     piece(42.0, true),
    ///     piece(95.0, true),
    ///     piece(40.0, true),
    /// ]);
    /// assert_eq!(pace.next(true), Some(42.0));
    /// assert_eq!(pace.next(false), Some(60.0));
    /// assert_eq!(pace.mean(), Some(59.25));
    /// ```
    pub fn next(&self, tube_stands: bool) -> Option<f64> {
        let minutes = |alike: &dyn Fn(&PieceTime) -> bool| -> Vec<f64> {
            let pieces = self.0.iter().rev().filter(|piece| alike(piece));
            pieces.take(NEWEST).map(|piece| piece.minutes).collect()
        };
        let mut newest = minutes(&|piece| piece.tube_stood == tube_stands);
        if newest.is_empty() {
            newest = minutes(&|_| true);
        }
        newest.sort_unstable_by(f64::total_cmp);
        newest.get(newest.len() / 2).copied()
    }
}
