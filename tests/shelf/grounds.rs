//! What a knot covers, and whether it is tied there, in the documents of ties, of the log and of orders.

use marlinspeak::bench::{Cord, Finish, Ground, Millimetres, Tube};
use marlinspeak::guide::{Order, PieceField, Place, Plan, Setup, SetupField};
use marlinspeak::shelf::{
    Entry, IfThere, Orders, Shelf, Tie, read_entry, read_order_said, read_tie, write_entry,
    write_order, write_tie,
};
use serde_json::{Value, json};

use crate::fresh;

fn mm(length: f64) -> Millimetres {
    Millimetres::new(length).unwrap()
}

/// Every ground, with its form in a document.
fn grounds() -> [(Ground, Value); 5] {
    [
        (Ground::Round(mm(30.0)), json!({ "diameter": 30.0 })),
        (
            Ground::Taper {
                bottom: mm(26.0),
                top: mm(32.0),
                over: mm(120.0),
            },
            json!({ "diameter": 26.0, "shape": "taper", "top": 32.0, "over": 120.0 }),
        ),
        (
            Ground::Ball(mm(38.0)),
            json!({ "diameter": 38.0, "shape": "ball" }),
        ),
        (
            Ground::Flat {
                outer: mm(150.0),
                hole: None,
            },
            json!({ "diameter": 150.0, "shape": "mat" }),
        ),
        (
            Ground::Flat {
                outer: mm(150.0),
                hole: Some(mm(60.0)),
            },
            json!({ "diameter": 150.0, "shape": "mat", "hole": 60.0 }),
        ),
    ]
}

fn tie(setup: Setup) -> Tie {
    let plan = Plan::read("5", "7", "1", "").unwrap();
    Tie::begin(plan.with_setup(Some(setup)), Place::begin(1, 1))
}

fn in_place(ground: Ground) -> Tie {
    tie(Setup::in_place(ground, Cord::new(mm(3.0))))
}

fn on_tube(ground: Ground) -> Tie {
    tie(Setup {
        finish: Some(Finish {
            around: ground,
            open_to: None,
        }),
        ..Setup::new(Tube::plain(mm(45.0)), Cord::new(mm(3.0)))
    })
}

fn json_of(document: &[u8]) -> Value {
    serde_json::from_slice(document).unwrap()
}

#[test]
fn a_tie_comes_back_with_its_ground_and_tied_in_place() {
    for (ground, form) in grounds() {
        // A mat has no other place.
        let slid_on = (!ground.is_flat()).then(|| on_tube(ground));
        for tie in [Some(in_place(ground)), slid_on].into_iter().flatten() {
            let written = write_tie(&tie).unwrap();
            let document = json_of(&written);
            assert_eq!(document["object"], form);
            let setup = tie.plan.setup().unwrap();
            assert_eq!(document.get("in_place").is_some(), setup.in_place);
            assert_eq!(read_tie(&written), Ok(tie));
        }
    }
}

#[test]
fn a_mat_in_a_document_from_elsewhere_is_tied_where_it_stays() {
    let mat = Ground::Flat {
        outer: mm(150.0),
        hole: None,
    };
    let mut document = json_of(&write_tie(&in_place(mat)).unwrap());
    let fields = document.as_object_mut().unwrap();
    assert_eq!(fields.remove("in_place"), Some(json!(true)));
    fields.remove("checksum");
    let read = read_tie(document.to_string().as_bytes()).unwrap();
    assert_eq!(read.plan.setup(), in_place(mat).plan.setup());
}

/// A program from before would have a mat lifted off a tube.
#[test]
fn only_what_a_program_from_before_would_mistake_is_of_a_newer_version() {
    for (ground, _) in grounds() {
        let version = |tie: &Tie| json_of(&write_tie(tie).unwrap())["version"].clone();
        let is_round = matches!(ground, Ground::Round(_));
        if !ground.is_flat() {
            assert_eq!(version(&on_tube(ground)), if is_round { 1 } else { 3 });
        }
        assert_eq!(version(&in_place(ground)), 3);
        let entry = json_of(&write_entry(&Entry::of(&on_tube(ground))).unwrap());
        assert_eq!(entry["version"], if is_round { 1 } else { 3 });
    }
}

#[test]
fn an_entry_of_the_log_knows_what_was_covered() {
    for (ground, form) in grounds() {
        let entry = Entry::of(&on_tube(ground));
        assert_eq!(entry.around, Some(ground));
        let written = write_entry(&entry).unwrap();
        let document = json_of(&written);
        assert_eq!(document["around"], ground.thickest().get());
        let is_round = matches!(ground, Ground::Round(_));
        assert_eq!(
            document["ground"],
            if is_round { Value::Null } else { form }
        );
        assert_eq!(read_entry(&written), Ok(entry));
    }
    // On the tube that it stays on, and in place.
    let stays = Setup::new(Tube::plain(mm(45.0)), Cord::new(mm(3.0)));
    assert_eq!(Entry::of(&tie(stays)).around, Some(mm(45.0).into()));
    let rail = Entry::of(&in_place(mm(28.0).into()));
    assert_eq!(rail.around, Some(mm(28.0).into()));
}

#[test]
fn what_is_measured_to_be_thicker_keeps_its_form() {
    let measured = |ground: Ground, thickest: f64| {
        let entry = Entry {
            around: Some(ground),
            ..Entry::of(&on_tube(ground))
        };
        entry.around_measured(mm(thickest))
    };
    assert_eq!(
        measured(Ground::Ball(mm(38.0)), 40.0),
        Ground::Ball(mm(40.0))
    );
    let taper = |bottom, top| Ground::Taper {
        bottom: mm(bottom),
        top: mm(top),
        over: mm(120.0),
    };
    assert_eq!(measured(taper(20.0, 40.0), 50.0), taper(25.0, 50.0));
    let mat = |outer, hole| Ground::Flat {
        outer: mm(outer),
        hole: Some(mm(hole)),
    };
    assert_eq!(measured(mat(150.0, 60.0), 75.0), mat(75.0, 30.0));
}

#[test]
fn a_ground_that_there_cannot_be_is_damage_with_its_name() {
    let whole = json_of(&write_tie(&on_tube(Ground::Ball(mm(38.0)))).unwrap());
    for (object, said) in [
        (json!({ "diameter": 38.0, "shape": "cube" }), "`object"),
        (
            json!({ "diameter": 0.0, "shape": "ball" }),
            "`object.diameter`",
        ),
        (
            json!({ "diameter": 38.0, "shape": "taper", "over": 90.0 }),
            "`object.top` is missing",
        ),
        (
            json!({ "diameter": 38.0, "shape": "taper", "top": 30.0, "over": -1.0 }),
            "`object.over`",
        ),
        (
            json!({ "diameter": 38.0, "shape": "mat", "hole": 38.0 }),
            "`object.hole` is as wide as the mat",
        ),
    ] {
        let mut broken = whole.clone();
        broken.as_object_mut().unwrap().remove("checksum");
        broken["object"] = object;
        let error = read_tie(broken.to_string().as_bytes()).unwrap_err();
        let error = error.to_string();
        assert!(error.contains(said), "{said}: {error}");
    }
}

#[test]
fn a_tie_is_taken_up_and_brought_back_from_a_backup_with_its_ground() {
    let (around, shelf) = fresh();
    let other = Shelf::open(around.path().join("other").join("ties")).unwrap();
    for (ground, _) in grounds() {
        let begun = shelf.begin(in_place(ground)).unwrap().tie;
        let taken = shelf.take_up(begun.id()).unwrap().untroubled().unwrap();
        assert_eq!(taken.tie.plan.setup(), begun.plan.setup());
        let entry = Entry::of(&begun);
        shelf.log(&entry).unwrap().untroubled().unwrap();
    }
    let file = around.path().join("loft.backup");
    shelf
        .backup(&file, IfThere::Refuse)
        .unwrap()
        .untroubled()
        .unwrap();
    other.restore(&file).unwrap().untroubled().unwrap();
    let setups = |shelf: &Shelf| {
        let ties = shelf.list().unwrap().untroubled().unwrap();
        let setups = ties.iter().map(|tie| tie.plan.setup().cloned());
        setups.collect::<Vec<_>>()
    };
    assert_eq!(setups(&other), setups(&shelf));
}

#[test]
fn a_piece_of_an_order_is_said_with_its_ground() {
    let document = json!({
        "name": "the club",
        "pieces": [
            { "leads": 5, "bights": 7, "object": "32mm:26mm", "cover": "120mm", "cord": "3mm",
              "tube": "45mm" },
            { "leads": 6, "bights": 7, "passes": 2, "mat": "150mm:60mm", "cord": "6mm" },
            { "leads": 3, "bights": 5, "object": 30, "in_place": true, "cord": "3mm" },
            { "leads": 3, "bights": 5, "ball": "38mm", "in_place": false, "cord": "3mm",
              "tube": "45mm" },
        ],
    });
    let stored = read_order_said(document.to_string().as_bytes()).unwrap();
    assert_eq!(stored.first_unknown(), None);
    let in_place = |order: &Order| -> Vec<String> {
        let pieces = order.pieces.iter();
        let said = pieces.map(|piece| piece.text(PieceField::Setup(SetupField::InPlace)));
        said.map(str::to_owned).collect()
    };
    assert_eq!(in_place(&stored.order), ["", "", "yes", "no"]);
    let written = write_order(&stored).unwrap();
    let pieces = &json_of(&written)["pieces"];
    assert_eq!(pieces[2]["in_place"], json!(true));
    assert_eq!(pieces[3]["in_place"], json!(false));
    assert_eq!(pieces[1]["mat"], "150mm:60mm");
    let (_around, shelf) = fresh();
    let orders = Orders::beside(&shelf);
    let kept = orders.keep(stored.order.clone()).unwrap();
    let again = orders.look(&kept.id).unwrap().untroubled().unwrap();
    assert_eq!(again.order, stored.order);
}
