//! The knots that fit as cards: each with its picture, its few figures, and where in its range it lies.

use iced::widget::{Id, button, column, container, row, scrollable, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use super::filters::PlanFilter;
use super::form::{Message, State};
use super::grid::{CARD, GAP, Grid, GridRow, HEADING, InSight, begins_section, whole_rows};
use crate::app::theme;
use crate::app::widgets::key_bar::keycap;
use crate::app::widgets::range_bar::range_bar;
use crate::bench::FitAnswer;
use crate::guide::FitQuestion;
use crate::words::Words;

/// The widget that the cards are scrolled in.
pub(super) const LIST: &str = "plan-knots";
/// Room beside the cards for what they are scrolled by.
const BAR: f32 = 20.0;
/// Width and height of the picture on a card.
const PICTURE: Size = Size::new(100.0, CARD - 18.0);
/// Height of a button that a finger finds (WCAG 2.2, success criterion 2.5.5).
const FINGER: f32 = 44.0;

impl State {
    /// As many of the cards as are in sight in this room.
    pub(super) fn cards<'a>(
        &'a self,
        question: &FitQuestion,
        answers: &[FitAnswer],
        room: Size,
        words: &Words,
    ) -> Element<'a, Message> {
        let width = room.width - BAR;
        let columns = Grid::columns(width);
        #[expect(clippy::cast_precision_loss, reason = "a few columns")]
        let wide = (width + GAP) / columns as f32 - GAP;
        let InSight { above, rows, below } =
            self.grid
                .in_sight(answers, columns, whole_rows(answers, columns, room.height));
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
                        let card = self.card(place, answer, wide, words);
                        let caption = (place == first || begins_section(answers, place))
                            .then(|| self.caption(question, answer, words));
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
        // No row is sliced at the foot of the list where hardly a line of it would be seen.
        let height = whole_rows(answers, columns, room.height);
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
        width: f32,
        words: &Words,
    ) -> Element<'a, Message> {
        let is_chosen = place == self.chosen;
        let hands = (self.hand, self.side);
        let picture = self.pictures.card(place, answer, hands, PICTURE);
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
        let face = container(face).height(PICTURE.height).clip(true);
        let card = button(row![].push(picture).push(face).spacing(12))
            .width(width)
            .height(CARD)
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

    /// The name of a kind of knots.
    fn caption(&self, question: &FitQuestion, answer: &FitAnswer, words: &Words) -> String {
        if self.known.fits.is_empty() || self.known.are_others {
            words.fit_section(question, answer.section)
        } else {
            words.plainly("plan-knot", &[])
        }
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
        let label = text(words.plainly("plan-filters", &[])).size(theme::SMALL);
        let button = button(container(label).center_y(Fill))
            .height(FINGER)
            .padding([0, 14])
            .style(theme::pressable(self.filters.are_shown))
            .on_press(Message::ShowFilters);
        let button = container(button).id("plan-filters");
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
