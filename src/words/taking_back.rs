//! What is said and shown when something is wrong.

use fluent::fluent_args;

use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::step_args::{crossing_args, question_args, take_back_args};
use super::{CrossingMark, Shown, Spoken, Words};
use crate::guide::{Question, TakeBack};
use crate::knot::Crossing;

impl Words {
    /// What can be done when something is wrong; `back` is the leg that would be taken back.
    pub fn say_wrong(&self, back: Option<&TakeBack>) -> Spoken {
        self.spoken(SpokenMessage::WrongSay, &wrong_args(back))
    }

    /// What can be done when something is wrong, on the screen.
    pub fn show_wrong(&self, back: Option<&TakeBack>) -> Shown {
        let args = wrong_args(back);
        let mut notes = vec!["wrong-show-note", "wrong-show-note-find"];
        // Where nothing lies there is no other place.
        notes.extend(back.map(|_| "wrong-show-note-elsewhere"));
        notes.push("wrong-show-note-leave");
        Shown {
            line: self.text("wrong-show", &args),
            notes: notes.into_iter().map(|id| self.text(id, &args)).collect(),
            ..Shown::default()
        }
    }

    /// How a leg is taken out.
    pub fn say_take_back(&self, back: &TakeBack) -> Spoken {
        let args = take_back_args(back);
        let said = self.spoken(SpokenMessage::TakeBackSay, &args);
        let crossings = if back.crossings.is_empty() {
            self.spoken(SpokenMessage::TakeBackSayClear, &args)
        } else {
            self.say_coming_out(&back.crossings)
        };
        said.then(&crossings)
            .then(&self.spoken(SpokenMessage::TakeBackSayEnd, &args))
    }

    /// The crossings that a cord comes back out of, in that order.
    pub(super) fn say_coming_out(&self, crossings: &[Crossing]) -> Spoken {
        let count = crossings.len();
        let said = crossings.iter().enumerate().map(|(index, crossing)| {
            let args = crossing_args(crossing, index, count);
            self.spoken(SpokenMessage::TakeBackSayCrossing, &args)
        });
        said.collect()
    }

    /// The same on the screen.
    pub(super) fn show_coming_out(&self, crossings: &[Crossing]) -> Vec<CrossingMark> {
        let count = crossings.len();
        let mark = |(index, crossing): (usize, &Crossing)| CrossingMark {
            over: crossing.over,
            text: self.text(
                "take-back-show-crossing",
                &crossing_args(crossing, index, count),
            ),
        };
        crossings.iter().enumerate().map(mark).collect()
    }

    /// How a leg is taken out, on the screen.
    pub fn show_take_back(&self, back: &TakeBack) -> Shown {
        let args = take_back_args(back);
        let first = self.text("take-back-show-note", &args);
        let back_to = self.text("take-back-show", &args);
        let keys = self.text("take-back-show-note-keys", &args);
        // In the order of the hands: what comes off its pin does so before anything else.
        let (line, plain_line, notes) = if back.is_whole {
            let plain = format!("{first}. {back_to}");
            (format!("{first}.\n{back_to}"), Some(plain), vec![keys])
        } else {
            (back_to, None, vec![first, keys])
        };
        Shown {
            phase: self.text("take-back-show-phase", &args),
            line,
            plain_line,
            marks: self.show_coming_out(&back.crossings),
            notes,
            ..Shown::default()
        }
    }

    /// A question to a tyer who has lost the place.
    pub fn say_question(&self, question: &Question) -> Spoken {
        self.spoken(SpokenMessage::QuestionSay, &question_args(question))
    }

    /// A question to a tyer who has lost the place, on the screen.
    pub fn show_question(&self, question: &Question) -> Shown {
        let args = question_args(question);
        let notes = ["question-show-note", "question-show-note-keys"];
        Shown {
            phase: self.text("question-show-phase", &args),
            line: self.text("question-show", &args),
            notes: notes.map(|id| self.text(id, &args)).to_vec(),
            ..Shown::default()
        }
    }
}

fn wrong_args(back: Option<&TakeBack>) -> fluent::FluentArgs<'static> {
    fluent_args! {
        "can-take-back" => back.is_some().selector(),
        "leg" => back.map_or(0, |back| back.pass_leg.leg),
        "pass" => back.map_or(1, |back| back.pass_leg.pass),
        "strand" => back.map_or(1, |back| back.pass_leg.strand),
        "strands" => back.map_or(1, |back| back.strands),
    }
}
