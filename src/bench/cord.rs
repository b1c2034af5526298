//! Cord, and the standard cords whose figures are published.

use super::{Give, Millimetres};

/// A round cord.
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Cord, Millimetres};
///
/// let mm = |length| Millimetres::new(length).unwrap();
/// let white = Cord::new(mm(4.0)).named("white");
/// let cut = mm(2600.0);
/// assert_eq!(white.grams(cut), None, "nobody has weighed it");
/// let weighed = Cord { grams_per_metre: Some(10.0), ..white };
/// assert_eq!(weighed.grams(cut), Some(26.0));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Cord {
    /// Its diameter as it lies in the knot.
    pub diameter: Millimetres,
    /// What the tyer calls it: a colour, a make of their own.
    pub name: Option<String>,
    /// Grams in a metre, when known.
    pub grams_per_metre: Option<f64>,
    /// How closely it lies.
    pub give: Give,
}

impl Cord {
    /// A cord of which only the diameter is known; taken for soft line.
    pub fn new(diameter: Millimetres) -> Self {
        Self {
            diameter,
            name: None,
            grams_per_metre: None,
            give: Give::default(),
        }
    }

    /// The same cord under a name.
    #[must_use]
    pub fn named(self, name: &str) -> Self {
        Self {
            name: Some(name.to_owned()),
            ..self
        }
    }

    /// What `length` of it weighs, in grams, when its weight is known.
    pub fn grams(&self, length: Millimetres) -> Option<f64> {
        self.grams_per_metre
            .map(|grams| grams * length.get() / 1000.0)
    }
}

/// A type of cord in a published standard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CordStandard {
    /// The type's designation within the standard.
    pub designation: &'static str,
    /// A typical diameter. The standard itself sets none.
    pub typical_diameter: Option<Millimetres>,
    /// The least strength in pounds, by which it is called. No knot of this program is to hold a
    /// load.
    pub least_pounds: u16,
    /// The most a metre may weigh, in grams.
    pub most_grams_per_metre: f64,
    /// Where the figures were read.
    pub source: &'static str,
}

impl CordStandard {
    /// The standard cord that a tyer means: its designation (`III`), with `type` before it
    /// (`type III`), or what it is called in shops: `paracord`, and the least strength in pounds
    /// that gives it its name, `550`. Other strengths need the word beside them, since a bare
    /// number is a length.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::CordStandard;
    ///
    /// for text in ["III", "type iii", "550", "Paracord", "550 cord", "paracord 550"] {
    ///     assert_eq!(CordStandard::named(text).unwrap().designation, "III", "{text}");
    /// }
    /// assert!(CordStandard::named("4mm").is_none());
    /// ```
    pub fn named(text: &str) -> Option<&'static Self> {
        let lower = text.to_lowercase();
        let said: Vec<&str> = lower.split([' ', '-', '\u{a0}']).collect();
        let is_shop_word = |word: &&str| matches!(*word, "paracord" | "cord");
        let is_typed = said.contains(&"type");
        let names: Vec<&str> = said
            .iter()
            .copied()
            .filter(|word| !word.is_empty() && *word != "type" && !is_shop_word(word))
            .collect();
        let is_cord = said.iter().any(is_shop_word);
        let name = match names[..] {
            [] if said.contains(&"paracord") => "550",
            [name] => name,
            _ => return None,
        };
        let by_strength = is_cord || name == "550";
        STANDARD_CORDS.iter().find(|standard| {
            let is_number = is_typed && standard.number() == Some(name);
            standard.designation.eq_ignore_ascii_case(name)
                || is_number
                || by_strength && standard.least_pounds.to_string() == name
        })
    }

    /// Its designation in digits, when that is a number.
    fn number(&self) -> Option<&'static str> {
        Some(match self.designation {
            "I" => "1",
            "II" => "2",
            "III" => "3",
            "IV" => "4",
            _ => return None,
        })
    }

    /// A cord of this type, or `None` when no typical diameter is known (or it is flat).
    pub fn cord(&self) -> Option<Cord> {
        self.typical_diameter.map(|diameter| Cord {
            diameter,
            name: None,
            grams_per_metre: Some(self.most_grams_per_metre),
            give: Give::default(),
        })
    }
}

const fn standard(
    designation: &'static str,
    diameter: Option<f64>,
    least_pounds: u16,
    most_grams_per_metre: f64,
    source: &'static str,
) -> CordStandard {
    let typical_diameter = match diameter {
        Some(diameter) => Some(Millimetres::computed(diameter)),
        None => None,
    };
    CordStandard {
        designation,
        typical_diameter,
        least_pounds,
        most_grams_per_metre,
        source,
    }
}

/// Nylon cord of MIL-C-5040H (1994; inactive for new design since 1997; the current
/// commercial document is PIA-C-5040F). The flat type IIA is left out.
///
/// Grams in a metre are 1488.164 over the least feet in a pound of table II.
pub const STANDARD_CORDS: [CordStandard; 5] = [
    standard(
        "I",
        Some(1.6),
        95,
        1.566,
        "MIL-C-5040H table II, 950 ft/lb; diameter as sold",
    ),
    standard(
        "IA",
        Some(1.6),
        100,
        1.417,
        "MIL-C-5040H table II, 1050 ft/lb; diameter 1/16 in as sold",
    ),
    standard("II", None, 400, 5.616, "MIL-C-5040H table II, 265 ft/lb"),
    standard(
        "III",
        Some(4.0),
        550,
        6.614,
        "MIL-C-5040H table II, 225 ft/lb; diameter 5/32 in as measured",
    ),
    standard(
        "IV",
        None,
        750,
        9.019,
        "MIL-C-5040H table II, 165 ft/lb, from memory",
    ),
];
