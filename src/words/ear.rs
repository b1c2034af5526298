//! Words for who only hears: the keys of a screen, told aloud.

use std::borrow::Cow;

use fluent::fluent_args;

use super::spoken_messages::SpokenMessage;
use super::{Remark, Spoken, Words};

impl Words {
    /// All keys of a screen, group by group: the heading of each, and its keys by their `key` values of
    /// the W3C *UI Events* standard (`CtrlQ` for the one that takes two) with what they do.
    pub fn say_keys(&self, groups: &[(&str, Vec<(String, String)>)]) -> Spoken {
        let mut said = self.remark(Remark::KeysSay);
        for (heading, keys) in groups {
            let heading = self.plainly(heading, &[]);
            said = said.then(&self.spoken(
                SpokenMessage::KeyGroupSay,
                &fluent_args! { "heading" => heading },
            ));
            for (key, does) in keys {
                let args = fluent_args! {
                    "key" => key_name(key).into_owned(), "does" => does.as_str(),
                };
                said = said.then(&self.spoken(SpokenMessage::KeyAloudSay, &args));
            }
        }
        said.then(&self.remark(Remark::KeysCloseSay))
    }

    /// What was typed into a line; nothing of an empty one.
    pub fn say_typed(&self, typed: &str) -> Spoken {
        match typed.trim() {
            "" => Spoken::default(),
            typed => self.spoken(SpokenMessage::TypedSay, &fluent_args! { "typed" => typed }),
        }
    }
}

/// A key by a name that a message can choose by: signs and the keys of two have none in the standard.
fn key_name(key: &str) -> Cow<'_, str> {
    match key {
        " " => Cow::Borrowed("Space"),
        "+" => Cow::Borrowed("Plus"),
        "-" => Cow::Borrowed("Minus"),
        "[" => Cow::Borrowed("BracketLeft"),
        "]" => Cow::Borrowed("BracketRight"),
        "Shift+Tab" => Cow::Borrowed("ShiftTab"),
        key if key.chars().count() == 1 => Cow::Owned(key.to_uppercase()),
        key => Cow::Borrowed(key),
    }
}
