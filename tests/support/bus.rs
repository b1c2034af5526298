//! A bus of a test's own, with nobody on it yet.

use std::fs;
use std::io::{BufRead as _, BufReader};
use std::process::{Child, Command, Stdio};

use tempfile::TempDir;

/// What the bus allows: everything to everybody. It starts nobody: the desktop of whoever runs the test may
/// have a portal that a usual session bus would bring up (dbus-daemon(1), *Configuration file*).
const CONFIGURATION: &str = r#"<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:tmpdir=/tmp</listen>
  <auth>EXTERNAL</auth>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
"#;

/// A session bus that ends with the test.
pub struct Bus {
    daemon: Child,
    /// Where to connect to it.
    pub address: String,
    _folder: TempDir,
}

impl Bus {
    /// Starts it.
    pub fn start() -> Self {
        let folder = TempDir::new().expect("a folder");
        let configuration = folder.path().join("bus.conf");
        fs::write(&configuration, CONFIGURATION).expect("a file");
        let mut daemon = Command::new("dbus-daemon")
            .arg(format!("--config-file={}", configuration.display()))
            .args(["--nofork", "--print-address"])
            .stdout(Stdio::piped())
            .spawn()
            .expect("dbus-daemon is installed");
        let mut address = String::new();
        let out = daemon.stdout.take().expect("its output is piped");
        BufReader::new(out)
            .read_line(&mut address)
            .expect("it names its address");
        let address = address.trim().to_owned();
        Self {
            daemon,
            address,
            _folder: folder,
        }
    }
}

impl Drop for Bus {
    fn drop(&mut self) {
        let _ = self.daemon.kill();
        let _ = self.daemon.wait();
    }
}
