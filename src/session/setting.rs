//! The lines of the settings, in their groups.

use strum::{IntoStaticStr, VariantArray};

/// A line of the list, in the order of the Tab key.
///
/// ```
/// use marlinspeak::session::Setting;
///
/// // The lines of a group stand together, under one heading each.
/// let mut groups: Vec<&str> = Setting::ALL.iter().map(|line| line.group()).collect();
/// groups.dedup();
/// let headings = ["pedals", "language", "voice", "signals", "screen", "pace", "prices", "presses"];
/// assert_eq!(groups, headings);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
pub enum Setting {
    /// Learn what is pressed for what.
    Learn,
    /// Whether a microphone is listened to for knocks.
    Knocks,
    /// Try what is taken for a knock.
    TryKnocks,
    /// The language that everything is told in.
    Language,
    /// What lengths are told in.
    Units,
    /// The voice of the speech service that speaks.
    Voice,
    /// Words a minute.
    Speed,
    /// How loud the voice is.
    Volume,
    /// How high the voice is.
    Pitch,
    /// Whether there are short sounds with steps and presses.
    Cues,
    /// How loud they are.
    CueVolume,
    /// Whether the edge of the screen flashes where a sound would tell something.
    Flash,
    /// Whether pictures move.
    Motion,
    /// Dark or light.
    Theme,
    /// From the eye to the screen.
    Distance,
    /// The width of the picture.
    ScreenWidth,
    /// Whether steps move on without a press.
    Pacing,
    /// What a metre of cord costs.
    PriceMetre,
    /// What an hour of work is worth.
    PriceHour,
    /// How long a second press of the same input is ignored.
    Bounce,
    /// How long a press is held to mean something else.
    Long,
    /// How fast two presses follow each other to mean something else.
    Double,
}

impl Setting {
    /// All of them.
    pub const ALL: &[Self] = Self::VARIANTS;

    /// Its name among the messages.
    pub fn name(self) -> &'static str {
        self.into()
    }

    /// The name of the group that it stands in; those of a group stand together.
    pub const fn group(self) -> &'static str {
        match self {
            Self::Learn | Self::Knocks | Self::TryKnocks => "pedals",
            Self::Language | Self::Units => "language",
            Self::Voice | Self::Speed | Self::Volume | Self::Pitch => "voice",
            Self::Cues | Self::CueVolume | Self::Flash => "signals",
            Self::Motion | Self::Theme | Self::Distance | Self::ScreenWidth => "screen",
            Self::Pacing => "pace",
            Self::PriceMetre | Self::PriceHour => "prices",
            Self::Bounce | Self::Long | Self::Double => "presses",
        }
    }
}
