//! Several pieces at once: the cord to buy for them, one bag, and knots along a stick.

use super::{BenchError, Cord, KitItem, Millimetres};

/// How much more cord is bought than is cut: for ends that fray, a slip of the rule, a piece that has
/// to be cut anew.
///
/// ```
/// use marlinspeak::bench::Waste;
///
/// let waste = Waste::parse("7,5 %")?;
/// assert!((waste.percent() - 7.5).abs() < 1e-9);
/// assert!(Waste::parse("a little").is_err());
/// # Ok::<(), marlinspeak::bench::BenchError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Waste(f64);

impl Default for Waste {
    /// Five in a hundred: *common practice, no source*.
    fn default() -> Self {
        Self(5.0)
    }
}

impl Waste {
    /// The least and the most, in per cent.
    pub const BOUNDS: std::ops::RangeInclusive<f64> = 0.0..=100.0;

    /// Reads per cent as a person types them: `5`, `7,5`, `10 %`.
    ///
    /// # Errors
    /// [`BenchError::Waste`] for what is no number within [`Self::BOUNDS`].
    pub fn parse(text: &str) -> Result<Self, BenchError> {
        let given = text.trim();
        let number = given.trim_end_matches('%').trim_end().replace(',', ".");
        let percent = number.parse::<f64>().ok();
        percent
            .filter(|percent| Self::BOUNDS.contains(percent))
            .map(Self)
            .ok_or_else(|| BenchError::Waste {
                given: given.to_owned(),
            })
    }

    /// In per cent.
    pub const fn percent(self) -> f64 {
        self.0
    }

    /// A length with what is wasted beside it.
    fn with(self, length: f64) -> f64 {
        length * (1.0 + self.0 / 100.0)
    }
}

/// So many pieces of a cord, each of this length.
///
/// ```
/// use marlinspeak::bench::{Cord, CordCut, Millimetres, Waste, to_buy};
///
/// // Two bell ropes of 1.5 m: with the waste a little more than three metres.
/// let cord = Cord::new(Millimetres::parse("6mm")?);
/// let cut = CordCut { cord, pieces: 2, length: Millimetres::parse("1.5m")? };
/// assert_eq!(to_buy([cut], Waste::default(), None)[0].metres, 4);
/// # Ok::<(), marlinspeak::bench::LengthError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct CordCut {
    /// The cord.
    pub cord: Cord,
    /// How many pieces.
    pub pieces: u32,
    /// Length to cut of each.
    pub length: Millimetres,
}

/// The most cord on a spool, 1,000 m: what is sold to a loft is shorter. *Common practice, no source.*
pub const LONGEST_SPOOL: Millimetres = Millimetres::computed(1_000_000.0);

/// How many spools a cord takes.
///
/// ```
/// use marlinspeak::bench::{Cord, CordCut, Millimetres, Spools, Waste, to_buy};
///
/// // A piece of 1.5 m does not come from a spool of 1 m.
/// let longest = Millimetres::parse("1.5m")?;
/// let cut = CordCut { cord: Cord::new(Millimetres::parse("6mm")?), pieces: 2, length: longest };
/// let list = to_buy([cut], Waste::default(), Some(Millimetres::parse("1m")?));
/// assert_eq!(list[0].spools, Some(Spools::TooShort { longest }));
/// # Ok::<(), marlinspeak::bench::LengthError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Spools {
    /// So many: every piece comes whole from one of them.
    Enough(u32),
    /// None is long enough for the longest piece.
    TooShort {
        /// The longest piece.
        longest: Millimetres,
    },
}

/// One cord on the list of what to buy.
///
/// ```
/// use marlinspeak::bench::{Cord, CordCut, Millimetres, Waste, to_buy};
///
/// let tan = Cord::new(Millimetres::parse("4mm")?).named("tan");
/// let cut = |length: &str| Millimetres::parse(length)
///     .map(|length| CordCut { cord: tan.clone(), pieces: 1, length });
/// let list = to_buy([cut("2m")?, cut("3m")?], Waste::parse("0").unwrap_or_default(), None);
/// // One cord, the longest piece first.
/// assert_eq!((list.len(), list[0].metres), (1, 5));
/// assert_eq!(list[0].cuts[0].1, Millimetres::parse("3m")?);
/// # Ok::<(), marlinspeak::bench::LengthError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct CordToBuy {
    /// The cord.
    pub cord: Cord,
    /// How many pieces of which length, the longest first.
    pub cuts: Vec<(u32, Millimetres)>,
    /// All pieces end to end, in millimetres.
    pub bare: f64,
    /// Whole metres with the waste, rounded up once.
    pub metres: u32,
    /// How many spools, when the length of one is known.
    pub spools: Option<Spools>,
    /// What all of the metres weigh in grams, when that is known of the cord.
    pub grams: Option<f64>,
}

/// The list of what to buy, a cord once, in the order in which they are first cut.
///
/// The pieces are added up as they are, and only the sum of a cord is made more by the waste and
/// rounded up to a metre. A piece never goes from one spool to the next: the longest are cut first,
/// each from the first spool that still has enough (first fit, decreasing).
///
/// # Examples
/// ```
/// use marlinspeak::bench::{Cord, CordCut, Millimetres, Spools, Waste, to_buy};
///
/// // Ten tiller grips of 5.2 m each, on spools of 20 m: three come from a spool.
/// let mm = |length| Millimetres::new(length).unwrap();
/// let cut = CordCut { cord: Cord::new(mm(4.0)), pieces: 10, length: mm(5200.0) };
/// let list = to_buy([cut], Waste::default(), Some(mm(20_000.0)));
/// assert_eq!((list[0].bare, list[0].metres), (52_000.0, 55));
/// assert_eq!(list[0].spools, Some(Spools::Enough(4)));
/// ```
pub fn to_buy(
    cuts: impl IntoIterator<Item = CordCut>,
    waste: Waste,
    spool: Option<Millimetres>,
) -> Vec<CordToBuy> {
    let mut cords: Vec<(Cord, Vec<(u32, Millimetres)>)> = Vec::new();
    for cut in cuts.into_iter().filter(|cut| cut.pieces > 0) {
        let known = cords.iter_mut().find(|(cord, _)| *cord == cut.cord);
        let Some((_, cuts)) = known else {
            cords.push((cut.cord, vec![(cut.pieces, cut.length)]));
            continue;
        };
        match cuts.iter_mut().find(|(_, length)| *length == cut.length) {
            Some((pieces, _)) => *pieces = pieces.saturating_add(cut.pieces),
            None => cuts.push((cut.pieces, cut.length)),
        }
    }
    let list = cords.into_iter().map(|(cord, mut cuts)| {
        cuts.sort_by(|(_, one), (_, other)| other.get().total_cmp(&one.get()));
        let bare: f64 = cuts
            .iter()
            .map(|(pieces, length)| f64::from(*pieces) * length.get())
            .sum();
        let bought = waste.with(bare);
        let metres = up(bought / 1000.0);
        CordToBuy {
            spools: spool.map(|spool| spools(&cuts, bought, spool)),
            grams: cord.grams_per_metre.map(|grams| grams * f64::from(metres)),
            cord,
            cuts,
            bare,
            metres,
        }
    });
    list.collect()
}

/// Spools for pieces, the longest first, that come to `bought` with the waste.
fn spools(cuts: &[(u32, Millimetres)], bought: f64, spool: Millimetres) -> Spools {
    if let Some((_, longest)) = cuts.first()
        && longest > &spool
    {
        return Spools::TooShort { longest: *longest };
    }
    let mut left: Vec<f64> = Vec::new();
    for (pieces, length) in cuts {
        let mut pieces = *pieces;
        let length = length.get();
        let take = |room: &mut f64, pieces: &mut u32| {
            let fit = down(*room / length).min(*pieces);
            *room -= f64::from(fit) * length;
            *pieces -= fit;
        };
        for room in &mut left {
            take(room, &mut pieces);
        }
        while pieces > 0 {
            let mut room = spool.get();
            take(&mut room, &mut pieces);
            left.push(room);
        }
    }
    let whole = u32::try_from(left.len()).unwrap_or(u32::MAX);
    // A waste that is larger than what is left over at the ends of the spools takes more of them.
    Spools::Enough(whole.max(up(bought / spool.get())))
}

/// As little as what a sum of lengths is out by.
const HAIR: f64 = 1e-9;

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and lengths are positive"
)]
fn up(number: f64) -> u32 {
    (number * (1.0 - HAIR)).ceil() as u32
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and lengths are positive"
)]
fn down(number: f64) -> u32 {
    (number * (1.0 + HAIR)).floor() as u32
}

/// One bag out of those of several rigs: a tube, a key and a tool once, of pins the most that any
/// rig takes, since they are set again for the next, and tape and a strip for each rig. Cord is
/// not among it: that is on the list of what to buy.
///
/// ```
/// use marlinspeak::bench::{KitItem, Tool, one_bag};
///
/// let bags = [vec![KitItem::Tool(Tool::Ruler)], vec![KitItem::Tool(Tool::Ruler)]];
/// assert_eq!(one_bag(bags).len(), 1);
/// ```
pub fn one_bag(bags: impl IntoIterator<Item = Vec<KitItem>>) -> Vec<KitItem> {
    let mut all: Vec<KitItem> = Vec::new();
    for item in bags.into_iter().flatten() {
        match item {
            KitItem::Cord { .. } => {}
            KitItem::Pins {
                count,
                length,
                thread,
            } => {
                let same = all.iter_mut().find_map(|packed| match packed {
                    KitItem::Pins {
                        count,
                        length: of,
                        thread: on,
                    } if *of == length && *on == thread => Some(count),
                    _ => None,
                });
                match same {
                    Some(most) => *most = count.max(*most),
                    None => all.push(item),
                }
            }
            KitItem::Tape { length, scraps } => {
                let packed = all.iter_mut().find_map(|packed| match packed {
                    KitItem::Tape { length, scraps } => Some((length, scraps)),
                    _ => None,
                });
                match packed {
                    Some((tape, all)) => {
                        *tape = Millimetres::computed(tape.get() + length.get());
                        *all += scraps;
                    }
                    None => all.push(item),
                }
            }
            KitItem::Strip { .. } | KitItem::Sheet { .. } => all.push(item),
            item if all.contains(&item) => {}
            item => all.push(item),
        }
    }
    all.sort_by_key(place_in_bag);
    all
}

/// The order in which the things of a bag are named.
const fn place_in_bag(item: &KitItem) -> u8 {
    match item {
        KitItem::Tube { .. } | KitItem::Board { .. } => 0,
        KitItem::Pins { .. } => 1,
        KitItem::HexKey(_) => 2,
        KitItem::Cord { .. } => 3,
        KitItem::Tape { .. } => 4,
        KitItem::Strip { .. } | KitItem::Sheet { .. } => 5,
        KitItem::Picks { .. } => 7,
        KitItem::Tool(super::Tool::Marker | super::Tool::Ruler) => 6,
        KitItem::Tool(_) => 8,
    }
}

/// A knot that is to sit on a stick.
///
/// ```
/// use marlinspeak::bench::{Millimetres, Stick, StickKnot};
///
/// // A ring of 40 mm, 15 cm from the end of a boathook.
/// let ring = StickKnot { width: Millimetres::parse("40mm")?, gap: Some(150.0) };
/// let stick = Stick::of(Millimetres::parse("1m")?, &[ring]);
/// assert_eq!((stick.places[0], stick.left), ([150.0, 190.0], 810.0));
/// # Ok::<(), marlinspeak::bench::LengthError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StickKnot {
    /// Its finished width.
    pub width: Millimetres,
    /// What stays bare before it, in millimetres, counted from the knot before or from the end of the
    /// stick; `None` shares what is left evenly.
    pub gap: Option<f64>,
}

/// Knots along a stick, from one end to the other, in millimetres.
#[derive(Clone, Debug, PartialEq)]
pub struct Stick {
    /// Where each knot begins and ends.
    pub places: Vec<[f64; 2]>,
    /// What stays bare behind the last one; below 0, by how much the stick is too short.
    pub left: f64,
}

impl Stick {
    /// Lays knots along a stick. Gaps that nobody gave are all alike, and so is then what stays bare
    /// behind the last knot.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::bench::{Millimetres, Stick, StickKnot};
    ///
    /// // Three rings of 40 mm on a boathook of 1 m, evenly.
    /// let width = Millimetres::new(40.0).unwrap();
    /// let ring = StickKnot { width, gap: None };
    /// let stick = Stick::of(Millimetres::new(1000.0).unwrap(), &[ring; 3]);
    /// assert_eq!(stick.places, [[220.0, 260.0], [480.0, 520.0], [740.0, 780.0]]);
    /// assert_eq!(stick.left, 220.0);
    /// ```
    pub fn of(length: Millimetres, knots: &[StickKnot]) -> Self {
        let covered: f64 = knots
            .iter()
            .map(|knot| knot.width.get() + knot.gap.unwrap_or(0.0))
            .sum();
        let rest = length.get() - covered;
        let open = knots.iter().filter(|knot| knot.gap.is_none()).count();
        let shares = f64::from(u32::try_from(open).unwrap_or(u32::MAX)) + 1.0;
        let even = if open > 0 {
            (rest / shares).max(0.0)
        } else {
            0.0
        };
        let mut at = 0.0;
        let places = knots.iter().map(|knot| {
            let from = at + knot.gap.unwrap_or(even);
            at = from + knot.width.get();
            [from, at]
        });
        let places: Vec<[f64; 2]> = places.collect();
        Self {
            left: length.get() - at,
            places,
        }
    }

    /// Whether all knots are on it, as far as a rule can be read.
    pub fn fits(&self) -> bool {
        self.left > -0.05
    }
}
