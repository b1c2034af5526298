//! The program that is measured.

use std::fs;
use std::process::{Child, Command, Stdio};

use tempfile::TempDir;

use super::loft::Loft;

/// The program in its window, with a shelf of its own.
pub struct Program {
    child: Child,
    _data: TempDir,
}

impl Program {
    /// Starts it and gives it the keys. Its settings are the usual ones but for the sounds, which
    /// would be heard before the voice.
    pub fn start(loft: &Loft, args: &[&str]) -> Self {
        let program = Self::begin(loft, args, |command| {
            command.env("SPEECHD_ADDRESS", loft.speech_address());
        });
        loft.display.focus("Marlinspeak");
        program
    }

    /// Starts it with a service as `speech` has it, and does not wait for its window.
    pub fn begin(loft: &Loft, args: &[&str], speech: impl FnOnce(&mut Command)) -> Self {
        Self::begin_with(r#""cues": { "on": false }"#, loft, args, speech)
    }

    /// The same with these settings, as they stand in their document behind its version.
    pub fn begin_with(
        wished: &str,
        loft: &Loft,
        args: &[&str],
        speech: impl FnOnce(&mut Command),
    ) -> Self {
        let data = TempDir::new().expect("a temporary folder");
        let settings = data.path().join("marlinspeak");
        fs::create_dir(&settings).expect("a folder");
        let document = format!(r#"{{ "version": 1, {wished} }}"#);
        fs::write(settings.join("settings.json"), document).expect("settings");
        let mut command = Command::new(env!("CARGO_BIN_EXE_marlinspeak"));
        speech(&mut command);
        let child = command
            .args(args)
            .env("DISPLAY", loft.display.name())
            .env_remove("WAYLAND_DISPLAY")
            .env("XDG_DATA_HOME", data.path().join("data"))
            .env("XDG_CONFIG_HOME", data.path())
            .env("LC_ALL", "C.UTF-8")
            .stdin(Stdio::null())
            .spawn()
            .expect("the program starts");
        Self { child, _data: data }
    }

    /// What it has used of the processor so far, in ticks (hundredths of a second, all its
    /// threads: fields 14 and 15 of `/proc/PID/stat`), and how often its threads have gone to
    /// sleep.
    pub fn used(&self) -> (u64, u64) {
        let folder = format!("/proc/{}", self.child.id());
        let stat = fs::read_to_string(format!("{folder}/stat")).expect("it runs");
        // The name of the program may have spaces in it, and ends with the last bracket.
        let (_, fields) = stat.rsplit_once(')').expect("a name");
        let ticks = fields.split_whitespace().skip(11).take(2);
        let ticks = ticks.map(|field| field.parse::<u64>().expect("a number"));
        let tasks = fs::read_dir(format!("{folder}/task")).expect("threads");
        let sleeps = tasks.filter_map(|task| {
            // A thread may have ended meanwhile.
            let status = fs::read_to_string(task.ok()?.path().join("status")).ok()?;
            let line = status
                .lines()
                .find_map(|line| line.strip_prefix("voluntary_ctxt_switches:"))?;
            line.trim().parse::<u64>().ok()
        });
        (ticks.sum(), sleeps.sum())
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
