//! Knocks as presses. A row grows while it is knocked, and nobody who knocks twice should wait for a
//! third: two knocks act at once, and when a third comes what they did is turned back.

use std::time::Duration;

use super::controller::Session;
use super::effect::Effect;
use super::knock_row::Before;
use super::tie_in_hand::TieInHand;
use crate::pedal::{EarNews, Input, Intent, Transition};
use crate::voice::Cue;
use crate::words::Spoken;

impl Session {
    /// Has the ear listen from the beginning where that is wished for.
    pub(super) fn listening(mut self) -> Self {
        if self.settings.knocks {
            self.effects.push(Effect::Listen(true));
        }
        self
    }

    /// What a row of so many knocks means, when it has grown to that or when it is over.
    ///
    /// Where more knocks mean something else, it acts at once if that can be turned back, and else
    /// when no more can come.
    pub(super) fn knocked(
        &mut self,
        number: u8,
        transition: Transition,
        now: Duration,
    ) -> Option<Intent> {
        let bindings = self.pedals.bindings();
        let intent = bindings.intent(&Input::Knocks(number));
        let may_grow = bindings.longer_knocks(number);
        match transition {
            Transition::Repeat => None,
            Transition::Down => {
                if let Some(before) = self.knocking.before.take() {
                    self.turn_back(before);
                }
                let before = if may_grow { self.before(intent) } else { None };
                let is_harmless = matches!(intent, None | Some(Intent::Again | Intent::Where));
                self.knocking.waits = may_grow && !is_harmless && before.is_none();
                self.knocking.before = before;
                intent.filter(|_| !self.knocking.waits)
            }
            Transition::Up => {
                self.knocking.before = None;
                let waits = std::mem::take(&mut self.knocking.waits);
                self.wait_for_gesture(now);
                intent.filter(|_| waits)
            }
        }
    }

    /// How all stands now, where what the intent does at the tie can be turned back.
    fn before(&self, intent: Option<Intent>) -> Option<Before> {
        let moves = matches!(intent, Some(Intent::Next | Intent::Back));
        let tie = self.tie.as_ref();
        let tie = tie.filter(|tie| self.is_before_the_eyes && moves && tie.stays_in_hand())?;
        Some(Before {
            tie: tie.stand(),
            auto_advance: self.auto_advance.clone(),
            was_paused: self.notices.is_paused(),
        })
    }

    /// Has the tie stand as it stood: its place, its record, what is shown and said of it.
    fn turn_back(&mut self, before: Before) {
        let Some(tie) = &mut self.tie else { return };
        let has_moved = tie.turn_back(before.tie);
        self.auto_advance = before.auto_advance;
        self.hold();
        self.notices.paused(before.was_paused);
        if has_moved {
            self.cue(Cue::Back);
        }
        self.keep();
    }

    /// What the ear reports. A microphone that is missing is told once, and the step again after it.
    pub(super) fn ear(&mut self, news: EarNews, here: &Spoken) {
        match news {
            EarNews::NoMicrophone => {
                if self.settings.knocks && !self.notices.deaf(true) {
                    let sentence = self.words.notice("no-microphone", &[]);
                    self.tell(Spoken::from(sentence).then(here));
                }
            }
            EarNews::Listens => {
                if self.notices.deaf(false) {
                    let sentence = self.words.notice("microphone-again", &[]);
                    self.notices.tell(sentence.clone());
                    self.tell(Spoken::from(sentence).then(here));
                }
            }
            // For the screen on which knocks are tried.
            EarNews::Knock(_) | EarNews::RowOver(_) | EarNews::Level(_) => {}
        }
    }
}

impl TieInHand {
    /// Whether a press of next leaves this tie in hand: at the end of a piece it may begin another.
    fn stays_in_hand(&self) -> bool {
        !(self.offers_next_piece && self.next_piece().is_some())
    }
}
