//! What is covered, in words; and what can be wrong with what was said of it, one sentence each.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::lengths::fine;
use super::selectors::Selector;
use super::setup_form::example;
use super::{Sentence, Words};
use crate::bench::{Ground, Millimetres};
use crate::guide::{GroundError, Setup, SetupField};

/// What a message selects a ground by.
pub(super) const fn ground_kind(ground: Ground) -> &'static str {
    match ground {
        Ground::Round(_) => "round",
        Ground::Taper { .. } => "taper",
        Ground::Ball(_) => "ball",
        Ground::Flat { .. } => "mat",
    }
}

/// What there is to say of a ground: its kind, its diameter (of a taper that of its bottom end), the
/// other end, and the hole, each none where there is none.
pub(super) fn set_ground(args: &mut FluentArgs<'static>, ground: Ground) {
    let length = |length: Option<Millimetres>| {
        length.map_or(FluentValue::from("none"), |length| fine(length).into())
    };
    let (object, top, hole) = match ground {
        Ground::Round(diameter) | Ground::Ball(diameter) => (diameter, None, None),
        Ground::Taper { bottom, top, .. } => (bottom, Some(top), None),
        Ground::Flat { outer, hole } => (outer, None, hole),
    };
    args.set("ground", ground_kind(ground));
    args.set("object", fine(object));
    args.set("top", length(top));
    args.set("hole", length(hole));
}

/// What a knot is tied on: the tube, or what it covers.
pub(super) fn set_tied_on(args: &mut FluentArgs<'static>, setup: &Setup) {
    set_ground(args, setup.ground());
    let on = if setup.in_place {
        ground_kind(setup.ground())
    } else {
        "tube"
    };
    args.set("on", on);
    args.set("tube", fine(setup.tube.diameter));
}

impl Words {
    /// The sentence for a taper, a ball or a mat, or a knot tied in place, that there cannot be.
    pub(super) fn ground_error(&self, error: &GroundError) -> Sentence {
        let asking = |asking: SetupField| fluent_args! { "asking" => asking.selector() };
        match error {
            GroundError::Twice(one, other) => {
                let args = fluent_args! { "one" => one.selector(), "other" => other.selector() };
                self.sentence("ask-object-twice", &args)
            }
            GroundError::Halves { field, given } => {
                let mut args = asking(*field);
                args.set("given", given.as_str());
                self.sentence("ask-halves", &args)
            }
            GroundError::OneLength { field, given } => {
                let mut args = asking(*field);
                args.set("given", given.as_str());
                args.set("example", example(*field));
                self.sentence("ask-one-length", &args)
            }
            GroundError::TaperWithoutCover => self.sentence("ask-taper-length", &fluent_args! {}),
            GroundError::EndTooThin { end, cord } => self.sentence(
                "ask-end-thin",
                &fluent_args! { "end" => fine(*end), "cord" => fine(*cord) },
            ),
            GroundError::HoleTooWide { outer, hole } => self.sentence(
                "ask-hole-wide",
                &fluent_args! { "outer" => fine(*outer), "hole" => fine(*hole) },
            ),
            GroundError::WholeWithCover(said) => self.sentence("ask-whole-cover", &asking(*said)),
            GroundError::InPlaceUnknown { given } => self.sentence(
                "ask-in-place-unknown",
                &fluent_args! { "given" => given.as_str() },
            ),
            GroundError::InPlaceWithTube(said) => {
                self.sentence("ask-in-place-tube", &asking(*said))
            }
            GroundError::MatWithTube(said) => self.sentence("ask-mat-tube", &asking(*said)),
            GroundError::InPlaceOnNothing => {
                self.sentence("ask-in-place-nothing", &fluent_args! {})
            }
        }
    }
}
