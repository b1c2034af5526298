//! What the start screen looks like: the tie that was left off and how to go on with it, or the form of a
//! knot; the ways that lead on; and beside them the knot, as it lies now or as it will be.

use iced::widget::{button, column, container, responsive, row, scrollable, text};
use iced::{Center, Element, Fill, Length, Shrink, Size};

use super::ways::Way;
use super::{FORM, Message, State};
use crate::app::key_guide::cap;
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::widgets::key_bar::keycap;
use crate::app::widgets::leaves::leaves_told;
use crate::app::{theme, widgets};
use crate::words::Words;

/// The width of what stands beside the picture: a share of the room, within bounds.
const SHARE: f32 = 0.55;
const WIDTHS: [f32; 2] = [440.0, 700.0];
/// The most of the height that it takes above the picture, where it is high.
const MOST_ABOVE: f32 = 0.6;
const GAP: f32 = 24.0;
/// Ways that stand beside one another.
const ABREAST: usize = 2;
/// Below this height they stand below the rest, in rows of as many more.
const LOW: f32 = 560.0;
const LOW_ABREAST: usize = 4;
/// Below this height words are set smaller, so that they do not have to be scrolled.
const VERY_LOW: f32 = 440.0;
/// Between two ways, and above, below, left and right of what stands on one.
const WAY_GAP: f32 = 8.0;
const WAY_ENDS: f32 = 11.0;
const WAY_SIDES: f32 = 12.0;
/// Round the letters on the key of a way, and from it to what stands beside it.
const KEY_AND_GAP: f32 = 24.0;
/// The largest type of the very first start beside its picture; its heading and its gaps in that, and where
/// that is too much; and the height of its two buttons.
const WELCOME: f32 = 31.0;
const WELCOME_SHARES: [f32; 2] = [1.5, 0.6];
const CLOSE_SHARES: [f32; 2] = [1.05, 0.42];
const WELCOME_BUTTONS: f32 = 108.0;
/// Others that wait, above a picture.
const OTHERS_ABOVE: f32 = 330.0;

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let page = widgets::page(14);
        page.push(responsive(move |room| {
            let picture = container(self.picture.view()).height(Fill);
            if room.height > room.width {
                let parts = container(self.parts(Shrink, room, words));
                let parts = parts.max_height(room.height * MOST_ABOVE);
                return column![parts, picture].spacing(GAP).into();
            }
            let [least, most] = WIDTHS;
            let width = (room.width * SHARE).clamp(least, most);
            if room.height < LOW && !self.is_new && self.focus.is_none() {
                let parts = container(self.at_hand(room, words)).width(width);
                let above = row![parts, picture].spacing(GAP).height(Fill);
                let ways = Self::ways(LOW_ABREAST, room.width, words);
                return column![above, ways].spacing(12).into();
            }
            let parts = self.parts(Fill, Size { width, ..room }, words);
            let parts = container(parts).width(width);
            row![parts, picture].spacing(GAP).into()
        }))
        .into()
    }

    /// The first tie, with one way to begin it and a quiet way past it: both are in sight, however long
    /// what stands above them is. What this is has to be read in five seconds: it is as large as the room
    /// lets it be, but for a picture below it.
    fn welcome<'a>(height: Length, room: Size, words: &Words) -> Element<'a, Message> {
        let [heading, what, needs] = [
            "first-start-heading",
            "first-start-what",
            "first-start-needs",
        ]
        .map(|part| words.plainly(part, &[]));
        let begin = widgets::first_tie(Message::First, words);
        let past = row![
            keycap("Tab".to_owned()),
            text(words.plainly("first-start-past", &[])).size(theme::BODY),
        ];
        let past = button(past.spacing(12).align_y(Center))
            .padding([9, 20])
            .style(theme::pressable(false))
            .on_press(Message::Way(Way::Form));
        let mut bold = TextMetrics::new(&heading, theme::BOLD);
        let mut plain = [&what, &needs].map(|text| TextMetrics::new(text, theme::FACE));
        let mut fits = |size: f32, [heading, gap]: [f32; 2]| {
            let plain = plain.iter_mut();
            let plain: f32 = plain.map(|text| text.at(size, room.width).height).sum();
            let heading = bold.at(size * heading, room.width).height;
            heading + plain + 4.0 * size * gap + WELCOME_BUTTONS <= room.height
        };
        let most = if height == Fill { WELCOME } else { theme::BODY };
        let mut size = most;
        while size > theme::SMALL && !fits(size, WELCOME_SHARES) {
            size *= 0.96;
        }
        let size = size.max(theme::SMALL);
        let shares = if fits(size, WELCOME_SHARES) {
            WELCOME_SHARES
        } else {
            CLOSE_SHARES
        };
        let [of_heading, gap] = shares;
        let spacing = size * gap;
        let told = column![
            text(heading).size(size * of_heading).font(theme::BOLD),
            text(what).size(size),
            text(needs).size(size),
        ];
        let has_room = fits(size, shares);
        let told = scrollable(told.spacing(spacing))
            .spacing(8)
            .width(Fill)
            // Where there is room the buttons follow what is told.
            .height(if has_room { Shrink } else { height });
        let buttons = column![
            container(begin).id("first-begin"),
            container(past).id("first-past"),
        ];
        column![told, buttons.spacing(spacing)]
            .spacing(spacing)
            .into()
    }

    /// What one press begins or goes on with, where it is low: the ways that lead on stand below it.
    fn at_hand<'a>(&'a self, room: Size, words: &'a Words) -> Element<'a, Message> {
        let is_low = room.height < VERY_LOW;
        if let Some(first) = self.waiting.first() {
            let left_off = Self::left_off(first, self.pace, is_low, words);
            return column![left_off, self.others(words)].spacing(12).into();
        }
        let parts = column![
            heading(words.plainly("start-heading", &[])),
            self.begin_button(words),
            self.facts(words),
        ];
        scrollable(parts.spacing(14)).spacing(8).width(Fill).into()
    }

    /// What was left off, or the form; and the ways that lead on.
    fn parts<'a>(&'a self, height: Length, room: Size, words: &'a Words) -> Element<'a, Message> {
        if self.is_new {
            return Self::welcome(height, room, words);
        }
        let parts = column![].spacing(14);
        if let Some(first) = self.waiting.first().filter(|_| self.focus.is_none()) {
            let others = if height == Fill {
                self.others(words)
            } else {
                self.others_in(Size::new(room.width, OTHERS_ABOVE), words)
            };
            // In the order of a low window too.
            return parts
                .push(Self::left_off(first, self.pace, false, words))
                .push(others)
                .push(Self::ways(ABREAST, room.width, words))
                .into();
        }
        // Whoever names a knot has the room for that, and comes back to the ways by leaving the form.
        let has_ways = self.focus.is_none();
        let asks = if has_ways {
            "start-heading"
        } else {
            "start-name-heading"
        };
        let mut parts = vec![heading(words.plainly(asks, &[]))];
        if has_ways {
            parts.push(Self::ways(ABREAST, room.width, words));
        }
        parts.extend(self.form(words));
        let is_filled = height == Fill;
        let most = if is_filled { 1.0 } else { MOST_ABOVE };
        leaves_told(
            FORM,
            parts,
            10.0,
            most * room.height,
            is_filled,
            &self.form_places,
        )
    }

    /// The ways that lead on in this width, each with its key.
    fn ways<'a>(abreast: usize, width: f32, words: &Words) -> Element<'a, Message> {
        #[expect(clippy::cast_precision_loss, reason = "a few ways")]
        let each = (width + WAY_GAP) / abreast as f32 - WAY_GAP;
        let rows = Way::ALL.chunks(abreast).map(|ways| {
            let faces = ways.iter().map(|way| {
                let key = words.plainly("key-cap", &[("key", &cap(way.key()))]);
                (way, key, words.plainly(way.label(), &[]))
            });
            let faces: Vec<_> = faces.collect();
            // Those side by side are equally high; with these ends a finger has its 44 pixels (WCAG 2.2,
            // success criterion 2.5.5).
            let rows = faces.iter().map(|(_, key, label)| {
                let key = TextMetrics::new(key, theme::FACE).ems() * theme::SMALL;
                let room = each - 2.0 * WAY_SIDES - key - KEY_AND_GAP;
                let label = TextMetrics::new(label, theme::FACE).at(theme::SMALL, room);
                label.height
            });
            let height = rows.fold(0.0, f32::max) + 2.0 * WAY_ENDS;
            let ways = faces.into_iter().map(|(way, key, label)| {
                let label = text(label).size(theme::SMALL);
                let face = row![keycap(key), label].spacing(10).align_y(Center);
                let way_on = button(container(face).center_y(Fill))
                    .width(Fill)
                    .height(height)
                    .padding([0.0, WAY_SIDES])
                    .style(theme::pressable(false))
                    .on_press(Message::Way(*way));
                container(way_on).id(way.label()).into()
            });
            row(ways).spacing(WAY_GAP).into()
        });
        column(rows).spacing(WAY_GAP).into()
    }
}

fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
