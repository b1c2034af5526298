//! Trying what is taken for a knock: to find where the microphone should lie.

use super::controller::Session;
use crate::pedal::{EarNews, Knock};
use crate::settings::Settings;
use crate::words::{Sentence, Spoken, Words};

/// How many rows are remembered.
const REMEMBERED: usize = 8;

/// What the ear took since the trial began.
///
/// ```
/// use std::time::Duration;
///
/// use marlinspeak::pedal::{EarNews, Knock};
/// use marlinspeak::session::KnockTrial;
/// use marlinspeak::words::Words;
///
/// let mut trial = KnockTrial::new(true);
/// for number in [1, 2] {
///     let knock = Knock { at: Duration::from_secs(3), number, over_room: 21.0 };
///     assert!(!trial.take(EarNews::Knock(knock)), "a row may grow");
/// }
/// assert!(trial.take(EarNews::RowOver(2)));
/// let words = Words::english();
/// assert!(trial.say(&words).as_str().starts_with("2 knocks"));
/// trial.take(EarNews::Level(-40.0));
/// let said = trial.say_where(&words);
/// assert!(said.as_str().starts_with("How loud it is now: 40 decibels"));
/// assert!(said.as_str().contains("2 knocks"));
/// ```
#[derive(Clone, Debug, Default)]
pub struct KnockTrial {
    is_on: bool,
    level: Option<f32>,
    /// The faintest knock of the row so far, in decibels over the room.
    faintest: Option<f32>,
    /// How many knocks each row had and how far over the room, the newest first.
    rows: Vec<(u8, f32)>,
}

impl KnockTrial {
    /// A trial, with knocks switched on in the settings or not.
    pub fn new(is_on: bool) -> Self {
        Self {
            is_on,
            ..Self::default()
        }
    }

    /// Whether anything is listened to.
    pub const fn is_on(&self) -> bool {
        self.is_on
    }

    /// Takes what the ear reports, and says whether a row is over.
    pub fn take(&mut self, news: EarNews) -> bool {
        match news {
            EarNews::Level(level) => self.level = Some(level),
            EarNews::NoMicrophone => (self.level, self.faintest) = (None, None),
            EarNews::Listens => {}
            EarNews::Knock(Knock { over_room, .. }) => {
                let faintest = self.faintest.unwrap_or(over_room);
                self.faintest = Some(faintest.min(over_room));
            }
            EarNews::RowOver(number) => {
                let over_room = self.faintest.take().unwrap_or_default();
                self.rows.insert(0, (number, over_room));
                self.rows.truncate(REMEMBERED);
                return true;
            }
        }
        false
    }

    /// How loud it is, in decibels of full scale, while it is told.
    pub const fn level(&self) -> Option<f32> {
        self.level
    }

    /// The same in words.
    pub fn level_in_words(&self, words: &Words) -> Sentence {
        words.knocks_level(self.level)
    }

    /// How loud it is, and then the newest row. While knocks are switched off, that they are.
    pub fn say_where(&self, words: &Words) -> Spoken {
        let row = self.say(words);
        if self.is_on {
            Spoken::from(self.level_in_words(words)).then(&row)
        } else {
            row
        }
    }

    /// The rows so far, the newest first.
    pub fn rows(&self, words: &Words) -> Vec<Sentence> {
        let rows = self.rows.iter();
        rows.map(|(number, over_room)| words.knocks_taken(*number, *over_room))
            .collect()
    }

    /// What is said of the newest row; before there is one, how it is tried.
    pub fn say(&self, words: &Words) -> Spoken {
        match self.rows(words).into_iter().next() {
            Some(row) => row.into(),
            None => self.opening(words).into(),
        }
    }

    /// How it is tried.
    pub fn opening(&self, words: &Words) -> Sentence {
        let how = if self.is_on {
            "knocks-try"
        } else {
            "knocks-off"
        };
        words.notice(how, &[])
    }

    /// Has a microphone listened to from now on, and gives what is said then: first what is done with the
    /// sound.
    pub fn switch_on(&mut self, session: &mut Session) -> Spoken {
        session.set(Settings {
            knocks: true,
            ..session.settings().clone()
        });
        *self = Self::new(true);
        let words = session.words();
        Spoken::from(words.notice("knocks-on", &[])).then(&self.say_opening(words))
    }

    /// What is said when the trial begins.
    pub fn say_opening(&self, words: &Words) -> Spoken {
        self.opening(words).into()
    }
}
