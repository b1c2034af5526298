//! What a press comes to while a tie is in hand.

use std::time::Duration;

use super::controller::Session;
use super::effect::{Effect, Timer};
use super::tie_in_hand::TieInHand;
use super::walk::WalkAction;
use crate::guide::{AtOnce, Phase, Place};
use crate::pedal::{Intent, Press};
use crate::settings::Verbosity;
use crate::voice::{Cue, SpeechSettings};
use crate::words::{Detail, Remark, Spoken};

/// How long the edge of the screen flashes.
const FLASH: Duration = Duration::from_millis(150);
/// One press of faster or slower, in words a minute.
const SPEED_STEP: i16 = 10;

impl Session {
    /// Does what a press means for the tie in hand. `intent` is the meaning of a key or a pedal,
    /// `press` the key itself for what has no such meaning.
    pub fn press(&mut self, intent: Option<Intent>, press: &Press, now: Duration) {
        if self.tie.is_none() {
            return;
        }
        match intent {
            Some(Intent::Slower) => self.change_speed(false),
            Some(Intent::Faster) => self.change_speed(true),
            Some(intent) => self.at_the_tie(intent, now),
            None if press.is_repeat => {}
            None => self.key(&press.key.to_lowercase()),
        }
    }

    /// A press at the tie: it holds or ends a pause, and holds a step that would move on by
    /// itself.
    pub(super) fn at_the_tie(&mut self, intent: Intent, now: Duration) {
        let was_paused = self.notices.paused(false);
        if intent == Intent::Pause {
            if was_paused {
                return self.go(Intent::Again, now);
            }
            self.notices.paused(true);
            self.effects.push(Effect::Hush);
            return self.hold();
        }
        if self.auto_advance.is_running {
            self.hold();
            if intent == Intent::Next {
                let held = self.words.remark(Remark::PaceHeldSay);
                return self.answer(held);
            }
        }
        if intent == Intent::Next {
            self.auto_advance.moved_on(now);
        }
        self.go(intent, now);
    }

    /// The step stays until the next press.
    pub(super) fn hold(&mut self) {
        self.auto_advance.is_running = false;
        self.wake(Timer::AutoAdvance, None);
    }

    pub(super) fn go(&mut self, intent: Intent, now: Duration) {
        let Some(tie) = &mut self.tie else { return };
        let before = tie.walk.place();
        match tie.walk.press(intent, &self.words) {
            WalkAction::Moved => {
                tie.moved_from(before, now);
                let to = tie.walk.place();
                let is_last = to == tie.walk.script().last();
                let is_asked = intent == Intent::Next && tie.walk.ask_cord_end(&self.words);
                let warning = tie.walk.cord_warning(&self.words);
                let said = warning.map_or_else(Spoken::default, |warning| {
                    tie.walk.answer_with(warning.to_string());
                    warning.into()
                });
                let mut say = said.then(tie.walk.say());
                if is_last && let Some(done) = tie.piece_done(&self.words) {
                    tie.offers_next_piece = true;
                    tie.walk.answer_with(done.shown().to_owned());
                    say = say.then(done.spoken());
                }
                self.effects.push(Effect::Say(say));
                self.keep();
                let is_forward = intent == Intent::Next;
                self.cue(cue_for(before, to, is_forward, is_last));
                self.notices.screen_may_go_dark(None);
                self.give_time(is_forward && !is_last && !is_asked, now);
            }
            WalkAction::Again if intent == Intent::Next && tie.next_piece().is_some() => {
                if let (true, Some(next)) = (tie.offers_next_piece, tie.next_piece()) {
                    self.effects.push(Effect::BeginNext(Box::new(next)));
                } else if let Some(done) = tie.piece_done(&self.words) {
                    tie.offers_next_piece = true;
                    tie.walk.answer_with(done.shown().to_owned());
                    self.tell(done.into());
                }
            }
            WalkAction::Again if intent == Intent::Next && tie.may_be_logged() => {
                let offer = self.words.remark(Remark::LogOfferSay);
                let say = tie.walk.say().clone().then(&offer);
                tie.walk.answer_with(offer.into());
                self.tell(say);
            }
            WalkAction::Again => self.say_step(),
            WalkAction::Say(answer) => {
                // What stands above the step is part of where the tyer is.
                let notices = self.notices.say(&self.words);
                self.tell(notices.then(&answer));
            }
            WalkAction::Noted(told) => {
                tie.stand_where_it_is();
                self.keep();
                self.tell(told);
            }
            WalkAction::Leave => {
                self.put_away();
                self.effects.push(Effect::Leave);
            }
        }
    }

    /// Has the tie in hand saved as it is now.
    pub(super) fn keep(&mut self) {
        let Some(tie) = self.tie.as_ref().and_then(TieInHand::to_keep) else {
            return;
        };
        if let Some(after) = self.notices.saving.asked(&tie) {
            self.wake(Timer::Saving, Some(after));
        }
        self.effects.push(Effect::Keep(tie));
    }

    /// Says the step, or the question in its place, again, with an answer that stands beside it.
    pub(super) fn say_step(&mut self) {
        if let Some(tie) = &self.tie {
            self.tell(tie.walk.say().clone());
        }
    }

    /// Gives the step its time, to move on by itself after it if the tyer wishes so.
    pub(super) fn give_time(&mut self, may_move_on: bool, now: Duration) {
        self.auto_advance.begin(now);
        let time = self.auto_advance.time();
        let time = time.filter(|_| may_move_on && self.settings.pacing);
        self.auto_advance.is_running = time.is_some();
        self.wake(Timer::AutoAdvance, time);
    }

    /// A key that has no meaning as a pedal: 1, 2 and 3 for the depth, square brackets for the
    /// crossings told at once, T for the settings, L for the log, and what stands aside of the steps.
    pub(super) fn key(&mut self, key: &str) {
        match key {
            _ if self.key_aside(key) => {}
            "1" => self.tell_in(Detail::Brief),
            "2" => self.tell_in(Detail::Plain),
            "3" => self.tell_in(Detail::Teach),
            "[" => self.portion(AtOnce::less),
            "]" => self.portion(AtOnce::more),
            "t" => self.effects.push(Effect::OpenSettings),
            "l" => {
                if let Some(tie) = self.tie.as_ref().filter(|tie| tie.may_be_logged()) {
                    let tie = Box::new(tie.tie().clone());
                    self.effects.push(Effect::OpenLog(tie));
                }
            }
            _ => {}
        }
    }

    /// Says more or less of a step from now on. A lesson is taught: what is chosen in it is for
    /// it alone.
    pub(super) fn tell_in(&mut self, detail: Detail) {
        let Some(tie) = &self.tie else { return };
        self.words.set_detail(detail);
        if !tie.is_lesson() {
            self.detail = detail;
            self.prefer_verbosity(Verbosity {
                detail,
                ..self.settings.verbosity
            });
        }
        let said = self.words.say_detail();
        self.retell(said);
    }

    /// Tells more or fewer crossings at once from now on.
    pub(super) fn portion(&mut self, change: fn(AtOnce) -> AtOnce) {
        let Some(tie) = &mut self.tie else { return };
        if tie.walk.place().phase() == Phase::Fair {
            // There are no crossings to tell fewer of: a round comes leg by leg instead.
            let is_less = change(AtOnce::WholeLeg) != AtOnce::WholeLeg;
            tie.walk.fair_by_leg(is_less);
            let said = self.words.say_fairing_by_leg(is_less);
            self.retell(said);
            return;
        }
        if matches!(tie.walk.place().phase(), Phase::Kit | Phase::Rig) {
            let is_less = change(AtOnce::WholeLeg) != AtOnce::WholeLeg;
            tie.walk.pack_one_by_one(is_less);
            let said = self.words.say_packing_one_by_one(is_less);
            self.retell(said);
            return;
        }
        self.at_once = change(tie.walk.script().at_once());
        self.prefer_verbosity(Verbosity {
            at_once: self.at_once,
            ..self.settings.verbosity
        });
        let said = self.words.say_at_once(self.at_once);
        self.retell(said);
    }

    /// Tells the step anew. The place stays.
    pub(super) fn retell(&mut self, answer: Spoken) {
        let Some(tie) = &mut self.tie else { return };
        tie.walk.retell(self.at_once, &self.words);
        tie.stand_where_it_is();
        let say = answer.clone().then(tie.walk.say());
        tie.walk.answer_with(answer.into());
        self.keep();
        self.tell(say);
    }

    /// Changes the speed of the voice, on any screen.
    pub fn change_speed(&mut self, is_faster: bool) {
        let by = if is_faster { SPEED_STEP } else { -SPEED_STEP };
        let tag = self.words.tag().to_string();
        let mut speech = self.settings.speech(&tag);
        let (least, most) = SpeechSettings::SPEEDS.into_inner();
        let speed = speech.words_per_minute.saturating_add_signed(by);
        speech.words_per_minute = speed.clamp(least, most);
        let said = self.words.say_speed(speech.words_per_minute);
        let mut settings = self.settings.clone();
        settings.set_speech(&tag, speech);
        self.prefer(settings);
        self.answer(said);
    }

    /// Says this, and has it stand beside the step until the next press.
    pub(super) fn answer(&mut self, answer: Spoken) {
        if let Some(tie) = self.tie.as_mut().filter(|_| self.is_before_the_eyes) {
            tie.walk.answer_with(answer.to_string());
        }
        self.tell(answer);
    }

    pub(super) fn tell(&mut self, said: Spoken) {
        self.effects.push(Effect::Show);
        self.effects.push(Effect::Say(said));
    }

    pub(super) fn cue(&mut self, cue: Cue) {
        if self.settings.cues.is_on {
            self.effects
                .push(Effect::Cue(cue, self.settings.cues.volume));
        }
        if self.settings.flash {
            self.is_flashing = true;
            self.wake(Timer::Flash, Some(FLASH));
        }
    }

    pub(super) fn wake(&mut self, timer: Timer, after: Option<Duration>) {
        self.effects.push(Effect::Wake(timer, after));
    }
}

/// What is heard of a move. `is_last` when nothing comes after it.
fn cue_for(from: Place, to: Place, is_forward: bool, is_last: bool) -> Cue {
    let ends_a_pass = to.pass() > from.pass() || to.phase() == Phase::Lift;
    match to.phase() {
        _ if !is_forward => Cue::Back,
        _ if is_last => Cue::Done,
        Phase::Check => Cue::Check,
        _ if from.phase() == Phase::Check && ends_a_pass => Cue::EndOfPass,
        _ => Cue::Next,
    }
}
