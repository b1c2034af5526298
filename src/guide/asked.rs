//! What the tyer says about object, cord and tube, as typed: at the options of a command or in
//! the fields of a form.

use super::{Rack, Setup};
use crate::bench::{
    Answer, BenchError, Braid, Cord, Correction, Counts, Finish, LengthError, Millimetres, Misfit,
    Object, Pace, STANDARD_CORDS, Thread, Tube, Wish, fit, pin_chord, why_nothing_fits,
};

/// One of the things asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Asking {
    /// Diameter of the object.
    Object,
    /// The way round it.
    Girth,
    /// Length to be covered.
    Cover,
    /// The cord.
    Cord,
    /// The tube.
    Tube,
    /// Rows of holes in each of its rings.
    Rows,
    /// Length of the pins.
    Pin,
    /// Thread of the pins.
    Thread,
    /// Wall of the tube.
    Wall,
    /// Cord at hand.
    Have,
}

/// The texts; what was not said is none, or blank.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Asked {
    /// Diameter of the object: a length.
    pub object: Option<String>,
    /// Its girth instead: a length.
    pub girth: Option<String>,
    /// Length to be covered: a length.
    pub cover: Option<String>,
    /// A length, the designation of a standard, or a name on the rack.
    pub cord: Option<String>,
    /// A length, or a name on the rack.
    pub tube: Option<String>,
    /// Holes in each row.
    pub rows: Option<String>,
    /// A length.
    pub pin: Option<String>,
    /// A thread.
    pub thread: Option<String>,
    /// A length.
    pub wall: Option<String>,
    /// A length.
    pub have: Option<String>,
}

/// Why what was said cannot be used.
#[derive(Clone, Debug, PartialEq)]
pub enum AskError {
    /// No length.
    Length {
        /// Where it was said.
        asking: Asking,
        /// What is wrong.
        error: LengthError,
    },
    /// No row, count or thread.
    Bench(BenchError),
    /// Not said, but needed.
    Missing(Asking),
    /// Both a diameter and a girth.
    ObjectTwice,
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
    WithoutTube(Asking),
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

/// The question of fit: everything it needs, read and checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// What is to be covered.
    pub object: Object,
    /// The cord.
    pub cord: Cord,
    /// The tube, if chosen.
    pub tube: Option<Tube>,
    /// Cord at hand, if it matters.
    pub have: Option<Millimetres>,
    /// What the tyer's log says of the cord.
    pub correction: Correction,
    /// The tyer's pace, when known.
    pub pace: Option<Pace>,
}

impl Wanted {
    fn wish(&self) -> Wish<'_> {
        Wish {
            tube: self.tube.as_ref(),
            cord_at_hand: self.have,
            correction: self.correction,
            pace: self.pace,
            ..Wish::new(self.object, self.cord.diameter)
        }
    }

    /// Every knot that answers, best first.
    pub fn answers(&self) -> Vec<Answer> {
        fit(&self.wish())
    }

    /// Why there is no answer, and what would be one.
    pub fn misfits(&self) -> Vec<Misfit> {
        why_nothing_fits(&self.wish())
    }

    /// The setup for an answer; none as long as no tube is chosen.
    pub fn setup(&self, answer: &Answer) -> Option<Setup> {
        let tube = self.tube.clone()?;
        Some(Setup {
            finish: Some(Finish {
                around: self.object.diameter,
                open_to: (!answer.shape.faired).then_some(self.object.cover),
            }),
            correction: self.correction,
            ..Setup::new(tube, self.cord.clone())
        })
    }
}

impl Asked {
    /// Whether nothing was said at all.
    pub fn is_empty(&self) -> bool {
        let Self {
            object,
            girth,
            cover,
            cord,
            tube,
            rows,
            pin,
            thread,
            wall,
            have,
        } = self;
        [
            object, girth, cover, cord, tube, rows, pin, thread, wall, have,
        ]
        .into_iter()
        .all(|text| said(text.as_deref()).is_none())
    }

    /// Diameter of the object, if it was said.
    ///
    /// # Errors
    /// [`AskError::ObjectTwice`] or [`AskError::Length`].
    pub fn object(&self) -> Result<Option<Millimetres>, AskError> {
        let girth = length(Asking::Girth, self.girth.as_deref())?;
        let diameter = length(Asking::Object, self.object.as_deref())?;
        match (diameter, girth) {
            (Some(_), Some(_)) => Err(AskError::ObjectTwice),
            (Some(diameter), None) => Ok(Some(diameter)),
            (None, Some(girth)) => {
                let diameter = Object::by_girth(girth, girth).diameter;
                // A girth may be long enough where its diameter is not.
                match Millimetres::new(diameter.get()) {
                    Ok(diameter) => Ok(Some(diameter)),
                    Err(_) => Err(AskError::Length {
                        asking: Asking::Girth,
                        error: LengthError::OutOfRange {
                            given: said(self.girth.as_deref()).unwrap_or_default().to_owned(),
                        },
                    }),
                }
            }
            (None, None) => Ok(None),
        }
    }

    /// Length to be covered, if it was said.
    ///
    /// # Errors
    /// [`AskError::Length`].
    pub fn cover(&self) -> Result<Option<Millimetres>, AskError> {
        length(Asking::Cover, self.cover.as_deref())
    }

    /// Cord at hand, if it was said.
    ///
    /// # Errors
    /// [`AskError::Length`].
    pub fn have(&self) -> Result<Option<Millimetres>, AskError> {
        length(Asking::Have, self.have.as_deref())
    }

    /// The cord, if it was said.
    ///
    /// # Errors
    /// [`AskError::Length`], [`AskError::CordUnknown`] or [`AskError::CordUnmeasured`].
    pub fn cord(&self, rack: &Rack) -> Result<Option<Cord>, AskError> {
        let Some(given) = said(self.cord.as_deref()) else {
            return Ok(None);
        };
        if !given.starts_with(char::is_alphabetic) {
            return length(Asking::Cord, self.cord.as_deref())
                .map(|diameter| diameter.map(Cord::new));
        }
        if let Some(cord) = rack.cords.get(given) {
            return Ok(Some(cord.clone()));
        }
        let standard = STANDARD_CORDS
            .iter()
            .find(|standard| standard.designation.eq_ignore_ascii_case(given));
        match standard {
            Some(standard) => standard.cord().map(Some).ok_or(AskError::CordUnmeasured {
                designation: standard.designation,
            }),
            None => Err(AskError::CordUnknown {
                given: given.to_owned(),
                kept: rack.cords.keys().cloned().collect(),
            }),
        }
    }

    /// The tube, if it was said: one from the rack with whatever else was said put in its
    /// place, or one of this diameter.
    ///
    /// # Errors
    /// An [`AskError`] about the tube.
    pub fn tube(&self, rack: &Rack) -> Result<Option<Tube>, AskError> {
        let rows = said(self.rows.as_deref())
            .map(Tube::parse_rows)
            .transpose()
            .map_err(AskError::Bench)?;
        let pin = length(Asking::Pin, self.pin.as_deref())?;
        let thread = said(self.thread.as_deref())
            .map(Thread::parse)
            .transpose()
            .map_err(AskError::Bench)?;
        let wall = length(Asking::Wall, self.wall.as_deref())?;
        let Some(given) = said(self.tube.as_deref()) else {
            let of_tube = [
                (Asking::Rows, rows.is_some()),
                (Asking::Pin, pin.is_some()),
                (Asking::Thread, thread.is_some()),
                (Asking::Wall, wall.is_some()),
            ];
            return match of_tube.iter().find(|(_, is_said)| *is_said) {
                Some((asking, _)) => Err(AskError::WithoutTube(*asking)),
                None => Ok(None),
            };
        };
        let kept = if given.starts_with(char::is_alphabetic) {
            let kept = rack.tubes.get(given).ok_or_else(|| AskError::TubeUnknown {
                given: given.to_owned(),
                kept: rack.tubes.keys().cloned().collect(),
            })?;
            kept.clone()
        } else {
            let diameter = length(Asking::Tube, self.tube.as_deref())?;
            Tube::plain(diameter.ok_or(AskError::Missing(Asking::Tube))?)
        };
        let rows = rows.or_else(|| kept.rows().map(<[u16]>::to_vec));
        let mut tube = match rows {
            Some(rows) => Tube::ringed(kept.diameter, &rows).map_err(AskError::Bench)?,
            None => Tube::plain(kept.diameter),
        };
        tube.wall = wall.or(kept.wall);
        tube.pin_length = pin.or(kept.pin_length);
        tube.thread = thread.or(kept.thread);
        check(&tube)?;
        Ok(Some(tube))
    }

    /// The setup for a knot, if anything was said: the knot left open where that is what
    /// reaching the cover takes.
    ///
    /// # Errors
    /// An [`AskError`]: also when the tube or the cord is missing.
    pub fn setup(&self, rack: &Rack, counts: Counts) -> Result<Option<Setup>, AskError> {
        if self.is_empty() {
            return Ok(None);
        }
        let object = self.object()?;
        let cover = self.cover()?;
        self.have()?;
        let cord = self.cord(rack)?.ok_or(AskError::Missing(Asking::Cord))?;
        let tube = self.tube(rack)?.ok_or(AskError::Missing(Asking::Tube))?;
        let finish = (object.is_some() || cover.is_some()).then(|| {
            let around = object.unwrap_or(tube.diameter);
            Finish {
                around,
                open_to: cover.and_then(|cover| open_to(counts, cord.diameter, around, cover)),
            }
        });
        Ok(Some(Setup {
            finish,
            ..Setup::new(tube, cord)
        }))
    }

    /// The question of fit.
    ///
    /// # Errors
    /// An [`AskError`]: also when object, cover or cord is missing.
    pub fn question(&self, rack: &Rack) -> Result<Wanted, AskError> {
        let diameter = self.object()?;
        let cover = self.cover()?;
        let cord = self.cord(rack)?;
        let tube = self.tube(rack)?;
        let have = self.have()?;
        let diameter = diameter.ok_or(AskError::Missing(Asking::Object))?;
        let cover = cover.ok_or(AskError::Missing(Asking::Cover))?;
        Ok(Wanted {
            object: Object::new(diameter, cover),
            cord: cord.ok_or(AskError::Missing(Asking::Cord))?,
            tube,
            have,
            correction: Correction::default(),
            pace: None,
        })
    }
}

/// Whether reaching `cover` means to leave the knot open, by the rule that [`fit`] goes by: a
/// fully faired knot may miss it by as much as [`Wish::tolerance`].
fn open_to(
    counts: Counts,
    cord: Millimetres,
    around: Millimetres,
    cover: Millimetres,
) -> Option<Millimetres> {
    let braid = Braid {
        counts,
        cord,
        around,
        correction: Correction::default(),
    };
    let tolerance = Wish::new(Object::new(around, cover), cord).tolerance;
    let is_near = |width: Millimetres| (width.get() - cover.get()).abs() <= tolerance.get();
    match braid.faired() {
        Ok(shape) if !is_near(shape.width) => Some(cover),
        // What does not go round at all is told of when the tube is rigged.
        _ => None,
    }
}

fn check(tube: &Tube) -> Result<(), AskError> {
    if let Some(wall) = tube.wall
        && 2.0 * wall.get() > tube.diameter.get()
    {
        return Err(AskError::WallTooThick {
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
        Err(AskError::HolesTooClose {
            holes,
            between: pin_chord(tube.diameter, holes),
            pin,
        })
    })
}

/// A text that says something.
fn said(text: Option<&str>) -> Option<&str> {
    text.map(str::trim).filter(|text| !text.is_empty())
}

fn length(asking: Asking, text: Option<&str>) -> Result<Option<Millimetres>, AskError> {
    said(text)
        .map(Millimetres::parse)
        .transpose()
        .map_err(|error| AskError::Length { asking, error })
}
