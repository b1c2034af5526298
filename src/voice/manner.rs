//! How fast, how loud, how high and in which voice.

use std::ops::RangeInclusive;

/// The manner of speaking, on scales of our own. Values outside their bounds are taken as the
/// nearest bound.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Manner {
    /// Words a minute, within [`Manner::SPEEDS`]. 150 to 200 is what listeners find comfortable.
    pub words_per_minute: u16,
    /// Percent of full volume, 0 to 100.
    pub volume: u8,
    /// Percent, 0 to 100: 50 is the voice's own pitch.
    pub pitch: u8,
    /// The name of a voice; `None` for the service's choice.
    pub voice: Option<String>,
    /// A BCP 47 tag: the language when no voice is named or the named one is missing. `None` for
    /// the service's choice.
    pub language: Option<String>,
}

impl Default for Manner {
    fn default() -> Self {
        Self {
            words_per_minute: 165,
            volume: 100,
            pitch: 50,
            voice: None,
            language: None,
        }
    }
}

impl Manner {
    /// The speeds there are, in words a minute.
    pub const SPEEDS: RangeInclusive<u16> = 80..=450;

    /// Whether a voice has to be picked from the service's list.
    pub(super) fn names_a_voice(&self) -> bool {
        self.voice.is_some() || self.language.is_some()
    }
}

/// The three marks that every back end gives for each of its scales.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scale {
    pub(super) min: f32,
    pub(super) normal: f32,
    pub(super) max: f32,
}

/// Marks of a back end's speed scale with the words a minute heard at each, slowest first.
pub(super) struct Pace<const N: usize>(pub(super) [(f32, f32); N]);

impl<const N: usize> Pace<N> {
    /// The mark for a speed, on straight lines between the known marks.
    pub(super) fn mark(&self, words_per_minute: u16) -> f32 {
        let wpm = f32::from(words_per_minute.clamp(*Manner::SPEEDS.start(), *Manner::SPEEDS.end()));
        let mut below = self.0[0];
        for &above in &self.0 {
            if wpm <= above.1 {
                return between(below, above, wpm);
            }
            below = above;
        }
        below.0
    }
}

/// The mark at `wpm` on the line through two known points, not before the first.
fn between(below: (f32, f32), above: (f32, f32), wpm: f32) -> f32 {
    let span = above.1 - below.1;
    if span <= 0.0 {
        return above.0;
    }
    let share = ((wpm - below.1) / span).clamp(0.0, 1.0);
    below.0 + (above.0 - below.0) * share
}

/// 0 percent is the scale's least, 100 its most.
pub(super) fn volume_mark(percent: u8, scale: Scale) -> f32 {
    let share = f32::from(percent.min(100)) / 100.0;
    scale.min + (scale.max - scale.min) * share
}

/// 0 percent is the scale's least, 50 its normal, 100 its most.
pub(super) fn pitch_mark(percent: u8, scale: Scale) -> f32 {
    let percent = f32::from(percent.min(100));
    if percent <= 50.0 {
        scale.min + (scale.normal - scale.min) * percent / 50.0
    } else {
        scale.normal + (scale.max - scale.normal) * (percent - 50.0) / 50.0
    }
}

/// The place, in a list of (name, language), of the voice that serves `manner` best: the one
/// named; else the first of exactly the language; else the first of the same language with
/// another region. The second value tells whether the wish was met.
pub(super) fn best_voice(voices: &[(String, String)], manner: &Manner) -> (Option<usize>, bool) {
    if let Some(wanted) = &manner.voice {
        let named = voices.iter().position(|(name, _)| name == wanted);
        if named.is_some() {
            return (named, true);
        }
    }
    let Some(tag) = &manner.language else {
        return (None, manner.voice.is_none());
    };
    let primary = |tag: &str| tag.split('-').next().unwrap_or(tag).to_ascii_lowercase();
    let exact = voices
        .iter()
        .position(|(_, language)| language.eq_ignore_ascii_case(tag));
    let found = exact.or_else(|| {
        voices
            .iter()
            .position(|(_, language)| primary(language) == primary(tag))
    });
    (found, found.is_some() && manner.voice.is_none())
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCALE: Scale = Scale {
        min: -100.0,
        normal: 0.0,
        max: 100.0,
    };

    fn close(left: f32, right: f32) -> bool {
        (left - right).abs() < 1e-3
    }

    #[test]
    fn speed_follows_the_known_marks() {
        let pace = Pace([(-100.0, 100.0), (0.0, 200.0), (100.0, 400.0)]);
        for (wpm, mark) in [
            (80, -100.0),
            (100, -100.0),
            (150, -50.0),
            (200, 0.0),
            (300, 50.0),
            (450, 100.0),
        ] {
            assert!(
                close(pace.mark(wpm), mark),
                "{wpm} words a minute: {}",
                pace.mark(wpm)
            );
        }
        assert!(close(pace.mark(0), -100.0) && close(pace.mark(u16::MAX), 100.0));
    }

    #[test]
    fn volume_and_pitch_stay_on_the_scale() {
        assert!(
            close(volume_mark(0, SCALE), -100.0)
                && close(volume_mark(75, SCALE), 50.0)
                && close(volume_mark(255, SCALE), 100.0)
        );
        let lopsided = Scale {
            min: 0.5,
            normal: 1.0,
            max: 2.0,
        };
        assert!(close(pitch_mark(0, lopsided), 0.5) && close(pitch_mark(50, lopsided), 1.0));
        assert!(close(pitch_mark(75, lopsided), 1.5) && close(pitch_mark(255, lopsided), 2.0));
    }

    fn wish(voice: Option<&str>, language: Option<&str>) -> Manner {
        Manner {
            voice: voice.map(str::to_owned),
            language: language.map(str::to_owned),
            ..Manner::default()
        }
    }

    #[test]
    fn the_voice_named_wins_then_the_language_then_its_cousins() {
        let list = [
            ("Ada", "en-GB"),
            ("Bo", "en-US"),
            ("Cleo", "de"),
            ("Dan", "de-AT"),
        ]
        .map(|(name, language)| (name.to_owned(), language.to_owned()));
        let best = |voice, language| best_voice(&list, &wish(voice, language));
        assert_eq!(best(None, None), (None, true));
        assert_eq!(best(Some("Dan"), Some("en-US")), (Some(3), true));
        assert_eq!(best(None, Some("en-us")), (Some(1), true));
        assert_eq!(best(None, Some("en")), (Some(0), true));
        assert_eq!(best(None, Some("de-CH")), (Some(2), true));
        assert_eq!(best(None, Some("fr")), (None, false));
        assert_eq!(
            best(Some("Eve"), Some("de")),
            (Some(2), false),
            "the language, but not the voice"
        );
        assert_eq!(best(Some("Eve"), None), (None, false));
    }
}
