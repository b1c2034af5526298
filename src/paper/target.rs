//! Pages into files.

use std::fs::File;
use std::io::Write;
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use super::error::PaperError;
use crate::picture::ExportError;
use crate::picture::reel::ReelError;
use crate::picture::sheet::{SheetPage, pdf_while};

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
    /// Writes the pages, each file whole or not at all, and gives the files. `goes_on` is told after each page how many are
    /// done, and of how many, and says whether to go on.
    ///
    /// # Errors
    /// A [`PaperError`] when a file is there already, or can't be written, or it is stopped.
    pub fn write(
        &self,
        pages: &[SheetPage],
        title: &str,
        mut goes_on: impl FnMut(u32, u32) -> bool,
    ) -> Result<Vec<PathBuf>, PaperError> {
        let refused = |error: ExportError| PaperError::Refused(error.to_string());
        let files = self.files(pages.len());
        if let Some(file) = files.iter().find(|file| !self.replace && file.exists()) {
            return Err(PaperError::Exists(file.clone()));
        }
        let count = u32::try_from(pages.len()).unwrap_or(u32::MAX);
        let stopped = |done| PaperError::Stopped {
            done,
            count,
            is_one_file: self.is_pdf,
        };
        if self.is_pdf {
            let mut done = 0;
            let bytes = pdf_while(pages, title, |pages| {
                done = pages;
                goes_on(pages, count)
            });
            let bytes = bytes.map_err(refused)?.ok_or_else(|| stopped(done))?;
            self.put(&self.file, &bytes)?;
            return Ok(files);
        }
        for (done, (page, file)) in (1..).zip(pages.iter().zip(&files)) {
            let bytes = page.image(self.dots).png(self.dots).map_err(refused)?;
            self.put(file, &bytes)?;
            if !goes_on(done, count) && done < count {
                return Err(stopped(done));
            }
        }
        Ok(files)
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

    fn put(&self, file: &Path, bytes: &[u8]) -> Result<(), PaperError> {
        put(file, self.replace, |draft| Ok(draft.write_all(bytes)?))
    }
}

/// Writes a file whole or not at all, and over one that is there only to `replace` it.
pub(super) fn put(
    file: &Path,
    replace: bool,
    write: impl FnOnce(&mut File) -> Result<(), ReelError>,
) -> Result<(), PaperError> {
    if !replace && file.exists() {
        return Err(PaperError::Exists(file.to_owned()));
    }
    let folder = match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let written = || {
        let mut draft = NamedTempFile::new_in(folder)?;
        write(draft.as_file_mut())?;
        readable(draft.as_file())?;
        let kept = if replace {
            draft.persist(file)
        } else {
            draft.persist_noclobber(file)
        };
        kept.map_err(|error| error.error)?;
        Ok(())
    };
    written().map_err(|fault| match fault {
        ReelError::Unwritable(fault) => PaperError::Unwritable {
            file: file.to_owned(),
            fault,
        },
        ReelError::Stopped { done, count } => PaperError::Stopped {
            done,
            count,
            is_one_file: true,
        },
        ReelError::Encoder(reason) => PaperError::Refused(reason),
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
