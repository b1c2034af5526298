//! What a step of an arrow makes of a setting, within its bounds.

use std::time::Duration;

use super::setting::Setting;
use crate::bench::Prices;
use crate::pedal::Times;
use crate::settings::{ColourScheme, DISTANCES, SCREEN_WIDTHS, Settings};
use crate::voice::SpeechSettings;

/// The settings with this one moved by so many steps, for words of the language `tag`. A voice is
/// heard before it is taken, and what has a screen of its own has no steps: these stay as they are.
pub(super) fn stepped(line: Setting, by: i16, tag: &str, settings: &Settings) -> Settings {
    let mut new = settings.clone();
    match line {
        Setting::Learn | Setting::TryKnocks | Setting::Voice => {}
        Setting::Knocks => new.knocks = !new.knocks,
        Setting::Language => new.language.next_language(by > 0),
        Setting::Units => new.language.next_units(by > 0),
        field @ (Setting::Speed | Setting::Volume | Setting::Pitch) => {
            let mut speech = new.speech(tag);
            match field {
                Setting::Speed => {
                    let (least, most) = SpeechSettings::SPEEDS.into_inner();
                    speech.words_per_minute = moved(speech.words_per_minute, by * 10, least, most);
                }
                Setting::Volume => speech.volume = percent(speech.volume, by),
                _ => speech.pitch = percent(speech.pitch, by),
            }
            new.set_speech(tag, speech);
        }
        Setting::Cues => new.cues.is_on = !new.cues.is_on,
        Setting::CueVolume => new.cues.volume = percent(new.cues.volume, by),
        Setting::Flash => new.flash = !new.flash,
        Setting::Motion => new.still = !new.still,
        Setting::Theme => {
            new.colours = match new.colours {
                ColourScheme::Dark => ColourScheme::Light,
                ColourScheme::Light => ColourScheme::Dark,
            }
        }
        Setting::Distance => {
            let (least, most) = DISTANCES.into_inner();
            new.screen.distance = moved(new.screen.distance, by * 100, least, most);
        }
        Setting::ScreenWidth => {
            let (least, most) = SCREEN_WIDTHS.into_inner();
            new.screen.width = match new.screen.width {
                None => Some(340),
                Some(width) if by < 0 && width <= least => None,
                Some(width) => Some(moved(width, by * 10, least, most)),
            };
        }
        Setting::Pacing => new.pacing = !new.pacing,
        Setting::PriceMetre => new.prices.metre = priced(new.prices.metre, by * 5),
        Setting::PriceHour => new.prices.hour = priced(new.prices.hour, by * 100),
        Setting::Bounce => {
            let (least, most) = Times::BOUNCE.into_inner();
            new.times.bounce = time(moved(millis(new.times.bounce), by * 50, least, most));
        }
        Setting::Long => {
            let (least, most) = Times::LONG.into_inner();
            let usual = Times::USUAL_LONG;
            new.times.long = switched(new.times.long, usual, by * 100, least, most);
        }
        Setting::Double => {
            let (least, most) = Times::DOUBLE.into_inner();
            let usual = Times::USUAL_DOUBLE;
            new.times.double = switched(new.times.double, usual, by * 50, least, most);
        }
    }
    new
}

fn moved(value: u16, by: i16, least: u16, most: u16) -> u16 {
    value.saturating_add_signed(by).clamp(least, most)
}

fn percent(value: u8, by: i16) -> u8 {
    let percent = moved(value.into(), by * 5, 0, 100);
    u8::try_from(percent).unwrap_or(100)
}

/// A time that can be off; below its least it is.
fn switched(
    value: Option<Duration>,
    usual: Duration,
    by: i16,
    least: u16,
    most: u16,
) -> Option<Duration> {
    match value {
        None if by > 0 => Some(usual),
        None => None,
        Some(value) if by < 0 && millis(value) <= least => None,
        Some(value) => Some(time(moved(millis(value), by, least, most))),
    }
}

/// A price moved by so many hundredths; below the first step there is none.
fn priced(price: Option<f64>, by: i16) -> Option<f64> {
    let most = hundredths(*Prices::BOUNDS.end());
    let moved = price.map_or(0, hundredths).saturating_add_signed(by.into());
    (moved > 0).then(|| f64::from(moved.min(most)) / 100.0)
}

/// A price in hundredths of the tyer's money.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "prices run from 0 to a million"
)]
pub(super) fn hundredths(price: f64) -> u32 {
    (price * 100.0).round() as u32
}

pub(super) fn millis(time: Duration) -> u16 {
    u16::try_from(time.as_millis()).unwrap_or(u16::MAX)
}

fn time(millis: u16) -> Duration {
    Duration::from_millis(millis.into())
}
