//! What was read from a file, kept together with what is wrong about it: whoever wants the value
//! has to hand the troubles to somebody who tells the tyer of them.

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
    pub(crate) fn left_alone(error: FileError<E>) -> Self {
        Self {
            error,
            moved_to: None,
            previous_used: false,
        }
    }
}

/// Somebody who sees to it that the tyer is told of every trouble: a window, a terminal, or
/// whatever hands the troubles on to one of them.
///
/// No collection implements this, because what is put into a `Vec` may be forgotten there.
///
/// ```compile_fail
/// use marlinspeak::files::Reading;
///
/// Reading::of(7, vec!["the copy before it is used"]).hand_on(&mut Vec::new());
/// ```
pub trait Teller<X> {
    /// Tells all of these, of which there is at least one.
    fn tell_of(&mut self, troubles: Vec<X>);
}

/// The troubles of several readings while one reading is made of them. Only [`Reading::gather`] and
/// [`Reading::try_gather`] lend one, so that its troubles end up in the reading that comes of it.
#[derive(Debug)]
pub struct Gathering<X>(Vec<X>);

impl<X> Gathering<X> {
    /// Adds a trouble that did not come out of a reading.
    pub fn add(&mut self, trouble: X) {
        self.0.push(trouble);
    }
}

impl<X> Teller<X> for Gathering<X> {
    fn tell_of(&mut self, troubles: Vec<X>) {
        self.0.extend(troubles);
    }
}

/// An error that carries along the troubles that were found before it.
pub trait TakesAlong<X> {
    /// This error, with the troubles that were found before it; there is at least one.
    #[must_use]
    fn after(self, troubles: Vec<X>) -> Self;
}

/// What was read, and everything about it that has to be told. The value comes out only where
/// the troubles are told, or where there are none.
///
/// ```
/// use marlinspeak::files::{Reading, Teller};
///
/// struct Screen(String);
/// impl Teller<&str> for Screen {
///     fn tell_of(&mut self, troubles: Vec<&str>) {
///         self.0.push_str(&troubles.join(" "));
///     }
/// }
///
/// let mut screen = Screen(String::new());
/// let leg = Reading::of(7, vec!["The copy before it is used."]).hand_on(&mut screen);
/// assert_eq!((leg, &*screen.0), (7, "The copy before it is used."));
///
/// assert_eq!(Reading::<_, &str>::whole(7).untroubled().unwrap(), 7);
/// assert!(Reading::of(7, vec!["A line is skipped."]).untroubled().is_err());
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

    /// What is made of several readings, with what has to be told of any of them.
    ///
    /// ```
    /// use marlinspeak::files::Reading;
    ///
    /// let sum = Reading::gather(|gathering| {
    ///     let one = Reading::of(7, vec!["One was mended."]).hand_on(gathering);
    ///     one + Reading::of(8, vec!["Two was mended."]).hand_on(gathering)
    /// });
    /// assert_eq!(sum.troubles(), ["One was mended.", "Two was mended."]);
    /// ```
    pub fn gather(make: impl FnOnce(&mut Gathering<X>) -> T) -> Self {
        let mut gathering = Gathering(Vec::new());
        let value = make(&mut gathering);
        Self::of(value, gathering.0)
    }

    /// As [`Reading::gather`], where making it may fail.
    ///
    /// # Errors
    /// The one that is met; it takes along what was gathered before it.
    pub fn try_gather<E: TakesAlong<X>>(
        make: impl FnOnce(&mut Gathering<X>) -> Result<T, E>,
    ) -> Result<Self, E> {
        let Reading { value, troubles } = Reading::gather(make);
        match value {
            Ok(value) => Ok(Self::of(value, troubles)),
            Err(error) if troubles.is_empty() => Err(error),
            Err(error) => Err(error.after(troubles)),
        }
    }

    /// What was read; everything that has to be told goes to whoever tells it.
    pub fn hand_on(self, teller: &mut impl Teller<X>) -> T {
        if !self.troubles.is_empty() {
            teller.tell_of(self.troubles);
        }
        self.value
    }

    /// As [`Reading::hand_on`], where the value itself is needed to tell the troubles: settings,
    /// for example, name the language in which to say what is wrong with them.
    pub fn hand_on_by<L: Teller<X>>(self, teller: impl FnOnce(&T) -> L) -> T {
        if !self.troubles.is_empty() {
            teller(&self.value).tell_of(self.troubles);
        }
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

    /// Everything that has to be told, to look at.
    pub fn troubles(&self) -> &[X] {
        &self.troubles
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

    /// The same reading with every trouble turned into one of another type. `make` is given the
    /// value that was read.
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
    /// Takes a reading that may have found nothing apart: into a reading of what was found, or else
    /// into its troubles alone.
    ///
    /// # Errors
    /// The troubles, of which there are none when there was nothing to read.
    pub fn found(self) -> Result<Reading<T, X>, Reading<(), X>> {
        match self.value {
            Some(value) => Ok(Reading::of(value, self.troubles)),
            None => Err(Reading::of((), self.troubles)),
        }
    }
}
