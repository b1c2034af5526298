//! Spanish, heard.

use super::Language;

/// How Spanish is understood.
pub const SPANISH: Language = Language {
    tag: "es",
    staggered: &[
        "La clavija 1 de la cabeza está medio paso a la",
        "la cabeza, medio paso más.",
    ],
    straight: &[
        "La clavija 1 de la cabeza está a plomo con la clavija 1 del pie.",
        "la cabeza, a plomo.",
    ],
    laying: ["Tramo ", "Pasada ", "Hebra "],
    grammar: &[
        (
            "rows",
            &[
                " de la fila de fuera",
                " de la fila de dentro",
                " de la fila ",
                " fila de fuera",
                " fila de dentro",
                " fila ",
            ],
        ),
        (
            "splits",
            &[
                "",
                "Ve entre los tramos que salen de la clavija {left} y de la clavija {beyond} de la cabeza. ",
                "Ve entre los tramos que salen de la clavija {left} y de la clavija {beyond} del pie. ",
            ],
        ),
        (
            "head",
            &[
                "Pasada {pass}, hebra {strand}, «{cord}», tramo {leg}",
                "Pasada {pass}, hebra {strand}, tramo {leg}",
                "Pasada {pass}, «{cord}», tramo {leg}",
                "Pasada {pass}, tramo {leg}",
                "Hebra {strand}, «{cord}», tramo {leg}",
                "Hebra {strand}, tramo {leg}",
                "Tramo {leg}",
            ],
        ),
        ("split", &[", parte {part} de {parts}{lane}", "{lane}"]),
        ("bsplit", &[", parte {part} de {parts}.", "."]),
        (
            "met",
            &["Aún no hay nada que cruzar.", "{First}.", "{First}, {rest}"],
        ),
        ("rest", &["{next}.", "{next}, {rest}"]),
        (
            "bmet",
            &["Nada que cruzar.", "{BFirst}.", "{BFirst}, {brest}"],
        ),
        ("brest", &["{bnext}.", "{bnext}, {brest}"]),
        (
            "plain",
            &[
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}{split} {on}. Llevas {place}. {met} {landing}",
            ],
        ),
        // What the hands have is told plainly.
        (
            "teach",
            &[
                "{head}{split} {way}. {splits}{tmet} {tlanding}",
                "{head}{split} Un tramo es el cabo de una clavija a otra del otro borde. {way}. {splits}{tmet} {tlanding}",
                "{head}{split} {on}. Llevas {place}. {tmet} {tlanding}",
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}{split} {on}. Llevas {place}. {met} {landing}",
            ],
        ),
        (
            "tmet",
            &[
                "Aún no hay nada que cruzar.",
                "{First}{new}",
                "{First}{new} {tmet}",
            ],
        ),
        (
            "new",
            &[
                ".",
                ": el tuyo queda a la vista.",
                ": levántalo y mete el tuyo.",
            ],
        ),
        ("brief", &["{head}{bsplit} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "De la clavija {from} del pie, sube{around}{turn} a la {to} de la cabeza{h=rising}",
                "De la clavija {from} de la cabeza, baja{around}{turn} a la {to} del pie{h=falling}",
            ],
        ),
        (
            "around",
            &[
                "",
                " hacia la derecha{way=right}",
                " hacia la izquierda{way=left}",
            ],
        ),
        (
            "turn",
            &[
                "{turns=0}",
                ", dando una vuelta al tubo,{turns=1}",
                ", dando dos vueltas al tubo,{turns=2}",
                ", dando {turns} vueltas al tubo,",
            ],
        ),
        (
            "lane",
            &[
                ".",
                ", del lado del pie.{lane=bottom}",
                ", del lado de la cabeza.{lane=top}",
            ],
        ),
        (
            "on",
            &[
                "Subes{around}{comma} de la clavija {from} del pie a la {to} de la cabeza{h=rising}",
                "Bajas{around}{comma} de la clavija {from} de la cabeza a la {to} del pie{h=falling}",
            ],
        ),
        (
            "place",
            &["{share-of}{past-it}{made=0}", "{made-turns}{past-it}"],
        ),
        ("comma", &[",", ""]),
        (
            "share-of",
            &[
                "un poco{share=little}",
                "un cuarto{share=quarter}",
                "un tercio{share=third}",
                "la mitad{share=half}",
                "dos tercios{share=two-thirds}",
                "tres cuartos{share=three-quarters}",
                "casi todo{share=most}",
            ],
        ),
        ("past-it", &["", ", tras {past-pin}"]),
        (
            "past-pin",
            &[
                "la {past} del pie{rim=bottom}",
                "la {past} de la cabeza{rim=top}",
            ],
        ),
        (
            "made-turns",
            &[
                "una vuelta al tubo{made=1}",
                "dos vueltas al tubo{made=2}",
                "{made} vueltas al tubo",
            ],
        ),
        (
            "First",
            &[
                "Encima de un cabo{over=1}",
                "Encima de {over} cabos",
                "Debajo de un cabo{under=1}",
                "Debajo de {under} cabos",
            ],
        ),
        (
            "next",
            &[
                "encima de uno{over=1}",
                "encima de {over}",
                "debajo de uno{under=1}",
                "debajo de {under}",
            ],
        ),
        (
            "landing",
            &[
                "Sujeta ahí tu cabo.{landing=hold}",
                "Rodea la clavija {landed} de la cabeza.{landing=round}",
                "Rodea la clavija {landed} del pie.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Sujeta ahí tu cabo.{landing=hold}",
                "Rodea la clavija {landed} de la cabeza.{landing=round}",
                "Rodea la clavija {landed} del pie.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Por dentro del bucle.{landing=inside}",
                "Por fuera del bucle.{landing=outside}",
                "De vuelta al principio: encima de la cola, y sigue.{landing=on}",
                "De vuelta al principio: fíjalo con cinta.{landing=wait}",
                "De vuelta al principio: deja colgar el extremo.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Pie {from}, sube a la cabeza {to}{h=rising}",
                "Cabeza {from}, baja al pie {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", una vuelta{turns=1}",
                ", dos vueltas{turns=2}",
                ", {turns} vueltas",
                ", tras la cabeza {past}{rim=top}",
                ", tras el pie {past}{rim=bottom}",
            ],
        ),
        (
            "BFirst",
            &[
                "Encima {over}",
                "Encima{over=1}",
                "Debajo {under}",
                "Debajo{under=1}",
            ],
        ),
        (
            "bnext",
            &[
                "encima {over}",
                "encima{over=1}",
                "debajo {under}",
                "debajo{under=1}",
            ],
        ),
        (
            "blanding",
            &[
                "",
                " Por dentro.{landing=inside}",
                " Por fuera.{landing=outside}",
                " Al principio: sobre la cola.{landing=on}",
                " Al principio: pégalo.{landing=wait}",
                " Al principio: fin.{landing=end}",
            ],
        ),
    ],
};
