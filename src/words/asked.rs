//! What can be wrong with object, cord and tube, and why nothing fits: one sentence each.

use fluent::{FluentValue, fluent_args};

use super::args::Selector;
use super::lengths::{Length, at_hand as there_is, bound, cut, cut_of, enough, fine};
use super::{Sentence, Words};
use crate::bench::{
    BenchError, Counted, LengthError, Millimetres, Misfit, RigError, STANDARD_CORDS, ShapeError,
    Thread, TubeTooFull,
};
use crate::guide::{AskError, Asking, NameError, Rack};

/// How many numbers of bights are told; there are more on a row of many holes.
const MOST_TOLD: usize = 24;

impl Words {
    /// The sentence for something said about object, cord or tube that cannot be used.
    pub fn ask_error(&self, error: &AskError) -> Sentence {
        let asking = |asking: Asking| fluent_args! { "asking" => asking.selector() };
        match error {
            AskError::Length { asking, error } => self.length_error(*asking, error),
            AskError::Bench(error) => self.bench_error(error),
            AskError::Missing(missing) => self.sentence("ask-missing", &asking(*missing)),
            AskError::ObjectTwice => self.sentence("ask-object-twice", &fluent_args! {}),
            AskError::CordUnknown { given, kept } => {
                let standards: Vec<&str> = STANDARD_CORDS
                    .iter()
                    .filter(|standard| standard.typical_diameter.is_some())
                    .map(|standard| standard.designation)
                    .collect();
                let args = fluent_args! {
                    "given" => given.as_str(), "standards" => standards.join(", "),
                    "kept" => names(kept),
                };
                self.sentence("ask-cord-unknown", &args)
            }
            AskError::CordUnmeasured { designation } => self.sentence(
                "ask-cord-unmeasured",
                &fluent_args! { "designation" => *designation },
            ),
            AskError::TubeUnknown { given, kept } => {
                let args = fluent_args! { "given" => given.as_str(), "kept" => names(kept) };
                self.sentence("ask-tube-unknown", &args)
            }
            AskError::WithoutTube(said) => self.sentence("ask-without-tube", &asking(*said)),
            AskError::HolesTooClose {
                holes,
                between,
                pin,
            } => {
                let args = fluent_args! {
                    "holes" => *holes, "between" => fine(*between), "pin" => fine(*pin),
                };
                self.sentence("ask-holes-close", &args)
            }
            AskError::WallTooThick { wall, tube } => self.sentence(
                "ask-wall-thick",
                &fluent_args! { "wall" => fine(*wall), "tube" => fine(*tube) },
            ),
        }
    }

    fn length_error(&self, asking: Asking, error: &LengthError) -> Sentence {
        let (id, given) = match error {
            LengthError::Unreadable { given } => ("ask-length-unreadable", given),
            LengthError::UnknownUnit { given, .. } => ("ask-length-unit", given),
            LengthError::ThousandsOrDecimals { given } => ("ask-length-comma", given),
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

    fn bench_error(&self, error: &BenchError) -> Sentence {
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
                let counted = match counted {
                    Counted::Rows => "rows",
                    Counted::Holes => "holes",
                };
                let args = fluent_args! {
                    "counted" => counted, "given" => *given, "least" => *least, "most" => *most,
                };
                self.sentence("ask-count-range", &args)
            }
            BenchError::UnknownThread { given } => {
                let known: Vec<&str> = Thread::all().iter().map(|thread| thread.name()).collect();
                let args = fluent_args! { "given" => given.as_str(), "known" => known.join(", ") };
                self.sentence("ask-thread-unknown", &args)
            }
            // Nothing that a tyer types comes to these.
            BenchError::Correction { .. }
            | BenchError::Pace { .. }
            | BenchError::PassesShared { .. } => {
                self.notice("app-fault", &[("reason", &error.to_string())])
            }
        }
    }

    /// The sentence for a name that nothing can be kept by.
    pub fn name_error(&self, error: &NameError) -> String {
        let (id, given) = match error {
            NameError::Unusable { given } => ("name-unusable", given),
            NameError::IsStandard { given } => ("name-standard", given),
        };
        let args = fluent_args! { "given" => given.as_str(), "most" => Rack::LONGEST_NAME };
        self.text(id, &args)
    }

    /// The sentence for a tube that cannot be rigged for a knot.
    pub fn rig_error(&self, error: &RigError) -> Sentence {
        match error {
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
            RigError::TubeTooFull(TubeTooFull {
                bights,
                passes,
                most_bights,
                most_passes,
                tube_at_least,
            }) => {
                let args = fluent_args! {
                    "bights" => *bights, "passes" => *passes, "tube" => enough(*tube_at_least),
                    "most_bights" => most_bights.unwrap_or(0),
                    "most_passes" => most_passes.unwrap_or(0),
                };
                self.sentence("rig-tube-full", &args)
            }
            RigError::Shape(error) => self.shape_error(error),
        }
    }

    fn shape_error(&self, error: &ShapeError) -> Sentence {
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
            ShapeError::NarrowerThanFaired { given, least } => self.sentence(
                "shape-narrower",
                &fluent_args! { "given" => fine(*given), "least" => enough(*least) },
            ),
        }
    }

    /// The sentence for a knot that takes more cord, in millimetres, than there is.
    pub fn cord_short(&self, needed: f64, at_hand: Millimetres) -> String {
        let args = fluent_args! { "needed" => cut_of(needed), "at_hand" => there_is(at_hand) };
        self.text("rig-cord-short", &args)
    }

    /// Why nothing fits and what would, in one sentence.
    pub fn misfits(&self, misfits: &[Misfit]) -> Sentence {
        let other = |cord: &Option<Millimetres>| or_none(*cord, fine);
        match misfits.first() {
            None => self.sentence("fit-nothing", &fluent_args! {}),
            Some(Misfit::CordThickerThanObject { cord, object }) => self.sentence(
                "fit-cord-thick",
                &fluent_args! { "cord" => fine(*cord), "object" => fine(*object) },
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
            Some(Misfit::TubeTooThin { tube, would_do }) => self.sentence(
                "fit-tube-thin",
                &fluent_args! { "tube" => fine(*tube), "would_do" => enough(*would_do) },
            ),
            Some(Misfit::NotEnoughCord { at_hand, least }) => {
                let args = fluent_args! { "least" => cut(*least), "at_hand" => there_is(*at_hand) };
                self.sentence("fit-have-short", &args)
            }
        }
    }
}

fn or_none(length: Option<Millimetres>, told: fn(Millimetres) -> Length) -> FluentValue<'static> {
    length.map_or("none".into(), |length| told(length).into())
}

fn numbers(numbers: &[u16]) -> String {
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

fn example(asking: Asking) -> &'static str {
    match asking {
        Asking::Object | Asking::Cover => "30mm",
        Asking::Girth => "94mm",
        Asking::Cord => "4mm",
        Asking::Tube => "40mm",
        Asking::Pin => "1/2in",
        Asking::Wall => "3mm",
        Asking::Have => "2m",
        Asking::Rows | Asking::Thread => "12",
    }
}

impl Selector for Asking {
    fn selector(self) -> &'static str {
        match self {
            Self::Object => "object",
            Self::Girth => "girth",
            Self::Cover => "cover",
            Self::Cord => "cord",
            Self::Tube => "tube",
            Self::Rows => "rows",
            Self::Pin => "pin",
            Self::Thread => "thread",
            Self::Wall => "wall",
            Self::Have => "have",
        }
    }
}
