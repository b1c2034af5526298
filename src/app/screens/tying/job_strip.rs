//! The strip of the whole job: its parts side by side, how far each is, and the time that is left.

use iced::alignment::Vertical::Top;
use iced::widget::{Row, column, container, progress_bar, row, text};
use iced::{Element, Fill, FillPortion};

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
/// The share of the width of a part that has no name.
const UNNAMED: u16 = 40;

/// How high the strip is.
pub(super) const fn height(has_names: bool) -> f32 {
    if has_names { NAME + BAR } else { BAR }
}

impl JobStrip<'_> {
    /// Whether the time that is left has room beside the names of all parts in this width; otherwise it
    /// stands below the strip.
    pub fn has_room_for_time(&self, width: f32) -> bool {
        let time = self.time_left.map_or(0.0, room_for);
        !self.has_names || self.room_for_names() + time + 2.0 * GAP <= width
    }

    fn room_for_names(&self) -> f32 {
        self.parts.iter().map(|part| room_for(&part.name)).sum()
    }

    /// Which parts are named in this width: all of them, or the one in hand, the one after it, and of the
    /// others as many as have room, those to come first.
    fn named(&self, width: f32) -> Vec<bool> {
        let count = self.parts.len();
        let here = self.parts.iter().position(|part| part.is_now).unwrap_or(0);
        let mut named = vec![self.room_for_names() <= width; count];
        let mut left = width - f32::from(UNNAMED) * real(count);
        for index in (here..count).chain((0..here).rev()) {
            let more = room_for(&self.parts[index].name) - f32::from(UNNAMED);
            let is_needed = index == here || index == here + 1;
            if is_needed || more <= left {
                named[index] = true;
                left -= more;
            }
        }
        named
    }
}

/// The width that a name takes, with the gap after it.
pub fn room_for(name: &str) -> f32 {
    TextMetrics::new(name, theme::BOLD).ems() * theme::SMALL + GAP
}

#[expect(clippy::cast_precision_loss, reason = "a few parts")]
const fn real(count: usize) -> f32 {
    count as f32
}

/// The strip in this width.
pub(super) fn strip<'a, M: 'a>(strip: JobStrip<'_>, width: f32) -> Element<'a, M> {
    let time = strip.time_left.filter(|_| strip.has_room_for_time(width));
    let is_named = strip.named(width - time.map_or(0.0, |time| room_for(time) + GAP));
    let mut bar: Row<'a, M> = row![].spacing(GAP).height(height(strip.has_names));
    for (index, part) in strip.parts.iter().enumerate() {
        let girth = progress_bar(0.0..=100.0, f32::from(part.percent))
            .girth(BAR)
            .style(if part.is_now {
                theme::progress_now
            } else {
                theme::progress
            });
        let has_name = strip.has_names && is_named[index];
        // A part with a name is as wide as the name needs, and more where there is more.
        let portion = if has_name {
            portion(room_for(&part.name))
        } else {
            UNNAMED
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
    if let Some(time) = time.filter(|_| strip.has_names) {
        bar = bar.push(time_left(time));
    }
    // The time stands in one line with the names.
    container(bar.align_y(Top)).width(Fill).into()
}

/// The time that is left.
pub(super) fn time_left<'a, M: 'a>(time: &str) -> Element<'a, M> {
    text(time.to_owned())
        .size(theme::SMALL)
        .line_height(1.15)
        .wrapping(text::Wrapping::None)
        .into()
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
