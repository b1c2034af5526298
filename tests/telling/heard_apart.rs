//! By ear no two words that decide something are alike: their sounds, as espeak-ng gives them, differ
//! in half of them at least.

use crate::in_time;

use in_time::InTime as _;
use std::fs;
use std::path::Path;
use std::process::Command;

use marlinspeak::words::{Detail, Words};
use tempfile::TempDir;

/// For each language the words that must not be taken for one another, as they stand in its messages:
/// over and under, the rims, the two sides of a first cord, the ways round the tube, up and down, inside
/// and outside, the rows of nested bights, the two ends.
const PAIRS: [(&str, [[&str; 2]; 8]); 4] = [
    (
        "en",
        [
            ["over", "under"],
            ["top pin", "bottom pin"],
            ["top-ring side", "bottom-ring side"],
            ["right", "left"],
            ["up", "down"],
            ["inside", "outside"],
            ["outer row", "inner row"],
            ["the tail", "the working end"],
        ],
    ),
    (
        "de",
        [
            ["geh über", "tauch unter"],
            ["Kopf-Stift", "Fuß-Stift"],
            ["Kopf-Seite", "Fuß-Seite"],
            ["rechts", "links"],
            ["hoch", "hinab"],
            ["Innen in", "Außen um"],
            ["äußeren Reihe", "inneren Reihe"],
            ["stehenden Ende", "Arbeitsende"],
        ],
    ),
    (
        "fr",
        [
            ["enjambez", "glissez sous"],
            ["picot de tête", "picot de base"],
            ["côté tête", "côté base"],
            ["droite", "gauche"],
            ["montez", "descendez"],
            ["En dedans de", "En dehors de"],
            ["rang de dehors", "rang de dedans"],
            ["dormant", "courant"],
        ],
    ),
    (
        "es",
        [
            ["Encima de", "Debajo de"],
            ["de la cabeza", "del pie"],
            ["del lado de la cabeza", "del lado del pie"],
            ["derecha", "izquierda"],
            ["sube", "baja"],
            ["Por dentro", "Por fuera"],
            ["fila de fuera", "fila de dentro"],
            ["la cola", "chicote de trabajo"],
        ],
    ),
];

/// The sounds of a text, without stress and length.
fn sounds(tag: &str, text: &str) -> Vec<char> {
    let heard = Command::new("espeak-ng")
        .args(["-q", "--ipa", "-v", tag, text])
        .output_in_time();
    assert!(heard.status.success(), "{tag}: {text}");
    let heard = String::from_utf8(heard.stdout).unwrap();
    heard
        .chars()
        .filter(|sound| !sound.is_whitespace() && !"ˈˌː-".contains(*sound))
        .collect()
}

/// What is left of two rows of sounds without what both begin and end with: the ear waits for the
/// difference.
fn apart<'s>(mut one: &'s [char], mut other: &'s [char]) -> [&'s [char]; 2] {
    while let ([first, rest @ ..], [same, others @ ..]) = (one, other)
        && first == same
    {
        (one, other) = (rest, others);
    }
    while let ([rest @ .., last], [others @ .., same]) = (one, other)
        && last == same
    {
        (one, other) = (rest, others);
    }
    [one, other]
}

/// How many sounds have to be changed, left out or put in to make one of the other (Levenshtein,
/// Soviet Physics Doklady 10 (1966) 707).
fn distance(one: &[char], other: &[char]) -> usize {
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (above, sound) in one.iter().enumerate() {
        let mut diagonal = above;
        row[0] = above + 1;
        for (index, same) in other.iter().enumerate() {
            let changed = diagonal + usize::from(sound != same);
            diagonal = row[index + 1];
            row[index + 1] = changed.min(row[index] + 1).min(diagonal + 1);
        }
    }
    row[other.len()]
}

#[test]
fn what_decides_is_not_mistaken_for_its_opposite() {
    for (tag, pairs) in PAIRS {
        let messages = ["steps", "pins", "after", "rims"]
            .map(|file| fs::read_to_string(format!("i18n/{tag}/{file}.ftl")).unwrap())
            .concat();
        for pair in pairs {
            for words in pair {
                assert!(messages.contains(words), "{tag}: “{words}” is not said");
            }
            differs(tag, pair);
        }
    }
}

/// Two words are told apart by half of the sounds that are not common to their beginnings and ends.
fn differs(tag: &str, pair: [&str; 2]) {
    let [one, other] = pair.map(|words| sounds(tag, words));
    let differ = distance(&one, &other);
    let [one, other] = apart(&one, &other);
    let length = one.len().max(other.len());
    assert!(
        differ >= 2 && 2 * differ >= length,
        "{tag}: {pair:?} differ in {differ} of {length} sounds: {one:?}, {other:?}"
    );
}

/// The same on other grounds: the file of the ground, and what must not be taken for one another there.
const ON_GROUNDS: [(&str, &str, &[[&str; 2]]); 11] = [
    (
        "en",
        "near-far",
        &[
            ["near mark", "far mark"],
            ["near-end side", "far-end side"],
            ["away from you", "back toward you"],
        ],
    ),
    (
        "en",
        "outer-inner",
        &[
            ["outer pin", "inner pin"],
            ["outer-circle side", "inner-circle side"],
            ["in", "out"],
        ],
    ),
    ("en", "knob", &[["bottom mark", "top mark"]]),
    (
        "de",
        "near-far",
        &[
            ["Nah-Strich", "Fern-Strich"],
            ["Nah-Seite", "Fern-Seite"],
            ["von dir weg", "zu dir her"],
        ],
    ),
    (
        "de",
        "outer-inner",
        &[
            ["Kanten-Stift", "Loch-Stift"],
            ["Kanten-Seite", "Loch-Seite"],
            ["hinein", "auswärts"],
        ],
    ),
    ("de", "knob", &[["Fuß-Strich", "Kopf-Strich"]]),
    (
        "es",
        "near-far",
        &[
            ["de tu lado", "del fondo"],
            ["del lado tuyo", "del lado del fondo"],
            ["llévalo", "tráelo"],
        ],
    ),
    (
        "es",
        "outer-inner",
        &[
            ["del borde", "del hueco"],
            ["del lado del borde", "del lado del hueco"],
            ["entra", "sal"],
        ],
    ),
    (
        "fr",
        "near-far",
        &[
            ["repère proche", "repère du fond"],
            ["côté proche", "côté fond"],
            ["allez", "revenez"],
        ],
    ),
    (
        "fr",
        "outer-inner",
        &[
            ["picot du bord", "picot du centre"],
            ["côté bord", "côté centre"],
            ["entrez", "sortez"],
        ],
    ),
    ("fr", "knob", &[["repère de base", "repère de tête"]]),
];

#[test]
fn what_decides_on_another_ground_is_not_mistaken_for_its_opposite() {
    for (tag, ground, pairs) in ON_GROUNDS {
        let messages = fs::read_to_string(format!("i18n/{tag}/grounds/{ground}.ftl")).unwrap();
        for pair in pairs {
            for words in pair {
                assert!(messages.contains(words), "{tag}: “{words}” is not said");
            }
            differs(tag, *pair);
        }
    }
}

/// A language, its words for the sides, and those that make sure of them or could be taken for one.
type SideWords = (
    &'static str,
    [&'static str; 2],
    &'static [&'static str],
    &'static [&'static str],
);

/// For each language the words for right and left, what must stand before them to be heard as a side, and
/// words that sound like one of them and mean something else.
const SIDES: [SideWords; 4] = [
    // "Up and right to top pin 3" is heard as "right to the top", and "left" as what is over.
    ("en", ["right", "left"], &["the"], &["rightly", "write"]),
    (
        "de",
        ["rechts", "links"],
        &["nach", "weiter"],
        &["richtig", "recht", "direkt"],
    ),
    (
        "es",
        ["derecha", "izquierda"],
        &["la"],
        &["derecho", "directo"],
    ),
    (
        "fr",
        ["droite", "gauche"],
        &["la", "à"],
        &["droit", "direct"],
    ),
];

/// Everything that was read through as it is spoken, in a language.
fn said(tag: &str) -> Vec<String> {
    let told = fs::read_to_string(format!("tests/data/languages/{tag}.txt")).unwrap();
    let spoken = [
        "brief", "plain", "teach", "wrong", "back", "where", "question",
    ];
    let lines = told.lines().filter_map(|line| line.split_once(": "));
    lines
        .filter(|(kind, _)| spoken.contains(kind))
        .map(|(_, said)| said.to_lowercase())
        .collect()
}

#[test]
fn the_word_for_a_side_is_only_ever_a_side() {
    for (tag, sides, before, alike) in SIDES {
        let mut heard = [0; 2];
        for said in said(tag) {
            let words: Vec<&str> = said
                .split(|letter: char| !letter.is_alphanumeric())
                .filter(|word| !word.is_empty())
                .collect();
            for (index, word) in words.iter().enumerate() {
                assert!(!alike.contains(word), "{tag}: “{word}” in {said}");
                let Some(side) = sides.iter().position(|side| side == word) else {
                    continue;
                };
                heard[side] += 1;
                let leads_in = index.checked_sub(1).map(|index| words[index]);
                assert!(
                    leads_in.is_some_and(|word| before.contains(&word)),
                    "{tag}: “{word}” behind {leads_in:?} in {said}"
                );
            }
        }
        assert!(heard.iter().all(|heard| *heard > 20), "{tag}: {heard:?}");
    }
}

/// The traps that the languages avoid would be caught.
#[test]
fn words_that_are_alike_are_found() {
    for (tag, pair) in [("de", ["unten", "unter"]), ("fr", ["dessus", "dessous"])] {
        let [one, other] = pair.map(|words| sounds(tag, words));
        assert!(distance(&one, &other) <= 2, "{pair:?}");
    }
}

/// For each language what is said of a length in inches, as it stands among the steps that were read
/// through, and the same in words alone.
const FRACTIONS: [(&str, [[&str; 2]; 3]); 4] = [
    (
        "en",
        [
            [
                "5 sixty-fourths of an inch",
                "five sixty-fourths of an inch",
            ],
            [
                "1 and 9 sixteenths inches",
                "one and nine sixteenths inches",
            ],
            ["6 feet 5 inches", "six feet five inches"],
        ],
    ),
    (
        "de",
        [
            ["5 vierundsechzigstel Zoll", "fünf vierundsechzigstel Zoll"],
            ["1 und 9 sechzehntel Zoll", "eins und neun sechzehntel Zoll"],
            ["6 Fuß und 5 Zoll", "sechs Fuß und fünf Zoll"],
        ],
    ),
    (
        "es",
        [
            [
                "5 sesentaicuatroavos de pulgada",
                "cinco sesentaicuatroavos de pulgada",
            ],
            [
                "una pulgada y 9 dieciseisavos",
                "una pulgada y nueve dieciseisavos",
            ],
            ["6 pies y 5 pulgadas", "seis pies y cinco pulgadas"],
        ],
    ),
    (
        "fr",
        [
            [
                "5 soixante-quatrièmes de pouce",
                "cinq soixante-quatrièmes de pouce",
            ],
            ["1 pouce et 9 seizièmes", "un pouce et neuf seizièmes"],
            ["6 pieds 5 pouces", "six pieds cinq pouces"],
        ],
    ),
];

#[test]
fn fractions_are_heard_as_a_person_says_them() {
    for (tag, lengths) in FRACTIONS {
        let told = fs::read_to_string(format!("tests/data/languages/{tag}.txt")).unwrap();
        for [said, meant] in lengths {
            assert!(told.contains(said), "{tag}: “{said}” is not said");
            assert_eq!(sounds(tag, said), sounds(tag, meant), "{tag}: {said}");
        }
    }
    // What stands on the screen would be read with its stroke.
    assert_ne!(
        sounds("en", "5/64 inch"),
        sounds("en", FRACTIONS[0].1[0][1])
    );
}

/// Seconds that espeak-ng takes to say a file at 165 words a minute, with the pauses it makes: the length of
/// its sound, 44-byte head and 16 bits a sample (RIFF WAVE, the form that it writes).
fn spoken_seconds(tag: &str, told: &Path, folder: &TempDir) -> f64 {
    let sound = folder.path().join("told.wav");
    let said = Command::new("espeak-ng")
        .args(["-s", "165", "-v", tag, "-f"])
        .arg(told)
        .arg("-w")
        .arg(&sound)
        .status();
    assert!(said.unwrap().success(), "{tag}");
    let bytes = fs::read(&sound).unwrap();
    let rate = u32::from_le_bytes(bytes[24..28].try_into().unwrap());
    let samples = u32::try_from((bytes.len() - 44) / 2).unwrap();
    f64::from(samples) / f64::from(rate)
}

/// The whole job as it was read through, read aloud. What is counted by syllables leaves out the pauses, and
/// voices differ: it is near what a voice takes, and that keeps within the minutes that a job may take.
#[test]
fn the_whole_job_is_read_aloud_in_its_time() {
    let folder = TempDir::new().unwrap();
    for (tag, share) in [("en", 1.0), ("de", 1.2), ("fr", 1.2), ("es", 1.2)] {
        let words = Words::load(Some(tag)).unwrap();
        for detail in Detail::ALL {
            let script = format!("tests/data/scripts/5x6x2-{tag}-{}.txt", detail.name());
            let script = fs::read_to_string(script).unwrap();
            // Behind the number and the phase of each step.
            let steps: Vec<&str> = script
                .lines()
                .map(|line| line.split_once("] ").unwrap().1)
                .collect();
            assert!(steps.len() > 40, "{tag}");
            let told = folder.path().join("told.txt");
            fs::write(&told, steps.join("\n\n")).unwrap();
            let spoken = spoken_seconds(tag, &told, &folder);
            let most = if detail == Detail::Teach { 13.0 } else { 12.0 };
            let what = format!("{tag} {}: {spoken} s", detail.name());
            assert!(spoken > 240.0 && spoken <= most * 60.0 * share, "{what}");
            let counted: f64 = steps.iter().map(|step| words.seconds_of(step)).sum();
            let ratio = spoken / counted;
            assert!((0.85..=1.7).contains(&ratio), "{what}, {counted} counted");
        }
    }
}
