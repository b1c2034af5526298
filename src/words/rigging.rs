//! The bag and the rigging, spoken and shown.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::lengths::{as_sold, cut, enough, fine, to_half};
use super::rig_cautions::of_caution;
use super::rounding::Length;
use super::selectors::Selector;
use super::spoken_messages::{Said, SpokenMessage};
use super::{Detail, Sentence, Shown, Spoken, Words};
use crate::bench::{HexKey, KitItem, Millimetres, RigCaution, Thread, ThreadSystem};
use crate::guide::{KitStep, Place, RigStep, Rigging, Script, Step, Task, What};

/// How many holes are told one by one.
const FEW_HOLES: usize = 6;

impl Words {
    /// One thing is told with all there is to say of it; several are named one after the other.
    pub(super) fn say_kit(&self, kit: &KitStep) -> Spoken {
        if let [thing] = &kit.things[..] {
            let (message, args) = of_kit(kit, thing);
            return self.spoken(message, &args);
        }
        let named = kit.things.iter().map(|thing| {
            let (message, args) = of_kit(kit, thing);
            self.spoken_in(Detail::Brief, message, &args)
        });
        let named: Spoken = named.collect();
        if self.detail() == Detail::Brief {
            return named;
        }
        let page = page_args(kit.number, kit.things.len(), ("items", kit.items));
        self.spoken(SpokenMessage::KitPageSay, &page)
            .then(&named)
            .then(&self.spoken(SpokenMessage::KitTickSay, &page))
    }

    pub(super) fn say_rig(&self, step: &RigStep) -> Spoken {
        let told = step.things.iter().map(|task| {
            let (message, args) = of_task(step, task);
            self.spoken(message, &args)
        });
        let told: Spoken = told.collect();
        if self.detail() == Detail::Brief {
            return told;
        }
        let page = page_args(step.number, step.things.len(), ("tasks", step.tasks));
        self.spoken(SpokenMessage::RigPageSay, &page).then(&told)
    }

    pub(super) fn show_kit(&self, kit: &KitStep) -> Shown {
        on_one_page(self.kit_things(kit))
    }

    pub(super) fn show_rig(&self, step: &RigStep) -> Shown {
        on_one_page(self.rig_things(step))
    }

    /// What the screen says of each thing on a page of the bag or of the rigging, each with its own
    /// notes; nothing of another step.
    pub fn things_on_page(&self, step: &Step) -> Vec<Shown> {
        let words = self.on(step.rims);
        match &step.what {
            What::Kit(kit) => words.kit_things(kit),
            What::Rig(rig) => words.rig_things(rig),
            _ => Vec::new(),
        }
    }

    fn kit_things(&self, kit: &KitStep) -> Vec<Shown> {
        let things = kit.things.iter().map(|thing| {
            let (message, args) = of_kit(kit, thing);
            self.show_with(message, &args)
        });
        things.collect()
    }

    /// A thing of a bag by itself, on one line.
    pub fn kit_line(&self, thing: &KitItem) -> String {
        let step = KitStep {
            number: 1,
            items: 1,
            things: Vec::new(),
        };
        let (message, args) = of_kit(&step, thing);
        let Shown { line, notes, .. } = self.show_with(message, &args);
        match notes.first() {
            Some(note) => format!("{line} ({note})"),
            None => line,
        }
    }

    /// The same where it is said as well: briefly.
    pub fn kit_sentence(&self, thing: &KitItem) -> Sentence {
        let step = KitStep {
            number: 1,
            items: 1,
            things: Vec::new(),
        };
        let (message, args) = of_kit(&step, thing);
        Sentence::new(
            self.kit_line(thing),
            self.spoken_in(Detail::Brief, message, &args),
        )
    }

    fn rig_things(&self, step: &RigStep) -> Vec<Shown> {
        let things = step.things.iter().map(|task| {
            let (message, args) = of_task(step, task);
            let mut shown = self.show_with(message, &args);
            if matches!(task, Task::Pins { .. }) {
                shown.notes.push(self.text("rig-pins-note-how", &args));
            }
            shown
        });
        things.collect()
    }

    /// What to take care of with a knot on a tube, where it is chosen and not yet rigged.
    pub fn caution(&self, caution: &RigCaution) -> Sentence {
        let (message, args) = of_caution(caution);
        self.sentence(&message.id(Detail::Brief), &args)
    }

    /// What the screen shows while this is spoken.
    fn show_with(&self, message: SpokenMessage, args: &FluentArgs) -> Shown {
        let stem = message.stem();
        let note = self.text(&format!("{stem}-note"), args);
        Shown {
            line: self.text(&format!("{stem}-show"), args),
            notes: Some(note)
                .filter(|note| !note.is_empty())
                .into_iter()
                .collect(),
            ..Shown::default()
        }
    }

    pub(super) fn kit_phase(&self, kit: &KitStep) -> String {
        let page = page_args(kit.number, kit.things.len(), ("items", kit.items));
        self.text("kit-phase-show", &page)
    }

    pub(super) fn rig_phase(&self, step: &RigStep) -> String {
        let page = page_args(step.number, step.things.len(), ("tasks", step.tasks));
        self.text("rig-phase-show", &page)
    }

    /// Where a tie stands before its first leg.
    pub(super) fn say_where_rigging(&self, script: &Script, place: Place) -> Spoken {
        let (items, tasks) = script.rigging().map_or((1, 1), Rigging::counts);
        let (phase, number, of) = match place {
            Place::Rig { task } => ("rig", task, tasks),
            place => ("kit", place.item().unwrap_or(1), items),
        };
        let args = fluent_args! { "phase" => phase, "number" => number, "of" => of };
        self.spoken(SpokenMessage::RiggingWhereSay, &args)
    }
}

/// The things of a page: a line for each, and what there is to note of them. One by itself needs no
/// page.
fn on_one_page(mut things: Vec<Shown>) -> Shown {
    if things.len() == 1
        && let Some(thing) = things.pop()
    {
        return thing;
    }
    let mut page = Shown::default();
    for thing in &things {
        if !page.line.is_empty() {
            page.line.push('\n');
        }
        page.line.push_str(&thing.line);
        page.notes.extend(thing.notes.iter().cloned());
    }
    page.things = things;
    page
}

/// Which things a page has, of how many.
fn page_args(number: u16, things: usize, (of, all): (&'static str, u16)) -> FluentArgs<'static> {
    let mut args = fluent_args! {
        "number" => number, "last" => usize::from(number) + things - 1,
        "single" => match things { 1 => "yes", 2 => "two", _ => "no" },
    };
    args.set(of, all);
    args
}

fn of_kit<'k>(kit: &KitStep, thing: &'k KitItem) -> Said<'k> {
    let (id, mut args) = match thing {
        KitItem::Tube { diameter } => (
            SpokenMessage::KitTubeSay,
            fluent_args! { "diameter" => fine(*diameter) },
        ),
        KitItem::Pins {
            count,
            length,
            thread,
        } => {
            let mut args = fluent_args! {
                "count" => *count, "length" => pin_length(*length, *thread),
            };
            set_thread(&mut args, *thread);
            (SpokenMessage::KitPinsSay, args)
        }
        KitItem::HexKey(key) => (
            SpokenMessage::KitKeySay,
            fluent_args! { "size" => size(*key) },
        ),
        KitItem::Cord {
            cord,
            pieces,
            length,
            grams,
        } => {
            let args = fluent_args! {
                "length" => cut(*length), "pieces" => *pieces, "diameter" => fine(cord.diameter),
                "name" => cord.name.as_deref().unwrap_or("none"),
                "grams" => grams.map_or(0.0, f64::ceil),
            };
            (SpokenMessage::KitCordSay, args)
        }
        KitItem::Tape { length, scraps } => (
            SpokenMessage::KitTapeSay,
            fluent_args! { "tape" => cut(*length), "scraps" => *scraps },
        ),
        KitItem::Sheet { pages } => (
            SpokenMessage::KitSheetSay,
            fluent_args! { "pages" => *pages },
        ),
        KitItem::Strip { length } => (
            SpokenMessage::KitStripSay,
            fluent_args! { "length" => fine(*length) },
        ),
        KitItem::Board { across } => (
            SpokenMessage::KitBoardSay,
            fluent_args! { "across" => enough(*across) },
        ),
        KitItem::Picks { count } => (
            SpokenMessage::KitPicksSay,
            fluent_args! { "count" => *count },
        ),
        KitItem::Tool(tool) => (
            SpokenMessage::KitToolSay,
            fluent_args! { "tool" => tool.selector() },
        ),
    };
    args.set("number", kit.number);
    args.set("items", kit.items);
    (id, args)
}

fn of_task<'t>(step: &RigStep, task: &'t Task) -> Said<'t> {
    let (id, mut args) = match task {
        Task::Heed(caution) => of_caution(caution),
        Task::Row { row, rows, holes } => (
            SpokenMessage::RigRowSay,
            fluent_args! { "row" => *row, "rows" => *rows, "holes" => *holes },
        ),
        Task::Pins {
            rim,
            holes,
            step,
            staggered,
            length,
            thread,
            key,
        } => {
            let mut args = fluent_args! {
                "rim" => rim.selector(), "count" => holes.len(), "step" => *step,
                "staggered" => staggered.selector(), "length" => pin_length(*length, *thread),
                "first" => holes.first().copied().unwrap_or(1),
                "key" => key.map_or("none".into(), |key| FluentValue::from(size(key))),
            };
            set_holes(&mut args, holes);
            (SpokenMessage::RigPinsSay, args)
        }
        Task::Space {
            spacing,
            turn_half_hole,
        } => (
            SpokenMessage::RigSpaceSay,
            fluent_args! { "spacing" => fine(*spacing), "half" => turn_half_hole.selector() },
        ),
        Task::Strip {
            rim,
            length,
            pitch,
            pins,
            spacing,
            shift,
            thick,
        } => (
            SpokenMessage::RigStripSay,
            fluent_args! {
                "rim" => rim.selector(), "length" => fine(*length), "pitch" => fine(*pitch),
                "pins" => *pins, "spacing" => fine(*spacing),
                "shift" => shift.map_or("none".into(), |shift| FluentValue::from(fine(shift))),
                "end" => match thick {
                    None => "none",
                    Some(thick) if thick == rim => "thick",
                    Some(_) => "thin",
                },
            },
        ),
        Task::Board {
            outer,
            inner,
            pins,
            rows,
            staggered,
        } => (
            SpokenMessage::RigBoardSay,
            fluent_args! {
                "outer" => to_half(*outer), "inner" => to_half(*inner), "pins" => *pins,
                "rows" => *rows, "circles" => 2 * *rows, "all" => 2 * *rows * *pins,
                "staggered" => staggered.selector(),
            },
        ),
        Task::Nest {
            row,
            pins,
            ring,
            inside,
        } => (
            SpokenMessage::RigNestSay,
            fluent_args! {
                "rows" => if row.of == 2 { "two" } else { "more" }, "row" => row.number,
                "pins" => *pins, "inside" => fine(*inside),
                "ring" => ring.as_ref().map_or(0, |ring| ring.row),
                "holes" => ring.as_ref().map_or(0, |ring| ring.holes_in_row),
                "step" => ring.as_ref().map_or(0, |ring| ring.holes_in_row / *pins),
            },
        ),
        Task::Number { pins, rows, tape } => (
            SpokenMessage::RigNumberSay,
            fluent_args! { "pins" => *pins, "rows" => *rows, "tape" => cut(*tape) },
        ),
        Task::Cut {
            cord,
            pieces,
            length,
        } => {
            let args = fluent_args! {
                "length" => cut(*length), "pieces" => *pieces, "name" => cord.as_deref().unwrap_or("none"),
            };
            (SpokenMessage::RigCutSay, args)
        }
    };
    args.set("hand", step.hand.selector());
    (id, args)
}

fn set_holes(args: &mut FluentArgs, holes: &[u16]) {
    let few = (2..=FEW_HOLES).contains(&holes.len());
    let (last, most) = holes
        .split_last()
        .map_or((0, &[][..]), |(last, most)| (*last, most));
    let most: Vec<String> = most.iter().map(ToString::to_string).collect();
    args.set("few", few.selector());
    args.set("most", most.join(", "));
    args.set("last", last);
}

/// The name of a thread, and beside it what a numbered and a fractional one are called by ear.
fn set_thread(args: &mut FluentArgs, thread: Option<Thread>) {
    let name = thread.map_or("none", Thread::name);
    let numbered = name.strip_prefix('#');
    let fraction = thread
        .filter(|thread| thread.system() == ThreadSystem::Inch && numbered.is_none())
        .map(|thread| as_sold(thread.diameter(), ThreadSystem::Inch));
    args.set("thread", name);
    args.set("numbered", numbered.unwrap_or("none"));
    args.set(
        "fraction",
        fraction.map_or("none".into(), FluentValue::from),
    );
}

/// How long a pin is: as set screws of its thread are sold, when that is known.
fn pin_length(length: Millimetres, thread: Option<Thread>) -> Length {
    thread.map_or_else(|| fine(length), |thread| as_sold(length, thread.system()))
}

/// What a key is bought by.
const fn size(key: HexKey) -> Length {
    as_sold(key.across_flats, key.system)
}
