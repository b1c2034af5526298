//! Fingers for messages, where a knot is tied round the hand.
//!
//! Like a length, where a bight lies is one argument of a message and is told when the message is looked
//! up: so no message has to name every finger.

use std::borrow::Cow;

use fluent::types::FluentType;
use fluent::{FluentArgs, FluentValue, fluent_args};

use super::Words;
use crate::guide::{Captions, FingerLeg, FingerPlace, FingerWay, Plan, RimNames};
use crate::knot::Rim;

/// What is told of the fingers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum OfFingers {
    /// Where a bight lies.
    Place(FingerPlace),
    /// Which way a leg goes.
    Way(FingerWay),
    /// How the hand is turned to see it.
    View(FingerWay),
}

/// The places of a leg round the hand, its way, and how the hand is turned.
pub(super) fn set_leg(args: &mut FluentArgs<'_>, leg: FingerLeg) {
    args.set("from-place", told(OfFingers::Place(leg.from)));
    args.set("to-place", told(OfFingers::Place(leg.to)));
    args.set("way", told(OfFingers::Way(leg.way)));
    args.set("view", told(OfFingers::View(leg.way)));
}

/// Where a bight lies, as a message is told it.
pub(super) fn place(place: FingerPlace) -> FluentValue<'static> {
    told(OfFingers::Place(place))
}

fn told(told: OfFingers) -> FluentValue<'static> {
    FluentValue::Custom(Box::new(told))
}

/// What of the fingers an argument is, if it is of them.
pub(super) fn fingers_of(value: &FluentValue) -> Option<OfFingers> {
    match value {
        FluentValue::Custom(custom) => (**custom).as_any().downcast_ref().copied(),
        _ => None,
    }
}

impl Words {
    /// What is written in a picture of a tie: the finger of every bight round the hand, on a board where in
    /// and out are, and what a pin is that is round the back.
    pub fn captions(&self, plan: &Plan) -> Captions {
        let bights = plan.fingers().map(|fingers| {
            [Rim::Bottom, Rim::Top].map(|rim| {
                let names = plan.knot().pins(rim).map(|pin| {
                    let place: &str = fingers.place(pin).into();
                    let args = fluent_args! { "number" => pin.number, "place" => place };
                    self.text("picture-finger", &args)
                });
                names.collect()
            })
        });
        let is_board = plan.rims() == RimNames::OuterInner;
        let circle =
            |circle: &str| self.text("picture-circle", &fluent_args! { "circle" => circle });
        // Round the hand the name of a bight says where it lies, and a board has no back.
        let behind = (bights.is_none() && !is_board)
            .then(|| self.text("picture-behind", &FluentArgs::new()));
        Captions {
            circles: is_board.then(|| ["outer", "inner"].map(circle)),
            bights: bights.unwrap_or_default(),
            behind,
        }
    }

    /// The words for it: "back of the little finger".
    pub(super) fn of_fingers(&self, told: OfFingers) -> String {
        match told {
            OfFingers::Place(place) => {
                let name: &str = place.into();
                self.text("finger-place", &fluent_args! { "place" => name })
            }
            OfFingers::Way(way) => {
                let name: &str = way.into();
                self.text("finger-way", &fluent_args! { "way" => name })
            }
            OfFingers::View(way) => {
                let name: &str = way.into();
                self.text("finger-view", &fluent_args! { "way" => name })
            }
        }
    }
}

impl FluentType for OfFingers {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(*self)
    }

    /// Never reached by way of [`Words::text`], which tells fingers before anything else.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        format!("{self:?}").into()
    }

    fn as_string_threadsafe(
        &self,
        _: &intl_memoizer::concurrent::IntlLangMemoizer,
    ) -> Cow<'static, str> {
        format!("{self:?}").into()
    }
}
