//! The words of each ground, learnt by a listener who knows those of a tube: for every language and
//! ground what is said there, and what it means on a tube. Shares no code with the program.

/// A ground by the name of its file of messages, and what is said there for what is said on a tube; `#`
/// is any number. What comes first is heard first.
type Learnt = (
    &'static str,
    &'static str,
    &'static [(&'static str, &'static str)],
);

const LEARNT: [Learnt; 12] = [
    (
        "en",
        "near-far",
        &[
            ("on the near-end side", "the bottom-ring side"),
            ("on the far-end side", "the top-ring side"),
            (", away to mark", ", up to pin"),
            (", back to mark", ", down to pin"),
            ("near mark", "bottom pin"),
            ("far mark", "top pin"),
            ("Near mark", "Bottom pin"),
            ("Far mark", "Top pin"),
            ("past near #", "past bottom #"),
            ("past far #", "past top #"),
            (". Near #", ". Bottom #"),
            (". Far #", ". Top #"),
            ("away from you", "up"),
            ("back toward you", "down"),
            ("full turn all the way round", "full turn of the tube"),
            ("full turns all the way round", "full turns of the tube"),
            ("are once round", "are once round the tube"),
            ("are twice round", "are twice round the tube"),
            ("are # times round", "are # times round the tube"),
            (
                "a mark on one rim to a mark on",
                "a pin on one rim to a pin on",
            ),
            ("Tape the bight at", "Then round"),
            ("raise it and", "lift it and"),
            ("top pins straight on.", "top pins straight above."),
            ("straight on from", "straight above"),
        ],
    ),
    (
        "en",
        "outer-inner",
        &[
            ("on the outer-circle side", "the bottom-ring side"),
            ("on the inner-circle side", "the top-ring side"),
            (", in to pin", ", up to pin"),
            (", out to pin", ", down to pin"),
            ("# in and to the", "# up and to the"),
            ("# out and to the", "# down and to the"),
            ("#, in and to the", "#, up and to the"),
            ("#, out and to the", "#, down and to the"),
            ("#, in the bottom", "#, up the bottom"),
            ("#, in the top", "#, up the top"),
            ("#, out the bottom", "#, down the bottom"),
            ("#, out the top", "#, down the top"),
            ("# in the bottom", "# up the bottom"),
            ("# in the top", "# up the top"),
            ("# out the bottom", "# down the bottom"),
            ("# out the top", "# down the top"),
            ("inner pins half a step on", "top pins half a step on"),
            ("inner pins straight in", "top pins straight above"),
            ("outer pin", "bottom pin"),
            ("inner pin", "top pin"),
            ("Outer pin", "Bottom pin"),
            ("Inner pin", "Top pin"),
            ("past outer #", "past bottom #"),
            ("past inner #", "past top #"),
            (". Outer #", ". Bottom #"),
            (". Inner #", ". Top #"),
            ("round the hole", "round the tube"),
            ("full turn round the tube", "full turn of the tube"),
            ("full turns round the tube", "full turns of the tube"),
            ("raise it and", "lift it and"),
            ("straight in from", "straight above"),
        ],
    ),
    (
        "en",
        "knob",
        &[
            (", up to mark", ", up to pin"),
            (", down to mark", ", down to pin"),
            ("bottom mark", "bottom pin"),
            ("top mark", "top pin"),
            ("Bottom mark", "Bottom pin"),
            ("Top mark", "Top pin"),
            ("bottom-mark side", "bottom-ring side"),
            ("top-mark side", "top-ring side"),
            ("the ball", "the tube"),
            (
                "a mark on one rim to a mark on",
                "a pin on one rim to a pin on",
            ),
            ("Tape the bight at", "Then round"),
            ("raise it and", "lift it and"),
        ],
    ),
    (
        "de",
        "near-far",
        &[
            (", weg zu", ", hoch zu"),
            (", her zu", ", hinab zu"),
            ("von dir weg", "hoch"),
            ("zu dir her", "hinab"),
            ("Nah-Strich", "Fuß-Stift"),
            ("Fern-Strich", "Kopf-Stift"),
            ("Nah-Seite", "Fuß-Seite"),
            ("Fern-Seite", "Kopf-Seite"),
            ("mal ganz herum und", "mal ganz um das Rohr herum und"),
            ("bist einmal herum", "bist einmal um das Rohr herum"),
            ("bist zweimal herum", "bist zweimal um das Rohr herum"),
            ("bist #-mal herum", "bist #-mal um das Rohr herum"),
            (
                "einem Strich am einen Rand zu einem Strich",
                "einem Stift am einen Rand zu einem Stift",
            ),
            ("um den Strich", "um den Stift"),
            ("Kleb die Bucht an", "Dann um"),
            ("in einer Linie mit Fuß", "genau über Fuß"),
            ("in einer Linie damit", "genau darüber"),
        ],
    ),
    (
        "de",
        "outer-inner",
        &[
            ("hinein", "hoch"),
            ("auswärts", "hinab"),
            ("Kanten-", "Fuß-"),
            ("Loch-", "Kopf-"),
            ("um das Loch herum", "um das Rohr herum"),
            ("auf einer Linie mit Fuß", "genau über Fuß"),
            ("auf einer Linie damit", "genau darüber"),
        ],
    ),
    (
        "de",
        "knob",
        &[
            ("Fuß-Strich", "Fuß-Stift"),
            ("Kopf-Strich", "Kopf-Stift"),
            ("um die Kugel herum", "um das Rohr herum"),
            (
                "einem Strich am einen Rand zu einem Strich",
                "einem Stift am einen Rand zu einem Stift",
            ),
            ("um den Strich", "um den Stift"),
            ("Kleb die Bucht an", "Dann um"),
        ],
    ),
    (
        "es",
        "near-far",
        &[
            ("del lado tuyo", "del lado del pie"),
            ("del lado del fondo", "del lado de la cabeza"),
            (", llévalo al fondo #", ", sube a la cabeza #"),
            (", tráelo a tu lado #", ", baja al pie #"),
            ("tras tu lado #", "tras el pie #"),
            ("tras el fondo #", "tras la cabeza #"),
            (". Tu lado #", ". Pie #"),
            (". Fondo #", ". Cabeza #"),
            ("de tu lado", "del pie"),
            ("del fondo", "de la cabeza"),
            ("Lo llevas", "Subes"),
            ("Lo traes", "Bajas"),
            ("llévalo", "sube"),
            ("tráelo", "baja"),
            ("marca", "clavija"),
            ("Pégalo en", "Rodea"),
            ("vuelta entera", "vuelta al tubo"),
            ("vueltas enteras", "vueltas al tubo"),
            ("en línea con", "a plomo con"),
            ("el fondo, en línea.", "la cabeza, a plomo."),
            ("el fondo, medio", "la cabeza, medio"),
        ],
    ),
    (
        "es",
        "outer-inner",
        &[
            (", entra al hueco #", ", sube a la cabeza #"),
            (", sal al borde #", ", baja al pie #"),
            ("tras el borde #", "tras el pie #"),
            ("tras el hueco #", "tras la cabeza #"),
            (". Borde #", ". Pie #"),
            (". Hueco #", ". Cabeza #"),
            ("lado del borde", "lado del pie"),
            ("# del borde", "# del pie"),
            ("del hueco", "de la cabeza"),
            ("Entras", "Subes"),
            ("Sales", "Bajas"),
            (", entra", ", sube"),
            (", sal", ", baja"),
            ("vuelta al hueco", "vuelta al tubo"),
            ("vueltas al hueco", "vueltas al tubo"),
            ("en línea con", "a plomo con"),
            ("el hueco, en línea.", "la cabeza, a plomo."),
            ("el hueco, medio", "la cabeza, medio"),
        ],
    ),
    (
        "es",
        "knob",
        &[
            ("marca", "clavija"),
            ("Pégalo en", "Rodea"),
            ("vuelta a la bola", "vuelta al tubo"),
            ("vueltas a la bola", "vueltas al tubo"),
        ],
    ),
    (
        "fr",
        "near-far",
        &[
            ("Collez la ganse au", "Contournez le"),
            ("repère proche", "picot de base"),
            ("repère du fond", "picot de tête"),
            ("repères du fond", "picots de tête"),
            ("côté proche", "côté base"),
            ("côté fond", "côté tête"),
            ("allez au fond #", "montez à tête #"),
            ("revenez au proche #", "descendez à base #"),
            ("après fond #", "après tête #"),
            ("après proche #", "après base #"),
            (". Proche #", ". Base #"),
            (". Fond #", ". Tête #"),
            ("# du fond", "# de tête"),
            ("# proche", "# de base"),
            ("Vous allez", "Vous montez"),
            ("Vous revenez", "Vous descendez"),
            ("allez", "montez"),
            ("revenez", "descendez"),
            ("repère", "picot"),
            ("avec un tour complet", "avec un tour du tube"),
            ("à un tour complet", "à un tour du tube"),
            ("tours complets", "tours du tube"),
            ("dans le prolongement", "à l’aplomb"),
        ],
    ),
    (
        "fr",
        "outer-inner",
        &[
            ("picot du bord", "picot de base"),
            ("picot du centre", "picot de tête"),
            ("picots du centre", "picots de tête"),
            ("côté bord", "côté base"),
            ("côté centre", "côté tête"),
            ("entrez au centre #", "montez à tête #"),
            ("sortez au bord #", "descendez à base #"),
            ("après centre #", "après tête #"),
            ("après bord #", "après base #"),
            (". Bord #", ". Base #"),
            (". Centre #", ". Tête #"),
            ("# du centre", "# de tête"),
            ("# du bord", "# de base"),
            ("Vous entrez", "Vous montez"),
            ("Vous sortez", "Vous descendez"),
            ("entrez", "montez"),
            ("sortez", "descendez"),
            ("tour du centre", "tour du tube"),
            ("tours du centre", "tours du tube"),
            ("dans le prolongement", "à l’aplomb"),
        ],
    ),
    (
        "fr",
        "knob",
        &[
            ("Collez la ganse au", "Contournez le"),
            ("repère", "picot"),
            ("tour de la boule", "tour du tube"),
            ("tours de la boule", "tours du tube"),
        ],
    ),
];

/// What no ground but a tube says: by language, words of a tube that would leave a listener in doubt.
const OF_A_TUBE: [(&str, &[&str]); 4] = [
    ("en", &["tube", "-ring"]),
    ("de", &["Rohr", "-Ring"]),
    ("es", &["tubo", "anillo"]),
    ("fr", &["tube", "bague"]),
];

/// What is said on a ground, as it would be said on a tube.
pub fn as_on_a_tube(tag: &str, ground: &str, text: &str) -> Result<String, String> {
    let of_a_tube = OF_A_TUBE.iter().find(|(known, _)| *known == tag);
    let (_, of_a_tube) = of_a_tube.ok_or_else(|| format!("nobody here understands {tag}"))?;
    if let Some(word) = of_a_tube.iter().find(|word| text.contains(**word)) {
        return Err(format!("“{word}” is said on {ground}: {text}"));
    }
    let mut learnt = LEARNT.iter();
    let (_, _, words) = learnt
        .find(|(language, name, _)| (*language, *name) == (tag, ground))
        .ok_or_else(|| format!("nobody here learnt the words of {ground} in {tag}"))?;
    // A sentence that begins the text is like any other.
    let mut heard = format!(". {text}");
    for (said, meant) in *words {
        heard = replaced(&heard, said, meant);
    }
    Ok(heard[2..].to_owned())
}

/// The text with something in the place of something else; `#` is the same number in both.
fn replaced(text: &str, said: &str, meant: &str) -> String {
    let Some((before, after)) = said.split_once('#') else {
        return text.replace(said, meant);
    };
    let mut done = String::new();
    let mut rest = text;
    loop {
        let found = rest.char_indices().find_map(|(at, _)| {
            let number = rest[at..].strip_prefix(before)?;
            let digits = number.bytes().take_while(u8::is_ascii_digit).count();
            let is_whole = before
                .is_empty()
                .then(|| !rest[..at].ends_with(|letter: char| letter.is_ascii_digit()));
            let fits =
                digits > 0 && is_whole.unwrap_or(true) && number[digits..].starts_with(after);
            fits.then(|| {
                (
                    at,
                    &number[..digits],
                    at + before.len() + digits + after.len(),
                )
            })
        });
        let Some((at, number, end)) = found else {
            return done + rest;
        };
        done.push_str(&rest[..at]);
        done.push_str(&meant.replace('#', number));
        rest = &rest[end..];
    }
}
