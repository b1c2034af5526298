//! From what the window hands over to what the pedal room knows.

use std::collections::HashMap;

use iced::keyboard::key::{Named, Physical};
use iced::keyboard::{Event, Key, Modifiers};
use iced::mouse;

use crate::pedal::{Input, InputEvent, Press, Transition};

/// The press in a keyboard event, if it is one: a key that went down without Ctrl, Alt or the
/// like.
pub fn press(event: &Event) -> Option<Press> {
    let Event::KeyPressed {
        key,
        modified_key,
        modifiers,
        repeat,
        ..
    } = event
    else {
        return None;
    };
    let key = sign_or_key(key, modified_key);
    if modifiers.intersects(Modifiers::CTRL | Modifiers::ALT | Modifiers::LOGO) {
        return None;
    }
    let key = match key {
        // The one key whose meaning turns round with Shift.
        Key::Named(Named::Tab) if modifiers.shift() => "Shift+Tab".to_owned(),
        key => named(key)?,
    };
    Some(Press {
        key,
        is_repeat: *repeat,
    })
}

/// The keys that are down, each with the name that it went down by. A release bears that name: with a
/// Shift that is let go first the same key would come up as another.
#[derive(Debug, Default)]
pub struct KeysDown(HashMap<Physical, String>);

impl KeysDown {
    /// What a key did, if it is one that can be bound.
    pub fn input(&mut self, event: &Event) -> Option<InputEvent> {
        let (key, transition) = match event {
            Event::KeyPressed { physical_key, .. } => {
                let Press { key, is_repeat } = press(event)?;
                self.0.insert(*physical_key, key.clone());
                let transition = if is_repeat {
                    Transition::Repeat
                } else {
                    Transition::Down
                };
                (key, transition)
            }
            Event::KeyReleased {
                key,
                modified_key,
                physical_key,
                ..
            } => {
                let went_down = self.0.remove(physical_key);
                let key = went_down.or_else(|| named(sign_or_key(key, modified_key)))?;
                (key, Transition::Up)
            }
            Event::ModifiersChanged(_) => return None,
        };
        Some(InputEvent {
            input: Input::key(&key),
            transition,
        })
    }
}

/// What a mouse button did.
pub fn button(event: &mouse::Event) -> Option<InputEvent> {
    let (button, transition) = match event {
        mouse::Event::ButtonPressed(button) => (button, Transition::Down),
        mouse::Event::ButtonReleased(button) => (button, Transition::Up),
        _ => return None,
    };
    let name = match button {
        mouse::Button::Left => "left".to_owned(),
        mouse::Button::Right => "right".to_owned(),
        mouse::Button::Middle => "middle".to_owned(),
        mouse::Button::Back => "back".to_owned(),
        mouse::Button::Forward => "forward".to_owned(),
        mouse::Button::Other(number) => number.to_string(),
    };
    Some(InputEvent {
        input: Input::Mouse(name),
        transition,
    })
}

/// The sign that Shift or `AltGr` makes of a key, as X11 and Wayland tell it, such as "?" or, on many
/// keyboards, "[" and the digits; a letter is the same key with Shift or without.
fn sign_or_key<'e>(key: &'e Key, modified: &'e Key) -> &'e Key {
    match modified {
        Key::Character(sign) if !sign.chars().any(char::is_alphabetic) => modified,
        _ => key,
    }
}

/// The name of a key in the UI Events standard.
fn named(key: &Key) -> Option<String> {
    match key {
        Key::Named(Named::Space) => Some(" ".to_owned()),
        // The names are those of the standard.
        Key::Named(named) => Some(format!("{named:?}")),
        Key::Character(character) => Some(character.to_string()),
        Key::Unidentified => None,
    }
}

/// Whether it is a key that only changes the meaning of others: it may be half of Ctrl+Q.
pub fn is_modifier(raw: &InputEvent) -> bool {
    let modifiers = [
        Named::Control,
        Named::Shift,
        Named::Alt,
        Named::AltGraph,
        Named::Super,
        Named::Meta,
    ];
    let mut names = modifiers.iter().filter_map(|key| named(&Key::Named(*key)));
    names.any(|name| raw.input == Input::key(&name))
}

/// Whether the event is this letter pressed with Ctrl.
pub fn is_ctrl(event: &Event, letter: &str) -> bool {
    matches!(event, Event::KeyPressed { key: Key::Character(character), modifiers, repeat: false, .. }
        if modifiers.control() && character.eq_ignore_ascii_case(letter))
}

/// Whether the event is the Escape key going down.
pub fn is_escape(event: &Event) -> bool {
    matches!(
        event,
        Event::KeyPressed {
            key: Key::Named(Named::Escape),
            ..
        }
    )
}

#[cfg(test)]
mod tests {
    use iced::keyboard::Location;
    use iced::keyboard::key::{NativeCode, Physical};

    use super::*;

    fn down(key: Key, modifiers: Modifiers, repeat: bool) -> Event {
        Event::KeyPressed {
            modified_key: key.clone(),
            key,
            physical_key: Physical::Unidentified(NativeCode::Unidentified),
            location: Location::Standard,
            modifiers,
            text: None,
            repeat,
        }
    }

    #[test]
    fn keys_have_the_names_of_ui_events() {
        for (key, name) in [
            (Key::Named(Named::Space), " "),
            (Key::Named(Named::Enter), "Enter"),
            (Key::Named(Named::PageDown), "PageDown"),
            (Key::Named(Named::ArrowLeft), "ArrowLeft"),
            (Key::Named(Named::F13), "F13"),
            (Key::Character("r".into()), "r"),
        ] {
            let press = press(&down(key, Modifiers::empty(), false)).unwrap();
            assert_eq!((press.key.as_str(), press.is_repeat), (name, false));
        }
    }

    /// On a German keyboard "?" is Shift and "ß", "[" is `AltGr` and 8; R is R with Shift or without.
    #[test]
    fn a_sign_is_a_sign_whatever_makes_it_of_a_key() {
        for (key, modified, name) in [
            ("ß", "?", "?"),
            ("/", "?", "?"),
            ("8", "[", "["),
            ("&", "1", "1"),
            ("r", "R", "r"),
            ("q", "@", "@"),
        ] {
            let Event::KeyPressed {
                key: plain,
                physical_key,
                location,
                modifiers,
                ..
            } = down(Key::Character(key.into()), Modifiers::SHIFT, false)
            else {
                unreachable!()
            };
            let modified_key = Key::Character(modified.into());
            let went_down = Event::KeyPressed {
                key: plain.clone(),
                modified_key,
                physical_key,
                location,
                modifiers,
                text: None,
                repeat: false,
            };
            // Shift is let go first: what comes up is the key without it.
            let came_up = Event::KeyReleased {
                modified_key: plain.clone(),
                key: plain,
                physical_key,
                location,
                modifiers: Modifiers::empty(),
            };
            assert_eq!(
                press(&went_down).map(|press| press.key).as_deref(),
                Some(name)
            );
            let mut keys = KeysDown::default();
            let input = [went_down, came_up].map(|event| keys.input(&event).map(|raw| raw.input));
            assert_eq!(input, [Some(Input::key(name)), Some(Input::key(name))]);
        }
    }

    #[test]
    fn a_repeat_says_that_it_is_one() {
        assert!(
            press(&down(Key::Named(Named::Space), Modifiers::empty(), true))
                .unwrap()
                .is_repeat
        );
    }

    #[test]
    fn a_key_goes_down_repeats_and_comes_up() {
        let key = Key::Named(Named::F24);
        let (input, mut keys) = (Input::key("F24"), KeysDown::default());
        for (repeat, transition) in [(false, Transition::Down), (true, Transition::Repeat)] {
            let found = keys.input(&down(key.clone(), Modifiers::empty(), repeat));
            let input = input.clone();
            assert_eq!(found, Some(InputEvent { input, transition }));
        }
        let released = Event::KeyReleased {
            modified_key: key.clone(),
            key,
            physical_key: Physical::Unidentified(NativeCode::Unidentified),
            location: Location::Standard,
            modifiers: Modifiers::empty(),
        };
        let transition = Transition::Up;
        assert_eq!(
            keys.input(&released),
            Some(InputEvent { input, transition })
        );
    }

    #[test]
    fn mouse_buttons_have_names() {
        let found = button(&mouse::Event::ButtonPressed(mouse::Button::Forward)).unwrap();
        assert_eq!(found.input, Input::Mouse("forward".to_owned()));
        assert_eq!(button(&mouse::Event::CursorLeft), None);
    }

    #[test]
    fn ctrl_makes_it_another_thing() {
        let event = down(Key::Character("q".into()), Modifiers::CTRL, false);
        assert_eq!(press(&event), None);
        assert!(is_ctrl(&event, "q"));
        assert!(!is_ctrl(
            &down(Key::Character("q".into()), Modifiers::empty(), false),
            "q"
        ));
    }
}
