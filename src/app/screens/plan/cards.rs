//! The knots that fit as cards: each with its picture, its few figures, and where in its range it lies.

use iced::widget::{Id, button, column, container, row, scrollable, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use super::filters::PlanFilter;
use super::form::{Message, State};
use super::grid::{GAP, GridRow, HEADING, InSight, Pattern, begins_section, whole_rows};
use crate::app::theme;
use crate::app::widgets::key_bar::keycap;
use crate::app::widgets::range_bar::range_bar;
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// The widget that the cards are scrolled in.
pub(super) const LIST: &str = "plan-knots";
/// Room beside the cards for what they are scrolled by.
pub(super) const BAR: f32 = 20.0;
/// Width of the picture on a card, and so much less than the card it is high.
const PICTURE: f32 = 100.0;
const PICTURE_ENDS: f32 = 18.0;
/// Height of a button that a finger finds (WCAG 2.2, success criterion 2.5.5).
const FINGER: f32 = 44.0;

impl State {
    /// How the cards stand in this width: with a knot in mind what they are stands above them already.
    pub(super) fn pattern(&self, width: f32) -> Pattern {
        Pattern::of(width - BAR, self.known.fits.is_empty())
    }

    /// As many of the cards as are in sight in so many pixels of whole rows.
    pub(super) fn cards<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        room: Size,
        words: &Words,
    ) -> Element<'a, Message> {
        let pattern = self.pattern(room.width);
        let height = whole_rows(answers, pattern, room.height);
        let InSight { above, rows, below } = self.grid.in_sight(answers, pattern, height);
        let mut list = column![space().height(above)];
        for line in rows {
            list = list.push(match line {
                GridRow::Section(section) => {
                    container(heading_of(words.fit_section(question, section)))
                }
                GridRow::Cards {
                    places,
                    is_captioned,
                } => {
                    // No card of a kind stands under the name of another, or under none.
                    let first = places.start;
                    let cards = places.filter_map(|place| {
                        let answer = answers.get(place)?;
                        let card = self.card(place, answer, pattern, words);
                        let caption = (place == first || begins_section(answers, place))
                            .then(|| words.fit_section(question, answer.section));
                        Some(captioned(
                            caption.filter(|_| is_captioned),
                            is_captioned,
                            card,
                        ))
                    });
                    container(row(cards).spacing(GAP)).padding(Padding::ZERO.bottom(GAP))
                }
            });
        }
        let list = list.push(space().height(below));
        scrollable(list)
            .id(LIST)
            .on_scroll(|viewport| Message::Scrolled(viewport.absolute_offset().y))
            .width(Fill)
            .height(height)
            .into()
    }

    fn card<'a>(
        &'a self,
        place: usize,
        answer: &FitAnswer,
        pattern: Pattern,
        words: &Words,
    ) -> Element<'a, Message> {
        let is_chosen = place == self.chosen;
        let hands = (self.hand, self.side);
        let size = Size::new(PICTURE, pattern.height - PICTURE_ENDS);
        let picture = self.pictures.card(place, answer, hands, size);
        let name = text(words.answer_line(answer)).size(theme::SMALL);
        let name = name.font(theme::BOLD);
        let drawn = text(words.drawn_word(answer)).size(theme::SMALL);
        let share = answer.range.openness(answer.shape.width);
        let mut face = column![
            name,
            row![range_bar(share), drawn].spacing(8).align_y(Center),
        ]
        .spacing(1)
        .width(Fill);
        for line in words.answer_figures(answer) {
            face = face.push(text(line).size(theme::SMALL));
        }
        let face = container(face).height(size.height).clip(true);
        let card = button(row![].push(picture).push(face).spacing(12))
            .width(pattern.width)
            .height(pattern.height)
            .padding([8, 10])
            .style(theme::pressable(is_chosen))
            .on_press(if is_chosen {
                Message::Take
            } else {
                Message::Choose(place)
            });
        container(card)
            .id(Id::from(format!("plan-card {place}")))
            .into()
    }

    /// What narrows the knots, each with its key.
    pub(super) fn chips<'a>(&self, words: &Words) -> Element<'a, Message> {
        if let Some(only) = &self.only {
            // The others are narrowed by nothing else meanwhile.
            return button(with_key(&words.only_knot_chip(only, "F10")))
                .height(FINGER)
                .padding([0, 10])
                .style(theme::pressable(true))
                .on_press(Message::AnyKnot)
                .into();
        }
        let chips = PlanFilter::ALL.map(|filter| self.chip(filter, words));
        row(chips).spacing(6).wrap().vertical_spacing(8).into()
    }

    /// The button that shows what narrows the knots in their place, beside what of it is set.
    pub(super) fn set_chips<'a>(&self, found: usize, words: &Words) -> Element<'a, Message> {
        if self.only.is_some() {
            return self.chips(words);
        }
        let button = self.filters_button(words);
        let set = PlanFilter::ALL.into_iter();
        let set = set.filter(|filter| self.filters.choice(*filter) != 0);
        let set: Vec<Element<'a, Message>> = set.map(|filter| self.chip(filter, words)).collect();
        if set.is_empty() {
            let found = if self.known.are_others {
                words.plainly("known-others", &[])
            } else {
                words.answers_found(found)
            };
            // Two rows of it are no higher than the button beside it.
            let found = text(found).size(theme::SMALL).font(theme::BOLD);
            let found = found.line_height(1.15).width(Fill);
            let found = container(found).center_y(FINGER);
            return row![button, found].spacing(8).into();
        }
        row![button]
            .extend(set)
            .spacing(8)
            .wrap()
            .vertical_spacing(8)
            .into()
    }

    /// The button that shows what narrows the knots.
    pub(super) fn filters_button<'a>(&self, words: &Words) -> Element<'a, Message> {
        let label = text(words.plainly("plan-filters", &[])).size(theme::SMALL);
        let button = button(container(label).center_y(Fill))
            .height(FINGER)
            .padding([0, 14])
            .style(theme::pressable(self.filters.are_shown))
            .on_press(Message::ShowFilters);
        container(button).id("plan-filters").into()
    }

    fn chip<'a>(&self, filter: PlanFilter, words: &Words) -> Element<'a, Message> {
        let choice = self.filters.choice(filter);
        let chip = words.filter(filter.name(), filter.key(), choice);
        button(with_key(&chip))
            .height(FINGER)
            .padding([0, 6])
            .style(theme::pressable(choice != 0))
            .on_press(Message::Filter(filter))
            .into()
    }
}

/// What a button does, after its key as it lies on a keyboard.
fn with_key<'a>(told: &str) -> Element<'a, Message> {
    let (key, told) = match told.split_once(':') {
        Some((key, told)) => (Some(keycap(key.trim_end().to_owned())), told.trim_start()),
        None => (None, told),
    };
    let told = text(told.to_owned()).size(theme::SMALL);
    let face = row(key).push(told).spacing(5).align_y(Center);
    container(face).center_y(Fill).into()
}

/// A card below the name of its kind, or below as much room.
fn captioned(
    caption: Option<String>,
    is_captioned: bool,
    card: Element<'_, Message>,
) -> Element<'_, Message> {
    if is_captioned {
        column![heading_of(caption.unwrap_or_default()), card].into()
    } else {
        card
    }
}

fn heading_of<'a>(line: String) -> Element<'a, Message> {
    container(text(line).size(theme::SMALL).font(theme::BOLD))
        .center_y(HEADING)
        .into()
}
