//! A knot that the tyer has in mind, held against an object, in words.

use fluent::fluent_args;

use super::lengths::{cut, fine};
use super::selectors::Selector;
use super::{Sentence, Words};
use crate::bench::{DrawnUp, Millimetres};
use crate::guide::{KnownFit, KnownVerdict};

impl Words {
    /// The field for a knot that the tyer has in mind, with what is typed there, as it is said.
    pub fn say_knot_field(&self, typed: &str) -> Sentence {
        let state = if typed.trim().is_empty() {
            "empty"
        } else {
            "typed"
        };
        self.notice("known-field", &[("state", state), ("text", typed.trim())])
    }

    /// That two numbers are wanted there.
    pub fn unread_knot(&self, typed: &str) -> Sentence {
        self.notice("known-unread", &[("given", typed.trim())])
    }

    /// What a knot in so many passes comes to: its widths, whether it covers so much, and if not, why.
    pub fn known_fit(&self, known: &KnownFit, cover: Option<Millimetres>) -> Sentence {
        let mut args = fluent_args! {
            "passes" => known.counts.passes(), "drawn" => DrawnUp::Tight.selector(),
        };
        // Each verdict tells the lengths that it has.
        let range = known.range.map(|range| [range.tight, range.widest]);
        let [tight, widest] = range.map_or([None, None], |ends| ends.map(Some));
        let (mut width, mut needed, mut hand) = (None, None, None);
        let verdict = match &known.verdict {
            KnownVerdict::AnyWidth => "any",
            KnownVerdict::Covers {
                width: covered,
                drawn,
                ..
            } => {
                width = Some(*covered);
                args.set("drawn", drawn.selector());
                "covers"
            }
            KnownVerdict::TooNarrow => "narrow",
            KnownVerdict::TooWide => "wide",
            KnownVerdict::DoesNotGoRound => "round",
            KnownVerdict::NotOnTube(_) => "tube",
            KnownVerdict::NotEnoughCord {
                at_hand,
                needed: takes,
            } => {
                (needed, hand) = (Some(*takes), Some(*at_hand));
                "cord"
            }
        };
        args.set("verdict", verdict);
        let widths = [
            ("tight", tight),
            ("widest", widest),
            ("width", width),
            ("cover", cover),
        ];
        for (name, length) in widths {
            if let Some(length) = length {
                args.set(name, fine(length));
            }
        }
        for (name, length) in [("needed", needed), ("hand", hand)] {
            if let Some(length) = length {
                args.set(name, cut(length));
            }
        }
        let told = self.sentence("known-fit", &args);
        match &known.verdict {
            KnownVerdict::NotOnTube(error) => told.then(&self.rig_error(error)),
            KnownVerdict::Covers { cautions, .. } => {
                let cautions = cautions.iter().map(|caution| self.caution(caution));
                cautions.fold(told, |told, caution| told.then(&caution))
            }
            _ => told,
        }
    }
}
