//! What the tyer says about object, cord and tube, as typed: at the options of a command or in
//! the fields of a form.

use strum::{EnumCount, IntoStaticStr, VariantArray};

use super::Rack;
use crate::bench::{
    BenchError, Cord, CordStandard, Firmness, Give, LengthError, Millimetres, Object, Thread, Tube,
    pin_chord,
};

/// One of the things asked for.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, IntoStaticStr, EnumCount, VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum SetupField {
    /// Diameter of the object: a length.
    Object,
    /// The way round it instead: a length.
    Girth,
    /// Length to be covered: a length.
    Cover,
    /// The cord: a length, a standard, or a name on the rack.
    Cord,
    /// What the cord is like: hard, soft or flat.
    Firm,
    /// The same as a number: how closely it lies.
    Give,
    /// The tube: a length, or a name on the rack.
    Tube,
    /// Holes in each row of its rings.
    Rows,
    /// Length of the pins: a length.
    Pin,
    /// Thread of the pins.
    Thread,
    /// Wall of the tube: a length.
    Wall,
    /// Width of each ring along the tube: a length.
    RingWidth,
    /// Length of the tube: a length.
    TubeLength,
    /// Cord at hand: a length.
    Have,
}

/// The texts, field by field; what was not said is none, or blank.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SetupForm {
    texts: [Option<String>; SetupField::COUNT],
}

/// Why what was said cannot be used.
#[derive(Clone, Debug, PartialEq)]
pub enum SetupError {
    /// No length.
    Length {
        /// Where it was said.
        asking: SetupField,
        /// What is wrong.
        error: LengthError,
    },
    /// No row, count or thread.
    Bench(BenchError),
    /// Not said, but needed.
    Missing(SetupField),
    /// Both a diameter and a girth.
    ObjectTwice,
    /// Neither hard, soft nor flat.
    FirmUnknown {
        /// The text as given.
        given: String,
    },
    /// Both what the cord is like and how closely it lies.
    GiveTwice,
    /// Neither a length, nor a standard, nor kept.
    CordUnknown {
        /// The text as given.
        given: String,
        /// Names of the cords that are kept.
        kept: Vec<String>,
    },
    /// A standard that sets no diameter.
    CordUnmeasured {
        /// The standard's designation.
        designation: &'static str,
    },
    /// Neither a length nor kept.
    TubeUnknown {
        /// The text as given.
        given: String,
        /// Names of the tubes that are kept.
        kept: Vec<String>,
    },
    /// Something about a tube, but no tube.
    WithoutTube(SetupField),
    /// A width of rings, but no rings.
    WithoutRings,
    /// Holes that would run into one another.
    HolesTooClose {
        /// Holes in the row.
        holes: u16,
        /// From hole to hole.
        between: Millimetres,
        /// What a pin needs at the least.
        pin: Millimetres,
    },
    /// A wall that fills the tube.
    WallTooThick {
        /// The wall.
        wall: Millimetres,
        /// Diameter of the tube.
        tube: Millimetres,
    },
}

impl SetupForm {
    /// The same form with a field filled in.
    #[must_use]
    pub fn with(mut self, field: SetupField, text: Option<String>) -> Self {
        self.texts[field as usize] = text;
        self
    }

    /// What a field says, without blanks round it; none when it says nothing.
    pub fn said(&self, field: SetupField) -> Option<&str> {
        let text = self.texts[field as usize].as_deref();
        text.map(str::trim).filter(|text| !text.is_empty())
    }

    /// Whether nothing was said at all.
    pub fn is_empty(&self) -> bool {
        SetupField::VARIANTS
            .iter()
            .all(|&field| self.said(field).is_none())
    }

    /// The length that a field says.
    ///
    /// # Errors
    /// [`SetupError::Length`].
    pub fn length(&self, field: SetupField) -> Result<Option<Millimetres>, SetupError> {
        let read = self.said(field).map(Millimetres::parse).transpose();
        read.map_err(|error| SetupError::Length {
            asking: field,
            error,
        })
    }

    /// Diameter of the object, if it was said.
    ///
    /// # Errors
    /// [`SetupError::ObjectTwice`] or [`SetupError::Length`].
    pub fn object(&self) -> Result<Option<Millimetres>, SetupError> {
        let girth = self.length(SetupField::Girth)?;
        let diameter = self.length(SetupField::Object)?;
        match (diameter, girth) {
            (Some(_), Some(_)) => Err(SetupError::ObjectTwice),
            (Some(diameter), None) => Ok(Some(diameter)),
            (None, Some(girth)) => {
                let diameter = Object::by_girth(girth, girth).diameter;
                // A girth may be long enough where its diameter is not.
                match Millimetres::new(diameter.get()) {
                    Ok(diameter) => Ok(Some(diameter)),
                    Err(_) => Err(SetupError::Length {
                        asking: SetupField::Girth,
                        error: LengthError::OutOfRange {
                            given: self.said(SetupField::Girth).unwrap_or_default().to_owned(),
                        },
                    }),
                }
            }
            (None, None) => Ok(None),
        }
    }

    /// The cord, if it was said.
    ///
    /// # Errors
    /// A [`SetupError`] about the cord.
    pub fn cord(&self, rack: &Rack) -> Result<Option<Cord>, SetupError> {
        let give = self.give()?;
        let Some(cord) = self.cord_alone(rack)? else {
            return Ok(None);
        };
        Ok(Some(Cord {
            give: give.unwrap_or(cord.give),
            ..cord
        }))
    }

    fn cord_alone(&self, rack: &Rack) -> Result<Option<Cord>, SetupError> {
        let Some(given) = self.said(SetupField::Cord) else {
            return Ok(None);
        };
        if let Some(cord) = rack.cords.get(given) {
            return Ok(Some(cord.clone()));
        }
        if let Some(standard) = CordStandard::named(given) {
            let unmeasured = SetupError::CordUnmeasured {
                designation: standard.designation,
            };
            return standard.cord().map(Some).ok_or(unmeasured);
        }
        if given.starts_with(char::is_alphabetic) {
            return Err(SetupError::CordUnknown {
                given: given.to_owned(),
                kept: rack.cords.keys().cloned().collect(),
            });
        }
        let diameter = self.length(SetupField::Cord)?;
        Ok(diameter.map(Cord::new))
    }

    /// The standard cord that another name of it was understood as, if so.
    pub fn understood(&self, rack: &Rack) -> Option<&'static CordStandard> {
        let given = self.said(SetupField::Cord)?;
        if rack.cords.contains_key(given) {
            return None;
        }
        CordStandard::named(given)
            .filter(|standard| !standard.designation.eq_ignore_ascii_case(given))
    }

    /// How closely the cord lies, if anything was said of it.
    fn give(&self) -> Result<Option<Give>, SetupError> {
        let firm = self.said(SetupField::Firm);
        let give = self.said(SetupField::Give);
        match (firm, give) {
            (Some(_), Some(_)) => Err(SetupError::GiveTwice),
            (Some(given), None) => match given.parse::<Firmness>() {
                Ok(firmness) => Ok(Some(firmness.into())),
                Err(_) => Err(SetupError::FirmUnknown {
                    given: given.to_owned(),
                }),
            },
            (None, Some(given)) => Give::parse(given).map(Some).map_err(SetupError::Bench),
            (None, None) => Ok(None),
        }
    }

    /// The tube, if it was said: one from the rack with whatever else was said put in its
    /// place, or one of this diameter.
    ///
    /// # Errors
    /// An [`SetupError`] about the tube.
    pub fn tube(&self, rack: &Rack) -> Result<Option<Tube>, SetupError> {
        let rows = self.said(SetupField::Rows).map(Tube::parse_rows);
        let rows = rows.transpose().map_err(SetupError::Bench)?;
        let thread = self.said(SetupField::Thread).map(Thread::parse);
        let thread = thread.transpose().map_err(SetupError::Bench)?;
        let pin = self.length(SetupField::Pin)?;
        let wall = self.length(SetupField::Wall)?;
        let ring_width = self.length(SetupField::RingWidth)?;
        let tube_length = self.length(SetupField::TubeLength)?;
        let Some(given) = self.said(SetupField::Tube) else {
            let of_tube = OF_TUBE
                .into_iter()
                .find(|&field| self.said(field).is_some());
            return of_tube.map_or(Ok(None), |field| Err(SetupError::WithoutTube(field)));
        };
        let kept = if given.starts_with(char::is_alphabetic) {
            let kept = rack
                .tubes
                .get(given)
                .ok_or_else(|| SetupError::TubeUnknown {
                    given: given.to_owned(),
                    kept: rack.tubes.keys().cloned().collect(),
                })?;
            kept.clone()
        } else {
            let diameter = self.length(SetupField::Tube)?;
            Tube::plain(diameter.ok_or(SetupError::Missing(SetupField::Tube))?)
        };
        let rows = rows.or_else(|| kept.rows().map(<[u16]>::to_vec));
        let tube = match rows {
            Some(rows) => Tube::ringed(kept.diameter, &rows).map_err(SetupError::Bench)?,
            None if ring_width.is_some() => return Err(SetupError::WithoutRings),
            None => Tube::plain(kept.diameter),
        };
        let mut tube = tube.with_ring_width(ring_width.or(kept.ring_width()));
        tube.wall = wall.or(kept.wall);
        tube.pin_length = pin.or(kept.pin_length);
        tube.thread = thread.or(kept.thread);
        tube.length = tube_length.or(kept.length);
        check(&tube)?;
        Ok(Some(tube))
    }
}

/// What is said of a tube besides itself.
const OF_TUBE: [SetupField; 6] = [
    SetupField::Rows,
    SetupField::Pin,
    SetupField::Thread,
    SetupField::Wall,
    SetupField::RingWidth,
    SetupField::TubeLength,
];

fn check(tube: &Tube) -> Result<(), SetupError> {
    if let Some(wall) = tube.wall
        && 2.0 * wall.get() > tube.diameter.get()
    {
        return Err(SetupError::WallTooThick {
            wall,
            tube: tube.diameter,
        });
    }
    // The thinnest set screw there is, when the thread is not known.
    let thinnest = Thread::all()
        .iter()
        .map(|thread| thread.diameter())
        .min_by(|one, other| one.get().total_cmp(&other.get()));
    let Some(pin) = tube.thread.map(Thread::diameter).or(thinnest) else {
        return Ok(());
    };
    let rows = tube.rows().unwrap_or_default();
    let close = rows
        .iter()
        .find(|&&holes| pin_chord(tube.diameter, holes) < pin);
    close.map_or(Ok(()), |&holes| {
        Err(SetupError::HolesTooClose {
            holes,
            between: pin_chord(tube.diameter, holes),
            pin,
        })
    })
}
