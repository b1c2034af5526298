//! A story that contradicts itself is refused, so that a right knot is never found by luck.

use serde_json::{Value, json};

use super::right_knot::told_of;
use crate::diagram::Diagram;

/// The doubled 3 lead 4 bight knot with its `lay` steps spoilt; in the lead pass the last leg
/// crosses two cords.
fn refusal(spoil: impl FnOnce(&mut Vec<Value>)) -> String {
    let mut document = told_of("3", "4", &["--passes", "2"]);
    let steps = document["steps"].as_array_mut().unwrap();
    steps.retain(|step| step["kind"] == "lay");
    assert_eq!(steps.len(), 16, "one step a leg");
    spoil(steps);
    Diagram::of_cable(&document).expect_err("a crooked story")
}

#[test]
fn an_unspoilt_story_is_taken() {
    let document = told_of("3", "4", &["--passes", "2"]);
    assert_eq!(Diagram::of_cable(&document).unwrap().crossings(), 4 * 8);
}

#[test]
fn a_crossing_told_twice_is_refused() {
    let why = refusal(|steps| {
        let crossings = steps[7]["crossings"].as_array_mut().unwrap();
        crossings.push(crossings[1].clone());
    });
    assert!(why.contains("out of order"), "{why}");
}

#[test]
fn a_crossing_never_told_is_refused() {
    let why = refusal(|steps| {
        steps[7]["crossings"].as_array_mut().unwrap().pop();
    });
    assert!(why.contains("row 1 is not met"), "{why}");
}

#[test]
fn a_crossing_with_another_leg_than_the_one_there_is_refused() {
    let why = refusal(|steps| {
        let other = steps[0]["from"].clone();
        let to = steps[0]["to"].clone();
        steps[7]["crossings"][0]["of"] = json!({ "from": other, "to": to });
    });
    assert!(why.contains("is met twice"), "{why}");
}

#[test]
fn a_crossed_leg_that_does_not_exist_is_refused() {
    let why = refusal(|steps| steps[7]["crossings"][0]["of"]["to"]["pin"] = json!(5));
    assert!(why.contains("does not exist"), "{why}");
}

#[test]
fn a_leg_going_the_same_way_cannot_be_crossed() {
    let why = refusal(|steps| {
        let (from, to) = (steps[5]["from"].clone(), steps[5]["to"].clone());
        steps[7]["crossings"][0]["of"] = json!({ "from": from, "to": to });
    });
    assert!(why.contains("does not exist"), "{why}");
}

#[test]
fn a_leg_not_laid_yet_cannot_be_crossed() {
    let why = refusal(|steps| {
        let (from, to) = (steps[7]["from"].clone(), steps[7]["to"].clone());
        let of = json!({ "from": from, "to": to });
        steps[0]["crossings"] = json!([{ "row": 1, "over": true, "cords": 1, "of": of }]);
    });
    assert!(why.contains("where 0 are laid"), "{why}");
}

#[test]
fn the_cords_told_must_be_those_that_lie_there() {
    let why = refusal(|steps| steps[7]["crossings"][0]["cords"] = json!(2));
    assert!(why.contains("where 1 are laid"), "{why}");
}

#[test]
fn a_leg_starts_where_the_last_one_ended() {
    let why = refusal(|steps| steps[3]["from"]["pin"] = json!(4));
    assert!(why.contains("does not start where the last ended"), "{why}");
}

#[test]
fn a_leg_left_out_is_refused() {
    let why = refusal(|steps| {
        steps.remove(3);
    });
    assert!(why.contains("comes where leg 4 should"), "{why}");
}

#[test]
fn a_strand_closes() {
    let why = refusal(|steps| {
        steps.truncate(7);
    });
    assert!(why.contains("does not close"), "{why}");
}

#[test]
fn a_heading_goes_with_its_pins() {
    let why = refusal(|steps| steps[0]["heading"] = json!("falling"));
    assert!(why.contains("as its heading says"), "{why}");
}

#[test]
fn a_follower_goes_over_where_the_lead_pass_did() {
    let why = refusal(|steps| {
        let over = steps[15]["crossings"][0]["over"].as_bool().unwrap();
        steps[15]["crossings"][0]["over"] = json!(!over);
    });
    assert!(why.contains("under in another"), "{why}");
}

#[test]
fn a_follower_keeps_to_its_side() {
    let why = refusal(|steps| steps[9]["side"] = json!("left"));
    assert!(why.contains("change sides"), "{why}");
}

#[test]
fn the_parts_of_a_leg_are_all_there() {
    let halve = |steps: &mut Vec<Value>| {
        let mut second = steps[7].clone();
        let crossings = steps[7]["crossings"].as_array_mut().unwrap();
        second["crossings"] = json!(crossings.split_off(1));
        for (part, step) in [(1, &mut steps[7]), (2, &mut second)] {
            step["part"] = json!(part);
            step["parts"] = json!(2);
        }
        second
    };
    let why = refusal(|steps| {
        halve(steps);
    });
    assert!(why.contains("a part is missing"), "{why}");
    let why = refusal(|steps| {
        let second = halve(steps);
        steps[7] = second;
    });
    assert!(why.contains("a part is missing"), "{why}");
}

/// Legs 6 and 8 each cross a cord in row 1. With those two exchanged every leg still meets every
/// row once, but no such knot lies on a tube.
#[test]
fn cords_that_trade_places_do_not_lie_flat() {
    let why = refusal(|steps| {
        steps.truncate(8);
        let in_row_1 = |step: &Value| {
            let crossings = step["crossings"].as_array().unwrap();
            crossings.iter().position(|met| met["row"] == 1)
        };
        let (one, other) = (in_row_1(&steps[5]).unwrap(), in_row_1(&steps[7]).unwrap());
        let of = steps[5]["crossings"][one]["of"].take();
        steps[5]["crossings"][one]["of"] = steps[7]["crossings"][other]["of"].take();
        steps[7]["crossings"][other]["of"] = of;
    });
    assert!(why.contains("do not lie flat"), "{why}");
}
