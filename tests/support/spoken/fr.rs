//! French, heard.

use super::Language;

/// How French is understood.
pub const FRENCH: Language = Language {
    tag: "fr",
    staggered: &[
        "Le picot de tête 1 est un demi-pas à",
        "les picots de tête un demi-pas plus loin.",
    ],
    straight: &[
        "Le picot de tête 1 est à l’aplomb du picot de base 1.",
        "les picots de tête à l’aplomb.",
    ],
    laying: ["Trajet ", "Passe ", "Circuit "],
    grammar: &[
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
                "{head}{split} {way}{lane} {met} {landing}",
                "{head}, partie {part} sur {parts}, {on}. {place}{lane} {met} {landing}",
            ],
        ),
        (
            "teach",
            &[
                "{head}{split} {way}{lane} {met} {tlanding}",
                "{head}{split} Un trajet, c’est le cordon d’un picot d’un bord à un picot de l’autre. {way}{lane} {met} {tlanding}",
                "{head}, partie {part} sur {parts}, {on}. {place}{lane} {met} {tlanding}",
            ],
        ),
        ("brief", &["{head}{split} {bway}{bturn}. {bmet}{blanding}"]),
        (
            "way",
            &[
                "Du picot de base {from}, montez vers la {way-round}{turn} jusqu’au picot de tête {to}{h=rising}",
                "Du picot de tête {from}, descendez vers la {way-round}{turn} jusqu’au picot de base {to}{h=falling}",
            ],
        ),
        ("way-round", &["droite{way=right}", "gauche{way=left}"]),
        (
            "turn",
            &[
                "{turns=0}",
                ", avec un tour complet du tube,{turns=1}",
                ", avec {turns} tours complets du tube,",
            ],
        ),
        (
            "lane",
            &[
                ".",
                ", côté base du premier cordon.{lane=bottom}",
                ", côté tête du premier cordon.{lane=top}",
            ],
        ),
        (
            "on",
            &[
                "en montant du picot de base {from} au picot de tête {to}{h=rising}",
                "en descendant du picot de tête {from} au picot de base {to}{h=falling}",
            ],
        ),
        (
            "place",
            &[
                "Le cordon est {share-of} de la montée, juste après {past-pin}{made-turns} Il continue de monter vers la {way-round}",
                "Le cordon est {share-of} de la descente, juste après {past-pin}{made-turns} Il continue de descendre vers la {way-round}",
            ],
        ),
        (
            "share-of",
            &[
                "au début{share=little}",
                "à peu près au quart{share=quarter}",
                "à peu près au tiers{share=third}",
                "à peu près au milieu{share=half}",
                "à peu près aux deux tiers{share=two-thirds}",
                "à peu près aux trois quarts{share=three-quarters}",
                "presque à la fin{share=most}",
            ],
        ),
        ("again", &["", ", où il reviendra"]),
        (
            "past-pin",
            &[
                "le picot de base {past}{again}{rim=bottom}",
                "le picot de tête {past}{again}{rim=top}",
            ],
        ),
        (
            "made-turns",
            &[
                ".{made=0}",
                ", et il a fait un tour du tube.{made=1}",
                ", et il a fait {made} tours du tube.",
            ],
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
        ("next", &["enjambez-en {over}", "glissez sous {under}"]),
        (
            "landing",
            &[
                "Tenez-le là.{landing=hold}",
                "Puis contournez le picot de tête {landed}.{landing=round}",
                "Puis contournez le picot de base {landed}.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "tlanding",
            &[
                "Tenez-le là.{landing=hold}",
                "Puis contournez par l’extérieur le picot de tête {landed}, au plus près.{landing=round}",
                "Puis contournez par l’extérieur le picot de base {landed}, au plus près.{landing=round}",
                "{turning}",
            ],
        ),
        (
            "turning",
            &[
                "Tournez en dedans de la boucle au picot de tête {landed}.{landing=inside}",
                "Tournez en dedans de la boucle au picot de base {landed}.{landing=inside}",
                "Tournez en dehors de la boucle au picot de tête {landed}.{landing=outside}",
                "Tournez en dehors de la boucle au picot de base {landed}.{landing=outside}",
                "Retour au départ\u{a0}: enjambez le dormant qui pend et continuez autour du picot de base {landed}.{landing=on}",
                "Retour au départ\u{a0}: fixez le cordon au picot de base {landed}, en attendant sa prochaine passe.{landing=wait}",
                "Retour au départ\u{a0}: laissez pendre le bout au picot de base {landed}.{landing=end}",
            ],
        ),
        (
            "bway",
            &[
                "Picot de base {from}, montez au picot de tête {to}{h=rising}",
                "Picot de tête {from}, descendez au picot de base {to}{h=falling}",
            ],
        ),
        (
            "bturn",
            &[
                "{turns=0}",
                ", un tour complet{turns=1}",
                ", {turns} tours",
                ", après {past-pin}",
            ],
        ),
        ("BFirst", &["Enjambez {over}", "Glissez sous {under}"]),
        ("bnext", &["enjambez {over}", "glissez sous {under}"]),
        (
            "blanding",
            &[
                "",
                " En dedans.{landing=inside}",
                " En dehors.{landing=outside}",
                " Retour\u{a0}: enjambez le dormant.{landing=on}",
                " Retour\u{a0}: fixez-le.{landing=wait}",
                " Retour\u{a0}: arrêtez là.{landing=end}",
            ],
        ),
    ],
};
