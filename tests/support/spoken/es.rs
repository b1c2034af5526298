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
        ("split", &[", parte {part} de {parts}.", "."]),
        (
            "met",
            &[
                "Todavía no hay nada que cruzar.",
                "{First}.",
                "{First}, {rest}",
            ],
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
                "{head}{split} {way}{lane} {met} {landing}",
                "{head}, parte {part} de {parts}, {on}. {place}{lane} {met} {landing}",
            ],
        ),
        (
            "teach",
            &[
                "{head}{split} {way}{lane} {met} {tlanding}",
                "{head}{split} Un tramo es el cabo entre una clavija de un borde y una del otro. {way}{lane} {met} {tlanding}",
                "{head}, parte {part} de {parts}, {on}. {place}{lane} {met} {tlanding}",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "De la clavija {from} del pie, sube hacia la {way-round}{turn} hasta la clavija {to} de la cabeza{h=rising}",
                "De la clavija {from} de la cabeza, baja hacia la {way-round}{turn} hasta la clavija {to} del pie{h=falling}",
            ],
        ),
        ("way-round", &["derecha{way=right}", "izquierda{way=left}"]),
        (
            "turn",
            &[
                "{turns=0}",
                ", con una vuelta entera al tubo,{turns=1}",
                ", con dos vueltas enteras al tubo,{turns=2}",
                ", con {turns} vueltas enteras al tubo,",
            ],
        ),
        (
            "lane",
            &[
                ".",
                ", junto al primer cabo, del lado del pie.{lane=bottom}",
                ", junto al primer cabo, del lado de la cabeza.{lane=top}",
            ],
        ),
        (
            "on",
            &[
                "que sube de la clavija {from} del pie a la clavija {to} de la cabeza{h=rising}",
                "que baja de la clavija {from} de la cabeza a la clavija {to} del pie{h=falling}",
            ],
        ),
        (
            "place",
            &[
                "El cabo lleva hecho {share-of} de la subida, justo después de {past-pin}{made-turns} Sigue subiendo hacia la {way-round}",
                "El cabo lleva hecho {share-of} de la bajada, justo después de {past-pin}{made-turns} Sigue bajando hacia la {way-round}",
            ],
        ),
        (
            "share-of",
            &[
                "un poco{share=little}",
                "cerca de un cuarto{share=quarter}",
                "cerca de un tercio{share=third}",
                "cerca de la mitad{share=half}",
                "cerca de dos tercios{share=two-thirds}",
                "cerca de tres cuartos{share=three-quarters}",
                "la mayor parte{share=most}",
            ],
        ),
        ("again", &["", ", a la que volverá"]),
        (
            "past-pin",
            &[
                "la clavija {past} del pie{again}{rim=bottom}",
                "la clavija {past} de la cabeza{again}{rim=top}",
            ],
        ),
        (
            "made-turns",
            &[
                ".{made=0}",
                ", y ha dado una vuelta al tubo.{made=1}",
                ", y ha dado dos vueltas al tubo.{made=2}",
                ", y ha dado {made} vueltas al tubo.",
            ],
        ),
        (
            "First",
            &[
                "Pásalo por encima de un cabo{over=1}",
                "Pásalo por encima de {over} cabos",
                "Mételo por debajo de un cabo{under=1}",
                "Mételo por debajo de {under} cabos",
            ],
        ),
        (
            "next",
            &[
                "por encima de uno{over=1}",
                "por encima de {over}",
                "por debajo de uno{under=1}",
                "por debajo de {under}",
            ],
        ),
        (
            "landing",
            &[
                "Sujétalo ahí.{landing=hold}",
                "Luego rodea la clavija {landed} de la cabeza.{landing=round}",
                "Luego rodea la clavija {landed} del pie.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Sujétalo ahí.{landing=hold}",
                "Luego rodea por fuera la clavija {landed} de la cabeza, bien ajustado.{landing=round}",
                "Luego rodea por fuera la clavija {landed} del pie, bien ajustado.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Gira por dentro del bucle en la clavija {landed} de la cabeza.{landing=inside}",
                "Gira por dentro del bucle en la clavija {landed} del pie.{landing=inside}",
                "Gira por fuera del bucle en la clavija {landed} de la cabeza.{landing=outside}",
                "Gira por fuera del bucle en la clavija {landed} del pie.{landing=outside}",
                "De vuelta al principio: pasa por encima de la cola que cuelga y sigue alrededor de la clavija {landed} del pie.{landing=on}",
                "De vuelta al principio: sujeta el cabo con cinta en la clavija {landed} del pie, hasta su próxima pasada.{landing=wait}",
                "De vuelta al principio: deja colgar el extremo en la clavija {landed} del pie.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Clavija {from} del pie, sube a la clavija {to} de la cabeza{h=rising}",
                "Clavija {from} de la cabeza, baja a la clavija {to} del pie{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", una vuelta{turns=1}",
                ", dos vueltas{turns=2}",
                ", {turns} vueltas",
                ", tras {past-pin}",
            ],
        ),
        ("BFirst", &["Encima {over}", "Debajo {under}"]),
        ("bnext", &["encima {over}", "debajo {under}"]),
        (
            "blanding",
            &[
                "",
                " Por dentro.{landing=inside}",
                " Por fuera.{landing=outside}",
                " De vuelta: por encima de la cola.{landing=on}",
                " De vuelta: sujétalo con cinta.{landing=wait}",
                " De vuelta: para aquí.{landing=end}",
            ],
        ),
    ],
};
