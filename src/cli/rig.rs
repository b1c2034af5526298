//! `marlinspeak rig`: how a tube is rigged for a knot, and keeping tubes and cords by name.

use std::io::{self, Write};

use clap::Args;
use serde::Serialize;

use super::complaint::Complaint;
use super::error_lines::ErrorLines;
use super::ground_form::{GroundForm, MiddleForm};
use super::options::KnotOptions;
use super::print::{json, print, rounded};
use super::setup_options::{PriceOptions, SetupOptions, ledger, presets_failed, presets_for};
use crate::bench::{Circle, Counts, Layout, Millimetres, Prices, Rig, RimTape, RingPins};
use crate::guide::{
    AtOnce, GroundError, Labour, Place, Presets, Script, Setup, SetupError, SetupField, Task, What,
};
use crate::shelf::{PresetsFile, ShelfError, ShelfReading};
use crate::words::{Shown, Words};

#[derive(Args)]
pub(super) struct RigOptions {
    #[command(flatten)]
    knot: KnotOptions,
    #[command(flatten)]
    setup: SetupOptions,
    #[command(flatten)]
    prices: PriceOptions,
    #[arg(
        long,
        value_name = "value-name",
        allow_hyphen_values = true,
        help = "help-keep-tube"
    )]
    keep_tube: Option<String>,
    #[arg(
        long,
        value_name = "value-name",
        allow_hyphen_values = true,
        help = "help-keep-cord"
    )]
    keep_cord: Option<String>,
    #[arg(long, help = "help-json")]
    json: bool,
}

/// Prints how the tube is rigged, and keeps tube and cord where that is asked for.
pub(super) fn run(asked: &RigOptions, set: Prices, words: &Words) -> Result<(), Complaint> {
    let plan = asked.setup.equip(asked.knot.plan(words)?, words)?;
    let named = |error| Complaint::input(words.preset_name_error(&error));
    let tube_name = asked.keep_tube.as_deref().map(Presets::tube_name);
    let tube_name = tube_name.transpose().map_err(named)?;
    let cord_name = asked.keep_cord.as_deref().map(Presets::cord_name);
    let cord_name = cord_name.transpose().map_err(named)?;
    let script = Script::new(plan, AtOnce::default()).packing_one_by_one(true);
    let (Some(rigging), Some(rig), Some(setup)) =
        (script.rigging(), script.rig(), script.plan().setup())
    else {
        return Err(Complaint::input(words.plainly("rig-with-what", &[])));
    };
    if setup.in_place && tube_name.is_some() {
        // What stands for the tube is the thing itself.
        let error = SetupError::from(if setup.ground().is_flat() {
            GroundError::MatWithTube(SetupField::Tube)
        } else {
            GroundError::InPlaceWithTube(SetupField::Tube)
        });
        return Err(Complaint::input(words.setup_error(&error)));
    }
    keep(setup, tube_name.as_deref(), cord_name.as_deref())
        .map_err(|error| presets_failed(&error, words))?
        .hand_on(&mut ErrorLines::new(words));
    let prices = asked.prices.prices(set, words)?;
    let labour = Labour::of(script.plan(), ledger(words)?.pace(), prices);
    if asked.json {
        return print(words, |out| {
            json(out, &RigDocument::of(setup, rig, rigging.to_cut(), &labour))
        });
    }
    let form = asked.setup.form(words)?;
    let understood = form.understood(&presets_for(&form, words)?);
    let mut notes = vec![words.rig_finished(setup, rig), words.labour(&labour)];
    notes.extend(words.corrected(setup.correction));
    notes.extend(understood.map(|cord| words.cord_understood(cord)));
    print(words, |out| {
        tell(out, &script, &notes, setup, words)?;
        for (id, name) in [("rig-kept-tube", &tube_name), ("rig-kept-cord", &cord_name)] {
            if let Some(name) = name {
                writeln!(out, "\n{}", words.plainly(id, &[("name", name)]))?;
            }
        }
        Ok(())
    })
}

fn keep(
    setup: &Setup,
    tube: Option<&str>,
    cord: Option<&str>,
) -> Result<ShelfReading<()>, ShelfError> {
    if tube.is_none() && cord.is_none() {
        return Ok(ShelfReading::whole(()));
    }
    let presets = PresetsFile::default_place()?;
    ShelfReading::try_gather(|gathering| {
        if let Some(name) = tube {
            presets.keep_tube(name, &setup.tube)?.hand_on(gathering);
        }
        if let Some(name) = cord {
            presets.keep_cord(name, &setup.cord)?.hand_on(gathering);
        }
        Ok(())
    })
}

/// The same steps that the app leads through, as a list.
fn tell(
    out: &mut impl Write,
    script: &Script,
    notes: &[String],
    setup: &Setup,
    words: &Words,
) -> io::Result<()> {
    let knot = script.plan().knot();
    let counts = Counts::from(script.plan().laying());
    writeln!(out, "{}", words.rig_heading(counts, setup))?;
    for note in notes {
        writeln!(out, "{note}")?;
    }
    let mut section = None;
    for place in script.places() {
        let (is_rigging, number, step) = match (place, script.step(place)) {
            (Place::Kit { item }, Some(step)) => (false, item, step),
            (Place::Rig { task }, Some(step)) => (true, task, step),
            _ => break,
        };
        if section.replace(is_rigging) != Some(is_rigging) {
            let heading = if is_rigging {
                words.rig_where(setup)
            } else {
                words.plainly("rig-in-the-bag", &[])
            };
            writeln!(out, "\n{heading}")?;
        }
        let Shown {
            line,
            notes,
            caution,
            ..
        } = words.show(knot, &step);
        writeln!(out, "{number:3}  {line}")?;
        for note in notes.into_iter().chain(caution) {
            writeln!(out, "     {note}")?;
        }
        if let What::Rig(step) = &step.what
            && let [Task::Pins { holes, .. }] = &step.things[..]
        {
            let holes: Vec<String> = holes.iter().map(ToString::to_string).collect();
            let all = words.plainly("rig-all-holes", &[("holes", &holes.join(", "))]);
            writeln!(out, "     {all}")?;
        }
    }
    Ok(())
}

#[derive(Serialize)]
struct RigDocument {
    ground: GroundForm,
    in_place: bool,
    #[serde(flatten)]
    middle: MiddleForm,
    bottom: RingForm,
    top: TopForm,
    staggered: bool,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    inner: Vec<NestForm>,
    spacing_mm: f64,
    pin_length_mm: f64,
    hex_key: Option<&'static str>,
    cord_mm: f64,
    tucks: u32,
    minutes: f64,
    /// When prices are set.
    #[serde(skip_serializing_if = "Option::is_none")]
    cost: Option<f64>,
}

#[derive(Serialize)]
struct RingForm {
    row: Option<usize>,
    holes: Vec<u16>,
    /// Where the pins stand along a strip, on a tube without rings.
    #[serde(skip_serializing_if = "Option::is_none")]
    marks_mm: Option<Vec<f64>>,
    /// Where they stand round a circle on a board, in degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    angles_deg: Option<Vec<f64>>,
    /// From the middle of the board to them.
    #[serde(skip_serializing_if = "Option::is_none")]
    radius_mm: Option<f64>,
}

/// A further row of pins at each rim, where bights are nested.
#[derive(Serialize)]
struct NestForm {
    row: usize,
    bottom: RingForm,
    top: RingForm,
    inside_mm: f64,
}

#[derive(Serialize)]
struct TopForm {
    #[serde(flatten)]
    ring: RingForm,
    turn_half_hole: bool,
}

impl RigDocument {
    fn of(setup: &Setup, rig: &Rig, to_cut: f64, labour: &Labour) -> Self {
        let plain = |bottom: RingForm, top: RingForm| {
            let top = TopForm {
                ring: top,
                turn_half_hole: false,
            };
            (bottom, top)
        };
        let (bottom, top) = match &rig.layout {
            Layout::Rings {
                bottom,
                top,
                turn_half_hole,
                ..
            } => (
                RingForm::of(bottom),
                TopForm {
                    ring: RingForm::of(top),
                    turn_half_hole: *turn_half_hole,
                },
            ),
            Layout::Strip(strip) => {
                plain(RingForm::marks(&strip.bottom), RingForm::marks(&strip.top))
            }
            Layout::Tapes(tapes) => plain(
                RingForm::marks(&tapes.bottom.marks),
                RingForm::marks(&tapes.top.marks),
            ),
            Layout::Board(board) => plain(
                RingForm::circle(&board.outer),
                RingForm::circle(&board.inner),
            ),
        };
        Self {
            ground: GroundForm::of(setup.ground()),
            in_place: setup.in_place,
            middle: MiddleForm::of(setup.ground(), &rig.shape),
            bottom,
            top,
            staggered: rig.staggered,
            inner: NestForm::of(rig),
            spacing_mm: rounded(rig.laid.ring_spacing.get(), 3),
            pin_length_mm: rounded(rig.pin_length.get(), 3),
            hex_key: rig.hex_key.map(|key| key.size),
            cord_mm: rounded(to_cut, 1),
            tucks: labour.tucks,
            minutes: rounded(labour.minutes, 1),
            cost: labour.cost.map(|cost| rounded(cost, 2)),
        }
    }
}

impl NestForm {
    fn of(rig: &Rig) -> Vec<Self> {
        let Some(apart) = rig.laid.rows_apart else {
            return Vec::new();
        };
        let inside = |row: usize| rounded(apart.get() * (2..=row).map(|_| 1.0).sum::<f64>(), 3);
        let nests = |inner: Vec<[RingForm; 2]>| {
            let nest = |(row, [bottom, top]): (usize, [RingForm; 2])| Self {
                row,
                bottom,
                top,
                inside_mm: inside(row),
            };
            (2..).zip(inner).map(nest).collect()
        };
        match &rig.layout {
            Layout::Rings { inner, .. } => {
                let inner = inner.iter();
                nests(inner.map(|row| row.each_ref().map(RingForm::of)).collect())
            }
            Layout::Tapes(tapes) => {
                let inner = tapes.inner.iter();
                let form = |tape: &RimTape| RingForm::marks(&tape.marks);
                nests(inner.map(|row| row.each_ref().map(form)).collect())
            }
            Layout::Board(board) => {
                let inner = board.nested.iter();
                nests(
                    inner
                        .map(|row| row.each_ref().map(RingForm::circle))
                        .collect(),
                )
            }
            Layout::Strip(strip) => (2..=usize::from(strip.nested))
                .map(|row| Self {
                    row,
                    bottom: RingForm::marks(&strip.bottom),
                    top: RingForm::marks(&strip.top),
                    inside_mm: inside(row),
                })
                .collect(),
        }
    }
}

impl RingForm {
    fn of(ring: &RingPins) -> Self {
        Self {
            row: Some(ring.row),
            holes: ring.holes.clone(),
            marks_mm: None,
            angles_deg: None,
            radius_mm: None,
        }
    }

    fn marks(marks: &[Millimetres]) -> Self {
        let marks = marks.iter().map(|mark| rounded(mark.get(), 2)).collect();
        Self {
            row: None,
            holes: Vec::new(),
            marks_mm: Some(marks),
            angles_deg: None,
            radius_mm: None,
        }
    }

    fn circle(circle: &Circle) -> Self {
        let angles = circle.angles.iter();
        let angles = angles.map(|angle| rounded(angle.to_degrees(), 2)).collect();
        Self {
            row: None,
            holes: Vec::new(),
            marks_mm: None,
            angles_deg: Some(angles),
            radius_mm: Some(rounded(circle.radius.get(), 2)),
        }
    }
}
