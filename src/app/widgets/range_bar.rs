//! A range as a bar, and a mark where in it something lies.

use iced::widget::{container, row, space};
use iced::{Center, Element, Fill, FillPortion, Theme, border};

use crate::app::theme;

/// Height of the bar, and of the mark on it.
const BAR: f32 = 8.0;
const MARK: f32 = 18.0;
const MARK_WIDTH: f32 = 7.0;
/// The least part of the bar that is told from the next.
const FINE: f32 = 200.0;

/// A bar from 0 to 1 with a mark there. What lies before it is filled.
pub fn range_bar<'a, M: 'a>(share: f64) -> Element<'a, M> {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 0 and 1"
    )]
    let before = (share.clamp(0.0, 1.0) as f32 * FINE).round() as u16;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a small number"
    )]
    let all = FINE as u16;
    let part = |portion: u16, style: fn(&Theme) -> container::Style| {
        let part = container(space()).height(BAR).style(style);
        part.width(FillPortion(portion.max(1)))
    };
    row![
        part(before, filled),
        container(space())
            .width(MARK_WIDTH)
            .height(MARK)
            .style(mark),
        part(all - before, empty),
    ]
    .align_y(Center)
    .height(MARK)
    .width(Fill)
    .into()
}

fn filled(theme: &Theme) -> container::Style {
    container::Style {
        background: Some(theme::tones(theme).quiet.into()),
        border: border::rounded(border::left(4)),
        ..container::Style::default()
    }
}

fn empty(theme: &Theme) -> container::Style {
    let tones = theme::tones(theme);
    container::Style {
        background: Some(tones.ground.into()),
        border: border::rounded(border::right(4))
            .color(tones.quiet)
            .width(1),
        ..container::Style::default()
    }
}

fn mark(theme: &Theme) -> container::Style {
    container::Style {
        background: Some(theme::tones(theme).ink.into()),
        border: border::rounded(3),
        ..container::Style::default()
    }
}
