//! What to know before a tube is rigged, in words.

use fluent::{FluentValue, fluent_args};

use super::lengths::{bound, by_hand, enough, fine};
use super::setup_form::cure_args;
use super::spoken_messages::{Said, SpokenMessage};
use crate::bench::RigCaution;

/// What is spoken of a caution, and what it is told.
pub(super) fn of_caution(caution: &RigCaution) -> Said<'static> {
    match caution {
        RigCaution::PinsTooShort {
            given,
            needed,
            hold_passes,
        } => (
            SpokenMessage::RigShortPinsSay,
            fluent_args! {
                "given" => fine(*given), "needed" => fine(*needed), "hold" => *hold_passes,
            },
        ),
        RigCaution::ObjectThickerThanTube { object, tube } => (
            SpokenMessage::RigThickObjectSay,
            fluent_args! { "object" => fine(*object), "tube" => fine(*tube) },
        ),
        RigCaution::PinsClose {
            gap,
            comfortable,
            cure,
        } => {
            let mut args = cure_args(cure);
            args.set("gap", bound(*gap));
            args.set("comfortable", enough(*comfortable));
            (SpokenMessage::RigClosePinsSay, args)
        }
        RigCaution::TubeTooThick {
            slack,
            legs,
            better,
        } => (
            SpokenMessage::RigThickTubeSay,
            fluent_args! {
                "slack" => by_hand(slack.get()), "legs" => *legs,
                "better" => better.map_or("none".into(), |tube| FluentValue::from(fine(tube))),
            },
        ),
        RigCaution::RingsTooWide {
            ring,
            slack,
            would_do,
        } => (
            SpokenMessage::RigWideRingsSay,
            fluent_args! {
                "ring" => fine(*ring), "slack" => by_hand(slack.get()),
                "would_do" => bound(*would_do),
            },
        ),
    }
}
