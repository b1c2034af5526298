//! What the start screen looks like: what waits on the left, the form on the right, the knot that
//! it names beside them.

use iced::widget::{button, column, container, responsive, row, scrollable, text, text_input};
use iced::{Center, Element, Fill, FillPortion};

use super::{Message, StartField, State, id, text_slot};
use crate::app::{theme, widgets};
use crate::guide::{AtOnce, Script};
use crate::knot::{Hand, Side};
use crate::words::Words;

impl State {
    /// The screen. `notices` stand above everything else.
    pub(super) fn page<'a>(
        &'a self,
        words: &'a Words,
        notices: Vec<String>,
    ) -> Element<'a, Message> {
        let page = widgets::page_below(notices, 14);
        let keys = match (self.focus, self.waiting.is_empty()) {
            (Some(_), _) => "start-keys-form",
            (None, false) => "start-keys-waiting",
            (None, true) => "start-keys-empty",
        };
        page.push(responsive(move |room| {
            let needed = if self.waiting.is_empty() {
                960.0
            } else {
                1500.0
            };
            self.picture.right_of(room, needed, self.parts(words))
        }))
        .push(widgets::quiet(words.plainly(keys, &[]), theme::BODY))
        .into()
    }

    /// What waits, and the form.
    fn parts<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        let mut parts = row![].spacing(40);
        if !self.waiting.is_empty() {
            parts = parts.push(self.ties(words));
        }
        scrollable(parts.push(self.form(words)))
            .spacing(8)
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn ties<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        let mut list = column![heading(words.plainly("start-waiting", &[]))].spacing(14);
        for (index, waiting) in self.waiting.iter().enumerate() {
            let progress = words.tie_progress(waiting.progress, waiting.days);
            let key = match index {
                0 => words.plainly("start-take-up", &[]),
                1..=8 => {
                    let digit = (index + 1).to_string();
                    words.plainly("start-take-up-digit", &[("key", &digit)])
                }
                _ => words.plainly("start-take-up-plain", &[]),
            };
            let mut face = column![].spacing(4);
            if !waiting.tie.name.trim().is_empty() {
                face = face.push(text(&waiting.tie.name).size(28).font(theme::BOLD));
            }
            let face = face
                .push(
                    text(words.tie_line(&waiting.tie.plan))
                        .size(28)
                        .font(theme::BOLD),
                )
                .push(text(progress).size(theme::SMALL).style(theme::quiet))
                .push(text(key).size(theme::BODY));
            list = list.push(
                button(face)
                    .width(Fill)
                    .padding(14)
                    .style(theme::pressable(index == 0 && self.focus.is_none()))
                    .on_press(Message::TakeUp(index)),
            );
        }
        container(list).width(FillPortion(1)).into()
    }

    fn form<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        let mut form = column![heading(words.plainly("start-heading", &[]))].spacing(14);
        for pair in [
            [
                (StartField::Leads, "start-leads"),
                (StartField::Bights, "start-bights"),
            ],
            [
                (StartField::Passes, "start-passes"),
                (StartField::Weave, "start-weave"),
            ],
        ] {
            let pair = pair.map(|(field, label)| self.text_field(field, words.plainly(label, &[])));
            form = form.push(row(pair).spacing(20));
        }
        form = form.push(widgets::quiet(
            words.plainly("start-weave-hint", &[]),
            theme::SMALL,
        ));
        let choices = [
            (StartField::Hand, "start-hand", hand_label(self.hand)),
            (StartField::Side, "start-side", side_label(self.side)),
        ];
        form = form.push(
            row(choices.map(|(field, label, value)| {
                self.choice(field, words.plainly(label, &[]), words.plainly(value, &[]))
            }))
            .spacing(20),
        );
        let facts = match self.plan() {
            Ok(plan) => text(
                words
                    .facts(&Script::new(plan, AtOnce::default()))
                    .to_string(),
            ),
            Err(error) => text(words.knot_error(&error).to_string()).style(theme::alert),
        };
        let is_chosen = self.focus == Some(StartField::Begin)
            || self.focus.is_none() && self.waiting.is_empty();
        let begin = button(
            text(words.plainly("start-begin", &[]))
                .size(28)
                .font(theme::BOLD),
        )
        .padding([12, 24])
        .style(theme::pressable(is_chosen))
        .on_press(Message::Begin);
        let plan = button(text(words.plainly("start-plan", &[])).size(theme::BODY))
            .padding([12, 24])
            .style(theme::pressable(false))
            .on_press(Message::Plan);
        form = form
            .push(facts.size(theme::BODY))
            .push(row![begin, plan].spacing(20).align_y(Center).wrap());
        container(form).width(FillPortion(1)).into()
    }

    fn text_field(&self, field: StartField, label: String) -> Element<'_, Message> {
        let typed = text_slot(field).map_or("", |slot| self.texts[slot].as_str());
        let input = text_input("", typed)
            .id(id(field))
            .size(28)
            .padding(8)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Begin);
        labelled(label, input.into())
    }

    fn choice(&self, field: StartField, label: String, value: String) -> Element<'_, Message> {
        let switch = button(text(value).size(26).width(Fill))
            .padding(8)
            .style(theme::pressable(self.focus == Some(field)))
            .on_press(Message::Switched(field));
        labelled(label, switch.into())
    }
}

fn hand_label(hand: Hand) -> &'static str {
    match hand {
        Hand::Right => "start-hand-right",
        Hand::Left => "start-hand-left",
    }
}

fn side_label(side: Side) -> &'static str {
    match side {
        Side::Right => "start-side-right",
        Side::Left => "start-side-left",
    }
}

/// A part of the form under its name.
fn labelled(label: String, part: Element<'_, Message>) -> Element<'_, Message> {
    column![text(label).size(theme::SMALL), part]
        .spacing(4)
        .width(Fill)
        .into()
}

fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
