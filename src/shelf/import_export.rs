//! Ties that leave the shelf and come to it: one as a file, or all in a backup.
//!
//! A backup has one JSON document a line: first what it is and how many ties and entries of the
//! log follow, then the ties, then the log, then the tubes and cords kept by name, the settings and
//! the orders, if there are any. So a backup that is damaged or cut short still gives back every whole line.

use std::collections::HashMap;
use std::path::Path;

use serde_json::{Value, json};

use super::bringing_in::{ByContents, Imported};
use super::names::Names;
use super::orders::TakenOrder;
use super::{
    DocumentError, Orders, PresetsFile, Shelf, ShelfError, ShelfReading, ShelfTrouble, TieId,
    read_entry, read_order, read_tie, write_entry, write_tie,
};
use crate::files::{
    self, FileError, FileTrouble, FormatError, Gathering, LARGEST_DOCUMENT, Readers, Reading,
};

/// Version 2 has orders: a program that does not know them would take them for settings.
const BACKUP_VERSION: u64 = 2;
const LARGEST_BACKUP: u64 = 64 << 20;

/// What is done about a file that is there already.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum IfThere {
    /// It stays, and nothing is written.
    #[default]
    Refuse,
    /// It gives way, all at once.
    Replace,
}

impl IfThere {
    fn write(self, file: &Path, contents: &[u8]) -> Result<(), ShelfError> {
        files::sweep_drafts(file);
        // Others may read what the tyer hands over, as far as the system's own rules allow.
        match self {
            Self::Refuse => files::create(file, contents, Readers::AsUsual)?,
            Self::Replace => files::replace(file, contents, Readers::AsUsual)?,
        }
        Ok(())
    }
}

/// The document of the settings for a backup, where there is one.
pub type SettingsToKeep = Reading<Option<Vec<u8>>, FileTrouble<FormatError>>;

/// What a backup holds.
#[derive(Clone, Debug)]
pub struct Backup {
    /// How many ties, including those of a newer version.
    pub ties: usize,
    /// How many entries of the log.
    pub logged: usize,
    /// How many orders.
    pub orders: usize,
    /// How many documents are on the shelf but not in the backup, since they cannot be read.
    pub left_out: usize,
}

/// What came back from a backup.
#[derive(Clone, Debug)]
pub struct Restored {
    /// The ties that were in it.
    pub ties: Vec<Imported>,
    /// How many of them had longer names or notes than what is kept of them.
    pub shortened: usize,
    /// How many entries of the log were put into the log here; what it had stays.
    pub logged: usize,
    /// How many tubes and cords came under names that were free here.
    pub presets: usize,
    /// How many orders came that were not here.
    pub orders: usize,
    /// The document of the settings and the number of its line, when there is one.
    pub settings: Option<(usize, Vec<u8>)>,
    /// The lines, counted from 1, that are not believed, and why.
    pub faults: Vec<(usize, DocumentError)>,
    /// How many ties and entries of the log are missing at its end.
    pub missing: u64,
}

impl Shelf {
    /// Writes one tie to a file.
    ///
    /// # Errors
    /// [`ShelfError::File`], or as [`Shelf::look`].
    pub fn export(
        &self,
        id: &TieId,
        file: &Path,
        if_there: IfThere,
    ) -> Result<ShelfReading<()>, ShelfError> {
        ShelfReading::try_gather(|gathering| {
            let tie = self.look(id)?.hand_on(gathering);
            let contents = write_tie(&tie).map_err(ShelfError::unwritable(id))?;
            if_there.write(file, &contents)
        })
    }

    /// Puts the tie in a file on the shelf. Nothing in the file decides where it is written.
    ///
    /// # Errors
    /// [`ShelfError::File`], also when the file is not believed.
    pub fn import(&self, file: &Path) -> Result<Imported, ShelfError> {
        let document = files::read_bytes(file, LARGEST_DOCUMENT)?;
        let tie = read_tie(&document).map_err(FileError::unreadable(file))?;
        let _bringing = self.bring_alone()?;
        self.take_in(tie, &mut ByContents::default())
    }

    /// Writes all ties and the log to one file. What cannot be read comes out as a trouble.
    ///
    /// # Errors
    /// [`ShelfError::File`], also with [`FormatError::TooLarge`] when it would be too large to be
    /// read again. Nothing is written then.
    pub fn backup(
        &self,
        file: &Path,
        if_there: IfThere,
    ) -> Result<ShelfReading<Backup>, ShelfError> {
        self.backup_with(file, if_there, Reading::whole(None))
    }

    /// The same with the document of the settings, which the shelf knows nothing else of.
    ///
    /// # Errors
    /// As [`Shelf::backup`].
    pub fn backup_with(
        &self,
        file: &Path,
        if_there: IfThere,
        settings: SettingsToKeep,
    ) -> Result<ShelfReading<Backup>, ShelfError> {
        ShelfReading::try_gather(|gathering| self.back_up(file, if_there, settings, gathering))
    }

    fn back_up(
        &self,
        file: &Path,
        if_there: IfThere,
        settings: SettingsToKeep,
        gathering: &mut Gathering<ShelfTrouble>,
    ) -> Result<Backup, ShelfError> {
        let mut left_out = 0;
        let mut leave_out = |error: ShelfError, gathering: &mut Gathering<ShelfTrouble>| {
            left_out += 1;
            gathering.add(error.into());
        };
        let mut lines = Vec::new();
        for id in &Names::in_folder(self.folder())?.ids {
            match self.line_of(id) {
                Ok(line) => lines.push(line.hand_on(gathering)),
                Err(error) => leave_out(error, gathering),
            }
        }
        let ties = lines.len();
        for id in &self.logged()? {
            match self.log_line_of(id) {
                Ok(line) => lines.extend(line.hand_on(gathering)),
                Err(error) => leave_out(error, gathering),
            }
        }
        let logged = lines.len() - ties;
        match PresetsFile::beside(self).line() {
            Ok(line) => lines.extend(line.hand_on(gathering).map(on_one_line)),
            Err(error) => leave_out(error, gathering),
        }
        let racks = lines.len() - ties - logged;
        let ordered = Orders::beside(self).lines(gathering, &mut leave_out)?;
        let was_troubled = settings.is_troubled();
        let settings = settings.map_troubles(|_, trouble| ShelfTrouble::with_settings(trouble));
        let settings = settings.hand_on(gathering);
        left_out += usize::from(settings.is_none() && was_troubled);
        let settings_too = usize::from(settings.is_some());
        lines.extend(settings.map(on_one_line));
        let orders = ordered.len();
        lines.extend(ordered.into_iter().map(on_one_line));
        let version = if orders > 0 { BACKUP_VERSION } else { 1 };
        let mut head = files::encode(&json!({
            "marlinspeak": "backup", "version": version, "ties": ties, "logged": logged,
            "racks": racks, "settings": settings_too,
        }))
        .map_err(FileError::unreadable(file))?;
        if orders > 0 {
            head.insert("orders".to_owned(), orders.into());
        }
        // A number that is damaged would have lines taken for what they are not.
        let head = files::seal(head).map_err(FileError::unreadable(file))?;
        let mut contents = on_one_line(head);
        for line in &lines {
            contents.push(b'\n');
            contents.extend_from_slice(line);
        }
        contents.push(b'\n');
        if contents.len() as u64 > LARGEST_BACKUP {
            let fault = FormatError::TooLarge {
                bytes: contents.len() as u64,
                limit: LARGEST_BACKUP,
            };
            return Err(FileError::unreadable(file)(fault).into());
        }
        if_there.write(file, &contents)?;
        Ok(Backup {
            ties,
            logged,
            orders,
            left_out,
        })
    }

    /// Puts all ties of a backup on the shelf, as [`Shelf::import`] does with one.
    ///
    /// # Errors
    /// [`ShelfError::File`], also when the file is no backup.
    pub fn restore(&self, file: &Path) -> Result<ShelfReading<Restored>, ShelfError> {
        ShelfReading::try_gather(|gathering| self.bring_back(file, gathering))
    }

    fn bring_back(
        &self,
        file: &Path,
        gathering: &mut Gathering<ShelfTrouble>,
    ) -> Result<Restored, ShelfError> {
        let contents = files::read_bytes(file, LARGEST_BACKUP)?;
        let mut lines = contents.split(|byte| *byte == b'\n');
        let head = lines.next().unwrap_or_default();
        let [ties, logged, racks, settings, orders] =
            announced(head).map_err(FileError::unreadable(file))?;
        let _bringing = self.bring_alone()?;
        let mut here = ByContents::default();
        let mut restored = Restored {
            ties: Vec::new(),
            shortened: 0,
            logged: 0,
            faults: Vec::new(),
            presets: 0,
            orders: 0,
            settings: None,
            missing: [logged, racks, settings, orders]
                .into_iter()
                .fold(ties, u64::saturating_add),
        };
        let before_orders = [logged, racks, settings]
            .into_iter()
            .fold(ties, u64::saturating_add);
        // A tie that got a new id takes what was logged of it along.
        let mut ids = HashMap::new();
        let lines = lines
            .enumerate()
            .filter(|(_, line)| !line.trim_ascii().is_empty());
        for (number, (index, line)) in (0_u64..).zip(lines) {
            restored.missing = restored.missing.saturating_sub(1);
            let fault = if number < ties {
                read_tie(line).map(|tie| {
                    let was = tie.id.clone();
                    self.take_in(tie, &mut here).map(|imported| {
                        ids.insert(was, imported.tie.id.clone());
                        restored.shortened += usize::from(imported.is_shortened);
                        restored.ties.push(imported);
                    })
                })
            } else if orders > 0 && number >= before_orders {
                read_order(line).map(|stored| {
                    Orders::beside(self).take_in(stored).map(|taken| {
                        if let TakenOrder::New { is_shortened } = taken {
                            restored.orders += 1;
                            restored.shortened += usize::from(is_shortened);
                        }
                    })
                })
            } else if number >= ties.saturating_add(logged).saturating_add(racks) && settings > 0 {
                restored.settings = Some((index + 2, line.to_vec()));
                Ok(Ok(()))
            } else if number >= ties.saturating_add(logged) {
                let taken = PresetsFile::beside(self).take_in(line)?;
                taken.map(|taken| {
                    restored.presets += taken.hand_on(gathering);
                    Ok(())
                })
            } else {
                read_entry(line).map(|mut entry| {
                    if let Some(id) = ids.get(&entry.tie) {
                        entry.tie = id.clone();
                    }
                    self.take_in_entry(&entry).map(|is_new| {
                        restored.logged += usize::from(is_new.hand_on(gathering));
                    })
                })
            };
            match fault {
                Ok(taken_in) => taken_in?,
                Err(fault) => {
                    log::warn!("line {} of a backup {fault}", index + 2);
                    restored.faults.push((index + 2, fault));
                }
            }
        }
        Ok(restored)
    }

    /// The document of a tie on one line. A document of a newer version goes along unread.
    fn line_of(&self, id: &TieId) -> Result<ShelfReading<Vec<u8>>, ShelfError> {
        ShelfReading::try_gather(|gathering| match self.look(id) {
            Ok(tie) => write_tie(&tie.hand_on(gathering))
                .map(on_one_line)
                .map_err(ShelfError::unwritable(id)),
            Err(error) if error.is_newer() => unread_line(self.file(id).path()),
            Err(error) => Err(error),
        })
    }

    /// What was logged of a tie on one line, if anything was.
    fn log_line_of(&self, id: &TieId) -> Result<ShelfReading<Option<Vec<u8>>>, ShelfError> {
        ShelfReading::try_gather(|gathering| match self.entry(id) {
            Ok(entry) => match entry.hand_on(gathering) {
                None => Ok(None),
                Some(entry) => write_entry(&entry)
                    .map(|document| Some(on_one_line(document)))
                    .map_err(ShelfError::unwritable(id)),
            },
            Err(error) if error.is_newer() => unread_line(self.entry_file(id).path()).map(Some),
            Err(error) => Err(error),
        })
    }
}

/// A document that is not understood here, on one line.
fn unread_line(file: &Path) -> Result<Vec<u8>, ShelfError> {
    Ok(on_one_line(files::read_bytes(file, LARGEST_DOCUMENT)?))
}

/// Within JSON a line break can only be a space between two parts.
fn on_one_line(mut document: Vec<u8>) -> Vec<u8> {
    for byte in &mut document {
        if matches!(byte, b'\n' | b'\r') {
            *byte = b' ';
        }
    }
    document
}

/// How many ties, entries of the log, documents of tubes and cords, of settings, and orders
/// follow.
fn announced(head: &[u8]) -> Result<[u64; 5], FormatError> {
    let Value::Object(fields) = files::parse(head)? else {
        return Err(FormatError::NotAnObject);
    };
    if fields.get("marlinspeak").and_then(Value::as_str) != Some("backup") {
        return Err(FormatError::shape(
            "marlinspeak",
            "the first line does not say `backup`",
        ));
    }
    files::open(head, BACKUP_VERSION)?;
    let count = |name| fields.get(name).and_then(Value::as_u64);
    let ties = count("ties").ok_or_else(|| {
        FormatError::shape("ties", "the first line does not say how many ties follow")
    })?;
    // The first backups had no log, and then no tubes and cords, then no settings, and no orders.
    let other = |name| count(name).unwrap_or(0);
    Ok([
        ties,
        other("logged"),
        other("racks"),
        other("settings"),
        other("orders"),
    ])
}
