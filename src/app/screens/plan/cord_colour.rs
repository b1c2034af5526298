//! The colour of a cord, as far as the name that the tyer keeps it by tells it.

use strum::{IntoStaticStr, VariantArray};

use crate::picture::Colour;
use crate::words::Words;

/// A colour that cord is sold in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "kebab-case")]
enum CordColour {
    White,
    Natural,
    Grey,
    Black,
    Red,
    Orange,
    Yellow,
    Green,
    Blue,
    Purple,
    Pink,
    Brown,
}

impl CordColour {
    /// What it looks like in a picture: *common practice, no source*.
    const fn colour(self) -> Colour {
        Colour::rgb(match self {
            Self::White => 0x00F2_EEE4,
            Self::Natural => 0x00D9_C59B,
            Self::Grey => 0x008A_9096,
            Self::Black => 0x0022_2426,
            Self::Red => 0x00C2_3B2E,
            Self::Orange => 0x00E5_7F24,
            Self::Yellow => 0x00EF_C31B,
            Self::Green => 0x003C_9150,
            Self::Blue => 0x0031_72B8,
            Self::Purple => 0x007F_52A8,
            Self::Pink => 0x00DA_6F9D,
            Self::Brown => 0x008A_5F38,
        })
    }
}

/// The colour that a name names in the language of the words, if it names one.
pub(super) fn colour_of(name: &str, words: &Words) -> Option<Colour> {
    let name = name.to_lowercase();
    let named: Vec<&str> = name.split(|letter: char| !letter.is_alphabetic()).collect();
    let is_named = |colour: &&CordColour| {
        let names = words.colour_names((**colour).into());
        names.split_whitespace().any(|word| named.contains(&word))
    };
    let found = CordColour::VARIANTS.iter().find(is_named)?;
    Some(found.colour())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cord_has_the_colour_that_its_name_names_in_every_language() {
        for (tag, name, colour) in [
            ("en", "Blue braid", Some(CordColour::Blue)),
            ("de", "Flechtleine, grün", Some(CordColour::Green)),
            ("es", "cabo rojo 4", Some(CordColour::Red)),
            ("fr", "cordon noir", Some(CordColour::Black)),
            ("en", "oak", None),
            // A word, and not a part of one.
            ("en", "redwood", None),
        ] {
            let words = Words::load(Some(tag)).unwrap();
            let found = colour_of(name, &words);
            assert_eq!(found, colour.map(CordColour::colour), "{tag} {name}");
        }
    }
}
