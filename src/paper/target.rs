//! Pages into files.

use std::fs::File;
use std::io::{self, BufWriter, Write as _};
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

use super::error::PaperError;
use crate::files::{self, DiskCall, OnDisk};
use crate::picture::ExportError;
use crate::picture::reel::ReelError;
use crate::picture::sheet::{PdfError, Sheet, SheetPage, write_pdf};

/// Where the pages go.
#[derive(Clone, Debug)]
pub struct Target {
    /// The file asked for; of several PNG pages each has one beside it.
    pub file: PathBuf,
    /// Whether to write one PDF instead of PNG.
    pub is_pdf: bool,
    /// Dots an inch of a PNG.
    pub dots: u16,
    /// Whether a file that is there may be written over.
    pub replace: bool,
}

impl Target {
    /// Writes the pages of a sheet as they are laid out, each file whole or not at all, and gives the files.
    /// `goes_on` is told after each page how many are done, and of how many, and says whether to go on.
    ///
    /// # Errors
    /// A [`PaperError`] when a file is there already, or can't be written, or it is stopped.
    pub fn write(
        &self,
        sheet: &dyn Sheet,
        title: &str,
        mut goes_on: impl FnMut(u32, u32) -> bool,
    ) -> Result<Vec<PathBuf>, PaperError> {
        let files = self.files(sheet.count());
        if let Some(file) = files.iter().find(|file| !self.replace && is_there(file)) {
            return Err(PaperError::Exists(file.clone()));
        }
        if self.is_pdf {
            put(&self.file, self.replace, |draft| {
                Ok(write_pdf(sheet, title, BufWriter::new(draft), goes_on)?)
            })?;
            return Ok(files);
        }
        let count = u32::try_from(files.len()).unwrap_or(u32::MAX);
        let (mut done, mut fault) = (0, None);
        let mut rest = files.iter();
        let laid_out = sheet.lay_out(&mut |page| {
            if let Some(Err(error)) = rest.next().map(|file| self.put_image(file, &page)) {
                fault = Some(error);
                return ControlFlow::Break(());
            }
            done += 1;
            if goes_on(done, count) || done == count {
                ControlFlow::Continue(())
            } else {
                ControlFlow::Break(())
            }
        });
        match (fault, laid_out) {
            (Some(fault), _) => Err(fault),
            (None, ControlFlow::Break(())) => Err(PaperError::Stopped {
                done,
                count,
                is_one_file: false,
            }),
            (None, ControlFlow::Continue(())) => Ok(files),
        }
    }

    fn put_image(&self, file: &Path, page: &SheetPage) -> Result<(), PaperError> {
        put(file, self.replace, |mut draft| {
            let bytes = page.image(self.dots).png(self.dots)?;
            Ok(draft.write_all(&bytes)?)
        })
    }

    /// One file for a PDF or a single page, or else one for each page.
    fn files(&self, pages: usize) -> Vec<PathBuf> {
        if self.is_pdf || pages == 1 {
            return vec![self.file.clone()];
        }
        let stem = self.file.file_stem().unwrap_or_default().to_string_lossy();
        let ending = self.file.extension().unwrap_or_default().to_string_lossy();
        (1..=pages)
            .map(|page| self.file.with_file_name(format!("{stem}-{page}.{ending}")))
            .collect()
    }
}

/// Why a file was not written to its end.
pub(super) enum Unmade {
    Unwritable(io::Error),
    Refused(String),
    Stopped { done: u32, count: u32 },
}

impl From<io::Error> for Unmade {
    fn from(fault: io::Error) -> Self {
        Self::Unwritable(fault)
    }
}

impl From<ExportError> for Unmade {
    fn from(error: ExportError) -> Self {
        Self::Refused(error.to_string())
    }
}

impl From<PdfError> for Unmade {
    fn from(error: PdfError) -> Self {
        match error {
            PdfError::Unwritable(fault) => Self::Unwritable(fault),
            PdfError::Stopped { done, count } => Self::Stopped { done, count },
            error @ PdfError::Face(_) => Self::Refused(error.to_string()),
        }
    }
}

impl From<ReelError> for Unmade {
    fn from(error: ReelError) -> Self {
        match error {
            ReelError::Unwritable(fault) => Self::Unwritable(fault),
            ReelError::Stopped { done, count } => Self::Stopped { done, count },
            ReelError::Encoder(reason) => Self::Refused(reason),
        }
    }
}

/// Whether something lies there already. Where the system does not tell, writing will say why.
fn is_there(file: &Path) -> bool {
    files::exists(file).unwrap_or(false)
}

/// Writes a file whole or not at all, and over one that is there only to `replace` it.
pub(super) fn put(
    file: &Path,
    replace: bool,
    write: impl FnOnce(OnDisk<&mut File>) -> Result<(), Unmade>,
) -> Result<(), PaperError> {
    if !replace && is_there(file) {
        return Err(PaperError::Exists(file.to_owned()));
    }
    let written = || {
        let mut draft = files::draft(file)?;
        write(OnDisk(draft.as_file_mut()))?;
        let _call = DiskCall::begin();
        readable(draft.as_file())?;
        let kept = if replace {
            draft.persist(file)
        } else {
            draft.persist_noclobber(file)
        };
        kept.map_err(|error| error.error)?;
        Ok(())
    };
    written().map_err(|unmade| match unmade {
        Unmade::Unwritable(fault) => PaperError::Unwritable {
            file: file.to_owned(),
            fault,
        },
        Unmade::Stopped { done, count } => PaperError::Stopped {
            done,
            count,
            is_one_file: true,
        },
        Unmade::Refused(reason) => PaperError::Refused(reason),
    })
}

/// A draft is its owner's alone; a sheet may be read by others too.
#[cfg(unix)]
fn readable(file: &File) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(std::fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn readable(_: &File) -> std::io::Result<()> {
    Ok(())
}
