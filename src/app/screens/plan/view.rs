//! What the plan screen looks like: the form, the knots that fit as cards, and the chosen one in full.
//! Where it is wide they stand side by side, where it is high one below the other. Nothing that has no room
//! whole is begun.

use iced::widget::{column, container, responsive, row, text};
use iced::{Element, Fill, Size};

use super::cards::BAR;
use super::findings::Findings;
use super::form::{Message, State};
use super::form_view::heading;
use super::grid::{Pattern, whole_rows};
use crate::app::widgets::leaves::leaves;
use crate::app::{theme, widgets};
use crate::bench::FitAnswer;
use crate::guide::{FitQuestion, KnownFit};
use crate::words::{Words, unbroken};

/// Between the parts of the screen, and between those of one of them.
const GAP: f32 = 22.0;
const PART_GAP: f32 = 12.0;
/// The width of the form beside the cards: a share of the room, within bounds; and where the chosen knot
/// has a column of its own.
const FORM_SHARE: f32 = 0.33;
const FORM_WIDTHS: [f32; 2] = [290.0, 420.0];
const FORM_OF_THREE: f32 = 0.25;
const FORM_OF_THREE_WIDTHS: [f32; 2] = [320.0, 420.0];
/// The width of a column of the form above the cards, at the least.
const FIELD: f32 = 230.0;
/// The most of the height that the form takes above the cards.
const FORM_ABOVE: f32 = 0.54;
/// The width of the column of the chosen knot: as many cards stand beside it as leave it the first.
const DETAIL: [f32; 2] = [410.0, 540.0];
/// Below this height what narrows the cards has a button, and of it what is set stands above them; and so
/// it is where they have less width than this.
const LOW: f32 = 560.0;
const NARROW: f32 = 680.0;
/// Below this height there is no room for the figures of the chosen knot below the cards.
const VERY_LOW: f32 = 470.0;
/// The row with that button.
const CHIPS: f32 = 44.0;
/// What comes of a knot in mind has at least this height, two rows, or none: its card has it too.
const LEAST_KNOWN: f32 = 52.0;
/// The height of the chosen knot below the cards, or below the form: a share of the room, within bounds.
const STRIP_SHARE: f32 = 0.27;
const STRIP_HEIGHTS: [f32; 2] = [80.0, 290.0];
const BELOW_FORM: f32 = 0.36;

/// What the words in the place of the knots are scrolled in, and what comes of a knot in mind.
const TOLD: &str = "plan-told";
const KNOWN: &str = "plan-known";

/// Where the chosen knot stands in full.
#[derive(Clone, Copy, PartialEq)]
enum DetailPlace {
    /// In a column of its own of this width beside the cards.
    Beside(f32),
    /// Below the cards.
    Below,
    /// Below the form.
    BelowForm,
    /// Its figures below the cards, and what to take care of across the screen: where it is low.
    Foot,
    /// Its figures at the end of the form: where it is very low.
    InForm,
}

/// The width of the form and the place of the chosen knot in a room that is no higher than wide.
fn parts(size: Size) -> (f32, DetailPlace) {
    let [least, most] = FORM_OF_THREE_WIDTHS;
    let form = (size.width * FORM_OF_THREE).clamp(least, most);
    let left = size.width - form - 2.0 * GAP - BAR;
    let [least, most] = DETAIL;
    let columns = (1..8).take_while(|&columns| left - Pattern::least_width(columns) >= least);
    if let Some(columns) = columns.last()
        && size.height >= LOW
    {
        let detail = left - Pattern::least_width(columns);
        return (form, DetailPlace::Beside(detail.min(most)));
    }
    let [least, most] = FORM_WIDTHS;
    let form = (size.width * FORM_SHARE).clamp(least, most);
    let place = if size.height >= LOW {
        DetailPlace::BelowForm
    } else if size.height >= VERY_LOW {
        DetailPlace::Foot
    } else {
        DetailPlace::InForm
    };
    (form, place)
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
                let room = Size::new(size.width, size.height * FORM_ABOVE);
                let form = self.fields(columns, room, Vec::new(), words);
                let knots = self.knots(DetailPlace::Below, words);
                return column![form, knots].spacing(GAP).into();
            }
            let (width, place) = parts(size);
            if matches!(place, DetailPlace::InForm | DetailPlace::Foot) {
                return self.low_page(width, place, words);
            }
            let detail = self
                .found_knots()
                .filter(|_| place == DetailPlace::BelowForm);
            let height = size.height * BELOW_FORM;
            let detail = detail
                .map(|(question, answers)| self.detail_told(question, answers, height, words));
            let height = if detail.is_some() {
                size.height - height - PART_GAP
            } else {
                size.height
            };
            let form = self.fields(1, Size::new(width, height), Vec::new(), words);
            let form = column![form].push(detail).spacing(PART_GAP).width(width);
            row![form, self.knots(place, words)].spacing(GAP).into()
        }))
        .into()
    }

    /// The knots that are found, where there are any.
    fn found_knots(&self) -> Option<(&FitQuestion, &[FitAnswer])> {
        match &self.found {
            Findings::Knots(question, answers) if !answers.is_empty() => Some((question, answers)),
            _ => None,
        }
    }

    /// Where it is low: what to take care of stands whole across the screen, and the figures of the
    /// chosen knot, most of which its card has too, below the cards or at the end of the form.
    fn low_page<'a>(
        &'a self,
        form_width: f32,
        place: DetailPlace,
        words: &'a Words,
    ) -> Element<'a, Message> {
        let form = responsive(move |room| {
            let found = self.found_knots().filter(|_| place == DetailPlace::InForm);
            let facts = found.map(|(question, answers)| self.facts(question, answers, words));
            self.fields(1, room, facts.unwrap_or_default(), words)
        });
        let cautions = self.found_knots();
        let cautions = cautions.map(|(question, answers)| self.cautions(question, answers, words));
        let cautions = cautions.map(|cautions| column(cautions).spacing(4).width(Fill));
        let both = row![container(form).width(form_width), self.knots(place, words)];
        column![both.spacing(GAP).height(Fill)]
            .push(cautions)
            .spacing(8)
            .into()
    }

    /// The knots that fit, or what stands in their place.
    fn knots<'a>(&'a self, detail: DetailPlace, words: &'a Words) -> Element<'a, Message> {
        responsive(move |size| self.knots_in(size, detail, words)).into()
    }

    /// What comes of the knot that the tyer has in mind, a line for each number of passes, in no more than
    /// this height; nothing without one. Where there is little what does comes first, and alone.
    fn known_lines<'a>(&self, most: f32, words: &Words) -> Option<Element<'a, Message>> {
        if self.known.fits.is_empty() || most < LEAST_KNOWN {
            return None;
        }
        let is_little = most < 4.0 * LEAST_KNOWN;
        let heading = text(words.plainly("known-heading", &[])).size(theme::BODY);
        let mut known: Vec<&KnownFit> = self.known.fits.iter().collect();
        if is_little {
            known.sort_by_key(|known| !known.verdict.is_met());
        }
        let lines = known.into_iter().map(|known| {
            let line = unbroken(words.known_fit(known, self.cover()).shown());
            let line = text(line).size(theme::SMALL);
            if known.verdict.is_met() {
                line.font(theme::BOLD).into()
            } else {
                line.style(theme::quiet).into()
            }
        });
        let heading = (!is_little).then(|| heading.font(theme::BOLD).into());
        let lines = heading.into_iter().chain(lines).collect();
        Some(leaves(KNOWN, lines, 2.0, most, false))
    }

    /// What stands in the place of knots.
    fn no_knots<'a>(
        &'a self,
        size: Size,
        is_narrow: bool,
        words: &'a Words,
    ) -> Element<'a, Message> {
        let mut told = vec![heading(words.plainly("plan-answers", &[]))];
        told.extend(self.known_lines(size.height, words));
        // What is wrong stands beside its field.
        if !matches!(self.found, Findings::Wrong(_)) {
            told.push(text(self.sentence(words).to_string()).size(26).into());
        }
        if self.only.is_some() && self.form.is_empty() {
            let note = words.plainly("plan-only-note", &[]);
            told.push(widgets::quiet(note, theme::BODY));
        }
        if is_narrow {
            told.push(self.filters_button(words));
        }
        if !is_narrow || self.filters.are_shown {
            told.push(self.chips(words));
        }
        leaves(TOLD, told, PART_GAP, size.height, true)
    }

    fn knots_in<'a>(
        &'a self,
        size: Size,
        detail: DetailPlace,
        words: &'a Words,
    ) -> Element<'a, Message> {
        let beside = match detail {
            DetailPlace::Beside(width) => Some(width),
            _ => None,
        };
        let width = size.width - beside.map_or(0.0, |width| width + GAP);
        let is_known = !self.known.fits.is_empty();
        let is_narrow =
            size.height < LOW || width < NARROW || detail == DetailPlace::Below && is_known;
        let Findings::Knots(question, answers) = &self.found else {
            return self.no_knots(size, is_narrow, words);
        };
        let mut side = column![].spacing(PART_GAP).width(Fill).height(Fill);
        // A card is whole before all of what comes of the knot in mind is told.
        let first = self.pattern(width).first_row();
        let most = size.height - CHIPS - 2.0 * PART_GAP - first;
        if is_narrow {
            side = side.push(self.set_chips(answers.len(), words));
            if self.filters.are_shown {
                let chips = vec![self.chips(words)];
                let height = size.height - CHIPS - PART_GAP;
                return side.push(leaves(TOLD, chips, 0.0, height, true)).into();
            }
            side = side.push(self.known_lines(most, words));
        } else {
            side = side.push(self.known_lines(most, words));
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
        let cards = responsive(move |room| {
            let (cards, left) = self.shares(answers, room, detail);
            let room = Size::new(room.width, cards);
            let cards = self.cards(question, answers, room, words);
            let left = left.filter(|_| !answers.is_empty());
            let below = left.map(|left| {
                if detail == DetailPlace::Below {
                    self.detail_strip(question, answers, left, words)
                } else {
                    self.detail_facts(question, answers, left, words)
                }
            });
            column![cards].push(below).spacing(PART_GAP).into()
        });
        let side = side.push(cards);
        match beside {
            Some(width) => {
                let detail = self.detail_column(question, answers, size.height, words);
                let detail = container(detail).width(width).height(Fill);
                row![side, detail].spacing(GAP).into()
            }
            None => side.into(),
        }
    }

    /// The height of the cards, all of them whole, and of the chosen knot below them, if it stands there.
    fn shares(&self, answers: &[FitAnswer], room: Size, detail: DetailPlace) -> (f32, Option<f32>) {
        let pattern = self.pattern(room.width);
        let [least, most] = STRIP_HEIGHTS;
        let strip = match detail {
            DetailPlace::Below => {
                let strip = (room.height * STRIP_SHARE).clamp(least, most);
                // A card is whole before the strip is.
                let left = room.height - PART_GAP - pattern.first_row();
                strip.min(left.max(least))
            }
            DetailPlace::Foot => 0.0,
            _ => return (room.height, None),
        };
        // Where there is room for one row alone, it has all of that.
        let first = pattern.first_row().min(room.height);
        let most = (room.height - PART_GAP - strip).max(first);
        let cards = whole_rows(answers, pattern, most);
        let left = room.height - PART_GAP - cards;
        (cards, Some(left).filter(|left| *left >= least))
    }
}
