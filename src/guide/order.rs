//! What somebody orders: several pieces, as they were said.
//!
//! An order keeps what was said and not what follows from it: cords and tubes that are kept by name
//! stay names, and what the log has learnt since counts. What follows is an
//! [`OrderAnswer`](super::OrderAnswer).

use super::Presets;
use super::order_error::{OrderError, OrderFault, OrderLength};
use super::order_field::PieceField;
use super::order_piece::{OrderPiece, PieceRead, length};
use crate::bench::{Cord, Correction, Millimetres, TieKind, Waste};

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
    /// The highest number of a piece that has gone, 0 while none has: ties may have been begun from
    /// it, and a new piece is none of theirs.
    pub highest_gone: u16,
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
        let number = self.free_number();
        self.pieces.push(OrderPiece::numbered(number));
        let at = self.pieces.len() - 1;
        &mut self.pieces[at]
    }

    /// Puts a piece back that had gone, under another number when its own was given again.
    pub fn put_back(&mut self, mut piece: OrderPiece) {
        if self.has(piece.number) {
            piece.number = self.free_number();
        }
        self.pieces.push(piece);
    }

    /// The numbers of pieces that were there before and have gone are not given again.
    pub fn remember_gone(&mut self, before: &Self) {
        let numbers = before.pieces.iter().map(|piece| piece.number);
        let gone = numbers.filter(|number| !self.has(*number)).max();
        let highest = gone.unwrap_or(0).max(before.highest_gone);
        self.highest_gone = self.highest_gone.max(highest);
    }

    fn has(&self, number: u16) -> bool {
        self.pieces.iter().any(|piece| piece.number == number)
    }

    /// One above every number that was ever given; where a document has used them up, one that nobody
    /// has now.
    fn free_number(&self) -> u16 {
        let present = self.pieces.iter().map(|piece| piece.number).max();
        let highest = present.unwrap_or(0).max(self.highest_gone);
        let above = highest.checked_add(1);
        let unused = || (1..=u16::MAX).find(|number| !self.has(*number));
        // There are more numbers than pieces that any document may have.
        above.or_else(unused).unwrap_or(u16::MAX)
    }

    /// Whether nothing at all was said of it.
    pub fn is_blank(&self) -> bool {
        let said = [
            &self.name,
            &self.note,
            &self.stick,
            &self.waste,
            &self.spool,
        ];
        self.pieces.is_empty() && said.into_iter().all(|text| text.trim().is_empty())
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
        let pieces = self.pieces.iter().map(|piece| {
            let read = piece.read(presets, &correct).and_then(|read| {
                let is_off_the_stick = stick.is_some() && !read.sits_on_a_stick();
                if is_off_the_stick {
                    Err(OrderFault::NotOnStick)
                } else {
                    Ok(read)
                }
            });
            read.map_err(|what| OrderError {
                piece: Some((piece.number, piece.text(PieceField::Name).to_owned())),
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

    #[test]
    fn a_number_is_not_given_twice_after_a_piece_has_gone() {
        let mut order = Order::default();
        order.add();
        order.add();
        order.pieces.remove(0);
        assert_eq!(order.add().number, 3);
    }

    #[test]
    fn the_number_of_the_last_piece_is_not_given_twice_either() {
        let mut order = Order::default();
        order.add();
        order.add();
        let before = order.clone();
        order.pieces.pop();
        order.remember_gone(&before);
        assert_eq!(order.add().number, 3);
    }

    #[test]
    fn a_piece_that_comes_back_shares_its_number_with_no_other() {
        let mut order = Order::default();
        order.add();
        order.put_back(OrderPiece::numbered(1));
        order.put_back(OrderPiece::numbered(u16::MAX));
        order.add();
        let numbers: Vec<u16> = order.pieces.iter().map(|piece| piece.number).collect();
        assert_eq!(numbers, [1, 2, u16::MAX, 3]);
    }
}
