//! What somebody wants made of a tie, and the making of it.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

use super::bounds::{check_card, check_strip};
use super::card::card;
use super::error::PaperError;
use super::pages::{pinned, stage, strip};
use super::reel::{REEL_WIDTH, TieReel};
use super::target::Target;
use crate::bench::{Prices, TyingPace};
use crate::guide::{AtOnce, Labour, Place, Plan, Script};
use crate::picture::reel::ReelFormat;
use crate::picture::sheet::{Paper, Sheet};
use crate::picture::{Image, View};
use crate::words::Words;

/// What can be made of a tie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaperKind {
    /// Its facts and every leg.
    Card,
    /// Where its pins go, at true size.
    Strip,
    /// The picture at one step.
    Stage,
    /// All of it, moving.
    Reel,
}

/// Kinds of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileForm {
    /// Pages of true size.
    Pdf,
    /// A picture; of a reel one that moves; of several pages a file each.
    Png,
    /// A moving picture of 256 colours.
    Gif,
    /// A moving picture in all colours.
    WebP,
}

/// Whether a file that is there may be written over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Overwrite {
    /// None.
    Nothing,
    /// The one that was named, and none beside it.
    Named,
    /// Any.
    All,
}

/// What is to be made, of which tie.
#[derive(Clone, Debug)]
pub struct PaperOrder {
    /// The tie.
    pub plan: Plan,
    /// Where it stands, for the picture of one step; at its end when nothing is said.
    pub place: Option<Place>,
    /// What is to be made.
    pub kind: PaperKind,
    /// As what kind of file.
    pub form: FileForm,
    /// For which paper.
    pub paper: Paper,
    /// What cord and an hour cost.
    pub prices: Prices,
}

/// Dots an inch of a PNG for a printer.
const DOTS: u16 = 300;
/// Dots an inch of a page that is only looked at.
const GLANCE: u16 = 72;
/// Pixels across the first frame of a reel that is only looked at.
const GLANCE_WIDTH: u16 = 640;

impl PaperKind {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Card, Self::Strip, Self::Stage, Self::Reel];

    /// The kinds of file that it can be, the usual one first.
    pub const fn forms(self) -> &'static [FileForm] {
        match self {
            Self::Card | Self::Strip => &[FileForm::Pdf, FileForm::Png],
            Self::Stage => &[FileForm::Png, FileForm::Pdf],
            Self::Reel => &[FileForm::Gif, FileForm::WebP, FileForm::Png],
        }
    }

    /// Whether it is printed, and so made for a paper.
    pub const fn is_paper(self) -> bool {
        !matches!(self, Self::Reel)
    }
}

impl FileForm {
    /// What it is called everywhere.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Pdf => "PDF",
            Self::Png => "PNG",
            Self::Gif => "GIF",
            Self::WebP => "WebP",
        }
    }

    /// How the names of such files end, without the dot.
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Png => "png",
            Self::Gif => "gif",
            Self::WebP => "webp",
        }
    }

    /// This path, with the ending of such files where it has another or none, and with one where it has two:
    /// a window of the system proposes a name of which all but the ending is marked, so that who types a
    /// whole name over it has the ending twice.
    pub fn ended(self, path: &Path) -> PathBuf {
        let has_it = |path: &Path| {
            path.extension()
                .is_some_and(|ending| ending.eq_ignore_ascii_case(self.ending()))
        };
        if has_it(path) {
            let once = path.with_extension("");
            return if has_it(&once) { once } else { path.to_owned() };
        }
        // Added and not exchanged: "5.5 mm" has no ending.
        let mut name = path.as_os_str().to_owned();
        name.push(".");
        name.push(self.ending());
        PathBuf::from(name)
    }
}

impl PaperOrder {
    /// Makes it, and gives the files that it is in, in the order of the pages. `goes_on` is told how many
    /// pages or frames are done, and of how many, and says whether to go on. `pace` is the tyer's own.
    ///
    /// # Errors
    /// A [`PaperError`] when it can't be made, or is stopped.
    pub fn make(
        &self,
        file: &Path,
        overwrite: Overwrite,
        pace: Option<TyingPace>,
        words: &Words,
        goes_on: impl FnMut(u32, u32) -> bool,
    ) -> Result<Vec<PathBuf>, PaperError> {
        if self.kind == PaperKind::Reel {
            let format = match self.form {
                FileForm::WebP => ReelFormat::WebP,
                FileForm::Png => ReelFormat::Png,
                FileForm::Gif | FileForm::Pdf => ReelFormat::Gif,
            };
            let reel = self.reel(REEL_WIDTH, words)?;
            reel.write(file, format, overwrite != Overwrite::Nothing, goes_on)?;
            return Ok(vec![file.to_owned()]);
        }
        let sheet = self.sheet(pace, words)?;
        let is_pdf = self.form == FileForm::Pdf;
        let target = Target {
            file: file.to_owned(),
            is_pdf,
            dots: DOTS,
            replace: match overwrite {
                Overwrite::Nothing => false,
                Overwrite::Named => is_pdf || sheet.count() == 1,
                Overwrite::All => true,
            },
        };
        target.write(&*sheet, &words.tie_line(&self.plan), goes_on)
    }

    /// What the first page, or the first frame, looks like on a screen.
    ///
    /// # Errors
    /// A [`PaperError`] when it can't be made.
    pub fn glance(&self, pace: Option<TyingPace>, words: &Words) -> Result<Image, PaperError> {
        if self.kind == PaperKind::Reel {
            return Ok(self.reel(GLANCE_WIDTH, words)?.cover());
        }
        let mut image = Image::default();
        let _ = self.sheet(pace, words)?.lay_out(&mut |page| {
            image = page.image(GLANCE);
            ControlFlow::Break(())
        });
        Ok(image)
    }

    fn reel(&self, width: u16, words: &Words) -> Result<TieReel, PaperError> {
        TieReel::new(self.plan.clone(), View::RoundTheTube, width, words)
    }

    fn sheet(&self, pace: Option<TyingPace>, words: &Words) -> Result<Box<dyn Sheet>, PaperError> {
        let (plan, paper) = (&self.plan, self.paper);
        match self.kind {
            PaperKind::Card => {
                check_card(plan)?;
                let pinned = pinned(plan);
                let pinned = pinned.as_ref().map(|(tube, layout)| (*tube, layout));
                let labour = Labour::of(plan, pace, self.prices);
                Ok(Box::new(card(plan, pinned, &labour, paper, words)))
            }
            PaperKind::Strip => {
                let (tube, layout) = pinned(plan).ok_or(PaperError::NoTube)?;
                check_strip(plan, tube, &layout, paper)?;
                Ok(strip(plan, tube, &layout, paper, words))
            }
            PaperKind::Stage | PaperKind::Reel => {
                let script = Script::new(plan.clone(), AtOnce::default());
                let place = self.place.unwrap_or_else(|| script.last());
                let step = script.step(place).or_else(|| script.step(script.last()));
                let step = step.ok_or_else(|| PaperError::Refused("no step".to_owned()))?;
                let page = stage(&script, &step, View::RoundTheTube, paper, words);
                Ok(Box::new(page))
            }
        }
    }
}

/// The name that a file of this kind is proposed under: that of the tie, as far as files can be called so.
///
/// # Examples
/// ```
/// use marlinspeak::paper::{FileForm, file_name};
///
/// assert_eq!(file_name("Tiller: 5/7", "Card", FileForm::Pdf), "Tiller- 5-7, Card.pdf");
/// ```
pub fn file_name(tie: &str, kind: &str, form: FileForm) -> String {
    let is_barred = |letter: char| {
        letter.is_control()
            || matches!(letter, '/' | '\\' | ':' | '*' | '?' | '"' | '<' | '>' | '|')
    };
    let tie: String = tie
        .trim_start_matches(['.', ' '])
        .chars()
        .take(LONGEST)
        .map(|letter| if is_barred(letter) { '-' } else { letter })
        .collect();
    format!("{}, {kind}.{}", tie.trim_end(), form.ending())
}

/// Letters of a tie's name in the name of a file: with the rest it is within what files can be called.
const LONGEST: usize = 50;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_gets_the_ending_of_its_kind_once() {
        for (path, ended) in [
            ("card.pdf", "card.pdf"),
            ("card.PDF", "card.PDF"),
            ("card", "card.pdf"),
            ("cord of 5.5 mm", "cord of 5.5 mm.pdf"),
            ("card.png", "card.png.pdf"),
            ("loft/bell rope.pdf.pdf", "loft/bell rope.pdf"),
            ("card.PDF.pdf", "card.PDF"),
            (".pdf", ".pdf.pdf"),
            (".pdf.pdf", ".pdf.pdf"),
        ] {
            assert_eq!(FileForm::Pdf.ended(Path::new(path)), Path::new(ended));
        }
    }

    #[test]
    fn the_proposed_name_is_one_that_a_file_can_have() {
        let name = file_name(&"./ü\n".repeat(100), "Karte", FileForm::Gif);
        assert!(name.len() < 255 && !name.contains(['/', '\n']) && !name.starts_with('.'));
        assert!(name.ends_with(", Karte.gif"), "{name}");
    }
}
