//! A whole tie as a moving picture.

use std::fs::File;
use std::io::BufWriter;
use std::path::Path;

use super::bounds::check_reel;
use super::error::PaperError;
use super::pages::staged;
use super::target::put;
use crate::files::OnDisk;
use crate::guide::{AtOnce, Captions, FinishTask, Plan, Script, Step, What};
use crate::picture::reel::{Reel, ReelError, ReelFormat};
use crate::picture::sheet::{FramePlan, StageSheet};
use crate::picture::{Image, Painter, Scene, Subject, View, Viewport};
use crate::words::Words;

/// Pixels across a reel, at least and at most.
pub const REEL_WIDTHS: [u16; 2] = [320, 1920];
/// Pixels across a reel when nothing is said.
pub const REEL_WIDTH: u16 = 800;
/// Hundredths of a second that a cord takes for a crossing.
const CROSSING: u16 = 40;
/// Hundredths of a second that words stand at least, and that the last frame stands.
const LEAST: u16 = 200;
const LAST: u16 = 500;
/// Who reads takes this share of the time that speaking takes; found by looking.
const READING: f64 = 0.7;

/// A whole tie as a moving picture, for a class or a wall. Its frames are told one after the other, and
/// anew each time that they are gone through.
pub struct TieReel {
    script: Script,
    words: Words,
    view: View,
    width: u16,
    count: u32,
    /// What is written in its pictures.
    captions: Captions,
}

/// One frame: what stands there, how much of the leg is laid, and for how long.
struct Frame {
    stage: StageSheet,
    subject: Option<Subject>,
    hundredths: u16,
}

impl TieReel {
    /// The reel of a plan, so many pixels across, which must be within [`REEL_WIDTHS`].
    ///
    /// # Errors
    /// [`PaperError::Long`] when nobody would look at all of it.
    pub fn new(plan: Plan, view: View, width: u16, words: &Words) -> Result<Self, PaperError> {
        check_reel(&plan)?;
        let mut reel = Self {
            captions: words.captions(&plan),
            words: words.clone(),
            script: Script::new(plan, AtOnce::WholeLeg),
            view,
            width,
            count: 0,
        };
        reel.count = u32::try_from(reel.frames().count()).unwrap_or(u32::MAX);
        Ok(reel)
    }

    /// Writes it into a file, and over one that is there only to `replace` it. `goes_on` is told before
    /// the first frame and after each how many are done, and of how many, and says whether to go on.
    ///
    /// # Errors
    /// A [`PaperError`] when it is stopped, or the file can't be written.
    pub fn write(
        &self,
        file: &Path,
        format: ReelFormat,
        replace: bool,
        mut goes_on: impl FnMut(u32, u32) -> bool,
    ) -> Result<(), PaperError> {
        put(file, replace, |draft| {
            Ok(self.paint(draft, format, &mut goes_on)?)
        })
    }

    /// Its first frame.
    pub fn cover(&self) -> Image {
        let (place, mut painter) = (self.place(), Painter::new());
        let title = self.title();
        title
            .image(place, self.width, self.view, &mut painter)
            .clone()
    }

    /// Where the picture of each frame stands.
    fn place(&self) -> FramePlan {
        match self.view {
            View::RoundTheTube => FramePlan::Beside,
            View::RolledOut => {
                let pictured = self.frames().filter(|frame| frame.subject.is_some());
                let heights = pictured.map(|frame| frame.stage.height_in_frame());
                FramePlan::Under(heights.fold(0.0, f32::max))
            }
        }
    }

    /// Paints one frame after another into a file.
    fn paint(
        &self,
        draft: OnDisk<&mut File>,
        format: ReelFormat,
        goes_on: &mut dyn FnMut(u32, u32) -> bool,
    ) -> Result<(), ReelError> {
        let Self {
            view, width, count, ..
        } = *self;
        let place = self.place();
        let mut painter = Painter::new();
        // Frames from the whole length of the tie have all of its colours.
        let between = usize::try_from(count / 6).unwrap_or(usize::MAX).max(1);
        let samples: Vec<Image> = self
            .frames()
            .step_by(between)
            .map(|frame| frame.image(place, width, view, &mut painter).clone())
            .collect();
        let mut reel = Reel::begin(BufWriter::new(draft), format, count, &samples)?;
        drop(samples);
        if !goes_on(0, count) {
            return Err(ReelError::Stopped { done: 0, count });
        }
        for (done, frame) in (1..).zip(self.frames()) {
            let image = frame.image(place, width, view, &mut painter);
            reel.frame(image, frame.hundredths)?;
            if !goes_on(done, count) {
                return Err(ReelError::Stopped { done, count });
            }
        }
        reel.finish()
    }

    fn frames(&self) -> impl Iterator<Item = Frame> + '_ {
        let steps = self.script.steps();
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
                notes: vec![self.words.facts(&self.script).into()],
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
    fn of(&self, step: &Step) -> impl Iterator<Item = Frame> + use<> {
        // The title names the knot, so the other frames do not.
        let stage = StageSheet {
            knot: String::new(),
            ..staged(&self.script, step, &self.words)
        };
        let subject = Subject::of(&self.script, step).captioned(&self.captions);
        // The first picture of a film shows the same as the last.
        let mut film = subject.film(usize::MAX);
        let standing = film.pop();
        let moving = film.len().saturating_sub(1);
        let moved = CROSSING.saturating_mul(u16::try_from(moving).unwrap_or(u16::MAX));
        let reading = hundredths(self.words.seconds(&self.words.say(step)) * READING);
        let is_last = matches!(&step.what, What::Finish(finish) if matches!(finish.task, FinishTask::Done { .. }));
        let last = Frame {
            stage: stage.clone(),
            subject: standing,
            hundredths: if is_last {
                LAST
            } else {
                reading.saturating_sub(moved).max(LEAST)
            },
        };
        let moving = film.into_iter().skip(1).map(move |subject| Frame {
            stage: stage.clone(),
            subject: Some(subject),
            hundredths: CROSSING,
        });
        moving.chain(std::iter::once(last))
    }
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
