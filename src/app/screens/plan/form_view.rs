//! What the form of the plan screen looks like: each field under its name, with an example in it while
//! it is empty, what can be picked for it, and below it what is wrong with it.

use iced::alignment::Horizontal;
use iced::widget::{
    Row, button, column, container, mouse_area, row, space, stack, text, text_input,
};
use iced::{Element, Fill, Padding, Size};

use super::covering::Covered;
use super::fields::{FORM, KNOT_EXAMPLE, PlanField, example, example_of_ends, id, takes_length};
use super::findings::Findings;
use super::form::{Message, State};
use crate::app::widgets::leaves::leaves_told;
use crate::app::widgets::picker::picker;
use crate::app::{theme, widgets};
use crate::guide::SetupField;
use crate::words::Words;

/// Height of a button that a finger finds (WCAG 2.2, success criterion 2.5.5).
const FINGER: f32 = 44.0;

/// Between two rows of the form.
const GAP: f32 = 12.0;

/// The heading of a part of the screen: in one line beside the cards.
const HEADING: f32 = 26.0;

impl State {
    /// All fields in so many columns below the heading, and what stands below them, on leaves of this
    /// size.
    pub(super) fn fields<'a>(
        &'a self,
        columns: usize,
        room: Size,
        below: Vec<Element<'a, Message>>,
        words: &'a Words,
    ) -> Element<'a, Message> {
        let is_wide = columns > 1;
        let mut rows = vec![heading(words.plainly("plan-heading", &[]))];
        rows.extend(self.covering(is_wide, room.width, words));
        let typed = self.fields_in_sight().into_iter();
        let typed = typed.filter(|field| !matches!(field, PlanField::Covers | PlanField::Slides));
        let mut cells: Vec<_> = typed.map(|field| self.field(field, words)).collect();
        let hint = widgets::quiet(words.plainly("plan-hint", &[]), theme::SMALL);
        // In the last row, where that has room for it.
        let left_over = cells.len().next_multiple_of(columns) - cells.len();
        let hint = if left_over > 0 {
            cells.push(container(hint).width(Fill).into());
            None
        } else {
            Some(hint)
        };
        let mut cells = cells.into_iter();
        loop {
            let abreast: Vec<_> = cells.by_ref().take(columns).collect();
            if abreast.is_empty() {
                break;
            }
            let left_over = (abreast.len()..columns).map(|_| space().width(Fill).into());
            rows.push(row(abreast.into_iter().chain(left_over)).spacing(18).into());
        }
        rows.extend(hint);
        rows.extend(below);
        leaves_told(FORM, rows, GAP, room.height, !is_wide, &self.form_places)
    }

    fn field<'a>(&'a self, field: PlanField, words: &'a Words) -> Element<'a, Message> {
        let typed = self.typed(field);
        let (such_as, label_of_it, is_length) = match field {
            PlanField::Setup(field) => {
                let said_as = self.said_as(field);
                if (self.covering.covered, said_as) == (Covered::Taper, SetupField::Object) {
                    (example_of_ends(words.units()), "plan-taper", true)
                } else {
                    let such_as = example(said_as, words.units());
                    (such_as, label(said_as), takes_length(field))
                }
            }
            _ => (KNOT_EXAMPLE, "plan-knot", false),
        };
        let such_as = words.field_example(such_as);
        let input = text_input(&such_as, typed)
            .id(id(field))
            .size(24)
            .padding(8)
            .style(theme::field)
            .on_input(move |text| Message::Typed(field, text))
            .on_submit(Message::Take);
        // A bare number is of millimetres, and says so; so are two of them.
        let is_number = |text: &str| text.trim().replace(',', ".").parse::<f64>().is_ok();
        let is_bare = is_length && typed.split(':').all(is_number);
        let unit = if is_bare { "mm" } else { "" };
        let unit = container(text(unit).size(theme::BODY).style(theme::quiet))
            .align_x(Horizontal::Right)
            .center_y(Fill)
            .width(Fill)
            .padding(Padding::ZERO.right(12));
        let input = mouse_area(stack![input, unit]).on_release(Message::Pointed(field));
        let label = text(words.plainly(label_of_it, &[])).size(theme::SMALL);
        let wrong = self.wrong_in(field, words);
        column![label, input]
            .push(self.ends_read(field, words))
            .push(self.picking(field, words))
            .push(widgets::wrong(wrong.map(|wrong| wrong.to_string())))
            .spacing(4)
            .width(Fill)
            .into()
    }

    /// What was read of the two ends of a taper, or of a mat and its hole.
    fn ends_read<'a>(&self, field: PlanField, words: &Words) -> Option<Element<'a, Message>> {
        let Findings::Knots(question, _) = &self.found else {
            return None;
        };
        let is_it = field == SetupField::Object.into();
        let read = words.ends_read(question.object.ground).filter(|_| is_it)?;
        Some(widgets::quiet(read, theme::SMALL))
    }

    /// What the field can be filled in with, or nothing.
    fn picking<'a>(&'a self, field: PlanField, words: &Words) -> Element<'a, Message> {
        let PlanField::Setup(field) = field else {
            return space().into();
        };
        if field == SetupField::Object {
            return if self.covering.covered == Covered::Round {
                self.measures(words)
            } else {
                space().into()
            };
        }
        let picks = self.picks(field, words);
        if picks.is_empty() {
            return space().into();
        }
        let picked = self.picked(field, &picks);
        let purpose = match field {
            SetupField::Cord => "plan-pick-cord",
            SetupField::Thread => "plan-pick-thread",
            _ => "plan-pick-tube",
        };
        let labels = picks.into_iter().map(|pick| pick.label).collect();
        let purpose = words.plainly(purpose, &[]);
        let picker = picker(labels, picked, purpose, move |place| {
            Message::Picked(field, place)
        });
        container(picker)
            .id(iced::widget::Id::from(format!("pick-{}", field.name())))
            .into()
    }

    /// Whether the object is measured across or round.
    fn measures<'a>(&self, words: &Words) -> Element<'a, Message> {
        let ways = ["plan-measure-across", "plan-measure-round"];
        let ways = ways.into_iter().enumerate().map(|(index, way)| {
            let way = text(words.plainly(way, &[])).size(theme::SMALL);
            // As wide as its word is, so that a long one has room beside a short one.
            button(way)
                // A finger's height with one row of words, and more with two.
                .padding([(FINGER - 1.3 * theme::SMALL) / 2.0, 9.0])
                .style(theme::pressable(self.is_girth == (index == 1)))
                .on_press(Message::Picked(SetupField::Object, index))
                .into()
        });
        let ways = Row::with_children(ways).spacing(8).wrap();
        ways.vertical_spacing(8).into()
    }
}

/// The message that names a field.
const fn label(field: SetupField) -> &'static str {
    match field {
        SetupField::Girth => "plan-girth",
        SetupField::Ball => "plan-ball",
        SetupField::Mat => "plan-mat",
        SetupField::Cover => "plan-cover",
        SetupField::Cord => "plan-cord",
        SetupField::Have => "plan-have",
        SetupField::Tube => "plan-tube",
        SetupField::Rows => "plan-rows",
        SetupField::Pin => "plan-pin",
        SetupField::Thread => "plan-thread",
        SetupField::RingWidth => "plan-ring-width",
        SetupField::TubeLength => "plan-tube-length",
        _ => "plan-object",
    }
}

pub(super) fn heading<'a>(line: String) -> Element<'a, Message> {
    text(line).size(HEADING).font(theme::BOLD).into()
}
