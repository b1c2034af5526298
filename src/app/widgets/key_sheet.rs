//! All the keys of a screen by groups, over it: each a button that does what the key does.

use iced::widget::{Id, button, column, container, opaque, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, padding};

use super::key_bar::{KeyFace, keycap};
use crate::app::key_guide::{KeyGroup, KeyHint, Tapped, cap};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::theme;
use crate::pedal::Bindings;
use crate::words::Words;

/// So many columns at the most.
const MOST_COLUMNS: usize = 4;
/// Left and right of what stands on a button.
const SIDES: f32 = 12.0;
/// Room for the bar that scrolls them.
const BAR: f32 = 12.0;
/// Left and right of the letters on a key, with its border.
const CAP_SIDES: f32 = 16.0;
/// Height of a button.
const BUTTON: f32 = 46.0;
const GAP: f32 = 8.0;
const MARGIN: f32 = 24.0;

/// The sheet. `notice` stands above the keys: what a sign in the bar means.
pub fn key_sheet<'a>(
    hints: &[KeyHint],
    notice: Option<String>,
    words: &Words,
    bindings: &Bindings,
) -> Element<'a, Tapped> {
    let groups: Vec<(String, Vec<KeyFace>)> = KeyGroup::ALL
        .into_iter()
        .filter_map(|group| {
            let keys = hints.iter().filter(|hint| hint.group == group);
            let keys: Vec<_> = keys
                .map(|hint| KeyFace::new(*hint, words, bindings))
                .collect();
            (!keys.is_empty()).then(|| (words.plainly(group.heading(), &[]), keys))
        })
        .collect();
    // What keys do stands in a line, beside the widest of them.
    let caps = groups.iter().flat_map(|(_, keys)| keys);
    let caps = caps.map(|key| TextMetrics::new(&key.cap, theme::FACE).ems() * theme::SMALL);
    let cap_width = caps.fold(0.0, f32::max) + CAP_SIDES;
    let heading = words.plainly("key-sheet-heading", &[]);
    let close = words.plainly("key-sheet-close", &[]);
    let escape = words.plainly("key-cap", &[("key", &cap("Escape"))]);
    let sheet = responsive(move |room| {
        let mut sheet = column![top(heading.clone(), escape.clone(), close.clone())].spacing(16);
        if let Some(notice) = notice.clone() {
            sheet = sheet.push(super::notice(notice));
        }
        sheet
            .push(
                scrollable(columns(&groups, cap_width, room.width))
                    .spacing(GAP)
                    .height(Fill),
            )
            .into()
    });
    opaque(
        container(sheet)
            .padding(MARGIN)
            .width(Fill)
            .height(Fill)
            .style(theme::sheet),
    )
}

fn top<'a>(heading: String, escape: String, close: String) -> Element<'a, Tapped> {
    let close = row![keycap(escape), text(close).size(theme::SMALL)];
    let close = button(container(close.spacing(GAP).align_y(Center)).center_y(Fill))
        .height(BUTTON)
        .padding([0.0, 12.0])
        .style(theme::pressable(true))
        .on_press(Tapped::AllKeys);
    row![
        text(heading)
            .size(theme::HEADING)
            .font(theme::BOLD)
            .width(Fill),
        container(close).id("sheet-close"),
    ]
    .align_y(Center)
    .into()
}

/// As many columns as leave each label its two lines.
fn count_of_columns(groups: &[(String, Vec<KeyFace>)], cap_width: f32, width: f32) -> usize {
    let labels = groups.iter().flat_map(|(_, keys)| keys);
    let labels = labels.map(|key| TextMetrics::new(&key.label, theme::FACE));
    let mut labels: Vec<_> = labels.collect();
    let mut has_room = |count: &usize| {
        #[expect(clippy::cast_precision_loss, reason = "a few columns")]
        let each = (width - BAR + MARGIN) / *count as f32 - MARGIN;
        let room = each - 2.0 * SIDES - cap_width - GAP;
        let is_whole = |label: &mut TextMetrics| {
            let taken = label.at(theme::SMALL, room);
            taken.width <= room && taken.height < 3.0 * theme::SMALL
        };
        room > 0.0 && labels.iter_mut().all(is_whole)
    };
    (1..=MOST_COLUMNS)
        .rev()
        .find(|count| has_room(count))
        .unwrap_or(1)
}

/// The groups side by side, each in the column that is shortest so far.
fn columns<'a>(
    groups: &[(String, Vec<KeyFace>)],
    cap_width: f32,
    width: f32,
) -> Element<'a, Tapped> {
    let count = count_of_columns(groups, cap_width, width);
    let mut sides: Vec<(usize, Vec<Element<'a, Tapped>>)> = Vec::new();
    sides.resize_with(count, || (0, Vec::new()));
    for (heading, keys) in groups {
        let shortest = sides.iter_mut().min_by_key(|(length, _)| *length);
        if let Some((length, side)) = shortest {
            *length += keys.len() + 1;
            side.push(group(heading.clone(), keys, cap_width));
        }
    }
    let sides = sides
        .into_iter()
        .map(|(_, side)| column(side).spacing(MARGIN).width(Fill).into());
    row(sides)
        .spacing(MARGIN)
        .padding(padding::right(BAR))
        .into()
}

fn group<'a>(heading: String, keys: &[KeyFace], cap_width: f32) -> Element<'a, Tapped> {
    let heading = text(heading).size(theme::SMALL).style(theme::quiet);
    let keys = keys.iter().map(|key| {
        let face = row![
            container(keycap(key.cap.clone())).width(cap_width),
            // Two lines of it go on a button.
            text(key.label.clone())
                .size(theme::SMALL)
                .line_height(1.1)
                .width(Fill),
        ];
        let press = button(container(face.spacing(GAP).align_y(Center)).center_y(Fill))
            .width(Fill)
            .height(BUTTON)
            .padding([0.0, SIDES])
            .style(theme::pressable(false))
            .on_press(Tapped::Key(key.hint));
        let id = Id::from(format!("sheet {}", key.hint.key));
        container(press).id(id).into()
    });
    column![heading].extend(keys).spacing(6).into()
}
