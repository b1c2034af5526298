//! Why a knot does not lie on a ground, and what would.

use thiserror::Error;

use super::Millimetres;

/// Why a knot does not go round an object. The words for it that a tyer reads are made
/// elsewhere; its own are for logs and for users of the library.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Braid, Counts, Millimetres, ShapeError};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// // Nine doubled bights of 4 mm line do not go round a bell rope of 20 mm; eight do.
/// let crowded = Braid::new(Counts::new(4, 9, 2).unwrap(), mm(4.0), mm(20.0));
/// let error = crowded.tight().unwrap_err();
/// assert!(matches!(error, ShapeError::TooFull { most_bights: Some(8), .. }));
/// assert!(error.to_string().contains("do not go round side by side"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Error)]
pub enum ShapeError {
    /// The cord is thicker than what it goes round.
    #[error("a cord of {cord} is thicker than the object, {object}")]
    CordThickerThanObject {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the object.
        object: Millimetres,
    },
    /// The bands, as close as they come, take more than the way round.
    #[error("{bights} bights of {passes} cords of {cord} do not go round side by side")]
    TooFull {
        /// Bights as given.
        bights: u16,
        /// Passes as given.
        passes: u16,
        /// The most bights that go round with so many passes, if any do.
        most_bights: Option<u16>,
        /// The most passes that go round with so many bights, if any do.
        most_passes: Option<u16>,
        /// Diameter of the cord as given.
        cord: Millimetres,
        /// A cord thinner than this goes round.
        cord_below: Option<Millimetres>,
    },
    /// Drawn up tight, the knot is wider than it is asked to be.
    #[error("the knot is at least {least} wide, not {given}")]
    NarrowerThanTight {
        /// Width as given.
        given: Millimetres,
        /// Its tight width.
        least: Millimetres,
    },
    /// Opened as far as its rims go, the knot is narrower than it is asked to be: there its legs stand
    /// along the object, or it has come to the poles of a ball, or to the middle of a mat.
    #[error("the knot reaches {most} at the most, not {given}")]
    WiderThanReach {
        /// Width as given.
        given: Millimetres,
        /// The widest that it can be opened to.
        most: Millimetres,
    },
    /// A taper that loses more of its radius than it is long.
    #[error("a taper that loses so much is longer than {least}, not {over}")]
    TaperTooShort {
        /// Its length as given.
        over: Millimetres,
        /// It must be longer than this: half of what the diameters differ by.
        least: Millimetres,
    },
    /// Before all leads lie on a taper, its bights do not go round the thin end any more.
    #[error("{leads} leads reach where {bights} bights do not go round the thin end any more")]
    ThinEnd {
        /// Leads as given.
        leads: u16,
        /// Bights as given.
        bights: u16,
        /// They go round a thing that is at least so thick.
        thick_from: Millimetres,
        /// The most leads that go, with so many bights, if any do.
        most_leads: Option<u16>,
        /// The most bights that go, with so many leads, if any do.
        most_bights: Option<u16>,
    },
    /// More leads and bights than a ball holds: at the poles the bights do not go round any more.
    #[error(
        "{leads} leads and {bights} bights are more than a ball of {ball} holds; one of {ball_from} would"
    )]
    BallFull {
        /// Leads as given.
        leads: u16,
        /// Bights as given.
        bights: u16,
        /// Diameter of the ball.
        ball: Millimetres,
        /// A ball of this diameter would do.
        ball_from: Millimetres,
        /// The most leads that it holds with so many bights, if any.
        most_leads: Option<u16>,
        /// The most bights that it holds with so many leads, if any.
        most_bights: Option<u16>,
    },
    /// A cord nearly as thick as the ball: it does not bend round it as the rules have it.
    #[error("a cord of {cord} is too thick for a ball of {ball}; one of {ball_from} takes it")]
    BallTooSmall {
        /// Diameter of the cord.
        cord: Millimetres,
        /// Diameter of the ball.
        ball: Millimetres,
        /// The thickest cord that goes round it.
        cord_to: Millimetres,
        /// A ball of this diameter would do.
        ball_from: Millimetres,
    },
    /// Drawn up tight, a mat is wider than the ring that it has: from its outer edge to its hole, or to
    /// where its bights do not go round any more.
    #[error(
        "{leads} leads and {bights} bights do not go into a mat of {outer}; one of {outer_from} would do"
    )]
    MatFull {
        /// Leads as given.
        leads: u16,
        /// Bights as given.
        bights: u16,
        /// Across the mat, from outer edge to outer edge.
        outer: Millimetres,
        /// A mat so wide would do.
        outer_from: Millimetres,
        /// The most leads that go with so many bights, if any do.
        most_leads: Option<u16>,
        /// The most bights that go with so many leads, if any do.
        most_bights: Option<u16>,
    },
    /// The bights of a mat do not go round its hole.
    #[error("{bights} bights do not go round a hole of {hole}, but of {hole_from}")]
    HoleTooSmall {
        /// Bights as given.
        bights: u16,
        /// Across the hole as given.
        hole: Millimetres,
        /// Round a hole of this they do.
        hole_from: Millimetres,
        /// The most bights that go round the hole as it is, if any do.
        most_bights: Option<u16>,
    },
}
