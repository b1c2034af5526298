//! What somebody orders: several pieces, as they were said.
//!
//! An order keeps what was said and not what follows from it: cords and tubes that are kept by name
//! stay names, and what the log has learnt since counts. What follows is an
//! [`OrderAnswer`](super::OrderAnswer).

use std::collections::BTreeMap;

use strum::VariantNames as _;

use super::order_error::{OrderError, OrderFault, OrderLength};
use super::{Plan, Presets, SetupError, SetupField, SetupForm};
use crate::bench::{Cord, Correction, Counts, Millimetres, TieKind, Waste};
use crate::knot::{Hand, LayingOrder, Side};

/// What can be said of a piece.
///
/// ```
/// use marlinspeak::guide::{PieceField, SetupField};
///
/// assert_eq!(PieceField::named("cord"), Some(PieceField::Setup(SetupField::Cord)));
/// assert_eq!(PieceField::named("colour"), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum PieceField {
    /// What it is called.
    Name,
    /// How many of it.
    Count,
    /// Leads.
    Leads,
    /// Bights.
    Bights,
    /// Bights nested at each rim; a plain knot when it is not said.
    Nested,
    /// The top row in which the first cord lands.
    Lands,
    /// Passes; one when they are not said.
    Passes,
    /// The weave; the one with the fewest tucks when it is not said.
    Weave,
    /// The side of the cord already there that a follower keeps to.
    Side,
    /// Which way round the tube the tyer works.
    Hand,
    /// The order in which strands and passes are laid.
    Order,
    /// What the cords are called, with commas between.
    Cords,
    /// What is said of object, cord and tube.
    Setup(SetupField),
    /// What stays bare before it on a stick.
    Gap,
}

impl PieceField {
    /// All of them, as they are asked for.
    pub const ALL: [Self; 26] = [
        Self::Name,
        Self::Count,
        Self::Leads,
        Self::Bights,
        Self::Nested,
        Self::Lands,
        Self::Passes,
        Self::Weave,
        Self::Side,
        Self::Hand,
        Self::Order,
        Self::Cords,
        Self::Setup(SetupField::Object),
        Self::Setup(SetupField::Girth),
        Self::Setup(SetupField::Cover),
        Self::Setup(SetupField::Cord),
        Self::Setup(SetupField::Firm),
        Self::Setup(SetupField::Give),
        Self::Setup(SetupField::Tube),
        Self::Setup(SetupField::Rows),
        Self::Setup(SetupField::Pin),
        Self::Setup(SetupField::Thread),
        Self::Setup(SetupField::Wall),
        Self::Setup(SetupField::RingWidth),
        Self::Setup(SetupField::TubeLength),
        Self::Gap,
    ];

    /// Its name in documents. These must stay as they are.
    pub fn name(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Count => "count",
            Self::Leads => "leads",
            Self::Bights => "bights",
            Self::Nested => "nested",
            Self::Lands => "lands",
            Self::Passes => "passes",
            Self::Weave => "weave",
            Self::Side => "side",
            Self::Hand => "hand",
            Self::Order => "order",
            Self::Cords => "cords",
            Self::Setup(SetupField::Give) => "cord_give",
            Self::Setup(SetupField::RingWidth) => "ring_width",
            Self::Setup(SetupField::TubeLength) => "tube_length",
            Self::Setup(field) => field.name(),
            Self::Gap => "gap",
        }
    }

    /// The field of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|field| field.name() == name)
    }

    /// Whether it is a whole number.
    pub const fn is_count(self) -> bool {
        matches!(
            self,
            Self::Count | Self::Leads | Self::Bights | Self::Nested | Self::Lands | Self::Passes
        )
    }
}

/// What is said of an order itself.
///
/// ```
/// use marlinspeak::guide::OrderField;
///
/// assert_eq!(<&str>::from(OrderField::Spool), "spool");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, strum::IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum OrderField {
    /// What it is called.
    Name,
    /// The stick that all sit on.
    Stick,
    /// Cord on a spool.
    Spool,
    /// Per cent of waste.
    Waste,
}

/// A field that is typed into.
///
/// ```
/// use marlinspeak::guide::{OrderEntry, OrderField, PieceField};
///
/// // How many of the second piece is another field than how long the stick is.
/// let count = OrderEntry::Piece(2, PieceField::Count);
/// assert_ne!(count, OrderEntry::Of(OrderField::Stick));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OrderEntry {
    /// One of the order.
    Of(OrderField),
    /// One of a piece.
    Piece(u16, PieceField),
}

/// A piece of an order, as it was said; a blank text says nothing.
///
/// ```
/// use marlinspeak::guide::{OrderPiece, PieceField};
///
/// let mut piece = OrderPiece::numbered(1);
/// piece.say(PieceField::Leads, " 5 ");
/// assert_eq!(piece.text(PieceField::Leads), "5");
/// piece.say(PieceField::Leads, "");
/// assert_eq!(piece.said().count(), 0);
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OrderPiece {
    /// Its number in the order, which stays when others go: ties are begun from it.
    pub number: u16,
    texts: BTreeMap<PieceField, String>,
}

/// A piece that can be tied.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
///
/// let mut order = Order { stick: "1m".to_owned(), ..Order::default() };
/// let ring = order.add();
/// for (field, text) in [
///     (PieceField::Count, "3"),
///     (PieceField::Leads, "4"),
///     (PieceField::Bights, "7"),
///     (PieceField::Gap, "20mm"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     ring.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// assert_eq!((read.pieces[0].count, read.pieces[0].gap), (3, Some(20.0)));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct PieceRead {
    /// Its number in the order.
    pub number: u16,
    /// What it is called; may be empty.
    pub name: String,
    /// Knot, cord, tube and object.
    pub plan: Plan,
    /// How many of it.
    pub count: u16,
    /// What stays bare before it on a stick, in millimetres.
    pub gap: Option<f64>,
}

impl OrderPiece {
    /// The most of a piece.
    pub const MOST: u16 = 999;

    /// A piece of which nothing is said yet.
    pub fn numbered(number: u16) -> Self {
        Self {
            number,
            ..Self::default()
        }
    }

    /// Fills in a field anew.
    pub fn say(&mut self, field: PieceField, text: impl Into<String>) {
        let text = text.into();
        if text.trim().is_empty() {
            self.texts.remove(&field);
        } else {
            self.texts.insert(field, text);
        }
    }

    /// What was said for a field; empty when nothing was.
    pub fn text(&self, field: PieceField) -> &str {
        self.texts.get(&field).map_or("", |text| text.trim())
    }

    /// Every field of which something was said.
    pub fn said(&self) -> impl Iterator<Item = (PieceField, &str)> {
        self.texts.iter().map(|(field, text)| (*field, &**text))
    }

    /// What was said of object, cord and tube.
    pub fn setup(&self) -> SetupForm {
        let said = self.said().filter_map(|(field, text)| match field {
            PieceField::Setup(field) => Some((field, text)),
            _ => None,
        });
        said.collect()
    }

    fn read(
        &self,
        presets: &Presets,
        correct: &impl Fn(&Cord, TieKind) -> Correction,
    ) -> Result<PieceRead, OrderFault> {
        let count = match self.text(PieceField::Count) {
            "" => 1,
            given => given
                .parse()
                .ok()
                .filter(|count| (1..=Self::MOST).contains(count))
                .ok_or_else(|| OrderFault::Count {
                    given: given.to_owned(),
                })?,
        };
        let plan = self.plan()?;
        let counts = Counts::from(plan.laying());
        let setup = self
            .setup()
            .setup(presets, counts, |cord| correct(cord, counts.into()))?
            .ok_or(SetupError::Missing(SetupField::Cord))?;
        let plan = plan.with_setup(Some(setup));
        if let Err(error) = plan.rig() {
            return Err(error.clone().into());
        }
        Ok(PieceRead {
            number: self.number,
            name: self.text(PieceField::Name).to_owned(),
            plan,
            count,
            gap: gap(self.text(PieceField::Gap))?,
        })
    }

    /// The knot, without cord and tube.
    fn plan(&self) -> Result<Plan, OrderFault> {
        let text = |field| self.text(field);
        let passes = Some(text(PieceField::Passes)).filter(|passes| !passes.is_empty());
        let counts = [
            text(PieceField::Leads),
            text(PieceField::Bights),
            text(PieceField::Nested),
            text(PieceField::Lands),
        ];
        let weave = text(PieceField::Weave);
        let plan = Plan::read_nested(counts, passes.unwrap_or("1"), weave)?;
        let side: Option<Side> = self.choice(PieceField::Side, Side::VARIANTS)?;
        let hand: Option<Hand> = self.choice(PieceField::Hand, Hand::VARIANTS)?;
        let order: Option<LayingOrder> = self.choice(PieceField::Order, LayingOrder::VARIANTS)?;
        let usual = LayingOrder::usual(plan.knot());
        let plan = plan
            .with_side(side.unwrap_or_default())
            .with_hand(hand.unwrap_or_default())
            .with_order(order.unwrap_or(usual));
        // The order of the strands has its say in how many tucks there are.
        let plan = if weave.is_empty() {
            plan.with_fewest_tucks()
        } else {
            plan
        };
        let names: Vec<String> = match text(PieceField::Cords) {
            "" => Vec::new(),
            given => given
                .split(',')
                .map(|name| name.trim().to_owned())
                .collect(),
        };
        if names.iter().any(String::is_empty) {
            return Err(OrderFault::CordNames {
                given: text(PieceField::Cords).to_owned(),
            });
        }
        Ok(plan.with_cords(names)?)
    }

    fn choice<T: std::str::FromStr>(
        &self,
        field: PieceField,
        allowed: &'static [&'static str],
    ) -> Result<Option<T>, OrderFault> {
        let given = Some(self.text(field)).filter(|given| !given.is_empty());
        let read = |given: &str| {
            given.parse().map_err(|_| OrderFault::Choice {
                field,
                given: given.to_owned(),
                allowed,
            })
        };
        given.map(read).transpose()
    }
}

/// A length of an order.
fn length(of: OrderLength, text: &str) -> Result<Option<Millimetres>, OrderFault> {
    let said = Some(text.trim()).filter(|text| !text.is_empty());
    let read = said.map(Millimetres::parse).transpose();
    read.map_err(|error| OrderFault::Length { of, error })
}

/// What stays bare before a knot: nothing at all is a gap too.
fn gap(text: &str) -> Result<Option<f64>, OrderFault> {
    if text.trim() == "0" {
        return Ok(Some(0.0));
    }
    Ok(length(OrderLength::Gap, text)?.map(Millimetres::get))
}

/// An order, as it was said.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
///
/// // Ten tiller grips for the club.
/// let mut order = Order::default();
/// let grip = order.add();
/// for (field, text) in [
///     (PieceField::Count, "10"),
///     (PieceField::Leads, "5"),
///     (PieceField::Bights, "7"),
///     (PieceField::Passes, "2"),
///     (PieceField::Setup(SetupField::Cord), "4mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     grip.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// assert_eq!((read.pieces[0].count, read.pieces[0].plan.laying().legs()), (10, 28));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Order {
    /// What the tyer calls it; may be empty.
    pub name: String,
    /// What the tyer wrote about it; may be empty.
    pub note: String,
    /// Length of the stick that all pieces sit on; blank when each sits on something of its own.
    pub stick: String,
    /// Per cent of waste; blank for what is usual.
    pub waste: String,
    /// Cord on a spool; blank when the cord is not bought on spools.
    pub spool: String,
    /// The pieces.
    pub pieces: Vec<OrderPiece>,
}

/// An order that can be tied.
///
/// ```
/// use marlinspeak::bench::Correction;
/// use marlinspeak::guide::{Order, PieceField, Presets, SetupField};
///
/// let mut order = Order { stick: "1m".to_owned(), ..Order::default() };
/// let ring = order.add();
/// for (field, text) in [
///     (PieceField::Count, "3"),
///     (PieceField::Leads, "4"),
///     (PieceField::Bights, "7"),
///     (PieceField::Gap, "20mm"),
///     (PieceField::Setup(SetupField::Cord), "3mm"),
///     (PieceField::Setup(SetupField::Tube), "45mm"),
/// ] {
///     ring.say(field, text);
/// }
/// let read = order.read(&Presets::default(), |_, _| Correction::default())?;
/// assert_eq!(read.stick.map(|stick| stick.get()), Some(1000.0));
/// # Ok::<(), marlinspeak::guide::OrderError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct OrderRead {
    /// The pieces, at least one.
    pub pieces: Vec<PieceRead>,
    /// The stick that they sit on.
    pub stick: Option<Millimetres>,
    /// What is wasted.
    pub waste: Waste,
    /// Cord on a spool.
    pub spool: Option<Millimetres>,
}

impl Order {
    /// The most pieces of an order.
    pub const MOST_PIECES: usize = 99;

    /// Adds a piece of which nothing is said yet.
    pub fn add(&mut self) -> &mut OrderPiece {
        let last = self.pieces.iter().map(|piece| piece.number).max();
        let number = last.unwrap_or(0).saturating_add(1);
        self.pieces.push(OrderPiece::numbered(number));
        let at = self.pieces.len() - 1;
        &mut self.pieces[at]
    }

    /// How many knots it has in all, as far as the counts can be read.
    pub fn count(&self) -> u32 {
        let counts = self.pieces.iter().map(|piece| {
            let count = piece.text(PieceField::Count);
            let count = if count.is_empty() { "1" } else { count };
            count.parse::<u16>().map_or(0, u32::from)
        });
        counts.sum()
    }

    /// The piece of this number.
    pub fn piece_mut(&mut self, number: u16) -> Option<&mut OrderPiece> {
        self.pieces.iter_mut().find(|piece| piece.number == number)
    }

    /// Whether a cord or a tube may be meant that is kept by name.
    pub fn may_name_a_preset(&self) -> bool {
        let mut setups = self.pieces.iter().map(OrderPiece::setup);
        setups.any(|setup| setup.may_name_a_preset())
    }

    /// Everything that was said, understood. `correct` tells what the tyer's log says of a cord in
    /// ties of a kind.
    ///
    /// # Errors
    /// An [`OrderError`]: the first thing that cannot be used, and in which piece.
    pub fn read(
        &self,
        presets: &Presets,
        correct: impl Fn(&Cord, TieKind) -> Correction,
    ) -> Result<OrderRead, OrderError> {
        let of_all = |what| OrderError { piece: None, what };
        if self.pieces.is_empty() {
            return Err(of_all(OrderFault::NoPieces));
        }
        if self.pieces.len() > Self::MOST_PIECES {
            return Err(of_all(OrderFault::TooManyPieces {
                given: self.pieces.len(),
            }));
        }
        let waste = match self.waste.trim() {
            "" => Waste::default(),
            given => Waste::parse(given).map_err(|error| of_all(error.into()))?,
        };
        let stick = length(OrderLength::Stick, &self.stick).map_err(of_all)?;
        let spool = length(OrderLength::Spool, &self.spool).map_err(of_all)?;
        let pieces = self.pieces.iter().enumerate().map(|(index, piece)| {
            piece.read(presets, &correct).map_err(|what| OrderError {
                piece: Some((index + 1, piece.text(PieceField::Name).to_owned())),
                what,
            })
        });
        Ok(OrderRead {
            pieces: pieces.collect::<Result<_, _>>()?,
            stick,
            waste,
            spool,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use strum::VariantArray as _;

    #[test]
    fn every_field_of_a_setup_but_the_cord_at_hand_can_be_said_of_a_piece() {
        for field in SetupField::VARIANTS {
            let is_asked = PieceField::ALL.contains(&PieceField::Setup(*field));
            assert_eq!(is_asked, *field != SetupField::Have, "{field:?}");
        }
        for field in PieceField::ALL {
            assert_eq!(PieceField::named(field.name()), Some(field));
        }
    }

    #[test]
    fn a_number_is_not_given_twice_after_a_piece_has_gone() {
        let mut order = Order::default();
        order.add();
        order.add();
        order.pieces.remove(0);
        assert_eq!(order.add().number, 3);
    }
}
