//! The strip of the whole job: its parts side by side, how far each is, and the time that is left.

use iced::widget::{Row, column, container, progress_bar, row, text};
use iced::{Center, Element, Fill, FillPortion};

use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::theme;
use crate::session::PagePart;

/// What stands in the strip.
#[derive(Clone, Copy)]
pub(super) struct JobStrip<'a> {
    pub parts: &'a [PagePart],
    pub time_left: Option<&'a str>,
    /// Whether there is room for the names of the parts.
    pub has_names: bool,
}

/// The height of a name, and of the bar below it.
const NAME: f32 = 25.0;
const BAR: f32 = 6.0;
const GAP: f32 = 8.0;

/// How high the strip is.
pub(super) const fn height(has_names: bool) -> f32 {
    if has_names { NAME + BAR } else { BAR }
}

/// The strip in this width. Where not all names have room, the part in hand and the one after it are
/// named.
pub(super) fn strip<'a, M: 'a>(strip: JobStrip<'_>, width: f32) -> Element<'a, M> {
    let ems = |text: &str| TextMetrics::new(text, theme::BOLD).ems() * theme::SMALL + GAP;
    let time = strip.time_left.map_or(0.0, ems);
    let here = strip.parts.iter().position(|part| part.is_now);
    let all: f32 = strip.parts.iter().map(|part| ems(&part.name)).sum();
    let names_all = all + time + 2.0 * GAP <= width;
    let is_named =
        |index: usize| names_all || here.is_some_and(|here| index == here || index == here + 1);
    let mut bar: Row<'a, M> = row![].spacing(GAP).height(height(strip.has_names));
    for (index, part) in strip.parts.iter().enumerate() {
        let girth = progress_bar(0.0..=100.0, f32::from(part.percent))
            .girth(BAR)
            .style(if part.is_now {
                theme::progress_now
            } else {
                theme::progress
            });
        let has_name = strip.has_names && is_named(index);
        // A part with a name is as wide as the name needs, and more where there is more.
        let portion = if has_name {
            portion(ems(&part.name))
        } else {
            40
        };
        let mut side = column![].width(FillPortion(portion));
        if strip.has_names {
            let name = if has_name {
                part.name.clone()
            } else {
                String::new()
            };
            let name = text(name)
                .size(theme::SMALL)
                .line_height(1.15)
                .wrapping(text::Wrapping::None);
            side = side.push(
                container(if part.is_now {
                    name.font(theme::BOLD)
                } else {
                    name.style(theme::quiet)
                })
                .height(NAME),
            );
        }
        bar = bar.push(side.push(girth));
    }
    if let Some(time) = strip.time_left.filter(|_| strip.has_names) {
        bar = bar.push(
            text(time.to_owned())
                .size(theme::SMALL)
                .line_height(1.15)
                .wrapping(text::Wrapping::None),
        );
    }
    container(bar.align_y(Center)).width(Fill).into()
}

fn portion(width: f32) -> u16 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "casts from floats saturate"
    )]
    let portion = width.round() as u16;
    portion.max(1)
}
