//! Words on paper: cards, strips, stages, and what can be wrong with them.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::course::weave_of;
use super::covering::set_tied_on;
use super::lengths::{by_hand, fine, to_half};
use super::pins::{named, set_nested};
use super::selectors::Selector;
use super::step_args::{by_fingers, crossing_args, fair_open_args, lay_args};
use super::{Sentence, Units, Words};
use crate::bench::{Board, Layout, Millimetres, RingPins, Tube};
use crate::guide::{LayStep, Plan, Script, Task, What};
use crate::knot::{Crossing, Pin, Rim};

impl Words {
    /// The sentences of a card on how a tie is worked and where its pins go.
    pub fn card_facts(&self, plan: &Plan, pinned: Option<(&Tube, &Layout)>) -> Vec<String> {
        let (kind, weave) = weave_of(plan.knot());
        let inside = if plan.side.turns_inside(Rim::Top, plan.hand) {
            Rim::Top
        } else {
            Rim::Bottom
        };
        let made_for = plan.setup().map(|setup| {
            let mut args = FluentArgs::new();
            set_tied_on(&mut args, setup);
            args.set("cord", fine(setup.cord.diameter));
            self.text("card-for", &args)
        });
        let mut facts: Vec<String> = made_for.into_iter().collect();
        facts.extend([
            self.text(
                "card-weave",
                &fluent_args! { "kind" => kind, "weave" => weave },
            ),
            self.text(
                "card-work",
                &fluent_args! {
                    "hand" => plan.hand.selector(), "passes" => plan.laying().passes(),
                    "inside" => inside.selector(),
                },
            ),
            self.text(
                "card-pins",
                &fluent_args! {
                    "pins" => plan.knot().bights(), "rows" => plan.knot().nested(),
                    "staggered" => plan.knot().is_staggered().selector(),
                },
            ),
        ]);
        if plan.knot().lattice().is_interwoven() {
            let args = fluent_args! { "rows" => plan.knot().nested() };
            facts.push(self.text("card-rows", &args));
        }
        match pinned {
            None => {}
            Some((tube, Layout::Strip(strip))) => {
                let args = fluent_args! {
                    "tube" => fine(tube.diameter), "apart" => fine(strip.pitch),
                };
                facts.push(self.text("card-pins-apart", &args));
            }
            Some((_, Layout::Tapes(tapes))) => {
                let args = fluent_args! {
                    "bottom" => fine(tapes.bottom.pitch), "top" => fine(tapes.top.pitch),
                };
                facts.push(self.text("card-tapes-apart", &args));
            }
            Some((_, Layout::Board(board))) => {
                let args = fluent_args! {
                    "outer" => to_half(board.across()),
                    "inner" => to_half(board.inner.across()),
                };
                facts.push(self.text("card-board-circles", &args));
            }
            Some((
                _,
                Layout::Rings {
                    bottom,
                    top,
                    inner,
                    turn_half_hole,
                },
            )) => {
                if *turn_half_hole {
                    facts.push(self.text("card-half-hole", &FluentArgs::new()));
                }
                let inner = inner.iter().map(|[bottom, top]| [bottom, top]);
                for [bottom, top] in [[bottom, top]].into_iter().chain(inner) {
                    for (rim, ring) in [(Rim::Bottom, bottom), (Rim::Top, top)] {
                        facts.push(self.text("card-pins-ring", &ring_args(rim, ring)));
                    }
                }
            }
        }
        facts
    }

    /// The sentence for a number of cards that is none.
    pub fn class_copies(&self, given: &str, most: u16) -> String {
        self.text(
            "class-copies",
            &fluent_args! { "given" => given, "most" => most },
        )
    }

    /// The sentence for a list of names that is none.
    pub fn class_names(&self, given: &str, most: u16) -> String {
        self.text(
            "class-names",
            &fluent_args! { "given" => given, "most" => most },
        )
    }

    /// The head of a pass of a strand on a card.
    pub fn card_pass(&self, pass: u16, strand: u16, strands: u16, pin: Pin) -> String {
        let args = fluent_args! {
            "pass" => pass, "strand" => strand, "strands" => strands, "pin" => named(pin),
        };
        self.text("card-pass", &args)
    }

    /// The way of a leg from pin to pin.
    pub fn card_way(&self, lay: &LayStep) -> String {
        self.text("card-way", &lay_args(lay))
    }

    /// One crossing in the table of a card.
    pub fn card_crossing(&self, crossing: &Crossing) -> String {
        self.text("lay-show-crossing", &crossing_args(crossing, 0, 1))
    }

    /// What a card says of the tube once it is rigged for the cord: how far apart the rows of pins stand, and
    /// what to cut.
    pub fn card_rigging(&self, script: &Script) -> Vec<String> {
        let steps = script.clone().packing_one_by_one(true);
        let knot = script.plan().knot();
        let told = steps.steps().filter(|step| {
            let What::Rig(rig) = &step.what else {
                return false;
            };
            rig.things.iter().any(|task| {
                matches!(
                    task,
                    Task::Space { .. }
                        | Task::Cut { .. }
                        | Task::Nest { .. }
                        | Task::Strip { rim: Rim::Top, .. }
                )
            })
        });
        told.map(|step| format!("{}.", self.show(knot, &step).in_words()))
            .collect()
    }

    /// How a knot is lifted, drawn up and finished, a sentence or two of each.
    pub fn card_after(&self, script: &Script) -> Vec<String> {
        let rounds = script.fair_rounds();
        let fair = script.steps().find_map(|step| match step.what {
            What::Fair(fair) => Some(fair),
            _ => None,
        });
        let draw = fair.as_ref().and_then(|fair| fair.draw);
        let draw = draw.and_then(by_fingers);
        let has_rings = |plan: &Plan| plan.setup().is_none_or(|setup| setup.tube.rows().is_some());
        let args = fluent_args! {
            "rings" => has_rings(script.plan()).selector(), "times" => rounds,
            "known" => draw.is_some().selector(), "draw" => by_hand(draw.unwrap_or_default()),
        };
        let [lift, fairing, finish] =
            ["card-lift", "card-fair", "card-finish"].map(|id| self.text(id, &args));
        let open = fair.as_ref().and_then(|fair| {
            let args = fair_open_args(fair, fair.left_open?);
            Some(self.text("fair-open-say", &args))
        });
        let fairing = match open {
            Some(open) => format!("{fairing} {open}"),
            None => fairing,
        };
        vec![lift, fairing, finish]
    }

    /// What a card tells its tyer to mind.
    pub fn card_cautions(&self) -> Vec<String> {
        ["load", "heat", "blade", "pins", "pull", "children", "hands"]
            .iter()
            .filter(|what| **what != "pins" || self.rims().has_pins())
            .map(|what| self.plainly(&format!("card-caution-{what}"), &[]))
            .collect()
    }

    /// The line at the foot of a page.
    pub fn sheet_page(&self, page: usize, pages: usize) -> String {
        self.text(
            "sheet-page",
            &fluent_args! { "page" => page, "pages" => pages },
        )
    }

    /// The title of a strip.
    pub fn strip_title(&self, plan: &Plan, tube: &Tube) -> String {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "tube" => fine(tube.diameter), "round" => fine(tube.circumference()),
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("strip-title", &args)
    }

    /// What to do with a strip.
    pub fn strip_how(&self, plan: &Plan, layout: &Layout) -> Vec<String> {
        let laid = plan.rig().ok().flatten().map(|rig| &rig.laid);
        let length = |known: Option<Millimetres>| {
            known.map_or("none".into(), |known| FluentValue::from(fine(known)))
        };
        let spacing = laid.map(|laid| laid.ring_spacing);
        let has_rings = matches!(layout, Layout::Rings { .. });
        let mut how = Vec::new();
        if let Layout::Rings {
            turn_half_hole: true,
            ..
        } = layout
        {
            how.push(self.plainly("strip-half-hole", &[]));
        }
        how.push(self.text(
            "strip-how",
            &fluent_args! { "rings" => has_rings.selector() },
        ));
        how.push(self.text(
            "strip-hand",
            &fluent_args! { "hand" => plan.hand.selector() },
        ));
        let args = fluent_args! {
            "rings" => has_rings.selector(), "known" => spacing.is_some().selector(),
            "spacing" => length(spacing), "rows" => plan.knot().nested(),
        };
        how.push(self.text("strip-spacing", &args));
        if plan.knot().lattice().is_interwoven() {
            let args = fluent_args! {
                "rows" => plan.knot().nested(), "rings" => has_rings.selector(),
                "apart" => length(laid.and_then(|laid| laid.rows_apart)),
            };
            how.push(self.text("strip-rows", &args));
        }
        how
    }

    /// The title of the tapes for a thing that a knot is tied on in place, for which this tube stands.
    pub fn tape_title(&self, plan: &Plan, tube: &Tube, layout: &Layout) -> String {
        let [bottom, top] = match layout {
            Layout::Tapes(tapes) => [tapes.bottom.length, tapes.top.length],
            _ => [tube.circumference(); 2],
        };
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "bottom" => fine(bottom), "top" => fine(top),
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("tape-title", &args)
    }

    /// The title of the sheet of a board.
    pub fn board_title(&self, plan: &Plan, board: &Board) -> String {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "outer" => to_half(board.outer.across()), "inner" => to_half(board.inner.across()),
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("board-title", &args)
    }

    /// What to do with the sheet of a board.
    pub fn board_how(&self, plan: &Plan) -> Vec<String> {
        let args = fluent_args! {
            "hand" => plan.hand.selector(), "rows" => plan.knot().nested(),
        };
        ["board-how", "board-pages", "board-hand"]
            .map(|id| self.text(id, &args))
            .to_vec()
    }

    /// The rows of pins of a rim as they are named on a strip, outermost first.
    pub fn strip_rows(&self, rows: u16) -> Vec<String> {
        let name = |row: u16| {
            let rows = if rows == 2 { "two" } else { "more" };
            self.text("strip-row", &fluent_args! { "rows" => rows, "row" => row })
        };
        (1..=rows).map(name).collect()
    }

    /// What a strip tells its tyer to mind, in one paragraph.
    pub fn strip_cautions(&self) -> String {
        let pins = self.rims().has_pins().then_some("card-caution-pins");
        let others = ["card-caution-blade", "card-caution-children"];
        let told = pins.into_iter().chain(others);
        let told: Vec<String> = told.map(|id| self.plainly(id, &[])).collect();
        told.join(" ")
    }

    /// The line that shows whether a page was printed at its true size: its length in hundredths
    /// of a millimetre, a round number in the tyer's units, and the words beside it.
    pub fn strip_bar(&self) -> (u16, String) {
        let hundredths = match self.units() {
            Units::Metric => 5000,
            Units::Inch => 5080,
        };
        let bar = by_hand(f64::from(hundredths) / 100.0);
        let text = self.text("strip-bar", &fluent_args! { "bar" => bar });
        (hundredths, text)
    }

    /// The words where another page is to be laid on.
    pub fn strip_join(&self, page: usize) -> String {
        self.text("strip-join", &fluent_args! { "page" => page })
    }

    /// The sentence for a number of dots an inch that cannot be.
    pub fn sheet_dpi(&self, given: &str, least: u16, most: u16) -> String {
        let args = fluent_args! { "given" => given, "least" => least, "most" => most };
        self.text("sheet-dpi", &args)
    }

    /// The sentence for a number of pixels that a reel can't be wide.
    pub fn sheet_width(&self, given: &str, least: u16, most: u16) -> String {
        let args = fluent_args! { "given" => given, "least" => least, "most" => most };
        self.text("sheet-width", &args)
    }

    /// The sentence for a step that a tie does not have.
    pub fn sheet_step(&self, given: &str, steps: usize) -> String {
        let args = fluent_args! { "given" => given, "steps" => steps };
        self.text("sheet-step", &args)
    }

    /// So many pages or frames are made.
    pub fn sheet_progress(&self, done: u32, pages: u32) -> String {
        self.text(
            "sheet-progress",
            &fluent_args! { "page" => done, "pages" => pages },
        )
    }

    /// A sheet was stopped after so many pages or frames: either they would have gone into one file, such
    /// as a PDF, or each is in a file of its own.
    pub fn sheet_stopped(&self, done: u32, pages: u32, is_one_file: bool) -> Sentence {
        let args = fluent_args! {
            "page" => done, "pages" => pages, "one" => is_one_file.selector(),
        };
        self.sentence("sheet-stopped", &args)
    }

    /// The moving picture of a class was stopped after so many frames, when the cards were made.
    pub fn class_stopped(&self, done: u32, frames: u32) -> Sentence {
        let args = fluent_args! { "page" => done, "pages" => frames };
        self.sentence("class-stopped", &args)
    }

    /// The sentence for a sheet with more than `most` of what it counts.
    pub fn sheet_long(&self, id: &str, most: u32) -> String {
        self.text(id, &fluent_args! { "most" => most })
    }
}

fn ring_args(rim: Rim, ring: &RingPins) -> FluentArgs<'static> {
    let first = ring.holes.first().copied().unwrap_or(1);
    let step = match ring.holes.as_slice() {
        [one, other, ..] => other.abs_diff(*one),
        _ => ring.holes_in_row,
    };
    fluent_args! {
        "rim" => rim.selector(), "row" => ring.row, "holes" => ring.holes_in_row,
        "first" => first, "step" => step,
    }
}
