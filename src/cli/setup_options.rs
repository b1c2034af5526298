//! Object, cord and tube, as options.

use std::path::PathBuf;

use clap::Args;

use super::Complaint;
use crate::bench::Counts;
use crate::guide::{Asked, AtOnce, Plan, Rack, Rigging, Script};
use crate::shelf::{Ledger, PresetsFile, Shelf, ShelfError};
use crate::words::Words;

/// What is covered, with what, on what. Lengths are in millimetres, or with a unit: 30, 3cm,
/// 1.25in, 5/32in.
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
    /// The cord: its diameter, a standard such as III, or the name of one that is kept
    #[arg(long, value_name = "LENGTH|NAME", allow_hyphen_values = true)]
    cord: Option<String>,
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
    /// Cord at hand
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    have: Option<String>,
}

impl SetupOptions {
    pub fn is_empty(&self) -> bool {
        self.given().iter().all(|option| option.is_none())
    }

    fn given(&self) -> [&Option<String>; 10] {
        let Self {
            object,
            girth,
            cover,
            cord,
            tube,
            rows,
            pin,
            thread,
            wall,
            have,
        } = self;
        [
            object, girth, cover, cord, tube, rows, pin, thread, wall, have,
        ]
    }

    /// The texts of the options. One that is given and empty is no length.
    pub fn asked(&self, words: &Words) -> Result<Asked, Complaint> {
        let is_blank =
            |option: &&Option<String>| option.as_deref().is_some_and(|text| text.trim().is_empty());
        if let Some(index) = self.given().iter().position(is_blank) {
            const OPTIONS: [&str; 10] = [
                "--object", "--girth", "--cover", "--cord", "--tube", "--rows", "--pin",
                "--thread", "--wall", "--have",
            ];
            let texts = [("option", OPTIONS[index]), ("help", "marlinspeak --help")];
            return Err(Complaint::input(words.plainly("cli-missing-value", &texts)));
        }
        Ok(Asked {
            object: self.object.clone(),
            girth: self.girth.clone(),
            cover: self.cover.clone(),
            cord: self.cord.clone(),
            tube: self.tube.clone(),
            rows: self.rows.clone(),
            pin: self.pin.clone(),
            thread: self.thread.clone(),
            wall: self.wall.clone(),
            have: self.have.clone(),
        })
    }

    /// The plan with tube, cord and object, when the options name them.
    pub fn equip(&self, plan: Plan, words: &Words) -> Result<Plan, Complaint> {
        let asked = self.asked(words)?;
        let sentence = |error| Complaint::input(words.ask_error(&error));
        let rack = rack_for(&asked, words)?;
        let counts = Counts::from(plan.laying());
        let setup = asked.setup(&rack, counts).map_err(sentence)?;
        let setup = match setup {
            Some(setup) => Some(ledger(words)?.teach_setup(setup)),
            None => None,
        };
        if let Some(setup) = &setup {
            setup
                .rig(counts)
                .map_err(|error| Complaint::input(words.rig_error(&error)))?;
        }
        let plan = plan.with_setup(setup);
        let script = Script::new(plan.clone(), AtOnce::default());
        if let Some(at_hand) = asked.have().map_err(sentence)?
            && let Some(needed) = script.rigging().map(Rigging::to_cut)
            && needed > at_hand.get()
        {
            return Err(Complaint::input(words.cord_short(needed, at_hand)));
        }
        Ok(plan)
    }
}

/// The rack, read only when something on it may be meant.
pub(super) fn rack_for(asked: &Asked, words: &Words) -> Result<Rack, Complaint> {
    let is_name = |text: &Option<String>| {
        text.as_deref()
            .is_some_and(|text| text.trim().starts_with(char::is_alphabetic))
    };
    let without = Asked {
        tube: None,
        ..asked.clone()
    };
    // A standard cord is known without the rack.
    let needs_cord = is_name(&asked.cord) && without.cord(&Rack::default()).is_err();
    if !needs_cord && !is_name(&asked.tube) {
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
