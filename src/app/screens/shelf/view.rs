//! What the shelf screen looks like: a list of ties, and the line that is typed into.

use iced::widget::{button, column, row, scrollable, text};
use iced::{Center, Element, Fill};

use super::in_view::LIST;
use super::{Message, Prompt, State, label, line};
use crate::app::{theme, widgets};
use crate::guide::{AtOnce, Script};
use crate::shelf::{Shelved, TieStatus};
use crate::words::{Words, shown_name, shown_note};

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let mut page = widgets::page(12);
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
            page = page.push(widgets::line(line(), typed, Message::Typed, Message::Enter));
        }
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
        page.into()
    }

    fn list<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        if self.stock.ties.is_empty() {
            return self.empty(words);
        }
        let in_view = self.in_view();
        let more =
            |ties: usize| (ties > 0).then(|| widgets::quiet(words.more_ties(ties), theme::SMALL));
        let above = more(in_view.start);
        let below = more(self.stock.ties.len() - in_view.end);
        let rows = self.stock.ties[in_view.clone()]
            .iter()
            .zip(in_view)
            .map(|(shelved, index)| self.row(index, shelved, words));
        scrollable(column(above.into_iter().chain(rows).chain(below)).spacing(10))
            .id(LIST)
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn row<'a>(&'a self, index: usize, tie: &'a Shelved, words: &Words) -> Element<'a, Message> {
        let figures = words.tie_line(&tie.tie.plan);
        // A name has its own rows, however long it is.
        let name = tie.tie.name.trim();
        let name = (!name.is_empty()).then(|| {
            text(shown_name(&tie.tie.name))
                .size(28)
                .font(theme::BOLD)
                .width(Fill)
        });
        // Each line has the whole width: side by side they would squeeze one another.
        let mut face = column(name.map(Into::into))
            .push(text(figures).size(28).font(theme::BOLD).width(Fill))
            .push(widgets::quiet(phase(tie, words), theme::BODY))
            .push(text(words.tie_stand(tie)).size(theme::BODY))
            .spacing(4);
        if tie.status() == TieStatus::Finished {
            face = face.push(widgets::quiet(words.tie_log(tie.is_logged), theme::SMALL));
        }
        if !tie.tie.note.trim().is_empty() {
            face = face.push(widgets::quiet(shown_note(&tie.tie.note), theme::SMALL));
        }
        let picture = self.thumbnails.view(tie.tie.id());
        let row = row![].push(picture).push(face).spacing(16).align_y(Center);
        button(row)
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
