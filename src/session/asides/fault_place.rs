//! The place of a fault, named as it is seen: beside which bottom pin, in which row.

use super::Came;
use super::tally::{Counted, Tally};
use crate::guide::{Fault, Place, Script, Suspect};
use crate::knot::{Knot, Pin, PinRow, Rim, Spot};
use crate::picture::{Mark, Subject};
use crate::words::{FaultAsked, Shown, Spoken, Words};

/// The way to the leg that laid a fault.
#[derive(Clone, Debug)]
pub(in crate::session) struct FaultPlace {
    pin: u16,
    row: u16,
    /// Whether nothing crosses at the place that was named last.
    is_empty_there: bool,
    stage: Stage,
}

#[derive(Clone, Debug)]
enum Stage {
    /// The bottom pin that it stands beside.
    Pin(Tally),
    /// Its row from the bottom.
    Row(Tally),
    /// Which of the crossings that stand there.
    Nth(Vec<Spot>, Tally),
    /// Which of the cords that cross there.
    Which(Spot, Vec<Suspect>, Tally),
    /// The leg is known.
    Found(Spot, Box<Fault>),
}

impl FaultPlace {
    /// Beside the first pin.
    pub fn new(knot: &Knot) -> Self {
        Self {
            pin: 1,
            row: 1,
            is_empty_there: false,
            stage: Stage::Pin(Tally::new(1, knot.bights())),
        }
    }

    /// Whether the leg is known.
    pub const fn is_found(&self) -> bool {
        matches!(self.stage, Stage::Found(..))
    }

    const fn tally(&mut self) -> Option<&mut Tally> {
        match &mut self.stage {
            Stage::Pin(tally)
            | Stage::Row(tally)
            | Stage::Nth(_, tally)
            | Stage::Which(_, _, tally) => Some(tally),
            Stage::Found(..) => None,
        }
    }

    /// Whether the number so far is typed.
    pub const fn is_typed(&self) -> bool {
        match &self.stage {
            Stage::Pin(tally)
            | Stage::Row(tally)
            | Stage::Nth(_, tally)
            | Stage::Which(_, _, tally) => tally.is_typed(),
            Stage::Found(..) => false,
        }
    }

    pub(super) fn type_in(&mut self, key: &str) -> bool {
        let is_taken = self.tally().is_some_and(|tally| tally.type_in(key));
        self.is_empty_there &= !is_taken;
        is_taken
    }

    pub(super) fn press(&mut self, is_next: bool, script: &Script, place: Place) -> Came {
        self.is_empty_there = false;
        let Some(tally) = self.tally() else {
            if is_next {
                return Came::TakeBack;
            }
            self.name_another(script);
            return Came::Asked;
        };
        let counted = tally.press(is_next);
        let number = tally.number();
        if counted == Counted::Changed {
            return Came::Counted;
        }
        let knot = script.plan().knot();
        match &self.stage {
            Stage::Pin(_) => {
                self.pin = number;
                self.stage = Stage::Row(Tally::new(1, knot.rows()).at(self.row));
                Came::Asked
            }
            Stage::Row(_) => {
                self.row = number;
                let spots = knot.spots(self.pin, self.row);
                match spots[..] {
                    [] => self.nothing_there(script),
                    [spot] => self.spot(spot, script, place),
                    _ => {
                        let count = u16::try_from(spots.len()).unwrap_or(u16::MAX);
                        self.stage = Stage::Nth(spots, Tally::new(1, count));
                        Came::Asked
                    }
                }
            }
            Stage::Nth(spots, _) => match spots.get(usize::from(number) - 1) {
                Some(spot) => self.spot(*spot, script, place),
                None => self.nothing_there(script),
            },
            Stage::Which(spot, suspects, _) => match suspects.get(usize::from(number) - 1) {
                Some(suspect) => {
                    let fault = Box::new(script.fault(place, *suspect));
                    self.stage = Stage::Found(*spot, fault);
                    Came::Asked
                }
                None => self.nothing_there(script),
            },
            Stage::Found(..) => Came::Asked,
        }
    }

    fn spot(&mut self, spot: Spot, script: &Script, place: Place) -> Came {
        let suspects = script.suspects(place, spot);
        match suspects[..] {
            [] => self.nothing_there(script),
            [suspect] => {
                self.stage = Stage::Found(spot, Box::new(script.fault(place, suspect)));
                Came::Asked
            }
            _ => {
                let count = u16::try_from(suspects.len()).unwrap_or(u16::MAX);
                // The cord laid last is the one that most often lies wrong.
                let tally = Tally::new(1, count).at(count);
                self.stage = Stage::Which(spot, suspects, tally);
                Came::Asked
            }
        }
    }

    fn nothing_there(&mut self, script: &Script) -> Came {
        self.name_another(script);
        self.is_empty_there = true;
        Came::Asked
    }

    fn name_another(&mut self, script: &Script) {
        let pins = script.plan().knot().bights();
        self.stage = Stage::Pin(Tally::new(1, pins).at(self.pin));
    }

    fn asked(&self) -> FaultAsked {
        match &self.stage {
            Stage::Pin(tally) => FaultAsked::Pin(tally.number()),
            Stage::Row(tally) => FaultAsked::Row(tally.number()),
            Stage::Nth(spots, tally) => FaultAsked::Nth {
                nth: tally.number(),
                of: u16::try_from(spots.len()).unwrap_or(u16::MAX),
            },
            Stage::Which(_, suspects, tally) => suspects
                .get(usize::from(tally.number()) - 1)
                .map_or(FaultAsked::Row(self.row), |suspect| {
                    FaultAsked::Which(*suspect)
                }),
            Stage::Found(_, fault) => FaultAsked::Found(fault.clone()),
        }
    }

    pub(super) fn show(&self, script: &Script, words: &Words) -> Shown {
        let shown = words.show_fault(&self.asked(), script.plan(), self.is_typed());
        if self.is_empty_there {
            words.show_nothing_there(shown)
        } else {
            shown
        }
    }

    pub(super) fn say(&self, script: &Script, words: &Words) -> Spoken {
        let asked = words.say_fault(&self.asked(), script.plan());
        if self.is_empty_there {
            let nothing = words.notice("fault-nothing-there", &[]);
            Spoken::from(nothing).then(&asked)
        } else {
            asked
        }
    }

    pub(super) fn say_briefly(&self, script: &Script, words: &Words) -> Spoken {
        words.say_fault_briefly(&self.asked(), script.plan())
    }

    /// A ring round what is named so far.
    pub(super) fn mark(&self, script: &Script, subject: Subject) -> Subject {
        let knot = script.plan().knot();
        let spot = match &self.stage {
            Stage::Pin(tally) => {
                let row = knot.pin(Rim::Bottom, 1, tally.number());
                let row = row.map_or(PinRow::ONLY, |pin| pin.row);
                return subject.marked(Mark::Bight(Pin::bottom(tally.number()).in_row(row)));
            }
            Stage::Row(tally) => knot.spots(self.pin, tally.number()).first().copied(),
            Stage::Nth(spots, tally) => spots.get(usize::from(tally.number()) - 1).copied(),
            Stage::Which(spot, ..) | Stage::Found(spot, _) => Some(*spot),
        };
        match spot {
            Some(spot) => subject.marked(Mark::Crossing(spot.rising.from, spot.row)),
            None => subject,
        }
    }
}
