//! The session itself: what a press, a report of a service or a timer comes to.

use std::time::Duration;

use super::auto_advance::AutoAdvance;
use super::effect::{Effect, Timer};
use super::knock_row::Knocking;
use super::notices::Notices;
use super::page::{Page, PagePart};
use super::tie_in_hand::TieInHand;
use super::walk::Walk;
use crate::files::Teller;
use crate::guide::{AtOnce, Checks, JobPart};
use crate::pedal::{Input, InputEvent, Intent, Pedals};
use crate::settings::Settings;
use crate::shelf::{ShelfError, ShelfReading, ShelfTrouble, TieId};
use crate::words::{Detail, Sentence, Spoken, Words};

/// What was asked for on the command line. It comes before what is saved, whatever its value.
///
/// ```
/// use marlinspeak::session::{Session, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::{Detail, Words};
///
/// let mut saved = Settings::default();
/// saved.verbosity.detail = Detail::Brief;
/// let wishes = Wishes { detail: Some(Detail::Plain), ..Wishes::default() };
/// let session = Session::new(Words::english(), saved, wishes);
/// assert_eq!(session.words().detail(), Detail::Plain);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Wishes {
    /// How much is said of a step.
    pub detail: Option<Detail>,
    /// How many crossings are told at once.
    pub at_once: Option<AtOnce>,
    /// How often there is a look at the work.
    pub checks: Option<Checks>,
}

/// The tyer at work: what is preferred, what must be known, and the tie in hand if there is one.
///
/// What it wants done is left in [`Session::effects`] until the face takes it. Times are counted
/// from any one beginning, the same for every call.
///
/// ```
/// use marlinspeak::session::{Session, Wishes};
/// use marlinspeak::settings::Settings;
/// use marlinspeak::words::Words;
///
/// let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
/// // Before anything else the voice is told how it is to speak; each effect is given once.
/// assert_eq!(session.effects().len(), 1);
/// assert_eq!(session.effects().len(), 0);
/// assert!(session.page().is_none(), "nothing is in hand yet");
/// ```
#[derive(Debug)]
pub struct Session {
    pub(super) words: Words,
    pub(super) settings: Settings,
    /// How much is said of a step outside the course.
    pub(super) detail: Detail,
    pub(super) at_once: AtOnce,
    pub(super) checks: Checks,
    pub(super) pedals: Pedals,
    pub(super) notices: Notices,
    pub(super) auto_advance: AutoAdvance,
    pub(super) tie: Option<TieInHand>,
    /// Whether the tie is before the tyer's eyes, and not behind the settings or the log.
    pub(super) is_before_the_eyes: bool,
    pub(super) is_flashing: bool,
    pub(super) has_focus: bool,
    /// The tie that was refused last since it is open elsewhere.
    pub(super) refused: Option<TieId>,
    pub(super) effects: Vec<Effect>,
    pub(super) knocking: Knocking,
}

impl Session {
    /// Whether the tie is held.
    pub const fn is_paused(&self) -> bool {
        self.notices.is_paused()
    }

    /// A session with nothing in hand.
    pub fn new(mut words: Words, settings: Settings, wishes: Wishes) -> Self {
        let detail = wishes.detail.unwrap_or(settings.verbosity.detail);
        words.set_detail(detail);
        let speech = settings.speech_in(&words);
        Self {
            words,
            detail,
            at_once: wishes.at_once.unwrap_or(settings.verbosity.at_once),
            checks: wishes.checks.unwrap_or_default(),
            pedals: Pedals::new(settings.bindings.clone(), settings.times),
            settings,
            notices: Notices::default(),
            auto_advance: AutoAdvance::default(),
            tie: None,
            is_before_the_eyes: false,
            is_flashing: false,
            has_focus: false,
            refused: None,
            effects: vec![Effect::SetSpeech(speech)],
            knocking: Knocking::default(),
        }
        .listening()
    }

    /// What is to be done now, in order; each is given once.
    pub fn effects(&mut self) -> Vec<Effect> {
        std::mem::take(&mut self.effects)
    }

    /// The words everything is told in.
    pub const fn words(&self) -> &Words {
        &self.words
    }

    /// What the tyer prefers.
    pub const fn settings(&self) -> &Settings {
        &self.settings
    }

    /// The tie in hand.
    pub const fn tie(&self) -> Option<&TieInHand> {
        self.tie.as_ref()
    }

    /// Whether the edge of the screen flashes just now.
    pub const fn is_flashing(&self) -> bool {
        self.is_flashing
    }

    /// What the presses mean.
    pub const fn pedals(&self) -> &Pedals {
        &self.pedals
    }

    /// What a lost voice means, while it is lost: it holds for as long as the service is away, and
    /// has a place of its own.
    pub fn voice_lost(&self) -> Option<String> {
        self.notices.voice_lost(&self.words).map(String::from)
    }

    /// What the tyer must know besides the step.
    pub fn notices(&self) -> Vec<String> {
        self.sentences().into_iter().map(String::from).collect()
    }

    /// The notices for the ear, one after the other.
    pub fn say_notices(&self) -> Spoken {
        let pause = self.notices.pause(&self.words);
        let voice = self.notices.voice_lost(&self.words);
        let all = self.sentences().into_iter().chain(pause).chain(voice);
        all.map(Spoken::from).collect()
    }

    fn sentences(&self) -> Vec<Sentence> {
        let mut sentences = self.notices.sentences(&self.words);
        if self.is_before_the_eyes && self.tie.as_ref().is_some_and(TieInHand::looks_only) {
            sentences.insert(0, self.words.notice("look-only", &[]));
        }
        let tie = self.tie.as_ref().filter(|_| self.is_before_the_eyes);
        sentences.extend(tie.and_then(|tie| self.not_rigged(tie)));
        sentences
    }

    /// Why the tube of a tie cannot be rigged for its knot: then it has no steps before the first
    /// leg, though tube and cord are named.
    pub(super) fn not_rigged(&self, tie: &TieInHand) -> Option<Sentence> {
        let rig = tie.tie().plan.rig();
        rig.err().map(|error| self.words.rig_error(error))
    }

    /// The tie in hand from its longest name to its shortest; of a batch first which piece it is.
    fn named(&self, walk: &Walk) -> [String; 4] {
        let plan = walk.script().plan();
        let names = [
            self.words.telling(plan, walk.script().at_once()),
            self.words.tie_line(plan),
            self.words.tie_without_weave(plan),
            self.words.tie_in_short(plan),
        ];
        let batch = self.tie.as_ref().and_then(|tie| tie.tie().batch.as_ref());
        let Some(batch) = batch else { return names };
        let piece = self.words.piece_of_batch(batch);
        names.map(|name| format!("{} · {name}", piece.shown()))
    }

    /// Everything that is shown of the tie in hand.
    pub fn page(&self) -> Option<Page> {
        let walk = self.tie.as_ref()?.walk();
        let words = self.words.on(walk.script().plan().rims());
        Some(Page {
            notices: self.notices(),
            voice_lost: self.voice_lost(),
            shown: walk.shown().clone(),
            pause: self.notices.pause(&self.words).map(String::from),
            answer: walk.answer().map(str::to_owned),
            is_whereabouts: walk.is_whereabouts(),
            tie: self.named(walk),
            keys: walk.keys(),
            job: walk
                .job()
                .into_iter()
                .map(|part| page_part(part, &words))
                .collect(),
            time_left: walk
                .time_left()
                .map(|minutes| self.words.time_left(minutes)),
        })
    }

    /// What an input comes to, on any screen: the meaning of the gesture that it makes or ends.
    pub fn take(&mut self, raw: &InputEvent, now: Duration) -> Option<Intent> {
        if let Input::Knocks(number) = raw.input {
            return self.knocked(number, raw.transition, now);
        }
        self.knocking.forget();
        let has_gestures = self.is_before_the_eyes;
        let intent = self.pedals.take(raw, now, has_gestures);
        self.wait_for_gesture(now);
        intent
    }

    /// What an input is where everything that is pressed is to be learnt: none when it is the
    /// bounce of a press before.
    pub fn take_to_learn(&mut self, raw: &InputEvent, now: Duration) -> Option<Input> {
        self.pedals.pressed(raw, now)
    }

    /// The gesture that has come about by waiting.
    pub fn gesture_due(&mut self, now: Duration) -> Option<Intent> {
        let intent = self.pedals.wait(now);
        self.wait_for_gesture(now);
        intent
    }

    pub(super) fn wait_for_gesture(&mut self, now: Duration) {
        let due = self.pedals.due().map(|due| due.saturating_sub(now));
        self.wake(Timer::Gesture, due);
    }

    /// Somebody pressed something: news that was told has been seen.
    pub fn seen(&mut self) {
        self.notices.press();
    }

    /// The sentence for what the shelf refused; it stands among the notices from now on.
    pub fn refuse(&mut self, error: &ShelfError) -> Sentence {
        self.notices.refused(error, &self.words)
    }

    /// What was read from the shelf besides. What is wrong with it stands among the notices from
    /// now on; what of that is new comes along, to be said.
    pub fn noted<T>(&mut self, reading: ShelfReading<T>) -> (T, Spoken) {
        let mut noting = self.notices.noting(&self.words);
        let value = reading.hand_on(&mut noting);
        (value, noting.said())
    }

    /// What was found when the whole shelf was looked through: what is wrong stands among the
    /// notices, and what stood there before is dropped.
    pub fn looked_through<T>(&mut self, reading: ShelfReading<T>) -> T {
        self.notices.shelf_anew();
        self.noted(reading).0
    }

    /// The tyer wants to leave, and something is not saved: it is asked whether to leave all the
    /// same.
    pub fn ask_before_leaving(&mut self) {
        let sentence = self.words.leaving_unsaved(self.saving_failure());
        self.notices.leaving(sentence.clone());
        self.tell(sentence.into());
    }

    /// Whether it is told that saving takes long, or fails.
    pub const fn is_saving_late(&self) -> bool {
        self.notices.saving.is_late()
    }

    /// A press cannot wait any longer until the one before it is on disk: that is shown.
    pub fn goes_on_unsaved(&mut self) {
        let news = self.notices.saving.goes_on();
        self.saving_news(news);
    }

    /// There is no shelf: whatever is done at a tie is lost when the tyer leaves, and said to be.
    pub fn no_shelf(&mut self, error: &ShelfError) {
        self.notices.saving.nowhere(error.clone());
    }

    /// Whether there is no shelf, and something was done that should be on it.
    pub const fn is_lost(&self) -> bool {
        self.notices.saving.is_lost()
    }

    /// Why nothing can be saved, as far as that is known.
    pub const fn saving_failure(&self) -> Option<&ShelfError> {
        self.notices.saving.failure()
    }

    /// Takes in good news, to stand among the notices until the next press.
    pub fn good_news(&mut self, news: Sentence) {
        self.notices.tell(news);
    }

    /// The way through the steps of the tie in hand.
    pub fn walk(&self) -> Option<&Walk> {
        self.tie.as_ref().map(TieInHand::walk)
    }
}

impl Teller<ShelfTrouble> for Session {
    /// They stand among the notices from now on, and what of them is new is said.
    fn tell_of(&mut self, troubles: Vec<ShelfTrouble>) {
        let ((), said) = self.noted(ShelfReading::of((), troubles));
        if !said.is_empty() {
            self.tell(said);
        }
    }
}

fn page_part(part: JobPart, words: &Words) -> PagePart {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a share of the whole, in percent"
    )]
    let percent = (part.done * 100.0).round() as u8;
    PagePart {
        name: words.job_part(part.phase),
        percent,
        is_now: part.is_now,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::Plan;
    use crate::session::{Event, new_tie};
    use crate::shelf::Kept;

    #[test]
    fn leaving_what_is_not_saved_is_asked_until_the_next_press_with_the_reason() {
        let mut session = Session::new(Words::english(), Settings::default(), Wishes::default());
        let tie = new_tie(&Plan::read("4", "7", "2", "1").unwrap());
        let refused = Kept::Failed {
            id: tie.id().clone(),
            error: ShelfError::NoHome,
            attempts: 1,
        };
        session.hear(Event::Kept(refused), &Spoken::default(), Duration::ZERO);
        session.effects();
        session.ask_before_leaving();
        let asked = session.words().leaving_unsaved(Some(&ShelfError::NoHome));
        assert!(
            asked
                .shown()
                .contains("Close once more to leave without it")
        );
        let effects = session.effects();
        let said = |effect: &Effect| matches!(effect, Effect::Say(said) if said == asked.spoken());
        assert!(effects.iter().any(said), "{effects:?}");
        assert_eq!(session.notices()[0], asked.shown());
        session.seen();
        assert!(!session.notices().contains(&asked.into()));
    }
}
