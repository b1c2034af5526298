//! A card as full as they come.

use marlinspeak::guide::Plan;
use marlinspeak::picture::sheet::{Card, CardSection, LegLine, Paper, SheetPage};
use marlinspeak::picture::{Moment, Scene, View};

/// A full page: a doubled knot of 5 leads and 6 bights with every line of its card.
pub fn card() -> Card {
    let leg = |number: usize| LegLine {
        number: number.to_string(),
        way: "Bottom 4 up to top 6".to_owned(),
        crossings: (0..4)
            .map(|nth| (nth % 2 == 0, "OVER 1".to_owned()))
            .collect(),
    };
    Card {
        title: "5 lead 6 bight, 2 passes".to_owned(),
        facts: vec![
            "A sentence as long as those on a card, of about a hundred letters.".to_owned();
            5
        ],
        heads: ["Leg", "From pin to pin", "Crossings"].map(str::to_owned),
        sections: vec![CardSection {
            head: "Lead pass: leave a tail at bottom pin 1".to_owned(),
            legs: (1..=15).map(leg).collect(),
        }],
        after_head: "Lift and finish".to_owned(),
        after: vec!["What is done once the last leg is laid, in a line.".to_owned(); 8],
        ends_head: "The ends".to_owned(),
        ends: Vec::new(),
        cautions_head: "Mind".to_owned(),
        cautions: vec![
            "A caution of a line, such as those that stand on every card.".to_owned();
            6
        ],
    }
}

/// Its pages on A4.
pub fn pages(card: &Card) -> Vec<SheetPage> {
    let plan = Plan::read("5", "6", "2", "1").expect("a knot");
    let scene = |frame| {
        Scene::build(
            View::RolledOut,
            plan.laying(),
            plan.side,
            plan.hand,
            &Moment::Finished,
            frame,
        )
    };
    card.pages(Paper::A4, scene, |page, pages| {
        format!("Page {page} of {pages}")
    })
}
