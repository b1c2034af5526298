//! The hex key for pins that are set screws: each thread has one size of key.

use strum::IntoStaticStr;

use super::{BenchError, Millimetres};

/// Whether a thread and its key are measured in inches or millimetres.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Thread, ThreadSystem};
///
/// let system = |packet| Thread::parse(packet).map(Thread::system);
/// assert_eq!(system("M4x0.7"), Ok(ThreadSystem::Metric));
/// assert_eq!(system("1/4-20"), Ok(ThreadSystem::Inch));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum ThreadSystem {
    /// Numbered and fractional inch threads.
    Inch,
    /// Metric threads.
    Metric,
}

/// The thread of a pin, one of the table.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Thread;
///
/// // The cord bends round the outside of the thread; the pitch makes no difference.
/// let screw = Thread::parse("m5x0.8").unwrap();
/// assert_eq!((screw.name(), screw.diameter().get()), ("M5", 5.0));
/// assert!(Thread::parse("M7").is_err(), "not one that set screws are sold in");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thread {
    name: &'static str,
    diameter: f64,
    system: ThreadSystem,
    key: &'static str,
    across_flats: f64,
}

/// A hex key.
///
/// # Examples
/// ```
/// use marlinspeak::bench::Thread;
///
/// let key = Thread::parse("M5").unwrap().hex_key();
/// assert_eq!((key.size, key.across_flats.get()), ("2.5", 2.5));
/// assert!(key.source.contains("4026"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HexKey {
    /// Its size as it is sold: `2` or `5/64`.
    pub size: &'static str,
    /// Whether the size is in inches or millimetres.
    pub system: ThreadSystem,
    /// Its width across the flats, by which it is sold.
    pub across_flats: Millimetres,
    /// Where the size is published.
    pub source: &'static str,
}

const fn inch(name: &'static str, inches: f64, key: &'static str, across_flats: f64) -> Thread {
    Thread {
        name,
        diameter: inches * 25.4,
        system: ThreadSystem::Inch,
        key,
        across_flats: across_flats * 25.4,
    }
}

const fn metric(name: &'static str, diameter: f64, key: &'static str, across_flats: f64) -> Thread {
    Thread {
        name,
        diameter,
        system: ThreadSystem::Metric,
        key,
        across_flats,
    }
}

/// Inch rows: ASME B18.3, set screws, column J. Metric rows: DIN EN ISO 4026:2004.
const THREADS: [Thread; 22] = [
    inch("#2", 0.086, "0.035", 0.035),
    inch("#3", 0.099, "0.050", 0.05),
    inch("#4", 0.112, "0.050", 0.05),
    inch("#5", 0.125, "1/16", 0.0625),
    inch("#6", 0.138, "1/16", 0.0625),
    inch("#8", 0.164, "5/64", 0.078_125),
    inch("#10", 0.19, "3/32", 0.093_75),
    inch("1/4", 0.25, "1/8", 0.125),
    inch("5/16", 0.3125, "5/32", 0.156_25),
    inch("3/8", 0.375, "3/16", 0.1875),
    inch("7/16", 0.4375, "7/32", 0.218_75),
    inch("1/2", 0.5, "1/4", 0.25),
    metric("M1.6", 1.6, "0.7", 0.7),
    metric("M2", 2.0, "0.9", 0.9),
    metric("M2.5", 2.5, "1.3", 1.3),
    metric("M3", 3.0, "1.5", 1.5),
    metric("M4", 4.0, "2", 2.0),
    metric("M5", 5.0, "2.5", 2.5),
    metric("M6", 6.0, "3", 3.0),
    metric("M8", 8.0, "4", 4.0),
    metric("M10", 10.0, "5", 5.0),
    metric("M12", 12.0, "6", 6.0),
];

impl Thread {
    /// Every thread of the table.
    pub const fn all() -> &'static [Self] {
        &THREADS
    }

    /// Reads a thread as it stands on the packet: `M4`, `M4x0.7`, `#8`, `8-32`, `1/4-20`.
    /// The pitch makes no difference to the key.
    ///
    /// # Errors
    /// [`BenchError::UnknownThread`] for anything not in [`Thread::all`].
    pub fn parse(text: &str) -> Result<Self, BenchError> {
        let given = text.trim();
        let name = given.to_uppercase();
        let name = name.split(['X', '×']).next().unwrap_or_default();
        let (name, pitched) = match name.split_once('-') {
            Some((name, _)) => (name.trim(), true),
            None => (name.trim(), false),
        };
        let numbered = format!("#{name}");
        THREADS
            .iter()
            .find(|thread| thread.name == name || (pitched && thread.name == numbered))
            .copied()
            .ok_or_else(|| BenchError::UnknownThread {
                given: given.to_owned(),
            })
    }

    /// Its name: `M4`, `#8`, `1/4`.
    pub const fn name(self) -> &'static str {
        self.name
    }

    /// Inch or metric.
    pub const fn system(self) -> ThreadSystem {
        self.system
    }

    /// Major diameter: what the cord bends round.
    pub const fn diameter(self) -> Millimetres {
        Millimetres::computed(self.diameter)
    }

    /// The key for a set screw of this thread.
    pub const fn hex_key(self) -> HexKey {
        HexKey {
            size: self.key,
            system: self.system,
            across_flats: Millimetres::computed(self.across_flats),
            source: match self.system {
                ThreadSystem::Inch => "ASME B18.3, set screws",
                ThreadSystem::Metric => "DIN EN ISO 4026:2004",
            },
        }
    }
}
