//! Single keys from a terminal, or lines from anything else.

use std::io::BufRead as _;
use std::sync::mpsc::Sender;
use std::thread;

use crossterm::event::{self, KeyCode, KeyEvent, KeyEventKind, KeyModifiers, MediaKeyCode};
use crossterm::terminal::{disable_raw_mode, enable_raw_mode};

use super::input::TerminalEvent;
use crate::pedal::{Input, InputEvent, Transition};

/// While this is there the terminal gives single keys.
pub(super) struct RawMode(());

impl RawMode {
    /// Asks the terminal for single keys; none when it will not.
    pub fn begin() -> Option<Self> {
        enable_raw_mode().ok().map(|()| Self(()))
    }
}

impl Drop for RawMode {
    fn drop(&mut self) {
        // Nothing can be done about a terminal that is gone.
        let _ = disable_raw_mode();
    }
}

/// Sends every key on, on a thread of its own.
pub(super) fn listen_to_keys(tell: Sender<TerminalEvent>) {
    let sender = tell.clone();
    let started = thread::Builder::new()
        .name("keys".to_owned())
        .spawn(move || {
            loop {
                let events = match event::read() {
                    Ok(event::Event::Key(key)) => raws(&key),
                    Ok(_) => Vec::new(),
                    Err(_) => vec![TerminalEvent::Gone],
                };
                for event in events {
                    let is_end = matches!(event, TerminalEvent::Gone);
                    if tell.send(event).is_err() || is_end {
                        return;
                    }
                }
            }
        });
    if started.is_err() {
        let _ = sender.send(TerminalEvent::Gone);
    }
}

/// Sends every line on, on a thread of its own.
pub(super) fn listen_to_lines(tell: Sender<TerminalEvent>) {
    let sender = tell.clone();
    let started = thread::Builder::new()
        .name("lines".to_owned())
        .spawn(move || {
            let mut input = std::io::stdin().lock();
            let mut line = Vec::new();
            // A line that is not Unicode counts too, with replacement characters in it.
            while input
                .read_until(b'\n', &mut line)
                .is_ok_and(|read| read > 0)
            {
                let text = String::from_utf8_lossy(&line);
                let text = text.trim_end_matches(['\r', '\n']).to_owned();
                line.clear();
                if tell.send(TerminalEvent::Line(text)).is_err() {
                    return;
                }
            }
            let _ = tell.send(TerminalEvent::Gone);
        });
    if started.is_err() {
        let _ = sender.send(TerminalEvent::Gone);
    }
}

/// What a key does. Most terminals do not report when a key is released, so a press stands for
/// both.
fn raws(key: &KeyEvent) -> Vec<TerminalEvent> {
    if key.modifiers.contains(KeyModifiers::CONTROL) {
        let ends = matches!(key.code, KeyCode::Char('c' | 'd' | 'q'));
        return if ends {
            vec![TerminalEvent::Gone]
        } else {
            Vec::new()
        };
    }
    let Some(name) = name(key.code) else {
        return Vec::new();
    };
    let transitions: &[Transition] = match key.kind {
        KeyEventKind::Press => &[Transition::Down, Transition::Up],
        KeyEventKind::Repeat => &[Transition::Repeat],
        KeyEventKind::Release => &[],
    };
    let input = Input::key(&name);
    let raw = |transition: &Transition| InputEvent {
        input: input.clone(),
        transition: *transition,
    };
    let typed = match key.code {
        KeyCode::Char(letter) => Some(letter.to_string()),
        _ => None,
    };
    transitions
        .iter()
        .map(|transition| TerminalEvent::Key(raw(transition), typed.clone()))
        .collect()
}

/// The name of a key in the UI Events standard.
fn name(code: KeyCode) -> Option<String> {
    let name = match code {
        KeyCode::Char(letter) => return Some(letter.to_string()),
        KeyCode::F(number) => return Some(format!("F{number}")),
        KeyCode::Enter => "Enter",
        KeyCode::Backspace => "Backspace",
        KeyCode::PageDown => "PageDown",
        KeyCode::PageUp => "PageUp",
        KeyCode::Left => "ArrowLeft",
        KeyCode::Right => "ArrowRight",
        KeyCode::Up => "ArrowUp",
        KeyCode::Down => "ArrowDown",
        KeyCode::Home => "Home",
        KeyCode::End => "End",
        KeyCode::Tab => "Tab",
        KeyCode::Esc => "Escape",
        KeyCode::Media(MediaKeyCode::TrackNext) => "MediaTrackNext",
        KeyCode::Media(MediaKeyCode::TrackPrevious) => "MediaTrackPrevious",
        KeyCode::Media(MediaKeyCode::PlayPause) => "MediaPlayPause",
        _ => return None,
    };
    Some(name.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_of_a_terminal_have_the_names_of_ui_events() {
        for (code, named) in [
            (KeyCode::Char(' '), " "),
            (KeyCode::Left, "ArrowLeft"),
            (KeyCode::Esc, "Escape"),
            (KeyCode::F(13), "F13"),
        ] {
            let events = raws(&KeyEvent::new(code, KeyModifiers::NONE));
            let [TerminalEvent::Key(down, _), TerminalEvent::Key(up, _)] = &events[..] else {
                panic!("{code:?}");
            };
            assert_eq!(down.input, Input::key(named));
            assert_eq!(
                (down.transition, up.transition),
                (Transition::Down, Transition::Up)
            );
        }
        let ctrl_c = raws(&KeyEvent::new(KeyCode::Char('c'), KeyModifiers::CONTROL));
        assert!(matches!(ctrl_c[..], [TerminalEvent::Gone]));
    }
}
