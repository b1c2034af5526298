//! First ties: a short course for beginners.

use strum::IntoStaticStr;

/// A knot of the course.
///
/// ```
/// use marlinspeak::guide::{COURSE, Lesson};
/// use marlinspeak::knot::{Knot, Weave};
///
/// // Each cord is tied in one go: leads and bights have no common factor.
/// for Lesson { leads, bights, .. } in COURSE {
///     assert_eq!(Knot::new(leads, bights, Weave::default())?.strands(), 1);
/// }
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lesson {
    /// Its number, from 1.
    pub number: u16,
    /// Leads of its knot.
    pub leads: u16,
    /// Bights of its knot.
    pub bights: u16,
    /// Bights nested at each rim of its knot, each a cord of its own: 1 in a plain one.
    pub nested: u16,
    /// Passes of its knot.
    pub passes: u16,
    /// Whether it is tied round the hand, without a tube.
    pub round_hand: bool,
}

/// The course: each knot brings one new idea, and covers something in the loft: a bell rope, a
/// bottle, a boathook, a tiller; the last needs no tube, and goes round the hand. Its numbers are those of the lessons that ties on disk name.
///
/// ```
/// use marlinspeak::guide::COURSE;
///
/// // Three leads come first: two rows of crossings, and every bight within reach.
/// assert_eq!((COURSE[0].leads, COURSE[0].passes), (3, 1));
/// ```
pub const COURSE: [Lesson; 6] = [
    Lesson {
        number: 1,
        leads: 3,
        bights: 5,
        nested: 1,
        passes: 1,
        round_hand: false,
    },
    Lesson {
        number: 2,
        leads: 3,
        bights: 7,
        nested: 1,
        passes: 1,
        round_hand: false,
    },
    Lesson {
        number: 3,
        leads: 4,
        bights: 7,
        nested: 1,
        passes: 1,
        round_hand: false,
    },
    Lesson {
        number: 4,
        leads: 5,
        bights: 7,
        nested: 1,
        passes: 2,
        round_hand: false,
    },
    Lesson {
        number: 5,
        leads: 3,
        bights: 5,
        nested: 2,
        passes: 1,
        round_hand: false,
    },
    Lesson {
        number: 6,
        leads: 3,
        bights: 4,
        nested: 1,
        passes: 1,
        round_hand: true,
    },
];

/// How far a tyer is with a lesson.
///
/// ```
/// use marlinspeak::guide::LessonState;
///
/// // Of several ties of one lesson, the one that is furthest tells.
/// let ties = [LessonState::Begun, LessonState::Done, LessonState::New];
/// assert_eq!(ties.into_iter().max(), Some(LessonState::Done));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum LessonState {
    /// No tie of it was begun yet.
    #[default]
    New,
    /// A tie of it is in progress.
    Begun,
    /// Tied to the end at least once.
    Done,
}
