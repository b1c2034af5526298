//! French, heard.

use super::Language;

/// How French is understood.
pub const FRENCH: Language = Language {
    tag: "fr",
    staggered: &[
        "Le picot de tête 1 est à un demi-pas à",
        "les picots de tête un demi-pas plus loin.",
    ],
    straight: &[
        "Le picot de tête 1 est à l’aplomb du picot de base 1.",
        "les picots de tête à l’aplomb.",
    ],
    laying: ["Trajet ", "Passe ", "Circuit "],
    grammar: &[
        (
            "rows",
            &[
                " du rang de dehors",
                " du rang de dedans",
                " du rang ",
                " rang de dehors",
                " rang de dedans",
                " rang ",
            ],
        ),
        (
            "splits",
            &[
                "",
                "Restez entre les trajets partis du picot de tête {left} et du picot de tête {beyond}. ",
                "Restez entre les trajets partis du picot de base {left} et du picot de base {beyond}. ",
            ],
        ),
        (
            "head",
            &[
                "Passe {pass}, circuit {strand}, «\u{a0}{cord}\u{a0}», trajet {leg}",
                "Passe {pass}, circuit {strand}, trajet {leg}",
                "Passe {pass}, «\u{a0}{cord}\u{a0}», trajet {leg}",
                "Passe {pass}, trajet {leg}",
                "Circuit {strand}, «\u{a0}{cord}\u{a0}», trajet {leg}",
                "Circuit {strand}, trajet {leg}",
                "Trajet {leg}",
            ],
        ),
        ("split", &[", partie {part} sur {parts}.", "."]),
        (
            "met",
            &[
                "Il n’y a encore rien à croiser.",
                "{First}.",
                "{First}, {rest}",
            ],
        ),
        ("rest", &["{next}.", "{next}, {rest}"]),
        (
            "bmet",
            &["Rien à croiser.", "{BFirst}.", "{BFirst}, {brest}"],
        ),
        ("brest", &["{bnext}.", "{bnext}, {brest}"]),
        (
            "plain",
            &[
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, partie {part} sur {parts}. {on}. Vous êtes {place}. {met} {landing}",
            ],
        ),
        // What the hands have is told plainly.
        (
            "teach",
            &[
                "{head}{split} {way}. {splits}{tmet} {tlanding}",
                "{head}{split} Un trajet, c’est le cordon d’un picot d’un bord à un picot de l’autre. {way}. {splits}{tmet} {tlanding}",
                "{head}, partie {part} sur {parts}. {on}. Vous êtes {place}. {tmet} {tlanding}",
                "{head}{split} {way}. {splits}{met} {landing}",
                "{head}, partie {part} sur {parts}. {on}. Vous êtes {place}. {met} {landing}",
            ],
        ),
        (
            "tmet",
            &[
                "Il n’y a encore rien à croiser.",
                "{First}{new}",
                "{First}{new} {tmet}",
            ],
        ),
        (
            "new",
            &[
                ".",
                "\u{a0}: le vôtre se pose en travers.",
                "\u{a0}: soulevez-le et passez votre bout.",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "Du picot de base {from}, montez{around}{turn} jusqu’au picot de tête {to}{h=rising}",
                "Du picot de tête {from}, descendez{around}{turn} jusqu’au picot de base {to}{h=falling}",
                "Du picot de base {from}, {side}, montez{turn} au picot de tête {to}{h=rising}",
                "Du picot de tête {from}, {side}, descendez{turn} au picot de base {to}{h=falling}",
            ],
        ),
        (
            "around",
            &[" vers la droite{way=right}", " vers la gauche{way=left}"],
        ),
        (
            "side",
            &[
                "côté base du premier cordon{lane=bottom}",
                "côté base de sa propre première passe{lane=bottom}",
                "côté tête de sa propre première passe{lane=top}",
                "côté tête du premier cordon{lane=top}",
            ],
        ),
        (
            "along",
            &[
                "{around}",
                ", côté base{lane=bottom}",
                ", côté tête{lane=top}",
            ],
        ),
        (
            "turn",
            &[
                "{turns=0}",
                ", avec un tour du tube,{turns=1}",
                ", avec {turns} tours du tube,",
            ],
        ),
        (
            "on",
            &[
                "Vous montez{along}, du picot de base {from} au picot de tête {to}{h=rising}",
                "Vous descendez{along}, du picot de tête {from} au picot de base {to}{h=falling}",
            ],
        ),
        (
            "place",
            &["{share-of}{past-it}{made=0}", "{made-turns}{past-it}"],
        ),
        (
            "share-of",
            &[
                "au début{share=little}",
                "au quart{share=quarter}",
                "au tiers{share=third}",
                "à mi-chemin{share=half}",
                "aux deux tiers{share=two-thirds}",
                "aux trois quarts{share=three-quarters}",
                "presque au bout{share=most}",
            ],
        ),
        ("past-it", &["", ", après {past-pin}"]),
        (
            "past-pin",
            &[
                "le picot de base {past}{rim=bottom}",
                "le picot de tête {past}{rim=top}",
            ],
        ),
        (
            "made-turns",
            &["à un tour du tube{made=1}", "à {made} tours du tube"],
        ),
        (
            "First",
            &[
                "Enjambez {over} cordons",
                "Enjambez {over} cordon",
                "Glissez sous {under} cordons",
                "Glissez sous {under} cordon",
            ],
        ),
        ("next", &["enjambez {over}", "glissez sous {under}"]),
        (
            "landing",
            &[
                "Tenez là votre cordon.{landing=hold}",
                "Contournez le picot de tête {landed}.{landing=round}",
                "Contournez le picot de base {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Tenez là votre cordon.{landing=hold}",
                "Contournez le picot de tête {landed}.{landing=round}",
                "Contournez le picot de base {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "En dedans de la ganse.{landing=inside}",
                "En dehors de la ganse.{landing=outside}",
                "De retour au départ, enjambez le dormant et continuez.{landing=on}",
                "De retour au départ, fixez-le, jusqu’à sa prochaine passe.{landing=wait}",
                "De retour au départ, laissez pendre le bout.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Base {from}, montez à tête {to}{h=rising}",
                "Tête {from}, descendez à base {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", un tour complet{turns=1}",
                ", {turns} tours",
                ", après tête {past}{rim=top}",
                ", après base {past}{rim=bottom}",
            ],
        ),
        ("BFirst", &["Enjambez {over}", "Sous {under}"]),
        ("bnext", &["enjambez {over}", "sous {under}"]),
        (
            "blanding",
            &[
                "",
                " En dedans.{landing=inside}",
                " En dehors.{landing=outside}",
                " Au départ, enjambez le dormant.{landing=on}",
                " Départ\u{a0}: fixez-le.{landing=wait}",
                " Départ\u{a0}: arrêtez là.{landing=end}",
            ],
        ),
    ],
};
