//! Why the system refused, by kind. A tyer is told the kind, since the words of the system itself
//! may be in another language.

use std::error::Error;
use std::io::{self, ErrorKind};

use strum::{IntoStaticStr, VariantArray};

/// The kind of a refusal. What the system said itself belongs in the log file.
///
/// The messages in `i18n/` select by the names of the variants.
#[derive(Clone, Copy, Debug, PartialEq, Eq, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
pub enum Reason {
    /// The disk is full, or the share of it that this user has.
    NoRoom,
    /// This user may not.
    NotAllowed,
    /// Nothing is there.
    NotFound,
    /// Another program has it.
    InUse,
    /// The disk takes no changes.
    ReadOnly,
    /// Something of the name is there already.
    IsThere,
    /// A file stands where a folder should.
    NotAFolder,
    /// A folder stands where a file should.
    NotAFile,
    /// No file can have the name.
    BadName,
    /// The device or the connection to it is broken, or it ended in the middle.
    Broken,
    /// It took too long.
    NoAnswer,
    /// Its contents are not to be believed.
    Damaged,
    /// A newer version of this program wrote it.
    Newer,
    /// Anything else.
    Other,
}

/// What the system calls a device that is broken, or gone (`EIO`, `ENXIO` and `ENODEV` of POSIX).
/// The standard library has no kind for them.
#[cfg(unix)]
const BROKEN: [i32; 3] = [5, 6, 19];
#[cfg(not(unix))]
const BROKEN: [i32; 0] = [];

impl Reason {
    /// The kind of what the system said.
    pub fn of(error: &io::Error) -> Self {
        if code(error).is_some_and(|code| BROKEN.contains(&code)) {
            return Self::Broken;
        }
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => {
                Self::NoRoom
            }
            ErrorKind::PermissionDenied => Self::NotAllowed,
            ErrorKind::NotFound => Self::NotFound,
            ErrorKind::ResourceBusy
            | ErrorKind::ExecutableFileBusy
            | ErrorKind::WouldBlock
            | ErrorKind::Deadlock => Self::InUse,
            ErrorKind::ReadOnlyFilesystem => Self::ReadOnly,
            ErrorKind::AlreadyExists | ErrorKind::DirectoryNotEmpty => Self::IsThere,
            ErrorKind::NotADirectory => Self::NotAFolder,
            ErrorKind::IsADirectory => Self::NotAFile,
            ErrorKind::InvalidFilename | ErrorKind::InvalidInput => Self::BadName,
            ErrorKind::BrokenPipe
            | ErrorKind::UnexpectedEof
            | ErrorKind::WriteZero
            | ErrorKind::ConnectionRefused
            | ErrorKind::ConnectionReset
            | ErrorKind::ConnectionAborted
            | ErrorKind::NotConnected
            | ErrorKind::HostUnreachable
            | ErrorKind::NetworkUnreachable
            | ErrorKind::NetworkDown
            | ErrorKind::StaleNetworkFileHandle => Self::Broken,
            ErrorKind::TimedOut => Self::NoAnswer,
            ErrorKind::InvalidData => Self::Damaged,
            _ => Self::Other,
        }
    }
}

/// The number that the system has for it, wherever it stands in the chain of causes.
fn code(error: &io::Error) -> Option<i32> {
    let mut cause: Option<&(dyn Error + 'static)> = Some(error);
    while let Some(error) = cause {
        let of_system = error.downcast_ref::<io::Error>();
        if let Some(code) = of_system.and_then(io::Error::raw_os_error) {
            return Some(code);
        }
        // The source of an `io::Error` is not the error that it wraps, but the source of that one.
        cause = match of_system.and_then(io::Error::get_ref) {
            Some(wrapped) => Some(wrapped),
            None => error.source(),
        };
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_system_says_has_a_kind() {
        for (kind, reason) in [
            (ErrorKind::StorageFull, Reason::NoRoom),
            (ErrorKind::QuotaExceeded, Reason::NoRoom),
            (ErrorKind::PermissionDenied, Reason::NotAllowed),
            (ErrorKind::NotFound, Reason::NotFound),
            (ErrorKind::ResourceBusy, Reason::InUse),
            (ErrorKind::ReadOnlyFilesystem, Reason::ReadOnly),
            (ErrorKind::NotADirectory, Reason::NotAFolder),
            (ErrorKind::BrokenPipe, Reason::Broken),
            (ErrorKind::TimedOut, Reason::NoAnswer),
            (ErrorKind::OutOfMemory, Reason::Other),
        ] {
            assert_eq!(Reason::of(&kind.into()), reason, "{kind}");
        }
    }

    /// The numbers are those of `errno.h` on Linux.
    #[cfg(target_os = "linux")]
    #[test]
    fn what_has_no_kind_is_told_by_its_number() {
        for (code, reason) in [
            (5, Reason::Broken),
            (13, Reason::NotAllowed),
            (16, Reason::InUse),
            (28, Reason::NoRoom),
            (30, Reason::ReadOnly),
            (24, Reason::Other),
        ] {
            let raw = io::Error::from_raw_os_error(code);
            assert_eq!(Reason::of(&raw), reason, "{code}");
            // The same in the words of a library around it.
            let wrapped = io::Error::new(raw.kind(), raw);
            assert_eq!(Reason::of(&wrapped), reason, "{code}, wrapped");
        }
    }
}
