//! The ear: a microphone that is listened to for knocks, as long as that is wished for. No sample
//! leaves it; when a knock came, how clearly, and how loud it is, is all that does.
//!
//! While it is switched off there is no thread and no open device. A device that is not there, goes
//! or falls silent is told of once, and looked for until it is back.

use std::cell::RefCell;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError, Sender};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

use cpal::traits::{DeviceTrait, HostTrait, StreamTrait};
use cpal::{
    BufferSize, ErrorKind, FromSample, SampleFormat, SizedSample, StreamConfig,
    SupportedStreamConfig,
};

use super::input::{Input, InputEvent, Transition};
use super::knocks::{Heard, Knock, KnockDetector, RowDetector};
use super::rest::Rest;
use crate::sound_system::has_sound;

/// How long between two looks for a microphone that is not there, and whether one still sends.
const LOOK: Duration = Duration::from_secs(3);
/// Samples come in blocks of about this, in parts of a second: they are part of the time from a
/// knock to its answer.
const BLOCKS: u32 = 50;
/// How often the level is told while it is shown, a second.
const LEVELS: u32 = 10;
/// Whether blocks come on a thread that only waits for them, as with ALSA, and that may rest. Elsewhere the
/// system calls, and must not be kept waiting.
const RESTS: bool = cfg!(target_os = "linux");

/// What the ear tells besides presses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EarNews {
    /// A knock.
    Knock(Knock),
    /// A row of so many knocks is over.
    RowOver(u8),
    /// How loud it is, in decibels of full scale; told while it is shown.
    Level(f32),
    /// There is no microphone, or it has gone.
    NoMicrophone,
    /// A microphone is listened to.
    Listens,
}

type Tell = Arc<dyn Fn(Told) + Send + Sync>;

/// Everything that leaves the ear.
#[derive(Clone, Debug, PartialEq)]
enum Told {
    Input(InputEvent),
    News(EarNews),
}

/// Listens for knocks. The default is deaf.
#[derive(Default)]
pub struct Ear {
    tell: Option<Tell>,
    /// Ends the listening when it is dropped.
    listening: RefCell<Option<Sender<()>>>,
    is_shown: Arc<AtomicBool>,
}

impl Ear {
    /// An ear that does not listen yet. Rows of knocks go to `press`, everything else to `report`;
    /// neither must wait.
    pub fn new(
        press: impl Fn(InputEvent) + Send + Sync + 'static,
        report: impl Fn(EarNews) + Send + Sync + 'static,
    ) -> Self {
        let tell = move |told| match told {
            Told::Input(raw) => press(raw),
            Told::News(news) => report(news),
        };
        Self {
            tell: Some(Arc::new(tell)),
            ..Self::default()
        }
    }

    /// Listens from now on, or no more.
    pub fn listen(&self, is_wanted: bool) {
        let mut listening = self.listening.borrow_mut();
        if !is_wanted {
            *listening = None;
            return;
        }
        let (None, Some(tell)) = (&*listening, &self.tell) else {
            return;
        };
        let (end, ended) = mpsc::channel();
        let (tell, is_shown) = (Arc::clone(tell), Arc::clone(&self.is_shown));
        let started = thread::Builder::new()
            .name("ear".to_owned())
            .spawn(move || attend(&ended, &tell, &is_shown));
        match started {
            Ok(_) => *listening = Some(end),
            Err(error) => {
                log::warn!("no thread to listen: {error}");
                if let Some(tell) = &self.tell {
                    tell(Told::News(EarNews::NoMicrophone));
                }
            }
        }
    }

    /// Tells the level too, for a screen that shows it, or no more.
    pub fn show_level(&self, is_shown: bool) {
        self.is_shown.store(is_shown, Ordering::Relaxed);
    }

    /// The name of the microphone that would be listened to. May take as long as the system does.
    pub fn microphone() -> Option<String> {
        if !has_sound() {
            return None;
        }
        let device = cpal::default_host().default_input_device()?;
        device.default_input_config().ok()?;
        let name = device.description().ok()?.name().to_owned();
        Some(name)
    }
}

/// Listens until nobody wants it any more.
fn attend(ended: &Receiver<()>, tell: &Tell, is_shown: &Arc<AtomicBool>) {
    let mut was_missed = false;
    loop {
        match Microphone::open(tell, is_shown) {
            Some(microphone) => {
                log::info!("a microphone is listened to");
                was_missed = false;
                tell(Told::News(EarNews::Listens));
                if microphone.wait(ended) {
                    return;
                }
                log::warn!("the microphone has gone");
            }
            None if !was_missed => {
                was_missed = true;
                log::warn!("no microphone");
                tell(Told::News(EarNews::NoMicrophone));
            }
            None => {}
        }
        if ended.recv_timeout(LOOK) != Err(RecvTimeoutError::Timeout) {
            return;
        }
    }
}

/// A microphone that is open.
struct Microphone {
    _stream: cpal::Stream,
    is_broken: Arc<AtomicBool>,
    /// How many blocks it has sent.
    blocks: Arc<AtomicU32>,
    listener: Arc<Mutex<Listener>>,
}

impl Microphone {
    fn open(tell: &Tell, is_shown: &Arc<AtomicBool>) -> Option<Self> {
        if !has_sound() {
            return None;
        }
        let device = cpal::default_host().default_input_device()?;
        let supported = device.default_input_config().ok()?;
        match supported.sample_format() {
            SampleFormat::I16 => Self::open_as::<i16>(&device, &supported, tell, is_shown),
            SampleFormat::I32 => Self::open_as::<i32>(&device, &supported, tell, is_shown),
            SampleFormat::U8 => Self::open_as::<u8>(&device, &supported, tell, is_shown),
            SampleFormat::U16 => Self::open_as::<u16>(&device, &supported, tell, is_shown),
            SampleFormat::F64 => Self::open_as::<f64>(&device, &supported, tell, is_shown),
            _ => Self::open_as::<f32>(&device, &supported, tell, is_shown),
        }
    }

    fn open_as<T>(
        device: &cpal::Device,
        supported: &SupportedStreamConfig,
        tell: &Tell,
        is_shown: &Arc<AtomicBool>,
    ) -> Option<Self>
    where
        T: SizedSample,
        f32: FromSample<T>,
    {
        let mut config: StreamConfig = supported.config();
        let rate = config.sample_rate;
        let listener = Arc::new(Mutex::new(Listener::new(rate, tell, is_shown)));
        let (is_broken, blocks) = (
            Arc::new(AtomicBool::new(false)),
            Arc::new(AtomicU32::new(0)),
        );
        // A card may not take blocks of this size: then its own.
        for size in [BufferSize::Fixed(rate / BLOCKS), BufferSize::Default] {
            config.buffer_size = size;
            let channels = usize::from(config.channels).max(1);
            let (heard, sent) = (Arc::clone(&listener), Arc::clone(&blocks));
            let breaks = Arc::clone(&is_broken);
            let (mut mixed, mut rest) = (Vec::new(), Rest::default());
            let opened = device.build_input_stream::<T, _, _>(
                config,
                move |samples: &[T], _| {
                    let came = Instant::now();
                    sent.fetch_add(1, Ordering::Relaxed);
                    mixed.clear();
                    mixed.extend(samples.chunks(channels).map(mix::<T>));
                    listen_to(&heard, &mixed);
                    if RESTS {
                        let long = Duration::from_secs(1) * length(mixed.len()) / rate.max(1);
                        thread::sleep(rest.after(came, long, Instant::now()));
                        rest.is_over(Instant::now());
                    }
                },
                move |error| {
                    let goes_on = matches!(
                        error.kind(),
                        ErrorKind::Xrun | ErrorKind::RealtimeDenied | ErrorKind::DeviceChanged
                    );
                    if !goes_on {
                        breaks.store(true, Ordering::Relaxed);
                    }
                },
                None,
            );
            if let Ok(stream) = opened
                && stream.play().is_ok()
            {
                return Some(Self {
                    _stream: stream,
                    is_broken,
                    blocks,
                    listener,
                });
            }
        }
        None
    }

    /// Waits until nobody wants to listen any more, which it says, or it has broken or fallen silent.
    fn wait(&self, ended: &Receiver<()>) -> bool {
        let mut before = 0;
        loop {
            if ended.recv_timeout(LOOK) != Err(RecvTimeoutError::Timeout) {
                return true;
            }
            let blocks = self.blocks.load(Ordering::Relaxed);
            if blocks == before || self.is_broken.load(Ordering::Relaxed) {
                return false;
            }
            before = blocks;
        }
    }
}

impl Drop for Microphone {
    /// A row that was being knocked is over.
    fn drop(&mut self) {
        let mut listener = self.listener.lock();
        let listener = listener.as_mut().map_err(PoisonError::get_mut);
        let (Ok(listener) | Err(listener)) = listener;
        listener.end_row();
    }
}

/// Nobody else has the listener for longer than it takes to end a row.
fn listen_to(listener: &Mutex<Listener>, samples: &[f32]) {
    let mut listener = listener.lock().unwrap_or_else(PoisonError::into_inner);
    listener.take(samples);
}

/// So many samples, as a factor of a time.
fn length(samples: usize) -> u32 {
    samples.try_into().unwrap_or(u32::MAX)
}

/// The mean of all channels.
fn mix<T: SizedSample>(channels: &[T]) -> f32
where
    f32: FromSample<T>,
{
    let sum: f32 = channels
        .iter()
        .map(|sample| f32::from_sample_(*sample))
        .sum();
    #[expect(clippy::cast_precision_loss, reason = "some channels")]
    let count = channels.len() as f32;
    sum / count
}

/// What becomes of the samples.
struct Listener {
    detector: Box<dyn KnockDetector>,
    tell: Tell,
    is_shown: Arc<AtomicBool>,
    /// The row that is being knocked, where it may mean something.
    row: Option<u8>,
    samples_per_level: usize,
    since_level: usize,
}

impl Listener {
    fn new(rate: u32, tell: &Tell, is_shown: &Arc<AtomicBool>) -> Self {
        Self {
            detector: Box::new(RowDetector::new(rate)),
            tell: Arc::clone(tell),
            is_shown: Arc::clone(is_shown),
            row: None,
            samples_per_level: usize::try_from(rate / LEVELS).unwrap_or(usize::MAX),
            since_level: 0,
        }
    }

    fn take(&mut self, samples: &[f32]) {
        let mut heard = Vec::new();
        self.detector.take(samples, &mut |one| heard.push(one));
        for one in heard {
            match one {
                Heard::Knock(knock) => {
                    (self.tell)(Told::News(EarNews::Knock(knock)));
                    self.grow(knock.number);
                }
                Heard::RowOver(number) => {
                    (self.tell)(Told::News(EarNews::RowOver(number)));
                    self.end_row();
                }
            }
        }
        self.since_level += samples.len();
        if self.since_level >= self.samples_per_level {
            self.since_level = 0;
            if self.is_shown.load(Ordering::Relaxed) {
                (self.tell)(Told::News(EarNews::Level(self.detector.level())));
            }
        }
    }

    /// A row has come to so many knocks.
    fn grow(&mut self, number: u8) {
        if Input::KNOCKS.contains(&number) {
            self.row = Some(number);
            self.press(number, Transition::Down);
        }
    }

    fn end_row(&mut self) {
        if let Some(number) = self.row.take() {
            self.press(number, Transition::Up);
        }
    }

    fn press(&self, number: u8, transition: Transition) {
        let input = Input::Knocks(number);
        (self.tell)(Told::Input(InputEvent { input, transition }));
    }
}
