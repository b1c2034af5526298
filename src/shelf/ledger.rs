//! The log: what was really used for each finished tie, and what that teaches.
//!
//! One document a tie in the folder `log` beside the ties, with the copy before it, written
//! and checked as ties are. It stays when its tie is deleted: what a cord did is still true.

use std::collections::{HashMap, HashSet};
use std::path::PathBuf;

use super::names::Names;
use super::repair::refusal;
use super::writing::settled;
use super::{
    CopyBefore, Entry, Shelf, ShelfError, ShelfReading, ShelfTrouble, Tie, TieId, WorkTime,
    write_entry,
};
use crate::bench::{
    Cord, Correction, Corrections, Counts, FitFilter, Interlacing, Millimetres, Sample, Scatter,
    TieKind, TyingPace, learnt, shared,
};
use crate::files::{self, DocumentFile};
use crate::guide::FitQuestion;

/// Everything that was logged, newest first.
#[derive(Clone, Debug, Default)]
pub struct Ledger {
    /// What was used for each finished tie.
    pub entries: Vec<Entry>,
}

/// All logged ties together.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Totals {
    /// How many ties were finished.
    pub ties: usize,
    /// How many legs were laid in them.
    pub legs: u64,
    /// Minutes of work in all, as far as they were told.
    pub minutes: f64,
    /// Cord in the knots in millimetres, as far as it was measured.
    pub cord: f64,
}

impl Ledger {
    /// Two cords of the same name are the same cord when their diameters differ by no more
    /// than this share: as well as a calliper reads soft cord. *Common practice.*
    const SAME_DIAMETER: f64 = 0.03;

    /// Legs that have to be timed before there is a pace.
    const LEGS_FOR_A_PACE: u32 = 6;

    /// The ties whose legs make the pace: the newest so many, since a tyer gets quicker.
    const TIES_FOR_A_PACE: usize = 10;

    /// So many pieces of one batch count for the pace: a knot tied for the tenth time says little of
    /// another that is tied for the first. *Common practice, no source.*
    const PIECES_FOR_A_PACE: usize = 2;

    /// The ties of which there is an entry.
    pub fn ties(&self) -> HashSet<&TieId> {
        self.entries.iter().map(|entry| &entry.tie).collect()
    }

    /// What the log says of a cord in ties of a kind, by the rule of [`learnt`]; nothing where
    /// nothing was measured. A cord without a name goes by all of its diameter.
    pub fn correction(&self, cord: &Cord, kind: TieKind) -> Correction {
        self.lessons(cord).correction(kind)
    }

    /// What the log says of a cord, for every number of passes in one weave.
    pub fn corrections(&self, cord: &Cord, interlacing: Interlacing) -> Corrections {
        let lessons = self.lessons(cord);
        Corrections::by_passes(|passes| {
            lessons.correction(TieKind {
                passes,
                interlacing,
            })
        })
    }

    fn lessons(&self, cord: &Cord) -> Lessons {
        let ties = self.of_cord(cord);
        Lessons(
            ties.map(|entry| [entry.length_sample(), entry.give_sample(cord)])
                .collect(),
        )
    }

    /// How many ties of a cord were measured, for its length and for its width.
    pub fn measured(&self, cord: &Cord) -> (usize, usize) {
        self.of_cord(cord).fold((0, 0), |(lengths, widths), entry| {
            (
                lengths + usize::from(entry.length_sample().is_some()),
                widths + usize::from(entry.give_sample(cord).is_some()),
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

    /// The entries that make the pace, newest first: of a batch the first pieces alone, which were tied
    /// as any other knot is.
    fn for_a_pace(&self) -> Vec<&Entry> {
        let mut pieces: HashMap<&str, usize> = HashMap::new();
        let mut entries: Vec<&Entry> = Vec::new();
        // A batch is counted from its first piece on.
        for entry in self.entries.iter().rev() {
            if let Some(series) = &entry.series {
                let before = pieces.entry(series.as_str()).or_default();
                *before += 1;
                if *before > Self::PIECES_FOR_A_PACE {
                    continue;
                }
            }
            entries.push(entry);
        }
        entries.reverse();
        entries.truncate(Self::TIES_FOR_A_PACE);
        entries
    }

    /// Minutes that the tyer logged of a tie.
    pub fn minutes_of(&self, tie: &TieId) -> Option<f64> {
        let entry = self.entries.iter().find(|entry| entry.tie == *tie)?;
        entry.minutes
    }

    /// The tyer's own pace: the median leg of the newest ties, and what all of the work took over
    /// that; `None` before enough legs were timed. A tie whose tube stood already says nothing of what
    /// all of the work takes.
    pub fn pace(&self) -> Option<TyingPace> {
        let counted = self.for_a_pace();
        let newest = || counted.iter().copied();
        let mut pooled = WorkTime::default();
        for entry in newest() {
            pooled.pool(&entry.work_time);
        }
        if pooled.legs_timed() < Self::LEGS_FOR_A_PACE {
            return None;
        }
        let mut timed = Timed::default();
        for entry in newest() {
            timed.add(&entry.work_time, entry.counts);
        }
        let pace = timed.pace(pooled.median_leg()?)?;
        let laying = |counts: Counts| pace.laying_minutes(counts.legs(), counts.fewest_tucks());
        let mut wholes: Vec<f64> = newest()
            .filter(|entry| !entry.tube_stood)
            .filter_map(|entry| Some(entry.minutes? / laying(entry.counts)))
            .collect();
        wholes.sort_unstable_by(f64::total_cmp);
        // Half of the ties took longer.
        let whole = wholes.get(wholes.len() / 2).copied();
        Some(whole.map_or(pace, |whole| pace.with_whole(whole)))
    }

    /// The pace to go by for a tie in hand: from the log, or else from
    /// the legs of the tie itself, once there are enough of them.
    pub fn pace_at(&self, tie: &Tie) -> Option<TyingPace> {
        let own = &tie.work_time;
        let is_enough = own.legs_timed() >= Self::LEGS_FOR_A_PACE;
        self.pace().or_else(|| {
            let seconds = own.median_leg().filter(|_| is_enough)?;
            let laying = tie.plan.laying();
            let pace = TyingPace::new(seconds).ok()?;
            Some(pace.with_tucks(f64::from(laying.tucks()) / f64::from(laying.legs())))
        })
    }

    /// A question of fit with what the log says of its cord, and of the tyer.
    pub fn teach(&self, question: FitQuestion) -> FitQuestion {
        let of_nested = |nested: u16| {
            let interlacing = question.weave.interlacing(nested);
            self.corrections(&question.cord, interlacing)
        };
        FitQuestion {
            corrections: of_nested(question.filter.nested.unwrap_or(1)),
            interwoven_corrections: of_nested(FitFilter::BESIDE),
            own_pace: self.pace(),
            ..question
        }
    }

    /// What all logged ties come to together.
    pub fn totals(&self) -> Totals {
        self.entries
            .iter()
            .fold(Totals::default(), |sum, entry| Totals {
                ties: sum.ties + 1,
                legs: sum.legs + u64::from(entry.counts.legs()),
                minutes: sum.minutes + entry.minutes.unwrap_or(0.0),
                cord: sum.cord + entry.used().map_or(0.0, Millimetres::get),
            })
    }
}

/// In ties of which kind legs were timed: their legs and tucks, for every leg that was timed.
#[derive(Default)]
struct Timed {
    legs: f64,
    tucks: f64,
}

impl Timed {
    /// An entry does not say in which of its two weaves the knot was tied: it is taken for the one
    /// with fewer tucks, which is what the program offers.
    fn add(&mut self, work_time: &WorkTime, counts: Counts) {
        let timed = f64::from(work_time.legs_timed());
        self.legs += timed;
        self.tucks += timed * f64::from(counts.fewest_tucks()) / f64::from(counts.legs());
    }

    fn pace(&self, leg_seconds: f64) -> Option<TyingPace> {
        let pace = TyingPace::new(leg_seconds).ok()?;
        Some(pace.with_tucks(self.tucks / self.legs))
    }
}

/// What each measured tie of a cord tells of its length and of how closely it lies.
struct Lessons(Vec<[Option<Sample>; 2]>);

impl Lessons {
    const SCATTERS: [Scatter; 2] = [Scatter::LENGTH, Scatter::GIVE];

    fn correction(&self, kind: TieKind) -> Correction {
        let samples =
            |index: usize| -> Vec<Sample> { self.0.iter().filter_map(|tie| tie[index]).collect() };
        let all = [samples(0), samples(1)];
        let (least, most) = (*Correction::BOUNDS.start(), *Correction::BOUNDS.end());
        let [length, give] =
            [0, 1].map(|index| learnt(&all[index], kind, Self::SCATTERS[index]).clamp(least, most));
        // Measures of other kinds of ties count when most of what they say is taken over.
        let is_shared = [0, 1].map(|index| shared(&all[index], Self::SCATTERS[index]) > 0.5);
        let counts = |tie: &&[Option<Sample>; 2]| {
            tie.iter().zip(is_shared).any(|(sample, is_shared)| {
                sample.is_some_and(|sample| sample.kind == kind || is_shared)
            })
        };
        let ties = u16::try_from(self.0.iter().filter(counts).count()).unwrap_or(u16::MAX);
        // Both lie within bounds.
        Correction::new(length, give).map_or_else(
            |_| Correction::default(),
            |correction| correction.from_ties(ties),
        )
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

impl Shelf {
    /// Reads the whole log. A missing folder is an empty log.
    ///
    /// # Errors
    /// [`ShelfError::File`] when the folder cannot be read.
    pub fn ledger(&self) -> Result<ShelfReading<Ledger>, ShelfError> {
        let ids = self.logged()?;
        Ok(ShelfReading::gather(|gathering| {
            let mut entries = Vec::new();
            for id in &ids {
                entries.extend(self.look_up(id).hand_on(gathering));
            }
            entries.sort_by(|one: &Entry, other| {
                (other.logged, &other.tie).cmp(&(one.logged, &one.tie))
            });
            Ledger { entries }
        }))
    }

    /// What was logged of one tie, if anything. A damaged document gives way to the copy
    /// before it.
    ///
    /// # Errors
    /// Why neither copy can be read.
    pub fn entry(&self, id: &TieId) -> Result<ShelfReading<Option<Entry>>, ShelfError> {
        match self.look_up(id).found() {
            Ok(entry) => Ok(entry.map(Some)),
            Err(nothing) => match refusal(nothing) {
                Some(error) => Err(error),
                None => Ok(ShelfReading::whole(None)),
            },
        }
    }

    /// Writes what was used for a tie, in the place of what was logged of it before. The time
    /// of writing is now, or that of the newest tie when the clock has gone back. A damaged entry in
    /// its place is set aside, and comes out as a trouble.
    ///
    /// # Errors
    /// [`ShelfError::File`] when a newer version of this program wrote it,
    /// [`ShelfError::Unwritable`] or [`ShelfError::File`]. The log is then as it was.
    pub fn log(&self, entry: &Entry) -> Result<ShelfReading<Entry>, ShelfError> {
        let mut entry = entry.clone();
        entry.logged = self.now_or_newest()?;
        let _changing = self.change();
        Ok(self.write_entry(&entry)?.map(|()| entry))
    }

    /// Puts an entry into the log as it is, unless the tie has one: then says so.
    pub(super) fn take_in_entry(&self, entry: &Entry) -> Result<ShelfReading<bool>, ShelfError> {
        let _changing = self.change();
        if files::exists(self.entry_file(&entry.tie).path())? {
            return Ok(ShelfReading::whole(false));
        }
        Ok(self.write_entry(entry)?.map(|()| true))
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
        DocumentFile::named(&self.log_folder(), id.as_str()).keeping_previous()
    }

    fn write_entry(&self, entry: &Entry) -> Result<ShelfReading<()>, ShelfError> {
        let contents = write_entry(entry).map_err(ShelfError::unwritable(&entry.tie))?;
        files::make_folder(&self.log_folder())?;
        let file = self.entry_file(&entry.tie);
        let _lock = file.lock()?;
        settled(&entry.tie, file.write(&contents))
    }

    /// The entry of a tie, under the name of its file, and what is wrong with that.
    fn look_up(&self, id: &TieId) -> ShelfReading<Option<Entry>> {
        let reading = self.entry_file(id).read().map(|entry| {
            entry.map(|entry| Entry {
                tie: id.clone(),
                ..entry
            })
        });
        reading.map_troubles(|_, trouble| {
            ShelfTrouble::with_tie(id, trouble, |_| CopyBefore::AsKeptBefore)
        })
    }
}
