//! What presses on the plan screen come to.

use super::fields::PlanField;
use super::filters::PlanFilter;
use super::form::{Action, State};
use crate::guide::SetupField;
use crate::pedal::{Intent, Press};
use crate::words::{Spoken, Words};

impl State {
    /// What a press comes to that no field took.
    pub(super) fn pressed(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        words: &Words,
    ) -> Action {
        match press.key.as_str() {
            "ArrowDown" => return self.choose(self.chosen.saturating_add(1), words),
            "ArrowUp" => return self.choose(self.chosen.saturating_sub(1), words),
            _ if press.is_repeat => return Action::None,
            _ => {}
        }
        match press.key.as_str() {
            "Tab" => self.move_focus(1, words),
            "Shift+Tab" => self.move_focus(self.fields_in_sight().len() - 1, words),
            "ArrowRight" | "PageDown" | " " if self.is_at_first() => self.turn(true, words),
            "ArrowLeft" | "PageUp" if self.is_at_first() => self.turn(false, words),
            "PageDown" => self.pick_next(true, words),
            "PageUp" => self.pick_next(false, words),
            "Enter" => self.take(words),
            "F9" => self.on_paper(words),
            "F10" if self.only.is_some() => self.any_knot(words),
            "Backspace" => self.type_on(None),
            _ if intent == Some(Intent::Leave) => Action::Leave,
            key => {
                if let Some(filter) = PlanFilter::of_key(key) {
                    // Of one knot there is nothing to narrow.
                    return match self.only {
                        Some(_) => Action::None,
                        None => self.filter(filter, words),
                    };
                }
                let mut letters = key.chars();
                match (letters.next(), letters.next()) {
                    (Some(letter), None) if !letter.is_control() => self.type_on(Some(letter)),
                    _ => Action::None,
                }
            }
        }
    }

    /// Sets a filter to its next choice, says it, and looks for the knots anew.
    pub(super) fn filter(&mut self, filter: PlanFilter, words: &Words) -> Action {
        self.filters.change(filter);
        let said = words.say_filter(filter.name(), self.filters.choice(filter));
        match self.look() {
            Action::Find(number, asked, _) => Action::Find(number, asked, said),
            _ => Action::Say(said),
        }
    }

    /// Looks at all knots again, and not at the one alone that was counted.
    pub(super) fn any_knot(&mut self, words: &Words) -> Action {
        self.only = None;
        let said: Spoken = words.notice("plan-any-told", &[]).into();
        match self.look() {
            Action::Find(asked, question, _) => Action::Find(asked, question, said),
            _ => Action::Say(said),
        }
    }

    /// Types a letter into the field in turn, or takes one back. It comes here when the window has
    /// not yet put its own focus there, and must not be lost.
    fn type_on(&mut self, letter: Option<char>) -> Action {
        // What is typed at the first question is the measure that comes next.
        let was_at_first = self.is_at_first();
        if was_at_first {
            self.focus = SetupField::Object.into();
        }
        let mut text = self.typed(self.focus).to_owned();
        match letter {
            Some(letter) => text.push(letter),
            None => {
                text.pop();
            }
        }
        self.type_into(self.focus, text);
        let found = self.look();
        if was_at_first {
            Action::TypeOn(self.focus, Box::new(found))
        } else {
            found
        }
    }

    /// Whether the first question is in turn, into which nothing is typed.
    const fn is_at_first(&self) -> bool {
        matches!(self.focus, PlanField::Covers | PlanField::Slides)
    }

    fn move_focus(&mut self, by: usize, words: &Words) -> Action {
        let wrong = self.wrong_in(self.focus, words);
        let fields = self.fields_in_sight();
        let here = fields.iter().position(|field| *field == self.focus);
        self.focus = fields[(here.unwrap_or(0) + by) % fields.len()];
        let here = self.say_field(words);
        // What is wrong in the field just left is heard first.
        let wrong = wrong.map(Spoken::from).unwrap_or_default();
        Action::Focus(self.focus, wrong.then(&here))
    }
}
