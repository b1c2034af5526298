//! Playing cues, on a thread of its own that owns the sound device.
//!
//! The device stays open while cues come, so that they sound at once, and is closed when none
//! has come for a while: an open one wakes the processor many times a second. When it breaks or
//! changes it is opened anew for the next cue. Where there is none, nothing sounds.

use std::num::NonZero;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::thread;
use std::time::{Duration, Instant};

use rodio::buffer::SamplesBuffer;
use rodio::{DeviceSinkBuilder, MixerDeviceSink};

use super::cue::{Cue, SAMPLE_RATE};
use crate::sound_system::has_sound;

/// The device is closed after so long without a cue.
const REST: Duration = Duration::from_secs(30);
/// A device that would not open is left alone for so long.
const RETRY: Duration = Duration::from_secs(5);

/// Plays cues. No call waits.
#[derive(Debug, Default)]
pub struct CuePlayer {
    inbox: Option<Sender<(Cue, u8)>>,
}

impl CuePlayer {
    /// Starts the thread. Without one nothing sounds.
    pub fn start() -> Self {
        let (inbox, cues) = mpsc::channel();
        let started = thread::Builder::new()
            .name("cues".to_owned())
            .spawn(move || play(&cues));
        let started = started.inspect_err(|error| log::warn!("no thread for sounds: {error}"));
        Self {
            inbox: started.ok().map(|_| inbox),
        }
    }

    /// Whether there is a sound device that opens. May take as long as the system does.
    pub fn finds_device() -> bool {
        Device::open().is_some()
    }

    /// Plays a cue at a volume in percent.
    pub fn play(&self, cue: Cue, volume: u8) {
        if let Some(inbox) = &self.inbox {
            let _ = inbox.send((cue, volume));
        }
    }
}

fn play(cues: &Receiver<(Cue, u8)>) {
    let mut device: Option<Device> = None;
    let mut not_before: Option<Instant> = None;
    loop {
        let next = if device.is_some() {
            cues.recv_timeout(REST)
        } else {
            cues.recv().map_err(|_| RecvTimeoutError::Disconnected)
        };
        let (cue, volume) = match next {
            Ok(cue) => cue,
            Err(RecvTimeoutError::Timeout) => {
                device = None;
                continue;
            }
            Err(RecvTimeoutError::Disconnected) => return,
        };
        device = device.filter(|device| !device.is_broken.load(Ordering::Relaxed));
        if device.is_none() && not_before.is_none_or(|at| at <= Instant::now()) {
            device = Device::open();
            not_before = device.is_none().then(|| Instant::now() + RETRY);
            match device {
                Some(_) => log::info!("sound device open"),
                None => log::warn!("no sound device"),
            }
        }
        if let Some(device) = &device {
            device.play(cue, volume);
        }
    }
}

struct Device {
    sink: MixerDeviceSink,
    is_broken: Arc<AtomicBool>,
}

impl Device {
    fn open() -> Option<Self> {
        if !has_sound() {
            return None;
        }
        let is_broken = Arc::new(AtomicBool::new(false));
        let breaks = Arc::clone(&is_broken);
        let mut sink = DeviceSinkBuilder::from_default_device()
            .ok()?
            .with_error_callback(move |_| breaks.store(true, Ordering::Relaxed))
            .open_stream()
            .ok()?;
        sink.log_on_drop(false);
        Some(Self { sink, is_broken })
    }

    fn play(&self, cue: Cue, volume: u8) {
        let rate = NonZero::new(SAMPLE_RATE).unwrap_or(NonZero::<u32>::MIN);
        let sound = SamplesBuffer::new(NonZero::<u16>::MIN, rate, cue.samples(volume));
        self.sink.mixer().add(sound);
    }
}
