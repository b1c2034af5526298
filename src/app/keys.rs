//! From what the window hands over to a [`Press`].

use iced::keyboard::key::Named;
use iced::keyboard::{Event, Key, Modifiers};

use crate::pedal::Press;

/// The press in a keyboard event, if it is one: a key that went down without Ctrl, Alt or the
/// like.
pub fn press(event: &Event) -> Option<Press> {
    let Event::KeyPressed {
        key,
        modifiers,
        repeat,
        ..
    } = event
    else {
        return None;
    };
    if modifiers.intersects(Modifiers::CTRL | Modifiers::ALT | Modifiers::LOGO) {
        return None;
    }
    let key = match key {
        Key::Named(Named::Space) => " ".to_owned(),
        // The one key whose meaning turns round with Shift.
        Key::Named(Named::Tab) if modifiers.shift() => "Shift+Tab".to_owned(),
        // The names are those of the UI Events standard.
        Key::Named(named) => format!("{named:?}"),
        Key::Character(character) => character.to_string(),
        Key::Unidentified => return None,
    };
    Some(Press {
        key,
        is_repeat: *repeat,
    })
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

    #[test]
    fn a_repeat_says_that_it_is_one() {
        assert!(
            press(&down(Key::Named(Named::Space), Modifiers::empty(), true))
                .unwrap()
                .is_repeat
        );
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
