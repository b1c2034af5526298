//! The log: what was really used for each finished tie, and what that teaches.
//!
//! One document a tie in the folder `log` beside the ties, with the copy before it, written
//! and checked as ties are. It stays when its tie is deleted: what a cord did is still true.

use std::path::PathBuf;

use super::names::Names;
use super::{Entry, Shelf, ShelfError, ShelfTrouble, Tie, TieId, WorkTime, write_entry};
use crate::bench::{Cord, Correction, Pace};
use crate::files::{self, DocumentFile, Readers};
use crate::guide::{Setup, Wanted};

/// Everything that was logged, newest first.
#[derive(Clone, Debug, Default)]
pub struct Ledger {
    /// The finished ties.
    pub entries: Vec<Entry>,
    /// What could not be read.
    pub troubles: Vec<ShelfTrouble>,
}

/// All logged ties together.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Totals {
    /// Finished ties.
    pub ties: usize,
    /// Legs laid.
    pub legs: u64,
    /// Minutes of work, as far as they were told.
    pub minutes: f64,
    /// Cord in the knots in millimetres, as far as it was measured.
    pub cord: f64,
}

impl Ledger {
    /// What no measurement at all weighs against each that was made, as a number of them.
    ///
    /// A factor is the mean of the logarithms of measured over computed, shrunk towards 1 as
    /// if a quarter of a measurement had come out exactly as computed:
    /// `ln f = Σ ln rᵢ / (n + ¼)`. That is Bayes' rule for factors that scatter by 10 % from
    /// cord to cord and measurements that scatter by 5 %, both *common practice, no source*:
    /// `(5 % / 10 %)² = ¼`. One tie counts four fifths, five count 95 per cent.
    pub const PRIOR_WEIGHT: f64 = 0.25;

    /// Two cords of the same name are the same cord when their diameters differ by no more
    /// than this share: as well as a calliper reads soft cord. *Common practice.*
    const SAME_DIAMETER: f64 = 0.03;

    /// Legs that have to be timed before there is a pace.
    const LEGS_FOR_A_PACE: u32 = 6;

    /// The ties whose legs make the pace: the newest so many, since a tyer gets quicker.
    const TIES_FOR_A_PACE: usize = 10;

    /// What the log says of a cord, by [`Self::PRIOR_WEIGHT`]'s rule for length and for width;
    /// 1 where nothing was measured. A cord without a name goes by all of its diameter.
    pub fn correction(&self, cord: &Cord) -> Correction {
        let length = shrunk(self.of_cord(cord).filter_map(Entry::length_factor));
        let width = shrunk(self.of_cord(cord).filter_map(Entry::width_factor));
        // Factors within bounds have a mean within them.
        Correction::new(length, width).unwrap_or_default()
    }

    /// How many ties of a cord were measured, for its length and for its width.
    pub fn measured(&self, cord: &Cord) -> (usize, usize) {
        self.of_cord(cord).fold((0, 0), |(lengths, widths), entry| {
            (
                lengths + usize::from(entry.length_factor().is_some()),
                widths + usize::from(entry.width_factor().is_some()),
            )
        })
    }

    fn of_cord<'a>(&'a self, cord: &'a Cord) -> impl Iterator<Item = &'a Entry> {
        self.entries.iter().filter(move |entry| {
            entry
                .cord
                .as_ref()
                .is_some_and(|logged| is_same(cord, logged))
        })
    }

    /// The tyer's own pace: the median leg of the newest ties, or `None` before enough legs
    /// were timed.
    pub fn pace(&self) -> Option<Pace> {
        let mut pooled = WorkTime::default();
        for entry in self.entries.iter().take(Self::TIES_FOR_A_PACE) {
            pooled.pool(&entry.work_time);
        }
        if pooled.legs_timed() < Self::LEGS_FOR_A_PACE {
            return None;
        }
        Pace::new(pooled.median_leg()?).ok()
    }

    /// The pace to go by for a tie in hand: from the log, or else from
    /// the legs of the tie itself, once there are enough of them.
    pub fn pace_at(&self, tie: &Tie) -> Option<Pace> {
        let own = &tie.work_time;
        let is_enough = own.legs_timed() >= Self::LEGS_FOR_A_PACE;
        self.pace().or_else(|| {
            let seconds = own.median_leg().filter(|_| is_enough)?;
            Pace::new(seconds).ok()
        })
    }

    /// A question of fit with what the log says of its cord, and of the tyer.
    pub fn teach(&self, question: Wanted) -> Wanted {
        Wanted {
            correction: self.correction(&question.cord),
            pace: self.pace(),
            ..question
        }
    }

    /// A setup with what the log says of its cord.
    pub fn teach_setup(&self, setup: Setup) -> Setup {
        Setup {
            correction: self.correction(&setup.cord),
            ..setup
        }
    }

    /// All ties together.
    pub fn totals(&self) -> Totals {
        self.entries
            .iter()
            .fold(Totals::default(), |sum, entry| Totals {
                ties: sum.ties + 1,
                legs: sum.legs + u64::from(entry.counts.legs()),
                minutes: sum.minutes + entry.minutes.unwrap_or(0.0),
                cord: sum.cord + entry.used().map_or(0.0, crate::bench::Millimetres::get),
            })
    }
}

/// Whether what was logged of one cord holds for another.
fn is_same(wanted: &Cord, logged: &Cord) -> bool {
    let near = (logged.diameter.get() / wanted.diameter.get() - 1.0).abs() <= Ledger::SAME_DIAMETER;
    let name = |cord: &Cord| {
        cord.name
            .as_deref()
            .unwrap_or_default()
            .trim()
            .to_lowercase()
    };
    near && (name(wanted).is_empty() || name(wanted) == name(logged))
}

fn shrunk(factors: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = factors.fold((0.0, 0.0), |(sum, count), factor: f64| {
        (sum + factor.ln(), count + 1.0)
    });
    (sum / (count + Ledger::PRIOR_WEIGHT)).exp()
}

impl Shelf {
    /// Reads the whole log. A missing folder is an empty log.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read.
    pub fn ledger(&self) -> Result<Ledger, ShelfError> {
        let mut ledger = Ledger::default();
        for id in self.logged()? {
            let (entry, troubles) = self.look_up(&id);
            ledger.entries.extend(entry);
            ledger.troubles.extend(troubles);
        }
        ledger
            .entries
            .sort_by(|one, other| (other.logged, &other.tie).cmp(&(one.logged, &one.tie)));
        Ok(ledger)
    }

    /// What was logged of one tie, if anything. A damaged document gives way to the copy
    /// before it.
    ///
    /// # Errors
    /// Why neither copy can be read.
    pub fn entry(&self, id: &TieId) -> Result<Option<Entry>, ShelfError> {
        match self.look_up(id) {
            (None, troubles) => match troubles.into_iter().next() {
                Some(trouble) => Err(trouble.error),
                None => Ok(None),
            },
            (entry, _) => Ok(entry),
        }
    }

    /// Writes what was used for a tie, in the place of what was logged of it before. The time
    /// of writing is now, or that of the newest tie when the clock has gone back.
    ///
    /// # Errors
    /// [`ShelfError::File`] when a newer version of this program wrote it,
    /// [`ShelfError::Unwritable`] or [`ShelfError::File`]. The log is then as it was.
    pub fn log(&self, entry: &Entry) -> Result<Entry, ShelfError> {
        let mut entry = entry.clone();
        entry.logged = self.now_or_newest()?;
        let _changing = self.change();
        self.write_entry(&entry)?;
        Ok(entry)
    }

    /// Puts an entry into the log as it is, unless the tie has one: then says so.
    pub(super) fn take_in_entry(&self, entry: &Entry) -> Result<bool, ShelfError> {
        let _changing = self.change();
        if files::exists(self.entry_file(&entry.tie).path()) {
            return Ok(false);
        }
        self.write_entry(entry).map(|()| true)
    }

    /// The ids of all ties of which there is something in the log.
    pub(super) fn logged(&self) -> Result<Vec<TieId>, ShelfError> {
        let names = Names::in_folder(&self.log_folder())?;
        Ok(names.ids.into_iter().collect())
    }

    /// The folder of the log. Its documents are named as those of ties are.
    pub(super) fn log_folder(&self) -> PathBuf {
        self.folder().join("log")
    }

    /// Where the entry of a tie is.
    pub(super) fn entry_file(&self, id: &TieId) -> DocumentFile<Entry> {
        DocumentFile::named(&self.log_folder(), id.as_str())
            .keeping_previous()
            .for_readers(Readers::AsUsual)
    }

    fn write_entry(&self, entry: &Entry) -> Result<(), ShelfError> {
        let contents = write_entry(entry).map_err(ShelfError::unwritable(&entry.tie))?;
        files::make_folder(&self.log_folder())?;
        Ok(self.entry_file(&entry.tie).write(&contents)?)
    }

    /// The entry of a tie, under the name of its file, and what is wrong with that.
    fn look_up(&self, id: &TieId) -> (Option<Entry>, Vec<ShelfTrouble>) {
        let (entry, troubles) = self.entry_file(id).read().into_parts();
        let entry = entry.map(|entry| Entry {
            tie: id.clone(),
            ..entry
        });
        let troubles = troubles
            .into_iter()
            .map(|trouble| ShelfTrouble::with_tie(id, trouble));
        (entry, troubles.collect())
    }
}
