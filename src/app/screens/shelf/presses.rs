//! The presses on the shelf.

use std::path::PathBuf;

use super::State;
use super::action::Action;
use super::prompt::{Asks, Prompt, label};
use crate::app::jobs::{self, Job};
use crate::pedal::{Intent, Press};
use crate::session::as_path;
use crate::shelf::TieStatus;
use crate::words::Words;
impl State {
    /// Does what a press asks for that the line did not take.
    pub(super) fn pressed(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        words: &Words,
    ) -> Action {
        if press.is_repeat && !matches!(press.key.as_str(), "ArrowUp" | "ArrowDown") {
            return Action::None;
        }
        if self.prompt.is_some() {
            return match (press.key.as_str(), intent) {
                ("Enter", _) => self.enter(),
                (_, Some(Intent::Leave)) => {
                    self.prompt = None;
                    Action::Say(self.say_here(words))
                }
                _ => Action::None,
            };
        }
        let last = self.stock.ties.len().saturating_sub(1);
        let key = press.key.to_lowercase();
        match key.as_str() {
            "arrowdown" | "tab" => self.move_to((self.focus + 1).min(last), words),
            "arrowup" | "shift+tab" => self.move_to(self.focus.saturating_sub(1), words),
            "home" => self.move_to(0, words),
            "end" => self.move_to(last, words),
            "u" => Action::Do(Job::Undo),
            "b" => self.ask(Asks::BackUp, jobs::backup_path(), words),
            "i" => self.ask(Asks::BringIn, String::new(), words),
            key => self.press_at_tie(key, intent, words),
        }
    }

    /// A press about the tie in the focus.
    fn press_at_tie(&mut self, key: &str, intent: Option<Intent>, words: &Words) -> Action {
        let Some(shelved) = self.here() else {
            return match intent {
                Some(Intent::Leave) => Action::Leave,
                Some(Intent::Next) => Action::First,
                _ => Action::Say(words.say_shelf(0)),
            };
        };
        let (tie, id) = (&shelved.tie, shelved.tie.id().clone());
        match (key, intent) {
            ("e", _) => {
                let name = tie.name.clone();
                self.ask(Asks::Name, name, words)
            }
            ("n", _) => {
                let note = tie.note.clone();
                self.ask(Asks::Note, note, words)
            }
            ("c", _) => Action::Do(Job::Again(id)),
            ("a", _) => Action::Do(Job::PutAway(id, !tie.is_put_away)),
            ("o", _) => Action::OnPaper(Box::new(tie.clone())),
            ("delete", _) => Action::Do(Job::Delete(id)),
            ("l", _) if shelved.status() == TieStatus::Finished => {
                Action::Log(Box::new(tie.clone()))
            }
            ("l", _) => {
                let sentence = words.notice("shelf-not-finished", &[]);
                self.report = Some(sentence.clone());
                Action::Say(sentence.into())
            }
            (_, Some(Intent::Next)) => Action::TakeUp(id),
            (_, Some(Intent::Again)) => Action::Say(self.say_here(words)),
            (_, Some(Intent::Leave)) => Action::Leave,
            _ => Action::None,
        }
    }

    fn move_to(&mut self, index: usize, words: &Words) -> Action {
        self.focus = index;
        self.report = None;
        if self.stock.ties.is_empty() {
            Action::Say(words.say_shelf(0))
        } else {
            Action::Say(self.say_here(words))
        }
    }

    fn ask(&mut self, asks: Asks, text: String, words: &Words) -> Action {
        self.report = None;
        self.prompt = Some(Prompt::new(asks, text));
        Action::Ask(words.notice(label(asks), &[]).into())
    }

    pub(super) fn enter(&mut self) -> Action {
        let Some(Prompt { asks, text }) = self.prompt.take() else {
            return Action::None;
        };
        let id = self.here().map(|shelved| shelved.tie.id().clone());
        if matches!(asks, Asks::BackUp | Asks::BringIn) {
            let text = text.clone();
            self.path = Some(Prompt { asks, text });
        }
        let path = |text: &str| -> PathBuf { as_path(text) };
        match (asks, id) {
            (Asks::Name, Some(id)) => Action::Do(Job::Name(id, text)),
            (Asks::Note, Some(id)) => Action::Do(Job::Note(id, text)),
            (Asks::BackUp, _) if !text.trim().is_empty() => Action::Do(Job::BackUp(path(&text))),
            (Asks::BringIn, _) if !text.trim().is_empty() => Action::Do(Job::BringIn(path(&text))),
            _ => Action::None,
        }
    }
}
