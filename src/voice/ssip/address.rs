//! Where the speech service is, and starting it when it does not run.

use std::env;
use std::io::{self, Read, Write};
use std::net::{Shutdown, TcpStream};
use std::os::unix::net::UnixStream;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use directories::BaseDirs;

/// The variable that names another place than the usual one.
const VARIABLE: &str = "SPEECHD_ADDRESS";

/// A way to the service.
pub(super) enum Wire {
    Unix(UnixStream),
    Tcp(TcpStream),
}

impl Wire {
    /// Connects to the service, which is started when it is the usual one and does not run.
    pub(super) fn open() -> io::Result<Self> {
        match env::var(VARIABLE) {
            Ok(named) => Self::to(&named),
            Err(_) => Self::usual(),
        }
    }

    /// Connects to a place that the user has named. No service is started there, since the place
    /// belongs to somebody else.
    fn to(named: &str) -> io::Result<Self> {
        let (method, place) = named.split_once(':').unwrap_or((named, ""));
        match (method, place) {
            ("unix_socket", "") => Self::usual(),
            ("unix_socket", path) => UnixStream::connect(path).map(Self::Unix),
            ("inet_socket", place) => TcpStream::connect(place).map(Self::Tcp),
            _ => Err(io::Error::new(
                io::ErrorKind::InvalidInput,
                format!("{VARIABLE} names neither a unix_socket nor an inet_socket"),
            )),
        }
    }

    fn usual() -> io::Result<Self> {
        let path = usual_path().ok_or_else(|| {
            io::Error::new(io::ErrorKind::NotFound, "the system names no home folder")
        })?;
        UnixStream::connect(&path)
            .or_else(|_| {
                spawn()?;
                UnixStream::connect(&path)
            })
            .map(Self::Unix)
    }

    /// A second handle on the same connection, to be read on another thread.
    pub(super) fn try_clone(&self) -> io::Result<Self> {
        match self {
            Self::Unix(stream) => stream.try_clone().map(Self::Unix),
            Self::Tcp(stream) => stream.try_clone().map(Self::Tcp),
        }
    }

    /// Ends both directions, whoever reads or writes.
    pub(super) fn hang_up(&self) {
        // The service may have hung up already.
        let _ = match self {
            Self::Unix(stream) => stream.shutdown(Shutdown::Both),
            Self::Tcp(stream) => stream.shutdown(Shutdown::Both),
        };
    }
}

impl Read for Wire {
    fn read(&mut self, bytes: &mut [u8]) -> io::Result<usize> {
        match self {
            Self::Unix(stream) => stream.read(bytes),
            Self::Tcp(stream) => stream.read(bytes),
        }
    }
}

impl Write for Wire {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        match self {
            Self::Unix(stream) => stream.write(bytes),
            Self::Tcp(stream) => stream.write(bytes),
        }
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

/// The usual place: in the folder for runtime files, or else in the one for caches, as the service
/// itself looks for it.
fn usual_path() -> Option<PathBuf> {
    let folders = BaseDirs::new()?;
    let around = folders.runtime_dir().unwrap_or(folders.cache_dir());
    Some(around.join("speech-dispatcher").join("speechd.sock"))
}

/// Starts the service, and comes back when it can be connected to.
fn spawn() -> io::Result<()> {
    let status = Command::new("speech-dispatcher")
        .arg("--spawn")
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()?;
    if status.success() {
        Ok(())
    } else {
        Err(io::Error::other(format!(
            "speech-dispatcher did not start: {status}"
        )))
    }
}
