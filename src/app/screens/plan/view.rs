//! What the plan screen looks like: the form on the left, the knots (`knots.rs`) on the right.

use iced::widget::{
    button, column, container, mouse_area, responsive, row, scrollable, text, text_input,
};
use iced::{Element, Fill, FillPortion};

use super::fields::{FORM, id};
use super::form::{Message, State};
use crate::app::{theme, widgets};
use crate::guide::SetupField;
use crate::words::Words;

/// Below this width the knots stand under the form.
const NARROW: f32 = 760.0;
/// Below this height what narrows the list would leave no room for it, and stands under it.
const LOW: f32 = 440.0;

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let mut page = widgets::page(12);
        if let Some(error) = &self.presets_trouble {
            page = page.push(widgets::notice(words.presets_failed(error)));
        }
        page.push(responsive(move |size| {
            let is_narrow = size.width < NARROW;
            let knots_first = is_narrow || size.height < LOW;
            let (form, knots) = (self.fields(words), self.knots(knots_first, words));
            if is_narrow {
                column![
                    container(form).height(FillPortion(1)),
                    container(knots).height(FillPortion(1)),
                ]
                .spacing(12)
                .into()
            } else {
                row![
                    container(form).width(FillPortion(9)),
                    container(knots).width(FillPortion(11)),
                ]
                .spacing(36)
                .into()
            }
        }))
        .into()
    }

    fn fields<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let object = if self.is_girth {
            "plan-girth"
        } else {
            "plan-object"
        };
        let pairs = [
            [
                (SetupField::Object, object),
                (SetupField::Cover, "plan-cover"),
            ],
            [
                (SetupField::Cord, "plan-cord"),
                (SetupField::Have, "plan-have"),
            ],
            [
                (SetupField::Tube, "plan-tube"),
                (SetupField::Rows, "plan-rows"),
            ],
            [
                (SetupField::Pin, "plan-pin"),
                (SetupField::Thread, "plan-thread"),
            ],
            [
                (SetupField::RingWidth, "plan-ring-width"),
                (SetupField::TubeLength, "plan-tube-length"),
            ],
        ];
        let mut form = column![heading(words.plainly("plan-heading", &[]))].spacing(14);
        let mut is_wrong = false;
        for pair in pairs {
            form = form
                .push(row(pair.map(|(field, label)| self.field(field, label, words))).spacing(18));
            // Below both, where it has room.
            for (field, _) in pair {
                if let Some(sentence) = self.wrong_in(field, words) {
                    is_wrong = true;
                    form = form.push(
                        text(sentence.to_string())
                            .size(theme::SMALL)
                            .style(theme::alert),
                    );
                }
            }
        }
        if !is_wrong {
            let hint = words.plainly("plan-hint", &[]);
            form = form.push(widgets::quiet(hint, theme::SMALL));
        }
        scrollable(form)
            .id(FORM)
            .spacing(8)
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn field<'a>(&'a self, field: SetupField, label: &str, words: &Words) -> Element<'a, Message> {
        let input = text_input("", self.form.text(self.said_as(field)))
            .id(id(field))
            .size(26)
            .padding(7)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Take);
        let input = mouse_area(input).on_release(Message::Pointed(field));
        let mut part = column![text(words.plainly(label, &[])).size(theme::SMALL), input]
            .spacing(4)
            .width(Fill);
        let choices = match field {
            SetupField::Object => vec![
                words.plainly("plan-measure-across", &[]),
                words.plainly("plan-measure-round", &[]),
            ],
            _ => self.picks(field),
        };
        if !choices.is_empty() {
            let chips = choices.into_iter().enumerate().map(|(index, name)| {
                let is_taken = match field {
                    SetupField::Object => self.is_girth == (index == 1),
                    _ => self.form.text(field) == name,
                };
                button(text(name).size(theme::SMALL))
                    .padding([2, 10])
                    .style(theme::pressable(is_taken))
                    .on_press(Message::Picked(field, index))
                    .into()
            });
            part = part.push(row(chips).spacing(8).wrap());
        }
        part.into()
    }
}

pub(super) fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(theme::HEADING).font(theme::BOLD).into()
}
