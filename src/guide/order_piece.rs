//! A piece of an order: as it was said, and as it can be tied.

use std::collections::BTreeMap;

use strum::VariantNames as _;

use super::order_error::{OrderFault, OrderLength};
use super::order_field::PieceField;
use super::{Plan, Presets, Setup, SetupError, SetupField, SetupForm};
use crate::bench::{
    Cord, Correction, Counts, Ground, LONGEST_SPOOL, LengthError, Millimetres, TieKind,
};
use crate::knot::{Hand, LayingOrder, Side};

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

impl PieceRead {
    /// Whether it goes round a thing that may be a part of a stick: neither a mat nor a ball does.
    pub(super) fn sits_on_a_stick(&self) -> bool {
        let ground = self.plan.setup().map(Setup::ground);
        !matches!(ground, Some(Ground::Flat { .. } | Ground::Ball(_)))
    }
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

    pub(super) fn read(
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
pub(super) fn length(of: OrderLength, text: &str) -> Result<Option<Millimetres>, OrderFault> {
    let said = Some(text.trim()).filter(|text| !text.is_empty());
    let most = match of {
        OrderLength::Spool => LONGEST_SPOOL,
        OrderLength::Gap | OrderLength::Stick => Millimetres::MOST,
    };
    let read = said
        .map(|text| Millimetres::parse_up_to(text, most))
        .transpose();
    read.map_err(|error| OrderFault::Length { of, error })
}

/// What stays bare before a knot: nothing at all is a gap too.
fn gap(text: &str) -> Result<Option<f64>, OrderFault> {
    let is_negative = text.trim().starts_with('-');
    match length(OrderLength::Gap, text) {
        Err(OrderFault::Length {
            error: LengthError::NotPositive { .. },
            ..
        }) if !is_negative => Ok(Some(0.0)),
        read => Ok(read?.map(Millimetres::get)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_of_nothing_is_one_in_any_spelling() {
        for nothing in ["0", "0mm", " 0 mm ", "0.0", "0,0 cm"] {
            assert_eq!(gap(nothing).unwrap(), Some(0.0), "{nothing}");
        }
        assert_eq!(gap("").unwrap(), None);
        assert_eq!(gap("20mm").unwrap(), Some(20.0));
        assert!(gap("-1mm").is_err());
    }
}
