//! Why nothing fits, and what would: one sentence.

use fluent::fluent_args;

use super::lengths::{at_hand as there_is, bound, cut, enough, fine};
use super::setup_form::{numbers, or_none};
use super::{Sentence, Words};
use crate::bench::{Millimetres, Misfit};

impl Words {
    /// Why nothing fits and what would, in one sentence.
    pub fn misfits(&self, misfits: &[Misfit]) -> Sentence {
        let other = |cord: &Option<Millimetres>| or_none(*cord, fine);
        match misfits.first() {
            None => self.sentence("fit-nothing", &fluent_args! {}),
            Some(Misfit::CordThickerThanObject { cord, object }) => self.sentence(
                "fit-cord-thick",
                &fluent_args! { "cord" => fine(*cord), "object" => fine(*object) },
            ),
            Some(Misfit::Refused(error)) => self.shape_error(error),
            Some(Misfit::TooManyCords { thinner_cord }) => self.sentence(
                "fit-too-many-cords",
                &fluent_args! { "cord" => other(thinner_cord) },
            ),
            Some(Misfit::CoverTooShort {
                wanted,
                narrowest,
                thinner_cord,
            }) => {
                let args = fluent_args! {
                    "wanted" => fine(*wanted), "narrowest" => fine(*narrowest),
                    "cord" => other(thinner_cord),
                };
                self.sentence("fit-cover-short", &args)
            }
            Some(Misfit::CoverTooLong {
                wanted,
                thicker_cord,
            }) => {
                let args =
                    fluent_args! { "wanted" => fine(*wanted), "cord" => other(thicker_cord) };
                self.sentence("fit-cover-long", &args)
            }
            Some(Misfit::NoRowDivides {
                would_fit,
                can_take,
            }) => {
                let args = fluent_args! {
                    "would_fit" => numbers(would_fit), "can_take" => numbers(can_take),
                };
                self.sentence("fit-no-row", &args)
            }
            Some(Misfit::TubeTooThin {
                tube,
                would_do,
                pin_at_most,
            }) => {
                let args = fluent_args! {
                    "tube" => fine(*tube), "would_do" => enough(*would_do),
                    "pin" => or_none(*pin_at_most, bound),
                };
                self.sentence("fit-tube-thin", &args)
            }
            Some(Misfit::RingTooNarrow {
                ring,
                nested,
                needed,
            }) => self.ring_too_narrow(*ring, *nested, *needed),
            Some(Misfit::TubeTooShort { length, would_do }) => self.sentence(
                "fit-tube-short",
                &fluent_args! { "length" => fine(*length), "would_do" => enough(*would_do) },
            ),
            Some(misfit @ (Misfit::NoneLies { .. } | Misfit::NoRoomInPlace { .. })) => {
                self.ground_misfit(misfit)
            }
            Some(Misfit::FilteredOut { others }) => {
                self.sentence("fit-filtered", &fluent_args! { "others" => *others })
            }
            Some(Misfit::NotEnoughCord { at_hand, least }) => {
                let args = fluent_args! { "least" => cut(*least), "at_hand" => there_is(*at_hand) };
                self.sentence("fit-have-short", &args)
            }
        }
    }
}
