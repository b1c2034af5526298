//! The file of a sheet: where it goes and what it is like.

use std::path::PathBuf;

use clap::Args;

use super::{DOTS_USUAL, paper_of, refused_name};
use crate::cli::complaint::Complaint;
use crate::paper::Target;
use crate::picture::sheet::{DOTS, Paper};
use crate::words::Words;

#[derive(Args)]
pub(super) struct FileOptions {
    #[arg(long, value_name = "value-file", help = "help-out")]
    out: Option<PathBuf>,
    #[arg(long, help = "help-replace")]
    replace: bool,
    #[arg(long, help = "help-pdf")]
    pdf: bool,
    #[arg(long, value_name = "N", allow_hyphen_values = true, help = "help-dpi")]
    dpi: Option<String>,
    #[arg(long, value_name = "value-paper", help = "help-paper")]
    paper: Option<String>,
}

impl FileOptions {
    /// The paper that is asked for.
    pub fn paper(&self, words: &Words) -> Result<Paper, Complaint> {
        paper_of(self.paper.as_deref(), words)
    }

    /// Where the pages go.
    pub fn target(&self, words: &Words) -> Result<Target, Complaint> {
        let Some(file) = self.out.clone() else {
            return Err(Complaint::input(words.plainly("sheet-out-missing", &[])));
        };
        let ending = file
            .extension()
            .map(|ending| ending.to_string_lossy().to_lowercase());
        let is_pdf = match ending.as_deref() {
            _ if self.pdf => true,
            Some("pdf") => true,
            Some("png") => false,
            _ => return Err(refused_name("sheet-out-ending", &file, words)),
        };
        Ok(Target {
            file,
            is_pdf,
            dots: self.dots(words)?,
            replace: self.replace,
        })
    }

    /// Dots an inch.
    fn dots(&self, words: &Words) -> Result<u16, Complaint> {
        let Some(given) = self.dpi.as_deref() else {
            return Ok(DOTS_USUAL);
        };
        match given.trim().parse() {
            Ok(dots) if DOTS.contains(&dots) => Ok(dots),
            _ => {
                let sentence = words.sheet_dpi(given, *DOTS.start(), *DOTS.end());
                Err(Complaint::input(sentence))
            }
        }
    }
}
