//! What reading brings to light, and the way to what was read that leads past it.

use std::path::PathBuf;

use super::{ContentError, FileError};

/// Something about a file that has to be told.
#[derive(Clone, Debug)]
pub struct FileTrouble<E: ContentError + 'static> {
    /// What is wrong, and with which file.
    pub error: FileError<E>,
    /// Where that file was moved, when it was.
    pub moved_to: Option<PathBuf>,
    /// Whether the copy before it is used in its place.
    pub previous_used: bool,
}

impl<E: ContentError> FileTrouble<E> {
    /// Trouble with a file that was left as it is.
    pub(super) fn left_alone(error: FileError<E>) -> Self {
        Self {
            error,
            moved_to: None,
            previous_used: false,
        }
    }
}

/// What was read, and everything about it that has to be told. The value comes out only where
/// the troubles are handed on, or where there are none.
///
/// ```
/// use marlinspeak::files::Reading;
///
/// let mut to_be_told = Vec::new();
/// let leg = Reading::of(7, vec!["the copy before it is used"]).hand_on(&mut to_be_told);
/// assert_eq!((leg, to_be_told.len()), (7, 1));
///
/// assert_eq!(Reading::<_, &str>::whole(7).untroubled().unwrap(), 7);
/// assert!(Reading::of(7, vec!["a line is skipped"]).untroubled().is_err());
/// ```
#[derive(Clone, Debug)]
#[must_use = "what is wrong with a file has to be told"]
pub struct Reading<T, X> {
    value: T,
    troubles: Vec<X>,
}

impl<T, X> Reading<T, X> {
    /// What was read with nothing wrong about it.
    pub const fn whole(value: T) -> Self {
        Self {
            value,
            troubles: Vec::new(),
        }
    }

    /// What was read, and what has to be told of that.
    pub const fn of(value: T, troubles: Vec<X>) -> Self {
        Self { value, troubles }
    }

    /// What was read; everything that has to be told goes to whoever tells it.
    pub fn hand_on(self, teller: &mut impl Extend<X>) -> T {
        teller.extend(self.troubles);
        self.value
    }

    /// What was read, where nothing has to be told.
    ///
    /// # Errors
    /// The reading as it is, where something has.
    pub fn untroubled(self) -> Result<T, Self> {
        if self.troubles.is_empty() {
            Ok(self.value)
        } else {
            Err(self)
        }
    }

    /// Whether something has to be told.
    pub fn is_troubled(&self) -> bool {
        !self.troubles.is_empty()
    }

    /// What is made of what was read; what has to be told stays with it.
    pub fn map<U>(self, make: impl FnOnce(T) -> U) -> Reading<U, X> {
        Reading {
            value: make(self.value),
            troubles: self.troubles,
        }
    }

    /// The same with every trouble put into other terms, by what was read.
    pub fn map_troubles<Y>(self, mut make: impl FnMut(&T, X) -> Y) -> Reading<T, Y> {
        let troubles = self.troubles.into_iter();
        let troubles = troubles.map(|trouble| make(&self.value, trouble)).collect();
        Reading {
            value: self.value,
            troubles,
        }
    }
}

impl<T, X> Reading<Option<T>, X> {
    /// The same where something was read; else everything that has to be told of that.
    ///
    /// # Errors
    /// The troubles, of which there are none when there was nothing to read.
    pub fn found(self) -> Result<Reading<T, X>, Vec<X>> {
        match self.value {
            Some(value) => Ok(Reading::of(value, self.troubles)),
            None => Err(self.troubles),
        }
    }
}
