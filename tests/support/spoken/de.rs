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
            "rows",
            &[
                " der äußeren Reihe",
                " der inneren Reihe",
                " der Reihe ",
                " äußere Reihe",
                " innere Reihe",
                " Reihe ",
            ],
        ),
        (
            "splits",
            &[
                "",
                "Bleib zwischen den Bahnen von Kopf-Stift {left} und Kopf-Stift {beyond}. ",
                "Bleib zwischen den Bahnen von Fuß-Stift {left} und Fuß-Stift {beyond}. ",
            ],
        ),
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
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, Teil {part} von {parts}, von {on}. Du bist {place}. {met} {landing}",
            ],
        ),
        // What the hands have is told plainly.
        (
            "teach",
            &[
                "{head}{split} {way}. {splits}{tmet} {tlanding}",
                "{head}{split} Eine Bahn ist die Schnur von einem Stift am einen Rand zu einem Stift am anderen. {way}. {splits}{tmet} {tlanding}",
                "{head}, Teil {part} von {parts}, von {on}. Du bist {place}. {tmet} {tlanding}",
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, Teil {part} von {parts}, von {on}. Du bist {place}. {met} {landing}",
            ],
        ),
        (
            "tmet",
            &[
                "Noch liegt nichts im Weg.",
                "{First}{new}",
                "{First}{new} {tmet}",
            ],
        ),
        (
            "new",
            &[
                ".",
                ": Leg deine quer darauf.",
                ": Heb sie an und schieb dein Ende hindurch.",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "Von Fuß-Stift {from} {along} hoch{turn} zu Kopf-Stift {to}{h=rising}",
                "Von Kopf-Stift {from} {along} hinab{turn} zu Fuß-Stift {to}{h=falling}",
            ],
        ),
        (
            "along",
            &[
                "nach rechts{way=right}",
                "nach links{way=left}",
                "auf der Fuß-Seite der ersten Schnur{lane=bottom}",
                "auf der Fuß-Seite des eigenen ersten Durchgangs{lane=bottom}",
                "auf der Kopf-Seite des eigenen ersten Durchgangs{lane=top}",
                "auf der Kopf-Seite der ersten Schnur{lane=top}",
            ],
        ),
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
            "on",
            &[
                "Fuß-Stift {from} {along} hoch zu Kopf-Stift {to}{h=rising}",
                "Kopf-Stift {from} {along} hinab zu Fuß-Stift {to}{h=falling}",
            ],
        ),
        (
            "place",
            &["{share-of}{past-it}{made=0}", "{made-turns}{past-it}"],
        ),
        (
            "share-of",
            &[
                "noch am Anfang{share=little}",
                "auf einem Viertel des Wegs{share=quarter}",
                "auf einem Drittel des Wegs{share=third}",
                "auf halbem Weg{share=half}",
                "auf zwei Dritteln des Wegs{share=two-thirds}",
                "auf drei Vierteln des Wegs{share=three-quarters}",
                "fast am Ziel{share=most}",
            ],
        ),
        ("past-it", &["", ", eben an {past-pin} vorbei"]),
        (
            "past-pin",
            &["Fuß-Stift {past}{rim=bottom}", "Kopf-Stift {past}{rim=top}"],
        ),
        (
            "made-turns",
            &[
                "einmal um das Rohr herum{made=1}",
                "zweimal um das Rohr herum{made=2}",
                "{made}-mal um das Rohr herum",
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
                "Halte deine Schnur dort fest.{landing=hold}",
                "Dann um Kopf-Stift {landed}.{landing=round}",
                "Dann um Fuß-Stift {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Halte deine Schnur dort fest.{landing=hold}",
                "Dann um Kopf-Stift {landed}; hol die Lose nach.{landing=round}",
                "Dann um Fuß-Stift {landed}; hol die Lose nach.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Innen in der Bucht.{landing=inside}",
                "Außen um die Bucht.{landing=outside}",
                "Zurück am Anfang: Geh über das hängende Ende und weiter um den Stift.{landing=on}",
                "Zurück am Anfang: Klebe die Schnur dort fest, bis zum nächsten Durchgang.{landing=wait}",
                "Zurück am Anfang: Lass das Ende hängen.{landing=end}",
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
                " Am Anfang: über das Ende weiter.{landing=on}",
                " Am Anfang: festkleben.{landing=wait}",
                " Am Anfang: hier aufhören.{landing=end}",
            ],
        ),
    ],
};
