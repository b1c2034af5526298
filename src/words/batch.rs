//! Words of several pieces of the same.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::harmless::shown_name;
use super::labour::work_time;
use super::lengths::fine;
use super::selectors::Selector;
use super::{Sentence, Shown, Words};
use crate::bench::{BatchPace, Rig};
use crate::guide::Plan;
use crate::shelf::Batch;

impl Words {
    /// Which piece of how many.
    pub fn piece_of_batch(&self, batch: &Batch) -> Sentence {
        self.sentence("batch-piece", &piece_args(batch))
    }

    /// What is said when a piece comes into hand: which it is, and whether the tube stands.
    pub fn piece_begun(&self, batch: &Batch, plan: &Plan) -> Sentence {
        let piece = self.sentence("batch-piece-begun", &piece_args(batch));
        if batch.number() > 1 && plan.tube_stands {
            piece.then(&self.notice("batch-tube-stands", &[]))
        } else {
            piece
        }
    }

    /// That all of a piece of an order are tied.
    pub fn all_tied(&self, piece: u16, of: u16) -> Sentence {
        self.sentence(
            "batch-all-tied",
            &fluent_args! { "piece" => piece, "of" => of },
        )
    }

    /// The sentence for a number of pieces that is none.
    pub fn pieces_unreadable(&self, given: &str) -> String {
        let args = fluent_args! { "given" => given, "most" => Batch::MOST };
        self.text("batch-pieces-number", &args)
    }

    /// Asks whether the tube stands as the piece before left it.
    pub fn standing_question(&self, rig: &Rig) -> Sentence {
        self.sentence("batch-ask-standing", &rig_args(rig))
    }

    /// The same on the screen.
    pub fn show_standing(&self, rig: &Rig) -> Shown {
        let args = rig_args(rig);
        let notes = ["batch-standing-note", "batch-standing-note-keys"];
        Shown {
            line: self.text("batch-standing-show", &args),
            notes: notes.map(|id| self.text(id, &args)).to_vec(),
            ..Shown::default()
        }
    }

    /// What is said when a piece is done: how long it took, the mean, and what the next takes.
    pub fn piece_done(&self, batch: &Batch, minutes: Option<f64>, pace: &BatchPace) -> Sentence {
        let time = |minutes: Option<f64>| {
            let told = minutes.map(|minutes| FluentValue::from(work_time(minutes)));
            told.unwrap_or_else(|| "none".into())
        };
        let mean = pace.mean().filter(|_| pace.pieces() > 1);
        let next = pace.next(batch.tube_stands.unwrap_or(false));
        let mut args = piece_args(batch);
        args.set("time", time(minutes));
        args.set("mean", time(mean));
        args.set("pieces", pace.pieces());
        args.set("next", time(next));
        args.set("more", batch.has_next().selector());
        let here = if is_on_stick(batch) {
            batch.knot()
        } else {
            None
        };
        args.set(
            "following",
            here.unwrap_or(batch.number()).saturating_add(1),
        );
        let knots = batch.order.as_ref().map(|order| order.knots);
        args.set(
            "rest",
            (batch.knot() < knots && batch.knot().is_some()).selector(),
        );
        self.sentence("batch-piece-done", &args)
    }
}

fn is_on_stick(batch: &Batch) -> bool {
    let order = batch.order.as_ref();
    order.is_some_and(|order| order.on_stick && order.knots > 1) && batch.knot().is_some()
}

fn piece_args(batch: &Batch) -> FluentArgs<'static> {
    let order = batch.order.as_ref();
    let name = order.map_or("", |order| &order.name);
    fluent_args! {
        "number" => batch.number(), "of" => batch.of.unwrap_or(0),
        "stick" => is_on_stick(batch).selector(), "knot" => batch.knot().unwrap_or(0),
        "knots" => order.map_or(0, |order| order.knots),
        "order" => shown_name(name), "named" => (!name.trim().is_empty()).selector(),
    }
}

fn rig_args(rig: &Rig) -> FluentArgs<'static> {
    fluent_args! {
        "pins" => rig.counts.bights(), "spacing" => fine(rig.laid.ring_spacing),
    }
}
