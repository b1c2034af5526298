//! An order on paper: its knots, what to buy, what to pack, where on the stick.

use crate::guide::{Order, OrderAnswer};
use crate::picture::sheet::{ListPart, ListSheet, Paper, Sheet};
use crate::words::{Sentence, Words, shown_name};

/// The pages of an order and what it comes to: what is bought, packed and tied with a box to tick.
pub fn order_sheet(
    order: &Order,
    answer: &OrderAnswer,
    paper: Paper,
    words: &Words,
) -> impl Sheet + use<> {
    let line = |sentence: Sentence| sentence.shown().to_owned();
    let plain = |text: String| (false, text);
    let ticked = |text: String| (true, text);
    let mut first = Vec::new();
    if !order.note.trim().is_empty() {
        first.push(plain(shown_name(&order.note)));
    }
    first.extend(
        answer
            .pieces
            .iter()
            .map(|one| ticked(line(words.order_piece(one)))),
    );
    first.push(plain(line(words.order_time(answer))));
    let cords = answer.to_buy.iter().flat_map(|cord| {
        let lines = words.order_cord(cord, answer.spool).into_iter();
        lines.enumerate().map(|(nth, told)| (nth == 0, line(told)))
    });
    let bag = answer.bag.iter().map(|item| ticked(words.kit_line(item)));
    let mut parts = vec![
        ListPart {
            head: words.plainly("order-pieces", &[]),
            lines: first,
        },
        ListPart {
            head: words.plainly("order-to-buy", &[]),
            lines: cords.collect(),
        },
        ListPart {
            head: words.plainly("order-bag", &[]),
            lines: bag.collect(),
        },
    ];
    let mut places = words.order_stick(answer).into_iter();
    if let Some(head) = places.next() {
        parts.push(ListPart {
            head: line(head),
            lines: places.map(|place| plain(line(place))).collect(),
        });
    }
    parts.push(ListPart {
        head: words.plainly("card-cautions", &[]),
        lines: words.card_cautions().into_iter().map(plain).collect(),
    });
    let list = ListSheet {
        title: line(words.order_heading(&order.name, answer.count())),
        parts,
    };
    let words = words.clone();
    list.on(paper, move |page, pages| words.sheet_page(page, pages))
}
