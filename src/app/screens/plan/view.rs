//! What the plan screen looks like: the form, the knots that fit as cards, and the chosen one in full.
//! Where it is wide they stand side by side, where it is high one below the other.

use iced::widget::{column, container, responsive, row, scrollable, text};
use iced::{Element, Fill, Shrink, Size};

use super::findings::Findings;
use super::form::{Message, State};
use super::form_view::heading;
use crate::app::{theme, widgets};
use crate::guide::KnownFit;
use crate::words::Words;

/// Between the parts of the screen.
const GAP: f32 = 22.0;
/// The width of the form beside the cards: a share of the room, within bounds.
const FORM_SHARE: f32 = 0.33;
const FORM_WIDTHS: [f32; 2] = [290.0, 420.0];
/// The width of a column of the form above the cards, at the least.
const FIELD: f32 = 230.0;
/// The most of the height that the form takes above the cards.
const FORM_ABOVE: f32 = 0.44;
/// Beside cards of more width than this the chosen knot has a column of its own.
const WIDE: f32 = 1100.0;
const DETAIL: f32 = 410.0;
/// Below this height what narrows the cards has a button, and of it what is set stands above them.
const LOW: f32 = 560.0;
/// The row of what is set there with its space, a card with its heading, and the least of the strip.
const CHIPS: f32 = 80.0;
const WHOLE_CARD: f32 = 264.0;
const LEAST_STRIP: f32 = 60.0;
/// What comes of a knot in mind has this height there, and is scrolled.
const KNOWN_WHERE_LOW: f32 = 112.0;
/// The height of the chosen knot below the cards, or below the form: a share of the room, within bounds.
const STRIP_SHARE: f32 = 0.27;
const STRIP_HEIGHTS: [f32; 2] = [104.0, 290.0];
const BELOW_FORM: f32 = 0.36;

/// Where the chosen knot stands in full.
#[derive(Clone, Copy, PartialEq, Eq)]
enum DetailPlace {
    /// In a column of its own beside the cards.
    Beside,
    /// Below the cards.
    Below,
    /// Below the form.
    BelowForm,
    /// At the end of the form, with what to take care of across the screen: where it is low.
    InForm,
}

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let mut page = widgets::page(12);
        if let Some(error) = &self.presets_trouble {
            page = page.push(widgets::notice(words.presets_failed(error)));
        }
        page.push(responsive(move |size| {
            if size.height > size.width {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "a few columns"
                )]
                let columns = ((size.width / FIELD) as usize).max(1);
                let form = self.fields(columns, Shrink, None, words);
                let form = container(form).max_height(size.height * FORM_ABOVE);
                let knots = self.knots(DetailPlace::Below, words);
                return column![form, knots].spacing(GAP).into();
            }
            let [least, most] = FORM_WIDTHS;
            let width = (size.width * FORM_SHARE).clamp(least, most);
            let place = if size.width - width - GAP >= WIDE {
                DetailPlace::Beside
            } else if size.height < LOW {
                DetailPlace::InForm
            } else {
                DetailPlace::BelowForm
            };
            if place == DetailPlace::InForm {
                return self.low_page(width, words);
            }
            let form = column![self.fields(1, Fill, None, words)].spacing(12);
            let form = match &self.found {
                Findings::Knots(question, answers)
                    if place == DetailPlace::BelowForm && !answers.is_empty() =>
                {
                    let detail = container(self.told_of(question, answers, words));
                    form.push(detail.height(size.height * BELOW_FORM))
                }
                _ => form,
            };
            let form = container(form).width(width);
            row![form, self.knots(place, words)].spacing(GAP).into()
        }))
        .into()
    }

    /// Where it is low: what to take care of stands whole across the screen, and the figures of the
    /// chosen knot, most of which its card has too, at the end of the form.
    fn low_page<'a>(&'a self, form_width: f32, words: &'a Words) -> Element<'a, Message> {
        let found = match &self.found {
            Findings::Knots(question, answers) if !answers.is_empty() => Some((question, answers)),
            _ => None,
        };
        let told = found.map(|(question, answers)| self.facts(question, answers, words));
        let cautions = found.map(|(question, answers)| self.cautions(question, answers, words));
        let form = container(self.fields(1, Fill, told, words)).width(form_width);
        let both = row![form, self.knots(DetailPlace::InForm, words)].spacing(GAP);
        column![both.height(Fill)].push(cautions).spacing(8).into()
    }

    /// The knots that fit, or what stands in their place.
    fn knots<'a>(&'a self, detail: DetailPlace, words: &'a Words) -> Element<'a, Message> {
        responsive(move |size| self.knots_in(size, detail, words)).into()
    }

    /// What comes of the knot that the tyer has in mind, a line for each number of passes; nothing
    /// without one. Where it is low what does comes first.
    fn known_lines<'a>(&self, is_low: bool, words: &Words) -> Option<Element<'a, Message>> {
        if self.known.fits.is_empty() {
            return None;
        }
        let heading = text(words.plainly("known-heading", &[])).size(theme::BODY);
        let mut known: Vec<&KnownFit> = self.known.fits.iter().collect();
        if is_low {
            known.sort_by_key(|known| !known.verdict.is_met());
        }
        let lines = known.into_iter().map(|known| {
            let line = text(words.known_fit(known, self.cover()).to_string()).size(theme::SMALL);
            if known.verdict.is_met() {
                line.font(theme::BOLD).into()
            } else {
                line.style(theme::quiet).into()
            }
        });
        let lines = column![heading.font(theme::BOLD)].extend(lines).spacing(2);
        Some(lines.width(Fill).into())
    }

    fn knots_in<'a>(
        &'a self,
        size: Size,
        detail: DetailPlace,
        words: &'a Words,
    ) -> Element<'a, Message> {
        let is_low = size.height < LOW;
        let Findings::Knots(question, answers) = &self.found else {
            let mut side = column![heading(words.plainly("plan-answers", &[]))].spacing(12);
            // What is wrong stands beside its field.
            side = side.push(self.known_lines(false, words));
            if !matches!(self.found, Findings::Wrong(_)) {
                side = side.push(text(self.sentence(words).to_string()).size(26));
            }
            if self.only.is_some() && self.form.is_empty() {
                let note = words.plainly("plan-only-note", &[]);
                side = side.push(widgets::quiet(note, theme::BODY));
            }
            let side = side.push(self.chips(words));
            return scrollable(side).spacing(8).width(Fill).height(Fill).into();
        };
        let mut side = column![].spacing(12).width(Fill).height(Fill);
        if is_low {
            side = side.push(self.set_chips(answers.len(), words));
            if let Some(known) = self.known_lines(true, words) {
                let known = scrollable(known).spacing(8).width(Fill);
                side = side.push(container(known).max_height(KNOWN_WHERE_LOW));
            }
            if self.filters.are_shown {
                let chips = scrollable(self.chips(words)).spacing(8);
                return side.push(chips.width(Fill).height(Fill)).into();
            }
        } else {
            side = side.push(self.known_lines(false, words));
            let found = if self.known.are_others {
                words.plainly("known-others", &[])
            } else if answers.is_empty() {
                words.plainly("plan-answers", &[])
            } else {
                words.answers_found(answers.len())
            };
            side = side.push(text(found).size(theme::SMALL).font(theme::BOLD));
            side = side.push(self.chips(words));
        }
        let cards = responsive(move |room| self.cards(question, answers, room, words));
        match detail {
            DetailPlace::BelowForm | DetailPlace::InForm => side.push(cards).into(),
            DetailPlace::Beside => {
                let detail = self.detail_column(question, answers, words);
                let detail = container(detail).width(DETAIL).height(Fill);
                row![side.push(cards), detail].spacing(GAP).into()
            }
            // The card has all of it where what comes of a knot in mind has taken the room.
            DetailPlace::Below if is_low && !self.known.fits.is_empty() => side.push(cards).into(),
            DetailPlace::Below => {
                let [least, most] = STRIP_HEIGHTS;
                let height = (size.height * STRIP_SHARE).clamp(least, most);
                // A card is whole before the strip is.
                let left = size.height - CHIPS - WHOLE_CARD;
                let height = if is_low {
                    height.min(left.max(LEAST_STRIP))
                } else {
                    height
                };
                let detail = self.detail_strip(question, answers, height, words);
                let detail = container(detail).height(height);
                side.push(cards).push(detail).into()
            }
        }
    }
}
