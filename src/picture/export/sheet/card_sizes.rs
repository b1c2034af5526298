//! How large the things on a card are.

/// How large everything is, in millimetres.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sizes {
    /// Room left on every side.
    pub margin: f32,
    /// Width of the column of numbers.
    pub numbers: f32,
    /// Size of running text, and from one line to the next.
    pub text: f32,
    pub step: f32,
    /// Size of the text of cautions, and from one line to the next.
    pub small: f32,
    pub small_step: f32,
    /// Height and width of the picture of the knot.
    pub picture: [f32; 2],
    /// Height and width of the picture of an end.
    pub end: [f32; 2],
    /// Whether two ends stand side by side, each below its words, and the cautions in one paragraph.
    pub is_close: bool,
}

/// Sizes that can be read at arm’s length.
pub(super) const REGULAR: Sizes = Sizes {
    margin: 15.0,
    numbers: 14.0,
    text: 3.7,
    step: 5.2,
    small: 3.2,
    small_step: 4.4,
    picture: [48.0, 60.0],
    end: [38.0, 78.0],
    is_close: false,
};

/// Sizes for where they save a page: text of 9 points, as in a book.
pub(super) const CLOSE: Sizes = Sizes {
    margin: 13.0,
    numbers: 14.0,
    text: 3.15,
    step: 4.1,
    small: 2.9,
    small_step: 3.6,
    picture: [42.0, 52.0],
    end: [26.0, 70.0],
    is_close: true,
};

/// Sizes for a class: running text of 16 points, which most readers of large print can do with. *From
/// memory, no source.*
pub(super) const LARGE: Sizes = Sizes {
    margin: 15.0,
    numbers: 23.0,
    text: 5.7,
    step: 7.8,
    small: 4.6,
    small_step: 6.2,
    picture: [60.0, 74.0],
    end: [44.0, 90.0],
    is_close: false,
};

#[cfg(test)]
mod tests {
    use std::ops::ControlFlow;

    use super::super::{
        Card, CardEnd, CardParts, CardRow, CardSheet, LegLine, Paper, Sheet, SheetPage,
    };
    use crate::knot::{Hand, Knot, Laying, LayingOrder, Side, Weave};
    use crate::picture::{Moment, Scene, View, Viewport};

    /// A table of one pass, of a knot without ends.
    #[derive(Clone)]
    struct OnePass {
        legs: Vec<LegLine>,
        laying: Laying,
    }

    impl OnePass {
        fn of(legs: Vec<LegLine>) -> Self {
            let knot = Knot::new(3, 5, Weave::default()).unwrap();
            let laying = Laying::new(knot, 1, LayingOrder::default()).unwrap();
            Self { legs, laying }
        }
    }

    impl CardParts for OnePass {
        fn rows(&self) -> Box<dyn Iterator<Item = CardRow> + '_> {
            let legs = self.legs.iter().cloned().map(CardRow::Leg);
            Box::new(
                [CardRow::Pass("lead pass".to_owned())]
                    .into_iter()
                    .chain(legs),
            )
        }

        fn ends(&self) -> Box<dyn Iterator<Item = CardEnd> + '_> {
            Box::new(std::iter::empty())
        }

        fn scene(&self, frame: Viewport) -> Scene {
            let (side, hand) = (Side::default(), Hand::default());
            let view = View::RoundTheTube;
            Scene::build(view, &self.laying, side, hand, &Moment::Finished, frame)
        }

        fn foot(&self, page: usize, pages: usize) -> String {
            format!("{page} of {pages}")
        }
    }

    fn pages(sheet: &impl Sheet) -> Vec<SheetPage> {
        let mut pages = Vec::new();
        let laid_out = sheet.lay_out(&mut |page| {
            pages.push(page);
            ControlFlow::Continue(())
        });
        assert!(laid_out.is_continue());
        assert_eq!(pages.len(), sheet.count());
        pages
    }

    /// Everything there is to tell of a knot on its tube runs into nothing else, however much it is.
    #[test]
    fn no_line_of_a_card_runs_into_another() {
        let leg = |number: u16| LegLine {
            number: number.to_string(),
            way: "Bottom 1 up to top 3".to_owned(),
            crossings: vec![(true, "OVER 1".to_owned())],
        };
        for facts in [2, 7, 12, 25] {
            let fact =
                "Each top pin stands half a step to the right of the bottom pin of its number";
            let card = Card {
                title: "5 lead 7 bight".to_owned(),
                facts: vec![fact.to_owned(); facts],
                heads: ["leg", "way", "crossings in the order in which they are met"]
                    .map(str::to_owned),
                after_head: "when all is laid".to_owned(),
                after: vec![fact.to_owned(); 3],
                cautions_head: "with care".to_owned(),
                cautions: vec![fact.to_owned(); 6],
                ..Card::default()
            };
            let parts = OnePass::of((1..=14).map(leg).collect());
            let large = pages(&CardSheet::large(card.clone(), parts.clone(), Paper::A4));
            let told = large.iter().flat_map(|page| &page.lines);
            let told = told.filter(|line| line.text.starts_with("Each top pin"));
            assert_eq!(told.count(), facts + 3 + 6, "something is left out");
            let small = pages(&CardSheet::new(card, parts, Paper::Letter));
            for pages in [large, small] {
                for page in pages {
                    let size = page.lines.iter().map(|line| line.size);
                    let size = size.fold(f32::INFINITY, f32::min);
                    let mut heights: Vec<f32> = page.lines.iter().map(|line| line.from.1).collect();
                    heights.sort_by(f32::total_cmp);
                    heights.dedup();
                    for pair in heights.windows(2) {
                        assert!(pair[1] - pair[0] > 0.75 * size, "{facts} facts: {pair:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn large_type_is_larger_in_every_line() {
        let leg = LegLine {
            number: "1".to_owned(),
            way: "1 to 2".to_owned(),
            crossings: vec![(true, "over".to_owned())],
        };
        let card = Card {
            title: "3 lead 5 bight".to_owned(),
            facts: vec!["a fact".to_owned()],
            heads: ["leg", "way", "crossings"].map(str::to_owned),
            cautions_head: "with care".to_owned(),
            cautions: vec!["a caution".to_owned()],
            ..Card::default()
        };
        let smallest = |pages: Vec<SheetPage>| {
            let lines = pages.iter().flat_map(|page| &page.lines);
            lines.map(|line| line.size).fold(f32::INFINITY, f32::min)
        };
        let parts = OnePass::of(vec![leg]);
        let large = CardSheet::large(card.clone(), parts.clone(), Paper::A4);
        let small = CardSheet::new(card, parts, Paper::A4);
        // 13 points, and 9 on the card for the hand; a point is 0.353 mm.
        assert!(smallest(pages(&large)) > 13.0 * 0.353);
        assert!(smallest(pages(&small)) < 10.0 * 0.353);
    }
}
