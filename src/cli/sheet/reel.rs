//! `marlinspeak sheet reel`: a whole tie as a moving picture, for a class or a wall.

use std::fs::File;
use std::io::BufWriter;
use std::path::PathBuf;

use clap::Args;

use super::pages::staged;
use super::progress::Progress;
use super::target::{self, refused_name};
use crate::cli::complaint::Complaint;
use crate::cli::options::KnotOptions;
use crate::cli::setup_options::SetupOptions;
use crate::guide::{AtOnce, FinishTask, Script, Step, What};
use crate::picture::reel::{Reel, ReelError, ReelFormat};
use crate::picture::sheet::{FramePlan, StageSheet};
use crate::picture::{Image, Painter, Scene, Subject, View, Viewport};
use crate::words::Words;

/// Pixels across a reel, at least and at most, and when nothing is said.
const WIDTHS: [u16; 2] = [320, 1920];
const WIDTH: u16 = 800;
/// Crossings that are laid in a reel at most: half an hour of looking.
const MOST_CROSSINGS: u32 = 3_000;
/// Hundredths of a second that a cord takes for a crossing.
const CROSSING: u16 = 40;
/// Hundredths of a second that words stand at least, and that the last frame stands.
const LEAST: u16 = 200;
const LAST: u16 = 500;
/// Who reads takes this share of the time that speaking takes; found by looking.
const READING: f64 = 0.7;

#[derive(Args)]
pub(super) struct ReelArgs {
    #[command(flatten)]
    knot: KnotOptions,
    #[arg(long, value_name = "value-file", help = "help-reel-out")]
    out: Option<PathBuf>,
    #[arg(long, help = "help-replace")]
    replace: bool,
    #[arg(
        long,
        value_name = "N",
        allow_hyphen_values = true,
        help = "help-reel-width"
    )]
    width: Option<String>,
    #[arg(long, help = "help-rolled-out")]
    rolled_out: bool,
    #[command(flatten)]
    setup: SetupOptions,
}

/// One frame: what stands there, how much of the leg is laid, and for how long.
struct Frame {
    stage: StageSheet,
    subject: Option<Subject>,
    hundredths: u16,
}

/// What makes the frames of a tie.
struct FrameMaker<'a> {
    script: &'a Script,
    words: &'a Words,
}

impl ReelArgs {
    pub fn run(&self, words: &Words) -> Result<(), Complaint> {
        let plan = self.knot.plan(words)?;
        let plan = if self.setup.is_empty() {
            plan
        } else {
            self.setup.equip(plan, words)?
        };
        let (file, format) = self.target(words)?;
        let width = self.width(words)?;
        // Each crossing is met once in a pass: by the later of its two legs.
        let crossings = plan.knot().crossings() * u32::from(plan.laying().passes());
        if crossings > MOST_CROSSINGS {
            let sentence = words.sheet_long("sheet-reel-long", MOST_CROSSINGS);
            return Err(Complaint::input(sentence));
        }
        let script = Script::new(plan, AtOnce::WholeLeg);
        let maker = FrameMaker {
            script: &script,
            words,
        };
        let frames: Vec<Frame> = maker.all().collect();
        let view = if self.rolled_out {
            View::RolledOut
        } else {
            View::RoundTheTube
        };
        target::put(&file, self.replace, words, |draft| {
            write(&frames, draft, format, width, view, words)
        })
    }

    fn target(&self, words: &Words) -> Result<(PathBuf, ReelFormat), Complaint> {
        let Some(file) = self.out.clone() else {
            return Err(Complaint::input(
                words.plainly("sheet-reel-out-missing", &[]),
            ));
        };
        let ending = file.extension().unwrap_or_default().to_string_lossy();
        match ReelFormat::of_ending(&ending) {
            Some(format) => Ok((file, format)),
            None => Err(refused_name("sheet-reel-ending", &file, words)),
        }
    }

    fn width(&self, words: &Words) -> Result<u16, Complaint> {
        let Some(given) = self.width.as_deref() else {
            return Ok(WIDTH);
        };
        let [least, most] = WIDTHS;
        match given.trim().parse() {
            Ok(width) if (least..=most).contains(&width) => Ok(width),
            _ => Err(Complaint::input(words.sheet_width(given, least, most))),
        }
    }
}

impl FrameMaker<'_> {
    fn all(&self) -> impl Iterator<Item = Frame> {
        let steps = self.script.places();
        let steps = steps.filter_map(|place| self.script.step(place));
        let steps = steps.filter(|step| is_shown(&step.what));
        std::iter::once(self.title())
            .chain(std::iter::once(self.cautions()))
            .chain(steps.flat_map(|step| self.of(&step)))
    }

    /// The finished knot, under its name.
    fn title(&self) -> Frame {
        let plan = self.script.plan();
        Frame {
            stage: StageSheet {
                line: self.words.tie_line(plan),
                notes: vec![self.words.facts(self.script).into()],
                ..StageSheet::default()
            },
            subject: Some(Subject::finished(plan)),
            hundredths: LAST,
        }
    }

    fn cautions(&self) -> Frame {
        Frame {
            stage: StageSheet {
                line: self.words.plainly("card-cautions", &[]),
                notes: self.words.card_cautions(),
                ..StageSheet::default()
            },
            subject: None,
            hundredths: 2 * LAST,
        }
    }

    /// A leg goes in crossing by crossing; then, as any other step, it stands while its words are read.
    fn of(&self, step: &Step) -> Vec<Frame> {
        // The title names the knot, so the other frames do not.
        let stage = StageSheet {
            knot: String::new(),
            ..staged(self.script, step, self.words)
        };
        let subject = Subject::of(self.script, step);
        // The first picture of a film shows the same as the last.
        let mut film = subject.film();
        let standing = film.pop();
        let moving = film.into_iter().skip(1).map(|subject| Frame {
            stage: stage.clone(),
            subject: Some(subject),
            hundredths: CROSSING,
        });
        let mut frames: Vec<Frame> = moving.collect();
        let moved = CROSSING.saturating_mul(u16::try_from(frames.len()).unwrap_or(u16::MAX));
        let reading = hundredths(self.words.seconds(&self.words.say(step)) * READING);
        let is_last = matches!(&step.what, What::Finish(finish) if matches!(finish.task, FinishTask::Done { .. }));
        frames.push(Frame {
            stage,
            subject: standing,
            hundredths: if is_last {
                LAST
            } else {
                reading.saturating_sub(moved).max(LEAST)
            },
        });
        frames
    }
}

/// Paints one frame after another into a file.
fn write(
    frames: &[Frame],
    draft: &mut File,
    format: ReelFormat,
    width: u16,
    view: View,
    words: &Words,
) -> Result<(), ReelError> {
    let place = match view {
        View::RoundTheTube => FramePlan::Beside,
        View::RolledOut => {
            let pictured = frames.iter().filter(|frame| frame.subject.is_some());
            let heights = pictured.map(|frame| frame.stage.height_in_frame());
            FramePlan::Under(heights.fold(0.0, f32::max))
        }
    };
    let count = u32::try_from(frames.len()).unwrap_or(u32::MAX);
    let mut painter = Painter::new();
    // Frames from the whole length of the tie have all of its colours.
    let some = frames.iter().step_by((frames.len() / 6).max(1));
    let samples: Vec<Image> = some
        .map(|frame| frame.image(place, width, view, &mut painter).clone())
        .collect();
    let mut reel = Reel::begin(BufWriter::new(draft), format, count, &samples)?;
    drop(samples);
    let mut progress = Progress::begin(count, words);
    for (done, frame) in (1..).zip(frames) {
        let image = frame.image(place, width, view, &mut painter);
        reel.frame(image, frame.hundredths)?;
        if !progress.goes_on(done) {
            return Err(ReelError::Stopped { done, count });
        }
    }
    reel.finish()
}

impl Frame {
    fn image<'a>(
        &self,
        place: FramePlan,
        width: u16,
        view: View,
        painter: &'a mut Painter,
    ) -> &'a Image {
        let subject = self.subject.as_ref();
        let scene = subject
            .map(|subject| move |viewport: Viewport| -> Scene { subject.scene(view, viewport) });
        self.stage.frame(place, width, painter, scene)
    }
}

/// Bag, rigging and checks are left out: no cord moves there, and a class is to see the tying.
const fn is_shown(what: &What) -> bool {
    !matches!(what, What::Kit(_) | What::Rig(_) | What::Check(_))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "brought within bounds first"
)]
fn hundredths(seconds: f64) -> u16 {
    (seconds * 100.0).round().clamp(0.0, f64::from(u16::MAX)) as u16
}
