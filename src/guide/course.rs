//! First ties: a short course for beginners.

use strum::IntoStaticStr;

/// A knot of the course.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lesson {
    /// Its number, from 1.
    pub number: u16,
    /// Leads of its knot.
    pub leads: u16,
    /// Bights of its knot.
    pub bights: u16,
    /// Passes of its knot.
    pub passes: u16,
}

/// The course: each knot brings one new idea.
pub const COURSE: [Lesson; 4] = [
    Lesson {
        number: 1,
        leads: 3,
        bights: 4,
        passes: 1,
    },
    Lesson {
        number: 2,
        leads: 3,
        bights: 5,
        passes: 1,
    },
    Lesson {
        number: 3,
        leads: 4,
        bights: 5,
        passes: 1,
    },
    Lesson {
        number: 4,
        leads: 5,
        bights: 6,
        passes: 2,
    },
];

/// How far a tyer is with a lesson.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum LessonState {
    /// Not tied yet.
    #[default]
    New,
    /// A tie of it is in progress.
    Begun,
    /// Tied to the end at least once.
    Done,
}
