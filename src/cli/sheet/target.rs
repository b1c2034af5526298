//! Pages into files.

use std::fs::File;
use std::io::Write;
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use super::progress::Progress;
use crate::cli::complaint::Complaint;
use crate::files::Reason;
use crate::picture::ExportError;
use crate::picture::reel::ReelError;
use crate::picture::sheet::{SheetPage, pdf_while};
use crate::words::Words;

/// Where the pages go.
pub(super) struct Target {
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
    /// Writes the pages, each file whole or not at all.
    pub fn write(&self, pages: &[SheetPage], title: &str, words: &Words) -> Result<(), Complaint> {
        let failed = |error: ExportError| {
            log::warn!("no sheet: {error}");
            Complaint::failure(words.plainly("sheet-failed", &[]))
        };
        let files = self.files(pages.len());
        if let Some(file) = files.iter().find(|file| !self.replace && file.exists()) {
            return Err(refused_name("sheet-exists", file, words));
        }
        let count = u32::try_from(pages.len()).unwrap_or(u32::MAX);
        let mut progress = Progress::begin(count, words);
        let stopped = |done| Complaint::failure(words.sheet_stopped(done, count, self.is_pdf));
        if self.is_pdf {
            let mut done = 0;
            let bytes = pdf_while(pages, title, |pages| {
                done = pages;
                progress.goes_on(pages)
            });
            let bytes = bytes.map_err(failed)?.ok_or_else(|| stopped(done))?;
            return self.put(&self.file, &bytes, words);
        }
        for (done, (page, file)) in (1..).zip(pages.iter().zip(files)) {
            let bytes = page.image(self.dots).png(self.dots).map_err(failed)?;
            self.put(&file, &bytes, words)?;
            if !progress.goes_on(done) && done < count {
                return Err(stopped(done));
            }
        }
        Ok(())
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

    fn put(&self, file: &Path, bytes: &[u8], words: &Words) -> Result<(), Complaint> {
        put(file, self.replace, words, |draft| {
            Ok(draft.write_all(bytes)?)
        })
    }
}

/// Writes a file whole or not at all, and over one that is there only to `replace` it.
pub(super) fn put(
    file: &Path,
    replace: bool,
    words: &Words,
    write: impl FnOnce(&mut File) -> Result<(), ReelError>,
) -> Result<(), Complaint> {
    if !replace && file.exists() {
        return Err(refused_name("sheet-exists", file, words));
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
    written().map_err(|fault| {
        log::warn!("no sheet: {fault}");
        match fault {
            ReelError::Unwritable(fault) => {
                let name = file.to_string_lossy();
                let reason = words.reason(Reason::of(&fault));
                let texts = [("file", &*name), ("reason", &*reason)];
                Complaint::failure(words.plainly("sheet-unwritable", &texts))
            }
            ReelError::Stopped { done, count } => {
                Complaint::failure(words.sheet_stopped(done, count, true))
            }
            ReelError::Encoder(_) => Complaint::failure(words.plainly("sheet-failed", &[])),
        }
    })
}

/// The sentence about the name of a file that can't be used.
pub(super) fn refused_name(id: &str, file: &Path, words: &Words) -> Complaint {
    Complaint::input(words.plainly(id, &[("file", &file.to_string_lossy())]))
}

/// A draft is its owner's alone; a sheet may be read by others too.
#[cfg(unix)]
fn readable(file: &std::fs::File) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(std::fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn readable(_: &std::fs::File) -> std::io::Result<()> {
    Ok(())
}
