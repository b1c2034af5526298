//! Object, cord and tube, as options: one for each [`SetupField`].

use std::path::PathBuf;

use clap::{Arg, ArgAction, ArgMatches, Args, Command, FromArgMatches};
use strum::VariantArray as _;

use super::complaint::Complaint;
use super::error_lines::ErrorLines;
use crate::bench::{Counts, Prices};
use crate::files;
use crate::guide::{Plan, Presets, Rigging, SetupField, SetupForm};
use crate::shelf::{Ledger, PresetsFile, Shelf, ShelfError};
use crate::words::Words;

/// What is covered, with what, on what: the options that were given, each with its text. Lengths
/// are in millimetres, or with a unit: 30, 3cm, 1.25in, 5/32in, 5ft 3in.
#[derive(Clone, Debug, Default)]
pub(super) struct SetupOptions {
    given: Vec<(SetupField, String)>,
}

impl Args for SetupOptions {
    fn augment_args(command: Command) -> Command {
        command.args(SetupField::VARIANTS.iter().map(|field| option(*field)))
    }

    fn augment_args_for_update(command: Command) -> Command {
        Self::augment_args(command)
    }
}

impl FromArgMatches for SetupOptions {
    fn from_arg_matches(matches: &ArgMatches) -> Result<Self, clap::Error> {
        let given = SetupField::VARIANTS.iter().filter_map(|field| {
            let text = if is_flag(*field) {
                matches.get_flag(name(*field)).then(|| "yes".to_owned())?
            } else {
                matches.get_one::<String>(name(*field))?.clone()
            };
            Some((*field, text))
        });
        Ok(Self {
            given: given.collect(),
        })
    }

    fn update_from_arg_matches(&mut self, matches: &ArgMatches) -> Result<(), clap::Error> {
        *self = Self::from_arg_matches(matches)?;
        Ok(())
    }
}

/// The option by which a field is said.
fn option(field: SetupField) -> Arg {
    let (value, help) = match field {
        SetupField::Object => ("value-lengths", "help-object"),
        SetupField::Girth => ("value-length", "help-girth"),
        SetupField::Ball => ("value-length", "help-ball"),
        SetupField::Mat => ("value-lengths", "help-mat"),
        SetupField::InPlace => ("", "help-in-place"),
        SetupField::Cover => ("value-length", "help-cover"),
        SetupField::Cord => ("value-length-or-name", "help-cord"),
        SetupField::Firm => ("hard|soft|flat", "help-firm"),
        SetupField::Give => ("value-decimal", "help-cord-give"),
        SetupField::Tube => ("value-length-or-name", "help-tube"),
        SetupField::Rows => ("N,N…", "help-rows"),
        SetupField::Pin => ("value-length", "help-pin"),
        SetupField::Thread => ("value-thread", "help-thread"),
        SetupField::Wall => ("value-length", "help-wall"),
        SetupField::RingWidth => ("value-length", "help-ring-width"),
        SetupField::TubeLength => ("value-length", "help-tube-length"),
        SetupField::Have => ("value-length", "help-have"),
    };
    let option = Arg::new(name(field)).long(name(field)).help(help);
    if is_flag(field) {
        option.action(ArgAction::SetTrue)
    } else {
        option.value_name(value).allow_hyphen_values(true)
    }
}

/// Whether it is said by its option alone, without a value.
fn is_flag(field: SetupField) -> bool {
    field == SetupField::InPlace
}

/// Its name without the hyphens before it.
fn name(field: SetupField) -> &'static str {
    match field {
        SetupField::Give => "cord-give",
        field => field.name(),
    }
}

/// What cord and work are worth.
#[derive(Args)]
pub(super) struct PriceOptions {
    #[arg(
        long,
        value_name = "value-price",
        allow_hyphen_values = true,
        help = "help-price-metre"
    )]
    price_metre: Option<String>,
    #[arg(
        long,
        value_name = "value-price",
        allow_hyphen_values = true,
        help = "help-price-hour"
    )]
    price_hour: Option<String>,
}

impl PriceOptions {
    /// The prices that the options set, or else those that are set in the settings.
    pub fn prices(&self, set: Prices, words: &Words) -> Result<Prices, Complaint> {
        let read = |option: &Option<String>| {
            let price = option.as_deref().map(Prices::parse).transpose();
            price.map_err(|error| Complaint::input(words.bench_error(&error)))
        };
        Ok(Prices {
            metre: read(&self.price_metre)?.or(set.metre),
            hour: read(&self.price_hour)?.or(set.hour),
        })
    }
}

impl SetupOptions {
    /// Whether none of them is given.
    pub fn is_empty(&self) -> bool {
        self.given.is_empty()
    }

    /// Whether it is said what the knot is tied on and with.
    pub fn names_tube_and_cord(&self) -> bool {
        let says = |asked| self.given.iter().any(|(field, _)| *field == asked);
        let tied_on = [SetupField::Tube, SetupField::Mat, SetupField::InPlace];
        says(SetupField::Cord) && tied_on.into_iter().any(says)
    }

    /// The texts of the options. One that is given and empty says nothing that can be used.
    pub fn form(&self, words: &Words) -> Result<SetupForm, Complaint> {
        if let Some((field, _)) = self.given.iter().find(|(_, text)| text.trim().is_empty()) {
            let option = format!("--{}", name(*field));
            let texts = [("option", option.as_str()), ("help", "marlinspeak --help")];
            return Err(Complaint::input(words.plainly("cli-missing-value", &texts)));
        }
        let says = |asked| self.given.iter().any(|(field, _)| *field == asked);
        if says(SetupField::Mat) && says(SetupField::InPlace) {
            return Err(Complaint::input(words.plainly("ask-mat-in-place", &[])));
        }
        Ok(self.given.iter().cloned().collect())
    }

    /// The plan with tube, cord and object, when the options name them.
    pub fn equip(&self, plan: Plan, words: &Words) -> Result<Plan, Complaint> {
        if plan.is_round_hand() {
            return if self.is_empty() {
                Ok(plan)
            } else {
                let sentence = words.plainly("round-hand-without-tube", &[]);
                Err(Complaint::input(sentence))
            };
        }
        let form = self.form(words)?;
        let sentence = |error| Complaint::input(words.setup_error(&error));
        let presets = presets_for(&form, words)?;
        let counts = Counts::from(plan.laying());
        let ledger = if form.is_empty() {
            Ledger::default()
        } else {
            ledger(words)?
        };
        let setup = form
            .setup(&presets, counts, |cord| {
                ledger.correction(cord, counts.into())
            })
            .map_err(sentence)?;
        let plan = plan.with_setup(setup);
        plan.rig()
            .map_err(|error| Complaint::input(words.rig_error(error)))?;
        if let Some(at_hand) = form.length(SetupField::Have).map_err(sentence)?
            && let Some(needed) = Rigging::of(&plan).as_ref().map(Rigging::to_cut)
            && needed > at_hand.get()
        {
            return Err(Complaint::input(words.cord_short(needed, at_hand)));
        }
        Ok(plan)
    }
}

/// The tubes and cords that are kept, read only when one of them may be meant.
pub(super) fn presets_for(form: &SetupForm, words: &Words) -> Result<Presets, Complaint> {
    if !form.may_name_a_preset() {
        return Ok(Presets::default());
    }
    let read = PresetsFile::default_place().and_then(|file| file.read());
    let presets = read.map_err(|error| presets_failed(&error, words))?;
    Ok(presets.hand_on(&mut ErrorLines::new(words)))
}

/// What the tyer has logged so far; nothing when there is no shelf yet. An entry that cannot be
/// read is left out and told of.
pub(super) fn ledger(words: &Words) -> Result<Ledger, Complaint> {
    let read = |folder: PathBuf| -> Result<Ledger, ShelfError> {
        if files::exists(&folder)? {
            let ledger = Shelf::open(folder)?.ledger()?;
            Ok(ledger.hand_on(&mut ErrorLines::new(words)))
        } else {
            Ok(Ledger::default())
        }
    };
    match Shelf::default_dir() {
        Ok(folder) => read(folder).map_err(|error| {
            log::warn!("{}", error.cause());
            Complaint::failure(words.shelf_error(&error))
        }),
        // Without a home there is no log.
        Err(_) => Ok(Ledger::default()),
    }
}

/// The sentence for kept tubes and cords that cannot be read or written.
pub(super) fn presets_failed(error: &ShelfError, words: &Words) -> Complaint {
    log::warn!("{}", error.cause());
    Complaint::failure(words.presets_failed(error))
}
