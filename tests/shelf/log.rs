//! The log of finished ties and what it teaches.

use std::fs;
use std::path::PathBuf;

use marlinspeak::bench::{
    Allowances, Braid, Consumption, Cord, Correction, Counts, FitAnswer, Give, Millimetres,
    TieKind, TyingPace, bight_turn,
};
use marlinspeak::files::{FileError, FormatError};
use marlinspeak::session::{LogAction, LogField, LogForm};
use marlinspeak::shelf::{
    CopyBefore, DocumentError, DocumentState, ENTRY_VERSION, Entry, IfThere, Ledger, Shelf,
    ShelfError, Tie, WorkTime, read_entry, write_entry,
};

use marlinspeak::guide::{FitQuestion, Presets, SetupField, SetupForm};
use marlinspeak::knot::{Knot, Lattice, Weave};
use marlinspeak::words::Words;

use crate::damaged::flipped_and_cut;
use crate::told_of::told_of;
use crate::{five_by_six, fresh, two_copies};

fn mm(millimetres: f64) -> Millimetres {
    Millimetres::new(millimetres).unwrap()
}

fn cord() -> Cord {
    Cord::new(mm(4.0)).named("tarred marline")
}

/// What a tyer measures of a tie on an object of `around` millimetres whose cord takes `length` times
/// what is computed for its shape, and lies `give` times as closely as it is taken to.
fn measured(tie: &Tie, around: f64, length: f64, give: f64) -> Entry {
    let counts = Counts::from(tie.plan.laying());
    measured_as(tie, counts, around, [length, give], 1.0)
}

/// The same of other counts, the width being read off a tape that is so much too long.
fn measured_as(tie: &Tie, counts: Counts, around: f64, hidden: [f64; 2], tape: f64) -> Entry {
    let braid = Braid {
        give: Give::new(Give::SOFT.get() * hidden[1]).unwrap(),
        ..Braid::new(counts, mm(4.0), mm(around))
    };
    let shape = braid.tight().unwrap();
    let turn = bight_turn(mm(4.0), None, shape.angle);
    let (plain, tails) = (Correction::default(), Allowances::default());
    let computed = Consumption::new(counts, shape.cord_in_leg(), turn, plain, tails);
    Entry {
        counts,
        cord: Some(cord()),
        cut: Some(mm(computed.in_knot().get() * hidden[0] + 350.0)),
        left_over: Some(350.0),
        around: Some(mm(around).into()),
        width: Some(mm(shape.width.get() * tape)),
        ..Entry::of(tie)
    }
}

/// A tie of five leads, six bights, doubled.
fn doubled() -> TieKind {
    Counts::new(5, 6, 2).unwrap().into()
}

fn log_file(shelf: &Shelf, entry: &Entry) -> PathBuf {
    shelf
        .folder()
        .join("log")
        .join(format!("{}.json", entry.tie))
}

/// Numbers between 0 and 1, the same in every run: a linear congruential generator with the
/// multiplier and increment of D. E. Knuth's MMIX (from memory).
struct Dice(u64);

impl Dice {
    fn throw(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        f64::from(u32::try_from(self.0 >> 32).unwrap()) / f64::from(u32::MAX)
    }

    fn between(&mut self, least: f64, most: f64) -> f64 {
        least + self.throw() * (most - least)
    }
}

#[test]
fn a_tyers_own_factors_are_learnt_within_five_ties() {
    let mut dice = Dice(7);
    for tyer in 0..300 {
        let hidden = [dice.between(0.75, 1.35), dice.between(0.75, 1.25)];
        let (_around, shelf) = fresh();
        for number in 1..=5 {
            // Other objects every time; a tape measure is off by up to three per cent.
            let around = dice.between(32.0, 60.0);
            let (off, tape) = (dice.between(0.97, 1.03), dice.between(0.97, 1.03));
            let tie = five_by_six();
            let counts = Counts::from(tie.plan.laying());
            let hidden_now = [hidden[0] * off, hidden[1]];
            shelf
                .log(&measured_as(&tie, counts, around, hidden_now, tape))
                .unwrap()
                .untroubled()
                .unwrap();
            let learnt = shelf
                .ledger()
                .unwrap()
                .untroubled()
                .unwrap()
                .correction(&cord(), doubled());
            assert_eq!(learnt.ties(), number);
            let wrong = |learnt: f64, hidden: f64| (learnt / hidden - 1.0).abs();
            // Never further off than not learning at all, by more than the tape measure.
            assert!(
                wrong(learnt.length(), hidden[0]) <= wrong(1.0, hidden[0]).max(0.07),
                "tyer {tyer} after {number} ties"
            );
            if number == 5 {
                assert!(
                    wrong(learnt.length(), hidden[0]) <= 0.06,
                    "{hidden:?}: {learnt:?}"
                );
                assert!(
                    wrong(learnt.give(), hidden[1]) <= 0.07,
                    "{hidden:?}: {learnt:?}"
                );
                // And so the width of the next knot is told to three per cent.
                let width = |give: f64| {
                    let braid = Braid {
                        give: Give::new(Give::SOFT.get() * give).unwrap(),
                        ..Braid::new(counts, mm(4.0), mm(40.0))
                    };
                    braid.tight().unwrap().width.get()
                };
                let [told, comes] = [learnt.give(), hidden[1]].map(width);
                assert!((told / comes - 1.0).abs() <= 0.035, "{told} {comes}");
                // Of other passes nothing is said.
                for passes in [1, 3, 4] {
                    let other = Counts::new(5, 6, passes).unwrap().into();
                    let other = shelf
                        .ledger()
                        .unwrap()
                        .untroubled()
                        .unwrap()
                        .correction(&cord(), other);
                    assert_eq!(other, Correction::default());
                }
            }
        }
    }
}

/// A single that was measured wrongly, or comes out otherwise, changes no doubled knot.
#[test]
fn one_single_does_not_poison_a_doubled_knot() {
    let (_around, shelf) = fresh();
    let single = Counts::new(3, 4, 1).unwrap();
    let entry = measured_as(&five_by_six(), single, 30.0, [1.3, 1.25], 1.0);
    shelf.log(&entry).unwrap().untroubled().unwrap();
    let ledger = shelf.ledger().unwrap().untroubled().unwrap();
    assert!(ledger.correction(&cord(), single.into()).give() > 1.15);
    assert_eq!(ledger.correction(&cord(), doubled()), Correction::default());
    // A weave of longer runs is another kind of tie too.
    let over_two = single.interlaced(marlinspeak::bench::Interlacing::of(&Weave::Run(2), 2));
    assert_eq!(
        ledger.correction(&cord(), over_two.into()),
        Correction::default()
    );
}

/// What two nests teach is told of two nests, where they are offered beside plain knots too, and of no
/// plain knot.
#[test]
fn interwoven_ties_teach_interwoven_ones_alone() {
    let (_around, shelf) = fresh();
    let lattice = Lattice::plain(5, 4).unwrap().interwoven(2, 2).unwrap();
    let knot = Knot::woven(lattice, Weave::Run(2)).unwrap();
    let counts = Counts::of(&knot, 1).unwrap();
    for _ in 0..3 {
        let entry = measured_as(&five_by_six(), counts, 40.0, [1.3, 1.0], 1.0);
        // What is logged comes back whole.
        assert_eq!(
            read_entry(&write_entry(&entry).unwrap()).unwrap().counts,
            counts
        );
        shelf.log(&entry).unwrap().untroubled().unwrap();
    }
    let ledger = shelf.ledger().unwrap().untroubled().unwrap();
    assert!(ledger.correction(&cord(), counts.into()).length() > 1.2);
    let form = SetupForm::from_iter([
        (SetupField::Object, "40"),
        (SetupField::Cover, "40"),
        (SetupField::Cord, "4"),
    ]);
    let question = form.question(&Presets::default()).unwrap();
    let question = ledger.teach(FitQuestion {
        cord: cord(),
        ..question
    });
    let answers = question.answers();
    let learnt = |answer: &FitAnswer| question.correction(answer.counts).ties();
    let mut interwoven = 0;
    for answer in &answers {
        let is_interwoven = answer.counts.lattice().is_interwoven();
        let is_single = answer.counts.passes() == 1;
        if is_interwoven && is_single {
            assert_eq!(learnt(answer), 3);
            interwoven += 1;
        } else if !is_interwoven {
            assert_eq!(learnt(answer), 0, "{answer:?}");
        }
    }
    assert!(interwoven > 0);
}

#[test]
fn kinds_of_ties_that_agree_teach_the_others_and_those_that_do_not_do_not() {
    let learnt = |doubled_too: f64| {
        let (_around, shelf) = fresh();
        for (passes, factor) in [(1, 1.2), (1, 1.2), (2, doubled_too), (2, doubled_too)] {
            let counts = Counts::new(5, 6, passes).unwrap();
            let entry = measured_as(&five_by_six(), counts, 40.0, [factor, factor], 1.0);
            shelf.log(&entry).unwrap().untroubled().unwrap();
        }
        let tripled = Counts::new(5, 6, 3).unwrap();
        shelf
            .ledger()
            .unwrap()
            .untroubled()
            .unwrap()
            .correction(&cord(), tripled.into())
    };
    let agreed = learnt(1.2);
    assert!(agreed.give() > 1.12 && agreed.ties() == 4, "{agreed:?}");
    let at_odds = learnt(0.8);
    assert!(
        (at_odds.give() - 1.0).abs() < 0.02 && at_odds.ties() == 0,
        "{at_odds:?}"
    );
}

#[test]
fn one_tie_counts_four_fifths_and_none_counts_nothing() {
    let (_around, shelf) = fresh();
    let correction = |shelf: &Shelf| {
        shelf
            .ledger()
            .unwrap()
            .untroubled()
            .unwrap()
            .correction(&cord(), doubled())
    };
    assert_eq!(correction(&shelf), Correction::default());
    shelf
        .log(&measured(&five_by_six(), 40.0, 1.2, 0.9))
        .unwrap()
        .untroubled()
        .unwrap();
    let learnt = correction(&shelf);
    assert!(
        (learnt.length() - 1.2_f64.powf(0.8)).abs() < 1e-6,
        "{learnt:?}"
    );
    // A width of a doubled knot tells of `k` in part only.
    assert!((0.9..0.95).contains(&learnt.give()), "{learnt:?}");
}

#[test]
fn a_cord_learns_from_itself_alone() {
    let (_around, shelf) = fresh();
    shelf
        .log(&measured(&five_by_six(), 40.0, 1.2, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    let ledger = shelf.ledger().unwrap().untroubled().unwrap();
    let length = |cord: Cord| ledger.correction(&cord, doubled()).length();
    assert!(length(Cord::new(mm(4.1)).named(" Tarred Marline")) > 1.1);
    // Without a name it goes by the diameter alone.
    assert!(length(Cord::new(mm(4.0))) > 1.1);
    for other in [
        Cord::new(mm(4.0)).named("white cotton"),
        Cord::new(mm(3.0)).named("tarred marline"),
        Cord::new(mm(4.2)),
    ] {
        assert!((length(other) - 1.0).abs() < 1e-12);
    }
}

/// What was measured is how closely the cord lies, whatever it was taken for at the time.
#[test]
fn a_cord_that_is_called_hard_later_keeps_what_was_measured() {
    let (_around, shelf) = fresh();
    for _ in 0..8 {
        shelf
            .log(&measured(&five_by_six(), 40.0, 1.0, 1.15))
            .unwrap()
            .untroubled()
            .unwrap();
    }
    let ledger = shelf.ledger().unwrap().untroubled().unwrap();
    let lies = |cord: Cord| cord.give.get() * ledger.correction(&cord, doubled()).give();
    let soft = lies(cord());
    let hard = lies(Cord {
        give: Give::HARD,
        ..cord()
    });
    assert!((soft / hard - 1.0).abs() < 0.01, "{soft} {hard}");
}

#[test]
fn a_slip_in_measuring_and_a_knot_left_open_teach_what_they_can() {
    let (_around, shelf) = fresh();
    // Metres for feet: beyond what a cord can do.
    shelf
        .log(&measured(&five_by_six(), 40.0, 3.3, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    assert_eq!(
        shelf
            .ledger()
            .unwrap()
            .untroubled()
            .unwrap()
            .measured(&cord()),
        (0, 1)
    );
    // Left open it is as wide as its tyer wants, but its cord is measured as any.
    let open = Entry {
        left_open: true,
        ..measured(&five_by_six(), 40.0, 1.0, 1.3)
    };
    shelf.log(&open).unwrap().untroubled().unwrap();
    assert_eq!(
        shelf
            .ledger()
            .unwrap()
            .untroubled()
            .unwrap()
            .measured(&cord()),
        (1, 1)
    );
    let nothing = Entry::of(&five_by_six());
    assert_eq!(nothing.length_factor(), None);
    assert_eq!(nothing.give_sample(&cord()), None);
}

#[test]
fn a_wild_measure_is_asked_back_once_and_then_believed() {
    let words = Words::english();
    let usual = measured(&five_by_six(), 40.0, 1.0, 1.0);
    assert!(matches!(
        LogForm::new(usual.clone()).keep(&words),
        LogAction::Keep(_)
    ));
    // Centimetres for millimetres: a tenth of the width.
    let width = usual.width.unwrap();
    let mut form = LogForm::new(usual.clone());
    form.type_in(LogField::Width, format!("{} mm", width.get() / 10.0));
    let LogAction::Focus(LogField::Width, said) = form.keep(&words) else {
        panic!("not asked back");
    };
    let (field, told) = form.complaint().unwrap();
    assert_eq!(field, LogField::Width);
    assert!(told.starts_with("The finished width, "), "{told}");
    assert!(
        told.ends_with(
            "see that the figure and its unit are right, and if they are, keep it once more."
        ),
        "{told}"
    );
    assert!(said.to_string().contains("millimetres"), "{said}");
    // Another slip is another question.
    form.type_in(LogField::Width, format!("{} mm", width.get() * 10.0));
    assert!(matches!(
        form.keep(&words),
        LogAction::Focus(LogField::Width, _)
    ));
    assert!(matches!(form.keep(&words), LogAction::Keep(_)));
    // Cord for two of them was cut.
    let mut form = LogForm::new(usual.clone());
    form.type_in(
        LogField::Cut,
        format!("{} mm", 2.0 * usual.cut.unwrap().get()),
    );
    assert!(matches!(
        form.keep(&words),
        LogAction::Focus(LogField::Cut, _)
    ));
    assert!(
        form.complaint().is_some_and(|(field, told)| {
            field == LogField::Cut && told.starts_with("Cut less left over makes ")
        }),
        "{:?}",
        form.complaint()
    );
    assert!(matches!(form.keep(&words), LogAction::Keep(_)));
    // However far a knot was left open, its tyer wanted it so.
    let open = Entry {
        left_open: true,
        cut: None,
        width: Some(mm(width.get() * 2.0)),
        ..usual
    };
    assert!(matches!(
        LogForm::new(open).keep(&words),
        LogAction::Keep(_)
    ));
}

#[test]
fn the_pace_is_the_median_leg_of_the_newest_ties() {
    let (_around, shelf) = fresh();
    let pace = |shelf: &Shelf| {
        shelf
            .ledger()
            .unwrap()
            .untroubled()
            .unwrap()
            .pace()
            .map(TyingPace::leg_seconds)
    };
    let timed = |legs: &[f64]| {
        let mut work_time = WorkTime::default();
        for seconds in legs {
            work_time.add_leg(*seconds);
        }
        Entry {
            work_time,
            ..Entry::of(&five_by_six())
        }
    };
    shelf
        .log(&timed(&[30.0, 31.0, 32.0]))
        .unwrap()
        .untroubled()
        .unwrap();
    assert_eq!(pace(&shelf), None, "three legs are no pace");
    shelf
        .log(&timed(&[33.0, 34.0, 800.0]))
        .unwrap()
        .untroubled()
        .unwrap();
    assert!((pace(&shelf).unwrap() - 32.0).abs() < 1e-6);
    // A tyer gets quicker: ten ties later the first two count no more.
    for _ in 0..10 {
        shelf.log(&timed(&[12.0; 6])).unwrap().untroubled().unwrap();
    }
    assert!((pace(&shelf).unwrap() - 12.0).abs() < 1e-6);
}

#[test]
fn an_entry_reads_back_as_it_was_written() {
    let (_around, shelf) = fresh();
    let mut entry = measured(&five_by_six(), 38.1, 1.07, 0.93);
    entry.minutes = Some(95.5);
    entry.note = "snug \"é\"".to_owned();
    entry.photograph = "/home/loft/handle.jpg".to_owned();
    entry.work_time.add(5400.0);
    entry.work_time.add_leg(22.0);
    entry.unknown.insert("weather", "rain");
    assert_eq!(read_entry(&write_entry(&entry).unwrap()), Ok(entry.clone()));
    let logged = shelf.log(&entry).unwrap().untroubled().unwrap();
    assert_eq!(
        shelf
            .entry(&entry.tie)
            .unwrap()
            .untroubled()
            .unwrap()
            .as_ref(),
        Some(&logged)
    );
    // Written again, the one before stays as the previous copy.
    let before = fs::read(log_file(&shelf, &entry)).unwrap();
    shelf
        .log(&Entry {
            note: String::new(),
            ..entry.clone()
        })
        .unwrap()
        .untroubled()
        .unwrap();
    let previous = shelf
        .folder()
        .join("log")
        .join(format!("{}.previous.json", entry.tie));
    assert_eq!(fs::read(previous).unwrap(), before);
    assert_eq!(
        shelf.ledger().unwrap().untroubled().unwrap().entries.len(),
        1
    );
}

#[test]
fn damage_to_the_log_is_seen_told_and_not_overwritten() {
    let (_around, shelf) = fresh();
    let entry = shelf
        .log(&measured(&five_by_six(), 40.0, 1.1, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    let later = shelf
        .log(&Entry {
            minutes: Some(9.0),
            ..entry.clone()
        })
        .unwrap()
        .untroubled()
        .unwrap();
    let file = log_file(&shelf, &entry);
    let whole = fs::read(&file).unwrap();
    let mut untold = 0;
    for at in 0..whole.len() {
        for damaged in flipped_and_cut(&whole, at) {
            fs::write(&file, &damaged).unwrap();
            let (ledger, troubles) = told_of(shelf.ledger().unwrap());
            let [read] = ledger.entries.as_slice() else {
                panic!("{at}: {ledger:?}");
            };
            if troubles.is_empty() {
                // A flip in the name of the checksum leaves a field that nobody knows.
                let unknown = later.unknown.clone();
                let read = Entry {
                    unknown,
                    ..read.clone()
                };
                assert_eq!(read, later, "{at}");
                untold += 1;
            } else {
                assert_eq!(*read, entry, "{at}");
                assert_eq!(troubles[0].copy_used, Some(CopyBefore::AsKeptBefore));
            }
            assert_eq!(fs::read(&file).unwrap(), damaged);
        }
    }
    // Spaces between the fields, the name of the checksum, the line break at the end.
    assert!(untold * 4 < whole.len(), "{untold} of {}", whole.len());
    // What is written next sets it aside.
    fs::write(&file, "rubbish").unwrap();
    let (_, troubles) = told_of(shelf.log(&later).unwrap());
    let aside = file.with_file_name(format!("{}.damaged-1.json", entry.tie));
    assert_eq!(fs::read(&aside).unwrap(), b"rubbish");
    let moved: Vec<_> = troubles
        .iter()
        .map(|trouble| trouble.moved_to.as_ref())
        .collect();
    assert_eq!(moved, [Some(&aside)]);
}

#[test]
fn what_several_programs_log_of_one_tie_at_once_is_whole_and_one_of_theirs() {
    let (_around, shelf) = fresh();
    let tie = two_copies(&shelf);
    std::thread::scope(|scope| {
        for number in 0..8 {
            let other = Shelf::open(shelf.folder()).unwrap();
            let note = format!("hand {number}");
            let entry = Entry {
                note,
                ..Entry::of(&tie)
            };
            scope.spawn(move || drop(other.log(&entry).unwrap().untroubled().unwrap()));
        }
    });
    let kept = shelf.entry(tie.id()).unwrap().untroubled().unwrap();
    let note = kept.unwrap().note;
    assert!(note.starts_with("hand "), "{note}");
    assert!(crate::set_aside(&shelf.folder().join("log")).is_empty());
}

#[test]
fn an_entry_of_version_1_is_read() {
    let entry = read_entry(include_bytes!("../data/log/version-1.json")).unwrap();
    assert_eq!((entry.tie.as_str(), &*entry.name), ("oarlock7", "tiller"));
    assert_eq!(entry.counts, Counts::new(5, 6, 2).unwrap());
    assert_eq!(entry.used(), Some(mm(1850.0)));
    assert_eq!(
        (entry.minutes, entry.work_time.legs_timed()),
        (Some(95.5), 7)
    );
    assert_eq!(entry.unknown.get("weather").unwrap(), "rain");
    assert!(entry.length_factor().is_some() && entry.give_sample(&cord()).is_some());
}

#[test]
fn a_newer_entry_is_left_alone() {
    let (_around, shelf) = fresh();
    let entry = Entry::of(&five_by_six());
    shelf.log(&entry).unwrap().untroubled().unwrap();
    let newer = format!("{{\"version\": {}, \"braids\": []}}", ENTRY_VERSION + 1);
    fs::write(log_file(&shelf, &entry), &newer).unwrap();
    assert!(shelf.log(&entry).unwrap_err().is_newer());
    assert!(shelf.entry(&entry.tie).unwrap_err().is_newer());
    let (ledger, troubles) = told_of(shelf.ledger().unwrap());
    assert!(ledger.entries.is_empty() && troubles[0].error.is_newer());
    assert_eq!(fs::read_to_string(log_file(&shelf, &entry)).unwrap(), newer);
}

#[test]
fn entries_out_of_range_are_refused() {
    let mut entry = measured(&five_by_six(), 40.0, 1.0, 1.0);
    entry.cord.as_mut().unwrap().grams_per_metre = Some(6.5);
    let whole = String::from_utf8(write_entry(&entry).unwrap());
    let whole: serde_json::Value = serde_json::from_str(&whole.unwrap()).unwrap();
    let with = |pointer: &str, value: serde_json::Value| {
        let mut changed = whole.clone();
        changed.as_object_mut().unwrap().remove("checksum");
        *changed.pointer_mut(pointer).unwrap() = value;
        read_entry(changed.to_string().as_bytes())
    };
    assert!(with("/note", "unchecked".into()).is_ok());
    for (pointer, value) in [
        ("/tie", serde_json::json!("../../up")),
        ("/knot/leads", 1.into()),
        ("/knot/passes", 10.into()),
        ("/cut", 0.into()),
        ("/cut", 1e9.into()),
        ("/left_over", (-1).into()),
        ("/width", "wide".into()),
        ("/minutes", 1e7.into()),
        ("/cord/diameter", (-4).into()),
        ("/cord/grams_per_metre", (-6).into()),
        ("/cord/grams_per_metre", 1e7.into()),
        ("/worked/seconds", (-1).into()),
        ("/logged", "in spring".into()),
        ("/version", "1".into()),
    ] {
        assert!(with(pointer, value.clone()).is_err(), "{pointer} {value}");
    }
    assert!(matches!(
        read_entry(&vec![b' '; 2 << 20]),
        Err(DocumentError::Format(FormatError::TooLarge { .. }))
    ));
}

#[test]
fn the_log_goes_along_in_a_backup_and_follows_a_tie_to_its_new_id() {
    let (around, shelf) = fresh();
    let tie = two_copies(&shelf);
    let entry = shelf
        .log(&measured(&tie, 40.0, 1.1, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    // What was logged stays when the tie is deleted.
    let gone = two_copies(&shelf);
    shelf
        .log(&measured(&gone, 50.0, 1.1, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    shelf.delete(gone.id()).unwrap();
    let file = around.path().join("backup");
    let backup = shelf
        .backup(&file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    assert_eq!((backup.ties, backup.logged), (1, 2));

    let (_elsewhere, other) = fresh();
    let restored = other.restore(&file).unwrap().untroubled().unwrap();
    assert_eq!(
        (restored.ties.len(), restored.logged, restored.missing),
        (1, 2, 0)
    );
    assert_eq!(
        other.entry(tie.id()).unwrap().untroubled().unwrap(),
        Some(entry.clone())
    );
    assert_eq!(
        other.ledger().unwrap().untroubled().unwrap().totals(),
        shelf.ledger().unwrap().untroubled().unwrap().totals()
    );
    // A second time nothing comes.
    assert_eq!(
        other.restore(&file).unwrap().untroubled().unwrap().logged,
        0
    );

    let (_third, third) = fresh();
    let mut taken = tie.clone();
    taken.note = "another tie of the same id".to_owned();
    drop(third.begin(taken).unwrap());
    let restored = third.restore(&file).unwrap().untroubled().unwrap();
    let id = restored.ties[0].tie.id().clone();
    assert_ne!(id, *tie.id());
    assert_eq!(
        third.entry(&id).unwrap().untroubled().unwrap().unwrap().cut,
        entry.cut
    );
    assert_eq!(third.entry(tie.id()).unwrap().untroubled().unwrap(), None);
}

#[test]
fn verify_looks_at_the_log_too() {
    let (_around, shelf) = fresh();
    let entry = shelf
        .log(&measured(&five_by_six(), 40.0, 1.1, 1.0))
        .unwrap()
        .untroubled()
        .unwrap();
    let verified = shelf.verify().unwrap();
    assert!(matches!(verified.as_slice(), [one] if matches!(one.state, DocumentState::Whole)));
    fs::write(log_file(&shelf, &entry), "rubbish").unwrap();
    let verified = shelf.verify().unwrap();
    assert!(matches!(
        &verified[0].state,
        DocumentState::Bad(ShelfError::File(FileError::Unreadable { .. }))
    ));
}

#[test]
fn totals_are_what_was_measured() {
    let ledger = Ledger {
        entries: vec![
            Entry {
                minutes: Some(30.0),
                ..measured(&five_by_six(), 40.0, 1.0, 1.0)
            },
            Entry::of(&five_by_six()),
        ],
    };
    let totals = ledger.totals();
    assert_eq!((totals.ties, totals.legs), (2, 48));
    assert!((totals.minutes - 30.0).abs() < 1e-12);
    assert!((totals.cord - ledger.entries[0].used().unwrap().get()).abs() < 1e-9);
}
