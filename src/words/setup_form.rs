//! What can be wrong in the form for object, cord and tube, and why nothing fits: one sentence
//! each.

use fluent::{FluentArgs, FluentValue, fluent_args};

use super::lengths::{at_hand as there_is, bound, cut_of, enough, fine};
use super::rounding::Length;
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Sentence, Words};
use crate::bench::{
    BenchError, Give, LengthError, Millimetres, Prices, RigError, RoomCure, STANDARD_CORDS,
    ShapeError, Thread, Waste,
};
use crate::guide::{PresetNameError, Presets, SetupError, SetupField};

/// How many numbers of bights are told; there are more on a row of many holes.
const MOST_TOLD: usize = 24;

impl Words {
    /// The sentence for something said about object, cord or tube that cannot be used.
    pub fn setup_error(&self, error: &SetupError) -> Sentence {
        let asking = |asking: SetupField| fluent_args! { "asking" => asking.selector() };
        match error {
            SetupError::Length { field, error } => self.length_error(*field, error),
            SetupError::Bench(error) => self.bench_error(error),
            SetupError::Missing(missing) => self.sentence("ask-missing", &asking(*missing)),
            SetupError::Ground(error) => self.ground_error(error),
            SetupError::GiveTwice => self.sentence("ask-give-twice", &fluent_args! {}),
            SetupError::WithoutRings => self.sentence("ask-without-rings", &fluent_args! {}),
            SetupError::FirmUnknown { given } => self.sentence(
                "ask-firm-unknown",
                &fluent_args! { "given" => given.as_str() },
            ),
            SetupError::CordUnknown { given, kept } => {
                let standards: Vec<&str> = STANDARD_CORDS
                    .iter()
                    .filter(|standard| standard.typical_diameter.is_some())
                    .map(|standard| standard.designation)
                    .collect();
                let args = fluent_args! {
                    "given" => given.as_str(), "standards" => standards.join(", "),
                    "kept" => names(kept),
                };
                Sentence::new(
                    self.text("ask-cord-unknown", &args),
                    self.spoken(SpokenMessage::AskCordUnknownSay, &args),
                )
            }
            SetupError::CordUnmeasured { designation } => self.sentence(
                "ask-cord-unmeasured",
                &fluent_args! { "designation" => *designation },
            ),
            SetupError::TubeUnknown { given, kept } => {
                let args = fluent_args! { "given" => given.as_str(), "kept" => names(kept) };
                self.sentence("ask-tube-unknown", &args)
            }
            SetupError::WithoutTube(said) => self.sentence("ask-without-tube", &asking(*said)),
            SetupError::HolesTooClose {
                holes,
                between,
                pin,
            } => {
                let args = fluent_args! {
                    "holes" => *holes, "between" => fine(*between), "pin" => fine(*pin),
                };
                self.sentence("ask-holes-close", &args)
            }
            SetupError::WallTooThick { wall, tube } => self.sentence(
                "ask-wall-thick",
                &fluent_args! { "wall" => fine(*wall), "tube" => fine(*tube) },
            ),
        }
    }

    fn length_error(&self, asking: SetupField, error: &LengthError) -> Sentence {
        let (id, given) = match error {
            LengthError::Unreadable { given } => ("ask-length-unreadable", given),
            LengthError::UnknownUnit { given, .. } => ("ask-length-unit", given),
            LengthError::ThousandsOrDecimals { given } => ("ask-length-comma", given),
            LengthError::BareFraction { given } => ("ask-length-fraction", given),
            LengthError::NotPositive { given } => ("ask-length-nought", given),
            LengthError::OutOfRange { given } => ("ask-length-range", given),
        };
        let mut args = fluent_args! {
            "asking" => asking.selector(), "given" => given.as_str(),
            "example" => example(asking),
        };
        if let LengthError::UnknownUnit { unit, .. } = error {
            args.set("unit", unit.as_str());
        }
        self.sentence(id, &args)
    }

    /// The sentence for a row, a count, a thread, a number or a price that cannot be used.
    pub fn bench_error(&self, error: &BenchError) -> Sentence {
        match error {
            BenchError::RowsUnreadable { given } => self.sentence(
                "ask-rows-unreadable",
                &fluent_args! { "given" => given.as_str() },
            ),
            BenchError::OutOfRange {
                counted,
                given,
                least,
                most,
            } => {
                let args = fluent_args! {
                    "counted" => counted.selector(), "given" => *given, "least" => *least, "most" => *most,
                };
                self.sentence("ask-count-range", &args)
            }
            BenchError::UnknownThread { given } => {
                let known: Vec<&str> = Thread::all().iter().map(|thread| thread.name()).collect();
                let args = fluent_args! { "given" => given.as_str(), "known" => known.join(", ") };
                // Who hears it is not read the whole list.
                Sentence::new(
                    self.text("ask-thread-unknown", &args),
                    self.spoken(SpokenMessage::AskThreadUnknownSay, &args),
                )
            }
            BenchError::Give { given } => {
                let args = fluent_args! {
                    "given" => given.as_str(), "least" => *Give::BOUNDS.start(),
                    "most" => *Give::BOUNDS.end(), "soft" => Give::SOFT.get(),
                };
                self.sentence("ask-give-range", &args)
            }
            BenchError::Price { given } => self.sentence(
                "ask-price",
                &fluent_args! { "given" => given.as_str(), "most" => *Prices::BOUNDS.end() },
            ),
            BenchError::Waste { given } => self.sentence(
                "order-waste",
                &fluent_args! { "given" => given.as_str(), "most" => *Waste::BOUNDS.end() },
            ),
            // Nothing that a tyer types comes to these.
            BenchError::Correction { .. }
            | BenchError::Pace { .. }
            | BenchError::PassesShared { .. } => {
                log::error!("{error}");
                self.notice("app-fault", &[])
            }
        }
    }

    /// The sentence for a name that nothing can be kept by.
    pub fn preset_name_error(&self, error: &PresetNameError) -> String {
        let (id, given) = match error {
            PresetNameError::Unusable { given } => ("name-unusable", given),
            PresetNameError::IsStandard { given } => ("name-standard", given),
        };
        let args = fluent_args! { "given" => given.as_str(), "most" => Presets::LONGEST_NAME };
        self.text(id, &args)
    }

    /// The sentence for a tube that cannot be rigged for a knot.
    pub fn rig_error(&self, error: &RigError) -> Sentence {
        match error {
            RigError::TooFewRows {
                bights,
                nested,
                rows,
            } => {
                let args = fluent_args! {
                    "bights" => *bights, "nested" => *nested, "rows" => numbers(rows),
                };
                self.sentence("rig-too-few-rows", &args)
            }
            RigError::RingTooNarrow {
                ring,
                nested,
                needed,
            } => self.ring_too_narrow(*ring, *nested, *needed),
            RigError::NoRowDivides {
                bights,
                rows,
                can_take,
            } => {
                let args = fluent_args! {
                    "bights" => *bights, "rows" => numbers(rows), "can_take" => numbers(can_take),
                };
                self.sentence("rig-no-row", &args)
            }
            RigError::CordThickerThanTube { cord, tube } => self.sentence(
                "rig-cord-thick",
                &fluent_args! { "cord" => fine(*cord), "tube" => fine(*tube) },
            ),
            RigError::NoRoomToTuck {
                bights,
                passes,
                cure,
            } => {
                let mut args = cure_args(cure);
                args.set("bights", *bights);
                args.set("passes", *passes);
                self.sentence("rig-no-tuck", &args)
            }
            RigError::PinsTooClose {
                bights,
                gap,
                needed,
                cure,
            } => {
                let mut args = cure_args(cure);
                args.set("bights", *bights);
                args.set("gap", bound(*gap));
                args.set("needed", enough(*needed));
                self.sentence("rig-pins-too-close", &args)
            }
            RigError::TubeTooShort { length, needed } => self.sentence(
                "rig-tube-short",
                &fluent_args! { "length" => fine(*length), "needed" => enough(*needed) },
            ),
            RigError::NoRoomInPlace {
                leads,
                bights,
                passes,
                most_leads,
                most_bights,
                most_passes,
            } => {
                let args = fluent_args! {
                    "leads" => *leads, "bights" => *bights, "passes" => *passes,
                    "most_leads" => most_leads.unwrap_or(0),
                    "most_bights" => most_bights.unwrap_or(0),
                    "most_passes" => most_passes.unwrap_or(0),
                };
                self.sentence("rig-no-room-in-place", &args)
            }
            RigError::Shape(error) => self.shape_error(error),
        }
    }

    pub(super) fn ring_too_narrow(
        &self,
        ring: Millimetres,
        nested: u16,
        needed: Millimetres,
    ) -> Sentence {
        let args = fluent_args! {
            "ring" => fine(ring), "nested" => nested, "needed" => enough(needed),
        };
        self.sentence("rig-ring-narrow", &args)
    }

    pub(super) fn shape_error(&self, error: &ShapeError) -> Sentence {
        match error {
            ShapeError::CordThickerThanObject { cord, object } => self.sentence(
                "shape-cord-thick",
                &fluent_args! { "cord" => fine(*cord), "object" => fine(*object) },
            ),
            ShapeError::TooFull {
                bights,
                passes,
                most_bights,
                most_passes,
                cord,
                cord_below,
            } => {
                let args = fluent_args! {
                    "bights" => *bights, "passes" => *passes, "cord" => fine(*cord),
                    "most_bights" => most_bights.unwrap_or(0),
                    "most_passes" => most_passes.unwrap_or(0),
                    "cord_below" => or_none(*cord_below, bound),
                };
                self.sentence("shape-too-full", &args)
            }
            ShapeError::NarrowerThanTight { given, least } => self.sentence(
                "shape-narrower",
                &fluent_args! { "given" => fine(*given), "least" => enough(*least) },
            ),
            ShapeError::WiderThanReach { .. }
            | ShapeError::TaperTooShort { .. }
            | ShapeError::ThinEnd { .. }
            | ShapeError::BallFull { .. }
            | ShapeError::BallTooSmall { .. }
            | ShapeError::MatFull { .. }
            | ShapeError::HoleTooSmall { .. } => self.ground_shape_error(error),
        }
    }

    /// The sentence for a knot that takes more cord, in millimetres, than there is.
    pub fn cord_short(&self, needed: f64, at_hand: Millimetres) -> String {
        let args = fluent_args! { "needed" => cut_of(needed), "at_hand" => there_is(at_hand) };
        self.text("rig-cord-short", &args)
    }
}

/// What would make room: 0 and none stand for what would not.
pub(super) fn cure_args(cure: &RoomCure) -> FluentArgs<'static> {
    fluent_args! {
        "most_bights" => cure.most_bights.unwrap_or(0),
        "most_passes" => cure.most_passes.unwrap_or(0),
        "tube" => enough(cure.tube_at_least),
        "pin" => or_none(cure.pin_at_most, bound),
    }
}

pub(super) fn or_none(
    length: Option<Millimetres>,
    told: fn(Millimetres) -> Length,
) -> FluentValue<'static> {
    length.map_or("none".into(), |length| told(length).into())
}

pub(super) fn numbers(numbers: &[u16]) -> String {
    let mut told: Vec<String> = numbers
        .iter()
        .take(MOST_TOLD)
        .map(ToString::to_string)
        .collect();
    if numbers.len() > MOST_TOLD {
        told.push("…".to_owned());
    }
    told.join(", ")
}

fn names(names: &[String]) -> String {
    if names.is_empty() {
        "none".to_owned()
    } else {
        names.join(", ")
    }
}

pub(super) fn example(asking: SetupField) -> &'static str {
    match asking {
        SetupField::Object | SetupField::Cover => "30mm",
        SetupField::Girth => "94mm",
        SetupField::Ball => "38mm",
        SetupField::Mat => "150mm",
        SetupField::InPlace => "yes",
        SetupField::Cord => "4mm",
        SetupField::Tube => "40mm",
        SetupField::Pin => "1/2in",
        SetupField::Wall => "3mm",
        SetupField::RingWidth => "20mm",
        SetupField::TubeLength => "30cm",
        SetupField::Have => "2m",
        SetupField::Rows | SetupField::Thread => "12",
        SetupField::Firm => "soft",
        SetupField::Give => "1.62",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_wrong_is_shown_with_symbols_and_spoken_in_whole_words() {
        let [cord, object] = [40.0, 30.0].map(|mm| Millimetres::new(mm).unwrap());
        let error = RigError::Shape(ShapeError::CordThickerThanObject { cord, object });
        let sentence = Words::english().rig_error(&error);
        let (shown, spoken) = (sentence.shown(), sentence.spoken().as_str());
        assert!(
            shown.contains("40 mm") && !shown.contains("millimetres"),
            "{shown}"
        );
        assert!(
            spoken.contains("40 millimetres") && !spoken.contains("mm "),
            "{spoken}"
        );
    }
}
