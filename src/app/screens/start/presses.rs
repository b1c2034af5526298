//! What presses and messages on the start screen come to.

use super::fields::{FIELDS, text_slot};
use super::ways::{Typed, Way};
use super::{Action, Message, StartField, State, TiedOn};
use crate::app::widgets;
use crate::pedal::{Intent, Press};
use crate::words::Words;

impl State {
    /// What a message from the form or the list comes to.
    pub(super) fn told(&mut self, message: Message, words: &Words) -> Action {
        match message {
            Message::Typed(field, text) => {
                self.is_new = false;
                self.focus = Some(field);
                if let Some(slot) = text_slot(field) {
                    self.texts[slot] = text;
                }
                self.changed();
                Action::Say
            }
            // A number is typed anew rather than mended.
            Message::Pointed(StartField::Weave) if self.focus == Some(StartField::Weave) => {
                Action::None
            }
            Message::Pointed(field) => {
                self.is_new = false;
                self.focus = Some(field);
                self.show_knot();
                Action::Focus(self.focus)
            }
            Message::Switched(field) => {
                self.focus = Some(field);
                self.switch(field);
                Action::Say
            }
            Message::Begin => self.begin(words),
            Message::Way(way) => self.go(way),
            Message::TakeUp(index) => match self.waiting.get(index) {
                Some(waiting) => Action::TakeUp(waiting.tie.id().clone()),
                None => Action::None,
            },
            Message::First => Self::first(words),
            Message::Looked(_) => Action::None,
        }
    }

    /// What a press comes to that no field of the form took.
    pub(super) fn pressed(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        words: &Words,
    ) -> Action {
        if press.is_repeat {
            return Action::None;
        }
        if let Some(slot) = self.focus.and_then(text_slot)
            && let Some(typed) = widgets::typed_on(&self.texts[slot], &press.key)
        {
            // The window has not put its own focus there, and what is typed must not be lost.
            self.texts[slot] = typed;
            self.changed();
            return Action::TypeOn;
        }
        match press.key.as_str() {
            "Tab" => self.move_focus(1),
            "Shift+Tab" => self.move_focus(FIELDS.len() - 1),
            " " | "ArrowLeft" | "ArrowRight"
                if matches!(
                    self.focus,
                    Some(StartField::Hand | StartField::Side | StartField::RoundHand)
                ) =>
            {
                self.focus.into_iter().for_each(|field| self.switch(field));
                Action::Say
            }
            key => match (intent, self.focus) {
                (Some(Intent::Leave), Some(_)) => {
                    self.focus = None;
                    // Outside the form nothing tells what is wrong in it.
                    if self.plan().is_err() {
                        self.texts.clone_from(&self.readable);
                        if self.plan().is_err() {
                            self.tied_on = TiedOn::Tube;
                        }
                    }
                    // Who only looked is offered the first tie as before.
                    let is_untouched = self.typed() == Typed::default();
                    self.is_new = self.is_ready && self.welcomes && is_untouched;
                    self.show_knot();
                    Action::Focus(None)
                }
                (Some(Intent::Next), Some(_)) => self.begin(words),
                (Some(Intent::Next), None) if !self.is_ready => Action::None,
                (Some(Intent::Next), None) if self.is_new => Self::first(words),
                (Some(Intent::Next), None) if self.waiting.is_empty() => self.begin(words),
                (Some(Intent::Next), None) => self.told(Message::TakeUp(0), words),
                (_, None) => match (Way::of_key(key), key.parse()) {
                    (Some(way), _) => self.go(way),
                    (None, Ok(digit @ 1..=9_usize)) => self.told(Message::TakeUp(digit - 1), words),
                    _ => Action::None,
                },
                _ => Action::None,
            },
        }
    }
}
