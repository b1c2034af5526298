//! What the paper screen looks like: the four things that can be made, and a look at the chosen one.

use iced::widget::{
    button, column, container, image, progress_bar, responsive, row, scrollable, space, text,
    text_input,
};
use iced::{Center, ContentFit, Element, Fill, FillPortion, Shrink, padding};

use super::choosing::{name, paper_name};
use super::{Doing, LINE, LIST, Message, State};
use crate::app::widgets::key_bar::keycap;
use crate::app::{theme, widgets};
use crate::paper::PaperKind;
use crate::picture::sheet::Paper;
use crate::words::Words;

/// Below this width there is no room for a look at what is made beside the list.
const NARROW: f32 = 860.0;
/// From this height on there is room for it below.
const TALL: f32 = 900.0;
/// Below this height they stand two by two, and the chosen one alone says what it is for.
const LOW: f32 = 480.0;
/// Height of a button: a finger needs 44 pixels (WCAG 2.2, success criterion 2.5.5).
const BUTTON: f32 = 46.0;
/// The place that is kept for what is told, below the list.
const TOLD: f32 = 104.0;

impl State {
    /// The screen.
    pub(super) fn page<'a>(&'a self, words: &'a Words) -> Element<'a, Message> {
        let heading = text(words.plainly("paper-heading", &[]))
            .size(theme::HEADING)
            .font(theme::BOLD);
        let body = responsive(move |size| {
            let list = self.list(size.height < LOW, words);
            if size.width >= NARROW {
                return row![
                    container(list).width(FillPortion(11)),
                    container(self.first_page()).width(FillPortion(9)),
                ]
                .spacing(28)
                .into();
            }
            let look: Option<Element<'_, Message>> =
                (size.height >= TALL).then(|| container(self.first_page()).height(Fill).into());
            let list = container(list).height(if look.is_some() { Shrink } else { Fill });
            column![list].extend(look).spacing(20).into()
        });
        widgets::page(12)
            .push(heading)
            .push(body)
            .push(
                container(self.told(words))
                    .height(TOLD)
                    .width(Fill)
                    .align_y(Center),
            )
            .into()
    }

    fn list<'a>(&'a self, is_low: bool, words: &Words) -> Element<'a, Message> {
        let for_what = |kind| {
            let for_what = words.plainly("paper-for", &[("kind", self.called(kind))]);
            widgets::quiet(for_what, theme::SMALL)
        };
        let rows = PaperKind::ALL.into_iter().enumerate();
        let rows = rows.map(|(index, kind)| {
            let is_chosen = index == self.chosen;
            let title = words.plainly("paper-name", &[("kind", self.called(kind))]);
            let title = text(title).size(theme::BODY).font(theme::BOLD);
            let for_what = (!is_low).then(|| for_what(kind));
            let face = column![title].extend(for_what).spacing(2);
            let line = button(container(face).center_y(Shrink))
                .width(Fill)
                .padding([10, 14])
                .style(theme::pressable(is_chosen))
                .on_press(Message::Chosen(index));
            container(line).id(format!("paper {}", name(kind))).into()
        });
        let list = if is_low {
            let rows: Vec<Element<'a, Message>> = rows.collect();
            let mut rows = rows.into_iter();
            let mut pairs = column![].spacing(8);
            while let Some(first) = rows.next() {
                pairs = pairs.push(row![first].extend(rows.next()).spacing(8));
            }
            pairs.push(for_what(self.kind()))
        } else {
            column(rows)
        };
        let list = list
            .push(self.choices(words))
            .spacing(8)
            .padding(padding::right(14));
        scrollable(list).id(LIST).width(Fill).into()
    }

    /// As what kind of file, and for which paper.
    fn choices<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        let chip =
            |label: &'static str, is_taken: bool, message: Message| -> Element<'a, Message> {
                let face = text(label)
                    .size(theme::SMALL)
                    .wrapping(text::Wrapping::None);
                let press = button(container(face).center_y(Fill))
                    .height(BUTTON)
                    .padding([0, 16])
                    .style(theme::pressable(is_taken))
                    .on_press(message);
                container(press).id(format!("paper {label}")).into()
            };
        let forms = self.kind().forms().iter().enumerate();
        let forms = forms.map(|(index, form)| {
            chip(
                form.name(),
                index == self.form_index(),
                Message::Formed(index),
            )
        });
        let label = |id| -> Element<'a, Message> {
            container(widgets::quiet(words.plainly(id, &[]), theme::SMALL))
                .center_y(BUTTON)
                .into()
        };
        let of_file = row![label("paper-file")].extend(forms);
        let of_paper = self.kind().is_paper().then(|| {
            let papers = [Paper::A4, Paper::Letter].map(|paper| {
                chip(
                    paper_name(paper),
                    paper == self.paper,
                    Message::Papered(paper),
                )
            });
            row![label("paper-paper")].extend(papers)
        });
        // Each with its choices in one piece: beside one another where there is room, else below.
        let groups = [Some(of_file), of_paper].into_iter().flatten();
        let groups = groups.map(|group| group.spacing(8).align_y(Center).into());
        row(groups).spacing(20).wrap().vertical_spacing(8).into()
    }

    /// The first page or frame of what is chosen.
    fn first_page(&self) -> Element<'_, Message> {
        let Some(handle) = &self.glance.1 else {
            return space().into();
        };
        let page = image(handle.clone()).content_fit(ContentFit::Contain);
        container(page.width(Fill).height(Fill)).center(Fill).into()
    }

    /// What goes on, or what came of it.
    fn told<'a>(&'a self, words: &Words) -> Element<'a, Message> {
        match &self.doing {
            Doing::Choosing => match &self.report {
                Some(report) => row![widgets::notice_of(report.shown(), theme::SMALL)]
                    .extend(self.made.as_ref().map(|_| open(words)))
                    .spacing(12)
                    .align_y(Center)
                    .into(),
                None => widgets::quiet(words.plainly("paper-how", &[]), theme::SMALL),
            },
            Doing::Asking => text(words.plainly("paper-asking", &[]))
                .size(theme::BODY)
                .into(),
            Doing::Typing { path, wrong, .. } => {
                let label = match wrong {
                    Some(wrong) => text(wrong.shown()).size(theme::SMALL).style(theme::alert),
                    None => text(words.plainly("paper-path", &[])).size(theme::SMALL),
                };
                let line = text_input("", path)
                    .id(LINE)
                    .size(24)
                    .padding(8)
                    .style(theme::field)
                    .on_input(Message::Typed)
                    .on_submit(Message::Enter);
                column![label, line].spacing(4).into()
            }
            Doing::Making { done, count, .. } => {
                let how_far = words.paper_progress(*done, *count);
                let made = f32::from(u16::try_from(*done).unwrap_or(u16::MAX));
                let all = f32::from(u16::try_from(*count).unwrap_or(u16::MAX)).max(1.0);
                column![
                    text(how_far.shown().to_owned()).size(theme::BODY),
                    container(
                        progress_bar(0.0..=all, made)
                            .girth(14)
                            .style(theme::progress_now)
                    ),
                ]
                .spacing(8)
                .into()
            }
        }
    }
}

/// The button that opens what was made once more.
fn open<'a>(words: &Words) -> Element<'a, Message> {
    let label = text(words.plainly("key-paper-open", &[])).size(theme::SMALL);
    let face = row![keycap("O".to_owned()), label]
        .spacing(8)
        .align_y(Center);
    let press = button(container(face).center_y(Fill))
        .height(BUTTON)
        .padding([0, 12])
        .style(theme::pressable(false))
        .on_press(Message::Open);
    container(press).id("paper open").into()
}
