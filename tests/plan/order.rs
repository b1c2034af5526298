//! `marlinspeak order`: what it comes to, against the sums of `rig` and of this test's own; the one
//! sentence for each thing that can be wrong; there and back by JSON.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use tempfile::TempDir;

use crate::{marlinspeak_at, printed_at, refused_at};

/// A file with an order.
fn file(home: &Path, order: &Value) -> PathBuf {
    let file = home.join("order.json");
    fs::write(&file, order.to_string()).unwrap();
    file
}

fn plan_with(home: &Path, order: &Value, more: &[&str]) -> Value {
    let file = file(home, order);
    let args = [&["order", "plan", file.to_str().unwrap(), "--json"], more].concat();
    serde_json::from_str(&printed_at(home, &args)).unwrap()
}

fn plan(order: &Value) -> Value {
    plan_with(TempDir::new().unwrap().path(), order, &[])
}

/// The sentence that refuses an order.
fn refusal(order: &Value) -> String {
    let home = TempDir::new().unwrap();
    let file = file(home.path(), order);
    let (code, sentence) = refused_at(home.path(), &["order", "plan", file.to_str().unwrap()]);
    assert_eq!(code, 2, "{order}");
    sentence
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value}"))
}

/// A tiller grip of the loft.
fn grip(count: u16, cord: &str) -> Value {
    json!({
        "name": "tiller grip", "count": count, "leads": 5, "bights": 7, "passes": 2,
        "object": "30mm", "cord": cord, "tube": "45mm", "rows": "14,20",
    })
}

/// A boathook ring of the loft.
fn ring(count: u16, cord: &str) -> Value {
    json!({
        "name": "boathook ring", "count": count, "leads": 4, "bights": 7,
        "object": "30mm", "cord": cord, "tube": "45mm", "rows": "14,20",
    })
}

/// A bell rope of the loft, on a strip of paper.
fn rope(count: u16, cord: &str) -> Value {
    json!({
        "name": "bell rope", "count": count, "leads": 3, "bights": 5, "passes": 3,
        "cord": cord, "tube": "45mm",
    })
}

fn orders() -> Vec<Value> {
    let mut orders = Vec::new();
    for (waste, percent) in [(json!(null), 5.0), (json!(0), 0.0), (json!("12,5 %"), 12.5)] {
        for counts in [[1, 1, 1], [10, 3, 2], [7, 40, 13]] {
            for cords in [
                ["3mm", "3mm", "3mm"],
                ["3mm", "4mm", "3mm"],
                ["2mm", "3mm", "4mm"],
            ] {
                let pieces = [
                    grip(counts[0], cords[0]),
                    ring(counts[1], cords[1]),
                    rope(counts[2], cords[2]),
                ];
                orders.push(json!({
                    "order": { "name": "the club", "waste": waste, "pieces": pieces },
                    "percent": percent,
                }));
            }
        }
    }
    orders
}

/// What `rig` says of a piece by itself.
fn rigged(home: &Path, piece: &Value) -> Value {
    let mut args = vec!["rig".to_owned(), "--json".to_owned()];
    for field in [
        "leads", "bights", "passes", "object", "cord", "tube", "rows",
    ] {
        match &piece[field] {
            Value::Null => {}
            Value::String(text) => args.extend([format!("--{field}"), text.clone()]),
            other => args.extend([format!("--{field}"), other.to_string()]),
        }
    }
    let args: Vec<&str> = args.iter().map(String::as_str).collect();
    serde_json::from_str(&printed_at(home, &args)).unwrap()
}

#[test]
fn the_list_of_what_to_buy_is_the_sum_of_the_pieces_rounded_up_once() {
    let home = TempDir::new().unwrap();
    for one in orders() {
        let order = &one["order"];
        let prices = ["--price-metre", "0.5", "--price-hour", "20"];
        let answer = plan_with(home.path(), order, &prices);
        let pieces = order["pieces"].as_array().unwrap();
        let alone: Vec<Value> = pieces
            .iter()
            .map(|piece| rigged(home.path(), piece))
            .collect();
        let mut metres = 0.0;
        let mut cords: Vec<&str> = pieces
            .iter()
            .map(|piece| piece["cord"].as_str().unwrap())
            .collect();
        cords.sort_unstable();
        cords.dedup();
        let to_buy = answer["to_buy"].as_array().unwrap();
        assert_eq!(to_buy.len(), cords.len(), "a cord once: {answer}");
        for cord in cords {
            let diameter: f64 = cord.trim_end_matches("mm").parse().unwrap();
            let bought = to_buy
                .iter()
                .find(|bought| (number(&bought["diameter_mm"]) - diameter).abs() < 1e-9)
                .unwrap();
            let of_cord = pieces
                .iter()
                .zip(&alone)
                .filter(|(piece, _)| piece["cord"] == cord);
            let bare: f64 = of_cord
                .map(|(piece, rig)| number(&piece["count"]) * number(&rig["cord_mm"]))
                .sum();
            let knots = answer["pieces"].as_array().unwrap().len();
            // What is printed of one piece is rounded to a tenth of a millimetre.
            let most: f64 = pieces.iter().map(|piece| number(&piece["count"])).sum();
            assert!(
                (number(&bought["cord_mm"]) - bare).abs() <= 0.1 * most,
                "{knots}"
            );
            let with_waste = number(&bought["cord_mm"]) * (1.0 + number(&one["percent"]) / 100.0);
            let in_metres = (with_waste / 1000.0).ceil();
            assert!((number(&bought["metres"]) - in_metres).abs() < 1e-9);
            metres += number(&bought["metres"]);
            let cut: f64 = bought["cuts"]
                .as_array()
                .unwrap()
                .iter()
                .map(|cut| number(&cut["pieces"]) * number(&cut["length_mm"]))
                .sum();
            assert!((cut - number(&bought["cord_mm"])).abs() <= 0.1 * most);
        }
        let minutes: f64 = pieces
            .iter()
            .zip(&alone)
            .map(|(piece, rig)| number(&piece["count"]) * number(&rig["minutes"]))
            .sum();
        assert!(
            (number(&answer["minutes"]) - minutes).abs() < 5.0,
            "{answer}"
        );
        let cost = 0.5 * metres + 20.0 * number(&answer["minutes"]) / 60.0;
        assert!((number(&answer["cost"]) - cost).abs() < 0.05, "{answer}");
    }
}

#[test]
fn every_piece_comes_whole_from_a_spool() {
    for (count, spool, waste) in [
        (1, 20, 0),
        (10, 20, 0),
        (10, 9, 0),
        (33, 50, 0),
        (10, 20, 90),
    ] {
        let spool_text = format!("{spool}m");
        let order = json!({ "spool": spool_text, "waste": waste, "pieces": [grip(count, "3mm")] });
        let answer = plan(&order);
        let cord = &answer["to_buy"][0];
        let length = number(&cord["cuts"][0]["length_mm"]);
        let on_a_spool = (f64::from(spool) * 1000.0 / length).floor();
        let whole = (f64::from(count) / on_a_spool).ceil();
        let by_length = number(&cord["cord_mm"]) * (1.0 + f64::from(waste) / 100.0);
        let by_length = (by_length / 1000.0 / f64::from(spool)).ceil();
        let spools = whole.max(by_length);
        assert!((number(&cord["spools"]) - spools).abs() < 1e-9, "{order}");
    }
    // Two kinds of pieces fill up one another's spools.
    let pieces = [grip(2, "3mm"), ring(2, "3mm")];
    let cord = plan(&json!({ "pieces": pieces }))["to_buy"][0].clone();
    let length = |nth: usize| number(&cord["cuts"][nth]["length_mm"]);
    assert!(length(0) > length(1), "the longest stands first: {cord}");
    let spool = length(0) + length(1) + 1.0;
    let order = json!({ "spool": spool, "waste": 0, "pieces": pieces });
    assert_eq!(plan(&order)["to_buy"][0]["spools"], 2);
    // A hair less, and each long piece leaves too little for a short one.
    let order = json!({ "spool": spool - 2.0, "waste": 0, "pieces": pieces });
    assert_eq!(plan(&order)["to_buy"][0]["spools"], 3);
}

#[test]
fn a_spool_that_is_too_short_is_told_and_its_number_is_not() {
    let order = json!({ "spool": "1m", "pieces": [grip(2, "3mm")] });
    assert_eq!(plan(&order)["to_buy"][0]["spools"], Value::Null);
    let home = TempDir::new().unwrap();
    let file = file(home.path(), &order);
    let text = printed_at(home.path(), &["order", "plan", file.to_str().unwrap()]);
    assert!(
        text.contains("A spool of 1 m is too short for a piece of "),
        "{text}"
    );
}

#[test]
fn one_bag_serves_all_of_it() {
    let order = json!({ "pieces": [grip(10, "3mm"), ring(3, "4mm"), rope(1, "3mm")] });
    let bag = plan(&order)["bag"].clone();
    let things: Vec<&str> = bag
        .as_array()
        .unwrap()
        .iter()
        .map(|thing| thing["what"].as_str().unwrap())
        .collect();
    for (what, times) in [
        ("tube", 1),
        ("strip", 1),
        ("tape", 1),
        ("picks", 1),
        ("cord", 0),
    ] {
        let found = things.iter().filter(|thing| **thing == what).count();
        assert_eq!(found, times, "{what} in {bag}");
    }
    // Of pins the most that one knot takes: they are set again for the next.
    let pins = bag
        .as_array()
        .unwrap()
        .iter()
        .filter(|thing| thing["what"] == "pins")
        .map(|thing| number(&thing["count"]))
        .fold(0.0, f64::max);
    assert!((pins - 14.0).abs() < 1e-9, "{bag}");
}

#[test]
fn knots_lie_along_a_stick_with_the_gaps_that_were_given() {
    let piece = |gap: Value| {
        let mut piece = ring(1, "3mm");
        piece["gap"] = gap;
        piece
    };
    let stick = |length: &str, gaps: [Value; 3]| {
        let order = json!({ "stick": length, "pieces": gaps.map(piece) });
        let answer = plan(&order);
        let widths: Vec<f64> = answer["pieces"]
            .as_array()
            .unwrap()
            .iter()
            .map(|piece| number(&piece["width_mm"]))
            .collect();
        (answer["stick"].clone(), widths)
    };
    let at = |stick: &Value, index: usize| {
        let place = &stick["places"][index];
        [number(&place["from_mm"]), number(&place["to_mm"])]
    };
    // All given: each stands where the sums say.
    let (given, widths) = stick("1m", [json!(100), json!("5cm"), json!(0)]);
    let mut here = 0.0;
    for (index, gap) in [100.0, 50.0, 0.0].into_iter().enumerate() {
        let [from, to] = at(&given, index);
        assert!((from - here - gap).abs() < 0.01, "{given}");
        assert!((to - from - widths[index]).abs() < 0.01, "{given}");
        here = to;
    }
    assert!((number(&given["left_mm"]) - (1000.0 - here)).abs() < 0.01);
    assert_eq!(given["fits"], true);
    // None given: all bare places are alike, the last among them.
    let (even, widths) = stick("1m", [json!(null), json!(null), json!(null)]);
    let gap = (1000.0 - widths.iter().sum::<f64>()) / 4.0;
    assert!((at(&even, 0)[0] - gap).abs() < 0.01, "{even}");
    assert!(
        (at(&even, 2)[0] - at(&even, 1)[1] - gap).abs() < 0.01,
        "{even}"
    );
    assert!((number(&even["left_mm"]) - gap).abs() < 0.01, "{even}");
    // Too long by as much as the sums say, to the millimetre.
    let (short, widths) = stick("20cm", [json!(100), json!(50), json!(50)]);
    let lacks = widths.iter().sum::<f64>();
    assert_eq!(short["fits"], false);
    assert!((number(&short["left_mm"]) + lacks).abs() < 0.01, "{short}");
    let home = TempDir::new().unwrap();
    let gaps = [json!(100), json!(50), json!(50)];
    let order = json!({ "stick": "20cm", "pieces": gaps.map(piece) });
    let file = file(home.path(), &order);
    let text = printed_at(home.path(), &["order", "plan", file.to_str().unwrap()]);
    assert!(
        text.contains("too long for the stick of 200 mm: take smaller gaps"),
        "{text}"
    );
}

#[test]
fn what_is_printed_may_be_read_again() {
    let home = TempDir::new().unwrap();
    let order = json!({
        "name": "the club", "note": "before the regatta", "stick": "1.2m", "waste": 7, "spool": "20m",
        "pieces": [grip(2, "3mm"), ring(1, "3mm"), {
            "leads": "3", "bights": 5, "cord": 3, "firm": "hard", "tube": 45, "weave": "ou",
            "side": "left", "hand": "left", "cords": "white", "gap": "30mm",
        }],
    });
    let answer = plan_with(home.path(), &order, &[]);
    let again = plan_with(home.path(), &answer["order"], &[]);
    assert_eq!(answer, again);
    // Kept and shown it is the same, but for its name.
    let said = file(home.path(), &answer["order"]);
    let kept = printed_at(home.path(), &["order", "keep", said.to_str().unwrap()]);
    let id = kept
        .trim()
        .trim_start_matches("Kept as ")
        .trim_end_matches('.');
    let shown = printed_at(home.path(), &["order", "show", id, "--json"]);
    let mut shown: Value = serde_json::from_str(&shown).unwrap();
    assert_eq!(shown["id"], id);
    shown["id"] = Value::Null;
    for piece in shown["pieces"].as_array_mut().unwrap() {
        assert_eq!(
            piece.as_object_mut().unwrap().remove("tied"),
            Some(json!(0))
        );
    }
    assert_eq!(shown, answer);
    let list = printed_at(home.path(), &["order", "list", "--json"]);
    let list: Value = serde_json::from_str(&list).unwrap();
    assert_eq!(
        (&list["orders"][0]["id"], &list["orders"][0]["knots"]),
        (&json!(id), &json!(4))
    );
    // Another takes its place, it goes and comes back.
    let other = file(
        home.path(),
        &json!({ "name": "other", "pieces": [ring(9, "3mm")] }),
    );
    printed_at(
        home.path(),
        &["order", "keep", other.to_str().unwrap(), "--as", id],
    );
    assert!(printed_at(home.path(), &["order", "list"]).contains("other: 9 knots"));
    printed_at(home.path(), &["order", "delete", id]);
    assert!(printed_at(home.path(), &["order", "list"]).contains("No orders are kept in "));
    printed_at(home.path(), &["order", "undo", id]);
    assert!(printed_at(home.path(), &["order", "show", id]).contains("9 pieces, boathook ring"));
}

#[test]
fn tubes_and_cords_that_are_kept_are_known_by_their_names() {
    let home = TempDir::new().unwrap();
    printed_at(
        home.path(),
        &[
            "rig",
            "--leads",
            "5",
            "--bights",
            "7",
            "--cord",
            "3mm",
            "--tube",
            "45mm",
            "--rows",
            "14,20",
            "--keep-tube",
            "loft",
            "--keep-cord",
            "tan",
        ],
    );
    let order = json!({ "pieces": [{ "leads": 5, "bights": 7, "cord": "tan", "tube": "loft" }] });
    let answer = plan_with(home.path(), &order, &[]);
    assert_eq!(answer["to_buy"][0]["name"], "tan");
}

#[test]
#[expect(clippy::too_many_lines, reason = "a table of sentences")]
fn each_thing_that_can_be_wrong_has_its_sentence() {
    let with = |field: &str, value: Value| {
        let mut piece = grip(2, "3mm");
        piece[field] = value;
        json!({ "pieces": [ring(1, "3mm"), piece] })
    };
    let of_all = |field: &str, value: Value| {
        let mut order = json!({ "pieces": [grip(2, "3mm")] });
        order[field] = value;
        order
    };
    for (order, sentence) in [
        (
            json!({ "pieces": [] }),
            "The order has no pieces: add one, with leads, bights, cord and tube.",
        ),
        (
            json!({ "pieces": vec![ring(1, "3mm"); 100] }),
            "An order has at most 99 pieces and this has 100: make two orders of it.",
        ),
        (
            with("count", json!(0)),
            "Piece 2, “tiller grip”: How many of a piece is a whole number from 1 to 999 and “0” is \
             not one: give one, such as 10.",
        ),
        (
            with("count", json!("a dozen")),
            "Piece 2, “tiller grip”: How many of a piece is a whole number from 1 to 999 and “a \
             dozen” is not one: give one, such as 10.",
        ),
        (
            with("leads", json!("")),
            "Piece 2, “tiller grip”: Leads are still to be given: a whole number from 2 to 999, such \
             as 5.",
        ),
        (
            with("leads", json!(2.5)),
            "Piece 2, “tiller grip”: Leads must be a whole number and “2.5” is not one: give a number \
             from 2 to 999, such as 5.",
        ),
        (
            with("side", json!("up")),
            "Piece 2, “tiller grip”: “up” is not a choice for side: it takes right, left; try side \
             right.",
        ),
        (
            with("cords", json!("blue,,red")),
            "Piece 2, “tiller grip”: “blue,,red” leaves a cord without a name: give names with commas \
             between them, such as --cords blue,white.",
        ),
        (
            with("cord", json!("bootlace")),
            "Piece 2, “tiller grip”: “bootlace” is not a cord: give its thickness, such as 4mm, or a \
             standard cord (I, IA, III). Cords that you keep by name can be given too; none is kept \
             yet.",
        ),
        (
            with("tube", json!(null)),
            "Piece 2, “tiller grip”: Rows belong to a tube and none is given: add its diameter, such as \
             45mm.",
        ),
        (
            with("gap", json!("-3")),
            "Piece 2, “tiller grip”: The gap before the knot cannot be “-3”: it must be more than zero, \
             such as 20mm.",
        ),
        (
            with("gap", json!("some")),
            "Piece 2, “tiller grip”: The gap before the knot cannot be “some”: give a number with mm, \
             cm, m, in or ft, such as 20mm.",
        ),
        (
            of_all("stick", json!("3 ells")),
            "The length of the stick cannot be “3 ells”: its unit is not known; use mm, cm, m, in or \
             ft, such as 1m.",
        ),
        (
            of_all("stick", json!("1,250")),
            "The length of the stick cannot be “1,250”: it may be read two ways; write it with a point \
             or without the comma, such as 1m.",
        ),
        (
            of_all("spool", json!("3/4")),
            "The cord on a spool cannot be “3/4”: it is a fraction without a unit; write in behind it \
             if it is inches, such as 20m.",
        ),
        (
            of_all("spool", json!("1001m")),
            "The cord on a spool cannot be “1001m”: it must be from 0.01 mm to 1000 m, such as 20m.",
        ),
        (
            of_all("waste", json!(101)),
            "Waste is a number from 0 to 100 per cent and “101” is not one: give one, such as 5.",
        ),
        (
            of_all("deadline", json!("soon")),
            "An order has “deadline”, which means nothing: use name, note, stick, waste, spool, \
             pieces.",
        ),
    ] {
        assert_eq!(refusal(&order), sentence, "{order}");
    }
    let unknown = refusal(&with("bight", json!(7)));
    assert!(
        unknown.starts_with("Piece 2 has “bight”, which means nothing: use name, count, leads,"),
        "{unknown}"
    );
}

#[test]
fn files_and_names_that_are_none_have_their_sentences() {
    let home = TempDir::new().unwrap();
    let refused = |args: &[&str]| refused_at(home.path(), args);
    for name in ["nothing1", "No!"] {
        let sentence =
            format!("There is no order “{name}”: “marlinspeak order list” names those there are.");
        for command in ["show", "delete", "undo"] {
            assert_eq!(refused(&["order", command, name]), (2, sentence.clone()));
        }
    }
    let broken = home.path().join("broken.json");
    fs::write(&broken, "{ \"pieces\": [").unwrap();
    let (code, sentence) = refused(&["order", "plan", broken.to_str().unwrap()]);
    assert_eq!(code, 2);
    assert!(
        sentence.contains("broken.json") && sentence.contains("line 1"),
        "{sentence}"
    );
    let newer = home.path().join("newer.json");
    fs::write(&newer, "{ \"version\": 9, \"pieces\": [] }").unwrap();
    let (code, sentence) = refused(&["order", "keep", newer.to_str().unwrap()]);
    assert_eq!(code, 2);
    assert!(sentence.contains("newer"), "{sentence}");
    let (code, sentence) = refused(&["order", "plan", "/nowhere/order.json"]);
    assert_eq!(code, 1);
    assert!(sentence.contains("/nowhere/order.json"), "{sentence}");
    // Nothing of it was kept.
    let list = marlinspeak_at(home.path(), &["order", "list", "--json"]);
    let list: Value = serde_json::from_slice(&list.stdout).unwrap();
    assert_eq!(list["orders"], json!([]));
}

#[test]
fn a_kept_order_that_is_damaged_is_told_by_the_doctor_and_gives_way_to_the_copy_before() {
    let home = TempDir::new().unwrap();
    let said = file(
        home.path(),
        &json!({ "name": "the club", "pieces": [ring(2, "3mm")] }),
    );
    let kept = printed_at(home.path(), &["order", "keep", said.to_str().unwrap()]);
    let id = kept
        .trim()
        .trim_start_matches("Kept as ")
        .trim_end_matches('.');
    printed_at(
        home.path(),
        &["order", "keep", said.to_str().unwrap(), "--as", id],
    );
    let document = home.path().join(format!("marlinspeak/orders/{id}.json"));
    let whole = fs::read(&document).unwrap();
    fs::write(&document, &whole[..whole.len() / 2]).unwrap();
    let shown = marlinspeak_at(home.path(), &["order", "show", id]);
    assert_eq!(shown.status.code(), Some(1));
    let errors = String::from_utf8(shown.stderr).unwrap();
    assert!(errors.contains(id), "{errors}");
    assert!(
        String::from_utf8(shown.stdout)
            .unwrap()
            .contains("boathook ring")
    );
    let doctor = marlinspeak_at(home.path(), &["doctor"]);
    assert_ne!(doctor.status.code(), Some(0));
    let verify = marlinspeak_at(home.path(), &["shelf", "verify"]);
    assert_eq!(verify.status.code(), Some(1));
    assert!(
        String::from_utf8(verify.stdout)
            .unwrap()
            .contains(&format!("{id}.json"))
    );
}
