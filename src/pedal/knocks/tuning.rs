//! Sizes and thresholds of the ear, each with its reason.
//!
//! They were found on the bench of `tests/knocks/`: knocks by the physics of struck benches in
//! twenty rooms, and what is no knock, the program's own voice first of all. How good they are is
//! measured there with other bodies, rooms and voices too, which none was chosen with. Levels are
//! in decibels, times in looks of 2.5 ms.

use std::ops::RangeInclusive;

/// How long one look at the sound is, in seconds: the onset of a knock is over in one or two.
pub(super) const LOOK: f64 = 0.0025;

/// The octaves that are listened to, from and to in hertz. Below them is hum; the knuckle lies on
/// the bench for a millisecond or more, so there is little of a knock above 2 kHz. The last two
/// tell what is struck by something hard: a pin, a key of a keyboard.
pub(super) const OCTAVES: [(f64, f64); 6] = [
    (120.0, 250.0),
    (250.0, 500.0),
    (500.0, 1000.0),
    (1000.0, 1900.0),
    (1900.0, 3500.0),
    (3500.0, 7000.0),
];
/// How many of the octaves make up the loudness; the last is listened to for its ringing alone.
pub(super) const LOUD: usize = 5;
/// How many of them a knock is louder in than in the others.
pub(super) const DULL: usize = 4;

/// What a knock must be, and what two of them must have in common. Levels in decibels, times in
/// looks of 2.5 ms.
#[derive(Clone, Debug)]
pub struct Tuning {
    /// Looks from an onset until it is judged: 85 ms, so that with a block of the sound card the
    /// answer comes within 120 ms of the knock.
    pub judged_after: usize,
    /// Looks before onsets are noticed: in a second it is known what stands out.
    pub notices_from: usize,
    /// Looks before anything is taken for a knock: in four seconds it is known what the room is
    /// full of, such as rain.
    pub learns_for: usize,
    /// An onset is left alone where within 20 ms it rises more steeply by this factor: what pokes out of
    /// the noise just before a knock is no part of it.
    pub steeper: f32,
    /// An onset rises by this over the 30 ms before it; a knock 6 dB over noise still does.
    pub rise: f32,
    /// A knock is broad: so many octaves rise by [`Tuning::octave_rise`].
    pub octaves_rising: usize,
    /// See [`Tuning::octaves_rising`].
    pub octave_rise: f32,
    /// By how much it is lower after 45 to 85 ms than at its peak. In a hard room, on sheet metal,
    /// under noise, that is little.
    pub fall: f32,
    /// How much of it lies in its first 20 ms, against the 50 ms after them.
    pub concentration: f32,
    /// By how much nothing in the 70 ms after its first 15 ms is louder: a word grows, a knock
    /// does not. The clearer the rise, the less is asked.
    pub stays_top: f32,
    /// What is clear of the room, and lacks some of its fall, may be a knock for all that: a hard room can
    /// throw back more than comes straight. It is one where another of its row goes on as it does: a room
    /// throws back both alike, but no two syllables are. How far the courses of the two differ, in the
    /// mean, with [`Tuning::differs`] and [`Tuning::lacks_fall`], comes to no more than this then.
    pub alike: f32,
    /// How much it counts for [`Tuning::alike`] that one is louder.
    pub differs: f32,
    /// How much what it lacks counts for [`Tuning::alike`].
    pub lacks_fall: f32,
    /// The same for what the first of a row lacks of [`Tuning::first_rise_most`].
    pub lacks_rise: f32,
    /// The least of [`Tuning::stays_top`].
    pub stays_top_least: f32,
    /// Over the level that the last seconds seldom pass (nine tenths of them are below).
    pub over_ceiling: f32,
    /// As much more is asked, at most, where that level is far over the middle one: a background
    /// that swings, such as a voice or rain, is passed by more than a steady one.
    pub swing: f32,
    /// By so much the two levels are apart in steady noise: nothing more is asked.
    pub swing_from: f32,
    /// For each decibel above that so many more are asked.
    pub swing_by: f32,
    /// Each single knock that nothing followed asks for so much more, up to three of them: where drops
    /// fall, or things are put down, many sound like one.
    pub doubt: f32,
    /// For how long it does: half a minute.
    pub doubts_for: usize,
    /// Over the level that half of the last seconds are below.
    pub over_floor: f32,
    /// The four octaves below 2 kHz over those above: a knuckle is soft. A clap of hollow hands
    /// passes; pins, keys of a keyboard and fingernails do not.
    pub dullness: f32,
    /// The least of it, where another of its row is like it.
    pub dullness_least: f32,
    /// Where an onset is this far over the floor, nothing hides what it is: then
    /// [`Tuning::clear_fall`] and [`Tuning::clear_sum`] are asked too, which plucked strings miss.
    pub clear: f32,
    /// See [`Tuning::clear`].
    pub clear_fall: f32,
    /// Where the level that is seldom passed is so far over the middle one, something else sounds now and
    /// then: that may be strings, and [`Tuning::among_fall`] is asked in place of
    /// [`Tuning::clear_fall`].
    pub among: f32,
    /// See [`Tuning::among`].
    pub among_fall: f32,
    /// Fall, concentration and staying on top together.
    pub clear_sum: f32,
    /// The rise is at least half of what it is over the floor, up to this: the parts of a word
    /// rise out of one another.
    pub rise_most: f32,
    /// The same for what follows a knock, and rises out of its ringing: in a room that takes a
    /// second to fall by 60 dB that is 7 dB lower after the shortest gap, and no more.
    pub rise_behind: f32,
    /// The same for the first of a row, with six tenths: before it there was no other.
    pub first_rise_most: f32,
    /// Before the first of a row nothing was as loud as this below it for
    /// [`Tuning::quiet_for`].
    pub quiet: f32,
    /// 300 ms: longer than between two keys of a quick typist.
    pub quiet_for: usize,
    /// From one knock to the next of its row. A hand is no faster than 120 ms, and who means two
    /// does not wait for longer than half a second.
    pub gap: RangeInclusive<usize>,
    /// How much louder or softer the next knock of a row may be. The same hand strikes the same
    /// bench; what falls and bounces loses more each time.
    pub same_level: f32,
    /// How far the octaves of the two may differ, in the mean, apart from their loudness.
    pub same_sound: f32,
    /// Between two knocks it is so much quieter than either, in the last quarter of the gap, when the first
    /// has rung; less where the noise leaves no room for it.
    pub lull: f32,
    /// The least of [`Tuning::lull`].
    pub lull_least: f32,
    /// What two knocks of a row may lack together, in decibels, of [`Tuning::row_stands_out`] and of
    /// [`Tuning::row_falls`]; less by what [`Tuning::swing`] asks more, where something else sounds now and
    /// then. The syllables of a slow voice, strings and drops lack a little of each.
    pub row_lacks: f32,
    /// By so much each knock of a row rises, and so much quieter it is between the two, or by half of what
    /// the softer is over the floor if that is less: a knock is over long before the next one comes, a
    /// syllable or a string goes on under it.
    pub row_stands_out: f32,
    /// Where it is clear of the room ([`Tuning::clear`]) the fall of each knock of a row and its dullness
    /// come to so much together: what is bright for a knuckle must be over the sooner, as a clap is. Strings
    /// and vowels are bright and ring on.
    pub row_falls: f32,
    /// A row comes out of a pause. Where something like its first knock, and as loud ([`Tuning::same_sound`],
    /// [`Tuning::same_level`]), was this long before it, in gaps from the first to the second, that is one
    /// drop after the other. Who knocks one row soon after another, every second and a half, waits longer:
    /// under half a second it would be a third knock.
    pub train_gaps: RangeInclusive<f32>,
    /// Drops from one tap may differ by more. So many before the first that are like it, each this long
    /// before the next, are a train though they are softer or louder.
    pub train: usize,
    /// See [`Tuning::train`]: in gaps from the first to the second.
    pub train_evenly: RangeInclusive<f32>,
    /// See [`Tuning::train`]: by no more than this.
    pub train_level: f32,
    /// An onset that is outdone by this soon after is the beginning of a word, and a knock may come
    /// on its heels; one that is not, or by less, is over before the next is looked for.
    pub outdone: f32,
    /// An onset that is softer than a knock by no more than this counts for [`Tuning::busy`] and
    /// [`Tuning::often`]: drops from one tap differ by as much.
    pub as_loud: f32,
    /// Onsets that are as loud as a knock in the second and a half before it, but for those of rows: with so
    /// many it is rain, typing or a drum, and no row begins.
    pub busy: usize,
    /// So many in the time of [`Tuning::often_for`] are drops that fall now and then.
    pub often: usize,
    /// So many are enough of them where a row is only taken because its knocks are alike: drops are too.
    pub often_alike: usize,
    /// Five seconds.
    pub often_for: usize,
}

impl Default for Tuning {
    fn default() -> Self {
        Self {
            judged_after: 34,
            notices_from: 400,
            learns_for: 1500,
            steeper: 1.2,
            rise: 6.0,
            octaves_rising: 2,
            octave_rise: 5.0,
            fall: -1.5,
            concentration: -8.0,
            stays_top: -0.8,
            alike: 3.3,
            differs: 0.25,
            lacks_fall: 0.25,
            lacks_rise: 0.25,
            stays_top_least: -3.0,
            over_ceiling: 5.2,
            swing: 5.0,
            swing_from: 0.6,
            swing_by: 1.5,
            doubt: 2.5,
            doubts_for: 12_000,
            over_floor: 6.5,
            dullness: 7.0,
            dullness_least: 4.5,
            clear: 18.0,
            clear_fall: 1.0,
            among: 14.0,
            among_fall: 4.2,
            clear_sum: -4.0,
            rise_most: 10.0,
            rise_behind: 7.0,
            first_rise_most: 16.0,
            quiet: 4.0,
            quiet_for: 120,
            gap: 48..=200,
            same_level: 10.0,
            same_sound: 6.1,
            lull: 6.0,
            lull_least: 3.5,
            row_lacks: 9.0,
            row_stands_out: 13.0,
            row_falls: 24.0,
            train_gaps: 0.6..=1.6,
            train: 3,
            train_evenly: 0.8..=1.25,
            train_level: 20.0,
            outdone: -8.0,
            as_loud: 12.0,
            busy: 3,
            often: 7,
            often_alike: 3,
            often_for: 2000,
        }
    }
}
