//! German, heard.

use super::Language;

/// How German is understood.
pub const GERMAN: Language = Language {
    tag: "de",
    staggered: &[
        "Kopf-Stift 1 steht einen halben Abstand weiter",
        "die Kopf-Stifte einen halben Abstand weiter.",
    ],
    straight: &[
        "Kopf-Stift 1 steht genau über Fuß-Stift 1.",
        "die Kopf-Stifte genau darüber.",
    ],
    laying: ["Bahn ", "Durchgang ", "Strang "],
    grammar: &[
        (
            "head",
            &[
                "Durchgang {pass}, Strang {strand}, „{cord}“, Bahn {leg}",
                "Durchgang {pass}, Strang {strand}, Bahn {leg}",
                "Durchgang {pass}, „{cord}“, Bahn {leg}",
                "Durchgang {pass}, Bahn {leg}",
                "Strang {strand}, „{cord}“, Bahn {leg}",
                "Strang {strand}, Bahn {leg}",
                "Bahn {leg}",
            ],
        ),
        ("split", &[", Teil {part} von {parts}.", "."]),
        (
            "met",
            &["Noch liegt nichts im Weg.", "{First}.", "{First}, {rest}"],
        ),
        ("rest", &["{next}.", "{next}, {rest}"]),
        (
            "bmet",
            &["Nichts zu kreuzen.", "{BFirst}.", "{BFirst}, {brest}"],
        ),
        ("brest", &["{bnext}.", "{bnext}, {brest}"]),
        (
            "plain",
            &[
                "{head}{split} {way}{lane} {met} {landing}",
                "{head}, Teil {part} von {parts}, von {on}. {place}{lane} {met} {landing}",
            ],
        ),
        (
            "teach",
            &[
                "{head}{split} {way}{lane} {met} {tlanding}",
                "{head}{split} Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am anderen. {way}{lane} {met} {tlanding}",
                "{head}, Teil {part} von {parts}, von {on}. {place}{lane} {met} {tlanding}",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "Von Fuß-Stift {from} nach {way-round} hoch{turn} zu Kopf-Stift {to}{h=rising}",
                "Von Kopf-Stift {from} nach {way-round} hinab{turn} zu Fuß-Stift {to}{h=falling}",
            ],
        ),
        ("way-round", &["rechts{way=right}", "links{way=left}"]),
        (
            "turn",
            &[
                "{turns=0}",
                ", einmal ganz um das Rohr herum und weiter{turns=1}",
                ", zweimal ganz um das Rohr herum und weiter{turns=2}",
                ", {turns}-mal ganz um das Rohr herum und weiter",
            ],
        ),
        (
            "lane",
            &[
                ".",
                ", auf der Fuß-Seite der ersten Schnur.{lane=bottom}",
                ", auf der Kopf-Seite der ersten Schnur.{lane=top}",
            ],
        ),
        (
            "on",
            &[
                "Fuß-Stift {from} hoch zu Kopf-Stift {to}{h=rising}",
                "Kopf-Stift {from} hinab zu Fuß-Stift {to}{h=falling}",
            ],
        ),
        (
            "place",
            &[
                "Die Schnur hat {share-of} hinter sich{made-turns} eben an {past-pin} vorbei{again}. Von dort geht es nach {way-round} hoch",
                "Die Schnur hat {share-of} hinter sich{made-turns} eben an {past-pin} vorbei{again}. Von dort geht es nach {way-round} hinab",
            ],
        ),
        (
            "share-of",
            &[
                "ein kleines Stück des Weges{share=little}",
                "etwa ein Viertel des Weges{share=quarter}",
                "etwa ein Drittel des Weges{share=third}",
                "etwa die Hälfte des Weges{share=half}",
                "etwa zwei Drittel des Weges{share=two-thirds}",
                "etwa drei Viertel des Weges{share=three-quarters}",
                "den größten Teil des Weges{share=most}",
            ],
        ),
        ("again", &["", ", zu dem sie wiederkommt"]),
        (
            "past-pin",
            &["Fuß-Stift {past}{rim=bottom}", "Kopf-Stift {past}{rim=top}"],
        ),
        (
            "made-turns",
            &[
                " und ist{made=0}",
                ", ist einmal ganz um das Rohr gelaufen und{made=1}",
                ", ist zweimal ganz um das Rohr gelaufen und{made=2}",
                ", ist {made}-mal ganz um das Rohr gelaufen und",
            ],
        ),
        (
            "First",
            &[
                "Geh über eine Schnur{over=1}",
                "Geh über {over} Schnüre",
                "Tauch unter einer Schnur durch{under=1}",
                "Tauch unter {under} Schnüren durch",
            ],
        ),
        (
            "next",
            &[
                "geh über eine{over=1}",
                "geh über {over}",
                "tauch unter einer durch{under=1}",
                "tauch unter {under} durch",
            ],
        ),
        (
            "landing",
            &[
                "Halte sie dort fest.{landing=hold}",
                "Dann um Kopf-Stift {landed}.{landing=round}",
                "Dann um Fuß-Stift {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Halte sie dort fest.{landing=hold}",
                "Dann außen um Kopf-Stift {landed}; zieh sie heran.{landing=round}",
                "Dann außen um Fuß-Stift {landed}; zieh sie heran.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Wende innen in der Schlinge an Kopf-Stift {landed}.{landing=inside}",
                "Wende innen in der Schlinge an Fuß-Stift {landed}.{landing=inside}",
                "Wende außen um die Schlinge an Kopf-Stift {landed}.{landing=outside}",
                "Wende außen um die Schlinge an Fuß-Stift {landed}.{landing=outside}",
                "Zurück am Anfang: Geh über das hängende Ende und weiter um Fuß-Stift {landed}.{landing=on}",
                "Zurück am Anfang: Klebe die Schnur an Fuß-Stift {landed} fest, bis zu ihrem nächsten Durchgang.{landing=wait}",
                "Zurück am Anfang: Lass das Ende an Fuß-Stift {landed} hängen.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Fuß-Stift {from}, hoch zu Kopf-Stift {to}{h=rising}",
                "Kopf-Stift {from}, hinab zu Fuß-Stift {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", einmal herum{turns=1}",
                ", zweimal herum{turns=2}",
                ", {turns}-mal herum",
                ", an {past-pin} vorbei",
            ],
        ),
        ("BFirst", &["Über {over}", "Tauch unter {under}"]),
        ("bnext", &["über {over}", "tauch unter {under}"]),
        (
            "blanding",
            &[
                "",
                " Innen.{landing=inside}",
                " Außen.{landing=outside}",
                " Zurück am Anfang: über das Ende weiter.{landing=on}",
                " Zurück am Anfang: festkleben.{landing=wait}",
                " Zurück am Anfang: hier aufhören.{landing=end}",
            ],
        ),
    ],
};
