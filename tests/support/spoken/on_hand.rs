//! Legs that are told by the fingers, where a knot is tied round the hand: every language again, beside
//! what it says of legs on a tube.

use super::grammar::{Grammar, understand};
use super::{Depth, Spoken, language};

/// A leg round the hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OnHand {
    /// What is said of it as of a leg on a tube.
    pub leg: Spoken,
    /// The finger where it begins, which is not said again in a later part, and where it lands.
    pub from: Option<String>,
    pub to: String,
    /// Which way it goes.
    pub way: String,
    /// Towards which side it turns back where it lands, if that is said.
    pub then: Option<String>,
}

/// Understands a spoken leg round the hand, or says which words it does not.
pub fn listen_on_hand(tag: &str, text: &str, depth: Depth) -> Result<OnHand, String> {
    let depth = match depth {
        Depth::Brief => "hand-brief",
        Depth::Plain => "hand-plain",
        Depth::Teach => "hand-teach",
    };
    let own = RULES.iter().find(|(known, _)| *known == tag);
    let (_, own) = own.ok_or_else(|| format!("nobody here understands a hand in {tag}"))?;
    let grammar: Grammar = Vec::leak([language(tag).grammar, own].concat());
    let notes = understand(grammar, depth, text)?;
    let note = |name| {
        let noted = notes.iter().find(|(known, _)| *known == name);
        noted.map(|(_, value)| (*value).to_owned())
    };
    let unsaid = |what: &str| format!("{what} is not said: {text:?}");
    Ok(OnHand {
        leg: Spoken::of(&notes).ok_or_else(|| unsaid("the leg"))?,
        from: note("from-at"),
        to: note("to-at").ok_or_else(|| unsaid("where it lands"))?,
        way: note("goes").ok_or_else(|| unsaid("the way"))?,
        then: note("then"),
    })
}

/// What each language says besides.
const RULES: [(&str, Grammar); 4] = [("en", EN), ("de", DE), ("es", ES), ("fr", FR)];

const EN: Grammar = &[
    ("hand-split", &[", part {part} of {parts}.", "."]),
    (
        "hand-plain",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, part {part} of {parts}, {hand-on}. You are {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-teach",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}{hand-split} A leg is the cord from a bight on one side to a bight on the other. {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}, part {part} of {parts}, {hand-on}. You are {hand-share}. {tmet} {hand-landing}",
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, part {part} of {parts}, {hand-on}. You are {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-brief",
        &["{head}{hand-split} {hand-short}. {bmet}{hand-end}"],
    ),
    (
        "hand-way",
        &[
            "From tip bight {from}, {from-place-of}, towards the wrist{hand-lane}, {hand-round}, to wrist bight {to}, {to-place-of}{h=falling}{turns=0}",
            "From wrist bight {from}, {from-place-of}, towards the tips{hand-lane}, {hand-round}, to tip bight {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-on",
        &[
            "from tip bight {from}, towards the wrist{hand-lane}, {hand-round}, to wrist bight {to}, {to-place-of}{h=falling}",
            "from wrist bight {from}, towards the tips{hand-lane}, {hand-round}, to tip bight {to}, {to-place-of}{h=rising}",
        ],
    ),
    (
        "hand-short",
        &[
            "Tip bight {from}, {from-place-of}, {hand-round}, to wrist bight {to}, {to-place-of}{h=falling}{turns=0}",
            "Wrist bight {from}, {from-place-of}, {hand-round}, to tip bight {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-lane",
        &[
            "",
            ", on the wrist side of the first cord{lane=bottom}",
            ", on the tip side of the first cord{lane=top}",
        ],
    ),
    (
        "from-place-of",
        &[
            "outside of the forefinger{from-at=edge-forefinger}",
            "front of the forefinger{from-at=front-forefinger}",
            "front of the middle finger{from-at=front-middle}",
            "front of the ring finger{from-at=front-ring}",
            "front of the little finger{from-at=front-little}",
            "outside of the little finger{from-at=edge-little}",
            "back of the little finger{from-at=back-little}",
            "back of the ring finger{from-at=back-ring}",
            "back of the middle finger{from-at=back-middle}",
            "back of the forefinger{from-at=back-forefinger}",
        ],
    ),
    (
        "to-place-of",
        &[
            "outside of the forefinger{to-at=edge-forefinger}",
            "front of the forefinger{to-at=front-forefinger}",
            "front of the middle finger{to-at=front-middle}",
            "front of the ring finger{to-at=front-ring}",
            "front of the little finger{to-at=front-little}",
            "outside of the little finger{to-at=edge-little}",
            "back of the little finger{to-at=back-little}",
            "back of the ring finger{to-at=back-ring}",
            "back of the middle finger{to-at=back-middle}",
            "back of the forefinger{to-at=back-forefinger}",
        ],
    ),
    (
        "hand-round",
        &[
            "across the front{goes=front}",
            "round the little finger to the back{goes=round-little}",
            "across the back{goes=back}",
            "round the forefinger to the front{goes=round-forefinger}",
            "behind all four fingers to the front again{goes=behind-all}",
            "across all four fingers to the back again{goes=across-all}",
        ],
    ),
    (
        "hand-view",
        &[
            "Palm towards you.",
            "Back of the hand towards you.",
            "Turn the hand as you go.",
        ],
    ),
    (
        "hand-share",
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
    (
        "hand-landing",
        &[
            "Hold your cord there.{landing=hold}",
            "Inside the loop.{landing=inside}",
            "Outside the loop.{landing=outside}",
            "Back at the start: over the tail, and on.{landing=on}",
            "Back at the start: hold the cord down, to wait.{landing=wait}",
            "Back at the start: let the end hang.{landing=end}",
            "Then turn back towards the tips.{landing=round}{then=tips}",
            "Then turn back towards the wrist.{landing=round}{then=wrist}",
        ],
    ),
    (
        "hand-end",
        &[
            "",
            " Inside.{landing=inside}",
            " Outside.{landing=outside}",
            " Start: over tail.{landing=on}",
            " Start: hold it.{landing=wait}",
            " Start: stop.{landing=end}",
        ],
    ),
];

const DE: Grammar = &[
    ("hand-split", &[", Teil {part} von {parts}.", "."]),
    (
        "hand-plain",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, Teil {part} von {parts}, {hand-on}. Du bist {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-teach",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}{hand-split} Eine Bahn ist die Schnur von einem Bogen auf der einen Seite zu einem auf der anderen. {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}, Teil {part} von {parts}, {hand-on}. Du bist {hand-share}. {tmet} {hand-landing}",
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, Teil {part} von {parts}, {hand-on}. Du bist {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-brief",
        &["{head}{hand-split} {hand-short}. {bmet}{hand-end}"],
    ),
    (
        "hand-way",
        &[
            "Von Spitzen-Bogen {from}, {from-place-of}, zum Handgelenk hin{hand-lane}, {hand-round}, zu Handgelenk-Bogen {to}, {to-place-of}{h=falling}{turns=0}",
            "Von Handgelenk-Bogen {from}, {from-place-of}, zu den Spitzen hin{hand-lane}, {hand-round}, zu Spitzen-Bogen {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-on",
        &[
            "von Spitzen-Bogen {from} zum Handgelenk hin{hand-lane}, {hand-round}, zu Handgelenk-Bogen {to}, {to-place-of}{h=falling}",
            "von Handgelenk-Bogen {from} zu den Spitzen hin{hand-lane}, {hand-round}, zu Spitzen-Bogen {to}, {to-place-of}{h=rising}",
        ],
    ),
    (
        "hand-short",
        &[
            "Spitzen-Bogen {from}, {from-place-of}, {hand-round}, zu Handgelenk-Bogen {to}, {to-place-of}{h=falling}{turns=0}",
            "Handgelenk-Bogen {from}, {from-place-of}, {hand-round}, zu Spitzen-Bogen {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-lane",
        &[
            "",
            ", auf der Handgelenk-Seite der ersten Schnur{lane=bottom}",
            ", auf der Spitzen-Seite der ersten Schnur{lane=top}",
        ],
    ),
    (
        "from-place-of",
        &[
            "außen am Zeigefinger{from-at=edge-forefinger}",
            "vorn am Zeigefinger{from-at=front-forefinger}",
            "vorn am Mittelfinger{from-at=front-middle}",
            "vorn am Ringfinger{from-at=front-ring}",
            "vorn am kleinen Finger{from-at=front-little}",
            "außen am kleinen Finger{from-at=edge-little}",
            "hinten am kleinen Finger{from-at=back-little}",
            "hinten am Ringfinger{from-at=back-ring}",
            "hinten am Mittelfinger{from-at=back-middle}",
            "hinten am Zeigefinger{from-at=back-forefinger}",
        ],
    ),
    (
        "to-place-of",
        &[
            "außen am Zeigefinger{to-at=edge-forefinger}",
            "vorn am Zeigefinger{to-at=front-forefinger}",
            "vorn am Mittelfinger{to-at=front-middle}",
            "vorn am Ringfinger{to-at=front-ring}",
            "vorn am kleinen Finger{to-at=front-little}",
            "außen am kleinen Finger{to-at=edge-little}",
            "hinten am kleinen Finger{to-at=back-little}",
            "hinten am Ringfinger{to-at=back-ring}",
            "hinten am Mittelfinger{to-at=back-middle}",
            "hinten am Zeigefinger{to-at=back-forefinger}",
        ],
    ),
    (
        "hand-round",
        &[
            "vorn quer hinüber{goes=front}",
            "um den kleinen Finger nach hinten{goes=round-little}",
            "hinten quer hinüber{goes=back}",
            "um den Zeigefinger nach vorn{goes=round-forefinger}",
            "hinter allen vier Fingern her und wieder nach vorn{goes=behind-all}",
            "vor allen vier Fingern her und wieder nach hinten{goes=across-all}",
        ],
    ),
    (
        "hand-view",
        &[
            "Handfläche zu dir.",
            "Handrücken zu dir.",
            "Dreh die Hand dabei mit.",
        ],
    ),
    (
        "hand-share",
        &[
            "noch am Anfang{share=little}",
            "auf einem Viertel des Wegs{share=quarter}",
            "auf einem Drittel des Wegs{share=third}",
            "auf halbem Weg{share=half}",
            "auf zwei Dritteln des Wegs{share=two-thirds}",
            "auf drei Vierteln des Wegs{share=three-quarters}",
            "fast da{share=most}",
        ],
    ),
    (
        "hand-landing",
        &[
            "Halte deine Schnur dort fest.{landing=hold}",
            "Innen in der Bucht.{landing=inside}",
            "Außen um die Bucht.{landing=outside}",
            "Zurück am Anfang: Geh über das hängende Ende und weiter.{landing=on}",
            "Zurück am Anfang: Halte die Schnur dort fest.{landing=wait}",
            "Zurück am Anfang: Lass das Ende hängen.{landing=end}",
            "Dann wieder zu den Spitzen hin.{landing=round}{then=tips}",
            "Dann wieder zum Handgelenk hin.{landing=round}{then=wrist}",
        ],
    ),
    (
        "hand-end",
        &[
            "",
            " Innen.{landing=inside}",
            " Außen.{landing=outside}",
            " Am Anfang: über das Ende weiter.{landing=on}",
            " Am Anfang: festhalten.{landing=wait}",
            " Am Anfang: hier aufhören.{landing=end}",
        ],
    ),
];

const ES: Grammar = &[
    ("hand-split", &[", parte {part} de {parts}.", "."]),
    (
        "hand-plain",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, parte {part} de {parts}, {hand-on}. Llevas {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-teach",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}{hand-split} Un tramo es el cabo de una curva de un lado a una curva del otro. {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}, parte {part} de {parts}, {hand-on}. Llevas {hand-share}. {tmet} {hand-landing}",
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, parte {part} de {parts}, {hand-on}. Llevas {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-brief",
        &["{head}{hand-split} {hand-short}. {bmet}{hand-end}"],
    ),
    (
        "hand-way",
        &[
            "De la curva {from} de las yemas, {from-place-of}, hacia la muñeca{hand-lane}, {hand-round}, a la curva {to} de la muñeca, {to-place-of}{h=falling}{turns=0}",
            "De la curva {from} de la muñeca, {from-place-of}, hacia las yemas{hand-lane}, {hand-round}, a la curva {to} de las yemas, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-on",
        &[
            "de la curva {from} de las yemas, hacia la muñeca{hand-lane}, {hand-round}, a la curva {to} de la muñeca, {to-place-of}{h=falling}",
            "de la curva {from} de la muñeca, hacia las yemas{hand-lane}, {hand-round}, a la curva {to} de las yemas, {to-place-of}{h=rising}",
        ],
    ),
    (
        "hand-short",
        &[
            "Curva {from} de las yemas, {from-place-of}, {hand-round}, a la curva {to} de la muñeca, {to-place-of}{h=falling}{turns=0}",
            "Curva {from} de la muñeca, {from-place-of}, {hand-round}, a la curva {to} de las yemas, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-lane",
        &[
            "",
            ", del lado de la muñeca del primer cabo{lane=bottom}",
            ", del lado de las yemas del primer cabo{lane=top}",
        ],
    ),
    (
        "from-place-of",
        &[
            "canto del índice{from-at=edge-forefinger}",
            "delante del índice{from-at=front-forefinger}",
            "delante del dedo medio{from-at=front-middle}",
            "delante del anular{from-at=front-ring}",
            "delante del meñique{from-at=front-little}",
            "canto del meñique{from-at=edge-little}",
            "detrás del meñique{from-at=back-little}",
            "detrás del anular{from-at=back-ring}",
            "detrás del dedo medio{from-at=back-middle}",
            "detrás del índice{from-at=back-forefinger}",
        ],
    ),
    (
        "to-place-of",
        &[
            "canto del índice{to-at=edge-forefinger}",
            "delante del índice{to-at=front-forefinger}",
            "delante del dedo medio{to-at=front-middle}",
            "delante del anular{to-at=front-ring}",
            "delante del meñique{to-at=front-little}",
            "canto del meñique{to-at=edge-little}",
            "detrás del meñique{to-at=back-little}",
            "detrás del anular{to-at=back-ring}",
            "detrás del dedo medio{to-at=back-middle}",
            "detrás del índice{to-at=back-forefinger}",
        ],
    ),
    (
        "hand-round",
        &[
            "cruzando por delante{goes=front}",
            "rodeando el meñique hacia atrás{goes=round-little}",
            "cruzando por detrás{goes=back}",
            "rodeando el índice hacia delante{goes=round-forefinger}",
            "por detrás de los cuatro dedos y otra vez delante{goes=behind-all}",
            "por delante de los cuatro dedos y otra vez detrás{goes=across-all}",
        ],
    ),
    (
        "hand-view",
        &[
            "La palma hacia ti.",
            "El dorso hacia ti.",
            "Gira la mano a la vez.",
        ],
    ),
    (
        "hand-share",
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
    (
        "hand-landing",
        &[
            "Sujeta ahí tu cabo.{landing=hold}",
            "Por dentro del bucle.{landing=inside}",
            "Por fuera del bucle.{landing=outside}",
            "De vuelta al principio: encima de la cola, y sigue.{landing=on}",
            "De vuelta al principio: sujétalo ahí.{landing=wait}",
            "De vuelta al principio: deja colgar el extremo.{landing=end}",
            "Luego otra vez hacia las yemas.{landing=round}{then=tips}",
            "Luego otra vez hacia la muñeca.{landing=round}{then=wrist}",
        ],
    ),
    (
        "hand-end",
        &[
            "",
            " Por dentro.{landing=inside}",
            " Por fuera.{landing=outside}",
            " Al principio: sobre la cola.{landing=on}",
            " Al principio: sujétalo.{landing=wait}",
            " Al principio: fin.{landing=end}",
        ],
    ),
];

const FR: Grammar = &[
    ("hand-split", &[", partie {part} sur {parts}.", "."]),
    (
        "hand-plain",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, partie {part} sur {parts}, {hand-on}. Vous êtes {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-teach",
        &[
            "{head}{hand-split} {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}{hand-split} Un trajet, c’est le cordon d’un tournant d’un côté à un tournant de l’autre. {hand-way}. {hand-view} {tmet} {hand-landing}",
            "{head}, partie {part} sur {parts}, {hand-on}. Vous êtes {hand-share}. {tmet} {hand-landing}",
            "{head}{hand-split} {hand-way}. {hand-view} {met} {hand-landing}",
            "{head}, partie {part} sur {parts}, {hand-on}. Vous êtes {hand-share}. {met} {hand-landing}",
        ],
    ),
    (
        "hand-brief",
        &["{head}{hand-split} {hand-short}. {bmet}{hand-end}"],
    ),
    (
        "hand-way",
        &[
            "Du tournant des doigts {from}, {from-place-of}, vers le poignet{hand-lane}, {hand-round}, au tournant du poignet {to}, {to-place-of}{h=falling}{turns=0}",
            "Du tournant du poignet {from}, {from-place-of}, vers le bout des doigts{hand-lane}, {hand-round}, au tournant des doigts {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-on",
        &[
            "du tournant des doigts {from} vers le poignet{hand-lane}, {hand-round}, au tournant du poignet {to}, {to-place-of}{h=falling}",
            "du tournant du poignet {from} vers le bout des doigts{hand-lane}, {hand-round}, au tournant des doigts {to}, {to-place-of}{h=rising}",
        ],
    ),
    (
        "hand-short",
        &[
            "Tournant des doigts {from}, {from-place-of}, {hand-round}, au tournant du poignet {to}, {to-place-of}{h=falling}{turns=0}",
            "Tournant du poignet {from}, {from-place-of}, {hand-round}, au tournant des doigts {to}, {to-place-of}{h=rising}{turns=0}",
        ],
    ),
    (
        "hand-lane",
        &[
            "",
            ", côté poignet du premier cordon{lane=bottom}",
            ", côté doigts du premier cordon{lane=top}",
        ],
    ),
    (
        "from-place-of",
        &[
            "sur le bord de l’index{from-at=edge-forefinger}",
            "devant l’index{from-at=front-forefinger}",
            "devant le majeur{from-at=front-middle}",
            "devant l’annulaire{from-at=front-ring}",
            "devant le petit doigt{from-at=front-little}",
            "sur le bord du petit doigt{from-at=edge-little}",
            "derrière le petit doigt{from-at=back-little}",
            "derrière l’annulaire{from-at=back-ring}",
            "derrière le majeur{from-at=back-middle}",
            "derrière l’index{from-at=back-forefinger}",
        ],
    ),
    (
        "to-place-of",
        &[
            "sur le bord de l’index{to-at=edge-forefinger}",
            "devant l’index{to-at=front-forefinger}",
            "devant le majeur{to-at=front-middle}",
            "devant l’annulaire{to-at=front-ring}",
            "devant le petit doigt{to-at=front-little}",
            "sur le bord du petit doigt{to-at=edge-little}",
            "derrière le petit doigt{to-at=back-little}",
            "derrière l’annulaire{to-at=back-ring}",
            "derrière le majeur{to-at=back-middle}",
            "derrière l’index{to-at=back-forefinger}",
        ],
    ),
    (
        "hand-round",
        &[
            "en travers par-devant{goes=front}",
            "en contournant le petit doigt vers l’arrière{goes=round-little}",
            "en travers par-derrière{goes=back}",
            "en contournant l’index vers l’avant{goes=round-forefinger}",
            "derrière les quatre doigts et de nouveau devant{goes=behind-all}",
            "devant les quatre doigts et de nouveau derrière{goes=across-all}",
        ],
    ),
    (
        "hand-view",
        &[
            "La paume vers vous.",
            "Le dos de la main vers vous.",
            "Tournez la main en même temps.",
        ],
    ),
    (
        "hand-share",
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
    (
        "hand-landing",
        &[
            "Tenez là votre cordon.{landing=hold}",
            "En dedans de la ganse.{landing=inside}",
            "En dehors de la ganse.{landing=outside}",
            "De retour au départ, enjambez le dormant et continuez.{landing=on}",
            "De retour au départ, tenez-le.{landing=wait}",
            "De retour au départ, laissez pendre le bout.{landing=end}",
            "Puis de nouveau vers le bout des doigts.{landing=round}{then=tips}",
            "Puis de nouveau vers le poignet.{landing=round}{then=wrist}",
        ],
    ),
    (
        "hand-end",
        &[
            "",
            " En dedans.{landing=inside}",
            " En dehors.{landing=outside}",
            " Au départ, enjambez le dormant.{landing=on}",
            " Départ\u{a0}: tenez-le.{landing=wait}",
            " Départ\u{a0}: arrêtez là.{landing=end}",
        ],
    ),
];
