//! A list that is opened to choose from, for mouse and finger.

use std::fmt;

use iced::overlay::menu;
use iced::widget::pick_list;
use iced::{Border, Element, Fill, Shadow, Theme};

use super::repaint_layer;
use crate::app::theme;

/// Above and below the letters: with them a finger has its 44 pixels.
const ENDS: f32 = 11.0;

/// One of what can be chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Choice {
    place: usize,
    label: String,
}

impl fmt::Display for Choice {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str(&self.label)
    }
}

/// A list of these labels that shows the one at `chosen`, or else what it is for.
pub fn picker<'a, M: Clone + 'a>(
    labels: Vec<String>,
    chosen: Option<usize>,
    purpose: String,
    choose: impl Fn(usize) -> M + 'a,
) -> Element<'a, M> {
    let choices: Vec<Choice> = labels
        .into_iter()
        .enumerate()
        .map(|(place, label)| Choice { place, label })
        .collect();
    let chosen = chosen.and_then(|place| choices.get(place).cloned());
    let list = pick_list(choices, chosen, move |choice: Choice| choose(choice.place));
    let list = list
        .placeholder(purpose)
        .text_size(theme::SMALL)
        .padding([ENDS, 12.0])
        .width(Fill)
        .style(closed)
        .menu_style(open);
    repaint_layer::cut(list)
}

fn closed(theme: &Theme, status: pick_list::Status) -> pick_list::Style {
    let tones = theme::tones(theme);
    let is_active = matches!(status, pick_list::Status::Active);
    pick_list::Style {
        text_color: tones.ink,
        placeholder_color: tones.quiet,
        handle_color: tones.ink,
        background: tones.raised.into(),
        border: Border {
            color: if is_active { tones.quiet } else { tones.ink },
            width: if is_active { 1.0 } else { 2.0 },
            radius: 8.0.into(),
        },
    }
}

fn open(theme: &Theme) -> menu::Style {
    let tones = theme::tones(theme);
    menu::Style {
        background: tones.raised.into(),
        border: Border {
            color: tones.ink,
            width: 2.0,
            radius: 8.0.into(),
        },
        text_color: tones.ink,
        selected_text_color: tones.ground,
        selected_background: tones.ink.into(),
        shadow: Shadow::default(),
    }
}
