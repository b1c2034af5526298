//! Words for what interrupts a tie: whether the cord will do, and a fault somewhere in the work.

use fluent::{FluentArgs, fluent_args};

use super::lengths::{at_hand_of, cut_of};
use super::pins::named;
use super::selectors::Selector;
use super::{Sentence, Shown, Spoken, Words};
use crate::guide::{CordReach, CordTakes, EndMend, Fault, Plan, Remaining, Suspect};
use crate::knot::{Heading, Rim};

/// What is asked, or told, of the place of a fault.
#[derive(Clone, Debug, PartialEq)]
pub enum FaultAsked {
    /// Whether it stands beside this bottom pin.
    Pin(u16),
    /// Whether it lies in this row.
    Row(u16),
    /// Whether it is this one of several that stand there.
    Nth {
        /// Counted from the pin.
        nth: u16,
        /// How many there are.
        of: u16,
    },
    /// Whether this cord lies wrong.
    Which(Suspect),
    /// The leg that laid it.
    Found(Box<Fault>),
}

impl Words {
    /// What is still to be laid of the cord in hand, and how far it reaches; nothing when all is
    /// laid.
    pub fn cord_left(&self, remaining: Option<&Remaining>) -> Sentence {
        let Some(remaining) = remaining else {
            return self.sentence("cord-left-done", &FluentArgs::new());
        };
        let takes = remaining.takes.as_ref();
        let length = |of: fn(&CordTakes) -> f64| cut_of(takes.map_or(0.0, of));
        let left = self.sentence(
            "cord-left",
            &fluent_args! {
                "known" => takes.is_some().selector(),
                "legs" => remaining.legs_of_pass, "all" => remaining.legs_of_cord,
                "ends" => (remaining.legs_of_pass == remaining.legs_of_cord).selector(),
                "others" => takes.is_some_and(|takes| takes.has_others).selector(),
                "in-pass" => length(|takes| takes.in_pass),
                "in-cord" => length(|takes| takes.in_cord),
                "in-all" => length(|takes| takes.in_all),
            },
        );
        match remaining.reach {
            Some(reach) => left.then(&self.sentence("cord-reach", &reach_args(reach))),
            None if takes.is_some() => left.then(&self.sentence("cord-ask", &FluentArgs::new())),
            None => left,
        }
    }

    /// Before a pass that the cord does not reach to the end of.
    pub fn cord_not_through(&self, remaining: &Remaining) -> Sentence {
        let reach = remaining.reach.unwrap_or(CordReach::NotOneLeg);
        self.sentence("cord-not-through", &reach_args(reach))
    }

    /// Asks whether the cord ends in this leg, as what was measured of it says.
    pub fn say_cord_ends(&self) -> Spoken {
        self.notice("cord-ends", &[]).into()
    }

    /// The same on the screen.
    pub fn show_cord_ends(&self) -> Shown {
        let line = self.plainly("cord-ends-line", &[]);
        let asked = self.plainly("cord-ends", &[]);
        self.aside("join-phase", line, vec![asked])
    }

    /// What is measured so far, and how it goes on.
    pub fn say_measuring(&self, millimetres: f64, step: f64, is_small: bool) -> Spoken {
        let args = measuring_args(millimetres, step, is_small);
        let asked = self.sentence("measuring", &args);
        asked.then(&self.sentence("counting-keys", &args)).into()
    }

    /// What is measured so far, after each press.
    pub fn say_measured_so_far(&self, millimetres: f64) -> Spoken {
        let args = measuring_args(millimetres, 0.0, false);
        self.sentence("measuring-so-far", &args).into()
    }

    /// What is measured so far, on the screen.
    pub fn show_measuring(&self, millimetres: f64, step: f64, is_typed: bool) -> Shown {
        let args = measuring_args(millimetres, step, false);
        // While a number is typed next does something else than the question says.
        let asked = (!is_typed).then(|| self.text("measuring-step", &args));
        let keys = self.text(keys_of(is_typed), &args);
        let notes = asked.into_iter().chain([keys]).collect();
        self.aside("measuring-phase", self.text("measuring-line", &args), notes)
    }

    /// What is asked or told of a fault.
    pub fn say_fault(&self, asked: &FaultAsked, plan: &Plan) -> Spoken {
        let FaultAsked::Found(fault) = asked else {
            let keys = self.sentence("counting-keys", &FluentArgs::new());
            return self.fault_asked(asked, plan).then(&keys).into();
        };
        let mend = fault.by_the_end.map_or_else(Sentence::default, |mend| {
            self.sentence("fault-by-the-end", &mend_args(fault, mend))
        });
        let keys = self.sentence("fault-found-keys", &FluentArgs::new());
        self.fault_asked(asked, plan).then(&mend).then(&keys).into()
    }

    /// The same after each press.
    pub fn say_fault_briefly(&self, asked: &FaultAsked, plan: &Plan) -> Spoken {
        match asked {
            FaultAsked::Which(_) | FaultAsked::Found(_) => self.say_fault(asked, plan),
            _ => self
                .sentence("fault-so-far", &fault_args(asked, plan))
                .into(),
        }
    }

    /// The same on the screen.
    pub fn show_fault(&self, asked: &FaultAsked, plan: &Plan, is_typed: bool) -> Shown {
        let args = fault_args(asked, plan);
        let (line, notes) = match asked {
            FaultAsked::Found(fault) => {
                let mend = fault
                    .by_the_end
                    .map(|mend| self.text("fault-by-the-end", &mend_args(fault, mend)));
                let told = self.text("fault-found", &args);
                let keys = self.text("fault-found-keys", &args);
                let notes = std::iter::once(told).chain(mend).chain([keys]).collect();
                (self.text("fault-found-line", &args), notes)
            }
            FaultAsked::Which(_) => (
                self.text("fault-which-line", &args),
                vec![
                    self.text("fault-which", &args),
                    self.text(keys_of(is_typed), &args),
                ],
            ),
            _ => {
                let question = (!is_typed).then(|| self.fault_asked(asked, plan).to_string());
                let keys = self.text(keys_of(is_typed), &args);
                let notes = question.into_iter().chain([keys]).collect();
                (self.text("fault-so-far", &args), notes)
            }
        };
        self.aside("fault-phase", line, notes)
    }

    /// What is asked once more, since nothing crosses at the place that was named.
    pub fn show_nothing_there(&self, asked: Shown) -> Shown {
        let notes = std::iter::once(asked.line).chain(asked.notes).collect();
        Shown {
            line: self.plainly("fault-nothing-there", &[]),
            notes,
            ..asked
        }
    }

    fn fault_asked(&self, asked: &FaultAsked, plan: &Plan) -> Sentence {
        let id = match asked {
            FaultAsked::Pin(_) => "fault-pin",
            FaultAsked::Row(_) => "fault-row",
            FaultAsked::Nth { .. } => "fault-nth",
            FaultAsked::Which(_) => "fault-which",
            FaultAsked::Found(_) => "fault-found",
        };
        self.sentence(id, &fault_args(asked, plan))
    }

    /// What stands in the place of a step: the name of it, a line, and what else there is to say.
    pub(super) fn aside(&self, phase: &str, line: String, notes: Vec<String>) -> Shown {
        Shown {
            phase: self.text(phase, &FluentArgs::new()),
            line,
            notes,
            ..Shown::default()
        }
    }
}

/// What next and back come to while a number is counted, or typed.
const fn keys_of(is_typed: bool) -> &'static str {
    if is_typed {
        "counting-keys-typed"
    } else {
        "counting-keys"
    }
}

fn fault_args(asked: &FaultAsked, plan: &Plan) -> FluentArgs<'static> {
    let knot = plan.knot();
    match asked {
        FaultAsked::Pin(number) => fluent_args! {
            "asked" => "pin", "number" => *number, "of" => knot.bights(),
            "hand" => plan.hand.selector(),
        },
        FaultAsked::Row(number) => fluent_args! {
            "asked" => "row", "number" => *number, "of" => knot.rows(),
        },
        FaultAsked::Nth { nth, of } => fluent_args! {
            "asked" => "nth", "number" => *nth, "of" => *of,
        },
        FaultAsked::Which(suspect) => suspect_args(suspect, knot.strands()),
        FaultAsked::Found(fault) => {
            let mut args = suspect_args(&fault.suspect, fault.strands);
            args.set("back", fault.legs_back);
            args
        }
    }
}

fn reach_args(reach: CordReach) -> FluentArgs<'static> {
    let (kind, spare, leg, pass) = match reach {
        CordReach::Whole(spare) => ("whole", spare, 0, 1),
        CordReach::UpTo(last) => ("leg", 0.0, last.leg, last.pass),
        CordReach::NotOneLeg => ("none", 0.0, 0, 1),
    };
    fluent_args! { "reach" => kind, "spare" => at_hand_of(spare), "leg" => leg, "pass" => pass }
}

fn measuring_args(millimetres: f64, step: f64, is_small: bool) -> FluentArgs<'static> {
    fluent_args! {
        "length" => at_hand_of(millimetres), "step" => at_hand_of(step),
        "small" => is_small.selector(),
    }
}

fn suspect_args(suspect: &Suspect, strands: u16) -> FluentArgs<'static> {
    fluent_args! {
        "leg" => suspect.pass_leg.leg, "pass" => suspect.pass_leg.pass,
        "strand" => suspect.pass_leg.strand, "strands" => strands,
        "heading" => suspect.leg.heading().selector(),
        "from" => named(suspect.leg.from), "to" => named(suspect.leg.to),
        "row" => suspect.crossing.row, "over" => suspect.crossing.over.selector(),
        "cords" => suspect.crossing.cords,
    }
}

fn mend_args(fault: &Fault, mend: EndMend) -> FluentArgs<'static> {
    let suspect = &fault.suspect;
    // The end is that of the leg itself, or of the one that it crosses.
    let over = suspect.crossing.over == (mend.leg == suspect.leg);
    let rim = match mend.leg.heading() {
        Heading::Rising => Rim::Bottom,
        Heading::Falling => Rim::Top,
    };
    fluent_args! {
        "pin" => named(mend.leg.from), "rim" => rim.selector(),
        "crossings" => mend.crossings, "over" => over.selector(),
    }
}
