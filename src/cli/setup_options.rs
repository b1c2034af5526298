//! Object, cord and tube, as options.

use std::path::PathBuf;

use clap::Args;

use super::Complaint;
use crate::bench::{Counts, Prices};
use crate::guide::{AtOnce, Plan, Rack, Rigging, Script, SetupField, SetupForm};
use crate::shelf::{Ledger, PresetsFile, Shelf, ShelfError};
use crate::words::Words;

/// What is covered, with what, on what. Lengths are in millimetres, or with a unit: 30, 3cm,
/// 1.25in, 5/32in, 5ft 3in.
#[derive(Args)]
pub(super) struct SetupOptions {
    /// Diameter of the object
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    object: Option<String>,
    /// The way round the object, instead of its diameter
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    girth: Option<String>,
    /// Length of the object to be covered
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    cover: Option<String>,
    /// The cord: its diameter, a standard such as III or 550, or the name of one that is kept
    #[arg(long, value_name = "LENGTH|NAME", allow_hyphen_values = true)]
    cord: Option<String>,
    /// What the cord is like: hard (round, keeps its shape), soft (braided or laid line) or flat
    /// (ribbon, hollow braid) [default: soft, or as it was kept]
    #[arg(long, value_name = "hard|soft|flat", allow_hyphen_values = true)]
    firm: Option<String>,
    /// How closely two bands of the cord lie with another between them, in cord diameters, such as
    /// 1.7; instead of --firm
    #[arg(long, value_name = "NUMBER", allow_hyphen_values = true)]
    cord_give: Option<String>,
    /// The tube: its diameter, or the name of one that is kept
    #[arg(long, value_name = "LENGTH|NAME", allow_hyphen_values = true)]
    tube: Option<String>,
    /// Holes in each row of a ring, such as 12,16; a tube without rings has none
    #[arg(long, value_name = "N,N…", allow_hyphen_values = true)]
    rows: Option<String>,
    /// Length of the pins
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pin: Option<String>,
    /// Thread of the pins, such as #8 or M4
    #[arg(long, value_name = "THREAD", allow_hyphen_values = true)]
    thread: Option<String>,
    /// Thickness of what the pins are screwed through
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    wall: Option<String>,
    /// Width of each ring along the tube
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    ring_width: Option<String>,
    /// Length of the tube
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    tube_length: Option<String>,
    /// Cord at hand
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    have: Option<String>,
}

/// What cord and work are worth.
#[derive(Args)]
pub(super) struct PriceOptions {
    /// What a metre of the cord costs
    #[arg(long, value_name = "PRICE", allow_hyphen_values = true)]
    price_metre: Option<String>,
    /// What an hour of your work is worth
    #[arg(long, value_name = "PRICE", allow_hyphen_values = true)]
    price_hour: Option<String>,
}

impl PriceOptions {
    /// The prices that the options set.
    pub fn prices(&self, words: &Words) -> Result<Prices, Complaint> {
        let read = |option: &Option<String>| {
            let price = option.as_deref().map(Prices::parse).transpose();
            price.map_err(|error| Complaint::input(words.bench_error(&error)))
        };
        Ok(Prices {
            metre: read(&self.price_metre)?,
            hour: read(&self.price_hour)?,
        })
    }
}

impl SetupOptions {
    pub fn is_empty(&self) -> bool {
        self.given().iter().all(|(_, _, option)| option.is_none())
    }

    /// Every option: what it is called, what it says something of, and what it says.
    fn given(&self) -> [(&'static str, SetupField, &Option<String>); 14] {
        [
            ("--object", SetupField::Object, &self.object),
            ("--girth", SetupField::Girth, &self.girth),
            ("--cover", SetupField::Cover, &self.cover),
            ("--cord", SetupField::Cord, &self.cord),
            ("--firm", SetupField::Firm, &self.firm),
            ("--cord-give", SetupField::Give, &self.cord_give),
            ("--tube", SetupField::Tube, &self.tube),
            ("--rows", SetupField::Rows, &self.rows),
            ("--pin", SetupField::Pin, &self.pin),
            ("--thread", SetupField::Thread, &self.thread),
            ("--wall", SetupField::Wall, &self.wall),
            ("--ring-width", SetupField::RingWidth, &self.ring_width),
            ("--tube-length", SetupField::TubeLength, &self.tube_length),
            ("--have", SetupField::Have, &self.have),
        ]
    }

    /// The texts of the options. One that is given and empty says nothing that can be used.
    pub fn form(&self, words: &Words) -> Result<SetupForm, Complaint> {
        let mut form = SetupForm::default();
        for (name, field, option) in self.given() {
            if option.as_deref().is_some_and(|text| text.trim().is_empty()) {
                let texts = [("option", name), ("help", "marlinspeak --help")];
                return Err(Complaint::input(words.plainly("cli-missing-value", &texts)));
            }
            form = form.with(field, option.clone());
        }
        Ok(form)
    }

    /// The plan with tube, cord and object, when the options name them.
    pub fn equip(&self, plan: Plan, words: &Words) -> Result<Plan, Complaint> {
        let form = self.form(words)?;
        let sentence = |error| Complaint::input(words.setup_error(&error));
        let rack = rack_for(&form, words)?;
        let counts = Counts::from(plan.laying());
        let ledger = if form.is_empty() {
            Ledger::default()
        } else {
            ledger(words)?
        };
        let setup = form
            .setup(&rack, counts, |cord| ledger.correction(cord, counts.into()))
            .map_err(sentence)?;
        if let Some(setup) = &setup {
            setup
                .rig(counts)
                .map_err(|error| Complaint::input(words.rig_error(&error)))?;
        }
        let plan = plan.with_setup(setup);
        let script = Script::new(plan.clone(), AtOnce::default());
        if let Some(at_hand) = form.length(SetupField::Have).map_err(sentence)?
            && let Some(needed) = script.rigging().map(Rigging::to_cut)
            && needed > at_hand.get()
        {
            return Err(Complaint::input(words.cord_short(needed, at_hand)));
        }
        Ok(plan)
    }
}

/// The rack, read only when something on it may be meant.
pub(super) fn rack_for(form: &SetupForm, words: &Words) -> Result<Rack, Complaint> {
    let is_name = |field| {
        form.said(field)
            .is_some_and(|text| text.starts_with(char::is_alphabetic))
    };
    // A standard cord is known without the rack.
    let needs_cord = is_name(SetupField::Cord) && form.cord(&Rack::default()).is_err();
    if !needs_cord && !is_name(SetupField::Tube) {
        return Ok(Rack::default());
    }
    PresetsFile::default_place()
        .and_then(|file| file.read())
        .map_err(|error| rack_failed(&error, words))
}

/// What the tyer has logged so far; nothing when there is no shelf yet. An entry that cannot be
/// read is left out: `shelf verify` tells of it.
pub(super) fn ledger(words: &Words) -> Result<Ledger, Complaint> {
    let read = |folder: PathBuf| {
        if folder.exists() {
            Shelf::open(folder)?.ledger()
        } else {
            Ok(Ledger::default())
        }
    };
    match Shelf::default_dir() {
        Ok(folder) => read(folder).map_err(|error| Complaint::failure(words.shelf_error(&error))),
        // Without a home there is no log.
        Err(_) => Ok(Ledger::default()),
    }
}

/// The sentence for a rack that cannot be read or written.
pub(super) fn rack_failed(error: &ShelfError, words: &Words) -> Complaint {
    let id = if error.is_newer() {
        "rack-newer"
    } else {
        "rack-failed"
    };
    Complaint::failure(words.plainly(id, &[("reason", &error.to_string())]))
}
