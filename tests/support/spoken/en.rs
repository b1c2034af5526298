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
            "rows",
            &[
                " of the outer row",
                " of the inner row",
                " of row ",
                " outer row",
                " inner row",
                " row ",
            ],
        ),
        (
            "splits",
            &[
                "",
                "Keep between the legs from top pin {left} and top pin {beyond}. ",
                "Keep between the legs from bottom pin {left} and bottom pin {beyond}. ",
            ],
        ),
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
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, part {part} of {parts}, from {on}. You are {place}. {met} {landing}",
            ],
        ),
        // What the hands have is told plainly.
        (
            "teach",
            &[
                "{head}{split} {way}. {splits}{tmet} {tlanding}",
                "{head}{split} A leg is the cord from a pin on one rim to a pin on the other. {way}. {splits}{tmet} {tlanding}",
                "{head}, part {part} of {parts}, from {on}. You are {place}. {tmet} {tlanding}",
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, part {part} of {parts}, from {on}. You are {place}. {met} {landing}",
            ],
        ),
        (
            "tmet",
            &[
                "There is nothing to cross yet.",
                "{First}{new}",
                "{First}{new} {tmet}",
            ],
        ),
        (
            "new",
            &[
                ".",
                ": lay yours on top of it.",
                ": lift it and pass your end beneath.",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "From bottom pin {from}, up {along}{turn} to top pin {to}{h=rising}",
                "From top pin {from}, down {along}{turn} to bottom pin {to}{h=falling}",
            ],
        ),
        (
            "along",
            &[
                "and to the right{way=right}",
                "and to the left{way=left}",
                "the bottom-ring side of the first cord{lane=bottom}",
                "the bottom-ring side of its own lead pass{lane=bottom}",
                "the top-ring side of its own lead pass{lane=top}",
                "the top-ring side of the first cord{lane=top}",
            ],
        ),
        (
            "turn",
            &[
                "{turns=0}",
                ",{turns=0}",
                ", with one full turn of the tube,{turns=1}",
                ", with two full turns of the tube,{turns=2}",
                ", with {turns} full turns of the tube,",
            ],
        ),
        (
            "on",
            &[
                "bottom pin {from} up {on-along} to top pin {to}{h=rising}",
                "top pin {from} down {on-along} to bottom pin {to}{h=falling}",
            ],
        ),
        (
            "place",
            &["{share-of}{past-it}{made=0}", "{made-turns}{past-it}"],
        ),
        (
            "on-along",
            &[
                "and to the right,{way=right}",
                "and to the left,{way=left}",
                "the bottom-ring side{lane=bottom}",
                "the top-ring side{lane=top}",
            ],
        ),
        (
            "share-of",
            &[
                "a little way along{share=little}",
                "a quarter there{share=quarter}",
                "a third there{share=third}",
                "half way{share=half}",
                "two thirds there{share=two-thirds}",
                "three quarters there{share=three-quarters}",
                "nearly there{share=most}",
            ],
        ),
        ("past-it", &["", ", just past {past-pin}"]),
        (
            "past-pin",
            &["bottom pin {past}{rim=bottom}", "top pin {past}{rim=top}"],
        ),
        (
            "made-turns",
            &[
                "once round the tube{made=1}",
                "twice round the tube{made=2}",
                "{made} times round the tube",
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
                "Hold your cord there.{landing=hold}",
                "Then round top pin {landed}.{landing=round}",
                "Then round bottom pin {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Hold your cord there.{landing=hold}",
                "Then round top pin {landed}.{landing=round}",
                "Then round bottom pin {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Inside the loop.{landing=inside}",
                "Outside the loop.{landing=outside}",
                "Back at the start: over the tail, and on.{landing=on}",
                "Back at the start: tape the cord down, to wait.{landing=wait}",
                "Back at the start: let the end hang.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Bottom pin {from}, up to pin {to}{h=rising}",
                "Bottom {from}, up to pin {to}{h=rising}",
                "Top pin {from}, down to pin {to}{h=falling}",
                "Top {from}, down to pin {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", once round{turns=1}",
                ", twice round{turns=2}",
                ", {turns} times round",
                ", past bottom {past}{rim=bottom}",
                ", past top {past}{rim=top}",
            ],
        ),
        (
            "BFirst",
            &[
                "Over {over}",
                "Over{over=1}",
                "Under {under}",
                "Under{under=1}",
            ],
        ),
        (
            "bnext",
            &[
                "over {over}",
                "over{over=1}",
                "under {under}",
                "under{under=1}",
            ],
        ),
        (
            "blanding",
            &[
                "",
                " Inside.{landing=inside}",
                " Outside.{landing=outside}",
                " Start: over tail.{landing=on}",
                " Start: tape it.{landing=wait}",
                " Start: stop.{landing=end}",
            ],
        ),
    ],
};
