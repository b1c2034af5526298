//! What the shelf screen looks like: a list of ties, and the line that is typed into.

use iced::widget::{button, column, row, scrollable, space, text, text_input};
use iced::{Center, Element, Fill};

use super::{Message, Prompt, State, label, line, list_id};
use crate::app::{theme, widgets};
use crate::guide::{AtOnce, Script};
use crate::shelf::{Shelved, TieStatus};
use crate::words::Words;

impl State {
    /// The screen. `notices` stand above everything else.
    pub(super) fn page<'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, Message> {
        let mut page = widgets::page_below(notices, 12);
        page = page.push(
            text(words.plainly("shelf-heading", &[]))
                .size(theme::HEADING)
                .font(theme::BOLD),
        );
        if let Some(report) = &self.report {
            page = page.push(widgets::notice(report.shown()));
        }
        if let Some(Prompt { asks, text: typed }) = &self.prompt {
            page = page.push(text(words.plainly(label(*asks), &[])).size(theme::BODY));
            page = page.push(
                text_input("", typed)
                    .id(line())
                    .size(28)
                    .padding(8)
                    .style(theme::field)
                    .on_input(Message::Typed)
                    .on_submit(Message::Enter),
            );
        }
        let keys = match (&self.prompt, self.stock.ties.is_empty()) {
            (Some(_), _) => "shelf-keys-prompt",
            (None, true) => "shelf-keys-empty",
            (None, false) => "shelf-keys",
        };
        page = page.push(self.list(words));
        if self.stock.totals.ties > 0 {
            page = page.push(widgets::quiet(
                words.totals(&self.stock.totals),
                theme::BODY,
            ));
        }
        if let Some(pace) = self.stock.pace {
            page = page.push(widgets::quiet(words.pace(pace), theme::BODY));
        }
        page.push(widgets::quiet(words.plainly(keys, &[]), theme::SMALL))
            .into()
    }

    fn list<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        if self.stock.ties.is_empty() {
            let empty = words.plainly("shelf-empty", &[]);
            return column![text(empty).size(theme::BODY), space::vertical()]
                .height(Fill)
                .into();
        }
        let rows = self
            .stock
            .ties
            .iter()
            .enumerate()
            .map(|(index, shelved)| self.row(index, shelved, words));
        scrollable(column(rows).spacing(10))
            .id(list_id())
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn row<'a>(&'a self, index: usize, tie: &'a Shelved, words: &Words) -> Element<'a, Message> {
        let figures = words.tie_line(&tie.tie.plan);
        let mut title = row![].spacing(20).align_y(Center);
        if !tie.tie.name.trim().is_empty() {
            title = title.push(text(&tie.tie.name).size(28).font(theme::BOLD));
        }
        let title = title
            .push(text(figures).size(28).font(theme::BOLD))
            .push(space::horizontal())
            .push(widgets::quiet(phase(tie, words), theme::BODY));
        let mut face = column![title, text(words.tie_stand(tie)).size(theme::BODY)].spacing(4);
        if tie.status() == TieStatus::Finished {
            face = face.push(widgets::quiet(words.tie_log(tie.is_logged), theme::SMALL));
        }
        if !tie.tie.note.trim().is_empty() {
            face = face.push(widgets::quiet(tie.tie.note.as_str(), theme::SMALL));
        }
        button(face)
            .width(Fill)
            .padding(12)
            .style(theme::pressable(index == self.focus))
            .on_press(Message::Clicked(index))
            .into()
    }
}

/// The line above the tying screen's step: "Lead pass, leg 7 of 12".
fn phase(tie: &Shelved, words: &Words) -> String {
    let script = Script::new(tie.tie.plan.clone(), AtOnce::default());
    script.step(tie.place).map_or_else(String::new, |step| {
        words.show(tie.tie.plan.knot(), &step).phase
    })
}
