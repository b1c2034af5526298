//! The real program, started on a display with a speech service and a folder for its data.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

use crate::in_time::{all_of, end_in_time};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use crate::display::{DEADLINE, Desktop};
use crate::ssip::Service;

/// The program under test.
pub const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");

/// A running program; it is killed when this is dropped.
pub struct Program(Child);

impl Program {
    /// Starts it, and gives it the keys when its window is there. It has no lock-out: the hands
    /// of a test are quicker than the usual one.
    pub fn start(desktop: &impl Desktop, service: &Service, data: &Path, args: &[&str]) -> Self {
        without_lock_out(data);
        Self::start_as_it_comes(desktop, service, data, args)
    }

    /// Starts it with the settings that are there, or the usual ones.
    pub fn start_as_it_comes(
        desktop: &impl Desktop,
        service: &Service,
        data: &Path,
        args: &[&str],
    ) -> Self {
        Self::start_by(&mut Command::new(PROGRAM), desktop, service, data, args)
    }

    /// Starts it by a command that runs it with the arguments it is given.
    pub fn start_by(
        command: &mut Command,
        desktop: &impl Desktop,
        service: &Service,
        data: &Path,
        args: &[&str],
    ) -> Self {
        desktop.admit(command);
        let child = command
            .args(args)
            .env("SPEECHD_ADDRESS", service.address())
            .env("XDG_DATA_HOME", data)
            .env("XDG_CONFIG_HOME", data.join("config"))
            .env("XDG_STATE_HOME", data.join("state"))
            .env("LC_ALL", "C.UTF-8")
            .stdin(Stdio::null())
            .spawn()
            .unwrap();
        desktop.focus("Marlinspeak");
        Self(child)
    }

    /// Its process number.
    pub fn id(&self) -> u32 {
        self.0.id()
    }

    /// Stops it where it stands, SIGSTOP: what its window shows stays to be seen.
    pub fn freeze(&self) {
        let number = self.id().to_string();
        let told = Command::new("kill").args(["-STOP", &number]).status();
        assert!(told.unwrap().success());
        let status = format!("/proc/{number}/stat");
        wait_for(|| {
            let status = std::fs::read_to_string(&status).unwrap();
            // The state follows the name, which stands in brackets (proc_pid_stat(5)).
            status.rsplit_once(") ")?.1.starts_with('T').then_some(())
        });
    }

    /// Waits until it has ended, and gives its exit code and what it wrote on standard error where that
    /// is a pipe.
    pub fn ends(mut self) -> (Option<i32>, String) {
        let complaint = self.0.stderr.take().map(all_of);
        let code = end_in_time(&mut self.0).code();
        let told = complaint.map(|complaint| complaint.recv_timeout(DEADLINE).unwrap());
        (code, String::from_utf8(told.unwrap_or_default()).unwrap())
    }

    /// Ends it as a power cut would, SIGKILL, and says when.
    pub fn kill(mut self) -> Instant {
        let at = Instant::now();
        self.0.kill().unwrap();
        self.0.wait().unwrap();
        at
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// What the service hears next.
#[track_caller]
pub fn heard(service: &Service) -> String {
    service.next_text(DEADLINE).expect("the program speaks")
}

/// The folder of the ties in a folder for data.
pub fn ties(data: &Path) -> PathBuf {
    data.join("marlinspeak").join("ties")
}

/// Asks again and again until there is an answer, or fails when the time is up.
pub fn wait_for<T>(mut ask: impl FnMut() -> Option<T>) -> T {
    let until = Instant::now() + DEADLINE;
    loop {
        if let Some(answer) = ask() {
            return answer;
        }
        assert!(Instant::now() < until, "nothing came of it in {DEADLINE:?}");
        // Between two looks, not instead of one.
        thread::sleep(Duration::from_millis(5));
    }
}

/// Settings without a lock-out, for the configuration in a folder for data.
pub fn without_lock_out(data: &Path) {
    let settings = data.join("config/marlinspeak");
    std::fs::create_dir_all(&settings).unwrap();
    let quick = r#"{ "version": 1, "presses": { "bounce_ms": 0 } }"#;
    std::fs::write(settings.join("settings.json"), quick).unwrap();
}
