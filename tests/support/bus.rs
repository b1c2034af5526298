//! A bus of a test's own, with nobody on it yet.

use std::io::{BufRead as _, BufReader};
use std::process::{Child, Command, Stdio};

/// A session bus that ends with the test.
pub struct Bus {
    daemon: Child,
    /// Where to connect to it.
    pub address: String,
}

impl Bus {
    /// Starts it.
    pub fn start() -> Self {
        let mut daemon = Command::new("dbus-daemon")
            .args(["--session", "--nofork", "--print-address"])
            .stdout(Stdio::piped())
            .spawn()
            .expect("dbus-daemon is installed");
        let mut address = String::new();
        let out = daemon.stdout.take().expect("its output is piped");
        BufReader::new(out)
            .read_line(&mut address)
            .expect("it names its address");
        let address = address.trim().to_owned();
        Self { daemon, address }
    }
}

impl Drop for Bus {
    fn drop(&mut self) {
        let _ = self.daemon.kill();
        let _ = self.daemon.wait();
    }
}
