//! English, heard.

use super::Language;

/// How English is understood.
pub const ENGLISH: Language = Language {
    tag: "en",
    staggered: &[
        "Top pin 1 stands half a step to the",
        "top pins half a step on.",
    ],
    straight: &[
        "Top pin 1 stands straight above bottom pin 1.",
        "top pins straight above.",
    ],
    laying: ["Leg ", "Pass ", "Strand "],
    grammar: &[
        (
            "head",
            &[
                "Pass {pass}, strand {strand}, “{cord}”, leg {leg}",
                "Pass {pass}, strand {strand}, leg {leg}",
                "Pass {pass}, “{cord}”, leg {leg}",
                "Pass {pass}, leg {leg}",
                "Strand {strand}, “{cord}”, leg {leg}",
                "Strand {strand}, leg {leg}",
                "Leg {leg}",
            ],
        ),
        ("split", &[", part {part} of {parts}.", "."]),
        (
            "met",
            &[
                "There is nothing to cross yet.",
                "{First}.",
                "{First}, {rest}",
            ],
        ),
        ("rest", &["{next}.", "{next}, {rest}"]),
        (
            "bmet",
            &["Nothing to cross.", "{BFirst}.", "{BFirst}, {brest}"],
        ),
        ("brest", &["{bnext}.", "{bnext}, {brest}"]),
        (
            "plain",
            &[
                "{head}{split} {way}{lane} {met} {landing}",
                "{head}, part {part} of {parts}, from {on}. {place}{lane} {met} {landing}",
            ],
        ),
        (
            "teach",
            &[
                "{head}{split} {way}{lane} {met} {tlanding}",
                "{head}{split} A leg is the cord from a pin on one rim to a pin on the other. {way}{lane} {met} {tlanding}",
                "{head}, part {part} of {parts}, from {on}. {place}{lane} {met} {tlanding}",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "From bottom pin {from}, up and {way-round}{turn} to top pin {to}{h=rising}",
                "From top pin {from}, down and {way-round}{turn} to bottom pin {to}{h=falling}",
            ],
        ),
        ("way-round", &["right{way=right}", "left{way=left}"]),
        (
            "turn",
            &[
                "{turns=0}",
                ", with one full turn of the tube,{turns=1}",
                ", with two full turns of the tube,{turns=2}",
                ", with {turns} full turns of the tube,",
            ],
        ),
        (
            "lane",
            &[
                ".",
                ", on the bottom-ring side of the first cord.{lane=bottom}",
                ", on the top-ring side of the first cord.{lane=top}",
            ],
        ),
        (
            "on",
            &[
                "bottom pin {from} up to top pin {to}{h=rising}",
                "top pin {from} down to bottom pin {to}{h=falling}",
            ],
        ),
        (
            "place",
            &[
                "You are {share-of} up, just past {past-pin}{made-turns} Go on up and {way-round}",
                "You are {share-of} down, just past {past-pin}{made-turns} Go on down and {way-round}",
            ],
        ),
        (
            "share-of",
            &[
                "a little way{share=little}",
                "about a quarter of the way{share=quarter}",
                "about a third of the way{share=third}",
                "about half way{share=half}",
                "about two thirds of the way{share=two-thirds}",
                "about three quarters of the way{share=three-quarters}",
                "most of the way{share=most}",
            ],
        ),
        ("again", &["", ", which you come back to"]),
        (
            "past-pin",
            &[
                "bottom pin {past}{again}{rim=bottom}",
                "top pin {past}{again}{rim=top}",
            ],
        ),
        (
            "made-turns",
            &[
                ".{made=0}",
                ", once round the tube so far.{made=1}",
                ", twice round the tube so far.{made=2}",
                ", {made} times round the tube so far.",
            ],
        ),
        (
            "First",
            &[
                "Over {over} cords",
                "Over {over} cord",
                "Under {under} cords",
                "Under {under} cord",
            ],
        ),
        ("next", &["over {over}", "under {under}"]),
        (
            "landing",
            &[
                "Hold it there.{landing=hold}",
                "Then round top pin {landed}.{landing=round}",
                "Then round bottom pin {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Hold it there.{landing=hold}",
                "Then round the outside of top pin {landed}; pull it close.{landing=round}",
                "Then round the outside of bottom pin {landed}; pull it close.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Turn inside the loop at top pin {landed}.{landing=inside}",
                "Turn inside the loop at bottom pin {landed}.{landing=inside}",
                "Turn outside the loop at top pin {landed}.{landing=outside}",
                "Turn outside the loop at bottom pin {landed}.{landing=outside}",
                "Back at the start: go over the hanging tail and on round bottom pin {landed}.{landing=on}",
                "Back at the start: tape the cord down at bottom pin {landed}, to wait for its next pass.{landing=wait}",
                "Back at the start: let the end hang at bottom pin {landed}.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Bottom pin {from}, up to top pin {to}{h=rising}",
                "Top pin {from}, down to bottom pin {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", once round{turns=1}",
                ", twice round{turns=2}",
                ", {turns} times round",
                ", past {past-pin}",
            ],
        ),
        ("BFirst", &["Over {over}", "Under {under}"]),
        ("bnext", &["over {over}", "under {under}"]),
        (
            "blanding",
            &[
                "",
                " Inside.{landing=inside}",
                " Outside.{landing=outside}",
                " Back at the start: on, over the tail.{landing=on}",
                " Back at the start: tape it.{landing=wait}",
                " Back at the start: stop here.{landing=end}",
            ],
        ),
    ],
};
