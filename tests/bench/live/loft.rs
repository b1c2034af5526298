//! A display, a sound server and a speech service of our own.

use std::io::{Read, Write};
use std::os::unix::net::UnixStream;
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::TempDir;

use super::display::{DEADLINE, Display};

/// Everything around the programs.
pub struct Loft {
    pub display: Display,
    speech: Option<Child>,
    sound: Child,
    folder: TempDir,
}

impl Loft {
    /// Starts all of it.
    pub fn open() -> Self {
        let folder = TempDir::new().expect("a temporary folder");
        std::fs::create_dir(folder.path().join("run")).expect("a folder");
        let socket = folder.path().join("native");
        let serve = format!(
            "module-native-protocol-unix auth-anonymous=1 socket={}",
            socket.display()
        );
        let sound = Command::new("pulseaudio")
            // Nobody's settings, and no sound card.
            .args(["-n", "-F", "/dev/null", "--daemonize=no"])
            .args([
                "--exit-idle-time=-1",
                "-L",
                "module-null-sink sink_name=null",
            ])
            .args(["-L", &serve])
            .env("XDG_RUNTIME_DIR", folder.path().join("run"))
            .env("HOME", folder.path())
            .env_remove("PULSE_SERVER")
            .stderr(Stdio::null())
            .spawn()
            .expect("pulseaudio is installed");
        let mut loft = Self {
            display: Display::start(),
            speech: None,
            sound,
            folder,
        };
        wait_until(|| UnixStream::connect(&socket).is_ok());
        loft.start_speech();
        loft
    }

    /// What `SPEECHD_ADDRESS` is to be for who speaks.
    pub fn speech_address(&self) -> String {
        format!("unix_socket:{}", self.speech_socket().display())
    }

    /// What `PULSE_SERVER` is to be for who plays or listens.
    pub fn sound_address(&self) -> String {
        format!("unix:{}", self.folder.path().join("native").display())
    }

    /// Starts the speech service and waits until it answers. That moment is the answer.
    pub fn start_speech(&mut self) -> Instant {
        let folder = self.folder.path();
        let started = Command::new("speech-dispatcher")
            // Alone, and for ever.
            .args(["-s", "-t", "0", "-c", "unix_socket", "-S"])
            .arg(self.speech_socket())
            .arg("-L")
            .arg(folder.join("log"))
            .arg("-P")
            .arg(folder.join("pid"))
            .env("XDG_RUNTIME_DIR", folder.join("run"))
            .env("HOME", folder)
            .env("PULSE_SERVER", self.sound_address())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .expect("speech-dispatcher is installed");
        self.speech = Some(started);
        wait_until(|| UnixStream::connect(self.speech_socket()).is_ok());
        Instant::now()
    }

    /// Has a program find no service, so that it starts one of its own, in this folder. That one plays to
    /// the same sink.
    pub fn without_speech(&self, folder: &TempDir, program: &mut Command) {
        program
            .env_remove("SPEECHD_ADDRESS")
            .env("XDG_RUNTIME_DIR", folder.path())
            .env("XDG_CACHE_HOME", folder.path())
            .env("HOME", folder.path())
            .env("PULSE_SERVER", self.sound_address());
    }

    /// Has a program hear what is played here: the monitor of the sink is the only microphone.
    pub fn with_microphone(&self, program: &mut Command) {
        // What the sound library of the system opens is at the sound server.
        let default = "pcm.!default { type pulse }\nctl.!default { type pulse }\n";
        std::fs::write(self.folder.path().join(".asoundrc"), default).expect("a file");
        program
            .env("HOME", self.folder.path())
            .env("XDG_RUNTIME_DIR", self.folder.path().join("run"))
            .env("PULSE_SERVER", self.sound_address());
    }

    /// Whether a program listens to the microphone, besides whoever records the sink here.
    pub fn is_listened_to(&self) -> bool {
        let listed = Command::new("pactl")
            .args(["list", "short", "source-outputs"])
            .env("PULSE_SERVER", self.sound_address())
            .output();
        let listed = listed.expect("pulseaudio-utils is installed").stdout;
        String::from_utf8_lossy(&listed).lines().count() > 1
    }

    /// Ends the service that a program has started in this folder.
    pub fn end_own_speech(folder: &TempDir) {
        let file = folder
            .path()
            .join("speech-dispatcher/pid/speech-dispatcher.pid");
        let number = std::fs::read_to_string(file).expect("the service tells its number");
        let ended = Command::new("kill").arg(number.trim()).status();
        assert!(ended.is_ok_and(|status| status.success()), "it is ended");
    }

    /// Ends the speech service as a crash would.
    pub fn kill_speech(&mut self) {
        if let Some(mut speech) = self.speech.take() {
            let _ = speech.kill();
            let _ = speech.wait();
        }
        // A socket that nobody serves would be in the way of the next one.
        let _ = std::fs::remove_file(self.speech_socket());
    }

    /// Stops the speech service where it stands, SIGSTOP.
    pub fn stop_speech(&self) {
        let speech = self.speech.as_ref().expect("it runs");
        let told = Command::new("kill")
            .args(["-STOP", &speech.id().to_string()])
            .status();
        assert!(told.is_ok_and(|status| status.success()), "it is stopped");
    }

    /// Cuts off whatever anybody says.
    pub fn hush(&self) {
        let mut line = UnixStream::connect(self.speech_socket()).expect("the service");
        line.write_all(b"CANCEL ALL\r\nQUIT\r\n").expect("it reads");
        line.read_to_end(&mut Vec::new()).expect("it answers");
    }

    fn speech_socket(&self) -> PathBuf {
        self.folder.path().join("speech")
    }
}

impl Drop for Loft {
    fn drop(&mut self) {
        self.kill_speech();
        let _ = self.sound.kill();
        let _ = self.sound.wait();
    }
}

pub fn wait_until(is_so: impl Fn() -> bool) {
    let until = Instant::now() + DEADLINE;
    while !is_so() {
        assert!(Instant::now() < until, "a service does not answer");
        thread::sleep(Duration::from_millis(1));
    }
}
