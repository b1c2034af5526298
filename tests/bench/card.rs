//! A card as full as they come.

use marlinspeak::guide::Plan;
use std::ops::ControlFlow;

use marlinspeak::picture::sheet::{
    Card, CardEnd, CardParts, CardRow, CardSheet, LegLine, Paper, Sheet, SheetPage,
};
use marlinspeak::picture::{Moment, Scene, View, Viewport};

/// The legs of a doubled knot of 5 leads and 6 bights.
pub struct Legs(Plan);

impl CardParts for Legs {
    fn rows(&self) -> Box<dyn Iterator<Item = CardRow> + '_> {
        let head = "Lead pass: leave a tail at bottom pin 1".to_owned();
        let leg = |number: usize| {
            CardRow::Leg(LegLine {
                number: number.to_string(),
                way: "Bottom 4 up to top 6".to_owned(),
                crossings: (0..4)
                    .map(|nth| (nth % 2 == 0, "OVER 1".to_owned()))
                    .collect(),
            })
        };
        Box::new(std::iter::once(CardRow::Pass(head)).chain((1..=15).map(leg)))
    }

    fn ends(&self) -> Box<dyn Iterator<Item = CardEnd> + '_> {
        Box::new(std::iter::empty())
    }

    fn scene(&self, frame: Viewport) -> Scene {
        let plan = &self.0;
        Scene::build(
            View::RolledOut,
            plan.laying(),
            plan.side,
            plan.hand,
            &Moment::Finished,
            frame,
        )
    }

    fn foot(&self, page: usize, pages: usize) -> String {
        format!("Page {page} of {pages}")
    }
}

/// A full page on A4: a doubled knot of 5 leads and 6 bights with every line of its card.
pub fn card() -> CardSheet<Legs> {
    let card = Card {
        title: "5 lead 6 bight, 2 passes".to_owned(),
        facts: vec![
            "A sentence as long as those on a card, of about a hundred letters.".to_owned();
            5
        ],
        heads: ["Leg", "From pin to pin", "Crossings"].map(str::to_owned),
        after_head: "Lift and finish".to_owned(),
        after: vec!["What is done once the last leg is laid, in a line.".to_owned(); 8],
        ends_head: "The ends".to_owned(),
        cautions_head: "Mind".to_owned(),
        cautions: vec![
            "A caution of a line, such as those that stand on every card.".to_owned();
            6
        ],
    };
    let plan = Plan::read("5", "6", "2", "1").expect("a knot");
    CardSheet::new(card, Legs(plan), Paper::A4)
}

/// Its first page.
pub fn page(card: &CardSheet<Legs>) -> SheetPage {
    let mut first = None;
    let _ = card.lay_out(&mut |page| {
        first = Some(page);
        ControlFlow::Break(())
    });
    first.expect("a page")
}
