//! Cord, and the standard cords whose figures are published.

use super::Millimetres;

/// A round cord.
#[derive(Clone, Debug, PartialEq)]
pub struct Cord {
    /// Its diameter as it lies in the knot.
    pub diameter: Millimetres,
    /// What the tyer calls it: a colour, a make of their own.
    pub name: Option<String>,
    /// Grams in a metre, when known.
    pub grams_per_metre: Option<f64>,
}

impl Cord {
    /// A cord of which only the diameter is known.
    pub const fn new(diameter: Millimetres) -> Self {
        Self {
            diameter,
            name: None,
            grams_per_metre: None,
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
    /// The most a metre may weigh, in grams.
    pub most_grams_per_metre: f64,
    /// Where the figures were read.
    pub source: &'static str,
}

impl CordStandard {
    /// A cord of this type, or `None` when no typical diameter is known (or it is flat).
    pub fn cord(&self) -> Option<Cord> {
        self.typical_diameter.map(|diameter| Cord {
            diameter,
            name: None,
            grams_per_metre: Some(self.most_grams_per_metre),
        })
    }
}

const fn standard(
    designation: &'static str,
    diameter: Option<f64>,
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
        1.566,
        "MIL-C-5040H table II, 950 ft/lb; diameter as sold",
    ),
    standard(
        "IA",
        Some(1.6),
        1.417,
        "MIL-C-5040H table II, 1050 ft/lb; diameter 1/16 in as sold",
    ),
    standard("II", None, 5.616, "MIL-C-5040H table II, 265 ft/lb"),
    standard(
        "III",
        Some(4.0),
        6.614,
        "MIL-C-5040H table II, 225 ft/lb; diameter 5/32 in as measured",
    ),
    standard(
        "IV",
        None,
        9.019,
        "MIL-C-5040H table II, 165 ft/lb, from memory",
    ),
];
